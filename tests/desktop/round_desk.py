"""A small invented room for the round, and what its tests ask of the page and of the book."""

import pytest

from keeper.actions.rounds import open_night
from keeper.desktop.screens.round import RoundScreen
from tests.feeding_room import Tub, bites, held_by_vet, opaque, quarantined
from tests.pad_desk import Desk, said_on

ROW = [
    Tub(place="A1·1", name="Tansy"),
    Tub(place="A1·2", name="Bracken", more=bites),
    Tub(place="A1·3", name="Orrin", more=quarantined),
    Tub(place="A1·4", name="Quill", more=opaque),
    Tub(place="A1·5", name="Merrow", fed_days=2),
    Tub(place="A1·7", name="Sorrel", more=held_by_vet),
    Tub(place="A1·8", name="Hob", fed_days=None, weight_g=None),
    Tub(place="B1·1", name="Linnet"),
    Tub(place="B1·2", name="Wick"),
]
FUZZIES = ("mouse fuzzy", 2, 10.0)


def walk(keeping):
    found = open_night(keeping)
    assert found is not None
    return found


def offers(keeping):
    return {tub.line: tub.offer.event for tub in walk(keeping).tubs if tub.offer is not None}


def stands_at(desk, name):
    return f"{name}, now" in said_on(desk.page)


@pytest.fixture
def desk(qtbot, keeping):
    """A round just begun."""
    made = Desk(RoundScreen, keeping)
    made.press("Enter")
    yield made
    made.close()
