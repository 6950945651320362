//! Where a person would put the lines of a grid.

use quarterturn_geometry::Millimetres;

use quarterturn_entry::quantity::Unit;

/// Steps that are easy to count in on a rule with inches.
const INCHES: [f64; 11] = [0.25, 0.5, 1.0, 2.0, 3.0, 6.0, 12.0, 24.0, 36.0, 60.0, 120.0];
/// Steps within a power of ten that are easy to count in.
const TENTHS: [f64; 4] = [1.0, 2.0, 5.0, 10.0];
/// A step this much too small for its room still fits; it is what rounding leaves.
const ROUNDING: f64 = 1e-9;

/// Evenly spaced lines to both sides of the middle.
#[derive(Clone, Copy, Debug)]
pub struct Ticks {
    /// From one line to the next.
    pub step: Millimetres,
    unit: &'static Unit,
}

impl Ticks {
    /// Lines at least `at_least` apart, at values that are round in `unit`.
    pub fn new(unit: &'static Unit, at_least: Millimetres) -> Self {
        let wanted = unit.of_base(at_least.mm()) * (1.0 - ROUNDING);
        let tens = 10_f64.powf(wanted.log10().floor());
        let round = TENTHS.map(|tenths| tenths * tens);
        let steps: &[f64] = if unit == Unit::INCH { &INCHES } else { &round };
        let step = steps.iter().copied().find(|&step| step >= wanted).unwrap_or(wanted);
        Self { step: Millimetres::new(unit.to_base(step)), unit }
    }

    /// The lines up to `half_width` to both sides, from the lowest.
    pub fn within(self, half_width: Millimetres) -> impl Iterator<Item = Millimetres> {
        let most = (half_width / self.step * (1.0 + ROUNDING)).floor();
        let lines = std::iter::successors(Some(-most), move |&n| (n < most).then_some(n + 1.0));
        lines.map(move |n| self.step * n)
    }

    /// How far from the middle a line is, with no more decimals than it has.
    pub fn name(self, line: Millimetres) -> String {
        let value = self.unit.of_base(line.mm().abs());
        format!("{}", (value * 1000.0).round() / 1000.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn step(unit: &'static Unit, at_least_mm: f64) -> String {
        let ticks = Ticks::new(unit, Millimetres::new(at_least_mm));
        ticks.name(ticks.step)
    }

    #[test]
    fn steps_are_round_in_the_unit_of_the_reader() {
        assert_eq!(step(Unit::MILLIMETRE, 10.0), "10");
        assert_eq!(step(Unit::MILLIMETRE, 11.0), "20");
        assert_eq!(step(Unit::CENTIMETRE, 11.0), "2");
        assert_eq!(step(Unit::CENTIMETRE, 1.7), "0.2");
        assert_eq!(step(Unit::INCH, 11.0), "0.5");
        assert_eq!(step(Unit::INCH, 60.0), "3");
    }

    #[test]
    fn lines_lie_on_both_sides_of_the_middle() {
        let ticks = Ticks::new(Unit::CENTIMETRE, Millimetres::new(15.0));
        let names: Vec<String> =
            ticks.within(Millimetres::new(45.0)).map(|line| ticks.name(line)).collect();
        assert_eq!(names, ["4", "2", "0", "2", "4"]);
    }
}
