"""Refusals from a book, with the bag, the hands and the cleaning that they share."""

from contextlib import closing
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from keeper.actions.cooler import hot_ends_by_day
from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.noting import note
from keeper.actions.watching import watch_lines
from keeper.husbandry.events import (
    Cleaned,
    Described,
    Event,
    Heat,
    Moved,
    Offer,
    ProbePlaced,
    Result,
    RoundOpened,
    Zone,
)
from keeper.husbandry.house import BagOpened, Cleaning, DailyRound, PlaceAside
from keeper.husbandry.when import at_instant, on_day
from keeper.reports.figures import plain
from keeper.reports.words import sentence
from keeper.rules.watch_facts import WatchLine
from keeper.store.hands import hands_of
from keeper.store.journal import batch
from keeper.store.readings import put_in

TODAY = date(2026, 11, 25)
NOW = datetime(2026, 11, 25, 14, 30, tzinfo=UTC)
LAST_NIGHT = TODAY - timedelta(days=1)
GRADES = ("mouse weaner", "mouse hopper")
RAT = "rat fuzzy"


@pytest.fixture
def keeping(tmp_path: Path):
    with closing(new_keeping(tmp_path / "a.book", station="s", now=lambda: NOW)) as made:
        yield made


def write(keeping: Keeping, *events: Event, keeper: str = "J.") -> None:
    with batch(keeping.book, verb="try", keeper=keeper, written=NOW) as writer:
        writer.add(*events)


def room(keeping: Keeping) -> list[int]:
    """Forty animals in four rows of ten, each of twenty offers, two of them refused."""
    animals = []
    for number in range(40):
        with batch(keeping.book, verb="try", keeper="J.", written=NOW) as writer:
            animal = writer.new_animal()
            place = f"{'AB'[number // 20]}{number % 20 // 10 + 1}·{number % 10 + 1}"
            hatched = on_day(date(2023, 3, 1))
            writer.add(
                Described(
                    animal=animal, happened=hatched, code=f"N{number}", species="house_snake"
                ),
                Moved(animal=animal, happened=hatched, place=place),
                *(
                    offer(animal, number, TODAY - timedelta(days=8 + 7 * n), refused=n % 10 == 3)
                    for n in range(20)
                ),
            )
        animals.append(animal)
    return animals


def offer(animal: int, number: int, on: date, *, refused: bool = False) -> Offer:
    return Offer(
        animal=animal,
        happened=on_day(on),
        result=Result.REFUSED if refused else Result.TAKEN,
        prey=GRADES[number % 2],
        count=1,
        mass_g=15.0,
    )


def night(keeping: Keeping, animals: list[int], refusing: set[int], hands: dict[str, range]):
    for keeper, numbers in hands.items():
        told = [offer(animals[n], n, LAST_NIGHT, refused=n in refusing) for n in numbers]
        write(keeping, *told, keeper=keeper)


def house_lines(keeping: Keeping) -> list[WatchLine]:
    return [line for line in watch_lines(keeping, TODAY) if line.animal is None]


def test_a_bag_refused_all_over_the_room_is_told_by_its_bag(keeping):
    animals = room(keeping)
    bag = BagOpened(happened=on_day(LAST_NIGHT), prey="mouse weaner", bag="14")
    write(keeping, bag)
    night(keeping, animals, set(range(0, 40, 4)), {"J.": range(40)})

    (line,) = house_lines(keeping)

    assert (line.kind, line.place) == ("refusals from one bag of prey", "14")
    assert len(line.members) == 10


def test_an_offer_before_the_bag_was_opened_is_none_of_it(keeping):
    animals = room(keeping)
    night(keeping, animals, set(range(0, 40, 4)), {"J.": range(40)})
    write(keeping, BagOpened(happened=on_day(TODAY), prey="mouse weaner", bag="14"))

    assert "refusals from one bag of prey" not in [line.kind for line in house_lines(keeping)]


def test_refusals_from_one_keepers_hands_are_told_by_the_keeper(keeping):
    animals = room(keeping)
    mixed = {"Ada": range(0, 40, 3), "Ben": range(1, 40, 3), "Cleo": range(2, 40, 3)}
    night(keeping, animals, set(list(mixed["Ben"])[:8]), mixed)

    (line,) = house_lines(keeping)

    assert (line.kind, line.place) == ("refusals from one keeper's hands", "Ben")


def test_tubs_cleaned_the_day_before_that_refuse_are_told_by_the_cleaning(keeping):
    animals = room(keeping)
    cleaned = [animals[n] for n in range(0, 40, 4)]
    on = LAST_NIGHT - timedelta(days=1)
    write(
        keeping,
        *(Cleaned(animal=a, happened=on_day(on), extent=Cleaning.WHOLE) for a in cleaned),
    )
    night(keeping, animals, set(range(0, 40, 4)) - {0, 8}, {"J.": range(40)})

    (line,) = house_lines(keeping)

    assert (line.kind, line.place) == ("refusals after a cleaning", on.isoformat())
    assert line.because[0].figures["on"] == on


