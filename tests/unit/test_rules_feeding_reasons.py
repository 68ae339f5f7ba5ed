"""Every reason the feeding rules give is listed with its figures, and nothing else is."""

import ast
import inspect
from types import ModuleType

import pytest

from keeper.rules import feeding, ladder, learning, prey, refusals, timing

MODULES = [feeding, timing, prey, refusals, ladder, learning]


def given(module: ModuleType) -> set[tuple[str, tuple[str, ...]]]:
    """Name and figures of each ``because`` call that is written out in the module."""
    return {
        (call.args[0].value, tuple(keyword.arg or "**" for keyword in call.keywords))
        for call in ast.walk(ast.parse(inspect.getsource(module)))
        if isinstance(call, ast.Call)
        and isinstance(call.func, ast.Name)
        and call.func.id == "because"
        and isinstance(call.args[0], ast.Constant)
    }


def from_tables(module: ModuleType) -> set[str]:
    """Names that reach ``because`` through a table of the module."""
    return set(getattr(module, "_ADVICE", {}).values())


@pytest.mark.parametrize("module", MODULES, ids=lambda module: module.__name__)
def test_each_reason_stands_in_the_list_with_the_figures_it_carries(module: ModuleType) -> None:
    listed = set(module.WHYS)

    assert given(module) <= listed
    assert {why for why, _ in listed} == {why for why, _ in given(module)} | from_tables(module)
