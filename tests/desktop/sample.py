"""A window with invented content, composed of the drawn pieces: for tests and for looking at."""

from __future__ import annotations

from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow
from keeper.desktop.places import PLACE_KEYS, KeyLine, Place
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawer_row import DrawerRow
from keeper.desktop.widgets.drawer_shape import FrontStyle
from keeper.desktop.widgets.foot import Written
from keeper.desktop.widgets.night_map import Night, NightMap, NightRack, Tally
from keeper.desktop.widgets.offer_panel import OfferPanel, OfferWords
from keeper.desktop.widgets.offers_strip import OffersStrip, PastOffer
from keeper.desktop.widgets.pad import KeyFace, KeyMeaning, PadLegend
from keeper.desktop.widgets.tile import TileState
from keeper.desktop.widgets.tub_front import TubFront
from keeper.desktop.widgets.words_line import HeadLine, Reason, Words

S = TileState
STATES = "TTRHL*-E--"
BY_LETTER = {
    "T": S.TAKEN,
    "A": S.ASSUMED,
    "P": S.PART,
    "R": S.REFUSED,
    "L": S.LEFT_IN,
    "N": S.NOT_OFFERED,
    "H": S.HOLD,
    "G": S.REGURGITATED,
    "-": S.NOT_REACHED,
    "E": S.EMPTY,
    "*": S.CURRENT,
}
NAMES = [
    "Tansy",
    "Bracken",
    "Orrin",
    "Quill",
    "Merrow",
    "Sorrel",
    "Hob",
    "Reed",
    "Linnet",
    "Wick",
    "Campion",
    "Ash",
    "Fern",
    "Sedge",
]
RACK_ROWS = {
    "A": ["TTLTRTTTHL", "HHHHHHHHHE", "TTTTTTTART", "TTTTATTTTT", "TTTTATTRTT", "TTATTTRTRT"],
    "B": ["TTATTTTTLT", "LALTTRPARA", "TTRHL*-E--", "----------", "----------"],
    "C": ["-----"] * 6,
    "D": ["----------"] * 6,
    "E": ["----------"] * 6,
    "F": ["----------"] * 3,
}
PAD = {
    "/": "other prey",
    "*": "mark",
    "-": "step back",
    "7": "not offered",
    "8": "regurg.",
    "9": "go to line",
    "+": "sweep rest of row",
    "5": "left in",
    "2": "part taken",
    "3": "passed on",
    "0": "refused",
    ".": "undo",
    "Enter": "taken seen",
}
FACES = {"5": KeyFace.RAISED, "0": KeyFace.RAISED, "Enter": KeyFace.SOLID}


def tubs(count: int = 10, current: int = 5) -> tuple[TubFront, ...]:
    """A row of *count* invented tubs, *current* pulled out."""
    corners = {0: "10 g", 1: "18 g", 3: "to 2 Dec"}
    cautions = {6: "BITES", 8: "OPAQUE", 12: "HALF SIZE"}
    states = (STATES.replace("*", "T") + "-" * 4)[:count]
    return tuple(
        TubFront(
            number=index + 1,
            name=NAMES[index],
            state=S.CURRENT if index == current else BY_LETTER[states[index]],
            corner=corners.get(index, ""),
            caution=cautions.get(index, ""),
        )
        for index in range(count)
    )


def night() -> Night:
    """An invented night half walked."""
    racks = tuple(
        NightRack(letter=letter, rows=tuple(tuple(BY_LETTER[c] for c in row) for row in rows))
        for letter, rows in RACK_ROWS.items()
    )
    tallies = (
        (S.TAKEN, 58, "taken seen"),
        (S.ASSUMED, 9, "assumed"),
        (S.REFUSED, 8, "refused"),
        (S.LEFT_IN, 6, "left in"),
        (S.HOLD, 11, "hold"),
        (S.EMPTY, 3, "empty"),
        (S.NOT_REACHED, 205, "not reached"),
    )
    return Night(
        racks=racks,
        current=(1, 2),
        tallies=tuple(Tally(state=s, count=n, words=w) for s, n, w in tallies),
        aside="rows in walking order, tubs downward",
        pace=("23 s a tub", "done about 23:59"),
    )


def offers() -> tuple[PastOffer, ...]:
    """Six invented offers."""
    rows = (
        (S.TAKEN, "14 Oct", "2 fuzzy", "8 g"),
        (S.REFUSED, "21 Oct", "1 hopper", "9 g"),
        (S.REFUSED, "28 Oct", "1 hopper", "9 g"),
        (S.TAKEN, "4 Nov", "2 fuzzy", "8 g"),
        (S.HOLD, "11 Nov", "opaque", ""),
        (S.TAKEN, "18 Nov", "2 fuzzy", "9 g"),
    )
    return tuple(PastOffer(state=s, date=d, prey=p, grams=g) for s, d, p, g in rows)


