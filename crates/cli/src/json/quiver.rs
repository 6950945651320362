//! The quiver and its season, as JSON.

use quarterturn_journal::{Limits, MountedHead, Quiver, QuiverArrow, Word};
use serde::Serialize;

use crate::failure::Failure;
use crate::opened::Opened;
use crate::quiver_row::{QuiverRow, beside_limits};
use crate::wording;

#[derive(Serialize)]
struct QuiverAnswer<'a> {
    schema: &'static str,
    arrows: Vec<RowAnswer<'a>>,
    ends: usize,
    groups: usize,
    happenings: Vec<HappeningAnswer<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    limits: Option<&'a Limits>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    compared: Vec<String>,
    rechecks: Vec<String>,
    cautions: &'static [&'static str],
}

#[derive(Serialize)]
struct RowAnswer<'a> {
    #[serde(skip_serializing_if = "Option::is_none")]
    place: Option<usize>,
    shaft: &'a str,
    state: &'static str,
    index_deg: f64,
    nock_turns: usize,
    nock_turns_left: usize,
    shots_in_ends: usize,
    shots_in_groups: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    head: Option<&'a MountedHead>,
    #[serde(skip_serializing_if = "Option::is_none")]
    finished_mass_gr: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    checked_on: Option<&'a String>,
    shots_since_check: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    hard_hit_on: Option<&'a String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    new_nock_on: Option<&'a String>,
}

#[derive(Serialize)]
struct HappeningAnswer<'a> {
    on: &'a str,
    #[serde(skip_serializing_if = "Option::is_none")]
    shaft: Option<&'a String>,
    what: &'a str,
}

/// The answer of `quiver --json`.
pub fn quiver(opened: &Opened, quiver: &Quiver) -> Result<String, Failure> {
    let rows = QuiverRow::all(opened, quiver);
    let seasons: Vec<&QuiverArrow> = rows.iter().filter_map(|row| row.season).collect();
    super::finite_line(&QuiverAnswer {
        schema: "quarterturn.quiver/1",
        arrows: rows.iter().map(RowAnswer::of).collect(),
        ends: quiver.ends,
        groups: quiver.groups,
        happenings: quiver
            .happenings
            .iter()
            .map(|one| HappeningAnswer { on: &one.on, shaft: one.arrow.as_ref(), what: &one.what })
            .collect(),
        limits: quiver.limits.as_ref(),
        compared: beside_limits(opened, quiver, &rows).into_iter().skip(1).collect(),
        rechecks: wording::rechecks(quiver, &seasons),
        cautions: &wording::IN_THE_QUIVER,
    })
}

impl<'a> RowAnswer<'a> {
    fn of(row: &'a QuiverRow<'a>) -> Self {
        let season = row.season;
        Self {
            place: row.place,
            shaft: &row.name,
            state: row.state.word(),
            index_deg: row.mark.degrees(),
            nock_turns: row.turns[0],
            nock_turns_left: row.turns[1],
            shots_in_ends: season.map_or(0, |season| season.shots_in_ends),
            shots_in_groups: season.map_or(0, |season| season.shots_in_groups),
            head: season.and_then(|season| season.head.as_ref()),
            finished_mass_gr: row.finished_mass_gr,
            checked_on: season.and_then(|season| season.checked_on.as_ref()),
            shots_since_check: season.map_or(0, |season| season.shots_since_check),
            hard_hit_on: season.and_then(|season| season.hard_hit_on.as_ref()),
            new_nock_on: season.and_then(|season| season.new_nock_on.as_ref()),
        }
    }
}
