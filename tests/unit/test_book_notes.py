"""Notes that the program writes: one form in the book, the keeper's words and units when read."""

import json

from keeper.reports.book_notes import bag_note, dismissed_reason, note_words
from keeper.reports.figures import plain
from keeper.reports.writing import Writing, writing_as
from tests.unit.test_language import python

GERMAN = """
import json
from datetime import UTC, datetime
from keeper.desktop.chosen_language import choose
choose()
from keeper.actions.entry_words import entry_words, note_of
from keeper.husbandry.events import Override, Weighing
from keeper.husbandry.when import at_instant
from keeper.reports.book_notes import bag_note, dismissed_reason, note_words
from keeper.reports.figures import plain
at = at_instant(datetime(2026, 3, 18, 20, tzinfo=UTC))
weighed = Weighing(animal=1, happened=at, weight_g=40.0, note=bag_note(12.5))
own = Override(
    happened=at, species="house_snake", key="sheds.overdue_factor", value=2.0,
    reason=dismissed_reason(5, 6),
)
print(json.dumps([weighed.note, plain(note_of(weighed)), own.reason, entry_words(own)]))
"""


def test_in_german_they_are_read_in_german_and_lie_in_the_book_as_ever():
    note, bag, reason, own = json.loads(python(GERMAN))

    assert (note, reason) == (
        "bag of 12.5 g taken off",
        "put aside without action 5 of 6 times",
    )
    assert bag == "Beutel von 12.5 g abgezogen"
    assert own.endswith("5 von 6 Mal beiseitegelegt, ohne etwas zu tun")


def test_the_weight_of_the_bag_is_read_in_the_units_of_the_house():
    with writing_as(Writing(ounces=True)):
        assert plain(note_words(bag_note(28.35))) == "bag of 1 oz taken off"


def test_what_a_keeper_typed_is_read_as_it_was_typed():
    for typed in ("calm in the bag of 12 g taken off later", "put aside", "", "bag of g taken off"):
        assert note_words(typed) == typed
    assert note_words(f"own figure: {dismissed_reason(5, 6)}").endswith("5 of 6 times")
