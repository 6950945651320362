//! Whether a JPEG is there to its end, which its decoder does not ask: what is missing comes out grey.

/// Begins what is compressed.
const SCAN: u8 = 0xda;
const END: [u8; 2] = [0xff, 0xd9];

/// Whether the end of the picture is there, once its compressed part has begun; other files have no such end to lack.
pub(crate) fn has_end(bytes: &[u8]) -> bool {
    let Some(mut rest) = bytes.strip_prefix(&[0xff, 0xd8]) else { return true };
    // The segments before the first scan say how long they are; a small picture in one of them has an end of its own.
    while let [0xff, marker, high, low, ..] = *rest {
        if marker == SCAN {
            return rest.windows(2).any(|two| two == END);
        }
        let length = 2 + usize::from(u16::from_be_bytes([high, low]));
        rest = rest.get(length..).unwrap_or_default();
    }
    false
}

#[cfg(test)]
mod tests {
    use super::has_end;

    #[test]
    fn the_end_of_a_small_picture_within_is_not_the_end() {
        let notes = [0xff, 0xe1, 0, 4, 0xff, 0xd9];
        let scan = [0xff, 0xda, 0, 2, 1, 2, 3];
        let cut = [&[0xff, 0xd8], &notes[..], &scan].concat();
        assert!(!has_end(&cut));
        assert!(has_end(&[&cut[..], &[0xff, 0xd9]].concat()));
        assert!(!has_end(&[0xff, 0xd8]) && !has_end(&cut[..5]));
        assert!(has_end(b"\x89PNG"));
    }
}
