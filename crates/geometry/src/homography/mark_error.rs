//! Why marks tell nothing of a picture.

use thiserror::Error;

/// Why marks were refused. Marks are numbered from 0 here and from 1 in messages.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum MarkError {
    /// Fewer than four.
    #[error("{count} marks: it takes four, no three of them on one line")]
    TooFew {
        /// How many there are.
        count: usize,
    },
    /// So many that they cannot be marks.
    #[error("{count} marks: at most {most} are taken")]
    TooMany {
        /// How many there are.
        count: usize,
        /// How many there may be.
        most: usize,
    },
    /// A coordinate that is infinite, not a number or beyond any picture.
    #[error("mark {}: a coordinate of {value} is no place; finite numbers up to {largest:e} are", mark + 1)]
    Coordinate {
        /// Which mark.
        mark: usize,
        /// The first such coordinate.
        value: f64,
        /// The largest that is taken.
        largest: f64,
    },
    /// Two marks in one place, in the picture or on the face.
    #[error("marks {} and {} stand in one place; give each its own", marks[0] + 1, marks[1] + 1)]
    Coincident {
        /// Which two.
        marks: [usize; 2],
    },
    /// All but one on a line, in the picture or on the face.
    #[error(
        "marks {}, {} and {} stand on one line and leave too few beside it; take the corners of a face",
        marks[0] + 1, marks[1] + 1, marks[2] + 1
    )]
    Collinear {
        /// Three on the line.
        marks: [usize; 3],
    },
    /// Marks in another order in the picture than on the face.
    #[error(
        "marks {} and {} seem to have been taken for each other; exchange them, or check the order of all",
        marks[0] + 1, marks[1] + 1
    )]
    Crossed {
        /// The two that most speak against.
        marks: [usize; 2],
    },
    /// The picture shows the face from behind.
    #[error(
        "the marks run the other way round in the picture than on the face: the picture is mirrored, or y was counted upwards, \
         or two opposite marks were exchanged"
    )]
    Mirrored,
    /// Marks that fit no view of a flat face.
    #[error("the marks agree on no view of a flat face; read them again")]
    NoView,
}
