"""What the papers of one animal say: the card for a buyer and the summary for a vet."""

from collections.abc import Sequence
from datetime import date, timedelta
from statistics import median

from keeper.actions.animal_page import AnimalPage, Weighed
from keeper.actions.care_words import care_words
from keeper.actions.colour_card import colour_words
from keeper.actions.day_of_life import day_of_life
from keeper.actions.gene_page import GenesOfAnimal, genes_of_one, statement_of
from keeper.actions.keeping import Keeping
from keeper.actions.life_lanes import Counting
from keeper.husbandry.animal import Status
from keeper.husbandry.care import Dose, FaecalTest, Medicine
from keeper.husbandry.events import (
    AnimalEvent,
    HoldKind,
    HoldSet,
    Remark,
    RemarkKind,
    ShedSign,
    ShedStage,
    Stock,
)
from keeper.language import tr
from keeper.reports.buyers_card import CardFacts, buyers_card
from keeper.reports.figures import GAP, both, centile, day, plain, z_value
from keeper.reports.paper_parts import Document
from keeper.reports.vet_summary import (
    EXPOSURE_DAYS,
    HEAT_DAYS,
    HeatFacts,
    VetFacts,
    WeightLine,
)
from keeper.store import reading

GENES = "genes"
"""A note that begins so is the keeper's statement of genes, odds and all."""

_ORDERED = frozenset({HoldKind.VET, HoldKind.QUARANTINE, HoldKind.STUCK_SHED, HoldKind.OTHER})
_ARRIVED = frozenset({HoldKind.NEW_ARRIVAL, HoldKind.QUARANTINE})


def buyers_card_of(
    keeping: Keeping, page: AnimalPage, genes: GenesOfAnimal | None = None
) -> Document:
    """The card for whoever takes this animal. genes: read already; else they are read now."""
    genes = genes or genes_of_one(keeping, page.animal.animal)
    life, beside = page.life, page.beside
    hot, night = _heat(page)
    return buyers_card(
        CardFacts(
            row=page.animal,
            profile=page.profile,
            on=page.today,
            printed=keeping.now(),
            sexings=beside.sexings,
            parents=beside.parents,
            offers=life.offers,
            weighed=[(w.day, w.scale_g, _how(w)) for w in page.weighed],
            sheds=sheds_of(life.signs),
            genes=[r for r in life.remarks if _of_genes(r)],
            reckoned=statement_of(genes) if genes else None,
            seen=[r for r in life.remarks if r.kind in _SEEN],
            hot_c=(hot.low_c, hot.high_c) if hot else None,
            night_c=(night.low_c, night.high_c) if night else None,
            next_offer_on=page.plan.due_on,
            colour=colour_words(page),
        )
    )


def vet_facts_of(keeping: Keeping, page: AnimalPage) -> VetFacts:
    """What a vet asks first."""
    life = page.life
    told = day_of_life(page, page.today)
    counted = told.counted(Counting.COUNTED)
    hot, night = _heat(page)
    return VetFacts(
        row=page.animal,
        profile=page.profile,
        on=page.today,
        printed=keeping.now(),
        sexings=page.beside.sexings,
        offers=life.offers,
        weights=[weight_line(page, weighed) for weighed in page.weighed],
        regurgitations=life.regurgitations,
        sheds=sheds_of(life.signs),
        remarks=[r for r in life.remarks if r.kind not in _ELSEWHERE],
        holds=[hold for hold in life.holds if hold.kind in _ORDERED],
        counted=counted,
        excused=len(told.refused) - counted,
        hot=hot,
        night=night,
        company=_company(page),
        arrivals=_arrivals(keeping, page),
        treated=[*cared(page, Medicine), *cared(page, Dose)],
        faecals=cared(page, FaecalTest),
    )


def cared(page: AnimalPage, kind: type[AnimalEvent]) -> list[str]:
    """Entries of care of that kind with their notes and days, newest first."""
    events = [event for event in page.life.care if isinstance(event, kind)]
    words = (", ".join(filter(None, (care_words(e), e.note, day(e.happened.day)))) for e in events)
    return [plain(told) for told in words][::-1]


_SEEN = frozenset({RemarkKind.MITES, RemarkKind.WOUND, RemarkKind.BREATHING, RemarkKind.FAECES})


_ELSEWHERE = frozenset({RemarkKind.CAUTION, RemarkKind.PHOTO})
"""The caution has its own line, and a picture is not on the page."""


def _of_genes(remark: Remark) -> bool:
    return remark.kind is RemarkKind.NOTE and remark.text.casefold().startswith(GENES)


def sheds_of(signs: Sequence[ShedSign]) -> list[ShedSign]:
    """Those of *signs* that are sheds."""
    return [sign for sign in signs if sign.stage is ShedStage.SHED]


def _how(weighed: Weighed) -> str:
    return tr("empty", sense="weight") if weighed.fasted else tr("within digestion")


def weight_line(page: AnimalPage, weighed: Weighed) -> WeightLine:
    """One weighing as it is printed."""
    stands = page.standing(weighed)
    against = plain(f"z{GAP}{both(z_value(stands.z), centile(stands.centile))}") if stands else ""
    return WeightLine(
        day=weighed.day,
        scale_g=weighed.scale_g,
        empty_g=weighed.empty_g,
        how=_how(weighed),
        against=against,
    )


def _heat(page: AnimalPage) -> tuple[HeatFacts | None, HeatFacts | None]:
    """Hot end and night low where she stood, over the last weeks."""
    since = page.today - timedelta(days=HEAT_DAYS - 1)
    near = [heat for heat in page.beside.heat if heat.day >= since]
    hot = [heat.hot_c for heat in near if heat.hot_c is not None]
    night = [heat.night_c for heat in near if heat.night_c is not None]
    return heat_figures(hot), heat_figures(night)


def heat_figures(read_c: Sequence[float]) -> HeatFacts | None:
    """Lowest, middle and highest of one reading a day; None where there is none."""
    if not read_c:
        return None
    middle = round(median(read_c), 1)
    return HeatFacts(days=len(read_c), low_c=min(read_c), mid_c=middle, high_c=max(read_c))


def _since(page: AnimalPage) -> date:
    return page.today - timedelta(days=EXPOSURE_DAYS)


def _company(page: AnimalPage) -> list[str]:
    """Who shared a tub with her within the days that matter."""
    near = [m for m in page.beside.mates if m.until is None or m.until >= _since(page)]
    return [plain(tr("{name} from {day}", name=m.name, day=day(m.since))) for m in near]


def _arrivals(keeping: Keeping, page: AnimalPage) -> list[str]:
    """Animals that came into the room, by the holds and the stock entries that say so."""
    held = reading.on_days(keeping.book, HoldSet, _since(page), page.today)
    stock = reading.on_days(keeping.book, Stock, _since(page), page.today)
    came = {h.animal: h.happened.day for h in held if h.kind in _ARRIVED}
    came |= {s.animal: s.happened.day for s in stock if s.status is Status.KEPT}
    rows = {animal: reading.animal_now(keeping.book, animal) for animal in came}
    told = [(came[a], row) for a, row in rows.items() if row and a != page.animal.animal]
    told.sort(key=lambda pair: (pair[0], pair[1].code), reverse=True)
    return [plain(f"{row.code} {row.place or ''} {day(when)}") for when, row in told]
