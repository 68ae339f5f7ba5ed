"""Speed of a life strip of ten years: from its data at hand to painted, and a step of the cursor.

Run in the prepared environment: `python demo/bench_life.py [ROUNDS]`. Medians of processor
time are told, because on a busy machine a clock on the wall counts what others do meanwhile.
"""

import os
import sys
import tempfile
from collections.abc import Callable, Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from statistics import median
from time import process_time

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtWidgets import QApplication  # noqa: E402 - after the platform is chosen

from keeper.actions.animal_desk import AnimalDesk  # noqa: E402
from keeper.actions.animal_page import AnimalPage  # noqa: E402
from keeper.actions.day_of_life import day_of_life  # noqa: E402
from keeper.actions.keeping import new_keeping  # noqa: E402
from keeper.actions.recording import Newcomer, receive, write_up  # noqa: E402
from keeper.desktop.look import Look  # noqa: E402
from keeper.desktop.screens.animal_words import figures_of, identity  # noqa: E402
from keeper.desktop.widgets.animal_head import AnimalHead  # noqa: E402
from keeper.desktop.widgets.life_strip import LifeStrip  # noqa: E402
from keeper.desktop.widgets.read_out import ReadOut  # noqa: E402
from keeper.husbandry.animal import Sex  # noqa: E402
from keeper.husbandry.events import (  # noqa: E402
    Event,
    Heat,
    Offer,
    Result,
    ShedSign,
    ShedStage,
    Weighing,
    Zone,
)
from keeper.husbandry.when import on_day  # noqa: E402

HATCHED, ENDS = date(2016, 11, 24), date(2026, 11, 24)
NOW = datetime(2026, 11, 24, 21, tzinfo=UTC)
DAYS = (ENDS - HATCHED).days - 8
READ = ((Zone.HOT, 31.0), (Zone.NIGHT, 22.5))
NEWCOMER = Newcomer(
    happened=on_day(HATCHED),
    code="16-004",
    species="house_snake",
    hatched=HATCHED,
    sex=Sex.FEMALE,
    place="B4·3",
)
MOST_MS = 50.0
"""The most that opening may take once the data are read."""


def main(rounds: int) -> int:
    """Measure and tell; returns 1 where opening takes longer than it may."""
    application = QApplication.instance() or QApplication(sys.argv[:1])
    read_ms, page = ten_years()
    parts = shown_parts()
    opened = timed(lambda: open_page(parts, page), rounds)
    step = timed(lambda: step_back(parts, page), rounds)
    told = f"{len(page.weighed)} weighings, {len(page.life.offers)} offers, every day read"
    print(f"a life of {(page.today - page.first_day).days} days: {told}")
    print(f"read      {read_ms:6.1f} ms, off the main thread")
    print(f"opened    {opened:6.1f} ms, at most {MOST_MS:g}")
    print(f"one step  {step:6.1f} ms")
    application.processEvents()
    return int(opened > MOST_MS)


def opened_in(rounds: int) -> float:
    """Milliseconds of opening alone, for who measures more than this."""
    application = QApplication.instance() or QApplication(sys.argv[:1])
    _, page = ten_years()
    parts = shown_parts()
    opened = timed(lambda: open_page(parts, page), rounds)
    for part in parts:
        part.hide()
        part.deleteLater()
    application.processEvents()
    return opened


def shown_parts() -> tuple[AnimalHead, LifeStrip, ReadOut]:
    """Head, strip and read-out on the screen, with nothing in them yet."""
    look = Look()
    parts = (AnimalHead(look), LifeStrip(look), ReadOut(look))
    for part, size in zip(parts, ((1440, 66), (1170, 750), (246, 750)), strict=True):
        part.resize(*size)
        part.show()
    QApplication.processEvents()
    return parts


def ten_years() -> tuple[float, AnimalPage]:
    """The page of an invented life weighed and fed every week, and how long it took to read."""
    with tempfile.TemporaryDirectory() as home:
        keeping = new_keeping(Path(home) / "invented.book", station="bench", now=lambda: NOW)
        _, (animal,) = receive(keeping, [NEWCOMER])
        write_up(keeping, [event for n in range(0, DAYS, 7) for event in week(animal, n)])
        heat = [heat_of(zone, temp_c, n) for n in range(DAYS) for zone, temp_c in READ]
        write_up(keeping, heat)
        desk = AnimalDesk(keeping)
        page = desk.open(animal, ENDS).page
        read = timed(lambda: desk.open(animal, ENDS), 5)
        desk.close()
        keeping.close()
    assert page is not None
    return read, page


def week(animal: int, n: int) -> Iterator[Event]:
    """A weight and an offer; one in ten is refused, every sixth week she sheds."""
    grams = 4.0 + 250.0 * (1 - 0.5 ** (n / 300)) + (n % 4)
    yield Weighing(animal=animal, happened=on_day(HATCHED + timedelta(days=n)), weight_g=grams)
    offered = on_day(HATCHED + timedelta(days=n + 2))
    result = Result.REFUSED if n % 70 == 0 else Result.TAKEN
    yield Offer(animal=animal, happened=offered, result=result, mass_g=0.1 * grams)
    if n % 42 == 0:
        for late, stage in enumerate(ShedStage):
            when = on_day(HATCHED + timedelta(days=n + 2 * late))
            yield ShedSign(animal=animal, happened=when, stage=stage)


def heat_of(zone: Zone, temp_c: float, n: int) -> Heat:
    """One reading of her row."""
    return Heat(place="B4", happened=on_day(HATCHED + timedelta(days=n)), zone=zone, temp_c=temp_c)


def open_page(parts: tuple[AnimalHead, LifeStrip, ReadOut], page: AnimalPage) -> None:
    """Show *page* in all three parts and paint them."""
    head, strip, read_out = parts
    head.show_identity(identity(page))
    strip.show_page(page)
    read_out.show_figures(figures_of(page, day_of_life(page, strip.view.cursor)))
    for part in parts:
        part.repaint()


def step_back(parts: tuple[AnimalHead, LifeStrip, ReadOut], page: AnimalPage) -> None:
    """The cursor a day back, everything painted that changes."""
    _, strip, read_out = parts
    strip.show_view(strip.view.to(strip.view.cursor - timedelta(days=1)))
    read_out.show_figures(figures_of(page, day_of_life(page, strip.view.cursor)))
    strip.repaint()
    read_out.repaint()


def timed(deed: Callable[[], object], rounds: int) -> float:
    """Median milliseconds of processor time."""
    taken = []
    for _ in range(rounds):
        begun = process_time()
        deed()
        taken.append(1000 * (process_time() - begun))
    return median(taken)


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]) if sys.argv[1:] else 15))
