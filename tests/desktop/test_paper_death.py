"""The note for an examination after death by its key, read back from its PDF."""

from datetime import date, timedelta

import pypdfium2
from animal_window import CONTROL, K, desk, keeping
from life_sample import TODAY, WREN, key_of

from keeper.actions.newcomers import bring_in, newcomer_typed
from keeper.actions.noting import note
from keeper.actions.typed_care import medicine_typed
from keeper.husbandry.animal import Status
from keeper.husbandry.events import Moved, Remark, RemarkKind, Stock
from keeper.husbandry.when import on_day

__all__ = ["desk", "keeping"]
LATE = TODAY - timedelta(days=1)


def died(keeping, told="limp in the evening", on=LATE):
    animal = key_of(keeping, WREN)
    gone = Stock(animal=animal, happened=on_day(on), status=Status.DIED, note=told)
    note(keeping, "standing", gone, Moved(animal=animal, happened=on_day(on), place=None))
    return animal


def printed(desk):
    desk.press(K.Key_N, CONTROL)
    book = desk.house.keeping.book.path
    (path,) = book.parent.glob(f"{book.name}.death-*.pdf")
    document = pypdfium2.PdfDocument(path)
    return [" ".join(p.get_textpage().get_text_range().split()) for p in document]


def test_the_note_tells_what_was_measured_and_that_the_day_of_death_is_not_known(desk, keeping):
    animal = key_of(keeping, WREN)
    text = "Tarsin / 0.05 ml / by mouth / 5 days / lot 7-B"
    typed = medicine_typed(animal, on_day(date(2026, 11, 20)), text, keeper="J.", running=())
    note(keeping, typed.verb, typed.event)
    seen = Remark(
        animal=animal,
        happened=on_day(date(2026, 11, 22)),
        kind=RemarkKind.BREATHING,
        text="wheezes",
    )
    note(keeping, "note", seen)
    for text in ("26-200, house snake, ?, ?, B4-3, Dill", "26-201, house snake, ?, ?, B2-1, Hob"):
        bring_in(keeping, newcomer_typed(keeping, on_day(LATE), text))
    died(keeping)
    desk.show(WREN)

    pages = printed(desk)

    assert len(pages) == 1
    whole = pages[0]
    assert "Printed 25 Nov 2026, 14:10" in pages[0] and "page 1 of 1" in pages[0]
    for part in (
        "in the fridge and not in the freezer, within hours",
        "Ask a reptile vet",
        "Found dead 24 Nov 2026",
        "not known; last entry of a living animal ",
        "Written with it limp in the evening",
        "Tarsin, 0.05 ml, by mouth",
        "wheezes",
        "In one tub with",
        "In the same row B4·3 Dill",
        "In the same rack B2·1 Hob",
        " of 14 days read; wanted ",
        "Cause, by whom it was found, or not known",
    ):
        assert part in whole, part


def test_what_was_written_after_the_finding_is_not_told_as_of_a_living_animal(desk, keeping):
    died(keeping, told=None, on=date(2026, 11, 1))
    desk.show(WREN)

    whole = " ".join(printed(desk))
    last = whole.split("last entry of a living animal ")[1][:11]
    assert last.endswith("Oct 2026") or last.startswith("1 Nov")
    assert "Found dead 1 Nov 2026" in whole


def test_one_that_lives_has_no_such_note_and_is_told_how_it_is_written(desk, tmp_path):
    desk.press(K.Key_N, CONTROL)

    assert "is not written as died; G on the page writes it" in desk.foot
    assert not list(tmp_path.glob("*.death-*.pdf"))
