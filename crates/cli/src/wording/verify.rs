//! What is said of finished arrows by number, of the sight and of the shape of a group.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_statistics::Estimate;
use quarterturn_tuning::{
    DrawnOut, FromTheOthers, GroupShape, TogetherVerdict, Verified, VerifiedArrow,
};

use super::{Ruler, all, count, open_beside};
use quarterturn_entry::quantity::Unit;

/// How a pin is moved; common practice, and plain geometry.
pub const SIGHT: &str = "The pin follows the arrows: it goes toward the miss. Only shots not called poor are in it. Move \
    one pin, note it, and shoot again:";

/// The sentences about the arrows from one distance: why nothing can be said, what is off, how many shots would tell.
pub fn verified(at: &Verified, ruler: Ruler) -> Vec<String> {
    let from = ruler.distance(at.distance);
    if at.arrows.len() < 2 {
        return vec![format!(
            "From {from}: one arrow has no others beside it; shoot at least two."
        )];
    }
    let beside = |arrow: &VerifiedArrow| Some((arrow.arrow.to_string(), arrow.from_the_others?));
    let judged: Vec<(String, FromTheOthers)> = at.arrows.iter().filter_map(beside).collect();
    if judged.is_empty() {
        return vec![format!(
            "From {from}: how well one arrow repeats is not known yet; shoot some of them twice, not all on one line."
        )];
    }
    let tolerance = ruler.read(at.tolerance);
    let apart = judged.iter().filter(|(_, beside)| beside.verdict == Some(TogetherVerdict::Apart));
    let apart = apart.map(|(arrow, beside)| {
        let value = beside.estimate.value;
        format!(
            "{arrow} from {from}: {} the others, more than {tolerance} at 95 %. Flex it, spin it, look at its nock, its \
             mark and its vanes, then shoot it again; else it is a practice arrow.",
            ruler.miss_of(Offset::new(value.x, value.y))
        )
    });
    apart.chain(open_beside(&from, &judged)).collect()
}

/// Where all arrows land from one distance, and how the pin is moved.
pub fn sight(at: &Verified, eye_to_pin: Option<Millimetres>, ruler: Ruler) -> String {
    let from = ruler.distance(at.distance);
    let Some(centre) = at.centre else {
        return format!("Sight from {from}: three shots must count, and not lie on one line.");
    };
    let value = centre.estimate.value;
    let (major, minor) = centre.region.half_axes();
    let [major, minor] = [major, minor].map(|mm| ruler.estimate_bare(Millimetres::new(mm)));
    let lands = format!(
        "Sight from {from}: {} land {} the spot ({major} by {minor} {} at 95 %)",
        count(centre.estimate.n, "shot"),
        ruler.miss_of(Offset::new(value.x, value.y)),
        ruler.unit().symbol
    );
    let parts = centre.miss.parts();
    if !parts.iter().any(|(_, sure)| *sure) {
        return format!("{lands}: no miss is sure, leave the pin.");
    }
    let sides = [["right", "left"], ["up", "down"]];
    let moved = eye_to_pin.map(|eye_to_pin| centre.miss.of_pin(eye_to_pin, at.distance).parts());
    let said = parts.iter().zip(sides).enumerate().filter(|(_, ((_, sure), _))| *sure);
    let said = said.map(|(axis, ((miss, _), sides))| {
        let side = sides[usize::from(miss.value < 0.0)];
        moved.map_or_else(
            || side.to_owned(),
            |moved| format!("{} {side}", pin(&moved[axis].0, ruler)),
        )
    });
    let moves = all(said.collect::<Vec<_>>());
    match eye_to_pin {
        Some(_) => format!("{lands}: move the pin {moves}."),
        None => format!("{lands}: move the pin {moves}; how far, --eye-to-pin 85cm tells."),
    }
}

/// "0.6 mm (0.4 to 0.8)".
fn pin(part: &Estimate, ruler: Ruler) -> String {
    let (unit, decimals) =
        if ruler.unit() == Unit::INCH { (Unit::INCH, 3) } else { (Unit::MILLIMETRE, 1) };
    let ends = [part.interval.lower.abs(), part.interval.upper.abs()];
    let [least, most] = [ends[0].min(ends[1]), ends[0].max(ends[1])].map(|mm| unit.of_base(mm));
    let value = unit.of_base(part.value.abs());
    format!("{value:.decimals$} {} ({least:.decimals$} to {most:.decimals$})", unit.symbol)
}

/// What the shapes of the groups say, with caution; nothing where none is surely drawn out.
pub fn group_shapes(verified: &[Verified], ruler: Ruler) -> Option<String> {
    let surely = |at: &Verified| Some((at.distance, at.shape?, at.shape?.drawn_out?));
    let drawn: Vec<_> = verified.iter().filter_map(surely).collect();
    let (_, _, first) = *drawn.last()?;
    let seen = all(drawn.iter().map(|(distance, shape, drawn_out)| {
        format!("from {} {}", ruler.distance(*distance), drawn_out_to(shape, *drawn_out, ruler))
    }));
    let reason = match first {
        DrawnOut::Wide => {
            "Common practice looks at a grip that twists, a string on the face, a draw that is too long, or wind"
        }
        DrawnOut::Tall => {
            "Common practice looks at a draw and an anchor that change, at arrows of unequal mass, or at the nocking point"
        }
        _ if drawn.len() > 1 && drawn.iter().all(|(_, _, one)| *one == first) => {
            "Slanting alike from several distances, common practice looks at whether bow and sight stand level"
        }
        _ => "A slant from one distance names no cause: shoot from farther off too",
    };
    Some(format!(
        "The shape, each arrow's own place taken out: {seen}; a round group is so by chance in one of twenty at most. \
         {reason}. It is a hint, not a finding."
    ))
}

fn drawn_out_to(shape: &GroupShape, drawn_out: DrawnOut, ruler: Ruler) -> String {
    let [longer, shorter] = [shape.longer_sd_mm, shape.shorter_sd_mm]
        .map(|mm| ruler.estimate_bare(Millimetres::new(mm)));
    let way = match drawn_out {
        DrawnOut::Wide => "wide and flat",
        DrawnOut::Tall => "tall",
        DrawnOut::RisingRight => "slanting from low left to high right",
        DrawnOut::RisingLeft => "slanting from low right to high left",
    };
    format!("{way} ({longer} by {shorter} {} per axis)", ruler.unit().symbol)
}
