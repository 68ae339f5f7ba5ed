"""The papers of one animal by its keys, each read back out of its PDF."""

from contextlib import closing
from datetime import date

import numpy as np
import pypdfium2
import pypdfium2.raw
import pytest
from animal_window import CONTROL, SHIFT, Desk, K, desk, keeping
from contrasts import contrast
from life_sample import THORA, WREN, a_book, key_of, of_ten_years
from PySide6.QtGui import QPdfWriter

from keeper.actions.noting import note
from keeper.actions.tub_labels import label_number
from keeper.desktop.paper.desk import NO_PRINTER, NOTHING_YET, PaperDesk
from keeper.desktop.paper.page import MARGIN_MM
from keeper.desktop.paper.paper_look import PAPER
from keeper.desktop.paper.sizes import Paper, put_paper_to_use
from keeper.husbandry.events import HoldKind, HoldSet, Remark, RemarkKind
from keeper.husbandry.when import on_day

PAPERS = {
    "life": K.Key_P,
    "label": K.Key_L,
    "card": K.Key_B,
    "vet": K.Key_D,
    "weights": K.Key_K,
}
PT_PER_MM = 72 / 25.4


__all__ = ["desk", "keeping"]


def printed(desk, kind):
    """What the key of *kind* wrote."""
    desk.press(PAPERS[kind], CONTROL)
    if kind == "label":
        desk.press(K.Key_Return)  # a whole sheet
    book = desk.house.keeping.book.path
    (path,) = book.parent.glob(f"{book.name}.{kind}-*.pdf")
    assert str(path) in desk.foot
    return pypdfium2.PdfDocument(path)


def words_of(document):
    """The text of each page, its lines joined."""
    return [" ".join(p.get_textpage().get_text_range().split()) for p in document]


def written(keeping, kind, text, day=date(2026, 11, 1), code=WREN):
    event = Remark(animal=key_of(keeping, code), happened=on_day(day), kind=kind, text=text)
    note(keeping, "note", event, where="", what=text)


def test_the_card_tells_who_she_is_what_she_ate_and_the_cautions(desk):
    (words,) = words_of(printed(desk, "card"))

    for part in (
        "Animal card: Wren, 26-031",
        "African house snake (Boaedon capensis)",
        "Hatched 18 Mar 2026, 8 months old",
        "female: probed 2 Sep 2026, 3 scales, J.; popped 24 Mar 2026, nothing seen, weak",
        "Dam × sire Ingrid × Alder",
        "20 Nov 2026 1 × hopper mouse 11.4 g taken seen",
        "19 Oct 2026, whole",
        "Salmonella",
        "Check local law",
        "nothing here is a verdict of health",
        "No statement of genes is written in the book.",
        "Printed 25 Nov 2026, 14:10 · page 1 of 1",
    ):
        assert part in words, part
    assert "healthy" not in words


def test_a_statement_of_genes_is_printed_as_written_with_its_day(desk, keeping):
    written(keeping, RemarkKind.NOTE, "genes: possible het pale, 66 %")
    desk.show(WREN)

    words = " ".join(words_of(printed(desk, "card")))

    assert "1 Nov 2026: genes: possible het pale, 66 %" in words
    assert "no promise: only its young can show it" in words


def test_the_vet_gets_two_pages_of_what_was_written_and_no_conclusion(desk, keeping):
    written(keeping, RemarkKind.BREATHING, "clicks at night")
    held = HoldSet(
        animal=key_of(keeping, WREN),
        happened=on_day(date(2026, 11, 2)),
        kind=HoldKind.VET,
        note="drops, as told",
    )
    note(keeping, "hold", held, where="", what="hold")
    desk.show(WREN)

    first, second = words_of(printed(desk, "vet"))

    assert "without a diagnosis; ? is not in the book" in first
    assert "Regurgitations 18 May 2026 (a day after)" in first
    assert "meals" in first and "place" in first and "band: females of this kind" in first
    assert "20 Nov 2026 1 × hopper mouse 11.4 g taken seen" in second
    assert "30 of 30 days read; wanted 30–32 °C" in second
    assert "1 Nov 2026 breathing: clicks at night" in second
    assert "2 Nov 2026 hold vet: drops, as told" in second


def test_a_long_life_still_takes_two_pages(qtbot, tmp_path):
    with closing(a_book(tmp_path / "old.book")) as keeping:
        of_ten_years(keeping)
        for n in range(30):
            written(
                keeping,
                RemarkKind.FAECES,
                f"seen, number {n}, in the usual place",
                date(2026, 10, n + 1),
                THORA,
            )
        made = Desk(qtbot, keeping)
        made.show(THORA)

        assert len(printed(made, "vet")) == 2


def test_the_life_is_printed_as_it_looks_with_the_figures_of_the_cursor(desk):
    desk.to(date(2026, 9, 2))
    (words,) = words_of(printed(desk, "life"))

    for part in (
        "Life of Wren, 26-031",
        "Wed 2 Sep 2026, day 168",
        "expected p50",
        "not eaten",
        "today",
        "A2·7",
        "Row B4 fell to 25.4 °C",
    ):
        assert part in words, part


