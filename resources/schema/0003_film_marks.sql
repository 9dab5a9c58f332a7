-- Marks on films whose negatives came out wrong: a type of line of their own, found by film.

-- The list of types stands in the table itself, which cannot be altered: the entries move over into
-- one that knows the new type. Nothing of them changes.
CREATE TABLE entry_anew (
    seq       INTEGER PRIMARY KEY,
    type      TEXT NOT NULL
              CHECK (type IN ('solution', 'vessel', 'film', 'packet', 'chemical', 'event',
                              'development-time', 'film-mark')),
    id        TEXT NOT NULL CHECK (id <> ''),
    action    INTEGER NOT NULL REFERENCES action (id),
    batch     TEXT,
    kind      TEXT,
    at_ms     INTEGER,
    volume_ml REAL,
    films     REAL,
    run       TEXT,
    voids     TEXT,
    body      TEXT NOT NULL CHECK (body LIKE '{%}'),
    person    TEXT,
    film      TEXT,
    UNIQUE (type, id),
    CHECK ((type IN ('event', 'film-mark')) = (kind IS NOT NULL AND at_ms IS NOT NULL))
) STRICT
-- next
INSERT INTO entry_anew (seq, type, id, action, batch, kind, at_ms, volume_ml, films, run, voids,
                        body, person)
SELECT seq, type, id, action, batch, kind, at_ms, volume_ml, films, run, voids, body, person
FROM entry ORDER BY seq
-- next
-- Takes the indexes and triggers of the old table with it; no trigger asks about its rows.
DROP TABLE entry
-- next
ALTER TABLE entry_anew RENAME TO entry
-- next
CREATE INDEX entry_of_batch ON entry (batch, seq) WHERE batch IS NOT NULL
-- next
CREATE INDEX entry_mixing ON entry (batch, seq) WHERE kind = 'mixed'
-- next
CREATE INDEX entry_of_run ON entry (run) WHERE run IS NOT NULL
-- next
CREATE INDEX entry_of_action ON entry (action)
-- next
CREATE INDEX entry_by_time ON entry (at_ms) WHERE at_ms IS NOT NULL
-- next
CREATE INDEX entry_by_kind ON entry (kind, at_ms) WHERE kind IS NOT NULL
-- next
CREATE INDEX entry_by_batch ON entry (batch, at_ms) WHERE batch IS NOT NULL
-- next
CREATE INDEX entry_by_person ON entry (person, at_ms) WHERE person IS NOT NULL
-- next
CREATE INDEX entry_voiding ON entry (voids) WHERE voids IS NOT NULL
-- next
CREATE INDEX entry_of_film ON entry (film, seq) WHERE film IS NOT NULL
-- next
CREATE TRIGGER entry_stays BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'an entry is never changed');
END
-- next
CREATE TRIGGER entry_is_kept BEFORE DELETE ON entry
BEGIN
    SELECT RAISE(ABORT, 'an entry is never removed');
END
-- next
CREATE TRIGGER entry_is_new BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM entry WHERE type = NEW.type AND id = NEW.id)
    OR EXISTS (SELECT 1 FROM entry WHERE seq = NEW.seq)
BEGIN
    SELECT RAISE(ABORT, 'an entry is never replaced');
END
