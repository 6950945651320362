//! A scene before the butt: the face, rings of other targets beside it, arrows, a shadow.

use std::ops::Range;

use nalgebra::{Vector2, Vector3};
use quarterturn_geometry::Millimetres;
use quarterturn_photo::{Corner, Luminance};
use rand::{Rng, RngExt, SeedableRng};
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::camera::Camera;
use crate::sheet::{SPACING_MM, Sheet};

/// A scene that follows from its seed.
pub struct Scene {
    pub camera: Camera,
    /// Where arrows stand, mm.
    pub holes: Vec<Vector2<f64>>,
    /// The ends of their nocks, once the photo is taken.
    pub tails: Vec<Vector3<f64>>,
    covered: usize,
    random: Pcg64,
}

/// Where people stand who take a picture.
pub struct Stand {
    pub distance_mm: Range<f64>,
    /// How much of the picture's shorter side the sheet takes.
    pub share: Range<f64>,
    pub tilt_deg: Range<f64>,
}

impl Stand {
    /// So near that the sheet takes half of the picture or more.
    pub const NEAR: Self =
        Self { distance_mm: 800.0..1600.0, share: 0.5..0.9, tilt_deg: 0.0..50.0 };
    /// Behind the nocks, with a zoom, nearly straight ahead.
    pub const BEHIND_THE_NOCKS: Self =
        Self { distance_mm: 1400.0..2000.0, share: 0.25..0.4, tilt_deg: 3.0..18.0 };
}

/// Rings beside the face, which are not ours: middle, mm, and radii from the outside.
struct Rings(Vector2<f64>, [f64; 3]);

impl Scene {
    pub fn of(seed: u64, size: [usize; 2], widest: f64) -> Self {
        Self::from(&Stand::NEAR, seed, size, widest)
    }

    /// One taken from such a stand; arrows stand 600 mm out, as they lean a little more.
    pub fn from(stand: &Stand, seed: u64, size: [usize; 2], widest: f64) -> Self {
        let mut random = Pcg64::seed_from_u64(seed);
        let mut within = |range: &Range<f64>| random.random_range(range.clone());
        let distance = within(&stand.distance_mm);
        let px_a_mm = within(&stand.share) * size[0].min(size[1]) as f64 / 180.0;
        let tilt = within(&stand.tilt_deg).to_radians();
        let mut between = |from: f64, to: f64| random.random_range(from..to);
        let toward = between(0.0, 6.3);
        let place = Vector3::new(tilt.sin() * toward.cos(), tilt.sin() * toward.sin(), tilt.cos());
        let aim = Vector3::new(between(-25.0, 25.0), between(-25.0, 25.0), 0.0);
        let roll = between(-3.15, 3.15);
        let bend = between(-widest, widest + 1e-9);
        let camera =
            Camera::looking(size, px_a_mm * distance, [place * distance + aim, aim], roll, bend);
        if !shows_all_marks(&camera) {
            // Nobody takes that picture.
            return Self::from(
                stand,
                seed.wrapping_mul(0x9e37_79b9_7f4a_7c15).wrapping_add(1),
                size,
                widest,
            );
        }
        let count = random.random_range(2..=5);
        let holes = (0..count)
            .map(|_| {
                let [x, y] = [0, 1].map(|_| normal(&mut random) * 28.0);
                Vector2::new(x.clamp(-80.0, 80.0), y.clamp(-80.0, 80.0))
            })
            .collect();
        Self { camera, holes, tails: Vec::new(), covered: 0, random }
    }

    /// How many marks arrows stand before.
    pub fn covered(&self) -> usize {
        self.covered
    }

    /// The photo of it.
    pub fn photo(&mut self, sheet: &Sheet) -> Luminance {
        let (width, height) = (self.camera.width, self.camera.height);
        let mut light = self.still(sheet);
        self.arrows(&mut light);
        let blurred = blurred(&light, width, self.random.random_range(0.4..1.4));
        let (gain, noise) =
            (self.random.random_range(150.0..260.0), self.random.random_range(1.0..7.0));
        let values = blurred.iter().map(|value| {
            let read = f64::from(*value) * gain + noise * rough(&mut self.random);
            read.round().clamp(0.0, 255.0) as u8
        });
        Luminance::new(width, height, values.collect()).unwrap()
    }

