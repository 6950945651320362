//! How often a nock was turned, and what one more turn costs.

use crate::judge::Judge;
use crate::roster::{ShaftState, Standing};
use crate::{ShaftReport, Verdict};

impl Judge<'_> {
    /// How many more turns the nock of a shaft bears.
    pub fn turns_left(&self, standing: &Standing) -> usize {
        self.policy.nock_turns.saturating_sub(standing.turns)
    }

    /// What turning the nock of a shaft costs, in shots.
    pub fn turn_cost_shots(&self, standing: &Standing) -> f64 {
        match self.turns_left(standing) {
            0 => self.policy.worn_turn_cost_shots,
            _ => self.policy.turn_cost_shots,
        }
    }

    /// So much more probability a turn must promise, or the mark stays where it is.
    pub fn worth_a_turn(&self, standing: &Standing) -> f64 {
        match self.turns_left(standing) {
            0 => self.policy.worth_a_worn_turn,
            _ => self.policy.worth_a_turn,
        }
    }
}

impl ShaftReport {
    /// Whether its nock was turned as often as it bears, on a shaft that is not given up.
    pub fn nock_is_worn(&self) -> bool {
        let in_play =
            self.state == ShaftState::InUse && !matches!(self.verdict, Verdict::Retire(_));
        in_play && self.turns_left == 0
    }
}
