"""The tables of a book, as SQL.

Every event table is insert-only: triggers refuse UPDATE and DELETE. Instants are
seconds of UTC, utc_offset is minutes east at the place, days count from 1970-01-01,
masses are milligrams, lengths millimetres, temperatures thousandths of a degree; packed
readings are hundredths (store/readings.py).
"""

import sqlite3
from collections.abc import Mapping
from contextlib import closing
from functools import cache
from types import MappingProxyType

_WHEN = """
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL"""

ANIMAL_COLUMNS = {
    "described": """
        code TEXT NOT NULL CHECK (code <> ''), species TEXT NOT NULL, name TEXT, line TEXT,
        hatched_first INTEGER, hatched_last INTEGER,
        dam INTEGER REFERENCES animal (id), sire INTEGER REFERENCES animal (id), clutch TEXT""",
    "sexed": """
        sex TEXT NOT NULL CHECK (sex IN ('female', 'male', 'unknown')), sexed_by TEXT NOT NULL""",
    "stock": "status TEXT NOT NULL",
    "moved": "place TEXT",
    "offer": """
        result TEXT NOT NULL
            CHECK (result IN ('taken', 'part taken', 'refused', 'left in', 'not offered')),
        evidence TEXT NOT NULL CHECK (evidence IN ('seen', 'gone at check', 'assumed', 'reported')),
        prey TEXT, count INTEGER CHECK (count > 0), mass_mg INTEGER CHECK (mass_mg > 0),
        withheld TEXT, round INTEGER REFERENCES round (id), line INTEGER""",
    "regurgitation": "",
    "weighing": """
        weight_mg INTEGER NOT NULL CHECK (weight_mg > 0), resolution_mg INTEGER,
        typed_twice INTEGER NOT NULL CHECK (typed_twice IN (0, 1))""",
    "measured": "svl_mm INTEGER CHECK (svl_mm > 0), body_score REAL CHECK (body_score > 0)",
    "total_length": "total_mm INTEGER NOT NULL CHECK (total_mm > 0)",
    "shed_sign": """
        stage TEXT NOT NULL CHECK (stage IN ('dull', 'opaque', 'cleared', 'shed')),
        quality TEXT, pre_lay INTEGER NOT NULL CHECK (pre_lay IN (0, 1))""",
    "hold_set": "kind TEXT NOT NULL, until INTEGER",
    "hold_ended": "kind TEXT NOT NULL",
    "clutch": "good INTEGER NOT NULL, slugs INTEGER NOT NULL, mass_mg INTEGER, code TEXT",
    "paired": """
        mate INTEGER NOT NULL REFERENCES animal (id),
        locked INTEGER NOT NULL CHECK (locked IN (0, 1))""",
    "remark": "kind TEXT NOT NULL, text TEXT NOT NULL",
    "snooze": "watch_kind TEXT NOT NULL, until INTEGER NOT NULL, reason TEXT NOT NULL",
    "aside_until": "watch_kind TEXT NOT NULL, awaited TEXT NOT NULL, reason TEXT NOT NULL",
    "offered_through": "kind TEXT NOT NULL, yes INTEGER NOT NULL CHECK (yes IN (0, 1))",
    "start_step": "step TEXT NOT NULL",
    "cleaned": "extent TEXT NOT NULL CHECK (extent IN ('spot', 'whole'))",
    "medicine": """
        medicine TEXT NOT NULL, amount TEXT NOT NULL, route TEXT NOT NULL,
        first_on INTEGER NOT NULL, last_on INTEGER NOT NULL,
        every_days INTEGER NOT NULL CHECK (every_days > 0), lot TEXT,
        times_a_day INTEGER CHECK (times_a_day > 0)""",
    "dose": "medicine TEXT NOT NULL, told TEXT NOT NULL, given_by TEXT",
    "faecal_test": "result TEXT NOT NULL",
    "permit": "kind TEXT NOT NULL, number TEXT NOT NULL, expires INTEGER NOT NULL",
    "eggs": "fate TEXT NOT NULL, count INTEGER NOT NULL CHECK (count > 0), clutch TEXT",
    "eggs_placed": "place TEXT, box TEXT, clutch TEXT",
    "gene_read": """
        gene TEXT NOT NULL, told TEXT NOT NULL,
        percent REAL CHECK (percent > 0 AND percent < 100)""",
    "look_scored": """
        trait TEXT NOT NULL, score REAL NOT NULL CHECK (score >= 1 AND score <= 10)""",
}

