"""What a profile file must hold: what each figure means, its limits, and how it is read in.

The dataclasses of ``keeper.husbandry.profile`` are the schema: a section of a file is one
of them, a key one of its fields. A figure is written ``{ is = 7, source = "..." }``, with
an optional ``note`` that stays in the file.
"""

from collections.abc import Iterable, Mapping
from dataclasses import fields, is_dataclass
from enum import StrEnum
from functools import cache
from itertools import pairwise
from math import isfinite
from typing import Any, NamedTuple, get_args, get_origin

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.profile import LmsCurve, Sourced
from keeper.language import tr


class Limit(NamedTuple):
    """A figure's meaning in words, and the least and most that are possible at all."""

    meaning: str
    least: float
    most: float


LIMITS: Mapping[str, Limit] = {
    # stages
    "until_age_days": Limit(tr("age at which the stage ends, days since hatching"), 1, 7300),
    "until_weight_g": Limit(tr("empty weight at which the stage ends, grams"), 0.5, 100_000),
    # feeding
    "interval_days": Limit(tr("days between meals"), 1, 60),
    "early_days": Limit(tr("days a feed may be given before it is due"), 0, 14),
    "late_days": Limit(tr("days a feed may be given after it is due"), 0, 21),
    "gap_after_meal_days": Limit(tr("days that must pass after a meal"), 1, 60),
    "retry_days": Limit(tr("days until the next offer after a refusal"), 1, 60),
    "meal_percent_low": Limit(tr("smallest usual meal, per cent of empty weight"), 0.5, 100),
    "meal_percent": Limit(tr("usual meal, per cent of empty weight"), 0.5, 100),
    "meal_percent_high": Limit(tr("largest usual meal, per cent of empty weight"), 0.5, 100),
    "item_percent_most": Limit(tr("largest single item, per cent of empty weight"), 0.5, 100),
    # holds
    "days": Limit(tr("days the hold lasts"), 1, 365),
    "part_percent": Limit(tr("share of the usual meal, per cent"), 5, 100),
    "renew_after_days": Limit(tr("days after which the hold asks to be renewed"), 1, 365),
    # sheds
    "interval_days_low": Limit(tr("shortest usual time between sheds, days"), 5, 365),
    "interval_days_high": Limit(tr("longest usual time between sheds, days"), 5, 365),
    "opaque_days_most": Limit(tr("longest usual opaque phase, days"), 1, 60),
    "cleared_days_most": Limit(tr("longest usual time from clearing to the shed, days"), 1, 60),
    "cycle_days_most": Limit(tr("longest usual time from dull to the shed, days"), 1, 90),
    "overdue_factor": Limit(tr("a shed is overdue after its own median interval times this"), 1, 5),
    "first_shed_days_most": Limit(tr("latest usual first shed, days since hatching"), 1, 120),
    "spread_log": Limit(tr("spread of shed intervals, SD of their logarithm"), 0.01, 2),
    # heat
    "hot_low_c": Limit(tr("lowest usual hot surface, °C"), 10, 50),
    "hot_high_c": Limit(tr("highest usual hot surface, °C"), 10, 50),
    "hot_act_c": Limit(tr("hot surface at which to act now, °C"), 10, 50),
    "cool_low_c": Limit(tr("lowest usual cool end, °C"), 5, 40),
    "cool_high_c": Limit(tr("highest usual cool end, °C"), 5, 40),
    "night_low_c": Limit(tr("lowest usual night, °C"), 0, 40),
    "night_high_c": Limit(tr("highest usual night, °C"), 0, 40),
    "cold_now_c": Limit(tr("cold at which to act now, °C"), 0, 40),
    "keep_c": Limit(tr("temperature used to reckon energy, °C"), 5, 40),
    "digest_hot_low_c": Limit(tr("lowest hot surface that digests a meal, °C"), 5, 40),
    # incubator
    "low_c": Limit(tr("lowest usual incubator, °C"), 15, 40),
    "high_c": Limit(tr("highest usual incubator, °C"), 15, 40),
    "off_c": Limit(tr("how far the incubator may be off, °C"), 0.1, 5),
    "off_hours": Limit(tr("hours it may be off so far"), 0.1, 48),
    "hot_now_c": Limit(tr("incubator so hot that one must act now, °C"), 20, 45),
    "hot_minutes": Limit(tr("minutes it may be so hot"), 1, 720),
    "cold_hours": Limit(tr("hours an incubator may be so cold that one must act now"), 0.1, 48),
    "pip_days_least": Limit(tr("shortest usual time from laying to pipping, days"), 20, 200),
    "pip_days_most": Limit(tr("longest usual time from laying to pipping, days"), 20, 200),
    "lie_days_most": Limit(tr("longest usual time from laying to hatching, days"), 20, 200),
    # clutch
    "sire_months_most": Limit(tr("longest time a female may keep sperm, months"), 1, 120),
    "sire_days_least": Limit(tr("shortest time from meeting a male to laying, days"), 5, 200),
    "mature_days": Limit(tr("age from which a male in her tub counts, days"), 30, 3650),
    "candle_days_least": Limit(tr("first day on which eggs are candled, after laying"), 1, 60),
    "candle_days_most": Limit(tr("last day of the first candling, after laying"), 1, 60),
    "candle_again_days": Limit(tr("day on which eggs are candled again, after laying"), 1, 120),
    "still_c": Limit(tr("temperature at which embryos stand still, °C"), 0, 25),
    "out_hours_least": Limit(tr("shortest usual time from slit to out, hours"), 0.5, 240),
    "out_hours_most": Limit(tr("longest usual time from slit to out, hours"), 0.5, 240),
    "young_shed_days_least": Limit(tr("earliest usual first shed, days since hatching"), 1, 90),
    "young_shed_days_most": Limit(tr("latest usual first shed, days since hatching"), 1, 90),
    "first_offer_days_least": Limit(tr("earliest first offer, days after the first shed"), 0, 60),
    "first_offer_days_most": Limit(tr("latest first offer, days after the first shed"), 0, 60),
    # weights
    "loss_watch_percent": Limit(tr("weight loss to watch, per cent"), 1, 50),
    "loss_act_percent": Limit(tr("weight loss to act on, per cent"), 1, 50),
    "loss_vet_percent": Limit(tr("weight loss to ask a reptile vet about, per cent"), 1, 50),
    "loss_same_day_percent": Limit(tr("weight loss for a vet the same day, per cent"), 1, 50),
    "under_z": Limit(tr("z-score at or below which a weight is low"), -5, 0),
    "under_clutch_percent": Limit(
        tr("per cent of the clutch median below which one is small"), 10, 100
    ),
    "baseline_days": Limit(tr("days of weighings that make a baseline"), 14, 730),
    "digestion_days": Limit(tr("days a meal stays in a weighing"), 0.5, 30),
    "gut_half_days": Limit(tr("days until half of a meal has left the scale"), 0.1, 30),
    "silent_percent": Limit(
        tr("difference from the expected taken without asking, per cent"), 1, 50
    ),
    "stale_days": Limit(tr("days after which a weighing is too old"), 1, 730),
    "first_meal_days_most": Limit(tr("latest usual first meal, days since hatching"), 1, 180),
    "reserve_days": Limit(tr("days a hatchling’s reserves last"), 1, 180),
    # refusals
    "husbandry_step": Limit(tr("counted refusals until husbandry is checked"), 1, 60),
    "presentation_step": Limit(tr("counted refusals until the offer is changed"), 1, 60),
    "vet_step": Limit(tr("counted refusals until a reptile vet is asked"), 1, 60),
    "review_days": Limit(tr("days since eating until a review"), 1, 365),
    # breeding
    "age_days": Limit(tr("youngest age for breeding, days since hatching"), 30, 7300),
    "weight_g": Limit(tr("lowest empty weight for breeding, grams"), 1, 100_000),
    "svl_cm": Limit(tr("shortest snout-vent length for breeding, cm"), 5, 1000),
    "score_low": Limit(tr("lowest body score for breeding, 1 to 5"), 1, 5),
    "score_high": Limit(tr("highest body score for breeding, 1 to 5"), 1, 5),
    "kept_meals": Limit(tr("meals kept down before pairing"), 0, 60),
    "shed_within_days": Limit(tr("days within which she or he must have shed"), 1, 365),
    # prey
    "low_g": Limit(tr("lightest of the grade, grams"), 0.05, 20_000),
    "high_g": Limit(tr("heaviest of the grade, grams"), 0.05, 20_000),
    "mean_g": Limit(tr("mean of the grade, grams"), 0.05, 20_000),
    "kcal_per_g": Limit(tr("energy of prey as fed, kcal per gram"), 0.1, 5),
}
"""By the last part of a key. These bound what can be typed, not what is good husbandry."""

