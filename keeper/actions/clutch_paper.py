"""The clutch record of a chosen clutch, made ready for the printer."""

from collections.abc import Iterator
from datetime import date, datetime

from keeper.actions.clutch_detail import ClutchDetail
from keeper.actions.clutch_genes import ClutchGenes, share_of
from keeper.actions.clutch_heat import LainHeat
from keeper.actions.entry_words import entry_words, paired_words
from keeper.actions.gene_pairing import eggs_words
from keeper.husbandry.care import Eggs, EggsPlaced
from keeper.language import tr
from keeper.reports.clutch_record import (
    GenesTold,
    HeatTold,
    RecordFacts,
    SireTold,
    YoungTold,
    clutch_record,
)
from keeper.reports.figures import day
from keeper.reports.paper_parts import Document
from keeper.reports.words import species_words
from keeper.rules.clutches import CAUTIONS, Balance
from keeper.rules.sires import ODDS_ALONE


def record_of(
    detail: ClutchDetail, printed: datetime, genes: ClutchGenes | None = None
) -> Document:
    """The record of the clutch that *detail* tells of. genes: what it may give, where known."""
    row, facts = detail.row, detail.row.facts
    out = sorted(facts.out_on)
    return clutch_record(
        RecordFacts(
            code=facts.name,
            dam=row.dam,
            species=f"{species_words(row.profile)}, {row.profile.scientific}",
            printed=printed,
            laid_on=row.laid_on,
            counts=tuple(_counts(row.balance, row.alive)),
            closes=row.balance.closes,
            eggs_in=row.balance.still_in > 0,
            mass_g=facts.laid.mass_g,
            pairings=tuple(_pairings(detail)),
            sires=tuple(
                SireTold(name=each.animal.called, odds=each.odds, because=each.because)
                for each in detail.sires
            ),
            written_sires=detail.written_sires,
            unknown=detail.unknown,
            pre_lay_on=detail.pre_lay_on,
            before_g=detail.before_g,
            after_g=detail.after_g,
            lay=tuple(stay.named for stay in row.stays),
            heat=heat_told(detail.heat),
            window=(row.window.first, row.window.last) if row.window else None,
            out_on=(out[0], out[-1]) if out else None,
            told=tuple(_told(detail)),
            young=tuple(
                YoungTold(
                    row=each.animal,
                    letter=each.letter,
                    hatch_g=each.hatch_g,
                    shed_on=each.shed_on,
                    ate_on=each.ate_on,
                )
                for each in detail.young
            ),
            cautions=(*CAUTIONS, ODDS_ALONE),
            genes=_genes(genes),
        )
    )


def _genes(genes: ClutchGenes | None) -> GenesTold | None:
    if genes is None or not (genes.looks or genes.sires or genes.contradictions):
        return None
    return GenesTold(
        on=genes.on,
        eggs=genes.eggs,
        looks=tuple(
            (look.words, share_of(look), eggs_words(look, genes.eggs), ", ".join(look.carries))
            for look in genes.looks
        ),
        sires=genes.sire_words,
        contradictions=genes.contradictions,
        inbreeding=genes.inbreeding,
    )


def heat_told(heat: LainHeat | None) -> HeatTold | None:
    """The heat of a clutch as the reports put it into words."""
    if heat is None:
        return None
    return HeatTold(
        since=heat.since,
        low_c=heat.low_c,
        mean_c=heat.mean_c,
        high_c=heat.high_c,
        read=len(heat.days),
    )


def _counts(told: Balance, alive: int) -> Iterator[tuple[str, int]]:
    yield tr("laid"), told.laid
    yield tr("slugs"), told.slugs
    yield tr("good", sense="eggs"), told.good
    yield tr("failed", sense="eggs"), told.failed
    yield tr("still in"), told.still_in
    yield tr("hatched"), told.hatched
    yield tr("dead before a number"), told.died
    yield tr("with a number"), told.numbered
    yield tr("alive"), alive


def _pairings(detail: ClutchDetail) -> Iterator[str]:
    for paired, mate in detail.pairings:
        told = paired_words(paired, mate)
        yield tr("{day} {what}", day=day(paired.happened.day), what=told)


def _told(detail: ClutchDetail) -> Iterator[tuple[date, str, str]]:
    """What was written of the eggs and where they were put, oldest first."""
    facts = detail.row.facts
    every: list[Eggs | EggsPlaced] = [*facts.told, *facts.placed]
    for each in sorted(every, key=lambda each: each.happened):
        yield each.happened.day, entry_words(each), each.note or ""
