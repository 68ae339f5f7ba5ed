"""Any entry of the book in a few words, and a batch in one line."""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from keeper.actions.care_words import care_words
from keeper.actions.due_board import FEED_NIGHTS
from keeper.actions.gene_words import gene_words
from keeper.actions.joined import JOINED
from keeper.actions.settings import nights_words
from keeper.actions.tubs import offer_words
from keeper.husbandry import events as e
from keeper.husbandry.house import BagOpened, Cleaning, DailyRound, PlaceAside, ReadingsTaken
from keeper.language import is_source, tr
from keeper.reports.book_notes import note_words
from keeper.reports.figures import GAP, celsius, centimetres, counted, day, grams, number
from keeper.reports.prey_words import prey_words
from keeper.reports.state_words import WORDS
from keeper.reports.words import token_words, word, word_of

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
    "eggs_placed": counted("clutch placed", "clutches placed"),
    "gene_read": counted("word of a gene", "words of genes"),
    "look_scored": counted("score of colour", "scores of colour"),
    "gene_named": counted("gene named", "genes named"),
    "prey_counted": counted("bag counted", "bags counted"),
    "mite_step": counted("step against mites", "steps against mites"),
    "house_permit": counted("permit of the house", "permits of the house"),
    "place_aside": counted("place put aside", "places put aside"),
    "readings_taken": counted("file of readings", "files of readings"),
    "keeper_away": counted("absence", "absences"),
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
    return body or care or gene_words(event) or _of_the_book(event) or _of_the_room(event)


def note_of(event: Any) -> str:
    """The note of an entry; that of a photo is the name of its picture and tells nobody a thing."""
    if isinstance(event, e.Remark) and event.kind is e.RemarkKind.PHOTO:
        return ""
    return note_words(getattr(event, "note", None) or "")


def _of_the_body(event: Any) -> str:
    match event:
        case e.Weighing():
            told = grams(event.weight_g)
            return tr("{weight}, typed twice", weight=told) if event.typed_twice else told
        case e.TotalLength():
            return tr("total length {length}", length=centimetres(event.total_cm))
        case e.Measured():
            return _measures(event)
        case e.ShedSign():
            quality = word(event.quality) if event.quality else ""
            before = tr("before laying") if event.pre_lay else ""
            return " ".join(part for part in (word(event.stage), quality, before) if part)
        case e.Clutch():
            return clutch_words(event)
        case e.Paired():
            return paired_words(event)
        case e.Sexed():
            return f"{word(event.sex)}, {word(event.sexed_by)}"
        case e.Regurgitation():
            return word_of("HoldKind", "regurgitated")
    return ""


def _of_the_care(event: Any) -> str:
    match event:
        case e.Offer():
            return offer_words(event)
        case e.HoldSet():
            return _hold(event)
        case e.HoldEnded():
            return tr("hold {kind} ended", kind=word(event.kind))
        case e.Remark():
            return remark_words(event)
        case e.Moved():
            return tr("moved to {place}", place=event.place) if event.place else tr("taken out")
        case e.StartStep():
            return tr("start: {step}", step=token_words("LadderStep", event.step))
        case e.OfferedThrough():
            return _offered_through(event)
        case e.AsideUntil():
            return _aside(event.watch_kind, word(event.awaited), event.reason)
        case e.Snooze():
            return _aside(event.watch_kind, day(event.until), event.reason)
    return ""


def _hold(event: e.HoldSet) -> str:
    kind = word(event.kind)
    if event.until is None:
        return tr("hold {kind}", kind=kind)
    return tr("hold {kind} until {day}", kind=kind, day=day(event.until))


def _offered_through(event: e.OfferedThrough) -> str:
    kind = word(event.kind)
    if event.yes:
        return tr("offered when {kind}", kind=kind)
    return tr("not offered when {kind}", kind=kind)


def _aside(watch_kind: str, until: str, reason: str) -> str:
    kind = token_words("watch kind", watch_kind)
    return tr("{kind} put aside until {until}: {reason}", kind=kind, until=until, reason=reason)


