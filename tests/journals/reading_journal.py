"""Reads a journal strictly: every line, what it names, what was voided, which pourings pair."""

import json
from collections import defaultdict
from datetime import datetime, timezone

from reading_events import on_batch, read_event
from reading_fields import Fields, Refused
from reading_lines import READERS, identity, read_line


class Book:
    """Everything in a journal, checked, with the voided events marked."""

    def __init__(self, raw, now=None):
        self.now = now if now is not None else int(
            datetime.now(timezone.utc).timestamp() * 1e6)
        self.version = 1
        self.solutions, self.vessels = {}, {}
        self.events = []                 # Fields, in the order of entry
        self._seen = {}                  # (type, id) -> the line's object
        self._runs, self._run_lines = set(), []
        lines = raw.split(b"\n")
        if lines and lines[-1] == b"":
            lines.pop()
        for number, line in enumerate(lines, 1):
            self._take(number, line)
        if not lines:
            raise Refused(1, None, "no book line")
        self.voided = self._voided()
        self._check_references()
        self._pair_fillings()

    def names(self, ident, kinds):
        """Whether an earlier line of one of these types has that id."""
        return any((kind, ident) in self._seen for kind in kinds)

    def _take(self, number, line):
        try:
            data = json.loads(line.decode("utf-8"), parse_constant=_no_constant)
        except (UnicodeDecodeError, ValueError):
            raise Refused(number, None, "not a line of JSON in UTF-8") from None
        if not isinstance(data, dict):
            raise Refused(number, None, "not an object")
        f = Fields(number, data)
        kind = f.text("type", among=("book", "event", *READERS))
        if (kind == "book") != (number == 1):
            f.refuse("type", "the book line is the first one and only that")
        if kind == "book":
            f.text("format", among=("ullage-journal",))
            self.version = f.number("version")
            if self.version not in (1.0, 2.0):
                f.refuse("version", "unknown")
            return
        key = (kind, f.text("id") if kind == "event" else identity(f, kind))
        if key in self._seen:
            if self._seen[key] != data:
                f.refuse("id", "the same id with other content")
            return
        if kind == "event":
            read_event(f, self)
            self.events.append(f)
            self._runs.add(data.get("run"))
        elif read_line(f, kind, self):
            if kind == "solution":
                self.solutions[key[1]] = data
            elif kind == "vessel":
                self.vessels[key[1]] = data
            elif kind == "film":
                self._runs.add(data.get("run"))
            elif kind == "run-times":
                self._run_lines.append(f)
        self._seen[key] = data

    def _check_references(self):
        """Batches named by events must have been mixed, once; runs must have been run."""
        mixed = {}
        for f in self.events:
            if f.data["kind"] == "mixed":
                earlier = mixed.get(f.data["batch"])
                gone = f.data["id"] in self.voided
                # A mixing entered anew after the first was voided is a correction.
                if earlier is None or earlier.data["id"] in self.voided:
                    mixed[f.data["batch"]] = f
                elif not gone:
                    f.refuse("batch", "mixed already")
        for f in self.events:
            if on_batch(f) and f.data["batch"] not in mixed:
                f.refuse("batch", "unknown")
            if f.data["kind"] == "voided" and f.has("batch") and f.data["batch"] not in mixed:
                f.refuse("batch", "unknown")
            if f.data["kind"] in ("mixed", "topped-up"):
                self._check_other(f, "from", mixed)
            if f.data["kind"] == "drawn":
                self._check_other(f, "to", mixed)
            for field, kinds in (("from", ("poured-in",)), ("for", ("taken",))):
                if f.data["kind"] in kinds and f.has(field) and f.data[field] not in mixed:
                    f.refuse(field, "unknown")
        for f in self._run_lines:
            if f.data["run"] not in self._runs:
                f.refuse("run", "unknown")
        self.mixed = mixed

    def _check_other(self, f, field, mixed):
        """The other bottle of a filling: another batch, of the same role or solution."""
        if not f.has(field):
            return
        if f.data[field] not in mixed:
            f.refuse(field, "unknown")
        if f.data[field] == f.data["batch"]:
            f.refuse(field, "the batch itself")
        here, there = (mixed[one].data["solution"] for one in (f.data["batch"], f.data[field]))
        if f.data["kind"] == "mixed" and here != there:
            f.refuse(field, "another solution")
        if self.solutions[here]["role"] != self.solutions[there]["role"]:
            f.refuse(field, "another role")

    def _voided(self):
        """Ids of the events that never happened."""
        entered, void_lines = {}, []

        def taken():
            """What is taken back by what was entered so far."""
            gone = set()
            # A voided voiding never happened either, so the last entered decide first.
            for target, by in reversed(void_lines):
                if by not in gone:
                    gone.add(target)
            return gone

        for f in self.events:
            if f.data["kind"] == "voided":
                target = f.data["voids"]
                if target not in entered:
                    f.refuse("voids", "unknown event")
                if f.has("batch") and f.data["batch"] != entered[target]:
                    f.refuse("batch", "not that of what it takes back")
                if target in taken():
                    f.refuse("voids", "voided already")
                void_lines.append((target, f.data["id"]))
                entered[f.data["id"]] = entered[target]
            else:
                entered[f.data["id"]] = f.data.get("batch")
        return taken()

    def _pair_fillings(self):
        """From version 2 on, a drawing into another bottle and its filling are one pair.

        Halves that both happened pair first, in the order of entry; a half left over whose
        other half was voided is voided with it; any other half is refused."""
        if self.version < 2.0:
            return
        halves = defaultdict(lambda: {"drawn": [], "filled": []})
        for f in self.events:
            data = f.data
            if data["kind"] == "drawn" and f.has("to"):
                key, side = (data["batch"], data["to"]), "drawn"
            elif data["kind"] in ("mixed", "topped-up") and f.has("from"):
                key, side = (data["from"], data["batch"]), "filled"
            else:
                continue
            halves[(*key, f.at, float(data["volume_ml"]))][side].append(f)
        broken = []
        for sides in halves.values():
            alive = {side: [f for f in found if f.data["id"] not in self.voided]
                     for side, found in sides.items()}
            paired = min(len(alive["drawn"]), len(alive["filled"]))
            for side, other in (("drawn", "filled"), ("filled", "drawn")):
                dead = len(sides[other]) - len(alive[other])
                rest = alive[side][paired:]
                self.voided.update(f.data["id"] for f in rest[:dead])
                broken += [(f, "to" if side == "drawn" else "from") for f in rest[dead:]]
        for f, field in sorted(broken, key=lambda one: one[0].line):
            f.refuse(field, "half of a filling, the other half is missing")

    def happened(self):
        """Every event about a batch that did happen, by time, then by entry.

        A batch's own events at the very instant of its mixing follow the mixing, also when
        they were entered before it."""
        found = [f for f in self.events if on_batch(f) and f.data["id"] not in self.voided]
        first = {f.data["batch"]: f for f in found if f.data["kind"] == "mixed"}

        def turn(f):
            made = first.get(f.data["batch"])
            if made is None:
                f.refuse("batch", "its mixing was voided")
            if f is not made and f.at < made.at:
                f.refuse("at", "before the batch was mixed")
            late = f is not made and f.at == made.at and f.line < made.line
            return f.at, (made.line if late else f.line), f.line if late else 0

        return sorted(found, key=turn)


def _no_constant(name):
    raise ValueError(name)
