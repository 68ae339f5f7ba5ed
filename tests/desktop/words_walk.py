"""Walk every place in the marked language; JSON of the texts that are not translated, by place.

    python tests/desktop/words_walk.py FOLDER

A program of its own, because the language is chosen before any module with words is loaded. A
text is what is painted, what stands in a label or a menu, a tooltip, and what assistive technology
is told. What was written into the book is no word of the program, nor are names of keys and units.
"""

import json
import os
import re
import sys
from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

LAST_DAY = date(2026, 11, 24)
SECOND_VIEWS = {"Females": "_turn_over", "Racks": "_turn_to_time"}
KEPT = ("code", "name", "line", "clutch", "place", "note", "text", "reason", "bag", "keeper")
KEPT += ("probe", "treatment", "medicine", "amount", "route", "station", "dam", "sire")
KEPT += ("gene", "hidden_by", "trait")
"""Columns of the book whose texts are its keeper's own."""

KEPT_OF = {"permit": ("kind", "number"), "house_permit": ("kind", "number")}
"""Further ones, by table."""

KEYS = "Ctrl Shift Alt Meta Enter Return Esc Home End PgUp PgDown Left Right Up Down Space Num Tab"
UNITS = "cm mm kg oz Celsius Fahrenheit MQTT CSV PDF"
NAMES = "keeper Deutsch English"
OF_QT = "Scroll"
ALLOWED = {*KEYS.split(), *UNITS.split(), *NAMES.split(), *OF_QT.split()}

WHOLE = ""
"""Under this name a text is kept as a whole, since paper breaks it into lines."""

_INNER = re.compile(r"⟦[^⟦⟧]*⟧")
_CUT = re.compile(r"⟦.*$|^.*⟧", re.DOTALL)
_WORD = re.compile(r"[^\W\d_]{2,}")


def untranslated(text: str, data: Iterable[str]) -> list[str]:
    """Words of *text* outside brackets that are not *data*; an end cut off keeps its bracket."""
    left, before = text.replace("\u00a0", " "), None
    while left != before:
        left, before = _INNER.sub(" ", left), left
    left = _CUT.sub(" ", left)
    begun = left.strip().removesuffix("…")
    if begun != left.strip() and any(known.startswith(begun) for known in data):
        return []
    for known in data:
        left = re.sub(rf"(?<!\w){re.escape(known)}(?!\w)", " ", left)
    return [word for word in _WORD.findall(left) if word not in ALLOWED]


def main(folder: Path) -> None:
    """Walk, and tell what was found; the process ends without tearing the window down."""
    os.environ |= {"QT_QPA_PLATFORM": "offscreen", "KEEPER_LANGUAGE": "marked"}
    os.environ["KEEPER_HOME"] = str(folder / "home")
    from keeper.desktop.chosen_language import choose

    choose()
    figures = _hear_figures()
    seen = Walk(folder, figures).walked()
    sys.stdout.write(json.dumps(seen, ensure_ascii=False, indent=1))
    sys.stdout.flush()
    os._exit(0)


