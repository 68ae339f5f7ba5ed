"""An invented room with trouble in it, in a real book: a cold row, a loss, a plain shed too late.

Figures are made to raise lines on purpose; they are not husbandry advice.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping, new_keeping
from keeper.desktop.background import AtOnce
from keeper.desktop.house import House, Maker
from keeper.desktop.look import Look
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import (
    Described,
    Event,
    Heat,
    Measured,
    Moved,
    Offer,
    Result,
    Sexed,
    ShedQuality,
    ShedSign,
    ShedStage,
    Weighing,
    Zone,
)
from keeper.husbandry.when import at_instant, on_day
from keeper.store.journal import batch

TODAY = date(2026, 11, 25)
NOW = datetime(2026, 11, 25, 14, 30, tzinfo=UTC)
NAMES = ["Fitch", "Pell", "Teasel", "Moss", "Linnet", "Sorrel", "Hob", "Reed"]
COLD_ROW = "B1"
More = Callable[[int], Sequence[Event]]


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def a_room(path: Path) -> Keeping:
    """Row B1 read cold, five of its eight refusing; in A1 one that loses and one that is opaque."""
    keeping = empty_book(path)
    for number, name in enumerate(NAMES, start=1):
        refuses = number <= 5
        add(keeping, f"B-{number}", name, f"B1·{number}", more=_last_night(refuses))
    for day, temp_c in ((9, 31.0), (5, 30.6), (1, 24.3)):
        heat(keeping, COLD_ROW, ago(day), temp_c)
    add(keeping, "A-1", "Oswin", "A1·1", sex=Sex.MALE, more=_loses)
    add(keeping, "A-2", "Thora", "A1·2", more=_opaque)
    for number in (3, 4, 5, 6):
        add(keeping, f"A-{number}", f"Calm {number}", f"A1·{number}", more=_last_night(False))
    return keeping


def a_quiet_room(path: Path) -> Keeping:
    """Two animals of which everything is told, and one row never read."""
    keeping = empty_book(path)
    for number in (1, 2):
        place = f"A{number}·1"
        add(keeping, f"A-{number}", f"Calm {number}", place, more=_last_night(False))
    heat(keeping, "A1", ago(1), 31.0)
    return keeping


def empty_book(path: Path) -> Keeping:
    return new_keeping(path, station="rack-room", now=lambda: NOW, keeper="J.")


def add(
    keeping: Keeping,
    code: str,
    name: str,
    place: str,
    *,
    sex: Sex = Sex.FEMALE,
    hatched: date = date(2023, 3, 1),
    weight_g: float = 260.0,
    more: More = lambda animal: (),
) -> int:
    """A grown house snake that ate every week, was weighed every month, and shed every other."""
    with batch(keeping.book, verb="try", keeper="J.", written=keeping.now()) as writer:
        animal = writer.new_animal()
        writer.add(
            Described(
                animal=animal,
                happened=on_day(hatched),
                code=code,
                species="house_snake",
                name=name,
                hatched_first=hatched,
                hatched_last=hatched,
            ),
            Moved(animal=animal, happened=on_day(hatched), place=place),
        )
        if sex is not Sex.UNKNOWN:
            writer.add(Sexed(animal=animal, happened=on_day(hatched), sex=sex))
        writer.add(*_calm_life(animal, weight_g), *more(animal))
    return animal


def bare(keeping: Keeping, code: str, name: str, place: str, hatched: date) -> int:
    """A female of whom nothing but her hatching is told."""
    with batch(keeping.book, verb="try", keeper="J.", written=keeping.now()) as writer:
        animal = writer.new_animal()
        happened = on_day(hatched)
        writer.add(
            Described(
                animal=animal,
                happened=happened,
                code=code,
                species="house_snake",
                name=name,
                hatched_first=hatched,
                hatched_last=hatched,
            ),
            Moved(animal=animal, happened=happened, place=place),
            Sexed(animal=animal, happened=happened, sex=Sex.FEMALE),
        )
    return animal


def measured(svl_cm: float = 70.0, score: float = 3.0) -> More:
    """Length and body score taken the other day."""
    return lambda animal: [
        Measured(animal=animal, happened=on_day(ago(4)), svl_cm=svl_cm, body_score=score)
    ]


def young(weights_g: Sequence[float]) -> More:
    """Weighings a fortnight apart, the last four days ago."""
    days = range(4 + 14 * (len(weights_g) - 1), 3, -14)
    return lambda animal: [
        Weighing(animal=animal, happened=on_day(ago(day)), weight_g=grams)
        for day, grams in zip(days, weights_g, strict=True)
    ]


def heat(keeping: Keeping, place: str, day: date, temp_c: float) -> None:
    at = datetime(day.year, day.month, day.day, 22, 10, tzinfo=UTC)
    with batch(keeping.book, verb="read heat", keeper="J.", written=keeping.now()) as writer:
        writer.add(
            Heat(
                place=place,
                happened=at_instant(at),
                zone=Zone.HOT,
                temp_c=temp_c,
                read_with="gun",
            )
        )


class Window:
    """The window over *keeping* with one place in view, and what was asked of it."""

    def __init__(self, qtbot, keeping: Keeping, makers: dict[str, Maker], size=(1440, 900)) -> None:
        self.house = House(keeping, Look(), makers)
        self.window = self.house.window
        qtbot.addWidget(self.window)
        self.asked: list[int] = []
        self.house.notices.animal_asked.connect(self.asked.append)
        self.window.resize(*size)
        self.window.show()
        self.window.activateWindow()
        QTest.qWaitForWindowActive(self.window)

    @property
    def page(self) -> QWidget:
        return self.window.page(self.window.place.name)

    @property
    def foot(self) -> str:
        return self.window.foot.text()

    def press(self, *keys: Qt.Key, modifier=Qt.KeyboardModifier.NoModifier) -> None:
        for key in keys:
            QTest.keyClick(self.window.windowHandle(), key, modifier)

    def take_back(self) -> None:
        self.press(Qt.Key.Key_Z, modifier=Qt.KeyboardModifier.ControlModifier)

    def answer(self, text: str) -> None:
        """Write *text* over what stands in the line at the foot, and Enter.

        It is put in at once: keys as fast as a test's are taken for a label scanner's.
        """
        self.page.asking.field.setText(text)
        QTest.keyClick(self.page.asking.field, Qt.Key.Key_Return)


def at_once(screen: type[QWidget]) -> Maker:
    """A maker of *screen* that reads without a thread."""
    return lambda look, keeping, notices: screen(look, keeping, notices, worker=AtOnce())


def _calm_life(animal: int, weight_g: float) -> list[Event]:
    meals = [_offer(animal, 12 + 7 * n) for n in range(20)]
    weights = [
        Weighing(animal=animal, happened=on_day(ago(8 + 28 * n)), weight_g=weight_g)
        for n in range(5)
    ]
    sheds = [
        ShedSign(
            animal=animal,
            happened=on_day(ago(20 + 50 * n)),
            stage=ShedStage.SHED,
            quality=ShedQuality.WHOLE,
        )
        for n in range(6)
    ]
    return [*meals, *weights, *sheds]


def _offer(animal: int, days: int, result: Result = Result.TAKEN) -> Offer:
    return Offer(
        animal=animal,
        happened=on_day(ago(days)),
        result=result,
        prey="mouse weaner",
        count=1,
        mass_g=15.0,
    )


def _last_night(refuses: bool) -> More:
    result = Result.REFUSED if refuses else Result.TAKEN
    return lambda animal: [_offer(animal, 1, result)]


def _loses(animal: int) -> list[Event]:
    eaten = [_offer(animal, 7), _offer(animal, 6)]
    lost = [Weighing(animal=animal, happened=on_day(ago(day)), weight_g=224.0) for day in (2, 0)]
    return [*eaten, *lost]


def _opaque(animal: int) -> list[Event]:
    sign = ShedSign(animal=animal, happened=on_day(ago(13)), stage=ShedStage.OPAQUE)
    return [_offer(animal, 1), sign]
