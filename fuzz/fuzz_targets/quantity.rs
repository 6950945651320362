//! Numbers with units: each is read to a finite number, or shown where it is wrong.
#![no_main]

use libfuzzer_sys::fuzz_target;
use quarterturn_entry::Advising;
use quarterturn_entry::quantity::{Unit, angle_deg, leading_number, length, mass_gr, speed_m_s};

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = str::from_utf8(bytes) else { return };
    let lengths = [length(text, None), length(text, Some(Unit::INCH))].map(|l| l.map(|l| l.mm()));
    for read in lengths.into_iter().chain([mass_gr(text), speed_m_s(text), angle_deg(text)]) {
        match read {
            Ok(value) => assert!(value.is_finite()),
            Err(fault) => {
                assert!(text.get(fault.span).is_some() && fault.fault.way_on().is_some());
            }
        }
    }
    if let Ok(number) = leading_number(text) {
        // Printed and read again it is the same number.
        let printed = format!("{}", number.value);
        if let Ok(again) = leading_number(&printed) {
            assert_eq!(again.value.to_bits(), number.value.to_bits());
        }
    }
});
