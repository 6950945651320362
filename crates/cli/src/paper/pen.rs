//! How the shapes of a sheet look: black on white, for any printer.

/// How shapes of one class look.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pen {
    /// The class that it is for.
    pub class: &'static str,
    /// The width of its outline, mm; none without.
    pub stroke_mm: Option<f64>,
    /// The grey of its outline: 0 black, 255 white.
    pub stroke_grey: u8,
    /// The grey of its inside; none without.
    pub fill_grey: Option<u8>,
    /// Dashes and gaps of this length, mm.
    pub dash_mm: Option<f64>,
}

/// All of them.
const PENS: [Pen; 10] = [
    outline("line", 0.3, 0),
    outline("bold", 0.6, 0),
    outline("thin", 0.15, 115),
    outline("faint", 0.15, 178),
    Pen { dash_mm: Some(1.5), ..outline("cut", 0.2, 77) },
    filled("solid", 0),
    filled("paper", 255),
    Pen { stroke_mm: Some(0.3), ..filled("blank", 255) },
    filled("text", 0),
    filled("quiet", 89),
];

const fn outline(class: &'static str, width_mm: f64, grey: u8) -> Pen {
    Pen { class, stroke_mm: Some(width_mm), stroke_grey: grey, fill_grey: None, dash_mm: None }
}

const fn filled(class: &'static str, grey: u8) -> Pen {
    Pen { class, stroke_mm: None, stroke_grey: 0, fill_grey: Some(grey), dash_mm: None }
}

impl Pen {
    /// The pen of a class.
    pub fn of(class: &str) -> Self {
        PENS.into_iter().find(|pen| pen.class == class).unwrap_or(PENS[0])
    }

    /// The rules for SVG.
    pub fn css() -> String {
        let page = "svg { background: #ffffff }\n\
            text { font-family: Helvetica, Arial, \"Liberation Sans\", sans-serif }\n";
        let rules: String = PENS.iter().map(Self::rule).collect();
        page.to_owned() + &rules
    }

    fn rule(&self) -> String {
        let fill = self.fill_grey.map_or_else(|| "none".to_owned(), hex);
        let stroke = self.stroke_mm.map_or_else(
            || "none".to_owned(),
            |width_mm| format!("{}; stroke-width: {width_mm}", hex(self.stroke_grey)),
        );
        let dash = self.dash_mm.map_or_else(String::new, |mm| format!("; stroke-dasharray: {mm}"));
        format!(".{} {{ fill: {fill}; stroke: {stroke}{dash} }}\n", self.class)
    }
}

/// "#737373".
fn hex(grey: u8) -> String {
    format!("#{}", format!("{grey:02x}").repeat(3))
}
