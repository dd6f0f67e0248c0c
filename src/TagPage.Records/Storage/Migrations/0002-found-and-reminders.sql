-- Lost and found, restring reminders (reminders), and the mail that both cause.

-- What a finder gets is the client's choice, kept with the day it was made; the start is the shop alone.
ALTER TABLE client ADD COLUMN found_choice TEXT NOT NULL DEFAULT 'Shop' CHECK (found_choice IN ('Shop', 'Message', 'Contact'));
ALTER TABLE client ADD COLUMN found_choice_on TEXT CHECK (found_choice_on GLOB '????-??-??');
ALTER TABLE client ADD COLUMN found_always INTEGER NOT NULL DEFAULT 0 CHECK (found_always IN (0, 1));
ALTER TABLE client ADD COLUMN found_shows_mail INTEGER NOT NULL DEFAULT 0 CHECK (found_shows_mail IN (0, 1));
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
ALTER TABLE client ADD COLUMN reminders_changed_on TEXT CHECK (reminders_changed_on GLOB '????-??-??');

ALTER TABLE racket ADD COLUMN lost_note TEXT NOT NULL DEFAULT '' CHECK (length(lost_note) <= 140);
-- "Not yet": no reminder before this day.
ALTER TABLE racket ADD COLUMN not_before TEXT CHECK (not_before GLOB '????-??-??');
-- Strung by somebody else on this day; counts from there, with strings unknown, until a newer job here.
ALTER TABLE racket ADD COLUMN elsewhere_on TEXT CHECK (elsewhere_on GLOB '????-??-??');

ALTER TABLE tag ADD COLUMN found_blocked_at TEXT;

-- What the client asked for in a reminder's answer, in their own words.
ALTER TABLE job ADD COLUMN wish TEXT NOT NULL DEFAULT '' CHECK (length(wish) <= 600);
-- The client said yes and has not brought the racket yet.
ALTER TABLE job ADD COLUMN expected INTEGER NOT NULL DEFAULT 0 CHECK (expected IN (0, 1));

ALTER TABLE shop ADD COLUMN days_between_reminders INTEGER NOT NULL DEFAULT 14 CHECK (days_between_reminders BETWEEN 0 AND 365);
-- The owner's own words; empty stands for the words the product brings.
ALTER TABLE shop ADD COLUMN reminder_subject TEXT NOT NULL DEFAULT '' CHECK (length(reminder_subject) <= 120);
ALTER TABLE shop ADD COLUMN reminder_markdown TEXT NOT NULL DEFAULT '' CHECK (length(reminder_markdown) <= 4000);
ALTER TABLE shop ADD COLUMN reminder_sms TEXT NOT NULL DEFAULT '' CHECK (length(reminder_sms) <= 400);

-- Mail on its way. Written in the transaction that causes it; links with power stand here as placeholders only.
CREATE TABLE outbox (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  kind         TEXT    NOT NULL CHECK (kind IN ('Reminder', 'FoundNotice', 'ShopNotice', 'FinderAnswer')),
  to_client_id INTEGER REFERENCES client (id) ON DELETE CASCADE,
  reminder_id     INTEGER REFERENCES reminder (id) ON DELETE CASCADE,
  -- Of a FinderAnswer: whom it goes to stands with the finder's words and goes with them.
  event_id     INTEGER REFERENCES found_event (id) ON DELETE CASCADE,
  message_id   TEXT    NOT NULL UNIQUE,
  subject      TEXT    NOT NULL DEFAULT '',
  -- Pieces of the mail as JSON; see Mail/MailText.
  body         TEXT    NOT NULL DEFAULT '[]',
  state        TEXT    NOT NULL DEFAULT 'Queued' CHECK (state IN ('Queued', 'Sent', 'Failed')),
  not_before   TEXT    NOT NULL,
  tries        INTEGER NOT NULL DEFAULT 0,
  last_error   TEXT    NOT NULL DEFAULT '',
  made_at      TEXT    NOT NULL,
  sent_at      TEXT,
  CHECK ((state = 'Sent') = (sent_at IS NOT NULL))
) STRICT;
CREATE INDEX outbox_queued ON outbox (not_before, id) WHERE state = 'Queued';
CREATE INDEX outbox_by_client ON outbox (to_client_id, kind, made_at);
CREATE INDEX outbox_by_event  ON outbox (event_id) WHERE event_id IS NOT NULL;

