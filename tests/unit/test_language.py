"""Every word that a keeper reads is collected, translated, and said in the language chosen."""

import ast
import json
import os
import string
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]

SEEN_TO_BE_ALIKE = {
    *(
        "name",
        "x",
        "OK",
        "Enter",
        "Rack",
        "Racks",
        "cm",
        "m",
        "adult",
        "Rack {rack}",
        "Rack {letter}",
        "dominant",
        "het",
        "{share} het",
    ),
    *("Jan", "Feb", "Apr", "Jun", "Jul", "Aug", "Sep", "Nov"),
}
"""Sources that read the same in German; each stands here because somebody has looked."""

BY_SEX = {"her", "she", "a_sex"}
"""Figures that follow an animal's sex; another grammar may do without."""


@pytest.fixture
def words(monkeypatch):
    monkeypatch.syspath_prepend(str(ROOT / "demo"))
    import words

    return words


def catalogue(words, area, language="de"):
    return words.read(words.catalogue_path(language, area))


AREAS = ("reports", "actions", "screens", "widgets", "desk", "book")


def test_every_part_of_the_program_is_looked_at(words):
    assert tuple(words.AREAS) == AREAS


@pytest.mark.parametrize("area", AREAS)
def test_the_catalogues_hold_what_the_code_says_and_nothing_else(words, area):
    before = {w for other in AREAS[: AREAS.index(area)] for w in words.words_of(other)}

    assert set(catalogue(words, area)) == set(words.words_of(area)) - before


@pytest.mark.parametrize("area", AREAS)
def test_every_text_has_a_german_one(words, area):
    left = sorted(w.key for w, told in catalogue(words, area).items() if not told)

    assert left == []


@pytest.mark.parametrize("area", AREAS)
def test_a_translation_asks_for_the_figures_of_its_source(words, area):
    for source, told in catalogue(words, area).items():
        if told:
            assert fields_of(told) == fields_of(source.source), source.key


@pytest.mark.parametrize("area", AREAS)
def test_no_translation_is_its_source(words, area):
    alike = sorted(
        w.key
        for w, told in catalogue(words, area).items()
        if told == w.source and is_in_words(told) and w.source not in SEEN_TO_BE_ALIKE
    )

    assert alike == []


@pytest.mark.parametrize("area", AREAS)
def test_gaps_that_break_no_line_and_ends_of_sentences_are_kept(words, area):
    for source, told in catalogue(words, area).items():
        if told:
            assert told.count("\u00a0") >= source.source.count("\u00a0"), source.key
            sentence = " " in source.source and source.source[-1:] in ".?"
            assert told[-1:] in ".?:" or not sentence, source.key
            assert told == told.strip() or source.source != source.source.strip(), source.key
            assert "\u2014" not in told, source.key
            assert "!" not in told.replace("!r}", ""), source.key


def test_the_compiled_words_are_those_of_the_catalogues(words, tmp_path):
    words.compiled("de", tmp_path / "de.qm")

    assert (tmp_path / "de.qm").read_bytes() == (words.WORDS / "keeper_de.qm").read_bytes()


@pytest.mark.parametrize(
    ("code", "found"),
    [
        ('tr("Refused.")', ["Refused."]),
        ('tr("{n} of {m}", n=1, m=2)', ["{n} of {m}"]),
        ('tr("row", sense="of tubs")', ["of tubs|row"]),
        ('tr("a long"\n   " one")', ["a long one"]),
        ('tr_noop("Round")', ["Round"]),
        ('counted("egg", "eggs")', ["egg", "eggs"]),
        ('NAME = tr_table({"one": "first", "two": ("second", "third")})', "first second third"),
        ('_E = {"a": "first"}\nNAME = tr_table(_E)', ["first"]),
        ('_E: dict[str, str] = {"a": "first"}\nNAME = tr_table(_E)', ["first"]),
        ('tr_table({"Sex": {"male": "male", "female": "female"}})', "Sex|male Sex|female"),
        ('tr_table({1: {"a": "first"}})', ["first"]),
        ('class T:\n  def f(self):\n    return tr("inside")', ["inside"]),
        ('tr(name)\nprint("not said")\n_E = {"a": "not said"}', []),
    ],
)
def test_each_way_of_saying_a_text_is_collected(words, code, found):
    expected = found.split() if isinstance(found, str) else found

    assert [w.key for w in words.words_in(code)] == expected


