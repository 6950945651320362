//! Chance that can be had again: `SplitMix64` (Steele, Lea and Flood, 2014; constants from memory).

#[derive(Clone, Debug)]
pub struct Chance(u64);

impl Chance {
    pub fn of(seed: u64) -> Self {
        Self(seed)
    }

    /// 64 random bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A number below `count`.
    pub fn below(&mut self, count: usize) -> usize {
        usize::try_from(self.bits() % count.max(1) as u64).unwrap()
    }

    /// True once in `count` times.
    pub fn one_in(&mut self, count: usize) -> bool {
        self.below(count) == 0
    }
}
