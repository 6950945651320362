//! The crate against values from outside, against planted truth, and against bad input.
#![allow(clippy::unwrap_used, reason = "the functions that read fixtures are tests too")]

mod adjusted_p_values;
mod analysis_of_variance;
mod bad_input;
mod bad_points;
mod circle_probability;
mod directions;
mod distributions;
mod fixture;
mod group_values;
mod groups;
mod harmonics;
mod levels;
mod means;
mod messages;
mod mixed_models;
mod noncentral;
mod outliers;
mod planted_mixed_models;
mod register;
mod robust;
mod samples;
mod shared_turn;
mod shares;
mod spread;
mod spread_tests;
mod tolerance;
mod worked_by_hand;
mod worked_examples;
