//! The sheets as a printer sees them: on the page, in true size, whatever stands on them.

use std::f64::consts::PI;

use quarterturn_geometry::{Index, Millimetres};
use quarterturn_tuning::{Aim, PlannedShot, Purpose, ShaftName};
use roxmltree::{Document, Node};

use super::correction::BAR_MM;
use super::helvetica::{encoded, width_mm};
use super::tiles::{OVERLAP_MM, tiles};
use super::*;
use crate::plot::{Anchor, PaperBox, PaperPoint, Segment, Shape};

/// Two decimals in a file; mm.
const TWO_DECIMALS: f64 = 0.006;
const HOSTILE: &str = "<b>&\"\u{202e}Fen\u{1b}[31m";

fn page(size: PaperSize) -> Page {
    Page { size, correction: Correction::NONE }
}

fn corrected(across_mm: f64, up_mm: f64) -> Page {
    let [across, up] = [across_mm, up_mm].map(Millimetres::new);
    Page { size: PaperSize::Letter, correction: Correction::measured(across, up).unwrap() }
}

fn shots(names: &[String]) -> Vec<PlannedShot> {
    let shot = |(at, name): (usize, &String)| {
        let (from, index) = (Index::from_hour(at as f64), Index::from_hour(7.5 * at as f64));
        let purpose = Purpose::Bare { index, from, aim: Aim::Try };
        PlannedShot { shaft: name.parse::<ShaftName>().unwrap(), purpose }
    };
    names.iter().enumerate().map(shot).collect()
}

/// Every sheet there is, for so many shafts with these names.
fn all(page: Page, names: &[String]) -> Vec<Sheet> {
    let shots = shots(names);
    let on_card = Card {
        journal: HOSTILE,
        distance: "18.3 m",
        shots: &shots,
        settles: "It should settle 7.",
    };
    let turns: Vec<Turn<'_>> =
        names.iter().map(|name| Turn::new(name, Index::TWELVE, Index::from_hour(4.0))).collect();
    let said = names
        .iter()
        .map(|name| Label { shaft: name.clone(), said: "keep".to_owned() })
        .collect::<Vec<_>>();
    let mut sheets = face(page, Millimetres::new(400.0), Grid::CENTIMETRES);
    sheets.extend(face(page, page.widest_square(), Grid::INCHES));
    sheets.extend(card(page, &on_card));
    sheets.push(log(page));
    sheets.extend(dials(page, Millimetres::new(9.3), &turns));
    sheets.extend(labels(page, &said));
    sheets
}

fn names(shafts: usize) -> Vec<String> {
    (1..=shafts)
        .map(|n| if n == 1 { "W".repeat(ShaftName::LONGEST) } else { n.to_string() })
        .collect()
}

/// The smallest upright rectangle about a shape, nothing for what is cut off at a window.
fn extent(shape: &Shape) -> Option<PaperBox> {
    let of = |corners: &[PaperPoint]| {
        let x = corners.iter().map(|at| at.x_mm);
        let y = corners.iter().map(|at| at.y_mm);
        PaperBox {
            left_mm: x.clone().fold(f64::MAX, f64::min),
            right_mm: x.fold(f64::MIN, f64::max),
            bottom_mm: y.clone().fold(f64::MAX, f64::min),
            top_mm: y.fold(f64::MIN, f64::max),
        }
    };
    Some(match shape {
        Shape::Line { along: Segment { from, to }, .. } => of(&[*from, *to]),
        Shape::Circle { centre, radius_mm, .. } => of(&[*centre]).grown(*radius_mm),
        Shape::Polygon { corners, .. } => of(corners),
        Shape::Rectangle { area, .. } | Shape::Photo { area, .. } | Shape::Clipped { area, .. } => {
            *area
        }
        Shape::Text { at, anchor, size_mm, text, .. } => {
            let wide_mm = width_mm(text, *size_mm);
            let left_mm = match anchor {
                Anchor::Start => 0.0,
                Anchor::Middle => wide_mm / 2.0,
                Anchor::End => wide_mm,
            };
            of(&[at.moved(-left_mm, 0.0), at.moved(wide_mm - left_mm, 0.7 * size_mm)])
        }
        Shape::Ellipse { .. } | Shape::Group { .. } => return None,
    })
}

