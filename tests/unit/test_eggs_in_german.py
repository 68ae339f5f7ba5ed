"""Where eggs lie, typed in German; the English words are taken too, and the entry is the same."""

import json

from tests.unit.test_language import python

TYPED = """
import json
from datetime import UTC, date, datetime
from keeper.desktop.chosen_language import choose
choose()
from keeper.actions.typed_care import eggs_typed
from keeper.husbandry.events import Clutch
from keeper.husbandry.when import at_instant, on_day
now = at_instant(datetime(2026, 11, 25, 20, tzinfo=UTC))
laid = [Clutch(animal=1, happened=on_day(date(2026, 9, 26)), good=8, code="26-9")]
places = ("in Incubator 1, Schale 3 von 26-9", "in incubator 1, box 3 of 26-9", "heraus", "out")
said = [eggs_typed(1, now, text, laid=laid, known=["Incubator 1"]) for text in places]
try:
    eggs_typed(1, now, "in , 3", laid=laid)
except ValueError as error:
    refused = str(error)
print(json.dumps([[each.what for each in said], [str(each.event) for each in said], refused]))
"""


def test_a_place_for_eggs_is_typed_in_german_and_written_as_the_same_entry():
    what, events, refused = json.loads(python(TYPED))

    assert what[0] == what[1] == "Eier in Incubator 1, Box 3 aus 26-9"
    assert events[0] == events[1]
    assert what[2] == what[3] == "Eier aus dem Inkubator genommen"
    assert events[2] == events[3] and "place=None" in events[2]
    assert refused.startswith("Eier liegen in einem Inkubator mit einem Namen")