HOUSE_COLUMNS = {
    "heat": """
        place TEXT NOT NULL, zone TEXT NOT NULL, temp_mc INTEGER NOT NULL, read_with TEXT""",
    "probe_placed": "probe TEXT NOT NULL CHECK (probe <> ''), zone TEXT NOT NULL, place TEXT",
    "setting": "key TEXT NOT NULL, value TEXT NOT NULL",
    "override": """
        species TEXT NOT NULL, key TEXT NOT NULL, value REAL NOT NULL, reason TEXT NOT NULL""",
    "round_opened": "round INTEGER NOT NULL REFERENCES round (id), keeper TEXT NOT NULL",
    "round_closed": "round INTEGER NOT NULL REFERENCES round (id)",
    "night_answer": "told TEXT NOT NULL",
    "plan_line": """
        round INTEGER NOT NULL REFERENCES round (id), line INTEGER NOT NULL,
        animal INTEGER NOT NULL REFERENCES animal (id), place TEXT, state TEXT NOT NULL,
        prey TEXT, count INTEGER, mass_mg INTEGER, caution TEXT, because TEXT NOT NULL""",
    "daily_round": "place TEXT",
    "bag_opened": "prey TEXT NOT NULL, bag TEXT NOT NULL",
    "prey_counted": """
        prey TEXT NOT NULL, bag TEXT NOT NULL, items INTEGER NOT NULL CHECK (items >= 0)""",
    "mite_step": "place TEXT, told TEXT NOT NULL, treatment TEXT",
    "house_permit": "kind TEXT NOT NULL, number TEXT NOT NULL, expires INTEGER NOT NULL",
    "place_aside": """
        place TEXT, watch_kind TEXT NOT NULL, until INTEGER NOT NULL, reason TEXT NOT NULL""",
    "readings_taken": """
        name TEXT NOT NULL, sha256 TEXT NOT NULL, read_as TEXT NOT NULL,
        readings INTEGER NOT NULL, aside INTEGER NOT NULL""",
    "keeper_away": """
        first_on INTEGER NOT NULL, last_on INTEGER NOT NULL, covered_by TEXT, fed_on TEXT""",
    "gene_named": """
        gene TEXT NOT NULL, species TEXT NOT NULL, inheritance TEXT NOT NULL, hidden_by TEXT""",
}

SPINE_TABLES = ("batch", "withdrawal", "animal", "round")
EVENT_TABLES = (*ANIMAL_COLUMNS, *HOUSE_COLUMNS)

# The checksum stands where SQLite puts a column that is added: old and new books read alike.
_SPINE = """
CREATE TABLE batch (
    id INTEGER PRIMARY KEY,
    station TEXT NOT NULL,
    keeper TEXT NOT NULL,
    verb TEXT NOT NULL,
    written INTEGER NOT NULL,
    utc_offset INTEGER NOT NULL,
    reason TEXT
, checksum INTEGER) STRICT;
CREATE TABLE withdrawal (
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    target_batch INTEGER NOT NULL REFERENCES batch (id),
    target_seq INTEGER NOT NULL CHECK (target_seq >= -1),
    PRIMARY KEY (batch, seq),
    CHECK (target_batch < batch)
) STRICT, WITHOUT ROWID;
CREATE INDEX withdrawal_target ON withdrawal (target_batch);
CREATE TABLE withdrawn (
    batch INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE animal (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batch (id)
) STRICT;
CREATE TABLE round (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batch (id)
) STRICT;
"""

_ANIMAL_NOW = """
CREATE TABLE animal_now (
    animal INTEGER PRIMARY KEY REFERENCES animal (id),
    code TEXT NOT NULL, species TEXT NOT NULL, name TEXT, line TEXT, clutch TEXT,
    hatched_first INTEGER, hatched_last INTEGER, dam INTEGER, sire INTEGER,
    sex TEXT NOT NULL, sexed_by TEXT, status TEXT NOT NULL, status_on INTEGER,
    place TEXT, place_since INTEGER, caution TEXT,
    first_entry_on INTEGER, last_entry_on INTEGER,
    eaten_on INTEGER, eaten_prey TEXT, eaten_count INTEGER, eaten_mg INTEGER,
    offered_on INTEGER, offered_result TEXT, refused_since INTEGER NOT NULL,
    regurgitated_on INTEGER, regurgitated_before_on INTEGER,
    meals_since_regurgitation INTEGER NOT NULL, meals INTEGER NOT NULL,
    weight_mg INTEGER, weighed_on INTEGER,
    meal_before_weighing_mg INTEGER, meal_before_weighing_on INTEGER,
    weight_before_mg INTEGER, weighed_before_on INTEGER,
    shed_on INTEGER, shed_before_on INTEGER, stage TEXT, stage_since INTEGER,
    clutch_on INTEGER, svl_mm INTEGER, body_score REAL, scored_on INTEGER
) STRICT;
CREATE INDEX animal_now_code ON animal_now (code);
"""

