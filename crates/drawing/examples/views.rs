//! From where each exercise of the catalogue is drawn, as a list.

use drawing::{NumberPlace, Shown, View};

fn main() {
    let mut sources = diagnostic::Sources::new();
    let mut sink = diagnostic::Sink::new();
    let catalogue = exercise::shipped(&mut sink, |name, text| sources.add(name, text));
    for entry in catalogue.entries() {
        let Some((start, end)) = entry.widest_poses() else { continue };
        let shown = Shown::of(entry, &start, &end);
        let swing = match &shown {
            Shown::Turn { swing, .. } => Some(*swing),
            _ => None,
        };
        let view = View::of(&start, &end, &shown);
        let kind = match shown {
            Shown::Still => "still",
            Shown::Turn { .. } => "turn",
            Shown::Way(_) => "way",
            Shown::Circles { .. } => "circles",
            Shown::Twist(_) => "twist",
            Shown::Press { .. } => "press",
        };
        let camera = view.camera;
        let number = match view.number {
            NumberPlace::Nowhere => "-".to_owned(),
            NumberPlace::InThePicture => {
                format!("in, {:.1} off", swing.map_or(0.0, |swing| swing.fault(&camera).degrees()))
            }
            NumberPlace::InAnInset(inset) => {
                format!("inset {:.0}/{:.0}", inset.azimuth.degrees(), inset.elevation.degrees())
            }
        };
        println!(
            "{:36} {kind:8} {:22} {:4.0} {:3.0}  {number}",
            entry.id,
            entry.posture.name(),
            camera.azimuth.degrees(),
            camera.elevation.degrees()
        );
    }
}
