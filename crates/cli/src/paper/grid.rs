//! The grid that hits are read off.

use quarterturn_geometry::Millimetres;

use quarterturn_entry::quantity::Unit;

/// No face has more lines to one side.
const MOST: u16 = 1000;

/// A square grid, every so many lines a bold one with its number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grid {
    unit: &'static Unit,
    step_mm: f64,
    bold_every: u16,
}

impl Grid {
    /// Centimetres, the fifth bold.
    pub const CENTIMETRES: Self = Self { unit: Unit::CENTIMETRE, step_mm: 10.0, bold_every: 5 };
    /// Half inches, every two inches bold.
    pub const INCHES: Self = Self { unit: Unit::INCH, step_mm: 12.7, bold_every: 4 };

    /// The lines up to `reach` from the middle on one side, the middle one included: how far out, and the number of a bold
    /// one.
    pub fn lines(self, reach: Millimetres) -> Vec<(Millimetres, Option<String>)> {
        let number = |n: u16| {
            let out = Millimetres::new(f64::from(n) * self.step_mm);
            let name = n
                .is_multiple_of(self.bold_every)
                .then(|| format!("{}", self.unit.of_base(out.mm())));
            (out, name)
        };
        (0..=MOST).map(number).take_while(|(out, _)| *out <= reach).collect()
    }

    /// "1 cm".
    pub fn step(self) -> String {
        format!("{} {}", self.unit.of_base(self.step_mm), self.unit.symbol)
    }
}
