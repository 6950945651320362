//! `plot`: draws the target, or a part of the story.

use std::path::PathBuf;

use quarterturn_entry::quantity;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::Level;
use quarterturn_tuning::{hits_at, reach};

use super::no_such_end::no_such_end;
use super::reach::SEED;
use crate::answer::Answer;
use crate::args::{Face, PlotArgs, USUAL_PLATE, UnderArgs, WhatArgs};
use crate::failure::{Failure, Kind, Marked};
use crate::input;
use crate::opened::Opened;
use crate::output;
use crate::picture_file;
use crate::plot::{
    Backdrop, BeforeAfter, CoursePlot, EndPlot, FaceSize, FinishedPlot, Hits, LeanPlot, ShaftPlot,
    StyledBy, TargetPlot, places,
};
use crate::wording::all;

/// A picture, what it is called in a sentence, and in the name of its file.
struct Picture {
    what: String,
    part: String,
    svg: String,
}

/// Writes the picture; the journal is only read.
pub fn run(args: &PlotArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let Picture { what, part, svg } = picture(&opened, &args.what, &args.under)?;
    let ending = if args.png { "png" } else { "svg" };
    let file = args.output.clone().map_or_else(|| beside(&opened, &part, ending), Ok)?;
    let answer = if input::is_standard(&file) {
        Answer::new(svg)
    } else {
        let notice = picture_file::write(&file, &svg, output::existing(args.force))?;
        let text = format!("{what} is drawn in {}.\n", file.display());
        Answer::of_files(text, &[file], args.json)?.noticing(notice)
    };
    Ok(answer.noticing(opened.notices()))
}

fn picture(opened: &Opened, what: &WhatArgs, under: &UnderArgs) -> Result<Picture, Failure> {
    let backdrop = backdrop(under)?;
    let (what, part, svg) = match what {
        WhatArgs { shaft: Some(shaft), .. } => {
            (format!("Shaft {shaft}"), shaft.clone(), of_shaft(opened, shaft)?)
        }
        WhatArgs { end: Some(end), .. } => {
            (format!("End {end}"), format!("end-{end}"), of_end(opened, *end, backdrop)?)
        }
        WhatArgs { before_after: true, .. } => {
            ("Before and after".to_owned(), "before-after".to_owned(), before_after(opened))
        }
        WhatArgs { lean: true, .. } => {
            ("Lean against hit".to_owned(), "lean".to_owned(), lean(opened))
        }
        WhatArgs { course: true, .. } => {
            ("The course".to_owned(), "course".to_owned(), course(opened))
        }
        WhatArgs { finished: true, .. } => {
            let svg = finished(opened, under)?;
            ("What finished arrows hit".to_owned(), "finished".to_owned(), svg)
        }
        _ => ("The target".to_owned(), String::new(), target(opened, backdrop)),
    };
    Ok(Picture { what, part, svg })
}

/// The target of a journal.
pub fn target(opened: &Opened, backdrop: Backdrop) -> String {
    TargetPlot {
        history: opened.journal.state().history(),
        advice: &opened.advice(),
        ruler: opened.ruler(),
        title: &opened.name(),
        backdrop,
        styled: StyledBy::Itself,
    }
    .svg()
}

/// The course of a journal.
fn course(opened: &Opened) -> String {
    let history = opened.journal.state().history();
    let (advice, stood) = opened.advice_with_course(&places(history));
    CoursePlot {
        history,
        advice: &advice,
        stood: &stood,
        ruler: opened.ruler(),
        title: &opened.name(),
        styled: StyledBy::Itself,
    }
    .svg()
}

/// Where the shafts landed first and where they land now.
fn before_after(opened: &Opened) -> String {
    let (history, advice) = (opened.journal.state().history(), &opened.advice());
    let (hits, title) = (&Hits::of(history, advice), &opened.name());
    let (ruler, styled) = (opened.ruler(), StyledBy::Itself);
    BeforeAfter { history, advice, hits, ruler, title, styled }.svg()
}