RISING: tuple[tuple[str, ...], ...] = (
    ("meal_percent_low", "meal_percent", "meal_percent_high"),
    ("gap_after_meal_days", "interval_days"),
    ("interval_days_low", "interval_days_high"),
    ("opaque_days_most", "cycle_days_most"),
    ("hot_low_c", "hot_high_c", "hot_act_c"),
    ("cold_now_c", "night_low_c", "night_high_c", "hot_high_c"),
    ("cold_now_c", "low_c", "high_c", "hot_now_c"),
    ("candle_days_least", "candle_days_most", "candle_again_days"),
    ("out_hours_least", "out_hours_most"),
    ("young_shed_days_least", "young_shed_days_most"),
    ("first_offer_days_least", "first_offer_days_most"),
    ("pip_days_least", "pip_days_most", "lie_days_most"),
    ("cool_low_c", "cool_high_c", "hot_high_c"),
    ("night_low_c", "keep_c", "hot_high_c"),
    ("loss_watch_percent", "loss_act_percent", "loss_vet_percent"),
    ("first_meal_days_most", "reserve_days"),
    ("husbandry_step", "presentation_step", "vet_step"),
    ("score_low", "score_high"),
    ("low_g", "mean_g", "high_g"),
)
"""Keys of one section that may not fall from one to the next."""

