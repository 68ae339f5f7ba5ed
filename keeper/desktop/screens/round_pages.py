"""A walk put together as a page: the tub at the cursor, or the end of a pass."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import datetime

from keeper.actions.keeping import Keeping
from keeper.actions.past_nights import PastNight
from keeper.actions.rounds import Walk
from keeper.actions.tubs import Prey, Tub, offers_before, regurgitated_days
from keeper.desktop.screens.rack_row import tub_words
from keeper.desktop.screens.round_asking import Sweep
from keeper.desktop.screens.round_deeds import Asking
from keeper.desktop.screens.round_faces import (
    caution_of,
    offer_shown,
    past_offers,
    row_shown,
)
from keeper.desktop.screens.round_input import CHECK_LEGEND, OFFER_LEGEND
from keeper.desktop.screens.round_learning import NO_ASIDE, Aside, aside_of
from keeper.desktop.screens.round_night import NightBoard, pace_words
from keeper.desktop.screens.round_quiet import night_words
from keeper.desktop.screens.round_view import WalkFace
from keeper.desktop.widgets.offer_panel import OfferWords
from keeper.desktop.widgets.offers_strip import PastOffer
from keeper.desktop.widgets.tile import TileState
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import is_source, tr
from keeper.reports.words import because_text

RAISED = frozenset({"0", "5"})


@dataclass(slots=True, kw_only=True)
class Standing:
    """Where the keeper stands: the walk, its map, and what is typed but not written.

    looked: how many tubs the check pass had to look at. again: a look into a closed round.
    aside: what the tub at the cursor asks beside its meal, as it was shown last.
    """

    walk: Walk
    board: NightBoard
    times: list[datetime]
    stops: int
    profiles: dict[str, SpeciesProfile] = field(default_factory=dict)
    prey: Prey | None = None
    last_prey: Prey | None = None
    looked: int = 0
    again: bool = False
    aside: Aside = NO_ASIDE

    def profile(self, keeping: Keeping, tub: Tub) -> SpeciesProfile:
        """The profile of the animal in *tub*, looked up once a species."""
        species = tub.animal.species
        if species not in self.profiles:
            self.profiles[species] = keeping.profile(tub.animal)
        return self.profiles[species]

    @property
    def not_reached(self) -> int:
        return self.board.count(TileState.NOT_REACHED)

    @property
    def unproved(self) -> int:
        return self.board.count(TileState.ASSUMED) + self.board.count(TileState.LEFT_IN)

    @property
    def waiting(self) -> int:
        return self.unproved if self.walk.checking else self.not_reached

    @property
    def banner(self) -> str:
        """What stays in sight while a night that is over is entered."""
        return self.walk.banner if isinstance(self.walk, PastNight) else ""

    @property
    def name(self) -> str:
        if self.again:
            return tr("Morning look") if self.walk.checking else tr("Night that is over")
        return tr("Check pass") if self.walk.checking else tr("Offer pass")


def standing(walk: Walk, *, again: bool = False) -> Standing:
    """A walk just taken up."""
    written = sorted(t.offer.event.happened.at for t in walk.tubs if t.offer is not None)
    return Standing(
        walk=walk,
        board=NightBoard(walk.tubs),
        times=[] if again else written[-40:],
        stops=sum(tub.walked for tub in walk.tubs),
        again=again,
    )


def walk_face(
    keeping: Keeping, here: Standing, asking: Asking | None, *, small: bool, now: datetime
) -> WalkFace:
    """The whole page as it stands."""
    tub = here.walk.current
    face = _tub_face(keeping, here, tub, asking) if tub else _end_face(keeping, here)
    pace, ends = pace_words(here.times, here.waiting, now)
    right = _right(here)
    told = tr("{walk}: {done}", walk=_within(here.name), done=right[0])
    if tub:
        walked = {"walk": _within(here.name), "line": str(tub.line), "done": right[0]}
        told = tr("{walk}, line {line}: {done}", **walked)
    aside = ", ".join(part for part in (told, ends) if part)
    night = here.board.night(
        here.walk.cursor,
        aside=aside if small else tr("rows in walking order, tubs downward"),
        pace=("", "") if small else pace,
    )
    face = replace(face, night=night, right=right, banner=here.banner)
    if asking is None:
        return face
    words = replace(face.words, caution=asking.word, advice=asking.advice)
    because = getattr(asking, "because", face.because)
    return replace(face, words=words, legend=asking.legend, raised=frozenset(), because=because)


def _within(told: str) -> str:
    """As it stands within a line; in other languages than the source a noun keeps its capital."""
    return told.lower() if is_source() else told


def _tub_face(keeping: Keeping, here: Standing, tub: Tub, asking: Asking | None) -> WalkFace:
    walk, profile = here.walk, here.profile(keeping, tub)
    here.aside = aside_of(keeping, walk, tub)
    row = walk.row_of(tub.line)
    profiles = {each.plan.animal: here.profile(keeping, each) for each in row}
    others = asking.others if isinstance(asking, Sweep) else {}
    shown = row_shown(row, tub.line, profiles, others)
    rack, number = tub.row
    where = (
        (tr("rack"), False),
        (rack, True),
        (tr("row", sense="of tubs"), False),
        (str(number), True),
        (tr("tub"), False),
    )
    place = (tub_words([each.plan.place for each in row], row.index(tub)), True)
    line = ((tr("line", sense="of a sheet"), False), (str(tub.line), True))
    return WalkFace(
        head=here.name,
        where=(*where, place, *line) if number else ((tr("place"), False), (rack, True), *line),
        right=(),
        row=shown,
        words=_panel(offer_shown(tub, profile, here.prey), here.aside),
        past=_past(keeping, tub, profile, walk),
        none_yet=tr("no offer in the book yet"),
        because=_because(tub, profile, here.aside),
        night=here.board.night(None, pace=("", "")),
        legend=CHECK_LEGEND if walk.checking else OFFER_LEGEND | here.aside.legend,
        raised=RAISED,
    )


def _panel(words: OfferWords, aside: Aside) -> OfferWords:
    if words.caution:
        return words
    caution, advice = aside.caution
    return replace(words, caution=caution, advice=advice or words.advice)


def _because(tub: Tub, profile: SpeciesProfile, aside: Aside) -> str:
    if tub.brought_up:
        return tr("Regurgitation found tonight: {caution}.", caution=caution_of(tub, profile)[1])
    plan = because_text(tub.because, tub.animal.sex)
    return f"{aside.words} {plan}" if aside.words else plan


def _past(keeping: Keeping, tub: Tub, profile: SpeciesProfile, walk: Walk) -> tuple[PastOffer, ...]:
    offers = offers_before(keeping, tub)
    return past_offers(offers, regurgitated_days(keeping, tub), profile, walk.night)


def _end_face(keeping: Keeping, here: Standing) -> WalkFace:
    walk = here.walk
    last = walk.tubs[max((t.line for t in walk.tubs if t.offer), default=1) - 1]
    row = walk.row_of(last.line)
    profiles = {each.plan.animal: here.profile(keeping, each) for each in row}
    checks = here.unproved > 0 and not walk.checking
    return WalkFace(
        head=here.name,
        where=((tr("at its end"), False),),
        right=(),
        row=row_shown(row, None, profiles, {}),
        words=_end_words(here, checks),
        past=(),
        none_yet=tr("the walk is at its end"),
        because=_end_reason(here, checks),
        night=here.board.night(None, pace=("", "")),
        legend=_end_legend(here, checks),
    )


def _end_words(here: Standing, checks: bool) -> OfferWords:
    if checks:
        offer = tr("Enter begins the check pass")
    else:
        offer = tr("Enter ends the look") if here.again else tr("Enter closes the round")
    caution = ""
    if here.not_reached and not here.again:
        caution = tr("{count} NOT REACHED", count=here.not_reached)
    unproved = tr("every tub looked at")
    if here.unproved:
        unproved = tr("{count} left in or assumed", count=here.unproved)
    return OfferWords(
        place=tr("End"),
        name=_within(here.name),
        who=(tr("night of"), night_words(here.walk.night)),
        offer=offer,
        caution=caution,
        advice=unproved,
    )


def _end_reason(here: Standing, checks: bool) -> str:
    if checks:
        if here.again:
            return tr(
                "The check pass looks only where prey was left in or taken was assumed: gone, or"
                " still there and removed. 0 ends the look without it."
            )
        return tr(
            "The check pass looks only where prey was left in or taken was assumed: gone, or still"
            " there and removed. 0 closes the round without it."
        )
    return tr("What was not reached stays due. What is still left in waits for the morning look.")


def _end_legend(here: Standing, checks: bool) -> dict[str, str]:
    words = {"-": tr("step back"), "9": tr("go to line"), ".": tr("undo")}
    end = tr("end the look") if here.again else tr("close the round")
    return words | ({"0": end, "Enter": tr("begin check pass")} if checks else {"Enter": end})


def _right(here: Standing) -> tuple[str, ...]:
    if here.walk.checking:
        return (
            tr("{count} of {all} looked at", count=here.looked - here.unproved, all=here.looked),
            tr("{count} to look at", count=here.unproved),
        )
    return (
        tr("{count} of {all} walked", count=here.stops - here.not_reached, all=here.stops),
        tr("{count} not reached", count=here.not_reached),
    )
