//! The hits of a history, each from the fletched reference.

use quarterturn_geometry::{Index, Lean, Offset};
use quarterturn_tuning::{
    Advice, BowPart, End, Event, History, Hit, ShaftChange, ShaftName, Shot, known_height,
};

use super::middle::{Basis, Middle, mean, middles};

/// All that was shot, as far as a picture can show it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Hits {
    /// The bare shots that can be drawn, in the order they were shot.
    pub marks: Vec<HitMark>,
    /// Where the middle lay in each end that has one.
    pub middles: Vec<Middle>,
    /// Bare shots without a hit, of an evening without a reference, or from another distance.
    pub not_drawn: usize,
}

/// One bare shot.
#[derive(Clone, Debug, PartialEq)]
pub struct HitMark {
    /// Which shaft.
    pub shaft: ShaftName,
    /// The end it was shot in, counted from 1 over all ends of the journal.
    pub end: usize,
    /// Where its mark stood.
    pub index: Index,
    /// Where it hit, from the middle of its end, less the known height of lighter bare shafts.
    pub at: Offset,
    /// Where its tail pointed, from the references' where theirs was read.
    pub tail: Option<Lean>,
    /// What it says about its shaft now.
    pub kind: HitKind,
}

/// What a shot says about its shaft as it now is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HitKind {
    /// It counts and was shot at the index that is judged, with the bow as it stands.
    Judged,
    /// It counts, at another index or before the bow or the shaft was changed.
    Other,
    /// It is kept and left out of the estimates.
    LeftOut,
}

impl HitKind {
    /// The class of its mark.
    pub const fn class(self) -> &'static str {
        match self {
            Self::Judged => "judged",
            Self::Other => "other",
            Self::LeftOut => "left-out",
        }
    }
}

impl Hits {
    /// The hits of `history`, as `advice` judges the shafts.
    pub fn of(history: &History, advice: &Advice) -> Self {
        let known_height = Offset::new(0.0, known_height(&history.setup).mm());
        let middles = middles(history).into_iter();
        let (hits, fletched) = (Self::default(), Vec::new());
        let mut reader = Reader { history, advice, known_height, fletched, middles, ends: 0, hits };
        history.events.iter().for_each(|event| reader.read(event));
        reader.hits
    }

    /// How many of the drawn shots stand so.
    pub fn count(&self, kind: HitKind) -> usize {
        self.marks.iter().filter(|mark| mark.kind == kind).count()
    }

    /// Where the spot lay on average, from the references.
    pub fn spot(&self) -> Option<Offset> {
        mean(self.middles.iter().map(|middle| -middle.at))
    }

    /// Counted hits of the references.
    pub fn reference_hits(&self) -> usize {
        self.middles.iter().fold(0, |sum, middle| match middle.basis {
            Basis::End { hits } => sum + hits,
            Basis::Evening => sum,
        })
    }

    /// Ends that were shot without a reference that counts.
    pub fn ends_without_reference(&self) -> usize {
        self.middles.iter().filter(|middle| middle.basis == Basis::Evening).count()
    }
}

struct Reader<'a> {
    history: &'a History,
    advice: &'a Advice,
    known_height: Offset,
    fletched: Vec<&'a ShaftName>,
    middles: std::vec::IntoIter<Option<Middle>>,
    ends: usize,
    hits: Hits,
}

impl<'a> Reader<'a> {
    fn read(&mut self, event: &'a Event) {
        match event {
            Event::End(end) => self.end(end),
            // The sight moves bare and fletched alike.
            Event::Bow(change) if change.part != BowPart::Sight => self.outdate(|_| true),
            Event::Shaft(shaft, ShaftChange::Fletched) | Event::Fletched(shaft, _) => {
                self.fletched.push(shaft);
            }
            // Of a shaft: it is as bare or as fletched as it was.
            Event::Bow(_)
            | Event::BowLeft
            | Event::Shaft(_, ShaftChange::Checked | ShaftChange::HardHit | ShaftChange::NewNock) =>
                {}
            Event::Shaft(shaft, change) => {
                self.fletched.retain(|fletched| *fletched != shaft);
                if *change == ShaftChange::Repaired {
                    self.outdate(|mark| mark.shaft == *shaft);
                }
            }
        }
    }

    fn outdate(&mut self, which: impl Fn(&HitMark) -> bool) {
        for mark in self.hits.marks.iter_mut().filter(|mark| which(mark)) {
            if mark.kind == HitKind::Judged {
                mark.kind = HitKind::Other;
            }
        }
    }

    fn end(&mut self, end: &'a End) {
        self.ends += 1;
        let middle = self.middles.next().flatten();
        self.hits.middles.extend(middle);
        for shot in &end.shots {
            if !self.is_bare(&shot.shaft) {
                continue;
            }
            match (middle, shot.hit) {
                (Some(middle), Some(hit)) => self.bare(shot, hit, middle),
                _ => self.hits.not_drawn += 1,
            }
        }
    }

    fn is_bare(&self, shaft: &ShaftName) -> bool {
        self.history.setup.shafts.iter().any(|(bare, _)| bare == shaft)
            && !self.fletched.contains(&shaft)
    }

    fn bare(&mut self, shot: &Shot, hit: Hit, middle: Middle) {
        let tail = hit.lean.map(|lean| middle.tail.map_or(lean, |frame| lean.relative_to(frame)));
        self.hits.marks.push(HitMark {
            shaft: shot.shaft.clone(),
            end: self.ends,
            index: shot.index,
            at: hit.at.from_spot() - middle.at - self.known_height,
            tail,
            kind: self.kind(shot),
        });
    }

    fn kind(&self, shot: &Shot) -> HitKind {
        let positions = self.history.setup.positions;
        let report = self.advice.shafts.iter().find(|report| report.shaft == shot.shaft);
        let judged = report.is_some_and(|report| report.index.is_near(shot.index, positions));
        match (shot.counts(), judged) {
            (false, _) => HitKind::LeftOut,
            (true, true) => HitKind::Judged,
            (true, false) => HitKind::Other,
        }
    }
}
