"""The printed sheets read back by another program's eyes: PDFium, through pypdfium2.

PDFium is the renderer of an open browser; it knows nothing of this project. Sizes of paper are
those of ISO 216 (A4, 210 x 297 mm) and of ANSI/ASME Y14.1 (Letter, 8.5 x 11 in), at 72 points
an inch. The check values of ISO/IEC 7064, MOD 11-2 are public ORCID iDs, which end in that
check character (https://support.orcid.org, "Structure of the ORCID Identifier").
"""

from contextlib import closing
from dataclasses import replace

import numpy as np
import pypdfium2
import pypdfium2.raw
import pytest

from keeper.actions.rounds import begin_night
from keeper.actions.sheets import check_character, round_code
from keeper.desktop.paper.page import MARGIN_MM, Paper, write_pdf
from keeper.desktop.paper.printing import round_sheets, thaw_sheets
from tests.feeding_room import NIGHT, bites, held_by_vet, make_book, quarantined, room

PT_PER_MM = 72 / 25.4


@pytest.fixture(scope="module")
def printed(qapp, tmp_path_factory):
    """Round sheet and thaw list of 70 tubs on both papers, and the night's code."""
    folder = tmp_path_factory.mktemp("paper")
    tubs = room(1, 7)
    tubs[2] = replace(tubs[2], more=bites)
    tubs[4] = replace(tubs[4], more=held_by_vet)
    tubs[5] = replace(tubs[5], more=quarantined)
    with closing(make_book(folder / "night.book", tubs)) as keeping:
        walk = begin_night(keeping, NIGHT)
        named = {"sheet": round_sheets(keeping, walk), "thaw": thaw_sheets(keeping, NIGHT)}
        for paper in Paper:
            for name, sheets in named.items():
                write_pdf(folder / f"{name} {paper.name}.pdf", sheets.title, sheets.pages, paper)
        return folder, round_code(walk.round)


def opened(printed, name):
    return pypdfium2.PdfDocument(printed[0] / f"{name}.pdf")


def words_of(document):
    """The text of each page, its lines joined."""
    return [" ".join(p.get_textpage().get_text_range().split()) for p in document]


@pytest.mark.parametrize(("paper", "size"), [("A4", (595.3, 841.9)), ("LETTER", (612, 792))])
def test_pages_have_the_size_of_the_paper(printed, paper, size):
    for page in opened(printed, f"sheet {paper}"):
        assert page.get_size() == pytest.approx(size, abs=1.0)


@pytest.mark.parametrize("paper", ["A4", "LETTER"])
def test_every_page_bears_the_code_its_number_and_when_it_was_printed(printed, paper):
    for number, words in enumerate(words_of(opened(printed, f"sheet {paper}")), start=1):
        assert words.count(printed[1]) == 2
        assert f"page {number} of 3" in words
        assert "Printed 25 Nov 2026, 20:40" in words


def test_every_line_is_read_back_in_rack_order_thirty_a_page(printed):
    first, second, third = words_of(opened(printed, "sheet A4"))

    assert "1 A1·1 Reed f 12 d 2 × fuzzy mouse" in first
    assert "30 A3·10" in first
    assert "31 A4·1" in second
    assert "70 A7·10" in third


def test_cautions_holds_and_the_words_of_the_boxes_are_read_back(printed):
    (first, *_) = words_of(opened(printed, "sheet A4"))

    for words in (
        "fuzzy mouse BITES",
        "hold vet",
        "fuzzy mouse quarantine",
        "0 refused · 5 left in · 2 part taken · 7 not offered",
        "line tub name sex eaten plan and caution taken 0 5 2 7 grams note",
        "Row A1, lines 1–10: all but those marked, as planned",
    ):
        assert words in first


def test_the_thaw_list_is_read_back_with_its_sum_its_times_and_its_cautions(printed):
    (words,) = words_of(opened(printed, "thaw A4"))

    for part in (
        "fuzzy mouse 138 + 7",
        "Likely left, of 68 animals",
        "Held and not counted: vet 1.",
        "Into warm water at Wed 20:10",
        "Never freeze it again",
        "Salmonella",
    ):
        assert part in words


@pytest.mark.parametrize("name", ["sheet A4", "sheet LETTER", "thaw A4", "thaw LETTER"])
def test_nothing_is_printed_in_colour_or_into_the_margin(printed, name):
    for page in opened(printed, name):
        seen = page.render(scale=1.5, rev_byteorder=True).to_numpy()[..., :3].astype(int)
        edge = round((MARGIN_MM - 1) * PT_PER_MM * 1.5)

        assert np.ptp(seen, axis=2).max() == 0
        assert seen.min() == 0
        assert seen[:edge].min() == seen[-edge:].min() == 255
        assert seen[:, :edge].min() == seen[:, -edge:].min() == 255


@pytest.mark.parametrize("name", ["sheet A4", "thaw LETTER"])
def test_no_letter_is_smaller_than_twelve_points(printed, name):
    sizes = []
    for page in opened(printed, name):
        text = page.get_textpage()
        found = (pypdfium2.raw.FPDFText_GetFontSize(text.raw, n) for n in range(text.count_chars()))
        scale = next(iter(page.get_objects())).get_matrix().get()[0]
        sizes += [size * scale for size in found if size > 1]

    assert min(sizes) >= 11.99


@pytest.mark.parametrize("orcid", ["000000021825009-7", "000000021694233-X", "000000029079593-X"])
def test_the_check_character_is_that_of_public_identifiers(orcid):
    body, check = orcid.split("-")

    assert check_character(body) == check
