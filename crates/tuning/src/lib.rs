//! From shots to advice: which arrow's nock to turn next, to which index, and why.
//!
//! The crate reads a [`History`] (how a journal was begun, and the ends, bow changes and shaft changes since)
//! and answers with [`Advice`]. It is pure: no files, no clock, no randomness of its own; asked twice, it answers
//! the same.
//!
//! # The method
//! A bare shaft lands, from the fletched reference, at a common offset that belongs to the bow, plus its own centre,
//! plus what turns with its mark once and twice a turn. The lean of its tail has the same shape, and goes with the
//! miss by a relation that holds only roughly. All of these are unknown and normal before the first shot, with
//! [`Scales`] that begin at what is usual and are learned from the journal. Each end has an aim and a lean frame of
//! its own, which are integrated out exactly; shots that fly far weigh less, and so do those of a shaft that does not
//! repeat. What follows is one Gaussian posterior for all shafts together, and from it, for each shaft and each
//! position of the mark, the mean miss with its covariance and the probability that this mean is inside the tolerance. A shaft
//! is kept where that probability is high and well known, retired where no position reaches it, and open otherwise.
//! Where one common move of the bow brings clearly more shafts in than turning can, the bow comes first. The
//! next end takes the shafts and positions that promise most right verdicts for each shot, a few shots ahead.
//! What that is worth is priced by [`Policy`].
//!
//! # Limits
//! One distance. What is not known of the scales and of the relation of lean to miss is carried by a few posteriors
//! about them; the tails of single shots are taken as learned.
//!
//! # Example
//! ```
//! use quarterturn_tuning::{
//!     Event, History, Policy, Setup, SimulatedArcher, Step, World, advise,
//! };
//!
//! let setup = Setup { arrows_per_end: 3, ..Setup::beside_one_reference(2) };
//! let mut archer = SimulatedArcher::new(&setup, World::ORDINARY, 7);
//! let mut history = History { setup, events: Vec::new() };
//!
//! let Step::Shoot(end) = advise(&history, &Policy::default()).step else { panic!("nothing to shoot") };
//! assert_eq!(end[0].shaft.as_str(), "R");
//! history.events.push(Event::End(archer.shoot(&end, "first evening")));
//!
//! let advice = advise(&history, &Policy::default());
//! assert_eq!(advice.shafts.len(), 2);
//! ```

mod advice;
mod advise;
mod archer_group;
mod assessment;
mod at_scales;
mod bow_first;
mod common_point;
mod course;
mod design;
mod doubts;
mod end;
mod event;
mod evidence;
mod far_off;
mod finished;
mod flight;
mod hints;
mod history;
mod improbable;
mod judge;
mod known_height;
mod layout;
mod lean_relation;
mod learn;
mod leave;
mod look_ahead;
mod matching;
mod miss;
mod next_end;
mod nock;
mod normal_equations;
mod normal_points;
mod observation;
mod pause;
mod planar;
mod policy;
mod posterior;
mod precision_inverse;
mod prior;
mod readings;
mod rehearsal;
mod response;
mod roster;
mod scales;
mod set_mean;
mod setup;
mod shaft_name;
mod shot;
mod simulated_archer;
mod standing_out;
#[cfg(test)]
mod tests;
#[cfg(test)]
mod tolerance;
mod true_shaft;
mod verdict;
mod world;
mod worlds;

pub use advice::{
    Advice, Aim, ArcherReport, BowReport, Ending, Pause, PlannedShot, Prediction, Purpose,
    ShaftReport, Spread, Step,
};
pub use advise::{advise, advise_with_leans};
pub use course::advise_with_course;
pub use doubts::{Doubt, Without, doubts};
pub use end::End;
pub use event::{BowChange, BowPart, Event, ShaftChange};
pub use finished::{
    AtDistance, Centre, Chance, Comparison, Difference, DrawnOut, EndedBy, Farthest, FromTheOthers,
    Group, GroupShape, Grows, Growth, Head, HeadNameError, HitsAt, HitsOfKind, Pair, Reach, Rung,
    ShotKind, SightMove, Start, TogetherVerdict, Verified, VerifiedArrow, compare_heads, hits_at,
    reach, verify,
};
pub use hints::Hint;
pub use history::History;
pub use improbable::{Improbable, Slip, improbable};
pub use known_height::known_height;
pub use lean_relation::LeanRelation;
pub use matching::{Matching, MeasuredFrom};
pub use miss::Miss;
pub use policy::Policy;
pub use rehearsal::{Bin, BowAsked, Fate, Figures, Mistake, Outcome, Protocol, Ruling, Said};
pub use response::{Along, Response};
pub use roster::{Roster, ShaftState, Standing};
pub use scales::Scales;
pub use setup::{MissingMass, Setup};
pub use shaft_name::{ShaftName, ShaftNameError};
pub use shot::{Call, Flag, Hit, Shot};
pub use simulated_archer::SimulatedArcher;
pub use standing_out::{FarShot, StandingOut, WideShaft, standing_out};
pub use verdict::{OpenReason, RetireReason, Verdict};
pub use world::{Leans, World};
