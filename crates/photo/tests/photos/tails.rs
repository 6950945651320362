//! Leans from rendered photos: the marks are found, the tails are read to the pixel, and what is said of the leans holds.

use nalgebra::Vector3;
use quarterturn_geometry::{
    Camera, Lean, Lens, Mark, Millimetres, Offset, Pixel, SeenLean, SeenShaft,
};
use quarterturn_photo::{Corner, find};

use crate::camera::Camera as Planted;
use crate::scene::{Scene, Stand};
use crate::sheet::Sheet;
use crate::{BEND, SPACING, on_film, views, write};

const SIZE: [usize; 2] = [1600, 1200];
const VIEWS: u64 = 5;
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

#[test]
fn leans_from_rendered_photos_hold_what_is_said() {
    let sheet = Sheet::printed();
    let (mut found_in, mut leans, mut outside, mut worst, mut sds) = (0, 0.0, 0.0, 0.0_f64, 0.0);
    let views = views(VIEWS);
    for seed in 0..views {
        let mut scene = scene(seed);
        let photo = scene.photo(&sheet);
        write(&format!("tails-{seed}"), &scene, &photo);
        let Ok(found) = find(&photo, SPACING) else { continue };
        found_in += 1;
        let marks: Vec<Mark> = Corner::ALL
            .iter()
            .zip(found.pixels)
            .map(|(corner, pixel)| Mark { pixel, point: corner.point(SPACING) })
            .collect();
        let size = SIZE.map(|side| side as u32);
        // As the lens is named, 4 % beside the truth.
        let named = Millimetres::new((on_film(&scene.camera) * 1.04).round());
        let lens = Lens::of_film(named, 0.05, size);
        let camera = Camera::of_marks(&marks, &found.view, &lens, READ_PX).unwrap();
        assert!(camera.misfit() < 4.0, "{seed}: {}", camera.misfit());
        let (truth, shafts): (Vec<Lean>, Vec<SeenShaft>) = shafts(&scene).into_iter().unzip();
        let seen: Vec<SeenLean> = shafts.iter().map(|shaft| camera.lean(shaft).unwrap()).collect();
        let spreads = SeenLean::spreads(&seen);
        for at in 1..seen.len() {
            let [read, is] =
                [seen[at].lean.relative_to(seen[0].lean), truth[at].relative_to(truth[0])];
            let off_deg =
                (read.x.degrees() - is.x.degrees()).hypot(read.y.degrees() - is.y.degrees());
            let said_deg = spreads[at].degrees().hypot(spreads[0].degrees());
            leans += 1.0;
            worst = worst.max(off_deg);
            sds += said_deg;
            outside += f64::from(u8::from(off_deg > said_deg * 2.45));
        }
    }
    println!(
        "{found_in} of {views} found, {leans} leans beside the first, worst {worst:.2} deg, said {:.2} deg, {outside} outside 95 %",
        sds / leans
    );
    assert!(
        found_in as f64 >= 0.8 * views as f64 && leans >= 2.0 * views as f64 - 5.0,
        "{found_in} {leans}"
    );
    assert!(outside <= 0.15 * leans && worst <= 2.5, "{outside} of {leans}, {worst}");
}
