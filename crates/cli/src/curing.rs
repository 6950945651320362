//! What was glued, and from when it may be shot.

use jiff::fmt::temporal::Pieces;
use jiff::tz::TimeZone;
use jiff::{SignedDuration, Timestamp, ZonedDateTime};
use quarterturn_journal::{GlueEntry, GluedPart, State, Word};
use quarterturn_tuning::ShaftName;

/// What is said of a time that has to be waited for.
pub const NOT_BEFORE: &str = "not before";

/// Something glued, with the time from which it may be shot.
pub struct Gluing<'a> {
    pub entry: &'a GlueEntry,
    pub part: GluedPart,
    /// In the zone in which it was entered.
    pub ready: ZonedDateTime,
}

impl<'a> Gluing<'a> {
    /// Everything that was glued, in the order in which it was entered.
    pub fn all(state: &'a State) -> Vec<Self> {
        state.glued().filter_map(Self::of).collect()
    }

    /// Nothing where the time lies beyond the calendar.
    pub fn of(entry: &'a GlueEntry) -> Option<Self> {
        let at = entry.at.as_deref()?;
        let zone = Pieces::parse(at).ok()?.to_numeric_offset()?;
        let cure = SignedDuration::try_from_secs_f64(entry.cure_h * 3600.0).ok()?;
        let ready = at.parse::<Timestamp>().ok()?.checked_add(cure).ok()?;
        let part = GluedPart::from_word(&entry.part).ok()?;
        Some(Self { entry, part, ready: ready.to_zoned_datetime(TimeZone::fixed(zone)) })
    }

    /// "2027-02-27 19:00".
    pub fn not_before(&self) -> String {
        self.ready.strftime("%Y-%m-%d %H:%M").to_string()
    }

    /// Whether it is not to be shot yet.
    pub fn cures(&self, now: Timestamp) -> bool {
        self.ready.timestamp() > now
    }
}

/// The last gluing of a part of a shaft.
pub fn last<'a, 'b>(
    all: &'b [Gluing<'a>],
    shaft: &ShaftName,
    part: GluedPart,
) -> Option<&'b Gluing<'a>> {
    let of_it = |gluing: &&Gluing<'_>| {
        gluing.part == part && gluing.entry.shafts.iter().any(|name| name == shaft.as_str())
    };
    all.iter().rev().find(of_it)
}

/// That a shaft is not to be shot yet, where any of its parts still cures.
pub fn still_curing(state: &State, shaft: &ShaftName, now: Timestamp) -> Option<String> {
    let all = Gluing::all(state);
    let last = GluedPart::ALL.iter().filter_map(|part| last(&all, shaft, *part));
    let latest =
        last.filter(|gluing| gluing.cures(now)).max_by_key(|gluing| gluing.ready.timestamp())?;
    Some(format!("the glue of {shaft} cures: do not shoot it before {}", latest.not_before()))
}
