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
    /// Gathers the products of the design; every row is read once, for itself and for its block.
    pub fn gather(rows: &Rows) -> Self {
        let none = DMatrix::zeros(rows.width(), rows.width());
        let (mut all, mut by_size) = (none.clone(), BTreeMap::new());
        let mut block_sum = BlockSum::new(rows.width());
        for block in rows.blocks.groups() {
            for &row in block {
                let (columns, values) = (rows.columns_of(row), rows.covariates_of(row));
                add_products(&mut all, columns, values, rows.coefficients);
                block_sum.add(columns, values);
            }
            let (count, sums) = by_size.entry(block.len()).or_insert_with(|| (0.0, none.clone()));
            *count += 1.0;
            block_sum.drain(|columns, values| add_products(sums, columns, values, columns.len()));
        }
        let by_size = by_size.into_iter().map(|(size, (count, sums))| BlocksOfSize {
            size: size as f64,
            count,
            sums: whole(&sums),
        });
        let by_size: Vec<_> = by_size.collect();
        let (own, effects) = (rows.all_coefficients(), rows.effect_products());
        let mut all = whole(&all);
        all.view_mut((own, own), effects.shape()).copy_from(&effects);
        let within = |all, blocks: &BlocksOfSize| all - &blocks.sums / blocks.size;
        Self { within: by_size.iter().fold(all, within), by_size }
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

/// Products with the response, gathered level by level: one sum that takes every row would have each wait for the one before.
struct Edge {
    by_level: DMatrix<f64>,
    square: f64,
}

impl Edge {
    fn new(rows: &Rows) -> Self {
        Self { by_level: DMatrix::zeros(rows.covariates.nrows(), rows.levels), square: 0.0 }
    }

    /// Adds `factor` times a row.
    fn add(&mut self, rows: &Rows, row: usize, factor: f64) {
        let covariates = rows.covariates_of(row);
        let first = rows.level_of[row] * covariates.len();
        let sums = &mut self.by_level.as_mut_slice()[first..];
        sums.iter_mut().zip(covariates).for_each(|(sum, value)| *sum += factor * value);
    }

    /// `products` with these as last row and column.
    fn beside(&self, products: &DMatrix<f64>, rows: &Rows) -> DMatrix<f64> {
        let width = products.nrows();
        let coefficients = self.by_level.rows(0, rows.coefficients).transpose();
        let effects = self.by_level.rows(rows.coefficients, rows.effects()).column_sum();
        let edge = coefficients.iter().chain(&effects).chain([&self.square]).copied();
        let edge = DVector::from_iterator(width + 1, edge);
        let mut wider = products.clone().resize(width + 1, width + 1, 0.0);
        wider.set_row(width, &edge.transpose());
        wider.set_column(width, &edge);
        wider
    }
}

/// Adds the products of the first entries of a sparse vector with themselves and all that follow, each pair once, in either half.
fn add_products(half: &mut DMatrix<f64>, columns: &[usize], values: &[f64], first: usize) {
    let height = half.nrows();
    let mut entries = columns.iter().zip(values);
    for _ in 0..first {
        let Some((&column, &factor)) = entries.next() else { return };
        let sums = &mut half.as_mut_slice()[column * height..][..height];
        sums[column] += factor * factor;
        for (&row, &value) in entries.clone() {
            sums[row] += factor * value;
        }
    }
}

/// The symmetric matrix of which `half` holds each pair once.
fn whole(half: &DMatrix<f64>) -> DMatrix<f64> {
    half + half.transpose() - DMatrix::from_diagonal(&half.diagonal())
}
