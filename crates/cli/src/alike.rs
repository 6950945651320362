//! Names that a hand paints, or an eye reads, for each other.

/// What is to be said of names that look alike.
pub fn alike(names: &[&str]) -> Vec<String> {
    let painted: Vec<String> = names.iter().map(|name| painted(name)).collect();
    let pairs = (0..names.len()).flat_map(|one| (0..one).map(move |other| (other, one)));
    let twins = pairs.filter(|(one, other)| painted[*one] == painted[*other]);
    twins
        .map(|(one, other)| {
            format!(
                "\"{}\" and \"{}\" look alike on a shaft and are two names here",
                names[one], names[other]
            )
        })
        .collect()
}

/// The name as an eye reads it at the butt: without case, marks and leading zeros, letters of other scripts and
/// digits that look like another letter as that letter.
fn painted(name: &str) -> String {
    let plain: String = name.chars().flat_map(char::to_lowercase).filter_map(plain).collect();
    let stripped = plain.trim_start_matches('0');
    if stripped.is_empty() { plain } else { stripped.to_owned() }
}

fn plain(c: char) -> Option<char> {
    Some(match c {
        '-' | '_' | '.' => return None,
        // Full-width letters and digits stand in the same order as plain ones.
        '\u{ff10}'..='\u{ff5a}' => return char::from_u32(u32::from(c) - 0xfee0).and_then(plain),
        'o' | 'о' | 'ο' => '0',
        'l' | 'i' | 'і' | 'ı' | 'ι' => '1',
        'а' | 'α' => 'a',
        'в' | 'β' => 'b',
        'с' => 'c',
        'е' | 'ε' => 'e',
        'н' => 'h',
        'к' | 'κ' => 'k',
        'м' => 'm',
        'р' | 'ρ' => 'p',
        'ѕ' => 's',
        'т' | 'τ' => 't',
        'х' | 'χ' => 'x',
        'у' | 'υ' => 'y',
        other => other,
    })
}

#[cfg(test)]
mod tests {
    use super::alike;

    #[test]
    fn twins_are_told_and_others_are_not() {
        for (one, other) in [
            ("a", "A"),
            ("1", "01"),
            ("1", "l"),
            ("O", "0"),
            ("R", "r"),
            ("А1", "A1"),
            ("７", "7"),
            ("1-2", "12"),
        ] {
            assert_eq!(alike(&["5", one, other]).len(), 1, "{one} {other}");
        }
        let dozen: Vec<String> = (1..=72).map(|n| n.to_string()).collect();
        let names: Vec<&str> =
            dozen.iter().map(String::as_str).chain(["R", "S", "A", "0"]).collect();
        assert!(alike(&names).is_empty());
    }
}
