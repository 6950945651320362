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
    /// World Archery Rulebook, Book 2, target faces: ten zones of equal width, so that the zone of 10 points is a tenth of
    /// the diameter: 12.2, 8, 6 and 4 cm. Seen in copies of the rules; the edition in force was not at hand.
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
                    ring(canvas, scale, spot, size, points);
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

/// A ring with its points inside its upper edge, where the picture shows that.
fn ring(canvas: &mut Canvas, scale: Scale, spot: Offset, size: FaceSize, points: u8) {
    let radius = size.radius(points);
    canvas.circle("ring-line", scale.point(spot), scale.length_mm(radius));
    let top = spot + Offset::new(0.0, radius.mm());
    if points < 10 && scale.shows(top) {
        let base = scale.point(top).moved(0.0, -TEXT_MM * (0.5 + MIDDLE) - 0.6);
        canvas.text("quiet", base, Anchor::Middle, TEXT_MM, &points.to_string());
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: World Archery Rulebook, Book 2, as copies of it print them: the diameters of the zones of 10 and 9 points, cm.
    #[test]
    fn the_inner_zones_are_as_wide_as_the_rules_say() {
        for (size, ten_cm, nine_cm) in [
            (FaceSize::Cm122, 12.2, 24.4),
            (FaceSize::Cm80, 8.0, 16.0),
            (FaceSize::Cm60, 6.0, 12.0),
            (FaceSize::Cm40, 4.0, 8.0),
        ] {
            for (points, diameter_cm) in [(10, ten_cm), (9, nine_cm)] {
                let off_mm = size.radius(points).mm() - diameter_cm * 5.0;
                assert!(off_mm.abs() < 1e-9, "{size:?}, {points}: {off_mm}");
            }
            assert_eq!(size.radius(1), size.diameter() * 0.5, "the outermost is the face");
        }
    }
}
