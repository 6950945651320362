//! Leans from rendered photos: the marks are found, the tails are read to the pixel, and what is said of the leans holds.

use nalgebra::Vector3;
use quarterturn_geometry::{
    Angle, Camera, Lean, Lens, Mark, Millimetres, Offset, Pixel, SeenLean, SeenShaft,
};
use quarterturn_photo::{Corner, find};

use crate::camera::Camera as Planted;
use crate::scene::{Scene, Stand};
use crate::sheet::Sheet;
use crate::{BEND, SPACING, on_film, views, write};

const SIZE: [usize; 2] = [1600, 1200];
const VIEWS: u64 = 6;
/// Pixels are read to this.
const READ_PX: f64 = 2.0;

/// A scene seen from behind the nocks.
pub fn scene(seed: u64) -> Scene {
    Scene::from(&Stand::BEHIND_THE_NOCKS, seed, SIZE, BEND)
}

/// What a camera sees of it, rounded as viewers show it; nothing where that is outside the picture.
fn shown(camera: &Planted, place: Vector3<f64>) -> Option<Pixel> {
    let seen = camera.pixel(place)?.map(f64::round);
    let is_inside =
        (0.0..SIZE[0] as f64).contains(&seen.x) && (0.0..SIZE[1] as f64).contains(&seen.y);
    is_inside.then(|| Pixel::new(seen.x, seen.y))
}

/// The planted lean and the shaft as the picture shows it.
fn shafts(scene: &Scene) -> Vec<(Lean, SeenShaft)> {
    let ends = scene.holes.iter().map(|hole| hole.push(0.0)).zip(&scene.tails);
    let shaft = |(hole, tail): (Vector3<f64>, &Vector3<f64>)| {
        let way = tail - hole;
        let length = Millimetres::new(way.norm());
        let lean = Lean::from_tail(Offset::new(way.x, way.y), length).unwrap();
        let [hole, tail] = [shown(&scene.camera, hole)?, shown(&scene.camera, *tail)?];
        let (ends_sd, length_sd) = (Millimetres::new(1.0), Millimetres::new(10.0));
        let seen = SeenShaft { hole, tail, read_sd_px: READ_PX, ends_sd, length, length_sd };
        Some((lean, seen))
    };
    ends.filter_map(shaft).collect()
}

/// For each arrow but the first how far off its lean beside the first is, and what that is known to, both in degrees; nothing
/// where the marks are not found.
fn leans(seed: u64, sheet: &Sheet) -> Option<Vec<[f64; 2]>> {
    let mut scene = scene(seed);
    let photo = scene.photo(sheet);
    write(&format!("tails-{seed}"), &scene, &photo);
    let found = find(&photo, SPACING).ok()?;
    let mark = |(corner, pixel): (&Corner, Pixel)| Mark { pixel, point: corner.point(SPACING) };
    let marks: Vec<Mark> = Corner::ALL.iter().zip(found.pixels).map(mark).collect();
    // As the lens is named, a little beside the truth.
    let named = Millimetres::new((on_film(&scene.camera) * 1.04).round());
    let lens = Lens::of_film(named, 0.05, SIZE.map(|side| side as u32));
    let camera = Camera::of_marks(&marks, &found.view, &lens, READ_PX).unwrap();
    assert!(camera.misfit() < 4.0, "{seed}: {}", camera.misfit());
    let (truth, shafts): (Vec<Lean>, Vec<SeenShaft>) = shafts(&scene).into_iter().unzip();
    let seen: Vec<SeenLean> = shafts.iter().map(|shaft| camera.lean(shaft).unwrap()).collect();
    let spreads = SeenLean::spreads(&seen);
    let beside = |at: usize| {
        let read = seen[at].lean.relative_to(seen[0].lean);
        let is = truth[at].relative_to(truth[0]);
        let [x, y] = [read.x - is.x, read.y - is.y].map(Angle::degrees);
        [x.hypot(y), spreads[at].degrees().hypot(spreads[0].degrees())]
    };
    Some((1..seen.len()).map(beside).collect())
}

#[test]
fn leans_from_rendered_photos_hold_what_is_said() {
    let (sheet, views) = (Sheet::printed(), views(VIEWS));
    let found: Vec<_> = (0..views).filter_map(|seed| leans(seed, &sheet)).collect();
    let leans: Vec<[f64; 2]> = found.iter().flatten().copied().collect();
    let count = leans.len() as f64;
    let worst_deg = leans.iter().map(|lean| lean[0]).fold(0.0, f64::max);
    let said_deg = leans.iter().map(|lean| lean[1]).sum::<f64>() / count;
    // The radius that holds 95 % of what is known alike along both axes.
    let outside = leans.iter().filter(|[off, said]| *off > said * 2.448).count() as f64;
    println!(
        "{} of {views} found, {count} leans beside the first, worst {worst_deg:.2} deg, known to {said_deg:.2} deg, {outside} outside",
        found.len()
    );
    assert!(found.len() as f64 >= 0.6 * views as f64 && count >= views as f64, "{count}");
    assert!(outside <= 0.1 * count && worst_deg <= 1.0, "{outside} of {count}, {worst_deg}");
}
