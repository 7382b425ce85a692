//! Measures invented recordings and compares with the truth beside them.
use std::collections::BTreeMap;
use std::sync::Mutex;

use motion::{Axis, Exercise, Measurement, Recording, Sample, Task, Worn, measure};
use recorder::{Scenario, Subject};

pub fn task_of(scenario: &Scenario, length_cm: f64, exercise: Exercise) -> Task {
    let side = match scenario.side {
        recorder::Side::Left => body::Side::Left,
        recorder::Side::Right => body::Side::Right,
    };
    let mut task = Task::new(exercise, side);
    task.worn = Worn::named(scenario.worn.word()).unwrap();
    task.axis = Axis::named(scenario.axis.word()).unwrap();
    task.arm_length_m = Some(length_cm / 100.0);
    task
}
pub fn rows(recorded: &recorder::Recording) -> Recording {
    Recording::of(recorded.samples.iter().map(|s| Some(Sample::new(s.t_s, s.force.to_array(), s.rate.to_array()))))
}
#[derive(Default)]
struct Tally {
    n: u32,
    exact: u32,
    one: u32,
    unusable: u32,
    uncertain: u32,
    wrong_certain: u32,
    dir_ok: u32,
    dir_n: u32,
    errors: Vec<f64>,
    range: Vec<f64>,
    hold: Vec<f64>,
    dia_ok: u32,
    dia_n: u32,
    alarms: [u32; 6],
    log: Vec<String>,
}

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let count: u64 = args[1].parse().unwrap();
    let base: u64 = args[2].parse().unwrap();
    let filter = args.get(3).cloned();
    let verbose = std::env::var("V").is_ok();
    let clean = std::env::var("CLEAN").is_ok();
    let mut jobs = Vec::new();
    for subject in Subject::all() {
        if filter.as_ref().is_some_and(|f| f != subject.word()) {
            continue;
        }
        for k in 0..count {
            jobs.push((subject, base + k));
        }
    }
    let tallies: Mutex<BTreeMap<String, Tally>> = Mutex::new(BTreeMap::new());
    let next = std::sync::atomic::AtomicUsize::new(0);
    std::thread::scope(|s| {
        for _ in 0..2 {
            s.spawn(|| loop {
        let at = next.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
        let Some((subject, seed)) = jobs.get(at).copied() else { break };
        let mut scenario = Scenario::draw(seed, subject);
        if std::env::var("PERFECT").is_ok() { scenario.fit = recorder::Fit::Perfect; }
        if clean { scenario.gaps.clear(); scenario.grip = recorder::Grip::Holds; }
        let recorded = recorder::record(&scenario);
        let rec = rows(&recorded);
        match subject {
            Subject::Exercise(e) => {
                let id = e.word();
                let mut task = task_of(&scenario, recorded.arm_length_cm, Exercise::named(id).unwrap());
                let t = &recorded.truth;
                if let Some(p) = &t.peaks_deg { let _ = p; }
                let m = measure(&rec, &task);
                let mut all = tallies.lock().unwrap();
                let key = if id == "pendulum" { format!("pendulum {}", match scenario.figure { recorder::Figure::Circles(_) => "circles", recorder::Figure::BothWays(_) => "both", recorder::Figure::Ellipses(_) => "ellipses", recorder::Figure::Swings => "swings" }) } else { id.to_string() };
                let y = all.entry(key).or_default();
                y.n += 1;
                let got = m.repetitions.map(|r| r as i64);
                let d = got.map(|g| g - t.repetitions as i64);
                match d { None => y.unusable += 1, Some(d) => { if d == 0 { y.exact += 1 } if d.abs() <= 1 { y.one += 1 } if m.uncertain { y.uncertain += 1 } else if d != 0 { y.wrong_certain += 1 } } }
                if let (Some(a), Some((c, ac))) = (t.by_direction, m.by_direction) { y.dir_n += 1; if (a.0 as i64 - c as i64).abs() <= 1 && (a.1 as i64 - ac as i64).abs() <= 1 { y.dir_ok += 1 } }
                if let (Some(a), Some(b)) = (t.circle_diameter_cm, m.circle_diameter_cm) { y.dia_n += 1; if (a - b).abs() <= (0.1 * a).max(1.5) { y.dia_ok += 1 } }
                if d == Some(0) && let (Some(a), Some(b)) = (&t.peaks_deg, m.peaks_deg()) { for (x, z) in a.iter().zip(&b) { y.errors.push(z - x); }
                    if let (Some(h), Some(g)) = (&t.holds_s, m.holds_s()) { for (x, z) in h.iter().zip(&g) { y.hold.push(z - x) } } }
                if let (Some(a), Some(b)) = (t.elevation_range_deg, m.elevation_range_deg) { y.range.push(b - a) }
                // Limit alarms, where the set holds.
                if let (Some(p), Some(holds)) = (&t.peaks_deg, m.sigma_deg) { let _ = holds;
                    let top = p.iter().copied().fold(0.0, f64::max);
                    for (k, off) in [3.0, 8.0].iter().enumerate() { task.limit_deg = Some(top - off); let mm = measure(&rec, &task); y.alarms[2 * k + 1] += 1; if mm.events.iter().any(|e| e.kind == motion::EventKind::Limit) { y.alarms[2 * k] += 1 } }
                    task.limit_deg = Some(top + 8.0); let mm = measure(&rec, &task); y.alarms[5] += p.len() as u32; y.alarms[4] += mm.events.iter().filter(|e| e.kind == motion::EventKind::Limit).count() as u32;
                }
                if verbose || d != Some(0) { y.log.push(format!("{seed} truth {} {:?} got {:?}{} dir {:?} why {:?} gaps {:?} grip {:?} open {:?} end {:?} rate {} worn {} pose {} table {} signturn {} {:?} set {:?} phases {:?}\n      tp {:?}\n      mp {:?}", t.repetitions, t.by_direction, got, if m.uncertain {"?"} else {""}, m.by_direction, m.why_not, recorded.gaps.len(), scenario.grip, scenario.opening, scenario.ending, scenario.rate_hz, scenario.worn.word(), m.has_pose, m.has_table, m.sign_turned, scenario.gravity, m.set_s, recorded.phases.iter().map(|p| format!("{} {:.1}-{:.1}", p.name, p.from_s, p.until_s)).collect::<Vec<_>>(), t.peaks_deg.as_ref().map(|p| p.iter().map(|x| x.round() as i32).collect::<Vec<_>>()), m.peaks_deg().map(|p| p.iter().map(|x| x.round() as i32).collect::<Vec<_>>()))); }
            }
            Subject::Negative(n) => {
                for id in ["pendulum", "supine-elevation", "abduction", "external-rotation", "shrug", "elbow-flexion"] {
                    let m: Measurement = measure(&rec, &task_of(&scenario, 65.0, Exercise::named(id).unwrap()));
                    let mut all = tallies.lock().unwrap();
                    let y = all.entry(format!("~{} as {id}", n.word())).or_default();
                    y.n += 1;
                    match m.repetitions { None => y.unusable += 1, Some(c) => { if m.uncertain { y.uncertain += 1 } else { y.wrong_certain += 1 }; y.log.push(format!("{seed} {c}{} pose {} table {} set {:?}", if m.uncertain {"?"} else {""}, m.has_pose, m.has_table, m.set_s)) } }
                }
            }
        }
    });
        }
    });
    let rms = |v: &[f64]| (v.iter().map(|x| x * x).sum::<f64>() / v.len().max(1) as f64).sqrt();
    let tenth = |v: &[f64]| {
        let mut a: Vec<f64> = v.iter().map(|x| x.abs()).collect();
        a.sort_by(f64::total_cmp);
        a.get(a.len() * 9 / 10).copied().unwrap_or(0.0)
    };
    for (k, y) in tallies.lock().unwrap().iter() {
        if k.starts_with('~') {
            println!("{k:34} n {} refused {} uncertain {} CONFIDENT {}", y.n, y.unusable, y.uncertain, y.wrong_certain);
        } else {
            let bias = y.errors.iter().sum::<f64>() / y.errors.len().max(1) as f64;
            println!(
                "{k:26} n {:3} exact {:3} ±1 {:3} refused {:2} unc {:2} wrong&certain {:2} | peak rms {:.2} bias {:.2} p90 {:.2} hold rms {:.2} range p90 {:.2} | dir {}/{} dia {}/{} | lim+3 {}/{} +8 {}/{} -8 {}/{}",
                y.n,
                y.exact,
                y.one,
                y.unusable,
                y.uncertain,
                y.wrong_certain,
                rms(&y.errors),
                bias,
                tenth(&y.errors),
                rms(&y.hold),
                tenth(&y.range),
                y.dir_ok,
                y.dir_n,
                y.dia_ok,
                y.dia_n,
                y.alarms[0],
                y.alarms[1],
                y.alarms[2],
                y.alarms[3],
                y.alarms[4],
                y.alarms[5]
            );
        }
    }
    if std::env::var("LOG").is_ok() {
        for (k, y) in tallies.lock().unwrap().iter() {
            for l in &y.log {
                println!("{k}: {l}");
            }
        }
    }
}
