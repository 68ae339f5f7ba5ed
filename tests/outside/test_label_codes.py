"""The labels' picture codes read back by other programs' eyes: PDFium draws, ZXing reads.

ZXing (through zxing-cpp) is an open reader of ISO/IEC 18004 codes that shares nothing with the
maker of ours; PDFium is the renderer of an open browser.
"""

from contextlib import closing
from dataclasses import replace

import pypdfium2
import pytest
import zxingcpp

from keeper.actions.keeping import animals_on
from keeper.actions.tub_labels import code_scanned, label_number, labels_of
from keeper.desktop.paper.printing import print_beside
from keeper.desktop.screens.label_asking import Batch, label_sheets
from keeper.husbandry.place import walking_key
from tests.feeding_room import bites, make_book, room

DPI = 203
"""The resolution of a usual label printer; coarser than any office printer."""


@pytest.fixture(scope="module")
def labels(qapp, tmp_path_factory):
    """The book of 40 animals, and its labels as they are printed."""
    tubs = room(1, 4)
    tubs[3] = replace(tubs[3], more=bites)
    with closing(make_book(tmp_path_factory.mktemp("labels") / "room.book", tubs)) as keeping:
        rows = animals_on(keeping, keeping.today)
        yield keeping, rows, pypdfium2.PdfDocument(print_beside(keeping, sheets(keeping, rows)))


def sheets(keeping, rows):
    return label_sheets(keeping, Batch("the room", "labels", labels_of(keeping, rows)))


def codes_on(page):
    """Each code that is read on *page*, from left to right and top to bottom."""
    seen = page.render(scale=DPI / 72).to_numpy()
    found = zxingcpp.read_barcodes(seen, formats=zxingcpp.BarcodeFormat.QRCode)
    return sorted(found, key=lambda c: (round(c.position.top_left.y / 50), c.position.top_left.x))


def test_every_code_is_read_back_in_rack_order_and_names_its_animal(labels):
    keeping, rows, document = labels

    read = [code.text for page in document for code in codes_on(page)]

    assert read == [f";{label_number(row.animal)}" for row in rows]
    assert [code_scanned(keeping, text[1:]) for text in read] == [row.code for row in rows]
    assert [row.place for row in rows] == sorted((r.place for r in rows), key=walking_key)


def test_a_code_holds_nothing_of_the_animal_but_the_number(labels):
    _, rows, document = labels

    for code in codes_on(document[0]):
        assert code.text[0] == ";" and code.text[1:].isdecimal() and len(code.text) == 13
        assert not any(row.code in code.text for row in rows)


def test_the_words_of_a_label_are_read_back_and_no_place_is_among_them(labels):
    _, rows, document = labels
    words = " ".join(document[0].get_textpage().get_text_range().split())

    digits = label_number(rows[3].animal)
    assert f"{rows[3].name} HS-004 · female" in words
    assert "2024 African house snake BITES" in words
    assert f"{digits[:4]} {digits[4:8]} {digits[8:]}" in words
    assert not any(row.place in words for row in rows)


def test_a_code_stands_in_white_of_four_modules(labels):
    """ISO/IEC 18004 asks for a quiet zone of four modules; a version 1 code has 21 a side."""
    _, _, document = labels
    scale = 4 * DPI / 72
    seen = document[0].render(scale=scale).to_numpy()[..., 0]
    (first, *_) = codes_on(document[0])
    corners = (first.position.top_left, first.position.bottom_right)
    (left, top), (right, bottom) = ((4 * corner.x, 4 * corner.y) for corner in corners)
    quiet = round(3.4 * (right - left) / 21)

    ring = seen[top - quiet : bottom + quiet, left - quiet : right + quiet].copy()
    margin = quiet - 8  # the reader's corners are within two of its own pixels
    ring[margin:-margin, margin:-margin] = 255
    assert ring.min() == 255


def test_a_code_soiled_over_a_tenth_of_it_is_still_read(labels):
    """Level M restores about 15 % of a code's words (ISO/IEC 18004, error correction)."""
    _, rows, document = labels
    seen = document[0].render(scale=DPI / 72).to_numpy().copy()
    (first, *_) = codes_on(document[0])
    right, bottom = first.position.bottom_right.x, first.position.bottom_right.y
    side = right - first.position.top_left.x
    seen[bottom - side // 5 : bottom, right - side // 5 : right] = 255

    read = {c.text for c in zxingcpp.read_barcodes(seen)}

    assert f";{label_number(rows[0].animal)}" in read
