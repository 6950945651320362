//! Where an arrow hit, by the pixel of its hole.

use std::f64::consts::{PI, TAU};

use quarterturn_entry::pixels::TypedHole;
use quarterturn_geometry::{Millimetres, Offset, Pixel, Point};
use quarterturn_journal::ShotEntry;

use super::{PhotoView, Tail};

/// The middle of a torn hole is told to this, along each axis; common practice.
const HOLE_MM: f64 = 1.0;

/// A hit, and how well it is known.
pub struct Hit {
    /// The shot, with its hit in it.
    pub shot: ShotEntry,
    /// The pixel of its hole.
    pub pixel: Pixel,
    /// Where it hit.
    pub point: Point,
    /// The standard deviation of that along each axis.
    pub read_sd: Millimetres,
    /// Where it is among the marks.
    pub among: Among,
    /// Its tail, where that was read in the picture.
    pub tail: Option<Tail>,
}

/// Where a hit is among the marks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Among {
    /// Between them.
    Inside,
    /// Beyond all of them on one side, where the view is drawn out and less is known.
    Outside,
}

impl Hit {
    /// The same arrow with its tail, whose lean goes into the shot.
    #[must_use]
    pub fn with(mut self, tail: Option<Tail>) -> Self {
        if let Some(tail) = &tail {
            self.shot.lean_x_deg = Some(tail.lean.x.degrees());
            self.shot.lean_y_deg = Some(tail.lean.y.degrees());
            self.shot.lean_sd_deg = Some(tail.lean_sd.degrees());
        }
        self.tail = tail;
        self
    }
}

/// The hits of these holes, or the number of the first whose pixel shows no place on the face.
pub fn hits(photo: &PhotoView, holes: &[TypedHole]) -> Result<Vec<Hit>, usize> {
    let of_hole = |(n, hole): (usize, &TypedHole)| hit(photo, hole).ok_or(n);
    holes.iter().enumerate().map(of_hole).collect()
}

fn hit(photo: &PhotoView, hole: &TypedHole) -> Option<Hit> {
    let seen = photo.view.point_at(hole.pixel)?;
    let covariance_mm2 = photo.view.covariance_mm2(hole.pixel, photo.reading.px())?;
    let variance_mm2 = covariance_mm2.trace() / 2.0 + HOLE_MM * HOLE_MM;
    // What is written has no more digits than make sense.
    let point = Point::new(rounded(seen.x_mm, 100.0), rounded(seen.y_mm, 100.0));
    let read_sd = Millimetres::new(rounded(variance_mm2.sqrt(), 10.0));
    let shot = ShotEntry {
        x_mm: Some(point.x_mm),
        y_mm: Some(point.y_mm),
        read_sd_mm: Some(read_sd.mm()),
        ..hole.shot.clone()
    };
    let among = among(photo.marks.iter().map(|mark| mark.point - seen));
    Some(Hit { shot, pixel: hole.pixel, point, read_sd, among, tail: None })
}

pub(super) fn rounded(value: f64, parts: f64) -> f64 {
    (value * parts).round() / parts + 0.0
}

/// A point is outside where all marks can be seen from it within half a turn.
fn among(ways: impl Iterator<Item = Offset>) -> Among {
    let mut angles: Vec<f64> = ways.map(|way| way.clock_angle().radians()).collect();
    angles.sort_by(f64::total_cmp);
    let next = angles.iter().cycle().skip(1);
    let gaps = angles.iter().zip(next).map(|(one, next)| (next - one).rem_euclid(TAU));
    if gaps.fold(0.0, f64::max) > PI { Among::Outside } else { Among::Inside }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn outside_is_beyond_all_marks_on_one_side() {
        let corners = [(-83.0, 83.0), (83.0, 83.0), (83.0, -83.0), (-83.0, -83.0)];
        let at = |x_mm: f64, y_mm: f64| {
            among(corners.iter().map(|(x, y)| Offset::new(x - x_mm, y - y_mm)))
        };
        for inside in [(0.0, 0.0), (80.0, -80.0), (-82.0, 5.0)] {
            assert_eq!(at(inside.0, inside.1), Among::Inside, "{inside:?}");
        }
        for outside in [(84.0, 0.0), (0.0, -200.0), (90.0, 90.0)] {
            assert_eq!(at(outside.0, outside.1), Among::Outside, "{outside:?}");
        }
    }
}
