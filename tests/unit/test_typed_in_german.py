"""A keeper types in her own language; the English words are always taken too."""

import json

from tests.unit.test_language import python

TYPED = """
import json
from datetime import UTC, date, datetime
from keeper.desktop.chosen_language import choose
choose()
from keeper.actions import typed_entries as typed
from keeper.actions.typed_care import faecal_typed
from keeper.husbandry.when import at_instant
now = at_instant(datetime(2026, 3, 18, 20, tzinfo=UTC))
said = [
    typed.sign_typed(1, now, "trüb"), typed.sign_typed(1, now, "opaque"),
    typed.hold_typed(1, now, "Tierarzt, 2. Dez, Schwellung"), typed.hold_typed(1, now, "Ende vet"),
    typed.hold_typed(1, now, "kühl, offen, Winter"), typed.remark_typed(1, now, "Milben: am Kinn"),
    typed.sex_typed(1, now, "w sondiert"), faecal_typed(1, now, "gefunden: Flagellaten"),
]
told = [[each.what, str(each.event)] for each in said]
days = [typed.day_typed(text, date(2026, 11, 25)).isoformat() for text in ("14 Tage", "5 Mai")]
try:
    typed.sign_typed(1, now, "rosa")
except ValueError as error:
    refused = str(error)
print(json.dumps([told, days, refused]))
"""


def test_german_words_are_taken_beside_the_english_and_written_as_the_same_entries():
    told, days, refused = json.loads(python(TYPED))
    what, events = zip(*told, strict=True)

    assert what[0] == what[1] == "trüb"
    assert events[0] == events[1]
    assert "'vet'" in events[2] and "2026, 12, 2" in events[2]
    assert "HoldEnded" in events[3] and "'vet'" in events[3]
    assert "'cooling'" in events[4] and "until=None" in events[4]
    assert "'mites'" in events[5] and "am Kinn" in events[5]
    assert "'female'" in events[6] and "'probed'" in events[6]
    assert "'found'" in events[7] and "Flagellaten" in events[7]
    assert days == ["2026-12-09", "2027-05-05"]
    assert refused.startswith("'rosa' passt nicht als Häutungszeichen; richtig sind matt, trüb,")
