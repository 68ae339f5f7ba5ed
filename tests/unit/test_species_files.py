"""Species profiles: what loads, what is refused and in which words, names and own figures."""

import shutil
from dataclasses import fields, is_dataclass
from datetime import date
from pathlib import Path
from typing import Any, get_args

import pytest

from keeper.husbandry import profile as vocabulary
from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.events import HoldKind, Override
from keeper.husbandry.profile import FeedingFigures, Sourced, SpeciesProfile
from keeper.husbandry.when import on_day
from keeper.store.profile_schema import LIMITS, RISING
from keeper.store.resources import resource_dir
from keeper.store.species_files import (
    every_figure,
    load_profiles,
    profile_for,
    shipped_profiles,
    with_overrides,
)

PROFILES = load_profiles()
SLUGS = ("ball_python", "corn_snake", "house_snake", "western_hognose")


@pytest.fixture
def home(tmp_path: Path) -> Path:
    """A copy of the shipped species, growth and prey that a test may spoil."""
    for folder in ("species", "growth", "prey"):
        shutil.copytree(resource_dir() / folder, tmp_path / folder)
    return tmp_path


def spoil(path: Path, old: str, new: str) -> None:
    """Put *new* in place of the first *old*, which must be there."""
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), encoding="utf-8")


def own(key: str, value: float, species: str = "house_snake", reason: str = "my line") -> Override:
    return Override(
        happened=on_day(date(2026, 3, 1)), species=species, key=key, value=value, reason=reason
    )


def figure(profile: SpeciesProfile, key: str) -> Sourced:
    return dict(every_figure(profile))[key]


def test_the_four_species_are_there() -> None:
    assert tuple(PROFILES) == SLUGS


@pytest.mark.parametrize("slug", SLUGS)
def test_every_figure_has_a_source(slug: str) -> None:
    figures = list(every_figure(PROFILES[slug]))

    assert len(figures) > 200
    assert [key for key, found in figures if not found.source.strip()] == []


@pytest.mark.parametrize("slug", SLUGS)
def test_every_hold_and_every_stage_and_sex_has_figures(slug: str) -> None:
    profile = PROFILES[slug]

    assert set(profile.holds) == set(HoldKind)
    assert set(profile.feeding) == set(Stage)
    assert all(set(by_sex) == set(Sex) for by_sex in profile.feeding.values())
    assert set(profile.growth) == {Sex.FEMALE, Sex.MALE}
    assert profile.prey


@pytest.mark.parametrize("slug", SLUGS)
def test_only_quarantine_and_cooling_and_dated_holds_may_run_on_unrenewed(slug: str) -> None:
    endless = {
        kind
        for kind, hold in PROFILES[slug].holds.items()
        if hold.days is None and hold.renew_after_days is None
    }

    assert endless == {HoldKind.COOLING}


def test_every_kind_of_figure_has_a_meaning_and_limits() -> None:
    sections = [kind for kind in vars(vocabulary).values() if is_dataclass(kind)]
    named = {
        field.name
        for kind in sections
        for field in fields(kind)
        if field.type is Sourced or Sourced in _inside(field.type)
    }

    assert named == set(LIMITS)


def test_every_rising_key_is_a_kind_of_figure() -> None:
    assert {name for names in RISING for name in names} <= set(LIMITS)


