//! A proof with somebody watching: a bar on a terminal, and an end on request.

use std::io::IsTerminal as _;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, LazyLock};
use std::time::Duration;

use indicatif::{ProgressBar, ProgressStyle};
use proof::{Manner, Proof, Space, TooMany, Watch, points, prove};
use protocol::Family;

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

/// Proves a family; the first press of Ctrl-C stops the proof, the second the program.
pub fn prove_watched<'f>(family: &'f Family, shipped: Option<&Family>, manner: Manner) -> Result<Proof<'f>, TooMany> {
    let watch = Watch::default();
    let done = AtomicBool::new(false);
    let all = points(&Space::new(family), manner).try_into().unwrap_or(u64::MAX);
    let stop = STOP.clone();
    std::thread::scope(|scope| {
        scope.spawn(|| {
            let bar = bar(all, &family.file.id);
            while !done.load(Ordering::Relaxed) {
                std::thread::sleep(BEAT);
                bar.set_position(watch.done.load(Ordering::Relaxed));
                if stop.load(Ordering::Relaxed) {
                    watch.stop.store(true, Ordering::Relaxed);
                }
            }
            bar.finish_and_clear();
        });
        let proof = prove(family, shipped, manner, &watch);
        done.store(true, Ordering::Relaxed);
        proof
    })
}

fn bar(all: u64, family: &str) -> ProgressBar {
    if !std::io::stderr().is_terminal() {
        return ProgressBar::hidden();
    }
    let bar = ProgressBar::new(all).with_message(family.to_owned());
    let style = ProgressStyle::with_template("{msg} {wide_bar} {human_pos} of {human_len} records or groups, {eta} left");
    style.map_or(bar.clone(), |style| bar.with_style(style))
}
