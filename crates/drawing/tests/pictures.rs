//! Whole drawings, read back from their SVG: what is drawn is what was prescribed, on both sides and for everybody.

use body::{Build, Hair, Look, Side};
use diagnostic::{Sink, Sources};
use drawing::{NoPicture, Picture, Request, Words, draw};
use exercise::{Catalogue, Demand, Entry};
use quantity::Degrees;

fn catalogue() -> Catalogue {
    let mut sources = Sources::new();
    exercise::shipped(&mut Sink::new(), |name, text| sources.add(name, text))
}

/// A demand at a share of its way.
fn at(demand: &Demand, share: f64) -> Degrees {
    let most = demand.amount.greatest_angle().unwrap_or_default();
    let least = demand.amount.start_angle().unwrap_or_default();
    let steps = f64::from(least.steps()) + f64::from(most.steps() - least.steps()) * share;
    if demand.amount.follows_the_limit() { Degrees::from_steps(steps.round() as i32) } else { most }
}

fn made(entry: &Entry, share: f64, side: Side, look: Look) -> Result<Picture, NoPicture> {
    let reach = |demand: &Demand| at(demand, share);
    let words = Words {
        title: "a title",
        description: "a description",
        side: side.name(),
        degrees: &|degrees| format!("{degrees}°"),
        stop: "stop",
        seen_from: &|from| format!("seen from {from}"),
    };
    let limit = entry.target().filter(|target| target.amount.follows_the_limit()).map(|target| at(target, share));
    let room_mm = (58.0, 66.0);
    draw(&Request { entry, reach: &reach, limit, side, look, words: &words, room_mm })
}

fn numbers(text: &str) -> Vec<f64> {
    let is_part = |c: char| c.is_ascii_digit() || c == '-' || c == '.';
    let spaced: String = text.chars().map(|c| if is_part(c) { c } else { ' ' }).collect();
    spaced.split_whitespace().map(|number| number.parse().expect("a number")).collect()
}

/// The angle of the first sector of a drawing, measured on its path: center, zero, then the ends of the curves.
fn drawn_angle(svg: &str) -> Option<f64> {
    let group = svg.split("<g class=\"arc\">").nth(1)?;
    let path = group.split("<path d=\"").nth(1)?.split('"').next()?;
    let all = numbers(path);
    let center = [all[0], all[1]];
    let mut places = vec![[all[2], all[3]]];
    // Of each curve the third place is where it ends.
    places.extend(all[4..].chunks(6).map(|curve| [curve[4], curve[5]]));
    let directions: Vec<f64> =
        places.iter().map(|place| (place[1] - center[1]).atan2(place[0] - center[0]).to_degrees()).collect();
    let turns = directions.windows(2).map(|pair| (pair[1] - pair[0] + 540.0).rem_euclid(360.0) - 180.0);
    Some(turns.sum::<f64>().abs())
}

/// The degrees that are written.
fn written_angle(svg: &str) -> Option<f64> {
    let texts = svg.split("<text ").skip(1).filter(|text| !text.contains("aria-hidden"));
    let mut shown = texts.filter_map(|text| text.split('>').nth(1)?.split('<').next());
    shown.find_map(|text| text.strip_suffix('°')?.parse().ok())
}

#[test]
fn the_written_number_is_the_drawn_angle_and_the_prescribed_one() {
    let catalogue = catalogue();
    let mut seen = 0;
    for entry in catalogue.entries() {
        for share in [0.3, 0.75] {
            let picture = made(entry, share, Side::Right, Look::default()).expect("every entry can be drawn");
            let Some(drawn) = drawn_angle(&picture.svg) else {
                assert_eq!(written_angle(&picture.svg), None, "{}: a number without an arc", entry.id);
                continue;
            };
            let written =
                written_angle(&picture.svg).unwrap_or_else(|| panic!("{}: an arc without a number", entry.id));
            let prescribed = at(entry.target().expect("a turn has a target"), share).number();
            assert!((written - prescribed).abs() < 1e-9, "{}: {written} for {prescribed}", entry.id);
            // Three degrees, and one for places that are whole tenths of a millimeter.
            assert!((drawn - prescribed).abs() <= 3.0 + 1.0, "{}: drawn {drawn:.1} for {prescribed}", entry.id);
            seen += 1;
        }
    }
    assert!(seen > 100, "{seen}");
}

