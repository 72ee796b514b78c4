//! A line with the answers so far: what it is, how many grams, and what is still to be asked.

use super::amount::{Amount, times};
use super::asked::{Answers, Asked, UNSURE};
use super::facts::{LineFlag, Offer, Question, RowOf, Taken};
use super::line::Line;
use super::model::ReadStep;
use super::words::{Sort, Word};
use crate::dose::OwnSpoon;
use crate::pantry::{self, Group, Ingredient};
use crate::quantity::exact::Exact;
use crate::quantity::{Fraction, Mass, Range, plain};
use rust_decimal::{Decimal, dec};

/// A US teaspoon in millilitres, exact.
const TEASPOON: Decimal = dec!(4.92892159375);

/// Two weights that differ by no more than this proportion are one, rounded (judgement).
const ROUNDED: Decimal = dec!(0.05);

/// From here on, per cent, it is the mix that is said and not the nitrite in it (judgement; no rule allows half of it).
const AIM: Decimal = dec!(0.1);

/// A line with what is known of it.
#[derive(Clone, Debug)]
pub struct Weighed<'a> {
    /// As read.
    pub line: &'a Line,
    /// What it can still be: one row, or several until it is asked. Empty for what the pantry has not.
    pub items: Vec<&'static Ingredient>,
    /// Grams of it, as said; nothing for a share or where it cannot be weighed.
    pub grams: Option<Range>,
    /// Per cent, where it is said in per cent.
    pub percent: Option<Range>,
    /// Per cent of nitrite that the meat is to hold, where that is said of a cure.
    pub aim: Option<Range>,
    /// Grams of the meat, where two weights of it stand here.
    pub meat: Option<Range>,
    /// Why it cannot be weighed, or what is to be known of it.
    pub note: Option<LineFlag>,
    /// What is done, where it is a step.
    pub deeds: Vec<ReadStep>,
    /// Which of two readings of its number was chosen; nothing while it is open.
    pub large: Option<bool>,
    /// Per cent of nitrite that its packet says, where that was asked.
    pub printed: Option<Fraction>,
    /// Which of several it is, nobody knows: said so.
    unsure: bool,
    /// Questions on it.
    pub asks: Vec<Asked>,
    /// The rule of the settings: where it is of one country, so are its measures.
    profile: String,
    /// Which unit its base is in, of those the word can mean.
    base_unit: Option<usize>,
    /// Whether the base of its sentence is for it as well; nothing until it is answered.
    shares: Option<bool>,
}