    /// The face, the butt and the light on them.
    fn still(&mut self, sheet: &Sheet) -> Vec<f32> {
        let rings = self.rings();
        let camera = self.camera;
        let random = &mut self.random;
        let mut between = |from: f64, to: f64| random.random_range(from..to);
        let (falls, edge) = (between(0.0, 6.3), between(-90.0, 90.0));
        let (shadow, soft) = (between(0.4, 1.0), between(1.0, 30.0));
        let (slope, butt) = (between(-0.002, 0.002), between(0.15, 0.5));
        let normal = Vector2::new(falls.cos(), falls.sin());
        let px_a_mm =
            (camera.pixel_on_face(10.0, 0.0) - camera.pixel_on_face(-10.0, 0.0)).norm() / 20.0;
        let pixel = |at: usize| {
            let pixel = Vector2::new((at % camera.width) as f64, (at / camera.width) as f64);
            let place = camera.on_face(pixel);
            let across = place.dot(&normal);
            let lit = shadow + (1.0 - shadow) * ((across - edge) / soft + 0.5).clamp(0.0, 1.0);
            let own = sheet
                .at(place, px_a_mm)
                .map_or_else(|| straw(place, butt, &rings), |paper| 0.05 + 0.8 * paper);
            (own * lit * (1.0 + slope * across).clamp(0.5, 1.5)) as f32
        };
        (0..camera.width * camera.height).map(pixel).collect()
    }

    fn rings(&mut self) -> Vec<Rings> {
        let mut between = |from: f64, to: f64| self.random.random_range(from..to);
        let ring = |_| {
            let out = between(3.0, 30.0);
            let radii = [out, out * between(0.5, 0.9), out * between(0.1, 0.5)];
            Rings(Vector2::new(between(-200.0, 200.0), between(-250.0, 250.0)), radii)
        };
        (0..8).map(ring).collect()
    }

    /// Each arrow with its shadow on the face.
    fn arrows(&mut self, light: &mut [f32]) {
        let camera = self.camera;
        let holes = self.holes.clone();
        let falls: f64 = self.random.random_range(0.0..6.3);
        for hole in holes {
            let mut between = |from: f64, to: f64| self.random.random_range(from..to);
            let foot = Vector3::new(hole.x, hole.y, 0.0);
            let (length, shade) = (between(120.0, 400.0), between(0.03, 0.6));
            let thick = between(5.0, 8.0);
            let cast = foot + Vector3::new(falls.cos(), falls.sin(), 0.0) * length;
            let dimmed = between(0.5, 0.9);
            if let Some(bar) = Bar::of(&camera, [foot, cast], thick) {
                bar.change(&camera, light, |value| value * dimmed as f32);
            }
            let lean = Vector3::new(between(-0.05, 0.05), between(-0.05, 0.05), 1.0);
            self.tails.push(foot + lean * 600.0);
            // What comes too near to the camera is behind it.
            let seen = (1..=60).map(|part| foot + lean * (f64::from(part) * 10.0));
            let tail = seen.take_while(|place| camera.pixel(*place).is_some()).last();
            let Some(bar) = Bar::of(&camera, [foot, tail.unwrap_or(foot)], thick) else { continue };
            let mark_px =
                6.0 * (camera.pixel_on_face(1.0, 0.0) - camera.pixel_on_face(0.0, 0.0)).norm();
            let covers = marks(&camera).iter().any(|mark| bar.beyond(*mark) < mark_px);
            self.covered += usize::from(covers);
            bar.change(&camera, light, |_| shade as f32);
        }
    }
}

/// Where the marks are in the picture.
fn marks(camera: &Camera) -> [Vector2<f64>; 4] {
    let spacing = Millimetres::new(SPACING_MM);
    Corner::ALL.map(|corner| corner.point(spacing)).map(|at| camera.pixel_on_face(at.x_mm, at.y_mm))
}

