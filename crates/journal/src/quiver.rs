//! The quiver and its season, as the records tell it.

use quarterturn_tuning::{BowPart, ShaftChange};

use crate::{
    BowEntry, EndEntry, Entry, Fate, GroupEntry, Limits, Log, MountedHead, QuiverEntry, Record,
    ShaftEntry, ShotEntry, Word,
};

/// What a journal says of its finished arrows over a season.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Quiver {
    /// Which arrow is shot first, second and so on.
    pub order: Vec<String>,
    /// The limits that were entered last.
    pub limits: Option<Limits>,
    /// Every arrow that was shot or that something happened to, in the order in which it was first named.
    pub arrows: Vec<QuiverArrow>,
    /// What happened, in order.
    pub happenings: Vec<Happening>,
    /// How many ends of bare shafts were shot.
    pub ends: usize,
    /// How many groups of finished arrows were shot.
    pub groups: usize,
    /// The date of the last new string after which no group was shot.
    pub new_string_on: Option<String>,
}

/// One arrow over a season.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct QuiverArrow {
    /// Its name.
    pub name: String,
    /// The head that was put on it last.
    pub head: Option<MountedHead>,
    /// How often it was shot in ends, mostly bare.
    pub shots_in_ends: usize,
    /// How often it was shot in groups of finished arrows.
    pub shots_in_groups: usize,
    /// The date on which it was last checked.
    pub checked_on: Option<String>,
    /// How often it was shot since.
    pub shots_since_check: usize,
    /// The date of the last hard hit that no check followed.
    pub hard_hit_on: Option<String>,
    /// The date of the last new nock that no check followed.
    pub new_nock_on: Option<String>,
}

/// Something that happened on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Happening {
    /// The date.
    pub on: String,
    /// The arrow it happened to; nothing where it was the bow.
    pub arrow: Option<String>,
    /// What: the word of a [`ShaftChange`] or of a [`BowPart`], or the note of an unnamed part.
    pub what: String,
}

impl Quiver {
    /// Reads a log; what was taken back is not in it, and ends stand as they were corrected last.
    pub fn of(log: &Log) -> Self {
        let mut quiver = Self::default();
        for (record, fate) in &log.records {
            let taken = matches!(fate, Fate::TakenBack { .. });
            if !taken {
                quiver.read(record, log);
            }
        }
        quiver
    }

    /// The single head of this name, as it was put on an arrow last.
    pub fn head(&self, name: &str) -> Option<&MountedHead> {
        self.arrows.iter().filter_map(|arrow| arrow.head.as_ref()).find(|head| head.carries == name)
    }

    fn read(&mut self, record: &Record, log: &Log) {
        let on = record.stamp.time.date();
        match &record.entry {
            Entry::End(_) => {
                let stands = log.ends.iter().find(|end| end.seq == record.seq);
                if let Some(end) = stands {
                    self.read_end(&end.entry);
                }
            }
            Entry::Group(group) => self.read_group(group),
            Entry::Bow(bow) => self.read_bow(bow, on),
            Entry::Shaft(shaft) => self.read_shaft(shaft, shaft.on.as_deref().unwrap_or(on)),
            Entry::Quiver(QuiverEntry::Order { order }) => self.order.clone_from(order),
            Entry::Quiver(QuiverEntry::Limits(limits)) => self.limits = Some(limits.clone()),
            Entry::Quiver(QuiverEntry::Head(head)) => {
                let carries = |arrow: &QuiverArrow| {
                    arrow.head.as_ref().is_some_and(|other| other.carries == head.carries)
                };
                // A head is on one arrow at a time.
                let before = self.arrows.iter_mut().filter(|arrow| carries(arrow));
                before.for_each(|arrow| arrow.head = None);
                self.arrow(&head.shaft).head = Some(head.clone());
            }
            _ => {}
        }
    }

    fn read_end(&mut self, end: &EndEntry) {
        self.ends += 1;
        for ShotEntry { shaft, .. } in &end.shots {
            let arrow = self.arrow(shaft);
            arrow.shots_in_ends += 1;
            arrow.shots_since_check += 1;
        }
    }

    fn read_group(&mut self, group: &GroupEntry) {
        self.groups += 1;
        self.new_string_on = None;
        for ShotEntry { shaft, .. } in &group.shots {
            let arrow = self.arrow(shaft);
            arrow.shots_in_groups += 1;
            arrow.shots_since_check += 1;
        }
    }

    fn read_bow(&mut self, bow: &BowEntry, on: &str) {
        let BowEntry::Change { note, part, .. } = bow else { return };
        if part.as_deref() == Some(BowPart::String.word()) {
            self.new_string_on = Some(on.to_owned());
        }
        let what = part.clone().filter(|part| part != BowPart::Other.word());
        let what = what.unwrap_or_else(|| note.clone());
        self.happenings.push(Happening { on: on.to_owned(), arrow: None, what });
    }

    fn read_shaft(&mut self, entry: &ShaftEntry, on: &str) {
        let Ok(change) = ShaftChange::from_word(&entry.change) else { return };
        let arrow = self.arrow(&entry.shaft);
        let day = || Some(on.to_owned());
        match change {
            ShaftChange::Checked => {
                arrow.checked_on = day();
                arrow.shots_since_check = 0;
                (arrow.hard_hit_on, arrow.new_nock_on) = (None, None);
                return;
            }
            ShaftChange::HardHit => arrow.hard_hit_on = day(),
            ShaftChange::NewNock => arrow.new_nock_on = day(),
            // It starts anew, and was looked at by nobody since.
            ShaftChange::Repaired => {
                *arrow = QuiverArrow { name: arrow.name.clone(), ..QuiverArrow::default() };
            }
            _ => {}
        }
        let (on, arrow) = (on.to_owned(), Some(entry.shaft.clone()));
        self.happenings.push(Happening { on, arrow, what: entry.change.clone() });
    }

    fn arrow(&mut self, name: &str) -> &mut QuiverArrow {
        let at = self.arrows.iter().position(|arrow| arrow.name == name);
        let at = at.unwrap_or_else(|| {
            self.arrows.push(QuiverArrow { name: name.to_owned(), ..QuiverArrow::default() });
            self.arrows.len() - 1
        });
        #[expect(clippy::indexing_slicing, reason = "the place was found or made just now")]
        &mut self.arrows[at]
    }
}
