//! Views against three other programs, planted truth and marks that tell of none.

use proptest::prelude::*;
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;
use serde_json::Value;

use super::*;
use crate::tolerance::{
    FIRST_ORDER, MAPPED_MM, OPENCV_STOPS_MM, SCIPY_STOPS_MM, STANDARD_ERRORS, VIEW, assert_within,
};

const CORNERS_PX: [[f64; 2]; 4] =
    [[412.0, 388.0], [2650.0, 301.0], [2781.0, 2412.0], [355.0, 2290.0]];
const CORNERS_MM: [[f64; 2]; 4] =
    [[-300.0, 300.0], [300.0, 300.0], [300.0, -300.0], [-300.0, -300.0]];

fn mark([u, v]: [f64; 2], [x, y]: [f64; 2]) -> Mark {
    Mark { pixel: Pixel::new(u, v), point: Point::new(x, y) }
}

fn corners() -> Vec<Mark> {
    CORNERS_PX.into_iter().zip(CORNERS_MM).map(|(pixel, point)| mark(pixel, point)).collect()
}

fn pairs(value: &Value) -> Vec<[f64; 2]> {
    let pair = |v: &Value| [0, 1].map(|i| v[i].as_f64().unwrap());
    value.as_array().unwrap().iter().map(pair).collect()
}

/// Source: scipy 1.17.1 `optimize.least_squares`, `OpenCV` 5.0.0 and scikit-image 0.26.0;
/// `fixtures/geometry/make_homographies.py`.
#[test]
fn views_agree_with_scipy_opencv_and_scikit_image() {
    let fixture: Value =
        serde_json::from_str(include_str!("../../../../fixtures/geometry/homographies.json"))
            .unwrap();
    let cases = fixture["cases"].as_array().unwrap();
    assert_eq!(cases.len(), 5);
    for case in cases {
        let places = pairs(&case["pixels"]).into_iter().zip(pairs(&case["points_mm"]));
        let marks: Vec<_> = places.map(|(pixel, point)| mark(pixel, point)).collect();
        let view = Homography::of_marks(&marks).unwrap();
        let is_exact = marks.len() == 4;
        let least_mm = if is_exact { MAPPED_MM } else { SCIPY_STOPS_MM };
        for (error, [x, y]) in view.errors().iter().zip(pairs(&case["errors_mm"])) {
            assert_within(error.x_mm, x, least_mm);
            assert_within(error.y_mm, y, least_mm);
        }
        let others = case["others_mm"].as_object().unwrap();
        assert_eq!(others.len(), if is_exact { 2 } else { 1 });
        for (i, [u, v]) in pairs(&case["queries"]).into_iter().enumerate() {
            let pixel = Pixel::new(u, v);
            let point = view.point_at(pixel).unwrap();
            let [x, y] = pairs(&case["mapped_mm"])[i];
            assert_within(point.x_mm, x, least_mm);
            assert_within(point.y_mm, y, least_mm);
            for other in others.values() {
                let [x, y] = pairs(other)[i];
                let allowed = if is_exact { MAPPED_MM } else { OPENCV_STOPS_MM };
                assert_within((point - Point::new(x, y)).length().mm(), 0.0, allowed);
            }
            // By making the whole fit anew for every coordinate moved a little.
            let covariance_mm2 = view.covariance_mm2(pixel, 1.0).unwrap();
            let rows = pairs(&case["covariances_mm2"][i]);
            let expected = Matrix2::new(rows[0][0], rows[0][1], rows[1][0], rows[1][1]);
            let off = (covariance_mm2 - expected).norm() / expected.norm();
            assert_within(off, 0.0, if is_exact { 1e-6 } else { FIRST_ORDER });
        }
    }
}

/// Source: the matrix of the four corners to twelve digits, by `OpenCV`, scikit-image and a linear solver.
#[test]
fn the_matrix_of_four_corners() {
    let matrix = Homography::of_marks(&corners()).unwrap().matrix();
    let matrix = matrix / matrix[(2, 2)];
    let expected = [
        [0.292_654_561_818, -0.004_001_059_539_58, -430.368_081_327],
        [0.001_351_631_271_94, -0.340_119_825_554, 442.756_433_190],
        [5.029_167_409_69e-5, 4.407_871_169_13e-5, 1.0],
    ];
    for (row, expected) in expected.iter().enumerate() {
        for (column, &expected) in expected.iter().enumerate() {
            assert_within(matrix[(row, column)], expected, VIEW * expected.abs());
        }
    }
}

