//! What is entered comes back bit for bit.

use std::path::Path;

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use quarterturn_journal::{EndEntry, Entry, Journal, ShotEntry, read_end};
use quarterturn_tuning::Event;

use crate::scene::{beginning, stamp};
use crate::simulated::SimulatedDisk;

/// Any number of the kind that hands and programs write, up to `most` either way.
fn number(most: f64) -> impl Strategy<Value = f64> {
    prop_oneof![
        -most..=most,
        (-most..=most).prop_map(f64::round),
        (-1.0..=1.0_f64).prop_map(|tiny| tiny * f64::MIN_POSITIVE),
        Just(0.0),
        Just(most),
    ]
}

/// A pair of coordinates, both there or neither.
fn pair(most: f64) -> impl Strategy<Value = Option<[f64; 2]>> {
    option::of([number(most), number(most)])
}

prop_compose! {
    fn shot(shaft: &'static str)(
        index_deg in option::of(0.0..360.0_f64),
        hit in [number(3000.0), number(3000.0)],
        lean in pair(60.0),
        call in option::of(prop_oneof![Just("good"), Just("poor")]),
        flags in vec(prop_oneof![Just("wind"), Just("doubtful"), Just("nock-moved")], 0..3),
        read_sd_mm in option::of(0.001..1000.0_f64),
    ) -> ShotEntry {
        ShotEntry {
            shaft: shaft.to_owned(),
            index_deg,
            x_mm: Some(hit[0]),
            y_mm: Some(hit[1]),
            lean_x_deg: lean.map(|lean| lean[0]),
            lean_y_deg: lean.map(|lean| lean[1]),
            call: call.map(str::to_owned),
            flags: flags.into_iter().map(str::to_owned).collect(),
            read_sd_mm,
            lean_sd_deg: None,
            ..ShotEntry::default()
        }
    }
}

prop_compose! {
    fn end()(
        shots in [shot("R"), shot("1"), shot("2"), shot("3")],
        note in option::of(any::<String>()),
        distance_m in option::of(0.5..200.0_f64),
    ) -> EndEntry {
        EndEntry { shots: shots.into(), note, distance_m, ..EndEntry::default() }
    }
}

/// The numbers of a shot, as bits; those that were left out too.
fn bits(shot: &ShotEntry) -> Vec<Option<u64>> {
    let ShotEntry { x_mm, y_mm, lean_x_deg, lean_y_deg, read_sd_mm, .. } = shot;
    let numbers = [x_mm, y_mm, lean_x_deg, lean_y_deg, read_sd_mm];
    // −0 is written as 0.
    numbers.map(|number| number.map(|number| (number + 0.0).to_bits())).into()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn an_end_comes_back_as_it_was_entered(entered in end()) {
        let (disk, path) = (SimulatedDisk::new(0), Path::new("dozen.jsonl"));
        let mut journal = Journal::create_on(disk.clone(), path, beginning(), &stamp(1)).unwrap();
        let Entry::End(written) = journal.append(Entry::End(entered.clone()), &stamp(2)).unwrap().record.entry
        else { panic!("an end was appended") };
        for (entered, written) in entered.shots.iter().zip(&written.shots) {
            prop_assert_eq!(bits(entered), bits(written));
        }
        prop_assert_eq!(&entered.note, &written.note);

        // Read again from the disk it means the same, and its data read as an end is the same end.
        let again = Journal::open_on(disk.clone(), path).unwrap();
        prop_assert_eq!(again.state().history(), journal.state().history());
        let bytes = disk.bytes(path).unwrap();
        let line = bytes.split(|byte| *byte == b'\n').nth(1).unwrap();
        let line: serde_json::Value = serde_json::from_slice(line).unwrap();
        let data = serde_json::to_string(&line["data"]).unwrap();
        prop_assert_eq!(read_end(&data).unwrap(), written);
        let Some(Event::End(end)) = journal.state().history().events.last() else { panic!("an end stands") };
        for (shot, entered) in end.shots.iter().zip(&entered.shots) {
            prop_assert_eq!(shot.hit.unwrap().at.x_mm.to_bits(), (entered.x_mm.unwrap() + 0.0).to_bits());
        }
    }

    #[test]
    fn no_text_makes_the_reader_fail(text in any::<String>()) {
        for fault in read_end(&text).err().into_iter().flatten() {
            prop_assert!(text.get(fault.span(&text)).is_some());
        }
    }

    #[test]
    fn no_bytes_make_the_journal_fail(bytes in vec(any::<u8>(), 0..200)) {
        let (disk, path) = (SimulatedDisk::new(0), Path::new("dozen.jsonl"));
        disk.put(path, &bytes);
        prop_assert!(Journal::open_on(disk, path).is_err());
    }
}
