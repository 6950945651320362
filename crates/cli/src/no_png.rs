//! What stands in the place of PNG in a program that was built without it.

use crate::failure::{Failure, Kind};

/// Says how to come to one.
///
/// # Errors
/// Always.
pub fn png(_svg: &str) -> Result<Vec<u8>, Failure> {
    Err(Failure::new(Kind::Usage, "this program was built without PNG").hinting([
        "an SVG opens in every browser, which prints it or saves it as PDF: -o picture.svg",
        "or build the program with it: cargo install --path crates/cli --features png",
    ]))
}