-- One reminder to one household. Its two links, to answer and to stop, are derived from id and secret with the server's
-- key and never stored; a new secret makes the link void.
CREATE TABLE reminder (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id  INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  secret      TEXT   NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(secret) = 32),
  stop_secret TEXT   NOT NULL DEFAULT (lower(hex(randomblob(16)))) CHECK (length(stop_secret) = 32),
  made_at    TEXT    NOT NULL,
  expires_at TEXT    NOT NULL,
  sent_how   TEXT    CHECK (sent_how IN ('Mail', 'MailApp', 'SmsApp', 'Copied', 'Phone')),
  sent_at    TEXT,
  discarded  INTEGER NOT NULL DEFAULT 0 CHECK (discarded IN (0, 1))
) STRICT;
CREATE INDEX reminder_by_client ON reminder (client_id, made_at DESC);

CREATE TABLE reminder_racket (
  reminder_id     INTEGER NOT NULL REFERENCES reminder (id) ON DELETE CASCADE,
  racket_id    INTEGER NOT NULL REFERENCES racket (id) ON DELETE CASCADE,
  due          TEXT    CHECK (due GLOB '????-??-??'),
  answer       TEXT    CHECK (answer IN ('Same', 'Different', 'NotYet', 'Elsewhere', 'Gone')),
  answered_at  TEXT,
  answered_by  TEXT    CHECK (answered_by IN ('Client', 'Owner')),
  weeks        INTEGER CHECK (weeks BETWEEN 1 AND 52),
  elsewhere_on TEXT    CHECK (elsewhere_on GLOB '????-??-??'),
  wish_strings TEXT    NOT NULL DEFAULT '' CHECK (length(wish_strings) <= 80),
  wish_tension TEXT    NOT NULL DEFAULT '' CHECK (length(wish_tension) <= 40),
  wish_note    TEXT    NOT NULL DEFAULT '' CHECK (length(wish_note) <= 400),
  job_id       INTEGER REFERENCES job (id),
  -- What stood at the racket before the answer, for a change of mind.
  state_before     TEXT CHECK (state_before IN ('InTurn', 'Spare', 'Resting', 'Damaged')),
  elsewhere_before TEXT CHECK (elsewhere_before GLOB '????-??-??'),
  PRIMARY KEY (reminder_id, racket_id),
  CHECK ((answer IS NULL) = (answered_at IS NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX reminder_of_racket ON reminder_racket (racket_id);

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
  reach       TEXT    NOT NULL DEFAULT '' CHECK (length(reach) <= 100),
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

-- "Not yet" was said of the strings that were in then: new ones end it.
CREATE TRIGGER job_strung_asks_again AFTER UPDATE OF strung_on ON job WHEN new.strung_on IS NOT NULL AND old.strung_on IS NULL BEGIN
  UPDATE racket SET not_before = NULL WHERE id = new.racket_id AND not_before IS NOT NULL;
END;

-- Strings that somebody else put in count from their day, and nothing is known of them.
DROP VIEW forecast;
CREATE VIEW forecast AS
SELECT r.id AS racket_id, r.sport, r.state, r.pattern_mains, r.own_date,
       p.times_a_week, p.hours_a_time, p.hitting, p.rule, p.every_weeks,
       (SELECT COUNT(*) FROM racket o WHERE o.player_id = r.player_id AND o.state = 'InTurn') AS in_turn,
       (SELECT COUNT(*) FROM racket o WHERE o.player_id = r.player_id AND o.state = 'Spare') AS spare,
       CASE WHEN r.elsewhere_on > b.strung_on THEN r.elsewhere_on ELSE b.strung_on END AS strung_on,
       CASE WHEN r.elsewhere_on > b.strung_on THEN NULL ELSE b.ended_on END AS ended_on,
       m.material AS mains_material, m.gauge_mm AS mains_gauge_mm,
       c.material AS crosses_material, c.gauge_mm AS crosses_gauge_mm
FROM racket r
JOIN player p ON p.id = r.player_id
LEFT JOIN job b ON b.id = (SELECT n.id FROM job n WHERE n.racket_id = r.id AND n.strung_on IS NOT NULL
                           ORDER BY n.strung_on DESC, n.id DESC LIMIT 1)
LEFT JOIN string_kind m ON m.id = b.mains_id AND (r.elsewhere_on IS NULL OR r.elsewhere_on <= b.strung_on)
LEFT JOIN string_kind c ON c.id = b.crosses_id AND (r.elsewhere_on IS NULL OR r.elsewhere_on <= b.strung_on);
