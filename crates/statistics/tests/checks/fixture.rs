//! Reads the tables under fixtures/statistics.

use std::path::PathBuf;

/// A table of comma-separated values: lines starting with # name the source, the next one the columns.
pub struct Fixture {
    headings: Vec<String>,
    /// The cells, line by line; never empty.
    pub rows: Vec<Vec<String>>,
}

/// One cell of a two-way table.
pub struct Cell {
    /// What its line begins with.
    pub row: f64,
    /// The number in its column's heading.
    pub column: f64,
    /// What it holds.
    pub value: f64,
}

pub fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../fixtures/statistics")
}

impl Fixture {
    pub fn read(name: &str) -> Self {
        let text = std::fs::read_to_string(folder().join(name)).unwrap();
        assert!(text.starts_with("# "), "{name} names no source");
        let mut lines = text.lines().filter(|line| !line.starts_with('#')).map(cells);
        let headings = lines.next().unwrap();
        let rows: Vec<_> = lines.collect();
        assert!(!rows.is_empty(), "{name} is empty");
        assert!(rows.iter().all(|row| row.len() == headings.len()), "{name} is ragged");
        Self { headings, rows }
    }

    pub fn numbers(&self) -> Vec<Vec<f64>> {
        self.rows.iter().map(|row| row.iter().map(|cell| cell.parse().unwrap()).collect()).collect()
    }

    pub fn two_way(&self) -> Vec<Cell> {
        let columns: Vec<f64> =
            self.headings[1..].iter().map(|heading| trailing(heading)).collect();
        let lines = self.numbers().into_iter();
        lines
            .flat_map(|line| {
                let cells = columns.iter().zip(line[1..].to_vec()).collect::<Vec<_>>();
                cells.into_iter().map(move |(&column, value)| Cell { row: line[0], column, value })
            })
            .collect()
    }
}

fn cells(line: &str) -> Vec<String> {
    line.split(',').map(str::to_owned).collect()
}

/// The number at the end of `d=0.25`, `K_0.90` or `0.975`.
fn trailing(heading: &str) -> f64 {
    heading.rsplit(['=', '_']).next().unwrap().parse().unwrap()
}
