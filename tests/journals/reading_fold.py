"""Folds all bottles together, event by event, in the one order of time and entry.

A bottle filled from another reads the other's state at that very turn, so a donor is always
as it was then, a correction on it reaches its heirs, and no circle can arise."""

from reading_batch import Batch
from reading_model import PLAIN, Standing


class Shelf:
    """Every batch of a book, as of a moment (None: after everything)."""

    def __init__(self, book, until=None, air=PLAIN, events=None):
        self.book, self.air = book, air
        self.batches = {}
        self._standings = {}
        for f in book.happened() if events is None else events:
            if until is not None and f.at > until:
                break                        # they come in order of time
            batch = self.batches.get(f.data["batch"])
            if batch is None:
                self.batches[f.data["batch"]] = Batch(self, f)
                continue
            if f.data["kind"] == "drawn" and f.has("to"):
                self._check_heir(f)
            batch.happen(f)
        if until is not None:
            for batch in self.batches.values():
                batch.advance(until)

    def standing_of(self, solution_id):
        """The keeping model of a solution, calibrated once."""
        if solution_id not in self._standings:
            self._standings[solution_id] = Standing(self.book.solutions[solution_id], self.air)
        return self._standings[solution_id]

    def donor(self, f):
        """The batch that a filling comes from, as it is at this turn."""
        donor = self.batches.get(f.data["from"])
        if donor is None:
            f.refuse("from", "not mixed at that time")
        if donor.frozen_at is not None and (donor.discarded or donor.frozen_at != f.at):
            # Only the drawing of this very filling may have emptied it.
            f.refuse("from", "no longer there at that time")
        donor.advance(f.at)
        return donor

    def _check_heir(self, f):
        """The bottle drawn into is there, or mixed at the same instant."""
        heir = self.batches.get(f.data["to"])
        made = self.book.mixed[f.data["to"]]
        gone = heir is not None and heir.frozen_at is not None
        if gone or (heir is None and (made.at != f.at or made.data["id"] in self.book.voided)):
            f.refuse("to", "not there at that time")

    def in_order(self):
        """The batches in order of mixing, then of entry."""
        return sorted(self.batches.values(), key=lambda b: (b.mixed.at, b.mixed.line))
