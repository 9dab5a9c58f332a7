-- The chain: every entry carries a hash over the one before it and its own line, every batch the
-- number of its entries and a hash over them, every note one of its own.

ALTER TABLE entry ADD COLUMN hash BLOB CHECK (hash IS NULL OR length(hash) = 32)
-- next
ALTER TABLE batch ADD COLUMN entries INTEGER
-- next
ALTER TABLE batch ADD COLUMN hash BLOB CHECK (hash IS NULL OR length(hash) = 32)
-- next
ALTER TABLE note ADD COLUMN sum BLOB CHECK (sum IS NULL OR length(sum) = 32)
-- next
DROP TRIGGER entry_stays
-- next
-- The book gets an id; what it holds is checked, then hashed. Nothing of the lines changes.
-- call begin_chain
-- next
CREATE TRIGGER entry_stays BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'an entry is never changed');
END
