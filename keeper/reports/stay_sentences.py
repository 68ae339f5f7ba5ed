"""Where an animal stood, with whom and beside whom, in whole sentences."""

from collections.abc import Sequence
from datetime import date, timedelta

from keeper.husbandry.animal import Sex, Status
from keeper.husbandry.house import MiteStep, MitesTold
from keeper.language import tr, tr_table
from keeper.reports.figures import counted, day, days
from keeper.reports.words import word
from keeper.rules.neighbours import NEAR_DAYS, Near, TubExposure
from keeper.rules.sires import LOCK_WEIGHS, PAIRED_WEIGHS, TUB_WEIGHS
from keeper.rules.stays import Away, Shared, Side, Stay, WashDay

_tubs = counted("tub", "tubs")

_HATCHED_HERE = timedelta(days=7)
"""One that is put into its first tub so soon after hatching was in the incubator before."""

_ENGLISH_SIDES = {
    "beside": {
        Side.LEFT: "left {place}: {who}",
        Side.RIGHT: "right {place}: {who}",
        Side.ABOVE: "above {place}: {who}",
        Side.BELOW: "below {place}: {who}",
    }
}
_SIDES = tr_table(_ENGLISH_SIDES)["beside"]
_ENGLISH_FINDS = {
    "mites": {
        Side.LEFT: "Mites were seen on {name} on {on} in {found}; this tub was to its left.",
        Side.RIGHT: "Mites were seen on {name} on {on} in {found}; this tub was to its right.",
        Side.ABOVE: "Mites were seen on {name} on {on} in {found}; this tub was above it.",
        Side.BELOW: "Mites were seen on {name} on {on} in {found}; this tub was below it.",
    }
}
_FINDS = tr_table(_ENGLISH_FINDS)["mites"]


def who_words(name: str, sex: Sex) -> str:
    """A name and its sex."""
    known = tr("sex not known") if sex is Sex.UNKNOWN else word(sex)
    return tr("{name}, {sex},", sense="begins a sentence", name=name, sex=known)


def stood(who: str, stay: Stay, today: date) -> str:
    """From when to when an animal was in a tub."""
    since = day(stay.since)
    if stay.until is None:
        long = days((today - stay.since).days)
        told = _told(who, stay, since, long)
        return tr("{who} has been in {place} since {since}: {days}.", **told)
    if stay.until == stay.since:
        return tr("{who} was in {place} on {since} alone.", who=who, place=stay.place, since=since)
    long = days((stay.until - stay.since).days)
    return tr(
        "{who} was in {place} from {since} to {until}: {days}.",
        until=day(stay.until),
        **_told(who, stay, since, long),
    )


def came_and_went(name: str, stay: Stay, hatched_on: date | None = None) -> list[str]:
    """Where it came from, and where it went."""
    found = []
    if stay.came_from is not None:
        found.append(tr("{name} came from {place}.", name=name, place=stay.came_from))
    elif hatched_on is not None and stay.since - hatched_on <= _HATCHED_HERE:
        found.append(tr("{name} hatched on {on}.", name=name, on=day(hatched_on)))
    else:
        since = day(stay.since)
        found.append(tr("Where {name} was before {since} cannot be told.", name=name, since=since))
    if stay.went_to is not None:
        found.append(tr("{name} went to {place}.", name=name, place=stay.went_to))
    elif stay.until is not None:
        found.append(_left(name, stay, day(stay.until)))
    return found


def _left(name: str, stay: Stay, on: str) -> str:
    if stay.left is Status.MISSING:
        return tr("{name} was missed on {on}.", name=name, on=on)
    if stay.left is None:
        return tr("{name} was taken out on {on} and stands in no tub.", name=name, on=on)
    return tr("{name} left on {on}: {status}.", name=name, on=on, status=word(stay.left))


def alone(name: str) -> str:
    return tr("Nobody shared the tub with {name}.", name=name)


def shared(who: str, told: Shared, *, lasts: bool) -> str:
    """Who shared the tub, and for how long."""
    first, last, long = day(told.first), day(told.last), days(told.days)
    if told.in_passing:
        return tr(
            "{who} was in this tub too, and on {on} one went and the other came: they may never"
            " have met.",
            who=who,
            on=first,
        )
    if lasts:
        return tr("{who} has shared it since {first}: {days}.", who=who, first=first, days=long)
    return tr(
        "{who} shared it from {first} to {last}: {days}.",
        who=who,
        first=first,
        last=last,
        days=long,
    )


def exposed(met: TubExposure, female: str, male: str) -> str:
    """What the shared tub means for the sires of her clutches."""
    if not met.days:
        return tr(
            "{female} and {male} were not both old enough before {first}, so no day counts as"
            " exposure.",
            female=female,
            male=male,
            first=day(met.first),
        )
    return tr(
        "It exposed {female} to {male}: {days} count from {first}, and a shared tub weighs"
        " {tub:.0f} where a pairing weighs {paired:.0f} and a lock {lock:.0f}. {female} may keep"
        " sperm until {until}.",
        female=female,
        male=male,
        days=days(met.days),
        first=day(met.first),
        until=day(met.until),
        tub=TUB_WEIGHS.value,
        paired=PAIRED_WEIGHS.value,
        lock=LOCK_WEIGHS.value,
    )


