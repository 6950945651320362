//! What the tests of pictures ask of a page: that texts stay on it and off one another.

use roxmltree::{Document, Node};

use super::block::WIDTH_MM;
use super::paper_box::PaperBox;
use super::text_width::{BOLD, width_mm};

/// An attribute as a number; 0 where it has none.
pub fn number(node: Node, name: &str) -> f64 {
    node.attribute(name).and_then(|value| value.parse().ok()).unwrap_or(0.0)
}

/// Where a text is written, by the safe guess of its width.
fn text_box(node: Node) -> PaperBox {
    let sized = node.ancestors().find(|node| node.has_attribute("font-size"));
    let (size, text) =
        (sized.map_or(0.0, |node| number(node, "font-size")), node.text().unwrap_or_default());
    let bold = if node.attribute("class") == Some("strong") { BOLD } else { 1.0 };
    let width = bold * width_mm(text, size);
    let left = match node.attribute("text-anchor") {
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
