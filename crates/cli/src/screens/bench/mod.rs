//! The screen of `bench`: the set as the workshop knows it.

mod measures;

use quarterturn_bench::Wanted;
use quarterturn_geometry::Millimetres;
use quarterturn_journal::State;
use quarterturn_tuning::{Setup, ShaftName, ShaftState, known_height};

use crate::opened::Opened;
use crate::wording::{self, all, command, paragraph};
use crate::workshop::{Asked, Chosen, Gauge, Limit, Predicted, Tape, Thrown, Workshop};
use measures::measures;

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
    let mut blocks = measures(workshop);
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
