"""What the rules say of genes: why an animal carries what, and words that cannot all be true.

Animals stand in the figures by their names.
"""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    # words that cannot all be true
    "young of two that show it does not": (
        "{dam} and {sire} both show it, and {young} looks normal: another sire, or two genes of"
        " the same look on different places.",
    ),
    "shows it though a parent is clear": (
        "{young} shows it, and its parent {parent} is said not to carry it: one word is wrong, or"
        " another parent."
    ),
    "words cannot all be true": (
        "What is written of these {words:n} cannot all be true: look at each again, and at who"
        " their parents are."
    ),
    "no candidate fits every gene": (
        "None of the {candidates:n} males that may have sired them fits all that the young show:"
        " another male, or a look read wrong."
    ),
    "words beside it cannot all be true": (
        "No odds are told: words of its kin cannot all be true."
    ),
    "too many loops to tell exactly": "No odds are told: its pedigree has too many loops.",
}

SENTENCES = tr_table(_ENGLISH)
