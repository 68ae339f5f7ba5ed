"""The pairing calendar read from a real book: who stands on it, with what, and in which words."""

from collections.abc import Iterator
from contextlib import closing
from datetime import date, timedelta
from pathlib import Path

import pytest

from keeper.actions.female_desk import FemaleDesk, Females
from keeper.actions.keeping import Keeping
from keeper.actions.pairing_calendar import (
    CalendarDesk,
    CalendarRow,
    PairingCalendar,
    pairing_calendar,
)
from keeper.actions.pairing_told import told_of
from keeper.husbandry.care import EggFate, Eggs
from keeper.husbandry.events import Clutch, HoldEnded, HoldKind, HoldSet, Moved, Paired
from keeper.husbandry.when import on_day
from tests.pairing_room import AWAY, TODAY, ago, key, make_room, new_room, tell


@pytest.fixture
def room(tmp_path: Path) -> Iterator[Keeping]:
    with closing(make_room(tmp_path / "room.book")) as made:
        yield made


def females(keeping: Keeping) -> Females:
    desk = FemaleDesk(keeping)
    try:
        return desk.females(TODAY)
    finally:
        desk.close()


def read(keeping: Keeping) -> PairingCalendar:
    return pairing_calendar(keeping, females(keeping))


def row(calendar: PairingCalendar, name: str) -> CalendarRow:
    return next(each for each in calendar.rows if each.female.animal.name == name)


def words(calendar: PairingCalendar, name: str) -> list[tuple[str, str]]:
    told = told_of(row(calendar, name), calendar)
    return [(each.head, each.words.replace("\u00a0", " ")) for each in told]


def counts(calendar: PairingCalendar) -> dict[date, tuple[int, int]]:
    return {week.monday: (week.sure, week.may) for week in calendar.weeks if week.sure or week.may}


def test_every_female_in_the_room_is_read_with_her_males(room: Keeping) -> None:
    calendar = read(room)

    assert len(calendar.rows) == 7
    assert [(m.male, m.exposure.how, m.exposure.first) for m in row(calendar, "Maud").met] == [
        ("Bram", "paired", ago(110)),
        ("Bram", "lock", ago(108)),
    ]
    (shared,) = row(calendar, "Sunna").met
    assert (shared.male, shared.exposure.how) == ("Alder", "tub")
    assert (shared.exposure.first, shared.exposure.last) == (ago(20), ago(6))


def test_the_windows_narrow_as_the_signs_come(room: Keeping) -> None:
    season = row(read(room), "Tilda").season

    assert season is not None
    assert [(w.sign, w.first, w.last) for w in season.windows] == [
        ("meeting", ago(15), None),
        ("gravid", ago(15), None),
        ("pre-lay shed", ago(3), ago(3) + timedelta(days=18)),
    ]


def test_eggs_in_and_eggs_to_come_are_counted_by_week(room: Keeping) -> None:
    """Maud's lie from 7 Oct and may pip 3 to 18 Dec; Tilda's may come from now on."""
    found = counts(read(room))

    assert min(found) == date(2026, 10, 5)
    assert found[date(2026, 11, 16)] == (1, 0)
    assert found[date(2026, 11, 23)] == (1, 1)
    assert found[date(2026, 11, 30)] == (1, 1)
    assert found[date(2026, 12, 7)] == (0, 2)
    assert found[date(2026, 12, 21)] == (0, 1)
    assert max(found) == date(2027, 2, 22)


def test_eggs_that_are_out_no_longer_lie_there(room: Keeping) -> None:
    maud = key(room, "F1")
    tell(
        room,
        [Eggs(animal=maud, happened=on_day(TODAY), fate=EggFate.HATCHED, count=7, clutch="26-9")],
    )
    found = counts(read(room))

    assert found[date(2026, 11, 23)] == (1, 1)
    assert found[date(2026, 11, 30)] == (0, 1)


def test_eggs_that_nobody_placed_are_named_and_not_counted(room: Keeping) -> None:
    tell(room, [Clutch(animal=key(room, "F2"), happened=on_day(TODAY), good=5, code="26-10")])
    calendar = read(room)

    assert calendar.unplaced == ("26-10",)
    assert counts(calendar)[date(2026, 11, 23)] == (1, 0)