/// Reckons a line. `own` are the user's own level spoons, which stand in place of the general ranges.
pub fn weigh<'a>(line: &'a Line, answers: &Answers<'_>, own: &[OwnSpoon], profile: &str) -> Weighed<'a> {
    let mut weighed = Weighed {
        line,
        items: line.meaning.as_ref().map(|m| m.items.clone()).unwrap_or_default(),
        grams: None,
        percent: None,
        aim: None,
        meat: None,
        note: None,
        deeds: Vec::new(),
        large: None,
        printed: None,
        unsure: false,
        asks: Vec::new(),
        profile: String::new(),
        base_unit: None,
        shares: None,
    };
    if let (Taken::Meat, Some(amount)) = (line.taken, &line.amount) {
        weighed.twofold(amount, answers);
        weighed.two_weights(amount, answers);
    }
    let Some(amount) = line.amount.as_ref().filter(|_| line.taken == Taken::Item) else {
        if line.by_packet {
            weighed.which(Sort::Mass, answers);
            weighed.grams_of_cure(answers);
        }
        return weighed;
    };
    weighed.profile = profile.to_owned();
    weighed.which(amount.sort(), answers);
    let mut unit = None;
    let mut large = None;
    for (number, word) in &amount.parts {
        if word.note.contains('|') {
            unit = weighed.measure(word, answers);
        }
        let _ = number;
    }
    weighed.twofold(amount, answers);
    large = large.or(weighed.large);
    let sum = amount.sum(unit, large);
    match amount.sort() {
        Sort::Mass => {
            weighed.grams = sum;
            // Ounces of what is poured may be fluid ounces.
            let ounces = amount.parts.iter().any(|(_, u)| u.words.contains(&"oz"));
            let poured = weighed.items.first().filter(|i| i.group == Group::Liquid && ounces);
            if let (Some(sum), Some(item)) = (sum, poured) {
                weighed.grams = item.spoon.and_then(|s| s.range()).and_then(|spoon| {
                    let fluid = sum.high.times(spoon.high)?.times(dec!(6))?.over(dec!(28.349523125))?;
                    Some(Range::new(sum.low.min(fluid), sum.typical, sum.high.max(fluid)))
                });
            }
        }
        // Of a cure the law and the books say the nitrite in the meat.
        Sort::Percent
            if amount.unit() == "ppm"
                && weighed.items.iter().any(|i| i.group == Group::Cure)
                && sum.is_some_and(|s| s.high < AIM) =>
        {
            weighed.aim = sum;
        }
        Sort::Percent => weighed.percent = sum,
        Sort::Volume | Sort::Pinch => {
            let spoons = match amount.sort() {
                Sort::Pinch => sum,
                _ => sum.and_then(|s| s.map(|ml| ml.over(TEASPOON))),
            };
            let level = weighed.level(amount, answers, own);
            weighed.grams = spoons.zip(level).and_then(|(n, level)| times(n, level));
            let letters = ["us_cup", "clove"].map(Offer::measure);
            if line.cup_or_clove() && weighed.pick("unit", Question::Letter, letters, answers) == Some(1) {
                let each = weighed.items.iter().filter_map(|i| i.each()).reduce(hull);
                let count = amount.parts.first().map(|(number, _)| number.value);
                weighed.grams = count.zip(each).and_then(|(n, each)| times(n, each));
            }
            if weighed.grams.is_none() {
                weighed.note = Some(LineFlag::SpoonUnknown);
            }
        }
        Sort::Count => {
            let each = weighed.items.iter().filter_map(|i| i.each()).reduce(hull);
            weighed.grams = sum.zip(each).and_then(|(n, each)| times(n, each));
            if weighed.grams.is_none() {
                weighed.note = Some(LineFlag::PieceUnknown);
                weighed.bare(amount, answers, own);
            }
        }
        _ => weighed.note = Some(LineFlag::Unweighable),
    }
    weighed.of_a_cure(amount, answers);
    weighed.grams = weighed.grams.and_then(|g| g.map(|g| Some(g.half_away(6))));
    weighed.based(answers);
    weighed.again(answers, own);
    weighed.unused(answers);
    if line.corrected {
        weighed.note = weighed.note.or(Some(LineFlag::OneOfTwo));
    }
    // What nobody need be asked, or nobody knows, is the usual one, with the spoon of any.
    if weighed.unsure || line.meaning.as_ref().is_some_and(|m| m.ask.is_empty() && !m.food) {
        weighed.items.truncate(1);
    }
    weighed
}

/// From the least to the most of both.
pub fn hull(a: Range, b: Range) -> Range {
    Range::new(a.low.min(b.low), a.typical, a.high.max(b.high))
}