/// All numbers of a drawing but those of its texts, styles and sizes.
fn places(svg: &str) -> Vec<String> {
    svg.split("<path d=\"").skip(1).filter_map(|path| path.split('"').next()).map(str::to_owned).collect()
}

/// A path in a mirror: absolute commands from the page's width, relative ones with the other sign.
fn mirrored(path: &str, width: f64) -> String {
    let mut out = String::new();
    let mut command = 'M';
    let mut horizontal = true;
    let mut number = String::new();
    let flush = |number: &mut String, command: char, horizontal: &mut bool, out: &mut String| {
        if number.is_empty() {
            return;
        }
        let value: f64 = number.parse().expect("a number");
        let is_across = match command.to_ascii_lowercase() {
            'h' => true,
            'v' => false,
            _ => *horizontal,
        };
        let value = match (is_across, command.is_ascii_lowercase()) {
            (false, _) => value,
            (true, true) => -value,
            (true, false) => width - value,
        };
        out.push_str(&format!(" {}", if value == 0.0 { 0.0 } else { value }));
        *horizontal = !*horizontal;
        number.clear();
    };
    for c in path.chars() {
        match c {
            '0'..='9' | '.' => number.push(c),
            '-' => {
                flush(&mut number, command, &mut horizontal, &mut out);
                number.push(c);
            }
            c if c.is_ascii_alphabetic() => {
                flush(&mut number, command, &mut horizontal, &mut out);
                command = c;
                horizontal = true;
                out.push(' ');
                out.push(c);
            }
            _ => flush(&mut number, command, &mut horizontal, &mut out),
        }
    }
    flush(&mut number, command, &mut horizontal, &mut out);
    out
}

/// The same spelling for paths that were not turned over.
fn spelled(path: &str) -> String {
    // Mirrored twice it is itself again.
    mirrored(&mirrored(path, 0.0), 0.0)
}

#[test]
fn a_left_arm_is_the_exact_mirror_image_of_a_right_one() {
    let catalogue = catalogue();
    for entry in catalogue.entries().iter().step_by(3) {
        let [right, left] = [Side::Right, Side::Left]
            .map(|side| made(entry, 0.6, side, Look::default()).expect("every entry can be drawn"));
        let width = (right.width_mm * 10.0).round();
        let turned: Vec<String> = places(&right.svg).iter().map(|path| spelled(&mirrored(path, width))).collect();
        let found: Vec<String> = places(&left.svg).iter().map(|path| spelled(path)).collect();
        assert_eq!(turned, found, "{}", entry.id);
    }
}

struct Word {
    left: f64,
    right: f64,
    top: f64,
    bottom: f64,
    text: String,
}

/// The words of a drawing with the room they take; a bold letter is about half as wide as the type is high.
fn words(svg: &str) -> Vec<Word> {
    let texts = svg.split("<text ").skip(1).filter(|text| !text.contains("aria-hidden"));
    texts
        .map(|text| {
            let value = |name: &str| -> f64 {
                let from = text.split(&format!("{name}=\"")).nth(1).expect("an attribute");
                from.split('"').next().expect("an end").parse().expect("a number")
            };
            let shown = text.split('>').nth(1).and_then(|rest| rest.split('<').next()).expect("a text").to_owned();
            let (x, y, size) = (value("x"), value("y"), value("font-size"));
            let half = shown.chars().count() as f64 * size * 0.5 / 2.0;
            Word { left: x - half, right: x + half, top: y - size * 0.7, bottom: y, text: shown }
        })
        .collect()
}

