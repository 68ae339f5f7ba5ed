"""What is drawn on paper: type, ink and room for every line."""

from contextlib import closing
from dataclasses import replace
from pathlib import Path

import pypdfium2
import pytest
from PySide6.QtGui import QPdfWriter

from keeper.actions.rounds import begin_night
from keeper.desktop.paper.page import LEAST_PT, Box, Page, Paper, print_to, write_pdf
from keeper.desktop.paper.printing import print_beside, round_sheets, thaw_sheets
from tests.feeding_room import NIGHT, make_book, room


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", room(1, 7))) as book:
        yield book


def drawn(tmp_path, draw):
    """Run *draw* on a page of a PDF."""
    print_to(QPdfWriter(str(tmp_path / "probe.pdf")), [draw])


def test_no_type_is_smaller_than_twelve_points(qapp, tmp_path):
    widths = {}

    def draw(page: Page) -> None:
        widths["asked"] = page.width_of("Tansy", pt=4)
        widths["least"] = page.width_of("Tansy", pt=LEAST_PT)

    drawn(tmp_path, draw)

    assert widths["asked"] == widths["least"] > 0


def test_words_that_do_not_fit_are_cut_within_their_box(qapp, tmp_path):
    used = {}

    def draw(page: Page) -> None:
        used["mm"] = page.text(Box(10, 10, 20, 8), "Bartholomew of the long rack")

    drawn(tmp_path, draw)

    assert 0 < used["mm"] <= 20


@pytest.mark.parametrize("paper", Paper)
def test_seventy_lines_take_three_pages_on_either_paper(qapp, keeping, tmp_path, paper):
    sheets = round_sheets(keeping, begin_night(keeping, NIGHT))

    path = print_beside(keeping, sheets, paper)

    assert len(pypdfium2.PdfDocument(path)) == len(sheets.pages) == 3


def test_without_a_round_there_is_no_sheet_and_it_says_why(keeping):
    with pytest.raises(ValueError, match="No round is begun; begin it first"):
        round_sheets(keeping, None)


def test_a_place_that_cannot_be_written_is_named_and_nothing_is_left(qapp, keeping, tmp_path):
    nowhere = tmp_path / "no folder" / "thaw.pdf"

    with pytest.raises(OSError, match="no folder"):
        write_pdf(nowhere, "Thaw", thaw_sheets(keeping, NIGHT).pages)

    assert not nowhere.parent.exists()


def test_a_printing_that_fails_half_way_leaves_the_old_sheet_as_it_was(qapp, tmp_path):
    path = tmp_path / "sheet.pdf"
    path.write_text("the old sheet")

    def fail(page: Page) -> None:
        raise OSError("out of paper")

    with pytest.raises(OSError, match="out of paper"):
        write_pdf(path, "A sheet", [fail])

    assert path.read_text() == "the old sheet"
    assert [found.name for found in Path(tmp_path).iterdir()] == ["sheet.pdf"]


def test_a_night_with_nothing_planned_still_has_a_page_of_times(tmp_path):
    tubs = [replace(tub, fed_days=2) for tub in room(1, 1, 3)]
    with closing(make_book(tmp_path / "fed.book", tubs)) as keeping:
        assert len(thaw_sheets(keeping, NIGHT).pages) == 1
