//! `plot`: draws the target.

use std::path::PathBuf;

use quarterturn_entry::quantity;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::Level;
use quarterturn_tuning::{hits_at, reach};

use super::reach::SEED;
use crate::answer::Answer;
use crate::args::{Face, PlotArgs};
use crate::failure::{Failure, Kind, Marked};
use crate::input;
use crate::opened::Opened;
use crate::output;
use crate::plot::{
    Backdrop, CoursePlot, FaceSize, FinishedPlot, Hits, ShaftPlot, StyledBy, TargetPlot,
};
use crate::wording::all;

/// As `reach` has it.
const USUAL_PLATE: Millimetres = Millimetres::new(200.0);

/// Writes the picture; the journal is only read.
pub fn run(args: &PlotArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let (what, part, picture) = match &args.shaft {
        Some(shaft) => (format!("Shaft {shaft}"), Some(shaft.as_str()), of_shaft(&opened, shaft)?),
        None if args.finished => {
            ("What finished arrows hit".to_owned(), Some("finished"), finished(&opened, args)?)
        }
        None if args.course => ("The course".to_owned(), Some("course"), course(&opened)),
        None => ("The target".to_owned(), None, target(&opened, backdrop(args)?)),
    };
    let file = args.output.clone().map_or_else(|| beside(&opened, part), Ok)?;
    let answer = if input::is_standard(&file) {
        Answer::new(picture)
    } else {
        output::write(&file, &picture, output::existing(args.force))?;
        Answer::new(format!("{what} is drawn in {}.\n", file.display()))
    };
    Ok(answer.noticing(opened.notices()))
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
    let state = opened.journal.state();
    CoursePlot {
        history: state.history(),
        advice: &opened.advice(),
        policy: state.policy(),
        ruler: opened.ruler(),
        title: &opened.name(),
        styled: StyledBy::Itself,
    }
    .svg()
}

/// Finished arrows of a journal.
fn finished(opened: &Opened, args: &PlotArgs) -> Result<String, Failure> {
    let plate = args.plate.as_deref().map_or(Ok(USUAL_PLATE), plate)?;
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
fn backdrop(args: &PlotArgs) -> Result<Backdrop, Failure> {
    let size = args.face.map(|face| match face {
        Face::Cm122 => FaceSize::Cm122,
        Face::Cm80 => FaceSize::Cm80,
        Face::Cm60 => FaceSize::Cm60,
        Face::Cm40 => FaceSize::Cm40,
    });
    let plate = args.plate.as_deref().map(plate).transpose()?;
    Ok(size.map(Backdrop::Rings).or(plate.map(Backdrop::Plate)).unwrap_or(Backdrop::Grid))
}

fn plate(text: &str) -> Result<Millimetres, Failure> {
    let diameter = quantity::length(text, None)
        .map_err(|fault| Failure::in_option("--plate", text, &fault))?;
    if diameter > Millimetres::ZERO {
        return Ok(diameter);
    }
    let marked = Marked::typed(text).wrong(0..text.len(), "a plate has a size");
    Err(Failure::new(Kind::Usage, "the value of --plate cannot be used").marking(marked))
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

/// The journal's name with .svg in the place of its ending, after the part of it that is drawn.
fn beside(opened: &Opened, part: Option<&str>) -> Result<PathBuf, Failure> {
    let part = part.map_or(String::new(), |part| format!("-{part}"));
    let file = opened.beside(&format!("{part}.svg"));
    if file == opened.path {
        let failure = Failure::new(Kind::Usage, "the picture would have the journal's own name");
        return Err(failure.hinting(["name another file with -o"]));
    }
    Ok(file)
}
