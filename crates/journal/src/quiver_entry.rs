//! What belongs to the quiver, as it is written in the journal: its order, a head on an arrow, the archer's own limits.

use quarterturn_tuning::{Roster, Setup, ShaftName, ShaftState};
use serde::{Deserialize, Serialize};

use crate::limit::Limit;
use crate::names::known;
use crate::{Fault, Timestamp, What};

/// The longest name of a single head, in characters.
const LONGEST_NAME: usize = 40;

/// One thing about the quiver; checked when it is appended.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(untagged)]
pub enum QuiverEntry {
    /// Which arrow is shot first, second and so on; those not named are no hunting arrows.
    Order {
        /// The names of the arrows.
        order: Vec<String>,
    },
    /// A single head was put on an arrow; it takes the place of what was on it.
    Head(MountedHead),
    /// What the archer has read that he must keep to.
    Limits(Limits),
}

/// A single head on an arrow.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct MountedHead {
    /// The arrow.
    pub shaft: String,
    /// The head's own name among heads of its kind: what is scratched into it.
    pub carries: String,
    /// Its mass, grains.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mass_gr: Option<f64>,
    /// How far its tip swings in one turn on this arrow, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub runout_mm: Option<f64>,
    /// How wide it cuts, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub width_mm: Option<f64>,
}

/// Limits as the archer has read them, with the date; the program holds none of its own.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Limits {
    /// The day on which they were read, as in 2027-03-02.
    pub read_on: String,
    /// The least mass of an arrow, grains.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub least_arrow_gr: Option<f64>,
    /// The least draw weight, lb.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub least_draw_lb: Option<f64>,
    /// The least width that a broadhead cuts, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub least_width_mm: Option<f64>,
    /// The draw weight of the bow, lb.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub draw_lb: Option<f64>,
}

impl QuiverEntry {
    /// That it can be, in a journal begun by `setup`.
    pub(crate) fn check(&self, setup: &Setup) -> Result<(), Fault> {
        match self {
            Self::Order { order } => named(order, setup).map(|_| ()),
            Self::Head(head) => head.check(setup),
            Self::Limits(limits) => limits.check(),
        }
    }

    /// What of an entry that is made now does not follow on what is recorded: an arrow that is not fletched.
    pub(crate) fn not_finished(&self, roster: &Roster) -> Vec<Fault> {
        let names = match self {
            Self::Order { order } => order.clone(),
            Self::Head(head) => vec![head.shaft.clone()],
            Self::Limits(_) => Vec::new(),
        };
        let fault = |(n, name): (usize, ShaftName)| {
            let reference = roster.references.iter().any(|reference| reference.name == name);
            let what = match roster.find(&name)?.state {
                ShaftState::Fletched => return None,
                ShaftState::InUse if reference => return None,
                ShaftState::InUse if matches!(self, Self::Head(_)) => {
                    What::BroadheadOnBare { name }
                }
                ShaftState::InUse => What::NotFletched { name },
                state => What::OutOfUse { name, state },
            };
            Some(match self {
                Self::Order { .. } => Fault { place: crate::Place::of("order").item(n), what },
                _ => Fault::at("shaft", what),
            })
        };
        let names = names.iter().enumerate().filter_map(|(n, name)| Some((n, name.parse().ok()?)));
        names.filter_map(fault).collect()
    }
}

/// The arrows that are named, each once.
fn named(order: &[String], setup: &Setup) -> Result<Vec<ShaftName>, Fault> {
    if order.is_empty() {
        return Err(Fault::at("order", What::Empty));
    }
    let mut names = Vec::new();
    for (n, name) in order.iter().enumerate() {
        let at = |what| Fault { place: crate::Place::of("order").item(n), what };
        let name = known(setup, name).map_err(at)?;
        if names.contains(&name) {
            return Err(at(What::Twice { name }));
        }
        names.push(name);
    }
    Ok(names)
}

impl MountedHead {
    fn check(&self, setup: &Setup) -> Result<(), Fault> {
        known(setup, &self.shaft).map_err(|what| Fault::at("shaft", what))?;
        single_head(&self.carries).map_err(|what| Fault::at("carries", what))?;
        let runout = self.runout_mm.map(|mm| Limit::CROOKED.not_negative(mm)).transpose();
        runout.map_err(|what| Fault::at("runout_mm", what))?;
        above_zero("mass_gr", self.mass_gr, Limit::MASS)?;
        above_zero("width_mm", self.width_mm, Limit::HEAD_WIDTH)
    }
}

impl Limits {
    fn check(&self) -> Result<(), Fault> {
        day(&self.read_on).map_err(|what| Fault::at("read_on", what))?;
        if [self.least_arrow_gr, self.least_draw_lb, self.least_width_mm] == [None; 3] {
            return Err(Fault::whole(What::NoLimit));
        }
        above_zero("least_arrow_gr", self.least_arrow_gr, Limit::MASS)?;
        above_zero("least_draw_lb", self.least_draw_lb, Limit::DRAW)?;
        above_zero("least_width_mm", self.least_width_mm, Limit::HEAD_WIDTH)?;
        above_zero("draw_lb", self.draw_lb, Limit::DRAW)
    }
}

/// That a text is a day.
pub(crate) fn day(text: &str) -> Result<(), What> {
    let midnight = format!("{text}T00:00:00Z").parse::<Timestamp>();
    midnight.map(|_| ()).map_err(|_| What::BadDate { text: text.to_owned() })
}

/// That a text can name a single head.
pub(crate) fn single_head(text: &str) -> Result<(), What> {
    let long = text.chars().count() > LONGEST_NAME;
    let empty = text.trim().is_empty();
    if empty || long || text.contains(char::is_control) { Err(What::BadHead) } else { Ok(()) }
}

fn above_zero(name: &str, value: Option<f64>, limit: Limit) -> Result<(), Fault> {
    let checked = value.map(|value| limit.above_zero(value)).transpose();
    checked.map(|_| ()).map_err(|what| Fault::at(name, what))
}
