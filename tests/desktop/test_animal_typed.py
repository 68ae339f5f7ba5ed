"""One line about one animal: what is understood, and the sentence where it is not."""

from contextlib import closing
from datetime import date

import pytest
from life_sample import HATCHED, TODAY, a_book, wren

from keeper.actions.finding import found
from keeper.actions.typed_entries import (
    chosen,
    day_typed,
    happened_on,
    hold_typed,
    move_typed,
    offer_corrected,
    remark_typed,
    sex_typed,
    sign_typed,
    weighing_corrected,
)
from keeper.husbandry.animal import Sex, SexedBy
from keeper.husbandry.events import (
    Evidence,
    HoldEnded,
    HoldKind,
    HoldSet,
    Offer,
    RemarkKind,
    Result,
    ShedQuality,
    ShedStage,
    Weighing,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import on_day

ON = on_day(TODAY)
WEIGHED = Weighing(animal=1, happened=ON, weight_g=412.0)
ASSUMED = Offer(
    animal=1,
    happened=ON,
    result=Result.TAKEN,
    evidence=Evidence.ASSUMED,
    prey="mouse fuzzy",
    count=1,
    mass_g=4.5,
)


@pytest.mark.parametrize(
    ("text", "stage", "quality"),
    [
        ("dull", ShedStage.DULL, None),
        (" OP ", ShedStage.OPAQUE, None),
        ("shed whole", ShedStage.SHED, ShedQuality.WHOLE),
        ("eye", ShedStage.SHED, ShedQuality.CAP_KEPT),
        ("tail tip kept, two rings", ShedStage.SHED, ShedQuality.TIP_KEPT),
    ],
)
def test_a_shed_sign_may_be_cut_short_while_it_is_clear(text, stage, quality):
    event = sign_typed(1, ON, text).event

    assert (event.stage, event.quality) == (stage, quality)


def test_what_may_be_two_things_is_asked_again():
    with pytest.raises(ValueError, match="may be shed whole or shed in pieces"):
        sign_typed(1, ON, "shed")


@pytest.mark.parametrize("text", ["", "moult", "opaque dull"])
def test_what_is_no_sign_is_told_with_what_would_be_right(text):
    with pytest.raises(ValueError, match=r"no shed sign; dull, .* and tail tip kept are right"):
        sign_typed(1, ON, text)


def test_a_hold_has_kind_end_and_reason():
    event = hold_typed(1, ON, "vet, 12 Dec, swelling at the neck, left").event

    assert isinstance(event, HoldSet)
    assert (event.kind, event.until) == (HoldKind.VET, date(2026, 12, 12))
    assert event.note == "swelling at the neck, left"


def test_a_hold_may_have_no_end_but_never_no_reason():
    assert hold_typed(1, ON, "quarantine, open, new from a fair").event.until is None
    with pytest.raises(ValueError, match="kind, end and reason"):
        hold_typed(1, ON, "quarantine, open")
    with pytest.raises(ValueError, match="is no day"):
        hold_typed(1, ON, "vet, soon, swelling")


def test_a_hold_cannot_end_before_it_begins():
    with pytest.raises(ValueError, match=r"ends after 25\u00a0Nov\u00a02026"):
        hold_typed(1, ON, "vet, 2026-11-25, swelling")


def test_a_hold_is_ended_by_its_kind():
    event = hold_typed(1, ON, "end vet, all clear").event

    assert event == HoldEnded(animal=1, happened=ON, kind=HoldKind.VET, note="all clear")


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("2027-02-01", date(2027, 2, 1)),
        ("1 Feb", date(2027, 2, 1)),
        ("1 february 2028", date(2028, 2, 1)),
        ("14 d", date(2026, 12, 9)),
        ("+14 days", date(2026, 12, 9)),
    ],
)
def test_a_day_to_come_is_read_as_keepers_write_it(text, day):
    assert day_typed(text, TODAY) == day


@pytest.mark.parametrize("text", ["30 Feb", "12/2", "Dec", "99999999 days", "2026-13-01"])
def test_a_day_that_is_none_is_said_to_be_none(text):
    with pytest.raises(ValueError, match=r"is no day; 12 Dec, 2026-12-12, 14 days or open"):
        day_typed(text, TODAY)


def test_a_sex_needs_the_way_it_is_known():
    event = sex_typed(1, ON, "female probed, 3 scales").event

    assert (event.sex, event.sexed_by, event.note) == (Sex.FEMALE, SexedBy.PROBED, "3 scales")
    with pytest.raises(ValueError, match="How is it known"):
        sex_typed(1, ON, "female")


