"""Nothing that a file brings along is ever run, and one module alone can reach out."""

import ast
from collections.abc import Iterator

import pytest

from tests.architecture.source import imports_of, is_within, shown, source_files

RUNS_WHAT_IT_READS = ("pickle", "marshal", "shelve", "dill", "cloudpickle", "joblib", "yaml")
UNPACKS = ("zipfile", "tarfile", "zlib", "lzma", "bz2", "shutil.unpack_archive")
"""An archive may name any place on the disk; the program reads none."""

REACHES_OUT = (
    "socket",
    "ssl",
    "http",
    "urllib.request",
    "ftplib",
    "smtplib",
    "requests",
    "httpx",
    "PySide6.QtNetwork",
    "paho",
)
SPEAKS_TO_BROKERS = {"keeper/live/broker.py": "paho"}
"""The one module with network code, and all that it may use; loaded once it is switched on."""

FORBIDDEN = (*RUNS_WHAT_IT_READS, *UNPACKS, *REACHES_OUT)
UNSAFE_CALLS = ("eval", "exec", "os.system", "os.popen", "tempfile.mktemp", "zipfile.extractall")


def unsafe_uses(tree: ast.AST, excused: str = "") -> Iterator[str]:
    """What in *tree* could run foreign code or reach out, each as line and name.

    excused: a module that it may import all the same.
    """
    for name in imports_of(tree):
        if excused and is_within(name, excused):
            continue
        if any(is_within(name, module) for module in FORBIDDEN):
            yield f"imports {name}"
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            yield from _unsafe_call(node)


def _unsafe_call(call: ast.Call) -> Iterator[str]:
    name = ast.unparse(call.func)
    if name in UNSAFE_CALLS or name.endswith(".extractall"):
        yield f"line {call.lineno} calls {name}"
    for keyword in call.keywords:
        if keyword.arg in ("shell", "allow_pickle") and ast.unparse(keyword.value) != "False":
            yield f"line {call.lineno} says {keyword.arg}={ast.unparse(keyword.value)}"


@pytest.mark.parametrize("path", source_files(), ids=shown)
def test_no_file_of_the_program_runs_foreign_code_or_reaches_out(path):
    excused = SPEAKS_TO_BROKERS.get(shown(path), "")

    assert list(unsafe_uses(ast.parse(path.read_text(encoding="utf-8")), excused)) == []


def test_the_module_that_speaks_to_brokers_is_excused_from_nothing_else():
    lines = "import paho.mqtt.client\nimport socket\nimport pickle"

    assert list(unsafe_uses(ast.parse(lines), "paho")) == ["imports socket", "imports pickle"]


@pytest.mark.parametrize(
    "line",
    [
        "import pickle",
        "from marshal import loads",
        "import yaml",
        "import zipfile",
        "from shutil import unpack_archive",
        "import urllib.request",
        "from urllib import request",
        "from PySide6 import QtNetwork",
        "import paho.mqtt.publish",
        "eval('1')",
        "exec(text)",
        "os.system(line)",
        "subprocess.run(line, shell=True)",
        "numpy.load(path, allow_pickle=True)",
        "archive.extractall(folder)",
    ],
)
def test_each_unsafe_use_would_be_found(line):
    assert list(unsafe_uses(ast.parse(line))) != []
