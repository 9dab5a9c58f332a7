"""Folds one batch's events into what is in its bottle."""

from reading_journal import DAY_US, OPENING, films_of, instant
from reading_maths import bisect
from reading_model import AIR_MMOL_PER_ML, Closed, Standing, Vessel

EMPTY_ML = 1e-9


def at_20_degrees(seconds, celsius):
    """A clearing time brought to 20 degrees: cold fixer clears more slowly,
    warm fixer is taken as it is."""
    return seconds / max(1.0, 2.0 ** ((20.0 - celsius) / 10.0))


class Batch:
    """The state of one batch, moved forward event by event."""

    def __init__(self, book, mixed):
        self.book = book
        self.id = mixed.data["batch"]
        self.name = mixed.data.get("name") or self.id
        self.solution_id = mixed.data["solution"]
        self.solution = book.solutions[self.solution_id]
        self.model = Standing(self.solution)
        self.c_sat, self.limit = self.model.c_sat, self.model.limit
        self.mixed_at = self.clock = instant(mixed.data["at"])
        self.vessel = self._vessel(mixed)
        self.volume = float(mixed.data["volume_ml"])
        self.wear = self.age = self.silver = self.bromide = 0.0
        self.oxygen = self.c_sat
        self.temperature = 20.0
        self.openings = 0
        self.air = self.air_oxygen = 0.0
        self.films_done = 0.0
        self.loads, self.tests, self.passes = [], [], []
        self.contaminated = self.failed = False
        self.unknown_history = mixed.data.get("history") == "unknown"
        self.frozen_at = self.rose_at = None
        if self.volume > self.vessel.capacity:
            mixed.refuse("volume_ml", "more than the vessel holds")
        self._open(mixed)

    def _vessel(self, f):
        made = self.book.vessels[f.data["vessel"]]
        return Vessel(made["capacity_ml"], made["material"], made.get("wall_mm"),
                      made.get("permeability"), made.get("cap_cm3_day"),
                      made.get("squeezed", False))

    def _open(self, f):
        """Renews the air, as much of it as the user left."""
        room = self.vessel.capacity - self.volume
        left = f.data.get("air_ml", 0.0 if self.vessel.squeezed else room)
        self.air = min(float(left), room)
        self.air_oxygen = AIR_MMOL_PER_ML * self.air
        self.openings += 1

    # --- standing -----------------------------------------------------------

    def standing(self):
        """Standing used, or None where keeping is not published."""
        return self.model.used(self.oxygen, self.age)

    def standing_after(self, days):
        """Standing used after standing on, as it is, for that long."""
        taken = self._closed().taken_up(self.air_oxygen, days)
        return self.model.used(self.oxygen + taken / (self.volume / 1000.0),
                               self.age + self.model.aged(days, self.temperature))

    def _closed(self):
        return Closed(self.vessel, self.volume, self.air, self.c_sat, self.temperature)

    def advance(self, to):
        """Lets the closed bottle stand until then."""
        days = (to - self.clock) / DAY_US
        if days > 0.0:
            before = self.standing()
            if before is not None and before < 1.0 <= self.standing_after(days):
                self.rose_at = self.clock + DAY_US * bisect(
                    lambda t: self.standing_after(t) - 1.0, 0.0, days)
            closed = self._closed()
            self.oxygen += (closed.taken_up(self.air_oxygen, days)
                            / (self.volume / 1000.0))
            self.air_oxygen = closed.air_after(self.air_oxygen, days)
            self.age += self.model.aged(days, self.temperature)
        self.clock = to

    # --- events -------------------------------------------------------------

    def happen(self, f):
        """Takes one event, in its turn."""
        when = instant(f.data["at"])
        if when < self.mixed_at:
            f.refuse("at", "before the batch was mixed")
        if self.frozen_at is not None:
            f.refuse("at", "after the batch was discarded or used up")
        self.advance(when)
        before = self.standing()
        kind = f.data["kind"]
        getattr(self, "_" + kind.replace("-", "_"))(f)
        if self.volume <= EMPTY_ML:
            self.volume = 0.0
            self.frozen_at = when
        if kind in OPENING:
            self._open(f)
        after = self.standing()
        if after is not None and before < 1.0 <= after:
            self.rose_at = when

    def _take(self, f, field, volume):
        if volume > self.volume + EMPTY_ML:
            f.refuse(field, "more than is there")
        self.volume -= volume

    def _processed(self, f):
        films = films_of(f)
        used = f.data.get("used_ml", self.volume)
        if used > self.volume + EMPTY_ML:
            f.refuse("used_ml", "more than is there")
        self.films_done += films
        self.loads.append((self.clock, films))
        if f.data.get("one_shot", False):
            self._take(f, "used_ml", used)
            return
        litres = self.volume / 1000.0
        self.wear += films / litres
        self.oxygen += self.c_sat * used / self.volume
        self.silver += films * self.solution.get("silver_g_per_film", 0.0) / litres
        self.bromide += films * self.solution.get("bromide_mg_per_film", 0.0) / litres
        self._take(f, "lost_ml", f.data.get("lost_ml", 0.0))

    def _topped_up(self, f):
        fresh = f.data["volume_ml"]
        if self.volume + fresh > self.vessel.capacity + EMPTY_ML:
            f.refuse("volume_ml", "more than the vessel holds")
        share = self.volume / (self.volume + fresh)
        self.wear *= share
        self.age *= share
        self.silver *= share
        self.bromide *= share
        self.oxygen = self.oxygen * share + self.c_sat * (1.0 - share)
        self.volume += fresh

    def _drawn(self, f):
        self._take(f, "volume_ml", f.data["volume_ml"])

    def _moved(self, f):
        self.vessel = self._vessel(f)
        if self.volume > self.vessel.capacity:
            f.refuse("vessel", "holds less than is there")

    def _stood_open(self, f):
        taken = self.model.k_tray * f.data["area_cm2"] * self.c_sat * f.data["hours"] / 1000.0
        self.oxygen += taken / (self.volume / 1000.0)

    def _stored_at(self, f):
        self.temperature = float(f.data["temperature_c"])

    def _clearing_test(self, f):
        seconds = at_20_degrees(f.data["seconds"], f.data["temperature_c"])
        self.tests.append((self.clock, self.wear, seconds))

    def _strip_test(self, f):
        self._judged(f)

    def _looked(self, f):
        self._judged(f)

    def _judged(self, f):
        passed = f.data.get("passed")
        if passed is True:
            self.passes.append((self.clock, self.wear))
        elif passed is False:
            self.failed = True

    def _contaminated(self, f):
        self.contaminated = True

    def _discarded(self, f):
        self.frozen_at = self.clock

    def _opened(self, f):
        """Only renews the air."""

    def _dissolved(self, f):
        """Changes nothing that is reported."""

    def _noted(self, f):
        """Changes nothing that is reported."""


def fold(book, events, until=None):
    """The batch as of a moment (None: after everything); None if not mixed yet."""
    first = next((f for f in events if f.data["kind"] == "mixed"), None)
    if first is None:
        events[0].refuse("batch", "its mixing was voided")
    for f in events:
        if f is not first and instant(f.data["at"]) < instant(first.data["at"]):
            f.refuse("at", "before the batch was mixed")
    if until is not None and instant(first.data["at"]) > until:
        return None
    batch = Batch(book, first)
    for f in events:
        if f is first:
            continue
        if until is not None and instant(f.data["at"]) > until:
            break
        batch.happen(f)
    if until is not None and batch.frozen_at is None:
        batch.advance(until)
    return batch
