//! Jerky's own rules, and the cold of a vacuum pack. How long a pack keeps is in [`crate::pack`].

/// Vacuum packs are kept at this or colder, °F, or frozen: some clostridia grow from 37.9 °F (published).
pub const VACUUM_COLD: f64 = 38.0;

/// Jerky's own rules, °F (USDA FSIS, published; the figure for vacuum packs from memory).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Jerky {
    /// Heated first to this: meat, birds.
    pub heat: (f64, f64),
    /// Then dried between these.
    pub dry: (f64, f64),
    /// Most water activity: in air (published), vacuum-packed (memory).
    pub activity: (f64, f64),
}

/// Heat first, then dry.
pub const JERKY: Jerky = Jerky {
    heat: (160.0, 165.0),
    dry: (130.0, 140.0),
    activity: (0.85, 0.91),
};
