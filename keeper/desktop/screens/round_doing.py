"""What was asked for with a round open, done: the walk's verbs by the keys that mean them."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from keeper.actions.all_the_same import meal_all_the_same
from keeper.actions.keeping import Keeping, Written
from keeper.actions.marks import ROUND_MARKS
from keeper.actions.one_of import say_one_of
from keeper.actions.past_nights import PastNight
from keeper.actions.rounds import Walk
from keeper.actions.starting import say_live_is_lawful
from keeper.desktop.screens.round_deeds import Deed, Verb
from keeper.desktop.screens.round_learning import learn, try_next
from keeper.desktop.screens.round_pages import Standing
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Result
from keeper.husbandry.place import place_of
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import at_instant
from keeper.reports.words import because_text

UNHEARD = frozenset({"stock same", "nothing changes"})
"""Consequences that say that nothing follows."""

Doing = Callable[[Keeping, Standing, Deed], Written | None]


def do(keeping: Keeping, here: Standing, deed: Deed) -> Written | None:
    """Do *deed* and return what was written; None where only the cursor or the choice moved.

    Raises:
        LookupError, ValueError, BookError: it cannot be done; one sentence, nothing written.
    """
    before = here.walk.cursor
    if isinstance(here.walk, PastNight):
        here.walk.why = deed.why
    written = DOINGS[deed.verb](keeping, here, deed)
    if here.walk.cursor != before:
        here.prey = None
    here.board.update(here.walk.tubs)
    if written is not None and not here.again:
        here.times = [*here.times[-40:], written.at]
    return written


def line_of(walk: Walk, code: str) -> int | None:
    """The line of the tub whose animal or place bears *code*."""
    wanted, place = code.strip().casefold(), place_of(code)
    for tub in walk.tubs:
        by_place = place is not None and place_of(tub.plan.place or "") == place
        if tub.animal.code.casefold() == wanted or by_place:
            return tub.line
    return None


def begin_check(_keeping: Keeping, here: Standing, _deed: Deed) -> None:
    """Second pass: the pace begins anew."""
    here.looked, here.times = here.unproved, []
    here.walk.begin_check()


def _record(_keeping: Keeping, here: Standing, deed: Deed) -> Written:
    result = deed.result or Result.TAKEN
    follows = ""
    if isinstance(here.walk, PastNight) and deed.why is None:
        follows = _told(here, here.walk.foreseen(result, prey=here.prey))
    written = here.walk.record(result, withheld=deed.withheld, prey=here.prey)
    return _with(written, follows)


def _found(_keeping: Keeping, here: Standing, deed: Deed) -> Written:
    follows = ""
    if isinstance(here.walk, PastNight) and deed.why is None:
        follows = _told(here, here.walk.foreseen_found(gone=deed.gone))
    return _with(here.walk.found(gone=deed.gone), follows)


def _told(here: Standing, because: Sequence[Reason]) -> str:
    """What follows from what is written of a night that is over, as long as anything does."""
    tub = here.walk.current
    heard = [reason for reason in because if reason.why not in UNHEARD]
    return because_text(heard, tub.animal.sex if tub else Sex.UNKNOWN)


def _with(written: Written, follows: str) -> Written:
    return replace(written, what=f"{written.what}. {follows}") if follows else written


def _mark(keeping: Keeping, here: Standing, deed: Deed) -> Written | None:
    mark, tub = ROUND_MARKS[deed.digit], here.walk.current
    if tub is None:
        return None
    happened = at_instant(keeping.now(), here.walk.night)
    return here.walk.mark(mark.made(tub.plan.animal, happened), what=mark.words)


def _go_to(_keeping: Keeping, here: Standing, deed: Deed) -> None:
    if deed.line:
        here.walk.go_to(deed.line)
    else:
        here.walk.cursor = None


def _choose(_keeping: Keeping, here: Standing, deed: Deed) -> None:
    here.prey = here.last_prey = deed.prey


def _all_the_same(keeping: Keeping, here: Standing, _deed: Deed) -> None:
    tub = here.walk.current
    if tub is not None:
        here.prey = meal_all_the_same(keeping, tub)


def _other_tub(_keeping: Keeping, here: Standing, deed: Deed) -> Written | None:
    if not isinstance(here.walk, PastNight):
        return None
    written, follows = here.walk.was_in(deed.line)
    return _with(written, _told(here, follows))


def _step_back(_keeping: Keeping, here: Standing, _deed: Deed) -> None:
    here.walk.step_back()


def _try_step(keeping: Keeping, here: Standing, _deed: Deed) -> Written | None:
    tub = here.walk.current
    return try_next(keeping, tub, here.walk.night) if tub is not None else None


def _nothing(_keeping: Keeping, _here: Standing, _deed: Deed) -> None:
    return None


DOINGS: Mapping[Verb, Doing] = {
    Verb.RECORD: _record,
    Verb.FOUND: _found,
    Verb.SWEEP: lambda _, here, deed: here.walk.sweep(deed.others),
    Verb.PASS_ON: lambda _, here, deed: here.walk.pass_on(deed.line, here.prey),
    Verb.REGURGITATED: lambda _, here, deed: here.walk.regurgitated(),
    Verb.TAKE_BACK: lambda _, here, deed: here.walk.take_back()[1],
    Verb.MARK: _mark,
    Verb.GO_TO: _go_to,
    Verb.PREY: _choose,
    Verb.ALL_THE_SAME: _all_the_same,
    Verb.OTHER_TUB: _other_tub,
    Verb.STEP_BACK: _step_back,
    Verb.TRY_STEP: _try_step,
    Verb.LAWFUL: lambda keeping, here, deed: say_live_is_lawful(keeping, yes=True),
    Verb.LEARN: lambda keeping, here, deed: learn(keeping, deed, here.walk.night),
    Verb.ONE_OF: lambda keeping, here, deed: say_one_of(keeping, here.walk, deed.digit, here.prey),
    Verb.CHECK: begin_check,
    Verb.GIVE_UP: _nothing,
}
