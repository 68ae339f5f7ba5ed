"""Every reason of every rule has its sentence, and every figure of it is written with its unit."""

import importlib
import pkgutil
import string
from collections.abc import Iterator
from datetime import date
from enum import StrEnum
from typing import get_args

import pytest

import keeper.actions
import keeper.husbandry.animal
import keeper.husbandry.events
import keeper.rules
from keeper.husbandry.animal import Sex
from keeper.husbandry.reasons import because
from keeper.reports import body_sentences, food_sentences, house_sentences
from keeper.reports.figures import GAP, KINDS, plain
from keeper.reports.sentences import SENTENCES
from keeper.reports.state_words import WORDS
from keeper.reports.words import (
    because_text,
    placeholders,
    sentence,
    tellings,
    word,
    word_of,
)
from keeper.rules import alerts, breeding, causes

ALWAYS_KNOWN = {"sex", "her", "she", "a_sex"}

QUIET = {
    ("below expectation", "sex"),
    ("refused in a row", "half"),  # shown only, leads to nothing
}
"""Figures that a reason carries and its sentence does not need."""


def modules() -> Iterator[str]:
    """Every module that may give reasons: the rules, and the verbs that join them."""
    for home in (keeper.rules, keeper.actions):
        for found in pkgutil.walk_packages(home.__path__, f"{home.__name__}."):
            yield found.name


def whys() -> list[tuple[str, str, tuple[str, ...]]]:
    return [
        (name, why, figures)
        for name in modules()
        for why, figures in getattr(importlib.import_module(name), "WHYS", ())
    ]


def test_the_rules_give_reasons_to_be_told() -> None:
    assert len({name for name, _, _ in whys()}) >= 10


@pytest.mark.parametrize(("module", "why", "figures"), whys())
def test_every_reason_has_a_sentence_its_figures_fill(
    module: str, why: str, figures: tuple[str, ...]
) -> None:
    given = set(figures) | ALWAYS_KNOWN

    filled = [t for t in tellings(why) if set(placeholders(t)) <= given]

    assert filled, f"{module}: {why!r} has no sentence that {figures} can fill"


@pytest.mark.parametrize(("module", "why", "figures"), whys())
def test_every_figure_of_a_reason_is_told(module: str, why: str, figures: tuple[str, ...]) -> None:
    told = {name for telling in tellings(why) for name in placeholders(telling)}

    untold = {name for name in figures if name not in told and (why, name) not in QUIET}

    assert not untold, f"{module}: {why!r} never tells {untold}"


@pytest.mark.parametrize("why", sorted(SENTENCES))
def test_every_placeholder_asks_for_a_kind_of_figure_that_there_is(why: str) -> None:
    specs = [spec for t in tellings(why) for _, _, spec, _ in string.Formatter().parse(t)]

    assert [spec for spec in specs if spec and spec not in KINDS and spec not in WORDS] == []


@pytest.mark.parametrize("why", sorted(SENTENCES))
def test_a_sentence_shouts_at_nobody_and_breaks_no_unit_from_its_number(why: str) -> None:
    for telling in tellings(why):
        assert "!" not in telling
        assert not any(f"}} {unit}" in telling for unit in ("g ", "%", "°C", "cm "))


def enumerations() -> list[type[StrEnum]]:
    homes = [keeper.husbandry.animal, keeper.husbandry.events]
    homes += [importlib.import_module(name) for name in modules()]
    found = {
        value
        for home in homes
        for value in vars(home).values()
        if isinstance(value, type) and issubclass(value, StrEnum) and value is not StrEnum
    }
    return sorted(found, key=lambda kind: kind.__name__)


@pytest.mark.parametrize("kind", enumerations())
def test_every_member_of_the_vocabulary_has_a_word(kind: type[StrEnum]) -> None:
    for member in kind:
        assert word(member)


