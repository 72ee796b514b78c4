//! Properties that hold for any input.

mod doses;
mod heat;
mod links;
mod numbers;
mod recipes;
mod rescues;
