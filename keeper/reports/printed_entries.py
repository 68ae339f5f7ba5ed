"""Single entries of a record as they are printed: offers, sheds, remarks and how a sex is known."""

from collections.abc import Sequence
from datetime import date

from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Offer, Remark, RemarkKind, Sexed, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.reports.figures import UNKNOWN, age, celsius, day, grams, plain, span
from keeper.reports.prey_words import prey_words
from keeper.reports.words import word

OFFER_HEADS = (tr("day"), tr("offered"), tr("grams"), tr("result"), tr("how it is known"))
OFFER_SHARES = (0.16, 0.28, 0.12, 0.20, 0.24)


def offer_row(offer: Offer) -> tuple[str, ...]:
    """An offer as cells under ``OFFER_HEADS``."""
    said = prey_words(offer.prey) if offer.prey else None
    prey = f"{offer.count} × {said}" if offer.count and said else said
    return (
        plain(day(offer.happened.day)),
        prey or UNKNOWN,
        plain(grams(offer.mass_g)) if offer.mass_g is not None else UNKNOWN,
        word(offer.result),
        word(offer.evidence),
    )


def sex_words(row: AnimalNow, sexings: Sequence[Sexed]) -> str:
    """The sex and each sexing that it rests on, newest first."""
    if row.sex is Sex.UNKNOWN:
        return tr("not known", sense="sex")
    told = [_sexing(one) for one in reversed(sexings) if one.sex is row.sex]
    return f"{word(row.sex)}: {'; '.join(told)}" if told else word(row.sex)


def hatched_words(row: AnimalNow, on: date) -> str:
    """The day of hatching and the age on the day *on*; empty where it is not known."""
    if row.hatched_first is None:
        return UNKNOWN
    first, last = row.hatched_first, row.hatched_last or row.hatched_first
    old = age(row.age_days(on) or 0, on)
    if first == last:
        return plain(tr("{day}, {age} old", day=day(first), age=old))
    return plain(
        tr(
            "between {first} and {last}, {age} old",
            first=day(first),
            last=day(last),
            age=old,
        )
    )


def shed_words(sign: ShedSign) -> str:
    """A shed with what was found of the skin."""
    skin = word(sign.quality) if sign.quality else tr("skin not read")
    before_eggs = [tr("pre-lay")] if sign.pre_lay else []
    return ", ".join([plain(day(sign.happened.day)), skin, *before_eggs])


def remark_words(remark: Remark) -> str:
    """What was seen, in the keeper's own words."""
    kind = "" if remark.kind is RemarkKind.NOTE else f"{word(remark.kind)}: "
    note = f" ({remark.note})" if remark.note and remark.kind is not RemarkKind.PHOTO else ""
    return f"{kind}{remark.text}{note}"


def degrees(low: float, high: float) -> str:
    """A range of temperatures, or one where both are the same."""
    return span(celsius(low), celsius(high))


def _sexing(sexed: Sexed) -> str:
    note = f", {sexed.note}" if sexed.note else ""
    return plain(f"{word(sexed.sexed_by)} {day(sexed.happened.day)}{note}")
