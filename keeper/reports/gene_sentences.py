"""What the rules say of genes: why an animal carries what, and words that cannot all be true.

Animals stand in the figures by their names.
"""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    # why an animal carries what it does
    "shows it": "It shows it.",
    "shows two copies": "It shows two copies.",
    "does not show it, so has none": "It does not show it, so it has none.",
    "told het": "Written as het.",
    "told clear": "Written as not carrying it.",
    "young that show it": (
        "Proved by its young: {of} is one of {young:n} that show it.",
        "Proved by its young {of}, which shows it.",
    ),
    "young that carry it, the other parent being clear": (
        "Proved by its young: {of} is one of {young:n} that carry it, the other parent does not.",
        "Proved by its young {of}, which carries it; the other parent does not.",
    ),
    "both parents show it": "{dam} and {sire} both show it.",
    "a parent shows it": "{parent} shows it and hands on one copy.",
    "both parents carry it": "{dam} and {sire} both carry it.",
    "one parent carries it, the other is clear": (
        "{parent} carries it, the other parent does not: one young in two."
    ),
    "one parent may carry it, the other is clear": (
        "{parent} may carry it ({odds}), the other parent does not."
    ),
    "parents may carry it": "{dam} may carry it ({dam_odds}), and {sire} may ({sire_odds}).",
    "both parents are clear": "Neither parent carries it.",
    "does not show it, a sibling does": (
        "It looks normal, and {sibling} of the same parents shows it."
    ),
    "normal young by one that shows it": (
        "Of its young by one that shows it, {young:n} looked normal: that speaks against."
    ),
    "normal young by a carrier": (
        "Of its young by a carrier, {young:n} looked normal: that speaks against, a little."
    ),
    "sire in doubt": (
        "The sire is in doubt between {candidates:n} males; {likeliest} is likeliest, {odds}."
    ),
    "one copy or two": "One copy or two: two in {two}.",
    "sire counted out, nothing tells that he carries it": (
        "{male} ({written} before the looks) is counted out because nothing written says that he"
        " carries it: he is untested."
    ),
    "told possible het": "Written as {percent} het when nothing better was known.",
    "told possible het, the parents say more": (
        "Written as {percent} het; what is known of its parents says more."
    ),
    "another gene hides it": "It looks normal for this gene because another one hides it.",
    "a parent carries it": "{parent} carries it.",
    "a parent may carry it": "{parent} may carry it ({odds}).",
    "young may have it from here": (
        "Its young {of} may carry it ({odds}), and it may be where that comes from."
    ),
    "nothing speaks for it, counts as clear": (
        "Nothing written speaks for it: untested, it counts as not carrying it."
    ),
    # words that cannot all be true
    "young of two that show it does not": (
        "{dam} shows it, so do all {sires:n} males that may be the sire, {sire} among them, and"
        " {young} looks normal: another sire, or two genes of the same look on different places.",
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
        "No odds are told: what is written of {animals:animals} beside it cannot all be true."
    ),
    "too many loops to tell exactly": "No odds are told: its pedigree has too many loops.",
}

SENTENCES = tr_table(_ENGLISH)
