"""Keep the catalogues of translated words in step with the code.

    python demo/words.py                   collect every literal, compile what is translated
    python demo/words.py --left AREA       the words of AREA without a translation, as JSON
    python demo/words.py --fill FILE.json  take translations from a table of source: translation

A key in such a table is the source, or ``sense|source`` where the code gives a sense. The
catalogues are Qt's own .ts files, one for each part of the program; pyside6-lrelease makes one
.qm of them.
"""

import argparse
import ast
import json
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fcntl import LOCK_EX, flock
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
WORDS = ROOT / "resources" / "words"
LANGUAGES = ("de",)
AREAS = {
    "reports": ("keeper/reports", "keeper/rules", "keeper/husbandry"),
    "actions": ("keeper/actions",),
    "screens": ("keeper/desktop/screens",),
    "widgets": ("keeper/desktop/widgets", "keeper/desktop/paper", "keeper/desktop/models"),
    "desk": ("keeper/desktop",),
    "book": ("keeper",),
}
"""Each part of the program and its folders; a file belongs to the first part that has it."""

_HEAD = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
_CONTEXT = "keeper"
_OF_TEXTS = ("tr", "tr_noop", "counted")
"""Functions whose literals are texts."""

Catalogue = dict["Words", str]


@dataclass(frozen=True, slots=True, order=True)
class Words:
    """One text to be translated. sense: empty, or what parts it from one of the same letters."""

    source: str
    sense: str = ""

    @property
    def key(self) -> str:
        return f"{self.sense}|{self.source}" if self.sense else self.source


def words_of(area: str) -> list[Words]:
    """Every text that the code of *area* gives to be translated, in order."""
    return sorted({words for path in _files(area) for words in words_in(path.read_text("utf-8"))})


def words_in(code: str) -> Iterator[Words]:
    """The texts that a module's source gives to be translated."""
    module = ast.parse(code)
    tables = dict(_named_tables(module))
    for node in ast.walk(module):
        if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.args):
            continue
        if node.func.id in _OF_TEXTS:
            yield from _of_text(node)
        elif node.func.id == "tr_table":
            table = node.args[0]
            yield from _of_table(tables.get(table.id) if isinstance(table, ast.Name) else table)


def _named_tables(module: ast.Module) -> Iterator[tuple[str, ast.Dict]]:
    for node in module.body:
        if isinstance(node, ast.Assign | ast.AnnAssign) and isinstance(node.value, ast.Dict):
            targets = node.targets if isinstance(node, ast.Assign) else [node.target]
            yield from ((name.id, node.value) for name in targets if isinstance(name, ast.Name))


def _of_text(call: ast.Call) -> Iterator[Words]:
    sense = next((_text(word.value) for word in call.keywords if word.arg == "sense"), "")
    yield from (Words(_text(source), sense) for source in call.args if _text(source))


def _of_table(table: ast.AST | None) -> Iterator[Words]:
    if isinstance(table, ast.Dict):
        for key, entry in zip(table.keys, table.values, strict=True):
            sense = _text(key) if isinstance(entry, ast.Dict) else ""
            yield from (Words(text, sense) for text in _texts(entry))


def _texts(entry: ast.AST) -> Iterator[str]:
    """Texts of an entry of a table: itself, those of a tuple, those that a table inside holds."""
    parts = {ast.Tuple: "elts", ast.Dict: "values"}.get(type(entry))
    if parts:
        yield from (text for part in getattr(entry, parts) for text in _texts(part))
    elif _text(entry):
        yield _text(entry)


def _text(node: ast.AST | None) -> str:
    """The text of a literal; empty for anything else."""
    told = node.value if isinstance(node, ast.Constant) else ""
    return told if isinstance(told, str) else ""


