-- The records' schema. Dates are yyyy-MM-dd in the shop's time zone, instants are UTC ISO text, enumerations are the names
-- used in TagPage.Core. AUTOINCREMENT: a number is given once, so that no link, form or note that outlives its row leads to
-- somebody else's. Every reference has an index, so that nothing that is deleted reads whole tables.

-- ==== The shop: its one row of settings, its addresses and its advice ====

CREATE TABLE shop (
  id                     INTEGER PRIMARY KEY CHECK (id = 1),
  name                   TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  phone                  TEXT    CHECK (phone GLOB '+[0-9]*'),
  mail                   TEXT    CHECK (mail LIKE '%_@_%'),
  street                 TEXT    NOT NULL DEFAULT '',
  town                   TEXT    NOT NULL DEFAULT '',
  country                TEXT    NOT NULL CHECK (country GLOB '[A-Z][A-Z]'),
  opening_hours          TEXT    NOT NULL DEFAULT '',
  home_markdown          TEXT    NOT NULL DEFAULT '',
  -- The language that the owner writes opening hours, page and care guides in.
  language               TEXT    NOT NULL DEFAULT 'en' CHECK (language GLOB '[a-z][a-z]'),
  -- The language whose order names stand in; null for the one above. By their last word, or as they are written.
  names_in               TEXT    CHECK (names_in GLOB '[a-z][a-z]'),
  by_last_word           INTEGER NOT NULL DEFAULT 0 CHECK (by_last_word IN (0, 1)),
  accent                 TEXT    CHECK (accent GLOB '#[0-9A-F][0-9A-F][0-9A-F][0-9A-F][0-9A-F][0-9A-F]'),
  time_zone              TEXT    NOT NULL,
  currency               TEXT    NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  tension_unit           TEXT    NOT NULL CHECK (tension_unit IN ('Lb', 'Kg')),
  unseen_months          INTEGER NOT NULL DEFAULT 12 CHECK (unseen_months BETWEEN 1 AND 120),
  days_between_reminders INTEGER NOT NULL DEFAULT 14 CHECK (days_between_reminders BETWEEN 0 AND 365),
  -- The bench shows how long the racket on the machine has taken; single keys move about and act.
  bench_timer            INTEGER NOT NULL DEFAULT 0 CHECK (bench_timer IN (0, 1)),
  single_keys            INTEGER NOT NULL DEFAULT 1 CHECK (single_keys IN (0, 1)),
  -- Whoever helps signs in with more than a password.
  helpers_second_step    INTEGER NOT NULL DEFAULT 0 CHECK (helpers_second_step IN (0, 1)),
  -- Automatic email is held back between these hours of the shop's clock.
  quiet_from_hour        INTEGER NOT NULL DEFAULT 20 CHECK (quiet_from_hour BETWEEN 0 AND 23),
  quiet_until_hour       INTEGER NOT NULL DEFAULT 8 CHECK (quiet_until_hour BETWEEN 0 AND 23),
  starting_values        TEXT    CHECK (starting_values IS NULL OR json_valid(starting_values)),
  customising_values     TEXT    CHECK (customising_values IS NULL OR json_valid(customising_values)),
  version                INTEGER NOT NULL DEFAULT 1
) STRICT;

-- How many backups are kept, and where a second copy of each goes: the last one of each of so many days, weeks and months.
CREATE TABLE backup_setting (
  id     INTEGER PRIMARY KEY CHECK (id = 1),
  folder TEXT    NOT NULL DEFAULT '' CHECK (length(folder) <= 300),
  days   INTEGER NOT NULL DEFAULT 7  CHECK (days BETWEEN 1 AND 60),
  weeks  INTEGER NOT NULL DEFAULT 4  CHECK (weeks BETWEEN 0 AND 53),
  months INTEGER NOT NULL DEFAULT 12 CHECK (months BETWEEN 0 AND 60)
) STRICT;

-- What was done that an owner may be asked about, in a line for each hour, kind and detail. It names no client and no finder.
CREATE TABLE audit (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  event    INTEGER NOT NULL,
  detail   TEXT    NOT NULL CHECK (length(detail) <= 100),
  -- The account's id of who was signed in.
  made_by  TEXT    NOT NULL DEFAULT '',
  times    INTEGER NOT NULL DEFAULT 1 CHECK (times > 0),
  first_at TEXT    NOT NULL,
  last_at  TEXT    NOT NULL
) STRICT;
CREATE INDEX audit_by_time  ON audit (first_at);
CREATE INDEX audit_by_event ON audit (event, detail, made_by, id);

-- Who was forgotten, as marks that say nothing of a person; an older backup that brings them back is rid of them by these.
CREATE TABLE forgotten (
  mark TEXT PRIMARY KEY CHECK (length(mark) = 64),
  at   TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- When the shop is open, by weekday of ISO 8601, Monday 1. A day without a row is closed; without any row nobody said so yet.
CREATE TABLE opening_span (
  weekday   INTEGER NOT NULL CHECK (weekday BETWEEN 1 AND 7),
  -- Minutes since midnight.
  opens_at  INTEGER NOT NULL CHECK (opens_at >= 0),
  closes_at INTEGER NOT NULL CHECK (closes_at > opens_at AND closes_at <= 1440),
  PRIMARY KEY (weekday, opens_at)
) STRICT, WITHOUT ROWID;

-- Holidays and other days on which it is closed though the week says open, the first and the last.
CREATE TABLE closed_days (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  from_on TEXT    NOT NULL CHECK (from_on GLOB '????-??-??'),
  to_on   TEXT    NOT NULL CHECK (to_on GLOB '????-??-??' AND to_on >= from_on),
  note    TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 80)
) STRICT;

-- The owner's own words for what the shop sends. Empty, or no row, stands for the words the product brings. A notice tells a
-- client what a finder did.
CREATE TABLE message (
  purpose TEXT PRIMARY KEY CHECK (purpose IN ('Reminder', 'ReminderSms', 'Ready', 'Received', 'Notice')),
  subject TEXT NOT NULL DEFAULT '' CHECK (length(subject) <= 120),
  words   TEXT NOT NULL DEFAULT '' CHECK (length(words) <= CASE purpose WHEN 'ReminderSms' THEN 400 ELSE 4000 END)
) STRICT, WITHOUT ROWID;

-- The address chosen in the browser; a setting of the program overrules it.
CREATE TABLE chosen_address (
  id   INTEGER PRIMARY KEY CHECK (id = 1),
  base TEXT    NOT NULL CHECK (length(base) BETWEEN 1 AND 300)
) STRICT;

