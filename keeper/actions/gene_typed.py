"""Genes typed in one line: what an animal shows or is said to carry, and a gene's own name.

A gene must have been named for her species before an animal is read for it: a word alone, such
as that of a colour, may stand for several places on the chromosome.
"""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from keeper.actions.gene_names import (
    HOW,
    TOLD,
    gene_keyword,
    names_only_a_look,
    says,
    typed_word,
)
from keeper.actions.gene_words import gene_words
from keeper.actions.gene_world import gene_key
from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.actions.typed_entries import Typed
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneNamed, GeneRead, GeneTold, Inheritance
from keeper.husbandry.when import Happened, at_instant
from keeper.language import tr
from keeper.reports.words import word
from keeper.store import reading

GENE = tr(
    "a gene, and visual, normal, het, 66 %, super or clear: chalk visual; new chalk recessive"
    " names one"
)
NAMING = tr(
    "a name, then recessive, incomplete dominant or dominant, and what hides it: chalk recessive"
    " hidden by ember"
)
LOOKS = tr(
    "a gene, then the letters of those that show it: chalk a c f, or chalk none; the rest look"
    " normal. chalk visual a super c tells super forms"
)
CORRECTED = tr("A correction needs what is right and a reason: normal, seen in bad light.")
VERB, NAME_VERB = "gene", "gene named"
LETTERS_MOST = 40

_GENE = re.compile(rf"{gene_keyword('gene')}\s+(?=\S)", re.IGNORECASE)
_NEW = re.compile(rf"{gene_keyword('new')}\b\s*(.*)", re.IGNORECASE)
_HIDDEN = re.compile(rf"(.*?)[\s,;]*\b{gene_keyword('hidden by')}\s+(\S.*)", re.IGNORECASE)
_PERCENT = re.compile(
    rf"(\d{{1,3}}(?:[.,]\d+)?)\s*(?:%|{gene_keyword('percent')})(?:\s*het\b)?\s*(?:,\s*(.*))?",
    re.IGNORECASE,
)


def genes_named(keeping: Keeping, species: str | None = None) -> tuple[GeneNamed, ...]:
    """Every gene of the house or of *species*, the first named first, each as it stands."""
    entries = reading.all_of(keeping.book, GeneNamed)
    told = sorted(entries, key=lambda each: (each.event.happened, each.key.batch, each.key.seq))
    named = {gene_key(each.event.species, each.event.gene): each.event for each in told}
    return tuple(gene for (of, _), gene in named.items() if species in (None, of))


def gene_typed(
    animal: AnimalId,
    happened: Happened,
    text: str,
    *,
    named: Sequence[GeneNamed],
    species: str,
) -> Typed:
    """``chalk visual``, ``chalk 66 %``, ``chalk het, as bought``; ``new chalk recessive``.

    named: the genes of her species. The word *gene* may stand before it all.

    Raises:
        ValueError: the gene is not named, nothing is said of it, or it cannot be so.
    """
    told = _GENE.sub("", " ".join(text.split()), count=1)
    if new := _NEW.fullmatch(told):
        naming = naming_typed(species, happened, new[1], named=named)
        return Typed(verb=NAME_VERB, event=naming, what=gene_words(naming))
    gene, rest = gene_meant(told, named)
    said, percent, note_ = _said(rest, gene)
    _refuse_unfit(said, gene)
    event = GeneRead(
        animal=animal,
        happened=happened,
        note=note_ or None,
        gene=gene.gene,
        told=said,
        percent=percent,
    )
    return Typed(verb=VERB, event=event, what=gene_words(event))


def gene_corrected(entry: GeneRead, text: str, named: Sequence[GeneNamed]) -> tuple[GeneRead, str]:
    """The reading as it should have been, and the reason: ``normal, seen in bad light``.

    Raises:
        ValueError: its gene is not named any more, nothing is said, or no reason.
    """
    gene = next((each for each in named if _same(each.gene, entry.gene)), None)
    if gene is None:
        raise ValueError(_not_named(entry.gene, named, found=False))
    said, percent, reason = _said(" ".join(text.split()), gene)
    _refuse_unfit(said, gene)
    if not reason:
        raise ValueError(CORRECTED)
    return replace(entry, told=said, percent=percent), reason


