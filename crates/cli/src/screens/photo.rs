//! What a photo says: how its marks were come by, and every hit with how well it is known.

use quarterturn_geometry::Millimetres;
use quarterturn_photo::Corner;

use crate::photo::{Among, By, Hit, PhotoView, Reading};
use crate::wording::{Ruler, Table, all, paragraph};

/// Marks or lines that are farther off than this are off for a reason.
const SUSPICIOUS_MM: f64 = 1.0;

/// The marks in a sentence, and the hits in a table.
pub fn photo(photo: &PhotoView, hits: &[Hit], ruler: Ruler) -> String {
    let mut table = Table::new(["shaft", "hit", "known to"]);
    for hit in hits {
        let known = ruler.read(hit.read_sd);
        table.row([hit.shot.shaft.clone(), ruler.hit(hit.point.from_spot()), known]);
    }
    let lines: Vec<String> = table.lines().collect();
    format!("{}\n\n{}\n", paragraph("Marks: ", &marks(photo)), lines.join("\n"))
}

fn marks(photo: &PhotoView) -> String {
    match (&photo.by, photo.off()) {
        (By::Picture(found), _) => in_the_picture(found.told, found.unlike, found.lines),
        (By::Hand, Some(off)) => {
            format!("the {} that you gave fit within {:.1} mm.", photo.marks.len(), off.mm())
        }
        (By::Hand, None) => {
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
pub fn photo_notices(photo: &PhotoView, hits: &[Hit], ruler: Ruler) -> Vec<String> {
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
    [off, shown, by_lines, outside(hits, ruler)].into_iter().flatten().collect()
}

fn beside(off: Millimetres) -> String {
    format!("the lines of the grid run up to {:.1} mm beside where the marks say", off.mm())
}

fn lines_off(photo: &PhotoView) -> Option<Millimetres> {
    let By::Picture(found) = &photo.by else { return None };
    found.lines.filter(|off| off.mm() > SUSPICIOUS_MM / 2.0)
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
