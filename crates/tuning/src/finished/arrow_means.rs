//! Where each of several arrows lands, beside the others.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{DistanceBound, Level, PlanarEstimate, PlanarSample};

use super::TogetherVerdict;
use super::together::{LEVEL, at_least_mm, fewest_more, shown};

/// A share of the scatter that is rounding alone.
const FLAT: f64 = 1e-14;

/// The mean hits of several arrows, or their differences, with the scatter that all share.
#[derive(Clone, Debug)]
pub struct ArrowMeans {
    means: Vec<ArrowMean>,
    /// Σ d dᵀ of the shots about the means of their own arrows.
    pub scatter: Matrix2<f64>,
    /// The shots less the means taken from them.
    pub degrees_of_freedom: usize,
    shots: usize,
}

/// The mean of one arrow.
#[derive(Clone, Debug)]
struct ArrowMean {
    value: Vector2<f64>,
    /// How many shots each mean rests on that goes into it: one, or a broadhead's and a field point's.
    shots: Vec<usize>,
}

/// Where one arrow lands beside the mean of the others.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FromTheOthers {
    /// Its centre less the mean of the centres of the others, mm.
    pub estimate: PlanarEstimate,
    /// How far it is off at least, at 95 % for all arrows together, mm; not below 0.
    pub at_least_mm: f64,
    /// How far it is off at most, at 95 %.
    pub at_most: DistanceBound,
    /// What that is by the archer's own measure; nothing where he gave none.
    pub verdict: Option<TogetherVerdict>,
}

impl ArrowMeans {
    /// The means of samples that are not empty.
    pub fn of(samples: &[PlanarSample]) -> Self {
        let mean =
            |sample: &PlanarSample| ArrowMean { value: sample.centroid(), shots: vec![sample.n()] };
        let scatter = |sample: &PlanarSample| {
            sample.covariance().unwrap_or_default() * (sample.n() - 1) as f64
        };
        let shots = samples.iter().map(PlanarSample::n).sum();
        Self {
            means: samples.iter().map(mean).collect(),
            scatter: samples.iter().map(scatter).sum(),
            degrees_of_freedom: shots - samples.len(),
            shots,
        }
    }

    /// For each pair of places in these and in `other`, the one less the other.
    pub fn less(&self, other: &Self, pairs: &[(usize, usize)]) -> Self {
        let difference = |&(one, two): &(usize, usize)| {
            let (one, two) = (self.means.get(one)?, other.means.get(two)?);
            let shots = [&one.shots[..], &two.shots].concat();
            Some(ArrowMean { value: one.value - two.value, shots })
        };
        Self {
            means: pairs.iter().filter_map(difference).collect(),
            scatter: self.scatter + other.scatter,
            degrees_of_freedom: self.degrees_of_freedom + other.degrees_of_freedom,
            shots: self.shots + other.shots,
        }
    }

    /// Where each lands beside the mean of the others; nothing for fewer than two arrows, for fewer than two degrees of
    /// freedom, or where all scatter lies on one line.
    ///
    /// # Formula
    /// δᵢ = x̄ᵢ − Σ x̄ⱼ/k′ over the k′ others, V = S (wᵢ + Σ wⱼ/k′²), S the scatter within arrows over its degrees of
    /// freedom ν = N − k, w = 1/n of a mean and the sum of two for a difference. *Apart* is said at 1 − 0.05/k, so that
    /// of all arrows none is called so wrongly in 95 % (Bonferroni). The farthest arrow that is apart is taken out of the
    /// others, which it would draw after it, and all are compared anew until no more are, or two are left.
    ///
    /// # Assumptions
    /// Independent normal shots with one covariance for all arrows and heads.
    pub fn beside_the_others(&self, together: Option<Millimetres>) -> Vec<Option<FromTheOthers>> {
        let mut taken_out = Vec::new();
        loop {
            let beside: Vec<_> =
                (0..self.means.len()).map(|at| self.beside(at, &taken_out, together)).collect();
            let apart = beside.iter().enumerate().filter_map(|(at, beside)| {
                let beside = beside.filter(|one| one.verdict == Some(TogetherVerdict::Apart))?;
                (!taken_out.contains(&at)).then_some((at, beside.at_least_mm))
            });
            match apart.max_by(|(_, one), (_, other)| one.total_cmp(other)) {
                Some((at, _)) if self.means.len() > taken_out.len() + 3 => taken_out.push(at),
                _ => return beside,
            }
        }
    }

    /// Where one lands beside the others, those that are taken out left out.
    fn beside(
        &self,
        at: usize,
        taken_out: &[usize],
        together: Option<Millimetres>,
    ) -> Option<FromTheOthers> {
        let estimate = self.contrast(at, taken_out, 0)?;
        let share = (1.0 - LEVEL.probability()) / self.means.len() as f64;
        let apart = Level::new(1.0 - share).ok()?;
        let judged = |together| {
            let decides = |more| {
                let later = self.contrast(at, taken_out, more);
                later.is_some_and(|later| shown(&later, together, apart).is_some())
            };
            shown(&estimate, together, apart)
                .unwrap_or_else(|| TogetherVerdict::Open { more: fewest_more(decides) })
        };
        Some(FromTheOthers {
            at_least_mm: at_least_mm(&estimate, apart),
            at_most: estimate.distance(LEVEL).ok()?,
            verdict: together.map(judged),
            estimate,
        })
    }

    /// The contrast as it would be with so many `more` shots in every mean.
    fn contrast(&self, at: usize, taken_out: &[usize], more: usize) -> Option<PlanarEstimate> {
        let is_other = |place: &usize| *place != at && !taken_out.contains(place);
        let others = (0..self.means.len()).filter(is_other).count() as f64;
        let added = more * self.means.iter().map(|mean| mean.shots.len()).sum::<usize>();
        let degrees_of_freedom = self.degrees_of_freedom as f64;
        if others < 1.0
            || self.degrees_of_freedom < 2
            || self.scatter.determinant() <= FLAT * self.scatter.trace().powi(2)
        {
            return None;
        }
        let (mut value, mut weight) = (Vector2::zeros(), 0.0);
        for (place, mean) in self.means.iter().enumerate() {
            let share = if place == at { 1.0 } else { -1.0 / others };
            if place != at && !is_other(&place) {
                continue;
            }
            value += share * mean.value;
            let over_n: f64 = mean.shots.iter().map(|n| ((n + more) as f64).recip()).sum();
            weight += share * share * over_n;
        }
        Some(PlanarEstimate {
            value,
            covariance: self.scatter / degrees_of_freedom * weight,
            degrees_of_freedom: degrees_of_freedom + added as f64,
            n: self.shots + added,
        })
    }
}
