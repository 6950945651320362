//! From shots to advice.

mod advice;
mod advise;
mod end;
mod event;
mod history;
mod miss;
mod policy;
mod setup;
mod shaft_name;
mod shot;
mod verdict;

pub use advice::{
    Advice, Aim, ArcherReport, BowReport, Ending, Pause, PlannedShot, Prediction, Purpose,
    ShaftReport, Spread, Step,
};
pub use advise::advise;
pub use end::End;
pub use event::{BowChange, BowPart, Event, ShaftChange};
pub use history::History;
pub use miss::Miss;
pub use policy::Policy;
pub use setup::{MissingMass, Setup};
pub use shaft_name::{ShaftName, ShaftNameError};
pub use shot::{Call, Flag, Hit, Shot};
pub use verdict::{OpenReason, RetireReason, Verdict};
