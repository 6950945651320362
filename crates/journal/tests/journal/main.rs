//! The promise of `docs/journal-format.md`, clause by clause.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "in a test that is the message")]

mod accepting;
mod creating;
mod damage;
mod fixing;
mod format_1;
mod messages;
mod reading_an_end;
mod round_trip;
mod scene;
mod torn_end;
mod undoing;
mod writers;
