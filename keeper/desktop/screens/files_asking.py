"""Two files asked for by one line at the foot, looked at, and taken in only when agreed."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QDir
from PySide6.QtWidgets import QCompleter, QFileSystemModel

from keeper.actions.taking_in import TakenIn
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr
from keeper.reports.figures import counted

SHOWN_FAULTS = 12
FILES = tr(
    "Two CSV files, with their columns in the first line. Animals: animal,species,sex,hatched,"
    "place. Diary: animal,date,what,grams,note; under what stands fed, refused, regurgitated, "
    "weighed, dull, opaque, cleared or shed. Nothing is written before you have seen the count."
)
ANIMALS, ENTRIES, ROWS = (
    counted("animal", "animals"),
    counted("entry", "entries"),
    counted("row", "rows"),
)
Paths = tuple[Path | None, Path | None]


class FilesAsking:
    """Asks for the animals file, then for the diary, and shows what they hold.

    looked: what the two files would bring, with nothing written. say: shows a text.
    agreed: called with the files and the counts when there is something to take in.
    """

    def __init__(
        self,
        asking: AskingLine,
        *,
        looked: Callable[[Path | None, Path | None], TakenIn],
        say: Callable[[str], None],
        agreed: Callable[[Paths, str], None],
    ) -> None:
        self._asking, self._looked, self._say, self._agreed = asking, looked, say, agreed
        self._animals: Path | None = None

    def begin(self) -> None:
        """Ask for the first file."""
        self._animals = None
        complete_paths(self._asking)
        self._say(FILES)
        self._asking.ask(tr("Animals file (empty: none)"), self._take_animals, f"{Path.home()}/")

    def _take_animals(self, text: str) -> bool:
        if not self._is_none(text):
            self._animals = self._file(text)
            if self._animals is None:
                return False
        folder = self._animals.parent if self._animals else Path.home()
        self._asking.ask(tr("Diary file (empty: none)"), self._take_diary, f"{folder}/")
        return False

    def _take_diary(self, text: str) -> bool:
        diary = None if self._is_none(text) else self._file(text)
        if diary is None and not self._is_none(text):
            return False
        if diary is None and self._animals is None:
            self._say(tr("No file was named, so there is nothing to take in."))
            return True
        try:
            taken = self._looked(self._animals, diary)
        except REFUSALS as refusal:
            self._say(said(refusal))
            return True
        if not taken.faults and (taken.animals or taken.entries):
            animals, entries = ANIMALS(taken.animals), ENTRIES(taken.entries)
            counts = tr("{animals} and {entries}", animals=animals, entries=entries)
            hold = tr("The files hold {counts}; nothing is written yet.", counts=counts)
            self._say(" ".join(part for part in (hold, _held(taken)) if part))
            self._agreed((self._animals, diary), counts)
            return False
        self._say(told(taken))
        return True

    def _is_none(self, text: str) -> bool:
        return not text or Path(text).expanduser().is_dir()

    def _file(self, text: str) -> Path | None:
        path = Path(text).expanduser()
        if not path.is_file():
            self._say(tr("There is no file {path}; name a CSV file.", path=path))
            return None
        return path


def told(taken: TakenIn) -> str:
    """Why nothing can be taken in: every fault by file, line and column, or nothing new."""
    if not taken.faults:
        held = _held(taken)
        if not held:
            return tr("The files hold no rows.")
        return f"{tr('The files hold nothing new.')} {held}"
    shown = "\n".join(str(fault) for fault in taken.faults[:SHOWN_FAULTS])
    more = len(taken.faults) - SHOWN_FAULTS
    head = tr("Nothing was taken in. Mend these and try again:")
    rest = tr("and {count} more", count=more) if more > 0 else ""
    return "\n".join(part for part in (head, shown, rest) if part)


def complete_paths(asking: AskingLine) -> None:
    """Let the field of *asking* complete paths while they are typed."""
    if asking.field.completer() is not None:
        return
    model = QFileSystemModel(asking)
    model.setRootPath(QDir.rootPath())
    asking.field.setCompleter(QCompleter(model, asking))


def _held(taken: TakenIn) -> str:
    if not taken.skipped:
        return ""
    rows = ROWS(taken.skipped)
    if taken.skipped == 1:
        return tr("{rows} stands in the book already.", rows=rows)
    return tr("{rows} stand in the book already.", rows=rows)
