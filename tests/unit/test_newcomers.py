"""Animals come in, hatch, pair, lay and leave by one typed line each; nothing is ever guessed."""

from contextlib import closing
from datetime import UTC, date, datetime, timedelta

import pytest

from keeper.actions.animal_page import animal_page
from keeper.actions.breeding_typed import laid_typed, named_typed, paired_typed, standing_typed
from keeper.actions.day_of_life import day_of_life
from keeper.actions.keeping import animal_coded, animals_on, new_keeping
from keeper.actions.life import life_of
from keeper.actions.newcomers import bring_in, hatched_typed, hatchlings_typed, newcomer_typed
from keeper.actions.noting import note
from keeper.actions.rack_moves import declare_rack
from keeper.actions.records import entry_lines, record_rows
from keeper.actions.undoing import take_back
from keeper.desktop.screens.animal_words import figures_of
from keeper.husbandry.animal import Sex, SexedBy, Status
from keeper.husbandry.events import Paired
from keeper.husbandry.when import at_instant, on_day
from keeper.store import reading

NOW = datetime(2026, 11, 25, 20, 0, tzinfo=UTC)
TODAY = NOW.date()


@pytest.fixture
def keeping(tmp_path):
    with closing(new_keeping(tmp_path / "room.book", station="try", now=lambda: NOW)) as made:
        yield made


@pytest.fixture
def pair(keeping):
    """A female and a male that have stood in the room for a year."""
    return [
        come(keeping, "F-1, house snake, f, 1 Mar 2024, A1-1, Wren"),
        come(keeping, "M-1, house snake, m, 2 Mar 2024, A1-2, Bram"),
    ]


def come(keeping, text):
    coming = newcomer_typed(keeping, at_instant(NOW), text)
    bring_in(keeping, coming)
    return animal_coded(keeping, coming.newcomers[0].code)


def hatch(keeping, dam, text, on=TODAY):
    coming = hatchlings_typed(keeping, dam, on_day(on), text)
    bring_in(keeping, coming)
    return [row for row in animals_on(keeping, TODAY) if row.dam == dam.animal]


def put(keeping, typed):
    note(keeping, typed.verb, typed.event, *typed.also)


def test_a_new_animal_is_what_was_typed(keeping):
    wren = come(keeping, "26-101, corn snake, f, 3 Sep 2026, b4 2, Wren")

    assert (wren.code, wren.name, wren.species, wren.place) == (
        "26-101",
        "Wren",
        "corn_snake",
        "B4·2",
    )
    assert (wren.sex, wren.sexed_by) == (Sex.FEMALE, SexedBy.WRITTEN)
    assert (wren.hatched_first, wren.hatched_last) == (date(2026, 9, 3), date(2026, 9, 3))


def test_what_is_not_known_may_be_left_out_and_is_said(keeping):
    coming = newcomer_typed(keeping, at_instant(NOW), "26-102, house snake")

    told = coming.what.replace("\u00a0", " ")
    assert told == "26-102, African house snake, sex not known, hatch day not known, no tub yet"


def test_a_place_that_is_no_tub_of_a_rack_is_said_so_before_it_is_written(keeping):
    shelf = newcomer_typed(keeping, at_instant(NOW), "26-101, corn snake, f, 2026, A1").what
    tub = newcomer_typed(keeping, at_instant(NOW), "26-101, corn snake, f, 2026, A1-1").what

    assert "into A1, which is in no rack" in shelf
    assert "no rack" not in tub


def test_an_animal_that_was_bought_settles_in_before_it_is_fed(keeping):
    bought = come(keeping, "26-103, corn snake, m, 2025, B4-3, bought")
    born_here = come(keeping, "26-104, corn snake, m, 2025, B4-4")

    assert bought.status_on == TODAY
    assert born_here.status_on is None


@pytest.mark.parametrize(
    ("text", "first", "last"),
    [
        ("2026-09-03", date(2026, 9, 3), date(2026, 9, 3)),
        ("3 Sep 2026", date(2026, 9, 3), date(2026, 9, 3)),
        ("September 2026", date(2026, 9, 1), date(2026, 9, 30)),
        ("2026-09", date(2026, 9, 1), date(2026, 9, 30)),
        ("2025", date(2025, 1, 1), date(2025, 12, 31)),
        ("2026", date(2026, 1, 1), TODAY),
        ("?", None, None),
    ],
)
def test_a_hatch_date_is_a_day_a_month_a_year_or_not_known(text, first, last):
    assert hatched_typed(text, TODAY) == (first, last)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "A new animal needs code, kind"),
        ("26-9", "A new animal needs code, kind"),
        (", corn snake", "needs a code first"),
        ("F-1, corn snake", "'F-1' is the code of Wren already"),
        ("26-9, dragon", "no profile is called 'dragon'"),
        ("26-9, corn snake, x", "'x' is no sex"),
        ("26-9, corn snake, f, 30 Feb 2026", "'30 Feb 2026' is no hatch date"),
        ("26-9, corn snake, f, 2027", "is a day to come"),
    ],
)
def test_a_new_animal_that_cannot_be_taken_is_named_in_a_sentence(keeping, pair, text, said):
    before = len(animals_on(keeping, TODAY))

    with pytest.raises(ValueError, match=said):
        newcomer_typed(keeping, at_instant(NOW), text)

    assert len(animals_on(keeping, TODAY)) == before