#[test]
fn words_stand_inside_the_page_and_not_on_each_other() {
    let catalogue = catalogue();
    for entry in catalogue.entries() {
        for (share, side) in [(0.25, Side::Right), (0.9, Side::Left)] {
            let picture = made(entry, share, side, Look::default()).expect("every entry can be drawn");
            let [width, height] = [picture.width_mm * 10.0, picture.height_mm * 10.0];
            let words = words(&picture.svg);
            for (order, word) in words.iter().enumerate() {
                let inside =
                    word.left >= -1.0 && word.right <= width + 1.0 && word.top >= -1.0 && word.bottom <= height + 1.0;
                assert!(inside, "{} at {share}: {:?} leaves the page", entry.id, word.text);
                for other in &words[order + 1..] {
                    let apart = word.right < other.left
                        || other.right < word.left
                        || word.bottom < other.top
                        || other.bottom < word.top;
                    assert!(apart, "{} at {share}: {:?} on {:?}", entry.id, word.text, other.text);
                }
            }
        }
    }
}

#[test]
fn everybody_can_be_drawn() {
    let catalogue = catalogue();
    let entries: Vec<&Entry> = catalogue.entries().iter().step_by(9).collect();
    for (build, hair) in Build::ALL.iter().zip(Hair::ALL) {
        for entry in &entries {
            let look = Look { build: *build, hair: *hair };
            let picture = made(entry, 0.5, Side::Right, look).expect("every entry can be drawn");
            assert!(picture.svg.contains("<title>a title</title><desc>a description</desc>"));
            for wrong in ["NaN", "inf", "-0 ", "e-"] {
                let in_paths = places(&picture.svg).iter().any(|path| path.contains(wrong));
                assert!(!in_paths, "{} {build} {hair}: {wrong}", entry.id);
            }
            // A right angle and more of it is the same for everybody.
            let plain = made(entry, 0.5, Side::Right, Look::default()).expect("every entry can be drawn");
            let [own, of_plain] = [&picture, &plain].map(|picture| drawn_angle(&picture.svg));
            let differ = own.zip(of_plain).is_some_and(|(own, plain)| (own - plain).abs() > 1.0);
            assert!(!differ && own.is_some() == of_plain.is_some(), "{} {build}: {own:?} {of_plain:?}", entry.id);
        }
    }
}

#[test]
fn nothing_is_drawn_beyond_a_limit_a_joint_or_without_room() {
    let catalogue = catalogue();
    let entry = catalogue.get("supine-elevation").expect("in the catalogue");
    let words = Words {
        title: "",
        description: "",
        side: "right",
        degrees: &|degrees| degrees.to_string(),
        stop: "stop",
        seen_from: &|from| from.to_string(),
    };
    let asked = |degrees: i32, limit: Option<i32>, room_mm: (f64, f64)| {
        let reach = move |_: &Demand| Degrees::whole(degrees);
        let limit = limit.map(Degrees::whole);
        let look = Look::default();
        draw(&Request { entry, reach: &reach, limit, side: Side::Right, look, words: &words, room_mm }).map(|_| ())
    };
    let room = (60.0, 60.0);
    assert_eq!(asked(100, Some(100), room), Ok(()));
    assert_eq!(asked(100, Some(99), room), Err(NoPicture::BeyondTheLimit));
    assert_eq!(asked(181, None, room), Err(NoPicture::BeyondTheJoint(Degrees::whole(181))));
    assert_eq!(asked(-1, None, room), Err(NoPicture::BeyondTheJoint(Degrees::whole(-1))));
    for room in [(0.0, 60.0), (60.0, -5.0), (f64::NAN, 60.0), (60.0, f64::INFINITY), (5.0, 5.0)] {
        assert_eq!(asked(100, None, room), Err(NoPicture::NoRoom), "{room:?}");
    }
}
