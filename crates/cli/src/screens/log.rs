//! The screen of `log`: every record in a line or two, with what became of it.

use quarterturn_entry::shorthand;
use quarterturn_geometry::Millimetres;
use quarterturn_journal::{
    BenchMeasures, BowEntry, EndEntry, Entry, Fate, FixEntry, GlueEntry, GroupEntry, Log,
    QuiverEntry, Record,
};

use crate::opened::Opened;
use crate::wording::{as_words, count, paragraph, visible};
use crate::workshop::Gauge;

/// How far in a record is told: behind its number and its time.
const LEAD: usize = 24;

/// Everything that was entered, changed and taken back.
pub fn log(opened: &Opened, log: &Log) -> String {
    let lines = log.records.iter().map(|(record, fate)| {
        let said = told(opened, log, record);
        let said = said.into_iter().chain(became(*fate)).collect::<Vec<_>>().join("; ");
        let time = record.stamp.time.to_string().replace('T', " ");
        let time: String = time.chars().take(16).collect();
        let lead = format!("{:>4}  {time:<width$}", record.seq, width = LEAD - 6);
        paragraph(&lead, &visible(&said.replace('\n', " ")))
    });
    let stands = count(log.ends.len(), "end");
    let heading = format!("{}, {stands} standing.", count(log.records.len(), "record"));
    format!("{heading}\n\n{}\n", lines.collect::<Vec<_>>().join("\n"))
}

fn told(opened: &Opened, log: &Log, record: &Record) -> Vec<String> {
    let number = |seq: u64| log.ends.iter().position(|end| end.seq == seq).map(|at| at + 1);
    match &record.entry {
        Entry::New(new) => vec![format!("begun with {}", count(new.shafts.len(), "shaft"))],
        Entry::End(end) => end_told(opened, end, number(record.seq)),
        Entry::Fix(FixEntry { seq, end }) => {
            let of = number(*seq).map_or(format!("record {seq}"), |end| format!("end {end}"));
            let shots = shorthand::printed(&end.shots, opened.ruler().unit());
            vec![format!("correction of {of}: {shots}")]
        }
        Entry::Bow(BowEntry::Leave { leave }) => vec![format!("the bow stays: {leave}")],
        Entry::Bow(BowEntry::Change { note, part, .. }) => {
            let part = part.as_ref().map(|part| format!(" ({part})")).unwrap_or_default();
            vec![format!("bow{part}: {note}")]
        }
        Entry::Shaft(shaft) => {
            let on = shaft.on.as_ref().map(|on| format!(" on {on}")).unwrap_or_default();
            vec![format!("{}: {}{on}", shaft.shaft, as_words(&shaft.change))]
        }
        Entry::Add(add) => {
            let role = add.role.as_deref().unwrap_or("bare");
            vec![format!("{} joined, {role}", add.shaft)]
        }
        Entry::Bench(bench) => {
            vec![format!("bench, {}: {}", bench.shaft, measured(&bench.measures))]
        }
        Entry::Glue(glue) => vec![glue_told(glue)],
        Entry::Group(group) => vec![group_told(opened, group)],
        Entry::Quiver(quiver) => vec![quiver_told(quiver)],
        Entry::Note(note) => vec![format!("note: {}", note.note)],
        Entry::Undo(undo) => vec![format!("undo of record {}", undo.seq)],
        Entry::Redo(redo) => vec![format!("redo of record {}", redo.seq)],
        Entry::Unreadable(lost) => {
            vec![format!(
                "lost, and mended around: {}; {} keeps what stood there",
                lost.why, lost.kept
            )]
        }
    }
}

fn glue_told(glue: &GlueEntry) -> String {
    format!("glued, {}: {}, cures {} h", glue.part, glue.shafts.join(" "), glue.cure_h)
}

fn group_told(opened: &Opened, group: &GroupEntry) -> String {
    let shots = shorthand::printed(&group.shots, opened.ruler().unit());
    let cold = if group.cold { ", cold" } else { "" };
    format!("{} from {}{cold}: {shots}", group.head, from(opened, group.distance_m))
}

fn end_told(opened: &Opened, end: &EndEntry, number: Option<usize>) -> Vec<String> {
    let shots = shorthand::printed(&end.shots, opened.ruler().unit());
    let number = number.map_or_else(|| "end".to_owned(), |number| format!("end {number}"));
    let distance = end.distance_m.map(|m| format!("from {}", from(opened, m)));
    let about: Vec<String> = end.evening.clone().into_iter().chain(distance).collect();
    let note = end.note.as_ref().map(|note| format!("note: {note}"));
    [format!("{number} ({}): {shots}", about.join(", "))].into_iter().chain(note).collect()
}

fn from(opened: &Opened, distance_m: f64) -> String {
    opened.ruler().distance(Millimetres::from_metres(distance_m))
}

/// What was said of the quiver.
fn quiver_told(entry: &QuiverEntry) -> String {
    let said = |name: &str, value: Option<f64>, unit: &str| {
        value.map(|value| format!("{name} {value} {unit}"))
    };
    let parts = match entry {
        QuiverEntry::Order { order } => return format!("quiver: {}", order.join(", ")),
        QuiverEntry::Head(head) => [
            Some(format!("{} carries {}", head.shaft, head.carries)),
            said("mass", head.mass_gr, "gr"),
            said("runout", head.runout_mm, "mm"),
            said("width", head.width_mm, "mm"),
            None,
        ],
        QuiverEntry::Limits(limits) => [
            Some(format!("limits read on {}", limits.read_on)),
            said("arrow at least", limits.least_arrow_gr, "gr"),
            said("draw at least", limits.least_draw_lb, "lb"),
            said("head at least", limits.least_width_mm, "mm wide"),
            said("the bow draws", limits.draw_lb, "lb"),
        ],
    };
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// The numbers that were read off one shaft.
fn measured(measures: &BenchMeasures) -> String {
    let said = |gauge: Gauge| Some((gauge, gauge.of(measures)?));
    let numbers = Gauge::ALL.into_iter().filter_map(said);
    let numbers =
        numbers.map(|(gauge, value)| format!("{} {}", gauge.said().name, gauge.value(value)));
    let side = |name: &str, deg: Option<f64>| deg.map(|deg| format!("{name} side {deg} deg"));
    let sides = [
        side("stiff", measures.stiff_side_deg),
        side("heavy", measures.heavy_side_deg),
        side("crooked", measures.crooked_side_deg),
    ];
    let cut = |end: &str, mm: Option<f64>| mm.map(|mm| format!("{mm:.1} mm cut off at the {end}"));
    let cuts = [cut("point", measures.cut_point_mm), cut("nock", measures.cut_nock_mm)];
    numbers.chain(cuts.into_iter().chain(sides).flatten()).collect::<Vec<_>>().join(", ")
}

fn became(fate: Fate) -> Option<String> {
    match fate {
        Fate::Stands => None,
        Fate::Corrected { by } => Some(format!("corrected by record {by}")),
        Fate::TakenBack { by } => Some(format!("taken back by record {by}")),
    }
}
