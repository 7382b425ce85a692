//! The binary as a user meets it: exit statuses, documents, files, and what a changed line changes.

mod angles;
mod changes;
mod check;
mod codes;
mod compare;
mod documents;
mod draw;
mod files;
mod folder;
mod ladder;
mod runs;
mod sheets;
mod status;
