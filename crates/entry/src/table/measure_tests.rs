//! Tables of workshop measures: what they say, and where each fault stands.

use proptest::prelude::*;
use quarterturn_journal::{BenchEntry, Entry};

use super::{TableFault, read};
use crate::Advising;

fn measured(text: &str) -> Vec<BenchEntry> {
    let bench = |entry| match entry {
        Entry::Bench(bench) => bench,
        other => panic!("{other:?}"),
    };
    read(text).unwrap().into_iter().map(|incoming| bench(incoming.entry)).collect()
}

#[test]
fn measures_by_name_in_any_order_and_unit() {
    for text in [
        "shaft,mass_gr,length_mm,spine_0_in,spine_90_in,heavy_side_deg\n7,312.5,724,0.5,0.51,90\n",
        "heavy_side_hour;length_cm;shaft;mass_gr;spine_0_in;spine_90_in\n3;72,4;7;312,5;0,5;0,51\n",
    ] {
        let read = measured(text);
        let measures = &read[0].measures;
        assert_eq!((read.len(), read[0].shaft.as_str()), (1, "7"));
        assert_eq!((measures.mass_gr, measures.length_mm), (Some(312.5), Some(724.0)));
        assert_eq!(measures.heavy_side_deg, Some(90.0));
        let sags: Vec<_> = measures.spine.iter().map(|one| (one.side_deg, one.sag_in)).collect();
        assert_eq!(sags, [(0.0, 0.5), (90.0, 0.51)]);
    }
    let grams = &measured("shaft,bare_mass_g\n7,20\n")[0].measures;
    assert!((grams.bare_mass_gr.unwrap() - 308.647).abs() < 0.001);
}

/// Each name in the journal is the name of a column, and comes to its own place.
#[test]
fn every_measure_has_its_column() {
    let names = "mass_gr,length_mm,straightness_mm,straightness_point_mm,straightness_nock_mm,crooked_side_deg,\
        cut_point_mm,cut_nock_mm,stiff_side_deg,heavy_side_deg,square_runout_mm,wobble_mm,bare_mass_gr,\
        finished_mass_gr,balance_mm";
    let values: Vec<String> = (1..=15).map(|n| n.to_string()).collect();
    let text = format!("shaft,{names},spine_standard\n7,{},26in\n", values.join(","));
    let json = serde_json::to_value(&measured(&text)[0]).unwrap();
    for (name, value) in names.split(',').zip(1..) {
        assert_eq!(json[name], f64::from(value), "{name}");
    }
    assert_eq!(json["spine_standard"], "26in");
}

#[test]
fn what_was_not_measured_is_left_out() {
    let read = measured("shaft,mass_gr,wobble_mm\n7,312,\n8,,0.1\n");
    assert_eq!((read[0].measures.wobble_mm, read[1].measures.mass_gr), (None, None));
    assert_eq!((read[0].measures.mass_gr, read[1].measures.wobble_mm), (Some(312.0), Some(0.1)));
}

/// What is wrong first in a table, where it stands, and the way on.
#[track_caller]
fn refused(text: &str, place: &str, said: &str, way_on: &str) {
    let faults = read(text).unwrap_err();
    assert_eq!(&text[faults[0].span.clone()], place, "{text}");
    assert_eq!(faults[0].fault.to_string(), said, "{text}");
    assert_eq!(faults[0].fault.way_on().as_deref(), Some(way_on), "{text}");
}

#[test]
fn a_column_needs_its_unit() {
    for (name, choices) in [
        ("length", "length_mm, length_cm or length_in"),
        ("cut_nock_gr", "cut_nock_mm, cut_nock_cm or cut_nock_in"),
        ("spine_0_gr", "spine_0_mm, spine_0_cm or spine_0_in"),
        ("bare_mass", "bare_mass_gr or bare_mass_g"),
    ] {
        let text = format!("shaft,mass_gr,{name}\n7,1,2\n");
        let said = format!("in which unit is \"{name}\"?");
        refused(&text, name, &said, &format!("call it {choices}"));
    }
    let meant = "did you mean \"wobble_mm\"?";
    let unknown = "no column is called \"wobbel_mm\"";
    refused("shaft,mass_gr,wobbel_mm\n7,1,2\n", "wobbel_mm", unknown, meant);
}

#[test]
fn every_fault_stands_where_it_is() {
    let twice = "another column says this already";
    refused("shaft,mass_gr,mass_g\n7,1,2\n", "mass_g", twice, "take one of the two out");
    let text = "shaft,spine_0_in,spine_360_mm\n7,1,2\n";
    refused(text, "spine_360_mm", twice, "take one of the two out");
    let no_shaft = "no column is called \"shaft\"";
    let example = "for example: shaft,x_mm,y_mm and below it 7,31,8";
    refused("mass_gr,wobble_mm\n1,2\n", "mass_gr,wobble_mm", no_shaft, example);
    let unit = "the unit is in the name of the column";
    refused("shaft,mass_gr\n7,312gr\n", "312gr", unit, "write the number alone");
    let name = "write the name of the shaft or the reference";
    refused("shaft,mass_gr\n,312\n", ",312", "whose measures are these?", name);
    let cells = "this line has 3 cells, and there are 2 columns";
    let quotes = "put a cell with a comma, a semicolon or a line end in quotes";
    refused("shaft,mass_gr\n7,312,5\n", "7,312,5", cells, quotes);
    let none = "there is no line below the names of the columns";
    refused("shaft,mass_gr\n", "shaft,mass_gr", none, example);
    // A table of shots stays one.
    let mixed = read("shaft,x_mm,y_mm,mass_gr\n7,1,2,3\n").unwrap_err();
    assert!(matches!(&mixed[0].fault, TableFault::UnknownColumn { name, .. } if name == "mass_gr"));
}

proptest! {
    #[test]
    fn whatever_is_read_is_read_or_shown_where_it_is_wrong(
        text in "shaft,mass_gr(,spine_0_in|,wobble|_mm|,length_cm|[,;\t\n\"7R=1.5e ½\r]){0,40}",
    ) {
        if let Err(faults) = read(&text) {
            prop_assert!(!faults.is_empty());
            for fault in faults {
                prop_assert!(text.get(fault.span).is_some() && fault.fault.way_on().is_some());
            }
        }
    }
}
