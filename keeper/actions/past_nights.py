"""Yesterday and earlier: the same strip and keys, with what a correction changes told first."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta
from enum import StrEnum

from keeper.actions.absences import absences
from keeper.actions.consequences import consequences
from keeper.actions.correcting import correct
from keeper.actions.due_board import due_rows, feed_nights_around
from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.actions.round_entries import write
from keeper.actions.rounds import NIGHT_ENDS_HOUR, Walk, all_rounds, by_night, rack_name, time_in
from keeper.actions.tubs import (
    Prey,
    Tub,
    checked,
    offer_in,
    plan_line,
    refuse_impossible,
    tub_name,
)
from keeper.husbandry.events import (
    Evidence,
    NightAnswer,
    NightTold,
    Offer,
    Regurgitation,
    Result,
    RoundClosed,
    RoundOpened,
)
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import Happened, at_instant
from keeper.language import tr
from keeper.reports.figures import night as night_words
from keeper.reports.figures import plain
from keeper.reports.words import word
from keeper.store import reading
from keeper.store.journal import batch
from keeper.store.nights import first_offer_day, night_answers, offer_days
from keeper.store.reading import Entry

EVENING_HOUR = practice(18)
"""A night that is written up later was fed some time from this hour on, unless the book says."""

EVENING_BEGINS = "feed nights begin"
"""Setting: the hour at which the house begins to feed."""

MISSING_DAYS = 28
"""Feed nights further back are not asked about any more."""

_NEIGHBOUR = timedelta(days=1)
_LOOKS = 3
_EATEN = frozenset({Result.TAKEN, Result.PART})


class Correction(StrEnum):
    """Why an entry is put right."""

    FOUND_UNEATEN = "found uneaten"
    WRONG_TUB = "wrong tub"
    WRONG_PREY = "wrong prey"
    TYPED_LATE = "typed late"
    OTHER = "other"


@dataclass(frozen=True, slots=True, kw_only=True)
class NightLook:
    """A round that is over, and how many of its tubs nobody has looked into since.

    racks: where it was walked, if other rounds of that night were walked elsewhere.
    """

    round: int
    night: date
    racks: str
    left_in: int
    assumed: int
    not_reached: int


class PastNight(Walk):
    """A night that is over, on its own lines and with the keys of the walk.

    why: the reason of what is put right; None: it is told from what is put right. What was
    never written of the night is written as of that night, *typed late*.
    """

    def __init__(self, keeping: Keeping, opened: Entry[RoundOpened]) -> None:
        super().__init__(keeping, opened)
        newest = reading.latest_batches(keeping.book, 1)
        self._since = newest[0].id if newest else 0
        self.why: Correction | None = None

    @property
    def since(self) -> int:
        """The newest batch when the night was opened: only what comes after is taken back."""
        return self._since

    @property
    def banner(self) -> str:
        """What stays in sight while a past night is entered."""
        return tr("entering for {night}", night=plain(night_words(self.night))).upper()

    def foreseen(
        self, result: Result, *, prey: Prey | None = None, line: int | None = None
    ) -> tuple[Reason, ...]:
        """What follows if a tub is put right to *result*; nothing is written.

        line: which tub; None: the one at the cursor.

        Raises:
            LookupError: it cannot be, in one sentence.
        """
        tub = self._standing_at() if line is None else self.tub(line)
        refuse_impossible(tub, result, prey)
        offer = offer_in(tub, self._now(), result, Evidence.SEEN, prey=prey)
        return consequences(self._keeping, tub.offer, self._as_of_that_night([tub], [offer]))

    def foreseen_found(self, *, gone: bool, line: int | None = None) -> tuple[Reason, ...]:
        """What follows if a look finds the prey gone, or uneaten. Raises LookupError."""
        tub = self._standing_at() if line is None else self.tub(line)
        return consequences(self._keeping, tub.offer, [checked(tub, gone=gone)])

    def regurgitated(self) -> Written:
        """A regurgitation was found in the tub at the cursor: today, not on the night itself."""
        tub = self._standing_at()
        found = Regurgitation(animal=tub.plan.animal, happened=at_instant(self._keeping.now()))
        return self._noticed("regurgitation", tub, [found], tr("regurgitation found"))

    def was_in(self, line: int) -> tuple[Written, tuple[Reason, ...]]:
        """What is written at the cursor was the tub of *line*; also what follows from it.

        The cursor stays: what became of this tub that night may be written now.

        Raises:
            LookupError: nothing is written here, or that tub has an entry of its own.
        """
        tub, right = self._standing_at(), self.tub(line)
        if tub.offer is None or right.line == tub.line:
            raise LookupError(tr("Give the line of the other tub, where something is written."))
        instead = in_other_tub(tub.offer, right)
        follows = consequences(self._keeping, tub.offer, instead)
        written = put_right(self._keeping, tub.offer, instead, Correction.WRONG_TUB)
        self._refresh([tub.line, right.line])
        what = tr("it was {tub}", tub=tub_name(right))
        return replace(written, where=tub_name(tub), what=what), follows

    def _now(self) -> Happened:
        return time_in(self.opened.event, self._keeping.now())

    def _as_of_that_night(self, tubs: Sequence[Tub], offers: Sequence[Offer]) -> list[Offer]:
        """What replaces an entry happened when that did."""
        pairs = zip(tubs, offers, strict=True)
        return [replace(o, happened=t.offer.event.happened) if t.offer else o for t, o in pairs]

    def _settled(
        self, verb: str, here: Tub, tubs: Sequence[Tub], offers: Sequence[Offer], what: str
    ) -> Written:
        old = [tub.offer.key for tub in tubs if tub.offer is not None]
        told = self._as_of_that_night(tubs, offers)
        written = write(
            self._keeping,
            verb,
            told,
            old,
            where=tub_name(here),
            what=what,
            reason=self._reason(tubs, told),
        )
        self._refresh([tub.line for tub in tubs])
        self.cursor = self._next(max(tub.line for tub in tubs))
        return written

    def _reason(self, tubs: Sequence[Tub], offers: Sequence[Offer]) -> str | None:
        """Why; None for a look that only settles what was open."""
        replaced = [(t.offer.event, o) for t, o in zip(tubs, offers, strict=True) if t.offer]
        if self.why is not None:
            return self.why.value
        if not replaced:
            return Correction.TYPED_LATE.value
        if self.checking and all(tub.unproved for tub in tubs if tub.offer):
            return None
        return told_by(*replaced[0]).value


def told_by(before: Offer, after: Offer) -> Correction:
    """The reason that what is put right tells by itself."""
    if before.result in _EATEN and after.result is Result.REFUSED:
        return Correction.FOUND_UNEATEN
    if before.result is after.result and before.prey != after.prey:
        return Correction.WRONG_PREY
    return Correction.OTHER


def past_night(keeping: Keeping, night: date, round_: int | None = None) -> PastNight | None:
    """The closed round of *night*; None when none was walked.

    round_: which, where several were walked, one for some racks each; None: the last.
    """
    over = [entry for entry, closed in all_rounds(keeping) if closed]
    found = [entry for entry in over if entry.event.happened.day == night]
    if round_ is not None:
        found = [entry for entry in found if entry.event.round == round_]
    return PastNight(keeping, found[-1]) if found else None


def looks(keeping: Keeping) -> tuple[NightLook, ...]:
    """The last rounds that are over, newest first, with what the morning look has left."""
    over = [entry for entry, closed in all_rounds(keeping) if closed]
    nights = sorted({entry.event.happened.day for entry in over}, reverse=True)[:_LOOKS]
    last = [entry for entry in over if entry.event.happened.day in nights]
    walks = [Walk(keeping, entry) for entry in sorted(last, key=by_night, reverse=True)]
    several = Counter(walk.night for walk in walks)
    return tuple(_look(walk, several=several[walk.night] > 1) for walk in walks)


def late_night(keeping: Keeping, night: date) -> PastNight:
    """The lines of a night that was fed and not recorded, to be written up now.

    They are the plan as the book has it for that night, frozen; the round is closed at once,
    so that it never stands in the way of tonight's.

    Raises:
        ValueError: a night to come, one that has a round, or no animal stood in a tub.
    """
    _refuse_future(keeping, night)
    if any(entry.event.happened.day == night for entry, _ in all_rounds(keeping)):
        raise ValueError(
            tr("The night of {night} has a round; it is put right there.", night=_told(night))
        )
    rows = due_rows(keeping, night)
    if not rows:
        raise ValueError(tr("No animal stood in a tub on {night}.", night=_told(night)))
    at, happened = keeping.now(), _some_time(keeping, night)
    with batch(keeping.book, verb="write up", keeper=keeping.keeper, written=at) as writer:
        key = writer.new_round()
        writer.add(RoundOpened(happened=happened, round=key, keeper=keeping.keeper))
        writer.add(*(plan_line(row, key, n, happened) for n, row in enumerate(rows, start=1)))
        writer.add(RoundClosed(happened=happened, round=key))
    return PastNight(keeping, reading.all_of(keeping.book, RoundOpened, "e.round = ?", key)[0])


def put_right(
    keeping: Keeping,
    entry: Entry[Offer],
    instead: Sequence[Offer],
    why: Correction,
    words: str = "",
) -> Written:
    """Strike *entry* through and write *instead*; words: more about why, in the keeper's own."""
    reason = f"{why.value}: {words.strip()}" if words.strip() else why.value
    return correct(keeping, entry.key, instead, reason)


