//! Limits over time as a table: a row for each group of movements, a column for each day on which one changes.

use body::{Joint, Key, Mode, Movement, Position};
use jiff::civil::Date;
use plan::{Allowed, Bound, LimitRow, Prescription, Reason, SpanOfDays};
use quantity::PostoperativeDay;

use crate::document::{Block, Cell, Column, Print, Shade};
use crate::limits_columns::{Days, Shown, Standing, shown};
use crate::limits_words as words;
use crate::reasons_list::ReasonsList;

/// So many columns of days stand side by side; more take a second table below.
const MOST_COLUMNS: usize = 11; // not medical: what fits across a page

/// The sign after the label of a row with a number that no source gives.
pub(crate) const NO_SOURCE: &str = " *";

/// Every limit that a therapist works by, over all stages.
#[derive(Debug, Clone)]
pub(crate) struct LimitsTable<'p> {
    /// The days on which a limit of the table, or the stage, changes.
    pub columns: Vec<DayColumn<'p>>,
    /// The groups, in the order of the table.
    pub rows: Vec<GroupRow<'p>>,
}

/// A day on which something changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct DayColumn<'p> {
    /// The day.
    pub day: PostoperativeDay,
    /// Its date.
    pub date: Date,
    /// The stage of these days.
    pub stage: &'p str,
    /// Whether they are in force.
    pub standing: Standing,
}

/// Movements and modes with the same limits on every day.
#[derive(Debug, Clone)]
pub(crate) struct GroupRow<'p> {
    /// Which part of the arm.
    pub region: Region,
    /// The modes, in their order.
    pub modes: Vec<Mode>,
    /// The movements with their position; each in every mode of the row.
    pub movements: Vec<(Joint, Movement, Position)>,
    /// One value for each column.
    pub values: Vec<Value>,
    /// Why the values are what they are.
    pub reasons: Vec<&'p Reason>,
}

/// Parts of the arm, in the order of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Region {
    /// The shoulder.
    Shoulder,
    /// The shoulder blade.
    Blade,
    /// Elbow, forearm, wrist and hand.
    Below,
    /// Loads in the hand, overhead, and through the arm.
    Load,
}

/// A limit on a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Value {
    /// How far.
    pub allowed: Allowed,
    /// Whether only lying on the back.
    pub only_lying: bool,
}

/// What a run of days allows of a key: its own row, else the row for any position; no row is no.
pub(crate) fn value_on(span: &SpanOfDays, key: Key) -> Value {
    value_in(&span.limits, key)
}

/// What some limits allow of a key.
pub(crate) fn value_in(limits: &[LimitRow], key: Key) -> Value {
    row_in(limits, key).map_or(Value { allowed: Allowed::No, only_lying: false }, |row| Value {
        allowed: row.allowed,
        only_lying: row.only_lying,
    })
}

fn row_in(limits: &[LimitRow], key: Key) -> Option<&LimitRow> {
    let own = limits.iter().find(|row| row.key == key);
    own.or_else(|| limits.iter().find(|row| row.key == key.in_position(Position::Any)))
}

