//! Whether marks stand so that they tell of a view.

use nalgebra::Vector2;

use super::{Mark, MarkError};

/// More are no marks.
const MOST_MARKS: usize = 100;
/// Beyond any picture or face.
pub(super) const LARGEST: f64 = 1e9;

/// As a share of the largest distance between marks: nearer than this to each other, or to a line, is on it.
const NEAR: f64 = 0.005;

/// Refuses marks that tell of no view, and says which.
pub(super) fn check(marks: &[Mark]) -> Result<(), MarkError> {
    if marks.len() < 4 {
        return Err(MarkError::TooFew { count: marks.len() });
    }
    if marks.len() > MOST_MARKS {
        return Err(MarkError::TooMany { count: marks.len(), most: MOST_MARKS });
    }
    for (mark, read) in marks.iter().enumerate() {
        let coordinates = [read.pixel.x_px, read.pixel.y_px, read.point.x_mm, read.point.y_mm];
        let is_place = |value: &f64| value.abs() <= LARGEST;
        if let Some(&value) = coordinates.iter().find(|value| !is_place(value)) {
            return Err(MarkError::Coordinate { mark, value, largest: LARGEST });
        }
    }
    let picture = Places(marks.iter().map(|mark| mark.pixel.vector()).collect());
    let face = Places(marks.iter().map(|mark| mark.point.vector()).collect());
    for places in [&picture, &face] {
        places.check()?;
    }
    check_order(&picture, &face)
}

/// The places of all marks on one side.
struct Places(Vec<Vector2<f64>>);

impl Places {
    fn check(&self) -> Result<(), MarkError> {
        let near = NEAR * self.extent();
        for (i, j) in pairs(self.0.len()) {
            if self.distance(i, j) <= near {
                return Err(MarkError::Coincident { marks: [i, j] });
            }
        }
        for (i, j) in pairs(self.0.len()) {
            let others = (0..self.0.len()).filter(|&k| k != i && k != j);
            let is_off = |&k: &usize| self.area(i, j, k).abs() > near * self.distance(i, j);
            let (off, on): (Vec<_>, Vec<_>) = others.partition(is_off);
            if let ([] | [_], Some(&k)) = (&off[..], on.first()) {
                return Err(MarkError::Collinear { marks: [i, j, k] });
            }
        }
        Ok(())
    }

    fn extent(&self) -> f64 {
        pairs(self.0.len()).map(|(i, j)| self.distance(i, j)).fold(0.0, f64::max)
    }

    fn distance(&self, i: usize, j: usize) -> f64 {
        (self.0[i] - self.0[j]).norm()
    }

    /// Twice the area of a triangle of marks, positive where they run counter-clockwise with y up.
    fn area(&self, i: usize, j: usize, k: usize) -> f64 {
        (self.0[j] - self.0[i]).perp(&(self.0[k] - self.0[i]))
    }

    /// Which way round three marks run: 1, −1, or 0 where that is in doubt.
    fn turn(&self, [i, j, k]: [usize; 3]) -> f64 {
        let longest = self.distance(i, j).max(self.distance(j, k)).max(self.distance(k, i));
        let area = self.area(i, j, k);
        if area.abs() > NEAR * longest * longest { area.signum() } else { 0.0 }
    }
}

/// A view keeps which way round any three marks run; pictures count y downwards, which turns all of them over.
fn check_order(picture: &Places, face: &Places) -> Result<(), MarkError> {
    let (mut agree, mut against) = (0_usize, vec![0_usize; face.0.len()]);
    for triple in triples(face.0.len()) {
        let same = picture.turn(triple) * face.turn(triple);
        agree += usize::from(same < 0.0);
        for mark in triple {
            against[mark] += usize::from(same > 0.0);
        }
    }
    if against.iter().all(|&count| count == 0) {
        return Ok(());
    }
    if agree == 0 {
        return Err(MarkError::Mirrored);
    }
    let mut worst: Vec<_> = (0..against.len()).collect();
    worst.sort_by_key(|&mark| std::cmp::Reverse(against[mark]));
    let marks = [worst[0].min(worst[1]), worst[0].max(worst[1])];
    Err(MarkError::Crossed { marks })
}

fn pairs(count: usize) -> impl Iterator<Item = (usize, usize)> {
    (0..count).flat_map(move |i| (i + 1..count).map(move |j| (i, j)))
}

fn triples(count: usize) -> impl Iterator<Item = [usize; 3]> {
    pairs(count).flat_map(move |(i, j)| (j + 1..count).map(move |k| [i, j, k]))
}
