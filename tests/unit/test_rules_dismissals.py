"""Lines put aside again and again with nothing done: when a looser limit is proposed, and which."""

import pytest

from keeper.husbandry.animal import Stage
from keeper.husbandry.profile import Sourced
from keeper.rules.alerts import WORST_KINDS
from keeper.rules.dismissals import FIGURE_OF, Answer, loosening
from keeper.store.profile_figures import every_figure
from keeper.store.species_files import load_profiles

FIGURES = {
    "sheds.opaque_days_most": Sourced(value=10, source="common practice"),
    "weights.under_z": Sourced(value=-2, source="common practice"),
    "refusals.husbandry_step.adult": Sourced(value=3, source="common practice"),
    "refusals.vet_step.adult": Sourced(value=6, source="common practice"),
    "weights.loss_watch_percent.adult": Sourced(value=8, source="common practice"),
    "weights.loss_act_percent.adult": Sourced(value=10, source="common practice"),
}


def answers(kind: str, idle: int, acted: int) -> list[Answer]:
    told = [Answer(kind, "house_snake", False)] * idle
    return told + [Answer(kind, "house_snake", True)] * acted


def proposed(kind: str, idle: int, acted: int = 0, figures=FIGURES) -> float | None:
    found = loosening(kind, Stage.ADULT, answers(kind, idle, acted), figures)
    return None if found is None else found.looser


def test_eight_of_ten_dismissed_loosen_the_limit_by_a_quarter():
    assert proposed("opaque too long", 8, 2) == 12.0


def test_seven_of_ten_are_not_more_than_seventy_in_a_hundred():
    assert proposed("opaque too long", 7, 3) is None


def test_four_answers_are_no_habit():
    assert proposed("opaque too long", 4) is None
    assert proposed("opaque too long", 5) is not None


def test_a_count_of_refusals_is_loosened_by_a_whole_one():
    assert proposed("refusals", 6) == 4.0


def test_a_limit_below_zero_is_loosened_away_from_it():
    assert proposed("under expectation", 6) == -2.5


def test_a_watch_for_loss_stays_below_the_act_line():
    assert proposed("weight loss", 6) == 9.0


def test_a_limit_at_half_as_much_again_is_loosened_no_further():
    own = {"sheds.opaque_days_most": Sourced(value=15, source="mine", shipped=10)}

    assert proposed("opaque too long", 9, figures=own) is None


@pytest.mark.parametrize("kind", ["breathing", "regurgitated", "stuck shed", "laying overdue"])
def test_what_only_a_vet_may_judge_is_never_loosened(kind):
    assert proposed(kind, 20) is None


def test_every_kind_that_can_be_loosened_is_a_kind_of_line_with_a_figure_of_every_profile():
    for profile in load_profiles().values():
        figures = dict(every_figure(profile))
        for kind, key in FIGURE_OF.items():
            assert kind in WORST_KINDS
            assert all(key.format(stage=stage.value) in figures for stage in Stage), key
