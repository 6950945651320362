//! `paper`: sheets to print at true scale.

use std::path::{Path, PathBuf};

use quarterturn_entry::quantity::{self, Unit};
use quarterturn_geometry::Millimetres;
use quarterturn_journal::{Existing, FaceUnit};
use quarterturn_tuning::{Advice, ShaftReport, Step, Verdict};

use super::fletch_sheet::fletch_sheet;
use crate::answer::Answer;
use crate::args::{FaceArgs, Paper, PaperArgs, PrintArgs, SheetArgs};
use crate::failure::{Failure, Kind, Marked};
use crate::fletching::VanesAsked;
use crate::opened::{Opened, unit};
use crate::output;
use crate::paper::{
    self, Card, CardArrow, Correction, CorrectionFault, Grid, Label, Page, PaperSize, QuiverCard,
    Sheet, Turn,
};
use crate::picture_file;
use crate::quiver_row::QuiverRow;
use crate::wording;

/// No household prints a face that is wider, and no butt is.
const WIDEST_FACE_MM: f64 = 2000.0;
/// A face that is smaller has no room for its marks.
const NARROWEST_FACE_MM: f64 = 60.0;
/// Shafts are 3 to 15 mm thick; common practice.
const DIAMETERS_MM: std::ops::RangeInclusive<f64> = 3.0..=15.0;

/// Writes the sheets; a journal is only read.
pub fn run(args: &PaperArgs) -> Result<Answer, Failure> {
    match &args.sheet {
        SheetArgs::Face(face) => made(&face.print, None, "face", &self::face(face)?),
        SheetArgs::Log(log) => made(&log.print, None, "log", &[paper::log(page(&log.print)?)]),
        SheetArgs::Card(card) => {
            let opened = Opened::at(&card.journal)?;
            let sheets = self::card(&opened, page(&card.print)?)?;
            made(&card.print, Some(&opened), "card", &sheets)
        }
        SheetArgs::Dials(dials) => {
            let opened = Opened::at(&dials.journal)?;
            let sheets = self::dials(&opened, page(&dials.print)?, &dials.diameter)?;
            made(&dials.print, Some(&opened), "dials", &sheets)
        }
        SheetArgs::Labels(labels) => {
            let opened = Opened::at(&labels.journal)?;
            let said: Vec<Label> = opened.advice().shafts.iter().map(label).collect();
            let sheets = paper::labels(page(&labels.print)?, &said);
            made(&labels.print, Some(&opened), "labels", &sheets)
        }
        SheetArgs::Fletch(fletch) => {
            let asked = VanesAsked::read(&fletch.vanes)?;
            let opened = Opened::at(&fletch.journal)?;
            let unit = opened.journal.state().unit();
            let diameter = length("--diameter", &fletch.diameter, Some(unit), DIAMETERS_MM)?;
            let sheets = fletch_sheet(&opened, page(&fletch.print)?, diameter, asked)?;
            made(&fletch.print, Some(&opened), "fletch", &sheets)
        }
        SheetArgs::Quiver(quiver) => {
            let opened = Opened::at(&quiver.journal)?;
            let sheets = self::quiver(&opened, page(&quiver.print)?)?;
            made(&quiver.print, Some(&opened), "quiver", &sheets)
        }
    }
}

fn face(args: &FaceArgs) -> Result<Vec<Sheet>, Failure> {
    let page = page(&args.print)?;
    let across = match &args.across {
        None => page.widest_square(),
        Some(text) => length("--across", text, args.units, NARROWEST_FACE_MM..=WIDEST_FACE_MM)?,
    };
    let grid = match args.units {
        Some(FaceUnit::Inches) => Grid::INCHES,
        Some(FaceUnit::Centimetres | FaceUnit::Millimetres) | None => Grid::CENTIMETRES,
    };
    Ok(paper::face(page, across, grid))
}

fn card(opened: &Opened, page: Page) -> Result<Vec<Sheet>, Failure> {
    let advice = opened.advice();
    let Step::Shoot(shots) = &advice.step else { return Err(no_end(opened, &advice)) };
    let state = opened.journal.state();
    Ok(paper::card(
        page,
        &Card {
            journal: &opened.name(),
            distance: &opened.ruler().distance(state.history().setup.distance),
            shots,
            settles: &wording::settles(&advice).unwrap_or_default(),
        },
    ))
}

