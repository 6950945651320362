//! Where a shaft is cut, and at which end.

use quarterturn_geometry::Millimetres;

use crate::BenchError;

/// Two ends that differ by less are equally crooked: a feeler gauge tells no more.
pub const ENDS_ALIKE: Millimetres = Millimetres::new(0.05);

/// What a cut takes beside what is left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Saw {
    /// How wide it cuts.
    pub kerf: Millimetres,
    /// What is left on for squaring the end after the cut.
    pub squaring: Millimetres,
}

/// How crooked the ends of a shaft are, where that was measured.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct CrookedEnds {
    /// At the point.
    pub point: Option<Millimetres>,
    /// At the nock.
    pub nock: Option<Millimetres>,
}

/// What comes off one end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trim {
    /// How much, squaring included.
    pub off: Millimetres,
    /// How far from the end the near edge of the cut lies: where the stop is set. None where so little comes off that it
    /// is squared away.
    pub stop: Option<Millimetres>,
}

/// What comes off a shaft.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct CutPlan {
    /// At the point.
    pub point: Option<Trim>,
    /// At the nock.
    pub nock: Option<Trim>,
}

impl CutPlan {
    /// How a shaft of `length` comes to `target`.
    ///
    /// # Formula
    /// d = length − target comes off. Where one end is more crooked than the other by [`ENDS_ALIKE`] all of it comes off
    /// there; else half of it off each end, if each half holds kerf k and squaring s; else all off the point's end. The
    /// cut's edge on the side of the shaft lies d − s from the end, its other edge, where a stop is set, d − s − k.
    /// # Errors
    /// [`BenchError::TooShort`] where the shaft is shorter than the target, [`BenchError::NotAboveZero`] for a negative
    /// kerf or squaring, or a length that is none.
    /// # Source
    /// That the middle of a shaft is the most uniform, and that taking the crooked end off or something off both is better
    /// than all off one: common practice.
    pub fn of(
        length: Millimetres,
        target: Millimetres,
        saw: Saw,
        crooked: CrookedEnds,
    ) -> Result<Self, BenchError> {
        for value in [length, target] {
            crate::error::above_zero(value.mm())?;
        }
        for value in [saw.kerf, saw.squaring] {
            if !(0.0..f64::INFINITY).contains(&value.mm()) {
                return Err(BenchError::NotAboveZero { value: value.mm() });
            }
        }
        let off = length - target;
        if off < Millimetres::ZERO {
            return Err(BenchError::TooShort { length, target });
        }
        Ok(saw.plan(off, crooked))
    }
}

impl Saw {
    fn plan(self, off: Millimetres, crooked: CrookedEnds) -> CutPlan {
        let half = off * 0.5;
        let worse = match (crooked.point, crooked.nock) {
            (Some(point), Some(nock)) if point - nock > ENDS_ALIKE => Some(End::Point),
            (Some(point), Some(nock)) if nock - point > ENDS_ALIKE => Some(End::Nock),
            _ => None,
        };
        match worse {
            _ if off == Millimetres::ZERO => CutPlan::default(),
            Some(End::Nock) => CutPlan { point: None, nock: Some(self.trim(off)) },
            None if half >= self.kerf + self.squaring => {
                CutPlan { point: Some(self.trim(half)), nock: Some(self.trim(half)) }
            }
            Some(End::Point) | None => CutPlan { point: Some(self.trim(off)), nock: None },
        }
    }

    fn trim(self, off: Millimetres) -> Trim {
        let stop = off - self.squaring - self.kerf;
        Trim { off, stop: (stop >= Millimetres::ZERO).then_some(stop) }
    }
}

/// An end of a shaft.
enum End {
    Point,
    Nock,
}
