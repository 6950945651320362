//! Acceptance tests: everything here runs the built program and looks only at what comes out of it.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "in a test that is the message")]

mod aim;
mod archer;
mod bad_inputs;
mod bench;
mod bow;
mod check;
mod crates;
mod demo;
mod documents;
mod end;
mod errors;
mod exchange;
mod exit_codes;
mod fix;
mod fixtures;
mod fletch;
mod gallery;
mod heads;
mod hints;
mod kills;
mod limits;
mod log;
mod new;
mod next;
mod note;
mod odd_inputs;
mod paper;
mod plot;
mod practice;
mod purity;
mod quiver;
mod reach;

mod rehearse;
mod repair;
mod report;
mod schema;
mod shaft;
mod show;
mod support;
mod tidy;
mod undo;
mod verify;
mod writers;