impl<'p> LimitsTable<'p> {
    /// The table of those keys of a prescription that are chosen.
    ///
    /// # Method
    /// In each mode movements with the same values on every day come together;
    /// then modes with the same movements and the same values do. A column
    /// stands for each day on which a value, the stage or its standing changes;
    /// while a gate waits, the first one holds the limits in force now.
    pub fn of(of: &'p Prescription, days: Days, is_chosen: impl Fn(Key) -> bool) -> Self {
        let all = shown(of, days);
        let mut rows: Vec<(GroupRow<'p>, Vec<Value>)> = Vec::new();
        for key in keys(of).into_iter().filter(|key| is_chosen(*key)) {
            let line: Vec<Value> = all.iter().map(|shown| shown.value(key)).collect();
            let place = (key.joint, key.movement, key.position);
            let region = Region::of(key.joint);
            let known = rows.iter_mut().find(|(row, known)| {
                row.region == region
                    && row.modes == [key.mode]
                    && *known == line
                    && region != Region::Load
                    && row.movements.iter().all(|(_, _, position)| *position == key.position)
            });
            match known {
                Some((row, _)) => row.movements.push(place),
                None => rows.push((
                    GroupRow {
                        region,
                        modes: vec![key.mode],
                        movements: vec![place],
                        values: Vec::new(),
                        reasons: Vec::new(),
                    },
                    line,
                )),
            }
        }
        let mut joined: Vec<(GroupRow<'p>, Vec<Value>)> = Vec::new();
        for (row, line) in rows {
            match joined.iter_mut().find(|(known, values)| {
                known.region == row.region && known.movements == row.movements && *values == line
            }) {
                Some((known, _)) => known.modes.extend(row.modes),
                None => joined.push((row, line)),
            }
        }
        joined.sort_by_key(|(row, _)| row.region);
        let is_other = |place: usize| {
            let (before, own) = (&all[place - 1], &all[place]);
            let is_other_standing = (before.standing == Standing::Now) != (own.standing == Standing::Now)
                || (before.standing == Standing::Planned) != (own.standing == Standing::Planned);
            own.stage != before.stage
                || is_other_standing
                || joined.iter().any(|(_, line)| line[place] != line[place - 1])
        };
        let places: Vec<usize> = (0..all.len()).filter(|&place| place == 0 || is_other(place)).collect();
        let ends = places.iter().skip(1).copied().chain([all.len()]);
        let columns = places
            .iter()
            .zip(ends)
            .map(|(&place, end)| {
                let (first, last) = (&all[place], &all[end - 1]);
                // A column is over where all of its days are.
                DayColumn { day: first.day, date: first.date, stage: first.stage, standing: last.standing }
            })
            .collect();
        let rows = joined
            .into_iter()
            .map(|(mut row, line)| {
                row.values = places.iter().map(|&place| line[place]).collect();
                row.reasons = reasons(&all, &row);
                row
            })
            .collect();
        Self { columns, rows }
    }

    /// The table as blocks; the reasons of each row are numbered in `reasons`.
    pub fn blocks(&self, alt: &str, reasons: &mut ReasonsList) -> Vec<Block> {
        let why: Vec<String> = self.rows.iter().map(|row| reasons.refer(row.reasons.iter().copied())).collect();
        let tables = self.columns.len().div_ceil(MOST_COLUMNS).max(1);
        let width = self.columns.len().div_ceil(tables).max(1);
        let starts = (0..self.columns.len()).step_by(width);
        starts.map(|start| self.block(alt, &why, start, (start + width).min(self.columns.len()))).collect()
    }

    fn block(&self, alt: &str, why: &[String], start: usize, end: usize) -> Block {
        let shown = &self.columns[start..end];
        let mut columns = vec![Column { title: words::corner(shown), share: 4 }]; // not medical: a width
        columns.extend(shown.iter().enumerate().map(|(place, column)| {
            let before = place.checked_sub(1).map(|before| &shown[before]);
            let is_frozen = self.columns.iter().any(|column| column.standing == Standing::Now);
            let title = words::column_title(column, before);
            let once = is_frozen && column.standing == Standing::Planned;
            Column { title: if once { words::once_opened(&title) } else { title }, share: 1 }
        }));
        columns.push(Column { title: "why".into(), share: 1 });
        let strong = |text: &&str| Cell { text: (*text).to_owned(), span: 1, shade: Shade::None, strong: true };
        let head = |label: &str, texts: &[&str]| {
            let label = std::iter::once(plain(label.into()));
            label.chain(merged(texts, strong)).chain([plain(String::new())]).collect::<Vec<Cell>>()
        };
        let stages: Vec<&str> = shown.iter().map(|column| column.stage).collect();
        let standings: Vec<&str> = shown.iter().map(words::standing).collect();
        let mut rows = vec![head("stage", &stages), head("opened?", &standings)];
        for (row, why) in self.rows.iter().zip(why) {
            let mark = if row.has_unsourced() { NO_SOURCE } else { "" };
            let mut cells = vec![plain(format!("{}{mark}", words::label(row)))];
            // What has to be opened first has a ground of its own, so it never runs on from what is in force.
            let standings = shown.iter().map(|column| column.standing == Standing::Planned);
            let values: Vec<(Value, bool)> = row.values[start..end].iter().copied().zip(standings).collect();
            cells.extend(merged(&values, |(value, is_planned)| Cell {
                text: words::value(*value),
                span: 1,
                shade: shade(value.allowed, *is_planned),
                strong: false,
            }));
            cells.push(plain(why.clone()));
            rows.push(cells);
        }
        Block::Table { alt: alt.into(), print: Print::Smaller, columns, rows }
    }
}

/// Whether a key belongs on a first page: everything of shoulder, blade and loads, and how elbow, wrist and hand move.
///
/// Stretch into elbow extension belongs there too where it is shut for longer than stretch into elbow flexion: a
/// therapist stretches an elbow without a thought of the biceps.
pub(crate) fn is_first(of: &Prescription, key: Key) -> bool {
    Region::of(key.joint) != Region::Below
        || matches!(key.mode, Mode::Passive | Mode::ActiveAssisted | Mode::Active)
        || (key == elbow_stretch(Movement::Extension) && has_own_elbow_stretch(of))
}

const fn elbow_stretch(movement: Movement) -> Key {
    Key::any(Joint::Elbow, movement, Mode::EndRangeStretch)
}

fn has_own_elbow_stretch(of: &Prescription) -> bool {
    let values = |movement| shown(of, Days::Ahead).into_iter().map(move |shown| shown.value(elbow_stretch(movement)));
    values(Movement::Extension).ne(values(Movement::Flexion))
}

impl Region {
    const fn of(joint: Joint) -> Self {
        match joint {
            Joint::Shoulder => Self::Shoulder,
            Joint::Scapula => Self::Blade,
            Joint::Elbow | Joint::Forearm | Joint::Wrist | Joint::Hand => Self::Below,
            Joint::WholeArm => Self::Load,
        }
    }
}

impl GroupRow<'_> {
    /// Whether one of its numbers, an angle, a load, an effort or a day, was not read in a source.
    pub fn has_unsourced(&self) -> bool {
        let entries = self.reasons.iter().flat_map(|reason| &reason.evidence);
        entries.filter(|entry| entry.value.is_some()).any(|entry| entry.how_known.mark().is_some())
    }

    /// Every key of the row.
    pub fn keys(&self) -> impl Iterator<Item = Key> + '_ {
        self.movements.iter().flat_map(move |&(joint, movement, position)| {
            self.modes.iter().map(move |&mode| Key { joint, movement, position, mode })
        })
    }
}

