"""A logger's file is looked at, its faults are counted and kept aside, and the rest goes in."""

from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.logger_files import place_probe, preview, renamed, take_in
from keeper.husbandry.events import Zone
from keeper.store.readings import values_of

NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
SINCE = datetime(2026, 1, 1, tzinfo=UTC)
VIENNA = "Europe/Vienna"


@pytest.fixture
def keeping(tmp_path: Path) -> Iterator[Keeping]:
    with closing(new_keeping(tmp_path / "a.book", station="s", now=lambda: NOW)) as made:
        yield made


@pytest.fixture
def write(tmp_path: Path):
    def written(text: str, name: str = "K1.csv", encoding: str = "utf-8") -> Path:
        path = tmp_path / name
        path.write_bytes(text.encode(encoding))
        return path

    return written


def placed(keeping: Keeping, *probes: str) -> None:
    for probe in probes or ("K1",):
        place_probe(keeping, probe, "B3", Zone.HOT, SINCE)


def stored(keeping: Keeping, probe: str = "K1") -> list[tuple[str, float]]:
    """Slots in the book as text of UTC and degrees."""
    found = values_of(keeping.book, probe, SINCE, NOW)
    return [(f"{datetime.fromtimestamp(at, UTC):%m-%d %H:%M}", value / 100) for at, value in found]


def why_aside(seen) -> dict[str, int]:
    return {aside.why: aside.count for aside in seen.aside}


@pytest.mark.parametrize(
    "text",
    [
        "time,temp C\n2026-03-01T12:00:00Z,21.50\n2026-03-01T12:05:00Z,-1.25\n",
        "temp C;time\n21,5;2026-03-01 12:00Z\n-1,25;2026-03-01 12:05Z\n",
        "Date\tClock\tTemp (°C)\n01.03.2026\t12:00:00Z\t21,5\n01.03.2026\t12:05:00Z\t-1,25\n",
        "No.,Time,T (F)\n1,03/31/2026 8:00 AM+01:00,70.7\n2,03/01/2026 01:00 PM+01:00,70.7\n"
        "3,3/1/2026 1:05 PM +01:00,29.75\n",
        'Logger;K1\nInterval;5 min\n\n"Time";"RH %";"Temp °C"\n'
        '"2026-03-01 14:00+02:00";"40";"21,5"\n'
        '"2026-03-01 14:05+0200";"41";"-1,25"\n',
        '"time","temp °C"\n"1.3.2026 12:00Z","21,5"\n"1.3.2026 12:05Z","-1,25"\n',
        "2026/3/1 12:00:00.25Z|21.5\n2026/3/1 12:05:00.75Z|-1.25",
    ],
)
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "cp1252", "utf-16"])
def test_any_order_of_columns_separator_unit_and_zone_is_read(keeping, write, text, encoding):
    placed(keeping)
    path = write(text.replace("\n", "\r\n"), encoding=encoding)

    take_in(keeping, preview(keeping, path))

    march = [each for each in stored(keeping) if each[0].startswith("03-01")]
    assert march == [("03-01 12:00", 21.5), ("03-01 12:05", -1.25)]


def test_every_named_fault_is_counted_and_the_rest_goes_in(keeping, write):
    placed(keeping)
    lines = [
        "time;K;temp °C",
        "2026-03-01 12:00Z;K1;21,5",
        "2026-03-01 12:05Z;K1;-127",
        "2026-03-01 12:10Z;K1;85,00",
        "2026-03-01 12:15Z;K1;ERR",
        "2026-03-01 12:20Z;K1;",
        "2026-03-01 12:25Z;K1;812,5",
        "2026-02-30 12:30Z;K1;22",
        "some time;K1;22",
        "2026-03-01 12:35Z;K1",
        "2026-11-25 21:00Z;K1;22",
        "2106-11-25 21:00Z;K1;22",
        "2026-03-01 12:40Z;K1;22,0",
        "2026-03-01 12:40Z;K1;22,5",
        "2026-03-01 12:45Z;K9;23",
        "",
    ]
    path = write("\n".join(lines).replace("time;K;", "time;probe;"))

    seen = preview(keeping, path)
    take_in(keeping, seen)

    assert why_aside(seen) == {
        "failure value": 2,
        "not a number": 1,
        "no value": 1,
        "no temperature of a room": 1,
        "time not readable": 2,
        "wrong number of values": 1,
        "reading from the future": 2,
        "stamp written twice": 1,
        "probe never placed": 1,
    }
    assert next(a.lines for a in seen.aside if a.why == "failure value") == (3, 4)
    assert next(a.lines for a in seen.aside if a.why == "probe never placed") == (15,)
    assert stored(keeping) == [("03-01 12:00", 21.5), ("03-01 12:40", 22.5)]
    assert stored(keeping, "K9") == []


