//! The promise of `docs/journal-format.md`, clause by clause.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "in a test that is the message")]

mod accepting;
mod checking;
mod clocks;
mod creating;
mod damage;
mod fixing;
mod format_1;
mod gluing;
mod grouping;
mod long_journals;
mod messages;
mod power_cuts;
mod quivering;
mod reading_an_end;
mod repairing;
mod round_trip;
mod scene;
mod simulated;
mod surgery;
mod torn_end;
mod undoing;
mod whole_files;
mod workshop;
mod writers;
