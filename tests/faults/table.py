"""The table of faults in DEVELOPERS.md, made from what the campaigns found when they last ran.

python3 tests/faults/table.py           writes it into DEVELOPERS.md
python3 tests/faults/table.py --show    prints it
"""

import json
import sys
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
FIGURES = Path(__file__).with_name("figures.json")
PAGE = ROOT / "DEVELOPERS.md"
BEGIN, END = "<!-- faults:begin -->", "<!-- faults:end -->"
EVERY = "in every run of the suite"
NOT_RUN = "campaign not run"
Told = Callable[[Mapping[str, Any]], str]


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """A fault. tests: where it is held. often and result: plain, or told from the figures."""

    number: str
    fault: str
    how: str
    tests: tuple[str, ...]
    often: str | Told = EVERY
    result: str | Told


def harm(tally: Mapping[str, Any]) -> str:
    corrupt, half, lost = tally["harm"]
    return f"{corrupt} corrupt, {half} half, {lost} with an acknowledged batch lost"


def controls(figures: Mapping[str, Any]) -> str:
    told = [
        f"{name}: {max(tally['harm'])} of {tally['states']:,}"
        for name, tally in figures.items()
        if isinstance(tally, Mapping)
    ]
    return "harm seen, as it must be: " + "; ".join(told)


def scenes(figures: Mapping[str, Any]) -> str:
    told = [(name, each) for name, each in figures.items() if isinstance(each, Mapping)]
    return "; ".join(f"{name}: {harm(each)}" for name, each in told)


def flips(figures: Mapping[str, Any]) -> str:
    found, alone = figures["flips"], figures.get("alone")
    without = f"; without any backup {_flipped(alone)}" if alone else ""
    return (
        f"{found.get('refused', 0)} refused on opening and all offered the backup, "
        f"{found.get('found', 0)} found by the check, {found.get('harmless', 0)} changed nothing, "
        f"{found.get('unseen', 0)} unseen; {found['mended and sound']} of {found['mended']} mended "
        f"copies sound; {figures['cut']['refused']} of 100 cut short refused{without}"
    )


def _flipped(found: Mapping[str, int]) -> str:
    return (
        f"{found.get('refused', 0)} refused, {found.get('found', 0)} found by the check and the"
        f" checksums of batches, {found.get('harmless', 0)} changed nothing,"
        f" {found.get('unseen', 0)} unseen"
    )


