//! The standing of a batch: all that is known of it, and what of it is in doubt.

use super::bars::bars;
use super::cold::of_cold;
use super::dose::{NotReckoned, holds_cure, of_bags, of_dose, of_recipe};
use super::heat::{Heated, cooks, of_fire};
use super::keeping::{Done, Keeping, Packing, keeping};
use super::model::{Assurance, Clears, Doubt, Kind, Leave, Stage, Weight};
use crate::batch::{Batch, OddTime, Seen, odd_times};
use crate::cure::{through, went_in};
use crate::dose::{Outcome, Verdict};
use crate::order::InOrder;
use crate::quantity::{Problem, Temperature};
use crate::recipe::{Do, Eaten, Method};
use crate::weigh::{self, Settings};
use rust_decimal::Decimal;

/// All doubts on a batch, and what it has earned beside them.
pub struct Standing {
    doubts: Vec<Doubt>,
    in_range: bool,
    cure: bool,
    through: bool,
    hung: bool,
    to_cook: bool,
    heated: Heated,
    done: Done,
    keeping: Option<Keeping>,
}

impl Standing {
    /// The standing of a batch at `now`, in milliseconds since 1970, packed in this way.
    ///
    /// A batch that cannot be read at all earns nothing: its doubt is [`Kind::NotReckoned`].
    #[must_use]
    pub fn of(batch: &Batch, settings: &Settings, now: i64, packing: Packing) -> Self {
        Self::judged(batch, settings, &weigh::verdict(batch, settings), now, packing)
    }

    /// The same where the verdict on its dose is known already.
    #[must_use]
    pub fn judged(
        batch: &Batch,
        settings: &Settings,
        verdict: &Result<Verdict, Vec<Problem>>,
        now: i64,
        packing: Packing,
    ) -> Self {
        let mut doubts = of_recipe(batch);
        doubts.extend(of_dose(batch, verdict.as_ref().map_err(|_| NotReckoned)));
        doubts.extend(of_bags(batch, settings));
        doubts.extend(of_cold(batch, now, settings.units));
        doubts.extend(in_cure(batch));
        doubts.extend(untimely(batch, now));
        doubts.extend(over_stayed(batch, now));
        doubts.extend(out_early(batch, settings, verdict, now));
        let heated = of_fire(batch, now, settings.units);
        doubts.extend(heated.doubts.iter().cloned());
        let in_range = verdict.as_ref().is_ok_and(|v| v.outcome == Outcome::InRange);
        let cured_through = in_range
            && !doubts
                .iter()
                .any(|d| matches!(d.kind, Kind::OutEarly | Kind::CureNotIn));
        let done = done(batch, &heated, holds_cure(batch), cured_through);
        let keeping = keeping(batch, done, heated.ended, now, packing).filter(|_| batch.recipe.eaten == Eaten::Cooked);
        doubts.extend(keeping.filter(|k| k.past).map(|past| {
            let doubt = if dried(batch) {
                Doubt::new(Kind::DrynessUntold, Stage::Pack, Weight::Warns, Clears::EatSoon)
            } else {
                Doubt::new(Kind::PastKeeping, Stage::Pack, Weight::Forbids, Clears::Nothing)
            };
            doubt.since(Some(past.until))
        }));
        let keeping = keeping.filter(|_| !dried(batch));
        if let Some(thrown_out) = thrown_out(batch) {
            // What else was in doubt about it nobody has to mend any more.
            doubts = vec![thrown_out];
        }
        // Of one weight, what nobody looked at comes behind what is known.
        doubts.order_by_key(|d| (std::cmp::Reverse(d.weight), d.kind == Kind::ColdUnseen));
        Self {
            in_range,
            cure: holds_cure(batch),
            through: through(batch, now, settings),
            hung: batch.recipe.eaten == Eaten::HungForMonths,
            to_cook: batch.recipe.steps.iter().any(cooks),
            heated,
            done,
            keeping,
            doubts,
        }
    }

    /// Every doubt, what is past mending first.
    #[must_use]
    pub fn doubts(&self) -> &[Doubt] {
        &self.doubts
    }

    /// The right to give an assurance, where the batch has earned it and nothing about it is in doubt.
    #[must_use]
    pub fn leave(&self, assurance: Assurance) -> Option<Leave> {
        let barred = self.doubts.iter().any(|d| bars(d, assurance));
        (self.earned(assurance) && !barred).then_some(Leave::given())
    }

    /// The doubts that forbid an assurance, the gravest first.
    #[must_use]
    pub fn barring(&self, assurance: Assurance) -> Vec<Doubt> {
        self.doubts.iter().filter(|d| bars(d, assurance)).cloned().collect()
    }

    /// The coldest that its classes were read at when they counted as hot enough.
    #[must_use]
    pub const fn cooked_to(&self) -> Option<Temperature> {
        self.heated.to
    }

    /// What every class has to be read at, the hottest of them.
    #[must_use]
    pub const fn needed(&self) -> Option<Temperature> {
        self.heated.needed
    }

