"""A night that is over on the walking page: what follows is told first, and why is asked."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from keeper.actions.past_nights import Correction, PastNight
from keeper.actions.tubs import Prey, Tub
from keeper.desktop.screens.round_asking import GIVE_UP_WORDS
from keeper.desktop.screens.round_deeds import GIVE_UP, Deed, Step, Verb
from keeper.desktop.screens.round_pages import Standing
from keeper.husbandry.events import Result
from keeper.husbandry.reasons import Reason
from keeper.language import tr
from keeper.reports.words import because_text, word

REASONS = {str(digit): why for digit, why in enumerate(Correction, start=1)}


@dataclass(frozen=True, slots=True)
class Why:
    """Why the book is put right by *deed*; because: what follows from it."""

    deed: Deed
    because: str

    @property
    def legend(self) -> Mapping[str, str]:
        return {digit: word(why) for digit, why in REASONS.items()} | {".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        return tr("PUT RIGHT")

    @property
    def advice(self) -> str:
        return tr("why? the pad names the reasons; nothing is written yet")

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        return replace(self.deed, why=REASONS[key]) if key in REASONS else None


def asked_first(here: Standing, deed: Deed) -> Deed | Why:
    """*deed*, or the question why where it would overwrite an entry of a night that is over.

    Raises:
        LookupError: it cannot be done, in one sentence.
    """
    walk = here.walk
    if not isinstance(walk, PastNight) or deed.why is not None:
        return deed
    written = _overwritten(walk, deed)
    return Why(deed, _told(walk, here, deed, written)) if written else deed


def _overwritten(walk: PastNight, deed: Deed) -> list[Tub]:
    """Tubs whose entry *deed* replaces. A look that settles what was open overwrites nothing."""
    reached = [walk.tub(line) for line in _lines(walk, deed)]
    return [tub for tub in reached if tub.offer and not (walk.checking and tub.unproved)]


def _lines(walk: PastNight, deed: Deed) -> Sequence[int]:
    here = [walk.cursor] if walk.cursor is not None else []
    if deed.verb in (Verb.RECORD, Verb.FOUND):
        return here
    if deed.verb is Verb.PASS_ON:
        return [*here, deed.line]
    return [other.line for other in deed.others] if deed.verb is Verb.SWEEP else []


def _told(walk: PastNight, here: Standing, deed: Deed, written: Sequence[Tub]) -> str:
    follows = (reason for tub in written for reason in _follows(walk, here, deed, tub))
    return because_text(follows, written[0].animal.sex)


def _follows(walk: PastNight, here: Standing, deed: Deed, tub: Tub) -> tuple[Reason, ...]:
    """What follows for *tub*, whose entry *deed* replaces."""
    if deed.verb is Verb.PASS_ON:
        return _passed(walk, here.prey, tub)
    if deed.verb is Verb.FOUND or (deed.verb is Verb.SWEEP and walk.checking):
        return walk.foreseen_found(gone=deed.gone, line=tub.line)
    others = {other.line: other.result for other in deed.others}
    result = others.get(tub.line, deed.result) or Result.TAKEN
    return walk.foreseen(result, prey=here.prey, line=tub.line)


def _passed(walk: PastNight, prey: Prey | None, tub: Tub) -> tuple[Reason, ...]:
    """The giver refused the item, and *tub* took it unless it is the giver."""
    giver = walk.current
    if giver is None:
        return ()
    item = prey or (giver.plan.prey, giver.plan.count, giver.plan.mass_g)
    result = Result.REFUSED if tub.line == giver.line else Result.TAKEN
    return walk.foreseen(result, prey=item, line=tub.line)
