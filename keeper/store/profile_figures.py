"""A profile's figures by dotted key: shown, checked, and replaced by the keeper's own."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import fields, is_dataclass, replace
from difflib import get_close_matches
from itertools import pairwise
from typing import Any

from keeper.husbandry.events import Override
from keeper.husbandry.profile import PreyGrade, Sourced, SpeciesProfile
from keeper.language import tr
from keeper.store.profile_schema import check_limit, check_rising, limit_of


def every_figure(profile: SpeciesProfile) -> Iterator[tuple[str, Sourced]]:
    """Each figure of *profile* with its dotted key, such as ``holds.regurgitated.days``.

    Prey stands as ``prey.mouse.hopper.mean_g``. Growth curves are no single figures: each
    carries its own source.
    """
    for key, part in _parts(profile, ""):
        if isinstance(part, Sourced):
            yield key, part


def with_overrides(profile: SpeciesProfile, overrides: Iterable[Override]) -> SpeciesProfile:
    """*profile* with the keeper's own figures in place, each beside the shipped one.

    Overrides of other species are passed over; of two for one key the later stands. A key
    of ``feeding`` may leave out the sex and then holds for all.

    Raises:
        ValueError: unknown key or impossible value, as one sentence; nothing is changed.
    """
    names = names_of(profile)
    figures = dict(every_figure(profile))
    changes: dict[str, Sourced] = {}
    for override in overrides:
        if plain_name(override.species) in names:
            for key in _keys_meant(override.key, figures):
                changes[key] = _own_figure(override, figures[key])
    changed = _changed(profile, "", changes) if changes else profile
    check_whole(changed)
    return changed


def check_whole(profile: SpeciesProfile) -> None:
    """Refuse a low figure above its high one, and a stage that ends before the one before it."""
    for key, part in _parts(profile, ""):
        check_rising(part, key)
    for earlier, later in pairwise(profile.stages):
        for name in ("until_age_days", "until_weight_g"):
            low, high = (getattr(profile.stages[stage], name).value for stage in (earlier, later))
            if not low < high:
                told = tr(
                    "{key}: {meaning}; must be more than {low:g}, where {earlier} ends,"
                    " is {high:g}",
                    key=f"stages.{later}.{name}",
                    meaning=limit_of(name).meaning,
                    low=low,
                    earlier=earlier,
                    high=high,
                )
                raise ValueError(told)


def names_of(profile: SpeciesProfile) -> frozenset[str]:
    """Every name the profile answers to, as compared by ``plain_name``."""
    written = (profile.slug, profile.scientific, profile.english, *profile.also)
    return frozenset(map(plain_name, written))


def plain_name(written: str) -> str:
    """A name as compared: case, hyphens, underscores and doubled blanks do not matter.

    >>> plain_name(" Western  Hog-nosed_Snake ")
    'western hog nosed snake'
    """
    return " ".join(written.casefold().replace("_", " ").replace("-", " ").split())


def _keys_meant(written: str, figures: Mapping[str, Sourced]) -> list[str]:
    if written in figures:
        return [written]
    meant = [key for key in figures if _without_sex(key) == written]
    if not meant:
        near = get_close_matches(written, [*figures, *map(_without_sex, figures)], 1, 0)
        raise ValueError(
            tr(
                "no figure is called {written!r}; the nearest is {near!r}",
                written=written,
                near=near[0],
            )
        )
    return meant


def _without_sex(key: str) -> str:
    """``feeding.adult.male.retry_days`` as ``feeding.adult.retry_days``; other keys as they are."""
    parts = key.split(".")
    return ".".join(parts[:2] + parts[3:]) if parts[0] == "feeding" else key


def _own_figure(override: Override, figure: Sourced) -> Sourced:
    value = check_limit(override.key, override.value)
    shipped = figure.value if figure.shipped is None else figure.shipped
    return Sourced(
        value=value, source=tr("own figure: {reason}", reason=override.reason), shipped=shipped
    )


def _parts(node: Any, key: str) -> Iterator[tuple[str, Any]]:
    """Sections and figures of *node*, outer before inner, with their keys."""
    yield key, node
    if not isinstance(node, Sourced):
        for name, child in _children(node):
            yield from _parts(child, f"{key}.{name}" if key else name)


def _children(node: Any) -> Iterable[tuple[str, Any]]:
    if isinstance(node, Mapping):
        return node.items()
    if isinstance(node, tuple):
        return [(f"{g.kind}.{g.name}", g) for g in node if isinstance(g, PreyGrade)]
    if is_dataclass(node):
        return [(field.name, getattr(node, field.name)) for field in fields(node)]
    return ()


def _changed(node: Any, key: str, changes: Mapping[str, Sourced]) -> Any:
    """*node* rebuilt with the figures named in *changes*."""
    if isinstance(node, Sourced):
        return changes.get(key, node)
    rebuilt = {
        name: _changed(child, f"{key}.{name}" if key else name, changes)
        for name, child in _children(node)
    }
    if not rebuilt:
        return node
    if isinstance(node, tuple):
        return tuple(rebuilt.values())
    return rebuilt if isinstance(node, Mapping) else replace(node, **rebuilt)
