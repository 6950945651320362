//! An end as JSON: it is read or shown where it is wrong, and written and read again it is the same.
#![no_main]

use libfuzzer_sys::fuzz_target;
use quarterturn_journal::read_end;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = str::from_utf8(bytes) else { return };
    match read_end(text) {
        Ok(end) => {
            let _ = end.unread();
            let written = serde_json::to_string(&end).unwrap();
            assert_eq!(read_end(&written).unwrap_or_else(|f| panic!("{f:?} in {written}")), end);
        }
        Err(faults) => {
            assert!(!faults.is_empty());
            for fault in faults {
                assert!(text.get(fault.span(text)).is_some(), "{fault:?}");
                assert!(!fault.to_string().is_empty());
            }
        }
    }
});
