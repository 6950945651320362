//! Plain tables: columns as wide as their widest cell.

/// A heading and rows of cells.
#[derive(Debug)]
pub struct Table<const COLUMNS: usize> {
    rows: Vec<[String; COLUMNS]>,
}

impl<const COLUMNS: usize> Table<COLUMNS> {
    /// A table with its heading.
    pub fn new(heading: [&str; COLUMNS]) -> Self {
        Self { rows: vec![heading.map(str::to_owned)] }
    }

    /// Adds a row.
    pub fn row(&mut self, cells: [String; COLUMNS]) {
        self.rows.push(cells);
    }

    /// The lines of the table, the heading first, two blanks between columns and none at the end.
    pub fn lines(&self) -> impl Iterator<Item = String> {
        let widths = self.widths();
        self.rows.iter().map(move |cells| {
            let padded = cells.iter().zip(widths).map(|(cell, width)| format!("{cell:width$}"));
            padded.collect::<Vec<_>>().join("  ").trim_end().to_owned()
        })
    }

    fn widths(&self) -> [usize; COLUMNS] {
        self.rows.iter().fold([0; COLUMNS], |mut widths, cells| {
            for (width, cell) in widths.iter_mut().zip(cells) {
                *width = (*width).max(cell.chars().count());
            }
            widths
        })
    }
}

#[cfg(test)]
mod tests {
    use super::Table;

    #[test]
    fn columns_line_up() {
        let mut table = Table::new(["shaft", "mark"]);
        table.row(["7".to_owned(), "3 o'clock".to_owned()]);
        let lines: Vec<String> = table.lines().collect();
        assert_eq!(lines, ["shaft  mark", "7      3 o'clock"]);
    }
}
