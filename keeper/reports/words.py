"""Facts put into plain keeper's English: reasons, states, kinds and faults.

Nothing is decided here. Every sentence stands whole in the table of sentences, every word in
that of state_words, and figures writes every figure; another language is another set of them.
"""

import string
from collections.abc import Iterable, Mapping, Sequence
from enum import StrEnum
from typing import Any

from keeper.husbandry.animal import Sex
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason
from keeper.language import is_source
from keeper.reports.figures import KINDS
from keeper.reports.prey_words import prey_words
from keeper.reports.sentences import SENTENCES
from keeper.reports.state_words import WORDS


def sentence(reason: Reason, sex: Sex = Sex.UNKNOWN) -> str:
    """The sentence of *reason*, with its figures filled in.

    A reason without a telling (a book may hold the plan of a night from another version) is
    told by its own name and figures rather than not at all.
    """
    figures = {**_about(sex), **_said(reason.figures)}
    for telling in tellings(reason.why):
        if all(figures.get(name) is not None for name in placeholders(telling)):
            return _FILLER.vformat(telling, (), figures)
    bare = ", ".join(f"{name} {value}" for name, value in reason.figures.items())
    return f"{reason.why} ({bare})." if bare else f"{reason.why}."


def because_text(reasons: Iterable[Reason], sex: Sex = Sex.UNKNOWN) -> str:
    """Every reason's sentence, in order; the same sentence is said once."""
    return " ".join(dict.fromkeys(sentence(reason, sex) for reason in reasons))


def word(value: StrEnum) -> str:
    """The word for a member of one of the vocabulary's enumerations.

    Raises LookupError for one that no table knows.
    """
    return word_of(type(value).__name__, value.value)


def word_of(group: str, value: str) -> str:
    """The word for *value* in *group*, such as ``("gate", "age")``. Raises LookupError."""
    return WORDS[group][value]


def verb_words(verb: str) -> str:
    """What a batch did, by its verb in the book; a verb of another version as it is written."""
    return WORDS["verb"].get(verb, verb)


def token_words(group: str, token: str) -> str:
    """A token of the book in another language's word; in English as it is written there."""
    return token if is_source() else WORDS[group].get(token, token)


def species_words(profile: SpeciesProfile) -> str:
    """The plain name of a species; that of a profile of the keeper's own as it is written."""
    return WORDS["species"].get(profile.english, profile.english)


def short_species_words(profile: SpeciesProfile) -> str:
    """The species where there is little room."""
    return WORDS["species in short"].get(profile.slug, profile.slug.replace("_", " "))


def tellings(why: str) -> Sequence[str]:
    """The templates for a reason, best first; none when there is none."""
    found = SENTENCES.get(why, ())
    return (found,) if isinstance(found, str) else found


def placeholders(telling: str) -> list[str]:
    """Names of the figures that a template asks for."""
    return [name for _, name, _, _ in string.Formatter().parse(telling) if name]


def _about(sex: Sex) -> dict[str, str]:
    return {
        "sex": sex.value,
        "her": WORDS["her"][sex],
        "she": WORDS["she"][sex],
        "a_sex": WORDS["a sex"][sex],
    }


def _said(figures: Mapping[str, Any]) -> dict[str, Any]:
    """The same with every prey as it is said."""
    said = {name: prey_words(figures[name]) for name in _PREY if isinstance(figures.get(name), str)}
    return {**figures, **said}


_PREY = ("prey", "offered")
"""Figures that name a prey."""


class _Filler(string.Formatter):
    """Reads a format as a kind of figure, or as a group of words."""

    def format_field(self, value: Any, format_spec: str) -> str:
        if not format_spec:
            return str(value)
        if format_spec in KINDS:
            return KINDS[format_spec](value)
        return WORDS[format_spec].get(str(value), str(value))


_FILLER = _Filler()
