"""The males that were with each female: paired with her, or in her tub, up to a day."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from datetime import date, timedelta

from keeper.actions.clutch_detail import TubStay, may_sire, tub_stays
from keeper.actions.females import FemaleRow
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.now import AnimalNow
from keeper.rules.sires import Exposure, Meeting


class Meetings:
    """Asked female by female; the stays of males are looked through once.

    everyone: every animal of the book, those who left too.
    """

    def __init__(self, keeping: Keeping, everyone: Mapping[AnimalId, AnimalNow], on: date) -> None:
        self._keeping, self._everyone, self._on = keeping, everyone, on
        self._stays = tub_stays(keeping, everyone)
        self._males: dict[str, list[TubStay]] = defaultdict(list)
        for animal, stays in self._stays.items():
            if everyone[animal].sex is Sex.MALE:
                for stay in stays:
                    self._males[stay.place].append(stay)

    def of(self, female: FemaleRow) -> list[tuple[str, Exposure]]:
        """Name of the male and how he was with her, oldest first."""
        found = [*self._paired(female), *self._shared(female.animal)]
        found.sort(key=lambda met: (met.first, met.last, met.male))
        return [(self._everyone[met.male].called, met) for met in found]

    def _paired(self, female: FemaleRow) -> Iterator[Exposure]:
        own = female.animal.animal
        for paired in female.pairings:
            mate = paired.mate if paired.animal == own else paired.animal
            day = paired.happened.day
            if day <= self._on and may_sire(self._everyone.get(mate), female.animal):
                how: Meeting = "lock" if paired.locked else "paired"
                yield Exposure(male=mate, first=day, last=day, how=how)

    def _shared(self, female: AnimalNow) -> Iterator[Exposure]:
        """Days on which both lived in one tub, from his maturity on."""
        mature = timedelta(days=round(self._keeping.profile(female).clutch.mature_days.value))
        for own in self._stays.get(female.animal, ()):
            for his in self._males.get(own.place, ()):
                male = self._everyone[his.animal]
                if not may_sire(male, female):
                    continue
                grown_on = male.hatched_first + mature if male.hatched_first else date.min
                first = max(his.first, own.first, grown_on)
                last = min(his.last, own.last, self._on)
                if first <= last:
                    yield Exposure(male=his.animal, first=first, last=last, how="tub")
