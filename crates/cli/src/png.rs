//! PNG from SVG, the same on every machine: with fonts of its own, in the light, ten pixels to a millimetre.

use resvg::tiny_skia::{Color, Pixmap, Transform};
use resvg::usvg::{Options, Tree};

use crate::failure::{Failure, Kind};

/// They are cut down; see `fonts/README.md`.
const FONTS: [&[u8]; 2] = [
    include_bytes!("../fonts/DejaVuSansCondensed-subset.ttf"),
    include_bytes!("../fonts/DejaVuSansCondensed-Bold-subset.ttf"),
];

/// Pixels to an inch: ten to a millimetre.
const PIXELS_AN_INCH: f32 = 254.0;
/// The same to a metre, as a PNG says it.
const PIXELS_A_METRE: u32 = 10_000;
/// A PNG begins with a signature of 8 bytes and a header of 25; what says its size comes after them.
const HEADER_BYTES: usize = 33;

/// The picture in pixels; the dark colours of its style are for screens and left out.
///
/// # Errors
/// Where it cannot be drawn, which is a fault of the program.
pub fn png(svg: &str) -> Result<Vec<u8>, Failure> {
    let failed = |what: &str| Failure::new(Kind::InputOutput, format!("no PNG was made: {what}"));
    let mut options = Options { dpi: PIXELS_AN_INCH, ..Options::default() };
    let fonts = options.fontdb_mut();
    for font in FONTS {
        fonts.load_font_data(font.to_vec());
    }
    fonts.set_sans_serif_family("DejaVu Sans Condensed");
    let tree =
        Tree::from_str(&in_the_light(svg), &options).map_err(|error| failed(&error.to_string()))?;
    let size = tree.size().to_int_size();
    let mut pixels = Pixmap::new(size.width(), size.height()).ok_or_else(|| failed("too large"))?;
    pixels.fill(Color::WHITE);
    resvg::render(&tree, Transform::identity(), &mut pixels.as_mut());
    pixels.encode_png().map(sized).map_err(|error| failed(&error.to_string()))
}

/// The picture without what its style says for dark screens.
fn in_the_light(svg: &str) -> String {
    match (svg.find("@media"), svg.find("</style>")) {
        (Some(from), Some(to)) if from < to => svg[..from].to_owned() + &svg[to..],
        _ => svg.to_owned(),
    }
}

/// The file with how large it is to be printed.
///
/// # Source
/// W3C, Portable Network Graphics (third edition), 11.3.4.3: the chunk pHYs.
fn sized(mut png: Vec<u8>) -> Vec<u8> {
    let [across, up] = [PIXELS_A_METRE.to_be_bytes(); 2];
    let in_metres = [1];
    let named = [b"pHYs".as_slice(), &across, &up, &in_metres].concat();
    let length = 9_u32.to_be_bytes();
    let sum = crc32fast::hash(&named).to_be_bytes();
    let chunk = [length.as_slice(), &named, &sum].concat();
    png.splice(HEADER_BYTES..HEADER_BYTES, chunk);
    png
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A square of two millimetres, dark on screens that are dark.
    const DRAWN: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"4mm\" height=\"3mm\" viewBox=\"0 0 4 3\">\
        <style>\n.a { fill: #d55e00 }\n@media screen { .a { fill: #000000 } }\n</style>\n\
        <rect class=\"a\" width=\"2\" height=\"2\"/></svg>";

    #[test]
    fn ten_pixels_are_a_millimetre_in_the_light_and_paper_is_white() {
        let pixels = Pixmap::decode_png(&png(DRAWN).unwrap()).unwrap();
        assert_eq!((pixels.width(), pixels.height()), (40, 30));
        let colour = |x, y| {
            let pixel = pixels.pixel(x, y).unwrap();
            [pixel.red(), pixel.green(), pixel.blue(), pixel.alpha()]
        };
        assert_eq!(colour(19, 19), [0xd5, 0x5e, 0x00, 0xff]);
        assert_eq!(colour(20, 20), [0xff; 4]);
    }
}
