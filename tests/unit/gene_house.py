"""A small invented house whose days pass: founders come, pair, lay, and their young are read."""

from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

from keeper.actions.gene_odds import HouseGenes, SpeciesGenes, house_genes
from keeper.actions.gene_told import told_of
from keeper.actions.gene_typed import gene_typed, genes_named, name_gene
from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.noting import note
from keeper.actions.recording import Newcomer, receive
from keeper.husbandry.animal import AnimalId, Sex, Status
from keeper.husbandry.events import Clutch, Moved, Paired, Stock
from keeper.husbandry.when import at_instant
from keeper.reports.figures import plain

SPECIES = "house_snake"
FIRST = date(2023, 1, 10)


@dataclass
class House:
    """now moves by ``on``; every entry is written on its own day, as keepers write."""

    path: Path
    at: datetime = field(default_factory=lambda: datetime.combine(FIRST, time(9), UTC))
    keys: dict[str, AnimalId] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.keeping: Keeping = new_keeping(self.path, station="s", now=lambda: self.at)

    def on(self, day: date) -> "House":
        assert day >= self.at.date()
        self.at = datetime.combine(day, time(9), UTC)
        return self

    def after(self, days: int) -> "House":
        return self.on(self.at.date() + timedelta(days=days))

    def founder(self, code: str, sex: Sex, place: str | None = None, **more) -> AnimalId:
        grown = {"hatched": self.at.date() - timedelta(days=1200), "sex": sex, "place": place}
        return self._come(code, **{**grown, "bought": True, **more})

    def young(self, dam: str, clutch: str, *letters: str, sire: str | None = None) -> None:
        for letter in letters:
            self._come(
                f"{clutch} {letter}",
                hatched=self.at.date(),
                dam=self.keys[dam],
                sire=self.keys[sire] if sire else None,
                clutch=clutch,
                name=letter,
            )

    def laid(self, dam: str, clutch: str, good: int = 8) -> None:
        happened = at_instant(self.at)
        note(
            self.keeping,
            "clutch",
            Clutch(animal=self.keys[dam], happened=happened, good=good, code=clutch),
        )

    def paired(self, dam: str, male: str, *, locked: bool = True) -> None:
        told = {"animal": self.keys[dam], "mate": self.keys[male], "locked": locked}
        note(self.keeping, "pair", Paired(happened=at_instant(self.at), **told))

    def bred(self, dam: str, male: str, clutch: str, *letters: str, written: bool = True) -> None:
        """Paired today, laid and hatched at the usual times."""
        self.paired(dam, male)
        self.after(50).laid(dam, clutch)
        self.after(62).young(dam, clutch, *letters, sire=male if written else None)

    def moved(self, who: str, place: str) -> None:
        event = Moved(animal=self.keys[who], happened=at_instant(self.at), place=place)
        note(self.keeping, "move", event)

    def sold(self, who: str) -> None:
        event = Stock(
            animal=self.keys[who], happened=at_instant(self.at), status=Status.SOLD, note="a school"
        )
        note(self.keeping, "standing", event)

    def name(self, text: str) -> None:
        name_gene(self.keeping, SPECIES, text)

    def reads(self, who: str, text: str) -> None:
        typed = gene_typed(
            self.keys[who],
            at_instant(self.at),
            text,
            named=genes_named(self.keeping, SPECIES),
            species=SPECIES,
        )
        note(self.keeping, typed.verb, typed.event, *typed.also, what=typed.what)

    def genes(self, as_at: date | None = None) -> SpeciesGenes:
        return self.house(as_at).species[SPECIES]

    def house(self, as_at: date | None = None) -> HouseGenes:
        return house_genes(self.keeping, as_at)

    def word(self, who: str, gene: str = "chalk", as_at: date | None = None) -> str:
        genes = self.genes(as_at)
        named = next(each for each in genes.named if each.gene == gene)
        told = told_of(genes, named, self.keys[who])
        return "" if told is None else plain(told.word)

    def _come(self, code: str, **more) -> AnimalId:
        newcomer = Newcomer(happened=at_instant(self.at), code=code, species=SPECIES, **more)
        _, (key,) = receive(self.keeping, [newcomer])
        self.keys[more.get("name") or code] = key
        self.keys[code] = key
        return key
