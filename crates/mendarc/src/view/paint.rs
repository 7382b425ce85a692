//! A few styles; the terminal and `NO_COLOR` decide whether they show.

use anstyle::{AnsiColor, Color, Style};

/// A heading.
pub const HEADING: Style = Style::new().bold();
/// Less important words.
pub const FAINT: Style = Style::new().dimmed();
/// What must not be overlooked.
pub const LOUD: Style = Style::new().bold().fg_color(Some(Color::Ansi(AnsiColor::Red)));
/// A date or a bound.
pub const VALUE: Style = Style::new().fg_color(Some(Color::Ansi(AnsiColor::Cyan)));

/// Text in a style.
pub fn paint(style: Style, text: &str) -> String {
    format!("{style}{text}{style:#}")
}

/// A line broken at spaces so that no piece is longer than `width`, later pieces indented.
pub fn wrapped(text: &str, width: usize, indent: &str) -> String {
    let mut lines = vec![String::new()];
    for word in text.split_whitespace() {
        let line = lines.last_mut().expect("starts with one line");
        if !line.is_empty() && line.chars().count() + 1 + word.chars().count() > width {
            lines.push(word.to_owned());
        } else {
            if !line.is_empty() {
                line.push(' ');
            }
            line.push_str(word);
        }
    }
    lines.join(&format!("\n{indent}"))
}
