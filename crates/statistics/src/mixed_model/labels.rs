//! Rows gathered by their labels.

/// The rows of each label, the labels in rising order.
pub struct Labels {
    /// The rows, label after label.
    order: Vec<usize>,
    /// Where in this order each label's rows end.
    ends: Vec<usize>,
}

impl Labels {
    pub fn new(labels: &[u64]) -> Self {
        let mut order: Vec<_> = (0..labels.len()).collect();
        // Quick where the rows already stand in order, as they mostly do.
        order.sort_by_key(|&row| labels[row]);
        let groups = order.chunk_by(|&a, &b| labels[a] == labels[b]);
        let ends = groups.scan(0, |end, group| {
            *end += group.len();
            Some(*end)
        });
        Self { ends: ends.collect(), order }
    }

    /// How many labels there are.
    pub fn count(&self) -> usize {
        self.ends.len()
    }

    /// The rows of each label.
    pub fn groups(&self) -> impl Iterator<Item = &[usize]> {
        let mut start = 0;
        self.ends.iter().map(move |&end| &self.order[std::mem::replace(&mut start, end)..end])
    }

    /// The label of each row, numbered from zero.
    pub fn numbers(&self) -> Vec<usize> {
        let mut numbers = vec![0; self.order.len()];
        for (number, group) in self.groups().enumerate() {
            for &row in group {
                numbers[row] = number;
            }
        }
        numbers
    }
}