def test_a_clutch_hatches_into_lettered_young_in_the_next_free_tubs(keeping, pair):
    dam, sire = pair
    come(keeping, "X-1, house snake, f, 2025, A4-2")

    young = hatch(keeping, dam, "4, 26-9, A4-1, bram")

    assert [row.code for row in young] == ["26-9 a", "26-9 b", "26-9 c", "26-9 d"]
    assert [row.place for row in young] == ["A4·1", "A4·3", "A4·4", "A4·5"]
    assert {(row.sire, row.clutch, row.species, row.hatched_first) for row in young} == {
        (sire.animal, "26-9", "house_snake", TODAY)
    }


def test_late_hatchers_of_a_clutch_take_the_letters_that_are_left(keeping, pair):
    hatch(keeping, pair[0], "2, 26-9")

    young = hatch(keeping, pair[0], "1, 26-9")

    assert sorted(row.code for row in young) == ["26-9 a", "26-9 b", "26-9 c"]


def test_a_hatch_is_one_step_to_take_back(keeping, pair):
    hatch(keeping, pair[0], "4, 26-9, A4-1, Bram")

    take_back(keeping)

    assert [row.code for row in animals_on(keeping, TODAY)] == ["F-1", "M-1"]


def test_no_more_hatch_than_good_eggs_were_laid(keeping, pair):
    put(keeping, laid_typed(pair[0], on_day(TODAY - timedelta(days=60)), "3, 26-9"))
    hatch(keeping, pair[0], "2, 26-9")

    with pytest.raises(ValueError, match="4 young of 26-9 would be more than its 3 good eggs"):
        hatchlings_typed(keeping, pair[0], on_day(TODAY), "2, 26-9")


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("0, 26-9", "'0' is no number of young"),
        ("twelve, 26-9", "'twelve' is no number of young"),
        ("40, 26-9", "1 to 26 are right"),
        ("4", "need the code of their clutch"),
        ("4, 26-9, shelf", "'shelf' names no tub"),
        ("4, 26-9, A4-1, Wren", "No male here is called 'Wren'"),
    ],
)
def test_young_that_cannot_be_taken_are_named_in_a_sentence(keeping, pair, text, said):
    with pytest.raises(ValueError, match=said):
        hatchlings_typed(keeping, pair[0], on_day(TODAY), text)


def test_no_clutch_hatches_on_the_day_it_is_laid(keeping, pair):
    put(keeping, laid_typed(pair[0], on_day(TODAY), "3, 26-9"))

    with pytest.raises(ValueError, match=r"26-9 was laid on .* and cannot hatch on"):
        hatchlings_typed(keeping, pair[0], on_day(TODAY), "2, 26-9")


def test_a_clutch_with_too_few_letters_left_is_refused_in_a_sentence(keeping, pair):
    hatch(keeping, pair[0], "20, 26-9")

    with pytest.raises(ValueError, match="26-9 has 6 letters left, not 10; fewer young"):
        hatchlings_typed(keeping, pair[0], on_day(TODAY), "10, 26-9")


def test_a_male_is_no_dam(keeping, pair):
    with pytest.raises(ValueError, match="Bram is a male"):
        hatchlings_typed(keeping, pair[1], on_day(TODAY), "4, 26-9")


def test_eggs_prove_a_female(keeping, pair):
    put(keeping, laid_typed(pair[0], at_instant(NOW), "8 good, 2 slugs, 61,5 g"))

    dam = animal_coded(keeping, "F-1")
    assert (dam.sexed_by, dam.clutch_on) == (SexedBy.LAID, TODAY)


@pytest.mark.parametrize("grams", ["61.5 g", "61,5 g", "61,5g"])
def test_grams_with_a_decimal_comma_are_read_whole(keeping, pair, grams):
    eggs = laid_typed(pair[0], at_instant(NOW), f"8, 2 slugs, {grams}, 26-9").event

    assert (eggs.good, eggs.slugs, eggs.mass_g, eggs.code) == (8, 2, 61.5, "26-9")


@pytest.mark.parametrize("text", ["", "slugs", "2 slugs, 26-9"])
def test_a_clutch_without_a_count_of_good_eggs_is_refused(keeping, pair, text):
    with pytest.raises(ValueError, match="needs the number of its good eggs first"):
        laid_typed(pair[0], at_instant(NOW), text)