class Walk:
    """The window over an invented collection, and the texts that were seen in it."""

    def __init__(self, folder: Path, figures: set[tuple[str, str]]) -> None:
        self.figures = figures
        _read_at_once()
        from keeper import app
        from keeper.desktop.look import Look
        from keeper.rehearsal.collection import make_collection

        self.application = app.application()
        self.keeping = make_collection(folder / "invented.book", ends_on=LAST_DAY)
        self.texts: set[str] = set()
        _hear_painting(self.texts)
        self.house = app.build_house(self.keeping, Look())
        self.window = self.house.window
        self.window.resize(1440, 900)

    def walked(self) -> dict[str, dict[str, Any]]:
        """Texts with a word that is not translated, by the place where they were seen first.

        And how many translated ones stood in each.
        """
        from keeper.desktop.places import ASIDE_KEYS, PLACE_KEYS

        data, told, known, translated = self._data(), {}, set(), {}
        self.window.show()
        for number, name in enumerate([*PLACE_KEYS, *ASIDE_KEYS]):
            for where in (name, f"{name}, keys"):
                self._look(number, keys=where != name)
                fresh = sorted(self.texts - known)
                known |= self.texts
                translated[where] = sum("⟦" in text for text in fresh)
                told[where] = [text for text in fresh if untranslated(text, data)]
        told["paper"] = self._on_paper(data)
        seen = self.texts | {text for source, text in self.figures if source == WHOLE}
        whole = [_even(text) for text in seen if not untranslated(text, data)]
        for where, texts in told.items():  # a sentence that runs on is painted line by line
            told[where] = [text for text in texts if not _is_part(text, whole)]
        filled = [pair for pair in self.figures if pair[0] != WHOLE]
        inside = sorted(": ".join(pair) for pair in filled if untranslated(pair[1], data))
        return {"left": told, "inside": inside, "translated": translated}

    def _look(self, number: int, *, keys: bool) -> None:
        if not keys:
            self.window.go_to(number)
        self._settle()
        if keys:
            self.window.show_keys()
            self._settle()
        self.texts |= {*self._labels(), *self._told()}
        if keys:
            self.window.show_keys()
        elif self.window.place.name in SECOND_VIEWS:
            self._turn_over()

    def _turn_over(self) -> None:
        """The second view of a place; its keys are told while it is shown."""
        name = self.window.place.name
        getattr(self.window.page(name), SECOND_VIEWS[name])()
        self._settle()
        self.texts |= {*self._labels(), *self._told()}

    def _on_paper(self, data: list[str]) -> list[str]:
        """What is untranslated on paper: of a night, an absence, an order, an animal."""
        from keeper.actions import rounds
        from keeper.actions.absence import away_typed
        from keeper.actions.animal_page import page_of
        from keeper.actions.animal_papers import buyers_card_of, vet_facts_of
        from keeper.actions.holiday import agreed, holiday_facts
        from keeper.actions.prey_desk import larder, order_document
        from keeper.desktop.paper.flow import document_pages
        from keeper.desktop.paper.holiday import sheets_of
        from keeper.desktop.paper.page import write_pdf
        from keeper.desktop.paper.printing import round_sheets, thaw_sheets
        from keeper.desktop.screens.animal import AnimalScreen
        from keeper.desktop.screens.racks_paper import carry_sheets, refusal_sheets
        from keeper.desktop.screens.records_paper import register_sheets
        from keeper.reports.paper_parts import Picture
        from keeper.reports.vet_summary import ROOMS, vet_summary

        keeping, today = self.keeping, self.keeping.today
        before = set(self.texts)
        animal = self.window.findChild(AnimalScreen).paper
        page = page_of(keeping, rounds.begin_night(keeping, today).tubs[0].animal.animal, today)
        summary = vet_summary(vet_facts_of(keeping, page), ROOMS[-1])
        parts = tuple(part for part in summary.parts if not isinstance(part, Picture))
        sheets = [
            thaw_sheets(keeping, today).pages,
            round_sheets(keeping, rounds.open_night(keeping)).pages,
            sheets_of(holiday_facts(keeping, agreed(keeping, away_typed("9 days", today)))).pages,
            document_pages(buyers_card_of(keeping, page)),
            document_pages(order_document(larder(keeping, today), "⟦now⟧")),
            document_pages(replace(summary, parts=parts)),
            register_sheets(keeping, on=today).pages,
            carry_sheets(keeping).pages,
            refusal_sheets(keeping).pages,
            animal.life().pages,
            animal.kin().pages,
            document_pages(self._clutch_record()),
            document_pages(self._death_note(page)),
            *self._of_lines(),
            self.window.page("Females").pairing.sheets(keeping).pages,
        ]
        for number, pages in enumerate(sheets):
            write_pdf(keeping.book.path.with_name(f"{number}.pdf"), "", pages)
        return sorted(text for text in self.texts - before if untranslated(text, data))

    def _clutch_record(self) -> Any:
        """The record of the clutch that was laid last."""
        from keeper.actions.clutch_detail import clutch_detail
        from keeper.actions.clutch_paper import record_of
        from keeper.actions.clutch_rows import clutch_rows

        row = clutch_rows(self.keeping, self.keeping.today)[0]
        return record_of(clutch_detail(self.keeping, row, self.keeping.today), self.keeping.now())

    def _death_note(self, page: Any) -> Any:
        """The note of an animal that is written as died for it."""
        from keeper.actions.animal_page import page_of
        from keeper.actions.breeding_typed import standing_typed
        from keeper.actions.death_papers import death_facts_of
        from keeper.actions.noting import note
        from keeper.actions.typed_entries import happened_on
        from keeper.reports.death_note import death_note

        row, today = page.animal, self.keeping.today
        typed = standing_typed(row.animal, happened_on(self.keeping, row, today), "died")
        note(self.keeping, typed.verb, typed.event, *typed.also)
        return death_note(death_facts_of(self.keeping, page_of(self.keeping, row.animal, today)))

    def _settle(self) -> None:
        """What was asked for is read at once, so a few rounds of the loop paint what follows."""
        for _ in range(6):
            self.application.processEvents()
        self.window.grab()

    def _labels(self) -> Iterator[str]:
        from PySide6.QtGui import QAction
        from PySide6.QtWidgets import QLabel, QMenu, QWidget

        for widget in [self.window, *self.window.findChildren(QWidget)]:
            yield from (widget.toolTip(), widget.accessibleName(), widget.windowTitle())
            yield widget.accessibleDescription()
            yield widget.text() if isinstance(widget, QLabel) else ""
            yield widget.title().replace("&", "") if isinstance(widget, QMenu) else ""
        for action in self.window.findChildren(QAction):
            yield from (action.text().replace("&", ""), action.toolTip())

    def _told(self) -> Iterator[str]:
        from PySide6.QtGui import QAccessible
        from PySide6.QtWidgets import QWidget

        for widget in self.window.findChildren(QWidget):
            face = QAccessible.queryAccessibleInterface(widget) if widget.isVisible() else None
            if face is not None:
                yield from _spoken(face)

    def _of_lines(self) -> list[Any]:
        """A gene's sheet, that of a colour, and the cards out of date."""
        from keeper.desktop.screens.lines import LinesScreen
        from keeper.desktop.screens.lines_paper import paper_of

        page = self.window.findChild(LinesScreen)
        rows, detail, cards = page.lines.rows, page.gene.detail, page.lines.cards
        sheets = [paper_of(self.keeping, row, detail) for row in (rows[0], rows[-1])]
        sheets.append(paper_of(self.keeping, rows[0], detail, cards))
        return [each.pages for each in sheets]

    def _data(self) -> list[str]:
        book = self.keeping.book
        told = {str(book.path), book.station, *_texts_kept(book.connection)}
        told |= {profile.scientific for profile in self.keeping.profiles.values()}
        return sorted(filter(None, told), key=len, reverse=True)


