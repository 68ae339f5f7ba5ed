"""What a keeper's own choices teach: which hold this animal eats through."""

from collections.abc import Sequence
from dataclasses import dataclass

from keeper.husbandry.events import Evidence, HoldKind, Offer, Result
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.refusals import binomial_tail

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("eats through it", ("kind", "offered", "ate", "chance")),
)
"""Every reason of this module with the figures it carries."""

OFFERS_LEAST = practice(5)
"""Nothing is asked before so many offers under the hold."""

EVEN_CHANCE = 0.5
CHANCE_MOST = 0.05
"""Asked only when an animal that eats under the hold no more often than not would take so many
with less than this chance: all of five, seven of eight, ten of thirteen."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Learned:
    """A hold under which she may be offered from now on, if the keeper says so."""

    kind: HoldKind
    offered: int
    ate: int
    because: tuple[Reason, ...]


def learned_skip(
    offers_under_hold: Sequence[Offer], kind: HoldKind = HoldKind.OPAQUE
) -> Learned | None:
    """Whether to ask to stop skipping her under *kind*; None: not enough speaks for it.

    offers_under_hold: her offers while that hold lay on her. Results that are not known, left
    in, not offered or only assumed, are left out.
    """
    known = [offer for offer in offers_under_hold if _known(offer)]
    offered = len(known)
    ate = sum(offer.result in (Result.TAKEN, Result.PART) for offer in known)
    chance = binomial_tail(ate, offered, EVEN_CHANCE)
    if offered < OFFERS_LEAST.value or chance >= CHANCE_MOST:
        return None
    why = because("eats through it", kind=kind.value, offered=offered, ate=ate, chance=chance)
    return Learned(kind=kind, offered=offered, ate=ate, because=(why,))


def _known(offer: Offer) -> bool:
    settled = offer.result in (Result.TAKEN, Result.PART, Result.REFUSED)
    return settled and offer.evidence is not Evidence.ASSUMED