def naming_typed(
    species: str, happened: Happened, text: str, *, named: Sequence[GeneNamed]
) -> GeneNamed:
    """``chalk recessive``, ``chalk recessive hidden by ember``.

    Raises:
        ValueError: no name, no inheritance, a name that only tells a look, or one that is named so.
    """
    told, hider = " ".join(text.split()), None
    if hidden := _HIDDEN.fullmatch(told):
        told, hider = hidden[1], hidden[2].strip()
    name, how = _name_and_how(told)
    _refuse_name(name)
    others = [each for each in named if not _same(each.gene, name)]
    hidden_by = None if hider is None else _hider(hider, others).gene
    gene = GeneNamed(
        happened=happened, gene=name, species=species, inheritance=how, hidden_by=hidden_by
    )
    before = next((each for each in named if _same(each.gene, name)), None)
    if before and (before.inheritance, before.hidden_by) == (how, hidden_by):
        raise ValueError(tr("{gene} is named so already.", gene=gene_words(before)))
    return gene


def name_gene(keeping: Keeping, species: str, text: str) -> Written:
    """Name a gene of *species* from now on, as one batch that can be taken back.

    Raises ValueError as ``naming_typed``.
    """
    happened = at_instant(keeping.now())
    gene = naming_typed(species, happened, text, named=genes_named(keeping, species))
    return note(keeping, NAME_VERB, gene, what=gene_words(gene))


def looks_typed(
    happened: Happened,
    text: str,
    *,
    young: Mapping[str, AnimalId],
    named: Sequence[GeneNamed],
) -> Typed:
    """``chalk a c f``: those show it, the rest of the clutch looks normal; ``chalk none``.

    ``chalk visual a c super f`` tells super forms too. young: every young of the clutch by its
    letter, its code or its name; one may stand there more than once.

    Raises:
        ValueError: the gene is not named, a letter is nobody's, or one is told of twice.
    """
    gene, rest = gene_meant(_GENE.sub("", " ".join(text.split()), count=1), named)
    if not young:
        raise ValueError(tr("No young of this clutch has a page yet; Y writes them in."))
    told = _looks(rest, gene, young)
    if not told and not says("none", rest):
        raise ValueError(
            tr("Which of them show {gene}? Their letters are right, or none.", gene=gene.gene)
        )
    animals = dict.fromkeys(young.values())
    events = [
        GeneRead(
            animal=animal, happened=happened, gene=gene.gene, told=told.get(animal, GeneTold.NORMAL)
        )
        for animal in animals
    ]
    for said in set(told.values()):
        _refuse_unfit(said, gene)
    shown = len(told)
    what = tr("{gene}: {shown} of {all} show it", gene=gene.gene, shown=shown, all=len(animals))
    return Typed(verb=VERB, event=events[0], also=tuple(events[1:]), what=what)


def gene_meant(text: str, named: Sequence[GeneNamed]) -> tuple[GeneNamed, str]:
    """The gene that *text* begins with, and what follows; its name may be cut short.

    Raises:
        ValueError: none of the named genes, with those there are.
    """
    typed = text.strip()
    for gene in sorted(named, key=lambda each: -len(each.gene)):
        rest = typed[len(gene.gene) :]
        if _same(typed[: len(gene.gene)], gene.gene) and not rest[:1].isalnum():
            return gene, rest.strip(" ,:")
    head, _, rest = typed.partition(" ")
    begun = [each for each in named if head and each.gene.casefold().startswith(head.casefold())]
    if len(begun) == 1:
        return begun[0], rest.strip(" ,:")
    raise ValueError(_not_named(head, begun or named, found=bool(begun)))


def _not_named(head: str, genes: Sequence[GeneNamed], *, found: bool) -> str:
    names = ", ".join(each.gene for each in genes)
    if found:
        return tr("{typed!r} may be {names}; type a little more.", typed=head, names=names)
    if not head and genes:
        return tr("Which gene? {names} are named for this species.", names=names)
    if not genes:
        return tr(
            "No gene is named for this species yet; new {typed} recessive names one.",
            typed=head or "chalk",
        )
    return tr(
        "{typed!r} is no gene named for this species; {names} are. new {typed} recessive names it.",
        typed=head,
        names=names,
    )


def _said(text: str, gene: GeneNamed) -> tuple[GeneTold, float | None, str]:
    """What is said, how likely, and the note."""
    if share := _PERCENT.fullmatch(text):
        told, percent = _shared(float(share[1].replace(",", ".")), gene)
        return told, percent, (share[2] or "").strip()
    word_, _, note_ = (part.strip() for part in text.partition(","))
    said = TOLD.get(word_.casefold()) or _begun(word_)
    if said is None:
        right = ", ".join((*map(typed_word, GeneTold), "66 %"))
        if not word_:
            raise ValueError(
                tr(
                    "What is seen or said of {gene}? {right} are right.",
                    gene=gene.gene,
                    right=right,
                )
            )
        raise ValueError(
            tr("{typed!r} says nothing of a gene; {right} are right.", typed=word_, right=right)
        )
    return said, None, note_


