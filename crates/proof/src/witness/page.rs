//! A record while it is written: tables in order, each with its keys.

/// The first line of every text.
const INVENTED: &str = "# An invented record, made by the proof. No such patient exists.\n";

/// A record while it is written.
#[derive(Debug, Clone, Default)]
pub(super) struct Page(Vec<Table>);

/// One table of a record, with its header in brackets.
#[derive(Debug, Clone)]
pub(super) struct Table {
    header: &'static str,
    keys: Vec<(&'static str, String)>,
}

/// A text as the record writes it. No word of a record holds a quote.
pub(super) fn quoted(text: &str) -> String {
    format!("\"{text}\"")
}

impl Page {
    /// Writes a key, in place of what stood there; the table comes where it is first written.
    pub(super) fn set(&mut self, header: &'static str, key: &'static str, value: String) {
        match self.0.iter_mut().find(|table| table.header == header) {
            Some(table) => table.set(key, value),
            None => self.push(header).set(key, value),
        }
    }

    /// Writes a key that may not be recorded.
    pub(super) fn set_maybe(&mut self, header: &'static str, key: &'static str, value: Option<String>) {
        if let Some(value) = value {
            self.set(header, key, value);
        }
    }

    /// Leaves a table out.
    pub(super) fn without(mut self, header: &str) -> Self {
        self.0.retain(|table| table.header != header);
        self
    }

    /// Another table with this header, for lists of tables.
    pub(super) fn push(&mut self, header: &'static str) -> &mut Table {
        self.0.push(Table { header, keys: Vec::new() });
        let last = self.0.len() - 1;
        &mut self.0[last]
    }

    /// Whether anything stands under this header.
    pub(super) fn has(&self, header: &str) -> bool {
        self.0.iter().any(|table| table.header == header)
    }

    /// The text.
    pub(super) fn print(&self) -> String {
        let mut text = INVENTED.to_owned();
        for table in &self.0 {
            text.push('\n');
            text.push_str(table.header);
            text.push('\n');
            for (key, value) in &table.keys {
                text.push_str(&format!("{key} = {value}\n"));
            }
        }
        text
    }
}

impl Table {
    /// Writes a key, in place of what stood there.
    pub(super) fn set(&mut self, key: &'static str, value: String) {
        match self.keys.iter_mut().find(|(known, _)| *known == key) {
            Some((_, written)) => *written = value,
            None => self.keys.push((key, value)),
        }
    }
}
