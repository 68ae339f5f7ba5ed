"""The carry-out list: eggs and fed animals first, quarantine last, a bag or a tub for everyone."""

from contextlib import closing
from datetime import date, timedelta

from keeper.actions.carrying_out import carry_facts
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Clutch, HoldKind, HoldSet, Remark, RemarkKind
from keeper.husbandry.when import on_day
from keeper.reports.carry_out import RACK_A_PAGE, carry_out
from keeper.reports.paper_parts import Facts, Heading, PageEnd, Table
from keeper.rules.carrying import Carrier, Order, carrier_of, order_of
from keeper.store.journal import batch
from tests.builders import a_profile, an_animal, fed
from tests.feeding_room import NIGHT, Tub, make_book, room

TODAY = date(2026, 9, 23)


def days_ago(days):
    return (TODAY - timedelta(days=days)).isoformat()


def test_one_that_has_eaten_within_digestion_is_carried_before_the_others():
    profile = a_profile()
    days = int(profile.weights.digestion_days.value)
    lately, long_ago = fed(days_ago(days - 1)), fed(days_ago(days))

    assert order_of(lately, profile, (), TODAY) is Order.FED
    assert order_of(long_ago, profile, (), TODAY) is Order.OTHERS


def test_quarantine_comes_last_even_if_it_has_just_eaten_and_it_stays_in_its_tub():
    profile, row = a_profile(), fed(days_ago(0))

    assert order_of(row, profile, {HoldKind.QUARANTINE}, TODAY) is Order.APART
    assert carrier_of(Order.APART, 120.0, digesting=True) is Carrier.TUB


def test_one_with_eggs_and_a_hatchling_are_not_lifted_out_and_no_weight_is_not_guessed():
    profile = a_profile()
    young = an_animal(hatched_first=TODAY - timedelta(days=20))

    assert order_of(an_animal(), profile, {HoldKind.GRAVID}, TODAY) is Order.GRAVID
    assert order_of(young, profile, (), TODAY) is Order.HATCHLING
    assert {carrier_of(o, 40.0) for o in (Order.GRAVID, Order.HATCHLING)} == {Carrier.TUB}
    assert carrier_of(Order.OTHERS, None) is Carrier.UNKNOWN
    sizes = [carrier_of(Order.OTHERS, grams) for grams in (100, 101, 1000, 1001)]
    assert sizes == [Carrier.SMALL_BAG, Carrier.BAG, Carrier.BAG, Carrier.LARGE_BAG]


def a_room(path, tubs):
    return closing(make_book(path, tubs))


def held(animal):
    bites = Remark(animal=animal, happened=on_day(NIGHT), kind=RemarkKind.CAUTION, text="BITES")
    quarantine = HoldSet(animal=animal, happened=on_day(NIGHT), kind=HoldKind.QUARANTINE)
    return (bites, quarantine)


def tables(document):
    return [part for part in document.parts if isinstance(part, Table)]


def test_the_list_names_eggs_the_fed_and_those_apart_with_their_tubs(tmp_path):
    tubs = [
        Tub(place="A1·1", name="Tansy", fed_days=1),
        Tub(place="A1·2", name="Bracken", weight_g=None),
        Tub(place="B1·1", name="Quill", more=held),
        Tub(place="B1·2", name="Hob", fed_days=40, sex=Sex.MALE, weight_g=80.0),
    ]
    with a_room(tmp_path / "room.book", tubs) as keeping:
        dam = next(a.animal for a in keeping_rows(keeping) if a.name == "Tansy")
        laid = Clutch(animal=dam, happened=on_day(NIGHT), good=6, code="26-9")
        with batch(keeping.book, verb="clutch", keeper="", written=keeping.now()) as writer:
            writer.add(laid)
        document = carry_out(carry_facts(keeping))

    order, *racks = tables(document)
    assert [(row[0], row[2], row[3]) for row in order.rows] == [
        ("1", "6", "26-9 (6): place not written"),
        ("2", "1", "A1: 1"),
        ("5", "2", "rack by rack, below"),
        ("6", "1", "B1: 1"),
    ]
    assert [row[:4] for row in racks[0].rows] == [("A1·1", "Tansy", "120 g", "2")]
    assert racks[1].rows[0][3] == "6 BITES"
    (needed,) = [part.rows for part in document.parts if isinstance(part, Facts)]
    assert dict(needed) == {
        "Needed": "tape for 1 tub; 1 small bag, up to 100 g; 1 bag, weight not known",
        "And for quarantine": "1 bag, up to 1,000 g",
        "Care in the hand": "BITES: B1: 1",
    }


def keeping_rows(keeping):
    from keeper.store import reading

    return reading.board(keeping.book)


def test_a_large_room_begins_every_rack_on_a_page_with_what_it_needs(tmp_path):
    tubs = room(3, 5)
    assert len(tubs) > RACK_A_PAGE
    with a_room(tmp_path / "room.book", tubs) as keeping:
        document = carry_out(carry_facts(keeping))

    heads = [part.words for part in document.parts if isinstance(part, Heading)]
    assert heads == [f"Rack {letter}: 50 animals" for letter in "ABC"]
    assert sum(isinstance(part, PageEnd) for part in document.parts) == 3
    assert [len(each.rows) for each in tables(document)[1:]] == [25, 25, 25]
