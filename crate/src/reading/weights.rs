//! What the amounts of a line are: of one piece or of all, of the meat or of its water, or the strength of a cure.

use super::amount::Amount;
use super::facts::{Of, Taken};
use super::figures::{aside, bracketed, lead};
use super::line::Line;
use super::names::{Meaning, Names};
use super::said::MOST_ATTRIBUTES;
use super::scan::{Found, What};
use super::token::{Token, tokens};
use super::words::{Sort, front, of};
use crate::pantry::{Group, names_agent, names_nitrite};
use crate::quantity::exact::Exact;
use crate::tables::{
    ALL_MEAT, AND_WATER, APIECE, BEFORE_APIECE, BESIDE_STRENGTH, ENDS_APIECE, PART_OF, PURE, TOGETHER,
};
use rust_decimal::Decimal;
use rust_decimal::dec;

/// From here on a per cent on its own is the strength of a cure, and not a share of the meat (judgement).
const STRONG: Decimal = dec!(4);

impl Line {
    /// `3 x 400 g`, `two 5-lb roasts`, `4 pheasants (2¼ lb each)`, `1 goose, 8 lb`: pieces, and the weight of one or of all.
    pub(super) fn pieces(&mut self, text: &str, found: &[Found], used: &mut Vec<(usize, usize)>) {
        let Some(amount) = self
            .amount
            .as_mut()
            .filter(|a| matches!(a.sort(), Sort::Mass | Sort::Volume))
        else {
            return;
        };
        let first = found
            .iter()
            .find(|f| matches!(f.what, What::Amount(_) | What::Again(_)));
        let Some(first) = first else { return };
        let ahead = text.get(..first.start).unwrap_or_default();
        let leads = lead(text).filter(|(_, end, _)| *end <= first.start);
        let Some((start, end, count)) = leads.or_else(|| aside(ahead)) else {
            return;
        };
        let between = text.get(end..first.start).unwrap_or_default();
        // "6 + 4 lb" is no number of pieces.
        if between.contains(['+', '&']) {
            return;
        }
        let behind = text.get(first.end..).unwrap_or_default();
        let next = behind.trim_start_matches([')', ' ', ',']).to_lowercase();
        let close = between.trim().trim_matches(['-', '(', '~']).trim().to_lowercase();
        let vessel = front(Sort::Vague, behind.trim_start_matches([')', ' '])).is_some();
        let one = close.is_empty() && leads.is_some()
            || BEFORE_APIECE.contains(&close.as_str())
            || ENDS_APIECE.iter().any(|w| format!(" {close}").ends_with(w))
            || vessel
            || APIECE.iter().any(|word| next.starts_with(word));
        let several = count.high > Decimal::ONE;
        // "Half the pepper: 2 tbsp" is no piece.
        if !one && count.high < Decimal::ONE {
            return;
        }
        let glued = one
            && !close.ends_with(" of")
            && !close.ends_with(" at")
            && (close.is_empty() || close.chars().count() < 2);
        used.push((start, if glued { first.start } else { end }));
        if one {
            amount.times(count);
            if let Some(again) = self.again.as_mut().filter(|_| several) {
                again.times(count);
            }
        } else if several {
            self.count = Some(count);
            // "2 backstraps (about 4 lb)", "2 backstraps, 4 lb": nobody says of what.
            let bracket = between.contains('(') && !between.contains(')') || between.contains(',');
            let lower = text.to_lowercase();
            let said = TOGETHER.iter().any(|w| lower.contains(w));
            self.each_or_all = bracket && !said && count.is_point();
        }
    }

    /// `2.5 % of 2 kg`: the working of what stands before it; true where it is one.
    pub(super) fn worked(&mut self, whole: &Amount, before: &str) -> bool {
        let Some(percent) = self.again.as_ref().filter(|a| a.sort() == Sort::Percent) else {
            return false;
        };
        if whole.sort() != Sort::Mass || !before.trim_end().to_lowercase().ends_with(" of") {
            return false;
        }
        let share = percent
            .sum(None, None)
            .and_then(|p| p.map(|p| p.over(Decimal::ONE_HUNDRED)));
        let Some(share) = share else { return false };
        let mut part = whole.clone();
        part.times(share);
        self.again = Some(part);
        true
    }

