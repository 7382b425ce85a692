//! What only a whole family can show.
use diagnostic::Sink;
use exercise::Catalogue;

use crate::Family;

/// Checks a family against itself and the catalogue.
pub(crate) fn family(_family: &Family, _catalogue: &Catalogue, _sink: &mut Sink) {}