-- The addresses this shop was reached at: labels that carry one outlive a change of it.
CREATE TABLE used_address (
  base     TEXT PRIMARY KEY CHECK (length(base) BETWEEN 1 AND 300),
  first_at TEXT NOT NULL,
  last_at  TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Advice by the owner, open to everybody at /care/{name}.
CREATE TABLE care_guide (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  name         TEXT    NOT NULL UNIQUE CHECK (length(name) BETWEEN 1 AND 40 AND name NOT GLOB '*[^a-z0-9-]*'),
  title        TEXT    NOT NULL CHECK (length(title) BETWEEN 1 AND 60),
  for_material TEXT    CHECK (for_material IN ('NaturalGut', 'Multifilament', 'SyntheticGut', 'Polyester', 'Aramid')),
  markdown     TEXT    NOT NULL CHECK (length(markdown) <= 20000),
  version      INTEGER NOT NULL DEFAULT 1
) STRICT;

-- Marks an invented shop's records: the day that all their dates are of, and whether its owner's password was printed.
CREATE TABLE demo (
  id   INTEGER PRIMARY KEY CHECK (id = 1),
  day  TEXT    NOT NULL CHECK (day GLOB '????-??-??'),
  told INTEGER NOT NULL DEFAULT 0 CHECK (told IN (0, 1))
) STRICT;

-- ==== Accounts of the shop ====

CREATE TABLE account (
  id                TEXT PRIMARY KEY,
  name              TEXT NOT NULL,
  normalized_name   TEXT NOT NULL,
  password_hash     TEXT NOT NULL,
  security_stamp    TEXT NOT NULL,
  concurrency_stamp TEXT NOT NULL,
  role              TEXT NOT NULL CHECK (role IN ('Owner', 'Bench')),
  -- Where a helper is told of a new browser; the owner is told at the shop's address.
  mail              TEXT CHECK (mail LIKE '%_@_%'),
  -- Signing in takes a code of an authenticator app after the password.
  two_factor        INTEGER NOT NULL DEFAULT 0 CHECK (two_factor IN (0, 1)),
  -- Under a key that lies beside the database.
  authenticator_key TEXT NOT NULL DEFAULT '',
  -- The last span of 30 seconds whose code was taken: none is taken twice.
  code_step         INTEGER NOT NULL DEFAULT 0,
  -- Hashes of what is left of them, with blanks between.
  recovery_hashes   TEXT NOT NULL DEFAULT '',
  -- With it somebody changes over on a shared tablet; empty for none.
  pin_hash          TEXT NOT NULL DEFAULT '',
  made_at           TEXT NOT NULL,
  signed_in_at      TEXT,
  -- Access was taken away. The row stays, because records say who did something; its name is free again.
  ended_at          TEXT,
  CHECK (two_factor = 0 OR authenticator_key <> '')
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX account_by_name ON account (normalized_name) WHERE ended_at IS NULL;

-- Browsers that several people share: a hash of what their cookie says.
CREATE TABLE shared_tablet (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  secret_hash TEXT    NOT NULL UNIQUE,
  name        TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
  made_at     TEXT    NOT NULL
) STRICT;

-- How often in a row a person's PIN was wrong on a tablet.
CREATE TABLE pin_try (
  tablet_id  INTEGER NOT NULL REFERENCES shared_tablet (id) ON DELETE CASCADE,
  account_id TEXT    NOT NULL REFERENCES account (id) ON DELETE CASCADE,
  wrong      INTEGER NOT NULL CHECK (wrong > 0),
  last_at    TEXT    NOT NULL,
  PRIMARY KEY (tablet_id, account_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX pin_try_by_account ON pin_try (account_id);

-- One row for each browser that is signed in; without it the browser's cookie is worth nothing.
CREATE TABLE session (
  id         TEXT PRIMARY KEY CHECK (length(id) = 32),
  account_id TEXT NOT NULL REFERENCES account (id) ON DELETE CASCADE,
  way        TEXT NOT NULL DEFAULT 'Password' CHECK (way IN ('Password', 'AppCode', 'RecoveryCode', 'Passkey', 'Link', 'Pin')),
  -- What the browser calls itself.
  browser    TEXT NOT NULL DEFAULT '' CHECK (length(browser) <= 200),
  -- Where somebody changed over by PIN: once it is no longer shared, neither is anybody signed in by one there.
  tablet_id  INTEGER REFERENCES shared_tablet (id) ON DELETE CASCADE,
  made_at    TEXT NOT NULL,
  CHECK ((way = 'Pin') = (tablet_id IS NOT NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX session_by_account ON session (account_id);
CREATE INDEX session_by_tablet  ON session (tablet_id) WHERE tablet_id IS NOT NULL;

-- Keys on phones and computers that sign in instead of name and password; the public halves.
CREATE TABLE passkey (
  id              BLOB    PRIMARY KEY,
  account_id      TEXT    NOT NULL REFERENCES account (id) ON DELETE CASCADE,
  name            TEXT    NOT NULL CHECK (length(name) <= 60),
  public_key      BLOB    NOT NULL,
  sign_count      INTEGER NOT NULL,
  transports      TEXT    NOT NULL,
  user_verified   INTEGER NOT NULL CHECK (user_verified IN (0, 1)),
  backup_eligible INTEGER NOT NULL CHECK (backup_eligible IN (0, 1)),
  backed_up       INTEGER NOT NULL CHECK (backed_up IN (0, 1)),
  attestation     BLOB    NOT NULL,
  client_data     BLOB    NOT NULL,
  made_at         TEXT    NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX passkey_by_account ON passkey (account_id);

CREATE TABLE setup_link (
  token_hash TEXT PRIMARY KEY,
  expires_at TEXT NOT NULL,
  used_at    TEXT
) STRICT, WITHOUT ROWID;

-- The link with which a helper chooses a password, one at a time: what it is derived from, not the link itself.
CREATE TABLE invitation (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  account_id TEXT    NOT NULL UNIQUE REFERENCES account (id) ON DELETE CASCADE,
  secret     TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  expires_at TEXT    NOT NULL
) STRICT;

-- ==== Writing: whether it works, and what was written already ====

-- Written and emptied again in one go, to see whether writing works.
CREATE TABLE write_probe (bytes BLOB NOT NULL) STRICT;

-- A form's own key, kept with what it made: sent twice, it answers with the first result.
CREATE TABLE used_form_key (
  form_key TEXT    PRIMARY KEY CHECK (length(form_key) BETWEEN 16 AND 64),
  made_id  INTEGER NOT NULL,
  made_at  TEXT    NOT NULL
) STRICT, WITHOUT ROWID;

-- ==== Clients and who pays for them ====

CREATE TABLE payer (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  name     TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  name_key BLOB,
  phone    TEXT    CHECK (phone GLOB '+[0-9]*'),
  mail     TEXT    CHECK (mail LIKE '%_@_%'),
  note     TEXT    NOT NULL DEFAULT '',
  version  INTEGER NOT NULL DEFAULT 1
) STRICT;

CREATE TABLE client (
  id                   INTEGER PRIMARY KEY AUTOINCREMENT,
  name                 TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  name_key             BLOB,
  phone                TEXT    CHECK (phone GLOB '+[0-9]*'),
  mail                 TEXT    CHECK (mail LIKE '%_@_%'),
  -- The address that a mail server said nobody has; means nothing once it is no longer the one on file.
  mail_refused         TEXT,
  language             TEXT    NOT NULL DEFAULT 'en' CHECK (language GLOB '[a-z][a-z]'),
  second_name          TEXT    NOT NULL DEFAULT '' CHECK (length(second_name) <= 80),
  second_phone         TEXT    CHECK (second_phone GLOB '+[0-9]*'),
  second_mail          TEXT    CHECK (second_mail LIKE '%_@_%'),
  payer_id             INTEGER REFERENCES payer (id),
  reminders            INTEGER NOT NULL DEFAULT 1 CHECK (reminders IN (0, 1)),
  reminders_changed_on TEXT    CHECK (reminders_changed_on GLOB '????-??-??'),
  remind_by            TEXT    NOT NULL DEFAULT 'Mail' CHECK (remind_by IN ('Mail', 'Sms')),
  -- One bit a month, January lowest: no reminders then.
  quiet_months         INTEGER NOT NULL DEFAULT 0 CHECK (quiet_months BETWEEN 0 AND 4095),
  -- What a finder gets is the client's choice, kept with the day it was made; the start is the shop alone.
  found_choice         TEXT    NOT NULL DEFAULT 'Shop' CHECK (found_choice IN ('Shop', 'Message', 'Contact')),
  found_choice_on      TEXT    CHECK (found_choice_on GLOB '????-??-??'),
  found_always         INTEGER NOT NULL DEFAULT 0 CHECK (found_always IN (0, 1)),
  found_shows_mail     INTEGER NOT NULL DEFAULT 0 CHECK (found_shows_mail IN (0, 1)),
  note                 TEXT    NOT NULL DEFAULT '',
  -- The last day on which a racket of theirs came in; empty for none. Kept by triggers of job, racket and player.
  seen_on              TEXT    NOT NULL DEFAULT '' CHECK (seen_on = '' OR seen_on GLOB '????-??-??'),
  -- The client asked for their data to be deleted; it happens then, and can be undone until then.
  forget_at            TEXT,
  -- What tells this client from everybody else for good: once they are forgotten, all that is kept is a mark made with it.
  secret               TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  version              INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE INDEX client_by_name   ON client (name_key, id);
CREATE INDEX client_by_payer  ON client (payer_id) WHERE payer_id IS NOT NULL;
CREATE INDEX client_by_mail   ON client (mail COLLATE NOCASE) WHERE mail IS NOT NULL;
CREATE INDEX client_by_phone  ON client (phone) WHERE phone IS NOT NULL;
-- Numbers backwards: they are looked for by their last digits (at most 15, ITU-T E.164).
CREATE INDEX client_by_phone_end ON client (
  substr(phone, -1, 1) || substr(phone, -2, 1) || substr(phone, -3, 1) || substr(phone, -4, 1) || substr(phone, -5, 1)
  || substr(phone, -6, 1) || substr(phone, -7, 1) || substr(phone, -8, 1) || substr(phone, -9, 1) || substr(phone, -10, 1)
  || substr(phone, -11, 1) || substr(phone, -12, 1) || substr(phone, -13, 1) || substr(phone, -14, 1) || substr(phone, -15, 1)
) WHERE phone IS NOT NULL;
CREATE INDEX client_by_second_phone_end ON client (
  substr(second_phone, -1, 1) || substr(second_phone, -2, 1) || substr(second_phone, -3, 1) || substr(second_phone, -4, 1) || substr(second_phone, -5, 1)
  || substr(second_phone, -6, 1) || substr(second_phone, -7, 1) || substr(second_phone, -8, 1) || substr(second_phone, -9, 1) || substr(second_phone, -10, 1)
  || substr(second_phone, -11, 1) || substr(second_phone, -12, 1) || substr(second_phone, -13, 1) || substr(second_phone, -14, 1) || substr(second_phone, -15, 1)
) WHERE second_phone IS NOT NULL;
CREATE INDEX client_by_seen   ON client (seen_on) WHERE reminders = 1;
CREATE INDEX client_silent    ON client (id) WHERE reminders = 0;
CREATE INDEX client_to_forget ON client (forget_at) WHERE forget_at IS NOT NULL;

-- The contact may be shown as it was on the day it was agreed to. Whoever changes the number, or the only address shown, and
-- by whatever way: until the client agrees again, finders' messages are passed on.
CREATE TRIGGER client_contact_changed AFTER UPDATE OF phone, mail ON client
WHEN old.found_choice = 'Contact' AND new.found_choice = 'Contact'
 AND (old.phone IS NOT new.phone OR (old.mail IS NOT new.mail AND old.found_shows_mail = 1)) BEGIN
  UPDATE client
  SET found_choice     = CASE WHEN old.phone = new.phone THEN 'Contact' ELSE 'Message' END,
      found_always     = CASE WHEN old.phone = new.phone THEN found_always ELSE 0 END,
      found_shows_mail = CASE WHEN old.phone = new.phone AND old.mail IS new.mail THEN found_shows_mail ELSE 0 END
  WHERE id = new.id;
END;

-- What the owner has to do for a client, until it is ticked off.
CREATE TABLE client_request (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  kind      TEXT    NOT NULL CHECK (kind IN ('Link', 'Payer', 'OwnClient', 'PassedOn', 'Forget')),
  words     TEXT    NOT NULL DEFAULT '' CHECK (length(words) <= 400),
  made_at   TEXT    NOT NULL,
  done_at   TEXT
) STRICT;
CREATE INDEX client_request_open      ON client_request (id) WHERE done_at IS NULL;
CREATE INDEX client_request_by_client ON client_request (client_id);

-- ==== Players ====

CREATE TABLE player (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id     INTEGER NOT NULL REFERENCES client (id),
  name          TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  name_key      BLOB,
  junior        INTEGER NOT NULL CHECK (junior IN (0, 1)),
  times_a_week  REAL    NOT NULL DEFAULT 0 CHECK (times_a_week BETWEEN 0 AND 21),
  hours_a_time  REAL    NOT NULL DEFAULT 0 CHECK (hours_a_time BETWEEN 0 AND 8),
  hitting       TEXT    NOT NULL DEFAULT 'Average' CHECK (hitting IN ('Easy', 'Average', 'Hard')),
  rule          TEXT    CHECK (rule IN ('TimesAWeek', 'WhicheverFirst', 'Hours', 'EveryWeeks', 'FixedDate')),
  every_weeks   INTEGER CHECK (every_weeks BETWEEN 1 AND 104),
  -- What a guardian agreed to have on a junior's labels, and since when.
  label_name    TEXT    NOT NULL DEFAULT '' CHECK (length(label_name) <= 20),
  label_name_on TEXT    CHECK (label_name_on GLOB '????-??-??'),
  note          TEXT    NOT NULL DEFAULT '',
  version       INTEGER NOT NULL DEFAULT 1,
  CHECK (rule IS NOT 'EveryWeeks' OR every_weeks IS NOT NULL)
) STRICT;
CREATE INDEX player_by_client ON player (client_id, name_key);

-- Days on which a player is not playing: time passes, but no hours are played.
CREATE TABLE pause (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  player_id INTEGER NOT NULL REFERENCES player (id) ON DELETE CASCADE,
  from_on   TEXT    NOT NULL CHECK (from_on GLOB '????-??-??'),
  to_on     TEXT    CHECK (to_on GLOB '????-??-??'),
  note      TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 200),
  CHECK (to_on IS NULL OR to_on >= from_on)
) STRICT;
CREATE INDEX pause_by_player ON pause (player_id, from_on);

-- ==== Strings ====

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

-- ==== Rackets ====

CREATE TABLE racket (
  id              INTEGER PRIMARY KEY AUTOINCREMENT,
  player_id       INTEGER NOT NULL REFERENCES player (id),
  number          INTEGER NOT NULL CHECK (number BETWEEN 1 AND 999),
  state           TEXT    NOT NULL CHECK (state IN ('InTurn', 'Spare', 'Resting', 'Damaged', 'Sold', 'Gone')),
  sport           TEXT    NOT NULL CHECK (sport IN ('Tennis', 'Badminton', 'Squash')),
  frame           TEXT    NOT NULL DEFAULT '' CHECK (length(frame) <= 80),
  tape_colour     TEXT    NOT NULL DEFAULT '' CHECK (length(tape_colour) <= 20),
  -- On its labels. Their tape need not have the racket's colour; empty is the shop's usual one.
  label_tape      TEXT    NOT NULL DEFAULT '' CHECK (length(label_tape) <= 20),
  label_ink       TEXT    NOT NULL DEFAULT '' CHECK (length(label_ink) <= 20),
  label_line      TEXT    NOT NULL DEFAULT '' CHECK (length(label_line) <= 40),
  head_size       REAL    CHECK (head_size > 0),
  head_size_unit  TEXT    NOT NULL DEFAULT 'in2' CHECK (head_size_unit IN ('in2', 'cm2')),
  pattern_mains   INTEGER CHECK (pattern_mains BETWEEN 8 AND 40),
  pattern_crosses INTEGER CHECK (pattern_crosses BETWEEN 8 AND 40),
  length_cm       REAL    CHECK (length_cm BETWEEN 30 AND 80),
  grip            TEXT    NOT NULL DEFAULT '' CHECK (length(grip) <= 40),
  own_date        TEXT    CHECK (own_date GLOB '????-??-??'),
  own_date_note   TEXT    NOT NULL DEFAULT '' CHECK (length(own_date_note) <= 200),
  -- "Not yet": no reminder before this day.
  not_before      TEXT    CHECK (not_before GLOB '????-??-??'),
  -- Strung by somebody else on this day; counts from there, with strings unknown, until a newer job here.
  elsewhere_on    TEXT    CHECK (elsewhere_on GLOB '????-??-??'),
  -- As what it was last played, and since when it no longer is: until then it took its part of the player's play.
  played_as       TEXT    CHECK (played_as IN ('InTurn', 'Spare')),
  left_on         TEXT    CHECK (left_on GLOB '????-??-??'),
  -- The restring-by date as last worked out, from when it counts as due soon, and what decides; all null without a date.
  due_on          TEXT    CHECK (due_on GLOB '????-??-??'),
  due_soon_on     TEXT    CHECK (due_soon_on GLOB '????-??-??'),
  due_because     TEXT    CHECK (due_because IN ('TimesAWeek', 'Hours', 'Tension', 'Breakage', 'EveryWeeks', 'OwnersDate', 'Age')),
  -- Its one entry in calendars: what identifies it, and a number that only grows, so that a later file replaces an earlier one.
  calendar_uid    TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(calendar_uid) = 32),
  calendar_number INTEGER NOT NULL DEFAULT 0 CHECK (calendar_number >= 0),
  lost_since      TEXT    CHECK (lost_since GLOB '????-??-??'),
  lost_note       TEXT    NOT NULL DEFAULT '' CHECK (length(lost_note) <= 140),
  came_from_id    INTEGER REFERENCES racket (id),
  -- Whether its tag page shows what it measures.
  specs_on_tag    INTEGER NOT NULL DEFAULT 0 CHECK (specs_on_tag IN (0, 1)),
  note            TEXT    NOT NULL DEFAULT '',
  version         INTEGER NOT NULL DEFAULT 1,
  UNIQUE (player_id, number)
) STRICT;
CREATE INDEX racket_in_play   ON racket (player_id) WHERE state IN ('InTurn', 'Spare');
CREATE INDEX racket_lost      ON racket (lost_since) WHERE lost_since IS NOT NULL;
CREATE INDEX racket_due       ON racket (due_on, due_soon_on, player_id) WHERE due_on IS NOT NULL;
CREATE TRIGGER racket_calendar_again AFTER UPDATE OF due_on, number, tape_colour ON racket
WHEN new.due_on IS NOT old.due_on OR new.number <> old.number OR new.tape_colour <> old.tape_colour BEGIN
  UPDATE racket SET calendar_number = calendar_number + 1 WHERE id = new.id;
END;
CREATE INDEX racket_came_from ON racket (came_from_id) WHERE came_from_id IS NOT NULL;

-- Weight, length and balance are kept as entered, in their own units; grams and millimetres follow from them. They are
-- stored: sorted, whole numbers of a virtual column come out as integers in some rows and not in others.
CREATE TABLE spec (
  id                  INTEGER PRIMARY KEY AUTOINCREMENT,
  racket_id           INTEGER NOT NULL REFERENCES racket (id),
  measured_on         TEXT    NOT NULL CHECK (measured_on GLOB '????-??-??'),
  kind                TEXT    NOT NULL DEFAULT 'Received' CHECK (kind IN ('Received', 'Customised', 'Remeasured')),
  weight              REAL,
  weight_unit         TEXT    NOT NULL DEFAULT 'G' CHECK (weight_unit IN ('G', 'Oz')),
  weight_g            REAL    AS (CASE weight_unit WHEN 'Oz' THEN weight * 28.349523125 ELSE weight END) STORED CHECK (weight_g BETWEEN 50 AND 500),
  length              REAL,
  length_unit         TEXT    NOT NULL DEFAULT 'Mm' CHECK (length_unit IN ('Mm', 'Cm', 'In')),
  length_mm           REAL    AS (length * CASE length_unit WHEN 'In' THEN 25.4 WHEN 'Cm' THEN 10 ELSE 1 END) STORED CHECK (length_mm BETWEEN 300 AND 800),
  -- Points are eighths of an inch from the frame's own middle, head light above zero.
  balance             REAL,
  balance_unit        TEXT    NOT NULL DEFAULT 'Mm' CHECK (balance_unit IN ('Mm', 'Cm', 'In', 'Points')),
  balance_mm          REAL    AS (CASE balance_unit WHEN 'Points' THEN length_mm / 2 - balance * 3.175 WHEN 'In' THEN balance * 25.4
                                                    WHEN 'Cm' THEN balance * 10 ELSE balance END) STORED CHECK (balance_mm BETWEEN 100 AND 500),
  -- What the scale under the tip showed, in the weight's unit, where the balance comes from two scales.
  tip_weight          REAL    CHECK (tip_weight > 0),
  swing_weight        REAL    CHECK (swing_weight > 0 AND swing_weight <= 10000),
  swing_source        TEXT    NOT NULL DEFAULT 'Machine' CHECK (swing_source IN ('Machine', 'Pendulum', 'WorkedOut')),
  -- Of a pendulum: where it hung, in the length's unit from the butt, how long a swing took, and what the times left open.
  pendulum_axis       REAL,
  pendulum_axis_mm    REAL    AS (pendulum_axis * CASE length_unit WHEN 'In' THEN 25.4 WHEN 'Cm' THEN 10 ELSE 1 END) STORED CHECK (pendulum_axis_mm BETWEEN 0 AND 800),
  pendulum_period_s   REAL    CHECK (pendulum_period_s > 0),
  pendulum_off_s      REAL    CHECK (pendulum_off_s >= 0),
  -- What sums left open of a figure that was worked out; without it, what the shop's instruments do.
  weight_off_g        REAL    CHECK (weight_off_g >= 0),
  balance_off_mm      REAL    CHECK (balance_off_mm >= 0),
  swing_weight_off    REAL    CHECK (swing_weight_off >= 0),
  -- How the errors of figures that were worked out go together; without it, not at all.
  weight_balance_r    REAL    CHECK (weight_balance_r BETWEEN -1 AND 1),
  weight_swing_r      REAL    CHECK (weight_swing_r BETWEEN -1 AND 1),
  balance_swing_r     REAL    CHECK (balance_swing_r BETWEEN -1 AND 1),
  stiffness           REAL    CHECK (stiffness BETWEEN 0 AND 200),
  stiffness_scale     TEXT    NOT NULL DEFAULT '' CHECK (length(stiffness_scale) <= 20),
  strung              INTEGER NOT NULL CHECK (strung IN (0, 1)),
  grip_on             INTEGER NOT NULL CHECK (grip_on IN (0, 1)),
  dampener_on         INTEGER NOT NULL CHECK (dampener_on IN (0, 1)),
  note                TEXT    NOT NULL DEFAULT '',
  version             INTEGER NOT NULL DEFAULT 1,
  CHECK (balance_unit <> 'Points' OR balance IS NULL OR length IS NOT NULL),
  CHECK (swing_source <> 'Pendulum' OR pendulum_period_s IS NOT NULL)
) STRICT;
CREATE INDEX spec_by_racket ON spec (racket_id, measured_on DESC);

-- Where a frame can carry mass, where the shop changed the list that its sport starts with. As entered, like a spec.
CREATE TABLE frame_place (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  racket_id   INTEGER NOT NULL REFERENCES racket (id),
  name        TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  at          REAL    NOT NULL,
  off_axis    REAL    NOT NULL DEFAULT 0,
  length_unit TEXT    NOT NULL DEFAULT 'Cm' CHECK (length_unit IN ('Mm', 'Cm', 'In')),
  at_cm       REAL    AS (at * CASE length_unit WHEN 'In' THEN 2.54 WHEN 'Mm' THEN 0.1 ELSE 1 END) STORED CHECK (at_cm BETWEEN 0 AND 80),
  off_axis_cm REAL    AS (off_axis * CASE length_unit WHEN 'In' THEN 2.54 WHEN 'Mm' THEN 0.1 ELSE 1 END) STORED CHECK (off_axis_cm BETWEEN 0 AND 20),
  paired      INTEGER NOT NULL DEFAULT 0 CHECK (paired IN (0, 1)),
  most        REAL    NOT NULL,
  weight_unit TEXT    NOT NULL DEFAULT 'G' CHECK (weight_unit IN ('G', 'Oz')),
  most_g      REAL    AS (CASE weight_unit WHEN 'Oz' THEN most * 28.349523125 ELSE most END) STORED CHECK (most_g BETWEEN 0 AND 100),
  on_strings  INTEGER NOT NULL DEFAULT 0 CHECK (on_strings IN (0, 1))
) STRICT;
CREATE INDEX frame_place_by_racket ON frame_place (racket_id, at_cm);

-- What was added to a frame, both sides of a pair together, and when it came off again. As entered, like a spec.
CREATE TABLE added_mass (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  racket_id   INTEGER NOT NULL REFERENCES racket (id),
  place       TEXT    NOT NULL CHECK (length(place) BETWEEN 1 AND 40),
  at          REAL    NOT NULL,
  off_axis    REAL    NOT NULL DEFAULT 0,
  length_unit TEXT    NOT NULL DEFAULT 'Cm' CHECK (length_unit IN ('Mm', 'Cm', 'In')),
  at_cm       REAL    AS (at * CASE length_unit WHEN 'In' THEN 2.54 WHEN 'Mm' THEN 0.1 ELSE 1 END) STORED CHECK (at_cm BETWEEN 0 AND 80),
  off_axis_cm REAL    AS (off_axis * CASE length_unit WHEN 'In' THEN 2.54 WHEN 'Mm' THEN 0.1 ELSE 1 END) STORED CHECK (off_axis_cm BETWEEN 0 AND 20),
  on_strings  INTEGER NOT NULL DEFAULT 0 CHECK (on_strings IN (0, 1)),
  weight      REAL    NOT NULL,
  weight_unit TEXT    NOT NULL DEFAULT 'G' CHECK (weight_unit IN ('G', 'Oz')),
  grams       REAL    AS (CASE weight_unit WHEN 'Oz' THEN weight * 28.349523125 ELSE weight END) STORED CHECK (grams > 0 AND grams <= 100),
  material    TEXT    NOT NULL CHECK (material IN ('Lead', 'Tungsten', 'Silicone', 'Other')),
  added_on    TEXT    NOT NULL CHECK (added_on GLOB '????-??-??'),
  removed_on  TEXT    CHECK (removed_on GLOB '????-??-??' AND removed_on >= added_on),
  -- A plan counts its own pieces. What was noted by hand knows how many specs the racket had then: a day has no order.
  by_plan         INTEGER NOT NULL DEFAULT 0 CHECK (by_plan IN (0, 1)),
  noted_after     INTEGER NOT NULL DEFAULT 0 CHECK (noted_after >= 0),
  off_by_plan     INTEGER NOT NULL DEFAULT 0 CHECK (off_by_plan IN (0, 1)),
  off_noted_after INTEGER NOT NULL DEFAULT 0 CHECK (off_noted_after >= 0)
) STRICT;
CREATE INDEX added_mass_by_racket ON added_mass (racket_id, id);

-- What the shop knows about stringing a frame. Rackets find theirs by sport and name; name_key is what two spellings share.
CREATE TABLE frame (
  id              INTEGER PRIMARY KEY AUTOINCREMENT,
  sport           TEXT    NOT NULL CHECK (sport IN ('Tennis', 'Badminton', 'Squash')),
  name            TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  name_key        TEXT    NOT NULL CHECK (length(name_key) >= 1),
  pattern_mains   INTEGER CHECK (pattern_mains BETWEEN 8 AND 40),
  pattern_crosses INTEGER CHECK (pattern_crosses BETWEEN 8 AND 40),
  skipped_holes   TEXT    NOT NULL DEFAULT '' CHECK (length(skipped_holes) <= 120),
  tie_offs        TEXT    NOT NULL DEFAULT '' CHECK (length(tie_offs) <= 120),
  -- What the maker recommends, as printed on it.
  least_tension   REAL    CHECK (least_tension > 0 AND least_tension <= 100),
  most_tension    REAL    CHECK (most_tension > 0 AND most_tension <= 100),
  tension_unit    TEXT    NOT NULL DEFAULT 'Lb' CHECK (tension_unit IN ('Lb', 'Kg')),
  note            TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 500),
  version         INTEGER NOT NULL DEFAULT 1,
  UNIQUE (sport, name_key),
  CHECK (least_tension <= most_tension)
) STRICT;

-- Hours that somebody noted for one racket; in their weeks they stand instead of the habit. 0 says it was not played with.
CREATE TABLE logged_hours (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  racket_id INTEGER NOT NULL REFERENCES racket (id) ON DELETE CASCADE,
  played_on TEXT    NOT NULL CHECK (played_on GLOB '????-??-??'),
  hours     REAL    NOT NULL CHECK (hours BETWEEN 0 AND 200),
  note      TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 200)
) STRICT;
CREATE INDEX logged_hours_by_racket ON logged_hours (racket_id, played_on);

-- ==== Jobs ====

-- A stringing; or a visit, which is work on a racket whose strings stay in it: without strings and tensions, collected on the
-- day it was done. What counts stringings asks for strung_on, which a visit never has.
CREATE TABLE job (
  id                  INTEGER PRIMARY KEY AUTOINCREMENT,
  ticket              INTEGER NOT NULL UNIQUE CHECK (ticket > 0),
  racket_id           INTEGER NOT NULL REFERENCES racket (id),
  state               TEXT    NOT NULL CHECK (state IN ('Waiting', 'OnMachine', 'Strung', 'Collected', 'Cancelled')),
  mains_id            INTEGER REFERENCES string_kind (id),
  crosses_id          INTEGER REFERENCES string_kind (id),
  mains_supplied_by   TEXT    NOT NULL CHECK (mains_supplied_by IN ('Shop', 'Client')),
  crosses_supplied_by TEXT    NOT NULL CHECK (crosses_supplied_by IN ('Shop', 'Client')),
  mains_tension       REAL    CHECK (mains_tension > 0 AND mains_tension <= 100),
  crosses_tension     REAL    CHECK (crosses_tension > 0 AND crosses_tension <= 100),
  tension_unit        TEXT    NOT NULL CHECK (tension_unit IN ('Lb', 'Kg')),
  -- Per cent.
  mains_pre_stretch   INTEGER NOT NULL DEFAULT 0 CHECK (mains_pre_stretch BETWEEN 0 AND 30),
  crosses_pre_stretch INTEGER NOT NULL DEFAULT 0 CHECK (crosses_pre_stretch BETWEEN 0 AND 30),
  pieces              INTEGER NOT NULL DEFAULT 2 CHECK (pieces IN (1, 2)),
  received_on         TEXT    NOT NULL CHECK (received_on GLOB '????-??-??'),
  received_where      TEXT    NOT NULL DEFAULT '' CHECK (length(received_where) <= 60),
  promised_for        TEXT    CHECK (promised_for GLOB '????-??-??'),
  strung_on           TEXT    CHECK (strung_on GLOB '????-??-??'),
  strung_by           TEXT    NOT NULL DEFAULT '' CHECK (length(strung_by) <= 60),
  machine             TEXT    NOT NULL DEFAULT '' CHECK (length(machine) <= 60),
  -- The restring-by date that the label of these strings carries.
  label_date          TEXT    CHECK (label_date GLOB '????-??-??'),
  -- When the client was told that it is ready, and by which email while that is known; one that was given up told nobody.
  told_ready_at       TEXT,
  told_mail_id        INTEGER REFERENCES outbox (id) ON DELETE SET NULL,
  -- When it went on the machine and came off, where both were pressed as they happened; and the last move, until it is taken back.
  started_at          TEXT,
  strung_at           TEXT,
  moved_at            TEXT,
  collected_on        TEXT    CHECK (collected_on GLOB '????-??-??'),
  -- Of a visit, once it is done.
  done_on             TEXT    CHECK (done_on GLOB '????-??-??'),
  -- The sum of its charge lines, and the day on which payments came to cover it: both follow from those, kept for lists.
  price_minor         INTEGER CHECK (price_minor BETWEEN 0 AND 100000000),
  paid_on             TEXT    CHECK (paid_on GLOB '????-??-??'),
  note                TEXT    NOT NULL DEFAULT '',
  ended_on            TEXT    CHECK (ended_on GLOB '????-??-??'),
  ended_how           TEXT    CHECK (ended_how IN ('Wear', 'Mishit', 'Grommet', 'Machine', 'CutOut', 'Unknown')),
  -- Hours played on the strings in all, frozen when they come out.
  hours_played        REAL    CHECK (hours_played >= 0),
  version             INTEGER NOT NULL DEFAULT 1,
  CHECK ((state IN ('Strung', 'Collected')) = (COALESCE(strung_on, done_on) IS NOT NULL)),
  -- A visit has no strings and is never on the machine.
  CHECK (CASE WHEN mains_id IS NULL THEN strung_on IS NULL AND state <> 'OnMachine' ELSE done_on IS NULL END),
  CHECK ((crosses_id IS NULL) = (mains_id IS NULL)),
  CHECK ((mains_tension IS NULL) = (mains_id IS NULL) AND (crosses_tension IS NULL) = (mains_id IS NULL)),
  CHECK ((state = 'Collected') = (collected_on IS NOT NULL)),
  CHECK ((ended_on IS NULL) = (ended_how IS NULL)),
  CHECK (ended_on IS NULL OR strung_on IS NOT NULL),
  CHECK (strung_at IS NULL OR started_at IS NOT NULL),
  CHECK (pieces = 2 OR mains_id = crosses_id)
) STRICT;
CREATE INDEX job_by_racket  ON job (racket_id, strung_on DESC, id DESC);
CREATE INDEX job_on_bench   ON job (state, promised_for, ticket) WHERE state IN ('Waiting', 'OnMachine', 'Strung');
CREATE INDEX job_unpaid     ON job (received_on) WHERE paid_on IS NULL AND state <> 'Cancelled';
CREATE INDEX job_received   ON job (received_on, racket_id);
CREATE INDEX job_by_string  ON job (mains_id);
CREATE INDEX job_timed      ON job (strung_at DESC) WHERE strung_at IS NOT NULL;
CREATE INDEX job_told       ON job (told_mail_id) WHERE told_mail_id IS NOT NULL;
CREATE INDEX job_moved      ON job (moved_at) WHERE moved_at IS NOT NULL;
CREATE INDEX job_by_crosses ON job (crosses_id);
CREATE INDEX job_visits     ON job (racket_id, done_on DESC) WHERE done_on IS NOT NULL;
CREATE INDEX job_done       ON job (done_on) WHERE done_on IS NOT NULL;

-- What is to be done at a visit, or was.
CREATE TABLE visit_work (
  job_id INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  work   TEXT    NOT NULL CHECK (work IN ('Grip', 'Grommets', 'Bumper', 'Balance', 'Check', 'Measuring', 'Other')),
  PRIMARY KEY (job_id, work)
) STRICT, WITHOUT ROWID;

-- Stringing machines. Tickets name one in words, so that what was written of older machines stays.
CREATE TABLE machine (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  name       TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
  kind       TEXT    NOT NULL CHECK (kind IN ('DropWeight', 'Crank', 'ElectronicPull')),
  -- Days from one check to the next; null for no reminder.
  every_days INTEGER CHECK (every_days BETWEEN 1 AND 730),
  is_retired INTEGER NOT NULL DEFAULT 0 CHECK (is_retired IN (0, 1)),
  made_on    TEXT    NOT NULL CHECK (made_on GLOB '????-??-??'),
  version    INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE UNIQUE INDEX machine_by_name ON machine (name COLLATE NOCASE);

-- What a machine pulled when it was set to a reference. Never changed.
CREATE TABLE machine_check (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  machine_id INTEGER NOT NULL REFERENCES machine (id),
  checked_on TEXT    NOT NULL CHECK (checked_on GLOB '????-??-??'),
  reference  REAL    NOT NULL CHECK (reference > 0),
  measured   REAL    NOT NULL CHECK (measured > 0),
  unit       TEXT    NOT NULL CHECK (unit IN ('Lb', 'Kg')),
  note       TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 120),
  made_by    TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80)
) STRICT;
CREATE INDEX machine_check_by_machine ON machine_check (machine_id, checked_on);

-- Who of the shop did what about a job; made_by is an account's id.
CREATE TABLE job_deed (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id  INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  deed    TEXT    NOT NULL CHECK (deed IN ('TakenIn', 'Came', 'Started', 'Strung', 'HandedOut', 'Cancelled', 'TakenBack', 'Changed', 'Moved', 'Told', 'Measured', 'Inspected', 'Photographed', 'PhotoRemoved', 'Fetched', 'Brought', 'Done')),
  made_at TEXT    NOT NULL,
  made_by TEXT    NOT NULL REFERENCES account (id)
) STRICT;
CREATE INDEX job_deed_by_job     ON job_deed (job_id, id);
CREATE INDEX job_deed_by_account ON job_deed (made_by);

-- What a client asked for when the job came about by their asking: in a reminder's answer, or in the own page, where they
-- also say where and by when they drop the racket off and when they need it.
CREATE TABLE job_request (
  job_id         INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  asked_in       TEXT    NOT NULL CHECK (asked_in IN ('Reminder', 'OwnPage')),
  -- In their own words; empty for the same again.
  asked_words    TEXT    NOT NULL DEFAULT '' CHECK (length(asked_words) <= 600),
  -- The racket has not been brought yet.
  expected       INTEGER NOT NULL DEFAULT 1 CHECK (expected IN (0, 1)),
  drop_off_where TEXT    NOT NULL DEFAULT '' CHECK (length(drop_off_where) <= 60),
  drop_off_by    TEXT    CHECK (drop_off_by GLOB '????-??-??'),
  needed_by      TEXT    CHECK (needed_by GLOB '????-??-??'),
  CHECK (asked_in = 'OwnPage' OR (drop_off_where = '' AND drop_off_by IS NULL AND needed_by IS NULL))
) STRICT;

-- Where rackets are left and collected besides the shop's own bench, in the order of the round. Never deleted: tickets name them.
CREATE TABLE stop (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  name     TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
  kind     TEXT    NOT NULL CHECK (kind IN ('Bench', 'Desk', 'DropBox')),
  position INTEGER NOT NULL CHECK (position > 0),
  is_ended INTEGER NOT NULL DEFAULT 0 CHECK (is_ended IN (0, 1)),
  version  INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE UNIQUE INDEX stop_by_name ON stop (name COLLATE NOCASE);

-- Where a ticket's racket was left and is to be collected, and when it was fetched and brought there; null for the shop's own
-- bench. A ticket that has to do with that bench alone has no row.
CREATE TABLE job_stop (
  job_id     INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  left_at    INTEGER REFERENCES stop (id),
  collect_at INTEGER REFERENCES stop (id),
  fetched_at TEXT,
  brought_at TEXT,
  CHECK (left_at IS NOT NULL OR collect_at IS NOT NULL),
  CHECK (fetched_at IS NULL OR left_at IS NOT NULL),
  CHECK (brought_at IS NULL OR collect_at IS NOT NULL)
) STRICT;
CREATE INDEX job_stop_by_left    ON job_stop (left_at) WHERE left_at IS NOT NULL;
CREATE INDEX job_stop_by_collect ON job_stop (collect_at) WHERE collect_at IS NOT NULL;
CREATE INDEX job_stop_fetched    ON job_stop (fetched_at) WHERE fetched_at IS NOT NULL;
CREATE INDEX job_stop_brought    ON job_stop (brought_at) WHERE brought_at IS NOT NULL;

-- What goes back to the machine is no longer where it was brought.
CREATE TRIGGER job_no_longer_brought AFTER UPDATE OF state ON job WHEN old.state = 'Strung' AND new.state NOT IN ('Strung', 'Collected') BEGIN
  UPDATE job_stop SET brought_at = NULL WHERE job_id = new.id AND brought_at IS NOT NULL;
END;

-- That the shop confirmed tensions outside what its catalogue recommends for the frame: both as they were then.
CREATE TABLE range_confirm (
  id              INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id          INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  confirmed_at    TEXT    NOT NULL,
  mains_tension   REAL    NOT NULL,
  crosses_tension REAL    NOT NULL,
  tension_unit    TEXT    NOT NULL CHECK (tension_unit IN ('Lb', 'Kg')),
  least           REAL,
  most            REAL,
  range_unit      TEXT    NOT NULL CHECK (range_unit IN ('Lb', 'Kg'))
) STRICT;
CREATE INDEX range_confirm_by_job ON range_confirm (job_id);

-- What a racket looked like when it came in, part by part; null for a part that nobody looked at.
CREATE TABLE condition (
  job_id         INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  frame          TEXT    CHECK (frame IN ('Fine', 'Worn', 'Damaged')),
  frame_words    TEXT    NOT NULL DEFAULT '' CHECK (length(frame_words) <= 120),
  grommets       TEXT    CHECK (grommets IN ('Fine', 'Worn', 'Damaged')),
  grommets_words TEXT    NOT NULL DEFAULT '' CHECK (length(grommets_words) <= 120),
  bumper         TEXT    CHECK (bumper IN ('Fine', 'Worn', 'Damaged')),
  bumper_words   TEXT    NOT NULL DEFAULT '' CHECK (length(bumper_words) <= 120),
  grip           TEXT    CHECK (grip IN ('Fine', 'Worn', 'Damaged')),
  grip_words     TEXT    NOT NULL DEFAULT '' CHECK (length(grip_words) <= 120),
  version        INTEGER NOT NULL DEFAULT 1
) STRICT;

-- Photos of it, redrawn by the program. The pictures stand last: what is before them is read without them.
CREATE TABLE photo (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id  INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  made_at TEXT    NOT NULL,
  width   INTEGER NOT NULL CHECK (width > 0),
  height  INTEGER NOT NULL CHECK (height > 0),
  small   BLOB    NOT NULL CHECK (substr(small, 1, 3) = x'FFD8FF' AND length(small) <= 100000),
  picture BLOB    NOT NULL CHECK (substr(picture, 1, 3) = x'FFD8FF' AND length(picture) <= 1000000)
) STRICT;
CREATE INDEX photo_by_job ON photo (job_id);

-- Whatever way it got onto the machine, it was brought.
CREATE TRIGGER job_brought AFTER UPDATE OF state ON job WHEN new.state IN ('OnMachine', 'Strung', 'Collected') BEGIN
  UPDATE job_request SET expected = 0 WHERE job_id = new.id AND expected = 1;
END;

-- "Not yet" was said about the strings in it then: new ones end it.
CREATE TRIGGER job_strung_asks_again AFTER UPDATE OF strung_on ON job WHEN new.strung_on IS NOT NULL AND old.strung_on IS NULL BEGIN
  UPDATE racket SET not_before = NULL WHERE id = new.racket_id AND not_before IS NOT NULL;
END;

-- Strings that have another day of going in or coming out were played for other hours, and their label another date.
CREATE TRIGGER job_hours_thaw AFTER UPDATE OF strung_on, ended_on ON job
WHEN new.hours_played IS NOT NULL AND (new.strung_on IS NOT old.strung_on OR new.ended_on IS NOT old.ended_on) BEGIN
  UPDATE job SET hours_played = NULL WHERE id = new.id;
END;
CREATE TRIGGER job_readings_thaw AFTER UPDATE OF strung_on ON job WHEN new.strung_on IS NOT old.strung_on BEGIN
  UPDATE reading SET hours = NULL WHERE job_id = new.id AND hours IS NOT NULL;
END;
CREATE TRIGGER job_label_thaw AFTER UPDATE OF strung_on ON job
WHEN new.strung_on IS NOT old.strung_on AND new.label_date IS NOT NULL AND new.label_date IS old.label_date BEGIN
  UPDATE job SET label_date = NULL WHERE id = new.id;
END;

-- Rackets of the shop's own that are lent, and to whom. One is with one client at a time.
CREATE TABLE loan_racket (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  name     TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  note     TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 200),
  is_ended INTEGER NOT NULL DEFAULT 0 CHECK (is_ended IN (0, 1)),
  version  INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE UNIQUE INDEX loan_racket_by_name ON loan_racket (name COLLATE NOCASE);

-- made_by is the id of the account that lent it, or says by what way it came.
CREATE TABLE loan (
  id             INTEGER PRIMARY KEY AUTOINCREMENT,
  loan_racket_id INTEGER NOT NULL REFERENCES loan_racket (id),
  client_id      INTEGER NOT NULL REFERENCES client (id),
  lent_on        TEXT    NOT NULL CHECK (lent_on GLOB '????-??-??'),
  due_on         TEXT    CHECK (due_on GLOB '????-??-??' AND due_on >= lent_on),
  back_on        TEXT    CHECK (back_on GLOB '????-??-??' AND back_on >= lent_on),
  note           TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 200),
  made_by        TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80)
) STRICT;
CREATE UNIQUE INDEX loan_open ON loan (loan_racket_id) WHERE back_on IS NULL;
CREATE INDEX loan_by_racket   ON loan (loan_racket_id);
CREATE INDEX loan_by_client   ON loan (client_id, lent_on DESC);
CREATE INDEX loan_due         ON loan (due_on) WHERE back_on IS NULL;

-- What the player said about a stringing after playing with it.
CREATE TABLE feel (
  job_id       INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  bed          TEXT    NOT NULL CHECK (bed IN ('TooStiff', 'Right', 'TooLoose')),
  more_spin    INTEGER NOT NULL DEFAULT 0 CHECK (more_spin IN (0, 1)),
  more_control INTEGER NOT NULL DEFAULT 0 CHECK (more_control IN (0, 1)),
  more_comfort INTEGER NOT NULL DEFAULT 0 CHECK (more_comfort IN (0, 1)),
  note         TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 400),
  said_on      TEXT    NOT NULL CHECK (said_on GLOB '????-??-??')
) STRICT;

-- What the shop keeps of the jobs of a client whose data was deleted: counts and money, no person, no racket.
CREATE TABLE past_job (
  ticket      INTEGER PRIMARY KEY,
  sport       TEXT    NOT NULL,
  mains_id    INTEGER REFERENCES string_kind (id),
  crosses_id  INTEGER REFERENCES string_kind (id),
  received_on TEXT    NOT NULL CHECK (received_on GLOB '????-??-??'),
  strung_on   TEXT    CHECK (strung_on GLOB '????-??-??'),
  done_on     TEXT    CHECK (done_on GLOB '????-??-??'),
  price_minor INTEGER,
  paid_on     TEXT    CHECK (paid_on GLOB '????-??-??')
) STRICT;
CREATE INDEX past_job_by_mains   ON past_job (mains_id);
CREATE INDEX past_job_by_crosses ON past_job (crosses_id);

-- Numbers of tickets that were deleted: they are not given out again.
CREATE TABLE deleted_ticket (ticket INTEGER PRIMARY KEY) STRICT;

-- ==== Money: what jobs cost and what was paid. All amounts in minor units of the shop's currency ====

-- What the shop charges, and what bills need. Labour for a sport, else for any; null where none is set.
CREATE TABLE money_setting (
  id              INTEGER PRIMARY KEY CHECK (id = 1),
  labour_minor    INTEGER CHECK (labour_minor BETWEEN 0 AND 100000000),
  tennis_minor    INTEGER CHECK (tennis_minor BETWEEN 0 AND 100000000),
  badminton_minor INTEGER CHECK (badminton_minor BETWEEN 0 AND 100000000),
  squash_minor    INTEGER CHECK (squash_minor BETWEEN 0 AND 100000000),
  -- Basis points; prices include it.
  tax_bp          INTEGER NOT NULL DEFAULT 0 CHECK (tax_bp BETWEEN 0 AND 10000),
  tax_number      TEXT    NOT NULL DEFAULT '' CHECK (length(tax_number) <= 40),
  iban            TEXT    CHECK (iban GLOB '[A-Z][A-Z][0-9][0-9]*'),
  account_name    TEXT    NOT NULL DEFAULT '' CHECK (length(account_name) <= 70),
  version         INTEGER NOT NULL DEFAULT 1
) STRICT;

CREATE TABLE string_price (
  string_id   INTEGER PRIMARY KEY REFERENCES string_kind (id) ON DELETE CASCADE,
  set_minor   INTEGER CHECK (set_minor BETWEEN 0 AND 100000000),
  metre_minor INTEGER CHECK (metre_minor BETWEEN 0 AND 100000000),
  CHECK (set_minor IS NOT NULL OR metre_minor IS NOT NULL)
) STRICT;

CREATE TABLE extra_price (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  kind         TEXT    NOT NULL CHECK (kind IN ('Grip', 'Grommets', 'Rush', 'Extra')),
  name         TEXT    NOT NULL DEFAULT '' CHECK (length(name) <= 60),
  amount_minor INTEGER NOT NULL CHECK (amount_minor BETWEEN 0 AND 100000000),
  CHECK ((kind = 'Extra') = (name <> ''))
) STRICT;

-- The lines of a job's price; the job's price is their sum. String by the metre has its length and the price of a metre.
CREATE TABLE charge (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id       INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  kind         TEXT    NOT NULL CHECK (kind IN ('Whole', 'Visit', 'Labour', 'Strings', 'Mains', 'Crosses', 'Grip', 'Grommets', 'Rush', 'Extra', 'Adjustment', 'Prepaid')),
  words        TEXT    NOT NULL DEFAULT '' CHECK (length(words) <= 60),
  centimetres  INTEGER CHECK (centimetres BETWEEN 1 AND 100000),
  metre_minor  INTEGER CHECK (metre_minor BETWEEN 0 AND 100000000),
  amount_minor INTEGER NOT NULL CHECK (amount_minor BETWEEN -100000000 AND 100000000),
  tax_bp       INTEGER NOT NULL DEFAULT 0 CHECK (tax_bp BETWEEN 0 AND 10000),
  CHECK ((centimetres IS NULL) = (metre_minor IS NULL))
) STRICT;
CREATE INDEX charge_by_job ON charge (job_id, id);

-- Every change of an amount, a row a line: null before for a new one, null after for one that went. Outlives its job, then
-- with the ticket's number alone. Here and in the tables below made_by is the id of the account that did it, or says by what way it came.
CREATE TABLE charge_change (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id    INTEGER REFERENCES job (id) ON DELETE SET NULL,
  ticket    INTEGER NOT NULL,
  kind      TEXT    NOT NULL,
  was_minor INTEGER,
  is_minor  INTEGER,
  made_at   TEXT    NOT NULL,
  made_by   TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80),
  CHECK (was_minor IS NOT NULL OR is_minor IS NOT NULL)
) STRICT;
CREATE INDEX charge_change_by_job ON charge_change (job_id, id);

-- Money that came in, from a client or a payer; neither once the client's data was deleted. Never changed: a mistaken one is
-- taken back by a counter-entry of the same amount below zero.
CREATE TABLE payment (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id    INTEGER REFERENCES client (id),
  payer_id     INTEGER REFERENCES payer (id),
  paid_on      TEXT    NOT NULL CHECK (paid_on GLOB '????-??-??'),
  method       TEXT    NOT NULL CHECK (method IN ('Cash', 'Card', 'Transfer', 'Before')),
  amount_minor INTEGER NOT NULL CHECK (amount_minor BETWEEN -100000000 AND 100000000),
  undoes_id    INTEGER UNIQUE REFERENCES payment (id),
  note         TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 120),
  made_at      TEXT    NOT NULL,
  made_by      TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80),
  CHECK (client_id IS NULL OR payer_id IS NULL),
  CHECK (undoes_id IS NOT NULL OR amount_minor >= 0)
) STRICT;
CREATE INDEX payment_by_client ON payment (client_id, id) WHERE client_id IS NOT NULL;
CREATE INDEX payment_by_payer  ON payment (payer_id, id) WHERE payer_id IS NOT NULL;
CREATE INDEX payment_by_day    ON payment (paid_on, id);

