//! From shots to advice.

mod advice;
mod advise;
mod archer_group;
mod bow_first;
mod design;
mod end;
mod event;
mod history;
mod judge;
mod known_height;
mod layout;
mod look_ahead;
mod miss;
mod next_end;
mod normal_equations;
mod observation;
mod policy;
mod posterior;
mod prior;
mod roster;
mod scales;
mod setup;
mod shaft_name;
mod shot;
mod simulated_archer;
mod verdict;
mod world;

pub use advice::{
    Advice, Aim, ArcherReport, BowReport, Ending, Pause, PlannedShot, Prediction, Purpose,
    ShaftReport, Spread, Step,
};
pub use advise::advise;
pub use end::End;
pub use event::{BowChange, BowPart, Event, ShaftChange};
pub use history::History;
pub use known_height::known_height;
pub use miss::Miss;
pub use policy::Policy;
pub use roster::{Roster, ShaftState, Standing};
pub use scales::Scales;
pub use setup::{MissingMass, Setup};
pub use shaft_name::{ShaftName, ShaftNameError};
pub use shot::{Call, Flag, Hit, Shot};
pub use simulated_archer::SimulatedArcher;
pub use world::World;
pub use verdict::{OpenReason, RetireReason, Verdict};
