//! A fresh folder that a test works in; it goes when the test ends.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use tempfile::TempDir;

use super::Run;

/// The journal that tests write, in their own folder.
pub const JOURNAL: &str = "evening.journal";

/// A fresh, empty folder.
pub struct Folder(TempDir);

impl Folder {
    pub fn new() -> Self {
        Self(TempDir::new().expect("a temporary folder"))
    }

    /// A folder in which a journal was begun for the shafts `shafts` and the reference R.
    pub fn begun(shafts: &str) -> Self {
        let folder = Self::new();
        folder
            .run(&format!("new {JOURNAL} --shafts {shafts} --reference R"))
            .args("--distance 18.3m --tolerance 25mm")
            .any_stdout()
            .check();
        folder
    }

    /// The folder of a journal begun for three shafts, with one end in it.
    pub fn with_an_end() -> Self {
        let folder = Self::begun("1-3");
        folder.enter(&json!({"evening": "2027-03-02", "at": "2027-03-02T17:00:00Z", "shots": [
            {"shaft": "R", "x_mm": 3, "y_mm": -12, "lean_x_deg": 0.5, "lean_y_deg": 0},
            {"shaft": "1", "x_mm": 31, "y_mm": 8, "lean_x_deg": -2.5, "lean_y_deg": 1},
            {"shaft": "2", "index_deg": 90, "x_mm": -4, "y_mm": 15},
        ]}));
        folder
    }

    /// Enters an end; its echo is the concern of another test.
    pub fn enter(&self, end: &Value) {
        self.run(&format!("end {JOURNAL} --json -")).stdin(&end.to_string()).any_stdout().check();
    }

    /// What the program says to do now.
    pub fn next(&self) -> Value {
        self.run(&format!("next {JOURNAL} --json")).json()
    }

    /// A run of the program in this folder; `arguments` are parted at blanks.
    pub fn run(&self, arguments: &str) -> Run {
        Run::new(self.path()).args(arguments)
    }

    pub fn path(&self) -> &Path {
        self.0.path()
    }

    pub fn file(&self, name: &str) -> PathBuf {
        self.path().join(name)
    }

    pub fn write(&self, name: &str, text: &str) {
        fs::write(self.file(name), text).expect("the file is written");
    }

    pub fn read(&self, name: &str) -> String {
        fs::read_to_string(self.file(name)).expect("the file is there and is text")
    }

    /// The names of everything in the folder, sorted.
    pub fn names(&self) -> Vec<String> {
        let entries = fs::read_dir(self.path()).expect("the folder is there");
        let mut names: Vec<_> =
            entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        names.sort();
        names
    }
}
