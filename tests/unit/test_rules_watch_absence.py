"""What falls into an absence: eggs, doses, tests and papers, told before it until it is over.

Today is 23 September 2026; the keeper is away from the 25th to 4 October.
"""

from datetime import timedelta

import pytest

from keeper.husbandry.care import Dose, DoseTold, FaecalResult, FaecalTest, Medicine, Permit
from keeper.husbandry.events import Clutch, HoldKind
from keeper.husbandry.when import on_day
from keeper.rules.absence import Absence
from keeper.rules.holds import Hold
from keeper.rules.watch_absence import (
    DUE,
    LAYING,
    PIPPING,
    absence_lines,
    dosing,
    ending,
    faecal_due,
    laying,
    pipping,
)
from keeper.rules.watch_eggs import ClutchFacts
from keeper.rules.watch_facts import Severity
from tests.builders import a_profile, day

TODAY = day("2026-09-23")
AWAY = Absence(day("2026-09-25"), day("2026-10-04"), who="Wren")
PROFILE = a_profile()  # pipping usual from day 55 to 70; a vet is asked 30 days after the shed


def clutch(laid, good=8):
    on = on_day(TODAY - timedelta(days=laid))
    told = Clutch(animal=1, happened=on, good=good, slugs=0, code="26-9")
    return ClutchFacts(name="26-9", dam=1, laid=told, figures=PROFILE.incubator)


@pytest.mark.parametrize(
    ("laid", "told"),
    [
        (43, []),  # day 55 is 5 October, the day after
        (44, [PIPPING]),  # day 55 is 4 October, its last day
        (60, [PIPPING]),
        (68, [PIPPING]),  # day 70 is 25 September, its first day
        (69, []),
    ],
)
def test_a_clutch_whose_days_of_pipping_meet_the_absence_is_told(laid, told):
    assert [each.kind for each in pipping([clutch(laid)], AWAY, TODAY)] == told


def test_the_days_and_the_eggs_are_told_and_an_empty_clutch_is_not():
    (found,) = pipping([clutch(50), clutch(50, good=0)], AWAY, TODAY)

    assert found.place == "26-9"
    assert found.why.figures == {"low": day("2026-09-28"), "high": day("2026-10-13"), "still_in": 8}


def hold(kind, since, until=None):
    return Hold(
        kind=kind,
        since=day(since),
        until=day(until) if until else None,
        ends_when=None,
        skip=True,
        refusal_counts=False,
    )


def test_after_a_pre_lay_shed_eggs_are_to_be_expected():
    found = laying(1, "A1·1", [hold(HoldKind.PRE_LAY, "2026-09-20")], PROFILE, AWAY)

    assert (found.kind, found.why.why) == (LAYING, "may lay while away")
    assert found.why.figures == {"since": day("2026-09-20"), "until": day("2026-10-20")}


def test_one_that_laid_is_not_told_again():
    laid = hold(HoldKind.PRE_LAY, "2026-09-10", until="2026-09-26")

    assert laying(1, "A1·1", [laid], PROFILE, AWAY) is None


@pytest.mark.parametrize(("until", "told"), [(None, True), ("2026-09-25", False)])
def test_one_held_as_gravid_may_lay_unless_the_hold_ends_before(until, told):
    found = laying(1, "A1·1", [hold(HoldKind.GRAVID, "2026-08-20", until)], PROFILE, AWAY)

    assert (found is not None) is told


def course(**changed):
    told = {
        "animal": 1,
        "happened": on_day(day("2026-09-20")),
        "medicine": "drops",
        "amount": "as the vet wrote",
        "route": "by mouth",
        "first_on": day("2026-09-20"),
        "last_on": day("2026-09-30"),
        "every_days": 2,
    }
    return Medicine(**(told | changed))


def test_every_dose_of_its_days_is_counted():
    """Every second day from the 20th: of those to the 30th 26, 28 and 30 fall into it."""
    (found,) = dosing(1, "A1·1", [course()], [], AWAY, TODAY)

    assert found.why.figures["count"] == 3
    assert (found.why.figures["low"], found.why.figures["high"]) == (
        day("2026-09-26"),
        day("2026-09-30"),
    )


def test_a_course_that_was_stopped_asks_for_nothing():
    on = on_day(day("2026-09-22"))
    stopped = Dose(animal=1, happened=on, medicine="drops", told=DoseTold.STOPPED)

    assert dosing(1, "A1·1", [course()], [stopped], AWAY, TODAY) == []


@pytest.mark.parametrize(
    ("since", "told"), [("2026-08-26", True), ("2026-08-25", False), ("2026-09-10", False)]
)
def test_the_faecal_test_of_a_quarantine_is_told_where_its_day_falls_into_it(since, told):
    """Thirty days after its begin: 25 and 24 September, 10 October."""
    found = faecal_due(1, "A1·1", [], [hold(HoldKind.QUARANTINE, since)], AWAY, TODAY)

    assert (found is not None) is told


def test_a_sample_that_was_sent_is_awaited_and_no_test_is_due():
    sent = FaecalTest(animal=1, happened=on_day(TODAY), result=FaecalResult.SENT)

    kept = hold(HoldKind.QUARANTINE, "2026-08-26")
    assert faecal_due(1, "A1·1", [sent], [kept], AWAY, TODAY) is None


@pytest.mark.parametrize(
    ("expires", "told"),
    [("2026-09-24", 0), ("2026-09-25", 1), ("2026-10-04", 1), ("2026-10-05", 0)],
)
def test_a_permit_whose_last_day_falls_into_it_is_told(expires, told):
    on = on_day(day("2026-01-01"))
    permit = Permit(animal=1, happened=on, kind="papers", number="1", expires=day(expires))

    assert len(ending([permit], AWAY, TODAY, "A1·1", 1)) == told


def test_there_is_one_line_a_place_and_kind_this_week_with_who_covers():
    found = [
        *dosing(1, "A1·1", [course()], [], AWAY, TODAY),
        *dosing(1, "A1·1", [course(medicine="salve")], [], AWAY, TODAY),
        *pipping([clutch(50)], AWAY, TODAY),
    ]
    doses, eggs = absence_lines(found, AWAY)

    assert [line.kind for line in (doses, eggs)] == [DUE, PIPPING]
    assert {line.severity for line in (doses, eggs)} == {Severity.THIS_WEEK}
    assert (doses.place, doses.members) == ("A1·1", (1,))
    assert [why.why for why in doses.because] == [
        "doses while away",
        "doses while away",
        "away then",
    ]
    assert doses.because[-1].figures["who"] == "Wren"
    assert eggs.because[1].why == "no cutting but by experienced hands"
