"""Entries of care in a few words: medicine, doses, tests, permits, eggs, mites, bags, absences."""

from typing import Any

from keeper.husbandry.care import Dose, DoseTold, Eggs, EggsPlaced, FaecalTest, Medicine, Permit
from keeper.husbandry.house import HousePermit, KeeperAway, MiteStep, PreyCounted
from keeper.language import tr
from keeper.reports.figures import counted, day, days
from keeper.reports.prey_words import prey_words
from keeper.reports.words import word

_ITEMS = counted("item", "items")


def care_words(event: Any) -> str:
    """*event* without its note; nothing where it is of another kind."""
    match event:
        case Medicine():
            return _medicine(event)
        case Dose():
            return _dose(event)
        case FaecalTest():
            return tr("faecal test: {result}", result=word(event.result))
        case Permit():
            told = {"kind": event.kind, "number": event.number, "on": day(event.expires)}
            return tr("{kind} {number}, until {on}", **told)
        case Eggs():
            return _eggs(event)
        case EggsPlaced():
            return _placed(event)
        case MiteStep():
            return _mites(event)
        case HousePermit():
            told = {"kind": event.kind, "number": event.number, "on": day(event.expires)}
            return tr("{kind} {number}, of the house, until {on}", **told)
        case PreyCounted():
            left = _ITEMS(event.items)
            prey = prey_words(event.prey)
            return tr("bag {bag} of {prey}: {left}", bag=event.bag, prey=prey, left=left)
        case KeeperAway():
            return _away(event)
    return ""


def _away(event: KeeperAway) -> str:
    told = {"first": day(event.first_on), "last": day(event.last_on)}
    if event.covered_by:
        return tr("away {first} to {last}, covered by {who}", who=event.covered_by, **told)
    return tr("away {first} to {last}", **told)


def often_words(event: Medicine) -> str:
    """How often the vet wrote it."""
    every = tr("every day") if event.every_days == 1 else tr("every {n}", n=days(event.every_days))
    if event.doses_a_day > 1:
        return tr("{times} times a day, {every}", times=event.doses_a_day, every=every)
    return every


def _medicine(event: Medicine) -> str:
    every = often_words(event)
    told = {"name": event.medicine, "amount": event.amount, "route": event.route}
    until = day(event.last_on)
    words = tr("{name}, {amount}, {route}, {every} until {until}", every=every, until=until, **told)
    return tr("{words}, lot {lot}", words=words, lot=event.lot) if event.lot else words


def _dose(event: Dose) -> str:
    told = tr("{medicine} {told}", medicine=event.medicine, told=word(event.told))
    if event.given_by and event.told is DoseTold.GIVEN:
        return tr("{told} by {who}", told=told, who=event.given_by)
    return told


def _eggs(event: Eggs) -> str:
    told = tr("{count} {fate}", sense="eggs", count=event.count, fate=word(event.fate))
    return tr("{told} of {clutch}", told=told, clutch=event.clutch) if event.clutch else told


def _placed(event: EggsPlaced) -> str:
    told = tr("eggs taken out of the incubator")
    if event.place and event.box:
        told = tr("eggs in {place}, box {box}", place=event.place, box=event.box)
    elif event.place:
        told = tr("eggs in {place}", place=event.place)
    return tr("{told} of {clutch}", told=told, clutch=event.clutch) if event.clutch else told


def _mites(event: MiteStep) -> str:
    where = event.place or tr("the room")
    told = tr("mites, {where}: {told}", where=where, told=word(event.told))
    if not event.treatment:
        return told
    return tr("{told}, {treatment}", told=told, treatment=event.treatment)
