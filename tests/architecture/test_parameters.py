"""What a keeper types reaches SQL as a parameter only: a question's text is the store's own."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.architecture.source import ROOT, shown, source_files

STORE = sorted((ROOT / "keeper" / "store").glob("*.py"))
RUNS_SQL = ("execute", "executemany", "executescript")
OWN_WORDS = {
    # names of tables and columns, from the schema or the dataclasses
    "table",
    "column",
    "about",
    "TABLES[kind]",
    "select_columns(kind)",
    "', '.join(given)",
    "', '.join(cells)",
    "', '.join(HEAD)",
    "wanted",
    "counts",
    "where",
    "marks",
    "marks[0]",
    "marks[1]",
    "names",
    "indexed",
    "order",
    # fixed numbers and pieces of SQL
    "WHOLE",
    "APPLICATION_ID",
    "SCHEMA_VERSION",
    "_SHOWN",
    "version",
    "_BUSY_MS",
    "_JOURNAL_BYTES",
    "_CACHE_KIB",
    "_NOW_SQL",
    "_SELECT",
    "_LAYERS",
    "_STANDS",
    "AMONG",
    "stands('e')",
    "stands('x')",
    "twice",
    "condition",
    "fresh_schema()",
}
"""All that may stand in a question besides its own letters. A value of a record may not."""


def pieces(tree: ast.AST) -> Iterator[str]:
    """What is put into the text of a question that is asked in *tree*."""
    for call in ast.walk(tree):
        if isinstance(call, ast.Call) and _name(call) in RUNS_SQL and call.args:
            for part in ast.walk(call.args[0]):
                if isinstance(part, ast.FormattedValue):
                    yield ast.unparse(part.value)
                elif isinstance(part, ast.BinOp) and isinstance(part.op, (ast.Mod, ast.Add)):
                    yield f"text put together by {ast.unparse(part)[:40]}"


def _name(call: ast.Call) -> str:
    return call.func.attr if isinstance(call.func, ast.Attribute) else ast.unparse(call.func)


@pytest.mark.parametrize("path", STORE, ids=shown)
def test_a_question_is_put_together_from_the_store_s_own_words_alone(path: Path) -> None:
    tree = ast.parse(path.read_text(encoding="utf-8"))

    assert set(pieces(tree)) <= OWN_WORDS


@pytest.mark.parametrize(
    "line",
    [
        "book.connection.execute(f\"SELECT * FROM animal WHERE code = '{code}'\")",
        "connection.execute('SELECT ' + text)",
        "connection.execute('SELECT %s' % text)",
    ],
)
def test_a_value_put_into_a_question_would_be_found(line: str) -> None:
    assert not set(pieces(ast.parse(line))) <= OWN_WORDS


def conditions(tree: ast.AST) -> Iterator[ast.expr]:
    """The SQL that ``all_of`` is given from outside the store."""
    for call in ast.walk(tree):
        if isinstance(call, ast.Call) and _name(call) == "all_of" and len(call.args) > 2:
            yield call.args[2]


def is_fixed(tree: ast.AST, given: ast.expr) -> bool:
    """A text written out, or a name that is only ever given texts with no value in them."""
    if isinstance(given, ast.Constant):
        return True
    if isinstance(given, ast.JoinedStr):
        parts = [part for part in given.values if isinstance(part, ast.FormattedValue)]
        return all(ast.unparse(part.value) in FIXED_PARTS for part in parts)
    if isinstance(given, ast.IfExp):
        return is_fixed(tree, given.body) and is_fixed(tree, given.orelse)
    if isinstance(given, ast.Name):
        found = [
            node.value
            for node in ast.walk(tree)
            if isinstance(node, ast.Assign)
            and any(ast.unparse(target) == given.id for target in node.targets)
        ]
        return bool(found) and all(is_fixed(tree, value) for value in found)
    return False


FIXED_PARTS = {"ended", "marks", "', '.join('?' * len(places))", "stands('x')"}


@pytest.mark.parametrize("path", source_files(), ids=shown)
def test_a_condition_given_from_outside_the_store_holds_no_value(path: Path) -> None:
    tree = ast.parse(path.read_text(encoding="utf-8"))

    assert [ast.unparse(c) for c in conditions(tree) if not is_fixed(tree, c)] == []
