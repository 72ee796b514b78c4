//! The weigh-out of a batch, put together.

use super::bags::bags;
use super::bowl::running;
use super::coarse;
use super::lines::{Rounded, draw, on_scale, round};
use super::model::{Todo, TodoOf, WeighLine, WeighSheet};
use super::plan::plan;
use super::settings::Settings;
use super::spoon::own_spoons;
use super::work::{Work, lost};
use crate::batch::Batch;
use crate::dose::{self, OwnSpoon, Verdict};
use crate::pantry::{OWN, own_name};
use crate::quantity::{Figure, Mass, Problem};
use rust_decimal::Decimal;

/// The weigh-out of a batch.
///
/// # Errors
/// Every problem of the batch and the settings; [`Code::Missing`](crate::quantity::Code::Missing) while there is nothing to reckon from.
///
/// ```
/// use cure_reckoner::batch::Batch;
/// use cure_reckoner::weigh::{Settings, sheet};
/// # let recipe = serde_json::json!({
/// #     "name": "Salt and cure", "tag": "SC", "method": "rub",
/// #     "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
/// #     "lines": [{"item": "salt-table", "share": {"of": "green_weight", "amount": "2 %"}}],
/// # });
/// // A rub that aims at 150 ppm with a cure of 6.25 %, salt 2 %, on 1000 g.
/// let batch: Batch = serde_json::from_value(serde_json::json!({
///     "tag": "SC", "name": "Salt and cure", "recipe": recipe,
///     "pieces": [{"cut": "own", "name": "leg", "count": 1, "weight": "1000 g"}],
/// })).unwrap();
/// let sheet = sheet(&batch, &Settings::new_page()).unwrap();
/// let adds: Vec<&str> = sheet.bowl.iter().map(|line| line.add.text.as_str()).collect();
/// // 2.4 g of cure bring 2.25 g of salt with them, so that 17.75 g of the 20 are left to weigh.
/// assert_eq!(adds, ["2.4 g", "17.8 g"]);
/// ```
pub fn sheet(batch: &Batch, settings: &Settings) -> Result<WeighSheet, Vec<Problem>> {
    Work::new(batch, settings)?.sheet()
}

/// The verdict alone, for lists over many batches.
///
/// # Errors
/// As [`sheet`].
///
/// ```
/// use cure_reckoner::batch::Batch;
/// use cure_reckoner::dose::VerdictWord;
/// use cure_reckoner::weigh::{Settings, verdict};
/// # let recipe = serde_json::json!({
/// #     "name": "Salt and cure", "tag": "SC", "method": "rub",
/// #     "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
/// #     "lines": [{"item": "salt-table", "share": {"of": "green_weight", "amount": "2 %"}}],
/// # });
/// // A rub that aims at 150 ppm with a cure of 6.25 %, salt 2 %, on 1000 g.
/// let batch: Batch = serde_json::from_value(serde_json::json!({
///     "tag": "SC", "name": "Salt and cure", "recipe": recipe,
///     "pieces": [{"cut": "own", "name": "leg", "count": 1, "weight": "1000 g"}],
/// })).unwrap();
/// assert_eq!(verdict(&batch, &Settings::new_page()).unwrap().word, VerdictWord::InRange);
/// ```
pub fn verdict(batch: &Batch, settings: &Settings) -> Result<Verdict, Vec<Problem>> {
    Work::new(batch, settings)?.verdict()
}

