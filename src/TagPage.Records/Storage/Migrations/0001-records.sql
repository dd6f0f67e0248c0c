-- The shop's records: who, which rackets, what was strung. Dates are yyyy-MM-dd in the shop's time zone,
-- instants are UTC ISO text, enumerations are the names used in TagPage.Core. AUTOINCREMENT: a number is given once, so
-- that no link, form or note that outlived its row leads to somebody else's.

CREATE TABLE shop (
  id              INTEGER PRIMARY KEY CHECK (id = 1),
  name            TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  phone           TEXT    CHECK (phone GLOB '+[0-9]*'),
  mail            TEXT    CHECK (mail LIKE '%_@_%'),
  street          TEXT    NOT NULL DEFAULT '',
  town            TEXT    NOT NULL DEFAULT '',
  country         TEXT    NOT NULL CHECK (country GLOB '[A-Z][A-Z]'),
  opening_hours   TEXT    NOT NULL DEFAULT '',
  home_markdown   TEXT    NOT NULL DEFAULT '',
  accent          TEXT    CHECK (accent GLOB '#[0-9A-F][0-9A-F][0-9A-F][0-9A-F][0-9A-F][0-9A-F]'),
  time_zone       TEXT    NOT NULL,
  currency        TEXT    NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  tension_unit    TEXT    NOT NULL CHECK (tension_unit IN ('Lb', 'Kg')),
  unseen_months   INTEGER NOT NULL DEFAULT 12 CHECK (unseen_months BETWEEN 1 AND 120),
  starting_values TEXT    CHECK (starting_values IS NULL OR json_valid(starting_values)),
  version         INTEGER NOT NULL DEFAULT 1
) STRICT;