def _files(area: str) -> Iterator[Path]:
    taken = [folder for part in list(AREAS)[: list(AREAS).index(area)] for folder in AREAS[part]]
    for folder in AREAS[area]:
        for path in sorted((ROOT / folder).rglob("*.py")):
            if not any(path.is_relative_to(ROOT / other) for other in taken):
                yield path


def catalogue_path(language: str, area: str) -> Path:
    return WORDS / language / f"{area}.ts"


def read(path: Path) -> Catalogue:
    """What a catalogue holds; an untranslated text has an empty translation."""
    if not path.is_file():
        return {}
    return {
        Words(m.findtext("source", ""), m.findtext("comment", "")): m.findtext("translation", "")
        for m in ET.parse(path).iter("message")
    }


def write(path: Path, language: str, catalogue: Catalogue) -> None:
    """Write *catalogue* as a .ts file, in the order of its sources."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = ET.SubElement(root, "context")
    ET.SubElement(context, "name").text = _CONTEXT
    for words in sorted(catalogue):
        message = ET.SubElement(context, "message")
        ET.SubElement(message, "source").text = words.source
        if words.sense:
            ET.SubElement(message, "comment").text = words.sense
        told = ET.SubElement(message, "translation")
        told.text = catalogue[words] or None
        if not catalogue[words]:
            told.set("type", "unfinished")
    ET.indent(root, " ")
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(_HEAD + ET.tostring(root, encoding="unicode") + "\n", "utf-8")


def bring_up_to_date(language: str, found: Mapping[str, str]) -> None:
    """Collect anew: keep what is translated, take what *found* has, drop what no code says.

    A text that several parts say stands in the catalogue of the first.
    """
    known = {w: told for area in AREAS for w, told in _read_of(language, area).items() if told}
    seen: set[Words] = set()
    for area in AREAS:
        texts = [words for words in words_of(area) if words not in seen]
        seen.update(texts)
        fresh = {words: found.get(words.key, known.get(words, "")) for words in texts}
        if fresh != _read_of(language, area) or not catalogue_path(language, area).is_file():
            write(catalogue_path(language, area), language, fresh)


def _read_of(language: str, area: str) -> Catalogue:
    return read(catalogue_path(language, area))


def compiled(language: str, into: Path) -> None:
    """Make the one .qm of a language out of its catalogues. Raises CalledProcessError.

    A window that runs reads the old one on, so the new one takes its name and not its place.
    """
    tool = shutil.which("pyside6-lrelease", path=str(Path(sys.executable).parent))
    if tool is None:
        raise FileNotFoundError("pyside6-lrelease is missing; it comes with PySide6.")
    parts = [str(catalogue_path(language, area)) for area in AREAS]
    fresh = into.with_suffix(".new")
    subprocess.run([tool, "-silent", *parts, "-qm", str(fresh)], check=True)
    fresh.replace(into)


def main() -> int:
    """Do what the command line asks."""
    parser = argparse.ArgumentParser(description="Keep the translated words in step.")
    parser.add_argument("--left", choices=tuple(AREAS))
    parser.add_argument("--fill", type=Path)
    asked = parser.parse_args()
    with Path(__file__).open("rb") as lock:
        flock(lock, LOCK_EX)
        found = json.loads(asked.fill.read_text("utf-8")) if asked.fill else {}
        for language in LANGUAGES:
            bring_up_to_date(language, found)
            compiled(language, WORDS / f"keeper_{language}.qm")
            if asked.left:
                catalogue = _read_of(language, asked.left)
                left = {words.key: "" for words, told in catalogue.items() if not told}
                sys.stdout.write(json.dumps(left, ensure_ascii=False, indent=1) + "\n")
            else:
                _tell(language)
    return 0


def _tell(language: str) -> None:
    for area in AREAS:
        catalogue = _read_of(language, area)
        done = sum(bool(told) for told in catalogue.values())
        sys.stdout.write(f"{language} {area}: {done} of {len(catalogue)}\n")


if __name__ == "__main__":
    sys.exit(main())