def _inside(kind: Any) -> tuple[Any, ...]:
    return tuple(part for arg in get_args(kind) for part in (arg, *_inside(arg)))


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        (
            "interval_days = { is = 5,",
            "interval_days = { is = -3,",
            "feeding.hatchling.both.interval_days: days between meals; "
            "must be between 1 and 60, is -3",
        ),
        ("meal_percent = { is = 20,", "meal_percent = { is = nan,", "is nan"),
        ("meal_percent = { is = 20,", "meal_percent = { is = inf,", "is inf"),
        ("meal_percent = { is = 20,", "meal_percent = { is = true,", "is True"),
        ("meal_percent = { is = 20,", 'meal_percent = { is = "20",', "is 20"),
        ("meal_percent = { is = 20,", "meal_percent = { was = 20,", "was: no such key"),
        (
            "meal_percent_low = { is = 10,",
            "meal_percent_low = { is = 25,",
            "must not be more than feeding.hatchling.both.meal_percent (20), is 25",
        ),
        (
            'late_days = { is = 2, source = "common practice" }',
            "late_days = { is = 2 }",
            "feeding.hatchling.both.late_days: days a feed may be given after it is due; "
            "its source is missing",
        ),
        (
            'late_days = { is = 2, source = "common practice" }',
            'late_days = { is = 2, source = " " }',
            "late_days.source: must be written words",
        ),
        (
            'late_days = { is = 2, source = "common practice" }',
            "late_days = 2",
            "must be written { is = 7",
        ),
        (
            'late_days = { is = 2, source = "common practice" }\n',
            "",
            "feeding.hatchling.both.late_days is missing (days a feed may be given",
        ),
        ("late_days =", "latest_days =", "latest_days: no such key; the keys here are interval"),
        ("[feeding.juvenile.both]", "[feeding.juvenile.female]", "feeding.juvenile.male is miss"),
        ("[feeding.juvenile.both]", "[feeding.infant.both]", "feeding.infant: no such key"),
        ("[holds.gravid]", "[holds.pregnant]", "holds.pregnant: no such key"),
        ("[holds.opaque]\nskip = true", '[holds.opaque]\nskip = "yes"', "must be true or false"),
        ("until_age_days = { is = 182,", "until_age_days = { is = 80,", "must be more than 90"),
        ("until_weight_g = { is = 60,", "until_weight_g = { is = 15,", "must be more than 20"),
        ("hot_low_c = { is = 30,", "hot_low_c = { is = 34,", "heat.hot_low_c"),
        ("[sheds.interval_days_low]\nhatchling = { is = 21", "[sheds.interval_days_low]\n"
         "hatchling = { is = 36", "must not be more than sheds.interval_days_high.hatchling"),
        ('slug = "house_snake"', 'slug = "house"', "slug: must be the file’s own name"),
        ('slug = "house_snake"', 'slug = "house_snake"\ncolour = "brown"', "colour: no such key"),
        ('english = "African house snake"', 'english = ""', "english: must be written words"),
        ('prey = ["mouse", "rat"]', 'prey = ["mouse", "vole"]', "'vole' has no file"),
        ('"house snake"', '"royal python"', "names both ball_python and house_snake"),
        ("[heat]", "[heat", "species/house_snake.toml: "),
    ],
)  # fmt: skip
def test_an_impossible_profile_is_refused_by_its_key(
    home: Path, old: str, new: str, told: str
) -> None:
    spoil(home / "species" / "house_snake.toml", old, new)

    with pytest.raises(ValueError) as refusal:
        load_profiles(home)

    assert told in str(refusal.value)
    assert "\n" not in str(refusal.value)


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("age_days = [0, 11,", "age_days = [0, 25,", "age_days: must rise, but 20 follows 25"),
        ("age_days = [0, 11,", "age_days = [1, 11,", "two or more, from 0"),
        ("age_days = [0, 11,", "age_days = [0,", "must be lists of one length"),
        ("m_g = [5.5,", "m_g = [-5.5,", "female.m_g: must be more than 0, is -5.5"),
        ("m_g = [5.5,", "m_g = [nan,", "female.m_g: must be a number, is nan"),
        ("s = [0.12,", "s = [0,", "female.s: must be more than 0, is 0"),
        ('basis = "provisional"', 'basis = "guessed"', "must be published or provisional"),
        ("[male]", "[males]", "males: no such key"),
    ],
)
def test_an_impossible_growth_curve_is_refused(home: Path, old: str, new: str, told: str) -> None:
    spoil(home / "growth" / "house_snake.toml", old, new)

    with pytest.raises(ValueError, match=r"^growth/house_snake\.toml: ") as refusal:
        load_profiles(home)

    assert told in str(refusal.value)


def test_a_missing_growth_file_is_told(home: Path) -> None:
    (home / "growth" / "corn_snake.toml").unlink()

    with pytest.raises(ValueError, match=r"growth/corn_snake\.toml is missing"):
        load_profiles(home)


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "slug is missing"),
        (b"\xff\xfe[\x00", "must be UTF-8 text, byte 0 is not"),
        (b"# " + b"x" * 1_000_001, "larger than 1000000 bytes"),
        (b"a = " + b"[\n" * 9_000, "nested too deeply"),
        (b"a." * 400_000 + b"a = 1", "a line is longer than 1000 characters"),
        (b"slug = 1\x00", "species/house_snake.toml: "),
    ],
)
def test_a_hostile_file_is_refused(home: Path, content: bytes, told: str) -> None:
    (home / "species" / "house_snake.toml").write_bytes(content)

    with pytest.raises(ValueError, match="house_snake") as refusal:
        load_profiles(home)

    assert told in str(refusal.value)


def test_a_folder_without_profiles_is_told(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="holds no species profile"):
        load_profiles(tmp_path)


def test_a_profile_with_a_byte_order_mark_loads(home: Path) -> None:
    path = home / "species" / "house_snake.toml"
    path.write_text("\ufeff" + path.read_text(encoding="utf-8"), encoding="utf-8")

    assert load_profiles(home)["house_snake"] == PROFILES["house_snake"]


@pytest.mark.parametrize(
    ("written", "slug"),
    [
        ("Boaedon capensis", "house_snake"),
        ("lamprophis FULIGINOSUS", "house_snake"),
        ("African house snake", "house_snake"),
        ("house_snake", "house_snake"),
        (" Cape  house snake ", "house_snake"),
        ("Python regius", "ball_python"),
        ("royal python", "ball_python"),
        ("Pantherophis guttatus", "corn_snake"),
        ("Corn-Snake", "corn_snake"),
        ("western hog-nosed snake", "western_hognose"),
    ],
)
def test_a_species_is_found_by_any_of_its_names(written: str, slug: str) -> None:
    assert profile_for(PROFILES, written).slug == slug