def test_what_falls_into_an_absence_is_told_in_words(room: Keeping) -> None:
    calendar = read(room)
    away = "while the keeper is away, 1 Dec 2026 to 9 Dec 2026, covered by Ada"

    assert [(each.first, each.last) for each in calendar.absences] == [AWAY]
    eggs = dict(words(calendar, "Tilda"))["Eggs may come"]
    assert f"Eggs may come {away}: agree who sees to nest and eggs." in eggs
    slit = dict(words(calendar, "Maud"))["First slit"]
    assert f"The first slit may come {away}: agree who looks in" in slit
    assert "no egg is cut but by experienced hands" in slit


def test_a_window_that_ends_before_the_absence_is_not_told_to_fall_into_it(room: Keeping) -> None:
    maud = dict(words(read(room), "Maud"))

    assert "away" not in maud["Told by earlier signs"]
    assert "away" not in maud["Laid"]


def test_past_the_last_day_the_window_goes_on_until_today_and_names_the_vet(
    tmp_path: Path,
) -> None:
    from tests.pairing_room import pre_lay_shed

    with closing(new_room(tmp_path / "late.book")) as late:
        tell(late, [pre_lay_shed(key(late, "F1"), ago(25))])
        (told,) = told_of(row(read(late), "Maud"), read(late))

    assert (told.head, told.last) == ("Eggs may come", TODAY)
    assert "none by then is for a reptile vet the same day" in told.words


def test_a_cooled_rest_has_the_end_that_was_written_or_none(room: Keeping) -> None:
    assert row(read(room), "Berit").cooled == ((ago(30), None),)

    tell(room, [HoldEnded(animal=key(room, "F6"), happened=on_day(TODAY), kind=HoldKind.COOLING)])

    assert row(read(room), "Berit").cooled == ((ago(30), ago(1)),)


def test_a_cooled_rest_that_was_ended_on_its_first_day_was_none(tmp_path: Path) -> None:
    with closing(new_room(tmp_path / "brief.book")) as room:
        maud, cooled = key(room, "F1"), HoldKind.COOLING
        tell(room, [HoldSet(animal=maud, happened=on_day(TODAY), kind=cooled)])
        tell(room, [HoldEnded(animal=maud, happened=on_day(TODAY), kind=cooled)])

        assert row(read(room), "Maud").cooled == ()


def test_a_female_that_laid_is_recovering_until_her_gates_say_otherwise(room: Keeping) -> None:
    whys = [why.why for why in row(read(room), "Maud").recovering]

    assert whys == []  # nothing is known of her meals and weights: it cannot be told
    assert row(read(room), "Tilda").recovering == ()


def test_a_female_that_laid_without_a_male_since_may_keep_sperm_and_it_is_said(
    room: Keeping,
) -> None:
    told = dict(words(read(room), "Maud"))["Kept sperm"]

    assert told == (
        "No male was with her since the last clutch; sperm of before may be kept for 24 months,"
        " until 9 Aug 2028, so she may lay again."
    )
    assert "Kept sperm" not in dict(words(read(room), "Tilda"))


def test_a_tub_shared_with_one_of_another_kind_or_a_female_is_no_meeting(tmp_path: Path) -> None:
    with closing(new_room(tmp_path / "tubs.book")) as room:
        tell(room, [Moved(animal=key(room, "F2"), happened=on_day(ago(9)), place="A1·1")])
        assert row(read(room), "Tilda").met == ()
        assert row(read(room), "Maud").met == ()


def test_a_pairing_of_a_day_to_come_is_not_on_a_calendar_of_before(room: Keeping) -> None:
    tell(room, [Paired(animal=key(room, "F4"), happened=on_day(TODAY), mate=key(room, "M2"))])
    desk = FemaleDesk(room)
    before = desk.females(ago(1))
    desk.close()

    calendar = pairing_calendar(room, before)

    assert calendar.on == ago(1)
    assert [met.male for met in row(calendar, "Sunna").met] == ["Alder"]


def test_the_desk_reads_with_a_connection_of_its_own_and_lets_go_of_it(room: Keeping) -> None:
    desk = CalendarDesk(room)
    found = females(room)

    assert desk.calendar(found) == desk.calendar(found) == read(room)
    desk.close()
    desk.close()