def zoned(keeping, path):
    from dataclasses import replace

    return preview(keeping, path, replace(preview(keeping, path).shape, zone=VIENNA))


def test_an_hour_that_the_clock_skips_is_kept_aside(keeping, write):
    placed(keeping)
    stamps = ("01:30", "01:55", "02:00", "02:55", "03:00")
    path = write("time,temp C\n" + "".join(f"2026-03-29 {at},20\n" for at in stamps))

    seen = zoned(keeping, path)
    take_in(keeping, seen)

    assert why_aside(seen) == {"skipped hour": 2}
    assert [at for at, _ in stored(keeping)] == ["03-29 00:30", "03-29 00:55", "03-29 01:00"]


def test_an_hour_that_comes_twice_is_told_apart_by_the_step_back(keeping, write):
    placed(keeping)
    stamps = ("01:55", "02:00", "02:55", "02:00", "02:55", "03:00")
    path = write("time,temp C\n" + "".join(f"2026-10-25 {at},20\n" for at in stamps))

    seen = zoned(keeping, path)
    take_in(keeping, seen)

    assert seen.aside == ()
    assert [at[6:] for at, _ in stored(keeping)] == [
        "23:55", "00:00", "00:55", "01:00", "01:55", "02:00",
    ]  # fmt: skip


def test_an_hour_that_comes_twice_without_a_step_back_is_kept_aside(keeping, write):
    placed(keeping)
    path = write("time,temp C\n2026-10-25 01:55,20\n2026-10-25 02:30,21\n2026-10-25 03:00,22\n")

    seen = zoned(keeping, path)

    assert why_aside(seen) == {"hour that came twice": 1}


def test_the_same_file_twice_adds_nothing_and_says_so(keeping, write):
    placed(keeping)
    path = write("time,temp C\n2026-03-01 12:00Z,21.5\n")
    take_in(keeping, preview(keeping, path))

    with pytest.raises(ValueError, match=r"25\xa0Nov\xa02026.*nothing was added"):
        take_in(keeping, preview(keeping, path))


def test_the_same_file_read_another_way_takes_the_place_of_the_first_reading(keeping, write):
    from dataclasses import replace

    placed(keeping)
    path = write("time,temp\n2026-03-01 12:00Z,71.6\n2026-03-01 12:05Z,71.6\n")
    seen = preview(keeping, path)
    take_in(keeping, preview(keeping, path, replace(seen.shape, fahrenheit=False)))

    take_in(keeping, preview(keeping, path, replace(seen.shape, fahrenheit=True)))

    assert seen.shape.fahrenheit and "unit" in seen.shape.unsure
    assert [value for _, value in stored(keeping)] == [22.0, 22.0]


def test_how_a_logger_is_read_is_remembered_by_its_serial(keeping, write):
    placed(keeping, "warm end of B3", "K2")
    first = write("Serial: 771\ntime,temp C\n2026-03-01 12:00Z,21.5\n", "a.csv")
    take_in(keeping, preview(keeping, first, renamed(preview(keeping, first).shape, "K2")))

    again = preview(keeping, write("Serial: 771\ntime,temp C\n2026-03-02 12:00Z,21.5\n", "b.csv"))
    other = preview(keeping, write("Serial: 772\ntime,temp C\n2026-03-02 12:00Z,21.5\n", "c.csv"))

    assert (again.remembered, again.probes[0].probe) == (True, "K2")
    assert (other.remembered, other.probes[0].probe) == (False, "772")


def test_day_first_is_found_from_any_line_of_the_file(keeping, write):
    days = [f"{n:02d}/03/2026 12:00Z,21\n" for n in range(1, 32)]

    seen = preview(keeping, write("time,temp C\n" + "".join(days)))

    assert (seen.shape.order, seen.shape.unsure) == ("dmy", ("probe",))


