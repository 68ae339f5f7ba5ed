"""Heat: limits by zone, durations only where readings carry them, sensors that lie."""

from datetime import UTC, datetime, timedelta

import pytest

from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.when import at_instant
from keeper.reports.words import sentence
from keeper.rules.heat import HeatVerdict, cold_after_feeding, heat_verdicts
from keeper.rules.sensors import sensor_fault
from tests.builders import a_profile

PROFILE = a_profile()  # hot 30-32, act above 38, digest 28; night 20, cold 15; cool 23-25
NOW = datetime(2026, 9, 23, 20, 0, tzinfo=UTC)


def read(temp_c: float, minutes_ago: float = 10, zone: Zone = Zone.HOT, place: str = "B3") -> Heat:
    at = NOW - timedelta(minutes=minutes_ago)
    return Heat(place=place, happened=at_instant(at), zone=zone, temp_c=temp_c, read_with="gun")


def logged(*temps_c: float, every: float = 10, zone: Zone = Zone.HOT) -> list[Heat]:
    """A series whose last reading is now."""
    last = len(temps_c) - 1
    return [read(temp, (last - n) * every, zone) for n, temp in enumerate(temps_c)]


def verdict_of(*readings: Heat) -> HeatVerdict:
    (verdict,) = heat_verdicts(readings, PROFILE, NOW)
    return verdict


def whys(verdict: HeatVerdict) -> list[str]:
    return [reason.why for reason in verdict.because]


@pytest.mark.parametrize(
    ("zone", "temp_c", "state", "urgency"),
    [
        (Zone.HOT, 31.0, "within limits", "noted"),
        (Zone.HOT, 33.0, "too hot", "noted"),
        (Zone.HOT, 38.5, "too hot", "now"),
        (Zone.HOT, 29.0, "too cold", "noted"),
        (Zone.HOT, 27.9, "too cold", "today"),
        (Zone.HOT, 14.0, "too cold", "now"),
        (Zone.COOL, 24.0, "within limits", "noted"),
        (Zone.COOL, 30.5, "too hot", "today"),
        (Zone.COOL, 14.0, "too cold", "now"),
        (Zone.NIGHT, 21.0, "within limits", "noted"),
        (Zone.NIGHT, 19.0, "too cold", "noted"),
        (Zone.NIGHT, 17.0, "too cold", "today"),
        (Zone.ROOM, 33.0, "too hot", "now"),
    ],
)
def test_one_reading_typed_by_hand_is_judged_by_its_zone(
    zone: Zone, temp_c: float, state: str, urgency: str
) -> None:
    verdict = verdict_of(read(temp_c, zone=zone))

    assert (verdict.state, verdict.urgency) == (state, urgency)


def test_a_point_typed_by_hand_says_that_it_was_read_once() -> None:
    verdict = verdict_of(read(39.0))

    assert verdict.read_once
    assert verdict.minutes is None
    assert "read once" in whys(verdict)


def test_a_hot_end_over_the_act_limit_says_to_check_the_heater_by_hand() -> None:
    assert "check the heater by hand" in whys(verdict_of(read(39.0)))


def test_a_series_too_short_beyond_the_limit_is_only_noted() -> None:
    verdict = verdict_of(*logged(31, 31, 31, 39.0, 39.2, every=4))

    assert (verdict.state, verdict.urgency, verdict.minutes) == ("too hot", "noted", 4)
    assert "not yet for so long" in whys(verdict)


def test_a_series_long_enough_beyond_the_limit_is_urgent() -> None:
    verdict = verdict_of(*logged(31, 31, 31, 39.0, 39.2, 39.1))

    assert (verdict.urgency, verdict.minutes, verdict.read_once) == ("now", 20, False)


def test_a_dip_just_inside_does_not_release_the_alarm() -> None:
    verdict = verdict_of(*logged(31, 39.0, 39.2, 37.8, 39.1, 39.0))

    assert verdict.minutes == 40


