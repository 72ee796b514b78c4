//! The rules a recipe keeps, for a person typing, a link, a backup and a stored record alike.

use super::method::Method;
use super::model::{Cure, Do, Eaten, Line, Recipe, Share, Step};
use crate::pantry::{self, Agent, Group, MADE, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Fraction, Problem, RecipeList, RecipeWrong};
use crate::tables::SOUNDS_LIKE_CURE;
use rust_decimal::{Decimal, dec};

/// Most lines in a recipe.
pub const MOST_LINES: usize = 40;
/// Most steps in a recipe.
pub const MOST_STEPS: usize = 30;
/// Most characters in notes.
pub const MOST_TEXT: usize = 2000;
/// Most characters in a name.
pub const MOST_NAME: usize = 60;
/// Most characters in the note of a step.
pub const MOST_NOTE: usize = 200;
/// Most texts that were not understood.
pub const MOST_UNREAD: usize = 20;
/// Most curing agents.
pub const MOST_CURES: usize = 2;

/// Highest aim taken, ppm; above it nothing is a cure for food.
const HIGHEST_AIM: u32 = 3000;

impl Recipe {
    /// Everything that is wrong with it, at places within it; empty when it can be used.
    pub fn problems(&self) -> Vec<Problem> {
        let mut found = Vec::new();
        found.extend(name(&self.name).err().map(|p| p.at("name")));
        found.extend(tag(&self.tag, 0).err().map(|p| p.at("tag")));
        found.extend(text(&self.notes, MOST_TEXT).err().map(|p| p.at("notes")));
        for (list, kind, len, most) in [
            ("cures", RecipeList::Cures, self.cures.len(), MOST_CURES),
            ("lines", RecipeList::Lines, self.lines.len(), MOST_LINES),
            ("steps", RecipeList::Steps, self.steps.len(), MOST_STEPS),
            ("unread", RecipeList::Unread, self.unread.len(), MOST_UNREAD),
        ] {
            if len > most {
                found.push(Problem::of(Code::TooLong, RecipeWrong::RecipeTooMany { list: kind, most }).at(list));
            }
        }
        for (i, cure) in self.cures.iter().enumerate() {
            found.extend(cure.problems().into_iter().map(|p| p.at(&format!("cures[{i}]"))));
        }
        for (i, line) in self.lines.iter().enumerate() {
            found.extend(line.problem(self.method).map(|p| p.at(&format!("lines[{i}]"))));
        }
        for (i, step) in self.steps.iter().enumerate() {
            found.extend(step.problem().map(|p| p.at(&format!("steps[{i}]"))));
        }
        for (i, unread) in self.unread.iter().enumerate() {
            let bad = text(unread, MOST_NOTE).err().or_else(|| {
                let empty = unread.trim().is_empty();
                empty.then(|| Problem::of(Code::Missing, RecipeWrong::UnreadEmpty))
            });
            found.extend(bad.map(|p| p.at(&format!("unread[{i}]"))));
        }
        if self.eaten == Eaten::HungForMonths {
            let cooks = self.steps.iter().any(|s| matches!(s.act, Do::Cook | Do::DryOut));
            let why = match self.method {
                Method::Rub if cooks => Some(RecipeWrong::CookedHangs),
                Method::Rub => None,
                _ => Some(RecipeWrong::HangsWithoutRub),
            };
            found.extend(why.map(|why| Problem::of(Code::Conflict, why).at("eaten")));
        }
        found.extend(take(self.method, self.take).map(|p| p.at("take")));
        if self.method.has_brine() && !self.lines.iter().any(Line::is_water) {
            found.push(Problem::of(Code::Missing, RecipeWrong::BrineWantsWater).at("lines"));
        }
        found
    }
}

