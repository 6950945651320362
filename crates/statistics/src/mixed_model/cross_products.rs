//! Sums of products over the rows and over the sums of each block: all that the fit reads.

use std::collections::BTreeMap;
use std::iter;

use nalgebra::DMatrix;

use super::block_sum::BlockSum;
use super::rows::Rows;

/// Products of the columns K: the coefficients of all levels, the fixed effects and, once it is there, the response.
#[derive(Clone)]
pub struct CrossProducts {
    /// Σ (k − k̄)(k − k̄)ᵀ over the rows k of K, each less the mean of its block.
    pub within: DMatrix<f64>,
    /// The blocks by their number of rows.
    pub by_size: Vec<BlocksOfSize>,
}

/// All blocks of one number of rows.
#[derive(Clone)]
pub struct BlocksOfSize {
    /// Rows in each.
    pub size: f64,
    /// How many such blocks there are.
    pub count: f64,
    /// Σ s sᵀ, s the sum of a block's rows of K.
    pub sums: DMatrix<f64>,
}

impl CrossProducts {
    /// Gathers the products of the design; every row is read once for itself and once in its block.
    pub fn gather(rows: &Rows) -> Self {
        let width = rows.width();
        let mut all = DMatrix::zeros(width, width);
        let mut columns = Vec::new();
        for row in 0..rows.n() {
            columns.clear();
            columns.extend(rows.columns_of(row));
            add_square(&mut all, &columns, rows.covariates_of(row));
        }
        let mut by_size = BTreeMap::new();
        let mut block_sum = BlockSum::new(rows);
        for block in rows.blocks.groups() {
            let blocks = by_size.entry(block.len()).or_insert_with(|| BlocksOfSize {
                size: block.len() as f64,
                count: 0.0,
                sums: DMatrix::zeros(width, width),
            });
            block_sum.fill(block);
            add_square(&mut blocks.sums, &block_sum.columns, &block_sum.values);
            blocks.count += 1.0;
        }
        let by_size = by_size.into_values().collect();
        Self { within: all, by_size }.completed()
    }

    /// Fills the upper halves and takes the blocks' means off.
    fn completed(mut self) -> Self {
        for blocks in &mut self.by_size {
            blocks.sums.fill_upper_triangle_with_lower_triangle();
            self.within -= &blocks.sums / blocks.size;
        }
        self.within.fill_upper_triangle_with_lower_triangle();
        self
    }

    /// These products with a last column for the `response`.
    pub fn with_response(&self, rows: &Rows, response: &[f64]) -> Self {
        let width = rows.width();
        let mut wider = self.clone();
        wider
            .matrices()
            .for_each(|products| *products = products.clone().resize(width + 1, width + 1, 0.0));
        for block in rows.blocks.groups() {
            let class = wider.by_size.partition_point(|blocks| blocks.size < block.len() as f64);
            let sums = last_column(&mut wider.by_size[class].sums);
            let within = last_column(&mut wider.within);
            let sum: f64 = block.iter().map(|&row| response[row]).sum();
            let mean = sum / block.len() as f64;
            for &row in block {
                let deviation = response[row] - mean;
                for (column, value) in rows.columns_of(row).zip(rows.covariates_of(row)) {
                    sums[column] += value * sum;
                    within[column] += value * deviation;
                }
                within[width] += deviation * deviation;
            }
            sums[width] += sum * sum;
        }
        wider.matrices().for_each(DMatrix::fill_lower_triangle_with_upper_triangle);
        wider
    }

    fn matrices(&mut self) -> impl Iterator<Item = &mut DMatrix<f64>> {
        iter::once(&mut self.within).chain(self.by_size.iter_mut().map(|blocks| &mut blocks.sums))
    }
}

fn last_column(products: &mut DMatrix<f64>) -> &mut [f64] {
    let first = products.len() - products.nrows();
    &mut products.as_mut_slice()[first..]
}

/// Adds the outer product of a sparse vector with itself, `columns` rising; only the lower half is kept.
fn add_square(sum: &mut DMatrix<f64>, columns: &[usize], values: &[f64]) {
    let height = sum.nrows();
    for (place, (&column, &factor)) in columns.iter().zip(values).enumerate() {
        let below = &mut sum.as_mut_slice()[column * height..(column + 1) * height];
        for (&row, &value) in columns[place..].iter().zip(&values[place..]) {
            below[row] += factor * value;
        }
    }
}