fn no_end(opened: &Opened, advice: &Advice) -> Failure {
    let next = wording::command("next", &opened.path);
    let what = match advice.step {
        Step::MoveBow => "there is no end to shoot now: the bow comes first",
        _ => "there is no end to shoot: this journal is finished",
    };
    Failure::new(Kind::Data, what).hinting([format!("see: {next}")])
}

fn dials(opened: &Opened, page: Page, diameter: &str) -> Result<Vec<Sheet>, Failure> {
    let diameter =
        length("--diameter", diameter, Some(opened.journal.state().unit()), DIAMETERS_MM)?;
    let advice = opened.advice();
    let turns: Vec<Turn<'_>> = advice
        .shafts
        .iter()
        .filter(|report| !matches!(report.verdict, Verdict::Retire(_)))
        .map(|report| Turn::new(report.shaft.as_str(), report.index_now, report.index))
        .collect();
    if turns.is_empty() {
        let show = wording::command("show", &opened.path);
        let what = "every shaft is retired: there is no index to turn to";
        return Err(Failure::new(Kind::Data, what).hinting([format!("see: {show}")]));
    }
    Ok(paper::dials(page, diameter, &turns))
}

fn quiver(opened: &Opened, page: Page) -> Result<Vec<Sheet>, Failure> {
    let quiver = opened.quiver()?;
    let rows = QuiverRow::all(opened, &quiver);
    let arrow = |row: &QuiverRow<'_>| CardArrow {
        place: row.place.map_or_else(|| "-".to_owned(), |place| place.to_string()),
        name: row.name.clone(),
        mark: wording::mark(row.mark),
        carries: row.head().unwrap_or_default(),
        checked: row.season.and_then(|one| one.checked_on.clone()).unwrap_or_default(),
        shots: row.shots().to_string(),
        turns: row.turns[0].to_string(),
    };
    let arrows: Vec<CardArrow> = rows.iter().map(arrow).collect();
    if arrows.is_empty() {
        let shaft = wording::command("shaft", &opened.path);
        return Err(Failure::new(Kind::Data, "no arrow of this journal is fletched yet")
            .hinting([format!("once one is: {shaft} NAME --fletched")]));
    }
    let below = crate::quiver_row::beside_limits(opened, &quiver, &rows);
    let cautions = wording::IN_THE_QUIVER.map(str::to_owned);
    let below: Vec<String> = below.into_iter().chain(cautions).collect();
    let card = QuiverCard { journal: &opened.name(), arrows: &arrows, below: &below };
    Ok(paper::quiver(page, &card))
}

fn label(report: &ShaftReport) -> Label {
    let mark = wording::mark(report.index);
    let said = match report.verdict {
        Verdict::Keep => format!("keep: mark at {mark}"),
        Verdict::Open(_) => format!("open: mark now at {}", wording::mark(report.index_now)),
        Verdict::Retire(_) => "retired".to_owned(),
    };
    Label { shaft: report.shaft.to_string(), said }
}

fn page(print: &PrintArgs) -> Result<Page, Failure> {
    let size = match print.paper {
        Paper::A4 => PaperSize::A4,
        Paper::Letter => PaperSize::Letter,
    };
    let correction = print.measured.as_deref().map_or(Ok(Correction::NONE), measured)?;
    Ok(Page { size, correction })
}

/// The two lengths of "97.2mm,97.5mm".
fn measured(text: &str) -> Result<Correction, Failure> {
    let Some((across, up)) = text.split_once(',') else {
        let what = Marked::typed(text).wrong(0..text.len(), "two lengths are expected");
        return Err(unusable("--measured").marking(what).hinting([MEASURED]));
    };
    let read = |part: &str, at: usize| {
        quantity::length(part, Some(Unit::MILLIMETRE))
            .map_err(|fault| Failure::in_option("--measured", text, &fault.shifted(at)))
    };
    let (across, up) = (read(across, 0)?, read(up, across.len() + 1)?);
    Correction::measured(across, up).map_err(|fault: CorrectionFault| {
        let marked = Marked::typed(text).wrong(0..text.len(), fault.to_string());
        unusable("--measured").marking(marked).hinting([
            "print at actual size first, without fitting to the page; then measure the bars",
        ])
    })
}

