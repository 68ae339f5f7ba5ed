"""The picture of generations: nothing hides another, told apart without hue, told in words."""

from itertools import combinations

import pytest
from PySide6.QtCore import QPointF, QRectF, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QApplication, QWidget
from shots import WAYS_OF_SEEING, lightness, rms_difference

from keeper.actions.colour_desk import ColourChoice
from keeper.desktop.light import DAY, DIM_SHARES, MARK_PAIRS, RED_LAMP, TEXT_PAIRS, dimmed
from keeper.desktop.look import Look
from keeper.desktop.paper.colour_chart import colour_artist
from keeper.desktop.widgets.colour_panel import ColourPanel
from keeper.desktop.widgets.generation_marks import paint_dot, paint_ring
from keeper.desktop.widgets.generation_shape import RING, score_y, shape_of
from keeper.desktop.widgets.generations import GenerationsPicture
from keeper.husbandry.animal import Sex
from keeper.reports.colour_facts import ColourFacts, Dot, GenerationRow, PairToCome
from keeper.rules.colour import expected_young
from keeper.rules.colour_heredity import heritability
from keeper.rules.colour_selection import verdict
from tests.colour_line import TODAY

CHOICE = ColourChoice(
    species="house_snake", kind="house snake", line="Fen", trait="red", scored=3, generations=2
)
PLOT = QRectF(0, 0, 600, 300)
LEAST = 7.0
"""Least root mean square difference of L*, as for tiles without letters; the house's own figure."""

LIGHTS = {"day": DAY, "red lamp": RED_LAMP, "dimmest": dimmed(RED_LAMP, len(DIM_SHARES) - 1)}


def a_dot(animal=1, score=5.0, generation=0, **changed):
    told = {"called": f"Ara {animal}", "sex": Sex.FEMALE, "here": True} | changed
    return Dot(animal=animal, score=score, generation=generation, **told)


def a_pair(letter="A", generation=2, **changed):
    told = {
        "dam": "Tansy", "sire": "Orrin", "how": "laid", "on": TODAY, "mid_parent": 8.0,
        "line_mean": 5.0, "mean_of": 20, "expected": expected_young(5, 1.5, 0.4, 8),
    } | changed  # fmt: skip
    return PairToCome(letter=letter, generation=generation, **told)


def some_facts(*dots, pairs=(), rows=None):
    means = {dot.generation: dot.score for dot in dots}
    mids = [None, 7.0, 7.5, 8.0]
    told = rows or [
        GenerationRow(generation=n, scored=1, mean=mean, mid_parent=mids[n])
        for n, mean in sorted(means.items())
    ]
    return ColourFacts(
        choice=CHOICE, on=TODAY, age="third shed", dots=dots, generations=tuple(told),
        families=(), pairs=tuple(pairs), heritability=heritability([]), sd=1.5, steps=(),
        verdict=verdict((), 0.4),
    )  # fmt: skip


def crowd(many, generation=1):
    """Many scores to half points, as an eye gives them; every tenth is bred from."""
    return [
        a_dot(n, score=1 + (n * 7 % 19) / 2, generation=generation, selected=n % 10 == 0)
        for n in range(many)
    ]


@pytest.mark.parametrize("many", [1, 20, 90])
def test_no_dot_lies_on_another_nor_in_a_ring(many):
    shape = shape_of(some_facts(*crowd(many)), PLOT, 5.0)
    reach = [shape.radius * (RING if n % 10 == 0 else 1) for n in range(many)]

    for (n, one), (m, other) in combinations(enumerate(shape.places), 2):
        apart = (one - other).x() ** 2 + (one - other).y() ** 2
        assert apart**0.5 >= reach[n] + reach[m] - 1e-6


@pytest.mark.parametrize("many", [400, 900])
def test_so_many_that_they_would_run_into_the_next_generation_stand_in_lines(many):
    facts = some_facts(*crowd(many), a_dot(9999, generation=3))
    shape = shape_of(facts, PLOT, 5.0)
    places = sorted(shape.places[:many], key=lambda p: (round(p.y(), 3), p.x()))
    column = shape.columns[1]

    assert len({(round(p.x(), 2), round(p.y(), 2)) for p in places}) == many
    assert all(column.first <= p.x() <= column.right for p in places)
    for dot, place in zip(facts.dots[:many], shape.places, strict=False):
        assert abs(place.y() - score_y(PLOT, dot.score)) < score_y(PLOT, 1) - score_y(PLOT, 1.25)


def test_a_dot_stands_at_the_height_of_its_score():
    dots = crowd(40)
    shape = shape_of(some_facts(*dots), PLOT, 5.0)

    assert [p.y() for p in shape.places] == [score_y(PLOT, dot.score) for dot in dots]


def test_dots_stay_in_the_column_of_their_generation():
    facts = some_facts(*crowd(60), a_dot(99), pairs=[a_pair()])
    shape = shape_of(facts, PLOT, 5.0)

    for dot, place in zip(facts.dots, shape.places, strict=True):
        column = shape.columns[dot.generation]
        assert column.first <= place.x() <= column.right


def test_bands_of_what_may_come_stand_beside_the_dots():
    shape = shape_of(some_facts(a_dot(), a_dot(2, generation=2), pairs=[a_pair()]), PLOT, 5.0)
    column = shape.columns[2]

    assert column.right <= column.bands[0] < column.bands[1] <= PLOT.right()


def mark(palette_light, **how):
    image = QImage(44, 44, QImage.Format.Format_RGB32)
    image.fill(QColor(palette_light.ground))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.scale(2.0, 2.0)
    place, ringed = QPointF(11, 9.6), how.pop("ringed", False)
    look = FixedLook(palette_light)
    paint_dot(painter, look, a_dot(**how), place, 4.5)
    if ringed:
        paint_ring(painter, look, place, 4.5)
    painter.end()
    return image


