//! A mean over sessions with how well it is known.

use std::fmt;

/// A mean and its standard error.
#[derive(Clone, Copy, Debug)]
pub struct Mean {
    pub value: f64,
    pub standard_error: f64,
}

impl FromIterator<f64> for Mean {
    fn from_iter<I: IntoIterator<Item = f64>>(values: I) -> Self {
        let values: Vec<f64> = values.into_iter().collect();
        let n = values.len() as f64;
        let value = values.iter().sum::<f64>() / n;
        let squares: f64 = values.iter().map(|v| (v - value).powi(2)).sum();
        Self { value, standard_error: (squares / (n - 1.0) / n).sqrt() }
    }
}

/// "6.12 ± 0.14", the half width of a 95 % interval behind.
impl fmt::Display for Mean {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&format!("{:.2} ± {:.2}", self.value, 1.96 * self.standard_error))
    }
}
