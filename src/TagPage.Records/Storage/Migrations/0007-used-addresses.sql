-- The addresses this shop was reached at: labels that carry one outlive a change of it.
CREATE TABLE used_address (
  base     TEXT PRIMARY KEY CHECK (length(base) BETWEEN 1 AND 300),
  first_at TEXT NOT NULL,
  last_at  TEXT NOT NULL
) STRICT, WITHOUT ROWID;
