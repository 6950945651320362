//! The measures of a set: tables, the sides that were found, and what stands out.

use quarterturn_geometry::Index;
use quarterturn_journal::Word;
use quarterturn_tuning::ShaftState;

use crate::wording::{Table, all, paragraph};
use crate::workshop::{Bench, Gauge, StandsOut, Workshop, spine};

/// How many measures stand in one table, so that it keeps to 80 columns.
const ACROSS: usize = 6;

/// All that was measured.
pub fn measures(workshop: &Workshop) -> Vec<String> {
    let mut blocks = tables(workshop);
    blocks.extend(sides(workshop));
    blocks.extend(standing_out(workshop));
    blocks
}

/// Every measure that anybody has, six to a table, the set's median last.
fn tables(workshop: &Workshop) -> Vec<String> {
    let benches = || workshop.shafts.iter().chain(&workshop.references);
    let has = |gauge: &Gauge| benches().any(|bench| gauge.of(&bench.measures).is_some());
    let gauges: Vec<Gauge> = Gauge::ALL.into_iter().filter(has).collect();
    let table = |gauges: &[Gauge]| {
        let row = |name: String, value: &dyn Fn(Gauge) -> Option<f64>| {
            let mut cells = vec![name];
            cells.extend(gauges.iter().map(|gauge| {
                value(*gauge).map_or_else(|| "-".to_owned(), |value| gauge.bare(value))
            }));
            cells
        };
        let heading = gauges.iter().map(|gauge| gauge.said().heading.to_owned());
        let heading = std::iter::once("shaft".to_owned()).chain(heading).collect();
        let rows = benches().map(|b| row(named(b), &|gauge| gauge.of(&b.measures)));
        let median = row("median".to_owned(), &|gauge| workshop.median(gauge));
        aligned(std::iter::once(heading).chain(rows).chain([median]))
    };
    gauges.chunks(ACROSS).map(table).collect()
}

/// Lines of cells in columns.
fn aligned(lines: impl Iterator<Item = Vec<String>>) -> String {
    let mut table = Table::<{ ACROSS + 1 }>::new([""; ACROSS + 1]);
    for line in lines {
        let mut cells = line.into_iter();
        table.row(std::array::from_fn(|_| cells.next().unwrap_or_default()));
    }
    table.lines().skip(1).collect::<Vec<_>>().join("\n")
}

/// "7", or "7 (lost)" where it is no part of the median.
fn named(bench: &Bench) -> String {
    match bench.state {
        ShaftState::InUse | ShaftState::Fletched => bench.shaft.to_string(),
        state => format!("{} ({})", bench.shaft, state.word()),
    }
}

/// The sides that were read or found.
fn sides(workshop: &Workshop) -> Option<String> {
    let said = |bench: &Bench| {
        let measures = &bench.measures;
        let found = spine(measures).and_then(|round| round.stiff_side).map(Index::degrees);
        let stiff = measures.stiff_side_deg.or(found).map(|deg| format!("stiff {deg:.0}"));
        let heavy = measures.heavy_side_deg.map(|deg| format!("heavy {deg:.0}"));
        let crooked = measures.crooked_side_deg.map(|deg| format!("crooked {deg:.0}"));
        let sides: Vec<String> = stiff.into_iter().chain(heavy).chain(crooked).collect();
        (!sides.is_empty()).then(|| format!("{} {}", bench.shaft, all(sides)))
    };
    let said: Vec<String> = workshop.shafts.iter().filter_map(said).collect();
    let text = format!("{}; degrees clockwise from the mark, seen from the nock.", said.join(", "));
    (!said.is_empty()).then(|| paragraph("Sides: ", &text))
}

fn standing_out(workshop: &Workshop) -> Option<String> {
    let said = |one: StandsOut<'_>| {
        let way = if one.above_median > 0.0 { "above" } else { "below" };
        format!(
            "{}: {} {}, {} {way} the median of {}.",
            one.bench.shaft,
            one.gauge.said().name,
            one.gauge.value(one.value),
            one.gauge.value(one.above_median.abs()),
            one.n
        )
    };
    let said: Vec<String> = workshop.standing_out().into_iter().map(said).collect();
    (!said.is_empty()).then(|| paragraph("Stands out: ", &said.join(" ")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_table_keeps_to_the_screen() {
        for gauges in Gauge::ALL.chunks(ACROSS) {
            let width: usize =
                gauges.iter().map(|gauge| gauge.said().heading.chars().count().max(7) + 2).sum();
            assert!("7 (set aside)".len() + width <= 80, "{width}");
        }
    }
}
