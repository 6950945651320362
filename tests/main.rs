//! Acceptance tests: everything here runs the built program and looks only at what comes out of it.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "in a test that is the message")]

mod archer;
mod support;
