"""What the place of lines draws: letters, looks of a pair, the table of proving, and as text."""

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QColor

from keeper.desktop.look import Look
from keeper.desktop.widgets.line_list import LineLegend
from keeper.desktop.widgets.odds_list import OddsHead
from keeper.desktop.widgets.pair_sheet import LookBar, PairFace, PairSheet
from keeper.desktop.widgets.proof_table import MOST_ROWS, ProofFace, ProofTable
from keeper.desktop.widgets.tile import FACES, LINES, ODDS

LIGHTS = {"day": False, "red lamp": True}


@pytest.fixture(params=LIGHTS.values(), ids=LIGHTS)
def look(qapp, request):
    made = Look(red_lamp=request.param)
    made.fit(QSizeF(1440, 900), 96)
    return made


def drawn(widget, qtbot, width=600, height=260):
    qtbot.addWidget(widget)
    widget.resize(width, height)
    return widget.grab().toImage()


def bars(count):
    return tuple(
        LookBar(share=1 / count, figure=f"{n} %", words=f"look {n}", carries="66 % het")
        for n in range(count)
    )


def filled(image, colour, rows):
    """Px of *colour* in *rows* of *image*."""
    wanted = QColor(colour).rgb()
    return sum(image.pixel(x, y) == wanted for y in rows for x in range(image.width()))


def test_every_letter_of_the_place_means_one_thing_and_the_legend_says_each(look, qtbot):
    legend = LineLegend(look)
    legend.show_note("A note.")
    states = set(LINES) | set(ODDS)
    letters = [FACES[state].letter for state in states]

    assert len(letters) == len(set(letters))
    for state in states:
        assert f"{FACES[state].letter} {FACES[state].words}" in legend.text()
    assert legend.text().endswith("A note.")


def test_a_bar_is_as_long_as_its_share_and_hollow_where_no_gene_is_seen(look, qtbot):
    sheet = PairSheet(look)
    shown = LookBar(share=0.75, figure="75 %", words="chalk")
    plain = LookBar(share=0.25, figure="25 %", words="normal-looking", shows=False)
    fill = look.palette.colour("fill2")

    sheet.show_face(PairFace(head="a", bars=(shown,)))
    long = filled(drawn(sheet, qtbot), fill, range(60))
    sheet.show_face(PairFace(head="a", bars=(LookBar(share=0.25, figure="", words="x"),)))
    short = filled(sheet.grab().toImage(), fill, range(60))
    sheet.show_face(PairFace(head="a", bars=(plain,)))
    hollow = filled(sheet.grab().toImage(), fill, range(60))

    assert long == pytest.approx(3 * short, rel=0.06)
    assert short > 100
    assert hollow == 0


def test_looks_that_have_no_room_are_counted_and_told_in_full_all_the_same(look, qtbot):
    sheet = PairSheet(look)
    sheet.show_face(PairFace(head="Ash × Dun", bars=bars(30), sentences=("One or more.",)))
    tall = drawn(sheet, qtbot, height=1000)
    sheet.show_face(PairFace(head="Ash × Dun", bars=bars(2), sentences=("One or more.",)))
    assert "look 1" in sheet.text() and "One or more." in sheet.text()
    sheet.show_face(PairFace(head="Ash × Dun", bars=bars(30), sentences=("One or more.",)))
    sheet.resize(600, 140)
    cut = sheet.grab().toImage()

    assert all(f"look {n}" in sheet.text() for n in range(30))
    ink = look.palette.colour("ink")
    assert 0 < filled(cut, ink, range(cut.height())) < filled(tall, ink, range(tall.height()))


def test_the_table_of_proving_is_as_high_as_its_rows_and_hidden_without_any(look, qtbot):
    table = ProofTable(look)
    row = ("Fen 66 % het", "Dun", "50 %", "33 %", "11 %", "3 %", "6")
    heads = ("possible het", "with", "1", "2", "4", "6", "under 5 %")

    def high(count):
        rows = (row,) * count
        said = tuple(f"row {n}" for n in range(count))
        table.show_face(ProofFace(over="left", heads=heads, rows=rows, said=said))
        return table.sizeHint().height()

    qtbot.addWidget(table)
    assert high(1) < high(3) < high(MOST_ROWS) == high(MOST_ROWS + 20)
    assert f"row {MOST_ROWS + 19}" in table.text()
    drawn(table, qtbot)
    high(0)
    assert table.isHidden()


def test_a_sentence_stands_in_the_place_of_heads_where_there_are_no_rows(look, qtbot):
    head = OddsHead(look)
    head.show_heads(("place", "animal", "sex", "told"), "", 10)
    assert head.text() == "place, animal, sex, told"
    assert filled(drawn(head, qtbot, height=40), look.palette.colour("ink"), range(40)) == 0
    head.show_heads(("place", "animal", "sex", "told"), "Nobody carries it.", 10)

    assert head.text() == "Nobody carries it."
    image = drawn(head, qtbot, height=40)
    assert filled(image, look.palette.colour("ink"), range(40)) > 8