    fn earned(&self, assurance: Assurance) -> bool {
        match assurance {
            Assurance::Dose => self.in_range,
            Assurance::NoCure => !self.cure,
            Assurance::Cured => self.cure && self.through,
            Assurance::Hot(class) | Assurance::Pull(class) => self.heated.is_hot(class),
            Assurance::Chilled(class) => self.heated.is_chilled(class),
            Assurance::Cooked => self.heated.all_hot(),
            Assurance::Keep => match self.done {
                Done::Raw | Done::RawMinced => self.keeping.is_some() && !self.to_cook,
                _ => self.keeping.is_some() && self.heated.all_hot() && self.heated.all_chilled(),
            },
            // What is to be cooked here is given when that is done.
            Assurance::Gift if self.to_cook => self.heated.all_hot() && self.heated.all_chilled(),
            Assurance::Gift => !self.hung,
            Assurance::GoOn => true,
        }
    }

    /// How long it keeps, where it has earned that.
    #[must_use]
    pub fn keeps(&self) -> Option<(Leave, &Keeping)> {
        Some((self.leave(Assurance::Keep)?, self.keeping.as_ref()?))
    }

    /// What was done to it.
    #[must_use]
    pub const fn done(&self) -> Done {
        self.done
    }

    /// Size classes.
    #[must_use]
    pub fn classes(&self) -> u32 {
        self.heated.classes()
    }
}

/// What was done to the meat. Cured counts only with enough of it gone in.
fn done(batch: &Batch, heated: &Heated, cure: bool, cured_through: bool) -> Done {
    let smoked = batch
        .recipe
        .steps
        .iter()
        .enumerate()
        .any(|(i, s)| s.act == Do::Smoke && batch.step(i).is_some());
    match (heated.all_hot(), smoked, cure) {
        (true, true, _) if cured_through => Done::SmokedCured,
        (true, true, _) => Done::Smoked,
        (true, false, _) => Done::Cooked,
        (false, _, true) => Done::RawCured,
        (false, _, false) if batch.recipe.method == Method::Ground => Done::RawMinced,
        (false, _, false) => Done::Raw,
    }
}

fn dried(batch: &Batch) -> bool {
    batch.recipe.steps.iter().any(|s| s.act == Do::DryOut)
}

/// It is in the cure from the rub until a later step is ticked or the fire's log is begun.
fn in_cure(batch: &Batch) -> Option<Doubt> {
    let cures = batch.recipe.steps.first().is_some_and(|s| s.act == Do::Cure);
    let begun = batch.tick("rub")?.at;
    let out = crate::cure::ended(batch).is_some();
    let lit = batch.fire.as_ref().is_some_and(|f| !f.readings.is_empty());
    if !cures || (out && rinsed(batch)) {
        return None;
    }
    let (kind, weight, clears) = if lit || out {
        (Kind::NotRinsed, Weight::Warns, Clears::Rinse)
    } else {
        (Kind::InCure, Weight::Holds, Clears::TakeOut)
    };
    Some(Doubt::new(kind, Stage::Cure, weight, clears).since(Some(begun)))
}

/// The first of its times that cannot be right wherever it was.
fn untimely(batch: &Batch, now: i64) -> Option<Doubt> {
    let odd = odd_times(batch, now, None).into_iter().find(OddTime::is_impossible)?;
    let doubt = Doubt::new(Kind::TimeInQuestion, Stage::Cure, Weight::Warns, Clears::CorrectTime);
    Some(doubt.since(Some(odd.at)))
}

/// In its cure past the last hour that raw meat keeps there; what lay frozen meanwhile is judged by whoever froze it.
fn over_stayed(batch: &Batch, now: i64) -> Option<Doubt> {
    let lies = in_cure(batch).is_some_and(|doubt| doubt.kind == Kind::InCure);
    let frozen = batch.fridge.iter().any(|f| f.what == Seen::Frozen);
    let last = crate::cure::keeps_until(batch).filter(|last| lies && !frozen && now > *last)?;
    let doubt = Doubt::new(Kind::OverStayed, Stage::Cure, Weight::Warns, Clears::TakeOut);
    Some(doubt.since(Some(last)))
}

/// Classes that came out of the cure before enough of it had surely gone in, each from when it came out.
fn out_early(batch: &Batch, settings: &Settings, verdict: &Result<Verdict, Vec<Problem>>, now: i64) -> Vec<Doubt> {
    let drawn = (0..).take(batch.pieces.len()).any(|at| batch.drawn(at).is_some());
    let ended = crate::cure::ended(batch);
    let (Ok(verdict), true) = (verdict, drawn || ended.is_some()) else {
        return Vec::new();
    };
    let when = ended.unwrap_or(now);
    let least = Decimal::from(verdict.least);
    let classes = went_in(batch, settings, when).unwrap_or_default();
    let short = classes.into_iter().filter(|class| class.nitrite.low < least);
    let out = |class: u32| batch.drawn(class).or(ended);
    short
        .filter_map(|class| {
            let since = out(class.at)?;
            let doubt = Doubt::new(Kind::OutEarly, Stage::Cure, Weight::Warns, Clears::CookThrough);
            Some(doubt.of_class(class.at).since(Some(since)))
        })
        .collect()
}

/// Somebody threw it out: whatever else is known of it, it is not eaten.
fn thrown_out(batch: &Batch) -> Option<Doubt> {
    let since = batch.thrown_out?;
    let doubt = Doubt::new(Kind::ThrownOut, Stage::Pieces, Weight::Forbids, Clears::Nothing);
    Some(doubt.since(Some(since)))
}

fn rinsed(batch: &Batch) -> bool {
    let rinse = batch.recipe.steps.iter().position(|s| s.act == Do::Rinse);
    rinse.is_none_or(|at| batch.step(at).is_some())
}
