//! Numbers of a file, read by the million.

/// A number as programs write it.
pub fn number(cell: &[u8]) -> Option<f64> {
    let whole = short(cell).filter(|(_, used)| *used == cell.len()).map(|(number, _)| number);
    whole.or_else(|| bare(cell)).or_else(|| {
        let text = std::str::from_utf8(cell).ok()?.trim();
        let text = text.strip_prefix('"').and_then(|text| text.strip_suffix('"')).unwrap_or(text);
        bare(text.trim().as_bytes())
    })
}

/// What the standard library reads, with nothing around it.
fn bare(cell: &[u8]) -> Option<f64> {
    std::str::from_utf8(cell).ok()?.parse().ok()
}

/// A plain decimal at the start of a text, of few enough digits for whole numbers, and how long it is; none of all
/// others.
///
/// Up to fifteen digits it is the nearest number there is, as the standard library gives it. With more it may be the next
/// one, which is far under what any of these angles means, and takes one pass over the digits.
pub fn short(text: &[u8]) -> Option<(f64, usize)> {
    let negative = text.first() == Some(&b'-');
    let start = usize::from(negative);
    let (mut whole, mut point, mut at) = (0_u64, None, start);
    while let Some(byte) = text.get(at) {
        match byte {
            b'0'..=b'9' if whole <= MOST_BEFORE_NEXT => whole = whole * 10 + u64::from(byte - b'0'),
            b'0'..=b'9' => return None,
            b'.' if point.is_none() => {
                point = Some(at);
                while whole <= MOST_BEFORE_EIGHT
                    && let Some(next) = text.get(at + 1..).and_then(<[u8]>::first_chunk).and_then(eight)
                {
                    whole = whole * 100_000_000 + next;
                    at += 8;
                }
            }
            _ => break,
        }
        at += 1;
    }
    let decimals = point.map_or(0, |point| at - point - 1);
    if at - start == usize::from(point.is_some()) {
        return None;
    }
    // The power is exact, and so is the whole number up to 2^53.
    let number = whole as f64 / POWERS.get(decimals)?;
    Some((if negative { -number } else { number }, at))
}

/// Eight digits at once; none where one of them is none.
fn eight(digits: &[u8; 8]) -> Option<u64> {
    let word = u64::from_le_bytes(*digits);
    // The upper half of each byte is 3, also after adding 6 to the lower one.
    let upper = (word & UPPER) | ((word.wrapping_add(SIX_EACH) & UPPER) >> 4);
    if upper != UPPER_OF_DIGITS {
        return None;
    }
    // Pairs, then pairs of pairs, then both halves.
    let ones = word - ZEROS;
    let pairs = (ones * 10 + (ones >> 8)) & 0x00FF_00FF_00FF_00FF;
    let fours = (pairs * 100 + (pairs >> 16)) & 0x0000_FFFF_0000_FFFF;
    Some((fours * 10_000 + (fours >> 32)) & 0xFFFF_FFFF)
}

const ZEROS: u64 = 0x3030_3030_3030_3030;
const UPPER: u64 = 0xF0F0_F0F0_F0F0_F0F0;
const SIX_EACH: u64 = 0x0606_0606_0606_0606;
const UPPER_OF_DIGITS: u64 = 0x3333_3333_3333_3333;

/// One more digit still fits, or eight.
const MOST_BEFORE_NEXT: u64 = (u64::MAX - 9) / 10;
const MOST_BEFORE_EIGHT: u64 = (u64::MAX - 99_999_999) / 100_000_000;

const POWERS: [f64; 23] = [
    1.0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20,
    1e21, 1e22,
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_is_what_the_standard_library_reads() {
        let texts = [
            "0",
            "-0",
            "1",
            "-1",
            "0.5",
            ".5",
            "5.",
            "-.25",
            "0.246202",
            "-0.793412",
            "0.123456789012345",
            "999999999999999",
            "0.1234567890123456789",
            "1e-3",
            "-2.5E2",
            "+0.5",
            "1e400",
            "nan",
            "inf",
            "-Infinity",
            "00.5",
            "0.3",
        ];
        for text in texts {
            let (read, expected) = (number(text.as_bytes()), text.parse::<f64>().ok());
            assert_eq!(read.map(f64::to_bits), expected.map(f64::to_bits), "{text}");
        }
        for text in ["", "-", ".", "-.", "1.2.3", "0,5", "abc", "1 2", "0x1", "--1", "1-2"] {
            assert_eq!(number(text.as_bytes()), None, "{text}");
        }
        for text in [" 0.5", "0.5\r", "\"0.5\"", " \" 0.5 \" "] {
            assert_eq!(number(text.as_bytes()), Some(0.5), "{text}");
        }
        assert_eq!(number(b"\xff\xfe"), None);
        // More digits than a number holds: the nearest one or the next.
        for step in 1..2000_u32 {
            let exact = (f64::from(step) * 0.618_033_988_749).sin();
            for text in [format!("{exact}"), format!("{exact:.17}"), format!("{exact:.21}"), format!("{exact:e}")] {
                let read = number(text.as_bytes()).expect("a number");
                let exact: f64 = text.parse().expect("a number");
                assert!((read - exact).abs() <= f64::EPSILON * exact.abs(), "{text}: {read:e} {exact:e}");
            }
        }
        // Every number of six decimals: the division is the nearest double, as the standard says of one operation.
        for step in (-1_000_000..=1_000_000).step_by(37) {
            let text = format!("{:.6}", f64::from(step) / 1e6);
            assert_eq!(number(text.as_bytes()).map(f64::to_bits), text.parse().ok().map(f64::to_bits), "{text}");
        }
    }

    #[test]
    fn eight_digits_at_once_are_eight_digits() {
        for number in (0..100_000_000_u64).step_by(9973).chain([0, 9, 99_999_999]) {
            let text = format!("{number:08}");
            assert_eq!(text.as_bytes().first_chunk().and_then(eight), Some(number));
        }
        for at in 0..8 {
            for byte in (0..=u8::MAX).filter(|byte| !byte.is_ascii_digit()) {
                let mut digits = *b"12345678";
                digits[at] = byte;
                assert_eq!(eight(&digits), None, "{byte} at {at}");
            }
        }
    }
}
