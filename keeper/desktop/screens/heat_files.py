"""A logger's file asked for, looked at, read otherwise, and taken in when the keeper agrees."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from keeper.actions.keeping import Keeping
from keeper.actions.logger_files import Preview, place_probe, preview, renamed, take_in
from keeper.actions.logger_shape import LoggerShape, Order
from keeper.actions.own_connection import own_connection
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Worker
from keeper.desktop.notices import Notices
from keeper.desktop.screens.files_asking import complete_paths
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.husbandry.events import Zone
from keeper.language import tr
from keeper.reports.words import word

ORDERS: tuple[Order, ...] = ("ymd", "dmy", "mdy")
ZONES = {"hot": Zone.HOT, "cool": Zone.COOL, "night": Zone.NIGHT}
ZONES |= {"room": Zone.ROOM, "incubator": Zone.INCUBATOR}
ZONES |= {
    tr("hot", sense="a zone typed"): Zone.HOT,
    tr("cool", sense="a zone typed"): Zone.COOL,
    tr("night", sense="a zone typed"): Zone.NIGHT,
    tr("room", sense="a zone typed"): Zone.ROOM,
    tr("incubator", sense="a zone typed"): Zone.INCUBATOR,
}
"""By what is typed, casefolded, in English and in the keeper's language."""
AGREE = tr(
    "Enter takes it in    U unit    O date order    Z zone    N name    P place    Esc leaves it"
)


class HeatFiles:
    """What is looked at now, and the keys that change how it is read.

    shown: called with the preview, or None when there is nothing to look at any more.
    """

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        asking: AskingLine,
        worker: Worker,
        shown: Callable[[Preview | None], None],
    ) -> None:
        self._keeping, self._notices, self._asking = keeping, notices, asking
        self._worker, self._shown = worker, shown
        self.seen: Preview | None = None

    def begin(self) -> None:
        """Ask for the file."""
        complete_paths(self._asking)
        folder = self.seen.path.parent if self.seen else Path.home()
        self._asking.ask(tr("Logger file (CSV)"), self._take_path, f"{folder}/")

    def leave(self) -> None:
        """Look at it no more; nothing is written."""
        self.seen = None
        self._shown(None)

    def press(self, key: str) -> bool:
        """Do what *key* means while a file is looked at; False: nothing."""
        if self.seen is None:
            return False
        deeds = {
            "Enter": self._agree,
            "U": self._change_unit,
            "O": self._change_order,
            "Z": self._ask_zone,
            "N": self._ask_name,
            "P": self._ask_place,
            "Esc": self.leave,
        }
        if key not in deeds:
            return False
        deeds[key]()
        return True

    def place(self, place: str, zone: Zone) -> None:
        """Ask which probe hangs at *place*; its name, and the day since when if not today."""
        self._asking.ask(
            tr("Probe at {place}, {zone} (its name)", place=place, zone=word(zone)),
            lambda text: self._placed(text, place, zone),
        )

    def _take_path(self, text: str) -> bool:
        path = Path(text).expanduser()
        if not path.is_file():
            told = tr("There is no file {path}; name a logger’s CSV file.", path=path)
            self._notices.refused.emit(told)
            return False
        self._look(path, None)
        return True

    def _look(self, path: Path, shape: LoggerShape | None) -> None:
        self._notices.noted.emit(tr("Reading {name}.", name=path.name))
        keeping = self._keeping

        def job() -> Preview:
            with own_connection(keeping) as aside:
                return preview(aside, path, shape)

        self._worker.run(job, self._take_seen, self._fail)

    def _take_seen(self, seen: Preview) -> None:
        self.seen = seen
        self._notices.noted.emit(tr("Nothing is written yet."))
        self._shown(seen)

    def _fail(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self._notices.refused.emit(said(error))

    def _again(self, **changed: object) -> None:
        if self.seen is not None:
            shape = replace(self.seen.shape, **changed)  # type: ignore[arg-type]
            self._look(self.seen.path, shape)

    def _change_unit(self) -> None:
        if self.seen is not None:
            self._again(fahrenheit=not self.seen.shape.fahrenheit, unsure=self._sure("unit"))

    def _change_order(self) -> None:
        if self.seen is not None:
            at = ORDERS.index(self.seen.shape.order)
            self._again(order=ORDERS[(at + 1) % len(ORDERS)], unsure=self._sure("order"))

    def _sure(self, what: str) -> tuple[str, ...]:
        unsure = self.seen.shape.unsure if self.seen else ()
        return tuple(each for each in unsure if each != what)

    def _ask_zone(self) -> None:
        zone = self.seen.shape.zone if self.seen else ""
        asked = tr("Zone of the stamps (local, +01:00 or a name)")
        self._asking.ask(asked, self._zone, zone)

    def _zone(self, text: str) -> bool:
        self._again(zone=text)
        return True

    def _ask_name(self) -> None:
        name = self.seen.probes[0].probe if self.seen and self.seen.probes else ""
        self._asking.ask(tr("Name of the probe"), self._name, name)

    def _name(self, text: str) -> bool:
        if self.seen is None or not text:
            return True
        try:
            self._look(self.seen.path, renamed(self.seen.shape, text))
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
        return True

    def _ask_place(self) -> None:
        """Place the first probe that has no place."""
        unplaced = [p for p in self.seen.probes if p.place is None] if self.seen else []
        if not unplaced:
            self._notices.refused.emit(tr("Every probe of the file has its place."))
            return
        self.ask_place_of(unplaced[0].probe)

    def ask_place_of(self, probe: str) -> None:
        """Ask where *probe* hangs."""
        asked = tr("{probe} hangs at (B3 hot, A2·4 cool, room)", probe=probe)
        self._asking.ask(asked, lambda text: self._where(probe, text))

    def _where(self, probe: str, text: str) -> bool:
        *place, zone = text.split() if text.strip() else [""]
        chosen = ZONES.get(zone.casefold())
        if chosen in (Zone.ROOM, Zone.INCUBATOR) and not place:
            place = [chosen.value]
        if chosen is None or not place:
            told = tr("{typed!r} names no place and zone; B3 hot is right.", typed=text)
            self._notices.refused.emit(told)
            return False
        return self._placed(probe, " ".join(place), chosen)

    def _placed(self, probe: str, place: str, zone: Zone) -> bool:
        """Since the first reading of the file that is looked at, else since now."""
        spans = self.seen.probes if self.seen else ()
        begins = [span.first_at for span in spans if span.probe == probe and span.first_at]
        since = begins[0] if begins else None
        book = self._keeping
        if not self._notices.tell_of(lambda: place_probe(book, probe, place, zone, since)):
            return False
        if self.seen is not None:
            self._look(self.seen.path, self.seen.shape)
        return True

    def _agree(self) -> None:
        if self.seen is None:
            return
        try:
            written = take_in(self._keeping, self.seen)
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return
        self.leave()
        self._notices.tell_written(written)