CREATE TABLE account (
  id                TEXT PRIMARY KEY,
  name              TEXT NOT NULL,
  normalized_name   TEXT NOT NULL UNIQUE,
  password_hash     TEXT NOT NULL,
  security_stamp    TEXT NOT NULL,
  concurrency_stamp TEXT NOT NULL,
  role              TEXT NOT NULL CHECK (role IN ('Owner')),
  made_at           TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- One row for each browser that is signed in; without it the browser's cookie is worth nothing.
CREATE TABLE session (
  id         TEXT PRIMARY KEY CHECK (length(id) = 32),
  account_id TEXT NOT NULL REFERENCES account (id) ON DELETE CASCADE,
  began_at   TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX session_by_account ON session (account_id);

CREATE TABLE setup_link (
  token_hash TEXT PRIMARY KEY,
  expires_at TEXT NOT NULL,
  used_at    TEXT
) STRICT, WITHOUT ROWID;

-- Written and emptied again in one go, to see whether writing works.
CREATE TABLE write_probe (bytes BLOB NOT NULL) STRICT;

-- A form's own key, kept with what it made: sent twice, it answers with the first result.
CREATE TABLE used_form_key (
  form_key TEXT PRIMARY KEY CHECK (length(form_key) BETWEEN 16 AND 64),
  made_id  INTEGER NOT NULL,
  made_at  TEXT    NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE payer (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  name    TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  phone   TEXT    CHECK (phone GLOB '+[0-9]*'),
  mail    TEXT    CHECK (mail LIKE '%_@_%'),
  note    TEXT    NOT NULL DEFAULT '',
  version INTEGER NOT NULL DEFAULT 1
) STRICT;

CREATE TABLE client (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  name      TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  phone     TEXT    CHECK (phone GLOB '+[0-9]*'),
  mail      TEXT    CHECK (mail LIKE '%_@_%'),
  language  TEXT    NOT NULL DEFAULT 'en' CHECK (language GLOB '[a-z][a-z]'),
  payer_id  INTEGER REFERENCES payer (id),
  reminders INTEGER NOT NULL DEFAULT 1 CHECK (reminders IN (0, 1)),
  note      TEXT    NOT NULL DEFAULT '',
  version   INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE INDEX client_by_name  ON client (name COLLATE NOCASE, id);
CREATE INDEX client_by_payer ON client (payer_id) WHERE payer_id IS NOT NULL;

CREATE TABLE player (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id     INTEGER NOT NULL REFERENCES client (id),
  name          TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  junior        INTEGER NOT NULL CHECK (junior IN (0, 1)),
  times_a_week  REAL    NOT NULL DEFAULT 0 CHECK (times_a_week BETWEEN 0 AND 21),
  hours_a_time  REAL    NOT NULL DEFAULT 0 CHECK (hours_a_time BETWEEN 0 AND 8),
  hitting       TEXT    NOT NULL DEFAULT 'Average' CHECK (hitting IN ('Easy', 'Average', 'Hard')),
  rule          TEXT    CHECK (rule IN ('TimesAWeek', 'WhicheverFirst', 'Hours', 'EveryWeeks', 'FixedDate')),
  every_weeks   INTEGER CHECK (every_weeks BETWEEN 1 AND 104),
  note          TEXT    NOT NULL DEFAULT '',
  version       INTEGER NOT NULL DEFAULT 1,
  CHECK (rule IS NOT 'EveryWeeks' OR every_weeks IS NOT NULL)
) STRICT;
CREATE INDEX player_by_client ON player (client_id, name COLLATE NOCASE);

CREATE TABLE string_kind (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  name     TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
  material TEXT    NOT NULL CHECK (material IN ('NaturalGut', 'Multifilament', 'SyntheticGut', 'Polyester', 'Aramid')),
  gauge_mm REAL    NOT NULL CHECK (gauge_mm BETWEEN 0.5 AND 1.6),
  offered  INTEGER NOT NULL DEFAULT 1 CHECK (offered IN (0, 1)),
  note     TEXT    NOT NULL DEFAULT '',
  version  INTEGER NOT NULL DEFAULT 1,
  UNIQUE (name COLLATE NOCASE, gauge_mm)
) STRICT;

CREATE TABLE instrument (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  name    TEXT    NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 40),
  scale   TEXT    NOT NULL CHECK (scale IN ('Stiffness', 'Hertz')),
  version INTEGER NOT NULL DEFAULT 1
) STRICT;

CREATE TABLE racket (
  id              INTEGER PRIMARY KEY AUTOINCREMENT,
  player_id       INTEGER NOT NULL REFERENCES player (id),
  number          INTEGER NOT NULL CHECK (number BETWEEN 1 AND 999),
  state           TEXT    NOT NULL CHECK (state IN ('InTurn', 'Spare', 'Resting', 'Damaged', 'Sold', 'Gone')),
  sport           TEXT    NOT NULL CHECK (sport IN ('Tennis', 'Badminton', 'Squash')),
  frame           TEXT    NOT NULL DEFAULT '' CHECK (length(frame) <= 80),
  tape_colour     TEXT    NOT NULL DEFAULT '' CHECK (length(tape_colour) <= 20),
  head_size       REAL    CHECK (head_size > 0),
  head_size_unit  TEXT    NOT NULL DEFAULT 'in2' CHECK (head_size_unit IN ('in2', 'cm2')),
  pattern_mains   INTEGER CHECK (pattern_mains BETWEEN 8 AND 40),
  pattern_crosses INTEGER CHECK (pattern_crosses BETWEEN 8 AND 40),
  length_cm       REAL    CHECK (length_cm BETWEEN 30 AND 80),
  grip            TEXT    NOT NULL DEFAULT '' CHECK (length(grip) <= 40),
  own_date        TEXT    CHECK (own_date GLOB '????-??-??'),
  own_date_note   TEXT    NOT NULL DEFAULT '' CHECK (length(own_date_note) <= 200),
  lost_since      TEXT    CHECK (lost_since GLOB '????-??-??'),
  came_from_id    INTEGER REFERENCES racket (id),
  note            TEXT    NOT NULL DEFAULT '',
  version         INTEGER NOT NULL DEFAULT 1,
  UNIQUE (player_id, number)
) STRICT;
CREATE INDEX racket_in_play ON racket (player_id) WHERE state IN ('InTurn', 'Spare');

CREATE TABLE spec (
  id              INTEGER PRIMARY KEY AUTOINCREMENT,
  racket_id       INTEGER NOT NULL REFERENCES racket (id),
  measured_on     TEXT    NOT NULL CHECK (measured_on GLOB '????-??-??'),
  weight_g        REAL    CHECK (weight_g BETWEEN 50 AND 500),
  balance_mm      REAL    CHECK (balance_mm BETWEEN 100 AND 500),
  swing_weight    REAL    CHECK (swing_weight BETWEEN 30 AND 500),
  stiffness       REAL    CHECK (stiffness BETWEEN 0 AND 200),
  stiffness_scale TEXT    NOT NULL DEFAULT '' CHECK (length(stiffness_scale) <= 20),
  length_mm       REAL    CHECK (length_mm BETWEEN 300 AND 800),
  strung          INTEGER NOT NULL CHECK (strung IN (0, 1)),
  grip_on         INTEGER NOT NULL CHECK (grip_on IN (0, 1)),
  dampener_on     INTEGER NOT NULL CHECK (dampener_on IN (0, 1)),
  note            TEXT    NOT NULL DEFAULT '',
  version         INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE INDEX spec_by_racket ON spec (racket_id, measured_on DESC);

CREATE TABLE tag (
  code       TEXT PRIMARY KEY CHECK (length(code) = 11 AND code NOT GLOB '*[^0-9A-HJKMNP-TV-Z]*'),
  state      TEXT NOT NULL CHECK (state IN ('Unassigned', 'Live', 'Retired')),
  racket_id  INTEGER REFERENCES racket (id),
  made_at    TEXT NOT NULL,
  linked_at  TEXT,
  retired_at TEXT,
  CHECK (state IS NOT 'Live' OR racket_id IS NOT NULL),
  CHECK (state IS NOT 'Unassigned' OR racket_id IS NULL),
  CHECK ((state = 'Retired') = (retired_at IS NOT NULL))
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX tag_live_of_racket ON tag (racket_id) WHERE state = 'Live';
CREATE INDEX tag_of_racket ON tag (racket_id);

CREATE TABLE job (
  id                   INTEGER PRIMARY KEY AUTOINCREMENT,
  ticket               INTEGER NOT NULL UNIQUE CHECK (ticket > 0),
  racket_id            INTEGER NOT NULL REFERENCES racket (id),
  state                TEXT    NOT NULL CHECK (state IN ('Waiting', 'OnMachine', 'Strung', 'Collected', 'Cancelled')),
  mains_id             INTEGER NOT NULL REFERENCES string_kind (id),
  crosses_id           INTEGER NOT NULL REFERENCES string_kind (id),
  mains_supplied_by    TEXT    NOT NULL CHECK (mains_supplied_by IN ('Shop', 'Client')),
  crosses_supplied_by  TEXT    NOT NULL CHECK (crosses_supplied_by IN ('Shop', 'Client')),
  mains_tension        REAL    NOT NULL CHECK (mains_tension > 0 AND mains_tension <= 100),
  crosses_tension      REAL    NOT NULL CHECK (crosses_tension > 0 AND crosses_tension <= 100),
  tension_unit         TEXT    NOT NULL CHECK (tension_unit IN ('Lb', 'Kg')),
  pre_stretch_percent  INTEGER NOT NULL DEFAULT 0 CHECK (pre_stretch_percent BETWEEN 0 AND 30),
  pieces               INTEGER NOT NULL DEFAULT 2 CHECK (pieces IN (1, 2)),
  received_on          TEXT    NOT NULL CHECK (received_on GLOB '????-??-??'),
  received_where       TEXT    NOT NULL DEFAULT '' CHECK (length(received_where) <= 60),
  promised_for         TEXT    CHECK (promised_for GLOB '????-??-??'),
  strung_on            TEXT    CHECK (strung_on GLOB '????-??-??'),
  strung_by            TEXT    NOT NULL DEFAULT '' CHECK (length(strung_by) <= 60),
  machine              TEXT    NOT NULL DEFAULT '' CHECK (length(machine) <= 60),
  collected_on         TEXT    CHECK (collected_on GLOB '????-??-??'),
  price_minor          INTEGER CHECK (price_minor BETWEEN 0 AND 100000000),
  paid_on              TEXT    CHECK (paid_on GLOB '????-??-??'),
  note                 TEXT    NOT NULL DEFAULT '',
  ended_on             TEXT    CHECK (ended_on GLOB '????-??-??'),
  ended_how            TEXT    CHECK (ended_how IN ('Wear', 'Mishit', 'Grommet', 'Machine', 'CutOut', 'Unknown')),
  version              INTEGER NOT NULL DEFAULT 1,
  CHECK ((state IN ('Strung', 'Collected')) = (strung_on IS NOT NULL)),
  CHECK ((state = 'Collected') = (collected_on IS NOT NULL)),
  CHECK ((ended_on IS NULL) = (ended_how IS NULL)),
  CHECK (ended_on IS NULL OR strung_on IS NOT NULL)
) STRICT;
CREATE INDEX job_by_racket ON job (racket_id, strung_on DESC, id DESC);
CREATE INDEX job_on_bench  ON job (state, promised_for, ticket) WHERE state IN ('Waiting', 'OnMachine', 'Strung');
CREATE INDEX job_unpaid    ON job (received_on) WHERE paid_on IS NULL AND state <> 'Cancelled';
CREATE INDEX job_received  ON job (received_on, racket_id);

-- The first reading of a job is taken right after stringing; later ones compare with it.
CREATE TABLE reading (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id        INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  first         INTEGER NOT NULL CHECK (first IN (0, 1)),
  taken_on      TEXT    NOT NULL CHECK (taken_on GLOB '????-??-??'),
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  value         REAL    NOT NULL CHECK (value > 0 AND value < 5000),
  note          TEXT    NOT NULL DEFAULT ''
) STRICT;
CREATE UNIQUE INDEX reading_first ON reading (job_id) WHERE first = 1;
CREATE INDEX reading_by_job ON reading (job_id, taken_on);

-- Marks an invented shop's records: the day that all their dates are of, and whether its owner's password was printed.
CREATE TABLE demo (
  id   INTEGER PRIMARY KEY CHECK (id = 1),
  day  TEXT    NOT NULL CHECK (day GLOB '????-??-??'),
  told INTEGER NOT NULL DEFAULT 0 CHECK (told IN (0, 1))
) STRICT;

-- One line a record for the search box. The row id says which: 4 × id + 0 client, + 1 player, + 2 racket.
CREATE VIRTUAL TABLE finder USING fts5 (words, tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3');
INSERT INTO finder (finder, rank) VALUES ('secure-delete', 1);

CREATE TRIGGER client_found  AFTER INSERT ON client BEGIN
  INSERT INTO finder (rowid, words) VALUES (4 * new.id, new.name);
END;
CREATE TRIGGER client_refound AFTER UPDATE OF name ON client BEGIN
  UPDATE finder SET words = new.name WHERE rowid = 4 * new.id;
END;
CREATE TRIGGER client_lost AFTER DELETE ON client BEGIN
  DELETE FROM finder WHERE rowid = 4 * old.id;
END;
CREATE TRIGGER player_found AFTER INSERT ON player BEGIN
  INSERT INTO finder (rowid, words) VALUES (4 * new.id + 1, new.name);
END;
CREATE TRIGGER player_refound AFTER UPDATE OF name ON player BEGIN
  UPDATE finder SET words = new.name WHERE rowid = 4 * new.id + 1;
END;
CREATE TRIGGER player_lost AFTER DELETE ON player BEGIN
  DELETE FROM finder WHERE rowid = 4 * old.id + 1;
END;
CREATE TRIGGER racket_found AFTER INSERT ON racket BEGIN
  INSERT INTO finder (rowid, words) VALUES (4 * new.id + 2, new.frame);
END;
CREATE TRIGGER racket_refound AFTER UPDATE OF frame ON racket BEGIN
  UPDATE finder SET words = new.frame WHERE rowid = 4 * new.id + 2;
END;
CREATE TRIGGER racket_lost AFTER DELETE ON racket BEGIN
  DELETE FROM finder WHERE rowid = 4 * old.id + 2;
END;

-- The strings now in each racket, or last in it: its newest strung job.
CREATE VIEW bed AS
SELECT r.id AS racket_id, j.id AS job_id, j.strung_on, j.ended_on, j.ended_how, j.mains_id, j.crosses_id
FROM racket r
JOIN job j ON j.id = (SELECT n.id FROM job n WHERE n.racket_id = r.id AND n.strung_on IS NOT NULL
                      ORDER BY n.strung_on DESC, n.id DESC LIMIT 1);

-- All that a racket's restring-by date depends on. It joins the job itself: a view on the right of a LEFT JOIN is worked
-- out for all rackets, even when one is asked for.
CREATE VIEW forecast AS
SELECT r.id AS racket_id, r.sport, r.state, r.pattern_mains, r.own_date,
       p.times_a_week, p.hours_a_time, p.hitting, p.rule, p.every_weeks,
       (SELECT COUNT(*) FROM racket o WHERE o.player_id = r.player_id AND o.state = 'InTurn') AS in_turn,
       (SELECT COUNT(*) FROM racket o WHERE o.player_id = r.player_id AND o.state = 'Spare') AS spare,
       b.strung_on, b.ended_on,
       m.material AS mains_material, m.gauge_mm AS mains_gauge_mm,
       c.material AS crosses_material, c.gauge_mm AS crosses_gauge_mm
FROM racket r
JOIN player p ON p.id = r.player_id
LEFT JOIN job b ON b.id = (SELECT n.id FROM job n WHERE n.racket_id = r.id AND n.strung_on IS NOT NULL
                           ORDER BY n.strung_on DESC, n.id DESC LIMIT 1)
LEFT JOIN string_kind m ON m.id = b.mains_id
LEFT JOIN string_kind c ON c.id = b.crosses_id;
