//! operative
