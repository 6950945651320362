//! The sum of one block's rows.

/// A sum of sparse vectors, as sparse as they are together.
pub struct BlockSum {
    /// The sum so far in each column, if any.
    sums: Vec<Option<f64>>,
    /// The columns that have one, in the order in which they came.
    columns: Vec<usize>,
    /// What stands in these columns, once it is asked for.
    values: Vec<f64>,
}

impl BlockSum {
    /// Of vectors of so many columns.
    pub fn new(width: usize) -> Self {
        Self { sums: vec![None; width], columns: vec![], values: vec![] }
    }

    pub fn add(&mut self, columns: &[usize], values: &[f64]) {
        for (&column, &value) in columns.iter().zip(values) {
            match &mut self.sums[column] {
                Some(sum) => *sum += value,
                none => {
                    *none = Some(value);
                    self.columns.push(column);
                }
            }
        }
    }

    /// Hands over columns and values and starts again from nothing.
    pub fn drain(&mut self, to: impl FnOnce(&[usize], &[f64])) {
        self.values.extend(self.columns.iter().filter_map(|&column| self.sums[column].take()));
        to(&self.columns, &self.values);
        self.columns.clear();
        self.values.clear();
    }
}
