//! Properties that hold for any input.

mod doses;
mod heat;
mod links;
mod numbers;
mod plans;
mod recipes;
mod rescues;
