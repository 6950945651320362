//! A sheet of paper as a backend of plotters: the whole numbers of plotters are hundredths of a millimetre here.

use std::convert::Infallible;

use plotters::style::RGBColor;
use plotters_backend::text_anchor::{HPos, Pos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
};

use super::canvas::Canvas;
use super::paper_point::PaperPoint;
use super::segment::Segment;
use super::series::Look;
use super::shape::Anchor;
use super::text_width::{MIDDLE, width_mm};

/// The size of every text, mm.
pub const TEXT_MM: f64 = 3.0;

/// What a colour of plotters stands for: it knows no classes.
#[derive(Clone, Debug, PartialEq)]
pub struct Ink {
    /// The class of lines and texts.
    pub line: String,
    /// The class of marks.
    pub mark: &'static str,
    /// How a mark looks.
    pub look: Look,
}

/// The sheet.
pub struct SheetBackend<'a> {
    /// What is drawn on.
    pub canvas: &'a mut Canvas,
    /// What each colour stands for.
    pub inks: Vec<Ink>,
}

/// A length of paper as plotters counts it.
pub fn units(mm: f64) -> i32 {
    // Sheets are smaller than a metre.
    #[expect(clippy::cast_possible_truncation, reason = "a sheet is some 100,000 of them")]
    let units = (mm * 100.0).round() as i32;
    units
}

/// The colour that stands for the ink at a place.
pub fn colour(ink: usize) -> RGBColor {
    RGBColor(u8::try_from(ink).unwrap_or(u8::MAX), 0, 0)
}

type Drawn = Result<(), DrawingErrorKind<Infallible>>;

impl SheetBackend<'_> {
    fn ink(&self, colour: BackendColor) -> Option<Ink> {
        self.inks.get(usize::from(colour.rgb.0)).filter(|_| colour.alpha > 0.0).cloned()
    }

    fn place(&self, (x, y): BackendCoord) -> PaperPoint {
        PaperPoint::new(f64::from(x) / 100.0, self.canvas.height_mm - f64::from(y) / 100.0)
    }

    fn line(&mut self, ink: Option<&Ink>, from: BackendCoord, to: BackendCoord) {
        if let Some(ink) = ink {
            let along = Segment { from: self.place(from), to: self.place(to) };
            self.canvas.line(&ink.line, along);
        }
    }
}

impl DrawingBackend for SheetBackend<'_> {
    type ErrorType = Infallible;

    fn get_size(&self) -> (u32, u32) {
        [self.canvas.width_mm, self.canvas.height_mm].map(|mm| units(mm).unsigned_abs()).into()
    }

    fn ensure_prepared(&mut self) -> Drawn {
        Ok(())
    }

    fn present(&mut self) -> Drawn {
        Ok(())
    }

    /// Nothing that is drawn here is drawn pixel by pixel.
    fn draw_pixel(&mut self, _: BackendCoord, _: BackendColor) -> Drawn {
        Ok(())
    }

    fn draw_line<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
    ) -> Drawn {
        let ink = self.ink(style.color());
        self.line(ink.as_ref(), from, to);
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Drawn {
        let ink = self.ink(style.color());
        let places: Vec<BackendCoord> = path.into_iter().collect();
        places.windows(2).for_each(|pair| self.line(ink.as_ref(), pair[0], pair[1]));
        Ok(())
    }

    /// A mark, as its ink looks.
    fn draw_circle<S: BackendStyle>(
        &mut self,
        centre: BackendCoord,
        _radius: u32,
        style: &S,
        _fill: bool,
    ) -> Drawn {
        if let Some(ink) = self.ink(style.color()) {
            let at = self.place(centre);
            ink.look.draw(self.canvas, ink.mark, at);
        }
        Ok(())
    }

    fn draw_text<S: BackendTextStyle>(&mut self, text: &str, style: &S, at: BackendCoord) -> Drawn {
        let Some(ink) = self.ink(style.color()) else { return Ok(()) };
        let Pos { h_pos, v_pos } = style.anchor();
        let anchor = match h_pos {
            HPos::Left => Anchor::Start,
            HPos::Center => Anchor::Middle,
            HPos::Right => Anchor::End,
        };
        let down = match v_pos {
            VPos::Top => 2.0 * MIDDLE,
            VPos::Center => MIDDLE,
            VPos::Bottom => 0.0,
        };
        let base = self.place(at).moved(0.0, -down * TEXT_MM);
        self.canvas.text(&ink.line, base, anchor, TEXT_MM, text);
        Ok(())
    }

    fn estimate_text_size<S: BackendTextStyle>(
        &self,
        text: &str,
        _style: &S,
    ) -> Result<(u32, u32), DrawingErrorKind<Infallible>> {
        Ok([width_mm(text, TEXT_MM), TEXT_MM].map(|mm| units(mm).unsigned_abs()).into())
    }
}
