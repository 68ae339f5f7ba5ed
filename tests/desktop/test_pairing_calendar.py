"""The pairing calendar in the window: what each row shows, told apart by any eye, and on paper."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta
from itertools import combinations
from pathlib import Path
from time import thread_time
from typing import Any

import pypdfium2
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter, QPixmap
from PySide6.QtWidgets import QWidget
from shots import WAYS_OF_SEEING, lightness, rms_difference

from keeper.actions.female_desk import FemaleDesk
from keeper.actions.forecasting import WeightForecast
from keeper.actions.keeping import Keeping
from keeper.actions.pairing_calendar import PairingCalendar, pairing_calendar
from keeper.desktop.light import DAY, DIM_SHARES, MARK_PAIRS, RED_LAMP, dimmed
from keeper.desktop.look import Look
from keeper.desktop.paper.printing import print_beside
from keeper.desktop.screens.pairing_calendar import PairingView
from keeper.desktop.screens.pairing_faces import shown_rows
from keeper.desktop.screens.pairing_paper import calendar_sheets
from keeper.desktop.widgets.female_list import GATE_LETTERS
from keeper.desktop.widgets.pairing_legend import legend_told
from keeper.desktop.widgets.pairing_marks import (
    LOOKS,
    SIGNS,
    Kind,
    paint_away,
    paint_bar,
    paint_earlier,
    paint_out,
)
from keeper.desktop.widgets.pairing_row import CalendarFace
from keeper.desktop.widgets.patterns import Pattern
from tests.pairing_room import AWAY, TODAY, ago, make_room, new_room

LEAST = 7.0
"""Least root mean square difference of L*, as for tiles without letters; the house's own figure."""

LIGHTS = {"day": DAY, "red lamp": RED_LAMP, "dimmest": dimmed(RED_LAMP, len(DIM_SHARES) - 1)}
WEEK = timedelta(days=7)


class Plain:
    """A look of one palette, in which no letter has room: pattern and lightness alone are left."""

    def __init__(self, palette: Any) -> None:
        self.palette, self.colour = palette, palette.colour

    def u(self, units: float, small: float | None = None) -> float:
        return 4.0 * units

    def font(self, use: Any) -> Any:
        font = Look().font(use)
        font.setPointSizeF(400.0)
        return font


def painted(kind: Kind | str, palette: Any) -> QImage:
    image = QImage(120, 40, QImage.Format.Format_RGB32)
    image.fill(QColor(palette.colour("ground")))
    painter, look, rect = QPainter(image), Plain(palette), QRectF(6, 8, 108, 24)
    if kind == "earlier":
        paint_earlier(painter, rect.adjusted(0, 4, 0, -4), 1, look, open_end=False)  # type: ignore[arg-type]
    elif kind is Kind.AWAY:
        paint_away(painter, rect, look)  # type: ignore[arg-type]
    else:
        paint_bar(painter, rect, kind, look)  # type: ignore[arg-type]
    painter.end()
    return image


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
def test_no_two_bars_look_alike_even_where_no_letter_has_room(
    qapp: Any, light: Any, seen: str
) -> None:
    bars: list[Kind | str] = [*Kind, "earlier"]
    images = {bar: lightness(painted(bar, light), seen) for bar in bars}

    for one, other in combinations(images, 2):
        assert rms_difference(images[one], images[other]) >= LEAST, (one, other)


def test_every_bar_has_a_letter_of_its_own_that_no_gate_has() -> None:
    letters = [face.letter for face in LOOKS.values() if face.letter] + list(SIGNS)

    assert len(set(letters)) == len(letters) == len(Kind) - 1 + len(SIGNS)
    assert not set(letters) & set(GATE_LETTERS.values())
    assert all(f"{letter} " in legend_told() for letter in letters)


def test_the_mark_of_every_bar_is_a_pair_that_is_checked() -> None:
    for face in LOOKS.values():
        if face.pattern is not Pattern.PLAIN:
            assert (face.mark, face.paper) in MARK_PAIRS
    assert ("ink3", "band2") in MARK_PAIRS  # the hatch of a cooled rest


def test_the_first_out_is_the_triangle_of_a_clutch_upside_down(qapp: Any) -> None:
    image = QImage(40, 40, QImage.Format.Format_RGB32)
    image.fill(QColor(DAY.colour("ground")))
    painter = QPainter(image)
    paint_out(painter, QRectF(0, 0, 40, 40).center(), Look())
    painter.end()

    ink = QColor(DAY.ink).lightness()
    dark = [
        sum(image.pixelColor(x, y).lightness() < ink + 60 for x in range(40)) for y in range(40)
    ]
    assert max(dark[:20]) > max(dark[24:])


@pytest.fixture
def room(tmp_path: Path) -> Iterator[Keeping]:
    with closing(make_room(tmp_path / "room.book")) as made:
        yield made


def read(keeping: Keeping) -> PairingCalendar:
    desk = FemaleDesk(keeping)
    try:
        return pairing_calendar(keeping, desk.females(TODAY))
    finally:
        desk.close()