#[test]
fn a_pixel_shows_the_point_that_it_is_the_pixel_of() {
    let view = Homography::of_marks(&corners()).unwrap();
    for [u, v] in CORNERS_PX.into_iter().chain([[1500.0, 1300.0], [3900.0, 20.0]]) {
        let pixel = view.pixel_of(view.point_at(Pixel::new(u, v)).unwrap()).unwrap();
        assert_within(pixel.x_px, u, MAPPED_MM);
        assert_within(pixel.y_px, v, MAPPED_MM);
    }
    assert_eq!(view.pixel_of(Point::new(1e5, -1e5)), None, "behind the camera");
}

/// The example that docs/methods.md works by hand.
#[test]
fn a_trapezium() {
    let pixels = [[400.0, 0.0], [600.0, 0.0], [700.0, 1000.0], [300.0, 1000.0]];
    let points = [[-100.0, 100.0], [100.0, 100.0], [100.0, -100.0], [-100.0, -100.0]];
    let marks: Vec<_> = pixels.into_iter().zip(points).map(|(p, q)| mark(p, q)).collect();
    let view = Homography::of_marks(&marks).unwrap();
    let middle = view.point_at(Pixel::new(500.0, 500.0)).unwrap();
    assert_within(middle.x_mm, 0.0, MAPPED_MM);
    assert_within(middle.y_mm, -100.0 / 3.0, MAPPED_MM);
}

fn refusal(marks: &[Mark]) -> MarkError {
    Homography::of_marks(marks).unwrap_err()
}

#[test]
fn too_few_and_too_many_marks() {
    for count in 0..4 {
        assert_eq!(refusal(&corners()[..count]), MarkError::TooFew { count });
    }
    let many: Vec<_> = (0..101).map(|i| mark([f64::from(i), 0.0], [0.0, 0.0])).collect();
    assert_eq!(refusal(&many), MarkError::TooMany { count: 101, most: 100 });
    let said = "3 marks: it takes four, no three of them on one line";
    assert_eq!(refusal(&corners()[..3]).to_string(), said);
}

#[test]
fn coordinates_that_are_no_places() {
    for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e300, -2e9] {
        for (place, coordinate) in (0..4).flat_map(|mark| (0..4).map(move |c| (mark, c))) {
            let mut marks = corners();
            let Mark { pixel, point } = &mut marks[place];
            *[&mut pixel.x_px, &mut pixel.y_px, &mut point.x_mm, &mut point.y_mm][coordinate] =
                value;
            let MarkError::Coordinate { mark, .. } = refusal(&marks) else { panic!("{value}") };
            assert_eq!(mark, place);
        }
    }
}

#[test]
fn marks_in_one_place() {
    let mut marks = corners();
    marks[3].pixel = marks[1].pixel;
    assert_eq!(refusal(&marks), MarkError::Coincident { marks: [1, 3] });
    let said = "marks 2 and 4 stand in one place; give each its own";
    assert_eq!(refusal(&marks).to_string(), said);
    let one = vec![mark([5.0, 5.0], [1.0, 1.0]); 6];
    assert_eq!(refusal(&one), MarkError::Coincident { marks: [0, 1] });
}

#[test]
fn marks_on_a_line() {
    // In the picture, on the face, and with a fifth mark, which must not be the only one beside the line.
    let mut marks = corners();
    marks[1].pixel = Pixel::new(0.5 * (412.0 + 2781.0), 0.5 * (388.0 + 2412.0));
    assert_eq!(refusal(&marks), MarkError::Collinear { marks: [0, 1, 2] });
    let mut marks = corners();
    marks[2].point = Point::new(300.0, 0.0);
    marks[3].point = Point::new(300.0, -300.0);
    assert_eq!(refusal(&marks), MarkError::Collinear { marks: [1, 2, 3] });
    let along = (0..5).map(|i| mark([f64::from(i) * 100.0, 50.0], [f64::from(i) * 20.0, 0.0]));
    let row: Vec<_> = along.collect();
    assert_eq!(refusal(&row), MarkError::Collinear { marks: [0, 1, 2] });
    let beside = [&row[..], &[mark([200.0, 300.0], [40.0, -50.0])]].concat();
    assert!(matches!(refusal(&beside), MarkError::Collinear { .. }));
    // Two beside it are enough.
    let enough = [&beside[..], &[mark([400.0, 300.0], [80.0, -50.0])]].concat();
    assert!(Homography::of_marks(&enough).is_ok());
}

