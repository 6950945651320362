//! The JSON of commands that write files.

use std::path::PathBuf;

use serde::Serialize;

use super::line;
use crate::failure::Failure;

#[derive(Serialize)]
struct Written {
    schema: &'static str,
    files: Vec<String>,
}

/// The files that were written.
pub fn written(files: &[PathBuf]) -> Result<String, Failure> {
    let files = files.iter().map(|file| file.display().to_string()).collect();
    line(&Written { schema: "quarterturn.written/1", files })
}
