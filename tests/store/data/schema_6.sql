CREATE INDEX animal_now_code ON animal_now (code);
CREATE INDEX aside_until_batch ON aside_until (batch);
CREATE INDEX bag_opened_batch ON bag_opened (batch);
CREATE INDEX cleaned_batch ON cleaned (batch);
CREATE INDEX clutch_batch ON clutch (batch);
CREATE INDEX daily_round_batch ON daily_round (batch);
CREATE INDEX described_batch ON described (batch);
CREATE INDEX dose_batch ON dose (batch);
CREATE INDEX eggs_batch ON eggs (batch);
CREATE INDEX eggs_placed_batch ON eggs_placed (batch);
CREATE INDEX faecal_test_batch ON faecal_test (batch);
CREATE INDEX gene_named_batch ON gene_named (batch);
CREATE INDEX gene_read_batch ON gene_read (batch);
CREATE INDEX heat_batch ON heat (batch);
CREATE INDEX heat_place ON heat (place, day);
CREATE INDEX hold_ended_batch ON hold_ended (batch);
CREATE INDEX hold_set_batch ON hold_set (batch);
CREATE INDEX hold_set_until ON hold_set (until);
CREATE INDEX house_permit_batch ON house_permit (batch);
CREATE INDEX keeper_away_batch ON keeper_away (batch);
CREATE INDEX look_scored_batch ON look_scored (batch);
CREATE INDEX measured_batch ON measured (batch);
CREATE INDEX medicine_batch ON medicine (batch);
CREATE INDEX mite_step_batch ON mite_step (batch);
CREATE INDEX moved_batch ON moved (batch);
CREATE INDEX night_answer_batch ON night_answer (batch);
CREATE INDEX offer_batch ON offer (batch);
CREATE INDEX offer_round ON offer (round, line) WHERE round IS NOT NULL;
CREATE INDEX offered_through_batch ON offered_through (batch);
CREATE INDEX override_batch ON override (batch);
CREATE INDEX paired_batch ON paired (batch);
CREATE INDEX permit_batch ON permit (batch);
CREATE INDEX place_aside_batch ON place_aside (batch);
CREATE INDEX plan_line_batch ON plan_line (batch);
CREATE INDEX plan_line_round ON plan_line (round, line);
CREATE INDEX prey_counted_batch ON prey_counted (batch);
CREATE INDEX probe_placed_batch ON probe_placed (batch);
CREATE INDEX readings_taken_batch ON readings_taken (batch);
CREATE INDEX regurgitation_batch ON regurgitation (batch);
CREATE INDEX remark_batch ON remark (batch);
CREATE INDEX round_closed_batch ON round_closed (batch);
CREATE INDEX round_opened_batch ON round_opened (batch);
CREATE INDEX setting_batch ON setting (batch);
CREATE INDEX setting_key ON setting (key);
CREATE INDEX sexed_batch ON sexed (batch);
CREATE INDEX shed_sign_batch ON shed_sign (batch);
CREATE INDEX shed_sign_pre_lay ON shed_sign (animal) WHERE pre_lay = 1;
CREATE INDEX snooze_batch ON snooze (batch);
CREATE INDEX start_step_batch ON start_step (batch);
CREATE INDEX stock_batch ON stock (batch);
CREATE INDEX total_length_batch ON total_length (batch);
CREATE INDEX weighing_batch ON weighing (batch);
CREATE INDEX withdrawal_target ON withdrawal (target_batch);
CREATE TABLE animal (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batch (id)
) STRICT;
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
CREATE TABLE aside_until (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,watch_kind TEXT NOT NULL, awaited TEXT NOT NULL, reason TEXT NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE bag_opened (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    prey TEXT NOT NULL, bag TEXT NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE batch (
    id INTEGER PRIMARY KEY,
    station TEXT NOT NULL,
    keeper TEXT NOT NULL,
    verb TEXT NOT NULL,
    written INTEGER NOT NULL,
    utc_offset INTEGER NOT NULL,
    reason TEXT
, checksum INTEGER) STRICT;
CREATE TABLE cleaned (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,extent TEXT NOT NULL CHECK (extent IN ('spot', 'whole')),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE clutch (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,good INTEGER NOT NULL, slugs INTEGER NOT NULL, mass_mg INTEGER, code TEXT,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE daily_round (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    place TEXT,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE described (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        code TEXT NOT NULL CHECK (code <> ''), species TEXT NOT NULL, name TEXT, line TEXT,
        hatched_first INTEGER, hatched_last INTEGER,
        dam INTEGER REFERENCES animal (id), sire INTEGER REFERENCES animal (id), clutch TEXT,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE dose (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,medicine TEXT NOT NULL, told TEXT NOT NULL, given_by TEXT,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE eggs (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,fate TEXT NOT NULL, count INTEGER NOT NULL CHECK (count > 0), clutch TEXT,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE eggs_placed (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,place TEXT, box TEXT, clutch TEXT,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE faecal_test (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,result TEXT NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE gene_named (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    gene TEXT NOT NULL, species TEXT NOT NULL, inheritance TEXT NOT NULL, hidden_by TEXT,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE gene_read (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        gene TEXT NOT NULL, told TEXT NOT NULL,
        percent REAL CHECK (percent > 0 AND percent < 100),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE heat (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    place TEXT NOT NULL, zone TEXT NOT NULL, temp_mc INTEGER NOT NULL, read_with TEXT,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE hold_ended (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,kind TEXT NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE hold_set (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,kind TEXT NOT NULL, until INTEGER,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE house_permit (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    kind TEXT NOT NULL, number TEXT NOT NULL, expires INTEGER NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE keeper_away (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    first_on INTEGER NOT NULL, last_on INTEGER NOT NULL, covered_by TEXT, fed_on TEXT,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE look_scored (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        trait TEXT NOT NULL, score REAL NOT NULL CHECK (score >= 1 AND score <= 10),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE measured (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,svl_mm INTEGER CHECK (svl_mm > 0), body_score REAL CHECK (body_score > 0),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE medicine (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        medicine TEXT NOT NULL, amount TEXT NOT NULL, route TEXT NOT NULL,
        first_on INTEGER NOT NULL, last_on INTEGER NOT NULL,
        every_days INTEGER NOT NULL CHECK (every_days > 0), lot TEXT,
        times_a_day INTEGER CHECK (times_a_day > 0),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE mite_step (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    place TEXT, told TEXT NOT NULL, treatment TEXT,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE moved (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,place TEXT,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE night_answer (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    told TEXT NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE offer (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        result TEXT NOT NULL
            CHECK (result IN ('taken', 'part taken', 'refused', 'left in', 'not offered')),
        evidence TEXT NOT NULL CHECK (evidence IN ('seen', 'gone at check', 'assumed', 'reported')),
        prey TEXT, count INTEGER CHECK (count > 0), mass_mg INTEGER CHECK (mass_mg > 0),
        withheld TEXT, round INTEGER REFERENCES round (id), line INTEGER,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE offered_through (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,kind TEXT NOT NULL, yes INTEGER NOT NULL CHECK (yes IN (0, 1)),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE override (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    species TEXT NOT NULL, key TEXT NOT NULL, value REAL NOT NULL, reason TEXT NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE paired (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        mate INTEGER NOT NULL REFERENCES animal (id),
        locked INTEGER NOT NULL CHECK (locked IN (0, 1)),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE permit (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,kind TEXT NOT NULL, number TEXT NOT NULL, expires INTEGER NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE place_aside (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    place TEXT, watch_kind TEXT NOT NULL, until INTEGER NOT NULL, reason TEXT NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE plan_line (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    round INTEGER NOT NULL REFERENCES round (id), line INTEGER NOT NULL,
        animal INTEGER NOT NULL REFERENCES animal (id), place TEXT, state TEXT NOT NULL,
        prey TEXT, count INTEGER, mass_mg INTEGER, caution TEXT, because TEXT NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE prey_counted (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    prey TEXT NOT NULL, bag TEXT NOT NULL, items INTEGER NOT NULL CHECK (items >= 0),
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE probe_placed (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    probe TEXT NOT NULL CHECK (probe <> ''), zone TEXT NOT NULL, place TEXT,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE reading_day (
    probe TEXT NOT NULL CHECK (probe <> ''),
    day INTEGER NOT NULL,
    slots BLOB NOT NULL CHECK (length(slots) = 576),
    hours BLOB NOT NULL CHECK (length(hours) = 144),
    PRIMARY KEY (probe, day)
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
CREATE TABLE readings_taken (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    name TEXT NOT NULL, sha256 TEXT NOT NULL, read_as TEXT NOT NULL,
        readings INTEGER NOT NULL, aside INTEGER NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE regurgitation (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE remark (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,kind TEXT NOT NULL, text TEXT NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE round (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batch (id)
) STRICT;
CREATE TABLE round_closed (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    round INTEGER NOT NULL REFERENCES round (id),
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE round_opened (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    round INTEGER NOT NULL REFERENCES round (id), keeper TEXT NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE setting (
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    key TEXT NOT NULL, value TEXT NOT NULL,
    PRIMARY KEY (at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE sexed (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        sex TEXT NOT NULL CHECK (sex IN ('female', 'male', 'unknown')), sexed_by TEXT NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE shed_sign (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        stage TEXT NOT NULL CHECK (stage IN ('dull', 'opaque', 'cleared', 'shed')),
        quality TEXT, pre_lay INTEGER NOT NULL CHECK (pre_lay IN (0, 1)),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE snooze (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,watch_kind TEXT NOT NULL, until INTEGER NOT NULL, reason TEXT NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE start_step (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,step TEXT NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE stock (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,status TEXT NOT NULL,
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE total_length (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,total_mm INTEGER NOT NULL CHECK (total_mm > 0),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE weighing (
    animal INTEGER NOT NULL REFERENCES animal (id),
    at INTEGER NOT NULL,
    span INTEGER NOT NULL CHECK (span >= 0),
    utc_offset INTEGER NOT NULL,
    day INTEGER NOT NULL,
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    note TEXT,
        weight_mg INTEGER NOT NULL CHECK (weight_mg > 0), resolution_mg INTEGER,
        typed_twice INTEGER NOT NULL CHECK (typed_twice IN (0, 1)),
    PRIMARY KEY (animal, at, batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE withdrawal (
    batch INTEGER NOT NULL REFERENCES batch (id),
    seq INTEGER NOT NULL,
    target_batch INTEGER NOT NULL REFERENCES batch (id),
    target_seq INTEGER NOT NULL CHECK (target_seq >= -1),
    PRIMARY KEY (batch, seq),
    CHECK (target_batch < batch)
) STRICT, WITHOUT ROWID;
CREATE TABLE withdrawn (
    batch INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (batch, seq)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER animal_no_delete BEFORE DELETE ON animal
BEGIN SELECT RAISE(ABORT, 'animal is insert-only'); END;
CREATE TRIGGER animal_no_update BEFORE UPDATE ON animal
BEGIN SELECT RAISE(ABORT, 'animal is insert-only'); END;
CREATE TRIGGER aside_until_no_delete BEFORE DELETE ON aside_until
BEGIN SELECT RAISE(ABORT, 'aside_until is insert-only'); END;
CREATE TRIGGER aside_until_no_update BEFORE UPDATE ON aside_until
BEGIN SELECT RAISE(ABORT, 'aside_until is insert-only'); END;
CREATE TRIGGER bag_opened_no_delete BEFORE DELETE ON bag_opened
BEGIN SELECT RAISE(ABORT, 'bag_opened is insert-only'); END;
CREATE TRIGGER bag_opened_no_update BEFORE UPDATE ON bag_opened
BEGIN SELECT RAISE(ABORT, 'bag_opened is insert-only'); END;
CREATE TRIGGER batch_no_delete BEFORE DELETE ON batch
BEGIN SELECT RAISE(ABORT, 'batch is insert-only'); END;
CREATE TRIGGER batch_no_update BEFORE UPDATE ON batch
BEGIN SELECT RAISE(ABORT, 'batch is insert-only'); END;
CREATE TRIGGER cleaned_no_delete BEFORE DELETE ON cleaned
BEGIN SELECT RAISE(ABORT, 'cleaned is insert-only'); END;
CREATE TRIGGER cleaned_no_update BEFORE UPDATE ON cleaned
BEGIN SELECT RAISE(ABORT, 'cleaned is insert-only'); END;
CREATE TRIGGER clutch_no_delete BEFORE DELETE ON clutch
BEGIN SELECT RAISE(ABORT, 'clutch is insert-only'); END;
CREATE TRIGGER clutch_no_update BEFORE UPDATE ON clutch
BEGIN SELECT RAISE(ABORT, 'clutch is insert-only'); END;
CREATE TRIGGER daily_round_no_delete BEFORE DELETE ON daily_round
BEGIN SELECT RAISE(ABORT, 'daily_round is insert-only'); END;
CREATE TRIGGER daily_round_no_update BEFORE UPDATE ON daily_round
BEGIN SELECT RAISE(ABORT, 'daily_round is insert-only'); END;
CREATE TRIGGER described_no_delete BEFORE DELETE ON described
BEGIN SELECT RAISE(ABORT, 'described is insert-only'); END;
CREATE TRIGGER described_no_update BEFORE UPDATE ON described
BEGIN SELECT RAISE(ABORT, 'described is insert-only'); END;
CREATE TRIGGER dose_no_delete BEFORE DELETE ON dose
BEGIN SELECT RAISE(ABORT, 'dose is insert-only'); END;
CREATE TRIGGER dose_no_update BEFORE UPDATE ON dose
BEGIN SELECT RAISE(ABORT, 'dose is insert-only'); END;
CREATE TRIGGER eggs_no_delete BEFORE DELETE ON eggs
BEGIN SELECT RAISE(ABORT, 'eggs is insert-only'); END;
CREATE TRIGGER eggs_no_update BEFORE UPDATE ON eggs
BEGIN SELECT RAISE(ABORT, 'eggs is insert-only'); END;
CREATE TRIGGER eggs_placed_no_delete BEFORE DELETE ON eggs_placed
BEGIN SELECT RAISE(ABORT, 'eggs_placed is insert-only'); END;
CREATE TRIGGER eggs_placed_no_update BEFORE UPDATE ON eggs_placed
BEGIN SELECT RAISE(ABORT, 'eggs_placed is insert-only'); END;
CREATE TRIGGER faecal_test_no_delete BEFORE DELETE ON faecal_test
BEGIN SELECT RAISE(ABORT, 'faecal_test is insert-only'); END;
CREATE TRIGGER faecal_test_no_update BEFORE UPDATE ON faecal_test
BEGIN SELECT RAISE(ABORT, 'faecal_test is insert-only'); END;
CREATE TRIGGER gene_named_no_delete BEFORE DELETE ON gene_named
BEGIN SELECT RAISE(ABORT, 'gene_named is insert-only'); END;
CREATE TRIGGER gene_named_no_update BEFORE UPDATE ON gene_named
BEGIN SELECT RAISE(ABORT, 'gene_named is insert-only'); END;
CREATE TRIGGER gene_read_no_delete BEFORE DELETE ON gene_read
BEGIN SELECT RAISE(ABORT, 'gene_read is insert-only'); END;
CREATE TRIGGER gene_read_no_update BEFORE UPDATE ON gene_read
BEGIN SELECT RAISE(ABORT, 'gene_read is insert-only'); END;
CREATE TRIGGER heat_no_delete BEFORE DELETE ON heat
BEGIN SELECT RAISE(ABORT, 'heat is insert-only'); END;
CREATE TRIGGER heat_no_update BEFORE UPDATE ON heat
BEGIN SELECT RAISE(ABORT, 'heat is insert-only'); END;
CREATE TRIGGER hold_ended_no_delete BEFORE DELETE ON hold_ended
BEGIN SELECT RAISE(ABORT, 'hold_ended is insert-only'); END;
CREATE TRIGGER hold_ended_no_update BEFORE UPDATE ON hold_ended
BEGIN SELECT RAISE(ABORT, 'hold_ended is insert-only'); END;
CREATE TRIGGER hold_set_no_delete BEFORE DELETE ON hold_set
BEGIN SELECT RAISE(ABORT, 'hold_set is insert-only'); END;
CREATE TRIGGER hold_set_no_update BEFORE UPDATE ON hold_set
BEGIN SELECT RAISE(ABORT, 'hold_set is insert-only'); END;
CREATE TRIGGER house_permit_no_delete BEFORE DELETE ON house_permit
BEGIN SELECT RAISE(ABORT, 'house_permit is insert-only'); END;
CREATE TRIGGER house_permit_no_update BEFORE UPDATE ON house_permit
BEGIN SELECT RAISE(ABORT, 'house_permit is insert-only'); END;
CREATE TRIGGER keeper_away_no_delete BEFORE DELETE ON keeper_away
BEGIN SELECT RAISE(ABORT, 'keeper_away is insert-only'); END;
CREATE TRIGGER keeper_away_no_update BEFORE UPDATE ON keeper_away
BEGIN SELECT RAISE(ABORT, 'keeper_away is insert-only'); END;
CREATE TRIGGER look_scored_no_delete BEFORE DELETE ON look_scored
BEGIN SELECT RAISE(ABORT, 'look_scored is insert-only'); END;
CREATE TRIGGER look_scored_no_update BEFORE UPDATE ON look_scored
BEGIN SELECT RAISE(ABORT, 'look_scored is insert-only'); END;
CREATE TRIGGER measured_no_delete BEFORE DELETE ON measured
BEGIN SELECT RAISE(ABORT, 'measured is insert-only'); END;
CREATE TRIGGER measured_no_update BEFORE UPDATE ON measured
BEGIN SELECT RAISE(ABORT, 'measured is insert-only'); END;
CREATE TRIGGER medicine_no_delete BEFORE DELETE ON medicine
BEGIN SELECT RAISE(ABORT, 'medicine is insert-only'); END;
CREATE TRIGGER medicine_no_update BEFORE UPDATE ON medicine
BEGIN SELECT RAISE(ABORT, 'medicine is insert-only'); END;
CREATE TRIGGER mite_step_no_delete BEFORE DELETE ON mite_step
BEGIN SELECT RAISE(ABORT, 'mite_step is insert-only'); END;
CREATE TRIGGER mite_step_no_update BEFORE UPDATE ON mite_step
BEGIN SELECT RAISE(ABORT, 'mite_step is insert-only'); END;
CREATE TRIGGER moved_no_delete BEFORE DELETE ON moved
BEGIN SELECT RAISE(ABORT, 'moved is insert-only'); END;
CREATE TRIGGER moved_no_update BEFORE UPDATE ON moved
BEGIN SELECT RAISE(ABORT, 'moved is insert-only'); END;
CREATE TRIGGER night_answer_no_delete BEFORE DELETE ON night_answer
BEGIN SELECT RAISE(ABORT, 'night_answer is insert-only'); END;
CREATE TRIGGER night_answer_no_update BEFORE UPDATE ON night_answer
BEGIN SELECT RAISE(ABORT, 'night_answer is insert-only'); END;
CREATE TRIGGER offer_no_delete BEFORE DELETE ON offer
BEGIN SELECT RAISE(ABORT, 'offer is insert-only'); END;
CREATE TRIGGER offer_no_update BEFORE UPDATE ON offer
BEGIN SELECT RAISE(ABORT, 'offer is insert-only'); END;
CREATE TRIGGER offered_through_no_delete BEFORE DELETE ON offered_through
BEGIN SELECT RAISE(ABORT, 'offered_through is insert-only'); END;
CREATE TRIGGER offered_through_no_update BEFORE UPDATE ON offered_through
BEGIN SELECT RAISE(ABORT, 'offered_through is insert-only'); END;
CREATE TRIGGER override_no_delete BEFORE DELETE ON override
BEGIN SELECT RAISE(ABORT, 'override is insert-only'); END;
CREATE TRIGGER override_no_update BEFORE UPDATE ON override
BEGIN SELECT RAISE(ABORT, 'override is insert-only'); END;
CREATE TRIGGER paired_no_delete BEFORE DELETE ON paired
BEGIN SELECT RAISE(ABORT, 'paired is insert-only'); END;
CREATE TRIGGER paired_no_update BEFORE UPDATE ON paired
BEGIN SELECT RAISE(ABORT, 'paired is insert-only'); END;
CREATE TRIGGER permit_no_delete BEFORE DELETE ON permit
BEGIN SELECT RAISE(ABORT, 'permit is insert-only'); END;
CREATE TRIGGER permit_no_update BEFORE UPDATE ON permit
BEGIN SELECT RAISE(ABORT, 'permit is insert-only'); END;
CREATE TRIGGER place_aside_no_delete BEFORE DELETE ON place_aside
BEGIN SELECT RAISE(ABORT, 'place_aside is insert-only'); END;
CREATE TRIGGER place_aside_no_update BEFORE UPDATE ON place_aside
BEGIN SELECT RAISE(ABORT, 'place_aside is insert-only'); END;
CREATE TRIGGER plan_line_no_delete BEFORE DELETE ON plan_line
BEGIN SELECT RAISE(ABORT, 'plan_line is insert-only'); END;
CREATE TRIGGER plan_line_no_update BEFORE UPDATE ON plan_line
BEGIN SELECT RAISE(ABORT, 'plan_line is insert-only'); END;
CREATE TRIGGER prey_counted_no_delete BEFORE DELETE ON prey_counted
BEGIN SELECT RAISE(ABORT, 'prey_counted is insert-only'); END;
CREATE TRIGGER prey_counted_no_update BEFORE UPDATE ON prey_counted
BEGIN SELECT RAISE(ABORT, 'prey_counted is insert-only'); END;
CREATE TRIGGER probe_placed_no_delete BEFORE DELETE ON probe_placed
BEGIN SELECT RAISE(ABORT, 'probe_placed is insert-only'); END;
CREATE TRIGGER probe_placed_no_update BEFORE UPDATE ON probe_placed
BEGIN SELECT RAISE(ABORT, 'probe_placed is insert-only'); END;
CREATE TRIGGER readings_taken_no_delete BEFORE DELETE ON readings_taken
BEGIN SELECT RAISE(ABORT, 'readings_taken is insert-only'); END;
CREATE TRIGGER readings_taken_no_update BEFORE UPDATE ON readings_taken
BEGIN SELECT RAISE(ABORT, 'readings_taken is insert-only'); END;
CREATE TRIGGER regurgitation_no_delete BEFORE DELETE ON regurgitation
BEGIN SELECT RAISE(ABORT, 'regurgitation is insert-only'); END;
CREATE TRIGGER regurgitation_no_update BEFORE UPDATE ON regurgitation
BEGIN SELECT RAISE(ABORT, 'regurgitation is insert-only'); END;
CREATE TRIGGER remark_no_delete BEFORE DELETE ON remark
BEGIN SELECT RAISE(ABORT, 'remark is insert-only'); END;
CREATE TRIGGER remark_no_update BEFORE UPDATE ON remark
BEGIN SELECT RAISE(ABORT, 'remark is insert-only'); END;
CREATE TRIGGER round_closed_no_delete BEFORE DELETE ON round_closed
BEGIN SELECT RAISE(ABORT, 'round_closed is insert-only'); END;
CREATE TRIGGER round_closed_no_update BEFORE UPDATE ON round_closed
BEGIN SELECT RAISE(ABORT, 'round_closed is insert-only'); END;
CREATE TRIGGER round_no_delete BEFORE DELETE ON round
BEGIN SELECT RAISE(ABORT, 'round is insert-only'); END;
CREATE TRIGGER round_no_update BEFORE UPDATE ON round
BEGIN SELECT RAISE(ABORT, 'round is insert-only'); END;
CREATE TRIGGER round_opened_no_delete BEFORE DELETE ON round_opened
BEGIN SELECT RAISE(ABORT, 'round_opened is insert-only'); END;
CREATE TRIGGER round_opened_no_update BEFORE UPDATE ON round_opened
BEGIN SELECT RAISE(ABORT, 'round_opened is insert-only'); END;
CREATE TRIGGER setting_no_delete BEFORE DELETE ON setting
BEGIN SELECT RAISE(ABORT, 'setting is insert-only'); END;
CREATE TRIGGER setting_no_update BEFORE UPDATE ON setting
BEGIN SELECT RAISE(ABORT, 'setting is insert-only'); END;
CREATE TRIGGER sexed_no_delete BEFORE DELETE ON sexed
BEGIN SELECT RAISE(ABORT, 'sexed is insert-only'); END;
CREATE TRIGGER sexed_no_update BEFORE UPDATE ON sexed
BEGIN SELECT RAISE(ABORT, 'sexed is insert-only'); END;
CREATE TRIGGER shed_sign_no_delete BEFORE DELETE ON shed_sign
BEGIN SELECT RAISE(ABORT, 'shed_sign is insert-only'); END;
CREATE TRIGGER shed_sign_no_update BEFORE UPDATE ON shed_sign
BEGIN SELECT RAISE(ABORT, 'shed_sign is insert-only'); END;
CREATE TRIGGER snooze_no_delete BEFORE DELETE ON snooze
BEGIN SELECT RAISE(ABORT, 'snooze is insert-only'); END;
CREATE TRIGGER snooze_no_update BEFORE UPDATE ON snooze
BEGIN SELECT RAISE(ABORT, 'snooze is insert-only'); END;
CREATE TRIGGER start_step_no_delete BEFORE DELETE ON start_step
BEGIN SELECT RAISE(ABORT, 'start_step is insert-only'); END;
CREATE TRIGGER start_step_no_update BEFORE UPDATE ON start_step
BEGIN SELECT RAISE(ABORT, 'start_step is insert-only'); END;
CREATE TRIGGER stock_no_delete BEFORE DELETE ON stock
BEGIN SELECT RAISE(ABORT, 'stock is insert-only'); END;
CREATE TRIGGER stock_no_update BEFORE UPDATE ON stock
BEGIN SELECT RAISE(ABORT, 'stock is insert-only'); END;
CREATE TRIGGER total_length_no_delete BEFORE DELETE ON total_length
BEGIN SELECT RAISE(ABORT, 'total_length is insert-only'); END;
CREATE TRIGGER total_length_no_update BEFORE UPDATE ON total_length
BEGIN SELECT RAISE(ABORT, 'total_length is insert-only'); END;
CREATE TRIGGER weighing_no_delete BEFORE DELETE ON weighing
BEGIN SELECT RAISE(ABORT, 'weighing is insert-only'); END;
CREATE TRIGGER weighing_no_update BEFORE UPDATE ON weighing
BEGIN SELECT RAISE(ABORT, 'weighing is insert-only'); END;
CREATE TRIGGER withdrawal_no_delete BEFORE DELETE ON withdrawal
BEGIN SELECT RAISE(ABORT, 'withdrawal is insert-only'); END;
CREATE TRIGGER withdrawal_no_update BEFORE UPDATE ON withdrawal
BEGIN SELECT RAISE(ABORT, 'withdrawal is insert-only'); END;
