//! The user's own past weights, which take over from the table after three birds or animals.

use super::game::{Game, games};
use crate::batch::Batch;
use crate::pantry::OWN;
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use rust_decimal::{Decimal, dec};

/// Birds or animals from which on the own weights take over.
const ENOUGH: u32 = 3;

/// Least spread of an own mean either way: our own judgement, since a class weighed together hides it.
const SPREAD: Decimal = dec!(0.15);

/// Grams of one piece by what was weighed before, and how many pieces that were; `None` under three animals. `called` is
/// what the page calls the row.
pub fn own(game: &Game, called: &str, batches: &[Batch]) -> Option<(Range, u32)> {
    let (mut count, mut sum) = (0_u32, Decimal::ZERO);
    let (mut low, mut high) = (Decimal::MAX, Decimal::ZERO);
    for piece in batches.iter().flat_map(|b| &b.pieces) {
        let Some(weight) = piece.weight.filter(|_| is_it(game, called, &piece.cut, &piece.name)) else {
            continue;
        };
        let pieces = Decimal::from(piece.count);
        let (each, all) = if piece.each {
            (weight.base(), weight.base().times(pieces)?)
        } else {
            (weight.base().over(pieces)?, weight.base())
        };
        count = count.saturating_add(piece.count);
        sum = sum.plus(all)?;
        (low, high) = (low.min(each), high.max(each));
    }
    if count < game.per.saturating_mul(ENOUGH) {
        return None;
    }
    let mean = sum.over(Decimal::from(count))?;
    let spread = mean.times(SPREAD)?;
    Some((
        Range::new(low.min(mean.less(spread)?), mean, high.max(mean.plus(spread)?)),
        count,
    ))
}

/// True where a piece of a batch is of this row: by its cut where no other row has it, else by its name.
fn is_it(game: &Game, called: &str, cut: &str, name: &str) -> bool {
    let named = !called.is_empty() && name.to_lowercase() == called.to_lowercase();
    let alone = games().filter(|g| g.cut == game.cut).count() == 1;
    named || (cut == game.cut && game.cut != OWN && alone)
}
