"""Checks an event's own fields; what the bottle allows comes with the fold."""

from reading_fields import DAY_US
from reading_lines import CUPBOARD, MARKS

FILM_UNITS = {"135-36": (1, 1), "120": (1, 1), "135-24": (2, 3), "220": (2, 1),
              "4x5": (1, 4), "5x7": (35, 80), "8x10": (1, 1)}
FILM_AREA_CM2 = 516.128          # 80 square inches
CODED_REQUEST = "test-asked "    # how a version 1 note asked for a test

# What opens the bottle, by kind; those are also the kinds that close it again.
OPENING = {"mixed", "processed", "topped-up", "drawn", "moved", "opened", "stood-open",
           "clearing-test", "strip-test", "filtered", "measured"}
ON_ITEMS = ("opened-packet", "taken", "counted", "thrown-away")
ON_CONTAINERS = ("poured-in", "handed-over")
ON_BATCHES = OPENING | {"stored-at", "looked", "contaminated", "dissolved", "test-asked",
                        "noted", "discarded"}
KINDS = ON_BATCHES | {"voided"} | set(ON_ITEMS) | set(ON_CONTAINERS)


def films_of(f):
    """How many films a processed event counts for."""
    if not f.has("films"):
        if not f.has("area_cm2"):
            f.refuse("films", "missing")
        return f.number("area_cm2", above=0.0) / FILM_AREA_CM2
    total = 0.0
    for one in f.each("films"):
        top, bottom = FILM_UNITS[one.text("format", among=FILM_UNITS)]
        count = one.number("count", low=1.0)
        if count != int(count):
            one.refuse("count", "not whole")
        total += int(count) * top / bottom
    return total


def kind_of(f):
    """The kind an event is taken for: a coded note of version 1 is what replaced it."""
    kind = f.data["kind"]
    if kind == "noted" and str(f.data.get("text", "")).startswith(CODED_REQUEST):
        return "test-asked"
    return kind


def _mixed(f, book):
    if f.text("solution") not in book.solutions:
        f.refuse("solution", "unknown")
    if f.text("vessel") not in book.vessels:
        f.refuse("vessel", "unknown")
    f.number("volume_ml", above=0.0)
    f.text("name", required=False)
    unknown = f.text("history", required=False, among=("unknown",)) is not None
    f.text("from", required=False)
    if f.has("packet") and not book.names(f.text("packet"), ("packet",)):
        f.refuse("packet", "unknown")
    f.number("films_before", required=False, low=0.0)
    f.number("assumed_films_per_litre", required=False, low=0.0)
    day = f.time("mixed_on", required=False)
    for field in ("assumed_films_per_litre", "mixed_on"):
        if f.has(field) and not unknown:
            f.refuse(field, "only for a bottle that was found")
    if day is not None and day > f.at:
        f.refuse("mixed_on", "after it was found")
    if unknown and f.has("from"):
        f.refuse("history", "a decanted bottle has its donor's")


def _processed(f, book):
    films_of(f)
    f.number("used_ml", required=False, above=0.0)
    f.number("lost_ml", required=False, low=0.0)
    f.truth("one_shot")
    f.truth("second")


def _topped_up(f, book):
    f.number("volume_ml", above=0.0)
    f.text("from", required=False)
    f.text("solution", required=False)
    if f.has("from") and f.has("solution"):
        f.refuse("solution", "from a batch or a replenisher, not both")
    if f.has("solution") and f.data["solution"] not in book.solutions:
        f.refuse("solution", "unknown")


def _drawn(f, book):
    f.number("volume_ml", above=0.0)
    f.text("to", required=False)


def _moved(f, book):
    if f.text("vessel") not in book.vessels:
        f.refuse("vessel", "unknown")


def _stood_open(f, book):
    f.number("hours", above=0.0)
    f.number("area_cm2", above=0.0)


def _stored_at(f, book):
    f.number("temperature_c", low=0.0, high=45.0)


def _clearing_test(f, book):
    f.number("seconds", above=0.0)
    f.number("temperature_c", low=0.0, high=45.0)
    f.text("film", required=False)


def _strip_test(f, book):
    f.number("density", required=False, low=0.0)
    f.number("factor", required=False, above=0.0)
    f.truth("passed")


def _looked(f, book):
    f.truth("passed")
    f.text("what", required=False,
           among=("colour", "smell", "precipitate", "leader", "indicator"))


def _measured(f, book):
    f.number("silver_g_per_litre", low=0.0, high=50.0)
    f.text("method", required=False)


def _test_asked(f, book):
    if f.data["kind"] == "noted":
        return                           # its mark and film are inside the note
    f.text("mark", among=MARKS)
    if not book.names(f.text("film"), ("film",)):
        f.refuse("film", "unknown")


def _discarded(f, book):
    if f.has("container") and not book.names(f.text("container"), ("container",)):
        f.refuse("container", "unknown")


def _voided(f, book):
    f.text("voids")


def _taken(f, book):
    f.number("amount", above=0.0)
    f.text("for", required=False)


def _counted(f, book):
    f.number("amount", low=0.0)


def _poured_in(f, book):
    f.number("volume_ml", above=0.0)
    f.text("from", required=False)


def _handed_over(f, book):
    f.number("volume_ml", required=False, above=0.0)
    f.text("to", required=False)


CHECKS = {"mixed": _mixed, "processed": _processed, "topped-up": _topped_up, "drawn": _drawn,
          "moved": _moved, "stood-open": _stood_open, "stored-at": _stored_at,
          "clearing-test": _clearing_test, "strip-test": _strip_test, "looked": _looked,
          "measured": _measured, "test-asked": _test_asked, "discarded": _discarded,
          "voided": _voided, "taken": _taken, "counted": _counted, "poured-in": _poured_in,
          "handed-over": _handed_over}


def _subject(f, kind):
    """Field and types of what the event is about: a batch, a thing in the cupboard, a can."""
    if kind in ON_ITEMS:
        # Version 1 named the packet of an opened-packet `packet`.
        old = kind == "opened-packet" and f.has("packet") and not f.has("item")
        return "packet" if old else "item", CUPBOARD
    if kind in ON_CONTAINERS:
        return "container", ("container",)
    if kind == "voided" and not f.has("batch"):
        if f.has("item"):
            return "item", CUPBOARD
        if f.has("container"):
            return "container", ("container",)
        return None, None                # it is about what it takes back
    return "batch", None                 # batches may be mixed further down


def read_event(f, book):
    """Checks one event's own fields, then what they name."""
    kind = f.text("kind", among=KINDS)
    field, types = _subject(f, kind)
    if field is not None:
        f.text(field)
    f.number("air_ml", required=False, low=0.0)
    if f.time("at") > book.now + DAY_US:
        f.refuse("at", "in the future")
    check = CHECKS.get(kind_of(f))
    if check is not None:
        check(f, book)
    if types is not None and not book.names(f.data[field], types):
        f.refuse(field, "unknown")


def on_batch(f):
    """Whether the event is about a batch (a voided one never counts)."""
    return f.data["kind"] in ON_BATCHES
