//! What is drawn can be told from the paper, in the light and in the dark.

use std::collections::BTreeMap;

const STYLE: &str = include_str!("style.css");
/// Contrast of marks that carry meaning. Source: WCAG 2.2, success criterion 1.4.11.
const MARK: f64 = 3.0;
/// Contrast of text. Source: WCAG 2.2, success criterion 1.4.3.
const TEXT: f64 = 4.5;

/// The colours of the rules in a part of the style: selector and property, in the order of the file.
fn colours(part: &'static str) -> BTreeMap<(&'static str, &'static str), [f64; 3]> {
    let mut found = BTreeMap::new();
    for (selectors, rest) in part.lines().filter_map(|line| line.split_once(" {")) {
        for (property, value) in rest.split(';').filter_map(|rule| rule.trim().split_once(": ")) {
            if let Some(hex) = value.trim_end_matches(" }").strip_prefix('#') {
                let channel =
                    |at: usize| f64::from(u8::from_str_radix(&hex[at..at + 2], 16).unwrap());
                for selector in selectors.split(", ") {
                    found.insert((selector, property), [channel(0), channel(2), channel(4)]);
                }
            }
        }
    }
    found
}

/// Source: WCAG 2.2, definition of relative luminance.
fn luminance(colour: [f64; 3]) -> f64 {
    let [r, g, b] = colour.map(|channel| match channel / 255.0 {
        c if c <= 0.04045 => c / 12.92,
        c => ((c + 0.055) / 1.055).powf(2.4),
    });
    0.2126 * r + 0.7152 * g + 0.0722 * b
}

/// Source: WCAG 2.2, definition of contrast ratio.
fn contrast(a: [f64; 3], b: [f64; 3]) -> f64 {
    let [a, b] = [a, b].map(|colour| luminance(colour) + 0.05);
    a.max(b) / a.min(b)
}

#[test]
fn black_on_white_is_twenty_one_to_one() {
    assert_eq!(format!("{:.2}", contrast([0.0; 3], [255.0; 3])), "21.00");
}

#[test]
fn marks_and_texts_stand_out_in_the_light_and_in_the_dark() {
    let (light, dark) = STYLE.split_once("@media").unwrap();
    let light = colours(light);
    let mut both = light.clone();
    both.extend(colours(dark));
    let marks = [
        ("text", "fill", TEXT),
        (".quiet", "fill", TEXT),
        (".face", "stroke", MARK),
        (".axis", "stroke", MARK),
        (".leader", "stroke", MARK),
        (".tolerance", "stroke", MARK),
        (".reference", "stroke", MARK),
        (".spot", "stroke", MARK),
        (".frame", "stroke", MARK),
        (".judged", "fill", MARK),
        (".other", "fill", MARK),
        (".left-out", "stroke", MARK),
        (".first", "stroke", MARK),
        (".way", "stroke", MARK),
        (".band", "stroke", MARK),
        (".sky", "fill", MARK),
        (".keep", "fill", MARK),
        (".open", "stroke", MARK),
        (".retire", "fill", MARK),
        (".common", "stroke", MARK),
    ];
    for colours in [light, both] {
        let paper = colours[&(".paper", "fill")];
        for (selector, property, least) in marks {
            let reached = contrast(colours[&(selector, property)], paper);
            assert!(reached >= least, "{selector} {property}: {reached:.2}");
        }
    }
}
