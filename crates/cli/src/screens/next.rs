//! The screen of `next`.

use quarterturn_geometry::Index;
use quarterturn_journal::Word;
use quarterturn_tuning::{Advice, BowReport, PlannedShot, Purpose, ShaftReport, Step};

use crate::opened::Opened;
use crate::wording::{
    self, Table, WHAT_A_TURN_BUYS, all, command, instruction, mark, paragraph, purpose, turn,
};
use quarterturn_entry::shorthand;

/// What is to be done with a bow that is moved, or not.
const MOVE_AND_NOTE: &str = "Note the move: the ends before and after tell what it did. If the bow is to stay as it \
    is, say so.";

/// One reference alone cannot be told from a bow that is off.
const SECOND_REFERENCE: &str = "Before that, shoot another trusted fletched arrow beside the reference: if it \
    lands with the bare shafts, it is the reference that is off, not the bow.";

/// What to do now, and why.
pub fn next(opened: &Opened, advice: &Advice) -> String {
    let mut blocks = vec![paragraph("", &wording::why(advice, opened.ruler()))];
    match &advice.step {
        Step::Shoot(shots) => blocks.extend(end(shots, advice)),
        Step::MoveBow => blocks.extend(before_the_move(opened)),
        Step::Finished(_) => {}
    }
    let asides = wording::asides(advice, opened.ruler());
    blocks.extend(asides.map(|(lead, said)| paragraph(lead, &said)));
    blocks.push(what_then(opened, advice));
    blocks.join("\n\n") + "\n"
}

/// What belongs before and to a move of the bow.
fn before_the_move(opened: &Opened) -> Vec<String> {
    let alone = opened.journal.state().roster().references_in_use().count() == 1;
    let said = [Some(MOVE_AND_NOTE), alone.then_some(SECOND_REFERENCE)];
    said.into_iter().flatten().map(|said| paragraph("", said)).collect()
}

/// The end to shoot: the order, the turns, what it should settle.
fn end(shots: &[PlannedShot], advice: &Advice) -> Vec<String> {
    let turns: Vec<String> = shots.iter().filter_map(turned).collect();
    let mut closing: Vec<String> = wording::settles(advice).into_iter().collect();
    closing.push("One arrow to a spot.".to_owned());
    let mut blocks = vec![order(shots)];
    blocks.extend(worn_nocks(shots, advice));
    if !turns.is_empty() {
        blocks.push(format!("Turn first:\n{}", turns.join("\n")));
        closing.push(WHAT_A_TURN_BUYS.to_owned());
    }
    blocks.push(paragraph("", &closing.join(" ")));
    blocks
}

/// The shafts of the end whose nocks were turned as often as they bear.
fn worn_nocks(shots: &[PlannedShot], advice: &Advice) -> Option<String> {
    let planned = |report: &&ShaftReport| shots.iter().any(|shot| shot.shaft == report.shaft);
    let worn = advice.shafts.iter().filter(|report| report.nock_is_worn()).filter(planned);
    let worn: Vec<_> = worn.map(|report| &report.shaft).collect();
    (!worn.is_empty()).then(|| {
        let renew = format!(
            "Renew the nock of {} and record the shaft as repaired: it starts anew.",
            all(worn)
        );
        paragraph("", &renew)
    })
}

fn order(shots: &[PlannedShot]) -> String {
    let mut table = Table::new(["shot", "shaft", "mark at", "what for"]);
    for (shot, number) in shots.iter().zip(1..) {
        let mark = index(shot).map_or_else(|| "-".to_owned(), mark);
        let what_for = purpose(shot.purpose).to_owned();
        table.row([format!("{number:>4}"), shot.shaft.to_string(), mark, what_for]);
    }
    table.lines().map(|line| format!("  {line}")).collect::<Vec<_>>().join("\n")
}

/// "  7: mark to 3 o'clock, three hours clockwise from where it is", where the mark has to move.
fn turned(shot: &PlannedShot) -> Option<String> {
    match shot.purpose {
        Purpose::Bare { index, from, .. } if turn(from, index).is_some() => {
            Some(format!("  {}: {}", shot.shaft, instruction(from, index)))
        }
        _ => None,
    }
}

fn index(shot: &PlannedShot) -> Option<Index> {
    match shot.purpose {
        Purpose::Reference => None,
        Purpose::Bare { index, .. } => Some(index),
    }
}

/// What to type when it is done.
fn what_then(opened: &Opened, advice: &Advice) -> String {
    let command = |word| command(word, &opened.path);
    match &advice.step {
        Step::Shoot(shots) => {
            let groups: Vec<String> = shots.iter().map(group).collect();
            format!("Then: {} \\\n  \"{}\"", command("end"), groups.join(", "))
        }
        Step::MoveBow => {
            let bow = command("bow");
            let moved = moved(&advice.bow);
            format!("Then: {bow} \\\n  --note TEXT {moved}\n  or: {bow} --leave TEXT")
        }
        Step::Finished(_) => format!("See: {}", command("show")),
    }
}

/// "--part rest --move-mm=-0.6,0", as far as it is known.
fn moved(bow: &BowReport) -> String {
    match (&bow.response, bow.proposed_move) {
        (Some(response), Some(by)) => {
            format!("--part {} --move-mm={},{}", response.part.word(), by.x_mm, by.y_mm)
        }
        _ => "--part rest --move-mm X,Y".to_owned(),
    }
}

/// "7 i3 ...": the shot as it will be typed, its mark where that moves.
fn group(shot: &PlannedShot) -> String {
    match shot.purpose {
        Purpose::Bare { index, from, .. } if turn(from, index).is_some() => {
            format!("{} {} ...", shot.shaft, shorthand::mark(index))
        }
        _ => format!("{} ...", shot.shaft),
    }
}
