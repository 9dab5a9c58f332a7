-- From which seat something was done: one window of one machine. Undo is about that seat's deeds; what
-- was done before is anybody's.
ALTER TABLE action ADD COLUMN seat TEXT
