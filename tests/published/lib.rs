//! Checks against published figures live beside this file.
