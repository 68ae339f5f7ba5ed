"""The program's own source, read as text and as syntax trees."""

import ast
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
FOLDERS = ("keeper", "demo")


def source_files() -> list[Path]:
    """Every Python file of the program and its demo."""
    return sorted(file for folder in FOLDERS for file in (ROOT / folder).rglob("*.py"))


def shown(path: Path) -> str:
    """*path* as seen from the top of the project."""
    return path.relative_to(ROOT).as_posix()


def imports_of(tree: ast.AST) -> Iterator[str]:
    """Dotted names of every module that is imported anywhere in *tree*."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module is not None:
            yield node.module
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def is_within(name: str, module: str) -> bool:
    """True if *name* is *module* or lies inside it."""
    return name == module or name.startswith(f"{module}.")
