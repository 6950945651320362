//! Every answer is what the published schemas say, and every published schema is held against an answer.

use serde_json::Value;

use crate::support::repository::sources;
use crate::support::schema::Schema;
use crate::support::{Folder, JOURNAL};

const FOLDER: &str = "docs/schema";

#[test]
fn every_answer_is_as_its_schema_says() {
    let schemas: Vec<_> =
        sources(FOLDER).iter().map(|source| Schema::parse(&source.text)).collect();
    let mut unused: Vec<_> = schemas.iter().map(Schema::name).collect();
    for answer in answers() {
        let name = answer["schema"].as_str().expect("an answer names its schema");
        let schema = schemas.iter().find(|schema| schema.name() == name);
        let schema = schema.unwrap_or_else(|| panic!("no schema in {FOLDER} is for {name}"));
        assert_eq!(schema.faults(&answer), Vec::<String>::new(), "{name}");
        unused.retain(|unused| *unused != name);
    }
    assert!(unused.is_empty(), "nothing answers as {unused:?} say");
}

/// An answer of every command that gives JSON, on an evening with a bit of everything.
fn answers() -> Vec<Value> {
    let folder = Folder::with_an_end();
    let ask = |line: &str| folder.run(line).json();
    vec![ask(&format!("next {JOURNAL} --json")), ask(&format!("show {JOURNAL} --json"))]
}