fn shows_all_marks(camera: &Camera) -> bool {
    let (wide, high) = (camera.width as f64, camera.height as f64);
    marks(camera)
        .iter()
        .all(|at| at.x > 30.0 && at.y > 30.0 && at.x < wide - 30.0 && at.y < high - 30.0)
}

/// A bar in the picture, thinner with the distance.
struct Bar {
    from: Vector2<f64>,
    to: Vector2<f64>,
    /// Half as thick as it is at both ends, px.
    halves: [f64; 2],
}

impl Bar {
    fn of(camera: &Camera, ends: [Vector3<f64>; 2], thick_mm: f64) -> Option<Self> {
        let halves = ends.map(|place| {
            let away = (camera.axes * (place - camera.place)).z;
            thick_mm / 2.0 * camera.focal / away
        });
        let [from, to] = ends.map(|place| camera.pixel(place));
        Some(Self { from: from?, to: to?, halves })
    }

    /// How far a pixel is outside, px.
    fn beyond(&self, pixel: Vector2<f64>) -> f64 {
        let (off, along) = (pixel - self.from, self.to - self.from);
        let share = (off.dot(&along) / along.norm_squared().max(1e-9)).clamp(0.0, 1.0);
        (off - along * share).norm() - self.halves[0] - (self.halves[1] - self.halves[0]) * share
    }

    fn change(&self, camera: &Camera, light: &mut [f32], change: impl Fn(f32) -> f32) {
        let reach = self.halves[0].max(self.halves[1]);
        let range = |one: f64, other: f64, most: usize| {
            let (low, high) = (one.min(other) - reach, one.max(other) + reach + 1.0);
            low.max(0.0) as usize..(high.max(0.0) as usize).min(most)
        };
        let columns = range(self.from.x, self.to.x, camera.width);
        for y in range(self.from.y, self.to.y, camera.height) {
            for x in columns.clone() {
                if self.beyond(Vector2::new(x as f64, y as f64)) <= 0.0 {
                    let value = &mut light[y * camera.width + x];
                    *value = change(*value);
                }
            }
        }
    }
}

/// The butt: straw of two sizes, and the rings of other targets.
fn straw(place: Vector2<f64>, shade: f64, rings: &[Rings]) -> f64 {
    let ring = rings.iter().find(|Rings(middle, radii)| (place - middle).norm() < radii[0]);
    if let Some(Rings(middle, radii)) = ring {
        let out = (place - middle).norm();
        return if out < radii[2] || out > radii[1] { 0.08 } else { 0.8 };
    }
    let wave =
        |x: f64, y: f64| (x * 0.9 + (y * 0.31).sin() * 3.0).sin() * (y * 1.3 + x * 0.2).sin();
    shade * (1.0 + 0.25 * wave(place.x, place.y) + 0.2 * wave(place.y / 9.0, place.x / 7.0))
}

fn blurred(light: &[f32], width: usize, sigma: f64) -> Vec<f32> {
    let weight = |k: i32| (-f64::from(k * k) / (2.0 * sigma * sigma)).exp() as f32;
    let weights: Vec<f32> = (-4..=4).map(weight).collect();
    let sum: f32 = weights.iter().sum();
    let across = |light: &[f32], step: usize| -> Vec<f32> {
        let mut out = light.to_vec();
        let inner = out.iter_mut().enumerate().take(light.len() - 4 * step).skip(4 * step);
        for (at, value) in inner {
            let taps = weights.iter().zip((at - 4 * step..).step_by(step));
            *value = taps.map(|(weight, at)| weight * light[at]).sum::<f32>() / sum;
        }
        out
    };
    across(&across(light, 1), width)
}

fn normal(random: &mut impl Rng) -> f64 {
    StandardNormal.sample(random)
}

/// Nearly normal, and quick.
fn rough(random: &mut impl Rng) -> f64 {
    let bits = random.next_u32();
    let four = [0, 8, 16, 24].map(|shift| f64::from((bits >> shift) & 0xff));
    (four.iter().sum::<f64>() - 510.0) / 147.8
}