CREATE TRIGGER payment_stays BEFORE UPDATE OF amount_minor, method, undoes_id ON payment BEGIN
  SELECT RAISE(ABORT, 'A payment is never changed.');
END;
-- But for what a list said was paid before: that goes when the whole list is taken back.
CREATE TRIGGER payment_never_goes BEFORE DELETE ON payment
WHEN NOT EXISTS (SELECT 1 FROM stringing_list_record m JOIN stringing_list l ON l.id = m.list_id
                 WHERE m.kind = 'payment' AND m.record_id = old.id AND l.state = 'Leaving') BEGIN
  SELECT RAISE(ABORT, 'A payment is never deleted.');
END;

-- What of a payment is laid against which job; below zero where some was taken off it again. What is laid against none is
-- credit. Of a client whose data was deleted, the ticket's number stands for the job.
CREATE TABLE payment_share (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  payment_id   INTEGER NOT NULL REFERENCES payment (id),
  job_id       INTEGER REFERENCES job (id),
  past_ticket  INTEGER REFERENCES past_job (ticket),
  amount_minor INTEGER NOT NULL,
  made_at      TEXT    NOT NULL,
  made_by      TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80),
  CHECK ((job_id IS NULL) <> (past_ticket IS NULL))
) STRICT;
CREATE INDEX payment_share_by_job     ON payment_share (job_id) WHERE job_id IS NOT NULL;
CREATE INDEX payment_share_by_payment ON payment_share (payment_id);
CREATE INDEX payment_share_by_past    ON payment_share (past_ticket) WHERE past_ticket IS NOT NULL;