/// How tails go with hits.
fn lean(opened: &Opened) -> String {
    let (advice, relation) = &opened.advice_with_leans();
    let hits = &Hits::of(opened.journal.state().history(), advice);
    let (relation, ruler, title) = (*relation, opened.ruler(), &opened.name());
    LeanPlot { advice, hits, relation, ruler, title, styled: StyledBy::Itself }.svg()
}

/// One end, counted from 1.
fn of_end(opened: &Opened, number: usize, backdrop: Backdrop) -> Result<String, Failure> {
    let state = opened.journal.state();
    let end = number.checked_sub(1).and_then(|at| state.ends().nth(at));
    let end = end.ok_or_else(|| no_such_end(number, state.ends().count()))?;
    let (setup, ruler, title) = (&state.history().setup, opened.ruler(), &opened.name());
    Ok(EndPlot { setup, end, number, ruler, title, backdrop }.svg())
}

/// Finished arrows of a journal.
fn finished(opened: &Opened, under: &UnderArgs) -> Result<String, Failure> {
    let plate = plate(under.plate.as_deref().unwrap_or(USUAL_PLATE))?;
    let groups: Vec<_> = opened.journal.state().groups_beside_this_bow().collect();
    Ok(FinishedPlot {
        distances: &hits_at(&groups),
        reach: &reach(&groups, plate, Level::P90, SEED),
        plate,
        ruler: opened.ruler(),
        title: &opened.name(),
    }
    .svg())
}

/// What lies under the hits.
fn backdrop(under: &UnderArgs) -> Result<Backdrop, Failure> {
    let size = under.face.map(|face| match face {
        Face::Cm122 => FaceSize::Cm122,
        Face::Cm80 => FaceSize::Cm80,
        Face::Cm60 => FaceSize::Cm60,
        Face::Cm40 => FaceSize::Cm40,
    });
    let plate = under.plate.as_deref().map(plate).transpose()?;
    Ok(size.map(Backdrop::Rings).or(plate.map(Backdrop::Plate)).unwrap_or(Backdrop::Grid))
}

fn plate(text: &str) -> Result<Millimetres, Failure> {
    let diameter = quantity::length(text, None)
        .map_err(|fault| Failure::in_option("--plate", text, &fault))?;
    if diameter > Millimetres::ZERO {
        return Ok(diameter);
    }
    let marked = Marked::typed(text).wrong(0..text.len(), "a plate has a size");
    Err(Failure::new(Kind::Usage, "the value of --plate cannot be used")
        .marking(marked)
        .hinting(["for example 20cm or 8in"]))
}

/// The picture of one bare shaft.
fn of_shaft(opened: &Opened, name: &str) -> Result<String, Failure> {
    let advice = opened.advice();
    let Some(report) = advice.shafts.iter().find(|report| report.shaft.as_str() == name) else {
        let what = format!("there is no bare shaft \"{name}\" in this journal");
        let names = all(advice.shafts.iter().map(|report| &report.shaft));
        return Err(Failure::new(Kind::Data, what).hinting([format!("it has {names}")]));
    };
    let history = opened.journal.state().history();
    let (advice, hits) = (&advice, &Hits::of(history, &advice));
    let (ruler, styled) = (opened.ruler(), StyledBy::Itself);
    Ok(ShaftPlot { history, advice, hits, report, ruler, id: "shaft", styled }.svg())
}

/// The journal's name with the ending in the place of its own, after the part of it that is drawn.
fn beside(opened: &Opened, part: &str, ending: &str) -> Result<PathBuf, Failure> {
    let part = if part.is_empty() { String::new() } else { format!("-{part}") };
    let file = opened.beside(&format!("{part}.{ending}"));
    if file == opened.path {
        let failure = Failure::new(Kind::Usage, "the picture would have the journal's own name");
        return Err(failure.hinting(["name another file with -o"]));
    }
    Ok(file)
}
