"""What the records page says of one batch."""

from __future__ import annotations

from collections.abc import Sequence

from keeper.actions.records import EntryLine, RecordRow
from keeper.desktop.models.record_rows import Seen, by_whom, when
from keeper.desktop.widgets.record_panel import EntryFace
from keeper.language import tr
from keeper.reports.words import verb_words


def head(row: RecordRow) -> str:
    """What was done, and that it was taken back."""
    verb = verb_words(row.batch.verb)
    return verb if row.batch.stands else tr("{verb}, taken back", verb=verb)


def aside(row: RecordRow, seen: Seen) -> str:
    """When, by whom, and why where a reason was given."""
    parts = (tr("written {when}", when=when(row, seen)), by_whom(row, seen), row.batch.reason)
    return "   ".join(part for part in parts if part)


def faces(lines: Sequence[EntryLine]) -> list[EntryFace]:
    """Each entry: whose, what, and its note."""
    return [
        EntryFace(" ".join(part for part in (line.who, _noted(line)) if part), not line.stands)
        for line in lines
    ]


def _noted(line: EntryLine) -> str:
    return f"{line.told} ({line.note})" if line.note else line.told
