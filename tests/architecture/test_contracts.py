"""The rules of the house bite: each is broken once in a copy and seen to be refused."""

import ast
import os
import subprocess
import sys
import sysconfig
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.architecture.source import ROOT, imports_of, is_within, shown, source_files

SCRIPTS = Path(sysconfig.get_path("scripts"))
CONFIG = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
CONTRACTS = CONFIG["tool"]["importlinter"]["contracts"]
SEEDS = {
    "Layers: outer may import inner, never the reverse; siblings do not meet": (
        "keeper/husbandry/when.py",
        "import keeper.rules.feeding",
    ),
    "Qt lives in desktop only": ("keeper/actions/seed.py", "from PySide6 import QtCore"),
    "SQL lives in store only": ("keeper/actions/seed.py", "import sqlite3"),
    "Network code lives in live only": ("keeper/desktop/look.py", "import paho.mqtt.client"),
    "Vocabulary is plain Python: no arrays, no files, no store": (
        "keeper/husbandry/when.py",
        "import json",
    ),
    "Rules read no file, no database and no clock": (
        "keeper/rules/feeding.py",
        "from keeper.clock import now",
    ),
    "Only growth computes with arrays": ("keeper/rules/feeding.py", "import numpy"),
    "Store knows the vocabulary, not the rules": (
        "keeper/store/rows.py",
        "from keeper.rules import feeding",
    ),
    "Screens speak to actions only": ("keeper/desktop/look.py", "import keeper.store.reading"),
}
MOST_LINES = 400
MOST_CLASS_LINES = 200
MOST_PUBLIC_METHODS = 15


def named_modules() -> set[str]:
    """Every module of the house that a contract names."""
    fields = ("layers", "source_modules", "forbidden_modules")
    named = [name for contract in CONTRACTS for field in fields for name in contract.get(field, [])]
    parts = {part.strip() for name in named for part in name.split("|")}
    return {part for part in parts if is_within(part, "keeper")}


@pytest.fixture(scope="module")
def skeleton(tmp_path_factory):
    """The package with all its modules, every one of them empty: what is seeded is all there is."""
    root = tmp_path_factory.mktemp("house")
    (root / "pyproject.toml").write_bytes((ROOT / "pyproject.toml").read_bytes())
    files = {file.relative_to(ROOT) for file in (ROOT / "keeper").rglob("*.py")}
    for module in named_modules():
        path = Path(*module.split("."))
        if path.with_suffix(".py") not in files:
            files.add(path / "__init__.py")
    files.add(Path("keeper/actions/seed.py"))
    for file in files:
        for folder in [root / file.parent, *(root / file.parent).parents]:
            if is_within(".".join(folder.relative_to(root).parts), "keeper"):
                folder.mkdir(parents=True, exist_ok=True)
                (folder / "__init__.py").touch()
            if folder == root / "keeper":
                break
        (root / file).touch()
    return root


def broken_contracts(root: Path) -> tuple[int, list[str]]:
    """What lint-imports says of the package under *root*: exit code and names of broken ones."""
    done = subprocess.run(
        [SCRIPTS / "lint-imports", "--no-cache"],
        cwd=root,
        env={**os.environ, "COLUMNS": "200", "NO_COLOR": "1"},
        capture_output=True,
        text=True,
        check=False,
    )
    lines = [line.strip() for line in done.stdout.splitlines()]
    names = [contract["name"] for contract in CONTRACTS]
    return done.returncode, [name for name in names if f"{name} BROKEN" in lines]


def test_every_contract_has_a_seed_that_breaks_it():
    assert set(SEEDS) == {contract["name"] for contract in CONTRACTS}


def test_a_house_without_imports_breaks_no_contract(skeleton):
    assert broken_contracts(skeleton) == (0, [])


@pytest.mark.parametrize("name", SEEDS)
def test_a_contract_bites(skeleton, name):
    file, line = SEEDS[name]
    (skeleton / file).write_text(f"{line}\n", encoding="utf-8")

    told = broken_contracts(skeleton)

    (skeleton / file).write_text("", encoding="utf-8")
    assert told == (1, [name])


def too_large(path: Path) -> Iterator[str]:
    """What in the file is beyond its cap."""
    text = path.read_text(encoding="utf-8")
    if len(text.splitlines()) > MOST_LINES:
        yield f"{len(text.splitlines())} lines"
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.ClassDef):
            yield from _too_large_class(node)