class RoundPage(QWidget):
    """The round as the drawn pieces make it, *count* tubs in the row."""

    def __init__(self, look: Look, count: int = 10, current: int = 5) -> None:
        super().__init__()
        self.look = look
        self.head = HeadLine(look)
        self.row = DrawerRow(look)
        self.pad = PadLegend(look)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addWidget(self.row, 1)
        where = [("rack", False), ("B", True), ("row", False), ("3", True), ("tub", False)]
        where.append((f"{current + 1} of {count}", True))
        self.head.show_words("Offer pass", where, ("95 of 300 walked", "205 not reached"))
        panel, map_ = OfferPanel(look), NightMap(look)
        panel.show_offer(sorrel())
        map_.show_night(night())
        self.row.set_panel(panel)
        self.row.set_below(map_)
        self.row.set_side(self._side())
        self.row.show_row(tubs(count, current), current, "rack B row 3")
        look.changed.connect(self._fit)
        self._fit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if not self.pad.take(event):
            super().keyPressEvent(event)

    def _fit(self) -> None:
        self.head.setVisible(not self.look.small)

    def _side(self) -> QWidget:
        side, look = QWidget(), self.look
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        strip = OffersStrip(look)
        strip.show_offers(offers())
        column.addWidget(strip)
        because = Reason(look)
        because.show_reason(
            "7 days since eaten, interval 7. 9\u00a0g is 11\u00a0% of 82\u00a0g empty. "
            "Two fuzzies, not one hopper: hopper refused 21 and 28 Oct. No holds."
        )
        column.addWidget(because, 1)
        self.pad.show_meanings(
            {key: KeyMeaning(words=w, face=FACES.get(key, KeyFace.PLAIN)) for key, w in PAD.items()}
        )
        column.addWidget(self.pad)
        return side


class WeighPage(QWidget):
    """A weigh-in row with values on its fronts."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.row = DrawerRow(
            look, style=FrontStyle.VALUE, panel_share=0.765, small_panel_share=0.765
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(HeadLine(look))
        column.addWidget(self.row, 1)
        values = (("Ingrid", "361 g"), ("Thora", "1,240 g"), ("Hesper", "398 g"))
        fronts = [
            TubFront(number=n + 1, name=name, state=S.TAKEN, value=value, note="written")
            for n, (name, value) in enumerate(values)
        ]
        fronts.append(TubFront(number=4, name="Maud", state=S.CURRENT, now="again"))
        fronts.append(TubFront(number=5, name="Alder", state=S.NOT_REACHED))
        pad = PadLegend(look)
        digits = {str(digit): KeyMeaning() for digit in range(10)}
        pad.show_meanings(
            digits
            | {
                "/": KeyMeaning(words="no weight"),
                "*": KeyMeaning(words="mark"),
                "-": KeyMeaning(words="step back"),
                "+": KeyMeaning(words="take off the bag"),
                ".": KeyMeaning(words="point"),
                "Enter": KeyMeaning(words="write", face=KeyFace.RAISED),
            }
        )
        self.row.set_side(pad)
        self.row.show_row(fronts, 3, "rack C row 2")


def sorrel() -> OfferWords:
    """The invented animal in the pulled-out tub."""
    return OfferWords(
        place="B3·6",
        name="Sorrel",
        who=("female", "house snake, 9 months"),
        offer="2 × fuzzy mouse",
        grams="9 g",
        caution="BITES",
        advice="tongs at full length, tub a hand’s width",
    )


def window(look: Look, count: int = 10, current: int = 5) -> MainWindow:
    """A main window over all nine places, the round and the weigh-in drawn, the rest plain."""
    makers = {"Round": lambda its: RoundPage(its, count, current), "Weigh-in": WeighPage}
    places = [
        Place(
            key=key,
            name=name,
            title=name,
            make=makers.get(name, lambda its, name=name: Words(its, Use.PAGE_NAME)),
            keys=(KeyLine(key="Enter", words="taken seen"), KeyLine(key="0", words="refused")),
        )
        for name, key in PLACE_KEYS.items()
    ]
    made = MainWindow(look, places)
    made.strip.show_clock("Night of Wed 25 Nov", "22:41")
    made.foot.show_written(
        Written(
            clock="22:40:51",
            place="B3·5 Merrow",
            what="left in, 1 hopper, 8 g",
            take_back=".  takes it back",
            reach="95 steps can be taken back",
        )
    )
    return made
