//! What a photo says: how its marks were come by, and every hit with how well it is known.

use quarterturn_geometry::{Camera, Millimetres};
use quarterturn_photo::{Corner, Grid};

use crate::photo::{Among, By, Hit, KnownLens, PhotoCamera, PhotoView, Reading, Seen, Tail};
use crate::wording::{Ruler, Table, all, paragraph, tail};

/// A face that was drawn with its marks so much farther apart or nearer than was said, as a share, was shrunk or measured wrongly; less
/// is a tape's and a lens's own.
const DRAWN_OTHERWISE: f64 = 0.008;

/// Marks or lines that are farther off than this are off for a reason.
const SUSPICIOUS_MM: f64 = 1.0;

/// A lens that is known worse than this, as the spread of its logarithm, the marks did not tell: some lens had to be taken.
const HARDLY_TOLD: f64 = 0.3;

/// An eye reads a tail to so much: less well a photo should not.
const POOR_LEAN_DEG: f64 = 1.5;

/// The marks and the camera in a sentence each, and the hits in a table.
pub fn photo(seen: &Seen, ruler: Ruler) -> String {
    let marks = paragraph("Marks: ", &marks(seen.photo));
    let camera = seen.camera.map(|camera| paragraph("Camera: ", &where_it_stood(camera, ruler)));
    let said: Vec<String> = [Some(marks), camera].into_iter().flatten().collect();
    format!("{}\n\n{}\n", said.join("\n"), hits(seen, ruler).join("\n"))
}

fn hits(seen: &Seen, ruler: Ruler) -> Vec<String> {
    let row = |hit: &Hit| {
        let known = ruler.read(hit.read_sd);
        [hit.shot.shaft.clone(), ruler.hit(hit.point.from_spot()), known]
    };
    if seen.camera.is_none() {
        let mut table = Table::new(["shaft", "hit", "known to"]);
        seen.hits.iter().for_each(|hit| table.row(row(hit)));
        return table.lines().collect();
    }
    let mut table = Table::new(["shaft", "hit", "known to", "tail", "known to"]);
    for hit in seen.hits {
        let [shaft, at, known] = row(hit);
        let lean = tail(hit.tail.as_ref().map(|tail| tail.lean));
        let lean = lean.strip_prefix("tail ").unwrap_or(&lean).to_owned();
        table.row([shaft, at, known, lean, hit.tail.as_ref().map(lean_known).unwrap_or_default()]);
    }
    table.lines().collect()
}

fn lean_known(tail: &Tail) -> String {
    format!("{:.1} deg", tail.lean_sd.degrees().max(0.1))
}

fn where_it_stood(PhotoCamera { camera, lens }: &PhotoCamera, ruler: Ruler) -> String {
    let [x, y, z] = camera.place_mm();
    let away = ruler.distance(Millimetres::new(x.hypot(y).hypot(z)));
    let aside = x.hypot(y).atan2(z).to_degrees();
    let lens = said_of_lens(camera, *lens);
    format!(
        "{away} from the spot, {aside:.0} deg from straight ahead; {lens}. Tails are beside the reference's."
    )
}

fn said_of_lens(camera: &Camera, known: KnownLens) -> String {
    let (mm, spread) = (camera.focal().mm(), camera.focal_spread());
    let film = "in the terms of 35 mm film";
    match known {
        KnownLens::Said { .. } => {
            format!(
                "its lens is one of {mm:.0} mm {film}, as you say, known to {:.0} %",
                100.0 * spread
            )
        }
        KnownLens::ByMarks if spread < HARDLY_TOLD => {
            format!(
                "its lens is one of {mm:.0} mm {film}, by the marks, known to {:.0} %",
                100.0 * spread
            )
        }
        KnownLens::ByMarks => format!(
            "from there the marks hardly tell its lens, and {mm:.0} mm {film} are taken, within a factor of {:.1}",
            spread.exp()
        ),
    }
}

fn marks(photo: &PhotoView) -> String {
    match (&photo.by, photo.off()) {
        (By::Picture(found), _) => in_the_picture(found.told, found.unlike, found.grid.lines),
        (By::Hand(_), Some(off)) => {
            format!("the {} that you gave fit within {:.1} mm.", photo.marks.len(), off.mm())
        }
        (By::Hand(Grid { lines: Some(off), .. }), None) => {
            format!("the four that you gave, and the lines of the grid run where they say within {:.1} mm.", off.mm().max(0.1))
        }
        (By::Hand(_), None) => {
            "the four that you gave. Four always fit: nothing tells here whether they were read right."
                .to_owned()
        }
    }
}

fn in_the_picture(told: Option<Corner>, unlike: f64, lines: Option<Millimetres>) -> String {
    let alike = format!("alike within {:.0} % once laid on the face", 100.0 * unlike);
    let marks = match told {
        None => format!("all four found in the picture, {alike}"),
        Some(corner) => format!(
            "three found in the picture, the one at the {} told from them and from what is left of it; the three are {alike}",
            corner.name()
        ),
    };
    let lines = lines.map_or_else(
        || "too little of the grid is seen to say more".to_owned(),
        |off| {
            format!("the lines of the grid run where they say within {:.1} mm", off.mm().max(0.1))
        },
    );
    format!("{marks}, and {lines}.")
}

