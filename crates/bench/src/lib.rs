//! The arithmetic of the workshop: mass, balance, spine, energy, matched shafts, cuts, and where the vanes go.
//!
//! Pure functions on what household tools measure. Lengths and masses are types, any other number carries its unit in
//! its name, and what cannot be is refused with a [`BenchError`].
//!
//! | function | source | check |
//! |---|---|---|
//! | [`Grains`] | the pound of 1959, 7000 grains | NIST SP 811 |
//! | [`kinetic_energy_j`], [`momentum_n_s`] | elementary mechanics | by slugs and feet in exact fractions |
//! | [`front_of_centre_percent`] | the AMO method | worked examples |
//! | [`grains_per_pound`] | its own definition | class rules |
//! | [`SpineStandard::convert`] | a beam on two supports, Gere and Timoshenko 1997 | the trade's factor |
//! | [`SpineRound`] | its own definition | planted shafts |
//! | [`end_tilt`], [`point_throw`] | plane geometry | small angles; the exact sine |
//! | [`CutPlan::of`] | common practice | by hand; what is left is the target |
//! | [`standing_apart`] | Iglewicz and Hoaglin 1993 | by hand; planted outliers |
//! | [`best_subset`] | exact search over boxes | every subset |
//! | [`Vanes::from_mark`] | the clock of the [conventions](quarterturn_geometry#conventions) | a shaft that is turned |
//!
//! # Example
//! ```
//! use quarterturn_bench::{Grains, front_of_centre_percent, kinetic_energy_j, JOULES_PER_FOOT_POUND};
//! use quarterturn_geometry::Millimetres;
//!
//! let parts = [310.0, 15.0, 100.0, 25.0].map(Grains::new).into_iter().collect::<Result<Vec<_>, _>>()?;
//! let arrow: Grains = parts.into_iter().sum();
//! assert_eq!(arrow.to_string(), "450 gr");
//! let energy_j = kinetic_energy_j(arrow, 79.248); // 260 feet a second
//! assert_eq!(format!("{:.1} ft·lbf", energy_j / JOULES_PER_FOOT_POUND), "67.5 ft·lbf");
//! let forward = front_of_centre_percent(Millimetres::from_inches(28.5), Millimetres::from_inches(18.0))?;
//! assert_eq!(format!("{forward:.1} %"), "13.2 %");
//! # Ok::<(), quarterturn_bench::BenchError>(())
//! ```

mod apart;
mod best_subset;
mod cut_plan;
mod energy;
mod error;
mod front_of_centre;
mod grains;
mod grains_per_pound;
mod point_throw;
mod spine_round;
mod spine_standard;
#[cfg(test)]
mod tests;
#[cfg(test)]
mod tolerance;
mod vanes;

pub use apart::{Apart, FEWEST, standing_apart};
pub use best_subset::{BestSubset, Measure, Wanted, best_subset};
pub use cut_plan::{CrookedEnds, CutPlan, ENDS_ALIKE, Saw, Trim};
pub use energy::{
    JOULES_PER_FOOT_POUND, NEWTON_SECONDS_PER_SLUG_FOOT, kinetic_energy_j, momentum_n_s,
};
pub use error::BenchError;
pub use front_of_centre::front_of_centre_percent;
pub use grains::Grains;
pub use grains_per_pound::grains_per_pound;
pub use point_throw::{end_tilt, point_throw};
pub use spine_round::{FEWEST_READINGS, LEAST_SPREAD, SpineReading, SpineRound};
pub use spine_standard::SpineStandard;
pub use vanes::Vanes;
