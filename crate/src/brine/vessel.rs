//! What a vessel holds beside the meat.

use crate::quantity::exact::Exact;
use crate::quantity::{Length, Mass};
use rust_decimal::{Decimal, dec};
use serde::Deserialize;

/// Meat is a little heavier than water: grams to the millilitre (Choi and Okos 1986, lean meat, published).
const MEAT: Decimal = dec!(1.055);
const PI: Decimal = dec!(3.14159265358979);
/// Brine in a bag beside the meat, as a share of green weight (judgement): enough to wet every side.
const IN_A_BAG: Decimal = dec!(0.5);

/// Where the brine stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "shape")]
pub enum Vessel {
    /// A box, filled to a depth with the meat in it.
    Box {
        /// Inside length.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        length: Length,
        /// Inside width.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        width: Length,
        /// To the top of the brine.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        depth: Length,
    },
    /// A round pot, filled to a depth with the meat in it.
    Round {
        /// Inside, across.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        across: Length,
        /// To the top of the brine.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        depth: Length,
    },
    /// A bag, its air pressed out.
    Bag,
    /// The water is known.
    Water {
        /// Its weight; a litre is 1000 g.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        water: Mass,
    },
}

impl Vessel {
    /// Millilitres of brine that fill it beside so many grams of meat; nothing where its water is known. `None` on
    /// overflow.
    pub fn brine(&self, meat: Decimal) -> Option<Option<Decimal>> {
        let beside = |whole: Decimal| whole.less(meat.over(MEAT)?).map(Some);
        match self {
            Self::Box { length, width, depth } => {
                let area = length.base().times(width.base())?;
                beside(area.times(depth.base())?.over(dec!(1000))?)
            }
            Self::Round { across, depth } => {
                let square = across.base().times(across.base())?.times(PI)?.over(dec!(4))?;
                beside(square.times(depth.base())?.over(dec!(1000))?)
            }
            Self::Bag => meat.times(IN_A_BAG).map(Some),
            Self::Water { .. } => Some(None),
        }
    }
}
