//! The holes that were typed, and what can be wrong with them once they are laid on the face.

use std::ops::Range;

use quarterturn_entry::pixels::{self, TypedHole, TypedHoles};
use quarterturn_entry::quantity::Unit;
use quarterturn_entry::{Advising, Located};
use quarterturn_geometry::{Pixel, TailError};
use quarterturn_journal::Fault;
use quarterturn_tuning::ShaftName;

use super::{NoLean, PhotoView};
use crate::args::PhotoArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::input;
use crate::refusal::{END_NOT_RECORDED, end_not_recorded};
use crate::wording::either;

/// The holes and the text that they were read from.
pub struct Holes {
    /// The holes.
    pub typed: TypedHoles,
    marked: Marked,
}

impl Holes {
    /// Reads them from the options or the file that these name; lengths without a unit are in `unit`.
    pub fn read(args: &PhotoArgs, unit: &'static Unit) -> Result<Self, Failure> {
        let marked = match &args.holes {
            Some(file) => {
                let input = input::read(file)?;
                Marked::file(&input.origin, &input.text)
            }
            None => Marked::typed(&args.hole.join("\n")),
        };
        match pixels::holes(&marked.text, unit) {
            Ok(typed) => Ok(Self { typed, marked }),
            Err(Located { fault, span }) => Err(Failure::new(Kind::Data, END_NOT_RECORDED)
                .marking(marked.wrong(span, fault.to_string()))
                .hinting(fault.way_on())),
        }
    }

    /// That marks, holes and tails are in the picture.
    pub fn inside(&self, photo: &PhotoView, size: [u32; 2]) -> Result<(), Failure> {
        let [width, height] = size.map(f64::from);
        let is_outside = |Pixel { x_px, y_px }: Pixel| {
            !(0.0..width).contains(&x_px) || !(0.0..height).contains(&y_px)
        };
        let told = format!("the picture has {width} by {height} pixels");
        if let Some(mark) = photo.marks.iter().position(|mark| is_outside(mark.pixel)) {
            let Pixel { x_px, y_px } = photo.marks[mark].pixel;
            let what = format!("mark {} at {x_px},{y_px} is outside the picture", mark + 1);
            return Err(Failure::new(Kind::Data, what).hinting([told]));
        }
        let outside = |hole: &TypedHole| {
            let tail = hole.tail.as_ref().filter(|tail| is_outside(tail.pixel));
            let own = is_outside(hole.pixel).then(|| hole.pixel_span.clone());
            own.or_else(|| tail.map(|tail| tail.span.clone()))
        };
        match self.typed.0.iter().find_map(outside) {
            Some(span) => Err(self.wrong(span, "this is outside the picture", &told)),
            None => Ok(()),
        }
    }

    /// What the journal finds wrong.
    pub fn refused(&self, faults: &[Fault]) -> Failure {
        let span = |fault: &Fault| self.typed.span(&fault.place);
        end_not_recorded(END_NOT_RECORDED, faults, self.marked.clone(), span)
    }

    /// That the pixel of this hole shows no place.
    pub fn beyond_the_horizon(&self, hole: usize) -> Failure {
        let span = self.typed.0.get(hole).map_or(0..0, |hole| hole.pixel_span.clone());
        let hint = "read the pixel again, and those of the marks";
        self.wrong(span, "by these marks this pixel shows no place of the face", hint)
    }

    /// Why tails tell of no lean.
    pub fn no_lean(&self, why: &NoLean, references: &[ShaftName]) -> Failure {
        let (hole, label, hint) = match why {
            NoLean::NoReference { hole } => (
                *hole,
                "leans are read beside the reference, and its tail is not given".to_owned(),
                format!("give the pixel of the tail of {} as well", either(references)),
            ),
            NoLean::Tail { hole, error } => (*hole, error.to_string(), way_on(error).to_owned()),
        };
        let tail = self.typed.0.get(hole).and_then(|hole| hole.tail.as_ref());
        self.wrong(tail.map_or(0..0, |tail| tail.span.clone()), &label, &hint)
    }

    fn wrong(&self, span: Range<usize>, label: &str, hint: &str) -> Failure {
        let marked = self.marked.clone().wrong(span, label);
        Failure::new(Kind::Data, END_NOT_RECORDED).marking(marked).hinting([hint])
    }
}

/// What to do about a tail that cannot be.
fn way_on(error: &TailError) -> &'static str {
    match error {
        TailError::FromTheSide => {
            "take the picture from straighter ahead and from farther out than the nocks stand; or take this tail out"
        }
        _ => {
            "check how far it sticks out, as s62cm, the pixels of its hole and of the end of its nock, and --lens: a zoom of 2 \
             makes 52mm of 26mm"
        }
    }
}
