"""What changed from version to version, as it is told to keepers, in their language."""

from dataclasses import dataclass
from pathlib import Path

from keeper.language import spoken
from keeper.store.resources import resource_dir


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """One version: its number and what it brought, in Markdown under its own heading."""

    version: str
    told: str


def changes() -> list[Change]:
    """Every version that is told of, the newest first.

    Raises:
        FileNotFoundError: the program's own resources are missing.
    """
    found = [
        Change(version=file.stem, told=_in_words(file).read_text(encoding="utf-8"))
        for file in resource_path("changes").glob("*.md")
    ]
    return sorted(found, key=lambda change: order_of(change.version), reverse=True)


def _in_words(file: Path) -> Path:
    """The same in the language that is spoken, where it is written in it."""
    told = file.parent / spoken() / file.name
    return told if told.is_file() else file


def newest_version() -> str:
    """The version that runs: the newest that is told of; empty where none is."""
    versions = (file.stem for file in resource_path("changes").glob("*.md"))
    return max(versions, key=order_of, default="")


def resource_path(*parts: str) -> Path:
    """A file or folder that comes with the program, for those who may not know the store."""
    return resource_dir().joinpath(*parts)


def order_of(version: str) -> tuple[int, ...]:
    """A version by its numbers, so that 0.10 comes after 0.9.

    >>> order_of("0.10.0") > order_of("0.9.2")
    True
    """
    return tuple(int(part) if part.isdecimal() else 0 for part in version.split("."))
