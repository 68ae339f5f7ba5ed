"""The place of prey at its edges: nothing there, nothing counted, no room for all that is told."""

from dataclasses import replace

import pytest
from PySide6.QtGui import QImage, QPainter

from keeper.actions.kept_entries import count_prey
from keeper.desktop.background import AtOnce
from keeper.desktop.look import Look
from keeper.desktop.screens.prey import PreyScreen
from keeper.desktop.widgets import prey_demand
from keeper.desktop.widgets.prey_demand import DemandFace, PreyDemand, Section
from keeper.desktop.widgets.row_list import FACE_ROLE
from keeper.reports.figures import GAP, plain
from tests.feeding_room import make_book, row
from tests.pad_desk import Desk

FUZZY = "mouse fuzzy"


@pytest.fixture
def page_of(qtbot, tmp_path):
    """A page over a book with so many animals, shown; told: what was refused."""
    desks = []

    def opened(animals, **tub):
        tubs = [replace(each, **tub) for each in row("A", 1, animals)]
        keeping = make_book(tmp_path / "room.book", tubs)
        desk = Desk(lambda *its: PreyScreen(*its, worker=AtOnce()), keeping)
        desk.page.told, desk.page.keeping = desk.refused, keeping
        desk.page.notices = desk.notices
        desks.append(desk)
        return desk.page

    yield opened
    for desk in desks:
        desk.page.close_down()
        desk.page.keeping.close()
        desk.close()


def test_a_book_without_animal_or_bag_says_what_to_do(page_of):
    page = page_of(0)

    assert page.none.isVisible()
    assert "S counts a bag" in page.none.text()
    assert page.model.rowCount() == 0
    page._open()
    assert "No animal goes over" in page.told[-1]


def test_a_grade_never_counted_is_shown_with_its_demand(page_of):
    page = page_of(3)

    (face,) = [page.model.index(0).data(FACE_ROLE)]
    assert face.columns[1] == ("?", "not counted")
    assert face.columns[2][1] == f"3{GAP}animals"
    assert "cannot tell" in face.said
    assert "not counted" in page.demand._face.uncounted
    assert page.demand._face.stock == ()


def test_what_is_not_known_of_an_animal_is_said_beneath_the_picture(page_of):
    page = page_of(2, weight_g=None)

    assert "2 animals without a weight" in plain(page.demand.text())


def test_a_count_is_seen_at_once_and_the_chosen_grade_stays(page_of):
    page = page_of(3)
    count_prey(page.keeping, f"{FUZZY}: 14: 500")
    count_prey(page.keeping, "rat pup: 9: 5")
    page.notices.changed.emit()
    page.list.choose([row.prey for row in page.model.rows].index("rat pup"))

    count_prey(page.keeping, f"{FUZZY}: 14: 10")
    page.notices.changed.emit()

    assert page._row().prey == "rat pup"
    assert {row.prey: row.left for row in page.model.rows}[FUZZY] == 10


def test_before_it_is_read_nothing_is_printed(page_of):
    page = page_of(1)
    page.larder = None

    page._print()

    assert "still being read" in page.told[-1]


def drawn(qtbot, face, high):
    """The lines that were set in a panel *high* px."""
    widget = PreyDemand(Look())
    qtbot.addWidget(widget)
    widget.resize(620, high)
    widget.show_face(face)
    image = QImage(620, high, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    widget.paint(painter)
    painter.end()


@pytest.fixture
def lines(monkeypatch):
    told = []
    own = prey_demand.set_line

    def heard(painter, place, text, *rest, **more):
        told.append(text)
        return own(painter, place, text, *rest, **more)

    monkeypatch.setattr(prey_demand, "set_line", heard)
    return told


def a_face(steps):
    rows = tuple((f"{n} Dec", f"animal {n}") for n in range(1, steps + 1))
    return DemandFace(
        head="fuzzy mouse",
        days=tuple(f"{n} Dec" for n in range(1, 14)),
        bars=((1.0, 2.0, 0.0),) * 12,
        stock=((0.0, 20.0), (12.0, 0.0)),
        reasons=("Order now.",),
        sections=(
            Section(head="goes over to it", rows=rows),
            Section(head="leaves it", rows=rows),
        ),
    )


def test_what_has_no_room_is_counted(qtbot, lines):
    drawn(qtbot, a_face(30), 700)

    shown = [text for text in lines if text.startswith("animal")]
    more = [int(text.split()[1]) for text in lines if text.endswith("more")]
    assert "leaves it" in lines
    assert len(more) == 2
    assert len(shown) + sum(more) == 60


def test_where_there_is_room_all_is_shown(qtbot, lines):
    drawn(qtbot, a_face(2), 900)

    assert len([text for text in lines if text.startswith("animal")]) == 4
    assert not [text for text in lines if text.endswith("more")]


def test_both_scales_are_named_and_the_stock_s_only_where_it_is_known(qtbot, lines):
    drawn(qtbot, a_face(0), 600)
    assert {"items a week", "in stock", "20", "3"} <= set(lines)

    lines.clear()
    drawn(qtbot, replace(a_face(0), stock=(), uncounted="not counted"), 600)
    assert "not counted" in lines
    assert "in stock" not in lines
