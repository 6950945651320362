//! The report: one page that needs nothing else, the story first and then every number.

mod part;
mod relation;
mod shot_row;
mod story;
mod turned_row;

use askama::Template;
use quarterturn_tuning::Doubt;

use self::part::{Part, Source};
use self::relation::Relation;
use self::shot_row::ShotRow;
use self::turned_row::TurnedRow;
use crate::failure::{Failure, Kind};
use crate::opened::Opened;
use crate::plot::{
    Backdrop, BeforeAfter, Hits, LeanPlot, PICTURE_STYLE, ROUND_THE_CLOCK, StyledBy, TargetPlot,
    landings,
};
use crate::screens;
use crate::wording::{BEFORE_THE_FIRST_BARE_SHOT, count};

/// What no journal can tell, and the report goes by.
const ASSUMED: [&str; 6] = [
    "A bare shaft lands, from the fletched reference, at an offset that belongs to the bow, plus its own centre, plus what \
     goes round with its mark once and twice a turn. Nothing else of it is expected to repeat.",
    "Each end has an aim of its own, which the reference of that end tells: the reference is taken to be straight.",
    "Lengths are from the fletched reference and not from the spot. Right and high are as you see them, facing the target.",
    "How widely you shoot, how large the faults of the shafts are and how leans go with misses is learned from this journal, \
     beginning from what is usual.",
    "\"Inside\" is the probability that the shaft's mean miss is within the tolerance, with its mark there; a single shot \
     scatters about that mean.",
    "Shots called poor, in a gust, with contact or with a nock that moved are kept, counted and left out.",
];

/// What the template shows.
#[derive(Template)]
#[template(path = "report.html")]
struct Page {
    title: String,
    own_style: &'static str,
    picture_style: &'static str,
    story: Vec<String>,
    now: Vec<String>,
    target: String,
    unit: &'static str,
    columns: String,
    turned_plot: String,
    turned: Vec<TurnedRow>,
    lean_plot: String,
    relation: Option<Relation>,
    round_the_clock: &'static str,
    shafts: Vec<Part>,
    shots_told: String,
    shots: Vec<ShotRow>,
    assumed: [&'static str; 6],
    cautions: [&'static str; 8],
    version: &'static str,
    journal: String,
}

/// The report of a journal as one HTML file. The same journal is always the same bytes.
///
/// # Errors
/// Where the template cannot be filled, which is a fault of the program.
pub fn report(opened: &Opened, doubts: &[Doubt]) -> Result<String, Failure> {
    let (advice, relation) = opened.advice_with_leans();
    let (history, ruler) = (opened.journal.state().history(), opened.ruler());
    let (name, hits) = (opened.name(), Hits::of(history, &advice));
    let shots = shot_row::rows(&hits, ruler);
    let source = Source { opened, advice: &advice, hits: &hits, doubts };
    let target_plot = TargetPlot {
        history,
        advice: &advice,
        ruler,
        title: &name,
        backdrop: Backdrop::Grid,
        styled: StyledBy::Page,
    };
    let (title, styled) = (name.as_str(), StyledBy::Page);
    let (hits, advice) = (&hits, &advice);
    let turned_plot = BeforeAfter { history, advice, hits, ruler, title, styled };
    let lean_plot = LeanPlot { advice, hits, relation, ruler, title, styled };
    let landings = landings(history, advice, hits);
    let page = Page {
        own_style: include_str!("../../templates/page.css"),
        picture_style: PICTURE_STYLE,
        story: story::story(opened, advice),
        now: story::now(advice, ruler),
        target: target_plot.svg(),
        unit: ruler.unit().symbol,
        columns: screens::columns(advice),
        turned_plot: turned_plot.svg(),
        turned: landings.iter().map(|landing| TurnedRow::of(landing, ruler)).collect(),
        lean_plot: lean_plot.svg(),
        relation: relation.as_ref().map(Relation::from),
        round_the_clock: ROUND_THE_CLOCK,
        shafts: (1..).zip(&advice.shafts).map(|(at, one)| source.part(at, one)).collect(),
        shots_told: count(shots.len(), "bare shot"),
        shots,
        assumed: ASSUMED,
        cautions: BEFORE_THE_FIRST_BARE_SHOT,
        version: env!("CARGO_PKG_VERSION"),
        journal: name.clone(),
        title: name,
    };
    page.render().map_err(|error| {
        Failure::new(Kind::InputOutput, format!("the report could not be made: {error}"))
    })
}