/// What is said beside it: what makes the hits worse known than they look.
pub fn photo_notices(&Seen { photo, camera, hits }: &Seen, ruler: Ruler) -> Vec<String> {
    let lens = "a lens that bends straight lines, a face that does not lie flat, or a mark that was misread";
    let off = photo
        .off()
        .filter(|off| off.mm() > SUSPICIOUS_MM)
        .map(|off| format!("the marks fit only within {:.1} mm: {lens}", off.mm()));
    let shown = match photo.reading {
        Reading::Shown(px) => Some(format!(
            "by what the marks miss, pixels were read to {px:.1} only, and so the hits are taken"
        )),
        Reading::Said(_) => None,
    };
    let by_lines = lines_off(photo).map(|off| format!("{}: {lens}", beside(off)));
    let poor = poor_leans(hits);
    let drawn = drawn_otherwise(photo);
    let lens = camera.and_then(doubtful_lens);
    let notices = [off, shown, by_lines, drawn, outside(hits, ruler), lens, poor];
    notices.into_iter().flatten().collect()
}

fn beside(off: Millimetres) -> String {
    format!("the lines of the grid run up to {:.1} mm beside where the marks say", off.mm())
}

fn lines_off(photo: &PhotoView) -> Option<Millimetres> {
    photo.grid().lines.filter(|off| off.mm() > SUSPICIOUS_MM / 2.0)
}

/// That the face was drawn with another spacing than was said.
fn drawn_otherwise(photo: &PhotoView) -> Option<String> {
    let (drawn, said_mm) = (photo.grid().drawn?, 2.0 * photo.marks.first()?.point.y_mm);
    let share = said_mm / drawn.mm() - 1.0;
    let size = if share < 0.0 { "smaller" } else { "larger" };
    (share.abs() > DRAWN_OTHERWISE).then(|| {
        format!(
            "by its grid this face was drawn with marks about {:.0} mm apart, and you say {said_mm:.1} mm: right if your tape says so \
             and the print came out {:.0} % {size}; else all hits are wrong by that much",
            drawn.mm(),
            100.0 * share.abs()
        )
    })
}

fn outside(hits: &[Hit], ruler: Ruler) -> Option<String> {
    let outside: Vec<&Hit> = hits.iter().filter(|hit| hit.among == Among::Outside).collect();
    let worst_mm = outside.iter().map(|hit| hit.read_sd.mm()).fold(0.0, f64::max);
    let worst = ruler.read(Millimetres::new(worst_mm));
    let names = all(outside.iter().map(|hit| &hit.shot.shaft));
    let are = if outside.len() == 1 { "is" } else { "are" };
    (!outside.is_empty())
        .then(|| format!("{names} {are} outside the marks, where less is known: to {worst}"))
}

/// That the marks rather tell of another lens than was said.
fn doubtful_lens(camera: &PhotoCamera) -> Option<String> {
    let KnownLens::Said { rather: Some(rather) } = camera.lens else { return None };
    Some(format!(
        "by the marks alone the lens is rather one of about {:.0} mm: if you zoomed, reckon it into --lens; if the picture was cut, leave that out",
        rather.mm()
    ))
}

/// That some tails are known badly, and what would make them better known.
fn poor_leans(hits: &[Hit]) -> Option<String> {
    let tails = hits.iter().filter_map(|hit| Some((&hit.shot.shaft, hit.tail.as_ref()?)));
    let poor: Vec<(&String, &Tail)> =
        tails.filter(|(_, tail)| tail.lean_sd.degrees() > POOR_LEAN_DEG).collect();
    let worst_deg = poor.iter().map(|(_, tail)| tail.lean_sd.degrees()).fold(0.0, f64::max);
    let way_on = if poor.iter().any(|(_, tail)| tail.protruding.is_none()) {
        "say how far the arrows stick out, as s62cm"
    } else {
        "a picture from straighter ahead tells more"
    };
    let (names, is) =
        (all(poor.iter().map(|(name, _)| name)), if poor.len() == 1 { "is" } else { "are" });
    let whose = if poor.len() == 1 { "the tail" } else { "the tails" };
    (!poor.is_empty()).then(|| {
        format!(
            "{whose} of {names} {is} known to {worst_deg:.1} deg only, and so weighed: {way_on}"
        )
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_picture_does_not_say_is_said() {
        let told = in_the_picture(Some(Corner::TopLeft), 0.04, None);
        assert_eq!(
            told,
            "three found in the picture, the one at the top left told from them and from what is left of it; the three \
             are alike within 4 % once laid on the face, and too little of the grid is seen to say more."
        );
        let off = beside(Millimetres::new(0.72));
        assert_eq!(off, "the lines of the grid run up to 0.7 mm beside where the marks say");
    }
}
