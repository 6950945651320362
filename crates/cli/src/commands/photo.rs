//! `photo`: reads the hits of an end off a photo and records them.

use std::path::PathBuf;

use quarterturn_entry::pixels::{self, TypedHoles};
use quarterturn_entry::quantity::Unit;
use quarterturn_entry::{Advising, Located};
use quarterturn_geometry::{Millimetres, Pixel};
use quarterturn_journal::{Confirmed, EndEntry, Entry, FaceUnit, Fault, JournalError, Stamp};

use crate::answer::Answer;
use crate::args::PhotoArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::paper::Grid;
use crate::photo::{By, Hit, PhotoView, Picture, hits};
use crate::plot::PhotoOverlay;
use crate::refusal::{END_NOT_RECORDED, end_not_recorded};
use crate::wording::count;
use crate::{clock, input, json, output, screens};

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
        inside(&photo, &holes, picture.size())?;
    }
    let hits = hits(&photo, &holes.typed.0).map_err(|hole| holes.beyond_the_horizon(hole))?;
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
    let notices = screens::photo_notices(&photo, &hits, opened.ruler());
    let text = if args.json {
        json::photo(&photo, &hits, confirmed.as_ref(), overlay)?
    } else {
        said(&opened, &photo, &hits, confirmed.is_some(), overlay)
    };
    let told = confirmed.iter().flat_map(screens::what_else);
    Ok(Answer::new(text).noticing(opened.notices()).noticing(notices).noticing(told))
}

fn said(
    opened: &Opened,
    photo: &PhotoView,
    hits: &[Hit],
    is_recorded: bool,
    overlay: Option<String>,
) -> String {
    let seen = screens::photo(photo, hits, opened.ruler());
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
    let named: Vec<_> = hits.iter().map(|hit| (hit.shot.shaft.clone(), hit.pixel)).collect();
    let told = match &photo.by {
        By::Picture(_) => "by marks found in it",
        By::Hand => "by marks that were given",
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
    };
    Ok(overlay.svg())
}

/// The holes and the text that they were read from.
struct Holes {
    typed: TypedHoles,
    marked: Marked,
}

impl Holes {
    fn read(args: &PhotoArgs, unit: &'static Unit) -> Result<Self, Failure> {
        let marked = match &args.holes {
            Some(file) => {
                let input = input::read(file)?;
                Marked::file(&input.origin, &input.text)
            }
            None => Marked::typed(&args.hole.join("\n")),
        };
        match pixels::holes(&marked.text, unit) {
            Ok(typed) => Ok(Self { typed, marked }),
            Err(Located { fault, span }) => Err(Failure::new(Kind::Data, END_NOT_RECORDED)
                .marking(marked.wrong(span, fault.to_string()))
                .hinting(fault.way_on())),
        }
    }

    fn refused(&self, faults: &[Fault]) -> Failure {
        let span = |fault: &Fault| self.typed.span(&fault.place);
        end_not_recorded(END_NOT_RECORDED, faults, self.marked.clone(), span)
    }

    fn wrong(&self, hole: usize, label: &str, hint: &str) -> Failure {
        let span = self.typed.0.get(hole).map_or(0..0, |hole| hole.pixel_span.clone());
        let marked = self.marked.clone().wrong(span, label);
        Failure::new(Kind::Data, END_NOT_RECORDED).marking(marked).hinting([hint])
    }

    fn beyond_the_horizon(&self, hole: usize) -> Failure {
        let hint = "read the pixel again, and those of the marks";
        self.wrong(hole, "by these marks this pixel shows no place of the face", hint)
    }
}

/// That marks and holes are in the picture, where there is one.
fn inside(photo: &PhotoView, holes: &Holes, size: [u32; 2]) -> Result<(), Failure> {
    let [width, height] = size.map(f64::from);
    let is_outside = |Pixel { x_px, y_px }: Pixel| {
        !(0.0..width).contains(&x_px) || !(0.0..height).contains(&y_px)
    };
    let told = format!("the picture has {width} by {height} pixels");
    if let Some(mark) = photo.marks.iter().position(|mark| is_outside(mark.pixel)) {
        let Pixel { x_px, y_px } = photo.marks[mark].pixel;
        let what = format!("mark {} at {x_px},{y_px} is outside the picture", mark + 1);
        return Err(Failure::new(Kind::Data, what).hinting([told]));
    }
    match holes.typed.0.iter().position(|hole| is_outside(hole.pixel)) {
        Some(hole) => Err(holes.wrong(hole, "this is outside the picture", &told)),
        None => Ok(()),
    }
}
