//! The crate against values from outside, against planted truth, and against bad input.
#![allow(clippy::unwrap_used, reason = "the functions that read fixtures are tests too")]

mod analysis_of_variance;
mod bad_input;
mod circle_probability;
mod directions;
mod distributions;
mod fixture;
mod harmonics;
mod mixed_models;
mod noncentral;
mod planted_mixed_models;
mod register;
mod samples;
mod shares;
mod spread;
mod tolerance;
mod worked_by_hand;
