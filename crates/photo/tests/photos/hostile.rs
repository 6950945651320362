//! Pictures that were damaged: read or refused, never worse.

use quarterturn_geometry::Millimetres;
use quarterturn_photo::{Picture, find};
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64;

const PHOTO: &[u8] = include_bytes!("../../../../fixtures/photo/slanting.jpg");
const TRIES: u64 = 100;

#[test]
fn a_damaged_picture_is_read_or_refused() {
    let mut random = Pcg64::seed_from_u64(7);
    let (mut read, mut refused) = (0, 0);
    for _ in 0..TRIES {
        let mut bytes = PHOTO.to_vec();
        for _ in 0..random.random_range(1..20) {
            // The first bytes say how it is to be read.
            let most = if random.random() { 700 } else { bytes.len() };
            let at = random.random_range(0..most);
            bytes[at] = random.random();
        }
        match Picture::read(&bytes) {
            Ok(picture) => {
                let luminance = picture.luminance().unwrap();
                read += 1;
                if read <= 10 {
                    // It is found or not; what matters is that this ends.
                    let _ = find(&luminance, Millimetres::new(166.0));
                }
            }
            Err(error) => {
                refused += 1;
                assert!(!error.to_string().is_empty());
            }
        }
    }
    assert!(read > 10 && refused > 10, "{read} read, {refused} refused");
}

/// A picture full of marks of all kinds, of which no four are those of one face.
#[test]
fn a_picture_full_of_marks_has_no_set() {
    let (wide, high) = (1200_usize, 900_usize);
    let shade = |at: usize| {
        let (x, y) = ((at % wide) as f64, (at / wide) as f64);
        let (column, row) = ((x / 50.0).floor(), (y / 50.0).floor());
        let (right, down) = (x - 50.0 * column - 25.0, y - 50.0 * row - 25.0);
        let out_mm = right.hypot(down) / 3.0;
        let kind = (column * 7.0 + row * 5.0) % 3.0;
        let dot_mm = [2.9, 1.8, 1.0][if kind < 1.0 {
            0
        } else if kind < 2.0 {
            1
        } else {
            2
        }];
        if out_mm < dot_mm || (4.2..6.0).contains(&out_mm) { 20 } else { 230 }
    };
    let values = (0..wide * high).map(shade).collect();
    let picture = quarterturn_photo::Luminance::new(wide, high, values).unwrap();
    assert!(find(&picture, Millimetres::new(166.0)).is_err());
}
