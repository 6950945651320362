//! How large the parts of a miss are: what the flight model expects at first and learns from the journal.

use quarterturn_geometry::Millimetres;

/// The distance at which the default scales are stated.
const STATED_AT: Millimetres = Millimetres::new(18_300.0);

/// A bow may be off by so many times what one is that is nearly right...
const FAR: f64 = 5.0;

/// ... and its common lean differ by so many times as much from what goes with the offset.
const FAR_LEAN: f64 = 8.0;

/// Standard deviations of everything that the flight model does not know, per axis.
///
/// Lengths are millimetres at the journal's distance, leans are degrees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scales {
    /// A fletched shot about its own mean, reading apart.
    pub reference_mm: f64,
    /// A bare shot about its own mean, reading apart.
    pub bare_mm: f64,
    /// How many times wider shots scatter up and down than to the sides; the sizes above are the geometric mean of the two.
    pub taller: f64,
    /// The archer's aim from end to end, to the sides and up and down.
    pub aim_mm: [f64; 2],
    /// Reading a hit, where nothing else is said.
    pub read_mm: f64,
    /// The lean of a bare shot about its own mean, reading apart.
    pub bare_lean_deg: f64,
    /// The lean of a fletched shot about its own mean, reading apart.
    pub reference_lean_deg: f64,
    /// Reading a lean, where nothing else is said.
    pub read_lean_deg: f64,
    /// The frame in which an end's leans are read: nearly anything.
    pub frame_deg: f64,
    /// The common offset of bare shafts, of a bow that is nearly right.
    pub common_mm: f64,
    /// What the common lean of bare shafts differs from what goes with their common offset.
    pub common_lean_deg: f64,
    /// A shaft's own centre.
    pub centre_mm: f64,
    /// What turns once with the mark.
    pub turning_mm: f64,
    /// What turns twice with the mark.
    pub stiff_mm: f64,
    /// What turns against the mark, as a share of what turns with it.
    pub against_share: f64,
    /// What the turning parts of all shafts have in common, as a share of them.
    pub set_share: f64,
    /// One reference against another.
    pub between_references_mm: f64,
    /// The lean of one reference against another.
    pub between_references_deg: f64,
    /// The lean that goes with a miss, degrees for each millimetre of it.
    pub lean_per_miss_deg_per_mm: f64,
    /// What the lean of a shaft's part differs from that relation.
    pub discrepancy_deg: f64,
    /// How much the part that turns twice changes when the bow is changed, as a share of it.
    pub stiff_change_share: f64,
}

impl Scales {
    /// The defaults, with the lengths carried in proportion to `distance`.
    ///
    /// # Source
    /// Common practice for a compound bow and carbon shafts at 18.3 m, from memory: an ordinary hunter's group,
    /// faults of one to two centimetres, a lean of a tenth of a degree for each millimetre, the tail pointing
    /// away from where the shaft went (tail left, hit right).
    pub fn at(distance: Millimetres) -> Self {
        let mm = |at_stated_distance: f64| at_stated_distance * (distance / STATED_AT);
        Self {
            reference_mm: mm(16.0),
            bare_mm: mm(19.0),
            taller: 1.0,
            aim_mm: [mm(8.0); 2],
            read_mm: 4.0,
            bare_lean_deg: 1.0,
            reference_lean_deg: 0.5,
            read_lean_deg: 0.7,
            frame_deg: 1.5,
            common_mm: mm(12.0),
            common_lean_deg: 0.5,
            centre_mm: mm(4.0),
            turning_mm: mm(10.0),
            stiff_mm: mm(6.0),
            against_share: 0.1,
            set_share: 0.2,
            between_references_mm: mm(5.0),
            between_references_deg: 0.5,
            lean_per_miss_deg_per_mm: -0.10 * (STATED_AT / distance),
            discrepancy_deg: 0.3,
            stiff_change_share: 0.35,
        }
    }

    /// The scatter of shots along each axis, as a multiple of the geometric mean of the two.
    pub fn along_axes(&self) -> [f64; 2] {
        let root = self.taller.sqrt();
        [root.recip(), root]
    }

    /// What the squares of a hit's scatter along the axes would sum to, were the archer as wide in both.
    pub fn rounded_mm2(&self, squares_mm2: [f64; 2]) -> f64 {
        let [x, y] = squares_mm2;
        x * self.taller + y / self.taller
    }

    /// The same scales with a bow that may be far off; then the lean no longer grows in proportion to the offset.
    #[must_use]
    pub fn far_off(self) -> Self {
        Self {
            common_mm: FAR * self.common_mm,
            common_lean_deg: FAR_LEAN * self.common_lean_deg,
            ..self
        }
    }
}
