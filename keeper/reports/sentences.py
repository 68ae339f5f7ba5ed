"""What the rules may say: one sentence for each reason, whole, so that it can be translated.

``{weight_g:g}`` asks for a figure and its kind (figures.KINDS, or a group of WORDS). Where a
figure may be missing, or two rules share a name, a tuple gives several tellings; the first
whose figures are all known is used. her, she and a_sex follow the animal's sex.
"""

from collections.abc import Mapping

from keeper.reports import (
    body_sentences,
    care_sentences,
    clutch_sentences,
    colour_sentences,
    demand_sentences,
    food_sentences,
    gene_sentences,
    house_sentences,
    joining_sentences,
    laying_sentences,
    night_sentences,
)
from keeper.reports.fault_sentences import FAULTS
from keeper.reports.line_sentences import LINES

Telling = str | tuple[str, ...]

SENTENCES: Mapping[str, Telling] = {
    **food_sentences.SENTENCES,
    **gene_sentences.SENTENCES,
    **body_sentences.SENTENCES,
    **care_sentences.SENTENCES,
    **clutch_sentences.SENTENCES,
    **colour_sentences.SENTENCES,
    **demand_sentences.SENTENCES,
    **house_sentences.SENTENCES,
    **laying_sentences.SENTENCES,
    **night_sentences.SENTENCES,
    **joining_sentences.SENTENCES,
    **FAULTS,
    **LINES,
}
