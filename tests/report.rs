//! `report`: the whole dozen on one page.

use std::collections::BTreeSet;

use crate::support::{Folder, JOURNAL};

fn page(folder: &Folder) -> String {
    folder.run(&format!("report {JOURNAL} -o -")).any_stdout().check()
}

#[test]
fn the_page_stands_beside_the_journal_and_tells_of_every_shaft() {
    let folder = Folder::with_an_end();
    let said = folder.run(&format!("report {JOURNAL}"));
    said.stdout("The report is written to evening.html.\n").check();
    let page = folder.read("evening.html");
    assert_eq!(page, self::page(&folder), "the same journal is the same bytes");
    let shafts = (1..=3).map(|shaft| format!(">Shaft {shaft}: "));
    let parts = ["<h2 id=\"now\">", "tolerance 25 mm", "Never put a broadhead on a bare shaft."];
    for part in shafts.chain(parts.map(str::to_owned)) {
        assert!(page.contains(&part), "the page lacks {part}");
    }
    assert!(!page.contains("NaN"));
}

#[test]
fn it_needs_nothing_from_elsewhere() {
    let page = page(&Folder::with_an_end());
    let policy = "content=\"default-src 'none'; style-src 'unsafe-inline'\"";
    assert!(page.contains(policy), "the content policy");
    let without_names = page.replace("http://www.w3.org/2000/svg", "");
    for elsewhere in ["http:", "https:", "//", "<script", "<link", "@import", "src="] {
        let lines: Vec<&str> =
            without_names.lines().filter(|line| line.contains(elsewhere)).collect();
        let policy_only = lines.iter().all(|line| line.contains("Content-Security-Policy"));
        assert!(policy_only, "{elsewhere} in {lines:?}");
    }
}

/// Many shots of so many shafts beside the reference, four an end, each bare shaft at one hour after another.
fn long_evening(shafts: i32, ends: i32) -> Folder {
    let folder = Folder::begun(&format!("1-{shafts}"));
    let mut rows = vec!["end,evening,shaft,index_deg,x_mm,y_mm,lean_x_deg,lean_y_deg".to_owned()];
    for end in 0..ends {
        let (x_mm, y_mm) = (end * 7 % 23 - 11, end * 5 % 19 - 9);
        rows.push(format!("{end},2027-03-02,R,,{x_mm},{y_mm},0.5,0"));
        for shot in 3 * end..3 * end + 3 {
            let (right_mm, up_mm) = (shot * 37 % 83 - 50, shot * 29 % 71 - 28);
            let [lean_x, lean_y] = [right_mm, up_mm].map(|mm| -f64::from(mm) / 10.0);
            let (shaft, index_deg) = (shot % shafts + 1, shot / shafts % 12 * 30);
            let (x_mm, y_mm) = (x_mm + right_mm, y_mm + up_mm);
            rows.push(format!(
                "{end},2027-03-02,{shaft},{index_deg},{x_mm},{y_mm},{lean_x},{lean_y}"
            ));
        }
    }
    let table = rows.join("\n") + "\n";
    folder.run(&format!("import {JOURNAL} -")).stdin(&table).any_stdout().check();
    folder
}

/// 260 KB for a dozen with 208 shots, the pictures and all numbers included; a shaft more, with its picture, takes some 13
/// KB, a shot more some 0.3 KB.
#[test]
fn it_is_small() {
    let page = page(&long_evening(12, 52));
    assert!(page.contains("156 bare shots"));
    assert!(page.len() <= 260_000, "{} bytes", page.len());
}

#[test]
fn two_dozen_take_twice_as_much() {
    let page = page(&long_evening(24, 52));
    assert!(page.contains("156 bare shots"));
    assert!(page.len() <= 420_000, "{} bytes", page.len());
}

#[test]
fn before_and_after_and_lean_against_hit_stand_in_it_with_their_numbers() {
    let page = page(&Folder::with_an_end());
    for part in [
        "<h2 id=\"turned\">Before and after</h2>",
        "id=\"before-after-title\"",
        "<th scope=\"col\">first hit there (mm)</th>",
        "<h2 id=\"leans\">How tails go with hits</h2>",
        "id=\"lean-title\"",
        "<th scope=\"col\">degrees for each mm</th>",
    ] {
        assert!(page.contains(part), "the page lacks {part}");
    }
}

#[test]
fn no_two_things_on_it_have_one_name() {
    let page = page(&Folder::with_an_end());
    let ids: Vec<&str> =
        page.split(" id=\"").skip(1).filter_map(|rest| rest.split('"').next()).collect();
    let different: BTreeSet<&str> = ids.iter().copied().collect();
    assert!(ids.len() > 3);
    assert_eq!(different.len(), ids.len());
    for named in page.split("aria-labelledby=\"").skip(1) {
        let named = named.split('"').next().unwrap();
        assert!(named.split(' ').all(|id| different.contains(id)), "{named}");
    }
}

#[test]
fn a_name_with_markup_stays_text() {
    let folder = Folder::begun("1-3");
    std::fs::rename(folder.file(JOURNAL), folder.file("<b>&fen.journal")).unwrap();
    folder.run("report <b>&fen.journal -o page.html").any_stdout().check();
    let page = folder.read("page.html");
    assert!(page.contains("&#60;b&#62;&#38;fen.journal") && !page.contains("<b>"), "{page}");
}

#[test]
fn only_force_writes_over_a_page() {
    let folder = Folder::begun("1-3");
    folder.write("evening.html", "mine");
    folder.run(&format!("report {JOURNAL}")).code(5).stderr_has("--force").check();
    assert_eq!(folder.read("evening.html"), "mine");
    folder.run(&format!("report {JOURNAL} --force")).any_stdout().check();
    assert!(folder.read("evening.html").starts_with("<!DOCTYPE html>"));
}
