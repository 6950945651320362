//! What may lie under the hits: a target face of the sport, or a round plate.

use quarterturn_geometry::{Millimetres, Offset};

use super::canvas::Canvas;
use super::scale::Scale;
use super::shape::Anchor;
use super::text_width::MIDDLE;

const TEXT_MM: f64 = 2.6;

/// What lies under the hits, its middle at the spot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Backdrop {
    /// Nothing but the grid.
    Grid,
    /// A face with ten rings, by its diameter.
    Rings(FaceSize),
    /// A plate of this diameter.
    Plate(Millimetres),
}

/// The faces of World Archery, by their diameter.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FaceSize {
    /// 122 cm, shot from 70 m.
    Cm122,
    /// 80 cm, shot from 50 m.
    Cm80,
    /// 60 cm, shot from 25 m.
    Cm60,
    /// 40 cm, shot from 18 m.
    Cm40,
}

impl FaceSize {
    /// Its diameter.
    ///
    /// # Source
    /// World Archery Rulebook, Book 2 (Events), article 7.2: ten zones of equal width, so that the zone of 10 points is a
    /// tenth of the diameter: 12.2, 8, 6 and 4 cm. Read in the rules of a federation that shoots only faces made under
    /// licence of World Archery: Fédération Française de Tir à l'Arc, *Règlements sportifs et Arbitrage*, edition of February
    /// 2022, II.1, article B.2.1.3, which prints the diameters of all zones of the four faces.
    pub fn diameter(self) -> Millimetres {
        Millimetres::from_cm(match self {
            Self::Cm122 => 122.0,
            Self::Cm80 => 80.0,
            Self::Cm60 => 60.0,
            Self::Cm40 => 40.0,
        })
    }

    /// The radius of the zone that is worth so many points, from 10 to 1.
    pub fn radius(self, points: u8) -> Millimetres {
        self.diameter() * ((11.0 - f64::from(points)) / 20.0)
    }
}

impl Backdrop {
    /// Draws it about `spot`.
    pub fn draw(self, canvas: &mut Canvas, scale: Scale, spot: Offset) {
        match self {
            Self::Grid => {}
            Self::Rings(size) => {
                for points in 1..=10 {
                    let radius_mm = scale.length_mm(size.radius(points));
                    canvas.circle("ring-line", scale.point(spot), radius_mm);
                }
                for points in 1..10 {
                    told(canvas, scale, spot, size, points);
                }
            }
            Self::Plate(diameter) => {
                canvas.circle("ring-line", scale.point(spot), scale.length_mm(diameter * 0.5));
            }
        }
    }

    /// What it is, for the legend.
    pub fn name(self) -> Option<String> {
        match self {
            Self::Grid => None,
            Self::Rings(size) => {
                Some(format!("face of {} cm, rings 1 to 10", size.diameter().mm() / 10.0))
            }
            Self::Plate(diameter) => Some(format!("plate of {} mm", diameter.mm())),
        }
    }
}

/// The points of a ring inside its upper edge, where the picture shows that; to the left of the upright line, for the word
/// at its upper end stands to the right.
fn told(canvas: &mut Canvas, scale: Scale, spot: Offset, size: FaceSize, points: u8) {
    let top = spot + Offset::new(0.0, size.radius(points).mm());
    if scale.shows(top) {
        let base = scale.point(top).moved(-1.4, -TEXT_MM * (0.5 + MIDDLE) - 0.6);
        canvas.text("quiet", base, Anchor::Middle, TEXT_MM, &points.to_string());
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The diameters of the zones of 10 points, 9 and so on to 1, cm.
    ///
    /// Source: Fédération Française de Tir à l'Arc, Règlements sportifs et Arbitrage, edition of February 2022, II.1,
    /// article B.2.1.3 (outdoor faces of 122 and 80 cm, indoor ones of 60 and 40 cm, in the classic divisions).
    const PRINTED_CM: [(FaceSize, [f64; 10]); 4] = [
        (FaceSize::Cm122, [12.2, 24.4, 36.6, 48.8, 61.0, 73.2, 85.4, 97.6, 109.8, 122.0]),
        (FaceSize::Cm80, [8.0, 16.0, 24.0, 32.0, 40.0, 48.0, 56.0, 64.0, 72.0, 80.0]),
        (FaceSize::Cm60, [6.0, 12.0, 18.0, 24.0, 30.0, 36.0, 42.0, 48.0, 54.0, 60.0]),
        (FaceSize::Cm40, [4.0, 8.0, 12.0, 16.0, 20.0, 24.0, 28.0, 32.0, 36.0, 40.0]),
    ];

    #[test]
    fn every_zone_is_as_wide_as_the_rules_print_it() {
        for (size, diameters_cm) in PRINTED_CM {
            for (points, diameter_cm) in (1..=10).rev().zip(diameters_cm) {
                let off_mm = size.radius(points).mm() - diameter_cm * 5.0;
                assert!(off_mm.abs() < 1e-9, "{size:?}, {points}: {off_mm}");
            }
        }
    }
}