def test_just_inside_the_limit_an_alarm_still_stands() -> None:
    verdict = verdict_of(*logged(31, 39.0, 39.2, 39.1, 37.8, 37.8, 37.8))

    assert verdict.urgency == "now"


def test_one_logged_reading_well_inside_does_not_release_it_yet() -> None:
    assert verdict_of(*logged(31, 39.0, 39.2, 39.1, 31.0)).urgency == "now"


def test_a_quarter_of_an_hour_well_inside_releases_it() -> None:
    verdict = verdict_of(*logged(39.0, 39.2, 39.2, 31.0, 31.0, 31.1))

    assert verdict.state == "within limits"


def test_a_reading_of_yesterday_cannot_speak_for_today() -> None:
    verdict = verdict_of(read(31.0, minutes_ago=25 * 60))

    assert verdict.state == "cannot tell"


def test_a_reading_of_the_future_is_left_aside() -> None:
    assert heat_verdicts([read(39.0, minutes_ago=-5)], PROFILE, NOW) == ()


def test_each_place_and_zone_has_one_verdict_by_its_last_reading() -> None:
    verdicts = heat_verdicts(
        [read(26.0, 60), read(31.0, 5), read(24.0, zone=Zone.COOL), read(26.0, place="A1")],
        PROFILE,
        NOW,
    )

    assert [(v.place, v.zone, v.temp_c) for v in verdicts] == [
        ("A1", Zone.HOT, 26.0),
        ("B3", Zone.COOL, 24.0),
        ("B3", Zone.HOT, 31.0),
    ]


def test_a_clock_change_adds_no_minutes() -> None:
    first = datetime.fromisoformat("2026-10-25T01:30:00+01:00")
    temps = [(0, 39.0), (10, 39.0), (20, 39.0), (30, 39.0)]
    after = datetime.fromisoformat("2026-10-25T01:00:00+00:00")
    readings = [
        Heat(
            place="B3",
            happened=at_instant((first + timedelta(minutes=m)) if m < 20 else after),
            zone=Zone.HOT,
            temp_c=temp_c,
        )
        for m, temp_c in temps
    ]

    (verdict,) = heat_verdicts(readings, PROFILE, after)

    assert verdict.minutes == 30


def test_a_hot_end_too_cold_after_feeding_names_the_fed() -> None:
    fed = [(7, NOW - timedelta(hours=20)), (9, NOW - timedelta(hours=60))]

    cold = cold_after_feeding([read(26.0)], fed, PROFILE, NOW)

    assert cold is not None
    assert (cold.animals, cold.read_once, cold.hours) == ((7,), True, None)


def test_a_warm_hot_end_after_feeding_names_nobody() -> None:
    assert cold_after_feeding([read(30.0)], [(7, NOW)], PROFILE, NOW) is None


def test_cold_for_less_than_six_known_hours_is_not_yet_a_risk() -> None:
    fed = [(7, NOW - timedelta(hours=20))]

    assert cold_after_feeding(logged(*[26.0] * 6, every=60), fed, PROFILE, NOW) is None
    assert cold_after_feeding(logged(*[26.0] * 8, every=60), fed, PROFILE, NOW) is not None


def test_cold_before_the_feeding_is_not_after_it() -> None:
    fed = [(7, NOW - timedelta(hours=1))]

    assert cold_after_feeding([read(26.0, minutes_ago=120)], fed, PROFILE, NOW) is None


def test_a_cool_end_says_nothing_of_digestion() -> None:
    assert cold_after_feeding([read(24.0, zone=Zone.COOL)], [(7, NOW)], PROFILE, NOW) is None


def test_a_probe_that_repeats_itself_for_three_hours_is_stuck() -> None:
    fault = sensor_fault(logged(*[31.12] * 19), NOW)

    assert fault is not None and fault.kind == "stuck"