def in_other_tub(entry: Entry[Offer], right: Tub) -> list[Offer]:
    """The same offer as it should have stood: in the tub *right* of the same night.

    Raises:
        LookupError: that tub has an entry of its own.
    """
    if right.offer is not None:
        done = word(right.offer.event.result)
        raise LookupError(
            tr(
                "{tub} has an entry that night ({done}); put it right first.",
                tub=tub_name(right),
                done=done,
            )
        )
    return [replace(entry.event, animal=right.plan.animal, line=right.line)]


def missing_nights(keeping: Keeping, on: date) -> tuple[date, ...]:
    """Feed nights of the last weeks of which nothing is written and nothing was answered.

    A round held the day before or after, off the usual nights, stands for its neighbour. None
    before the first entry of the book, none where every day is a feed night, and none while the
    keeper was away: who covered is asked, not the keeper (``covered_nights``).
    """
    away = absences(keeping, on)
    nights = _without_a_word(keeping, on)
    return tuple(n for n in nights if not any(absence.covers(n) for absence in away))


def covered_nights(keeping: Keeping, on: date) -> tuple[date, ...]:
    """Nights of the last weeks on which whoever covered was to feed, and nothing is written."""
    agreed = {night for absence in absences(keeping, on) for night in absence.nights}
    return tuple(night for night in _without_a_word(keeping, on) if night in agreed)