impl Cure {
    /// Everything that is wrong with it.
    pub fn problems(&self) -> Vec<Problem> {
        let mut found = Vec::new();
        if pantry::ingredient(&self.item).is_none_or(|i| i.group != Group::Cure) {
            let item = crate::quantity::shorten(&self.item);
            found.push(Problem::of(Code::Unknown, RecipeWrong::NoSuchCure { item }).at("item"));
        }
        let (nitrite, nitrate) = (self.nitrite.base(), self.nitrate.base());
        let agent = Agent::printed(self.nitrite, Some(self.nitrate));
        let pure = pantry::ingredient(&self.item).filter(|i| i.is_pure());
        match pure {
            Some(item) => found.extend(self.is_not(item)),
            None => found.extend(agent.problem()),
        }
        found.extend(self.made.and_then(|m| m.problem(agent)).map(|p| p.at("nitrite")));
        if self.made.is_some() != (self.item == MADE) {
            found.push(Problem::of(Code::Missing, RecipeWrong::MixNotKnown).at("item"));
        }
        if nitrite.is_zero() && nitrate.is_zero() {
            found.push(Problem::of(Code::Conflict, RecipeWrong::CureHoldsNone).at("nitrite"));
        }
        let aim = self.aim.base().times(dec!(10_000)).unwrap_or(Decimal::MAX);
        if aim.is_zero() {
            found.push(Problem::of(Code::TooSmall, RecipeWrong::AimNought).at("aim"));
        }
        if aim > Decimal::from(HIGHEST_AIM) {
            found.push(Problem::of(Code::TooLarge, RecipeWrong::AimTooHigh { most: HIGHEST_AIM }).at("aim"));
        }
        let strength = if nitrite.is_zero() { nitrate } else { nitrite };
        if !strength.is_zero() && self.aim.base() >= strength {
            found.push(Problem::of(Code::Conflict, RecipeWrong::AimAsStrong).at("aim"));
        }
        found
    }
}

impl Cure {
    /// What is wrong with the strength of a pure salt: it has one.
    fn is_not(&self, item: &pantry::Ingredient) -> Option<Problem> {
        let is = |printed: Fraction, text: &str| Decimal::from_str_exact(text).is_ok_and(|own| own == printed.base());
        let same = is(self.nitrite, item.nitrite) && is(self.nitrate, item.nitrate);
        (!same).then(|| Problem::of(Code::Conflict, RecipeWrong::PureHasOneStrength).at("nitrite"))
    }
}

impl Line {
    /// True for the water of a brine.
    pub fn is_water(&self) -> bool {
        self.item == "water"
    }

    fn problem(&self, method: Method) -> Option<Problem> {
        let own = self.item == OWN;
        if let Err(problem) = text(&self.allergens, MOST_NOTE) {
            return Some(problem.at("allergens"));
        }
        if !own && !self.allergens.is_empty() {
            return Some(Problem::of(Code::Conflict, RecipeWrong::AllergensKnown).at("allergens"));
        }
        if !own && self.name.is_empty() && !self.agent.is_unknown() {
            return Some(Problem::of(Code::Conflict, RecipeWrong::AgentKnown).at("agent"));
        }
        if own {
            if let Err(problem) = name(&self.name) {
                return Some(problem.at("name"));
            }
        } else {
            match pantry::ingredient(&self.item) {
                None => {
                    let item = crate::quantity::shorten(&self.item);
                    return Some(Problem::of(Code::Unknown, RecipeWrong::NotInPantry { item }).at("item"));
                }
                Some(i) if i.group == Group::Cure => {
                    return Some(Problem::of(Code::Conflict, RecipeWrong::CureAmongLines).at("item"));
                }
                Some(_) => {}
            }
            if let Err(problem) = text(&self.name, MOST_NAME) {
                return Some(problem.at("name"));
            }
        }
        if says_cure(&self.name) {
            return Some(Problem::of(Code::Conflict, RecipeWrong::SoundsLikeCure).at("name"));
        }
        if method.takes() && matches!(self.share, Share::MeatAndWater(_)) {
            return Some(Problem::of(Code::Conflict, RecipeWrong::NothingEvensOut).at("share"));
        }
        let brine_only = matches!(self.share, Share::Brine(_) | Share::MeatAndWater(_));
        if brine_only && !method.has_brine() {
            return Some(Problem::of(Code::Conflict, RecipeWrong::NoBrineHere).at("share"));
        }
        // Ice water goes into mince, as a share of the meat.
        if self.is_water() && (brine_only || method == Method::Rub) {
            let how = if !method.has_brine() {
                RecipeWrong::WaterWithoutBrine
            } else {
                RecipeWrong::WaterByGreenWeight
            };
            return Some(Problem::of(Code::Conflict, how).at("share"));
        }
        match self.share {
            Share::GreenWeight(f) | Share::MeatAndWater(f) | Share::Brine(f)
                if f.base() > Decimal::ONE_HUNDRED && !self.is_water() =>
            {
                Some(Problem::of(Code::TooLarge, RecipeWrong::LineTooMuch).at("share"))
            }
            _ => None,
        }
    }
}

