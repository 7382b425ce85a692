//! A proof with somebody watching: a bar on a terminal, and an end on request.

use std::io::IsTerminal as _;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, LazyLock};
use std::time::Duration;

use indicatif::{ProgressBar, ProgressStyle};
use proof::Watch;

/// What the key for stopping sets.
static STOP: LazyLock<Arc<AtomicBool>> = LazyLock::new(|| {
    let stop = Arc::new(AtomicBool::new(false));
    let of_key = stop.clone();
    // Where no handler can be set the key ends the program, as it does everywhere.
    let _ = ctrlc::set_handler(move || {
        if of_key.swap(true, Ordering::Relaxed) {
            std::process::exit(STOPPED_TWICE);
        }
    });
    stop
});

/// The exit status of a program that was interrupted.
const STOPPED_TWICE: i32 = 130; // not medical: the usual status after an interrupt

/// How often the bar moves and the key is looked at.
const BEAT: Duration = Duration::from_millis(100); // not medical: a tenth of a second

/// Does some long work; the first press of Ctrl-C stops the work, the second the program.
pub fn watched<T>(all: u64, what: &str, work: impl FnOnce(&Watch) -> T) -> T {
    let watch = Watch::default();
    let done = AtomicBool::new(false);
    let stop = STOP.clone();
    std::thread::scope(|scope| {
        let (watch, done) = (&watch, &done);
        scope.spawn(move || {
            let bar = bar(all, what);
            while !done.load(Ordering::Relaxed) {
                std::thread::sleep(BEAT);
                bar.set_position(watch.done.load(Ordering::Relaxed));
                if stop.load(Ordering::Relaxed) {
                    watch.stop.store(true, Ordering::Relaxed);
                }
            }
            bar.finish_and_clear();
        });
        let result = work(watch);
        done.store(true, Ordering::Relaxed);
        result
    })
}

fn bar(all: u64, what: &str) -> ProgressBar {
    if !std::io::stderr().is_terminal() {
        return ProgressBar::hidden();
    }
    let bar = ProgressBar::new(all).with_message(what.to_owned());
    let style = ProgressStyle::with_template("{msg} {wide_bar} {human_pos} of {human_len}, {eta} left");
    style.map_or(bar.clone(), |style| bar.with_style(style))
}
