//! Names as they are compared: what looks alike or reads alike is one letter, and what cannot be seen is none. No name is
//! cleared by this; it only keeps a curing agent from passing under another spelling.

/// What looks like a plain letter or is one with a mark, in small letters. Cyrillic and Greek stand by their looks.
const ALIKE: [(&str, char); 27] = [
    ("àáâãäåāăąǎаα", 'a'),
    ("ьвβ", 'b'),
    ("çćĉċčсϲ", 'c'),
    ("ďđԁ", 'd'),
    ("èéêëēĕėęěеёєε", 'e'),
    ("ĝğġģɡ", 'g'),
    ("ĥħһн", 'h'),
    ("ìíîïĩīĭįıіїι", 'i'),
    ("ĵјϳ", 'j'),
    ("ķкκ", 'k'),
    ("ĺļľŀłӏ", 'l'),
    ("м", 'm'),
    ("ñńņňŉпη", 'n'),
    ("òóôõöøōŏőоοσ", 'o'),
    ("рρ", 'p'),
    ("ԛ", 'q'),
    ("ŕŗřг", 'r'),
    ("śŝşšșѕ", 's'),
    ("ţťŧțтτ", 't'),
    ("ùúûüũūŭůűųυ", 'u'),
    ("ѵν", 'v'),
    ("ŵԝω", 'w'),
    ("хχ", 'x'),
    ("ýÿŷуүγ", 'y'),
    ("źżžζ", 'z'),
    ("⁄", '/'),
    ("＃№", '#'),
];

/// Characters that cannot be seen: they turn, join or hide the text around them.
pub(crate) fn is_unseen(c: char) -> bool {
    matches!(c, '\u{ad}' | '\u{34f}' | '\u{61c}' | '\u{115f}' | '\u{1160}' | '\u{17b4}' | '\u{17b5}' | '\u{180b}'..='\u{180f}'
        | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{3164}' | '\u{fe00}'..='\u{fe0f}'
        | '\u{feff}' | '\u{ffa0}' | '\u{e0000}'..='\u{e0fff}')
}

/// A combining mark: it falls away, and the letter under it stays.
fn is_mark(c: char) -> bool {
    matches!(c, '\u{300}'..='\u{36f}' | '\u{1ab0}'..='\u{1aff}' | '\u{1dc0}'..='\u{1dff}' | '\u{20d0}'..='\u{20ff}')
}

/// A letter or digit in another dress, as the plain one: full width, in a circle, raised, lowered, of the mathematicians.
fn undressed(c: char) -> Option<char> {
    let code = u32::from(c);
    let from = |first: u32, plain: char| char::from_u32(u32::from(plain).checked_add(code.checked_sub(first)?)?);
    // Thirteen alphabets of capitals and small letters, and five rows of digits.
    let letter = |first: u32| {
        let at = code.checked_sub(first)?.checked_rem(52)?;
        if at < 26 {
            char::from_u32(at.checked_add(u32::from('a'))?)
        } else {
            char::from_u32(at.checked_sub(26)?.checked_add(u32::from('a'))?)
        }
    };
    match code {
        0xff01..=0xff5e => from(0xff01, '!'),
        0x2080..=0x2089 => from(0x2080, '0'),
        0x2070 | 0x2074..=0x2079 => from(0x2070, '0'),
        0xb9 => Some('1'),
        0xb2 => Some('2'),
        0xb3 => Some('3'),
        0x2460..=0x2468 => from(0x2460, '1'),
        0x24b6..=0x24cf => from(0x24b6, 'a'),
        0x24d0..=0x24e9 => from(0x24d0, 'a'),
        0x1d400..=0x1d6a3 => letter(0x1d400),
        0x1d7ce..=0x1d7ff => char::from_u32(
            code.checked_sub(0x1d7ce)?
                .checked_rem(10)?
                .checked_add(u32::from('0'))?,
        ),
        _ => None,
    }
}

/// Greek capitals that look like other letters than their small ones do.
const fn capital(c: char) -> Option<char> {
    Some(match c {
        'Ν' => 'n',
        'Η' => 'h',
        'Ρ' => 'p',
        'Υ' => 'y',
        'Χ' => 'x',
        _ => return None,
    })
}