    /// Words between an amount and a name that is no salt and no cure say which of it: `sweet Hungarian paprika`.
    pub(super) fn attributes(&self, found: &[Found], name: usize, rest: &mut Vec<Token>, names: &Names) {
        // A cure by its number is that, whatever stands before it; and of an open one it is asked which.
        let numbered = |m: &Meaning| {
            let open = m.items.len() > 1 && m.items.iter().all(|i| i.group == Group::Cure);
            open || matches!(m.items.as_slice(), [one] if ["cure-1", "cure-2"].contains(&one.key))
        };
        let plain = |m: &Meaning| {
            m.food || numbered(m) || m.items.iter().all(|i| !matches!(i.group, Group::Cure | Group::Salt))
        };
        let end = found
            .iter()
            .filter(|f| f.end <= name && matches!(f.what, What::Amount(_)))
            .map(|f| f.end)
            .max();
        let by_number = self.meaning.as_ref().is_some_and(numbered);
        let end = end.or(by_number.then_some(0));
        let (Some(from), true) = (end, self.meaning.as_ref().is_some_and(plain)) else {
            return;
        };
        let between: Vec<&Token> = rest.iter().filter(|t| t.start >= from && t.end <= name).collect();
        let letters = |t: &&Token| t.text.chars().all(char::is_alphabetic) && !names_agent(&t.text);
        if between.len() <= MOST_ATTRIBUTES && between.iter().all(letters) {
            rest.retain(|t| t.start < from || t.end > name || names.is_plain(t));
        }
    }

    /// `E250 5 g, neat`: the salt itself, and no mix that is called by it.
    pub(super) fn pure(&mut self, rest: &mut Vec<Token>) {
        let Some(meaning) = self.meaning.as_mut().filter(|m| m.items.len() > 1) else {
            return;
        };
        let pure = meaning.items.iter().find(|i| i.is_pure()).copied();
        let says = |t: &Token| PURE.contains(&t.text.as_str());
        if let Some(pure) = pure.filter(|_| rest.iter().any(says)) {
            meaning.items = vec![pure];
            rest.retain(|t| !says(t));
        }
    }

    /// `saltpetre (potassium nitrate)`: the same by another name.
    pub(super) fn said_twice(&self, rest: &mut Vec<Token>, names: &Names) {
        let Some((at, length, second)) = names.find(rest) else {
            return;
        };
        let keys = |m: &Meaning| m.items.iter().map(|i| i.key).collect::<Vec<_>>();
        let first = self.meaning.as_ref().map(keys).unwrap_or_default();
        if !first.is_empty() && first == keys(second) {
            rest.drain(at..at.saturating_add(length));
        }
    }

    /// `150 ppm sodium nitrite`: what the meat is to hold, and not what is weighed.
    pub(super) fn aims(&mut self, names: &Names) {
        let ppm = self.amount.as_ref().is_some_and(|a| a.unit() == "ppm");
        let pure = self
            .meaning
            .as_ref()
            .is_some_and(|m| matches!(m.items.as_slice(), [one] if one.key == "pure-sodium-nitrite"));
        if ppm && pure {
            self.meaning = names.find(&tokens("nitrite")).map(|(_, _, m)| m.clone());
        }
    }

