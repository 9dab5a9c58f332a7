"""Reads a journal strictly: every line, field, range and reference."""

import json
import math
import re
from datetime import datetime, timezone

FILM_UNITS = {"135-36": (1, 1), "120": (1, 1), "135-24": (2, 3), "220": (2, 1),
              "4x5": (1, 4), "5x7": (35, 80), "8x10": (1, 1)}
FILM_AREA_CM2 = 516.128
ROLES = ("developer", "stop", "fixer", "wash-aid", "wetting-agent", "other")
MATERIALS = ("glass", "pet", "hdpe", "ldpe", "pp")
DAY_US = 86_400_000_000
TIME = re.compile(r"\d{4}-\d\d-\d\d[Tt]\d\d:\d\d:\d\d(\.\d+)?([Zz]|[+-]\d\d:\d\d)$")
EPOCH = datetime(1970, 1, 1, tzinfo=timezone.utc)

# What opens the bottle, by kind; those are also the kinds that close it again.
OPENING = {"mixed", "processed", "topped-up", "drawn", "moved", "opened",
           "stood-open", "clearing-test", "strip-test"}


class Refused(Exception):
    """Why a journal is not taken in: line, field (or None) and reason."""

    def __init__(self, line, field, reason):
        super().__init__(f"line {line}, field {field}: {reason}")
        self.line, self.field, self.reason = line, field, reason


def instant(text):
    """Microseconds since 1970 of an RFC 3339 time with a zone, or None."""
    if not isinstance(text, str) or not TIME.match(text):
        return None
    try:
        moment = datetime.fromisoformat(text.upper())
    except ValueError:
        return None
    delta = moment - EPOCH
    return (delta.days * 86_400 + delta.seconds) * 1_000_000 + delta.microseconds


def moment_of(microseconds):
    """The UTC date and time of an instant (a fraction of one is dropped)."""
    seconds, rest = divmod(int(microseconds), 1_000_000)
    return datetime.fromtimestamp(seconds, timezone.utc).replace(microsecond=rest)


class Fields:
    """One line's object, with checked access to its fields."""

    def __init__(self, line, data):
        self.line, self.data = line, data

    def refuse(self, field, reason):
        raise Refused(self.line, field, reason)

    def has(self, field):
        return field in self.data

    def text(self, field, required=True, among=None):
        if field not in self.data:
            if required:
                self.refuse(field, "missing")
            return None
        value = self.data[field]
        if not isinstance(value, str) or (required and not value):
            self.refuse(field, "not a text")
        if among is not None and value not in among:
            self.refuse(field, "unknown")
        return value

    def number(self, field, required=True, above=None, low=None, high=None):
        if field not in self.data:
            if required:
                self.refuse(field, "missing")
            return None
        value = self.data[field]
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            self.refuse(field, "not a number")
        value = float(value)
        if not math.isfinite(value):
            self.refuse(field, "not finite")
        if ((above is not None and value <= above) or (low is not None and value < low)
                or (high is not None and value > high)):
            self.refuse(field, "out of range")
        return value

    def truth(self, field):
        value = self.data.get(field)
        if field in self.data and not isinstance(value, bool):
            self.refuse(field, "not true or false")
        return value

    def within(self, field):
        """A nested object, as fields of the same line."""
        value = self.data.get(field)
        if not isinstance(value, dict):
            self.refuse(field, "missing" if value is None else "not an object")
        return Fields(self.line, value)


def read_solution(f):
    f.text("name")
    f.text("role", among=ROLES)
    f.number("capacity_films_per_litre", required=False, above=0.0)
    wear = f.within("wear")
    rule = wear.text("rule", among=("none", "per-film", "compound", "steps"))
    if rule in ("per-film", "compound"):
        wear.number("percent", low=0.0)
    if rule == "steps":
        steps = wear.data.get("steps")
        if not isinstance(steps, list) or not steps:
            f.refuse("steps", "missing")
        for step in steps:
            one = Fields(f.line, step)
            one.number("from_films_per_litre", low=0.0)
            one.number("factor", above=0.0)
    if f.has("keeping"):
        keeping = f.within("keeping")
        keeping.number("full_days", above=0.0)
        keeping.number("half_days", required=False, above=0.0)
        keeping.number("tray_hours", required=False, above=0.0)
    for field in ("q10", "oxygen_factor", "fresh_clearing_s",
                  "silver_limit_g_per_litre", "tabular_factor"):
        f.number(field, required=False, above=0.0)
    for field in ("silver_g_per_film", "bromide_mg_per_film"):
        f.number(field, required=False, low=0.0)


def read_vessel(f):
    f.text("name")
    f.number("capacity_ml", above=0.0)
    f.text("material", among=MATERIALS)
    f.number("wall_mm", required=False, above=0.0)
    f.number("permeability", required=False, low=0.0)
    f.number("cap_cm3_day", required=False, low=0.0)
    f.truth("squeezed")


def films_of(f):
    """How many films a processed event counts for."""
    if not f.has("films"):
        if not f.has("area_cm2"):
            f.refuse("films", "missing")
        return f.number("area_cm2", above=0.0) / FILM_AREA_CM2
    films = f.data["films"]
    if not isinstance(films, list) or not films:
        f.refuse("films", "empty")
    total = 0.0
    for item in films:
        one = Fields(f.line, item)
        top, bottom = FILM_UNITS[one.text("format", among=FILM_UNITS)]
        count = one.number("count", low=1.0)
        if count != int(count):
            one.refuse("count", "not whole")
        total += int(count) * top / bottom
    return total


