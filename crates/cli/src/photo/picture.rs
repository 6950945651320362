//! The photo, read from its file.

use std::path::Path;

use quarterturn_geometry::Millimetres;
use quarterturn_photo::{Found, NotFound, PictureError, find};

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
        luminance.and_then(|luminance| find(&luminance, spacing)).map_err(|why| self.not_found(why))
    }

    /// The photo to be drawn on: a JPEG without any notes.
    pub fn jpeg(&self) -> Result<Vec<u8>, Failure> {
        self.picture.jpeg(LONGEST_DRAWN).map_err(|error| no_picture(&self.origin, &error))
    }

    fn not_found(&self, why: NotFound) -> Failure {
        let what = format!("the marks were not taken from {}: {why}", self.origin);
        Failure::new(Kind::Data, what).hinting(ways_on(why))
    }
}

/// What to do where no marks were found.
const fn ways_on(why: NotFound) -> &'static [&'static str] {
    match why {
        NotFound::Mirrored => &["turn it over again in a picture viewer, and read the pixels anew"],
        NotFound::Spacing { .. } => &[
            "measure from the middle of one mark to the middle of the next, and say it with --spacing",
        ],
        NotFound::Lines { .. } => &[
            "measure from the middle of one mark to the middle of the next, and say it with --spacing",
            "or the face does not lie flat: pin it at the corners and take the picture again",
        ],
        NotFound::Several => &["cut the picture to one face, or point at its marks with --marks"],
        _ => &[
            "give the pixels of the four marks with --marks: top left (the largest dot), top right (the smallest), \
             bottom right, bottom left",
            "a picture in which all four can be seen, sharp and whole, needs no marks",
        ],
    }
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
    fn two_faces_and_a_mirror_have_ways_on() {
        let mirror = "turn it over again in a picture viewer, and read the pixels anew";
        assert_eq!(ways_on(NotFound::Mirrored), [mirror]);
        let faces = "cut the picture to one face, or point at its marks with --marks";
        assert_eq!(ways_on(NotFound::Several), [faces]);
    }
}
