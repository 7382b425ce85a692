//! The arc, the recovery line and plain charts.
