"""A score of a colour as a keeper types it: ``colour red 7``, ``red 7.5, after the third shed``.

The word for the look is the keeper's own. A whole clutch is scored in one line, in walking order:
``red 7 6 - 5.5``. What was scored before is not shown, so that it does not lead the eye.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from keeper.actions.keeping import Keeping
from keeper.actions.typed_entries import Typed
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import LookScored
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.figures import as_typed
from keeper.store import reading

VERB = "score colour"
_WORDS = tuple(dict.fromkeys(("colour", tr("colour", sense="typed").casefold())))
_SCORE = r"\d{1,2}(?:[.,]\d{1,2})?"
_ONE = re.compile(
    rf"(?P<look>[^\d,;:]*?)[ :=]*(?P<score>{_SCORE})(?: ?/ ?10)?"
    r"(?:\s*[;:]\s*|\s*,\s+|\s*,(?=\D)|\s+|$)(?P<note>.*)"
)
_MANY = re.compile(rf"(?P<look>[^\d,;:]*?)[ :=]*(?P<scores>(?:(?:{_SCORE}|-)(?:\s+|$))+)")
_SKIPPED = "-"


@dataclass(frozen=True, slots=True, kw_only=True)
class ClutchTyped:
    """Scores of a clutch: what is to be written, and words for the foot."""

    events: tuple[LookScored, ...]
    what: str


def colour_typed(
    animal: AnimalId, happened: Happened, text: str, known: Sequence[str] = ()
) -> Typed:
    """One score, and a note after it. known: looks that were scored before, as they are written.

    Where one look alone is known its word may be left out.

    Raises:
        ValueError: no look, no score, or a score that is not 1 to 10.
    """
    match = _ONE.fullmatch(_bare(text))
    if match is None:
        raise _unread(text)
    look, score, note = _look(match["look"], known), _score(match["score"]), match["note"].strip()
    event = LookScored(animal=animal, happened=happened, note=note or None, trait=look, score=score)
    return Typed(verb=VERB, event=event, what=_said(look, score, note, known))


def clutch_typed(
    young: Sequence[AnimalNow], happened: Happened, text: str, known: Sequence[str] = ()
) -> ClutchTyped:
    """Scores of *young* in their order, one each, ``-`` for one that is not scored.

    Raises:
        ValueError: no look, more or fewer scores than young, or a score that is not 1 to 10.
    """
    match = _MANY.fullmatch(_bare(text))
    if match is None:
        raise ValueError(
            tr(
                "{text!r} is no look with scores; red 7 6 - 5.5 is right, in walking order, - for"
                " one not scored.",
                text=text.strip(),
            )
        )
    look, told = _look(match["look"], known), match["scores"].split()
    if len(told) != len(young):
        raise ValueError(_counted(told, young))
    both = [(row, _score(one)) for row, one in zip(young, told, strict=True) if one != _SKIPPED]
    if not both:
        raise ValueError(tr("Not one of them has a score; a number from 1 to 10 is right."))
    events = tuple(
        LookScored(animal=row.animal, happened=happened, trait=look, score=score)
        for row, score in both
    )
    names = ", ".join(
        tr("{name} {score}", name=row.called, score=as_typed(score)) for row, score in both
    )
    return ClutchTyped(events=events, what=tr("{look}: {names}", look=look, names=names))


def traits_known(keeping: Keeping) -> tuple[str, ...]:
    """Words for looks in the book, each as it was first written, the latest used first."""
    first: dict[str, str] = {}
    latest: dict[str, None] = {}
    for entry in reading.all_of(keeping.book, LookScored):
        key = entry.event.trait.casefold()
        first.setdefault(key, entry.event.trait)
        latest.pop(key, None)
        latest[key] = None
    return tuple(first[key] for key in reversed(latest))


def _bare(text: str) -> str:
    """Without the word for colour, single spaces."""
    told = " ".join(text.split())
    head, _, rest = told.partition(" ")
    return rest if head.casefold().rstrip(":") in _WORDS and rest else told


def _look(told: str, known: Sequence[str]) -> str:
    """The look as it is written already; with no word the only one there is."""
    word = told.strip()
    if not word:
        if len(known) == 1:
            return known[0]
        raise ValueError(tr("Which look? A word of your own before the score: red 7."))
    return next((one for one in known if one.casefold() == word.casefold()), word)


def _score(digits: str) -> float:
    return float(digits.replace(",", "."))


def _said(look: str, score: float, note: str, known: Sequence[str]) -> str:
    told = {"look": look, "score": as_typed(score)}
    what = tr("{look} {score} of 10", **told)
    if known and look not in known:
        others = ", ".join(known)
        what = tr("{look} {score} of 10, a new look beside {others}", others=others, **told)
    return tr("{what}, noted: {note}", what=what, note=note) if note else what


def _counted(told: Sequence[str], young: Sequence[AnimalNow]) -> str:
    """More or fewer scores than young; what was typed last goes to whom, so that a slip is seen."""
    if len(told) < len(young):
        return tr(
            "{count} of {all}; next is {name}",
            count=len(told),
            all=len(young),
            name=young[len(told)].place_and_name,
        )
    return tr("{count} scores for {all} young.", count=len(told), all=len(young))


def _unread(text: str) -> ValueError:
    return ValueError(
        tr(
            "{text!r} is no look with a score from 1 to 10; red 7 is right, or red 7.5 and a note.",
            text=text.strip(),
        )
    )
