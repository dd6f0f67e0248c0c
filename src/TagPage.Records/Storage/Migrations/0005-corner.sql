-- The client's own page: private links, sessions, codes, what clients ask for and say, batches of reminders, care guides.

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
  id_hash     TEXT PRIMARY KEY CHECK (length(id_hash) = 64),
  client_id   INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  link_id     INTEGER NOT NULL REFERENCES own_page_link (id) ON DELETE CASCADE,
  began_at    TEXT    NOT NULL,
  -- A code that was just typed lets this browser do what could hurt, until then.
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
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  way      TEXT NOT NULL CHECK (way IN ('Mail', 'Phone')),
  reach    TEXT NOT NULL CHECK (length(reach) <= 254),
  asked_at TEXT NOT NULL
) STRICT;

-- What the owner has to do for a client, until it is ticked off.
CREATE TABLE client_request (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  client_id INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  kind      TEXT    NOT NULL CHECK (kind IN ('Link', 'Payer', 'OwnClient', 'PassedOn', 'Forget')),
  words     TEXT    NOT NULL DEFAULT '' CHECK (length(words) <= 400),
  asked_at  TEXT    NOT NULL,
  done_at   TEXT
) STRICT;
CREATE INDEX client_request_open ON client_request (id) WHERE done_at IS NULL;
CREATE INDEX client_request_by_client ON client_request (client_id);

ALTER TABLE client ADD COLUMN remind_by TEXT NOT NULL DEFAULT 'Mail' CHECK (remind_by IN ('Mail', 'Sms'));
-- One bit a month, January lowest: no reminders then.
ALTER TABLE client ADD COLUMN quiet_months INTEGER NOT NULL DEFAULT 0 CHECK (quiet_months BETWEEN 0 AND 4095);
ALTER TABLE client ADD COLUMN second_name  TEXT NOT NULL DEFAULT '' CHECK (length(second_name) <= 80);
ALTER TABLE client ADD COLUMN second_phone TEXT CHECK (second_phone GLOB '+[0-9]*');
ALTER TABLE client ADD COLUMN second_mail  TEXT CHECK (second_mail LIKE '%_@_%');
-- The client asked to be forgotten; it happens then, and can be undone until then.
ALTER TABLE client ADD COLUMN forget_at TEXT;
CREATE INDEX client_to_forget ON client (forget_at) WHERE forget_at IS NOT NULL;
CREATE INDEX client_by_mail  ON client (mail COLLATE NOCASE) WHERE mail IS NOT NULL;
CREATE INDEX client_by_phone ON client (phone) WHERE phone IS NOT NULL;

-- Asked for in the own page: where and by when the racket is dropped off, and when it is needed.
ALTER TABLE job ADD COLUMN drop_off_where TEXT NOT NULL DEFAULT '' CHECK (length(drop_off_where) <= 60);
ALTER TABLE job ADD COLUMN drop_off_by TEXT CHECK (drop_off_by GLOB '????-??-??');
ALTER TABLE job ADD COLUMN needed_by   TEXT CHECK (needed_by GLOB '????-??-??');
ALTER TABLE job ADD COLUMN asked_by_client INTEGER NOT NULL DEFAULT 0 CHECK (asked_by_client IN (0, 1));
ALTER TABLE job ADD COLUMN told_ready_at TEXT;

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

-- What the shop keeps of the jobs of a client who was forgotten: counts and money, no person, no racket.
CREATE TABLE past_job (
  ticket      INTEGER PRIMARY KEY,
  sport       TEXT    NOT NULL,
  mains_id    INTEGER NOT NULL REFERENCES string_kind (id),
  crosses_id  INTEGER NOT NULL REFERENCES string_kind (id),
  received_on TEXT    NOT NULL CHECK (received_on GLOB '????-??-??'),
  strung_on   TEXT    CHECK (strung_on GLOB '????-??-??'),
  price_minor INTEGER,
  paid_on     TEXT    CHECK (paid_on GLOB '????-??-??')
) STRICT;

