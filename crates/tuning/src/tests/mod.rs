//! Checks of the crate as a whole; `fixtures/tuning` holds what comes from outside.

mod finished_shots;
pub mod journal;
mod planted;

mod advice;
mod axes;
mod bow;
mod calibration;
mod changes;
mod common_point;
mod course;
mod dense_posterior;
mod doubts;
mod far_off;
mod heads;
mod hints;
mod improbable;
mod lean_relation;
mod left_out;
mod next_end;
mod nock;
mod observations;
mod old_shots;
mod pairs;
mod pause;
mod planted_truth;
mod points;
mod positions;
mod reach;
mod response;
mod roster;
mod signs;
mod simulated_archer;
mod standing_out;
mod verdicts;
mod verify;
mod worked_examples;