def test_an_unknown_species_is_told_the_names_that_would_do() -> None:
    with pytest.raises(ValueError) as refusal:
        profile_for(PROFILES, "garter snake")

    assert str(refusal.value) == (
        "no profile is called 'garter snake'; there are ball python (Python regius), "
        "corn snake (Pantherophis guttatus), African house snake (Boaedon capensis), "
        "western hognose (Heterodon nasicus)"
    )


@pytest.mark.parametrize("field", [field.name for field in fields(FeedingFigures)])
def test_an_unknown_sex_is_fed_by_the_more_careful_figure(field: str) -> None:
    by_sex = PROFILES["house_snake"].feeding[Stage.ADULT]
    female, male = (getattr(by_sex[sex], field).value for sex in (Sex.FEMALE, Sex.MALE))
    careful = max if field in ("gap_after_meal_days", "retry_days") else min

    assert getattr(by_sex[Sex.UNKNOWN], field).value == careful(female, male)


def test_sexes_really_differ_where_the_more_careful_is_chosen() -> None:
    by_sex = PROFILES["house_snake"].feeding[Stage.ADULT]

    assert by_sex[Sex.FEMALE].meal_percent.value > by_sex[Sex.UNKNOWN].meal_percent.value


def test_an_own_figure_stands_beside_the_shipped_one() -> None:
    key = "feeding.adult.female.interval_days"
    shipped = PROFILES["house_snake"]

    changed = with_overrides(shipped, [own(key, 12)])

    assert figure(changed, key) == Sourced(value=12, source="own figure: my line", shipped=10)
    assert figure(shipped, key).value == 10


def test_an_own_figure_changes_nothing_else() -> None:
    key = "holds.pre-lay shed.renew_after_days"

    changed = dict(every_figure(with_overrides(PROFILES["house_snake"], [own(key, 15)])))

    before = dict(every_figure(PROFILES["house_snake"]))
    assert {name for name in before if before[name] != changed[name]} == {key}


def test_a_feeding_key_without_a_sex_means_all_three() -> None:
    changed = with_overrides(PROFILES["house_snake"], [own("feeding.hatchling.interval_days", 6)])

    by_sex = changed.feeding[Stage.HATCHLING]
    assert [by_sex[sex].interval_days.value for sex in Sex] == [6, 6, 6]


def test_the_later_of_two_own_figures_stands_and_the_shipped_is_kept() -> None:
    key = "prey.mouse.hopper.mean_g"

    once = with_overrides(PROFILES["house_snake"], [own(key, 9)])
    twice = with_overrides(once, [own(key, 8.5), own(key, 8.2)])

    assert figure(twice, key) == Sourced(value=8.2, source="own figure: my line", shipped=8)


def test_own_figures_of_another_species_are_passed_over() -> None:
    override = own("heat.keep_c", 27, species="Python regius")

    assert with_overrides(PROFILES["house_snake"], [override]) == PROFILES["house_snake"]
    assert with_overrides(PROFILES["ball_python"], [override]).heat.keep_c.value == 27


@pytest.mark.parametrize(
    ("key", "value", "told"),
    [
        ("feeding.hatchling.interval", 7, "no figure is called 'feeding.hatchling.interval'; the "
         "nearest is 'feeding.hatchling.interval_days'"),
        ("", 7, "no figure is called ''"),
        ("holds.opaque.skip", 0, "no figure is called 'holds.opaque.skip'"),
        ("feeding.hatchling.interval_days", -3, "feeding.hatchling.interval_days: days between "
         "meals; must be between 1 and 60, is -3"),
        ("heat.keep_c", float("nan"), "must be between 5 and 40, is nan"),
        ("heat.hot_low_c", 33, "must not be more than heat.hot_high_c (32), is 33"),
        ("stages.juvenile.until_age_days", 60, "must be more than 90, where hatchling ends"),
    ],
)  # fmt: skip
def test_an_impossible_own_figure_is_refused(key: str, value: float, told: str) -> None:
    with pytest.raises(ValueError) as refusal:
        with_overrides(PROFILES["house_snake"], [own(key, value)])

    assert told in str(refusal.value)


@pytest.mark.parametrize("slug", SLUGS)
def test_no_planned_meal_falls_between_two_grades(slug: str) -> None:
    means_g = [grade.mean_g.value for grade in PROFILES[slug].prey]
    meals_g = [1.0 + step / 20 for step in range(2000)]  # 1 to 101 g

    between = [meal for meal in meals_g if not _made_up_of(means_g, meal)]

    assert between == []


def _made_up_of(means_g: list[float], meal_g: float) -> bool:
    """Whether one to three items of one grade come within a fifth of the meal."""
    return any(0.8 <= n * mean / meal_g <= 1.2 for mean in means_g for n in (1, 2, 3))


def test_a_process_reads_the_shipped_profiles_once_and_nobody_changes_them():
    shipped = shipped_profiles()

    assert shipped is shipped_profiles()
    assert dict(shipped) == PROFILES
    with pytest.raises(TypeError):
        shipped["house_snake"] = PROFILES["ball_python"]
