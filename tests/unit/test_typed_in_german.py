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


LINES = """
import json
from datetime import UTC, date, datetime
from keeper.desktop.chosen_language import choose
choose()
from keeper.actions import breeding_typed as breeding
from keeper.actions.absence import away_typed
from keeper.actions.newcomers import hatched_typed
from keeper.actions.settings import feed_nights_typed
from keeper.actions.typed_entries import day_typed
from keeper.actions.typed_care import Running, cleaning_typed, eggs_typed, medicine_typed
from keeper.actions.typed_measures import measured_typed
from keeper.husbandry.events import Clutch
from keeper.actions.house_entries import EXTENTS
from keeper.husbandry.when import at_instant
now = at_instant(datetime(2026, 11, 25, 20, tzinfo=UTC))
today = date(2026, 11, 25)
def both(read, german, english):
    return [str(read(text)) for text in (german, english)]
def nights(text):
    return feed_nights_typed(text, today).rules
def away(text):
    return away_typed(text, today)
def hatched(text):
    return hatched_typed(text, today)
def day(text):
    return day_typed(text, today)
def measured(text):
    return measured_typed(1, now, text).event
def eggs(text):
    return breeding._eggs(text)
def named(text):
    return breeding._named_parts(text)
def course(text):
    return medicine_typed(1, now, text, keeper="").event
def hatched_eggs(text):
    found = eggs_typed(1, now, text, laid=(laid,))
    return found.event, found.also
def cleaned(text):
    return cleaning_typed(1, now, text).event
laid = Clutch(animal=1, happened=now, good=8, code="26-9")
vet = "Tarsin / 0,1 ml / oral / "
running = (Running(medicine=course(vet + "14 days")),)
def dose(text):
    return medicine_typed(1, now, text, keeper="", running=running).event
pairs = [
    both(course, vet + "bis 12. Dez / alle 2 Tage / Charge 7",
         vet + "until 12 Dec / every 2 days / lot 7"),
    both(course, vet + "14 Tage / 2-mal am Tag", vet + "14 days / 2 times a day"),
    both(course, vet + "14 t / jeden Tag / zweimal täglich",
         vet + "14 d / every day / twice daily"),
    both(dose, "gegeben von Ansa", "given by Ansa"),
    both(dose, "versäumt, ausgespuckt", "missed, ausgespuckt"),
    both(hatched_eggs, "6 geschlüpft, 1 verloren von 26-9", "6 hatched, 1 failed of 26-9"),
    both(hatched_eggs, "7 geädert von 26-9", "7 veined of 26-9"),
    both(cleaned, "stellenweise, Napf", "spot, Napf"),
    both(nights, "di fr", "tue fri"), both(nights, "Mi und So", "wed and sun"),
    both(nights, "alle 4 Tage", "every 4 days"), both(nights, "jeden Tag", "every day"),
    both(nights, "alle 3 Abende ab 2026-11-20", "every 3 nights from 2026-11-20"),
    both(away, "5. Dez bis 14. Dez", "5 Dec to 14 Dec"), both(away, "9 Tage", "9 days"),
    both(away, "morgen bis 3.12.", "tomorrow to 3 Dec"), both(away, "heute; 4 t", "today; 4 d"),
    both(hatched, "3. September 2026", "3 Sep 2026"), both(hatched, "3.9.2026", "2026-09-03"),
    both(hatched, "März 2026", "Mar 2026"), both(hatched, "14. Mai 2026", "14 May 2026"),
    both(day, "12. Dezember", "12 Dec"), both(day, "12.12.", "12 Dec"),
    both(day, "3.9.2027", "2027-09-03"),
    both(measured, "KRL 61,5, Zustand 3", "svl 61.5, score 3"),
    both(measured, "gesamt 74", "total 74"), both(measured, "Kopf-Rumpf 61", "snout to vent 61"),
    both(eggs, "8 Eier, 2 Wachseier, 61 g, 26-9", "8 eggs, 2 slugs, 61 g, 26-9"),
    both(eggs, "8 gute, 1 Wachsei", "8 good, 1 slug"),
    both(named, "Name Wren / Linie Sandpaper", "name Wren / line Sandpaper"),
    both(EXTENTS.get, "stellenweise", "spot"), both(EXTENTS.get, "ganz", "whole"),
]
print(json.dumps([pairs, feed_nights_typed("di fr", today).words]))
"""


def test_keywords_and_dates_are_read_alike_in_german_and_in_english():
    pairs, nights = json.loads(python(LINES))

    for german, english in pairs:
        assert german == english and german != "None"
    assert nights == "Di, Fr"
