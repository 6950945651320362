//! Labels numbered from zero.

/// The labels of the rows, numbered from zero in rising order.
pub struct Labels {
    pub of_row: Vec<usize>,
    pub count: usize,
    /// The rows, label after label.
    order: Vec<usize>,
}

impl Labels {
    pub fn new(labels: &[u64]) -> Self {
        let mut order: Vec<_> = (0..labels.len()).collect();
        // Quick where the rows already stand in order, as they mostly do.
        order.sort_by_key(|&row| labels[row]);
        let mut numbered = Self { of_row: vec![0; labels.len()], count: 0, order };
        for group in numbered.order.chunk_by(|&a, &b| labels[a] == labels[b]) {
            for &row in group {
                numbered.of_row[row] = numbered.count;
            }
            numbered.count += 1;
        }
        numbered
    }

    /// The rows of each label.
    pub fn groups(&self) -> impl Iterator<Item = &[usize]> {
        self.order.chunk_by(|&a, &b| self.of_row[a] == self.of_row[b])
    }
}
