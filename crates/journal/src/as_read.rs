//! From what was read at the butt to a hit and a lean, each with how well it is known.
//!
//! Every way of reading has an error of its own. Where the archer stated none, it follows from how he read:
//!
//! | read | standard deviation, per axis |
//! |---|---|
//! | hit by clock and distance | of the distance 4 mm; of the hour half an hour either way, so 0.151 of the distance across |
//! | tail by tape and protruding length | √(5² + (o σ/L)²) / L, o the offset, L the length, σ = 10 mm where L was stated; 600 mm and σ = 100 mm where it was not |
//! | tail by eye: none, some, much | 0 ± 0.7, 2 ± 1, 4.5 ± 1.5 degrees |
//! | tail by its side only | 2.5 ± 2 degrees |
//!
//! # Source
//! Common practice, from memory: a tape reads to 3 to 5 mm, a tail by a tape held across to 5 mm, an hour to half an
//! hour, an eye tells 0 to 1, 1 to 3 and more than 3 cm apart at 60 cm that protrude.

use quarterturn_geometry::{Index, Millimetres, Offset};

use crate::{ShotEntry, TailSeen, Word};

/// Of a distance from the spot, mm.
const ALONG_MM: f64 = 4.0;

/// Of a direction read to half an hour either way, all of which are as likely: 15 deg / √3, radians.
const ACROSS_RAD: f64 = 0.151;

/// Of a tape held across a tail, mm.
const TAIL_MM: f64 = 5.0;

/// How far an arrow protrudes where nobody measured it, mm.
pub(crate) const USUAL_PROTRUDING_MM: f64 = 600.0;

/// How well that is known: measured, and not, mm.
const PROTRUDING_SD_MM: [f64; 2] = [10.0, 100.0];

/// How far an arrow protrudes, and how well that is known, by what was said of it in mm; where nothing was, as is usual.
pub fn protruding(said_mm: Option<f64>) -> [Millimetres; 2] {
    let [measured, usual] = PROTRUDING_SD_MM;
    match said_mm {
        Some(mm) => [mm, measured],
        None => [USUAL_PROTRUDING_MM, usual],
    }
    .map(Millimetres::new)
}

impl ShotEntry {
    /// The shot with the hit and the lean that follow from what was read, as it will be recorded.
    #[must_use]
    pub fn derived(mut self) -> Self {
        self.derive();
        self
    }

    /// Writes out the hit and the lean that follow from what was read, where they are not stated.
    pub(crate) fn derive(&mut self) {
        self.derive_hit();
        self.derive_lean_by_tape();
        self.derive_lean_by_eye();
    }

    fn derive_hit(&mut self) {
        let (None, None, Some(out_mm), Some(toward_deg)) =
            (self.x_mm, self.y_mm, self.out_mm, self.toward_deg)
        else {
            return;
        };
        let hit = Offset::toward(Index::from_degrees(toward_deg).angle(), Millimetres::new(out_mm));
        (self.x_mm, self.y_mm) = (Some(thousandth(hit.x_mm)), Some(thousandth(hit.y_mm)));
        let across_mm = ACROSS_RAD * out_mm;
        let sd_mm = f64::midpoint(ALONG_MM * ALONG_MM, across_mm * across_mm).sqrt();
        self.read_sd_mm.get_or_insert(thousandth(sd_mm));
    }

    fn derive_lean_by_tape(&mut self) {
        let (None, None, Some(x_mm), Some(y_mm)) =
            (self.lean_x_deg, self.lean_y_deg, self.tail_x_mm, self.tail_y_mm)
        else {
            return;
        };
        let [length_mm, length_sd] = protruding(self.protruding_mm).map(Millimetres::mm);
        let off_mm = x_mm.hypot(y_mm);
        // Where the tail is farther out than the arrow is long, the shot is refused for it.
        let lean_deg = (off_mm / length_mm).clamp(0.0, 1.0).asin().to_degrees();
        let per_mm = if off_mm > 0.0 { lean_deg / off_mm } else { 0.0 };
        self.lean_x_deg = Some(thousandth(x_mm * per_mm));
        self.lean_y_deg = Some(thousandth(y_mm * per_mm));
        let sd_mm = TAIL_MM.hypot(off_mm * length_sd / length_mm);
        self.lean_sd_deg.get_or_insert(thousandth((sd_mm / length_mm).to_degrees()));
    }

