//! Properties that hold for any input.

mod corpus;
mod doses;
mod heat;
mod links;
mod numbers;
mod plans;
mod recipes;
mod rescues;