def faces(calendar: PairingCalendar, **forecasts: WeightForecast) -> dict[str, CalendarFace]:
    by_name = {row.female.animal.name: row.animal for row in calendar.rows}
    known = {by_name[name]: told for name, told in forecasts.items()}
    return {face.name: face for _, face in shown_rows(calendar, known)}


def forecast(calendar: PairingCalendar, name: str, **days: int) -> WeightForecast:
    animal = next(r.female.animal for r in calendar.rows if r.female.animal.name == name)
    told = {each: TODAY + timedelta(days=n) for each, n in days.items()}
    return WeightForecast(animal=animal, target_g=200.0, **told)  # type: ignore[arg-type]


def test_eggs_that_end_first_stand_first_and_who_has_nothing_stands_nowhere(room: Keeping) -> None:
    assert list(faces(read(room))) == ["Tilda", "Maud", "Ragna", "Sunna", "Berit", "Inga"]


def test_each_row_says_in_a_few_words_what_comes_next(room: Keeping) -> None:
    told = {name: face.aside.replace("\u00a0", " ") for name, face in faces(read(room)).items()}

    assert told == {
        "Tilda": "eggs by 10 Dec",
        "Maud": "first slit 3–18 Dec",
        "Ragna": "eggs to come, latest day not known",
        "Sunna": "eggs from 5 Dec on, if any",
        "Berit": "cooled rest since 26 Oct",
        "Inga": "old enough on 3 Feb 2027",
    }


def test_earlier_windows_lie_round_the_one_that_counts_and_eggs_end_them(room: Keeping) -> None:
    found = faces(read(room))

    tilda = [bar for bar in found["Tilda"].bars if bar.kind is Kind.MAY_LAY]
    assert [(bar.rank, bar.first, bar.last) for bar in tilda] == [
        (2, ago(15), None),
        (1, ago(15), None),
        (0, ago(3), date(2026, 12, 10)),
    ]
    maud = [bar for bar in found["Maud"].bars if bar.kind is Kind.MAY_LAY]
    assert [(bar.rank, bar.last) for bar in maud] == [(3, ago(49)), (2, ago(49)), (1, ago(49))]


def test_what_cannot_be_told_is_drawn_with_an_open_end(room: Keeping) -> None:
    found = faces(read(room))

    (ragna,) = [bar for bar in found["Ragna"].bars if bar.rank == 0]
    assert (ragna.kind, ragna.last) == (Kind.MAY_LAY, None)
    (berit,) = found["Berit"].bars
    assert (berit.kind, berit.last, berit.lasting) == (Kind.COOLED, TODAY, True)


def test_males_signs_eggs_and_ages_stand_on_their_days(room: Keeping) -> None:
    found = faces(read(room))

    assert found["Maud"].rings == ((ago(110), False), (ago(108), True))
    assert found["Maud"].males == ((ago(110), ago(110), "Bram"), (ago(108), ago(108), "Bram"))
    assert found["Maud"].signs == ((ago(72), "G"), (ago(59), "P"))
    assert found["Maud"].laid == (ago(49),)
    kinds = [bar.kind for bar in found["Maud"].bars if bar.rank == 0]
    assert kinds == [Kind.LIES, Kind.MAY_PIP]
    (shared,) = [bar for bar in found["Sunna"].bars if bar.kind is Kind.TOGETHER]
    assert (shared.first, shared.last) == (ago(20), ago(6))
    assert found["Inga"].from_on == date(2027, 2, 3)


def test_a_row_is_told_whole_to_a_screen_reader(room: Keeping) -> None:
    said = faces(read(room))["Tilda"].said.replace("\u00a0", " ")

    assert said.startswith("A1·2 Tilda: eggs by 10 Dec. Paired with Alder on 11 Oct, lock seen.")
    assert "eggs by 10 Dec 2026 at the latest" in said
    assert "while the keeper is away" in said
    assert "Gates: Cannot tell a day. Missing: " in said


class Host(QWidget):
    """A window of its own size, in which the view stands as in its place."""

    def __init__(self) -> None:
        super().__init__()
        self.view = PairingView(Look(), self)


@pytest.fixture
def host(qtbot: Any) -> Host:
    made = Host()
    qtbot.addWidget(made)
    return made


def hosted(host: Host, calendar: PairingCalendar) -> PairingView:
    made = host.view
    for widget in (host, made):
        widget.resize(1200, 700)
    made.show_calendar(calendar, shown_rows(calendar, {}))
    host.show()
    return made


@pytest.fixture
def view(host: Host, room: Keeping) -> PairingView:
    return hosted(host, read(room))


def told(view: PairingView) -> str:
    return view.beside.text().replace("\u00a0", " ")


def test_it_begins_with_this_week_and_the_whole_year(view: PairingView) -> None:
    assert (view.monday, view.weeks_shown) == (date(2026, 11, 23), 53)
    assert "Week of 23 Nov, this week. Next: eggs by 10 Dec." in told(view)


