"""The refusal strip: what each night came to, and what its margins count."""

import pytest

from keeper.actions.keeping import Keeping
from keeper.actions.refusal_strip import Cell, Margin, refusal_strip
from keeper.actions.rounds import begin_night
from keeper.husbandry.events import HoldEnded, HoldKind, HoldSet, Offer, Result
from keeper.husbandry.when import on_day
from tests.feeding_room import NIGHT, Tub, ago, make_book, opaque


def offered(*told):
    """Offers as (days ago, result)."""

    def of(animal):
        return [
            Offer(animal=animal, happened=on_day(ago(days)), result=result) for days, result in told
        ]

    return of


@pytest.fixture
def book(tmp_path):
    made: list[Keeping] = []

    def make(*tubs):
        made.append(make_book(tmp_path / "nights.book", tubs))
        return made[-1]

    yield make
    for keeping in made:
        keeping.close()


def a_tub(place="A1·1", *told, more=None):
    def events(animal):
        return [*offered(*told)(animal), *(more(animal) if more else [])]

    return Tub(place=place, name=f"in {place}", fed_days=None, more=events)


def cells(strip, place):
    each = next(a for row in strip.rows for a in row.animals if a.animal.place == place)
    return dict(zip(strip.nights, each.cells, strict=True))


def test_only_the_last_twelve_nights_are_shown(book):
    keeping = book(a_tub("A1·1", *((3 * n, Result.TAKEN) for n in range(15))))

    strip = refusal_strip(keeping, NIGHT)

    assert strip.nights == tuple(ago(3 * n) for n in range(11, -1, -1))


def test_each_result_has_its_own_cell(book):
    results = list(Result)
    keeping = book(a_tub("A1·1", *((n, result) for n, result in enumerate(results))))

    told = cells(refusal_strip(keeping, NIGHT), "A1·1")

    assert [told[ago(n)].value for n in range(len(results))] == [r.value for r in results]


def test_the_last_word_of_a_night_counts(book):
    keeping = book(a_tub("A1·1", (3, Result.REFUSED), (3, Result.TAKEN)))

    strip = refusal_strip(keeping, NIGHT)

    assert cells(strip, "A1·1")[ago(3)] is Cell.TAKEN
    assert strip.night_margin(0) == Margin(refused=0, offered=1)


def test_a_refusal_under_a_hold_is_excused_and_not_counted(book):
    keeping = book(
        a_tub("A1·1", (1, Result.REFUSED), more=opaque), a_tub("A1·2", (1, Result.REFUSED))
    )

    strip = refusal_strip(keeping, NIGHT)

    assert cells(strip, "A1·1")[ago(1)] is Cell.EXCUSED
    assert cells(strip, "A1·2")[ago(1)] is Cell.REFUSED
    assert strip.night_margin(0) == Margin(refused=1, offered=1)


def test_a_refusal_after_a_hold_was_ended_is_not_excused_by_it(book):
    def ended_early(animal):
        begun, over = on_day(ago(30)), on_day(ago(20))
        return [
            HoldSet(animal=animal, happened=begun, kind=HoldKind.VET),
            HoldEnded(animal=animal, happened=over, kind=HoldKind.VET),
        ]

    keeping = book(a_tub("A1·1", (25, Result.REFUSED), (10, Result.REFUSED), more=ended_early))

    told = cells(refusal_strip(keeping, NIGHT), "A1·1")

    assert told == {ago(25): Cell.EXCUSED, ago(10): Cell.REFUSED}


def test_refusals_straight_after_a_change_of_prey_are_not_counted_in_the_margins(book):
    def of(animal):
        nights = ((20, "mouse fuzzy", Result.TAKEN), (15, "rat pinky", Result.REFUSED))
        return [
            Offer(animal=animal, happened=on_day(ago(days)), result=result, prey=prey)
            for days, prey, result in (*nights, (10, "mouse fuzzy", Result.REFUSED))
        ]

    keeping = book(a_tub("A1·1", more=of))

    strip = refusal_strip(keeping, NIGHT)

    assert list(cells(strip, "A1·1").values()) == [Cell.TAKEN, Cell.EXCUSED, Cell.REFUSED]
    assert strip.rows[0].margin == Margin(refused=1, offered=2)


def test_a_tub_planned_in_a_closed_round_and_never_answered_was_not_reached(book):
    keeping = book(Tub(place="A1·1", name="Tansy"), Tub(place="A1·2", name="Orrin"))
    walk = begin_night(keeping, NIGHT)
    walk.record(Result.TAKEN)

    assert cells(refusal_strip(keeping, NIGHT), "A1·2")[NIGHT] is None
    walk.close()
    told = refusal_strip(keeping, NIGHT)

    assert cells(told, "A1·1")[NIGHT] is Cell.TAKEN
    assert cells(told, "A1·2")[NIGHT] is Cell.NOT_REACHED


def test_margins_of_rows_and_nights_count_the_same_offers(book):
    keeping = book(
        a_tub("A1·1", (1, Result.REFUSED), (4, Result.TAKEN)),
        a_tub("A2·1", (1, Result.PART), (4, Result.REFUSED), (8, Result.NOT_OFFERED)),
    )

    strip = refusal_strip(keeping, NIGHT)

    assert [(row.name, row.margin) for row in strip.rows] == [
        ("A1", Margin(refused=1, offered=2)),
        ("A2", Margin(refused=1, offered=2)),
    ]
    nights = [strip.night_margin(n) for n in range(len(strip.nights))]
    assert [(n.refused, n.offered) for n in nights] == [(0, 0), (1, 2), (1, 2)]


def test_a_book_without_offers_has_no_nights(book):
    strip = refusal_strip(book(a_tub("A1·1")), NIGHT)

    assert strip.nights == ()
    assert [each.cells for row in strip.rows for each in row.animals] == [()]