impl Weighed<'_> {
    /// Which of the measures of a word: by the country of the settings, else asked, once for the whole text.
    fn measure(&mut self, word: &Word, answers: &Answers<'_>) -> Option<usize> {
        let names: Vec<&'static str> = word.note.split('|').collect();
        if self.by_case(word) {
            return Some(0);
        }
        let country = match self.profile.as_str() {
            "us-home" | "us-plant" => "us_",
            "uk" => "imperial_",
            _ => "",
        };
        let here = names.iter().position(|n| !country.is_empty() && n.starts_with(country));
        if here.is_some() {
            return here;
        }
        let usual = *word.words.first()?;
        let asked = Asked::new(
            format!("unit:{usual}"),
            Question::Measure,
            names.iter().map(|n| Offer::measure(n)),
            answers,
        );
        let chosen = asked.chosen();
        self.asks.push(asked);
        chosen
    }

    /// True for a `T` or a `t` in a text that writes both cases. Of a cure it is asked all the same: three times as much.
    fn by_case(&self, word: &Word) -> bool {
        let cased = self.line.cased;
        let told = word.words.contains(&"T") && cased.small || word.words.contains(&"t") && cased.capitals;
        told && !self.items.iter().any(|i| i.group == Group::Cure)
    }

    /// `2 kg (5 lb)`, `2 backstraps (about 4 lb)`: which of two weights of the meat.
    fn two_weights(&mut self, amount: &Amount, answers: &Answers<'_>) {
        let weight = |a: &Amount| a.sum(None, None).filter(|_| a.sort() == Sort::Mass);
        let all = self.line.count.filter(|_| self.line.each_or_all);
        let other = match all {
            Some(count) => weight(amount).and_then(|w| times(w, count)),
            None => self.line.again.as_ref().and_then(weight),
        };
        let (Some(first), Some(then)) = (weight(amount), other) else {
            return;
        };
        let apart = first
            .typical
            .less(then.typical)
            .and_then(|d| d.abs().over(first.typical));
        let rounded = apart.is_some_and(|a| a <= ROUNDED);
        self.meat = if rounded {
            None
        } else {
            self.pick_grams(first, then, answers)
        };
    }

    /// Which of two amounts; both, until it is answered.
    fn pick_grams(&mut self, first: Range, then: Range, answers: &Answers<'_>) -> Option<Range> {
        let texts = [first, then].map(|g| Offer::said(format!("{} g", plain(g.typical.half_away(1)))));
        Some(match self.pick("amount", Question::Amounts, texts, answers) {
            Some(0) => first,
            Some(_) => then,
            None => hull(first, then),
        })
    }

    /// A pinch of saltpetre: a cure that cannot be weighed by what is said is asked for by weight.
    fn of_a_cure(&mut self, amount: &Amount, answers: &Answers<'_>) {
        let cure = matches!(self.items.as_slice(), [one] if one.group == Group::Cure);
        let unknown =
            amount.sort() == Sort::Pinch || self.grams.is_none() && self.percent.is_none() && self.aim.is_none();
        if !cure || !unknown || self.line.again.is_some() || self.line.strength_alone() {
            return;
        }
        self.grams_of_cure(answers);
        if self.grams.is_some() {
            self.note = None;
        }
    }

    fn grams_of_cure(&mut self, answers: &Answers<'_>) {
        let read = |text: &str| Mass::read(text, Some("g")).ok().filter(|m| !m.base().is_zero());
        let key = format!("grams:{}", self.line.text);
        let (asked, given) = Asked::typed(&key, Question::Grams, Vec::new(), answers, read);
        self.asks.push(asked);
        self.grams = given.map(|m| Range::point(m.base()));
    }

    /// `1,480 g`: which of its two readings.
    fn twofold(&mut self, amount: &Amount, answers: &Answers<'_>) {
        let both = amount
            .parts
            .iter()
            .find_map(|(number, _)| Some([number.value.typical, number.other?]));
        if let Some(both) = both {
            self.large = self
                .pick("number", Question::Number, both.map(plain).map(Offer::said), answers)
                .map(|i| i == 1);
        }
    }

    /// Asks a question of this line, and takes the answer that was given: its place among the choices.
    fn pick(
        &mut self,
        what: &str,
        ask: Question,
        choices: impl IntoIterator<Item = (String, Offer)>,
        answers: &Answers<'_>,
    ) -> Option<usize> {
        let asked = Asked::new(format!("{what}:{}", self.line.text), ask, choices.into_iter(), answers);
        let chosen = asked.chosen();
        self.asks.push(asked);
        chosen
    }

    /// What it is for: the unit of its base, and whether the base of its sentence is for it too.
    fn based(&mut self, answers: &Answers<'_>) {
        let line = self.line;
        if let (Some((_, said)), Some(_)) = (&line.shared, self.grams) {
            let base = said.clone();
            let choices = [
                ("per".to_owned(), Offer::Shared { base: base.clone() }),
                ("all".to_owned(), Offer::All),
            ];
            let ask = Question::Shared { base };
            let asked = Asked::new(format!("share:{}", line.text), ask, choices.into_iter(), answers);
            self.shares = asked.chosen().map(|at| at == 0);
            self.asks.push(asked);
        }
        let first = self.base().and_then(|base| base.parts.first());
        let Some((twofold, unit)) = first.map(|(number, unit)| (number.other.is_some(), *unit)) else {
            return;
        };
        if unit.note.contains('|') {
            self.base_unit = self.measure(unit, answers);
        }
        if twofold {
            self.grams = None;
            self.note = Some(LineFlag::BaseTwofold);
        }
    }

    /// For how much of the meat or the water it is; nothing for all of it. Until it is answered, a base that may be
    /// shared counts.
    pub fn base(&self) -> Option<&Amount> {
        let own = self
            .line
            .base
            .as_ref()
            .filter(|_| self.line.is_partial())
            .map(|(a, _)| a);
        let shared = self
            .line
            .shared
            .as_ref()
            .filter(|_| self.shares != Some(false))
            .map(|(a, _)| a);
        own.or(shared)
    }

    /// The same as a range, grams or millilitres, and true while it is not settled whether it counts.
    pub fn per(&self) -> Option<(Range, Sort, bool)> {
        let base = self.base()?;
        let open = self.line.base.is_none() && self.shares.is_none();
        Some((base.sum(self.base_unit, None)?, base.sort(), open))
    }

    /// `25 g sea salt (or 35 of coarse)`: what nothing was made of and may change how much it is. Of a cure only figures: of
    /// its other words it is asked whether they are a cure.
    fn unused(&mut self, answers: &Answers<'_>) {
        let words = &self.line.unused;
        let cure = self.items.iter().any(|i| i.group == Group::Cure);
        let figure = words.contains(|c: char| c.is_ascii_digit());
        let counts = self.grams.is_some() || self.percent.is_some() || self.aim.is_some();
        let asked = self.asks.iter().any(|a| a.key.starts_with("amount:"));
        let settled = asked || !counts || self.line.strength.is_some() || self.line.corrected;
        if words.is_empty() || cure && !figure || settled {
            return;
        }
        let choices = [("as_read", Offer::AsRead), ("not_as_read", Offer::NotAsRead)];
        let choices = choices.map(|(value, offer)| (value.to_owned(), offer));
        let ask = Question::Unused { words: words.clone() };
        if self.pick("unused", ask, choices, answers) == Some(1) {
            self.grams = None;
            self.percent = None;
            self.aim = None;
            self.note = Some(LineFlag::Unweighable);
            if cure {
                self.grams_of_cure(answers);
            }
        }
    }

    /// `salt, 30`: nobody counts salt. In which unit, it is asked.
    fn bare(&mut self, amount: &Amount, answers: &Answers<'_>, own: &[OwnSpoon]) {
        let number = matches!(amount.parts.as_slice(), [(_, unit)] if unit.words.contains(&"each"))
            && !self.line.measure.contains(char::is_alphabetic);
        let poured = self
            .items
            .first()
            .is_some_and(|i| matches!(i.group, Group::Salt | Group::Sugar));
        if !number || !poured {
            return;
        }
        let units = ["g", "oz", "tsp", "tbsp", "cup"];
        let said = units.map(|unit| Offer::said(format!("{} {unit}", self.line.measure)));
        let chosen = self
            .pick("amount", Question::Bare, said, answers)
            .and_then(|at| units.get(at));
        let unit = chosen.and_then(|unit| {
            let sorts = [Sort::Mass, Sort::Volume];
            sorts.iter().find_map(|sort| super::words::front(*sort, unit))
        });
        let Some((unit, _)) = unit else { return };
        let alone = Line {
            amount: Some(Amount {
                parts: amount.parts.iter().map(|(number, _)| (number.clone(), unit)).collect(),
                ..amount.clone()
            }),
            ..self.line.clone()
        };
        let read = weigh(&alone, answers, own, &self.profile);
        (self.grams, self.note) = (read.grams, read.note);
        let asked = read
            .asks
            .into_iter()
            .filter(|a| !self.asks.iter().any(|b| b.key == a.key));
        let asked: Vec<Asked> = asked.collect();
        self.asks.extend(asked);
    }

    /// Which row of the pantry, where the name can mean several.
    fn which(&mut self, sort: Sort, answers: &Answers<'_>) {
        let Some(meaning) = &self.line.meaning else { return };
        if sort == Sort::Count {
            let counted: Vec<_> = self.items.iter().filter(|i| i.each().is_some()).copied().collect();
            // What is counted is whole: the first that is sold so.
            // What nobody counts stays what it is.
            if counted.is_empty() {
                return;
            }
            self.items = counted
                .iter()
                .find(|i| i.key.ends_with("whole"))
                .or(counted.first())
                .copied()
                .into_iter()
                .collect();
            return;
        }
        let spoon = matches!(sort, Sort::Volume | Sort::Pinch);
        if meaning.items.len() < 2 {
            return;
        }
        if meaning.spoon_only && !spoon {
            self.items.truncate(1);
            return;
        }
        if meaning.ask.is_empty() {
            return;
        }
        let row = |i: &&Ingredient| (i.key.to_owned(), Offer::Row { row: RowOf::of(i) });
        let choices = self.items.iter().map(|i| row(&&**i));
        // Whether it is a cure is never passed over.
        let cure = self.items.iter().any(|i| i.group == Group::Cure);
        let unsure = (!cure).then(|| (UNSURE.to_owned(), Offer::Unsure));
        let choices = choices.chain(unsure);
        let asked = Asked::new(
            format!("item:{}", self.line.text),
            Question::Which { ask: meaning.ask },
            choices,
            answers,
        );
        self.unsure = asked.answer.as_deref() == Some(UNSURE);
        if let Some(item) = asked.chosen().and_then(|at| self.items.get(at).copied()) {
            self.items = vec![item];
        }
        self.asks.push(asked);
    }

    /// Grams of a level teaspoon of it, over all that it can still be.
    fn level(&mut self, amount: &Amount, answers: &Answers<'_>, own: &[OwnSpoon]) -> Option<Range> {
        let is_it = |s: &&OwnSpoon| match self.items.as_slice() {
            [] => pantry::own_name(&s.item).is_some_and(|name| name.eq_ignore_ascii_case(&self.line.own)),
            [one] => s.item == one.key,
            _ => false,
        };
        if let Some(spoon) = own.iter().find(is_it) {
            let third = |grams: Decimal| grams.over(dec!(3));
            return if spoon.tablespoon {
                spoon.range().map(third)
            } else {
                Some(spoon.range())
            };
        }
        if self.items.iter().any(|i| i.key == "sugar-brown") {
            let packs: Vec<&Word> = super::words::of(Sort::Pack).collect();
            let pack = match amount.pack {
                Some(pack) => Some(pack),
                None => {
                    // Not sure: anything from loose to packed.
                    let names = packs.iter().map(|p| Offer::measure(p.note));
                    let offers = names.chain([(UNSURE.to_owned(), Offer::Unsure)]);
                    let chosen = self.pick("pack", Question::Packed, offers, answers);
                    chosen.and_then(|at| packs.get(at).copied())
                }
            };
            if let Some(range) = pack.and_then(Word::range) {
                return Some(range);
            }
        }
        // A cure by its packet is salt for the most part, and a spoon of it weighs what one of cure no. 1 does.
        let like = |i: &&'static Ingredient| {
            if i.key == pantry::PACKET {
                pantry::ingredient("cure-1")
            } else {
                Some(*i)
            }
        };
        self.items.iter().filter_map(|i| like(i)?.spoon?.range()).reduce(hull)
    }

    /// `1 tbsp (15 g)`: the weight counts where both agree; else which of them is asked.
    fn again(&mut self, answers: &Answers<'_>, own: &[OwnSpoon]) {
        let Some(second) = &self.line.again else { return };
        let alone = Line {
            amount: Some(second.clone()),
            again: None,
            ..self.line.clone()
        };
        let other = weigh(&alone, answers, own, &self.profile);
        let (Some(first), Some(then)) = (self.grams, other.grams) else {
            self.note = Some(LineFlag::OneOfTwo);
            return;
        };
        let meet = first.low <= then.high && then.low <= first.high;
        let weight = second.sort() == Sort::Mass;
        // An ounce and its grams differ by their rounding: it may be either.
        let both = weight && self.line.amount.as_ref().is_some_and(|a| a.sort() == Sort::Mass);
        let apart = first
            .typical
            .less(then.typical)
            .and_then(|d| d.abs().over(first.typical));
        if both && apart.is_some_and(|a| a <= ROUNDED) {
            self.grams = Some(hull(first, then));
            return;
        }
        if meet {
            if weight {
                // The spoon has nothing left to settle.
                self.grams = Some(then);
                self.items = other.items;
                self.asks = other.asks;
            }
            return;
        }
        self.grams = self.pick_grams(first, then, answers);
    }
}

/// The row it is taken for, when only one is left.
pub fn settled(items: &[&'static Ingredient]) -> Option<&'static Ingredient> {
    match items {
        [one] => pantry::ingredient(one.key),
        _ => None,
    }
}
