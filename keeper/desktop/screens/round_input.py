"""What the keys of a round mean where nothing else is being typed: one key in, a step out.

Nothing here touches the book or the window.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from keeper.actions.tubs import Prey
from keeper.desktop.screens.round_asking import RESULTS, Grades, Line, Marks, Reasons, Sweep
from keeper.desktop.screens.round_deeds import Deed, Refused, Step, Verb
from keeper.desktop.screens.round_learning import ASK, NO_ASIDE, ONE, TRY, Aside
from keeper.husbandry.events import Result
from keeper.husbandry.profile import PreyGrade
from keeper.language import tr


@dataclass(frozen=True, slots=True, kw_only=True)
class Ground:
    """What a key needs to know of the tub at the cursor and of its row.

    asks_prey: the sentence that asks what was given, where nobody said it yet.
    """

    grades: tuple[PreyGrade, ...] = ()
    last_prey: Prey | None = None
    places: Mapping[str, int] = field(default_factory=dict)
    covered: frozenset[int] = frozenset()
    barred: Mapping[tuple[int, Result], str] = field(default_factory=dict)
    asks_prey: str = ""
    aside: Aside = NO_ASIDE


OFFER_LEGEND = {
    "/": tr("other prey"),
    "*": tr("mark"),
    "-": tr("step back"),
    "7": tr("not offered", sense="key"),
    "8": tr("regurg."),
    "9": tr("go to line"),
    "+": tr("sweep rest of row"),
    "5": tr("left in", sense="key"),
    "2": tr("part taken", sense="key"),
    "3": tr("passed on"),
    "0": tr("refused"),
    ".": tr("undo"),
    "Enter": tr("taken seen"),
}
CHECK_LEGEND = {
    "*": tr("mark"),
    "-": tr("step back"),
    "8": tr("regurg."),
    "9": tr("go to line"),
    "+": tr("sweep rest of row"),
    "0": tr("still there"),
    ".": tr("undo"),
    "Enter": tr("gone"),
}


def offer_key(key: str, ground: Ground) -> Step:
    """What *key* asks for in the offer pass, with a tub at the cursor."""
    if key in RESULTS and ground.asks_prey:
        return Refused(ground.asks_prey, Grades(ground.grades, ground.last_prey))
    if key in RESULTS:
        return Deed(verb=Verb.RECORD, result=RESULTS[key])
    if key == "7":
        return Reasons()
    if key == "/":
        return Grades(ground.grades, ground.last_prey)
    if key == "3":
        return Line(Verb.PASS_ON)
    if key in (TRY, ASK, ONE):
        return ground.aside.press(key)
    return _either_pass(key, ground, checking=False)


def check_key(key: str, ground: Ground) -> Step:
    """What *key* asks for in the check pass, with a tub at the cursor."""
    if key in ("Enter", "0"):
        return Deed(verb=Verb.FOUND, gone=key == "Enter")
    return _either_pass(key, ground, checking=True)


def end_key(key: str, *, unproved: bool) -> Step:
    """What *key* asks for at the end of a pass, with no tub at the cursor."""
    if key == "Enter":
        return Deed(verb=Verb.CHECK if unproved else Verb.ASK_CLOSE)
    if key == "0":
        return Deed(verb=Verb.ASK_CLOSE)
    return _walking(key)


def quiet_key(key: str) -> Step:
    """What *key* asks for while no round is open."""
    deeds = {"Enter": Verb.BEGIN, "5": Verb.LOOK_AGAIN, ASK: Verb.ASK_LEARNED}
    return Deed(verb=deeds[key]) if key in deeds else None


def _either_pass(key: str, ground: Ground, *, checking: bool) -> Step:
    if key == "+":
        return Sweep(ground.places, ground.covered, checking, barred=ground.barred)
    if key == "*":
        return Marks()
    if key == "8":
        return Deed(verb=Verb.REGURGITATED)
    return _walking(key)


def _walking(key: str) -> Step:
    if key == "9":
        return Line(Verb.GO_TO)
    return {"-": Deed(verb=Verb.STEP_BACK), ".": Deed(verb=Verb.TAKE_BACK)}.get(key)
