//! What makes up for the mass of the vanes that bare arrows lack.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::Sample;
use quarterturn_tuning::{MissingMass, Setup, known_height};

use super::{Asked, Bench, Gauge, Workshop};

/// Tape where the vanes go, or the height that is to be expected without.
pub struct Tape<'a> {
    /// How many grains make each bare arrow as heavy as the references are in the median; negative where it is heavier.
    pub each: Vec<(&'a Bench, f64)>,
    /// How much higher the median bare arrow lands without, where the speed was said.
    pub height: Option<Millimetres>,
}

impl Workshop {
    /// Nothing before a reference and a bare arrow were weighed.
    pub fn tape(&self, setup: &Setup, asked: &Asked) -> Option<Tape<'_>> {
        let references = self.references.iter();
        let finished = references.filter_map(|bench| Gauge::FinishedMass.of(&bench.measures));
        let arrow_gr = Sample::new(finished.collect()).ok()?.median();
        let lighter_gr = arrow_gr - self.median(Gauge::BareMass)?;
        let bare = self.with(Gauge::BareMass).into_iter();
        let each = bare.map(|(bench, bare_gr)| (bench, arrow_gr - bare_gr)).collect();
        let height = asked.speed_m_s.map(|speed_m_s| {
            let missing = MissingMass { lighter_gr, arrow_gr, speed_m_s };
            known_height(&Setup { bare_lighter: Some(missing), ..setup.clone() })
        });
        Some(Tape { each, height })
    }
}
