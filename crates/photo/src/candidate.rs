//! What looks like a photo mark: a dot in a white disc in a black ring, all about one middle.

use nalgebra::{Matrix2, Vector2};

use crate::Dot;
use crate::oval::Oval;
use crate::region::{Of, Region};

/// A white disc of fewer pixels shows no dot.
const LEAST_AREA: f64 = 45.0;
/// Seen so slantwise that it is this many times as long as wide, a mark tells little.
const LONGEST: f64 = 4.0;
/// How much an oval's area may differ from that of an ellipse.
const UNFULL: f64 = 0.07;
/// How far the dot may be off the middle, in radii of the white disc.
const OFF_MIDDLE: f64 = 0.15;
/// The share of the dark specks in the white that the dot must be.
const MOSTLY: f64 = 0.8;
/// Places round about at which the ring and the paper beyond it are looked at.
const PLACES: usize = 32;
/// Of these so many must be black in the ring, and white beyond it, where grid lines run and arrows stand.
const RING: f64 = 0.9;
const BEYOND: f64 = 0.5;

/// A mark, perhaps: where it is and how it lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Candidate {
    /// Its middle, px.
    pub middle: Vector2<f64>,
    /// The spread of its white disc, dot and all, px².
    pub spread: Matrix2<f64>,
    /// The share of the white disc that its dot takes.
    pub share: f64,
}

/// All that look like a mark, where `ink` is a picture of this width that was parted into these regions.
pub(crate) fn candidates(regions: &[Region], ink: &[bool], width: usize) -> Vec<Candidate> {
    let of_dot = |dot: &Region| {
        let white = &regions[dot.around.filter(|_| dot.of == Of::Ink)?];
        white.around?;
        Candidate::of(dot, white).filter(|one| one.is_in_a_ring(ink, width))
    };
    regions.iter().filter_map(of_dot).collect()
}

impl Candidate {
    fn of(dot: &Region, white: &Region) -> Option<Self> {
        let disc = white.oval.and(white.within);
        let is_dot = dot.oval.area >= MOSTLY * white.within.area;
        if disc.area < LEAST_AREA || !is_dot || !is_oval(disc) {
            return None;
        }
        let (middle, spread) = (disc.middle(), disc.spread());
        let off = dot.oval.middle() - middle;
        // Of a disc of radius r the spread is r²/4.
        let off_radii_2 = off.dot(&(spread.try_inverse()? * off)) / 4.0;
        let share = white.within.area / disc.area;
        (off_radii_2 < OFF_MIDDLE * OFF_MIDDLE).then_some(Self { middle, spread, share })
    }

    /// The dot in it, where it is one of ours.
    pub fn dot(&self) -> Option<Dot> {
        Dot::of_share(self.share)
    }

    /// Whether a black ring lies round about.
    fn is_in_a_ring(&self, ink: &[bool], width: usize) -> bool {
        let middle_mm = f64::midpoint(Dot::WHITE.mm(), Dot::MARK.mm());
        self.share_of_ink(middle_mm / Dot::WHITE.mm(), ink, width) >= RING
    }

    /// Whether mostly paper lies round the ring.
    pub fn is_on_paper(&self, ink: &[bool], width: usize) -> bool {
        let beyond_mm = Dot::MARK.mm() + 0.9;
        self.share_of_ink(beyond_mm / Dot::WHITE.mm(), ink, width) <= 1.0 - BEYOND
    }

    /// The share of ink on the ellipse `radii` times as large as the white disc; what is outside the picture is none.
    fn share_of_ink(&self, radii: f64, ink: &[bool], width: usize) -> f64 {
        let Some(root) = self.spread.cholesky() else { return 0.0 };
        let place = |k: usize| {
            let (sin, cos) = (k as f64 / PLACES as f64 * std::f64::consts::TAU).sin_cos();
            let at = self.middle + root.l() * Vector2::new(cos, sin) * 2.0 * radii;
            let [x, y] = [pixel(at.x)?, pixel(at.y)?];
            (x < width).then(|| ink.get(y * width + x).copied())?
        };
        let black = (0..PLACES).filter(|&k| place(k) == Some(true)).count();
        black as f64 / PLACES as f64
    }

    /// The same where the picture was cut off this far to the left and above.
    pub fn moved(self, x: usize, y: usize) -> Self {
        Self { middle: self.middle + Vector2::new(x as f64, y as f64), ..self }
    }

    /// The same in a picture `by` times as large.
    pub fn enlarged(self, by: usize) -> Self {
        let by = by as f64;
        let middle = self.middle * by + Vector2::repeat((by - 1.0) / 2.0);
        Self { middle, spread: self.spread * (by * by), ..self }
    }

    /// Whether it is the same mark as `other`, seen once more.
    pub fn is_at(&self, other: &Self) -> bool {
        (self.middle - other.middle).norm() < other.radius() / 2.0
    }

    /// The larger radius of its white disc, px.
    pub fn radius(&self) -> f64 {
        2.0 * self.spread.trace().sqrt()
    }
}

/// Whether it is an ellipse that is not too long.
fn is_oval(oval: Oval) -> bool {
    let spread = oval.spread();
    let (half_trace, determinant) = (spread.trace() / 2.0, spread.determinant());
    let apart = (half_trace * half_trace - determinant).max(0.0).sqrt();
    let is_long = half_trace + apart > LONGEST * LONGEST * (half_trace - apart);
    (oval.fullness() - 1.0).abs() < UNFULL && !is_long
}

/// The pixel in which a coordinate lies.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "it is not negative")]
fn pixel(coordinate: f64) -> Option<usize> {
    let rounded = coordinate.round();
    (0.0..1e6).contains(&rounded).then_some(rounded as usize)
}