CREATE TRIGGER payment_share_stays BEFORE UPDATE OF payment_id, amount_minor ON payment_share BEGIN
  SELECT RAISE(ABORT, 'What was laid against a job is never changed.');
END;

-- Restrings that were paid in advance, by a client or a payer; of neither once the client's data was deleted. The payment that
-- bought them is laid against no ticket and is no credit. Never changed: one bought by mistake ends with its payment.
CREATE TABLE prepaid (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id    INTEGER REFERENCES client (id),
  payer_id     INTEGER REFERENCES payer (id),
  bought_on    TEXT    NOT NULL CHECK (bought_on GLOB '????-??-??'),
  restrings    INTEGER NOT NULL CHECK (restrings BETWEEN 1 AND 100),
  covers       TEXT    NOT NULL CHECK (covers IN ('Labour', 'LabourAndStrings')),
  amount_minor INTEGER NOT NULL CHECK (amount_minor BETWEEN 1 AND 100000000),
  tax_bp       INTEGER NOT NULL CHECK (tax_bp BETWEEN 0 AND 10000),
  payment_id   INTEGER NOT NULL UNIQUE REFERENCES payment (id),
  note         TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 120),
  made_at      TEXT    NOT NULL,
  made_by      TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80),
  CHECK (client_id IS NULL OR payer_id IS NULL)
) STRICT;
CREATE INDEX prepaid_by_client ON prepaid (client_id) WHERE client_id IS NOT NULL;
CREATE INDEX prepaid_by_payer  ON prepaid (payer_id) WHERE payer_id IS NOT NULL;

