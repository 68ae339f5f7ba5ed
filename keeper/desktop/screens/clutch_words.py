"""Clutches put into faces: eggs, weeks, what is next, young, sires. Nothing is decided here."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING

from keeper.actions.clutch_paper import heat_told
from keeper.actions.clutch_rows import ClutchRow
from keeper.desktop.widgets.calendar_strip import Marks, Window
from keeper.desktop.widgets.clutch_list import CANDLE, FIRST_OUT
from keeper.desktop.widgets.clutch_panel import Paragraph
from keeper.desktop.widgets.clutch_row import ClutchFace, EggPart
from keeper.desktop.widgets.tile import FACES, TileState
from keeper.desktop.widgets.young_list import YoungFace
from keeper.language import tr, tr_table
from keeper.reports.clutch_record import fate_words, heat_words, narrow_sex, sire_words
from keeper.reports.figures import UNKNOWN, day, days, grams, span
from keeper.reports.words import because_text, sentence

if TYPE_CHECKING:
    from keeper.actions.clutch_detail import ClutchDetail, YoungRow
    from keeper.actions.clutch_genes import ClutchGenes

NO_YOUNG = tr("No young of it has a page yet; Y writes them in.")
NO_GENES = tr("No gene of the house is known of its parents; K on their pages writes one.")
NOT_PLACED = tr("Where its eggs lie is not written; I places them.")

_ENGLISH: Mapping[str, str] = {
    "no good egg": "no good egg",
    "every good egg failed": "all failed",
    "eggs do not add up": "the eggs do not add up",
    "never told what became of them": "closed: never told what became of them",
    "candle for veins": "candle for veins",
    "candle again": "candle again",
    "wait for the first slit": "first slit",
    "watch for the first slit": "look for the first slit",
    "past its pip window": "past its window",
    "out after the first slit": "the rest should be out",
    "young to be numbered": "young to be written in",
    "first sheds to come": "first sheds",
    "first meals to come": "first meals",
    "everything told of it": "closed",
}
_SHORT = tr_table(_ENGLISH)


def clutch_face(row: ClutchRow, on: date) -> ClutchFace:
    """The row as of *on*."""
    since, where, box = _since(row, on), *_where(row)
    marks = clutch_marks(row, on)
    parts = egg_parts(row)
    eggs = ", ".join(f"{part.count} {FACES[part.state].words}" for part in parts)
    dam = f"{row.dam.called}, {row.species}"
    laid = day(row.laid_on, on=on)
    said = f"{row.facts.name}, {dam}; {where} {box}; {laid}, {since}; {row.balance.laid}: {eggs};"
    return ClutchFace(
        code=row.facts.name,
        dam=dam,
        where=where,
        box=box,
        since=laid,
        days=since,
        laid=str(row.balance.laid),
        parts=parts,
        marks=marks,
        said=f"{said} {marks.told}; {marks.beneath}",
    )


def head_words(rows: Sequence[ClutchRow]) -> tuple[list[tuple[str, bool]], list[str]]:
    """How many are open, and how many eggs are in: the parts of a head line, left and right."""
    still_open = [row for row in rows if row.is_open]
    number = tr("{number} of {last}", number=len(still_open), last=len(rows))
    eggs = sum(max(0, row.balance.still_in) for row in still_open)
    parts = [(number, True), (tr("open; those that end first, first"), False)]
    return parts, [tr("{count} good eggs are in", count=eggs)]


def egg_parts(row: ClutchRow) -> tuple[EggPart, ...]:
    """The eggs by what became of them, in the order of the balance; those of none are left out."""
    told = row.balance
    if not told.closes:
        return (EggPart(state=TileState.EGG_WRONG, count=told.laid),)
    counts = (
        (TileState.EGG_SLUG, told.slugs),
        (TileState.EGG_FAILED, told.failed),
        (TileState.EGG_IN, told.still_in),
        (TileState.EGG_HATCHED, told.hatched - row.alive),
        (TileState.EGG_ALIVE, row.alive),
    )
    return tuple(EggPart(state=state, count=count) for state, count in counts if count)


def clutch_marks(row: ClutchRow, on: date) -> Marks:
    """Laying, candle days, the window as it is now, the first out, and what is next in words."""
    figures, laid_on = row.profile.clutch, row.laid_on
    lettered = []
    if row.balance.still_in > 0 and row.hatched_on is None and row.is_open:
        for figure in (figures.candle_days_least, figures.candle_again_days):
            lettered.append((laid_on + timedelta(days=round(figure.value)), CANDLE))
    if row.hatched_on is not None:
        lettered.append((row.hatched_on, FIRST_OUT))
    return Marks(
        laid=(laid_on,),
        lettered=tuple(lettered),
        window=_window(row),
        told=step_words(row, on),
        beneath=_beneath(row, on),
    )


def step_words(row: ClutchRow, on: date) -> str:
    """What is next, with its days where they are known."""
    step, told = row.step, _SHORT[row.step.why.why]
    if step.first is None or step.last is None:
        return told
    first, last = day(step.first, on=step.last), day(step.last, on=on)
    when = span(first, last) if step.first != step.last else last
    return tr("{what} {when}", what=told, when=when)


def paragraphs(
    row: ClutchRow,
    detail: ClutchDetail | None,
    genes: ClutchGenes | None = None,
    *,
    genes_first: bool = False,
) -> Iterator[Paragraph]:
    """What is next and why, the heat it lay in, who may have sired it, and what it may give."""
    if genes is not None and genes.contradictions:
        yield Paragraph(head=tr("Cannot all be true"), words=" ".join(genes.contradictions))
    if genes_first:
        yield from _expected(genes) or [Paragraph(head=tr("Expected young"), words=NO_GENES)]
        yield from _of_sires(detail, genes)
    why = (row.step.why, *(row.window.because if row.window else ()))
    yield Paragraph(head=tr("Next"), words=because_text(why))
    heat = detail.heat if detail else row.heat
    lain = NOT_PLACED
    if row.stays:
        there = row.stays[-1].named
        lain = tr("{place}: {heat}.", place=there, heat=heat_words(heat_told(heat)))
    yield Paragraph(head=tr("Incubator"), words=lain)
    if not genes_first:
        yield from _of_sires(detail, genes)
        yield from _expected(genes)


def _of_sires(detail: ClutchDetail | None, genes: ClutchGenes | None) -> Iterator[Paragraph]:
    if detail is not None:
        yield Paragraph(head=tr("Sires, as odds"), words=_sires(detail, genes))


def _expected(genes: ClutchGenes | None) -> list[Paragraph]:
    if genes is None or not (genes.looks or genes.inbreeding):
        return []
    told = " ".join(part for part in (genes.expected_words, genes.inbreeding) if part)
    return [Paragraph(head=tr("Expected young"), words=told)]


def young_face(young: YoungRow, on: date) -> YoungFace:
    """One line of the young."""
    row = young.animal
    cells = (
        young.letter or UNKNOWN,
        row.code,
        grams(young.hatch_g) if young.hatch_g is not None else UNKNOWN,
        grams(young.now_g) if young.now_g is not None else UNKNOWN,
        narrow_sex(row.sex),
        day(young.shed_on, on=on) if young.shed_on else UNKNOWN,
        day(young.ate_on, on=on) if young.ate_on else UNKNOWN,
        str(young.kept),
        fate_words(row),
    )
    said = tr(
        "{letter}, {number}: hatched at {hatch}, now {now}, {sex}; first shed {shed}, first meal"
        " {meal}, {kept} kept; {fate}",
        **dict(
            zip(
                ("letter", "number", "hatch", "now", "sex", "shed", "meal", "kept", "fate"),
                cells,
                strict=True,
            )
        ),
    )
    return YoungFace(cells=cells, said=said)


def _where(row: ClutchRow) -> tuple[str, str]:
    """Incubator and box while eggs are in; after that, and before, the tub of the dam."""
    if row.lies is not None:
        box = tr("box {box}", box=row.lies.box) if row.lies.box else ""
        return row.lies.place, box
    tub = row.dam.place or UNKNOWN
    if row.balance.still_in > 0 and row.is_open:
        return UNKNOWN, tr("dam in {tub}", tub=tub)
    return "", tr("dam in {tub}", tub=tub)


def _since(row: ClutchRow, on: date) -> str:
    if row.hatched_on is not None:
        return tr("out {day}", day=day(row.hatched_on, on=on))
    return days((on - row.laid_on).days)


def _window(row: ClutchRow) -> Window | None:
    """Outlined the usual days, dark what the heat says of them."""
    window = row.window
    if window is None or not row.is_open or row.hatched_on is not None:
        return None
    low, high = min(window.usual[0], window.first), max(window.usual[1], window.last)
    if window.read == 0:
        return Window(on=None, low=low, high=high, half_low=low, half_high=low)
    return Window(on=None, low=low, high=high, half_low=window.first, half_high=window.last)


def _beneath(row: ClutchRow, on: date) -> str:
    reader = _BENEATH.get(row.step.why.why)
    return reader(row, on) if reader else ""


def _by_heat(row: ClutchRow, on: date) -> str:
    if row.heat is None or row.window is None or row.window.read == 0:
        return tr("the usual days of her kind; no heat was read")
    return tr("by its heat, read on {read} days", read=row.window.read)


def _still_in(row: ClutchRow, on: date) -> str:
    return tr("{count} still in", count=row.balance.still_in)


def _of_young(row: ClutchRow, on: date) -> str:
    return tr("{count} of {all} young", count=row.step.why.figures["count"], all=row.balance.lived)


def _laid_to_out(row: ClutchRow, on: date) -> str:
    if row.hatched_on is None:
        return ""
    return tr("out after {days}", days=days((row.hatched_on - row.laid_on).days))


_BENEATH: Mapping[str, Callable[[ClutchRow, date], str]] = {
    "wait for the first slit": _by_heat,
    "watch for the first slit": _by_heat,
    "past its pip window": lambda _row, _on: tr("check its heat; leave the eggs closed"),
    "candle for veins": lambda _row, _on: tr("top side up, never turned"),
    "candle again": lambda _row, _on: tr("top side up, never turned"),
    "out after the first slit": _still_in,
    "first sheds to come": _of_young,
    "first meals to come": _of_young,
    "young to be numbered": _of_young,
    "everything told of it": _laid_to_out,
}


def _sires(detail: ClutchDetail, genes: ClutchGenes | None) -> str:
    named = ", ".join(detail.written_sires)
    written = tr("On the young’s pages: {names}.", names=named) if named else ""
    looks = ""
    if genes is not None and genes.sires:
        looks = tr("With that and the looks of the young: {odds}.", odds=genes.sire_words)
    if not detail.sires:
        return " ".join(part for part in (sentence(detail.unknown), written, looks) if part)
    told = [sire_words(each.animal.called, each.odds, each.because) for each in detail.sires]
    return " ".join(part for part in (*told, written, looks) if part)
