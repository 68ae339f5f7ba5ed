"""Which tone answers a key of the round: the eye need not leave the tub."""

from __future__ import annotations

from collections.abc import Mapping

from keeper.desktop.screens.round_deeds import Deed, Verb
from keeper.desktop.sound.synthesis import Tone
from keeper.husbandry.events import Result

_OF_RESULT: Mapping[Result, Tone] = {
    Result.TAKEN: Tone.TAKEN,
    Result.PART: Tone.PART,
    Result.REFUSED: Tone.REFUSED,
    Result.LEFT_IN: Tone.LEFT_IN,
    Result.NOT_OFFERED: Tone.NOT_OFFERED,
}


def tone_of(deed: Deed) -> Tone | None:
    """The tone of what was written; None where a key only moves or asks."""
    if deed.verb is Verb.RECORD:
        return _OF_RESULT[deed.result or Result.TAKEN]
    if deed.verb is Verb.FOUND:
        return Tone.TAKEN if deed.gone else Tone.REFUSED
    if deed.verb is Verb.PASS_ON:
        return Tone.REFUSED
    return Tone.TAKEN if deed.verb is Verb.SWEEP else None
