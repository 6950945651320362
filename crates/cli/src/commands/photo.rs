//! `photo`: reads the hits of an end off a photo and records them.

use std::path::PathBuf;

use quarterturn_geometry::{Millimetres, Pixel};
use quarterturn_journal::{Confirmed, EndEntry, Entry, FaceUnit, JournalError, Stamp};

use crate::answer::Answer;
use crate::args::PhotoArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::paper::Grid;
use crate::photo::{By, Hit, Holes, PhotoCamera, PhotoView, Picture, Seen, hits, tails};
use crate::plot::PhotoOverlay;
use crate::wording::count;
use crate::{clock, json, output, screens};

/// The grid is drawn so far beyond the marks.
const BEYOND_MM: f64 = 7.0;

/// Reads the hits, draws them over the photo, and records them.
pub fn run(args: &PhotoArgs) -> Result<Answer, Failure> {
    let mut opened = Opened::at(&args.journal)?;
    let unit = opened.ruler().unit();
    let holes = Holes::read(args, unit)?;
    let picture = args.image.as_deref().map(Picture::read).transpose()?;
    let photo = PhotoView::of(args, unit, picture.as_ref())?;
    if let Some(picture) = &picture {
        holes.inside(&photo, picture.size())?;
    }
    let hits = hits(&photo, &holes.typed.0).map_err(|hole| holes.beyond_the_horizon(hole))?;
    let camera = camera(args, &photo, &holes, picture.as_ref())?;
    let hits = leaning(&opened, &photo, camera.as_ref(), &holes, hits)?;
    let end = EndEntry {
        shots: hits.iter().map(|hit| hit.shot.clone()).collect(),
        evening: args.evening.clone(),
        note: args.note.clone(),
        ..EndEntry::default()
    };
    let number = opened.journal.state().ends().count() + 1;
    let overlay = picture.as_ref().and_then(|_| overlay_file(args, &opened, number));
    let stamp = clock::stamp()?;
    let tried = opened.journal.state().with(Entry::End(end.clone()), &stamp);
    tried.map_err(|faults| holes.refused(&faults))?;
    // Before it is recorded: a drawing that cannot be written must not leave an end behind.
    if let (Some(picture), Some(file)) = (&picture, &overlay) {
        let drawn = drawn(&opened, &photo, &hits, picture)?;
        output::write(file, drawn, output::existing(args.force))?;
    }
    let confirmed =
        if args.dry_run { None } else { Some(recorded(&mut opened, end, &stamp, &holes)?) };
    let overlay = overlay.map(|file| file.display().to_string());
    let seen = Seen { photo: &photo, camera: camera.as_ref(), hits: &hits };
    let notices = screens::photo_notices(&seen, opened.ruler());
    let text = if args.json {
        json::photo(&seen, confirmed.as_ref(), overlay)?
    } else {
        said(&opened, &seen, confirmed.is_some(), overlay)
    };
    let told = confirmed.iter().flat_map(screens::what_else);
    Ok(Answer::new(text).noticing(opened.notices()).noticing(notices).noticing(told))
}

fn said(opened: &Opened, seen: &Seen, is_recorded: bool, overlay: Option<String>) -> String {
    let seen = screens::photo(seen, opened.ruler());
    let look =
        overlay.map(|file| format!("Look: {file} has the grid and the hits on the photo.\n"));
    let rest = if is_recorded {
        screens::recorded_end(opened)
    } else {
        "Nothing was recorded: this was a dry run.\n".to_owned()
    };
    [seen, look.unwrap_or_default(), rest]
        .into_iter()
        .filter(|part| !part.is_empty())
        .collect::<Vec<_>>()
        .join("\n")
}

/// The camera, where a tail is read in the picture.
fn camera(
    args: &PhotoArgs,
    photo: &PhotoView,
    holes: &Holes,
    picture: Option<&Picture>,
) -> Result<Option<PhotoCamera>, Failure> {
    let is_asked = holes.typed.0.iter().any(|hole| hole.tail.is_some());
    let of = || PhotoCamera::of(args, photo, picture.map(Picture::size));
    is_asked.then(of).transpose()
}

/// The hits with the leans of their arrows.
fn leaning(
    opened: &Opened,
    photo: &PhotoView,
    camera: Option<&PhotoCamera>,
    holes: &Holes,
    hits: Vec<Hit>,
) -> Result<Vec<Hit>, Failure> {
    let Some(PhotoCamera { camera, .. }) = camera else { return Ok(hits) };
    let references = &opened.journal.state().history().setup.references;
    let is_reference = |name: &str| references.iter().any(|one| one.as_str() == name);
    let tails = tails(photo, camera, &holes.typed.0, is_reference);
    let tails = tails.map_err(|no_lean| holes.no_lean(&no_lean, references))?;
    Ok(hits.into_iter().zip(tails).map(|(hit, tail)| hit.with(tail)).collect())
}

/// Records the end.
fn recorded(
    opened: &mut Opened,
    end: EndEntry,
    stamp: &Stamp,
    holes: &Holes,
) -> Result<Confirmed, Failure> {
    opened.journal.append(Entry::End(end), stamp).map_err(|error| match error {
        JournalError::Refused { faults } => holes.refused(&faults),
        error => error.into(),
    })
}

/// The file that was named, or one beside the journal that has the number of the end; for a dry run none that was not.
fn overlay_file(args: &PhotoArgs, opened: &Opened, number: usize) -> Option<PathBuf> {
    let usual = || opened.beside(&format!("-photo-{number}.svg"));
    args.overlay.clone().or_else(|| (!args.dry_run).then(usual))
}

fn drawn(
    opened: &Opened,
    photo: &PhotoView,
    hits: &[Hit],
    picture: &Picture,
) -> Result<String, Failure> {
    let grid = match opened.journal.state().unit() {
        FaceUnit::Inches => Grid::INCHES,
        FaceUnit::Centimetres | FaceUnit::Millimetres => Grid::CENTIMETRES,
    };
    let out_mm = photo.marks.iter().map(|mark| mark.point.x_mm.abs().max(mark.point.y_mm.abs()));
    let reach = Millimetres::new(out_mm.fold(0.0, f64::max) + BEYOND_MM);
    let marks: Vec<Pixel> = photo.marks.iter().map(|mark| mark.pixel).collect();
    let tails: Vec<_> =
        hits.iter().filter_map(|hit| Some([hit.pixel, hit.tail.as_ref()?.pixel])).collect();
    let named: Vec<_> = hits.iter().map(|hit| (hit.shot.shaft.clone(), hit.pixel)).collect();
    let told = match &photo.by {
        By::Picture(_) => "by marks found in it",
        By::Hand(_) => "by marks that were given",
    };
    let overlay = PhotoOverlay {
        title: &opened.name(),
        finding: &format!(
            "A photo of the face with its grid, {told}, and {}.",
            count(hits.len(), "hit")
        ),
        jpeg: &picture.jpeg()?,
        size: picture.size(),
        view: &photo.view,
        reach,
        lines: &grid.lines(reach),
        marks: &marks,
        hits: &named,
        tails: &tails,
    };
    Ok(overlay.svg())
}
