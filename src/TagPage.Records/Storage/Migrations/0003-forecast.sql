-- The whole restring forecast: pauses, logged hours, readings over time, and the date kept at the racket.

-- Days on which a player does not play: time goes on, hours do not.
CREATE TABLE pause (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  player_id INTEGER NOT NULL REFERENCES player (id) ON DELETE CASCADE,
  from_on   TEXT    NOT NULL CHECK (from_on GLOB '????-??-??'),
  to_on     TEXT    CHECK (to_on GLOB '????-??-??'),
  note      TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 200),
  CHECK (to_on IS NULL OR to_on >= from_on)
) STRICT;
CREATE INDEX pause_by_player ON pause (player_id, from_on);

-- Hours that somebody noted for one racket; they stand for its past instead of the habit.
CREATE TABLE logged_hours (
  id        INTEGER PRIMARY KEY AUTOINCREMENT,
  racket_id INTEGER NOT NULL REFERENCES racket (id) ON DELETE CASCADE,
  played_on TEXT    NOT NULL CHECK (played_on GLOB '????-??-??'),
  hours     REAL    NOT NULL CHECK (hours > 0 AND hours <= 200),
  note      TEXT    NOT NULL DEFAULT '' CHECK (length(note) <= 200)
) STRICT;
CREATE INDEX logged_hours_by_racket ON logged_hours (racket_id, played_on);

ALTER TABLE reading ADD COLUMN taken_at TEXT CHECK (taken_at GLOB '[0-2][0-9]:[0-5][0-9]');
-- Hours played on the strings by then, frozen when the reading is written down; null where nobody can tell.
ALTER TABLE reading ADD COLUMN hours REAL CHECK (hours >= 0);
-- Hours played on the strings in all, frozen when they come out.
ALTER TABLE job ADD COLUMN hours_played REAL CHECK (hours_played >= 0);
-- The restring-by date that the label of these strings carries.
ALTER TABLE job ADD COLUMN label_date TEXT CHECK (label_date GLOB '????-??-??');

-- The restring-by date as last worked out, from when it counts as due soon, and what decides; all null without a date.
ALTER TABLE racket ADD COLUMN due_on TEXT CHECK (due_on GLOB '????-??-??');
ALTER TABLE racket ADD COLUMN soon_on TEXT CHECK (soon_on GLOB '????-??-??');
ALTER TABLE racket ADD COLUMN due_because TEXT
  CHECK (due_because IN ('TimesAWeek', 'Hours', 'Tension', 'Breakage', 'EveryWeeks', 'OwnersDate'));
CREATE INDEX racket_due ON racket (due_on, soon_on, player_id) WHERE due_on IS NOT NULL;
CREATE INDEX job_by_string ON job (mains_id);

-- Players whose rackets' dates must be worked out again: before the transaction ends, or later in the background.
-- No foreign key: whoever is deleted may be marked on the way.
CREATE TABLE due_again (
  player_id INTEGER PRIMARY KEY,
  later     INTEGER NOT NULL DEFAULT 0 CHECK (later IN (0, 1))
) STRICT;
CREATE INDEX due_again_by_later ON due_again (later);

-- The shop's day for which all dates were worked out.
CREATE TABLE due_day (
  id  INTEGER PRIMARY KEY CHECK (id = 1),
  day TEXT    NOT NULL CHECK (day GLOB '????-??-??')
) STRICT;

CREATE TRIGGER player_due_again AFTER UPDATE OF times_a_week, hours_a_time, hitting, rule, every_weeks ON player BEGIN
  INSERT INTO due_again (player_id) VALUES (new.id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER racket_due_new AFTER INSERT ON racket BEGIN
  INSERT INTO due_again (player_id) VALUES (new.player_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER racket_due_again AFTER UPDATE OF player_id, state, sport, pattern_mains, own_date, elsewhere_on ON racket BEGIN
  INSERT INTO due_again (player_id) VALUES (old.player_id), (new.player_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER racket_due_gone AFTER DELETE ON racket BEGIN
  INSERT INTO due_again (player_id) VALUES (old.player_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER job_due_new AFTER INSERT ON job WHEN new.strung_on IS NOT NULL BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id = new.racket_id ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER job_due_again AFTER UPDATE OF racket_id, mains_id, crosses_id, strung_on, ended_on, ended_how ON job BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id IN (old.racket_id, new.racket_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER job_due_gone AFTER DELETE ON job BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id = old.racket_id ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER reading_due_new AFTER INSERT ON reading BEGIN
  INSERT INTO due_again (player_id) SELECT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.id = new.job_id ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER reading_due_again AFTER UPDATE OF job_id, first, taken_on, taken_at, instrument_id, value ON reading BEGIN
  INSERT INTO due_again (player_id) SELECT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.id IN (old.job_id, new.job_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER reading_due_gone AFTER DELETE ON reading BEGIN
  INSERT INTO due_again (player_id) SELECT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE j.id = old.job_id ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER instrument_due_again AFTER UPDATE OF scale ON instrument BEGIN
  INSERT INTO due_again (player_id) SELECT DISTINCT r.player_id FROM reading g JOIN job j ON j.id = g.job_id JOIN racket r ON r.id = j.racket_id WHERE g.instrument_id = new.id ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER string_due_again AFTER UPDATE OF material, gauge_mm ON string_kind BEGIN
  INSERT INTO due_again (player_id) SELECT DISTINCT r.player_id FROM job j JOIN racket r ON r.id = j.racket_id WHERE new.id IN (j.mains_id, j.crosses_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER pause_due_new AFTER INSERT ON pause BEGIN
  INSERT INTO due_again (player_id) VALUES (new.player_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER pause_due_again AFTER UPDATE ON pause BEGIN
  INSERT INTO due_again (player_id) VALUES (old.player_id), (new.player_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER pause_due_gone AFTER DELETE ON pause BEGIN
  INSERT INTO due_again (player_id) VALUES (old.player_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER logged_hours_due_new AFTER INSERT ON logged_hours BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id = new.racket_id ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER logged_hours_due_again AFTER UPDATE ON logged_hours BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id IN (old.racket_id, new.racket_id) ON CONFLICT DO UPDATE SET later = 0;
END;
CREATE TRIGGER logged_hours_due_gone AFTER DELETE ON logged_hours BEGIN
  INSERT INTO due_again (player_id) SELECT player_id FROM racket WHERE id = old.racket_id ON CONFLICT DO UPDATE SET later = 0;
END;

-- Settings move every date; so many are worked out in the background.
CREATE TRIGGER shop_due_again AFTER UPDATE OF starting_values, time_zone ON shop
WHEN new.starting_values IS NOT old.starting_values OR new.time_zone <> old.time_zone BEGIN
  INSERT INTO due_again (player_id, later) SELECT id, 1 FROM player WHERE true ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER shop_due_new AFTER INSERT ON shop BEGIN
  INSERT INTO due_again (player_id, later) SELECT id, 1 FROM player WHERE true ON CONFLICT DO NOTHING;
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
CREATE TRIGGER reading_hours_thaw AFTER UPDATE OF taken_on ON reading
WHEN new.hours IS NOT NULL AND new.taken_on <> old.taken_on BEGIN
  UPDATE reading SET hours = NULL WHERE id = new.id;
END;

-- The same as before, and whose it is, the job whose strings are in it, and what their label says.
DROP VIEW forecast;
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

INSERT INTO due_again (player_id, later) SELECT id, 1 FROM player;
