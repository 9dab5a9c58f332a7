-- The day book: everything that happened by time, kind, bottle and person, newest first.

-- Who did it, as the line says. What entries say does not change: a journal of before that named
-- people had no column for them.
ALTER TABLE entry ADD COLUMN person TEXT
-- next
DROP TRIGGER entry_stays
-- next
UPDATE entry SET person = json_extract(body, '$.by')
WHERE type = 'event' AND body LIKE '%"by":%' AND json_valid(body)
    AND json_type(body, '$.by') = 'text' AND json_extract(body, '$.by') <> ''
-- next
CREATE TRIGGER entry_stays BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'an entry is never changed');
END
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