def sex_unknown(name: str) -> str:
    return tr("The sex of {name} is not known: exposure cannot be ruled out.", name=name)


def beside(side: Side, place: str, who: str) -> str:
    """One of the four tubs that touch, and who is in it."""
    return _SIDES[side].format(place=place, who=who)


def all_beside(on: date, told: Sequence[str]) -> str:
    return tr("On {on}: {beside}.", on=day(on), beside="; ".join(told))


def empty_words() -> str:
    return tr("empty", sense="a tub")


def unknown_words() -> str:
    return tr("cannot tell")


def nobody(place: str, on: date) -> str:
    return tr("Nobody is written in {place} on {on}: empty.", place=place, on=day(on))


def not_known(place: str, known_from: date | None) -> str:
    """A tub before its first entry, or without any."""
    if known_from is None:
        return tr("Nothing is written of {place}: who was in it cannot be told.", place=place)
    return tr(
        "Nothing is written of {place} before {first}: who was in it until then cannot be told.",
        place=place,
        first=day(known_from),
    )


def last_here(name: str, until: date) -> str:
    return tr("Before that {name} was in it, until {until}.", name=name, until=day(until))


def next_here(name: str, since: date) -> str:
    return tr("After that {name} came, on {since}.", name=name, since=day(since))


def near_mites(near: Near, name: str) -> str:
    """A stay in the tub of a find or beside it. name: on whom mites were seen."""
    on, found = day(near.found.on), near.found.place
    if near.side is None:
        return tr("Mites were seen on {name} on {on}, in this tub.", name=name, on=on)
    return _FINDS[near.side].format(name=name, on=on, found=found)


def mites_here(name: str, on: date) -> str:
    return tr("Mites were seen on {name} here on {on}.", name=name, on=day(on))


def look_at(told: Sequence[str]) -> str:
    """Neighbours of a find, each with where it was and where it is."""
    return tr(
        "Look at those who were in it or touched it within {days} of that: {who}.",
        days=days(NEAR_DAYS.value),
        who="; ".join(told),
    )


def neighbour(name: str, then: str, now: str | None) -> str:
    """Where it stood then, and where it is now; None: no longer here."""
    if now is None:
        return tr("{name} ({then} then, gone since)", name=name, then=then)
    if now == then:
        return tr("{name} ({then}, still there)", name=name, then=then)
    return tr("{name} ({then} then, now {now})", name=name, then=then, now=now)


def no_neighbours() -> str:
    return tr(
        "Nobody is written who was in it or touched it within {days} of that.",
        days=days(NEAR_DAYS.value),
    )


def mites_met(steps: Sequence[MiteStep], place: str) -> str:
    """What was done against mites in a rack or the room: when it began, and the last look."""
    first, last = steps[0], steps[-1]
    begun, on = day(first.happened.day), day(last.happened.day)
    treated = next((step.treatment for step in steps if step.treatment), None)
    met = tr("Mites were met in {place} from {begun} on.", place=place, begun=begun)
    if treated:
        met = tr(
            "Mites were met in {place} from {begun} on ({treatment}).",
            place=place,
            begun=begun,
            treatment=treated,
        )
    if last.told is MitesTold.CLEAR:
        return f"{met} {tr('The last look, on {on}, was clear.', on=on)}"
    if last.told is MitesTold.ENDED:
        return f"{met} {tr('It was ended on {on}, by the vet’s word.', on=on)}"
    return met


def whole_rack() -> str:
    return tr("The rack is treated as one, product and amount by a reptile vet or the label.")


def washed(told: WashDay, *, among: bool) -> str:
    """A day on which tubs of the rack were washed."""
    figures = {"on": day(told.on), "count": _tubs(len(told.tubs)), "lived": str(told.lived)}
    if among:
        return tr(
            "On {on} {count} of {lived} lived in were washed, this one among them.", **figures
        )
    return tr("On {on} {count} of {lived} lived in were washed, not this one.", **figures)


def apart(name: str, since: date, until: date | None) -> str:
    """A quarantine."""
    if until is None:
        return tr("Quarantine of {name}: since {since}, no end set.", name=name, since=day(since))
    return tr(
        "Quarantine of {name}: from {since} to {until}.",
        name=name,
        since=day(since),
        until=day(until),
    )


def missed(name: str, away: Away) -> str:
    """A time in which nobody knows where it was."""
    place, since = away.from_place or "?", day(away.since)
    if away.until is None:
        return tr(
            "{name} is missing since {since}, last in {place}: whom it meets cannot be told.",
            name=name,
            since=since,
            place=place,
        )
    return tr(
        "{name} was missing from {since} to {until}, last in {place}: whom it met meanwhile"
        " cannot be told.",
        name=name,
        since=since,
        until=day(away.until),
        place=place,
    )


def paired(name: str, mate: str, on: date, *, locked: bool) -> str:
    figures = {"name": name, "mate": mate, "on": day(on)}
    if locked:
        return tr("{name} and {mate} were paired on {on}, and a lock was seen.", **figures)
    return tr("{name} and {mate} were paired on {on}.", **figures)


def _told(who: str, stay: Stay, since: str, long: str) -> dict[str, str]:
    return {"who": who, "place": stay.place, "since": since, "days": long}