#[test]
fn nothing_leaves_what_a_printer_can_reach() {
    for page in [page(PaperSize::A4), page(PaperSize::Letter), corrected(91.0, 108.0)] {
        for shafts in 1..=24 {
            for sheet in all(page, &names(shafts)) {
                let stretch = sheet.correction.stretch();
                let [wide_mm, high_mm] = page.size.width_and_height_mm();
                for shape in &sheet.canvas.shapes {
                    let area = extent(shape).unwrap();
                    let told = format!("{} of {shafts}: {shape:?}", sheet.title);
                    assert!(
                        area.left_mm * stretch.x > 5.0 && area.bottom_mm * stretch.y > 5.0,
                        "{told}"
                    );
                    assert!(area.right_mm * stretch.x < wide_mm - 5.0, "{told}");
                    assert!(area.top_mm * stretch.y < high_mm - 5.0, "{told}");
                }
            }
        }
    }
}

/// The lengths of all straight lines across and up, as they come out of a printer that shrinks by `across` and `up`.
fn printed_lengths(sheet: &Sheet, across: f64, up: f64) -> Vec<f64> {
    let stretch = sheet.correction.stretch();
    let lines = sheet.canvas.shapes.iter().filter_map(|shape| match shape {
        Shape::Line { along: Segment { from, to }, .. } => {
            Some((to.x_mm - from.x_mm, to.y_mm - from.y_mm))
        }
        _ => None,
    });
    lines.map(|(x, y)| (x * stretch.x * across).hypot(y * stretch.y * up)).collect()
}

#[test]
fn the_bars_come_out_of_a_printer_that_shrinks_as_they_say() {
    let sheet = log(corrected(97.2, 97.5));
    let lengths = printed_lengths(&sheet, 0.972, 0.975);
    let have = |mm: f64| lengths.iter().filter(|length| (*length - mm).abs() < 1e-9).count();
    assert_eq!(have(BAR_MM), 2, "one across and one up");
    assert_eq!(have(50.8), 2, "two inches, exactly 50.8 mm by the agreement of 1959");
}

#[test]
fn a_bar_far_off_is_refused() {
    let measured = |across_mm: f64, up_mm: f64| {
        Correction::measured(Millimetres::new(across_mm), Millimetres::new(up_mm))
    };
    for (across_mm, up_mm) in [(89.9, 100.0), (100.0, 110.1), (f64::NAN, 100.0), (0.0, 100.0)] {
        assert!(measured(across_mm, up_mm).is_err(), "{across_mm}, {up_mm}");
    }
    for (across_mm, up_mm) in [(90.0, 110.0), (100.0, 100.0)] {
        assert!(measured(across_mm, up_mm).is_ok(), "{across_mm}, {up_mm}");
    }
}

/// Source: ISO 216:2007 for A4; ANSI/ASME Y14.1 for Letter: 8.5 by 11 in.
#[test]
fn a_file_has_the_size_of_its_paper() {
    for (size, svg, media) in [
        (PaperSize::A4, "width=\"210mm\" height=\"297mm\"", "[0 0 595.2756 841.8898]"),
        (PaperSize::Letter, "width=\"215.9mm\" height=\"279.4mm\"", "[0 0 612 792]"),
    ] {
        let sheet = log(page(size));
        assert!(sheet.svg().contains(svg), "{svg}");
        let file = pdf(&[sheet.clone(), sheet]);
        let text = String::from_utf8_lossy(&file);
        assert!(text.starts_with("%PDF-") && text.contains("/PrintScaling /None"), "{size:?}");
        assert_eq!(text.matches(&format!("/MediaBox {media}")).count(), 2, "{text}");
    }
    let sheet = log(corrected(95.0, 105.0));
    assert!(
        sheet.svg().contains("width=\"215.9mm\" height=\"279.4mm\""),
        "the paper stays as it is"
    );
}

#[test]
fn parts_cover_the_face_and_overlap() {
    let free = page(PaperSize::A4).free();
    let reach = |tile: &tiles::Tile| {
        PaperBox::around(
            PaperPoint::new(tile.middle.x_mm, tile.middle.y_mm),
            free.right_mm - free.left_mm,
            free.top_mm - free.bottom_mm,
        )
    };
    for across_mm in [60.0, 183.0, 184.0, 400.0, 1220.0, 2000.0] {
        let parts = tiles(free, Millimetres::new(across_mm));
        let half = across_mm / 2.0;
        for (x, y) in
            [(-half, -half), (half, half), (0.0, 0.0), (half, -half), (-half * 0.3, half * 0.7)]
        {
            let covered = parts.iter().any(|tile| reach(tile).has(PaperPoint::new(x, y)));
            assert!(covered, "{across_mm}: {x}, {y}");
        }
        let neighbours =
            parts.windows(2).filter(|two| (two[0].middle.y_mm - two[1].middle.y_mm).abs() < 1e-9);
        for two in neighbours {
            let shared_mm = reach(&two[0]).right_mm - reach(&two[1]).left_mm;
            assert!((shared_mm - OVERLAP_MM).abs() < 1e-9, "{shared_mm}");
        }
    }
}

