"""The words that a keeper reads, in the keeper's language.

The source is English and stands in the code, each sentence one whole literal, figures in braces.
The language is chosen once, at the start of the process and before any module with words is
loaded (``keeper.desktop.chosen_language``), so that a table of words is translated as it is made.
``demo/words.py`` collects every literal that is given to these functions into the catalogues
of ``resources/words``.
"""

from collections.abc import Callable, Mapping
from typing import TypeVar

Lookup = Callable[[str, str], str]
"""What stands for a source and its sense; the source itself where nothing else is known."""

Key = TypeVar("Key")
Entry = TypeVar("Entry")


def _as_written(source: str, sense: str) -> str:
    return source


SOURCE = "en"
VARIABLE = "KEEPER_LANGUAGE"
"""What the environment calls the language; it goes before any choice."""

_lookup: Lookup = _as_written
_spoken = SOURCE


def speak(lookup: Lookup, code: str) -> None:
    """Let *lookup* find every word from now on. For the composition root; code: the language's."""
    global _lookup, _spoken
    _lookup, _spoken = lookup, code


def spoken() -> str:
    """The code of the language that words are in, for a process that is to say the same."""
    return _spoken


def is_source() -> bool:
    """Whether words stand as they are written in the code."""
    return _lookup is _as_written


def tr(source: str, /, *, sense: str = "", **figures: object) -> str:
    """*source* in the keeper's language, its braces filled with *figures* as ``str.format`` does.

    sense: parts two meanings of one English word, and is never shown. Without figures
    the text is left as it stands, braces too.

    >>> tr("{count} of {all} eaten", count=3, all=4), tr("no {braces} filled")
    ('3 of 4 eaten', 'no {braces} filled')
    """
    told = _lookup(source, sense)
    return told.format(**figures) if figures else told


def tr_noop(source: str, /) -> str:
    """*source* as it is, to be collected here and translated where it is shown."""
    return source


def tr_table(table: Mapping[Key, Entry]) -> dict[Key, Entry]:
    """The same table with each text in it translated; of texts, tuples of them and tables.

    In a table of tables the key of the inner one, where it is plain text, is the sense.

    >>> tr_table({"Sex": {"male": "male"}, "cap": ("one", "two")})
    {'Sex': {'male': 'male'}, 'cap': ('one', 'two')}
    """
    return {key: _translated(entry, "", key) for key, entry in table.items()}


def _translated(entry: Entry, sense: str, key: object = "") -> Entry:
    told: object = entry
    if isinstance(entry, str):
        told = _lookup(entry, sense)
    elif isinstance(entry, tuple):
        told = tuple(_translated(part, sense) for part in entry)
    elif isinstance(entry, Mapping):
        inner = key if type(key) is str else ""
        told = {name: _translated(part, inner) for name, part in entry.items()}
    return told  # type: ignore[return-value]
