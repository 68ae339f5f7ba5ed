"""The weigh-in as it is shown: fronts with weights, the question, slips, scale, last weights."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from keeper.actions.weighing import Asks, OnScale, WeighIn
from keeper.desktop.screens.rack_row import row_key, row_words, shown_from, tub_words, with_gaps
from keeper.desktop.screens.round_faces import Row
from keeper.desktop.widgets.last_weights import PastWeight
from keeper.desktop.widgets.slips_table import SlipLine
from keeper.desktop.widgets.tile import TileState
from keeper.desktop.widgets.tub_front import TubFront
from keeper.desktop.widgets.weigh_panel import WeighWords
from keeper.desktop.widgets.weight_gauge import GaugeMarks
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.reasons import Reason
from keeper.language import tr, tr_table
from keeper.reports.figures import (
    GAP,
    age,
    ago,
    as_typed,
    day,
    grams,
    mass_unit,
    number,
    percent,
    span,
    typed_grams,
)
from keeper.reports.words import because_text, word
from keeper.reports.writing import in_use

HER = tr_table({"whom": {Sex.FEMALE: "her", Sex.MALE: "him", Sex.UNKNOWN: "it"}})["whom"]
FACTORS = {10.0: "× 10", 0.1: "÷ 10", 100.0: "× 100", 0.01: "÷ 100", 1000.0: "× 1,000"}
SLIPS = tr_table(
    {
        "kilograms for grams": "kilograms for grams",
        "point slipped": "point slipped",
        "tare forgotten": "tare forgotten",
        "digits swapped": "digits swapped",
        "row shifted by one": "row shifted by one",
        "neighbour’s weight": "neighbour’s weight",
    }
)
_FAR = 3.0  # from this factor on, how far outside is told as a factor, else in per cent


def row_of(walk: WeighIn, index: int) -> list[int]:
    """The animals of the rack row in which the one at *index* stands."""
    key, first, last = row_key(walk.animals[index].place), index, index
    while first > 0 and row_key(walk.animals[first - 1].place) == key:
        first -= 1
    while last + 1 < len(walk.animals) and row_key(walk.animals[last + 1].place) == key:
        last += 1
    return list(range(first, last + 1))


def row_shown(walk: WeighIn, index: int, passed: frozenset[int], *, asks: bool) -> Row:
    """The fronts of the row round the animal at *index*; passed: those without a weight."""
    row = row_of(walk, index)
    every = with_gaps([walk.animals[n].place for n in row])
    here = walk.cursor if walk.cursor < len(walk.animals) else None
    placed = [(num, None if i is None else row[i]) for num, i in every]
    at = next((n for n, (_, i) in enumerate(placed) if i is not None and i == here), None)
    first = shown_from(len(placed), at)
    shown = placed[first : first + 14]
    fronts = tuple(
        TubFront(number=num, name="", state=TileState.EMPTY)
        if i is None
        else _front(walk, num, i, passed, asks=asks)
        for num, i in shown
    )
    return Row(
        fronts=fronts,
        lines=tuple(i for _, i in shown),
        current=None if at is None else at - first,
        words=row_words(row_key(walk.animals[index].place)),
    )


def words_of(walk: WeighIn, scale: OnScale, typed: str, asks: Asks | None, kind: str) -> WeighWords:
    """The panel; *kind* is the species in words."""
    row = scale.animal
    expected = _range_words(scale)
    return WeighWords(
        place=_place(row),
        name=row.called,
        who=_who(walk, row, kind),
        typed=f"{as_typed(typed)}{GAP}{mass_unit()}" if typed else "",
        state=_state(walk, typed),
        expected=_expected_words(row.sex, expected),
        outside=_outside(scale, asks),
        question=_question(asks),
        answer=tr("Type the weight again") if asks else "",
        gauge=_gauge(scale, asks, expected),
    )


def head_of_last(sex: Sex) -> str:
    """Over the last weights of an animal."""
    heads = {Sex.FEMALE: tr("Her last weights"), Sex.MALE: tr("His last weights")}
    return heads.get(sex, tr("Its last weights"))


def _expected_words(sex: Sex, expected: str) -> str:
    if not expected:
        return tr("nothing expected yet")
    return tr("expected {range} for {her}", range=expected, her=HER[sex])


def slips_of(asks: Asks | None) -> list[SlipLine]:
    """The best of each kind of slip tried, those that fit first."""
    if asks is None:
        return []
    kept: dict[str, SlipLine] = {}
    for slip in asks.verdict.slips:
        name = tr("neighbour, {whose}", whose=slip.whose) if slip.whose else SLIPS[slip.name]
        line = SlipLine(name=name, grams=grams(slip.grams), inside=slip.inside)
        if name not in kept or (slip.inside and not kept[name].inside):
            kept[name] = line
    return sorted(kept.values(), key=lambda line: not line.inside)


def because_of(scale: OnScale, asks: Asks | None) -> str:
    """Where the range comes from, and what the typed weight is to it."""
    told_already = ("outside expected", "within expected")
    verdict = asks.verdict.because if asks is not None else ()
    own = scale.range.because if scale.range else ()
    reasons = [r for r in (*verdict, *own) if r.why not in told_already and not _idle(r)]
    told = because_text(reasons, scale.animal.sex)
    return told or tr("Nothing to compare this weight with; it is written as typed.")


def last_weights(scale: OnScale, on: date) -> list[PastWeight]:
    """Empty weights; one with a meal inside is reckoned and says so."""
    return [
        PastWeight(
            grams=grams(empty_g),
            day=day(when, on) if not within else tr("{day}, reckoned", day=day(when, on)),
            empty=not within,
        )
        for when, empty_g, within in scale.last
    ]


def hint_of(asks: Asks | None) -> str:
    """What Enter does now."""
    if asks is None:
        return tr("Enter writes what was typed. A weight outside the range is asked for again.")
    figures = {"typed": typed_grams(asks.typed_g), "weight": grams_typed(asks.typed_g)}
    guess = asks.verdict.guess_g
    twice = tr(
        "{typed} Enter a second time writes {weight}, marked typed twice.   Nothing is changed"
        " for you.",
        **figures,
    )
    if not guess:
        return twice
    meant = {"typed": typed_grams(guess), "weight": grams_typed(guess)}
    return "   ".join((tr("{typed} Enter writes {weight}.", **meant), twice))


def head_of(walk: WeighIn) -> tuple[tuple[tuple[str, bool], ...], tuple[str, ...]]:
    """Where one is, and how much is done."""
    right = [tr("{count} of {all} weighed", count=len(walk.written), all=len(walk.animals))]
    if walk.bag_g:
        right.append(tr("bag {weight} taken off", weight=grams_typed(walk.bag_g)))
    if walk.scale.step_g:
        right.append(tr("scale reads to {weight}", weight=grams_typed(walk.scale.step_g)))
    row = walk.current
    if row is None:
        return ((tr("at its end"), False),), tuple(right)
    rack, line = row_key(row.place)
    if not line:
        return ((tr("place"), False), (rack or tr("none"), True)), tuple(right)
    beside = row_of(walk, walk.cursor)
    tub = tub_words([walk.animals[n].place for n in beside], beside.index(walk.cursor))
    of_row = tr("row", sense="of tubs")
    where = ((tr("rack"), False), (rack, True), (of_row, False), (str(line), True))
    return (*where, (tr("tub"), False), (tub, True)), tuple(right)


def grams_typed(value: float) -> str:
    """Grams as a keeper types them, no digit lost.

    >>> grams_typed(41.25).replace(GAP, " "), grams_typed(1240.0).replace(GAP, " ")
    ('41.25 g', '1,240 g')
    """
    return f"{number(in_use().mass(value), 3)}{GAP}{mass_unit()}"


def _front(walk: WeighIn, num: int, index: int, passed: frozenset[int], *, asks: bool) -> TubFront:
    row, here = walk.animals[index], index == walk.cursor
    weight = walk.written.get(index)
    now = tr("again") if asks else tr("now")
    if here and weight is not None and not asks:
        now = grams_typed(weight)
    left_out = weight is None and index in passed
    return TubFront(
        number=num,
        name=row.called,
        state=TileState.CURRENT if here else TileState.NOT_REACHED,
        value=grams_typed(weight) if weight is not None and not here else "",
        note=tr("written") if weight is not None else tr("no weight") if left_out else "",
        now=now,
    )


def _idle(reason: Reason) -> bool:
    """Growth by a factor of one, or meals of nothing."""
    figures = reason.figures
    grown = reason.why == "growth since" and figures.get("factor") == 1.0
    return grown or (reason.why == "meals inside" and not figures.get("gut_g"))


def _place(row: AnimalNow) -> str:
    place = place_of(row.place or "")
    return str(place) if place else row.place or tr("no place")


def _who(walk: WeighIn, row: AnimalNow, kind: str) -> tuple[str, ...]:
    sex = tr("sex not known") if row.sex is Sex.UNKNOWN else word(row.sex)
    days_old = row.age_days(walk.on)
    first = ", ".join([sex, kind, *([age(days_old)] if days_old is not None else [])])
    if row.eaten_on is None:
        return first, tr("no meal in the book")
    since = (walk.on - row.eaten_on).days
    return first, tr("last meal {ago}", ago=ago(since)) if since > 0 else tr("last meal today")


def _state(walk: WeighIn, typed: str) -> str:
    if not typed:
        weight = walk.written.get(walk.cursor)
        if weight is None:
            return tr("type the weight")
        return tr("written {weight}", weight=grams_typed(weight))
    if not walk.bag_g:
        return tr("typed, not written")
    try:
        net = grams_typed(walk.net_g(typed))
    except ValueError:
        net = tr("not yet a weight")
    return tr("not written; less the bag {weight}", weight=net)


def _range_words(scale: OnScale) -> str:
    if scale.range is None:
        return ""
    return span(grams(scale.range.low_g), grams(scale.range.high_g))


def _outside(scale: OnScale, asks: Asks | None) -> str:
    if asks is None or scale.range is None:
        return ""
    below = asks.typed_g < scale.range.low_g
    nearest = scale.range.low_g if below else scale.range.high_g
    factor = nearest / asks.typed_g if below else asks.typed_g / nearest
    if factor >= _FAR:
        return tr("outside by a factor of {factor}", factor=number(factor))
    share = percent(100 * abs(1 - asks.typed_g / nearest))
    if below:
        return tr("{share} under the range", share=share)
    return tr("{share} over the range", share=share)


def _question(asks: Asks | None) -> str:
    if asks is None:
        return ""
    guess = asks.verdict.guess_g
    if not guess:
        return tr("Is that right?")
    return tr("Did you mean {weight}?", weight=number(in_use().mass(guess), 3))


def _gauge(scale: OnScale, asks: Asks | None, expected: str) -> GaugeMarks:
    low, high = (scale.range.low_g, scale.range.high_g) if scale.range else (None, None)
    if asks is None:
        return GaugeMarks(low_g=low, high_g=high, range_words=expected)
    guess = asks.verdict.guess_g
    return GaugeMarks(
        low_g=low,
        high_g=high,
        typed_g=asks.typed_g,
        guess_g=guess,
        how=_how(asks, guess),
        range_words=expected,
    )


def _how(asks: Asks, guess: float | None) -> str:
    slip = next((s for s in asks.verdict.slips if s.inside and s.grams == guess), None)
    if slip is None or guess is None:
        return ""
    factor = round(guess / asks.typed_g, 3)
    times: Sequence[str] = [FACTORS[factor]] if factor in FACTORS else []
    return ", ".join([SLIPS[slip.name], *times])
