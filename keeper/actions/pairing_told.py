"""What the pairing calendar tells of a female, sentence by sentence with the days it is about."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.actions.clutch_rows import ClutchRow
from keeper.actions.pairing_calendar import CalendarRow, Met, PairingCalendar, stays_shown
from keeper.husbandry.animal import Sex
from keeper.language import tr
from keeper.reports.figures import day
from keeper.reports.words import because_text, sentence
from keeper.rules.laying import Falls, LayingWindow, Season, falling_into


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """Sentences under a heading, about the days *first* to *last*; None: no end is known.

    replaced: a later sign, or the eggs, have taken its place.
    """

    head: str
    words: str
    first: date
    last: date | None
    replaced: bool = False

    def meets(self, first: date, last: date) -> bool:
        return self.first <= last and (self.last is None or self.last >= first)


def told_of(row: CalendarRow, calendar: PairingCalendar) -> tuple[Told, ...]:
    """All that is known or expected of her, but the gates, in the order in which it begins."""
    on = calendar.on
    found = [
        *(_met(met, on) for met in row.met),
        *(_cooled(first, last, on) for first, last in row.cooled),
        *(told for season in row.seasons for told in _season(season, calendar)),
        *(told for clutch in row.clutches for told in _clutch(clutch, calendar)),
        *_recovering(row),
        *_kept_sperm(row),
    ]
    return tuple(sorted(found, key=lambda told: told.first))


def _met(met: Met, on: date) -> Told:
    seen, male = met.exposure, met.male
    when = day(seen.first, on=on)
    if seen.how == "tub":
        words = tr(
            "In one tub with {male} from {first} to {last}.",
            male=male,
            first=when,
            last=day(seen.last, on=on),
        )
        if seen.last >= on:
            words = tr("In one tub with {male} since {first}.", male=male, first=when)
    elif seen.how == "lock":
        words = tr("Paired with {male} on {day}, lock seen.", male=male, day=when)
    else:
        words = tr("Paired with {male} on {day}; no lock was seen.", male=male, day=when)
    return Told(head=tr("With a male"), words=words, first=seen.first, last=seen.last)


def _cooled(first: date, last: date | None, on: date) -> Told:
    begun = day(first, on=on)
    words = tr("Cooled since {first}; no end is written.", first=begun)
    if last is not None:
        words = tr("Cooled from {first} to {last}.", first=begun, last=day(last, on=on))
    return Told(head=tr("Rest"), words=words, first=first, last=last)


def _season(season: Season, calendar: PairingCalendar) -> Iterator[Told]:
    """Each sign's window; one that was replaced is told to the end of what took its place."""
    newest = season.windows[-1].last if season.windows else None
    for window in season.windows:
        said = sentence(window.because, Sex.FEMALE)
        if window is season.expected:
            yield _expected(window, said, calendar)
        else:
            first = min(window.seen_on, window.first)
            last = season.laid_on or newest
            head = tr("Told by earlier signs")
            yield Told(head=head, words=said, first=first, last=last, replaced=True)


def _expected(window: LayingWindow, said: str, calendar: PairingCalendar) -> Told:
    """The window that counts; past its last day it goes on until today."""
    last = max(window.last, calendar.on) if window.last is not None else None
    falls = _falls("laying", max(window.first, calendar.on), last, calendar)
    words = " ".join((said, *falls))
    return Told(head=tr("Eggs may come"), words=words, first=window.first, last=last)


def _falls(what: Falls, first: date, last: date | None, calendar: PairingCalendar) -> Sequence[str]:
    reasons = falling_into(what, first, last, calendar.absences, calendar.on)
    return [sentence(reason, Sex.FEMALE) for reason in reasons]


def _clutch(clutch: ClutchRow, calendar: PairingCalendar) -> Iterator[Told]:
    on, name = calendar.on, clutch.facts.name
    laid = tr(
        "Clutch {clutch} laid on {day}: {eggs} eggs, slugs among them: {slugs}.",
        clutch=name,
        day=day(clutch.laid_on, on=on),
        eggs=clutch.balance.laid,
        slugs=clutch.balance.slugs,
    )
    yield Told(head=tr("Laid"), words=laid, first=clutch.laid_on, last=clutch.laid_on)
    yield from _lies(clutch, on)
    if clutch.window is not None and clutch.is_open:
        first, last = clutch.window.first, max(clutch.window.last, on)
        slit = tr(
            "The first slit of {clutch} may come from {first} to {last}.",
            clutch=name,
            first=day(first, on=on),
            last=day(clutch.window.last, on=on),
        )
        falls = _falls("pipping", max(first, on), last, calendar)
        words = " ".join((slit, because_text((clutch.step.why, *clutch.window.because)), *falls))
        yield Told(head=tr("First slit"), words=words, first=first, last=last)
    if (out := clutch.hatched_on) is not None:
        words = tr("The first of {clutch} was out on {day}.", clutch=name, day=day(out, on=on))
        yield Told(head=tr("First out"), words=words, first=out, last=out)


def _lies(clutch: ClutchRow, on: date) -> Iterator[Told]:
    for first, last, place in stays_shown(clutch, on):
        words = tr("Clutch {clutch} lies in {place}.", clutch=clutch.facts.name, place=place)
        yield Told(head=tr("Eggs"), words=words, first=first, last=last)


def _kept_sperm(row: CalendarRow) -> Iterator[Told]:
    if row.kept_sperm is not None:
        first, last, why = row.kept_sperm
        head = tr("Kept sperm")
        yield Told(head=head, words=sentence(why, Sex.FEMALE), first=first, last=last)


def _recovering(row: CalendarRow) -> Iterator[Told]:
    if row.recovering and row.clutches:
        words = because_text(row.recovering, Sex.FEMALE)
        laid_on = row.clutches[-1].laid_on
        yield Told(head=tr("Recovering from eggs"), words=words, first=laid_on, last=None)
