//! What the report says of one shaft.

use quarterturn_tuning::{Advice, Doubt, Prediction, ShaftReport};

use crate::opened::Opened;
use crate::plot::{Hits, ShaftPlot, StyledBy};
use crate::screens;
use crate::wording::{self, Ruler, mark, percent_short, verdict};

/// One shaft.
pub struct Part {
    /// A word that no other shaft on the page has.
    pub id: String,
    /// Its name.
    pub name: String,
    /// "keep".
    pub verdict: &'static str,
    /// "3 o'clock".
    pub mark: String,
    /// "12 ± 6 right, 3 ± 6 low".
    pub miss: String,
    /// "87 %".
    pub inside: String,
    /// "2 of 5".
    pub shots: String,
    /// "3 of 8".
    pub turns: String,
    /// Why, and what would change it.
    pub evidence: Vec<String>,
    /// Its picture, as SVG.
    pub picture: String,
    /// What is predicted all round the clock.
    pub positions: Vec<Position>,
}

/// One position of its mark.
pub struct Position {
    /// "3 o'clock".
    pub mark: String,
    /// "12 ± 6 right, 3 ± 6 low".
    pub miss: String,
    /// "87 %".
    pub inside: String,
}

/// What the parts are made from.
pub struct Source<'a> {
    /// The journal.
    pub opened: &'a Opened,
    /// What is said of it.
    pub advice: &'a Advice,
    /// The hits of all shafts.
    pub hits: &'a Hits,
    /// The shots on which verdicts hang.
    pub doubts: &'a [Doubt],
}

impl Source<'_> {
    /// What is said of a shaft, the `number`th on the page.
    pub fn part(&self, number: usize, report: &ShaftReport) -> Part {
        let Self { opened, advice, hits, doubts } = *self;
        let (history, ruler) = (opened.journal.state().history(), opened.ruler());
        let (id, styled) = (format!("shaft-{number}"), StyledBy::Page);
        let of_shaft = doubts.iter().filter(|doubt| doubt.shaft == report.shaft);
        let doubts = of_shaft.map(|doubt| wording::doubt(doubt, ruler));
        let why = format!("{}.", screens::why(report, ruler));
        let picture = ShaftPlot { history, advice, hits, report, ruler, id: &id, styled };
        Part {
            name: report.shaft.to_string(),
            verdict: verdict(report.verdict),
            mark: mark(report.index),
            miss: screens::miss_and_error(&report.miss, ruler),
            inside: percent_short(report.within),
            shots: format!("{} of {}", report.shots_here, report.shots_total),
            turns: format!("{} of {}", report.turns, report.turns + report.turns_left),
            evidence: [why].into_iter().chain(doubts).collect(),
            picture: picture.svg(),
            positions: report.positions.iter().map(|at| Position::of(at, ruler)).collect(),
            id,
        }
    }
}

impl Position {
    fn of(at: &Prediction, ruler: Ruler) -> Self {
        Self {
            mark: mark(at.index),
            miss: screens::miss_and_error(&at.miss, ruler),
            inside: percent_short(at.within),
        }
    }
}
