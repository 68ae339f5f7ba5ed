"""What is shown of one colour in one line, made from its scored animals."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from statistics import fmean
from string import ascii_uppercase

from keeper.actions.colour_line import ColourLine
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import practice
from keeper.reports.colour_facts import (
    ColourChoice,
    ColourFacts,
    Dot,
    FamilyRow,
    GenerationRow,
    Held,
    PairToCome,
)
from keeper.rules.colour import bred_worth
from keeper.rules.colour_selection import (
    Proposal,
    drifts,
    hold_back,
    scored_again,
    steps,
    verdict,
)

HOLD_WITHIN_DAYS = practice(540)
"""Whether to hold a young back is asked up to that age."""


def colour_facts(line: ColourLine, choice: ColourChoice, on: date) -> ColourFacts:
    """Everything of *choice* as of the day *on*."""
    h2 = line.heritability.value
    found = steps(line.clutches(), h2, line.sd)
    own = list(line.own_scores())
    pairs = tuple(_pairs(line))
    return ColourFacts(
        choice=choice,
        on=on,
        age=line.age.name,
        dots=tuple(_dots(line)),
        generations=tuple(_generations(line)),
        families=tuple(_family(line, brood) for brood in _broods(line)),
        pairs=pairs,
        heritability=line.heritability,
        sd=line.sd,
        steps=found,
        verdict=verdict(found, h2),
        held=tuple(_held(line, on)),
        drifts=drifts(pair for key, told in own for pair in scored_again(key, told)),
        clouded=sum(each.clouded for _, told in own for each in told),
        early=sum(key not in line.counted for key, _ in own),
        unscored=len(line.coming) - len(pairs),
    )


def _dots(line: ColourLine) -> Iterator[Dot]:
    bred = {key for brood in line.broods.values() for key in (brood[0].dam, brood[0].sire)}
    bred |= {key for pair in line.coming for key in (pair.dam, pair.sire)}
    for key, found in line.counted.items():
        row = line.rows[key]
        yield Dot(
            animal=key,
            called=row.called,
            sex=row.sex,
            here=row.in_the_room,
            generation=line.gen(key),
            score=found.score,
            like_age=found.like_age,
            selected=key in bred,
            outside=key not in line.members,
        )


def _generations(line: ColourLine) -> Iterator[GenerationRow]:
    mids: dict[int, list[float]] = defaultdict(list)
    for clutch in line.clutches():
        mids[clutch.generation] += [clutch.mid_parent] * len(clutch.scores)
    for n, group in line.groups.items():
        mid = fmean(mids[n]) if mids[n] else None
        yield GenerationRow(generation=n, scored=len(group), mean=fmean(group), mid_parent=mid)


def _broods(line: ColourLine) -> list[list[AnimalNow]]:
    """The earliest generation first, within it the earliest hatched."""

    def order(brood: Sequence[AnimalNow]) -> tuple[int, date, str]:
        row = brood[0]
        return line.gen(row.animal), row.hatched_first or date.min, row.clutch or ""

    return sorted(line.broods.values(), key=order)


def _family(line: ColourLine, brood: Sequence[AnimalNow]) -> FamilyRow:
    row, scores = brood[0], line.scores_of(brood)
    mid = line.mid_parent(row.dam, row.sire)
    return FamilyRow(
        clutch=row.clutch or "",
        generation=line.gen(row.animal),
        dam=_called(line, row.dam),
        sire=_called(line, row.sire),
        scored=len(scores),
        mean=fmean(scores),
        mid_parent=mid,
        above=None if mid is None else sum(score > mid for score in scores),
        expected=line.expected(row.dam, row.sire),
    )


def _pairs(line: ColourLine) -> Iterator[PairToCome]:
    """Those of which both parents are scored, lettered by the day; the first 26."""
    coming = sorted(line.coming, key=lambda pair: (pair.on, pair.dam, pair.sire))
    both = [pair for pair in coming if line.mid_parent(pair.dam, pair.sire) is not None]
    for letter, each in zip(ascii_uppercase, both, strict=False):
        mid, expected = line.mid_parent(each.dam, each.sire), line.expected(each.dam, each.sire)
        assert mid is not None
        assert expected is not None
        mean, count = line.line_mean(each.dam, each.sire)
        yield PairToCome(
            letter=letter,
            dam=_called(line, each.dam),
            sire=_called(line, each.sire),
            how=each.how,
            on=each.on,
            generation=1 + max(line.gen(each.dam), line.gen(each.sire)),
            mid_parent=mid,
            line_mean=mean,
            mean_of=count,
            expected=expected,
            odds=each.odds,
        )


def _held(line: ColourLine, on: date) -> Iterator[Held]:
    """Of clutches young enough to be asked about: the best that are still here."""
    like = [found.score for found in line.counted.values() if found.like_age]
    for brood in _broods(line):
        hatched = brood[0].hatched_first
        if hatched is None or on - hatched > timedelta(days=HOLD_WITHIN_DAYS.value):
            continue
        young = [(row.animal, line.counted[row.animal].score) for row in brood]
        for proposal in hold_back(young, fmean(like)):
            if line.rows[proposal.animal].in_the_room:
                yield _one_held(line, brood[0], proposal)


def _one_held(line: ColourLine, of: AnimalNow, proposal: Proposal) -> Held:
    row, expected = line.rows[proposal.animal], line.expected(of.dam, of.sire)
    h2 = line.heritability.value
    return Held(
        called=row.called,
        place=row.place or "",
        clutch=row.clutch or "",
        proposal=proposal,
        worth=bred_worth(expected, h2, proposal.score) if expected else None,
    )


def _called(line: ColourLine, animal: AnimalId | None) -> str:
    row = line.rows.get(animal) if animal is not None else None
    return row.called if row else ""