def read_event(f, book):
    """Checks one event's own fields; what the bottle allows comes later."""
    f.text("batch")
    f.number("air_ml", required=False, low=0.0)
    kind = f.text("kind")
    if instant(f.text("at")) is None:
        f.refuse("at", "not a time with a zone")
    if instant(f.data["at"]) > book.now + DAY_US:
        f.refuse("at", "in the future")
    if kind == "mixed":
        if f.text("solution") not in book.solutions:
            f.refuse("solution", "unknown")
        if f.text("vessel") not in book.vessels:
            f.refuse("vessel", "unknown")
        f.number("volume_ml", above=0.0)
        f.text("name", required=False)
        f.text("history", required=False, among=("unknown",))
        if f.has("packet") and f.text("packet") not in book.packets:
            f.refuse("packet", "unknown")
    elif kind == "processed":
        films_of(f)
        f.number("used_ml", required=False, above=0.0)
        f.number("lost_ml", required=False, low=0.0)
        f.truth("one_shot")
    elif kind in ("topped-up", "drawn"):
        f.number("volume_ml", above=0.0)
    elif kind == "moved":
        if f.text("vessel") not in book.vessels:
            f.refuse("vessel", "unknown")
    elif kind == "stood-open":
        f.number("hours", above=0.0)
        f.number("area_cm2", above=0.0)
    elif kind == "stored-at":
        f.number("temperature_c", low=0.0, high=45.0)
    elif kind == "clearing-test":
        f.number("seconds", above=0.0)
        f.number("temperature_c", low=0.0, high=45.0)
    elif kind == "strip-test":
        f.number("density", required=False, low=0.0)
        f.number("factor", required=False, above=0.0)
        f.truth("passed")
    elif kind == "looked":
        f.truth("passed")
    elif kind == "voided":
        f.text("voids")
    elif kind not in ("opened", "contaminated", "dissolved", "noted", "discarded"):
        f.refuse("kind", "unknown")


class Book:
    """Everything in a journal, checked, with the voided events marked."""

    def __init__(self, raw, now=None):
        self.now = now if now is not None else int(
            datetime.now(timezone.utc).timestamp() * 1e6)
        self.solutions, self.vessels, self.packets = {}, {}, {}
        self.events = []                 # Fields, in the order of entry
        self._seen = {}
        lines = raw.split(b"\n")
        if lines and lines[-1] == b"":
            lines.pop()
        for number, line in enumerate(lines, 1):
            self._take(number, line)
        if not lines:
            raise Refused(1, None, "no book line")
        self._check_references()
        self.voided = self._voided()

    def _take(self, number, line):
        try:
            data = json.loads(line.decode("utf-8"), parse_constant=_no_constant)
        except (UnicodeDecodeError, ValueError):
            raise Refused(number, None, "not a line of JSON in UTF-8") from None
        if not isinstance(data, dict):
            raise Refused(number, None, "not an object")
        f = Fields(number, data)
        kind = f.text("type", among=("book", "solution", "vessel", "event", "packet",
                                     "film", "chemical"))
        if (kind == "book") != (number == 1):
            f.refuse("type", "the book line is the first one and only that")
        if kind == "book":
            f.text("format", among=("ullage-journal",))
            if f.number("version") not in (1.0, 2.0):
                f.refuse("version", "unknown")
            return
        key = (kind, f.text("id" if kind != "chemical" or f.has("id") else "name"))
        if key in self._seen:
            if self._seen[key] != data:
                f.refuse("id", "the same id with other content")
            return
        if kind == "solution":
            read_solution(f)
            self.solutions[key[1]] = data
        elif kind == "vessel":
            read_vessel(f)
            self.vessels[key[1]] = data
        elif kind == "packet":
            if f.text("solution") not in self.solutions:
                f.refuse("solution", "unknown")
            f.number("makes_ml", above=0.0)
            self.packets[key[1]] = data
        elif kind == "event":
            read_event(f, self)
            self.events.append(f)
        self._seen[key] = data

    def _check_references(self):
        """Batches named by events must have been mixed, once."""
        mixed = set()
        for f in self.events:
            if f.data["kind"] == "mixed":
                if f.data["batch"] in mixed:
                    f.refuse("batch", "mixed already")
                mixed.add(f.data["batch"])
        for f in self.events:
            if f.data["batch"] not in mixed:
                f.refuse("batch", "unknown")
            if f.has("from") and f.data["from"] not in mixed:
                f.refuse("from", "unknown")

    def _voided(self):
        """Ids of the events that never happened."""
        entered, void_lines = set(), {}
        for f in self.events:
            if f.data["kind"] == "voided":
                target = f.data["voids"]
                if target not in entered:
                    f.refuse("voids", "unknown event")
                if target in void_lines:
                    f.refuse("voids", "voided already")
                void_lines[target] = f.data["id"]
            entered.add(f.data["id"])
        voided = set()
        # A voided voiding never happened either, so the last entered decide first.
        for target, by in reversed(list(void_lines.items())):
            if by not in voided:
                voided.add(target)
        return voided

    def batches(self):
        """Each batch's events that did happen, by time, then by entry."""
        found = {}
        for f in self.events:
            if f.data["kind"] != "voided" and f.data["id"] not in self.voided:
                found.setdefault(f.data["batch"], []).append(f)
        for events in found.values():
            events.sort(key=lambda f: instant(f.data["at"]))
        return found


def _no_constant(name):
    raise ValueError(name)
