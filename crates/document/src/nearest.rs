//! The nearest name to a misspelt one.

/// The candidate nearest to `word`, if one is near enough to be meant.
///
/// # Method
/// Damerau–Levenshtein distance on lower-case text; at most a third of the
/// word's length, and at least one change is always allowed.
pub fn nearest<'c>(word: &str, candidates: impl IntoIterator<Item = &'c str>) -> Option<&'c str> {
    let word = word.to_lowercase();
    if word.len() > 64 {
        return None;
    }
    let allowed = (word.chars().count() / 3).max(1);
    candidates
        .into_iter()
        .map(|candidate| (strsim::damerau_levenshtein(&word, &candidate.to_lowercase()), candidate))
        .filter(|(distance, _)| *distance <= allowed)
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, candidate)| candidate)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_the_name_that_was_meant() {
        let tendons = ["supraspinatus", "infraspinatus", "teres minor", "subscapularis"];
        assert_eq!(nearest("supraspinatous", tendons), Some("supraspinatus"));
        assert_eq!(nearest("Infraspinatus", tendons), Some("infraspinatus"));
        assert_eq!(nearest("biceps", tendons), None);
        assert_eq!(nearest("", tendons), None);
    }
}