def test_a_week_without_anything_of_hers_says_so_and_keeps_the_incubator(view: PairingView) -> None:
    view.go_by(-20)

    assert "Nothing is written of it, and nothing is expected in it." in told(view)
    assert "Clutches in the incubator: 0 for sure, 0 more may be." in told(view)


def test_weeks_end_where_the_calendar_ends(view: PairingView) -> None:
    view.go_by(500)
    assert view.monday == date(2027, 5, 24)
    view.go_by(-500)
    assert view.monday == date(2026, 5, 25)
    view.go_home()
    assert view.monday == date(2026, 11, 23)


def test_nearer_and_further_keep_the_chosen_week_in_view(view: PairingView) -> None:
    for nearer, weeks in ((1, 26), (1, 13), (1, 13), (-1, 26), (-1, 53), (-1, 53)):
        view.zoom(nearer)
        shown = view.list.painter.view
        assert shown is not None
        assert view.weeks_shown == shown.weeks == weeks
        assert shown.monday <= view.monday < shown.monday + weeks * WEEK


def test_a_forecast_puts_her_on_the_calendar_in_her_place_and_in_words(view: PairingView) -> None:
    calendar = view.calendar
    assert calendar is not None
    light = replace(
        calendar,
        rows=tuple(
            replace(row, female=replace(row.female, gates=_too_light(row.female.gates)))
            if row.female.animal.name == "Dagny"
            else row
            for row in calendar.rows
        ),
    )
    view.show_calendar(light, shown_rows(light, {}))
    assert "Dagny" not in [face.name for face in view.model.faces]
    found = forecast(light, "Dagny", on=60, low=40, high=90, half_low=50, half_high=70)

    view.show_forecast(found.animal.animal, found)

    assert [face.name for face in view.model.faces][-1] == "Dagny"
    assert view.model.faces[-1].window is not None
    assert view.choose(found.animal.animal)
    assert "Heavy enough about 24 Jan 2027, 8 in 10 from 4 Jan 2027 to 23 Feb 2027." in told(view)
    view.go_by(7)
    assert "nothing is expected" not in told(view)


def _too_light(gates: Any) -> Any:
    """A weight gate that is open, so that a forecast is wanted."""
    from keeper.husbandry.reasons import because
    from keeper.rules.breeding import Gate

    why = because("too light", weight_g=60.0, need_g=200.0, short_g=140.0)
    own = Gate(name="weight", state="not yet", missing=why)
    return tuple(own if gate.name == "weight" else gate for gate in gates)


def test_figures_of_every_week_are_text(view: PairingView) -> None:
    foot = view.foot.text().replace("\u00a0", " ")

    assert "23 Nov: 1 and 1" in foot
    assert "14 Dec: 0 and 2" in foot
    assert "in view. Week of 23 Nov, this week." in view.head.text().replace("\u00a0", " ")
    assert "covered by Ada" in view.head.text()


def test_an_empty_room_says_how_a_female_comes_on_the_calendar(host: Host, tmp_path: Path) -> None:
    with closing(new_room(tmp_path / "new.book")) as keeping:
        calendar = read(keeping)
    calendar = replace(calendar, rows=())
    made = hosted(host, calendar)

    assert made.none.isVisible()
    assert "A pairing is written on her page." in made.none.text()
    assert told(made) == ""
    with pytest.raises(LookupError):
        calendar_sheets(keeping, calendar, {})


def test_it_is_painted_again_for_what_laying_down_pictures_costs(view: PairingView) -> None:
    """At most 20 of one picture of the same size, as every place is measured."""
    whole, target = view.grab(), QPixmap(view.size())
    target.fill()

    def laid() -> None:
        painter = QPainter(target)
        painter.drawPixmap(0, 0, whole)
        painter.end()

    assert _least_s(view.grab) <= 20 * _least_s(laid)


def _least_s(paint: Callable[[], object]) -> float:
    """The thread's own seconds for one of ten in a row, of the best of eight turns."""
    turns = []
    for _ in range(8):
        begun = thread_time()
        for _ in range(10):
            paint()
        turns.append((thread_time() - begun) / 10)
    return min(turns)


def test_on_paper_stand_the_picture_its_legend_and_every_sentence(room: Keeping) -> None:
    calendar = read(room)
    path = print_beside(room, calendar_sheets(room, calendar, {}))
    pages = [page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(path)]
    text = " ".join(" ".join(pages).split())

    for wanted in (
        "Pairing calendar",
        "25 May 2026 to 30 May 2027",
        "first slit 3–18 Dec",
        "keeper away",
        "pre-lay shed",
        "The keeper is away from 1 Dec to 9 Dec 2026, covered by Ada.",
        "23 Nov: 1 and 1",
        "Paired with Alder on 11 Oct, lock seen.",
        "Cooled since 26 Oct; no end is written.",
        "Gates: Old enough on 3 Feb 2027.",
    ):
        assert wanted in text, wanted
    assert AWAY[0] > TODAY