def test_a_text_that_was_translated_stays_when_the_words_are_collected_anew(words, tmp_path):
    kept = {words.Words("one", "first"): "eins", words.Words("two"): ""}

    words.write(tmp_path / "part.ts", "de", kept)

    assert words.read(tmp_path / "part.ts") == kept


SAID = {
    "keeper.reports.body_sentences": ("SENTENCES['ask a reptile vet']", "Einen Reptilientierarzt"),
    "keeper.reports.fault_sentences": ("FAULTS['no code']", "Der Code fehlt"),
    "keeper.reports.food_sentences": ("SENTENCES['no holds']", "Keine Pausen."),
    "keeper.reports.house_sentences": ("SENTENCES['isolate']", "Die Box getrennt halten."),
    "keeper.reports.line_sentences": ("LINES['new book']", "{path} ist ein neues, leeres Buch."),
    "keeper.reports.night_sentences": ("SENTENCES['nothing changes']", "Nichts Berechnetes"),
    "keeper.reports.care_sentences": (
        "SENTENCES['weight beside a dose']",
        "Zuletzt {weight_g:g} gewogen",
    ),
    "keeper.reports.joining_sentences": ("SENTENCES['no bundle']", "{path} ist kein"),
    "keeper.reports.state_words": ("WORDS['DueState']['due']", "fällig"),
    "keeper.store.database": ("_ADVICE[sqlite3.SQLITE_FULL]", "Platz auf seinem Datenträger"),
    "keeper.store.backup_words": ("told('nothing restored', flaw='x')", "x Nichts wurde"),
    "keeper.store.profile_schema": ("LIMITS['interval_days'].meaning", "Tage zwischen Mahlzeiten"),
    "keeper.reports.paper_parts": (
        "Table(heads=(), rows=(), shares=()).empty",
        "Nichts eingetragen",
    ),
    "keeper.rules.nights": ("_not_a_rule('x', 'y')", "'x' ist keine Regel für Futterabende"),
    "keeper.live.receiving": ("LiveState().told", "Live-Messwerte sind ausgeschaltet."),
    "keeper.cli.parsing": ("ABOUT", "Was das Fenster kann, ohne Fenster"),
}

IN_GERMAN = """
import json, importlib, sys
from keeper.desktop.chosen_language import choose
choose()
said = {}
for module, expression in json.loads(sys.argv[1]).items():
    loaded = importlib.import_module(module)
    said[module] = eval(expression, {**vars(loaded), "sqlite3": importlib.import_module("sqlite3")})
print(json.dumps(said))
"""


def test_each_table_is_said_in_the_language_chosen():
    said = json.loads(python(IN_GERMAN, json.dumps({m: e for m, (e, _) in SAID.items()})))

    assert {m: told[: len(SAID[m][1])] for m, told in said.items()} == {
        m: expected for m, (_, expected) in SAID.items()
    }


FIGURES = """
import json
from datetime import date
from keeper.desktop.chosen_language import choose
choose()
from keeper.desktop.locale_marks import writing_of
from keeper.desktop.remembered import FigureWays
from keeper.reports import figures
from keeper.reports.writing import put_to_use, Writing
from PySide6.QtCore import QLocale
house = figures.night(date(2026, 3, 18))
german = QLocale(QLocale.Language.German, QLocale.Country.Germany)
put_to_use(writing_of(FigureWays(), german))
print(json.dumps([figures.plain(text) for text in (
    house, figures.night(date(2026, 12, 2)), figures.days(1), figures.days(2.5), figures.ago(0),
    figures.ago(1), figures.ago(12), figures.age(1000), figures.chance(0.0001),
    figures.centile(0.2), figures.grams(1240), figures.KINDS["weighings"](3),
)]))
"""


