//! Reads what other programs found in invented groups of points.

use nalgebra::Vector2;
use quarterturn_statistics::PlanarSample;

use crate::fixture::Fixture;

/// One value for each case and quantity.
pub struct Values(Vec<Vec<String>>);

impl Values {
    pub fn read() -> Self {
        Self(Fixture::read("group_values.csv").rows)
    }

    #[track_caller]
    pub fn of(&self, case: &str, quantity: &str) -> f64 {
        let row = self.0.iter().find(|row| row[0] == case && row[1] == quantity);
        row.unwrap_or_else(|| panic!("no {quantity} of {case}"))[2].parse().unwrap()
    }
}

/// The points of a group.
pub fn group(name: &str) -> PlanarSample {
    let rows = Fixture::read("group_points.csv").rows;
    let number = |text: &String| -> f64 { text.parse().unwrap() };
    let own = rows.iter().filter(|row| row[0] == name);
    let points = own.map(|row| Vector2::new(number(&row[1]), number(&row[2])));
    PlanarSample::new(points.collect()).unwrap()
}