@pytest.mark.parametrize(
    ("days_before", "extent"), [(5, Cleaning.WHOLE), (1, Cleaning.SPOT), (-1, Cleaning.WHOLE)]
)
def test_a_cleaning_long_ago_or_of_a_spot_or_after_the_night_is_no_cause(
    keeping, days_before, extent
):
    animals = room(keeping)
    on = on_day(LAST_NIGHT - timedelta(days=days_before))
    chosen = range(0, 40, 4)
    write(keeping, *(Cleaned(animal=animals[n], happened=on, extent=extent) for n in chosen))
    night(keeping, animals, set(chosen), {"J.": range(40)})

    assert "refusals after a cleaning" not in [line.kind for line in house_lines(keeping)]


def test_four_refusals_in_a_row_that_read_cooler_than_it_used_to_are_a_cold_row(keeping):
    animals = room(keeping)
    night(keeping, animals, {10, 11, 12, 13}, {"J.": range(40)})
    assert house_lines(keeping) == []
    for row in ("A1", "A2", "B1", "B2"):
        for days in range(1, 26, 4):
            fell = 3.6 if (row, days) == ("A2", 1) else 0.0
            at = at_instant(NOW - timedelta(days=days))
            temp_c = 30.8 - fell + 0.2 * (days % 3)
            write(keeping, Heat(place=row, happened=at, zone=Zone.HOT, temp_c=temp_c))

    lines = {line.kind: line for line in house_lines(keeping)}

    assert lines["cold row"].place == "A2"
    assert "cooler than it was" in [why.why for why in lines["cold row"].because]


def test_probes_and_hands_tell_the_same_days_of_a_row(keeping):
    room(keeping)
    hung = at_instant(NOW - timedelta(days=3))
    write(keeping, ProbePlaced(happened=hung, probe="K1", zone=Zone.HOT, place="A1·3"))
    day_number = (TODAY - timedelta(days=1) - date(1970, 1, 1)).days
    put_in(keeping.book, {("K1", day_number): dict.fromkeys(range(200), 3100)})
    at = at_instant(NOW - timedelta(days=2))
    write(keeping, Heat(place="A1", happened=at, zone=Zone.HOT, temp_c=30.5))

    found = hot_ends_by_day(keeping, TODAY - timedelta(days=5), TODAY)

    assert found == {"A1": [(TODAY - timedelta(days=2), 30.5), (TODAY - timedelta(days=1), 31.0)]}


def test_a_cause_put_aside_is_gone_until_its_day_and_its_animals_stay_silent(keeping):
    animals = room(keeping)
    night(keeping, animals, set(range(10, 18)), {"J.": range(40)})
    (cause,) = house_lines(keeping)
    aside = PlaceAside(
        happened=on_day(TODAY),
        place=cause.place,
        watch_kind=cause.kind,
        until=TODAY + timedelta(days=2),
        reason="a new mat is on its way",
    )
    write(keeping, aside)

    assert house_lines(keeping) == []
    refusing = {animals[n] for n in range(10, 18)}
    assert not [
        line
        for line in watch_lines(keeping, TODAY)
        if line.animal in refusing and line.kind == "refusals"
    ]


# --- a change of prey -------------------------------------------------------------------------


def switched(
    keeping: Keeping, animals: list[int], numbers: range, refusing: set[int], on: date = LAST_NIGHT
) -> None:
    """Rats for the tubs *numbers*, whatever they ate before."""
    told = [replace(offer(animals[n], n, on, refused=n in refusing), prey=RAT) for n in numbers]
    write(keeping, *told)


def cool(keeping: Keeping, place: str) -> None:
    """Hot ends of all rows over a month, *place* well below its own past last night."""
    for row in ("A1", "A2", "B1", "B2"):
        for days in range(1, 26, 4):
            fell = 3.6 if (row, days) == (place, 1) else 0.0
            at = at_instant(NOW - timedelta(days=days))
            temp_c = 30.8 - fell + 0.2 * (days % 3)
            write(keeping, Heat(place=row, happened=at, zone=Zone.HOT, temp_c=temp_c))


def test_a_whole_row_that_refuses_rats_on_its_first_night_is_told_as_the_change_of_prey(keeping):
    animals = room(keeping)
    switched(keeping, animals, range(10, 20), set(range(10, 17)))
    others = [n for n in range(40) if n not in range(10, 20)]
    write(keeping, *(offer(animals[n], n, LAST_NIGHT) for n in others))

    (line,) = house_lines(keeping)

    assert (line.kind, line.place) == ("refusals after a change of prey", "mouse to rat")
    assert line.members == tuple(sorted(animals[10:17]))
    told = line.because[0].figures
    assert (told["refused"], told["offered"], told["before"], told["now"]) == (
        7,
        10,
        "mouse",
        "rat",
    )
    assert [plain(sentence(why)) for why in line.because][1] == (
        "A new kind of prey is often refused at first: of heat or bag that tells nothing. The plan"
        " stays with mouse until rat is eaten."
    )


