//! The pictures in the documents are what the program draws.

use std::env::var_os;
use std::fs;

use crate::support::Folder;
use crate::support::repository::{read, root};

/// The command that makes a picture, the file it writes, and the picture in the documents.
const PICTURES: [(&str, &str, &str); 10] = [
    ("demo dozen", "dozen/harrow-fen.svg", "demo.svg"),
    ("plot dozen/harrow-fen.journal --shaft 7", "dozen/harrow-fen-7.svg", "shaft.svg"),
    ("plot dozen/harrow-fen.journal --course", "dozen/harrow-fen-course.svg", "course.svg"),
    (
        "plot dozen/harrow-fen.journal --before-after",
        "dozen/harrow-fen-before-after.svg",
        "before-after.svg",
    ),
    ("plot dozen/harrow-fen.journal --lean", "dozen/harrow-fen-lean.svg", "lean.svg"),
    ("plot dozen/harrow-fen.journal --end 5", "dozen/harrow-fen-end-5.svg", "end.svg"),
    ("paper card fen.journal -o card.svg", "card.svg", "card.svg"),
    (
        "paper dials dozen/harrow-fen.journal --diameter 6.5mm -o dials.svg",
        "dials.svg",
        "dials.svg",
    ),
    (
        "paper fletch dozen/harrow-fen.journal --diameter 6.5mm -o fletching.svg",
        "fletching.svg",
        "fletching.svg",
    ),
    ("paper face -o face.svg", "face.svg", "face.svg"),
];

#[test]
fn every_picture_is_current_and_shown() {
    let folder = Folder::new();
    folder
        .run("new fen.journal --shafts 1-12 --reference R --distance 18.3m --tolerance 25mm")
        .any_stdout()
        .check();
    let gallery = read("docs/gallery.md");
    for (command, drawn, shown) in PICTURES {
        folder.run(command).any_stdout().check();
        let picture = folder.read(drawn);
        let place = format!("docs/pictures/{shown}");
        if var_os("QUARTERTURN_REWRITE").is_some() {
            fs::write(root().join(&place), &picture).expect("the picture is written");
        }
        let told = "look at what it draws; if it is right: QUARTERTURN_REWRITE=1";
        assert!(picture == read(&place), "`{command}` no longer draws {place}: {told}");
        assert!(gallery.contains(&format!("(pictures/{shown})")), "{shown} in docs/gallery.md");
    }
}
