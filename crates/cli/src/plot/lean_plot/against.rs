//! Lean against hit along one axis.

use quarterturn_geometry::{Angle, Offset};
use quarterturn_tuning::LeanRelation;

use crate::plot::axis::Axis;
use crate::plot::chart::Chart;
use crate::plot::series::{Joined, Look, Series};
use crate::plot::target_plot::hits::{HitKind, HitMark};
use crate::wording::Ruler;

/// So little is shown at least, degrees to both sides.
const LEAST_DEG: f64 = 2.0;

/// An axis of the face.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Across {
    /// Left and right.
    Sides,
    /// Up and down.
    Height,
}

impl Across {
    fn of(self, offset: Offset) -> f64 {
        match self {
            Self::Sides => offset.x_mm,
            Self::Height => offset.y_mm,
        }
    }

    fn lean_deg(self, hit: &HitMark) -> Option<f64> {
        Some(self.degrees([hit.tail?.x, hit.tail?.y]))
    }

    fn degrees(self, [x, y]: [Angle; 2]) -> f64 {
        match self {
            Self::Sides => x.degrees(),
            Self::Height => y.degrees(),
        }
    }

    const fn words(self) -> [&'static str; 3] {
        match self {
            Self::Sides => ["To the sides", "hit right of the reference", "tail right"],
            Self::Height => ["Up and down", "hit above the reference", "tail high"],
        }
    }
}

/// The chart of one axis; `common` is where bare shafts as a whole land.
pub fn against(
    across: Across,
    shown: &[&HitMark],
    relation: &LeanRelation,
    common: Offset,
    reach_mm: f64,
    ruler: Ruler,
) -> Chart {
    let points = |left_out: bool| -> Vec<[f64; 2]> {
        let of_kind = shown.iter().filter(|hit| (hit.kind == HitKind::LeftOut) == left_out);
        of_kind.filter_map(|hit| Some([across.of(hit.at), across.lean_deg(hit)?])).collect()
    };
    let dots = |name: &str, class, look, left_out| Series {
        name: name.to_owned(),
        class,
        look,
        joined: Joined::No,
        points: points(left_out),
    };
    let far_deg = shown.iter().filter_map(|hit| across.lean_deg(hit)).map(f64::abs);
    let reach_deg = 1.08 * far_deg.fold(LEAST_DEG, f64::max);
    let at = across.of(common);
    let there =
        across.degrees([relation.common.x, relation.common.y]) + relation.slope_deg_per_mm * at;
    let line = |name: &str, class, slope: f64| Series {
        name: name.to_owned(),
        class,
        look: Look::Unseen,
        joined: Joined::Line,
        points: within([-reach_mm, reach_mm].map(|mm| [mm, there + slope * (mm - at)]), reach_deg),
    };
    let [title, hit, tail] = across.words();
    Chart {
        title: title.to_owned(),
        across: Axis::lengths(ruler, hit, reach_mm),
        up: Axis::degrees(tail, reach_deg),
        breaks: Vec::new(),
        series: vec![
            line("", "band", relation.interval.lower),
            line("", "band", relation.interval.upper),
            line("learned", "sky", relation.slope_deg_per_mm),
            dots("counted", "judged", Look::Disc, false),
            dots("left out", "left-out", Look::Square, true),
        ],
        area_mm: 62.0,
    }
}

/// The part of a line between two points that lies within the degrees shown; nothing where none does.
fn within([from, to]: [[f64; 2]; 2], reach_deg: f64) -> Vec<[f64; 2]> {
    let (rise, run) = (to[1] - from[1], to[0] - from[0]);
    let crosses = |deg: f64| (deg - from[1]) / rise;
    let [one, other] =
        if rise == 0.0 { [0.0, 1.0] } else { [crosses(-reach_deg), crosses(reach_deg)] };
    let [begin, end] = [one.min(other).max(0.0), one.max(other).min(1.0)];
    if begin >= end || (rise == 0.0 && from[1].abs() > reach_deg) {
        return Vec::new();
    }
    [begin, end].map(|share| [from[0] + share * run, from[1] + share * rise]).to_vec()
}

#[cfg(test)]
mod tests {
    use super::within;

    #[test]
    fn a_line_is_cut_where_it_leaves_the_chart() {
        assert_eq!(within([[-10.0, 4.0], [10.0, -4.0]], 2.0), [[-5.0, 2.0], [5.0, -2.0]]);
        assert_eq!(within([[-10.0, 1.0], [10.0, 1.0]], 2.0), [[-10.0, 1.0], [10.0, 1.0]]);
        assert!(within([[-10.0, 3.0], [10.0, 3.0]], 2.0).is_empty());
        assert!(within([[-10.0, 3.0], [10.0, 5.0]], 2.0).is_empty());
    }
}
