//! Acceptance tests: everything here runs the built program and looks only at what comes out of it.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "in a test that is the message")]

mod aim;
mod archer;
mod bad_inputs;
mod bow;
mod demo;
mod end;
mod errors;
mod exchange;
mod exit_codes;
mod fix;
mod fixtures;
mod hints;
mod limits;
mod log;
mod new;
mod next;
mod note;
mod odd_inputs;
mod plot;
mod practice;
mod purity;
mod readme;
mod rehearse;
mod schema;
mod shaft;
mod show;
mod support;
mod tidy;
mod undo;