    fn derive_lean_by_eye(&mut self) {
        let seen = self.tail_seen.as_deref().map(TailSeen::from_word);
        let (None, None, Some(Ok(seen))) = (self.lean_x_deg, self.lean_y_deg, seen) else { return };
        let (size_deg, sd_deg) = match seen {
            TailSeen::None => (0.0, 0.7),
            TailSeen::Some => (2.0, 1.0),
            TailSeen::Much => (4.5, 1.5),
            TailSeen::Side => (2.5, 2.0),
        };
        let toward = Index::from_degrees(self.tail_toward_deg.unwrap_or_default());
        let (sin, cos) = toward.angle().sin_cos();
        self.lean_x_deg = Some(thousandth(size_deg * sin));
        self.lean_y_deg = Some(thousandth(size_deg * cos));
        self.lean_sd_deg.get_or_insert(sd_deg);
    }
}

/// To a thousandth: sine and cosine leave specks, and nobody reads finer.
fn thousandth(value: f64) -> f64 {
    (value * 1000.0).round() / 1000.0 + 0.0
}

#[cfg(test)]
mod tests {
    use crate::ShotEntry;

    #[test]
    fn a_tape_at_the_tail_with_what_protrudes() {
        let shot = ShotEntry {
            tail_x_mm: Some(-21.0),
            tail_y_mm: Some(0.0),
            protruding_mm: Some(600.0),
            ..ShotEntry::default()
        };
        let shot = shot.derived();
        // asin(21 / 600) and √(5² + (21 · 10 / 600)²) / 600.
        assert_eq!((shot.lean_x_deg, shot.lean_y_deg), (Some(-2.006), Some(0.0)));
        assert_eq!(shot.lean_sd_deg, Some(0.479));
    }

    #[test]
    fn without_the_length_the_lean_is_known_less_well() {
        let tail = |tail_x_mm, protruding_mm| {
            let tail_y_mm = Some(0.0);
            ShotEntry { tail_x_mm, tail_y_mm, protruding_mm, ..ShotEntry::default() }.derived()
        };
        let (stated, usual) = (tail(Some(60.0), Some(600.0)), tail(Some(60.0), None));
        assert_eq!(stated.lean_x_deg, usual.lean_x_deg);
        assert!(usual.lean_sd_deg > stated.lean_sd_deg);
    }

    #[test]
    fn an_eye_says_less_than_a_tape() {
        let seen = |word: &str| {
            let tail_seen = Some(word.to_owned());
            ShotEntry { tail_seen, tail_toward_deg: Some(270.0), ..ShotEntry::default() }.derived()
        };
        let lean = |word| {
            let shot = seen(word);
            (shot.lean_x_deg.unwrap(), shot.lean_y_deg.unwrap(), shot.lean_sd_deg.unwrap())
        };
        assert_eq!(lean("none"), (0.0, 0.0, 0.7));
        assert_eq!(lean("some"), (-2.0, 0.0, 1.0));
        assert_eq!(lean("much"), (-4.5, 0.0, 1.5));
        assert_eq!(lean("side"), (-2.5, 0.0, 2.0));
        assert_eq!(seen("plenty").lean_x_deg, None);
    }

    #[test]
    fn an_hour_is_read_less_well_the_farther_out() {
        let hit = |out_mm| {
            let (out_mm, toward_deg) = (Some(out_mm), Some(60.0));
            ShotEntry { out_mm, toward_deg, ..ShotEntry::default() }.derived()
        };
        assert_eq!((hit(80.0).x_mm, hit(80.0).y_mm), (Some(69.282), Some(40.0)));
        // √((4² + (0.151 · 80)²) / 2).
        assert_eq!(hit(80.0).read_sd_mm, Some(8.998));
        assert!(hit(10.0).read_sd_mm < hit(80.0).read_sd_mm);
    }

    #[test]
    fn what_is_stated_stands() {
        let stated = ShotEntry {
            lean_x_deg: Some(1.0),
            lean_y_deg: Some(2.0),
            tail_x_mm: Some(30.0),
            tail_y_mm: Some(0.0),
            ..ShotEntry::default()
        };
        assert_eq!(stated.clone().derived(), stated);
    }
}
