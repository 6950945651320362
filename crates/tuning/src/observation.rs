//! What the flight model reads from a history.

use nalgebra::Vector2;
use quarterturn_geometry::{Angle, Index, Millimetres};

use crate::{BowPart, End, Event, Flag, History, Hit, ShaftChange, ShaftName, Shot, known_height};

/// A doubtful reading counts as if read so many times as coarsely.
const DOUBTFUL_COARSER: f64 = 3.0;

/// A frame so wide that it forgets: how far the common offset may have gone when the bow was changed
/// and nobody measured by how much, millimetres.
const FORGOTTEN_MM: f64 = 60.0;

/// How far bare shafts may move at the target for each millimetre of the bow (common practice: 10 to 50).
pub const RESPONSE_MM_PER_MM: f64 = 50.0;

/// So many of the last counted shots are read, in whole ends: of a dozen they know every mean to a millimetre or two, and what is
/// older would only make the archer wait.
pub const MOST_READ: usize = 3000;

/// One counted shot.
#[derive(Clone, Debug)]
pub struct Observation {
    /// Whose shot it is: a place in [`Observations::lives`].
    pub life: usize,
    /// The end it belongs to.
    pub end: usize,
    /// How many times the bow had been changed since the first shot that is read.
    pub bow: usize,
    /// How many times the aim had been renewed since: a new evening or a moved sight.
    pub sitting: usize,
    /// Where the mark stood.
    pub index: Index,
    /// The same, radians clockwise from 12 o'clock.
    pub mark_rad: f64,
    /// Where it hit, mm, the known height of lighter bare shafts taken off.
    pub hit_mm: Vector2<f64>,
    /// How it leaned, degrees.
    pub lean_deg: Option<Vector2<f64>>,
    /// Standard deviation of reading the hit, mm, where stated.
    pub read_mm: Option<f64>,
    /// Standard deviation of reading the lean, degrees, where stated.
    pub read_lean_deg: Option<f64>,
    /// How many times more coarsely than usual it was read.
    pub coarser: f64,
}

/// One life of a shaft or a reference: mended or replaced under the same name, it starts another.
#[derive(Clone, Debug)]
pub struct Life {
    /// Its name.
    pub name: ShaftName,
    /// What it is.
    pub kind: Kind,
}

/// Whether a life is a bare shaft's or a reference's.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A bare shaft.
    Bare,
    /// A fletched reference.
    Reference,
}

/// Everything the flight model reads.
#[derive(Clone, Debug)]
pub struct Observations {
    /// The counted shots, in order, those of one end together.
    pub shots: Vec<Observation>,
    /// The lives they belong to.
    pub lives: Vec<Life>,
    /// How far the common offset may have gone at each change of the bow, mm.
    pub bow_changes_mm: Vec<f64>,
    /// How many times the aim was renewed, the beginning included.
    pub sittings: usize,
    /// The event of the history with which reading begins.
    pub first_event: usize,
    /// Counted shots before that.
    pub older_shots: usize,
}

impl Observations {
    /// Reads a history. Shots that do not count, ends at another distance and what is older than the last
    /// [`MOST_READ`] stay out.
    pub fn of(history: &History) -> Self {
        let mut reader = Reader::new(history);
        let (older, read) = history.events.split_at(reader.seen.first_event);
        reader.ends = older.iter().filter_map(pooled).count();
        reader.seen.older_shots = older.iter().filter_map(pooled).map(counted).sum();
        for event in read {
            reader.read(event);
        }
        reader.seen
    }

    /// Whether a shot is a bare shaft's or a reference's.
    pub fn kind_of(&self, shot: &Observation) -> Kind {
        self.lives[shot.life].kind
    }

    /// The present life of a name.
    pub fn life_of(&self, name: &ShaftName) -> Option<usize> {
        self.lives.iter().rposition(|life| life.name == *name)
    }
}

/// Where the last [`MOST_READ`] counted shots begin, an end taken whole or not at all.
fn first_event(history: &History) -> usize {
    let mut shots = 0;
    let too_many = |event: &Event| {
        shots += pooled(event).map_or(0, counted);
        shots > MOST_READ
    };
    history.events.iter().rposition(too_many).map_or(0, |last_older| last_older + 1)
}

/// The end of an event, if it was shot at the journal's distance.
fn pooled(event: &Event) -> Option<&End> {
    match event {
        Event::End(end) if end.distance.is_none() => Some(end),
        _ => None,
    }
}

/// How many of an end's shots count.
fn counted(end: &End) -> usize {
    end.shots.iter().filter(|shot| shot.counts()).count()
}

/// Where the reading of a history stands.
struct Reader {
    seen: Observations,
    height_mm: f64,
    evening: Option<String>,
    ends: usize,
}

impl Reader {
    fn new(history: &History) -> Self {
        let setup = &history.setup;
        let life = |kind| move |name: &ShaftName| Life { name: name.clone(), kind };
        let bare = setup.shafts.iter().map(|(name, _)| name).map(life(Kind::Bare));
        let references = setup.references.iter().map(life(Kind::Reference));
        let seen = Observations {
            shots: Vec::new(),
            lives: bare.chain(references).collect(),
            bow_changes_mm: Vec::new(),
            sittings: 1,
            first_event: first_event(history),
            older_shots: 0,
        };
        Self { seen, height_mm: known_height(setup).mm(), evening: None, ends: 0 }
    }

    fn read(&mut self, event: &Event) {
        match event {
            Event::End(end) if end.distance.is_none() => {
                if self.evening.as_ref().is_some_and(|evening| *evening != end.evening) {
                    self.seen.sittings += 1;
                }
                self.evening = Some(end.evening.clone());
                end.shots.iter().for_each(|shot| self.see(shot));
                self.ends += 1;
            }
            Event::Bow(change) if change.part == BowPart::Sight => self.seen.sittings += 1,
            Event::Bow(change) => {
                let gone = change.moved.map_or(FORGOTTEN_MM, |by| {
                    FORGOTTEN_MM.min(by.length().mm() * RESPONSE_MM_PER_MM)
                });
                self.seen.bow_changes_mm.push(gone);
            }
            Event::Shaft(name, ShaftChange::Repaired) => {
                if let Some(life) = self.seen.life_of(name) {
                    let next = self.seen.lives[life].clone();
                    self.seen.lives.push(next);
                }
            }
            Event::End(_) | Event::BowLeft | Event::Shaft(..) | Event::Fletched(..) => {}
        }
    }

    fn see(&mut self, shot: &Shot) {
        let (Some(hit), true, Some(life)) =
            (shot.hit, shot.counts(), self.seen.life_of(&shot.shaft))
        else {
            return;
        };
        let higher_mm = match self.seen.lives[life].kind {
            Kind::Bare => self.height_mm,
            Kind::Reference => 0.0,
        };
        let Hit { at, lean, read_sd, lean_sd } = hit;
        self.seen.shots.push(Observation {
            life,
            end: self.ends,
            bow: self.seen.bow_changes_mm.len(),
            sitting: self.seen.sittings - 1,
            index: shot.index,
            mark_rad: shot.index.angle().radians(),
            hit_mm: Vector2::new(at.x_mm, at.y_mm - higher_mm),
            lean_deg: lean.map(|lean| Vector2::new(lean.x.degrees(), lean.y.degrees())),
            read_mm: read_sd.map(Millimetres::mm),
            read_lean_deg: lean_sd.map(Angle::degrees),
            coarser: if shot.has(Flag::Doubtful) { DOUBTFUL_COARSER } else { 1.0 },
        });
    }
}
