-- Advice by the owner, open to everybody at /care/{name}.
CREATE TABLE care_guide (
  id           INTEGER PRIMARY KEY AUTOINCREMENT,
  name         TEXT    NOT NULL UNIQUE CHECK (length(name) BETWEEN 1 AND 40 AND name NOT GLOB '*[^a-z0-9-]*'),
  title        TEXT    NOT NULL CHECK (length(title) BETWEEN 1 AND 60),
  for_material TEXT    CHECK (for_material IN ('NaturalGut', 'Multifilament', 'SyntheticGut', 'Polyester', 'Aramid')),
  markdown     TEXT    NOT NULL CHECK (length(markdown) <= 20000),
  version      INTEGER NOT NULL DEFAULT 1
) STRICT;
