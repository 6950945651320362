//! Acceptance tests: everything here runs the built program and looks only at what comes out of it.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "in a test that is the message")]

mod aim;
mod archer;
mod bad_inputs;
mod bow;
mod check;
mod crates;
mod demo;
mod end;
mod errors;
mod exit_codes;
mod fixtures;
mod hints;
mod kills;
mod limits;
mod new;
mod next;
mod paper;
mod plot;
mod practice;
mod purity;
mod readme;
mod rehearse;
mod repair;
mod report;
mod schema;
mod shaft;
mod show;
mod support;
mod tidy;
mod undo;
mod writers;