-- Reminders to many households at once. What is still to do stands here, so that a restart goes on where it stopped.
CREATE TABLE reminder_batch (
  id         INTEGER PRIMARY KEY AUTOINCREMENT,
  made_at    TEXT NOT NULL,
  stopped_at TEXT
) STRICT;
CREATE TABLE reminder_batch_client (
  batch_id  INTEGER NOT NULL REFERENCES reminder_batch (id) ON DELETE CASCADE,
  client_id INTEGER NOT NULL REFERENCES client (id) ON DELETE CASCADE,
  state     TEXT    NOT NULL DEFAULT 'Waiting' CHECK (state IN ('Waiting', 'Sent', 'Skipped')),
  why       TEXT    NOT NULL DEFAULT '',
  reminder_id  INTEGER REFERENCES reminder (id) ON DELETE SET NULL,
  PRIMARY KEY (batch_id, client_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX reminder_batch_waiting   ON reminder_batch_client (batch_id, client_id) WHERE state = 'Waiting';
CREATE INDEX reminder_batch_of_client ON reminder_batch_client (client_id);
CREATE INDEX reminder_batch_of_reminder  ON reminder_batch_client (reminder_id) WHERE reminder_id IS NOT NULL;

-- Mail of its own accord rests between these hours of the shop's clock.
ALTER TABLE shop ADD COLUMN quiet_from_hour  INTEGER NOT NULL DEFAULT 20 CHECK (quiet_from_hour BETWEEN 0 AND 23);
ALTER TABLE shop ADD COLUMN quiet_until_hour INTEGER NOT NULL DEFAULT 8 CHECK (quiet_until_hour BETWEEN 0 AND 23);
-- The owner's own words; empty stands for the words the product brings.
ALTER TABLE shop ADD COLUMN ready_subject     TEXT NOT NULL DEFAULT '' CHECK (length(ready_subject) <= 120);
ALTER TABLE shop ADD COLUMN ready_markdown    TEXT NOT NULL DEFAULT '' CHECK (length(ready_markdown) <= 4000);
ALTER TABLE shop ADD COLUMN received_subject  TEXT NOT NULL DEFAULT '' CHECK (length(received_subject) <= 120);
ALTER TABLE shop ADD COLUMN received_markdown TEXT NOT NULL DEFAULT '' CHECK (length(received_markdown) <= 4000);

-- The outbox learns more kinds of mail, which a CHECK cannot: it is written anew. Notices let go of it meanwhile.
CREATE TABLE held_notice AS SELECT id, notice_id FROM found_event WHERE notice_id IS NOT NULL;
UPDATE found_event SET notice_id = NULL WHERE notice_id IS NOT NULL;
CREATE TABLE held_outbox AS SELECT * FROM outbox;
DROP TABLE outbox;
CREATE TABLE outbox (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  kind         TEXT    NOT NULL CHECK (kind IN ('Reminder', 'FoundNotice', 'ShopNotice', 'FinderAnswer', 'OwnPageLink', 'OwnPageCode', 'ClientNotice')),
  to_client_id INTEGER REFERENCES client (id) ON DELETE CASCADE,
  -- Where the mail goes to another address than the one on file: the old one is told of a change.
  to_address   TEXT,
  reminder_id     INTEGER REFERENCES reminder (id) ON DELETE CASCADE,
  -- Of a FinderAnswer: whom it goes to stands with the finder's words and goes with them.
  event_id     INTEGER REFERENCES found_event (id) ON DELETE CASCADE,
  -- Of a OwnPageLink and a OwnPageCode: what is derived when the mail is written.
  link_id      INTEGER REFERENCES own_page_link (id) ON DELETE CASCADE,
  code_id      INTEGER REFERENCES own_page_code (id) ON DELETE CASCADE,
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
  made_at      TEXT    NOT NULL,
  sent_at      TEXT,
  CHECK ((state = 'Sent') = (sent_at IS NOT NULL))
) STRICT;
INSERT INTO outbox (id, kind, to_client_id, reminder_id, event_id, message_id, subject, body, state, not_before, tries, last_error, made_at, sent_at)
SELECT id, kind, to_client_id, reminder_id, event_id, message_id, subject, body, state, not_before, tries, last_error, made_at, sent_at FROM held_outbox;
UPDATE found_event SET notice_id = (SELECT h.notice_id FROM held_notice h WHERE h.id = found_event.id)
WHERE id IN (SELECT id FROM held_notice);
DROP TABLE held_notice;
DROP TABLE held_outbox;
CREATE INDEX outbox_queued    ON outbox (not_before, id) WHERE state = 'Queued';
CREATE INDEX outbox_leaving   ON outbox (id) WHERE state = 'Leaving';
CREATE INDEX outbox_by_client ON outbox (to_client_id, kind, made_at);
CREATE INDEX outbox_by_event  ON outbox (event_id) WHERE event_id IS NOT NULL;
CREATE INDEX outbox_by_reminder  ON outbox (reminder_id) WHERE reminder_id IS NOT NULL;
CREATE INDEX outbox_by_link   ON outbox (link_id) WHERE link_id IS NOT NULL;
CREATE INDEX outbox_by_code   ON outbox (code_id) WHERE code_id IS NOT NULL;
