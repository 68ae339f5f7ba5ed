"""What happens in the room: rounds of looking, bags of prey, lines put aside; words for it."""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from keeper.husbandry.impossible import BAG_ITEMS, impossible
from keeper.husbandry.when import Happened


class Cleaning(StrEnum):
    """How much of a tub was cleaned."""

    SPOT = "spot"
    WHOLE = "whole"  # stripped, washed and given new substrate: the animal was out of it


class NightTold(StrEnum):
    """What the keeper says of a feed night that nothing was written on."""

    NO_ROUND = "no round"
    FORGOT = "forgot to record"  # it is still to be typed
    UNWRITTEN = "done, not recorded"  # fed, and nobody knows any more who ate


class RemarkKind(StrEnum):
    NOTE = "note"
    CAUTION = "caution"  # the one word a feeder must see: BITES, SHY
    FAECES = "faeces"
    MITES = "mites"
    WOUND = "wound"
    BREATHING = "breathing"
    OPEN_MOUTH = "open mouth"  # breathes with the mouth held open
    PROLAPSE = "prolapse"
    STRAINING = "straining"  # without an egg, or laying begun and not finished
    WATER = "water"
    SHED_GONE = "shed remains gone"  # looked at again: cap, ring or pieces are off
    SHED_STILL = "shed remains still there"
    PHOTO = "photo"  # note names the picture by its SHA-256, text is what it shows


class MitesTold(StrEnum):
    """One step against mites, of a room or rack as a whole."""

    BEGUN = "begun"  # day 0: treated by the vet's word or the label
    CLEAR = "clear"
    SEEN = "seen"  # the count begins anew
    ENDED = "ended"  # by the vet's word, before all is clear


class Awaited(StrEnum):
    """What brings a line that was put aside back."""

    SHED = "shed"
    MEAL = "meal"
    WEIGHING = "weighing"
    EGGS = "eggs"


@dataclass(frozen=True, slots=True, kw_only=True)
class DailyRound:
    """The keeper looked into the tubs of a rack (``B``) or row (``B3``); None: of the room."""

    happened: Happened
    place: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class BagOpened:
    """From then on prey of that grade comes out of that bag, one delivery of it."""

    happened: Happened
    prey: str
    bag: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PreyCounted:
    """So many items of a grade lie in that bag: when it came, and whenever it is counted anew.

    Nought: the bag is empty, or was binned.
    """

    happened: Happened
    prey: str
    bag: str
    items: int

    def __post_init__(self) -> None:
        if self.items < 0:
            raise impossible(BAG_ITEMS, self.items)


@dataclass(frozen=True, slots=True, kw_only=True)
class MiteStep:
    """A treatment of a rack (``B``) or of the room (None), or a look for mites there.

    treatment: product and amount in the words of vet or label, where something was given.
    """

    happened: Happened
    place: str | None
    told: MitesTold
    treatment: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class HousePermit:
    """A permit or licence of the keeper, not of one animal. expires: its last day."""

    happened: Happened
    kind: str
    number: str
    expires: date


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceAside:
    """A line of the watch about a place, a bag or a keeper, put aside with a reason and an end.

    place: as the line names it, None where it speaks of the whole room.
    """

    happened: Happened
    place: str | None
    watch_kind: str
    until: date
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingsTaken:
    """A logger's file taken in: so many readings of probes, so many kept aside.

    read_as: how its lines were read. The readings lie packed beside it and stand as it stands.
    """

    happened: Happened
    name: str
    sha256: str
    read_as: str
    readings: int
    aside: int


@dataclass(frozen=True, slots=True, kw_only=True)
class KeeperAway:
    """The keeper is away from the first to the last of these days, both included.

    covered_by: who looks after the house, in the keeper's words. fed_on: the nights on which
    they have agreed to feed, as ISO days parted by spaces; None: no feeding was agreed.
    """

    happened: Happened
    first_on: date
    last_on: date
    covered_by: str | None = None
    fed_on: str | None = None


AboutRoom = (
    DailyRound
    | BagOpened
    | PreyCounted
    | MiteStep
    | HousePermit
    | PlaceAside
    | ReadingsTaken
    | KeeperAway
)