def test_a_pairing_is_written_of_the_female_whoever_s_page_is_open(keeping, pair):
    dam, sire = pair
    everyone = animals_on(keeping, TODAY)

    put(keeping, paired_typed(sire, at_instant(NOW), "wren, locked", everyone))

    (entry,) = reading.history(keeping.book, Paired, dam.animal)
    assert (entry.event.mate, entry.event.locked) == (sire.animal, True)


def test_a_pairing_stands_in_both_lives(keeping, pair):
    everyone = animals_on(keeping, TODAY)
    put(keeping, paired_typed(pair[0], at_instant(NOW), "Bram", everyone))

    lives = [life_of(keeping, row.animal, TODAY) for row in pair]

    assert [len(life.pairings) for life in lives] == [1, 1]
    assert not life_of(keeping, pair[0].animal, TODAY - timedelta(days=1)).pairings


def test_a_pairing_is_told_with_the_other_s_name_in_the_records_and_in_both_lives(keeping, pair):
    everyone = animals_on(keeping, TODAY)
    typed = paired_typed(pair[0], at_instant(NOW), "Bram, locked", everyone)
    put(keeping, typed)

    newest = record_rows(keeping)[0]
    pages = [animal_page(keeping, row, TODAY) for row in pair]
    days = [figures_of(page, day_of_life(page, TODAY)) for page in pages]

    assert typed.what == "paired with Bram, lock seen"
    assert newest.told == "paired with Bram, lock seen"
    assert [line.told for line in entry_lines(keeping, newest)] == [newest.told]
    assert "paired with Bram, lock seen" in _of_that_day(days[0])
    assert "paired with Wren, lock seen" in _of_that_day(days[1])


def _of_that_day(figures):
    return next(f.value for group in figures.groups for f in group if f.label == "that day")


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("nobody", "No other animal here is called 'nobody'"),
        ("Bram, twice", "'twice' is not understood"),
        ("Thora", "Thora is female too"),
    ],
)
def test_a_pairing_that_cannot_be_is_refused(keeping, pair, text, said):
    come(keeping, "F-2, house snake, f, 2024, A1-3, Thora")

    with pytest.raises(ValueError, match=said):
        paired_typed(pair[0], at_instant(NOW), text, animals_on(keeping, TODAY))


@pytest.mark.parametrize("word", ["sold", "died", "on loan"])
def test_who_leaves_stands_in_no_tub_and_is_not_in_the_room(keeping, pair, word):
    put(keeping, standing_typed(pair[1].animal, at_instant(NOW), f"{word}, to a school"))

    bram = animal_coded(keeping, "M-1")
    assert (bram.status.value, bram.place, bram.in_the_room) == (word, None, False)


def test_who_comes_back_is_in_the_room_again_from_that_day(keeping, pair):
    put(keeping, standing_typed(pair[1].animal, at_instant(NOW), "on loan"))
    put(keeping, standing_typed(pair[1].animal, at_instant(NOW), "kept, back from loan"))

    bram = animal_coded(keeping, "M-1")
    assert (bram.status, bram.status_on) == (Status.KEPT, TODAY)


def test_a_name_is_written_and_what_was_not_typed_stays(keeping, pair):
    put(keeping, named_typed(pair[0], at_instant(NOW), "line Sandpaper"))

    wren = animal_coded(keeping, "F-1")
    assert (wren.name, wren.line, wren.hatched_first) == ("Wren", "Sandpaper", date(2024, 3, 1))


def test_a_line_that_names_nothing_is_refused(keeping, pair):
    with pytest.raises(ValueError, match="'colour red' is not understood"):
        named_typed(pair[0], at_instant(NOW), "colour red")


def test_young_fill_a_declared_rack_row_by_row_and_never_stand_beyond_it(keeping, pair):
    declare_rack(keeping, "A", "4x3")
    come(keeping, "X-1, house snake, f, 2025, A3-3")

    young = hatch(keeping, pair[0], "4, 26-9, A3-2, bram")

    assert [row.place for row in young] == ["A3·2", "A4·1", "A4·2", "A4·3"]


@pytest.mark.parametrize(("tub", "free"), [("A4-2", 2), ("A5-1", 0), ("A1-9", 0)])
def test_more_young_than_a_declared_rack_has_tubs_are_refused_in_a_sentence(
    keeping, pair, tub, free
):
    declare_rack(keeping, "A", "4x3")
    before = len(animals_on(keeping, TODAY))

    with pytest.raises(ValueError, match=f"4 rows of 3 tubs: from .* on {free} of them are free"):
        hatchlings_typed(keeping, pair[0], at_instant(NOW), f"10, 26-9, {tub}, bram")

    assert len(animals_on(keeping, TODAY)) == before
