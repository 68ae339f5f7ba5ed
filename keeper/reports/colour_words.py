"""Colour across generations in words: headed paragraphs for the page, and the picture's text."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from keeper.language import tr, tr_table
from keeper.reports.colour_facts import ColourFacts, GenerationRow, Held, PairToCome
from keeper.reports.figures import chance, counted, day, number, percent, span
from keeper.reports.words import sentence
from keeper.rules.colour import AgeName, none_above, young_for_one
from keeper.rules.colour_heredity import OWN_CLUTCHES, OWN_YOUNG, PLACEHOLDER_H2
from keeper.rules.colour_selection import Drift, State

PAIRS_TOLD, HELD_TOLD, OF_TEN = 4, 5, 10

_animals = counted("animal", "animals")

AT_AGE: Mapping[AgeName, str] = tr_table(
    {
        "third shed": "score 1 to 10 at the third shed",
        "12 months": "score 1 to 10 at 12 months",
    }
)

_NEAREST: Mapping[AgeName, str] = tr_table(
    {
        "third shed": (
            "The one nearest to the third shed; a grown parent without one counts by a later score."
        ),
        "12 months": (
            "The one nearest to 12 months; a grown parent without one counts by a later score."
        ),
    }
)

STATES: Mapping[State, str] = tr_table(
    {
        "rises": "Yes, the line rises.",
        "falls": "No, the line falls.",
        "stands": "Not seen: the line stands still.",
        "cannot tell": "Cannot tell yet.",
    }
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """A heading and whole sentences beneath it."""

    head: str
    words: str


def paragraphs(facts: ColourFacts) -> tuple[Told, ...]:
    """What the picture says and what may be decided, the decision first."""
    return tuple(_paragraphs(facts))


def scored_how() -> str:
    """Stands where nothing is scored yet."""
    return tr(
        "No look is scored yet. On an animal’s page R takes a look and a score from 1 to 10, such"
        " as red 7: at the third shed or at 12 months, three days after a shed, under the same"
        " lamp."
    )


def picture_words(facts: ColourFacts) -> str:
    """The picture for a screen reader: generation by generation, then what may come."""
    told = [facts.choice.words, *(_generation(row) for row in facts.generations)]
    told += [_pair(pair, facts.on) for pair in facts.pairs]
    bred = [
        tr("{name} {score}", name=dot.called, score=number(dot.score, 1))
        for dot in facts.dots
        if dot.selected
    ]
    if bred:
        told.append(tr("Bred from: {names}.", names=", ".join(bred)))
    return " ".join(told)


def generation_words(generation: int) -> str:
    """What a generation is called.

    >>> generation_words(0), generation_words(2)
    ('founders', 'generation 2')
    """
    return tr("generation {number}", number=generation) if generation else tr("founders")


def _paragraphs(facts: ColourFacts) -> Iterator[Told]:
    yield Told(head=tr("Is selection working"), words=_working(facts))
    if facts.pairs:
        pairs = [_to_hold(pair, facts.on) for pair in facts.pairs[:PAIRS_TOLD]]
        more = len(facts.pairs) - len(pairs)
        pairs += [tr("And {count} more pairs.", count=more)] if more > 0 else []
        yield Told(head=tr("Young to come, and how many to hold"), words=" ".join(pairs))
    if facts.held:
        yield Told(head=tr("May be held back"), words=_held(facts))
    yield Told(head=tr("How much is inherited"), words=_heritability(facts))
    if facts.drifts:
        yield Told(head=tr("The scorer’s eye"), words=" ".join(map(_drift, facts.drifts)))
    yield Told(head=tr("Which scores count"), words=_counted(facts))


def _working(facts: ColourFacts) -> str:
    return f"{STATES[facts.verdict.state]} {sentence(facts.verdict.because)}"


def _generation(row: GenerationRow) -> str:
    called = generation_words(row.generation)
    told = {"called": called, "mean": number(row.mean, 1), "count": number(row.scored)}
    if row.mid_parent is None:
        return tr("{called}: mean {mean} of {count} scored.", **told)
    return tr(
        "{called}: mean {mean} of {count} scored, their mid-parents {mid}.",
        mid=number(row.mid_parent, 1),
        **told,
    )


def _pair(pair: PairToCome, on: date) -> str:
    return tr(
        "{letter} {pair}, {how}: mid-parent {mid}, young {mean} expected, nine in ten {span}.",
        **_expected(pair, on),
    )


def _to_hold(pair: PairToCome, on: date) -> str:
    """What may come of a pair, and how many tubs one young above its parents takes."""
    beats = pair.expected.beats
    tubs = young_for_one(beats)
    if tubs is None:
        return _pair(pair, on)
    return tr(
        "{letter} {pair}, {how}: mid-parent {mid}, young {mean} expected, nine in ten {span}."
        " {share} score above their parents, about one in {each}: {tubs} tubs hold one nine times"
        " in ten; of {ten} young none is above with a chance of {none}.",
        share=percent(100 * beats),
        each=number(round(1 / beats)),
        tubs=number(tubs),
        ten=number(OF_TEN),
        none=chance(none_above(beats, OF_TEN)),
        **_expected(pair, on),
    )


def _expected(pair: PairToCome, on: date) -> dict[str, str]:
    expected = pair.expected
    return {
        "letter": pair.letter,
        "pair": pair_words(pair),
        "how": _how(pair, on),
        "mid": number(pair.mid_parent, 1),
        "mean": number(expected.mean, 1),
        "span": span(number(expected.low, 1), number(expected.high, 1)),
    }


def pair_words(pair: PairToCome) -> str:
    """Dam and sire; of a sire that nobody wrote how likely he is."""
    if pair.odds is None:
        return tr("{dam} × {sire}", dam=pair.dam, sire=pair.sire)
    return tr(
        "{dam} × {sire} ({odds})", dam=pair.dam, sire=pair.sire, odds=percent(100 * pair.odds)
    )


def _how(pair: PairToCome, today: date) -> str:
    on = day(pair.on, on=today)
    if pair.how == "hatched":
        return tr("hatched {day}", day=on)
    return tr("laid {day}", day=on) if pair.how == "laid" else tr("paired {day}", day=on)


def _held(facts: ColourFacts) -> str:
    told = "; ".join(_one_held(held) for held in facts.held[:HELD_TOLD])
    more = len(facts.held) - HELD_TOLD
    if more > 0:
        told = tr("{told}; and {count} more", told=told, count=more)
    mean = number(facts.held[0].proposal.line_mean, 1)
    return tr(
        "{told}. The best of their clutch, above the line’s mean at that age, {mean}. Vigour at"
        " feeding, sex, kinship and genes count too; N on its page keeps the reason.",
        told=told,
        mean=mean,
    )


def _one_held(held: Held) -> str:
    proposal = held.proposal
    told = {
        "name": f"{held.place} {held.called}".strip(),
        "score": number(proposal.score, 1),
        "of": number(proposal.of),
        "clutch": held.clutch,
    }
    if held.worth is None:
        return tr("{name} {score}, best of {of} in {clutch}", **told)
    return tr(
        "{name} {score}, best of {of} in {clutch}, may give {worth}",
        worth=number(held.worth, 1),
        **told,
    )


def _heritability(facts: ColourFacts) -> str:
    found = facts.heritability
    value = number(found.value, 2)
    placeholder = number(PLACEHOLDER_H2.value, 2)
    if found.own is None:
        return tr(
            "h² {value}, common practice: no figure for snakes is in print. Own young count from"
            " three clutches of scored parents on; there are {clutches}.",
            value=value,
            clutches=found.clutches,
        )
    told = {
        "value": value,
        "own": number(found.own.slope, 2),
        "error": number(found.own.error, 2),
        "clutches": number(found.clutches),
        "young": number(found.young),
    }
    if found.share >= 1:
        return tr(
            "h² {value}, from own young: {own} ± {error} by {clutches} clutches and {young} young.",
            **told,
        )
    return tr(
        "h² {value}: own young say {own} ± {error} by {clutches} clutches and {young} young, and"
        " count {share} of the way from the placeholder {placeholder}. From {most} clutches and"
        " {all} young with an error of 0.25 they count alone.",
        share=percent(100 * found.share),
        placeholder=placeholder,
        most=number(OWN_CLUTCHES.value),
        all=number(OWN_YOUNG.value),
        **told,
    )


def _drift(drift: Drift) -> str:
    shift = number(drift.shift, 1)
    told = {
        "count": _animals(drift.count),
        "since": day(drift.since),
        "shift": shift if drift.shift < 0 else f"+{shift}",
    }
    if drift.asks:
        return tr(
            "In the quarter from {since} {count} scored again came out {shift} points from the"
            " first score: has the lamp or the eye changed, or have they?",
            **told,
        )
    return tr("In the quarter from {since} {count} scored again: {shift} points.", **told)


def _counted(facts: ColourFacts) -> str:
    told = [_NEAREST[facts.age]]
    if facts.clouded:
        told.append(
            tr("Left out, taken while dull or opaque: {count}.", count=number(facts.clouded))
        )
    if facts.early:
        told.append(tr("Scored at another age only: {count}.", count=_animals(facts.early)))
    if facts.unscored:
        told.append(
            tr("Pairs to come with a parent not scored: {count}.", count=number(facts.unscored))
        )
    told.append(tr("A colour of many genes is never carried as a het: it has no ratios."))
    return " ".join(told)
