"""An absence told back in a few sentences, before it is kept."""

from collections.abc import Iterator, Sequence

from keeper.language import tr
from keeper.reports.figures import counted, day, days, night
from keeper.reports.holiday_page import HolidayFacts, HolidayNight, falls_told, tubs_told

_ANIMALS = counted("animal", "animals")
_MOST, _NAMED = 4, 6


def absence_told(facts: HolidayFacts) -> str:
    """Who is away and who covers, what the plan does, and what falls into these days."""
    return " ".join(_sentences(facts))


def _sentences(facts: HolidayFacts) -> Iterator[str]:
    told = {
        "first": day(facts.first),
        "last": day(facts.last),
        "days": days((facts.last - facts.first).days + 1),
    }
    if facts.who:
        yield tr("Away {first} to {last}, {days}, covered by {who}.", who=facts.who, **told)
    else:
        yield tr("Away {first} to {last}, {days}; nobody is named who covers.", **told)
    if facts.before:
        yield tr("Fed early: {nights}.", nights=_nights(facts.before))
    if facts.nights:
        yield tr("To be fed meanwhile: {nights}.", nights=_nights(facts.nights))
    else:
        yield tr("Nobody has to be fed meanwhile.")
    for on, places in facts.waits.items():
        yield tr("Waiting until {night}: {animals}.", night=night(on), animals=_who(places))
    yield from _falling(facts)


def _falling(facts: HolidayFacts) -> Iterator[str]:
    falls = falls_told(facts.falls)
    yield from falls[:_MOST]
    if len(falls) > _MOST:
        yield tr("And {count} more on the page.", count=len(falls) - _MOST)


def _nights(nights: Sequence[HolidayNight]) -> str:
    return ", ".join(
        tr("{animals} on {night}", animals=_who(each.places), night=night(each.night))
        for each in nights
    )


def _who(places: Sequence[str]) -> str:
    """How many, and where they stand while these are few."""
    animals = _ANIMALS(len(places))
    return f"{animals} ({tubs_told(places)})" if len(places) <= _NAMED else animals
