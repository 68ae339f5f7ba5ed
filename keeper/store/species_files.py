"""Species profiles from resources/species/*.toml, with their growth curves and prey."""

import tomllib
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import fields
from functools import cache
from pathlib import Path
from types import MappingProxyType
from typing import Any

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.events import HoldKind
from keeper.husbandry.profile import (
    BreedingFigures,
    ClutchFigures,
    FeedingFigures,
    HeatFigures,
    HoldFigures,
    IncubatorFigures,
    LmsCurve,
    PreyGrade,
    RefusalFigures,
    ShedFigures,
    SpeciesProfile,
    StageLimits,
    WeightFigures,
)
from keeper.language import tr
from keeper.store.profile_figures import (
    check_whole,
    every_figure,
    names_of,
    plain_name,
    with_overrides,
)
from keeper.store.profile_schema import curve, missing, no_others, no_such_key, plain, read
from keeper.store.resources import resource_dir

__all__ = ["every_figure", "load_profiles", "profile_for", "shipped_profiles", "with_overrides"]

LARGEST_FILE_BYTES = 1_000_000
LONGEST_LINE = 1_000
"""A profile is some 300 short lines; a megabyte of keys nested 5000 deep holds the reader up."""

_SECTIONS: Mapping[str, Any] = {
    "slug": str,
    "scientific": str,
    "english": str,
    "also": tuple[str, ...],
    "cautions": tuple[str, ...],
    "stages": Mapping[Stage, StageLimits],
    "holds": Mapping[HoldKind, HoldFigures],
    "sheds": ShedFigures,
    "heat": HeatFigures,
    "incubator": IncubatorFigures,
    "clutch": ClutchFigures,
    "weights": WeightFigures,
    "refusals": RefusalFigures,
    "breeding": Mapping[Sex, BreedingFigures],
}
_LONGEST_WINS = frozenset({"gap_after_meal_days", "retry_days"})
"""Of two sexes' feeding figures the more careful is the smaller, but for these the larger."""


def load_profiles(directory: Path | None = None) -> dict[str, SpeciesProfile]:
    """Every profile under *directory* (``species``, ``growth`` and ``prey`` in it), by slug.

    Raises:
        ValueError: one sentence that names the file, the key and its meaning.
    """
    home = resource_dir() if directory is None else directory
    paths = sorted((home / "species").glob("*.toml"))
    if not paths:
        raise ValueError(tr("{folder} holds no species profile (*.toml)", folder=home / "species"))
    prey = {path.stem: _grades(path) for path in sorted((home / "prey").glob("*.toml"))}
    profiles = {path.stem: _profile(path, prey) for path in paths}
    _slugs_by_name(profiles.values())
    return profiles


@cache
def shipped_profiles() -> Mapping[str, SpeciesProfile]:
    """The profiles that come with the program, which a process reads and checks once."""
    return MappingProxyType(load_profiles())


def profile_for(profiles: Mapping[str, SpeciesProfile], written_name: str) -> SpeciesProfile:
    """The profile that *written_name* means: its slug or any of its names, in any case.

    Raises:
        ValueError: no profile goes by that name; the sentence says which names would do.
    """
    if written_name in profiles:  # as the book has it: asked of every animal on every board
        return profiles[written_name]
    slug = _slugs_by_name(profiles.values()).get(plain_name(written_name))
    if slug is None:
        right = ", ".join(f"{p.english} ({p.scientific})" for p in profiles.values())
        raise ValueError(
            tr("no profile is called {name!r}; there are {right}", name=written_name, right=right)
        )
    return profiles[slug]


def _slugs_by_name(profiles: Iterable[SpeciesProfile]) -> dict[str, str]:
    slugs: dict[str, str] = {}
    for profile in profiles:
        for name in names_of(profile):
            other = slugs.setdefault(name, profile.slug)
            if other != profile.slug:
                raise ValueError(
                    tr(
                        "{name!r} names both {one} and {other}",
                        name=name,
                        one=other,
                        other=profile.slug,
                    )
                )
    return slugs


def _profile(path: Path, prey: Mapping[str, tuple[PreyGrade, ...]]) -> SpeciesProfile:
    table = _table(path)
    growth = _growth(path.parent.parent / "growth" / path.name)
    with _told_of(path):
        return _assembled(table, path.stem, growth, prey)


def _assembled(
    table: Mapping[str, Any],
    slug: str,
    growth: Mapping[Sex, LmsCurve],
    prey: Mapping[str, tuple[PreyGrade, ...]],
) -> SpeciesProfile:
    known = (*_SECTIONS, "feeding", "prey")
    for name in table:
        if name not in known:
            raise ValueError(no_such_key(name, ", ".join(known)))
    for name in known:
        if name not in table:
            raise ValueError(missing(name))
    if table["slug"] != slug:
        raise ValueError(
            tr(
                "slug: must be the file’s own name, {right!r}, is {slug!r}",
                right=slug,
                slug=table["slug"],
            )
        )
    sections = {name: read(kind, table[name], name) for name, kind in _SECTIONS.items()}
    grades = _prey_of(read(tuple[str, ...], table["prey"], "prey"), prey)
    profile = SpeciesProfile(
        **sections, feeding=_feeding(table["feeding"]), growth=growth, prey=grades
    )
    check_whole(profile)
    return profile


