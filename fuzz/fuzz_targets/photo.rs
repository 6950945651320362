//! Photos: read or refused, and marks are found or not.
#![no_main]

use libfuzzer_sys::fuzz_target;
use quarterturn_geometry::Millimetres;
use quarterturn_photo::{Picture, find};

/// Larger ones are a matter of time, not of what can go wrong.
const MOST_PIXELS: u32 = 250_000;

fuzz_target!(|bytes: &[u8]| {
    let picture = match Picture::read(bytes) {
        Ok(picture) => picture,
        Err(error) => {
            assert!(!error.to_string().is_empty());
            return;
        }
    };
    let [width, height] = picture.size();
    if width.saturating_mul(height) <= MOST_PIXELS {
        let luminance = picture.luminance().expect("it is a picture");
        if let Ok(found) = find(&luminance, Millimetres::new(166.0)) {
            assert!(found.pixels.iter().all(|at| at.x_px.is_finite() && at.y_px.is_finite()));
        }
    }
});
