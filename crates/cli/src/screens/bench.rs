//! The screen of `bench`: the set as the workshop knows it.

use quarterturn_bench::Wanted;
use quarterturn_geometry::{Index, Millimetres};
use quarterturn_journal::{State, Word};
use quarterturn_tuning::{Setup, ShaftName, ShaftState, known_height};

use crate::opened::Opened;
use crate::wording::{self, Table, all, command, paragraph};
use crate::workshop::{
    Asked, Bench, Chosen, Gauge, Limit, Predicted, StandsOut, Tape, Thrown, Workshop, spine,
};

/// How many measures stand in one table, so that it keeps to 80 columns.
const ACROSS: usize = 6;

/// The set: its measures, what stands out, what was asked of it.
pub fn bench(
    opened: &Opened,
    workshop: &Workshop,
    asked: &Asked,
    chosen: Option<&Chosen>,
    predicted: &[Predicted],
) -> String {
    if workshop.shafts.is_empty() && workshop.references.is_empty() {
        let enter = "quarterturn bench JOURNAL 1 --mass 312.4gr --straight 0.08mm";
        return format!("Nothing was measured yet.\n\nThen, for example: {enter}\n");
    }
    let mut blocks = tables(workshop);
    blocks.extend(sides(workshop));
    blocks.extend(standing_out(workshop));
    blocks.extend(chosen.map(best));
    blocks.extend(carried(workshop, asked));
    blocks.extend(asked.limit.map(|limit| per_pound(workshop, limit)));
    blocks.extend(thrown(workshop, asked));
    blocks.extend(missing_vanes(opened.journal.state()));
    let setup = &opened.journal.state().history().setup;
    blocks.extend(workshop.tape(setup, asked).map(|found| tape(setup, &found)));
    blocks.extend(nock_turns(opened.journal.state()));
    blocks.extend(predicted.iter().map(goes_with_the_index));
    blocks.push(paragraph("Caution: ", wording::CUTTING));
    blocks.push(format!("Then: {}", command("next", &opened.path)));
    blocks.join("\n\n") + "\n"
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

/// "1, 2 and 7 go together best: mass within 1.2 gr, straightness at most 0.08 mm."
fn best(chosen: &Chosen) -> String {
    let compared = chosen.compared.iter().map(|(gauge, least, most)| {
        let name = gauge.said().name;
        match gauge.wanted() {
            Some(Wanted::Small) => format!("{name} at most {}", gauge.value(*most)),
            _ => format!("{name} within {}", gauge.value(most - least)),
        }
    });
    let text = format!(
        "{} go together best: {}. The widest is {:.1} standard deviations of the set; no other choice \
         comes below that.",
        all(&chosen.shafts),
        all(compared),
        chosen.largest_spread
    );
    let lacking = chosen
        .lacking
        .iter()
        .map(|(gauge, names)| format!("{} (not known of {})", gauge.said().name, all(names)));
    let lacking: Vec<String> = lacking.collect();
    let not = if lacking.is_empty() {
        String::new()
    } else {
        format!(" Not compared: {}.", lacking.join("; "))
    };
    paragraph(&format!("Best {}: ", chosen.shafts.len()), &(text + &not))
}

fn carried(workshop: &Workshop, asked: &Asked) -> Option<String> {
    let speed_m_s = asked.speed_m_s?;
    let text = workshop.carried(asked).map_or_else(
        || format!("not known at {speed_m_s:.1} m/s before a finished arrow was weighed."),
        |carried| {
            format!(
                "an arrow of the median {:.1} gr carries {:.1} J ({:.1} ft·lbf) and {:.2} N·s ({:.3} \
                 slug·ft/s) at {speed_m_s:.1} m/s.",
                carried.mass_gr,
                carried.energy_j,
                carried.energy_ftlbf,
                carried.momentum_n_s,
                carried.momentum_slug_ft_s
            )
        },
    );
    Some(paragraph("Energy: ", &text))
}

/// How the finished arrows stand against the limit that the person entered.
fn per_pound(workshop: &Workshop, limit: Limit) -> String {
    let per_pound = workshop.per_pound(limit);
    let Some((lightest, least)) = per_pound.first() else {
        let text = "grains per pound are not known before an arrow was weighed, bare or finished.";
        return paragraph("Mass: ", text);
    };
    let bare = if Gauge::FinishedMass.of(&lightest.measures).is_none() { ", bare" } else { "" };
    let said = format!(
        "the lightest, {}{bare}, has {least:.2} grains per pound at {:.1} lb",
        lightest.shaft, limit.draw_lbf
    );
    let Some(limit_gr_lb) = limit.least_gr_lb else {
        return paragraph("Mass: ", &format!("{said}. {}", wording::LEAST_MASS));
    };
    let below = per_pound.iter().filter(|(_, per_pound)| *per_pound < limit_gr_lb);
    let below: Vec<_> = below.map(|(bench, _)| bench.shaft.clone()).collect();
    let text = if below.is_empty() {
        format!("{said}: none of {} is below your limit of {limit_gr_lb}.", per_pound.len())
    } else {
        let too_light = all(&below);
        format!("{said}. Below your limit of {limit_gr_lb}: {too_light}. {}", wording::LEAST_MASS)
    };
    paragraph("Mass: ", &text)
}

fn thrown(workshop: &Workshop, asked: &Asked) -> Option<String> {
    let thrown = workshop.thrown(asked.crooked?);
    // Ends that are read off the same line of a feeler gauge are said together.
    let mut alike: Vec<(&Thrown<'_>, Vec<&ShaftName>)> = Vec::new();
    for one in &thrown {
        let same = |(first, _): &&mut (&Thrown<'_>, _)| first.throw == one.throw;
        match alike.iter_mut().find(same) {
            Some((_, names)) => names.push(&one.bench.shaft),
            None => alike.push((one, vec![&one.bench.shaft])),
        }
    }
    let said = alike.into_iter().map(|(thrown, names)| {
        format!(
            "{}: {:.2} mm out of square tilt the insert by {:.1} deg and throw the tip {:.2} mm off the \
             axis.",
            all(names),
            thrown.runout_mm,
            thrown.tilt.degrees(),
            thrown.throw.mm()
        )
    });
    let said: Vec<String> = said.collect();
    let none = || "no end is recorded as out of square.".to_owned();
    Some(paragraph("Ends: ", &if said.is_empty() { none() } else { said.join(" ") }))
}

/// What the vanes' mass does that bare shafts lack, where `new` was told of it.
fn missing_vanes(state: &State) -> Option<String> {
    let setup = &state.history().setup;
    let missing = setup.bare_lighter?;
    let height: Millimetres = known_height(setup);
    let text = format!(
        "bare shafts lack {} gr and land {height:.0} high at {:.1} m for that alone, which is taken off. Tape \
         of that mass where the vanes go makes it up: then begin the journal without --bare-lighter.",
        missing.lighter_gr,
        setup.distance.metres()
    );
    Some(paragraph("Vanes: ", &text))
}

/// How much tape each bare arrow takes to weigh what the reference weighs, or how high it lands without.
fn tape(setup: &Setup, tape: &Tape<'_>) -> String {
    let said = tape.each.iter().map(|(bench, tape_gr)| format!("{} {tape_gr:.1}", bench.shaft));
    let height = tape.height.map(|height| {
        let distance_m = setup.distance.metres();
        format!(" Without any, bare arrows land about {height:.0} high at {distance_m:.1} m.")
    });
    let text = format!(
        "grains that make each bare arrow as heavy as the reference, wrapped where the vanes go: {}.{}",
        said.collect::<Vec<_>>().join(", "),
        height.unwrap_or_default()
    );
    paragraph("Tape: ", &text)
}

/// How often each nock was turned, the most first.
fn nock_turns(state: &State) -> Option<String> {
    let bears = state.policy().nock_turns;
    let shafts = || state.roster().shafts.iter().filter(|one| one.state == ShaftState::InUse);
    let named = |wanted: &dyn Fn(usize) -> bool| {
        all(shafts().filter(|one| wanted(one.turns)).map(|one| &one.name))
    };
    let mut counts: Vec<usize> = shafts().map(|one| one.turns).filter(|turns| *turns > 0).collect();
    counts.sort_unstable_by(|a, b| b.cmp(a));
    counts.dedup();
    let most = *counts.first()?;
    let said = counts.iter().map(|turns| {
        format!("{}: {}", wording::count(*turns, "turn"), named(&|one| one == *turns))
    });
    let renew = if most < bears {
        format!("Renew one after {bears}, or at the first slip.")
    } else {
        format!("Renew that of {}: {bears} turns are enough.", named(&|one| one >= bears))
    };
    let said: Vec<String> = said.collect();
    Some(paragraph("Nocks: ", &format!("{}. {renew}", said.join("; "))))
}

/// Whether a side goes with the index that was found.
fn goes_with_the_index(predicted: &Predicted) -> String {
    let said = format!("{}: {}", predicted.side.word(), wording::goes_with(predicted));
    paragraph("Bench and butt: ", &said)
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