CREATE TRIGGER prepaid_stays BEFORE UPDATE OF restrings, covers, amount_minor, tax_bp, payment_id ON prepaid BEGIN
  SELECT RAISE(ABORT, 'What was paid in advance is never changed.');
END;
-- Only the demo's days move on.
CREATE TRIGGER prepaid_day_stays BEFORE UPDATE OF bought_on ON prepaid WHEN NOT EXISTS (SELECT 1 FROM demo) BEGIN
  SELECT RAISE(ABORT, 'What was paid in advance is never changed.');
END;
CREATE TRIGGER prepaid_never_goes BEFORE DELETE ON prepaid BEGIN
  SELECT RAISE(ABORT, 'What was paid in advance is never deleted.');
END;

-- Each use of one, by ticket; given back where the hand-out was taken back.
CREATE TABLE prepaid_use (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  prepaid_id    INTEGER NOT NULL REFERENCES prepaid (id),
  job_id        INTEGER REFERENCES job (id) ON DELETE SET NULL,
  ticket        INTEGER NOT NULL,
  used_on       TEXT    NOT NULL CHECK (used_on GLOB '????-??-??'),
  given_back_at TEXT,
  made_at       TEXT    NOT NULL,
  made_by       TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80)
) STRICT;
CREATE UNIQUE INDEX prepaid_use_once ON prepaid_use (job_id) WHERE given_back_at IS NULL AND job_id IS NOT NULL;
CREATE INDEX prepaid_use_by_job      ON prepaid_use (job_id) WHERE job_id IS NOT NULL;
CREATE INDEX prepaid_use_by_prepaid  ON prepaid_use (prepaid_id);

CREATE TRIGGER prepaid_never_below_zero BEFORE INSERT ON prepaid_use
WHEN (SELECT COUNT(*) FROM prepaid_use WHERE prepaid_id = new.prepaid_id AND given_back_at IS NULL) >= (SELECT restrings FROM prepaid WHERE id = new.prepaid_id) BEGIN
  SELECT RAISE(ABORT, 'No more restrings are used than were paid in advance.');
END;

-- Bills, numbered without gaps within a year. Never changed and never deleted: a mistaken one is cancelled by another with
-- the same amounts below zero. Whom it went to and what its lines say go when the client's data is deleted. One that is neither
-- a client's nor a payer's went to a country or club at an event.
CREATE TABLE bill (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  year       INTEGER NOT NULL CHECK (year BETWEEN 1970 AND 9999),
  number     INTEGER NOT NULL CHECK (number > 0),
  client_id  INTEGER REFERENCES client (id),
  payer_id   INTEGER REFERENCES payer (id),
  to_name    TEXT    NOT NULL,
  -- Their address, line by line; a month's bill has none.
  to_address TEXT    NOT NULL DEFAULT '' CHECK (length(to_address) <= 240),
  -- Rackets strung on these days.
  from_on    TEXT    NOT NULL CHECK (from_on GLOB '????-??-??'),
  to_on      TEXT    NOT NULL CHECK (to_on GLOB '????-??-??' AND to_on >= from_on),
  issued_on  TEXT    NOT NULL CHECK (issued_on GLOB '????-??-??'),
  -- Name, address, tax number and account of the shop as they were, and its currency.
  shop       TEXT    NOT NULL CHECK (json_valid(shop)),
  currency   TEXT    NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  -- ISO 639-1: what it is written in.
  language   TEXT    NOT NULL DEFAULT 'en' CHECK (language GLOB '[a-z][a-z]'),
  -- What of it was paid when it was written.
  paid_minor INTEGER NOT NULL,
  cancels_id INTEGER UNIQUE REFERENCES bill (id),
  made_at    TEXT    NOT NULL,
  made_by    TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80),
  UNIQUE (year, number),
  CHECK (client_id IS NULL OR payer_id IS NULL)
) STRICT;
CREATE INDEX bill_by_client ON bill (client_id, id) WHERE client_id IS NOT NULL;
CREATE INDEX bill_by_payer  ON bill (payer_id, id) WHERE payer_id IS NOT NULL;