/// A cell of a table that spans one column.
pub(crate) fn plain(text: String) -> Cell {
    Cell { text, span: 1, shade: Shade::None, strong: false }
}

/// Every key of the prescription by mode, then by joint and movement; without those that say what another says.
fn keys(of: &Prescription) -> Vec<Key> {
    let mut keys: Vec<Key> = Vec::new();
    for row in of.spans.iter().flat_map(|span| &span.limits) {
        if !keys.contains(&row.key) {
            keys.push(row.key);
        }
    }
    // A named position leaves the others to the row for any position, which need not be written.
    let any: Vec<Key> = keys.iter().map(|key| key.in_position(Position::Any)).filter(|key| key.exists()).collect();
    for key in any {
        if !keys.contains(&key) {
            keys.push(key);
        }
    }
    // Turning inward against gravity is told with active internal rotation where both have the same limits.
    let inward = Key::any(Joint::Shoulder, Movement::InwardTurnAgainstGravity, Mode::Active);
    let internal = Key::any(Joint::Shoulder, Movement::InternalRotation, Mode::Active);
    if of.spans.iter().all(|span| value_on(span, inward) == value_on(span, internal)) {
        keys.retain(|key| *key != inward);
    }
    keys.sort_by_key(|key| (key.mode, key.position, key.joint, key.movement));
    keys
}

fn reasons<'p>(all: &[Shown<'p>], row: &GroupRow<'_>) -> Vec<&'p Reason> {
    let mut found: Vec<&'p Reason> = Vec::new();
    for key in row.keys() {
        for reason in all.iter().filter_map(|shown| row_in(shown.limits, key)).flat_map(|row| &row.reasons) {
            if !found.contains(&reason) {
                found.push(reason);
            }
        }
    }
    found
}

/// The more is allowed, the darker; lighter by one where a stage has to be opened first.
const fn shade(allowed: Allowed, is_planned: bool) -> Shade {
    match (allowed, is_planned) {
        (Allowed::No, _) => Shade::Closed,
        (Allowed::UpTo(_), true) => Shade::None,
        (Allowed::UpTo(_), false) | (Allowed::Free, true) => Shade::Light,
        (Allowed::Free, false) => Shade::Middle,
    }
}

/// Equal neighbors become one wide cell.
fn merged<T: PartialEq>(values: &[T], cell: impl Fn(&T) -> Cell) -> Vec<Cell> {
    let mut cells: Vec<Cell> = Vec::new();
    for (place, value) in values.iter().enumerate() {
        match cells.last_mut() {
            Some(last) if values[place - 1] == *value => last.span += 1,
            _ => cells.push(cell(value)),
        }
    }
    cells
}

/// The bound of a load, where there is one.
pub(crate) const fn load_of(allowed: Allowed) -> Option<quantity::Kilograms> {
    match allowed {
        Allowed::UpTo(Bound::Load(load)) => Some(load),
        _ => None,
    }
}
