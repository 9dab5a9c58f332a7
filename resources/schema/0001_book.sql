-- A book of chemistry: entries in order, the actions that made them, and where each batch stands.
-- Statements end at a line that says "-- next"; semicolons inside triggers end nothing.

PRAGMA application_id = 0x756C6C67
-- next
CREATE TABLE note (
    key   TEXT PRIMARY KEY NOT NULL,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID
-- next
CREATE TABLE action (
    id      INTEGER PRIMARY KEY,
    mode    INTEGER NOT NULL CHECK (mode BETWEEN 0 AND 3),
    what    TEXT NOT NULL,
    subject TEXT NOT NULL,
    of      INTEGER REFERENCES action (id)
) STRICT
-- next
CREATE TABLE entry (
    seq       INTEGER PRIMARY KEY,
    type      TEXT NOT NULL
              CHECK (type IN ('solution', 'vessel', 'film', 'packet', 'chemical', 'event',
                              'development-time')),
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
    UNIQUE (type, id),
    CHECK ((type = 'event') = (kind IS NOT NULL AND at_ms IS NOT NULL))
) STRICT
-- next
CREATE INDEX entry_of_batch ON entry (batch, seq) WHERE batch IS NOT NULL
-- next
CREATE INDEX entry_mixing ON entry (batch, seq) WHERE kind = 'mixed'
-- next
CREATE INDEX entry_of_run ON entry (run) WHERE run IS NOT NULL
-- next
CREATE INDEX entry_of_action ON entry (action)
-- next
-- Derived: where the fold of its events leaves each batch. The only table whose rows change.
CREATE TABLE batch (
    id       TEXT PRIMARY KEY NOT NULL,
    name     TEXT NOT NULL,
    solution TEXT NOT NULL,
    mixed_ms INTEGER NOT NULL,
    ended_ms INTEGER
) STRICT, WITHOUT ROWID
-- next
CREATE INDEX batch_by_end ON batch (ended_ms)
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
-- INSERT OR REPLACE removes rows without asking a DELETE trigger unless recursive triggers are on.
CREATE TRIGGER entry_is_new BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM entry WHERE type = NEW.type AND id = NEW.id)
    OR EXISTS (SELECT 1 FROM entry WHERE seq = NEW.seq)
BEGIN
    SELECT RAISE(ABORT, 'an entry is never replaced');
END
-- next
CREATE TRIGGER action_stays BEFORE UPDATE ON action
BEGIN
    SELECT RAISE(ABORT, 'an action is never changed');
END
-- next
CREATE TRIGGER action_is_kept BEFORE DELETE ON action
BEGIN
    SELECT RAISE(ABORT, 'an action is never removed');
END
-- next
CREATE TRIGGER action_is_new BEFORE INSERT ON action
WHEN EXISTS (SELECT 1 FROM action WHERE id = NEW.id)
BEGIN
    SELECT RAISE(ABORT, 'an action is never replaced');
END