ROWS = (
    Row(
        number="F1",
        fault="killed at any moment",
        how="kill -9 of a process that says each batch after it is written",
        tests=("tests/faults/test_world.py", "tests/store/test_faults.py"),
        often=lambda f: f"{f['kills']} kills, {f['acknowledged']:,} acknowledged batches",
        result=lambda f: f"0 lost, 0 half, sound after each; reopened in {f['reopened_s']} s",
    ),
    Row(
        number="F2",
        fault="power loss while entries are written",
        how="system calls of the real stack recorded by strace; unsynced sectors, lengths and"
        " names dropped by chance; every book opened by the real SQLite",
        tests=("tests/faults/test_power_loss.py",),
        often=lambda f: f"{f['states']:,} states, {f['different']:,} different",
        result=harm,
    ),
    Row(
        number="F2 controls",
        fault="the same with a way of writing that loses",
        how="no sync; journal deleted as SQLite does by itself; acknowledged before written",
        tests=("tests/faults/test_power_loss.py",),
        often="1,000 states each",
        result=controls,
    ),
    Row(
        number="F3",
        fault="power loss in a migration and in a restore",
        how="the same replay; old or new, never between; the old file keeps a name",
        tests=("tests/faults/test_power_loss.py",),
        often="2,000 states each",
        result=scenes,
    ),
    Row(
        number="F4",
        fault="disk full",
        how="a limit on the size of files while writing; also while backing up, restoring,"
        " bringing up, making and mending",
        tests=("tests/store/test_faults.py", "tests/faults/test_world.py"),
        often=lambda f: f"{f['tries']:,} tries",
        result=lambda f: f"told {f['told']} times, {f['lost']} lost, written again with room",
    ),
    Row(
        number="F5",
        fault="file and folder that may only be read",
        how="another user's process; a connection that may only read",
        tests=("tests/faults/test_world.py", "tests/store/test_opening.py"),
        result="read, told, refused in one sentence, no traceback",
    ),
    Row(
        number="F6",
        fault="a second window, two processes",
        how="two writers at once past the lock; a second window; a lock left by a killed process",
        tests=("tests/faults/test_world.py", "tests/store/test_locks.py"),
        often=lambda f: f"{f['batches']} batches by two processes",
        result=lambda f: f"{f['lost']} lost; the second window is told who writes and reads",
    ),
    Row(
        number="F7",
        fault="damaged, cut short, empty, garbage",
        how="random bits flipped; cut at random lengths; held against the newest proved backup"
        " and, without one, against the checksums of batches",
        tests=(
            "tests/faults/test_damage.py",
            "tests/store/test_checksums.py",
            "tests/store/test_mending.py",
        ),
        often=lambda f: f"{sum(f['flips'].get(k, 0) for k in _KINDS):,} flipped, 100 cut",
        result=flips,
    ),
    Row(
        number="F8",
        fault="another program's database",
        how="other SQLite files in two journal modes",
        tests=("tests/store/test_opening.py",),
        result="refused, every byte as it was",
    ),
    Row(
        number="F9",
        fault="a newer book",
        how="user_version raised by one",
        tests=("tests/store/test_opening.py",),
        result="refused with both versions, every byte as it was",
    ),
    Row(
        number="F10",
        fault="a book of an earlier version",
        how="a kept book of more than 1,000 rows for each version; steps that fail half way",
        tests=("tests/store/test_migrations.py",),
        result="every row there, schema and triggers as a new book's, backed up first; a failed"
        " step changes nothing",
    ),
    Row(
        number="F11",
        fault="clock set back or ahead, zones, the hour that comes twice",
        how="injected clocks; five zones for the whole command line",
        tests=("tests/faults/test_hostile_text.py", "tests/store/test_journal.py"),
        result="order by key, nothing lost or doubled, backups not rotated away, due days alike",
    ),
    Row(
        number="F12",
        fault="hostile CSV",
        how="formulas, quotes, NUL, BOM, bidi, huge numbers, odd dates, SQL",
        tests=("tests/faults/test_hostile_text.py", "tests/unit/test_taking_in_files.py"),
        often=lambda f: f"{f['cells']:,} cells in 100 files, {f['notes_taken']:,} notes taken",
        result=lambda f: (
            f"{f['half']} half imports, {f['untold']} refusals without a line, {f['otherwise']}"
            f" previews unlike the result, {f['notes_read_otherwise']} notes read back otherwise"
        ),
    ),
    Row(
        number="F13, F14",
        fault="encodings and shapes of CSV",
        how="UTF-16, code pages, NUL, unclosed quotes, wrong counts",
        tests=("tests/unit/test_taking_in_files.py",),
        result="refused by line and byte, with what it may be",
    ),
    Row(
        number="F15",
        fault="formulas in an export",
        how="hostile notes written out, looked at cell by cell, taken in again and written again",
        tests=("tests/faults/test_export.py",),
        often=lambda f: f"{f['cells']:,} cells",
        result=lambda f: (
            f"{f['dangerous']} cells that a spreadsheet would run, {f['otherwise']} read back"
            " otherwise; negative numbers as they are"
        ),
    ),
    Row(
        number="F16",
        fault="any order of deeds",
        how="a state machine of two stations against a plain model: record, correct, take back,"
        " put back, reopen, back up, restore, join",
        tests=("tests/store/test_histories.py",),
        often=lambda f: f"{f['examples']:,} histories of up to {f['steps']} steps",
        result=lambda f: f"{f['differences']} differences",
    ),
    Row(
        number="F17",
        fault="bundles with hostile names",
        how="the source searched for readers of archives; batches from elsewhere with paths for"
        " names",
        tests=("tests/architecture/test_safety.py", "tests/faults/test_world.py"),
        result="no archive is read; nothing written outside the book and its folder",
    ),
    Row(
        number="F18",
        fault="photos that are none, too large, or tell more than they show",
        how="files that are no pictures, hostile names, pictures with places in them",
        tests=("tests/desktop/test_photos.py",),
        result="refused in one sentence, or written anew without a word and stored by hash",
    ),
    Row(
        number="F19",
        fault="hostile searches",
        how="quotes, SQL, wildcards, brackets in the search and as a code",
        tests=("tests/faults/test_hostile_text.py", "tests/architecture/test_safety.py"),
        often="1,000 searches, " + EVERY,
        result="found or not, no error of SQL, nothing changed; values only ever as parameters",
    ),
    Row(
        number="F20",
        fault="others looking in; code that comes with data",
        how="modes of all files after a round of the program under umask 022; the source searched",
        tests=("tests/faults/test_world.py", "tests/architecture/test_safety.py"),
        result="0600 and 0700 throughout; no unsafe loader, no network outside the live feed",
    ),
    Row(
        number="F21",
        fault="a backup that cannot be gone back to",
        how="every kept backup restored, compared and checked",
        tests=("tests/faults/test_world.py", "tests/store/test_backups.py"),
        often=lambda f: f"{f['backups']} backups of {f['megabytes']} MB",
        result=lambda f: (
            f"all restored and checked; the slowest in {f['slowest_s']} s of computing"
        ),
    ),
    Row(
        number="F22",
        fault="abuse of every place",
        how="random keys, clicks, wheels and sizes in every place, then closing",
        tests=("tests/faults/test_abuse.py",),
        often=lambda f: f"{f['events']:,} events, {f['written']:,} batches written by them",
        result=lambda f: (
            f"exits {sorted(set(f['exits']))}, {f['faults']} faults, {f['findings']} findings of"
            f" the check; references to None fell by {-min(f['none_fell'])} at most"
        ),
    ),
)
_KINDS = ("refused", "refused otherwise", "found", "harmless", "unseen")