def test_an_order_that_no_line_tells_is_said_to_be_unsure(keeping, write):
    seen = preview(keeping, write("time,temp C\n01/03/2026 12:00Z,21\n"))

    assert "order" in seen.shape.unsure


def test_a_probe_moved_to_its_place_later_lets_the_same_file_in(keeping, write):
    path = write("time,temp C\n2026-03-01 12:00Z,21.5\n")
    with pytest.raises(ValueError, match="no sound reading of a probe that was placed"):
        take_in(keeping, preview(keeping, path))
    placed(keeping)

    take_in(keeping, preview(keeping, path))

    assert len(stored(keeping)) == 1


def test_a_logger_of_several_columns_is_several_probes(keeping, write):
    placed(keeping, "T1", "T2")
    path = write("time;T1;T2;RH\n2026-03-01 12:00Z;21,5;30,0;40\n2026-03-01 12:05Z;;30,5;41\n")

    seen = preview(keeping, path)
    take_in(keeping, seen)

    assert stored(keeping, "T1") == [("03-01 12:00", 21.5)]
    assert [value for _, value in stored(keeping, "T2")] == [30.0, 30.5]
    assert why_aside(seen) == {"no value": 1}


def test_of_several_readings_in_five_minutes_the_last_is_kept_and_the_rest_counted(keeping, write):
    placed(keeping)
    text = "".join(f"2026-03-01 12:{n:02d}Z,{20 + n}\n" for n in range(10))

    seen = preview(keeping, write("time,temp C\n" + text))
    take_in(keeping, seen)

    assert seen.thinned == 8
    assert stored(keeping) == [("03-01 12:00", 24.0), ("03-01 12:05", 29.0)]


def test_a_file_of_junk_with_a_few_sound_lines_gives_the_sound_ones(keeping, write):
    placed(keeping)
    junk = "".join(f"{n:x}-{'z' * (n % 7)}{n % 13},{n:o}x{n}\n" for n in range(20_000))
    sound = "2026-03-01 12:00Z,21.5\n2026-03-01 12:05Z,21.5\n"

    seen = preview(keeping, write(f"time,temp C\n{sound}{junk}2026-03-01 12:10Z,22\n"))
    take_in(keeping, seen)

    assert why_aside(seen) == {"time not readable": 20_000}
    assert len(stored(keeping)) == 3


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "empty"),
        (b"\x00\x01\x02\x00" * 40, "no text"),
        (b"a,b\nc,d\n", "both a time and a number"),
    ],
)
def test_a_file_that_is_no_table_is_refused_in_one_sentence(keeping, tmp_path, content, told):
    path = tmp_path / "odd.csv"
    path.write_bytes(content)

    with pytest.raises(ValueError, match=told):
        preview(keeping, path)


def test_a_file_that_is_not_there_is_refused(keeping, tmp_path):
    with pytest.raises(LookupError, match="cannot be read"):
        preview(keeping, tmp_path / "gone.csv")


def test_a_probe_cannot_hang_from_a_time_to_come(keeping):
    with pytest.raises(ValueError, match="to come"):
        place_probe(keeping, "K1", "B3", Zone.HOT, NOW + timedelta(days=1))


def test_roll_up_of_a_file_is_the_one_that_merging_makes(keeping, write):
    from keeper.store.readings import rolled_up

    placed(keeping)
    text = "".join(
        f"2026-03-01 {n // 12:02d}:{n % 12 * 5:02d}Z,{20 + n * 7 % 11 / 3:.2f}\n"
        for n in range(0, 288, 1)
        if n // 12 != 5
    )
    take_in(keeping, preview(keeping, write("time,temp C\n" + text)))

    (row,) = keeping.book.connection.execute("SELECT slots, hours FROM reading_day").fetchall()

    assert row[1] == rolled_up(row[0])


def test_a_stray_date_long_ago_does_not_make_a_day_of_every_day_between(keeping, write):
    placed(keeping)
    seen = preview(keeping, write("time,temp C\n1990-01-01 12:00Z,20\n2026-03-01 12:00Z,21\n"))

    take_in(keeping, seen)

    (count,) = keeping.book.connection.execute("SELECT count(*) FROM reading_day").fetchone()
    assert count == 2
    assert stored(keeping) == [("03-01 12:00", 21.0)]


