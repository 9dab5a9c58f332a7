-- Room for everything that version 2 of the journal can say: its types of line, and columns for
-- what a line is about besides a batch. What entries say does not change.

-- The list of types stands in the table itself, which cannot be altered: the entries move over into
-- one that knows the new types. It is held against the program's description of the lines by a test.
CREATE TABLE entry_anew (
    seq        INTEGER PRIMARY KEY,
    type       TEXT NOT NULL
               CHECK (type IN ('solution', 'vessel', 'film', 'packet', 'chemical', 'event',
                               'development-time', 'film-mark', 'run-times', 'supply', 'barcode',
                               'work', 'container')),
    id         TEXT NOT NULL CHECK (id <> ''),
    action     INTEGER NOT NULL REFERENCES action (id),
    batch      TEXT,
    kind       TEXT,
    at_ms      INTEGER,
    volume_ml  REAL,
    films      REAL,
    run        TEXT,
    voids      TEXT,
    body       TEXT NOT NULL CHECK (body LIKE '{%}'),
    person     TEXT,
    film       TEXT,
    from_batch TEXT,
    to_batch   TEXT,
    item       TEXT,
    container  TEXT,
    UNIQUE (type, id),
    CHECK ((type IN ('event', 'film-mark')) = (kind IS NOT NULL AND at_ms IS NOT NULL))
) STRICT
-- next
-- Lines of before say two of these things already: where a top-up came from, and which packet was
-- opened. A line that is no JSON keeps its place; the check of the book names it.
INSERT INTO entry_anew (seq, type, id, action, batch, kind, at_ms, volume_ml, films, run, voids,
                        body, person, film, from_batch, item)
SELECT seq, type, id, action, batch, kind, at_ms, volume_ml, films, run, voids, body, person, film,
       CASE WHEN kind = 'topped-up' AND json_valid(body)
            THEN CASE json_type(body, '$.from')
                 WHEN 'text' THEN nullif(json_extract(body, '$.from'), '') END END,
       CASE WHEN kind = 'opened-packet' AND json_valid(body)
            THEN CASE json_type(body, '$.packet')
                 WHEN 'text' THEN nullif(json_extract(body, '$.packet'), '') END END
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
CREATE INDEX entry_from ON entry (from_batch, seq) WHERE from_batch IS NOT NULL
-- next
CREATE INDEX entry_to ON entry (to_batch, seq) WHERE to_batch IS NOT NULL
-- next
CREATE INDEX entry_of_item ON entry (item, seq) WHERE item IS NOT NULL
-- next
CREATE INDEX entry_of_container ON entry (container, seq) WHERE container IS NOT NULL
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
