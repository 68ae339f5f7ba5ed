"""Any entry of the book in a few words, and a batch in one line."""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from keeper.actions.care_words import care_words
from keeper.actions.due_board import FEED_NIGHTS
from keeper.actions.joined import JOINED
from keeper.actions.settings import nights_words
from keeper.actions.tubs import offer_words
from keeper.husbandry import events as e
from keeper.husbandry.house import BagOpened, Cleaning, DailyRound, PlaceAside, ReadingsTaken
from keeper.language import tr
from keeper.reports.figures import GAP, celsius, centimetres, counted, day, grams, number
from keeper.reports.prey_words import prey_words
from keeper.reports.words import word

KINDS: Mapping[str, Callable[[float], str]] = {
    "described": counted("animal described", "animals described"),
    "sexed": counted("sex", "sexes"),
    "stock": counted("standing", "standings"),
    "moved": counted("move", "moves"),
    "offer": counted("offer", "offers"),
    "regurgitation": counted("regurgitation", "regurgitations"),
    "weighing": counted("weighing", "weighings"),
    "measured": counted("measurement", "measurements"),
    "total_length": counted("total length", "total lengths"),
    "shed_sign": counted("shed sign", "shed signs"),
    "hold_set": counted("hold", "holds"),
    "hold_ended": counted("end of a hold", "ends of holds"),
    "clutch": counted("clutch", "clutches"),
    "paired": counted("pairing", "pairings"),
    "remark": counted("remark", "remarks"),
    "snooze": counted("line put aside", "lines put aside"),
    "aside_until": counted("line put aside until", "lines put aside until"),
    "offered_through": counted("choice for an animal", "choices for animals"),
    "start_step": counted("step of a start", "steps of a start"),
    "cleaned": counted("tub cleaned", "tubs cleaned"),
    "heat": counted("reading", "readings"),
    "probe_placed": counted("probe placed", "probes placed"),
    "setting": counted("choice", "choices"),
    "override": counted("own figure", "own figures"),
    "round_opened": counted("round begun", "rounds begun"),
    "round_closed": counted("round closed", "rounds closed"),
    "night_answer": counted("night answered", "nights answered"),
    "plan_line": counted("line of the plan", "lines of the plan"),
    "daily_round": counted("daily round", "daily rounds"),
    "bag_opened": counted("bag opened", "bags opened"),
    "medicine": counted("course of medicine", "courses of medicine"),
    "dose": counted("dose", "doses"),
    "faecal_test": counted("faecal test", "faecal tests"),
    "permit": counted("permit", "permits"),
    "eggs": counted("word of eggs", "words of eggs"),
    "prey_counted": counted("bag counted", "bags counted"),
    "mite_step": counted("step against mites", "steps against mites"),
    "place_aside": counted("place put aside", "places put aside"),
    "readings_taken": counted("file of readings", "files of readings"),
}
"""A number of entries of each table."""


def results_words(offers: Sequence[e.Offer]) -> str:
    """How many offers came to each result."""
    said = Counter(_result(offer) for offer in offers)
    return ", ".join(f"{count}{GAP}{result}" for result, count in said.items())


def counts_words(counts: Mapping[str, int]) -> str:
    """What a batch holds, kind by kind.

    >>> counts_words({"round_opened": 1, "plan_line": 80}).replace("\u00a0", " ")
    '1 round begun, 80 lines of the plan'
    """
    return ", ".join(kind_words(table)(count) for table, count in counts.items())


def kind_words(table: str) -> Callable[[float], str]:
    """How many of *table*; a table without words of its own is told by its name."""
    name = table.replace("_", " ")
    return KINDS.get(table) or counted(name, name)


def entry_words(event: Any) -> str:
    """One entry without its note: what was seen, done or chosen."""
    body, care = _of_the_body(event), _of_the_care(event) or care_words(event)
    return body or care or _of_the_book(event) or _of_the_room(event)


def note_of(event: Any) -> str:
    """The note of an entry; that of a photo is the name of its picture and tells nobody a thing."""
    if isinstance(event, e.Remark) and event.kind is e.RemarkKind.PHOTO:
        return ""
    return getattr(event, "note", None) or ""


def _of_the_body(event: Any) -> str:
    match event:
        case e.Weighing():
            return grams(event.weight_g) + (", typed twice" if event.typed_twice else "")
        case e.TotalLength():
            return tr("total length {length}", length=centimetres(event.total_cm))
        case e.Measured():
            return _measures(event)
        case e.ShedSign():
            quality = word(event.quality) if event.quality else ""
            before = "before laying" if event.pre_lay else ""
            return " ".join(part for part in (word(event.stage), quality, before) if part)
        case e.Clutch():
            return clutch_words(event)
        case e.Paired():
            return paired_words(event)
        case e.Sexed():
            return f"{word(event.sex)}, {word(event.sexed_by)}"
        case e.Regurgitation():
            return "regurgitated"
    return ""