    /// `2 % of the meat`, `7 % to the weight of water`.
    pub(super) fn part_of(&mut self, text: &str) {
        let percent = self.amount.as_ref().is_some_and(|a| a.sort() == Sort::Percent);
        if !percent || self.of.is_some() {
            return;
        }
        let lower = text.to_lowercase();
        let says = |what: &str| {
            PART_OF.iter().any(|of| lower.contains(&format!("{of}{what}")))
                || lower.contains(&format!("{what} weight"))
                || AND_WATER.iter().any(|and| lower.contains(&format!("{what} {and}")))
        };
        let named = |key: &str| {
            self.meaning
                .as_ref()
                .is_some_and(|m| m.items.iter().any(|i| i.key.starts_with(key)))
        };
        let water = says("water") || AND_WATER.iter().any(|and| lower.contains(and));
        let meat = ALL_MEAT.iter().any(|meat| says(meat));
        self.of = match (meat, water && !named("water")) {
            (true, true) => Some(Of::Both),
            (true, false) => Some(Of::Meat),
            (false, true) => Some(Of::Water),
            (false, false) if says("salt") && !named("salt") => Some(Of::Salt),
            (false, false) => None,
        };
    }

    /// `3 cl garlic` is cloves.
    pub(super) fn cloves(&mut self) {
        let garlic = self
            .meaning
            .as_ref()
            .is_some_and(|m| m.items.iter().any(|i| i.key == "garlic-fresh"));
        let clove = of(Sort::Count).find(|w| w.words.contains(&"clove"));
        if let (true, Some(clove), Some(amount)) = (garlic, clove, self.amount.as_mut()) {
            for (_, unit) in amount.parts.iter_mut().filter(|(_, u)| u.words.contains(&"cl")) {
                *unit = clove;
            }
        }
    }

    /// `cure (6.25 %), 1 tsp`: the per cent is the packet's, not a share of the meat.
    pub(super) fn strength(&mut self) {
        self.salt_with_nitrite();
        let cure = |m: &Meaning| m.items.first().is_some_and(|i| i.group == Group::Cure);
        if !self.meaning.as_ref().is_some_and(cure) {
            return;
        }
        let percent = |a: &Option<Amount>| a.as_ref().filter(|a| a.sort() == Sort::Percent)?.sum(None, None);
        match (percent(&self.amount), percent(&self.again)) {
            (Some(strength), None) if self.again.is_some() => {
                self.strength = Some(strength);
                self.amount = self.again.take();
                self.measure = self.text.clone();
            }
            (None | Some(_), Some(strength)) => {
                self.strength = Some(strength);
                self.again = None;
            }
            // Nobody weighs a hundredth of the meat in strong cure: the packet's print, and no amount.
            (Some(strength), None) if strength.low >= STRONG => {
                self.strength = Some(strength);
                self.amount = None;
                self.taken = Taken::Taste;
            }
            (None, None) => {
                self.strength = bracketed(&self.text);
                if self.strength.is_some() {
                    let words = self.left.split(' ').filter(|w| !w.bytes().all(|b| b.is_ascii_digit()));
                    self.left = words.collect::<Vec<&str>>().join(" ");
                }
            }
            _ => {}
        }
        if self.strength.is_some() {
            self.by_packet();
        }
    }

    /// `60 g salt with 0.6 % nitrite in it`: a cure by its packet.
    fn salt_with_nitrite(&mut self) {
        let percent = self.again.as_ref().is_some_and(|a| a.sort() == Sort::Percent);
        let salt = |m: &Meaning| m.items.first().is_some_and(|i| i.group == Group::Salt);
        let packet = crate::pantry::ingredient(crate::pantry::PACKET);
        if let (true, Some(meaning), Some(packet)) = (percent, self.meaning.as_mut().filter(|m| salt(m)), packet)
            && names_nitrite(&self.text)
        {
            meaning.items = vec![packet];
            self.by_packet();
        }
    }

    /// With its strength beside it, a cure of any name is what its packet says.
    pub(super) fn by_packet(&mut self) {
        let several = self.meaning.as_ref().is_some_and(|m| m.items.len() > 1);
        if let (true, Some(packet), Some(meaning)) = (
            several,
            crate::pantry::ingredient(crate::pantry::PACKET),
            self.meaning.as_mut(),
        ) {
            meaning.items = vec![packet];
        }
        for words in [&mut self.left, &mut self.changed] {
            let says = |w: &&str| !BESIDE_STRENGTH.contains(&w.to_lowercase().as_str());
            *words = words.split(' ').filter(says).collect::<Vec<_>>().join(" ");
        }
    }
}
