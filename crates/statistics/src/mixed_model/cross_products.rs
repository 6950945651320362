//! Sums of products over the rows and over the sums of each block: all that the fit reads.

use std::collections::BTreeMap;

use nalgebra::{DMatrix, DVector};

use super::block_sum::BlockSum;
use super::rows::Rows;

/// Products of the columns K: the coefficients of all levels, the fixed effects and, once it is there, the response.
pub struct CrossProducts {
    /// Σ (k − k̄)(k − k̄)ᵀ over the rows k of K, each less the mean of its block.
    pub within: DMatrix<f64>,
    /// The blocks by their number of rows, rising.
    pub by_size: Vec<BlocksOfSize>,
}

/// All blocks of one number of rows.
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
        let (mut within, mut by_size) =
            (all_products(rows), by_size.into_values().collect::<Vec<_>>());
        for blocks in &mut by_size {
            blocks.sums.fill_upper_triangle_with_lower_triangle();
            within -= &blocks.sums / blocks.size;
        }
        within.fill_upper_triangle_with_lower_triangle();
        Self { within, by_size }
    }

    /// These products with a last column for the `response`.
    pub fn with_response(&self, rows: &Rows, response: &[f64]) -> Self {
        let mut within = Edge::new(rows);
        let mut sums: Vec<_> = self.by_size.iter().map(|_| Edge::new(rows)).collect();
        for block in rows.blocks.groups() {
            let size = block.len() as f64;
            let sums = &mut sums[self.by_size.partition_point(|blocks| blocks.size < size)];
            let sum: f64 = block.iter().map(|&row| response[row]).sum();
            for &row in block {
                let deviation = response[row] - sum / size;
                within.add(rows, row, deviation);
                within.square += deviation * deviation;
                sums.add(rows, row, sum);
            }
            sums.square += sum * sum;
        }
        let by_size = self.by_size.iter().zip(sums).map(|(blocks, edge)| BlocksOfSize {
            sums: edge.beside(&blocks.sums, rows),
            ..*blocks
        });
        Self { by_size: by_size.collect(), within: within.beside(&self.within, rows) }
    }
}

/// Products with the response, gathered level by level.
struct Edge {
    by_level: DMatrix<f64>,
    square: f64,
}

impl Edge {
    fn new(rows: &Rows) -> Self {
        Self { by_level: DMatrix::zeros(rows.covariates.nrows(), rows.levels.count), square: 0.0 }
    }

    /// Adds `factor` times a row.
    fn add(&mut self, rows: &Rows, row: usize, factor: f64) {
        let covariates = rows.covariates_of(row);
        let first = rows.levels.of_row[row] * covariates.len();
        add_multiple(&mut self.by_level.as_mut_slice()[first..], factor, covariates);
    }

    /// `products` with these as last row and column.
    fn beside(&self, products: &DMatrix<f64>, rows: &Rows) -> DMatrix<f64> {
        let width = products.nrows();
        let mut edge = DVector::zeros(width + 1);
        for (level, values) in self.by_level.column_iter().enumerate() {
            for (column, value) in rows.columns_of(level).zip(values.iter()) {
                edge[column] += value;
            }
        }
        edge[width] = self.square;
        let mut wider = products.clone().resize(width + 1, width + 1, 0.0);
        wider.set_row(width, &edge.transpose());
        wider.set_column(width, &edge);
        wider
    }
}

/// The lower half of `KᵀK`, gathered level by level.
fn all_products(rows: &Rows) -> DMatrix<f64> {
    let height = rows.covariates.nrows();
    let mut by_level = DMatrix::zeros(height * height, rows.levels.count);
    for row in 0..rows.n() {
        let covariates = rows.covariates_of(row);
        let first = rows.levels.of_row[row] * height * height;
        let products = &mut by_level.as_mut_slice()[first..first + height * height];
        for (i, &factor) in covariates.iter().enumerate() {
            add_multiple(&mut products[i * (height + 1)..], factor, &covariates[i..]);
        }
    }
    let mut all = DMatrix::zeros(rows.width(), rows.width());
    for (level, products) in by_level.column_iter().enumerate() {
        for (i, column) in rows.columns_of(level).enumerate() {
            for (j, row) in rows.columns_of(level).enumerate().skip(i) {
                all[(row, column)] += products[i * height + j];
            }
        }
    }
    all
}

/// Adds a multiple of `values` to as many places.
fn add_multiple(places: &mut [f64], factor: f64, values: &[f64]) {
    places.iter_mut().zip(values).for_each(|(place, value)| *place += factor * value);
}

/// Adds the outer product of a sparse vector with itself; only the lower half is kept.
fn add_square(sum: &mut DMatrix<f64>, columns: &[usize], values: &[f64]) {
    let height = sum.nrows();
    let sum = sum.as_mut_slice();
    for (place, (&column, &factor)) in columns.iter().zip(values).enumerate() {
        for (&row, &value) in columns[place..].iter().zip(&values[place..]) {
            // Levels come in any order; to sort them would cost more.
            sum[row.min(column) * height + row.max(column)] += factor * value;
        }
    }
}
