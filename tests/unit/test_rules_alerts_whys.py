"""Every reason is announced with its figures, so that the sentences elsewhere can be complete."""

import ast
import inspect
from types import ModuleType

import pytest

from keeper.rules import (
    alerts,
    breeding,
    cause_says,
    causes,
    heat,
    quarantine,
    sensors,
    sheds,
    shortfalls,
    slips,
    watch_care,
    watch_facts,
    watch_food,
    watch_house,
    watch_weights,
    weights,
)

SPEAKING = (
    alerts,
    breeding,
    cause_says,
    causes,
    heat,
    quarantine,
    sensors,
    sheds,
    shortfalls,
    slips,
    watch_care,
    watch_food,
    watch_house,
    watch_weights,
    weights,
)
Said = tuple[str, frozenset[str]]


def calls_of(module: ModuleType) -> list[ast.Call]:
    tree = ast.parse(inspect.getsource(module))
    return [
        node
        for node in ast.walk(tree)
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id == "because"
    ]


def said_in(module: ModuleType) -> list[Said]:
    """Reasons named in full in the source, with their figures."""
    return [
        (call.args[0].value, frozenset(keyword.arg for keyword in call.keywords if keyword.arg))
        for call in calls_of(module)
        if isinstance(call.args[0], ast.Constant)
        and all(keyword.arg is not None for keyword in call.keywords)
    ]


def texts_of(module: ModuleType) -> set[str]:
    """Every text in the source outside the list of reasons."""
    tree = ast.parse(inspect.getsource(module))
    listed = [node for node in tree.body if isinstance(node, ast.AnnAssign)]
    whys = next(node for node in listed if getattr(node.target, "id", "") == "WHYS")
    inside = {id(node) for node in ast.walk(whys)}
    return {
        node.value
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in inside
    }


@pytest.mark.parametrize("module", SPEAKING, ids=lambda module: module.__name__)
def test_every_reason_said_is_announced_with_its_figures(module: ModuleType) -> None:
    announced = {(why, frozenset(figures)) for why, figures in module.WHYS}

    assert set(said_in(module)) <= announced


@pytest.mark.parametrize("module", SPEAKING, ids=lambda module: module.__name__)
def test_every_reason_announced_is_said(module: ModuleType) -> None:
    assert {why for why, _ in module.WHYS} - texts_of(module) == set()


@pytest.mark.parametrize("module", [watch_weights, watch_food, watch_care, watch_house])
def test_every_kind_of_signal_has_its_place_in_the_order(module: ModuleType) -> None:
    tree = ast.parse(inspect.getsource(module))
    kinds = {
        keyword.value.value
        for node in ast.walk(tree)
        if isinstance(node, ast.Call)
        for keyword in node.keywords
        if keyword.arg == "kind" and isinstance(keyword.value, ast.Constant)
    }

    assert kinds <= set(alerts.WORST_KINDS)


def test_severities_are_ranked_from_now_to_noted() -> None:
    assert [
        severity.value
        for severity in sorted(watch_facts.URGENCY, key=watch_facts.URGENCY.__getitem__)
    ] == [
        "now",
        "today",
        "this week",
        "noted",
    ]