def test_lines_longer_than_a_block_are_read_and_their_numbers_kept(keeping, write):
    placed(keeping)
    rest = ",x" * 200_000
    lines = [f"2026-03-01 12:0{n}Z,{20 + n}{rest}" for n in (0, 5)]
    path = write("time,temp C" + rest + "\n" + "\n".join(lines) + "\nshort\n")

    seen = preview(keeping, path)
    take_in(keeping, seen)

    assert stored(keeping) == [("03-01 12:00", 20.0), ("03-01 12:05", 25.0)]
    assert [(aside.why, aside.lines) for aside in seen.aside] == [("wrong number of values", (4,))]


def test_lines_of_one_length_that_differ_in_a_letter_are_told_apart(keeping, write):
    placed(keeping)
    stamps = ("03/01/2026 01:00 AM", "03/01/2026 01:00 PM", "03/13/2026 12:00 AM")
    lines = [*(f"{stamp}+00:00,21.5" for stamp in stamps), "03/01/2026 02:00 AM+00:00,21x5"]
    seen = preview(keeping, write("time,temp C\n" + "\n".join(lines)))

    take_in(keeping, seen)

    assert [at for at, _ in stored(keeping)] == ["03-01 01:00", "03-01 13:00", "03-13 00:00"]
    assert why_aside(seen) == {"not a number": 1}


def test_a_separator_within_a_name_is_a_line_of_too_many_values(keeping, write):
    placed(keeping, "K12")
    lines = ("K12,2026-03-01 12:00Z,21.5", "K,2,2026-03-01 12:05Z,21.5"[:-1] + "5")

    seen = preview(keeping, write("probe,time,temp C\n" + "\n".join(lines)))

    assert why_aside(seen) == {"wrong number of values": 1}


def test_a_file_is_let_in_again_when_a_probe_of_it_has_got_its_place(keeping, write):
    placed(keeping)
    lines = "K1,2026-03-01 12:00Z,21.5\nK9,2026-03-01 12:00Z,25.5\n"
    path = write("probe,time,temp C\n" + lines)
    take_in(keeping, preview(keeping, path))
    placed(keeping, "K9")

    take_in(keeping, preview(keeping, path))

    assert stored(keeping, "K9") == [("03-01 12:00", 25.5)]


def test_dates_that_stand_on_many_lines_are_each_read_and_a_wrong_one_is_kept_aside(keeping, write):
    placed(keeping)
    days = ("2026-02-27", "2026-02-28", "2026-02-30", "2026-13-01", "2026-03-01")
    clocks = [f"{hour:02d}:{minute:02d}" for hour in range(24) for minute in range(0, 60, 10)]
    clocks[7] = "25:10"
    lines = [f"{day}T{clock}:00Z,20.00" for day in days for clock in clocks]

    seen = preview(keeping, write("time,temp C\n" + "\n".join(lines)))
    take_in(keeping, seen)

    assert why_aside(seen) == {"time not readable": 2 * len(clocks) + 3}
    told = stored(keeping)
    assert len(told) == 3 * (len(clocks) - 1)
    assert {at[:5] for at, _ in told} == {"02-27", "02-28", "03-01"}
    assert told[0][0] == "02-27 00:00"
    assert told[-1][0] == "03-01 23:50"


def test_names_that_come_in_turn_and_then_do_not_are_each_told_apart(keeping, write):
    placed(keeping, "K1", "K2", "K3")
    times = [f"2026-03-01 {minute // 60:02d}:{minute % 60:02d}Z" for minute in range(0, 60, 5)]
    in_turn = [f"K{k},{at},2{k}.00" for at in times[:6] for k in (1, 2, 3)]
    out_of_turn = [
        f"K{k},{at},2{k}.50" for at, k in zip(times[6:], (3, 1, 1, 2, 3, 2), strict=True)
    ]

    take_in(keeping, preview(keeping, write("probe,time,t C\n" + "\n".join(in_turn))))
    both = [*in_turn, *out_of_turn]
    take_in(keeping, preview(keeping, write("probe,time,t C\n" + "\n".join(both), "more.csv")))

    for k, late in ((1, (35, 40)), (2, (45, 55)), (3, (30, 50))):
        early = [(f"03-01 00:{minute:02d}", 20.0 + k) for minute in range(0, 30, 5)]
        assert stored(keeping, f"K{k}") == early + [(f"03-01 00:{m}", 20.5 + k) for m in late]
