//! What simulation says of clean samples: a factor and a cut-off for each size.

use super::Coverage;

/// For one size of sample.
#[derive(Clone, Copy, Debug)]
pub(super) struct Calibration {
    /// What makes the root of the determinant of the covariance right on average.
    pub(super) factor: f64,
    /// The squared distance that the farthest of the n points exceeds with probability 0.05, as a multiple of
    /// −2 ln(1 − 0.95^(1/n)), which it would be if centre and covariance were known.
    stretch: f64,
}

impl Calibration {
    /// For `n` points, at least six: linear in 1/n between the sizes that were simulated, toward 1 for endless samples. Up to 64
    /// points even and odd numbers differ, as the h points do.
    ///
    /// # Source
    /// `examples/robust_calibration.rs`, whose draws are seeded.
    pub(super) fn of(n: usize, coverage: Coverage) -> Self {
        let table: &[Row] = match coverage {
            Coverage::Half => &HALF,
            Coverage::ThreeQuarters => &THREE_QUARTERS,
        };
        let alike = table.iter().filter(|row| row.0 > 64 || (n + row.0).is_multiple_of(2));
        let (mut below, mut above) = ((table[0].0, 1.0, 1.0), None);
        for row in alike {
            if row.0 <= n {
                below = *row;
            } else if above.is_none() {
                above = Some(*row);
            }
        }
        let inverse = |row: Row| (row.0 as f64).recip();
        let (next, factor, stretch) =
            above.map_or((0.0, 1.0, 1.0), |row| (inverse(row), row.1, row.2));
        let toward = (inverse(below) - (n as f64).recip()) / (inverse(below) - next);
        Self {
            factor: below.1 + toward * (factor - below.1),
            stretch: below.2 + toward * (stretch - below.2),
        }
    }

    /// The squared distance beyond which a point of `n` is flagged.
    pub(super) fn cutoff(self, n: usize) -> f64 {
        self.stretch * -2.0 * (-(0.95_f64.ln() / n as f64).exp_m1()).ln()
    }
}

/// Number of points, factor, stretch.
type Row = (usize, f64, f64);

const HALF: [Row; 40] = [
    (6, 2.47856, 59.5061),
    (7, 1.74804, 14.9681),
    (8, 2.13201, 24.9000),
    (9, 1.67668, 10.8149),
    (10, 1.91265, 15.6574),
    (11, 1.61601, 8.0874),
    (12, 1.75631, 10.0579),
    (13, 1.54721, 6.1487),
    (14, 1.64268, 6.8469),
    (15, 1.49576, 4.6772),
    (16, 1.57410, 5.0942),
    (17, 1.45230, 3.8905),
    (18, 1.51082, 4.2578),
    (19, 1.41313, 3.3113),
    (20, 1.46013, 3.5368),
    (21, 1.38903, 2.9937),
    (22, 1.42425, 3.0105),
    (23, 1.36232, 2.6833),
    (24, 1.39370, 2.8608),
    (25, 1.34069, 2.4818),
    (26, 1.37083, 2.6110),
    (27, 1.32197, 2.3742),
    (28, 1.34849, 2.3861),
    (29, 1.30128, 2.1661),
    (30, 1.32398, 2.2200),
    (31, 1.27908, 2.0944),
    (36, 1.27951, 1.9180),
    (37, 1.24686, 1.8182),
    (43, 1.22958, 1.6950),
    (44, 1.23536, 1.7466),
    (51, 1.19056, 1.5432),
    (52, 1.19984, 1.5807),
    (60, 1.17442, 1.4721),
    (80, 1.12822, 1.3185),
    (100, 1.11192, 1.2538),
    (150, 1.07633, 1.1562),
    (200, 1.05893, 1.1281),
    (300, 1.04189, 1.0684),
    (500, 1.02454, 1.0398),
    (1000, 1.01100, 1.0190),
];

const THREE_QUARTERS: [Row; 40] = [
    (6, 1.60525, 6.5877),
    (7, 1.41643, 4.0641),
    (8, 1.66707, 7.0196),
    (9, 1.48593, 4.8200),
    (10, 1.37535, 3.5802),
    (11, 1.30492, 2.9781),
    (12, 1.38785, 3.7285),
    (13, 1.32111, 3.0275),
    (14, 1.26676, 2.6672),
    (15, 1.23436, 2.4013),
    (16, 1.28188, 2.6102),
    (17, 1.23988, 2.3718),
    (18, 1.21463, 2.1643),
    (19, 1.18985, 2.0347),
    (20, 1.21737, 2.1138),
    (21, 1.19581, 1.9831),
    (22, 1.17711, 1.8805),
    (23, 1.16151, 1.8272),
    (24, 1.17790, 1.8386),
    (25, 1.16397, 1.7613),
    (26, 1.15405, 1.7199),
    (27, 1.14107, 1.6451),
    (28, 1.15633, 1.6759),
    (29, 1.14051, 1.6231),
    (30, 1.13180, 1.5848),
    (31, 1.11765, 1.5370),
    (36, 1.11775, 1.4737),
    (37, 1.10828, 1.4380),
    (43, 1.09755, 1.3687),
    (44, 1.09865, 1.3635),
    (51, 1.07668, 1.3022),
    (52, 1.08099, 1.3405),
    (60, 1.06995, 1.2299),
    (80, 1.04546, 1.1849),
    (100, 1.04055, 1.1479),
    (150, 1.02723, 1.0876),
    (200, 1.01900, 1.0826),
    (300, 1.01364, 1.0448),
    (500, 1.00854, 1.0223),
    (1000, 1.00268, 1.0080),
];