def _even(text: str) -> str:
    return " ".join(text.replace("\u00a0", " ").split())


def _is_part(text: str, whole: Iterable[str]) -> bool:
    """Whether *text* is a line of several words out of a text that is translated as a whole."""
    part = _even(text)
    several = " " in part or part.endswith((".", ";", ","))
    return several and any(part in other and "⟦" in other for other in whole)


def _texts_kept(connection) -> Iterator[str]:
    tables = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall()
    for (table,) in tables:
        for column in connection.execute(f"PRAGMA table_info({table})").fetchall():
            if column[1] in (*KEPT, *KEPT_OF.get(table, ())):
                found = connection.execute(f"SELECT DISTINCT {column[1]} FROM {table}").fetchall()
                yield from (str(value) for (value,) in found if value)


def _spoken(face, depth: int = 0) -> Iterator[str]:
    from PySide6.QtGui import QAccessible
    from PySide6.QtWidgets import QTextBrowser

    if isinstance(face.object(), QTextBrowser):
        return  # what is new is a file in each language
    for kind in (QAccessible.Text.Name, QAccessible.Text.Description, QAccessible.Text.Value):
        yield face.text(kind)
    for number in range(min(face.childCount(), 120) if depth < 3 else 0):
        child = face.child(number)
        if child is not None:
            yield from _spoken(child, depth + 1)


def _read_at_once() -> None:
    """Every page reads before it is painted, so that what is seen hangs on no clock."""
    from PySide6.QtCore import QObject

    from keeper.desktop import background

    class ReadAtOnce(background.AtOnce, QObject):
        def __init__(self, parent: QObject | None = None) -> None:
            QObject.__init__(self, parent)

    background.Background = ReadAtOnce


def _hear_figures() -> set[tuple[str, str]]:
    """Each text that is filled into another from now on, after the one that it is filled into.

    A word there that is no data and not translated itself stands inside brackets all the same.
    """
    from keeper import language
    from keeper.reports import words

    heard: set[tuple[str, str]] = set()
    filled = words._Filler.format_field

    def fill(filler: words._Filler, value: Any, kind: str) -> str:
        if isinstance(value, str) and not kind:
            heard.add(("a sentence", value))
        return filled(filler, value, kind)

    plain = language.tr

    def tr(source: str, /, *, sense: str = "", **figures: object) -> str:
        heard.update((source, told) for told in figures.values() if isinstance(told, str))
        told = plain(source, sense=sense, **figures)
        heard.add((WHOLE, told))
        return told

    language.tr, words._Filler.format_field = tr, fill
    return heard


def _hear_painting(texts: set[str]) -> None:
    from PySide6.QtGui import QPainter

    paint = QPainter.drawText

    def heard(painter, *given):
        texts.update(part for part in given if isinstance(part, str))
        return paint(painter, *given)

    QPainter.drawText = heard


if __name__ == "__main__":
    main(Path(sys.argv[1]))
