//! Helvetica, which every reader of PDF has: what it can write, and how wide that is.

/// Advance widths of the characters from space to tilde, thousandths of the size.
///
/// # Source
/// Adobe Systems, Core 14 AFM files, Helvetica.afm; from memory.
const WIDTHS: [u16; 95] = [
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];
/// What any other character is taken for: most of them are letters with an accent.
const OTHER: u16 = 600;

/// How wide a text of this size is, mm.
pub fn width_mm(text: &str, size_mm: f64) -> f64 {
    let thousandths: u32 = text.chars().map(|c| u32::from(width(c))).sum();
    f64::from(thousandths) / 1000.0 * size_mm
}

fn width(c: char) -> u16 {
    let place = u32::from(c).checked_sub(u32::from(' ')).and_then(|at| usize::try_from(at).ok());
    place.and_then(|at| WIDTHS.get(at)).copied().unwrap_or(OTHER)
}

/// The bytes of a text in the encoding that the font is read with; a character it has not got becomes a question mark.
///
/// # Source
/// ISO 32000-1:2008, annex D.2, `WinAnsiEncoding`: Latin-1, and a few more where that has control characters.
pub fn encoded(text: &str) -> Vec<u8> {
    text.chars().map(|c| byte(c).unwrap_or(b'?')).collect()
}

/// Whether the font has every character of a text.
pub fn can_write(text: &str) -> bool {
    text.chars().all(|c| byte(c).is_some())
}

fn byte(c: char) -> Option<u8> {
    match c {
        ' '..='~' | '\u{a0}'..='\u{ff}' => u8::try_from(u32::from(c)).ok(),
        '€' => Some(0x80),
        '…' => Some(0x85),
        '‘' => Some(0x91),
        '’' => Some(0x92),
        '“' => Some(0x93),
        '”' => Some(0x94),
        '–' => Some(0x96),
        '—' => Some(0x97),
        _ => None,
    }
}
