//! The typed line: it is read or shown where it is wrong, and what is printed is read again.
#![no_main]

use libfuzzer_sys::fuzz_target;
use quarterturn_entry::quantity::Unit;
use quarterturn_entry::shorthand::{amendments, parse, printed};
use quarterturn_entry::{Advising, Located};

fuzz_target!(|bytes: &[u8]| {
    let Ok(line) = str::from_utf8(bytes) else { return };
    // Half of them in another unit.
    let unit = if line.len() % 2 == 0 { Unit::MILLIMETRE } else { Unit::INCH };
    {
        if let Err(Located { fault, span }) = amendments(line, unit) {
            assert!(line.get(span).is_some() && fault.way_on().is_some() && !fault.to_string().is_empty());
        }
        let shots = match parse(line, unit) {
            Ok(end) => end.entry.shots,
            Err(Located { fault, span }) => {
                assert!(line.get(span).is_some() && fault.way_on().is_some());
                return;
            }
        };
        let again = printed(&shots, unit);
        let read = parse(&again, unit).unwrap_or_else(|fault| panic!("{fault:?} in {again}"));
        assert_eq!(read.entry.shots, shots, "{again}");
        assert_eq!(printed(&read.entry.shots, unit), again);
    }
});