def test_a_place_keeps_the_spelling_of_the_book_and_names_who_is_there():
    typed = move_typed(1, ON, "b4 2", {"B4-2": "Fen", "B4-3": ""})

    assert typed.event.place == "B4-2"
    assert typed.what == "to B4-2, with Fen"
    assert move_typed(1, ON, "b9-1").event.place == "B9·1"
    assert move_typed(1, ON, "shelf by the window").event.place == "shelf by the window"


def test_the_kind_of_a_note_alone_is_that_kind_and_the_echo_says_so():
    alone = remark_typed(1, ON, "Mites")

    assert (alone.event.kind, alone.what) == (RemarkKind.MITES, "Mites")
    assert remark_typed(1, ON, "mites: under the chin").what == "mites: under the chin"
    assert remark_typed(1, ON, "mites again").event.kind is RemarkKind.NOTE


def test_a_remark_may_have_a_kind_and_is_otherwise_a_note():
    mites = remark_typed(1, ON, "mites: under the chin").event
    plain = remark_typed(1, ON, "ate from the hand: a first").event

    assert (mites.kind, mites.text) == (RemarkKind.MITES, "under the chin")
    assert (plain.kind, plain.text) == (RemarkKind.NOTE, "ate from the hand: a first")
    with pytest.raises(ValueError, match="a few words"):
        remark_typed(1, ON, "mites:  ")


@pytest.mark.parametrize(
    "text", ["41.2, read the wrong tub", "41,2 read the wrong tub", "41.2 g; read the wrong tub"]
)
def test_a_weight_is_put_right_with_point_or_comma(text):
    event, reason = weighing_corrected(WEIGHED, text)

    assert (event.weight_g, reason) == (41.2, "read the wrong tub")
    assert event.happened == WEIGHED.happened


@pytest.mark.parametrize("text", ["41.2", "41.2,", "read the wrong tub", "-3, slip"])
def test_a_weight_is_never_put_right_without_weight_and_reason(text):
    with pytest.raises(ValueError, match="needs the weight and a reason"):
        weighing_corrected(WEIGHED, text)


def test_no_weight_is_put_right_to_nothing():
    with pytest.raises(ValueError, match="0 g is no weight"):
        weighing_corrected(WEIGHED, "0, slip")


def test_an_offer_put_right_was_seen():
    event, reason = offer_corrected(ASSUMED, "refused, found behind the hide")

    assert (event.result, event.evidence) == (Result.REFUSED, Evidence.SEEN)
    assert (event.prey, reason) == ("mouse fuzzy", "found behind the hide")


def test_nothing_was_offered_where_nothing_is_told_to_have_been():
    event, _ = offer_corrected(ASSUMED, "not offered, wrong tub")

    assert (event.prey, event.count, event.mass_g) == (None, None, None)


def test_words_are_chosen_whatever_their_case():
    assert chosen("PART taken", {"part taken": 1, "taken": 2}, "result") == 1


@pytest.fixture
def book(tmp_path):
    with closing(a_book(tmp_path / "typed.book")) as keeping:
        wren(keeping)
        yield keeping


def test_an_entry_is_of_this_instant_today_and_of_the_day_before(book):
    row = AnimalNow(animal=1, code="x", species="house_snake", hatched_first=HATCHED)

    assert happened_on(book, row, TODAY).at == book.now()
    assert happened_on(book, row, date(2026, 9, 2)).day == date(2026, 9, 2)
    with pytest.raises(ValueError, match="is a day to come"):
        happened_on(book, row, date(2026, 11, 26))
    with pytest.raises(ValueError, match="lies before hatching"):
        happened_on(book, row, date(2026, 3, 17))


ROWS = [
    AnimalNow(animal=n, code=code, species="house_snake", name=name, place=place)
    for n, (code, name, place) in enumerate(
        (
            ("26-031", "Wren", "B4·2"),
            ("26-003", "Wrenna", "B4·12"),
            ("24-002", "Ingrid", "C1·1"),
            ("26-188", None, None),
        )
    )
]


@pytest.mark.parametrize(
    ("text", "codes"),
    [
        ("wren", ["26-031", "26-003"]),
        ("wrenn", ["26-003"]),
        ("b4-2", ["26-031"]),
        ("B4", ["26-031", "26-003"]),
        ("26188", ["26-188"]),
        ("grid", ["24-002"]),
        ("zz", []),
        ("  ", []),
    ],
)
def test_an_animal_is_found_by_code_name_or_place(text, codes):
    assert [row.code for row in found(ROWS, text)] == codes
