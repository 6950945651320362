//! The middle of many numbers, and where nine out of ten of them lie.

/// A median and the range that leaves out a twentieth on either side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Range {
    /// As many lie below it as above.
    pub median: usize,
    /// The 0.05 quantile.
    pub from: usize,
    /// The 0.95 quantile.
    pub to: usize,
}

impl Range {
    /// The range of `numbers`; of none it is zero. A quantile is the smallest number that so many do not exceed.
    pub fn of(numbers: impl IntoIterator<Item = usize>) -> Self {
        let mut sorted: Vec<usize> = numbers.into_iter().collect();
        sorted.sort_unstable();
        let quantile = |twentieths: usize| {
            let rank = (twentieths * sorted.len()).div_ceil(20);
            sorted.get(rank.saturating_sub(1)).copied().unwrap_or_default()
        };
        Self { median: quantile(10), from: quantile(1), to: quantile(19) }
    }
}

#[cfg(test)]
mod tests {
    use super::Range;

    #[test]
    fn a_twentieth_is_left_out_on_either_side() {
        assert_eq!(Range::of((1..=40).rev()), Range { median: 20, from: 2, to: 38 });
        assert_eq!(Range::of([7]), Range { median: 7, from: 7, to: 7 });
        assert_eq!(Range::of([]), Range { median: 0, from: 0, to: 0 });
    }
}