@pytest.mark.parametrize("temp_c", [31.0, 30.5, 31.11], ids=["31", "half a degree", "88 F"])
def test_a_logger_of_coarse_steps_in_a_steady_room_is_not_stuck(temp_c: float) -> None:
    assert sensor_fault(logged(*[temp_c] * 200), NOW) is None


def test_a_logger_of_half_degrees_that_held_its_value_as_long_before_is_not_stuck() -> None:
    steady = [*[30.5] * 20, *[31.0] * 50]

    assert sensor_fault(logged(*steady), NOW) is None


def test_a_logger_of_half_degrees_is_stuck_where_it_never_stood_still_so_long() -> None:
    moving = [30.5, 30.5, 31.0, 31.0, 31.5, 31.0] * 10

    fault = sensor_fault(logged(*moving, *[31.0] * 18), NOW)

    assert fault is not None and fault.kind == "stuck"


@pytest.mark.parametrize(("steady_hours", "stuck"), [(None, False), (2.0, True), (8.0, False)])
def test_what_a_probe_did_before_says_whether_it_is_stuck(steady_hours, stuck) -> None:
    fault = sensor_fault(logged(*[31.0] * 120), NOW, steady_hours=steady_hours)

    assert (fault is not None) == stuck


def test_a_probe_that_moves_is_believed() -> None:
    assert sensor_fault(logged(*[31.0, 31.1] * 10), NOW) is None


def test_five_degrees_in_two_minutes_is_a_leap() -> None:
    fault = sensor_fault(logged(31.0, 31.1, 31.0, 36.5, every=2), NOW)

    assert fault is not None and fault.kind == "leap"


@pytest.mark.parametrize(
    ("every", "to_c", "leapt"),
    [(2, 36.0, False), (2, 36.1, True), (5, 46.0, False), (5, 46.1, True), (5, 15.9, True)],
)
def test_readings_further_apart_leap_where_some_two_minutes_must_have(every, to_c, leapt) -> None:
    fault = sensor_fault(logged(31.0, 31.1, 31.0, to_c, every=every), NOW)

    assert (fault is not None and fault.kind == "leap") == leapt


def test_a_logger_silent_for_half_an_hour_is_a_fault() -> None:
    earlier = NOW + timedelta(minutes=31)

    fault = sensor_fault(logged(31.0, 31.1, 31.0, 31.2), earlier)

    assert fault is not None and fault.kind == "silent"


def test_points_typed_twice_a_day_are_not_a_silent_sensor() -> None:
    assert sensor_fault(logged(31.0, 31.0, 31.0, 31.0, every=720), NOW) is None


@pytest.mark.parametrize("temp_c", [-127.0, 85.0])
def test_a_failure_value_is_a_fault_and_no_temperature(temp_c: float) -> None:
    fault = sensor_fault([read(temp_c)], NOW)

    assert fault is not None and fault.kind == "failure value"
    assert heat_verdicts([read(temp_c)], PROFILE, NOW) == ()


def test_a_reading_back_inside_its_limit_is_not_called_beyond_it() -> None:
    (verdict,) = heat_verdicts(logged(*[33.0] * 4, 31.8), PROFILE, NOW)

    assert verdict.state == "too hot"
    assert whys(verdict)[0] == "was too hot"
    assert "32" in sentence(verdict.because[0]) and "not well inside" in sentence(
        verdict.because[0]
    )


def test_a_reading_that_is_told_as_its_limit_is_not_called_beyond_it() -> None:
    (verdict,) = heat_verdicts(logged(*[33.0] * 4, 32.04), PROFILE, NOW)

    assert whys(verdict)[0] == "was too hot"


def test_a_stretch_of_days_is_told_in_hours_and_a_short_one_in_minutes() -> None:
    long = heat_verdicts(logged(*[33.0] * 20), PROFILE, NOW)
    short = heat_verdicts(logged(*[33.0] * 8), PROFILE, NOW)

    assert "For 3\xa0hours" in sentence(long[0].because[1])
    assert "For 70\xa0minutes" in sentence(short[0].because[1])
