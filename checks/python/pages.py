"""PDF files as other programs see them: sound, tagged, titled, with a language and their fonts."""

import subprocess
from pathlib import Path

import pikepdf

import words


def check(path: Path, language: str, report) -> None:
    """Everything a PDF has to be, whatever it says."""
    name = f"{path.parent.name}/{path.name}"
    report.looked("pdf-sound")
    result = _run(["qpdf", "--check", str(path)])
    if result.returncode != 0:
        report.fault("pdf-sound", f"{name}: {_last_line(result.stderr or result.stdout)}")
        return
    information = _fields(_run(["pdfinfo", str(path)]).stdout)
    report.looked("pdf-tagged")
    if information.get("Tagged") != "yes":
        report.fault("pdf-tagged", f"{name}: pdfinfo says Tagged: {information.get('Tagged')}")
    report.looked("pdf-title")
    if not information.get("Title"):
        report.fault("pdf-title", f"{name}: no title")
    report.looked("pdf-language")
    with pikepdf.open(path) as pdf:
        stated = str(pdf.Root.get("/Lang", ""))
    if stated.split("-")[0] != language:
        report.fault("pdf-language", f"{name}: /Lang is '{stated}', not '{language}'")
    _fonts(path, name, report)
    _title_first(path, name, information.get("Title", ""), report)


def claims_ua(path: Path) -> bool:
    """Whether the file says of itself that it is PDF/UA."""
    return "pdfuaid" in _run(["pdfinfo", "-meta", str(path)]).stdout


def text(path: Path) -> str:
    """The text in reading order."""
    return _run(["pdftotext", "-enc", "UTF-8", str(path), "-"]).stdout


def _fonts(path: Path, name: str, report) -> None:
    lines = _run(["pdffonts", str(path)]).stdout.splitlines()
    if len(lines) < 3:
        report.fault("pdf-fonts", f"{name}: no fonts, so no text")
        return
    for line in lines[2:]:
        report.looked("pdf-fonts")
        # Name, type and encoding can run into one another; what is asked for stands at the end.
        *named, embedded, _, unicode, _, _ = line.split()
        if embedded != "yes":
            report.fault("pdf-fonts", f"{name}: not embedded: {named[0]}")
        elif unicode != "yes":
            report.fault("pdf-fonts", f"{name}: cannot be turned into text: {named[0]}")


def _title_first(path: Path, name: str, title: str, report) -> None:
    """The title of the file comes first on the first page."""
    report.looked("pdf-title-first")
    start = words.plain(text(path))[:400].casefold()
    first_words = " ".join(words.plain(title).casefold().split()[:3])
    if not first_words or first_words not in start:
        report.fault("pdf-title-first", f"{name}: '{title}' is not among the first words: '{start[:80]}'")


def _fields(text: str) -> dict[str, str]:
    pairs = (line.split(":", 1) for line in text.splitlines() if ":" in line)
    return {key.strip(): value.strip() for key, value in pairs}


def _last_line(text: str) -> str:
    lines = [line for line in text.splitlines() if line.strip()]
    return lines[-1] if lines else "no word of what is wrong"


def _run(command: list[str]) -> subprocess.CompletedProcess:
    return subprocess.run(command, capture_output=True, text=True, errors="replace", check=False)
