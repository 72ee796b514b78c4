//! Which doubt takes which right away: the one place where that is decided.

use super::model::{Assurance, Doubt, Kind, Stage};

/// True where this doubt forbids that assurance.
///
/// A doubt of one size class says nothing of another's heat or chill. What holds or forbids a batch takes away every
/// right of its own stage and of all that come after, and the next job with them; the kinds named here take less.
pub(super) fn bars(doubt: &Doubt, assurance: Assurance) -> bool {
    use Assurance::{Chilled, Cooked, Cured, Dose, Gift, GoOn, Hot, Keep, NoCure, Pull};
    if let (Some(of), Some(class)) = (doubt.class, class_of(assurance))
        && of != class
    {
        return false;
    }
    match doubt.kind {
        // What is thrown out is nothing any more; whatever may be cure is more than salt and spice.
        Kind::ThrownOut | Kind::MayBeCure => true,
        // What is refused as a method is given no word at all.
        Kind::EatenRaw | Kind::HangingUnproven => true,
        _ if assurance == NoCure => false,
        // Said beside the figure; nothing rests on it but how long it keeps.
        Kind::Warm | Kind::UpUnseen | Kind::NotRinsed | Kind::OverStayed | Kind::OutEarly => false,
        // Too weak a cure is salted meat: sound where it is cooked, and never `cured`.
        Kind::DoseLow | Kind::DoseMayBeLow => matches!(assurance, Dose | Cured),
        // What is still to be done is no reason not to do it.
        Kind::NotWeighed => !matches!(assurance, GoOn),
        // By a log that nobody kept it counts as cured to no hour.
        Kind::ColdUnseen => matches!(assurance, Cured),
        // How long it lay and from when it keeps rests on times.
        Kind::TimeInQuestion => matches!(assurance, Cured | Keep | Gift),
        Kind::InCure => matches!(assurance, Cooked | Keep | Gift),
        Kind::NotHot | Kind::ToRead | Kind::NotRead => matches!(assurance, Hot(_) | Pull(_) | Cooked | Keep | Gift),
        Kind::InFire => matches!(assurance, Chilled(_) | Keep | Gift),
        Kind::Chilling | Kind::ChillUnread => matches!(assurance, Chilled(_) | Keep | Gift),
        Kind::DrynessUntold => matches!(assurance, Keep | Gift),
        Kind::PastKeeping => matches!(assurance, Keep | Gift | GoOn),
        _ => stage_of(assurance).is_none_or(|stage| stage >= doubt.stage),
    }
}

const fn class_of(assurance: Assurance) -> Option<u32> {
    match assurance {
        Assurance::Hot(class) | Assurance::Pull(class) | Assurance::Chilled(class) => Some(class),
        _ => None,
    }
}

/// The stage an assurance is given in; nothing for the next job, which may be any.
const fn stage_of(assurance: Assurance) -> Option<Stage> {
    Some(match assurance {
        Assurance::Dose | Assurance::NoCure => Stage::Weigh,
        Assurance::Cured => Stage::Cure,
        Assurance::Hot(_) | Assurance::Pull(_) => Stage::Fire,
        // Said of what is eaten: what cooled too slowly is not.
        Assurance::Cooked | Assurance::Chilled(_) | Assurance::Keep | Assurance::Gift => Stage::Pack,
        Assurance::GoOn => return None,
    })
}
