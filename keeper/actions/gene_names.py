"""Words of genes as a keeper types them, and names that no gene can bear alone.

The English ones are always taken too; after a semicolon stand others that mean the same.
"""

import re
from collections.abc import Mapping

from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.language import tr, tr_table

_ENGLISH_TOLD: Mapping[str, str] = {
    "visual": "visual; shows it",
    "super": "super; super form",
    "normal": "normal; looks normal",
    "het": "het; carries one copy",
    "possible het": "possible het; poss het",
    "clear": "clear; does not carry it",
}
_ENGLISH_HOW: Mapping[str, str] = {
    "recessive": "recessive; simple recessive",
    "incomplete dominant": "incomplete dominant; incompletely dominant; codominant; co-dominant",
    "dominant": "dominant; simple dominant",
}
_ENGLISH_KEYWORDS: Mapping[str, str] = {
    "gene": "gene; the gene",
    "new": "new; new gene",
    "hidden by": "hidden by; masked by",
    "percent": "percent; per cent",
    "rest": "rest; the rest",
    "none": "none; no young",
    "every": "all; every young",
}
_ENGLISH_LOOKS = (
    "albino albinos albinotic albinism amelanistic amel leucistic leucism melanistic melanism"
    " hypomelanistic hypo anerythristic anery axanthic xanthic erythristic tyrosinase white black"
    " red yellow orange brown grey gray pink silver gold golden cream blue green"
    " light dark pale colour color coloured colored"
)
"""Words of a look that several places on the chromosome may make."""
_ENGLISH_EMPTY = "t plus minus positive negative line gene mutation morph form the a of type"
"""Words that beside one of them name nothing."""

TOLD_WORDS, HOW_WORDS = tr_table(_ENGLISH_TOLD), tr_table(_ENGLISH_HOW)
_KEYWORDS = tr_table(_ENGLISH_KEYWORDS)
_LOOKS = frozenset(
    (_ENGLISH_LOOKS + " " + tr("albino white red", sense="words of a look")).casefold().split()
)
_EMPTY = frozenset((_ENGLISH_EMPTY + " " + tr("line of the", sense="empty words")).split())
_WORDS = re.compile(r"[^\W_]+")


def _ways(name: str, english: Mapping[str, str], spoken: Mapping[str, str]) -> tuple[str, ...]:
    ways = (*english[name].split(";"), *spoken[name].split(";"))
    return tuple(dict.fromkeys(" ".join(way.split()).casefold() for way in ways))


TOLD: Mapping[str, GeneTold] = {
    way: told for told in GeneTold for way in _ways(told.value, _ENGLISH_TOLD, TOLD_WORDS)
}
HOW: Mapping[str, Inheritance] = {
    way: how for how in Inheritance for way in _ways(how.value, _ENGLISH_HOW, HOW_WORDS)
}


def gene_keyword(*names: str) -> str:
    """A group of a regular expression that matches any of the keywords *names*, casefolded.

    >>> gene_keyword("new")
    '(?:new\\\\ gene|new)'
    """
    ways = {way for name in names for way in _ways(name, _ENGLISH_KEYWORDS, _KEYWORDS)}
    return f"(?:{'|'.join(re.escape(way) for way in sorted(ways, key=lambda w: (-len(w), w)))})"


def says(name: str, text: str) -> bool:
    """Whether *text* is the keyword *name*, in either language."""
    return text.strip().casefold() in _ways(name, _ENGLISH_KEYWORDS, _KEYWORDS)


def typed_word(value: GeneTold | Inheritance) -> str:
    """How it is typed, in the keeper's language."""
    table = TOLD_WORDS if isinstance(value, GeneTold) else HOW_WORDS
    return table[value.value].split(";")[0]


def names_only_a_look(name: str) -> bool:
    """Whether *name* says how an animal looks, and not which gene makes it look so.

    >>> names_only_a_look("T+ albino"), names_only_a_look("albino, Veld line")
    (True, False)
    """
    words = [word.casefold() for word in _WORDS.findall(name)]
    return any(word in _LOOKS for word in words) and all(
        word in _LOOKS or word in _EMPTY for word in words
    )
