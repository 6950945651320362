//! Lengths in the unit a person likes, with no more digits than are known.

use quarterturn_geometry::{Millimetres, Offset};

use quarterturn_entry as list;
use quarterturn_entry::quantity::Unit;

/// Says lengths in one unit.
#[derive(Clone, Copy, Debug)]
pub struct Ruler {
    unit: &'static Unit,
}

impl Ruler {
    /// Says lengths in `unit`.
    pub const fn new(unit: &'static Unit) -> Self {
        Self { unit }
    }

    /// The unit that lengths are said in.
    pub const fn unit(self) -> &'static Unit {
        self.unit
    }

    /// A length as it was read off a tape: "31 mm", "31.5 mm", "1.25 in".
    pub fn read(self, length: Millimetres) -> String {
        let finest = if self.unit == Unit::INCH { 100.0 } else { 10.0 };
        let value = (self.unit.of_base(length.mm()) * finest).round() / finest;
        format!("{} {}", value + 0.0, self.unit.symbol)
    }

    /// A distance to the face: "18.3 m"; in yards for who reads inches.
    pub fn distance(self, distance: Millimetres) -> String {
        let (value, symbol) = if self.unit == Unit::INCH {
            (Unit::YARD.of_base(distance.mm()), Unit::YARD.symbol)
        } else {
            (distance.metres(), "m")
        };
        format!("{} {symbol}", (value * 100.0).round() / 100.0)
    }

    /// The number of an estimated length: whole millimetres, tenths of a centimetre or an inch.
    pub fn estimate_bare(self, length: Millimetres) -> String {
        let decimals = usize::from(self.unit != Unit::MILLIMETRE);
        let shown = format!("{:.decimals$}", self.unit.of_base(length.mm()));
        // A tiny negative length rounds to a minus zero.
        if shown.trim_start_matches('-').chars().all(|c| matches!(c, '0' | '.')) {
            shown.trim_start_matches('-').to_owned()
        } else {
            shown
        }
    }

    /// An estimated length: "31 mm", "3.1 cm".
    pub fn estimate(self, length: Millimetres) -> String {
        format!("{} {}", self.estimate_bare(length), self.unit.symbol)
    }

    /// A hit as it was read: "31 mm right, 8 mm high"; "on the spot" where there is nothing to say.
    pub fn hit(self, offset: Offset) -> String {
        let parts = sided(offset, [["right", "left"], ["high", "low"]], |length| self.read(length));
        if parts.is_empty() { "on the spot".to_owned() } else { parts.join(", ") }
    }

    /// Where a hit is expected: "31 mm right and 8 mm high"; "at the spot" where it rounds to nothing.
    pub fn hit_estimate(self, offset: Offset) -> String {
        let sides = [["right", "left"], ["high", "low"]];
        let parts = sided(offset, sides, |length| self.estimate(length));
        if parts.is_empty() { "at the spot".to_owned() } else { list::all(parts) }
    }

    /// An estimated miss: "8 mm right and 3 mm low of"; "level with" where it rounds to nothing.
    pub fn miss_of(self, offset: Offset) -> String {
        let sides = [["right", "left"], ["high", "low"]];
        let parts = sided(offset, sides, |length| self.estimate(length));
        if parts.is_empty() { "level with".to_owned() } else { format!("{} of", list::all(parts)) }
    }

    /// An estimated miss without its unit, for a column: "8 right, 3 low"; "0" where it rounds to nothing.
    pub fn miss_bare(self, offset: Offset) -> String {
        let sides = [["right", "left"], ["high", "low"]];
        let parts = sided(offset, sides, |length| self.estimate_bare(length));
        if parts.is_empty() { self.estimate_bare(Millimetres::ZERO) } else { parts.join(", ") }
    }

    /// A move to make: "8 mm left and 3 mm up".
    pub fn shift(self, offset: Offset) -> String {
        let sides = [["right", "left"], ["up", "down"]];
        let parts = sided(offset, sides, |length| self.estimate(length));
        if parts.is_empty() { "no way".to_owned() } else { list::all(parts) }
    }
}

/// The words for a positive and a negative component.
type Sides = [&'static str; 2];

/// Both components of a displacement, right or left first, without one that is said like nothing.
fn sided(offset: Offset, sides: [Sides; 2], say: impl Fn(Millimetres) -> String) -> Vec<String> {
    let nothing = say(Millimetres::ZERO);
    [offset.x_mm, offset.y_mm]
        .into_iter()
        .zip(sides)
        .map(|(mm, [positive, negative])| {
            (say(Millimetres::new(mm.abs())), if mm > 0.0 { positive } else { negative })
        })
        .filter(|(length, _)| *length != nothing)
        .map(|(length, side)| format!("{length} {side}"))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: Ruler = Ruler::new(Unit::MILLIMETRE);
    const CM: Ruler = Ruler::new(Unit::CENTIMETRE);
    const IN: Ruler = Ruler::new(Unit::INCH);

    #[test]
    fn what_was_read_comes_back_as_it_was_read() {
        assert_eq!(MM.hit(Offset::new(31.0, 8.0)), "31 mm right, 8 mm high");
        assert_eq!(MM.hit(Offset::new(-31.5, -8.0)), "31.5 mm left, 8 mm low");
        assert_eq!(CM.hit(Offset::new(0.0, -80.0)), "8 cm low");
        assert_eq!(IN.hit(Offset::new(31.75, 0.0)), "1.25 in right");
        assert_eq!(MM.hit(Offset::ZERO), "on the spot");
    }

    #[test]
    fn distances_are_said_as_people_pace_them() {
        assert_eq!(MM.distance(Millimetres::new(18_300.0)), "18.3 m");
        assert_eq!(IN.distance(Millimetres::new(18_288.0)), "20 yd");
    }

    #[test]
    fn a_column_of_misses_needs_no_units() {
        assert_eq!(MM.miss_bare(Offset::new(12.4, -3.4)), "12 right, 3 low");
        assert_eq!(CM.miss_bare(Offset::new(-12.4, 0.2)), "1.2 left");
        assert_eq!(IN.miss_bare(Offset::new(0.4, 25.4)), "1.0 high");
        assert_eq!(MM.miss_bare(Offset::new(0.4, -0.4)), "0");
    }

    #[test]
    fn estimates_have_few_digits() {
        let offset = Offset::new(12.44, -0.3);
        assert_eq!(MM.miss_of(offset), "12 mm right of");
        assert_eq!(CM.miss_of(offset), "1.2 cm right of");
        assert_eq!(IN.shift(Offset::new(12.7, -5.0)), "0.5 in right and 0.2 in down");
        assert_eq!(MM.miss_of(Offset::new(0.2, -0.3)), "level with");
        assert_eq!(MM.estimate_bare(Millimetres::new(-0.2)), "0");
        assert_eq!(CM.estimate_bare(Millimetres::new(-0.2)), "0.0");
    }
}