def _of_the_book(event: Any) -> str:
    match event:
        case e.Described():
            return _described(event)
        case e.Stock():
            return word(event.status)
        case e.Setting():
            return _chosen(event)
        case e.Override():
            return f"{event.species}, {event.key}: {event.value:g}, {note_words(event.reason)}"
        case e.RoundOpened() | e.RoundClosed():
            night = day(event.happened.day)
            begun = isinstance(event, e.RoundOpened)
            told = tr("round of {night} begun", night=night)
            return told if begun else tr("round of {night} closed", night=night)
        case e.NightAnswer():
            return f"{day(event.happened.day)}: {word(event.told)}"
        case e.PlanLine():
            return tr(
                "line {line}, {state}", line=event.line, state=token_words("DueState", event.state)
            )
    return ""


def paired_words(event: e.Paired, mate: str = "") -> str:
    """A pairing, with whom where *mate* is his or her name."""
    if mate and event.locked:
        return tr("paired with {mate}, lock seen", mate=mate)
    if mate:
        return tr("paired with {mate}", mate=mate)
    return tr("paired, lock seen") if event.locked else tr("paired")


def remark_words(event: e.Remark) -> str:
    """The kind before the words, unless it is itself what was said or is a mere note."""
    kind = word(event.kind)
    if event.kind is e.RemarkKind.NOTE or event.text.casefold() == kind.casefold():
        return event.text
    return f"{kind}: {event.text}"


def _described(event: e.Described) -> str:
    """Young are told by their clutch and hatch day, others by code, name and line."""
    if event.clutch and event.hatched_first:
        return tr(
            "{code}, hatched {day}, clutch {clutch}",
            code=event.code,
            day=day(event.hatched_first),
            clutch=event.clutch,
        )
    line = tr("line {name}", name=event.line) if event.line else ""
    told = (tr("described as {code}", code=event.code), event.name or "", line)
    return ", ".join(part for part in told if part)


def _chosen(event: e.Setting) -> str:
    """Feed nights in words, as they are typed; any other choice as it is kept."""
    if event.key == JOINED:
        return tr("{lines} of another book", lines=_LINES(len(event.value.split())))
    value = nights_words(event.value) if event.key == FEED_NIGHTS else event.value
    return f"{_key_words(event.key)}: {value}"


def _key_words(key: str) -> str:
    """The key of a choice; of one for many things its beginning, with the thing after it."""
    begins = next((begin for begin in WORDS["setting of"] if key.startswith(begin)), "")
    if begins:
        return WORDS["setting of"][begins] + key.removeprefix(begins)
    return token_words("setting", key)


def _within(zone: e.Zone) -> str:
    """A zone's word within a line."""
    return word(zone).lower() if is_source() else word(zone)


def _of_the_room(event: Any) -> str:
    match event:
        case e.Heat():
            return f"{event.place} {_within(event.zone)} {celsius(event.temp_c)}"
        case e.ProbePlaced():
            return tr(
                "probe {probe} at {place}, {zone}",
                probe=event.probe,
                place=event.place or tr("no place"),
                zone=_within(event.zone),
            )
        case e.Cleaned():
            whole = event.extent is Cleaning.WHOLE
            return tr("tub cleaned") if whole else tr("tub spot-cleaned")
        case ReadingsTaken():
            told = {"readings": _READINGS(event.readings), "name": event.name}
            return tr("{readings} of {name} taken in", **told)
        case DailyRound():
            return tr("looked into {place}", place=event.place or tr("every tub"))
        case BagOpened():
            return tr("bag {bag} of {prey} opened", bag=event.bag, prey=prey_words(event.prey))
        case PlaceAside():
            return tr(
                "{kind} of {place} put aside until {until}: {reason}",
                kind=token_words("watch kind", event.watch_kind),
                place=event.place or tr("the room"),
                until=day(event.until),
                reason=event.reason,
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
    score = ""
    if event.body_score is not None:
        score = tr("body score {score}", score=number(event.body_score, 1))
    return ", ".join(part for part in (length, score) if part)


_EGGS = counted("egg", "eggs")
_LINES = counted("line", "lines")
_SLUGS = counted("slug", "slugs")
_READINGS = counted("reading", "readings")