const LETTERS_MISSING: &str =
    "letters that the font of a PDF lacks are printed as ?; an SVG has them: -o sheet.svg";

const MEASURED: &str = "how long the two bars of 100 mm came out, across and up: 97.2mm,97.5mm";

fn unusable(option: &str) -> Failure {
    Failure::new(Kind::Usage, format!("the value of {option} cannot be used"))
}

/// A length within limits.
fn length(
    option: &str,
    text: &str,
    units: Option<FaceUnit>,
    within_mm: std::ops::RangeInclusive<f64>,
) -> Result<Millimetres, Failure> {
    let length = quantity::length(text, units.map(unit))
        .map_err(|fault| Failure::in_option(option, text, &fault))?;
    if within_mm.contains(&length.mm()) {
        return Ok(length);
    }
    let limits = format!("{} to {} mm is possible", within_mm.start(), within_mm.end());
    let marked = Marked::typed(text).wrong(0..text.len(), "no sheet is made for this");
    Err(unusable(option).marking(marked).hinting([limits]))
}

/// Writes the sheets and says where.
fn made(
    print: &PrintArgs,
    opened: Option<&Opened>,
    kind: &str,
    sheets: &[Sheet],
) -> Result<Answer, Failure> {
    let ending = if print.png { "png" } else { "pdf" };
    let file = print.output.clone().unwrap_or_else(|| beside(opened, kind, ending));
    let existing = output::existing(print.force);
    let mut notices: Vec<String> = opened.and_then(Opened::notices).into_iter().collect();
    let written = match file.extension().and_then(|ending| ending.to_str()) {
        Some("pdf") => {
            output::write(&file, paper::pdf(sheets), existing)?;
            if !sheets.iter().all(Sheet::is_writable_in_pdf) {
                notices.push(LETTERS_MISSING.to_owned());
            }
            vec![file]
        }
        Some("svg" | "png") => drawn(&file, sheets, existing, &mut notices)?,
        _ => {
            let what = format!("{} does not end in .pdf, .svg or .png", file.display());
            return Err(
                Failure::new(Kind::Usage, what).hinting(["name the file, for example card.pdf"])
            );
        }
    };
    let files: Vec<_> = written.iter().map(|file| file.display().to_string()).collect();
    let text = format!(
        "{} in {}.\nPrint at actual size (100 %), then lay a rule on the bars.\n",
        wording::count(sheets.len(), "sheet"),
        wording::all(files)
    );
    Ok(Answer::of_files(text, &written, print.json)?.noticing(notices))
}

/// One file for one sheet; "face-1.svg", "face-2.svg" for several.
fn drawn(
    file: &Path,
    sheets: &[Sheet],
    existing: Existing,
    notices: &mut Vec<String>,
) -> Result<Vec<PathBuf>, Failure> {
    let [stem, ending] =
        [file.file_stem(), file.extension()].map(|part| part.unwrap_or_default().to_string_lossy());
    let numbered = |number: usize| file.with_file_name(format!("{stem}-{number}.{ending}"));
    let named = |number| if sheets.len() == 1 { file.to_owned() } else { numbered(number) };
    let files: Vec<PathBuf> = (1..=sheets.len()).map(named).collect();
    output::keep_those_of(&files, existing)?;
    for (file, sheet) in files.iter().zip(sheets) {
        notices.extend(picture_file::write(file, &sheet.svg(), existing)?);
    }
    notices.dedup();
    Ok(files)
}

/// "dozen-card.pdf" beside dozen.journal; "face.pdf" here.
fn beside(opened: Option<&Opened>, kind: &str, ending: &str) -> PathBuf {
    match opened {
        Some(opened) => opened.beside(&format!("-{kind}.{ending}")),
        None => PathBuf::from(format!("{kind}.{ending}")),
    }
}
