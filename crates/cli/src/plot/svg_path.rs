//! The data of an SVG path: each place told from the one before, in whole hundredths, so that nothing adds up.

use super::svg_number::told;

/// Lines and closed shapes one after another.
#[derive(Default)]
pub struct SvgPath {
    data: String,
    at: [i64; 2],
}

impl SvgPath {
    /// Adds a line through these places. Each is a line of its own, also where another one ended: together they would hold
    /// an area that a class may fill.
    pub fn through(&mut self, places: &[[i64; 2]]) {
        for (number, &to) in places.iter().enumerate() {
            let said = if number == 0 { "M".to_owned() + &pair(to) } else { self.step(to) };
            self.data += &said;
            self.at = to;
        }
    }

    /// Adds a shape with these corners.
    pub fn about(&mut self, corners: &[[i64; 2]]) {
        self.through(corners);
        self.data.push('z');
    }

    /// All of it.
    pub fn data(self) -> String {
        self.data
    }

    fn step(&self, to: [i64; 2]) -> String {
        match [to[0] - self.at[0], to[1] - self.at[1]] {
            [x, 0] => format!("h{}", told(x)),
            [0, y] => format!("v{}", told(y)),
            both => format!("l{}", pair(both)),
        }
    }
}

/// Two numbers; a minus parts them as well as a space.
fn pair([x, y]: [i64; 2]) -> String {
    let between = if y < 0 { "" } else { " " };
    format!("{}{between}{}", told(x), told(y))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_place_is_told_from_the_one_before() {
        let mut path = SvgPath::default();
        path.through(&[[1000, 500], [1050, 500]]);
        path.through(&[[1050, 500], [1050, -20]]);
        path.about(&[[0, 0], [25, 30], [30, 10]]);
        assert_eq!(path.data(), "M10 5h.5M10.5 5v-5.2M0 0l.25 .3l.05-.2z");
    }
}
