"""A length and a body score as typed: what is understood, and the sentence where it is not."""

from datetime import date

import pytest

from keeper.actions.typed_measures import measured_typed
from keeper.husbandry.events import Measured, TotalLength
from keeper.husbandry.when import on_day

ON = on_day(date(2026, 11, 24))


@pytest.mark.parametrize(
    ("text", "svl_cm", "score", "note"),
    [
        ("61.5", 61.5, None, None),
        ("61,5 cm", 61.5, None, None),
        ("SVL 615 mm", 61.5, None, None),
        ("snout to vent: 61.5; score 3.5", 61.5, 3.5, None),
        ("score 4", None, 4.0, None),
        ("score 4, 61.5, along the spine, twice", 61.5, 4.0, "along the spine, twice"),
        ("61.5, total 74", 61.5, None, None),
        ("svl 3", 3.0, None, None),
    ],
)
def test_what_was_measured_is_understood_in_any_order(text, svl_cm, score, note):
    event = measured_typed(1, ON, text).event

    assert isinstance(event, Measured)
    assert (event.svl_cm, event.body_score, event.note) == (svl_cm, score, note)


def test_a_total_length_alone_is_an_entry_of_its_own():
    typed = measured_typed(1, ON, "total 74, straight")

    assert typed.event == TotalLength(animal=1, happened=ON, total_cm=74.0, note="straight")
    assert typed.also == ()
    assert typed.what == "total length 74 cm, noted: straight"


def test_a_total_length_beside_others_is_written_with_them_and_the_note_stands_once():
    typed = measured_typed(1, ON, "61.5, total 740 mm, straight")

    assert (typed.event.svl_cm, typed.event.note) == (61.5, "straight")
    assert typed.also == (TotalLength(animal=1, happened=ON, total_cm=74.0),)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("", "'' is no length and no score; svl 61.5"),
        ("long", "'long' is no length and no score"),
        ("3", "'3' may be a length or a score; svl 3 or score 3"),
        ("score 6", "between 1, thin, and 5, fat; got 6"),
        ("score 3 cm", "between 1, thin, and 5, fat; got 3 cm"),
        ("score 0.5", "between 1, thin, and 5, fat; got 0.5"),
        ("svl 0", "A length of 0 cm is none a snake has"),
        ("6150", "A length of 6150 cm is none a snake has"),
        ("61.5, svl 62", "'svl 62' is a second length from snout to vent"),
    ],
)
def test_what_cannot_be_a_measure_is_told_with_what_would_be_right(text, sentence):
    with pytest.raises(ValueError) as refusal:
        measured_typed(1, ON, text)

    assert sentence in str(refusal.value)