READING_TABLES = ("reading_day", "reading_layer", "reading_over", "reading_file")
"""Readings of probes lie outside the batches, packed by the day and merged.

What a file brought is exchanged with what lay beneath it when its batch is taken back
(store/reading_layers.py). ``reading_over`` holds what was heard live over a file's slots; its
batch is 0, or the join that brought it. ``reading_file`` tells files of books that had no batch
for them.
"""

_READINGS = """
CREATE TABLE reading_day (
    probe TEXT NOT NULL CHECK (probe <> ''),
    day INTEGER NOT NULL,
    slots BLOB NOT NULL CHECK (length(slots) = 576),
    hours BLOB NOT NULL CHECK (length(hours) = 144),
    PRIMARY KEY (probe, day)
) STRICT, WITHOUT ROWID;
CREATE TABLE reading_layer (
    probe TEXT NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL,
    owned BLOB NOT NULL CHECK (length(owned) = 36),
    held BLOB NOT NULL CHECK (length(held) IN (0, 576)),
    stands INTEGER NOT NULL CHECK (stands IN (0, 1)),
    PRIMARY KEY (probe, day, batch)
) STRICT, WITHOUT ROWID;
CREATE TABLE reading_over (
    probe TEXT NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL,
    over INTEGER NOT NULL,
    owned BLOB NOT NULL CHECK (length(owned) = 36),
    held BLOB NOT NULL CHECK (length(held) IN (0, 576)),
    stands INTEGER NOT NULL CHECK (stands IN (0, 1)),
    PRIMARY KEY (probe, day, batch, over)
) STRICT, WITHOUT ROWID;
CREATE TABLE reading_file (
    sha256 TEXT NOT NULL,
    read_as TEXT NOT NULL,
    name TEXT NOT NULL,
    taken INTEGER NOT NULL,
    readings INTEGER NOT NULL,
    aside INTEGER NOT NULL,
    PRIMARY KEY (sha256, read_as)
) STRICT, WITHOUT ROWID;
"""

CACHES = ("withdrawn", "animal_now")
"""Derived tables: thrown away and rebuilt at will, everything else is insert-only."""


def _animal_table(name: str, columns: str) -> str:
    return f"""
CREATE TABLE {name} (
    animal INTEGER NOT NULL REFERENCES animal (id),{_WHEN},
    note TEXT,{columns}{"," if columns else ""}
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE INDEX {name}_batch ON {name} (batch);
"""


def _house_table(name: str, columns: str) -> str:
    return f"""
CREATE TABLE {name} (
    {_WHEN.strip()},
    {columns.strip()},
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE INDEX {name}_batch ON {name} (batch);
"""


def _insert_only(table: str) -> str:
    return "".join(
        f"""
CREATE TRIGGER {table}_no_{verb.lower()} BEFORE {verb} ON {table}
BEGIN SELECT RAISE(ABORT, '{table} is insert-only'); END;
"""
        for verb in ("UPDATE", "DELETE")
    )


def fresh_schema() -> str:
    """The whole SQL of a new book."""
    guarded = (*SPINE_TABLES, *EVENT_TABLES)
    return "".join(
        (
            _SPINE,
            *(_animal_table(name, columns) for name, columns in ANIMAL_COLUMNS.items()),
            *(_house_table(name, columns) for name, columns in HOUSE_COLUMNS.items()),
            "CREATE INDEX plan_line_round ON plan_line (round, line);\n",
            "CREATE INDEX offer_round ON offer (round, line) WHERE round IS NOT NULL;\n",
            "CREATE INDEX hold_set_until ON hold_set (until);\n",
            "CREATE INDEX setting_key ON setting (key);\n",
            "CREATE INDEX heat_place ON heat (place, day);\n",
            "CREATE INDEX shed_sign_pre_lay ON shed_sign (animal) WHERE pre_lay = 1;\n",
            _READINGS,
            _ANIMAL_NOW,
            *(_insert_only(table) for table in guarded),
        )
    )


def schema_parts(connection: sqlite3.Connection) -> dict[str, str]:
    """The SQL of each table, index and trigger of a book, by kind and name."""
    rows = connection.execute(
        """SELECT type || ' ' || name, sql FROM sqlite_master
           WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite!_%' ESCAPE '!'"""
    )
    return dict(rows.fetchall())


@cache
def new_parts() -> Mapping[str, str]:
    """The same of a new book."""
    with closing(sqlite3.connect(":memory:")) as fresh:
        fresh.executescript(fresh_schema())
        return MappingProxyType(schema_parts(fresh))
