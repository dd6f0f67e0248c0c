-- How labels are printed. One row; without it the starting values hold.
CREATE TABLE label_setting (
  id                 INTEGER PRIMARY KEY CHECK (id = 1),
  tape_mm            REAL    NOT NULL CHECK (tape_mm BETWEEN 6 AND 50),
  margin_mm          REAL    NOT NULL CHECK (margin_mm BETWEEN 0 AND 5),
  dpi                INTEGER NOT NULL CHECK (dpi BETWEEN 100 AND 1200),
  longest_mm         REAL    NOT NULL CHECK (longest_mm BETWEEN 30 AND 400),
  largest_points     REAL    NOT NULL CHECK (largest_points BETWEEN 5 AND 40),
  smallest_module_mm REAL    NOT NULL CHECK (smallest_module_mm BETWEEN 0.1 AND 1),
  fine_module_mm     REAL    NOT NULL CHECK (fine_module_mm BETWEEN 0.1 AND 1),
  largest_module_mm  REAL    NOT NULL CHECK (largest_module_mm BETWEEN 0.1 AND 3),
  fold_gap_mm        REAL    NOT NULL CHECK (fold_gap_mm BETWEEN 1 AND 150),
  tape_colour        TEXT    NOT NULL CHECK (length(tape_colour) <= 20),
  ink_colour         TEXT    NOT NULL CHECK (length(ink_colour) <= 20),
  return_words       TEXT    NOT NULL CHECK (length(return_words) BETWEEN 1 AND 60),
  sheet_paper        TEXT    NOT NULL CHECK (sheet_paper IN ('A4', 'Letter')),
  sheet_columns      INTEGER NOT NULL CHECK (sheet_columns BETWEEN 1 AND 20),
  sheet_rows         INTEGER NOT NULL CHECK (sheet_rows BETWEEN 1 AND 40),
  sheet_width_mm     REAL    NOT NULL CHECK (sheet_width_mm BETWEEN 10 AND 216),
  sheet_height_mm    REAL    NOT NULL CHECK (sheet_height_mm BETWEEN 6 AND 297),
  sheet_left_mm      REAL    NOT NULL CHECK (sheet_left_mm BETWEEN 0 AND 100),
  sheet_top_mm       REAL    NOT NULL CHECK (sheet_top_mm BETWEEN 0 AND 100),
  sheet_pitch_x_mm   REAL    NOT NULL CHECK (sheet_pitch_x_mm BETWEEN 10 AND 216),
  sheet_pitch_y_mm   REAL    NOT NULL CHECK (sheet_pitch_y_mm BETWEEN 6 AND 297),
  version            INTEGER NOT NULL DEFAULT 1
) STRICT;

-- The shop's mark in shades of grey, as it was read from the upload, and where black begins.
CREATE TABLE label_logo (
  id        INTEGER PRIMARY KEY CHECK (id = 1),
  png       BLOB    NOT NULL,
  threshold INTEGER NOT NULL CHECK (threshold BETWEEN 1 AND 255),
  version   INTEGER NOT NULL DEFAULT 1
) STRICT;

-- The tape's colour is racket.tape_colour, as players know it; these go with it.
ALTER TABLE racket ADD COLUMN label_ink TEXT NOT NULL DEFAULT '' CHECK (length(label_ink) <= 20);
ALTER TABLE racket ADD COLUMN label_line TEXT NOT NULL DEFAULT '' CHECK (length(label_line) <= 40);

-- What a guardian agreed to have on a junior's labels, and since when.
ALTER TABLE player ADD COLUMN label_name TEXT NOT NULL DEFAULT '' CHECK (length(label_name) <= 20);
ALTER TABLE player ADD COLUMN label_name_on TEXT CHECK (label_name_on GLOB '????-??-??');

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

ALTER TABLE tag ADD COLUMN roll_id INTEGER REFERENCES tag_roll (id);
CREATE INDEX tag_of_roll ON tag (roll_id, made_at, code) WHERE roll_id IS NOT NULL;
