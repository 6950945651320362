//! The sum of one block's rows.

use super::rows::Rows;

/// The sum of a block's rows over the columns that are not zero in all of them, in rising order.
pub struct BlockSum<'a> {
    rows: &'a Rows,
    levels: Vec<usize>,
    pub columns: Vec<usize>,
    pub values: Vec<f64>,
}

impl<'a> BlockSum<'a> {
    pub fn new(rows: &'a Rows) -> Self {
        Self { rows, levels: vec![], columns: vec![], values: vec![] }
    }

    /// Sums the rows of `block` in place of what was there.
    pub fn fill(&mut self, block: &[usize]) {
        self.place(block);
        let (rows, own) = (self.rows, self.rows.coefficients * self.levels.len());
        self.values.clear();
        self.values.resize(self.columns.len(), 0.0);
        for &row in block {
            let (random, fixed) = rows.covariates_of(row).split_at(rows.coefficients);
            let first = self.levels.partition_point(|&other| other < rows.levels.of_row[row]);
            for (covariate, value) in random.iter().enumerate() {
                self.values[first + covariate * self.levels.len()] += value;
            }
            self.values[own..].iter_mut().zip(fixed).for_each(|(sum, value)| *sum += value);
        }
    }

    /// Finds the columns: those of each random covariate at the block's levels, then the fixed ones.
    fn place(&mut self, block: &[usize]) {
        let rows = self.rows;
        self.levels.clear();
        self.levels.extend(block.iter().map(|&row| rows.levels.of_row[row]));
        self.levels.sort_unstable();
        self.levels.dedup();
        self.columns.clear();
        for covariate in 0..rows.coefficients {
            let first = covariate * rows.levels.count;
            self.columns.extend(self.levels.iter().map(|level| first + level));
        }
        self.columns.extend(rows.all_coefficients()..rows.width());
    }
}
