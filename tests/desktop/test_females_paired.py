"""Pairings and clutches on a female's row: marks on her calendar, and the last of them in words."""

from contextlib import closing

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from trouble_sample import TODAY, Window, add, ago, at_once, empty_book, measured

from keeper.desktop.look import Look
from keeper.desktop.screens.females import FemalesScreen
from keeper.desktop.widgets.calendar_strip import Marks, _room_for, months_round, paint_marks
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Clutch, Paired
from keeper.husbandry.when import on_day

PLACES = {"Females": at_once(FemalesScreen)}
AXIS = months_round(TODAY, 0.0, 700.0)


def paired(days, sire, *, locked=False):
    return lambda animal: Paired(
        animal=animal, happened=on_day(ago(days)), mate=sire, locked=locked
    )


def laid(days):
    return lambda animal: Clutch(animal=animal, happened=on_day(ago(days)), good=7, slugs=1)


@pytest.fixture
def row_of(qtbot, tmp_path):
    """The calendar of a female with such entries, as the place shows it."""
    with closing(empty_book(tmp_path / "paired.book")) as keeping:
        sire = add(keeping, "M-1", "Flint", "C2·1", sex=Sex.MALE)

        def shown(*makers):
            more = measured()
            add(
                keeping,
                "F-1",
                "Ingrid",
                "C1·1",
                more=lambda animal: [*more(animal), *(make(animal) for make in makers)],
            )
            page = Window(qtbot, keeping, PLACES).page
            return page.model.pairs[0][1].marks

        shown.sire = sire
        yield shown


def plain(text):
    return text.replace("\u00a0", " ")


def test_a_pairing_that_she_has_not_laid_after_is_told_with_its_days(row_of):
    marks = row_of(paired(200, row_of.sire), paired(46, row_of.sire, locked=True))

    assert marks.paired == ((ago(200), False), (ago(46), True))
    assert plain(marks.beneath).endswith("paired 10 Oct, 46 days ago, lock seen")


def test_after_laying_the_clutch_is_told_and_not_the_pairing_before_it(row_of):
    marks = row_of(paired(80, row_of.sire), laid(12))

    assert marks.laid == (ago(12),)
    assert plain(marks.beneath).endswith("laid 13 Nov, 12 days ago")
    assert "paired" not in marks.beneath


def test_a_clutch_of_years_ago_is_for_her_page(row_of):
    assert "laid" not in row_of(laid(500)).beneath


def test_words_leave_room_for_what_is_past():
    """They begin behind today where a ring or a triangle stands before it."""
    marks = Marks(at=TODAY, paired=((ago(20), False),), told="x")

    left, _ = _room_for(AXIS, TODAY, marks, 100.0, 8.0)

    assert left > AXIS.x(TODAY)


@pytest.mark.parametrize(
    "marks",
    [
        Marks(paired=((ago(20), False),)),
        Marks(paired=((ago(20), True),)),
        Marks(laid=(ago(20),)),
    ],
)
def test_each_mark_is_drawn_and_differs_from_the_others(qtbot, marks):
    drawn = {of: _picture(of) for of in (Marks(), marks, Marks(paired=((ago(25), True),)))}

    assert len(set(drawn.values())) == 3


def _picture(marks):
    image = QImage(700, 60, QImage.Format.Format_RGB32)
    image.fill(0xFFFFFF)
    painter = QPainter(image)
    paint_marks(painter, QRectF(0, 0, 700, 60), AXIS, TODAY, marks, "ground", Look())
    painter.end()
    return bytes(image.constBits())