def _feeding(raw: object) -> dict[Stage, dict[Sex, FeedingFigures]]:
    table = plain(dict, raw, "feeding")
    no_others(table, Stage, "feeding")
    for stage in Stage:
        if stage not in table:
            raise ValueError(missing(f"feeding.{stage}"))
    return {stage: _by_sex(table[stage], f"feeding.{stage}") for stage in Stage}


def _by_sex(raw: object, key: str) -> dict[Sex, FeedingFigures]:
    """``both``, or ``female`` and ``male``; for an unknown sex the more careful of each figure."""
    table = plain(dict, raw, key)
    wanted = ("both",) if "both" in table else (Sex.FEMALE.value, Sex.MALE.value)
    no_others(table, wanted, key)
    for word in wanted:
        if word not in table:
            raise ValueError(
                tr("{missing}; give both, or female and male", missing=missing(f"{key}.{word}"))
            )
    read_in: list[FeedingFigures] = [
        read(FeedingFigures, table[word], f"{key}.{word}") for word in wanted
    ]
    female, male = read_in[0], read_in[-1]
    return {Sex.FEMALE: female, Sex.MALE: male, Sex.UNKNOWN: _more_careful(female, male)}


def _more_careful(one: FeedingFigures, other: FeedingFigures) -> FeedingFigures:
    """Smaller meals, no longer wait for the next, never sooner after a meal or a refusal."""
    chosen = {}
    for field in fields(FeedingFigures):
        pair = (getattr(one, field.name), getattr(other, field.name))
        pick = max if field.name in _LONGEST_WINS else min
        chosen[field.name] = pick(pair, key=lambda figure: figure.value)
    return FeedingFigures(**chosen)


def _growth(path: Path) -> dict[Sex, LmsCurve]:
    if not path.is_file():
        raise ValueError(
            tr("{file} is missing: every profile needs its growth curves", file=_said(path))
        )
    table = _table(path)
    with _told_of(path):
        no_others(table, (Sex.FEMALE, Sex.MALE), path.stem)
        for sex in (Sex.FEMALE, Sex.MALE):
            if sex not in table:
                raise ValueError(tr("{missing}: growth is told by sex", missing=missing(sex)))
        return {sex: curve(table[sex], sex) for sex in (Sex.FEMALE, Sex.MALE)}


def _grades(path: Path) -> tuple[PreyGrade, ...]:
    table = _table(path)
    with _told_of(path):
        no_others(table, ("grade",), path.stem)
        rows = plain(list, table.get("grade"), "grade")
        return tuple(_grade(row, path.stem) for row in rows)


def _grade(row: object, kind: str) -> PreyGrade:
    table = plain(dict, row, "grade")
    name = plain(str, table.get("name"), "grade.name")
    made: PreyGrade = read(PreyGrade, {"kind": kind, **table}, f"prey.{kind}.{name}")
    return made


def _prey_of(
    kinds: Iterable[str], prey: Mapping[str, tuple[PreyGrade, ...]]
) -> tuple[PreyGrade, ...]:
    for kind in kinds:
        if kind not in prey:
            raise ValueError(
                tr(
                    "prey: {kind!r} has no file; there are {right}",
                    kind=kind,
                    right=", ".join(prey),
                )
            )
    return tuple(grade for kind in kinds for grade in prey[kind])


def _table(path: Path) -> dict[str, Any]:
    with _told_of(path):
        if path.stat().st_size > LARGEST_FILE_BYTES:
            raise ValueError(
                tr("is larger than {most} bytes, so it is no profile", most=LARGEST_FILE_BYTES)
            )
        text = path.read_text(encoding="utf-8-sig")
        if max(map(len, text.splitlines()), default=0) > LONGEST_LINE:
            raise ValueError(tr("a line is longer than {most} characters", most=LONGEST_LINE))
        try:
            return tomllib.loads(text)
        except RecursionError:
            raise ValueError(tr("is nested too deeply, so it is no profile")) from None


@contextmanager
def _told_of(path: Path) -> Iterator[None]:
    """Put the file's name before what is wrong in it."""
    try:
        yield
    except UnicodeDecodeError as error:
        raise ValueError(
            tr("{file}: must be UTF-8 text, byte {byte} is not", file=_said(path), byte=error.start)
        ) from None
    except ValueError as error:
        raise ValueError(tr("{file}: {error}", file=_said(path), error=error)) from None


def _said(path: Path) -> str:
    return f"{path.parent.name}/{path.name}"
