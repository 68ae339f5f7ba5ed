"""The vet's two pages tell medicine with its lot and who gave it, and the faecal tests."""

from contextlib import closing

from life_sample import TODAY, WREN, a_book, key_of, wren

from keeper.actions.animal_page import page_of
from keeper.actions.animal_papers import vet_facts_of
from keeper.actions.noting import note
from keeper.actions.typed_care import faecal_typed, medicine_typed, running_courses
from keeper.husbandry.when import on_day
from keeper.reports.paper_parts import Facts
from keeper.reports.vet_summary import vet_summary


def rows(keeping) -> dict[str, str]:
    page = page_of(keeping, key_of(keeping, WREN), keeping.today)
    parts = vet_summary(vet_facts_of(keeping, page)).parts
    return {label: told for part in parts if isinstance(part, Facts) for label, told in part.rows}


def test_medicine_with_its_lot_and_who_gave_it_stands_on_the_vets_page(tmp_path):
    with closing(a_book(tmp_path / "vet.book")) as keeping:
        wren(keeping)
        animal, on = key_of(keeping, WREN), on_day(TODAY)
        assert "Medicine" not in rows(keeping)

        for text in ("Tarsin / 0.05 ml / by mouth / 5 days / lot 7-B", "given by Anna, spat some"):
            running = running_courses(keeping, animal, TODAY)
            typed = medicine_typed(animal, on, text, keeper="J.", running=running)
            note(keeping, typed.verb, typed.event)
        found = faecal_typed(animal, on, "found: flagellates")
        note(keeping, found.verb, found.event)

        told = rows(keeping)

    assert told["Medicine"] == (
        "Tarsin, 0.05 ml, by mouth, every day until 29 Nov 2026, lot 7-B, 25 Nov 2026;"
        " Tarsin given by Anna, spat some, 25 Nov 2026"
    )
    assert told["Faecal tests"] == "faecal test: something found, flagellates, 25 Nov 2026"
