//! What a photo says, as JSON.

use quarterturn_journal::Confirmed;
use serde::Serialize;

use crate::failure::Failure;
use crate::photo::{Among, By, Hit, KnownLens, PhotoCamera, PhotoView, Seen};

#[derive(Serialize)]
struct PhotoAnswer {
    schema: &'static str,
    dry_run: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    record: Option<u64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    record_id: Option<String>,
    marks_by: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    told_from_three: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    marks_unlike: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    lines_off_mm: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    drawn_mm: Option<f64>,
    marks: Vec<MarkAnswer>,
    read_to_px: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    camera: Option<CameraAnswer>,
    shots: Vec<HitAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    overlay: Option<String>,
}

#[derive(Serialize)]
struct MarkAnswer {
    x_mm: f64,
    y_mm: f64,
    x_px: f64,
    y_px: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    off_mm: Option<f64>,
}

#[derive(Serialize)]
struct CameraAnswer {
    x_mm: f64,
    y_mm: f64,
    z_mm: f64,
    lens_mm: f64,
    lens_spread: f64,
    lens_by: &'static str,
}

#[derive(Serialize)]
struct HitAnswer {
    shaft: String,
    x_px: f64,
    y_px: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    index_deg: Option<f64>,
    x_mm: f64,
    y_mm: f64,
    read_sd_mm: f64,
    outside_marks: bool,
    #[serde(flatten)]
    tail: Option<TailAnswer>,
}

#[derive(Serialize)]
struct TailAnswer {
    tail_x_px: f64,
    tail_y_px: f64,
    lean_x_deg: f64,
    lean_y_deg: f64,
    lean_sd_deg: f64,
}

/// What a photo says of the arrows, and what was recorded of it; nothing where it was a dry run.
pub fn photo(
    &Seen { photo, camera, hits: all }: &Seen,
    confirmed: Option<&Confirmed>,
    overlay: Option<String>,
) -> Result<String, Failure> {
    let record = confirmed.map(|confirmed| &confirmed.record);
    let found = match &photo.by {
        By::Picture(found) => Some(found),
        By::Hand(_) => None,
    };
    super::finite_line(&PhotoAnswer {
        schema: "quarterturn.photo/1",
        dry_run: record.is_none(),
        record: record.map(|record| record.seq),
        record_id: record.map(|record| record.stamp.id.to_string()),
        marks_by: if found.is_some() { "picture" } else { "hand" },
        told_from_three: found.and_then(|found| found.told).map(quarterturn_photo::Corner::name),
        marks_unlike: found.map(|found| found.unlike),
        lines_off_mm: photo.grid().lines.map(quarterturn_geometry::Millimetres::mm),
        drawn_mm: photo.grid().drawn.map(|drawn| (drawn.mm() * 10.0).round() / 10.0),
        marks: marks(photo),
        read_to_px: photo.reading.px(),
        camera: camera.map(camera_answer),
        shots: all.iter().map(hit).collect(),
        overlay,
    })
}

fn marks(photo: &PhotoView) -> Vec<MarkAnswer> {
    let is_told = photo.off().is_some();
    let mark = |(mark, error): (&quarterturn_geometry::Mark, &quarterturn_geometry::Offset)| {
        let (x_mm, y_mm) = (mark.point.x_mm, mark.point.y_mm);
        let (x_px, y_px) = (mark.pixel.x_px, mark.pixel.y_px);
        MarkAnswer { x_mm, y_mm, x_px, y_px, off_mm: is_told.then(|| error.length().mm()) }
    };
    photo.marks.iter().zip(photo.view.errors()).map(mark).collect()
}

fn camera_answer(PhotoCamera { camera, lens }: &PhotoCamera) -> CameraAnswer {
    let [x_mm, y_mm, z_mm] = camera.place_mm().map(f64::round);
    CameraAnswer {
        x_mm,
        y_mm,
        z_mm,
        lens_mm: (camera.focal().mm() * 10.0).round() / 10.0,
        lens_spread: (camera.focal_spread() * 1000.0).round() / 1000.0,
        lens_by: match lens {
            KnownLens::Said { .. } => "hand",
            KnownLens::ByMarks => "marks",
        },
    }
}

fn hit(hit: &Hit) -> HitAnswer {
    HitAnswer {
        shaft: hit.shot.shaft.clone(),
        x_px: hit.pixel.x_px,
        y_px: hit.pixel.y_px,
        index_deg: hit.shot.index_deg,
        x_mm: hit.point.x_mm,
        y_mm: hit.point.y_mm,
        read_sd_mm: hit.read_sd.mm(),
        outside_marks: hit.among == Among::Outside,
        tail: hit.tail.as_ref().map(|tail| TailAnswer {
            tail_x_px: tail.pixel.x_px,
            tail_y_px: tail.pixel.y_px,
            lean_x_deg: tail.lean.x.degrees(),
            lean_y_deg: tail.lean.y.degrees(),
            lean_sd_deg: tail.lean_sd.degrees(),
        }),
    }
}
