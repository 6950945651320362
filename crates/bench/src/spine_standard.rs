//! The two ways in which the trade measures static spine.

use quarterturn_geometry::Millimetres;

/// A span between two supports and the weight that hangs in its middle.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum SpineStandard {
    /// 28 in and 1.94 lb: ASTM F2031; a "500" sags by 0.500 in.
    #[default]
    Span28,
    /// 26 in and 2 lb: the older AMO standard.
    Span26,
}

impl SpineStandard {
    /// From support to support.
    pub const fn span(self) -> Millimetres {
        Millimetres::from_inches(match self {
            Self::Span28 => 28.0,
            Self::Span26 => 26.0,
        })
    }

    /// The weight in the middle, pounds.
    pub const fn weight_lb(self) -> f64 {
        match self {
            Self::Span28 => 1.94,
            Self::Span26 => 2.0,
        }
    }

    /// How far a shaft sags by the standard `to` that sags by `sag` by this one.
    ///
    /// # Formula
    /// A uniform beam on two supports with the weight P in the middle of the span L sags by δ = P L³ / (48 E I), so
    /// δ₂ = δ₁ (P₂ / P₁) (L₂ / L₁)³: from the newer to the older a factor of 0.825.
    /// # Source
    /// J. M. Gere and S. P. Timoshenko, *Mechanics of Materials*, 1997, appendix G (from memory); the spans and weights
    /// are those of ASTM F2031 and of the older AMO standard (common practice; their text was not at hand).
    pub fn convert(self, sag: Millimetres, to: Self) -> Millimetres {
        let spans = to.span() / self.span();
        sag * (to.weight_lb() / self.weight_lb() * spans * spans * spans)
    }
}
