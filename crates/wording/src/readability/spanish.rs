//! Syllables of Spanish words.

/// The number of syllables of a word in small letters, at least 1.
///
/// # Method
/// The rules of spelling of the Spanish academies: two strong vowels (a, e, o) stand apart, and
/// so does a weak one (i, u) that carries the accent beside another vowel; all other neighbors
/// are spoken together. An h between vowels is not heard; the u of "que" and "gui" is not
/// spoken; a y sounds as i at the end of a word and before a consonant.
pub fn syllables(word: &str) -> usize {
    let sounds = sounds(word);
    let mut count = 0_usize;
    let mut before = Sound::Consonant;
    for sound in sounds {
        count += usize::from(match (before, sound) {
            (_, Sound::Consonant) => false,
            (Sound::Consonant, _) => true,
            (Sound::Strong | Sound::Accented, Sound::Strong | Sound::Accented) => true,
            (Sound::Weak, Sound::Accented) | (Sound::Accented, Sound::Weak) => false,
            (Sound::Weak, Sound::Strong | Sound::Weak) | (Sound::Strong, Sound::Weak) => false,
        });
        before = sound;
    }
    count.max(1)
}

#[derive(Clone, Copy)]
enum Sound {
    Consonant,
    /// a, e, o, with an accent or without.
    Strong,
    /// i, u, ü.
    Weak,
    /// í, ú.
    Accented,
}

fn sounds(word: &str) -> Vec<Sound> {
    let letters: Vec<char> = word.chars().collect();
    let at = |index: usize| letters.get(index).copied();
    let is_vowel = |c: Option<char>| c.is_some_and(|c| "aeiouáéíóúü".contains(c));
    let mut sounds = Vec::with_capacity(letters.len());
    for (index, letter) in letters.iter().enumerate() {
        let previous = index.checked_sub(1).and_then(at);
        let next = at(index + 1);
        sounds.push(match letter {
            'a' | 'e' | 'o' | 'á' | 'é' | 'ó' => Sound::Strong,
            'í' | 'ú' => Sound::Accented,
            'u' if previous == Some('q') => continue,
            'u' if previous == Some('g') && next.is_some_and(|c| "eiéí".contains(c)) => continue,
            'i' | 'u' | 'ü' => Sound::Weak,
            'y' if !is_vowel(next) => Sound::Weak,
            'h' if is_vowel(previous) && is_vowel(next) => continue,
            _ => Sound::Consonant,
        });
    }
    sounds
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn syllables_as_the_spelling_divides_them() {
        // Divided by the rules of Real Academia Española, Ortografía de la lengua española (2010), by hand.
        for (word, divided) in [
            ("brazo", "bra-zo"),
            ("hombro", "hom-bro"),
            ("cirugía", "ci-ru-gí-a"),
            ("cuidado", "cui-da-do"),
            ("aire", "ai-re"),
            ("leer", "le-er"),
            ("día", "dí-a"),
            ("ciudad", "ciu-dad"),
            ("ahora", "a-ho-ra"),
            ("ahumado", "ahu-ma-do"),
            ("prohibido", "prohi-bi-do"),
            ("prohíbe", "pro-hí-be"),
            ("quieto", "quie-to"),
            ("guía", "guí-a"),
            ("siguiente", "si-guien-te"),
            ("vergüenza", "ver-güen-za"),
            ("agua", "a-gua"),
            ("muy", "muy"),
            ("y", "y"),
            ("hoy", "hoy"),
            ("ayuda", "a-yu-da"),
            ("apoye", "a-po-ye"),
            ("cambiáis", "cam-biáis"),
            ("oído", "o-í-do"),
            ("rotación", "ro-ta-ción"),
            ("oiga", "oi-ga"),
            ("caer", "ca-er"),
            ("toalla", "to-a-lla"),
            ("almohada", "al-mo-ha-da"),
            ("rehabilitación", "re-ha-bi-li-ta-ción"),
            ("después", "des-pués"),
            ("fisioterapeuta", "fi-sio-te-ra-peu-ta"),
            ("cm", "cm"),
        ] {
            assert_eq!(syllables(word), divided.split('-').count(), "{divided}");
        }
    }
}