def _without_a_word(keeping: Keeping, on: date) -> tuple[date, ...]:
    """Feed nights of the last weeks of which nothing is written and nothing was answered."""
    began = first_offer_day(keeping.book)
    if began is None:
        return ()
    first = max(on - timedelta(days=MISSING_DAYS), began)
    nights = [n for n in feed_nights_around(keeping, on) if first <= n < on]
    if not nights:
        return ()
    written = offer_days(keeping.book, first - _NEIGHBOUR, on)
    usual, answered = set(nights), night_answers(keeping.book)
    return tuple(
        night
        for night in nights
        if night not in written and night not in answered and not _moved(night, written, usual)
    )


def answer_night(keeping: Keeping, night: date, told: NightTold) -> Written:
    """Say what became of a night of which nothing is written.

    Raises:
        ValueError: a night to come, or one that has offers.
    """
    _refuse_future(keeping, night)
    if night in offer_days(keeping.book, night, night):
        raise ValueError(
            tr("The night of {night} has offers; they are put right there.", night=_told(night))
        )
    answer = NightAnswer(happened=_some_time(keeping, night), told=told)
    return note(keeping, "answer night", answer, where=_told(night), what=word(told))


def _look(walk: Walk, *, several: bool) -> NightLook:
    offers = [tub.offer.event for tub in walk.tubs if tub.offer is not None]
    racks = dict.fromkeys(rack_name(tub.plan.place) for tub in walk.tubs)
    return NightLook(
        round=walk.round,
        night=walk.night,
        racks=", ".join(filter(None, racks)) if several else "",
        left_in=sum(offer.result is Result.LEFT_IN for offer in offers),
        assumed=sum(offer.evidence is Evidence.ASSUMED for offer in offers),
        not_reached=sum(tub.open for tub in walk.tubs),
    )


def _moved(night: date, written: set[date], usual: set[date]) -> bool:
    """Whether the round of *night* was held a day off."""
    beside = (night - _NEIGHBOUR, night + _NEIGHBOUR)
    return any(day in written and day not in usual for day in beside)


def _refuse_future(keeping: Keeping, night: date) -> None:
    if night >= keeping.today:
        raise ValueError(
            tr(
                "{night} is not over; a past night is before {today}.",
                night=_told(night),
                today=_told(keeping.today),
            )
        )


def _some_time(keeping: Keeping, night: date) -> Happened:
    """Some time from the evening of *night* to the end of the round's hours."""
    zone = keeping.now().tzinfo
    begins = datetime.combine(night, time(evening_hour(keeping)), zone)
    ends = datetime.combine(night + _NEIGHBOUR, time(int(NIGHT_ENDS_HOUR.value)), zone)
    return Happened(at=begins, span=ends - begins, day=night)


def evening_hour(keeping: Keeping) -> int:
    """The hour at which feed nights begin in this house."""
    return int(reading.settings(keeping.book).get(EVENING_BEGINS, EVENING_HOUR.value))


def _told(night: date) -> str:
    return plain(night_words(night))
