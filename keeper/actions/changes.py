"""What changed from version to version, as it is told to keepers."""

from dataclasses import dataclass
from pathlib import Path

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
    files = (resource_dir() / "changes").glob("*.md")
    found = [Change(version=f.stem, told=f.read_text(encoding="utf-8")) for f in files]
    return sorted(found, key=lambda change: order_of(change.version), reverse=True)


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
