//! The texts for patients: the same in both languages, easy to read, and counted as others count them.

mod counters;
mod ease;
mod files;
mod parity;
