//! What a check proved, and what a repair does.

use std::path::Path;

use quarterturn_journal::{Checked, Finding, Repair, Torn};

use crate::wording::{all, command, count, paragraph, visible};

/// What a whole journal has proved to be.
const PROVED: &str = "Proved of every line: its checksum is right, it was written after the line before it, and it \
    says what can be. Not proved: that no record is missing after the last one, since nothing is left that would \
    know of it.";

/// What nobody can know of a lost record.
const UNKNOWN: &str = "What a lost record said is not known. If it took an entry back, that entry stands again: \
    look with show, and enter again what is missing.";

/// A journal that is whole.
pub fn whole(journal: &Path, checked: &Checked) -> String {
    let Checked { bytes, records, shots, standing, last, .. } = checked;
    let name = journal.display();
    let kinds = checked.kinds.iter().map(|(kind, count)| format!("{count} {kind}"));
    let records_and_bytes = format!("{name} is whole: {}, {bytes} bytes.", numbered(*records));
    let said = format!(
        "They are: {}; {shots} shots. Of the entries {standing} stand: what was taken back or lost does not.",
        all(kinds)
    );
    let last = format!("Last confirmed: record {records} of {}.", last.time);
    let paragraphs = [records_and_bytes, PROVED.to_owned(), said, last]
        .into_iter()
        .chain(torn(checked.torn))
        .chain(checked.earlier.first().map(|first| earlier(*first, checked.earlier.len())));
    let shown = paragraphs.map(|text| paragraph("", &visible(&text)));
    shown.collect::<Vec<_>>().join("\n\n") + "\n"
}

/// What was found in a journal that is not whole.
pub fn damaged(repair: &Repair) -> String {
    let kept = numbered(repair.kept);
    let kept = if repair.lost.is_empty() {
        format!("Nothing is lost: {kept} can be read.")
    } else {
        format!("{kept} can be read, {} cannot.", lost(repair))
    };
    [findings(repair), paragraph("", &kept)].join("\n\n") + "\n"
}

/// What a repair did, or would do.
pub fn repaired(journal: &Path, repair: &Repair, dry_run: bool) -> String {
    let (name, original) = (journal.display(), repair.original.display());
    if repair.findings.is_empty() {
        let torn = torn(repair.torn).map(|torn| format!(" {torn}")).unwrap_or_default();
        let whole = format!("{name} is whole: there is nothing to mend.{torn}");
        return paragraph("", &visible(&whole)) + "\n";
    }
    let (kept, lost) = (numbered(repair.kept), lost(repair));
    let done = if dry_run {
        format!("{name} can be mended. Kept would be {kept}, lost {lost}. Nothing was changed.")
    } else {
        format!("{name} is mended. Kept: {kept}; lost: {lost}. As it was it stands in {original}.")
    };
    let then = if dry_run { "repair" } else { "show" };
    let unknown = (!repair.lost.is_empty()).then_some(UNKNOWN);
    let paragraphs = [done].into_iter().chain(unknown.map(str::to_owned));
    let paragraphs = paragraphs.map(|text| paragraph("", &visible(&text)));
    let then = format!("Then: {}", command(then, journal));
    let parts: Vec<_> = [findings(repair)].into_iter().chain(paragraphs).chain([then]).collect();
    parts.join("\n\n") + "\n"
}

fn findings(repair: &Repair) -> String {
    let findings = repair.findings.iter().map(Finding::to_string).chain(torn(repair.torn));
    findings.map(|text| paragraph("", &visible(&text))).collect::<Vec<_>>().join("\n")
}

fn torn(torn: Option<Torn>) -> Option<String> {
    torn.map(|torn| format!("After the last record: {torn}."))
}

fn numbered(number: u64) -> String {
    count(usize::try_from(number).unwrap_or(usize::MAX), "record")
}

/// How many lost records are named one by one.
const NAMED: usize = 8;

/// "record 4", "records 4, 5 and 9", "200 records", "none".
fn lost(repair: &Repair) -> String {
    let numbers = all(repair.lost.iter().map(u64::to_string));
    match repair.lost.len() {
        0 => "none".to_owned(),
        1 => format!("record {numbers}"),
        many if many > NAMED => count(many, "record"),
        _ => format!("records {numbers}"),
    }
}

fn earlier(first: u64, number: usize) -> String {
    format!(
        "Record {first} has an earlier time than the one before it{}: a clock was set back. It does no harm, since \
         records follow each other by their numbers.",
        if number > 1 { format!(", and so have {} more", number - 1) } else { String::new() }
    )
}

#[cfg(test)]
mod tests {
    #[test]
    fn a_clock_that_was_set_back_is_told() {
        assert_eq!(
            super::earlier(7, 1),
            "Record 7 has an earlier time than the one before it: a clock was set back. It does no harm, since \
             records follow each other by their numbers."
        );
        assert!(super::earlier(7, 3).contains(" before it, and so have 2 more: a clock"));
    }
}
