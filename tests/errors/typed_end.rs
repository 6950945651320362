//! An end that was typed wrong.

use super::{Marked, unchanged};
use crate::support::JOURNAL;

/// The end `marked` is refused with these words.
#[track_caller]
fn refused(marked: &str, label: &str, hints: &[&str]) {
    unchanged(|folder| {
        let marked = Marked::of(marked);
        let message = marked.message("the end was not recorded", None, label, hints);
        folder.run(&format!("end {JOURNAL}")).arg(&marked.text).code(3).stderr(&message).check();
    });
}

const WORDS: &str = "the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the \
                     letters g p w k n q x b; `quarterturn help end` explains them";
const NUMBER: &str = "check the number and its unit";
const TAKE_OUT: &str = "take one of the two out";

#[test]
fn an_unknown_word() {
    refused("R r3 d12, 7 i3 r31 ⟦z8⟧", "\"z8\" is not a word of the line", &[WORDS]);
}

#[test]
fn an_unknown_shaft() {
    let names = "it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R";
    refused("R 0, ⟦77⟧ r31", "there is no shaft \"77\" in this journal", &[names]);
    refused("⟦r31⟧ u8", "there is no shaft \"r31\" in this journal", &[names]);
}

#[test]
fn a_shaft_that_is_shot_twice() {
    refused("R 0, 7 r31, ⟦7⟧ u4", "shaft 7 stands here twice", &[TAKE_OUT]);
}

#[test]
fn a_side_that_is_said_twice() {
    refused("R 0, 7 r31 ⟦l4⟧", "this was said already", &[TAKE_OUT]);
}

#[test]
fn a_number_that_is_none() {
    refused("R 0, 7 r⟦NaN⟧", "a number was expected here", &["for example 12 or 12.5"]);
    refused("R 0, 7 r3.1⟦.⟧2", "a second decimal point", &["write one number with one point"]);
    let units = "use mm, cm, in, ft, yd or m";
    refused("R 0, 7 r1⟦e999⟧", "\"e999\" is not a unit of length here", &[units]);
    let point = "write decimals with a point, and put a blank after a comma that parts arrows";
    refused("R 0, 7 r1⟦,⟧5", "a new arrow, or a decimal?", &[point]);
}

#[test]
fn a_unit_that_does_not_belong() {
    let units = "use mm, cm, in, ft, yd or m";
    refused("R 0, 7 r3⟦gr⟧", "\"gr\" is a unit of mass, not of length", &[units]);
    refused("R 0, 7 r3⟦inn⟧", "\"inn\" is not a unit of length here", &["did you mean \"in\"?"]);
}

#[test]
fn a_hit_beyond_three_metres() {
    refused("R 0, 7 ⟦r3100⟧", "3100 mm is too much: at most 3000 mm either way", &[NUMBER]);
    refused("R 0, 7 ⟦r4m⟧", "4000 mm is too much: at most 3000 mm either way", &[NUMBER]);
}

#[test]
fn a_lean_beyond_sixty_degrees() {
    refused("R 0, 7 r3 ⟦tl61⟧", "-61 deg is too much: at most 60 deg either way", &[NUMBER]);
}

#[test]
fn an_hour_that_no_clock_has() {
    let hours = "hours run from 1 to 12; half past two is 2.5";
    refused("R 0, 7 i⟦13⟧ r3", "no clock has this hour", &[hours]);
}

#[test]
fn an_arrow_without_a_hit() {
    let ways = "type r31 u8, 2h8, 0 for the spot, x for lost or b for broken";
    refused("R 0, ⟦7⟧", "where did 7 hit?", &[ways]);
}

#[test]
fn an_escape_for_the_terminal_is_shown_and_not_obeyed() {
    let folder = crate::support::Folder::begun("1-12");
    let said = folder.run(&format!("end {JOURNAL}")).arg("R 0, 7 \u{1b}[31m").code(3);
    said.stderr_has("\\u{1b}[31m").check();
}
