//! Properties that hold for any input.

mod doses;
mod links;
mod numbers;
mod recipes;
mod rescues;