#[test]
fn marks_taken_for_each_other() {
    for [first, second] in [[0, 1], [1, 2], [2, 3], [0, 3]] {
        let mut marks = corners();
        (marks[first].pixel, marks[second].pixel) = (marks[second].pixel, marks[first].pixel);
        let MarkError::Crossed { marks: named } = refusal(&marks) else { panic!("{first}") };
        // Of four corners, exchanging either pair of neighbours uncrosses them.
        let other = [0, 1, 2, 3].into_iter().filter(|m| ![first, second].contains(m));
        assert!(
            named == [first, second] || named.to_vec() == other.collect::<Vec<_>>(),
            "{named:?}"
        );
    }
    let face = [
        [0.0, 200.0],
        [190.0, 60.0],
        [120.0, -160.0],
        [-120.0, -160.0],
        [-190.0, 60.0],
        [10.0, 0.0],
    ];
    let mut six: Vec<_> = face.into_iter().map(|[x, y]| mark([x, -y], [x, y])).collect();
    assert!(Homography::of_marks(&six).is_ok());
    (six[1].pixel, six[4].pixel) = (six[4].pixel, six[1].pixel);
    assert_eq!(refusal(&six), MarkError::Crossed { marks: [1, 4] });
}

#[test]
fn a_mirrored_picture() {
    let turned_over: Vec<_> = CORNERS_PX
        .into_iter()
        .zip(CORNERS_MM)
        .map(|([u, v], point)| mark([3000.0 - u, v], point))
        .collect();
    assert_eq!(refusal(&turned_over), MarkError::Mirrored);
    let upwards: Vec<_> = CORNERS_PX
        .into_iter()
        .zip(CORNERS_MM)
        .map(|([u, v], point)| mark([u, -v], point))
        .collect();
    assert_eq!(refusal(&upwards), MarkError::Mirrored);
}

#[test]
fn every_refusal_names_the_marks_and_a_way_on() {
    let said = [
        (MarkError::TooMany { count: 101, most: 100 }, "101 marks: at most 100 are taken"),
        (
            MarkError::Coordinate { mark: 1, value: f64::NAN, largest: 1e9 },
            "mark 2: a coordinate of NaN is no place; finite numbers up to 1e9 are",
        ),
        (
            MarkError::Collinear { marks: [0, 1, 3] },
            "marks 1, 2 and 4 stand on one line and leave too few beside it; take the corners of a face",
        ),
        (
            MarkError::Crossed { marks: [2, 3] },
            "marks 3 and 4 seem to have been taken for each other; exchange them, or check the order of all",
        ),
        (
            MarkError::Mirrored,
            "the marks run the other way round in the picture than on the face: the picture is mirrored, \
             or y was counted upwards, or two opposite marks were exchanged",
        ),
        (MarkError::NoView, "the marks agree on no view of a flat face; read them again"),
    ];
    for (error, message) in said {
        assert_eq!(error.to_string(), message);
    }
}

#[test]
fn beyond_the_horizon() {
    // The lower corners converge: above the picture the face's plane ends.
    let pixels = [[400.0, 400.0], [600.0, 400.0], [1000.0, 1000.0], [0.0, 1000.0]];
    let marks: Vec<_> = pixels.into_iter().zip(CORNERS_MM).map(|(p, q)| mark(p, q)).collect();
    let view = Homography::of_marks(&marks).unwrap();
    assert!(view.point_at(Pixel::new(500.0, 300.0)).is_some());
    let infinite = Pixel::new(0.0, f64::INFINITY);
    let beyond = [Pixel::new(500.0, 200.0), Pixel::new(500.0, -5000.0)];
    for far in
        beyond.into_iter().chain([infinite, Pixel::new(f64::NAN, 0.0), Pixel::new(1e300, 1e300)])
    {
        assert_eq!((view.point_at(far), view.covariance_mm2(far, 1.0)), (None, None));
    }
    for error in [-1.0, f64::NAN, f64::INFINITY] {
        assert_eq!(view.covariance_mm2(Pixel::new(500.0, 500.0), error), None);
    }
    assert_eq!(view.reading_error_px(), None);
}

