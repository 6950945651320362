//! How much of the face a picture shows.

use quarterturn_geometry::{Millimetres, Offset};

/// The tolerance circle is never drawn right at the edge.
const LEAST_TOLERANCES: f64 = 1.35;
/// Nor so small that nobody can tell what is inside.
const MOST_TOLERANCES: f64 = 12.0;
/// What lies further out than this many upper quartiles is marked at the edge instead of shrinking the rest: of
/// round normal scatter that is one in ten thousand.
const QUARTILES: f64 = 2.6;
/// Room between the outermost mark and the edge, as a factor.
const MARGIN: f64 = 1.08;

/// Half the width of the square window about the reference that shows the tolerance and all `marks` but stray ones.
pub fn half_width(tolerance: Millimetres, marks: &[Offset]) -> Millimetres {
    let mut reach_mm: Vec<f64> = marks.iter().map(|at| at.x_mm.abs().max(at.y_mm.abs())).collect();
    reach_mm.sort_by(f64::total_cmp);
    let least_mm = LEAST_TOLERANCES * tolerance.mm();
    let upper_quartile_mm = reach_mm.get(reach_mm.len() * 3 / 4).copied().unwrap_or(0.0);
    let limit_mm =
        (QUARTILES * upper_quartile_mm).clamp(least_mm, MOST_TOLERANCES * tolerance.mm());
    let farthest_mm = reach_mm.into_iter().rfind(|&mm| mm <= limit_mm).unwrap_or(0.0);
    Millimetres::new(least_mm.max(MARGIN * farthest_mm))
}

#[cfg(test)]
mod tests {
    use super::*;

    const TOLERANCE: Millimetres = Millimetres::new(25.0);

    fn shown_mm(marks: &[Offset]) -> f64 {
        half_width(TOLERANCE, marks).mm()
    }

    #[test]
    fn the_tolerance_is_always_in_the_picture() {
        assert!(shown_mm(&[]) > 25.0);
        assert!(shown_mm(&[Offset::new(1.0, 1.0)]) > 25.0);
    }

    #[test]
    fn a_stray_hit_does_not_shrink_the_rest() {
        let mut marks = vec![Offset::new(20.0, -30.0); 5];
        let calm = shown_mm(&marks);
        marks.push(Offset::new(-2000.0, 0.0));
        assert_eq!(shown_mm(&marks).to_bits(), calm.to_bits());
    }

    #[test]
    fn a_bow_that_is_far_off_is_shown_whole() {
        assert!(shown_mm(&[Offset::new(-120.0, 10.0); 8]) > 120.0);
    }

    #[test]
    fn one_hit_two_metres_out_leaves_the_tolerance_to_be_seen() {
        assert!(shown_mm(&[Offset::new(0.0, 2000.0)]) <= 12.0 * 25.0);
    }
}
