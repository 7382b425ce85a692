//! Numbers as text by the million: fixed decimals out of whole numbers.

/// Writes an angle of at most half a turn in degrees with nine decimals, without zeros at the end.
///
/// Nine are finer than the angles are computed. A number that is none is null.
pub fn write_angle(text: &mut Vec<u8>, degrees: f64) {
    const SCALE: f64 = 1e9;
    const PARTS: u64 = 1_000_000_000;
    if !degrees.is_finite() {
        text.extend_from_slice(b"null");
        return;
    }
    let parts = (degrees.abs() * SCALE + 0.5) as u64;
    // What rounds to half a turn is written as the positive one.
    if degrees < 0.0 && parts != 0 && parts != 180 * PARTS {
        text.push(b'-');
    }
    write_whole(text, parts / PARTS);
    let mut digits = [b'0'; 10];
    digits[0] = b'.';
    let mut rest = parts % PARTS;
    for digit in digits[1..].iter_mut().rev() {
        *digit = b'0' + (rest % 10) as u8;
        rest /= 10;
    }
    let zeros = digits[2..].iter().rev().take_while(|digit| **digit == b'0').count();
    text.extend_from_slice(&digits[..digits.len() - zeros]);
}

/// Writes a number of at least zero with three decimals.
pub fn write_factor(text: &mut Vec<u8>, factor: f64) {
    let thousandths = (factor * 1000.0 + 0.5) as u64;
    write_whole(text, thousandths / 1000);
    let rest = (thousandths % 1000) as u32;
    text.extend_from_slice(&[b'.', digit(rest / 100), digit(rest / 10 % 10), digit(rest % 10)]);
}

/// Writes degrees with one decimal, flush right in so many characters.
pub fn write_column(text: &mut Vec<u8>, degrees: f64, width: usize) {
    let tenths = (degrees.abs() * 10.0 + 0.5) as u64;
    let from = text.len();
    if degrees < 0.0 && tenths != 0 && tenths != 1800 {
        text.push(b'-');
    }
    write_whole(text, tenths / 10);
    text.extend_from_slice(&[b'.', digit((tenths % 10) as u32)]);
    flush_right(text, from, width);
}

/// Writes a whole number, flush right in so many characters.
pub fn write_count(text: &mut Vec<u8>, count: u64, width: usize) {
    let from = text.len();
    write_whole(text, count);
    flush_right(text, from, width);
}

/// Moves what stands behind `from` to the right.
fn flush_right(text: &mut Vec<u8>, from: usize, width: usize) {
    let short = width.saturating_sub(text.len() - from);
    text.extend(std::iter::repeat_n(b' ', short));
    text[from..].rotate_right(short);
}

/// Writes a whole number.
pub fn write_whole(text: &mut Vec<u8>, mut number: u64) {
    let mut digits = [0; 20];
    let mut first = digits.len();
    loop {
        first -= 1;
        digits[first] = b'0' + (number % 10) as u8;
        number /= 10;
        if number == 0 {
            break;
        }
    }
    text.extend_from_slice(&digits[first..]);
}

const fn digit(number: u32) -> u8 {
    b'0' + number as u8
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(write: impl Fn(&mut Vec<u8>)) -> String {
        let mut text = Vec::new();
        write(&mut text);
        String::from_utf8(text).expect("digits are text")
    }

    #[test]
    fn angles_read_back_to_the_ninth_decimal() {
        let angle = |degrees: f64| text(|text| write_angle(text, degrees));
        assert_eq!([angle(0.0), angle(-0.0), angle(60.0), angle(-90.5)], ["0.0", "0.0", "60.0", "-90.5"]);
        assert_eq!([angle(-4e-10), angle(-6e-10)], ["0.0", "-0.000000001"]);
        assert_eq!(
            [angle(180.0), angle(-179.999_999_999_9), angle(-179.999_999_999)],
            ["180.0", "180.0", "-179.999999999"]
        );
        assert_eq!(angle(f64::NAN), "null");
        for step in -180_000_i32..=180_000 {
            let degrees = f64::from(step) / 1000.0 + f64::from(step % 977) * 1e-7;
            let back: f64 = angle(degrees).parse().expect("a number");
            assert!((back - degrees).abs() <= 0.51e-9 || (back - degrees - 360.0).abs() <= 0.51e-9, "{degrees} {back}");
        }
    }

    #[test]
    fn factors_and_columns_are_those_of_the_standard_library() {
        for (factor, expected) in [(1.0, "1.000"), (11.4737, "11.474"), (999.9996, "1000.000")] {
            assert_eq!(text(|text| write_factor(text, factor)), expected);
        }
        for degrees in [0.0, 0.04, -0.04, 64.26, -67.571, 179.96, -179.96] {
            let expected = format!("{degrees:8.1}").replace("  -0.0", "   0.0").replace("-180.0", " 180.0");
            assert_eq!(text(|text| write_column(text, degrees, 8)), expected);
        }
        assert_eq!(text(|text| write_count(text, 1_234_567, 5)), "1234567");
        assert_eq!(text(|text| write_count(text, 42, 5)), "   42");
    }
}