def test_the_verdict_stands_beside_its_reason_for_her_sex() -> None:
    why = because(
        "below expectation",
        z=-2.13,
        limit_z=-2.0,
        centile=1.7,
        weight_g=41.0,
        median_g=66.2,
        basis="provisional",
    )

    said = plain(sentence(why, Sex.FEMALE))

    assert said == (
        "z −2.1 for a female of her age: 41 g against a median of 66.2 g"
        " (p2, provisional curve; look at z −2)."
    )


def test_a_male_is_not_called_her() -> None:
    why = because(
        "below clutch mates", percent=89, limit_percent=90, weight_g=8.0, clutch_median_g=9.0
    )

    assert "his clutch" in sentence(why, Sex.MALE)
    assert "its clutch" in sentence(why)


def test_window_text_keeps_numbers_and_units_on_one_line() -> None:
    said = sentence(because("since eaten", days=8, interval=7))

    assert said == f"8{GAP}days since eaten (interval 7)."


def test_a_figure_that_is_not_known_is_left_out_of_the_sentence() -> None:
    with_tool = because("read once", at="2026-03-18T21:40+00:00", read_with="gun")
    without = because("read once", at="2026-03-18T21:40+00:00", read_with=None)

    assert plain(sentence(with_tool)) == "Read once, on 18 Mar 2026, 21:40, with gun."
    assert plain(sentence(without)) == "Read once, on 18 Mar 2026, 21:40."


def test_one_name_told_by_two_rules_takes_the_sentence_its_figures_fill() -> None:
    of_sheds = because("first shed not seen", age_days=30, most=21, overdue_days=9)
    of_feeding = because("first shed not seen", hatched=date(2026, 3, 1), days=21)

    assert "9 days past" in plain(sentence(of_sheds))
    assert "first offer is due" in plain(sentence(of_feeding))


def test_no_sentence_waits_for_a_reason_that_no_rule_gives() -> None:
    given = {why for _, why, _ in whys()} | {"offer"}
    told = {
        *food_sentences.SENTENCES,
        *body_sentences.SENTENCES,
        *house_sentences.SENTENCES,
    }

    assert told - given == set()


def test_a_reason_of_another_version_is_told_by_its_own_name() -> None:
    assert (
        sentence(because("moon in the third house", days=3)) == "moon in the third house (days 3)."
    )


def test_dates_read_back_from_a_frozen_plan_are_told_like_dates() -> None:
    frozen = because("shed before", days=3, shed_on="2026-03-18")

    assert plain(sentence(frozen)) == "Shed 3 days ago, on 18 Mar 2026."


def test_what_happened_today_is_not_told_in_days() -> None:
    seen = because("shed before", days=0, shed_on="2026-03-18")

    assert plain(sentence(seen)) == "Shed today, on 18 Mar 2026."


def test_a_clock_of_the_kind_does_not_claim_to_be_learned() -> None:
    of_the_kind = because("own clock", median_days=59, late_days=96, learned_from=None)

    told = plain(sentence(of_the_kind))
    assert told.endswith("within 96 days, as is usual for the kind.")
    assert "learned" in sentence(because("own clock", median_days=59, late_days=96, learned_from=3))


def test_a_loss_of_two_weighings_is_told_as_the_least_that_both_show() -> None:
    """The last weight alone may show more than the percent, and a keeper does the sum."""
    lost = because(
        "lost since baseline",
        percent=12.0,
        now_g=604.0,
        baseline_g=713.0,
        readings=2,
        limit_percent=10,
    )

    assert plain(sentence(lost)).startswith("Lost at least 12 %: 604 g against a usual 713 g")


def test_the_same_sentence_is_said_once() -> None:
    twice = [because("no weight"), because("no holds"), because("no weight")]

    assert because_text(twice) == "No weight in the book. No holds."


@pytest.mark.parametrize(
    ("group", "kind"), [("gate", breeding.GateName), ("Cause", causes.GroupKind)]
)
def test_every_gate_and_every_kind_of_cause_has_a_word(group: str, kind: object) -> None:
    assert set(get_args(kind)) <= set(WORDS[group])


@pytest.mark.parametrize("kind", alerts.WORST_KINDS)
def test_every_kind_of_watch_line_has_a_title(kind: str) -> None:
    assert word_of("watch kind", kind)