_WANTED: Mapping[str, tuple[StrEnum, ...]] = {
    "stages": (Stage.HATCHLING, Stage.JUVENILE, Stage.SUBADULT),
    "breeding": (Sex.FEMALE, Sex.MALE),
}


def limit_of(key: str) -> Limit:
    """The limit of a dotted key: that of its last part which names a figure."""
    return next(LIMITS[part] for part in reversed(key.split(".")) if part in LIMITS)


def check_limit(key: str, value: object) -> float:
    """*value* as a number possible for the figure *key*.

    Raises:
        ValueError: one sentence with the key, its meaning, the limits and the value.

    >>> check_limit("feeding.adult.female.interval_days", 10)
    10.0
    """
    limit = limit_of(key)
    if isinstance(value, int | float) and not isinstance(value, bool):  # NaN fails both bounds
        if limit.least <= value <= limit.most:
            return float(value)
        value = f"{value:g}"
    raise ValueError(
        tr(
            "{key}: {meaning}; must be between {least:g} and {most:g}, is {value}",
            key=key,
            meaning=limit.meaning,
            least=limit.least,
            most=limit.most,
            value=value,
        )
    )


def read(kind: Any, raw: object, key: str) -> Any:
    """*raw* from a file as *kind*: a dataclass, a figure, a mapping by enum, a tuple or a word.

    Raises:
        ValueError: one sentence that begins with the dotted key.
    """
    if kind is Sourced:
        return _figure(raw, key)
    if get_origin(kind) is Mapping:
        return _mapping(get_args(kind), raw, key)
    if get_origin(kind) is tuple:
        return tuple(read(get_args(kind)[0], item, key) for item in plain(list, raw, key))
    if type(None) in get_args(kind):
        return read(get_args(kind)[0], raw, key)
    return record(kind, raw, key) if is_dataclass(kind) else plain(kind, raw, key)


def record(kind: Any, raw: object, key: str) -> Any:
    """A section as the dataclass *kind*: no key too many, none missing, low never above high."""
    table = plain(dict, raw, key)
    kinds = _kinds_of(kind)
    no_others(table, kinds, key)
    for name in kinds:
        if name not in table and not _may_lack(kinds[name]):
            raise ValueError(missing(f"{key}.{name}"))
    values = {n: read(k, table[n], f"{key}.{n}") if n in table else None for n, k in kinds.items()}
    made = kind(**values)
    check_rising(made, key)
    return made


def curve(raw: object, key: str) -> LmsCurve:
    """A growth curve: lists of one length, ages from 0 and rising, weights and spread above 0."""
    made: LmsCurve = record(LmsCurve, raw, key)
    if len({len(made.age_days), len(made.l), len(made.m_g), len(made.s)}) != 1:
        raise ValueError(tr("{key}: age_days, l, m_g and s must be lists of one length", key=key))
    if len(made.age_days) < 2 or made.age_days[0] != 0:
        raise ValueError(
            tr("{key}.age_days: days since hatching; must be two or more, from 0", key=key)
        )
    for earlier, later in pairwise(made.age_days):
        if not earlier < later:
            raise ValueError(
                tr(
                    "{key}.age_days: must rise, but {later:g} follows {earlier:g}",
                    key=key,
                    later=later,
                    earlier=earlier,
                )
            )
    for name, least in (("m_g", min(made.m_g)), ("s", min(made.s))):
        if least <= 0:
            raise ValueError(
                tr("{key}: must be more than 0, is {least:g}", key=f"{key}.{name}", least=least)
            )
    if made.basis not in ("published", "provisional"):
        raise ValueError(
            tr(
                "{key}.basis: must be published or provisional, is {basis!r}",
                key=key,
                basis=made.basis,
            )
        )
    return made


