"""The keeper's first book: with records taken in, or empty, to be written by hand."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from keeper import clock
from keeper.actions.station import station_name

if TYPE_CHECKING:
    from keeper.actions.keeping import Keeping


def book_with_files(
    empty: Keeping | None, animals: Path | None, diary: Path | None, book: Path | None
) -> Keeping:
    """The *empty* book with the files in it, or a new one at *book*.

    Raises:
        ValueError: the files cannot be taken, in one sentence; nothing is written.
        BookError, OSError: no book can be made there.
    """
    from keeper.actions.first_book import book_from_files
    from keeper.actions.taking_in import take_in
    from keeper.desktop.screens.files_asking import told

    if empty is not None or book is None:
        assert empty is not None
        taken = take_in(empty, animals=animals, diary=diary)
        if taken.written is None:
            raise ValueError(told(taken))
        return empty
    book.parent.mkdir(parents=True, exist_ok=True)
    made, _ = book_from_files(book, animals, diary, station=station_name(), now=clock.now)
    return made


def book_by_hand(empty: Keeping | None, book: Path | None) -> Keeping:
    """The *empty* book as it is, or a new one at *book*.

    Raises:
        BookError, OSError: no book can be made there.
    """
    from keeper.actions.keeping import new_keeping

    if empty is not None or book is None:
        assert empty is not None
        return empty
    book.parent.mkdir(parents=True, exist_ok=True)
    return new_keeping(book, station=station_name(), now=clock.now)