def table(figures: Mapping[str, Mapping[str, Any]]) -> str:
    """The rows as Markdown."""
    head = "| | fault | how tried | how often | result |\n|---|---|---|---|---|\n"
    return head + "".join(_line(row, figures.get(row.number.split(",")[0])) for row in ROWS)


def _line(row: Row, figures: Mapping[str, Any] | None) -> str:
    cells = [_cell(each, figures) for each in (row.often, row.result)]
    held = ", ".join(f"`{path.removeprefix('tests/')}`" for path in row.tests)
    return f"| {row.number} | {row.fault} | {row.how} ({held}) | {cells[0]} | {cells[1]} |\n"


def _cell(told: str | Told, figures: Mapping[str, Any] | None) -> str:
    if isinstance(told, str):
        return told
    return NOT_RUN if figures is None else told(figures)


def read() -> dict[str, dict[str, Any]]:
    return json.loads(FIGURES.read_text(encoding="utf-8")) if FIGURES.exists() else {}


def page_with(text: str, rows: str) -> str:
    """*text* with *rows* between the two marks."""
    before, _, rest = text.partition(BEGIN)
    _, _, after = rest.partition(END)
    return f"{before}{BEGIN}\n{rows}{END}{after}"


def main(arguments: list[str]) -> int:
    rows = table(read())
    if "--show" in arguments:
        sys.stdout.write(rows)
        return 0
    PAGE.write_text(page_with(PAGE.read_text(encoding="utf-8"), rows), encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
