"""What is a vet's the same day, eggs to be expected, and both sexes in one tub."""

from datetime import timedelta

import pytest

from keeper.husbandry.animal import Sex
from keeper.husbandry.events import HoldKind, Paired, RemarkKind, Zone
from keeper.husbandry.reasons import because
from keeper.husbandry.when import on_day
from keeper.rules.alerts import watch
from keeper.rules.holds import Hold
from keeper.rules.sensors import SensorFault
from keeper.rules.watch_facts import HouseFacts, Severity, WatchFacts
from keeper.rules.watch_tubs import shared_tubs
from tests.builders import a_profile, a_remark, an_animal, day

TODAY = day("2026-09-23")
PROFILE = a_profile()


def ago(days: int):
    return TODAY - timedelta(days=days)


def facts(**given) -> WatchFacts:
    now = an_animal(weighed_on=ago(3), weight_g=300.0, eaten_on=ago(3))
    return WatchFacts(now=now, profile=PROFILE, **given)


def kinds(*given: WatchFacts) -> list[tuple[str, Severity]]:
    return [(line.kind, line.severity) for line in watch(given, HouseFacts(), TODAY)]


URGENT = [RemarkKind.OPEN_MOUTH, RemarkKind.PROLAPSE, RemarkKind.STRAINING]


@pytest.mark.parametrize("kind", URGENT)
def test_what_is_a_vets_the_same_day_is_for_now_and_says_so(kind):
    (line,) = watch([facts(remarks=[a_remark(kind=kind, on=str(ago(0)))])], HouseFacts(), TODAY)

    assert (line.kind, line.severity) == (kind.value, Severity.NOW)
    assert "ask a reptile vet the same day" in [why.why for why in line.because]


@pytest.mark.parametrize(
    ("days", "severity"), [(1, Severity.NOW), (2, Severity.TODAY), (7, Severity.TODAY)]
)
def test_after_a_day_it_is_followed_for_a_week(days, severity):
    told = facts(remarks=[a_remark(kind=RemarkKind.PROLAPSE, on=str(ago(days)))])

    assert ("prolapse", severity) in kinds(told)


def test_after_a_week_it_is_followed_no_more():
    told = facts(remarks=[a_remark(kind=RemarkKind.PROLAPSE, on=str(ago(8)))])

    assert "prolapse" not in [kind for kind, _ in kinds(told)]


def test_from_the_pre_lay_shed_on_eggs_are_to_be_expected_this_week():
    hold = Hold(kind=HoldKind.PRE_LAY, since=ago(4))

    assert ("laying near", Severity.THIS_WEEK) in kinds(facts(holds=[hold]))


def test_eggs_that_do_not_come_are_overdue_and_no_longer_expected():
    hold = Hold(kind=HoldKind.PRE_LAY, since=ago(20), asks_renewal=True)

    told = [kind for kind, _ in kinds(facts(holds=[hold]))]

    assert "laying overdue" in told
    assert "laying near" not in told


def a_tub(age_days: int = 200, place: str = "A1·1", **male):
    hatched = ago(age_days)
    female = an_animal(
        animal=1, place=place, sex=Sex.FEMALE, hatched_first=hatched, hatched_last=hatched
    )
    given = {"sex": Sex.MALE, "place": place, "hatched_first": hatched, **male}
    return [female, an_animal(animal=2, **given)]


def test_both_sexes_in_one_tub_past_three_months_are_one_line_of_today():
    (line,) = shared_tubs(a_tub(), [], TODAY)

    assert (line.kind, line.severity, line.place) == ("mixed sexes", Severity.TODAY, "A1·1")
    assert line.members == (1, 2)


@pytest.mark.parametrize(
    "tub",
    [
        a_tub(age_days=80),
        a_tub(sex=Sex.FEMALE),
        a_tub(sex=Sex.UNKNOWN),
        a_tub(place="A1·1")[:1] + a_tub(place="A1·2")[1:],
        a_tub(species="corn_snake"),
    ],
    ids=["too young", "two females", "sex not known", "two tubs", "two kinds"],
)
def test_where_nothing_can_come_of_it_there_is_no_line(tub):
    assert shared_tubs(tub, [], TODAY) == ()


def paired(days_ago: int, animal: int = 1, mate: int = 2) -> Paired:
    return Paired(animal=animal, mate=mate, happened=on_day(ago(days_ago)))


def test_a_pair_put_together_on_purpose_is_no_line_until_it_should_be_parted():
    assert shared_tubs(a_tub(), [paired(14)], TODAY) == ()

    (line,) = shared_tubs(a_tub(), [paired(15)], TODAY)

    assert [why.why for why in line.because] == ["pair not separated"]
    assert line.because[0].figures["days"] == 15


def test_a_pairing_of_others_excuses_nobody():
    assert len(shared_tubs(a_tub(), [paired(3, mate=9)], TODAY)) == 1


@pytest.mark.parametrize(("place", "severity"), [("all probes", "now"), ("B3", "today")])
def test_probes_that_all_fall_silent_are_for_now_and_one_of_them_for_today(place, severity):
    fault = SensorFault(
        place=place,
        zone=Zone.HOT,
        kind="silent",
        because=(because("sensor silent", minutes=40, most_minutes=30),),
    )
    house = HouseFacts(faults=[fault], cut_off=frozenset({"all probes"}))

    (line,) = watch([], house, TODAY)

    assert (line.kind, line.severity.value) == ("sensor", severity)
