//! The photo, read from its file.

use std::path::Path;

use quarterturn_geometry::{Homography, Millimetres};
use quarterturn_photo::{Found, Grid, NotFound, PictureError, find};

use crate::failure::{Failure, Kind};
use crate::input;

/// A drawing has the photo in it: so many pixels along its longer side show every hole.
const LONGEST_DRAWN: u32 = 1600;

/// The photo and the name of its file.
pub struct Picture {
    picture: quarterturn_photo::Picture,
    origin: String,
}

impl Picture {
    /// Reads the photo in the file `path`.
    pub fn read(path: &Path) -> Result<Self, Failure> {
        let input::Bytes { bytes, origin } = input::bytes(path)?;
        match quarterturn_photo::Picture::read(&bytes) {
            Ok(picture) => Ok(Self { picture, origin }),
            Err(error) => Err(no_picture(&origin, &error)),
        }
    }

    /// Pixels across and up and down.
    pub fn size(&self) -> [u32; 2] {
        self.picture.size()
    }

    /// The marks of the printed face in it.
    pub fn marks(&self, spacing: Millimetres) -> Result<Found, Failure> {
        let luminance = self.picture.luminance().ok_or(NotFound::TooFew { seen: 0 });
        luminance
            .and_then(|luminance| find(&luminance, spacing))
            .map_err(|why| not_found(&self.origin, why))
    }

    /// What is seen of the printed grid where four marks that were pointed at say.
    pub fn grid(&self, view: &Homography, spacing: Millimetres) -> Grid {
        let luminance = self.picture.luminance();
        luminance.map_or_else(Grid::default, |picture| Grid::seen(&picture, view, spacing))
    }

    /// The photo to be drawn on: a JPEG without any notes.
    pub fn jpeg(&self) -> Result<Vec<u8>, Failure> {
        self.picture.jpeg(LONGEST_DRAWN).map_err(|error| no_picture(&self.origin, &error))
    }
}

fn not_found(origin: &str, why: NotFound) -> Failure {
    let by_hand = "give the pixels of the four marks with --marks: top left (the largest dot), top right (the smallest), \
        bottom right, bottom left";
    let hints: &[&str] = match why {
        NotFound::Mirrored => &["turn it over again in a picture viewer, and read the pixels anew"],
        NotFound::Spacing { .. } => &[
            "measure from the middle of one mark to the middle of the next, and say it with --spacing",
        ],
        NotFound::Lines { .. } => &[
            "does the face lie flat? pin it at the corners and take the picture again",
            "measure from the middle of one mark to the middle of the next, and say it with --spacing",
        ],
        NotFound::Several => &["cut the picture to one face, or point at its marks with --marks"],
        _ => &[by_hand, "a picture in which all four can be seen, sharp and whole, needs no marks"],
    };
    let what = format!("the marks were not taken from {origin}: {why}");
    Failure::new(Kind::Data, what).hinting(hints)
}

fn no_picture(origin: &str, error: &PictureError) -> Failure {
    let hint = match error {
        PictureError::OtherKind => "save it as a JPEG or a PNG",
        PictureError::TooLarge { .. } => {
            "save it smaller; the pixels are then those of the smaller one"
        }
        _ => "copy it again from the telephone or the camera",
    };
    let what = format!("{origin} cannot be read as a picture: {error}");
    Failure::new(Kind::Data, what).hinting([hint])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_face_that_does_not_lie_flat() {
        let failure = not_found("face.jpg", NotFound::Lines { said: Millimetres::new(166.0) });
        let said = "the marks were not taken from face.jpg: the lines of the grid do not run where four marks 166.0 mm apart \
            would have them";
        assert_eq!(failure.what, said);
        let flat = "does the face lie flat? pin it at the corners and take the picture again";
        assert_eq!(failure.hints[0], flat);
    }

    #[test]
    fn two_faces_and_a_mirror_have_ways_on() {
        let hints = |why| not_found("face.jpg", why).hints;
        let mirror = "turn it over again in a picture viewer, and read the pixels anew";
        assert_eq!(hints(NotFound::Mirrored), [mirror]);
        let faces = "cut the picture to one face, or point at its marks with --marks";
        assert_eq!(hints(NotFound::Several), [faces]);
    }
}
