//! Tails in a photo that cannot be, and lenses and sizes that cannot be used.

use super::photo::{GOOD, WHAT, refused, refused_hole};
use super::{Marked, plain};
use crate::photo::{SPACING, folder};

/// A photo in which nocks are seen, and what is said of it.
const NOCKS: [&str; 5] = ["nocks.jpg", "--spacing", SPACING, "--lens", "100mm"];
/// Four marks seen from the side of the nocks, without the picture.
const SIDE: [&str; 8] = [
    "--spacing",
    SPACING,
    "--lens",
    "26mm",
    "--size",
    "4000,3000",
    "--marks",
    "2592,1232 3024,1184 3024,1815 2592,1767",
];
const CHECK: &str = "check how far it sticks out, as s62cm, the pixels of its hole and of the end of its nock, and --lens: a zoom of 2 \
    makes 52mm of 26mm";

#[test]
fn tails_that_cannot_be() {
    let folder = folder();
    let size = "the picture has 1600 by 1200 pixels";
    let aside = "take the picture from straighter ahead and from farther out than the nocks stand; or take this tail out";
    for (options, hole, label, hint) in [
        (&NOCKS[..], "R=675,544 ⟦t9210,639⟧", "this is outside the picture", size),
        (
            &NOCKS,
            "7=786,618 ⟦t1164,867⟧ i3",
            "leans are read beside the reference, and its tail is not given",
            "give the pixel of the tail of R as well",
        ),
        (
            &NOCKS,
            "R=675,544 ⟦t921,639⟧ s3m",
            "no arrow that sticks out 3000 mm of this hole has its tail here",
            CHECK,
        ),
        (
            &SIDE,
            "R=2790,1500 ⟦t312,1500⟧ s60cm",
            "an arrow that sticks out 600 mm cannot have its tail here: it takes 620 mm at least",
            CHECK,
        ),
        (
            &SIDE,
            "R=2790,1500 ⟦t441,1472⟧ s60cm",
            "this shaft is seen too much from the side: more than one lean fits",
            aside,
        ),
    ] {
        let marked = Marked::of(hole);
        let message = marked.message(WHAT, None, label, &[hint]);
        refused(&folder, &[options, &["--hole", &marked.text]].concat(), 3, &message);
    }
}

#[test]
fn tails_that_are_read_in_two_ways() {
    let hint = "leans are compared, so read all tails of an end one way: this one in the picture as well, as t1130,702, or none there";
    let label = "the other tails are read in the picture, and this one is not";
    let both = Marked::of("R=675,544 t921,639 ⟦tl2⟧");
    refused_hole(&both, label, &[hint]);
    let again = Marked::of("R=675,544 t921,639 ⟦t5,6⟧");
    refused_hole(&again, "this was said already", &["take one of the two out"]);
    let half = Marked::of("R=675,544 t921,⟦y⟧");
    let count = "to the right and down, as picture viewers count: 1204,833";
    refused_hole(&half, "this is no number of pixels", &[count]);
}

#[test]
fn lenses_that_marks_do_not_go_with() {
    let folder = folder();
    let at_the_butt = "or take the pixels of tails out, and say what was read at the butt";
    let message = plain(
        "the marks do not go with this lens before a whole picture: by them it is one of about 130 mm",
        &["leave --lens out if you zoomed or the picture was cut", at_the_butt],
    );
    let hole = ["--spacing", SPACING, "--hole", "R=442,347 t500,500"];
    refused(&folder, &[&["face.jpg", "--lens", "26mm"], &hole[..]].concat(), 3, &message);
    // Two marks that were misread by a quarter of the picture.
    let message = plain(
        "the marks go with no usual lens before a whole picture, and so no lean is read",
        &[
            "was it cut, or does its lens bend straight lines? read the marks again, or take the picture as the telephone made it",
            at_the_butt,
        ],
    );
    let marks = ["--marks", "1000,1000 3000,1000 3000,1500 800,2600", "--size", "4000,3000"];
    refused(&folder, &[&marks, &hole[..]].concat(), 3, &message);
    let message = plain(
        "the marks do not go with this lens before a whole picture",
        &["leave --lens out if you zoomed or the picture was cut", at_the_butt],
    );
    refused(&folder, &[&marks, &hole[..], &["--lens", "26mm"]].concat(), 3, &message);
}

#[test]
fn lenses_and_sizes_that_cannot_be_read() {
    let folder = folder();
    let hole = ["--spacing", SPACING, "--marks", GOOD, "--hole", "R=1500,1400 t1500,1500"];
    let message = plain(
        "a tail is read only in a picture whose size is known",
        &[
            "name the photo behind the journal",
            "or say how many pixels it has across and down: --size 4000,3000",
        ],
    );
    refused(&folder, &hole, 2, &message);
    for (option, value, label, hints) in [
        ("--lens", "⟦2mm⟧", "5 to 1000 mm are possible", &[][..]),
        ("--size", "⟦4000,0.5⟧", "whole pixels across and down, 1 to 100000, are expected", &[]),
        (
            "--size",
            "⟦4000⟧",
            "a pixel is two numbers with a comma between them",
            &["to the right and down, as picture viewers count: 1204,833"],
        ),
    ] {
        let marked = Marked::of(value);
        let what = format!("the value of {option} cannot be used");
        let message = marked.message(&what, None, label, hints);
        let size = if option == "--lens" { &["--size", "4000,3000"][..] } else { &[] };
        refused(&folder, &[&hole, size, &[option, &marked.text]].concat(), 2, &message);
    }
}