def test_rats_refused_by_a_row_that_reads_cool_make_no_cold_row(keeping):
    animals = room(keeping)
    cool(keeping, "A2")
    switched(keeping, animals, range(10, 20), {10, 11, 12, 13})
    others = [n for n in range(40) if n not in range(10, 20)]
    write(keeping, *(offer(animals[n], n, LAST_NIGHT) for n in others))

    (heat,) = house_lines(keeping)
    assert (heat.kind, heat.members) == ("cold row", ())
    assert "refused together" not in [why.why for why in heat.because]


def test_rats_refused_from_one_bag_after_a_change_are_not_told_by_the_bag(keeping):
    animals = room(keeping)
    write(keeping, BagOpened(happened=on_day(LAST_NIGHT), prey=RAT, bag="R7"))
    switched(keeping, animals, range(12), set(range(8)))

    assert [line.kind for line in house_lines(keeping)] == ["refusals after a change of prey"]


def test_a_row_is_judged_by_those_of_its_tubs_that_kept_their_prey(keeping):
    animals = room(keeping)
    switched(keeping, animals, range(10, 14), {10, 11})
    others = [n for n in range(40) if n not in range(10, 14)]
    refusing = {14, 15, 16, 17, 18}
    write(keeping, *(offer(animals[n], n, LAST_NIGHT, refused=n in refusing) for n in others))

    (line,) = house_lines(keeping)

    assert (line.kind, line.place) == ("refusals in a row of tubs", "A2")
    assert (line.because[0].figures["refused"], line.because[0].figures["offered"]) == (5, 6)


def test_from_the_third_night_on_refused_rats_speak_of_the_row_again(keeping):
    animals = room(keeping)
    before = [LAST_NIGHT - timedelta(days=days) for days in (4, 2)]
    for night_of in (*before, LAST_NIGHT):
        switched(keeping, animals, range(10, 20), set(range(10, 18)), night_of)
    write(keeping, *(offer(animals[n], n, LAST_NIGHT) for n in range(10)))

    lines = {line.kind: line for line in house_lines(keeping)}

    assert lines["refusals after a change of prey"].because[0].figures["nights"] == 2
    assert (lines["refusals in a row of tubs"].place, len(lines)) == ("A2", 2)


def test_rats_refused_elsewhere_speak_neither_for_nor_against_the_hands_that_fed(keeping):
    animals = room(keeping)
    switched(keeping, animals, range(20, 40), set(range(20, 36)))
    night(keeping, animals, set(range(10, 18)), {"J.": range(10, 20), "Ada": range(10)})

    lines = {line.kind: line for line in house_lines(keeping)}
    told = [why.why for why in lines["refusals in a row of tubs"].because]

    assert "all from the same hands" in told
    assert "others refused from the same hands" not in told


def test_rats_that_nearly_all_eat_are_no_line(keeping):
    animals = room(keeping)
    switched(keeping, animals, range(10, 20), {10})

    assert house_lines(keeping) == []


def test_where_no_daily_round_was_ever_written_nobody_is_unseen(keeping):
    room(keeping)

    assert house_lines(keeping) == []


def test_a_rack_without_a_daily_round_for_two_days_is_one_line_of_today(keeping):
    room(keeping)
    for days, place in ((3, None), (1, "A")):
        on = on_day(TODAY - timedelta(days=days))
        note(keeping, "daily round", DailyRound(happened=on, place=place))

    (line,) = house_lines(keeping)

    assert (line.kind, line.place, line.severity.value) == ("not seen", "B", "today")
    assert len(line.members) == 20
    assert line.because[0].figures["days"] == 3


def test_an_entry_about_an_animal_is_a_look_into_its_tub(keeping):
    animals = room(keeping)
    on = on_day(TODAY - timedelta(days=3))
    note(keeping, "daily round", DailyRound(happened=on, place=None))
    night(keeping, animals, set(), {"J.": range(39)})

    (line,) = house_lines(keeping)

    assert line.members == (animals[39],)


def test_daily_rounds_that_ended_are_noted_and_nobody_is_called_unseen(keeping):
    room(keeping)
    on = on_day(TODAY - timedelta(days=20))
    note(keeping, "daily round", DailyRound(happened=on, place=None))

    (line,) = house_lines(keeping)

    assert (line.severity.value, line.members) == ("noted", ())
    assert line.because[0].why == "daily rounds are no longer written"


def test_who_held_the_round_fed_the_animal_whoever_wrote_the_check(keeping):
    animals = room(keeping)
    happened = on_day(LAST_NIGHT)
    with batch(keeping.book, verb="begin", keeper="Ada", written=NOW) as writer:
        number = writer.new_round()
        writer.add(RoundOpened(happened=happened, round=number, keeper="Ada"))
    walked = replace(offer(animals[0], 0, LAST_NIGHT), round=number, line=1)
    write(keeping, walked, keeper="Ben")
    write(keeping, offer(animals[1], 1, LAST_NIGHT), keeper="Ben")

    found = hands_of(keeping.book, animals[:3], LAST_NIGHT, LAST_NIGHT)

    assert found == {(animals[0], LAST_NIGHT): "Ada", (animals[1], LAST_NIGHT): "Ben"}
