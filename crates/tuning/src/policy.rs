//! What the archer is willing to pay and to risk, with defaults and their reasons.

/// Levels and costs behind the verdicts and the next end.
///
/// The levels are prices: a keep pays when it is right with probability `keep_at`, so one wrong keep weighs
/// as much as `keep_at / (1 − keep_at)` right ones; likewise `retire_at` prices a lost shaft.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Policy {
    /// A shaft is kept when its miss is inside the tolerance with at least this probability.
    pub keep_at: f64,
    /// A shaft is retired when no index is inside the tolerance with at least this probability: a shaft on the border would take
    /// twenty shots more, and they tell in the end that it lies on the border.
    pub retire_at: f64,
    /// A shaft is kept only when it repeats with at least this probability.
    pub repeats_at: f64,
    /// A shaft is retired as not repeating only when it repeats with at most this probability.
    pub loose_at: f64,
    /// A shaft is not kept on fewer counted shots: one may have been luck.
    pub keep_shots: usize,
    /// The same where the shafts match each other: one that is as usual would be kept on two whatever they showed, and a
    /// dozen has some that are not.
    pub set_keep_shots: usize,
    /// A shaft is not retired on fewer counted shots: one or two may have been the archer.
    pub retire_shots: usize,
    /// What a shot costs, in right verdicts: below this gain a shot is not worth its walk.
    pub shot_cost: f64,
    /// What a turn of a nock costs, in shots: a push-in nock lasts six to eight turns (common practice).
    pub turn_cost_shots: f64,
    /// What it costs once the nock was turned as often as it bears: a new nock, and a shaft that starts anew.
    pub worn_turn_cost_shots: f64,
    /// A turn must promise more than this much probability, or the mark stays where it is.
    pub worth_a_turn: f64,
    /// The same of a nock that was turned as often as it bears.
    pub worth_a_worn_turn: f64,
    /// How many turns a nock bears: a push-in nock six to eight (common practice).
    pub nock_turns: usize,
    /// Bare shots of one evening after which it is enough (common practice, from memory).
    pub evening_shots: usize,
}

impl Default for Policy {
    fn default() -> Self {
        Self {
            keep_at: 0.90,
            retire_at: 0.33,
            repeats_at: 0.88,
            loose_at: 0.05,
            keep_shots: 2,
            set_keep_shots: 4,
            retire_shots: 3,
            shot_cost: 0.003,
            turn_cost_shots: 0.2,
            worn_turn_cost_shots: 0.6,
            worth_a_turn: 0.01,
            worth_a_worn_turn: 0.02,
            nock_turns: 8,
            evening_shots: 36,
        }
    }
}