class FixedLook(Look):
    """A look with one palette."""

    def __init__(self, palette):
        super().__init__()
        self._one = palette

    @property
    def palette(self):
        return self._one


MARKS = {
    "female": {},
    "male": {"sex": Sex.MALE},
    "not known": {"sex": Sex.UNKNOWN},
    "gone": {"here": False},
    "male gone": {"sex": Sex.MALE, "here": False},
    "bred from": {"ringed": True},
    "another age": {"like_age": False},
}


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
def test_no_two_marks_look_alike_to_any_eye(qapp, light, seen):
    seen_as = {name: lightness(mark(light, **how), seen) for name, how in MARKS.items()}

    for one, other in combinations(MARKS, 2):
        assert rms_difference(seen_as[one], seen_as[other]) >= LEAST, (one, other)


def test_every_mark_and_text_is_a_pair_whose_contrast_is_checked():
    assert {("ink", "ground"), ("ink3", "ground"), ("point", "ground")} <= set(MARK_PAIRS)
    assert {("ink", "ground"), ("ink2", "ground")} <= set(TEXT_PAIRS)


def painted(qtbot, facts, size=(600, 320), *, red=False):
    look = Look(red_lamp=red)
    look.fit(QSizeF(1024, 600), 96.0)
    picture = GenerationsPicture(look)
    qtbot.addWidget(picture)
    picture.resize(*size)
    picture.show_colour(facts)
    return picture.grab().toImage()


@pytest.mark.parametrize("red", [False, True])
@pytest.mark.parametrize("size", [(600, 320), (220, 160), (1400, 800)])
def test_it_is_painted_in_any_room_and_light(qtbot, size, red):
    few = painted(qtbot, some_facts(a_dot()), size, red=red)
    more = painted(qtbot, some_facts(a_dot(), *crowd(50), pairs=[a_pair()]), size, red=red)

    assert few.size() == more.size()
    assert few != more


@pytest.mark.parametrize(
    "changed",
    [
        {"sex": Sex.MALE},
        {"here": False},
        {"selected": True},
        {"like_age": False},
        {"score": 5.5},
    ],
)
def test_what_is_told_of_an_animal_is_seen(qtbot, changed):
    kept = [GenerationRow(generation=0, scored=2, mean=5.0)]
    others = [
        a_dot(5, 2.0), a_dot(6, 2.0, sex=Sex.MALE), a_dot(7, 2.0, here=False),
        a_dot(8, 2.0, selected=True), a_dot(9, 2.0, like_age=False),
    ]  # fmt: skip

    plain = painted(qtbot, some_facts(a_dot(), *others, rows=kept))
    other = painted(qtbot, some_facts(a_dot(**changed), *others, rows=kept))

    assert plain != other


def test_the_picture_says_in_words_what_it_shows(qtbot):
    picture = GenerationsPicture(Look())
    qtbot.addWidget(picture)

    picture.show_colour(some_facts(a_dot(selected=True), pairs=[a_pair()]))

    words = picture.text().replace("\u00a0", " ")
    assert "founders: mean 5 of 1 scored." in words
    assert "young 6.2 expected, nine in ten 3.8–8.6" in words
    assert "Bred from: Ara 1 5." in words


def test_paper_shows_the_same_picture(qapp):
    image = QImage(700, 400, QImage.Format.Format_RGB32)
    image.fill("white")
    painter = QPainter(image)
    colour_artist(some_facts(a_dot(), *crowd(30), pairs=[a_pair()]))(painter, QSizeF(700, 400))
    painter.end()

    assert lightness(image, "as drawn").min() < 10


def panel(qtbot, facts, size):
    host = QWidget()
    qtbot.addWidget(host)
    shown = ColourPanel(Look(), host)
    shown.resize(*size)
    shown.show_colour(facts)
    host.show()
    QApplication.processEvents()
    shown.host = host  # qtbot holds it weakly
    return shown


def test_words_stand_beside_the_picture_in_a_wide_room_and_beneath_it_in_a_narrow(qtbot):
    facts = some_facts(a_dot(), pairs=[a_pair()])

    wide, narrow = panel(qtbot, facts, (900, 400)), panel(qtbot, facts, (500, 600))

    assert wide.words.x() > wide.picture.geometry().right()
    assert narrow.words.y() > narrow.picture.geometry().bottom()


def test_the_panel_answers_whether_selection_works_and_how_many_to_hold(qtbot):
    shown = panel(qtbot, some_facts(a_dot(), pairs=[a_pair()]), (900, 400))

    words = shown.words.text().replace("\u00a0", " ")
    assert words.startswith("Is selection working: Cannot tell yet.")
    assert "9 % score above their parents, about one in 11" in words
    assert "25 tubs hold one nine times in ten" in words


def test_turned_over_the_words_have_the_whole_room(qtbot):
    shown = panel(qtbot, some_facts(a_dot(), pairs=[a_pair()]), (500, 400))
    before = shown.words.height()

    shown.turn_over()
    QApplication.processEvents()
    assert (shown.picture.isVisible(), shown.words.height()) == (False, 400)

    shown.turn_over()
    QApplication.processEvents()
    assert (shown.picture.isVisible(), shown.words.height()) == (True, before)


def test_without_scores_it_says_how_to_begin(qtbot):
    shown = panel(qtbot, None, (900, 400))

    assert not shown.picture.isVisible()
    assert "red 7" in shown.words.text()