CREATE TABLE bill_line (
  bill_id      INTEGER NOT NULL REFERENCES bill (id),
  position     INTEGER NOT NULL CHECK (position > 0),
  job_id       INTEGER REFERENCES job (id) ON DELETE SET NULL,
  -- Of restrings that were sold in advance, which are on no ticket; then the day is that of the sale.
  prepaid_id   INTEGER REFERENCES prepaid (id),
  ticket       INTEGER,
  strung_on    TEXT    NOT NULL CHECK (strung_on GLOB '????-??-??'),
  -- Work without new strings, done on that day.
  is_visit     INTEGER NOT NULL DEFAULT 0 CHECK (is_visit IN (0, 1)),
  -- Whose racket; empty once their data was deleted.
  whose        TEXT    NOT NULL DEFAULT '' CHECK (length(whose) <= 120),
  -- Its number within its player, and at an event its desk number; null once their data was deleted.
  racket       INTEGER CHECK (racket > 0),
  desk         INTEGER CHECK (desk > 0),
  kind         TEXT    NOT NULL,
  words        TEXT    NOT NULL DEFAULT '' CHECK (length(words) <= 120),
  -- Of string by the metre, with the price of a metre.
  centimetres  INTEGER CHECK (centimetres > 0),
  metre_minor  INTEGER CHECK (metre_minor >= 0),
  amount_minor INTEGER NOT NULL,
  tax_bp       INTEGER NOT NULL CHECK (tax_bp BETWEEN 0 AND 10000),
  PRIMARY KEY (bill_id, position),
  CHECK ((ticket IS NULL) = (prepaid_id IS NOT NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX bill_line_by_job     ON bill_line (job_id) WHERE job_id IS NOT NULL;
CREATE INDEX bill_line_by_prepaid ON bill_line (prepaid_id) WHERE prepaid_id IS NOT NULL;

CREATE TRIGGER bill_stays BEFORE UPDATE OF year, number, currency, language, paid_minor, cancels_id, shop ON bill BEGIN
  SELECT RAISE(ABORT, 'A bill is never changed.');
END;
CREATE TRIGGER bill_never_goes BEFORE DELETE ON bill BEGIN
  SELECT RAISE(ABORT, 'A bill is never deleted.');
END;
CREATE TRIGGER bill_line_stays BEFORE UPDATE OF bill_id, position, prepaid_id, ticket, amount_minor, tax_bp ON bill_line BEGIN
  SELECT RAISE(ABORT, 'A bill is never changed.');
END;
CREATE TRIGGER bill_line_never_goes BEFORE DELETE ON bill_line BEGIN
  SELECT RAISE(ABORT, 'A bill is never changed.');
END;

-- ==== Beds ====

-- The strings now in each racket, or last in it: its newest strung job.
CREATE VIEW bed AS
SELECT r.id AS racket_id, j.id AS job_id, j.strung_on, j.ended_on, j.ended_how, j.mains_id, j.crosses_id
FROM racket r
JOIN job j ON j.id = (SELECT n.id FROM job n WHERE n.racket_id = r.id AND n.strung_on IS NOT NULL
                      ORDER BY n.strung_on DESC, n.id DESC LIMIT 1);

-- ==== Events ====

-- Where rackets are strung against the clock. Times of an event are those of the shop's clock, yyyy-MM-dd HH:mm. The link of
-- its helpers is derived from id and secret; a new secret makes it void.
CREATE TABLE event (
  id               INTEGER PRIMARY KEY AUTOINCREMENT,
  name             TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  place            TEXT    NOT NULL DEFAULT '' CHECK (length(place) <= 60),
  from_on          TEXT    NOT NULL CHECK (from_on GLOB '????-??-??'),
  to_on            TEXT    NOT NULL CHECK (to_on GLOB '????-??-??' AND to_on >= from_on),
  label_tape       TEXT    NOT NULL DEFAULT '' CHECK (length(label_tape) <= 20),
  -- What a racket costs with the player's own string, and with the desk's.
  price_own_minor  INTEGER CHECK (price_own_minor BETWEEN 0 AND 100000000),
  price_desk_minor INTEGER CHECK (price_desk_minor BETWEEN 0 AND 100000000),
  -- The last desk number that was given; none is given twice.
  last_number      INTEGER NOT NULL DEFAULT 0 CHECK (last_number >= 0),
  secret           TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  closed_at        TEXT,
  version          INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE INDEX event_by_day ON event (from_on DESC, id DESC);

-- Somebody who strings there, at a machine of their own. Away: the machine is broken, or they are not there.
CREATE TABLE event_technician (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  event_id INTEGER NOT NULL REFERENCES event (id) ON DELETE CASCADE,
  name     TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
  machine  TEXT    NOT NULL DEFAULT '' CHECK (length(machine) <= 60),
  away     INTEGER NOT NULL DEFAULT 0 CHECK (away IN (0, 1))
) STRICT;
CREATE INDEX event_technician_by_event ON event_technician (event_id, id);
CREATE INDEX event_technician_by_name  ON event_technician (name COLLATE NOCASE);

-- When a technician works, day by day, and the breaks in it.
CREATE TABLE event_hours (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  technician_id INTEGER NOT NULL REFERENCES event_technician (id) ON DELETE CASCADE,
  is_break      INTEGER NOT NULL DEFAULT 0 CHECK (is_break IN (0, 1)),
  from_at       TEXT    NOT NULL CHECK (from_at GLOB '????-??-?? ??:??'),
  to_at         TEXT    NOT NULL CHECK (to_at GLOB '????-??-?? ??:??' AND to_at > from_at)
) STRICT;
CREATE INDEX event_hours_by_technician ON event_hours (technician_id, from_at);

-- A racket at the desk of an event: what its job does not say. How far it is stands with the job.
CREATE TABLE event_entry (
  job_id         INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE,
  event_id       INTEGER NOT NULL REFERENCES event (id) ON DELETE CASCADE,
  number         INTEGER NOT NULL CHECK (number > 0),
  -- A country or a club.
  team           TEXT    NOT NULL DEFAULT '' CHECK (length(team) <= 60),
  came_at        TEXT    NOT NULL CHECK (came_at GLOB '????-??-?? ??:??'),
  needed_by      TEXT    CHECK (needed_by GLOB '????-??-?? ??:??'),
  not_before     TEXT    CHECK (not_before GLOB '????-??-?? ??:??'),
  promised       TEXT    CHECK (promised GLOB '????-??-?? ??:??'),
  -- What was promised before it had to be moved, until its owner was told.
  moved_from     TEXT    CHECK (moved_from GLOB '????-??-?? ??:??'),
  on_court       INTEGER NOT NULL DEFAULT 0 CHECK (on_court IN (0, 1)),
  pulled_forward INTEGER NOT NULL DEFAULT 0 CHECK (pulled_forward IN (0, 1)),
  kept_for       INTEGER REFERENCES event_technician (id) ON DELETE SET NULL,
  minutes        INTEGER CHECK (minutes BETWEEN 5 AND 240),
  stencil        TEXT    NOT NULL DEFAULT '' CHECK (length(stencil) <= 40),
  stencil_colour TEXT    NOT NULL DEFAULT '' CHECK (length(stencil_colour) <= 20),
  -- Where it lies until it is collected.
  lies           TEXT    NOT NULL DEFAULT '' CHECK (length(lies) <= 40),
  technician_id  INTEGER REFERENCES event_technician (id) ON DELETE SET NULL,
  started_at     TEXT    CHECK (started_at GLOB '????-??-?? ??:??'),
  strung_at      TEXT    CHECK (strung_at GLOB '????-??-?? ??:??'),
  handed_at      TEXT    CHECK (handed_at GLOB '????-??-?? ??:??'),
  UNIQUE (event_id, number)
) STRICT;
CREATE INDEX event_entry_by_technician ON event_entry (technician_id, strung_at) WHERE technician_id IS NOT NULL;
CREATE INDEX event_entry_kept_for      ON event_entry (kept_for) WHERE kept_for IS NOT NULL;

-- A tablet or phone of a helper at an event's desk; it ends with the event.
CREATE TABLE event_session (
  id_hash  TEXT    PRIMARY KEY CHECK (length(id_hash) = 64),
  event_id INTEGER NOT NULL REFERENCES event (id) ON DELETE CASCADE,
  made_at  TEXT    NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX event_session_by_event ON event_session (event_id);

-- ==== Readings ====

CREATE TABLE instrument (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  name    TEXT    NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 40),
  scale   TEXT    NOT NULL CHECK (scale IN ('Stiffness', 'Hertz')),
  -- Phones: the one that readings of households are taken on, whatever the shop calls it. It hears pitch.
  kind    TEXT    NOT NULL DEFAULT 'Shop' CHECK (kind IN ('Shop', 'Phones')),
  version INTEGER NOT NULL DEFAULT 1,
  CHECK (kind = 'Shop' OR scale = 'Hertz')
) STRICT;
CREATE UNIQUE INDEX instrument_of_phones ON instrument (kind) WHERE kind = 'Phones';

-- The first reading of a job is taken right after stringing; later ones compare with it.
CREATE TABLE reading (
  id            INTEGER PRIMARY KEY AUTOINCREMENT,
  job_id        INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
  first         INTEGER NOT NULL CHECK (first IN (0, 1)),
  taken_on      TEXT    NOT NULL CHECK (taken_on GLOB '????-??-??'),
  taken_at      TEXT    CHECK (taken_at GLOB '[0-2][0-9]:[0-5][0-9]'),
  instrument_id INTEGER NOT NULL REFERENCES instrument (id),
  value         REAL    NOT NULL CHECK (value > 0 AND value < 5000),
  -- Hours played on the strings by then, frozen when the reading is written down; null where nobody can tell.
  hours         REAL    CHECK (hours >= 0),
  -- 1: it lies far from what was expected, and teaches nothing until the owner says that it counts. Null until that was looked at.
  doubtful      INTEGER CHECK (doubtful IN (0, 1)),
  note          TEXT    NOT NULL DEFAULT ''
) STRICT;
CREATE UNIQUE INDEX reading_first ON reading (job_id) WHERE first = 1;
CREATE INDEX reading_by_job        ON reading (job_id, taken_on);
CREATE INDEX reading_by_instrument ON reading (instrument_id);

CREATE TRIGGER reading_hours_thaw AFTER UPDATE OF taken_on ON reading
WHEN new.hours IS NOT NULL AND new.taken_on <> old.taken_on BEGIN
  UPDATE reading SET hours = NULL WHERE id = new.id;
END;

-- A job with all that the shop's pages and mails tell of it: racket, household, strings, what was asked and the first reading.
CREATE VIEW job_card AS
SELECT j.id, j.ticket, j.state, j.version, j.racket_id, r.number, r.frame, r.tape_colour, r.sport, r.pattern_mains, r.pattern_crosses,
       r.note AS racket_note, p.note AS player_note, c.note AS client_note, p.name AS player, p.junior, c.id AS client_id, c.name AS client, c.mail AS client_mail, c.phone AS client_phone,
       c.language AS client_language, c.payer_id, y.name AS payer,
       j.mains_id, m.name AS mains_name, m.material AS mains_material, m.gauge_mm AS mains_gauge_mm, j.mains_supplied_by, j.mains_tension,
       j.crosses_id, x.name AS crosses_name, x.material AS crosses_material, x.gauge_mm AS crosses_gauge_mm, j.crosses_supplied_by,
       j.crosses_tension, j.tension_unit, j.mains_pre_stretch, j.crosses_pre_stretch, j.pieces,
       j.received_on, j.received_where, j.promised_for, j.strung_on, j.strung_by, j.machine,
       CASE WHEN o.state IS NOT 'Failed' THEN j.told_ready_at END AS told_ready_at, j.told_ready_at IS NOT NULL AND o.state IS 'Failed' AS is_telling_failed, o.state IN ('Queued', 'Leaving') AS is_telling, j.started_at, j.strung_at, j.collected_on,
       j.mains_id IS NULL AS is_visit, j.done_on, (SELECT group_concat(w.work, ' ') FROM visit_work w WHERE w.job_id = j.id) AS work,
       j.price_minor, (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.job_id = j.id) AS laid_minor, j.paid_on, j.note, j.ended_on, j.ended_how,
       q.asked_in, COALESCE(q.asked_words, '') AS asked_words, COALESCE(q.expected, 0) AS expected,
       COALESCE(q.drop_off_where, '') AS drop_off_where, q.drop_off_by, q.needed_by,
       g.value AS reading, g.instrument_id, i.name AS instrument,
       s.left_at AS left_at_id, l.name AS left_at, s.collect_at AS collect_at_id, k.name AS collect_at, s.fetched_at, s.brought_at
FROM job j
JOIN racket r ON r.id = j.racket_id
JOIN player p ON p.id = r.player_id
JOIN client c ON c.id = p.client_id
LEFT JOIN payer y ON y.id = c.payer_id
LEFT JOIN outbox o ON o.id = j.told_mail_id
LEFT JOIN string_kind m ON m.id = j.mains_id
LEFT JOIN string_kind x ON x.id = j.crosses_id
LEFT JOIN job_request q ON q.job_id = j.id
LEFT JOIN reading g ON g.job_id = j.id AND g.first = 1
LEFT JOIN instrument i ON i.id = g.instrument_id
LEFT JOIN job_stop s ON s.job_id = j.id
LEFT JOIN stop l ON l.id = s.left_at
LEFT JOIN stop k ON k.id = s.collect_at;

-- ==== Tags ====

-- Blank tags made ahead. The stock they were laid out for stays with them: a reprint is the same roll.
-- Its address is derived from id and secret: after going back to a copy it never shows another roll's tags.
CREATE TABLE tag_roll (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  secret  TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  count   INTEGER NOT NULL CHECK (count BETWEEN 1 AND 500),
  made    INTEGER NOT NULL DEFAULT 0 CHECK (made BETWEEN 0 AND count),
  stock   TEXT    NOT NULL CHECK (json_valid(stock)),
  made_at TEXT    NOT NULL
) STRICT;
CREATE INDEX tag_roll_unfinished ON tag_roll (id) WHERE made < count;

CREATE TABLE tag (
  code             TEXT    PRIMARY KEY CHECK (length(code) = 11 AND code NOT GLOB '*[^0-9A-HJKMNP-TV-Z]*'),
  state            TEXT    NOT NULL CHECK (state IN ('Unassigned', 'Live', 'Retired')),
  racket_id        INTEGER REFERENCES racket (id),
  roll_id          INTEGER REFERENCES tag_roll (id),
  made_at          TEXT    NOT NULL,
  linked_at        TEXT,
  retired_at       TEXT,
  found_blocked_at TEXT,
  CHECK (state IS NOT 'Live' OR racket_id IS NOT NULL),
  CHECK (state IS NOT 'Unassigned' OR racket_id IS NULL),
  CHECK ((state = 'Retired') = (retired_at IS NOT NULL))
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX tag_live_of_racket ON tag (racket_id) WHERE state = 'Live';
CREATE INDEX tag_of_racket ON tag (racket_id);
CREATE INDEX tag_of_roll   ON tag (roll_id, made_at, code) WHERE roll_id IS NOT NULL;

-- ==== Labels ====

-- How labels are printed, as one JSON document. One row; without it the starting values hold.
CREATE TABLE label_setting (
  id       INTEGER PRIMARY KEY CHECK (id = 1),
  settings TEXT    NOT NULL CHECK (json_valid(settings)),
  version  INTEGER NOT NULL DEFAULT 1
) STRICT;

-- The shop's logo in shades of grey, as it was read from the upload, and where black begins.
CREATE TABLE label_logo (
  id        INTEGER PRIMARY KEY CHECK (id = 1),
  png       BLOB    NOT NULL,
  threshold INTEGER NOT NULL CHECK (threshold BETWEEN 1 AND 255),
  version   INTEGER NOT NULL DEFAULT 1
) STRICT;

-- ==== Reminders ====

-- One reminder to one household. Its two links, to answer and to stop, are derived from id and secret with the server's
-- key and never stored; a new secret makes the link void.
CREATE TABLE reminder (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id   INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  secret      TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  stop_secret TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(stop_secret) = 32),
  made_at     TEXT    NOT NULL,
  expires_at  TEXT    NOT NULL,
  sent_how    TEXT    CHECK (sent_how IN ('Mail', 'MailApp', 'SmsApp', 'Copied', 'Phone')),
  sent_at     TEXT,
  -- What became of its last email, from when that is deleted; null before, and where there was none.
  mail_fate   TEXT    CHECK (mail_fate IN ('Sent', 'Failed', 'MaybeSent')),
  discarded   INTEGER NOT NULL DEFAULT 0 CHECK (discarded IN (0, 1))
) STRICT;
CREATE INDEX reminder_by_client ON reminder (client_id, made_at DESC);

CREATE TABLE reminder_racket (
  reminder_id      INTEGER NOT NULL REFERENCES reminder (id) ON DELETE CASCADE,
  racket_id        INTEGER NOT NULL REFERENCES racket (id) ON DELETE CASCADE,
  due              TEXT    CHECK (due GLOB '????-??-??'),
  answer           TEXT    CHECK (answer IN ('Same', 'Different', 'NotYet', 'Elsewhere', 'Gone')),
  answered_at      TEXT,
  answered_by      TEXT    CHECK (answered_by IN ('Client', 'Owner')),
  weeks            INTEGER CHECK (weeks BETWEEN 1 AND 52),
  elsewhere_on     TEXT    CHECK (elsewhere_on GLOB '????-??-??'),
  wish_strings     TEXT    NOT NULL DEFAULT '' CHECK (length(wish_strings) <= 80),
  wish_tension     TEXT    NOT NULL DEFAULT '' CHECK (length(wish_tension) <= 40),
  wish_note        TEXT    NOT NULL DEFAULT '' CHECK (length(wish_note) <= 400),
  job_id           INTEGER REFERENCES job (id),
  -- What stood at the racket before the answer, for a change of mind.
  state_before     TEXT    CHECK (state_before IN ('InTurn', 'Spare', 'Resting', 'Damaged')),
  elsewhere_before TEXT    CHECK (elsewhere_before GLOB '????-??-??'),
  PRIMARY KEY (reminder_id, racket_id),
  CHECK ((answer IS NULL) = (answered_at IS NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX reminder_of_racket     ON reminder_racket (racket_id);
CREATE INDEX reminder_racket_of_job ON reminder_racket (job_id) WHERE job_id IS NOT NULL;

-- Reminders to many households at once. What is still to do stands here, so that a restart goes on where it stopped.
CREATE TABLE reminder_batch (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  made_at    TEXT    NOT NULL,
  stopped_at TEXT
) STRICT;

CREATE TABLE reminder_batch_client (
  batch_id    INTEGER NOT NULL REFERENCES reminder_batch (id) ON DELETE CASCADE,
  client_id   INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  state       TEXT    NOT NULL DEFAULT 'Waiting' CHECK (state IN ('Waiting', 'Sent', 'Skipped')),
  why         TEXT    NOT NULL DEFAULT '',
  reminder_id INTEGER REFERENCES reminder (id) ON DELETE SET NULL,
  PRIMARY KEY (batch_id, client_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX reminder_batch_waiting     ON reminder_batch_client (batch_id, client_id) WHERE state = 'Waiting';
CREATE INDEX reminder_batch_of_client   ON reminder_batch_client (client_id);
CREATE INDEX reminder_batch_of_reminder ON reminder_batch_client (reminder_id) WHERE reminder_id IS NOT NULL;

-- ==== Lost and found ====

-- Every showing of a contact and every word a finder left. What the finder typed goes after 30 days, the line stays.
-- The link to answer is derived from id and secret.
CREATE TABLE found_event (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  secret      TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  code        TEXT    NOT NULL,
  racket_id   INTEGER NOT NULL REFERENCES racket (id) ON DELETE CASCADE,
  client_id   INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  kind        TEXT    NOT NULL CHECK (kind IN ('Shown', 'AtDesk', 'HaveIt', 'StillThere', 'Message')),
  at          TEXT    NOT NULL,
  source      TEXT    NOT NULL,
  form_key    TEXT    NOT NULL,
  message     TEXT    NOT NULL DEFAULT '' CHECK (length(message) <= 1000),
  -- How the finder can be reached, as far as they said so.
  contact     TEXT    NOT NULL DEFAULT '' CHECK (length(contact) <= 100),
  -- Of the page the finder read; an answer is written in it.
  language    TEXT    NOT NULL DEFAULT 'en',
  notice_id   INTEGER REFERENCES outbox (id),
  answered_at TEXT,
  wiped_at    TEXT
) STRICT;
CREATE UNIQUE INDEX found_event_once ON found_event (form_key, kind);
CREATE INDEX found_event_by_code   ON found_event (code, at);
CREATE INDEX found_event_by_source ON found_event (source, at);
CREATE INDEX found_event_by_client ON found_event (client_id, at DESC);
CREATE INDEX found_event_by_racket ON found_event (racket_id, at DESC);
CREATE INDEX found_event_by_notice ON found_event (notice_id) WHERE notice_id IS NOT NULL;
CREATE INDEX found_event_unwiped   ON found_event (at) WHERE wiped_at IS NULL;

-- ==== Clients' own pages ====

-- A private link opens one client's own page on as many phones as there are. It is derived from id and secret with the
-- server's key and never stored.
CREATE TABLE own_page_link (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id  INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  secret     TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  made_by    TEXT    NOT NULL CHECK (made_by IN ('Owner', 'Client')),
  made_at    TEXT    NOT NULL,
  expires_at TEXT    NOT NULL,
  revoked_at TEXT
) STRICT;
CREATE INDEX own_page_link_by_client ON own_page_link (client_id, id DESC);

-- One row for each browser a link was exchanged in. The cookie's own value is kept nowhere, only its hash.
CREATE TABLE own_page_session (
  id_hash     TEXT    PRIMARY KEY CHECK (length(id_hash) = 64),
  client_id   INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  link_id     INTEGER NOT NULL REFERENCES own_page_link (id) ON DELETE CASCADE,
  made_at     TEXT    NOT NULL,
  -- Until then a code just typed lets this browser do what could do harm.
  fresh_until TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX own_page_session_by_client ON own_page_session (client_id);
CREATE INDEX own_page_session_by_link   ON own_page_session (link_id);

-- A code sent to the mail on file. Its digits are derived from id and secret with the server's key and never stored.
CREATE TABLE own_page_code (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id  INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  secret     TEXT    NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  made_at    TEXT    NOT NULL,
  expires_at TEXT    NOT NULL,
  tries      INTEGER NOT NULL DEFAULT 0,
  used_at    TEXT
) STRICT;
CREATE INDEX own_page_code_by_client ON own_page_code (client_id, made_at DESC);

-- Somebody asks for a link. Known and unknown are written down alike and told apart later, so that the answer takes the
-- same time; the row is gone once it was looked at.
CREATE TABLE link_request (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  way     TEXT    NOT NULL CHECK (way IN ('Mail', 'Phone')),
  -- The mail address or telephone number that was typed.
  contact TEXT    NOT NULL CHECK (length(contact) <= 254),
  made_at TEXT    NOT NULL
) STRICT;

-- ==== The outbox ====

-- Mail on its way. Written in the transaction that causes it; private links are kept here as placeholders only.
CREATE TABLE outbox (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  kind         TEXT    NOT NULL CHECK (kind IN ('Reminder', 'FoundNotice', 'ShopNotice', 'FinderAnswer', 'OwnPageLink', 'OwnPageCode', 'ClientNotice')),
  to_client_id INTEGER REFERENCES client (id) ON DELETE CASCADE,
  -- Where the mail goes to another address than the one on file: the old one is told of a change.
  to_address   TEXT,
  reminder_id  INTEGER REFERENCES reminder (id) ON DELETE CASCADE,
  -- Of a FinderAnswer: whom it goes to stands with the finder's words and goes with them.
  event_id     INTEGER REFERENCES found_event (id) ON DELETE CASCADE,
  -- Of an OwnPageLink and an OwnPageCode: what is derived when the mail is written.
  link_id      INTEGER REFERENCES own_page_link (id) ON DELETE CASCADE,
  code_id      INTEGER REFERENCES own_page_code (id) ON DELETE CASCADE,
  -- The bill that goes with it as a PDF, drawn when the mail is written.
  bill_id      INTEGER REFERENCES bill (id),
  -- Of a ShopNotice to a helper: the invitation it brings.
  invitation_id INTEGER REFERENCES invitation (id) ON DELETE CASCADE,
  message_id   TEXT    NOT NULL UNIQUE,
  subject      TEXT    NOT NULL DEFAULT '',
  -- Pieces of the mail as JSON; see Mail/MailText.
  body         TEXT    NOT NULL DEFAULT '[]',
  -- Leaving: claimed by the program that hands it to the mail server. MaybeSent: nobody will ever know.
  state        TEXT    NOT NULL DEFAULT 'Queued' CHECK (state IN ('Queued', 'Leaving', 'Sent', 'Failed', 'MaybeSent')),
  -- A try ended without the server's word, so the mail may have arrived whatever became of later tries.
  maybe_sent   INTEGER NOT NULL DEFAULT 0 CHECK (maybe_sent IN (0, 1)),
  not_before   TEXT    NOT NULL,
  tries        INTEGER NOT NULL DEFAULT 0,
  last_error   TEXT    NOT NULL DEFAULT '',
  -- Given up, and the owner has seen to it otherwise.
  let_go       INTEGER NOT NULL DEFAULT 0 CHECK (let_go IN (0, 1)),
  made_at      TEXT    NOT NULL,
  sent_at      TEXT,
  CHECK ((state = 'Sent') = (sent_at IS NOT NULL))
) STRICT;
-- What was given up is forgotten after a while; that nobody was told is not.
CREATE TRIGGER job_told_by_nobody BEFORE DELETE ON outbox WHEN old.state = 'Failed' BEGIN
  UPDATE job SET told_ready_at = NULL WHERE told_mail_id = old.id;
END;
-- Whoever says that a household wants no more reminders: those on their way are held back.
CREATE TRIGGER client_unreminded AFTER UPDATE OF reminders ON client WHEN new.reminders = 0 AND old.reminders = 1 BEGIN
  UPDATE outbox SET state = CASE maybe_sent WHEN 1 THEN 'MaybeSent' ELSE 'Failed' END, last_error = 'The client wants no more reminders.'
  WHERE to_client_id = new.id AND kind = 'Reminder' AND state = 'Queued';
END;
CREATE INDEX outbox_queued      ON outbox (not_before, id) WHERE state = 'Queued';
CREATE INDEX outbox_leaving     ON outbox (id) WHERE state = 'Leaving';
CREATE INDEX outbox_given_up    ON outbox (id) WHERE state = 'Failed' AND let_go = 0;
CREATE INDEX outbox_by_client   ON outbox (to_client_id, kind, made_at);
CREATE INDEX outbox_by_event    ON outbox (event_id) WHERE event_id IS NOT NULL;
CREATE INDEX outbox_by_invitation ON outbox (invitation_id) WHERE invitation_id IS NOT NULL;
CREATE INDEX outbox_by_reminder ON outbox (reminder_id) WHERE reminder_id IS NOT NULL;
CREATE INDEX outbox_by_link     ON outbox (link_id) WHERE link_id IS NOT NULL;
CREATE INDEX outbox_by_bill     ON outbox (bill_id) WHERE bill_id IS NOT NULL;
CREATE INDEX outbox_by_code     ON outbox (code_id) WHERE code_id IS NOT NULL;

-- ==== Due dates: all they depend on, and what marks them to be worked out again ====

-- All that a racket's restring-by date depends on, and whose it is, the job whose strings are in it, and what their label
-- says. Strings that somebody else put in count from their day, and nothing is known of them. It joins the job itself: a
-- view on the right of a LEFT JOIN is worked out for all rackets, even when one is asked for.
CREATE VIEW forecast AS
SELECT r.id AS racket_id, r.player_id, r.sport, r.state, r.pattern_mains, r.own_date,
       p.times_a_week, p.hours_a_time, p.hitting, p.rule, p.every_weeks,
       (SELECT COUNT(*) FROM racket o WHERE o.player_id = r.player_id AND o.state = 'InTurn') AS in_turn,
       (SELECT COUNT(*) FROM racket o WHERE o.player_id = r.player_id AND o.state = 'Spare') AS spare,
       CASE WHEN r.elsewhere_on > b.strung_on THEN r.elsewhere_on ELSE b.strung_on END AS strung_on,
       CASE WHEN r.elsewhere_on > b.strung_on THEN NULL ELSE b.ended_on END AS ended_on,
       CASE WHEN r.elsewhere_on > b.strung_on THEN NULL ELSE b.id END AS bed_id,
       CASE WHEN r.elsewhere_on > b.strung_on THEN NULL ELSE b.label_date END AS label_date,
       m.material AS mains_material, m.gauge_mm AS mains_gauge_mm,
       c.material AS crosses_material, c.gauge_mm AS crosses_gauge_mm
FROM racket r
JOIN player p ON p.id = r.player_id
LEFT JOIN job b ON b.id = (SELECT n.id FROM job n WHERE n.racket_id = r.id AND n.strung_on IS NOT NULL
                           ORDER BY n.strung_on DESC, n.id DESC LIMIT 1)
LEFT JOIN string_kind m ON m.id = b.mains_id AND (r.elsewhere_on IS NULL OR r.elsewhere_on <= b.strung_on)
LEFT JOIN string_kind c ON c.id = b.crosses_id AND (r.elsewhere_on IS NULL OR r.elsewhere_on <= b.strung_on);

-- Players whose rackets' dates must be worked out again: before the transaction ends, or later in the background.
-- No foreign key: whoever is deleted may be marked on the way.
CREATE TABLE due_again (
  player_id     INTEGER PRIMARY KEY,
  in_background INTEGER NOT NULL DEFAULT 0 CHECK (in_background IN (0, 1))
) STRICT;
CREATE INDEX due_again_in_background ON due_again (in_background);

-- The shop's day for which all dates were worked out.
CREATE TABLE due_day (
  id  INTEGER PRIMARY KEY CHECK (id = 1),
  day TEXT    NOT NULL CHECK (day GLOB '????-??-??')
) STRICT;

CREATE TRIGGER player_due_again AFTER UPDATE OF times_a_week, hours_a_time, hitting, rule, every_weeks ON player
WHEN (new.times_a_week, new.hours_a_time, new.hitting) <> (old.times_a_week, old.hours_a_time, old.hitting)
  OR new.rule IS NOT old.rule OR new.every_weeks IS NOT old.every_weeks BEGIN
  INSERT INTO due_again (player_id) VALUES (new.id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER racket_due_new AFTER INSERT ON racket BEGIN
  INSERT INTO due_again (player_id) VALUES (new.player_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER racket_due_again AFTER UPDATE OF player_id, state, sport, pattern_mains, own_date, elsewhere_on ON racket
WHEN (new.player_id, new.state, new.sport) <> (old.player_id, old.state, old.sport)
  OR new.pattern_mains IS NOT old.pattern_mains OR new.own_date IS NOT old.own_date OR new.elsewhere_on IS NOT old.elsewhere_on BEGIN
  INSERT INTO due_again (player_id) VALUES (old.player_id), (new.player_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER racket_due_gone AFTER DELETE ON racket BEGIN
  INSERT INTO due_again (player_id) VALUES (old.player_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER job_due_new AFTER INSERT ON job WHEN new.strung_on IS NOT NULL BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id = new.racket_id ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER job_due_again AFTER UPDATE OF racket_id, mains_id, crosses_id, strung_on, ended_on, ended_how ON job
WHEN (new.racket_id, new.mains_id, new.crosses_id) <> (old.racket_id, old.mains_id, old.crosses_id)
  OR new.strung_on IS NOT old.strung_on OR new.ended_on IS NOT old.ended_on OR new.ended_how IS NOT old.ended_how BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id IN (old.racket_id, new.racket_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER job_due_gone AFTER DELETE ON job BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id = old.racket_id ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER reading_due_new AFTER INSERT ON reading BEGIN
  INSERT INTO due_again (player_id) SELECT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.id = new.job_id ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER reading_due_again AFTER UPDATE OF job_id, first, taken_on, taken_at, instrument_id, value, doubtful ON reading BEGIN
  INSERT INTO due_again (player_id) SELECT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.id IN (old.job_id, new.job_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER reading_due_gone AFTER DELETE ON reading BEGIN
  INSERT INTO due_again (player_id) SELECT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.id = old.job_id ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER instrument_due_again AFTER UPDATE OF scale ON instrument WHEN new.scale <> old.scale BEGIN
  INSERT INTO due_again (player_id) SELECT DISTINCT r.player_id FROM reading g JOIN job j ON j.id = g.job_id JOIN racket r ON r.id = j.racket_id WHERE g.instrument_id = new.id ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER string_due_again AFTER UPDATE OF material, gauge_mm ON string_kind WHEN (new.material, new.gauge_mm) <> (old.material, old.gauge_mm) BEGIN
  INSERT INTO due_again (player_id)
  SELECT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.mains_id = new.id
  UNION SELECT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.crosses_id = new.id
  ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER pause_due_new AFTER INSERT ON pause BEGIN
  INSERT INTO due_again (player_id) VALUES (new.player_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER pause_due_again AFTER UPDATE ON pause BEGIN
  INSERT INTO due_again (player_id) VALUES (old.player_id), (new.player_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER pause_due_gone AFTER DELETE ON pause BEGIN
  INSERT INTO due_again (player_id) VALUES (old.player_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER logged_hours_due_new AFTER INSERT ON logged_hours BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id = new.racket_id ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER logged_hours_due_again AFTER UPDATE ON logged_hours BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id IN (old.racket_id, new.racket_id) ON CONFLICT DO UPDATE SET in_background = 0;
END;
CREATE TRIGGER logged_hours_due_gone AFTER DELETE ON logged_hours BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id = old.racket_id ON CONFLICT DO UPDATE SET in_background = 0;
END;

-- When a client was last seen.
CREATE VIEW seen AS SELECT 0 AS client_id WHERE false;
CREATE TRIGGER seen_again INSTEAD OF INSERT ON seen BEGIN
  UPDATE client
  SET seen_on = COALESCE((SELECT MAX(j.received_on) FROM player p JOIN racket r ON r.player_id = p.id JOIN job j ON j.racket_id = r.id WHERE p.client_id = new.client_id), '')
  WHERE id = new.client_id;
END;
CREATE TRIGGER job_seen_new AFTER INSERT ON job BEGIN
  UPDATE client SET seen_on = new.received_on
  WHERE id = (SELECT p.client_id FROM racket r JOIN player p ON p.id = r.player_id WHERE r.id = new.racket_id) AND seen_on < new.received_on;
END;
CREATE TRIGGER job_seen_again AFTER UPDATE OF received_on, racket_id ON job
WHEN (new.received_on, new.racket_id) <> (old.received_on, old.racket_id) BEGIN
  INSERT INTO seen (client_id) SELECT p.client_id FROM racket r JOIN player p ON p.id = r.player_id WHERE r.id IN (old.racket_id, new.racket_id);
END;
CREATE TRIGGER job_seen_gone AFTER DELETE ON job BEGIN
  INSERT INTO seen (client_id) SELECT p.client_id FROM racket r JOIN player p ON p.id = r.player_id WHERE r.id = old.racket_id;
END;
CREATE TRIGGER racket_seen_again AFTER UPDATE OF player_id ON racket WHEN new.player_id <> old.player_id BEGIN
  INSERT INTO seen (client_id) SELECT client_id FROM player WHERE id IN (old.player_id, new.player_id);
END;
CREATE TRIGGER player_seen_again AFTER UPDATE OF client_id ON player WHEN new.client_id <> old.client_id BEGIN
  INSERT INTO seen (client_id) VALUES (old.client_id), (new.client_id);
END;

-- Frozen hours are worked out again where a pause or a note of their time comes to light later, or is taken back.
CREATE VIEW thaw AS SELECT 0 AS racket_id, '' AS from_on, '' AS to_on WHERE false;
CREATE TRIGGER thaw_hours INSTEAD OF INSERT ON thaw BEGIN
  UPDATE reading SET hours = NULL
  WHERE hours IS NOT NULL AND taken_on >= new.from_on
    AND job_id IN (SELECT id FROM job WHERE racket_id = new.racket_id AND strung_on <= COALESCE(new.to_on, '9999-12-31'));
  UPDATE job SET hours_played = NULL
  WHERE racket_id = new.racket_id AND hours_played IS NOT NULL AND ended_on >= new.from_on AND strung_on <= COALESCE(new.to_on, '9999-12-31');
END;
CREATE TRIGGER pause_thaws_new AFTER INSERT ON pause BEGIN
  INSERT INTO thaw (racket_id, from_on, to_on) SELECT id, new.from_on, new.to_on FROM racket WHERE player_id = new.player_id;
END;
CREATE TRIGGER pause_thaws_again AFTER UPDATE OF player_id, from_on, to_on ON pause BEGIN
  INSERT INTO thaw (racket_id, from_on, to_on) SELECT id, old.from_on, old.to_on FROM racket WHERE player_id = old.player_id;
  INSERT INTO thaw (racket_id, from_on, to_on) SELECT id, new.from_on, new.to_on FROM racket WHERE player_id = new.player_id;
END;
CREATE TRIGGER pause_thaws_gone AFTER DELETE ON pause BEGIN
  INSERT INTO thaw (racket_id, from_on, to_on) SELECT id, old.from_on, old.to_on FROM racket WHERE player_id = old.player_id;
END;
CREATE TRIGGER logged_hours_thaw_new AFTER INSERT ON logged_hours BEGIN
  INSERT INTO thaw (racket_id, from_on, to_on) VALUES (new.racket_id, new.played_on, new.played_on);
END;
CREATE TRIGGER logged_hours_thaw_again AFTER UPDATE OF racket_id, played_on, hours ON logged_hours BEGIN
  INSERT INTO thaw (racket_id, from_on, to_on) VALUES (old.racket_id, old.played_on, old.played_on), (new.racket_id, new.played_on, new.played_on);
END;
CREATE TRIGGER logged_hours_thaw_gone AFTER DELETE ON logged_hours BEGIN
  INSERT INTO thaw (racket_id, from_on, to_on) VALUES (old.racket_id, old.played_on, old.played_on);
END;

-- Settings move every date; so many are worked out in the background.
CREATE TRIGGER shop_due_again AFTER UPDATE OF starting_values, time_zone ON shop
WHEN new.starting_values IS NOT old.starting_values OR new.time_zone <> old.time_zone BEGIN
  INSERT INTO due_again (player_id, in_background) SELECT id, 1 FROM player WHERE true ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER shop_due_new AFTER INSERT ON shop BEGIN
  INSERT INTO due_again (player_id, in_background) SELECT id, 1 FROM player WHERE true ON CONFLICT DO NOTHING;
END;

-- ==== The order of names ====

-- How the kept name keys were made: language, order and version of its rules. A key is null until it is made, before the
-- transaction ends that wrote the name; what is not made alike is made again, all at once. Empty: a setting moved the order.
CREATE TABLE name_order (
  id      INTEGER PRIMARY KEY CHECK (id = 1),
  made_by TEXT    NOT NULL
) STRICT;

CREATE INDEX payer_unordered  ON payer (id) WHERE name_key IS NULL;
CREATE INDEX player_unordered ON player (id) WHERE name_key IS NULL;

CREATE TRIGGER shop_name_order AFTER UPDATE OF language, names_in, by_last_word ON shop
WHEN new.language <> old.language OR new.names_in IS NOT old.names_in OR new.by_last_word <> old.by_last_word BEGIN
  UPDATE name_order SET made_by = '';
END;
CREATE TRIGGER shop_name_order_new AFTER INSERT ON shop BEGIN
  UPDATE name_order SET made_by = '';
END;
CREATE TRIGGER payer_name_key AFTER UPDATE OF name ON payer WHEN new.name <> old.name BEGIN
  UPDATE payer SET name_key = NULL WHERE id = new.id;
END;
CREATE TRIGGER client_name_key AFTER UPDATE OF name ON client WHEN new.name <> old.name BEGIN
  UPDATE client SET name_key = NULL WHERE id = new.id;
END;
CREATE TRIGGER player_name_key AFTER UPDATE OF name ON player WHEN new.name <> old.name BEGIN
  UPDATE player SET name_key = NULL WHERE id = new.id;
END;

-- ==== Stock ====

-- Strings whose stock the shop keeps account of.
CREATE TABLE string_stock (
  string_id  INTEGER PRIMARY KEY REFERENCES string_kind (id),
  unit       TEXT    NOT NULL CHECK (unit IN ('Set', 'Metre')),
  -- What one racket takes, and so the length of a set.
  racket_cm  INTEGER NOT NULL CHECK (racket_cm BETWEEN 100 AND 5000),
  -- With no more than this left it is time to buy.
  reorder_cm INTEGER NOT NULL DEFAULT 0 CHECK (reorder_cm BETWEEN 0 AND 10000000),
  -- Rackets strung on earlier days have taken nothing.
  since      TEXT    NOT NULL CHECK (since GLOB '????-??-??'),
  -- The sum of its moves, kept for lists.
  left_cm    INTEGER NOT NULL DEFAULT 0,
  version    INTEGER NOT NULL DEFAULT 1
) STRICT;
CREATE INDEX string_stock_low ON string_stock (string_id) WHERE left_cm <= reorder_cm;

-- What came in and what went. Never changed: what turns out wrong is put right by a count, and a job that takes something else
-- by a move of the difference.
CREATE TABLE stock_move (
  id          INTEGER PRIMARY KEY AUTOINCREMENT,
  string_id   INTEGER NOT NULL REFERENCES string_stock (string_id),
  kind        TEXT    NOT NULL CHECK (kind IN ('Bought', 'Counted', 'Used')),
  -- Below zero for what went; of a count by how much it corrects.
  centimetres INTEGER NOT NULL CHECK (centimetres BETWEEN -100000000 AND 100000000),
  -- What was paid for it.
  cost_minor  INTEGER CHECK (cost_minor BETWEEN 0 AND 100000000),
  job_id      INTEGER REFERENCES job (id) ON DELETE SET NULL,
  note        TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 120),
  made_at     TEXT    NOT NULL,
  made_by     TEXT    NOT NULL CHECK (length(made_by) BETWEEN 1 AND 80),
  CHECK (cost_minor IS NULL OR kind = 'Bought'),
  CHECK (job_id IS NULL OR kind = 'Used')
) STRICT;
CREATE INDEX stock_move_by_string ON stock_move (string_id, id);
CREATE INDEX stock_move_by_job    ON stock_move (job_id) WHERE job_id IS NOT NULL;

CREATE TRIGGER stock_move_summed AFTER INSERT ON stock_move BEGIN
  UPDATE string_stock SET left_cm = left_cm + new.centimetres WHERE string_id = new.string_id;
END;

-- Jobs whose strings are to be taken from the stock, or given back, before the transaction ends.
CREATE TABLE stock_again (
  job_id INTEGER PRIMARY KEY REFERENCES job (id) ON DELETE CASCADE
) STRICT;
CREATE TRIGGER stock_again_job_new AFTER INSERT ON job WHEN new.strung_on IS NOT NULL AND EXISTS (SELECT 1 FROM string_stock) BEGIN
  INSERT INTO stock_again (job_id) VALUES (new.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER stock_again_job AFTER UPDATE OF strung_on, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by ON job
WHEN (new.strung_on IS NOT NULL OR old.strung_on IS NOT NULL)
 AND ((new.strung_on IS NULL) <> (old.strung_on IS NULL) OR new.mains_id <> old.mains_id OR new.crosses_id <> old.crosses_id
      OR new.mains_supplied_by <> old.mains_supplied_by OR new.crosses_supplied_by <> old.crosses_supplied_by)
 AND EXISTS (SELECT 1 FROM string_stock) BEGIN
  INSERT INTO stock_again (job_id) VALUES (new.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER stock_again_charge_new AFTER INSERT ON charge WHEN new.centimetres IS NOT NULL AND EXISTS (SELECT 1 FROM string_stock) BEGIN
  INSERT INTO stock_again (job_id) VALUES (new.job_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER stock_again_charge_gone AFTER DELETE ON charge WHEN old.centimetres IS NOT NULL AND EXISTS (SELECT 1 FROM string_stock) AND EXISTS (SELECT 1 FROM job WHERE id = old.job_id) BEGIN
  INSERT INTO stock_again (job_id) VALUES (old.job_id) ON CONFLICT DO NOTHING;
END;

-- ==== Lists of stringings that were brought in ====

-- A list, and how far it is. Coming and Leaving are worked on in the background; Held could not leave any further.
CREATE TABLE stringing_list (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  name      TEXT    NOT NULL CHECK (length(name) <= 120),
  state     TEXT    NOT NULL CHECK (state IN ('Coming', 'In', 'Leaving', 'Held', 'Back')),
  lines     INTEGER NOT NULL CHECK (lines >= 0),
  -- What the check found, and lines of which something on file had changed by the time they were written.
  noted     INTEGER NOT NULL DEFAULT 0,
  there     INTEGER NOT NULL DEFAULT 0,
  refused   INTEGER NOT NULL DEFAULT 0,
  missed    INTEGER NOT NULL DEFAULT 0,
  made_at   TEXT    NOT NULL,
  ended_at  TEXT
) STRICT;
CREATE INDEX stringing_list_at_work ON stringing_list (id) WHERE state IN ('Coming', 'Leaving');

-- Lines that are still to be written, household by household; each goes when it is.
CREATE TABLE stringing_list_row (
  list_id   INTEGER NOT NULL REFERENCES stringing_list (id) ON DELETE CASCADE,
  household INTEGER NOT NULL,
  position  INTEGER NOT NULL,
  line      TEXT    NOT NULL CHECK (json_valid(line)),
  PRIMARY KEY (list_id, household, position)
) STRICT, WITHOUT ROWID;

-- What a list brought, by table and number, so that all of it can be taken back. client_phone and client_mail: a way to reach a
-- client who was on file that was missing there.
CREATE TABLE stringing_list_record (
  kind      TEXT    NOT NULL CHECK (kind IN ('client', 'client_phone', 'client_mail', 'player', 'string_kind', 'racket', 'job', 'charge', 'charge_change', 'payment', 'payment_share')),
  record_id INTEGER NOT NULL,
  list_id   INTEGER NOT NULL REFERENCES stringing_list (id) ON DELETE CASCADE,
  -- The record's, when the list had written it: whoever changes it gives it another.
  version   INTEGER NOT NULL DEFAULT 1,
  PRIMARY KEY (kind, record_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX stringing_list_record_by_list ON stringing_list_record (list_id, kind, record_id);
CREATE TRIGGER job_of_list_gone AFTER DELETE ON job BEGIN
  DELETE FROM stringing_list_record WHERE kind = 'job' AND record_id = old.id;
END;
CREATE TRIGGER racket_of_list_gone AFTER DELETE ON racket BEGIN
  DELETE FROM stringing_list_record WHERE kind = 'racket' AND record_id = old.id;
END;
CREATE TRIGGER player_of_list_gone AFTER DELETE ON player BEGIN
  DELETE FROM stringing_list_record WHERE kind = 'player' AND record_id = old.id;
END;
CREATE TRIGGER client_of_list_gone AFTER DELETE ON client BEGIN
  DELETE FROM stringing_list_record WHERE kind IN ('client', 'client_phone', 'client_mail') AND record_id = old.id;
END;
CREATE TRIGGER string_of_list_gone AFTER DELETE ON string_kind BEGIN
  DELETE FROM stringing_list_record WHERE kind = 'string_kind' AND record_id = old.id;
END;
CREATE TRIGGER charge_of_list_gone AFTER DELETE ON charge BEGIN
  DELETE FROM stringing_list_record WHERE kind = 'charge' AND record_id = old.id;
END;
-- Money that stays when a client is forgotten is nobody's to take back.
CREATE TRIGGER share_of_list_stays AFTER UPDATE OF past_ticket ON payment_share WHEN new.past_ticket IS NOT NULL BEGIN
  DELETE FROM stringing_list_record
  WHERE (kind = 'payment_share' AND record_id = new.id) OR (kind = 'payment' AND record_id = new.payment_id);
END;

-- What was said about the columns of lists with these headings, for the next one.
CREATE TABLE stringing_list_heading (
  headings TEXT PRIMARY KEY CHECK (length(headings) <= 20000),
  settings TEXT NOT NULL CHECK (json_valid(settings)),
  used_at  TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- ==== The search box ====

-- One line per record for the search box. The row id says which: 4 × id + 0 client, + 1 player, + 2 racket.
CREATE VIRTUAL TABLE search USING fts5 (words, tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3');
INSERT INTO search (search, rank) VALUES ('secure-delete', 1);

CREATE TRIGGER client_search_new AFTER INSERT ON client BEGIN
  INSERT INTO search (rowid, words) VALUES (4 * new.id, new.name);
END;
CREATE TRIGGER client_search_again AFTER UPDATE OF name ON client BEGIN
  UPDATE search SET words = new.name WHERE rowid = 4 * new.id;
END;
CREATE TRIGGER client_search_gone AFTER DELETE ON client BEGIN
  DELETE FROM search WHERE rowid = 4 * old.id;
END;
CREATE TRIGGER player_search_new AFTER INSERT ON player BEGIN
  INSERT INTO search (rowid, words) VALUES (4 * new.id + 1, new.name);
END;
CREATE TRIGGER player_search_again AFTER UPDATE OF name ON player BEGIN
  UPDATE search SET words = new.name WHERE rowid = 4 * new.id + 1;
END;
CREATE TRIGGER player_search_gone AFTER DELETE ON player BEGIN
  DELETE FROM search WHERE rowid = 4 * old.id + 1;
END;
CREATE TRIGGER racket_search_new AFTER INSERT ON racket BEGIN
  INSERT INTO search (rowid, words) VALUES (4 * new.id + 2, new.frame);
END;
CREATE TRIGGER racket_search_again AFTER UPDATE OF frame ON racket BEGIN
  UPDATE search SET words = new.frame WHERE rowid = 4 * new.id + 2;
END;
CREATE TRIGGER racket_search_gone AFTER DELETE ON racket BEGIN
  DELETE FROM search WHERE rowid = 4 * old.id + 2;
END;

-- One line per note. The row id says whose: 4 × id + 0 client, + 1 player, + 2 racket, + 3 job.
CREATE VIRTUAL TABLE search_note USING fts5 (words, tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3');
INSERT INTO search_note (search_note, rank) VALUES ('secure-delete', 1);

CREATE TRIGGER client_note_new AFTER INSERT ON client WHEN new.note <> '' BEGIN
  INSERT INTO search_note (rowid, words) VALUES (4 * new.id, new.note);
END;
CREATE TRIGGER client_note_again AFTER UPDATE OF note ON client WHEN new.note <> old.note BEGIN
  DELETE FROM search_note WHERE rowid = 4 * old.id AND old.note <> '';
  INSERT INTO search_note (rowid, words) SELECT 4 * new.id, new.note WHERE new.note <> '';
END;
CREATE TRIGGER client_note_gone AFTER DELETE ON client WHEN old.note <> '' BEGIN
  DELETE FROM search_note WHERE rowid = 4 * old.id;
END;

CREATE TRIGGER player_note_new AFTER INSERT ON player WHEN new.note <> '' BEGIN
  INSERT INTO search_note (rowid, words) VALUES (4 * new.id + 1, new.note);
END;
CREATE TRIGGER player_note_again AFTER UPDATE OF note ON player WHEN new.note <> old.note BEGIN
  DELETE FROM search_note WHERE rowid = 4 * old.id + 1 AND old.note <> '';
  INSERT INTO search_note (rowid, words) SELECT 4 * new.id + 1, new.note WHERE new.note <> '';
END;
CREATE TRIGGER player_note_gone AFTER DELETE ON player WHEN old.note <> '' BEGIN
  DELETE FROM search_note WHERE rowid = 4 * old.id + 1;
END;

CREATE TRIGGER racket_note_new AFTER INSERT ON racket WHEN new.note <> '' BEGIN
  INSERT INTO search_note (rowid, words) VALUES (4 * new.id + 2, new.note);
END;
CREATE TRIGGER racket_note_again AFTER UPDATE OF note ON racket WHEN new.note <> old.note BEGIN
  DELETE FROM search_note WHERE rowid = 4 * old.id + 2 AND old.note <> '';
  INSERT INTO search_note (rowid, words) SELECT 4 * new.id + 2, new.note WHERE new.note <> '';
END;
CREATE TRIGGER racket_note_gone AFTER DELETE ON racket WHEN old.note <> '' BEGIN
  DELETE FROM search_note WHERE rowid = 4 * old.id + 2;
END;

CREATE TRIGGER job_note_new AFTER INSERT ON job WHEN new.note <> '' BEGIN
  INSERT INTO search_note (rowid, words) VALUES (4 * new.id + 3, new.note);
END;
CREATE TRIGGER job_note_again AFTER UPDATE OF note ON job WHEN new.note <> old.note BEGIN
  DELETE FROM search_note WHERE rowid = 4 * old.id + 3 AND old.note <> '';
  INSERT INTO search_note (rowid, words) SELECT 4 * new.id + 3, new.note WHERE new.note <> '';
END;
CREATE TRIGGER job_note_gone AFTER DELETE ON job WHEN old.note <> '' BEGIN
  DELETE FROM search_note WHERE rowid = 4 * old.id + 3;
END;