def test_the_label_of_one_animal_bears_its_number(desk, keeping):
    (words,) = words_of(printed(desk, "label"))
    number = label_number(key_of(keeping, WREN))

    assert f"{number[:4]} {number[4:8]} {number[8:]}" in words
    assert "Wren 26-031 · female" in words


def test_a_label_scanned_at_the_window_opens_its_animal(desk, keeping):
    desk.press(K.Key_PageDown)
    assert desk.page.page.animal.code != WREN

    number = label_number(key_of(keeping, WREN))
    desk.window.scanned.emit(number)
    assert desk.page.page.animal.name == "Wren"

    slipped = number[:-1] + str((int(number[-1]) + 1) % 10)
    desk.window.scanned.emit(slipped)
    assert "holds a slip" in desk.foot


def test_the_digits_of_a_label_find_its_animal_without_a_scanner(desk, keeping):
    desk.press(K.Key_PageDown)
    number = label_number(key_of(keeping, WREN))

    desk.press(K.Key_Slash)
    desk.type(f"{number[:4]} {number[4:8]} {number[8:]}")

    assert desk.page.page.animal.name == "Wren"


def test_the_kin_are_weighed_side_by_side(desk):
    (words,) = words_of(printed(desk, "weights"))

    assert "Weights: Fen line, F2 5 animals" in words
    assert "B4·2 Wren f 8 months" in words
    assert "Middle of the last weights" in words


@pytest.mark.parametrize("kind", PAPERS)
def test_each_is_black_in_its_margins_and_of_twelve_points(desk, kind):
    for page in printed(desk, kind):
        seen = page.render(scale=1.5, rev_byteorder=True).to_numpy()[..., :3].astype(int)
        edge = round((MARGIN_MM - 1) * PT_PER_MM * 1.5)
        assert np.ptp(seen, axis=2).max() == 0
        assert seen[:edge].min() == seen[-edge:].min() == 255
        assert seen[:, :edge].min() == seen[:, -edge:].min() == 255
        assert min(sizes_pt(page)) >= 11.9


def sizes_pt(page):
    """The size of every letter, by its matrix."""
    text = page.get_textpage()
    for n in range(text.count_chars()):
        matrix = pypdfium2.raw.FS_MATRIX()
        pypdfium2.raw.FPDFText_GetMatrix(text.raw, n, matrix)
        size = pypdfium2.raw.FPDFText_GetFontSize(text.raw, n)
        if size > 1:
            yield size * abs(matrix.d)


def test_every_text_of_the_paper_look_stands_out_from_white():
    for role in ("ink", "ink2", "ink3", "point"):
        assert contrast(getattr(PAPER, role), PAPER.ground) >= 7
    for role in ("line", "fill2", "fill3"):
        assert contrast(getattr(PAPER, role), PAPER.ground) >= 3


def test_what_was_made_last_goes_to_the_printer_that_is_chosen(desk, keeping, tmp_path):
    asked = []

    def printer(page, sheets):
        asked.append(sheets.title)
        return QPdfWriter(str(tmp_path / "printer.pdf"))

    desk.page.paper.desk = made = PaperDesk(
        keeping,
        desk.page,
        tell=desk.house.notices.noted.emit,
        refuse=desk.house.notices.refused.emit,
        printer=printer,
    )
    made.to_printer()
    assert NOTHING_YET in desk.foot

    made.make(desk.page.paper.card)
    made.to_printer()

    assert asked == ["Animal card: Wren, 26-031"]
    assert "1 page: printed" in desk.foot
    assert len(pypdfium2.PdfDocument(tmp_path / "printer.pdf")) == 1


def test_without_a_printer_it_says_so(desk):
    desk.press(K.Key_B, CONTROL)
    desk.press(K.Key_P, CONTROL | SHIFT)

    assert NO_PRINTER in desk.foot


def test_a_hostile_code_leads_to_no_other_place(desk, keeping, tmp_path):
    from dataclasses import replace

    from keeper.desktop.paper.printing import print_beside

    sheets = replace(desk.page.paper.card(), stem="card-../../../../etc/passwd")
    path = print_beside(keeping, sheets)

    assert path.parent == tmp_path
    assert path.name == "animal.book.card-------------etc-passwd.pdf"


@pytest.mark.parametrize("kind", ["life", "card", "vet"])
def test_on_letter_paper_it_takes_no_more_pages_than_on_a4(desk, kind):
    try:
        on_a4 = len(printed(desk, kind))
        put_paper_to_use(Paper.LETTER)
        on_letter = printed(desk, kind)
    finally:
        put_paper_to_use(Paper.A4)

    assert on_letter[0].get_size() == pytest.approx((612, 792), abs=1.0)
    assert len(on_letter) == on_a4