/// What is wrong with the share of the brine that goes in: 1 to 60 % where the method has one, else none.
pub fn take(method: Method, take: Option<Fraction>) -> Option<Problem> {
    match take {
        None if method.takes() => Some(Problem::of(Code::Missing, RecipeWrong::TakeMissing)),
        Some(f) if method.takes() && !(Decimal::ONE..=dec!(60)).contains(&f.base()) => {
            Some(Problem::of(Code::TooLarge, RecipeWrong::TakeOutOfBounds))
        }
        Some(_) if !method.takes() => Some(Problem::of(Code::Conflict, RecipeWrong::TakeUnasked)),
        _ => None,
    }
}

impl Step {
    fn problem(&self) -> Option<Problem> {
        text(&self.note, MOST_NOTE).err().map(|p| p.at("note")).or_else(|| {
            let too_soon = self.turn_every.is_some_and(|every| every.base() < dec!(30));
            let turned_too_often = self
                .turn_every
                .zip(self.lasts)
                .is_some_and(|(every, lasts)| lasts.base().over(every.base()).is_none_or(|n| n > dec!(200)));
            // A cure without hours of its own lasts as long as the clock says.
            let no_length = self.turn_every.is_some() && self.lasts.is_none() && self.act != Do::Cure;
            (too_soon || turned_too_often || no_length)
                .then(|| Problem::of(Code::Conflict, RecipeWrong::TurnedTooOften).at("turn_every"))
        })
    }
}

/// A name: 1 to 60 characters of text.
///
/// # Errors
/// [`Code::Missing`], [`Code::TooLong`] or [`Code::NotRead`].
pub fn name(value: &str) -> Result<(), Problem> {
    if value.chars().all(|c| c.is_whitespace() || is_joiner(c)) {
        return Err(Problem::of(Code::Missing, RecipeWrong::NameMissing { most: MOST_NAME }));
    }
    if value.contains('\n') {
        return Err(Problem::of(Code::NotRead, RecipeWrong::NameOneLine));
    }
    text(value, MOST_NAME)
}

/// True for a name that says nitrite or nitrate: such a thing is weighed as a cure or not at all.
fn says_cure(value: &str) -> bool {
    let lower = value.to_ascii_lowercase();
    let is_known = || {
        let cures = pantry::ingredients().iter().filter(|i| i.group == Group::Cure);
        cures
            .flat_map(|i| i.names)
            .any(|n| n.eq_ignore_ascii_case(value.trim()))
    };
    lower.trim() == "cure" || SOUNDS_LIKE_CURE.iter().any(|w| lower.contains(w)) || is_known()
}

/// Text of at most `most` characters without control characters other than a line break.
///
/// # Errors
/// [`Code::TooLong`] or [`Code::NotRead`].
pub fn text(value: &str, most: usize) -> Result<(), Problem> {
    let long = value.chars().count();
    if long > most {
        return Err(Problem::of(Code::TooLong, RecipeWrong::TextTooLong { long, most }));
    }
    if value.chars().any(|c| (c.is_control() && c != '\n') || is_hidden(c)) {
        return Err(Problem::of(Code::NotRead, RecipeWrong::HiddenCharacter));
    }
    Ok(())
}

/// Characters that turn or hide the text around them, or that are letters and show nothing: what is read must be what is
/// there.
fn is_hidden(c: char) -> bool {
    matches!(c, '\u{ad}' | '\u{34f}' | '\u{115f}' | '\u{1160}' | '\u{180e}' | '\u{200b}' | '\u{200e}'..='\u{200f}'
        | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{2800}' | '\u{3164}' | '\u{feff}' | '\u{ffa0}')
}

/// What holds an emoji family together, and letters of some scripts together or apart.
const fn is_joiner(c: char) -> bool {
    matches!(c, '\u{200c}' | '\u{200d}')
}

/// Two capital letters, with up to `digits` digits behind them.
///
/// # Errors
/// [`Code::NotRead`].
pub fn tag(value: &str, digits: usize) -> Result<(), Problem> {
    let (letters, number) = value.split_at_checked(2).unwrap_or((value, ""));
    let good = letters.len() == 2
        && letters.bytes().all(|b| b.is_ascii_uppercase())
        && number.len() <= digits
        && number.bytes().all(|b| b.is_ascii_digit());
    if good {
        Ok(())
    } else {
        Err(Problem::of(Code::NotRead, RecipeWrong::TagForm))
    }
}
