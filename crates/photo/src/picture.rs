//! A picture, read from the bytes of a JPEG or a PNG.

use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, GenericImageView, ImageDecoder, ImageError, ImageReader, Limits};

use crate::jpeg_end::has_end;
use crate::{Luminance, PictureError};

/// Telephones take up to 50 million pixels.
const MOST_MILLION_PIXELS: u64 = 50;
/// What the decoder may take at once: 50 million pixels of three bytes, turned round, and room beside them.
const MOST_BYTES: u64 = 512 << 20;
/// Fine enough that an eye sees no difference in a small picture.
const QUALITY: u8 = 80;

/// A picture as people see it: turned upright, as the camera noted. Nothing else that stands in its file is kept.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture(DynamicImage);

impl Picture {
    /// The picture whose file holds `bytes`.
    ///
    /// # Errors
    /// [`PictureError`]: no bytes, another kind of file, more than 50 million pixels, or a damaged picture.
    pub fn read(bytes: &[u8]) -> Result<Self, PictureError> {
        if bytes.is_empty() {
            return Err(PictureError::Empty);
        }
        let mut reader =
            ImageReader::new(Cursor::new(bytes)).with_guessed_format().map_err(damaged)?;
        let mut limits = Limits::default();
        limits.max_alloc = Some(MOST_BYTES);
        reader.limits(limits);
        let mut decoder = reader.into_decoder().map_err(refused)?;
        let (width, height) = decoder.dimensions();
        if u64::from(width) * u64::from(height) > MOST_MILLION_PIXELS * 1_000_000 {
            return Err(PictureError::TooLarge { width, height, most: MOST_MILLION_PIXELS });
        }
        if !has_end(bytes) {
            return Err(PictureError::Damaged { reason: "its end is missing".to_owned() });
        }
        let orientation = decoder.orientation().map_err(refused)?;
        let mut picture = DynamicImage::from_decoder(decoder).map_err(refused)?;
        picture.apply_orientation(orientation);
        Ok(Self(picture))
    }

    /// Pixels across and up and down, upright.
    pub fn size(&self) -> [u32; 2] {
        self.0.dimensions().into()
    }

    /// How light it is.
    pub fn luminance(&self) -> Option<Luminance> {
        let grey = self.0.to_luma8();
        let [width, height] = [grey.width(), grey.height()].map(usize::try_from);
        Luminance::new(width.ok()?, height.ok()?, grey.into_raw())
    }

    /// The picture as a JPEG of its own without any notes, at most `longest` pixels along its longer side.
    ///
    /// # Errors
    /// [`PictureError::Damaged`] where the encoder cannot.
    pub fn jpeg(&self, longest: u32) -> Result<Vec<u8>, PictureError> {
        let [width, height] = self.size();
        let is_larger = width.max(height) > longest;
        let small = if is_larger { self.0.thumbnail(longest, longest) } else { self.0.clone() };
        let mut bytes = Vec::new();
        JpegEncoder::new_with_quality(&mut bytes, QUALITY)
            .encode_image(&small.to_rgb8())
            .map_err(refused)?;
        Ok(bytes)
    }
}

fn refused(error: ImageError) -> PictureError {
    match error {
        ImageError::Unsupported(_) => PictureError::OtherKind,
        other => damaged(other),
    }
}

fn damaged(error: impl std::error::Error) -> PictureError {
    PictureError::Damaged { reason: error.to_string() }
}

#[cfg(test)]
mod tests {
    use image::{ImageFormat, Rgb, RgbImage};

    use super::*;

    /// Wider than high, its upper left quarter black.
    fn file(format: ImageFormat) -> Vec<u8> {
        let shade = |x, y| if x < 20 && y < 10 { 0 } else { 220 };
        let image = RgbImage::from_fn(40, 20, |x, y| Rgb([shade(x, y); 3]));
        let mut bytes = Cursor::new(Vec::new());
        DynamicImage::ImageRgb8(image).write_to(&mut bytes, format).unwrap();
        bytes.into_inner()
    }

