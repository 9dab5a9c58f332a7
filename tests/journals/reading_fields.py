"""Checked access to the fields of one line of a journal."""

import math
import re
from datetime import datetime, timezone

DAY_US = 86_400_000_000
TIME = re.compile(r"\d{4}-\d\d-\d\d[Tt]\d\d:\d\d:\d\d(\.\d+)?([Zz]|[+-]\d\d:\d\d)$")
DECIMAL = re.compile(r"\d+(\.\d+)?$")
EPOCH = datetime(1970, 1, 1, tzinfo=timezone.utc)


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

    @property
    def at(self):
        """When the event happened; its text has been checked before."""
        return instant(self.data["at"])

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

    def time(self, field, required=True):
        if field not in self.data and not required:
            return None
        found = instant(self.data.get(field))
        if found is None:
            self.refuse(field, "not a time with a zone")
        return found

    def cost(self):
        """Decimal text; version 1 wrote a number."""
        if not self.has("cost"):
            return
        value = self.data["cost"]
        if isinstance(value, str):
            if not DECIMAL.match(value):
                self.refuse("cost", "not an amount")
        else:
            self.number("cost", low=0.0)

    def within(self, field):
        """A nested object, as fields of the same line."""
        value = self.data.get(field)
        if not isinstance(value, dict):
            self.refuse(field, "missing" if value is None else "not an object")
        return Fields(self.line, value)

    def each(self, field):
        """The objects of a nested list that must not be empty."""
        value = self.data.get(field)
        if not isinstance(value, list) or not value:
            self.refuse(field, "missing" if value is None else "empty")
        for one in value:
            if not isinstance(one, dict):
                self.refuse(field, "not an object")
        return [Fields(self.line, one) for one in value]