/// A text as it is compared: small letters without marks, in plain dress, without what cannot be seen.
pub fn folded(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for c in text.chars().filter(|c| !is_unseen(*c) && !is_mark(*c)) {
        for c in capital(c).or(undressed(c)).unwrap_or(c).to_lowercase() {
            match c {
                _ if c.is_ascii() => plain.push(c),
                'ß' => plain.push_str("ss"),
                'æ' => plain.push_str("ae"),
                'œ' => plain.push_str("oe"),
                'ﬁ' => plain.push_str("fi"),
                'ﬂ' => plain.push_str("fl"),
                'ﬀ' => plain.push_str("ff"),
                'ﬅ' | 'ﬆ' => plain.push_str("st"),
                _ if is_mark(c) => {}
                _ => plain.push(ALIKE.iter().find(|(all, _)| all.contains(c)).map_or(c, |(_, one)| *one)),
            }
        }
    }
    plain
}

/// What in a name says nitrite or nitrate, in the form of [`squeezed`]. Far from all that is sold: a name without any of
/// these is still asked about by what it is.
const SIGNS: [&str; 22] = [
    "nitrit",
    "nitrat",
    "saltpet",
    "salpet",
    "salpiet",
    "salitre",
    "salnitr",
    "nano2",
    "nano3",
    "kno2",
    "kno3",
    "e249",
    "e250",
    "e251",
    "e252",
    "ins250",
    "pokels",
    "poekels",
    "pinksalt",
    "pinkcur",
    "curingsalt",
    "celerypowder",
];

/// The same where it stands beside a number: a step says "cure 12 hours" and means no agent.
const NUMBERED: [&str; 4] = ["cureno", "cure1", "cure2", "cure#"];

/// Only letters, digits and `#`, so that `salt peter`, `salt-peter` and `E 250` are one word. A nought for the letter o and
/// a one for the letter l, as they are typed or scanned, are left: such a word is unknown, and asked about.
fn squeezed(text: &str) -> String {
    folded(text)
        .chars()
        .filter(|c| c.is_alphanumeric() || *c == '#')
        .collect()
}

/// True for a name that says nitrite or nitrate, however it is spelled. What it does not find may be a cure all the same.
pub fn names_agent(name: &str) -> bool {
    let plain = squeezed(name);
    NUMBERED.iter().any(|sign| plain.contains(sign)) || has_word(name, "cure") || names_nitrite(name)
}

/// The same for a sentence, where to cure is an act.
pub fn names_nitrite(text: &str) -> bool {
    let plain = squeezed(text);
    let words = ["nitre", "niter", "pokel", "nps"];
    SIGNS.iter().any(|sign| plain.contains(sign)) || words.iter().any(|word| has_word(text, word))
}

fn has_word(text: &str, word: &str) -> bool {
    folded(text).split(|c: char| !c.is_alphanumeric()).any(|w| w == word)
}

#[cfg(test)]
mod tests {
    use super::{folded, names_agent};

    #[test]
    fn one_name_under_many_spellings() {
        for name in [
            "pinksalt",
            "Pink  Salt",
            "PINK-SALT",
            "p\u{ad}ink s\u{200b}alt",
            "рink sаlt",
            "ｐｉｎｋ ｓａｌｔ",
            "𝐩𝐢𝐧𝐤 salt",
            "E250",
            "E 250",
            "e-250",
            "NaNO2",
            "NaNO₂",
            "Pökelsalz",
            "Poekelsalz",
            "po\u{308}kelsalz",
            "salt peter",
            "Salpêtre",
            "nitre",
            "ΝΙΤRΙΤΕ",
            "cure",
            "Cure #2",
        ] {
            assert!(names_agent(name), "{name} is {}", folded(name));
        }
    }

    #[test]
    fn plain_food_says_nothing_of_it() {
        for name in [
            "juniper",
            "secure lid spice",
            "sea salt",
            "pimentón",
            "e25 flour",
            "obscure herbs",
        ] {
            assert!(!names_agent(name), "{name} is {}", folded(name));
        }
    }
}