impl Work<'_> {
    fn sheet(&self) -> Result<WeighSheet, Vec<Problem>> {
        let verdict = self.verdict()?;
        let ends = if self.green.weighed { None } else { Some(self.ends()?) };
        let (mut bowl, vessel) =
            draw(&self.batch, &self.rounded, &self.plan, ends.as_ref(), self.step).ok_or_else(lost)?;
        let total = running(&self.batch, &mut bowl, self.step).ok_or_else(lost)?;
        bowl.iter_mut().for_each(|line| self.own_spoon(line));
        let show =
            |grams: Decimal| Mass::new(grams).map_or_else(|_| Figure::new("", ""), |m| m.show(self.settings.units));
        let grams = self.green.meat;
        let is_coarse = self.rounded.cures.iter().any(|c| !c.done) && coarse::is_coarse(&self.plan, self.step);
        let told = verdict
            .nitrite
            .as_ref()
            .filter(|n| n.high > 0)
            .or(verdict.nitrate.as_ref());
        let notice = told.filter(|_| is_coarse && self.green.weighed);
        Ok(WeighSheet {
            green: show(grams.typical),
            green_range: (!grams.is_point()).then(|| (show(grams.low), show(grams.high))),
            weighed: self.green.weighed,
            pieces: self.green.count,
            can_tick: self.green.weighed && !verdict.held && !self.weighs_nothing(),
            bowl_total: on_scale(total, self.step),
            coarse: notice.map(|ppm| coarse::notice(ppm, &self.plan, self.step, self.premix_helps())),
            premix: self
                .parts
                .and_then(|parts| coarse::premix(*self.plan.cures.first()?, parts, self.step)),
            facts: self.facts(),
            salt: self.salt_in(),
            bags: bags(&self.batch, self.settings).unwrap_or_default(),
            remarks: self.remarks(),
            todo: self.todo(),
            bowl,
            vessel,
            verdict,
        })
    }

    /// True where the scale cannot show a cure at all: a list without it is not this recipe.
    pub(super) fn weighs_nothing(&self) -> bool {
        self.rounded.cures.iter().any(|c| !c.done && c.grams.is_zero())
    }

    /// The same at the low and at the high green weight.
    fn ends(&self) -> Result<[Rounded; 2], Vec<Problem>> {
        let at = |grams: Decimal| {
            let plan = plan(&self.batch.recipe, grams, self.green.count, self.parts).map_err(|p| vec![p])?;
            round(&self.batch, &plan, self.parts, self.step, &self.put_in).ok_or_else(lost)
        };
        Ok([at(self.green.meat.low)?, at(self.green.meat.high)?])
    }

    /// How strong a premix would be, and the range that it would give on this scale, where that lies in range and none is in
    /// use.
    fn premix_helps(&self) -> Option<(u32, (u32, u32))> {
        if self.parts.is_some() {
            return None;
        }
        let batch = Batch {
            premix: true,
            ticks: Vec::new(),
            ..self.batch.clone().into_owned()
        };
        let work = Work::new(&batch, self.settings).ok()?;
        let verdict = work.verdict().ok()?;
        let fine = !coarse::is_coarse(&work.plan, self.step) && verdict.outcome == dose::Outcome::InRange;
        Some((
            work.parts?,
            verdict.nitrite.filter(|_| fine).map(|ppm| (ppm.low, ppm.high))?,
        ))
    }

    /// The spoon of the cook's own in place of the general one, where it was weighed with this.
    fn own_spoon(&self, line: &mut WeighLine) {
        let (kind, at) = line.id.split_once(':').unwrap_or_default();
        let at: Option<usize> = at.parse().ok();
        let recipe = &self.batch.recipe;
        let item = at.and_then(|i| match kind {
            "cure" => recipe.cures.get(i).map(|c| c.item.as_str()),
            _ => recipe.lines.get(i).map(|l| l.item.as_str()),
        });
        let grams = line.tick.weight.map(Mass::base);
        if let (Some(item), Some(grams), true) = (item, grams, line.spoon.is_some() || item == Some(OWN)) {
            // What is the cook's own goes by its name.
            let name = line.item.as_ref().map_or("", |of| of.name.trim());
            let is_it = |s: &&OwnSpoon| s.item == item || (item == OWN && own_name(&s.item) == Some(name));
            let own = self.settings.spoons.iter().find(is_it);
            line.spoon = own.and_then(|own| own_spoons(own, grams)).or(line.spoon.take());
        }
    }

    fn todo(&self) -> Vec<Todo> {
        let method = self.batch.recipe.method;
        let put_on = TodoOf::PutOn {
            method,
            pieces: self.green.count,
            about: self.batch.pieces.iter().any(|p| p.about),
        };
        [("rub", put_on), ("label", TodoOf::Close { method })]
            .map(|(id, what)| Todo {
                id: id.to_owned(),
                what,
                ticked: self.batch.tick(id).map(|t| t.at),
            })
            .to_vec()
    }
}
