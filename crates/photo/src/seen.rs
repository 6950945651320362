//! The marks that have been seen in a picture so far.

use crate::Dot;
use crate::Luminance;
use crate::candidate::{Candidate, candidates};
use crate::ink::{ink, ink_midway};
use crate::look::Look;
use crate::regions::regions;

/// More of one kind than this is no face.
const MOST_OF_A_KIND: usize = 8;

/// The marks that have been seen in a picture, those seen last at the end.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Seen(Vec<Candidate>);

impl Seen {
    /// How many there are.
    pub fn count(&self) -> usize {
        self.0.len()
    }

    /// Those with this dot, as many as are looked at.
    pub fn with(&self, dot: Dot) -> Vec<&Candidate> {
        self.0.iter().filter(|one| one.dot() == Some(dot)).take(MOST_OF_A_KIND).collect()
    }

    /// Adds what can be seen by looking `reach` pixels round about each; what is seen later is seen better.
    pub fn add(&mut self, look: &Look, reach: usize) {
        let Look { picture, by } = look;
        let (ink, width) = (ink(picture, reach.max(1)), picture.width());
        let rough = candidates(&regions(&ink, width), &ink, width);
        for one in rough.iter().filter_map(|rough| again(picture, rough)) {
            let one = one.enlarged(*by);
            self.0.retain(|other| !other.is_at(&one));
            self.0.push(one);
        }
    }
}

/// A mark measured anew where it is known: its ink and paper are parted midway between the two.
fn again(picture: &Luminance, rough: &Candidate) -> Option<Candidate> {
    let radius = rough.radius();
    let out = radius * (Dot::MARK.mm() + 2.5) / Dot::WHITE.mm();
    let [left, top] = [rough.middle.x, rough.middle.y].map(|middle| whole(middle - out));
    let across = whole(2.0 * out) + 1;
    let part = picture.part(left..left + across, top..top + across)?;
    let ink = ink_midway(&part, whole(radius).max(2));
    let seen = candidates(&regions(&ink, part.width()), &ink, part.width());
    let here = seen.into_iter().find(|one| {
        let off = one.moved(left, top).middle - rough.middle;
        off.norm() < radius / 2.0 && one.dot().is_some() && one.is_on_paper(&ink, part.width())
    });
    here.map(|one| one.moved(left, top))
}

/// Whole pixels.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "it is not negative")]
fn whole(pixels: f64) -> usize {
    pixels.max(0.0) as usize
}