def _too_large_class(node: ast.ClassDef) -> Iterator[str]:
    lines = (node.end_lineno or node.lineno) - node.lineno + 1
    public = [
        part.name
        for part in node.body
        if isinstance(part, ast.FunctionDef | ast.AsyncFunctionDef)
        and not part.name.startswith("_")
    ]
    if lines > MOST_CLASS_LINES:
        yield f"class {node.name} has {lines} lines"
    if len(public) > MOST_PUBLIC_METHODS:
        yield f"class {node.name} has {len(public)} public methods"


@pytest.mark.parametrize("path", source_files(), ids=shown)
def test_no_file_or_class_outgrows_its_cap(path):
    assert list(too_large(path)) == []


@pytest.mark.parametrize(
    "text",
    [
        "x = 1\n" * 401,
        "class Big:\n" + "    x = 1\n" * 200,
        "class Wide:\n" + "".join(f"    def say_{n}(self): ...\n" for n in range(16)),
    ],
    ids=["a long file", "a long class", "a wide class"],
)
def test_what_outgrows_its_cap_is_found(tmp_path, text):
    (tmp_path / "large.py").write_text(text, encoding="utf-8")

    assert len(list(too_large(tmp_path / "large.py"))) == 1


def ruff_codes(name: str, text: str) -> set[str]:
    """Codes that ruff reports for *text* as if it were the file *name* of this project."""
    done = subprocess.run(
        [SCRIPTS / "ruff", "check", "--output-format=concise", "--stdin-filename", name, "-"],
        cwd=ROOT,
        input=text,
        capture_output=True,
        text=True,
        check=False,
    )
    return {word for line in done.stdout.splitlines() for word in line.split() if word.isalnum()}


LONG_FUNCTION = "def work() -> None:\n" + "    call()\n" * 31
CLOCKS = (
    "from datetime import datetime\n\nhere = datetime.now()\n",
    "from datetime import datetime\n\nhere = datetime.utcnow()\n",
    "from datetime import datetime\n\nhere = datetime.today()\n",
    "import datetime\n\nhere = datetime.date.today()\n",
    "import time\n\nhere = time.time()\n",
)


def test_a_function_of_more_than_thirty_statements_is_refused():
    assert "PLR0915" in ruff_codes("keeper/rules/seed.py", LONG_FUNCTION)


@pytest.mark.parametrize("text", CLOCKS)
def test_the_wall_clock_is_refused_everywhere_but_in_its_file(text):
    assert "TID251" in ruff_codes("keeper/rules/seed.py", text)
    assert "TID251" not in ruff_codes("keeper/clock.py", text)


def test_no_comment_lets_a_long_function_or_a_clock_through():
    exempt = [
        shown(path)
        for path in source_files()
        for line in path.read_text(encoding="utf-8").splitlines()
        if "noqa" in line and ("PLR0915" in line or "TID251" in line)
    ]

    assert exempt == []


def test_only_growth_and_the_reading_of_logger_files_compute_with_arrays():
    growth = ROOT / "keeper" / "rules" / "growth"
    found = [
        shown(path)
        for path in (ROOT / "keeper").rglob("*.py")
        if growth not in path.parents
        and not path.name.startswith("logger_")
        and any(is_within(name, "numpy") for name in imports_of(ast.parse(path.read_text("utf-8"))))
    ]

    assert found == []


@pytest.mark.parametrize(
    "module",
    ["keeper", "keeper.husbandry.events", "keeper.rules.feeding", "keeper.rules.alerts"],
)
def test_the_pure_part_wakes_neither_window_nor_arrays_nor_database(module):
    heavy = ("PySide6", "numpy", "sqlite3", "sqlite_utils")
    ask = f"import sys, {module}; print(*[name for name in {heavy!r} if name in sys.modules])"

    told = subprocess.run(
        [sys.executable, "-c", ask], cwd=ROOT, capture_output=True, text=True, check=True
    )

    assert told.stdout == "\n"


@pytest.mark.parametrize("module", ["keeper.live.receiving", "keeper.desktop.screens.heat"])
def test_nothing_that_reaches_out_is_loaded_before_live_readings_are_switched_on(module):
    ask = f"import sys, {module}; print(*[name for name in sys.modules if 'paho' in name])"

    told = subprocess.run(
        [sys.executable, "-c", ask], cwd=ROOT, capture_output=True, text=True, check=True
    )

    assert told.stdout == "\n"


def test_opening_a_book_wakes_no_arrays():
    ask = "import sys, keeper.store.locks, keeper.store.reading; print('numpy' in sys.modules)"

    told = subprocess.run(
        [sys.executable, "-c", ask], cwd=ROOT, capture_output=True, text=True, check=True
    )

    assert told.stdout == "False\n"
