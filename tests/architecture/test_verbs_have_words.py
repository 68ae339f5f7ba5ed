"""Every verb that a batch is written under has its words, in every language that is spoken."""

import ast
from collections.abc import Iterator
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from keeper.actions.round_entries import ROUND_VERBS
from keeper.rehearsal.collection import make_collection
from keeper.reports.book_tokens import TOKENS
from keeper.store import reading

HOME = Path(__file__).resolve().parents[2] / "keeper"
WRITERS = {"note": 1, "write": 1, "_noticed": 0, "_settled": 0, "_typed": 0}
"""Functions that take a verb, and where it stands among what they are given."""


def verbs_in(code: str) -> Iterator[str]:
    """Literal verbs of a module: given by name, by place, or kept under a name such as VERB."""
    for node in ast.walk(ast.parse(code)):
        if isinstance(node, ast.Call):
            yield from _given(node)
        elif isinstance(node, ast.Assign) and isinstance(node.value, ast.Constant):
            names = [target.id for target in node.targets if isinstance(target, ast.Name)]
            if any(name.endswith("VERB") for name in names):
                yield str(node.value.value)


def _given(call: ast.Call) -> Iterator[str]:
    name = getattr(call.func, "id", getattr(call.func, "attr", ""))
    at = WRITERS.get(name)
    given = [word.value for word in call.keywords if word.arg == "verb"]
    if at is not None and len(call.args) > at:
        given.append(call.args[at])
    yield from (v.value for v in given if isinstance(v, ast.Constant) and isinstance(v.value, str))


def modules() -> list[Path]:
    folders = (HOME / "actions", HOME / "rehearsal", HOME / "store")
    return [path for folder in folders for path in sorted(folder.glob("*.py"))]


@pytest.mark.parametrize("path", modules(), ids=lambda path: path.stem)
def test_every_verb_of_a_module_has_words(path):
    assert {*verbs_in(path.read_text("utf-8"))} <= {*TOKENS["verb"]}


def test_verbs_of_a_round_and_of_an_invented_collection_have_words(tmp_path):
    book = tmp_path / "invented.book"
    with closing(make_collection(book, animals=12, years=1, ends_on=date(2026, 11, 24))) as keeping:
        written = {batch.verb for batch in reading.latest_batches(keeping.book, 10_000)}

    assert {"receive", "write up"} <= written
    assert {*ROUND_VERBS} | written <= {*TOKENS["verb"]}


def test_a_verb_is_found_however_it_is_given():
    code = 'VERB = "one"\nnote(k, "two", e)\nbatch(b, verb="three")\nself._noticed("four", t)'

    assert {*verbs_in(code)} == {"one", "two", "three", "four"}
