//! Measures of the workshop: the last of each counts, each can be undone, and what cannot be is refused.

use quarterturn_bench::SpineStandard;
use quarterturn_journal::{
    BenchEntry, BenchMeasures, Deed, Entry, Journal, JournalError, NoteEntry, SpineEntry,
};

use crate::scene::{Scene, shaft, stamp};

fn bench(shaft: &str, measures: BenchMeasures) -> Entry {
    Entry::Bench(BenchEntry { shaft: shaft.to_owned(), measures })
}

fn mass(mass_gr: f64) -> BenchMeasures {
    BenchMeasures { mass_gr: Some(mass_gr), ..BenchMeasures::default() }
}

fn spine(readings: &[(f64, f64)]) -> BenchMeasures {
    let spine = readings
        .iter()
        .map(|(side_deg, sag_in)| SpineEntry { side_deg: *side_deg, sag_in: *sag_in });
    BenchMeasures { spine: spine.collect(), ..BenchMeasures::default() }
}

/// What stands of shaft 1, in mind and on the disk.
#[track_caller]
fn of_1(scene: &Scene, journal: &Journal) -> BenchMeasures {
    let name = "1".parse().unwrap();
    let measures = journal.state().measures(&name);
    assert_eq!(scene.open().state().measures(&name), measures);
    measures
}

#[test]
fn the_last_of_each_measure_counts_and_each_can_be_undone() {
    let scene = Scene::begun();
    let mut journal = scene.open();
    let history = journal.state().history().clone();
    let length = BenchMeasures { length_mm: Some(724.0), ..BenchMeasures::default() };
    for entry in [bench("1", mass(312.4)), bench("1", length), bench("2", mass(1.0))] {
        journal.append(entry, &stamp(2)).unwrap();
    }
    journal.append(bench("1", mass(310.0)), &stamp(3)).unwrap();
    let both = of_1(&scene, &journal);
    assert_eq!((both.mass_gr, both.length_mm), (Some(310.0), Some(724.0)));
    let confirmed = journal.undo(&stamp(4)).unwrap();
    assert_eq!(confirmed.recalled, Some(Deed::Measured("1".into())));
    assert_eq!(of_1(&scene, &journal).mass_gr, Some(312.4));
    journal.redo(&stamp(5)).unwrap();
    assert_eq!(of_1(&scene, &journal).mass_gr, Some(310.0));
    assert_eq!(journal.state().history(), &history, "the flight model hears nothing of it");
}

#[test]
fn a_spine_is_one_measure_with_its_standard() {
    let scene = Scene::begun();
    let mut journal = scene.open();
    let mut older = spine(&[(-90.0, 0.41), (360.0, 0.42)]);
    older.spine_standard = Some("26in".into());
    journal.append(bench("1", older), &stamp(2)).unwrap();
    let read = of_1(&scene, &journal);
    assert_eq!(read.standard(), Ok(SpineStandard::Span26));
    assert_eq!(read.spine.iter().map(|one| one.side_deg).collect::<Vec<_>>(), [270.0, 0.0]);
    journal.append(bench("1", spine(&[(0.0, 0.5)])), &stamp(3)).unwrap();
    let read = of_1(&scene, &journal);
    assert_eq!((read.standard(), read.spine.len()), (Ok(SpineStandard::Span28), 1));
}

#[test]
fn a_shaft_that_is_lost_is_measured_all_the_same() {
    let scene = Scene::begun();
    scene.append(shaft("1", "lost")).unwrap();
    scene.append(bench("1", mass(312.4))).unwrap();
    scene.append(bench("R", mass(428.0))).unwrap();
    assert_eq!(of_1(&scene, &scene.open()).mass_gr, Some(312.4));
}

/// What is said of measures that are refused, and where.
fn refused(scene: &Scene, entry: Entry) -> (String, Option<String>) {
    let before = scene.bytes();
    let Err(JournalError::Refused { faults }) = scene.append(entry) else {
        panic!("the measures are refused")
    };
    assert_eq!(scene.bytes(), before);
    (faults[0].to_string(), faults[0].way_on())
}

#[test]
fn what_cannot_be_is_refused() {
    let scene = Scene::begun();
    let length = BenchMeasures { length_mm: Some(724.0), ..BenchMeasures::default() };
    scene.append(bench("1", length)).unwrap();
    let none = BenchMeasures::default;
    let number = "check the number and its unit";
    let cases = [
        (
            none(),
            "nothing was measured here",
            "give at least one measure, for example --mass 312.4gr",
        ),
        (mass(0.0), "mass_gr: 0 gr cannot be: more than 0 and at most 5000 gr", number),
        (mass(f64::NAN), "mass_gr: this is not a finite number", ""),
        (
            BenchMeasures { wobble_mm: Some(-0.1), ..none() },
            "wobble_mm: -0.1 mm cannot be: from 0 to 20 mm",
            number,
        ),
        (
            BenchMeasures { heavy_side_deg: Some(400.0), ..none() },
            "heavy_side_deg: 400 deg is too much: at most 360 deg either way",
            number,
        ),
        (
            spine(&[(0.0, 0.5), (90.0, 500.0)]),
            "spine[1].sag_in: 500 in cannot be: more than 0 and at most 3 in",
            number,
        ),
        (
            BenchMeasures { spine_standard: Some("27in".into()), ..spine(&[(0.0, 0.5)]) },
            "spine_standard: \"27in\" is not known here",
            "known: 28in, 26in",
        ),
        (
            BenchMeasures { balance_mm: Some(724.0), ..none() },
            "balance_mm: a balance point at 724 mm is not on a shaft of 724 mm",
            "both are taken from the groove of the nock: measure again",
        ),
    ];
    for (measures, said, way_on) in cases {
        let (what, way) = refused(&scene, bench("1", measures));
        assert_eq!((what.as_str(), way.unwrap_or_default().as_str()), (said, way_on));
    }
    let (what, way) = refused(&scene, bench("9", mass(312.4)));
    assert_eq!(what, "shaft: there is no shaft \"9\" in this journal");
    assert_eq!(way.as_deref(), Some("it has 1, 2, 3, R"));
}

/// Measures between an end and its undo do not confuse what a long journal is asked.
#[test]
fn measures_stand_among_other_entries() {
    let scene = Scene::begun();
    scene.append(bench("1", mass(312.4))).unwrap();
    scene.append(Entry::Note(NoteEntry { note: "dusk".into() })).unwrap();
    let mut journal = Journal::open_to_add(&scene.path).unwrap();
    assert_eq!(journal.undo(&stamp(3)).unwrap().recalled, Some(Deed::Noted));
    assert_eq!(journal.undo(&stamp(4)).unwrap().recalled, Some(Deed::Measured("1".into())));
    assert_eq!(of_1(&scene, &journal), BenchMeasures::default());
}