/// The classes and the places of the polygons, and the lengths of the upright lines' distances, of one strip.
#[test]
fn a_strip_goes_once_round_the_shaft_and_points_where_the_nock_goes() {
    let diameter_mm = 6.5;
    let turn = [Turn::new("7", Index::from_hour(12.0), Index::from_hour(3.0))];
    let sheet = &dials(page(PaperSize::A4), Millimetres::new(diameter_mm), &turn)[0];
    let ends: Vec<f64> = sheet
        .canvas
        .shapes
        .iter()
        .filter_map(|shape| match shape {
            Shape::Line { class, along } if class == "bold" && along.length_mm() < 20.0 => {
                Some(along.from.x_mm)
            }
            _ => None,
        })
        .collect();
    let [mark_mm, once_round_mm] = ends[..] else { panic!("{ends:?}") };
    assert!((once_round_mm - mark_mm - PI * diameter_mm).abs() < 1e-9, "π d");
    let tip = |wanted: &str| {
        sheet.canvas.shapes.iter().find_map(|shape| match shape {
            Shape::Polygon { class, corners } if class == wanted => Some(corners[0].x_mm - mark_mm),
            _ => None,
        })
    };
    // With the mark at 3 o'clock the nock's top is three hours counter-clockwise of it: three quarters round.
    assert!((tip("solid").unwrap() - 0.75 * PI * diameter_mm).abs() < 1e-9);
    assert!(tip("blank").unwrap().abs() < 1e-9, "the mark at 12 is under the nock's top");
}

#[test]
fn a_dial_is_the_clock_as_it_is_seen_from_behind() {
    let turn = [Turn::new("7", Index::from_hour(6.0), Index::from_hour(3.0))];
    let sheet = &dials(page(PaperSize::A4), Millimetres::new(6.5), &turn)[0];
    let circles: Vec<(&str, PaperPoint)> = sheet
        .canvas
        .shapes
        .iter()
        .filter_map(|shape| match shape {
            Shape::Circle { class, centre, .. } => Some((class.as_str(), *centre)),
            _ => None,
        })
        .collect();
    let at = |wanted: &str| circles.iter().find(|(class, _)| *class == wanted).unwrap().1;
    let (clock, now, next) = (at("line"), at("blank"), at("solid"));
    assert!((now.x_mm - clock.x_mm).abs() < 1e-9 && now.y_mm < clock.y_mm, "6 o'clock is below");
    assert!((next.y_mm - clock.y_mm).abs() < 1e-9 && next.x_mm > clock.x_mm, "3 o'clock is right");
}

#[test]
fn any_name_gives_a_sheet_that_can_be_read() {
    let hostile = vec!["fen_北".to_owned(), "x".repeat(ShaftName::LONGEST)];
    for sheet in all(page(PaperSize::A4), &hostile) {
        let svg = sheet.svg();
        let document = Document::parse(&svg).unwrap();
        let texts = document.descendants().filter(|node| node.has_tag_name("text"));
        assert!(texts.filter_map(|node: Node| node.text()).all(|text| !text.contains('\u{1b}')));
        assert!(pdf(&[sheet]).ends_with(b"%%EOF"));
    }
    assert_eq!(encoded("Fen 7 … é 北"), b"Fen 7 \x85 \xe9 ?");
}

#[test]
fn only_a_pdf_lacks_letters() {
    let labelled = |name: &str| {
        let label = Label { shaft: name.to_owned(), said: String::new() };
        labels(page(PaperSize::A4), &[label]).remove(0)
    };
    assert!(labelled("Füllung 7").is_writable_in_pdf());
    assert!(!labelled("北").is_writable_in_pdf());
    assert!(labelled("北").svg().contains('北'));
}

/// Source: Adobe Core 14 AFM, Helvetica: the word is 556 + 222 + 222 + 556 + 722 thousandths wide.
#[test]
fn a_word_is_as_wide_as_its_letters() {
    assert!((width_mm("allow", 10.0) - 22.78).abs() < TWO_DECIMALS);
}
