//! What was glued: kept beside the history, undone, and refused where it cannot be.

use quarterturn_journal::{Deed, Entry, GlueEntry, JournalError};

use crate::scene::{Scene, stamp};

fn glue(shafts: &[&str]) -> GlueEntry {
    let shafts = shafts.iter().map(|name| (*name).to_owned()).collect();
    GlueEntry { shafts, part: "insert".into(), cure_h: 24.0, at: None }
}

#[test]
fn a_gluing_is_kept_with_its_time_and_can_be_undone() {
    let scene = Scene::begun();
    let before = scene.open().state().history().clone();
    scene.append(Entry::Glue(glue(&["1", "2", "R"]))).unwrap();
    let mut journal = scene.open();
    let kept: Vec<GlueEntry> = journal.state().glued().cloned().collect();
    assert_eq!(kept.len(), 1);
    assert_eq!((kept[0].shafts.len(), kept[0].cure_h.to_bits()), (3, 24_f64.to_bits()));
    assert!(kept[0].at.as_deref().is_some_and(|at| at.contains('T')), "{kept:?}");
    assert_eq!(*journal.state().history(), before, "the flight model hears nothing of it");
    let undone = journal.undo(&stamp(3)).unwrap();
    let names = ["1", "2", "R"].map(str::to_owned).to_vec();
    assert_eq!(undone.recalled, Some(Deed::Glued(names)));
    assert_eq!(journal.state().glued().count(), 0);
    journal.redo(&stamp(4)).unwrap();
    assert_eq!(scene.open().state().glued().cloned().collect::<Vec<_>>(), kept);
}

#[test]
fn what_cannot_be_glued_is_refused() {
    let scene = Scene::begun();
    let bytes = scene.bytes();
    let cases = [
        (glue(&[]), "shafts: at least one is needed here"),
        (glue(&["1", "9"]), "shafts[1]: there is no shaft \"9\" in this journal"),
        (glue(&["1", "1"]), "shafts[1]: shaft 1 stands here twice"),
        (GlueEntry { part: "nail".into(), ..glue(&["1"]) }, "part: \"nail\" is not known here"),
        (
            GlueEntry { cure_h: 0.0, ..glue(&["1"]) },
            "cure_h: 0 h cannot be: more than 0 and at most 672 h",
        ),
        (
            GlueEntry { at: Some("tonight".into()), ..glue(&["1"]) },
            "at: \"tonight\" is not a time with its date and zone",
        ),
    ];
    for (entry, expected) in cases {
        let JournalError::Refused { faults } = scene.append(Entry::Glue(entry)).unwrap_err() else {
            panic!("{expected}")
        };
        assert_eq!(faults[0].to_string(), expected);
    }
    assert_eq!(scene.bytes(), bytes);
}