/// A plausible view of a face of 600 mm: from the corners' picture, each corner moved by up to `by` px.
fn seen(by: f64) -> impl Strategy<Value = Vec<Mark>> {
    proptest::collection::vec((-by..by, -by..by), 4).prop_map(|moves| {
        let corners = CORNERS_PX.into_iter().zip(CORNERS_MM);
        corners
            .zip(moves)
            .map(|(([u, v], point), (du, dv))| mark([u + du, v + dv], point))
            .collect()
    })
}

proptest! {
    #[test]
    fn the_marks_come_back(marks in seen(250.0)) {
        let view = Homography::of_marks(&marks).unwrap();
        for Mark { pixel, point } in marks {
            let off = view.point_at(pixel).unwrap() - point;
            assert_within(off.length().mm(), 0.0, MAPPED_MM);
        }
    }

    /// Six marks that lie exactly on a view give that view, whatever their order and wherever the picture's origin is.
    #[test]
    fn planted_views_are_found(marks in seen(250.0), by in (-5000.0..5000.0, -5000.0..5000.0)) {
        let truth = Homography::of_marks(&marks).unwrap();
        let pixels = [[900.0, 800.0], [2000.0, 700.0], [2200.0, 1900.0], [800.0, 2000.0], [1500.0, 1000.0], [1400.0, 1700.0]];
        let mut six: Vec<_> = pixels.into_iter().map(|[u, v]| {
            Mark { pixel: Pixel::new(u + by.0, v + by.1), point: truth.point_at(Pixel::new(u, v)).unwrap() }
        }).collect();
        six.reverse();
        let view = Homography::of_marks(&six).unwrap();
        let query = Pixel::new(1300.0, 1500.0);
        let moved = Pixel::new(query.x_px + by.0, query.y_px + by.1);
        let off = view.point_at(moved).unwrap() - truth.point_at(query).unwrap();
        assert_within(off.length().mm(), 0.0, 100.0 * MAPPED_MM);
        assert_within(view.reading_error_px().unwrap(), 0.0, 100.0 * MAPPED_MM);
    }
}

/// Planted reading errors: the stated covariance covers at 95 %, and the reading error is found, on average of its square.
#[test]
fn covariances_cover() {
    const DRAWS: u32 = 4000;
    let mut random = Pcg64::seed_from_u64(41);
    let mut normal = || Distribution::<f64>::sample(&StandardNormal, &mut random);
    let truth = Homography::of_marks(&corners()).unwrap();
    let pixels: Vec<_> =
        [[0.0, 0.0], [1.0, 0.0], [1.0, 1.0], [0.0, 1.0], [0.5, 0.1], [0.4, 0.9], [0.9, 0.6]]
            .map(|[u, v]| Pixel::new(500.0 + 2000.0 * u, 400.0 + 1900.0 * v))
            .to_vec();
    let hole = Pixel::new(1234.0, 1111.0);
    for (count, sd_px) in [(4, 4.0), (5, 4.0), (7, 2.0)] {
        let (mut covered, mut squares) = (0.0, 0.0);
        for _ in 0..DRAWS {
            let mut read = |pixel: Pixel| {
                Pixel::new(pixel.x_px + sd_px * normal(), pixel.y_px + sd_px * normal())
            };
            let marks: Vec<_> = pixels[..count]
                .iter()
                .map(|&pixel| Mark { pixel: read(pixel), point: truth.point_at(pixel).unwrap() })
                .collect();
            let view = Homography::of_marks(&marks).unwrap();
            let read_hole = read(hole);
            let off = view.point_at(read_hole).unwrap() - truth.point_at(hole).unwrap();
            let off = Vector2::new(off.x_mm, off.y_mm);
            let covariance_mm2 = view.covariance_mm2(read_hole, sd_px).unwrap();
            let distance = off.dot(&(covariance_mm2.try_inverse().unwrap() * off));
            covered += f64::from(u8::from(distance < -2.0 * 0.05_f64.ln()));
            squares += view.reading_error_px().map_or(sd_px, |sd| sd).powi(2);
        }
        let draws = f64::from(DRAWS);
        assert_within(covered / draws, 0.95, STANDARD_ERRORS * (0.95 * 0.05 / draws).sqrt());
        let chance = (2.0 / (2.0 * count as f64 - 8.0).max(1.0) / draws).sqrt();
        assert_within(
            squares / draws / (sd_px * sd_px),
            1.0,
            STANDARD_ERRORS * chance + FIRST_ORDER,
        );
    }
}