def _of_the_care(event: Any) -> str:
    match event:
        case e.Offer():
            return offer_words(event)
        case e.HoldSet():
            until = f" until {day(event.until)}" if event.until else ""
            return f"hold {word(event.kind)}{until}"
        case e.HoldEnded():
            return f"hold {word(event.kind)} ended"
        case e.Remark():
            return remark_words(event)
        case e.Moved():
            return f"moved to {event.place}" if event.place else "taken out"
        case e.StartStep():
            return f"start: {event.step}"
        case e.OfferedThrough():
            return f"{'offered' if event.yes else 'not offered'} when {word(event.kind)}"
        case e.AsideUntil():
            awaited = word(event.awaited)
            return f"{event.watch_kind} put aside until {awaited}: {event.reason}"
        case e.Snooze():
            return f"{event.watch_kind} put aside until {day(event.until)}: {event.reason}"
    return ""


def _of_the_book(event: Any) -> str:
    match event:
        case e.Described():
            return _described(event)
        case e.Stock():
            return word(event.status)
        case e.Setting():
            return _chosen(event)
        case e.Override():
            return f"{event.species}, {event.key}: {event.value:g}, {event.reason}"
        case e.RoundOpened() | e.RoundClosed():
            done = "begun" if isinstance(event, e.RoundOpened) else "closed"
            return f"round of {day(event.happened.day)} {done}"
        case e.NightAnswer():
            return f"{day(event.happened.day)}: {word(event.told)}"
        case e.PlanLine():
            return f"line {event.line}, {event.state}"
    return ""


def paired_words(event: e.Paired, mate: str = "") -> str:
    """A pairing, with whom where *mate* is his or her name."""
    who = f"paired with {mate}" if mate else "paired"
    return f"{who}, lock seen" if event.locked else who


def remark_words(event: e.Remark) -> str:
    """The kind before the words, unless it is itself what was said or is a mere note."""
    kind = word(event.kind)
    if event.kind is e.RemarkKind.NOTE or event.text.casefold() == kind.casefold():
        return event.text
    return f"{kind}: {event.text}"


def _described(event: e.Described) -> str:
    """Young are told by their clutch and hatch day, others by code, name and line."""
    if event.clutch and event.hatched_first:
        return f"{event.code}, hatched {day(event.hatched_first)}, clutch {event.clutch}"
    line = f"line {event.line}" if event.line else ""
    told = (f"described as {event.code}", event.name or "", line)
    return ", ".join(part for part in told if part)


def _chosen(event: e.Setting) -> str:
    """Feed nights in words, as they are typed; any other choice as it is kept."""
    if event.key == JOINED:
        return tr("{lines} of another book", lines=_LINES(len(event.value.split())))
    value = nights_words(event.value) if event.key == FEED_NIGHTS else event.value
    return f"{event.key}: {value}"


def _of_the_room(event: Any) -> str:
    match event:
        case e.Heat():
            return f"{event.place} {word(event.zone).lower()} {celsius(event.temp_c)}"
        case e.ProbePlaced():
            return f"probe {event.probe} at {event.place or 'no place'}, {word(event.zone).lower()}"
        case e.Cleaned():
            return "tub cleaned" if event.extent is Cleaning.WHOLE else "tub spot-cleaned"
        case ReadingsTaken():
            told = {"readings": _READINGS(event.readings), "name": event.name}
            return tr("{readings} of {name} taken in", **told)
        case DailyRound():
            return f"looked into {event.place or 'every tub'}"
        case BagOpened():
            return f"bag {event.bag} of {prey_words(event.prey)} opened"
        case PlaceAside():
            where = event.place or "the room"
            return (
                f"{event.watch_kind} of {where} put aside until {day(event.until)}: {event.reason}"
            )
    return ""


def clutch_words(clutch: e.Clutch) -> str:
    """Eggs and slugs in words."""
    slugs = f", {_SLUGS(clutch.slugs)}" if clutch.slugs else ""
    return f"{_EGGS(clutch.good)}{slugs}"


def _result(offer: e.Offer) -> str:
    seen = offer.result is not e.Result.TAKEN or offer.evidence is e.Evidence.SEEN
    return word(offer.result) if seen else f"{word(offer.result)}, {word(offer.evidence)}"


def _measures(event: e.Measured) -> str:
    length = centimetres(event.svl_cm) if event.svl_cm is not None else ""
    score = f"body score {number(event.body_score, 1)}" if event.body_score is not None else ""
    return ", ".join(part for part in (length, score) if part)


_EGGS = counted("egg", "eggs")
_LINES = counted("line", "lines")
_SLUGS = counted("slug", "slugs")
_READINGS = counted("reading", "readings")