def _begun(typed: str) -> GeneTold | None:
    """The only word that begins so."""
    fits = {told for way, told in TOLD.items() if typed and way.startswith(typed.casefold())}
    return fits.pop() if len(fits) == 1 else None


def _shared(percent: float, gene: GeneNamed) -> tuple[GeneTold, float | None]:
    if percent == 100:
        return GeneTold.HET, None
    if not 0 < percent < 100:
        raise ValueError(
            tr(
                "{percent:g} % is no likelihood of one copy; over 0 and under 100 is right, or"
                " {clear} for none.",
                percent=percent,
                clear=typed_word(GeneTold.CLEAR),
            )
        )
    return GeneTold.POSSIBLE, percent


def _refuse_unfit(told: GeneTold, gene: GeneNamed) -> None:
    """Raises ValueError where the gene's inheritance leaves no such thing."""
    figures = {"gene": gene.gene, "how": word(gene.inheritance)}
    if told is GeneTold.SUPER and gene.inheritance is not Inheritance.INCOMPLETE:
        raise ValueError(
            tr(
                "{gene} is {how}: two copies of it have no look of their own; visual is right.",
                **figures,
            )
        )
    if told is GeneTold.POSSIBLE and gene.inheritance is not Inheritance.RECESSIVE:
        raise ValueError(
            tr("{gene} is {how} and shows with one copy: visual or normal is right.", **figures)
        )


def _name_and_how(text: str) -> tuple[str, Inheritance]:
    typed = text.strip(" ,;")
    for way in sorted(HOW, key=len, reverse=True):
        name = typed[: -len(way)]
        if typed.casefold().endswith(way) and not name[-1:].isalnum():
            return name.strip(" ,;:"), HOW[way]
    raise ValueError(
        tr("How is {typed!r} handed on? {right}.", typed=typed, right=NAMING)
        if typed
        else tr("A gene needs {right}.", right=NAMING)
    )


def _refuse_name(name: str) -> None:
    if not name or not any(letter.isalpha() for letter in name):
        raise ValueError(tr("A gene needs {right}.", right=NAMING))
    if len(name) > LETTERS_MOST:
        raise ValueError(
            tr("A gene's name has up to {most} characters, not {count}.", most=LETTERS_MOST,
               count=len(name))
        )  # fmt: skip
    if name.casefold() in TOLD or any(says(key, name) for key in ("gene", "new", "rest", "none")):
        raise ValueError(
            tr("{name!r} says what is seen of a gene; it cannot be its name.", name=name)
        )
    if names_only_a_look(name):
        raise ValueError(
            tr(
                "{name!r} is a look that several genes make, on different places: two that look"
                " alike may have normal young. Name the line too: {name}, Veld line.",
                name=name,
            )
        )


def _hider(typed: str, others: Sequence[GeneNamed]) -> GeneNamed:
    found = next((each for each in others if _same(each.gene, typed)), None)
    if found is None:
        names = ", ".join(each.gene for each in others) or tr("none")
        raise ValueError(
            tr(
                "{typed!r} can hide nothing: other genes named are {names}.",
                typed=typed,
                names=names,
            )
        )
    return found


def _looks(text: str, gene: GeneNamed, young: Mapping[str, AnimalId]) -> dict[AnimalId, GeneTold]:
    """Who shows it, by the words before the letters; ``all`` is everyone."""
    if says("none", text):
        return {}
    if says("every", text):
        return dict.fromkeys(young.values(), GeneTold.VISUAL)
    by_letter: dict[str, AnimalId] = {}
    for letter, animal in young.items():
        by_letter.setdefault(letter.casefold(), animal)
    told: dict[AnimalId, GeneTold] = {}
    said = GeneTold.VISUAL
    for part in filter(None, re.split(r"[\s,;/]+", text)):
        if part.casefold() in TOLD:
            said = TOLD[part.casefold()]
            continue
        meant = by_letter.get(part.casefold())
        if meant is None:
            letters = ", ".join(_one_each(young))
            raise ValueError(
                tr("{typed!r} is no young of this clutch; {letters} are.", typed=part,
                   letters=letters)
            )  # fmt: skip
        if told.setdefault(meant, said) is not said:
            raise ValueError(tr("{typed!r} is told of twice.", typed=part))
    return told


def _one_each(young: Mapping[str, AnimalId]) -> list[str]:
    """What each is called first, in their order."""
    first: dict[AnimalId, str] = {}
    for letter, animal in young.items():
        first.setdefault(animal, letter)
    return list(first.values())


def _same(one: str, other: str) -> bool:
    return gene_key("", one) == gene_key("", other)
