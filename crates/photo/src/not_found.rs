//! Why no marks are taken from a picture.

use quarterturn_geometry::Millimetres;
use thiserror::Error;

/// Why no marks are taken from a picture.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum NotFound {
    /// Fewer than four can be seen.
    #[error("{} can be seen in the picture, and it takes four", marks(*seen))]
    TooFew {
        /// How many can be.
        seen: usize,
    },
    /// So many that they stand as on the face, and no four do.
    #[error("{} can be seen in the picture, but no four of them stand as on the printed face", marks(*seen))]
    NoSet {
        /// How many can be seen.
        seen: usize,
    },
    /// More than one face.
    #[error("more than one set of four marks can be seen in the picture")]
    Several,
    /// The face in a mirror.
    #[error("the picture is mirrored: the marks run the other way round than on the printed face")]
    Mirrored,
    /// The lines of the grid run elsewhere than the marks say.
    #[error(
        "the lines of the grid do not run where four marks {:.1} mm apart would have them", said.mm()
    )]
    Lines {
        /// How far apart the marks were said to be.
        said: Millimetres,
    },
    /// The marks are too large or too small for where they are said to stand.
    #[error(
        "the marks are 12 mm wide only if they stand about {:.0} mm apart along each edge, not {:.1} mm",
        looks.mm(), said.mm()
    )]
    Spacing {
        /// What was said.
        said: Millimetres,
        /// What it looks like, to some percent.
        looks: Millimetres,
    },
}

fn marks(seen: usize) -> String {
    match seen {
        0 => "no mark".to_owned(),
        1 => "1 mark".to_owned(),
        _ => format!("{seen} marks"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_reason_says_what_is_seen() {
        let told = [
            NotFound::TooFew { seen: 1 },
            NotFound::NoSet { seen: 9 },
            NotFound::Several,
            NotFound::Mirrored,
        ]
        .map(|reason| reason.to_string());
        let expected = [
            "1 mark can be seen in the picture, and it takes four",
            "9 marks can be seen in the picture, but no four of them stand as on the printed face",
            "more than one set of four marks can be seen in the picture",
            "the picture is mirrored: the marks run the other way round than on the printed face",
        ];
        assert_eq!(told, expected);
    }
}
