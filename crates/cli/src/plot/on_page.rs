//! What the tests of pictures ask of a page: that texts stay on it and off one another.

use roxmltree::{Document, Node};

use super::block::WIDTH_MM;
use super::paper_box::PaperBox;
use super::text_width::{BOLD, width_mm};

/// An attribute as a number; 0 where it has none.
pub fn number(node: Node, name: &str) -> f64 {
    node.attribute(name).and_then(|value| value.parse().ok()).unwrap_or(0.0)
}

/// An attribute of an element, or of the group that says it for all within.
pub fn said<'a>(node: Node<'a, '_>, name: &str) -> Option<&'a str> {
    node.ancestors().find_map(|node| node.attribute(name))
}

/// How many shapes of a class are drawn; of those in one path, each.
pub fn drawn(svg: &str, class: &str) -> usize {
    let document = Document::parse(svg).unwrap();
    let shapes = document.descendants().filter(|node| !node.has_tag_name("g") && node.is_element());
    let of_class = shapes.filter(|node| said(*node, "class") == Some(class));
    of_class.map(|node| node.attribute("d").map_or(1, |path| path.matches('M').count())).sum()
}

/// Every place that an element names, in the coordinates of the file.
pub fn places(node: Node) -> Vec<(f64, f64)> {
    let named = [("x", "y"), ("cx", "cy")].into_iter().filter(|(x, _)| node.has_attribute(*x));
    let named = named.map(|(x, y)| (number(node, x), number(node, y)));
    named.chain(path(node.attribute("d").unwrap_or_default())).collect()
}

/// The places of path data as our writer writes it: M, h, v, l and z.
fn path(data: &str) -> Vec<(f64, f64)> {
    let (mut at, mut places) = ((0.0, 0.0), Vec::new());
    let starts: Vec<usize> =
        data.match_indices(|c: char| c.is_ascii_alphabetic()).map(|(at, _)| at).collect();
    for (k, &start) in starts.iter().enumerate() {
        let part = &data[start + 1..starts.get(k + 1).copied().unwrap_or(data.len())];
        let spaced = part.replace('-', " -");
        let numbers: Vec<f64> =
            spaced.split_whitespace().map(|number| number.parse().unwrap()).collect();
        at = match (&data[start..=start], numbers.as_slice()) {
            ("M", [x, y]) => (*x, *y),
            ("h", [x]) => (at.0 + x, at.1),
            ("v", [y]) => (at.0, at.1 + y),
            ("l", [x, y]) => (at.0 + x, at.1 + y),
            ("z", []) => continue,
            other => panic!("{other:?}"),
        };
        places.push(at);
    }
    places
}

/// Where a text is written, by the safe guess of its width.
fn text_box(node: Node) -> PaperBox {
    let sized = node.ancestors().find(|node| node.has_attribute("font-size"));
    let (size, text) =
        (sized.map_or(0.0, |node| number(node, "font-size")), node.text().unwrap_or_default());
    let bold = if said(node, "class") == Some("strong") { BOLD } else { 1.0 };
    let width = bold * width_mm(text, size);
    let left = match said(node, "text-anchor") {
        Some("middle") => -width / 2.0,
        Some("end") => -width,
        _ => 0.0,
    };
    let (left_mm, base_mm) = (number(node, "x") + left, -number(node, "y"));
    let (right_mm, bottom_mm, top_mm) = (left_mm + width, base_mm, base_mm + 0.72 * size);
    PaperBox { left_mm, bottom_mm, right_mm, top_mm }
}

/// Fails where two texts overlap or one leaves the page.
#[track_caller]
pub fn assert_texts_apart(svg: &str) {
    let document = Document::parse(svg).unwrap();
    let texts: Vec<Node> =
        document.descendants().filter(|node| node.has_tag_name("text")).collect();
    for (k, &text) in texts.iter().enumerate() {
        let area = text_box(text);
        assert!(area.left_mm >= 0.0 && area.right_mm <= WIDTH_MM, "{:?}", text.text());
        for &other in &texts[..k] {
            let apart = !area.overlaps(text_box(other));
            assert!(apart, "{:?} over {:?}", text.text(), other.text());
        }
    }
}
