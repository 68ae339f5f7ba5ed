"""The carry-out list: for a fire or a power cut, who first, where they stand, and in what."""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime

from keeper.language import tr, tr_table
from keeper.reports.figures import counted, grams, moment, plain
from keeper.reports.holiday_page import Detail, tubs_told
from keeper.reports.paper_parts import Blank, Document, Facts, Heading, PageEnd, Part, Table, Words
from keeper.rules.carrying import BAG_G, SMALL_BAG_G, Carrier, Order

TUBS_MOST = 40
"""So many are named tub by tub before the table of the racks; of more, rows are named."""

RACK_A_PAGE = 120
"""With more animals than this every rack begins a page of its own."""

FIRE = tr(
    "Fire or smoke: people first. Call the fire service. Nobody goes in, or back in, for an animal."
)
POWER = tr(
    "Power cut: the cold harms slowly. Keep door, tubs and incubator shut, cover them, open nothing"
    " without need. Warmth goes to them in the order below; warm bottles are wrapped and never"
    " hotter than the hot end may be. Feed nobody until the heat is back."
)
HANDLING = tr(
    "In their own tub, lid taped, level and unshaken: who has eaten lately (a meal comes back), who"
    " carries eggs, and hatchlings. Everybody else: one animal a bag, knotted, its number on it;"
    " bags side by side in a box with air holes, nothing on top."
)
EGGS = tr("Eggs: the whole box, level, the mark up, never turned or shaken, kept warm and dark.")
AFTER = tr(
    "Smoke, burns, a limp animal, a meal brought up after the cold: ask a reptile vet the same"
    " day. Wash hands after each rack."
)
HEADS = (
    tr("order"),
    tr("who"),
    tr("how many"),
    tr("where"),
)
SHARES = (0.07, 0.28, 0.13, 0.52)
_PAIR = (
    tr("tub"),
    tr("name"),
    tr("weight"),
    tr("order, care"),
)
_PAIR_SHARES = (0.09, 0.16, 0.10, 0.15)
_WHO: Mapping[Order, str] = tr_table(
    {
        Order.EGGS: "eggs",
        Order.FED: "fed lately, in their tubs",
        Order.GRAVID: "with eggs, in their tubs",
        Order.HATCHLING: "hatchlings, in their tubs",
        Order.OTHERS: "everybody else, in bags",
        Order.APART: "quarantine: last, apart, things of their own",
    }
)
_ANIMALS = counted("animal", "animals")
_BAGS = {
    Carrier.TUB: counted("tub", "tubs"),
    Carrier.SMALL_BAG: counted("small bag", "small bags"),
    Carrier.BAG: counted("bag", "bags"),
    Carrier.LARGE_BAG: counted("large bag", "large bags"),
    Carrier.UNKNOWN: counted("bag", "bags"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Carried:
    """One animal. place: empty where it has no tub. caution: as the keeper wrote it."""

    place: str
    rack: str
    name: str
    weight_g: float | None
    order: Order
    carrier: Carrier
    caution: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class EggsLying:
    """Good eggs of a clutch that are still in. where: incubator and box, empty if not written."""

    clutch: str
    count: int
    where: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CarryFacts:
    """Everyone in the room in walking order, and the eggs."""

    printed: datetime
    eggs: Sequence[EggsLying]
    animals: Sequence[Carried]


def carry_out(facts: CarryFacts) -> Document:
    """The list as it is printed."""
    return Document(
        title=tr("Carry-out list: fire, power cut"),
        printed=plain(moment(facts.printed)),
        parts=(
            Words(words=FIRE, bold=True),
            Words(words=POWER),
            Table(heads=HEADS, rows=tuple(_orders(facts)), shares=SHARES),
            Facts(rows=tuple(_needed(facts))),
            Words(words=HANDLING),
            Words(words=EGGS),
            Words(words=AFTER),
            Blank(labels=(tr("Where to, and who has the key"), tr("Keeper, reptile vet"))),
            *_racks(facts.animals),
        ),
    )


def _orders(facts: CarryFacts) -> Iterator[tuple[str, ...]]:
    if facts.eggs:
        count = str(sum(each.count for each in facts.eggs))
        told = "; ".join(_eggs_words(each) for each in facts.eggs)
        yield (str(int(Order.EGGS)), _WHO[Order.EGGS], count, told)
    for order in list(Order)[1:]:
        those = [each for each in facts.animals if each.order is order]
        if those:
            yield (str(int(order)), _WHO[order], str(len(those)), _where(order, those))


def _eggs_words(eggs: EggsLying) -> str:
    where = eggs.where or tr("place not written")
    return tr("{clutch} ({count}): {where}", clutch=eggs.clutch, count=eggs.count, where=where)


def _where(order: Order, those: Sequence[Carried]) -> str:
    if order is Order.OTHERS:
        return tr("rack by rack, below")
    detail = Detail.TUBS if len(those) <= TUBS_MOST else Detail.ROWS
    return tubs_told([each.place or each.name for each in those], detail)


def _needed(facts: CarryFacts) -> Iterator[tuple[str, str]]:
    """How many bags of each size are needed, and of things for those apart."""
    apart = [each for each in facts.animals if each.order is Order.APART]
    rest = [each for each in facts.animals if each.order is not Order.APART]
    yield (tr("Needed"), _things(rest) or tr("nothing"))
    if apart:
        yield (tr("And for quarantine"), _things(apart))
    if bite := [each.place or each.name for each in facts.animals if each.caution]:
        yield (tr("Care in the hand"), _cautions(facts.animals, len(bite)))


def _things(animals: Sequence[Carried]) -> str:
    counts = Counter(each.carrier for each in animals)
    return "; ".join(_thing(carrier, counts[carrier]) for carrier in Carrier if counts[carrier])


def _thing(carrier: Carrier, count: int) -> str:
    bags = plain(_BAGS[carrier](count))
    if carrier is Carrier.SMALL_BAG:
        return tr("{bags}, up to {weight}", bags=bags, weight=plain(grams(SMALL_BAG_G.value)))
    if carrier is Carrier.BAG:
        return tr("{bags}, up to {weight}", bags=bags, weight=plain(grams(BAG_G.value)))
    if carrier is Carrier.UNKNOWN:
        return tr("{bags}, weight not known", bags=bags)
    return tr("tape for {tubs}", tubs=bags) if carrier is Carrier.TUB else bags


def _cautions(animals: Sequence[Carried], count: int) -> str:
    """Who bites, and where; of many only how many, the table has each."""
    if count > TUBS_MOST:
        return tr("{animals}, marked in the list", animals=plain(_ANIMALS(count)))
    told: dict[str, list[str]] = {}
    for each in animals:
        if each.caution:
            told.setdefault(each.caution, []).append(each.place or each.name)
    return "; ".join(f"{word}: {tubs_told(places)}" for word, places in told.items())


def _racks(animals: Sequence[Carried]) -> Iterator[Part]:
    racks: dict[str, list[Carried]] = {}
    for each in animals:
        racks.setdefault(each.rack, []).append(each)
    for rack, those in racks.items():
        if len(animals) > RACK_A_PAGE:
            yield PageEnd()
        name = tr("Rack {rack}", rack=rack) if rack else tr("Elsewhere")
        head = tr("{rack}: {animals}", rack=name, animals=plain(_ANIMALS(len(those))))
        yield Heading(words=head)
        if len(animals) > RACK_A_PAGE:
            yield Facts(rows=((tr("Needed"), _things(those)),))
        yield Table(heads=_PAIR * 2, rows=_pairs(those), shares=_PAIR_SHARES * 2, again=True)


def _pairs(animals: Sequence[Carried]) -> tuple[tuple[str, ...], ...]:
    """Two animals a line, the second half of the rack beside the first."""
    half = (len(animals) + 1) // 2
    cells = [_cells(each) for each in animals] + [("",) * len(_PAIR)] * (len(animals) % 2)
    return tuple(left + right for left, right in zip(cells[:half], cells[half:], strict=True))


def _cells(each: Carried) -> tuple[str, ...]:
    weight = "?" if each.weight_g is None else plain(grams(each.weight_g))
    care = f"{int(each.order)} {each.caution}".strip()
    return (each.place or "?", each.name, weight, care)