    /// The JPEG with notes: an orientation, and a place where it was taken.
    fn noted(orientation: u8) -> Vec<u8> {
        let mut notes = b"Exif\0\0MM\0\x2a\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0".to_vec();
        notes.extend([orientation, 0, 0, 0, 0, 0, 0]);
        notes.extend(b"GPS 50.1 N 8.6 E");
        let mut bytes = file(ImageFormat::Jpeg);
        let length = u16::try_from(notes.len() + 2).unwrap().to_be_bytes();
        let segment = [&[0xff, 0xe1], &length[..], &notes].concat();
        bytes.splice(2..2, segment);
        bytes
    }

    fn value(picture: &Picture, x: usize, y: usize) -> u8 {
        picture.luminance().unwrap().at(x, y)
    }

    #[test]
    fn both_kinds_are_read() {
        for format in [ImageFormat::Jpeg, ImageFormat::Png] {
            let picture = Picture::read(&file(format)).unwrap();
            assert_eq!(picture.size(), [40, 20]);
            assert!(value(&picture, 5, 5) < 20 && value(&picture, 35, 15) > 200);
        }
    }

    /// Where the black quarter comes to be when the camera was held so; EXIF 2.3, tag 274.
    #[test]
    fn it_is_turned_upright_and_no_note_is_kept() {
        for (orientation, size, [x, y]) in [
            (1, [40, 20], [5, 5]),
            (3, [40, 20], [35, 15]),
            (6, [20, 40], [15, 5]),
            (8, [20, 40], [5, 35]),
        ] {
            let picture = Picture::read(&noted(orientation)).unwrap();
            assert_eq!(picture.size(), size, "{orientation}");
            assert!(value(&picture, x, y) < 20, "{orientation}");
            let again = picture.jpeg(1000).unwrap();
            let holds = |word: &[u8]| again.windows(word.len()).any(|bytes| bytes == word);
            assert!(!holds(b"Exif") && !holds(b"GPS"));
            assert_eq!(Picture::read(&again).unwrap().size(), size, "it is upright already");
        }
    }

    #[test]
    fn a_large_one_is_made_small() {
        let picture = Picture::read(&file(ImageFormat::Png)).unwrap();
        let small = Picture::read(&picture.jpeg(10).unwrap()).unwrap();
        assert_eq!(small.size(), [10, 5]);
    }

    #[test]
    fn what_is_no_picture_is_refused() {
        assert_eq!(Picture::read(b""), Err(PictureError::Empty));
        for other in [&b"R 0, 7 r31 u8"[..], b"GIF89a\x01\0\x01\0", b"BM", &[0; 100]] {
            assert_eq!(Picture::read(other), Err(PictureError::OtherKind), "{other:?}");
        }
        for format in [ImageFormat::Jpeg, ImageFormat::Png] {
            let whole = file(format);
            for cut in [20, whole.len() / 2, whole.len() - 20] {
                let read = Picture::read(&whole[..cut]);
                assert!(
                    matches!(read, Err(PictureError::Damaged { .. })),
                    "{format:?} {cut} {read:?}"
                );
            }
        }
    }

    /// A PNG of 40,000 by 40,000 pixels in some fifty bytes.
    #[test]
    fn a_bomb_is_refused_before_it_goes_off() {
        let mut png = file(ImageFormat::Png);
        png[16..24].copy_from_slice(&[0, 0, 0x9c, 0x40, 0, 0, 0x9c, 0x40]);
        let crc = crc32fast::hash(&png[12..29]).to_be_bytes();
        png[29..33].copy_from_slice(&crc);
        let expected = PictureError::TooLarge { width: 40_000, height: 40_000, most: 50 };
        assert_eq!(Picture::read(&png), Err(expected));
    }
}
