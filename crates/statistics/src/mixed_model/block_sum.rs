//! The sum of one block's rows.

use super::rows::Rows;

/// The sum of a block's rows over the columns that are not zero in all of them.
pub struct BlockSum<'a> {
    rows: &'a Rows,
    /// The levels in the block, in the order in which they come.
    levels: Vec<usize>,
    /// Where each level of the design stands in `levels`, or [`NOWHERE`].
    places: Vec<usize>,
    pub columns: Vec<usize>,
    pub values: Vec<f64>,
}

const NOWHERE: usize = usize::MAX;

impl<'a> BlockSum<'a> {
    pub fn new(rows: &'a Rows) -> Self {
        let places = vec![NOWHERE; rows.levels.count];
        Self { rows, levels: vec![], places, columns: vec![], values: vec![] }
    }

    /// Sums the rows of `block` in place of what was there.
    pub fn fill(&mut self, block: &[usize]) {
        self.place(block);
        let (rows, levels) = (self.rows, self.levels.len());
        self.values.clear();
        self.values.resize(self.columns.len(), 0.0);
        let (random, fixed) = self.values.split_at_mut(rows.coefficients * levels);
        for &row in block {
            let covariates = rows.covariates_of(row);
            let place = self.places[rows.levels.of_row[row]];
            for (covariate, value) in covariates[..rows.coefficients].iter().enumerate() {
                random[covariate * levels + place] += value;
            }
            let fixed = fixed.iter_mut().zip(&covariates[rows.coefficients..]);
            fixed.for_each(|(sum, value)| *sum += value);
        }
    }

    /// Finds the columns: those of each random covariate at the block's levels, then the fixed ones.
    fn place(&mut self, block: &[usize]) {
        let rows = self.rows;
        self.levels.drain(..).for_each(|level| self.places[level] = NOWHERE);
        for &row in block {
            let level = rows.levels.of_row[row];
            if self.places[level] == NOWHERE {
                self.places[level] = self.levels.len();
                self.levels.push(level);
            }
        }
        self.columns.clear();
        for covariate in 0..rows.coefficients {
            let first = covariate * rows.levels.count;
            self.columns.extend(self.levels.iter().map(|level| first + level));
        }
        self.columns.extend(rows.all_coefficients()..rows.width());
    }
}