def test_months_weekdays_ages_and_plurals_are_german():
    assert json.loads(python(FIGURES)) == [
        *("Mi 18. Mär 2026", "Mi 2. Dez 2026", "1 Tag", "2,5 Tage", "heute", "vor 1 Tag"),
        *("vor 12 Tagen", "2 Jahre 8 Monate", "unter 0,1 %", "unter p1", "1.240 g", "3 Wägungen"),
    ]


def test_a_sentence_of_a_rule_is_german_whole():
    code = """
from keeper.desktop.chosen_language import choose
choose()
from keeper.husbandry.animal import Sex
from keeper.husbandry.reasons import because
from keeper.reports.figures import plain
from keeper.reports.words import sentence
told = because("opaque for", days=4, since="2026-03-14", most=10)
print(plain(sentence(told, Sex.FEMALE)))
"""
    assert python(code) == "Trüb seit 14. Mär 2026, 4 Tage; bis zu 10 Tage sind üblich."


def test_a_language_that_nobody_has_written_is_english():
    assert python(
        "from keeper.desktop.chosen_language import choose; print(choose())", of="fr"
    ) == ("en")


BEFORE = """
import json, os, sys
from keeper.desktop import chosen_language
def seen():
    print(json.dumps([m for m in sys.modules if m.partition(".")[0] == "keeper"]), flush=True)
    os._exit(0)
chosen_language.choose = seen
from keeper import __main__
sys.argv = ["keeper", *sys.argv[1:]]
__main__.main()
"""


@pytest.mark.parametrize("arguments", [["due", "no.book", "--on", "2026-03-18"], [], ["open", "x"]])
def test_no_module_with_words_is_loaded_before_the_language_is_chosen(words, arguments, tmp_path):
    loaded = json.loads(python(BEFORE, *arguments, home=tmp_path))

    assert "keeper.desktop.chosen_language" in loaded
    assert [name for name in loaded if says_at_once(words, name)] == []


def test_a_reason_keeps_its_name_in_every_language():
    named = [
        f"{path.name}, line {node.lineno}"
        for path in (ROOT / "keeper").rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if is_call(node, "because", "Wrong") and node.args and is_call(node.args[0], "tr")
    ]

    assert named == []


def test_the_process_that_listens_speaks_without_qt():
    code = """
import sys
from keeper.actions.catalogues import speak_as
speak_as("de")
from keeper.live.receiving import LiveState
assert not [name for name in sys.modules if name.startswith("PySide6")]
print(LiveState().told)
"""
    assert python(code, of="en") == "Live-Messwerte sind ausgeschaltet."


def is_call(node, *names):
    return isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in names


def fields_of(text):
    """The figures that a template asks for, with their kinds; a day's order is its language's."""
    named = (
        (name, "" if (kind or "").startswith("%") else kind, conversion)
        for _, name, kind, conversion in string.Formatter().parse(text)
        if name is not None and name not in BY_SEX
    )
    return sorted(str(field) for field in named)


def is_in_words(text):
    """Whether anything of a template is letters of its own, beside figures."""
    return any(c.isalpha() for part, *_ in string.Formatter().parse(text) for c in part or "")


def says_at_once(words, name):
    """Whether a module holds words at its own level; one that looks them up later may wait."""
    module = without_bodies(ast.parse(source_of(name).read_text("utf-8")))
    return any(True for _ in words.words_in(ast.unparse(module)))


def source_of(name):
    path = ROOT / Path(*name.split("."))
    return path / "__init__.py" if path.is_dir() else path.with_suffix(".py")


def without_bodies(node):
    """A module without what its functions say once they are called."""
    for each in ast.walk(node):
        if isinstance(each, ast.FunctionDef | ast.AsyncFunctionDef):
            each.body = [ast.Pass()]
    return node


def python(code, *arguments, of="de", home=None):
    """What *code* prints in a process of its own that speaks the language *of*."""
    env = {**os.environ, "KEEPER_LANGUAGE": of, "QT_QPA_PLATFORM": "offscreen"}
    if home is not None:
        env |= {"HOME": str(home), "XDG_CONFIG_HOME": str(home), "XDG_DATA_HOME": str(home)}
    done = subprocess.run(
        [sys.executable, "-c", code, *arguments],
        env=env,
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        encoding="utf-8",
    )
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()