def plain(kind: Any, raw: object, key: str) -> Any:
    """*raw* where it is a *kind*: a table, list, finite number, true or false, or written words."""
    if kind is str and isinstance(raw, str) and raw.strip():
        return raw.strip()
    if kind is float and isinstance(raw, int | float) and not isinstance(raw, bool):
        if isfinite(raw):
            return float(raw)
    elif kind is not str and isinstance(raw, kind):
        return raw
    raise ValueError(
        tr("{key}: must be {kind}, is {raw!r}", key=key, kind=_IN_WORDS[kind], raw=raw)
    )


def no_others(table: Iterable[str], known: Iterable[str], key: str) -> None:
    """Refuse a key that the section does not know, naming those it does."""
    names = [str(name) for name in known]
    for name in table:
        if name not in names:
            right = ", ".join(names)
            raise ValueError(no_such_key(f"{key}.{name}", right))


def missing(key: str) -> str:
    """The sentence for a key that is not there, with its meaning where it is a figure."""
    last = key.rsplit(".", 1)[-1]
    if last in LIMITS:
        return tr("{key} is missing ({meaning})", key=key, meaning=LIMITS[last].meaning)
    return tr("{key} is missing", key=key)


def no_such_key(key: str, right: str) -> str:
    """The sentence for a key that nothing knows; right: those that are known here."""
    return tr("{key}: no such key; the keys here are {right}", key=key, right=right)


def check_rising(section: Any, key: str) -> None:
    """Refuse a section in which a low figure stands above its high one."""
    kind: Any = type(section)
    for low, high in _rising_pairs(kind):
        pair = f"{key}.{low}", f"{key}.{high}"
        _check_pair(getattr(section, low), getattr(section, high), *pair)


@cache
def _rising_pairs(kind: Any) -> tuple[tuple[str, str], ...]:
    known = _kinds_of(kind)
    return tuple(pair for names in RISING for pair in pairwise(n for n in names if n in known))


def _check_pair(low: object, high: object, low_key: str, high_key: str) -> None:
    if isinstance(low, Mapping) and isinstance(high, Mapping):
        for word in low:
            _check_pair(low[word], high[word], f"{low_key}.{word}", f"{high_key}.{word}")
    elif isinstance(low, Sourced) and isinstance(high, Sourced) and low.value > high.value:
        raise ValueError(
            tr(
                "{key}: {meaning}; must not be more than {high_key} ({high:g}), is {low:g}",
                key=low_key,
                meaning=limit_of(low_key).meaning,
                high_key=high_key,
                high=high.value,
                low=low.value,
            )
        )


def _figure(raw: object, key: str) -> Sourced:
    if not isinstance(raw, dict):
        form = '{ is = 7, source = "common practice" }'
        raise ValueError(
            tr(
                "{key}: {meaning}; must be written {form}, is {raw!r}",
                key=key,
                meaning=limit_of(key).meaning,
                form=form,
                raw=raw,
            )
        )
    no_others(raw, ("is", "source", "note"), key)
    for name in ("is", "source"):
        if name not in raw:
            raise ValueError(
                tr(
                    "{key}: {meaning}; its {part} is missing",
                    key=key,
                    meaning=limit_of(key).meaning,
                    part=name,
                )
            )
    value = check_limit(key, raw["is"])
    return Sourced(value=value, source=plain(str, raw["source"], f"{key}.source"))


def _mapping(kinds: tuple[Any, ...], raw: object, key: str) -> dict[StrEnum, Any]:
    words, kind = kinds
    wanted = _WANTED.get(key, tuple(words))
    table = plain(dict, raw, key)
    no_others(table, wanted, key)
    for word in wanted:
        if word not in table:
            raise ValueError(missing(f"{key}.{word}"))
    return {word: read(kind, table[word], f"{key}.{word}") for word in wanted}


@cache
def _kinds_of(kind: Any) -> Mapping[str, Any]:
    return {f.name: f.type for f in fields(kind)} if is_dataclass(kind) else {}


def _may_lack(kind: Any) -> bool:
    return type(None) in get_args(kind)


_IN_WORDS: Mapping[type, str] = {
    dict: tr("a table"),
    list: tr("a list"),
    float: tr("a number"),
    bool: tr("true or false"),
    str: tr("written words"),
}
