"""What a join would do or did, in sentences that the window and the command line share."""

from keeper.actions.bundle_files import Bundled
from keeper.actions.clashes import Clash
from keeper.actions.joining import Joining
from keeper.husbandry.reasons import because
from keeper.reports.words import sentence
from keeper.store.rows import day_of
from keeper.store.ticking import Step

SHOWN = 12


def joining_told(found: Joining, shown: int = SHOWN) -> list[str]:
    """What is new, what is the same and what clashes, a sentence each; so many clashes."""
    if found.conflicts:
        count, first = len(found.conflicts), str(found.conflicts[0])
        return [sentence(because("joining conflicts", count=count, first=first))]
    if not found.is_new:
        told = [sentence(because("joining nothing", known=found.known))]
        return told + _readings_told(found)
    new = because(
        "joining",
        animals=found.animals,
        entries=found.entries,
        new=found.batches,
        photos=found.photos,
        readings=found.shown,
        known=found.known,
    )
    return [sentence(new), *_readings_told(found), *_clashes_told(found.clashes, shown)]


def step_told(step: Step, done: int, of: int) -> str:
    """How far it is, and that it can be called off; the lines where they are counted."""
    return sentence(because(f"step {step.value}", done=done if of else None, count=of or None))


def bundled_told(done: Bundled) -> str:
    """How much was written out, and where."""
    figures = {"animals": done.animals, "entries": done.entries, "photos": done.photos}
    told = because("bundle written", path=str(done.folder), readings=done.readings, **figures)
    return sentence(told)


def _readings_told(found: Joining) -> list[str]:
    differ = found.readings.conflicts
    if not differ:
        return []
    probe, day, _ = differ[0]
    told = because("joining readings differ", count=len(differ), probe=probe, on=day_of(day))
    return [sentence(told)]


def _clashes_told(clashes: tuple[Clash, ...], most: int) -> list[str]:
    if not clashes:
        return []
    shown = [_clash_told(clash) for clash in clashes[:most]]
    more = len(clashes) - most
    rest = [sentence(because("clashes more", count=more))] if more > 0 else []
    return [sentence(because("joining clashes")), *shown, *rest]


def _clash_told(clash: Clash) -> str:
    told = "; ".join(clash.told)
    return sentence(because(f"clash {clash.kind.value}", about=clash.about, told=told))
