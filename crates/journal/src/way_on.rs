//! What to do instead of what an entry says and cannot be.

use quarterturn_tuning::ShaftName;

use crate::What;

impl What {
    /// What to do instead, where that is known.
    pub fn way_on(&self) -> Option<String> {
        let fixed = match self {
            Self::UnknownShaft { known, .. } => {
                let names: Vec<_> = known.iter().map(ShaftName::as_str).collect();
                return Some(format!("it has {}", names.join(", ")));
            }
            Self::UnknownWord { known, .. } => return Some(format!("known: {}", known.join(", "))),
            Self::BadName { .. } => return Some(quarterturn_tuning::ShaftNameError.to_string()),
            Self::Alone { needs } => {
                return Some(format!("give \"{needs}\" too, or leave this out"));
            }
            Self::Syntax { .. } => "look for a comma, a quote or a brace just before it",
            Self::Missing { .. } => "give it; docs/machine-interface.md has every name",
            Self::BadEvening => "for example 2027-03-02",
            Self::Kind { found: "null", .. } => "leave out what is not known",
            Self::Kind { expected: "text in quotes", .. } => "put it in quotes",
            Self::Kind { expected: "a number", .. } => "for example 12 or 12.5, without quotes",
            Self::Kind { expected: "true or false", .. } => "true, or leave it out",
            Self::Kind { expected: "a list in brackets", .. } => "put brackets round it",
            Self::Kind { .. } => "put braces round its members",
            Self::Repeated { .. } | Self::Twice { .. } => "take one of the two out",
            Self::Beyond { .. } | Self::NotAboveZero { .. } | Self::Negative { .. } => {
                "check the number and its unit"
            }
            Self::NothingMeasured => "give at least one measure, for example --mass 312.4gr",
            Self::OffTheShaft { .. } => "both are taken from the groove of the nock: measure again",
            Self::OutOfUse { .. } => "if it is sound, record it as repaired or readmitted first",
            Self::BroadheadOnBare { .. } => {
                "it flies where nobody expects it; record the shaft as fletched once it is: shaft JOURNAL NAME --fletched"
            }
            Self::NotFletched { .. } => {
                "a bare shaft is entered with end; one that is fletched is recorded so: shaft JOURNAL NAME --fletched"
            }
            Self::BadDate { .. } => "write it like 2027-03-02",
            Self::NoLimit => "give at least one that you have read, for example --least-mass 300gr",
            Self::BadHead => "for example \"head A\"",
            Self::ManyCold { .. } => {
                "enter the first shot alone as cold, and the others as a group of their own"
            }
            Self::NoHit => "give x_mm and y_mm, or flag it lost or broken",
            Self::BadTime { .. } => "write it like 2027-03-02T10:15:00Z",
            Self::TooManyShafts { .. } => "begin a journal for each set of arrows",
            Self::TooLong { .. } => "shorten the notes",
            Self::Known { .. } => "choose another name, or record the old one as repaired",
            Self::OtherUnit { expected, .. } => {
                return Some(format!("convert it and name it {expected}"));
            }
            _ => return None,
        };
        Some(fixed.to_owned())
    }
}
