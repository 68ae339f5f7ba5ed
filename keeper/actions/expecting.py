"""What a species, a sex and an age are expected to weigh; needs no book."""

from collections.abc import Mapping
from dataclasses import dataclass

from keeper.actions.csv_file import Wrong
from keeper.husbandry.animal import Sex
from keeper.husbandry.profile import SpeciesProfile
from keeper.reports.words import species_words
from keeper.rules.growth.expectation import Expectation, Standing, expectation, standing
from keeper.store.species_files import profile_for

_OLDEST_DAYS = 36_525


@dataclass(frozen=True, slots=True, kw_only=True)
class Expected:
    """standing is None without a weight."""

    profile: SpeciesProfile
    sex: Sex
    age_days: int
    weight_g: float | None
    expectation: Expectation
    standing: Standing | None


def expect(
    profiles: Mapping[str, SpeciesProfile],
    *,
    species: str,
    sex: Sex,
    age_days: int,
    weight_g: float | None = None,
) -> Expected:
    """The profile's curve at an age, and where an empty weight stands on it.

    Raises:
        Wrong: an unknown species, a sex without a curve, or an age no snake has.
    """
    profile = known_profile(profiles, species)
    if not 0 <= age_days <= _OLDEST_DAYS:
        raise Wrong("impossible age", value=age_days, most=_OLDEST_DAYS)
    curve = profile.growth.get(sex)
    if curve is None:
        raise _sex_needed(profile, age_days)
    found = expectation(curve, age_days)
    return Expected(
        profile=profile,
        sex=sex,
        age_days=age_days,
        weight_g=weight_g,
        expectation=found,
        standing=None if weight_g is None else standing(found, weight_g),
    )


def known_profile(profiles: Mapping[str, SpeciesProfile], written: str) -> SpeciesProfile:
    """The profile that a written name means.

    Raises:
        Wrong: none goes by that name.
    """
    try:
        return profile_for(profiles, written)
    except ValueError:
        right = ", ".join(species_words(profile) for profile in profiles.values())
        raise Wrong("unknown species", value=written, right=right) from None


def _sex_needed(profile: SpeciesProfile, age_days: int) -> Wrong:
    """Growth differs by sex, so both medians are named rather than a mixture told."""
    female, male = (expectation(profile.growth[s], age_days) for s in (Sex.FEMALE, Sex.MALE))
    return Wrong("sex needed", age_days=age_days, female_g=female.m_g, male_g=male.m_g)
