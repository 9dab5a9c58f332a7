"""What is in one bottle, and what each kind of event does to it."""

from reading_events import OPENING, films_of, kind_of
from reading_fields import DAY_US
from reading_fixer import Test, capacity_of
from reading_maths import bisect
from reading_model import AIR_MMOL_PER_ML, Closed, Vessel

EMPTY_ML = 1e-9
SECOND_BATH = 0.2                # share of the films that a second fixing bath feels
CARRIED = ("wear", "age", "silver", "bromide")


class Batch:
    """The state of one batch, moved forward event by event."""

    def __init__(self, shelf, mixed):
        book = shelf.book
        self.shelf = shelf
        self.mixed = mixed
        self.id = mixed.data["batch"]
        self.name = mixed.data.get("name") or self.id
        self.solution_id = mixed.data["solution"]
        self.solution = book.solutions[self.solution_id]
        self.role = self.solution["role"]
        self.model = shelf.standing_of(self.solution_id)
        self.c_sat = self.model.c_sat
        self.capacity = capacity_of(self.solution)
        self.clock = mixed.at
        self.mixed_on = mixed.at         # the mixing date, that its age counts from
        self.calendar_from = mixed.at    # the one that its published keeping counts from
        self.vessel = self._vessel(mixed)
        self.volume = self.first_volume = float(mixed.data["volume_ml"])
        self.wear = self.age = self.silver = self.bromide = 0.0
        self.oxygen = self.c_sat
        self.temperature = 20.0
        self.openings = 0
        self.room_ml = self.air_oxygen = 0.0
        self.films_done = self.replenisher_used = 0.0
        self.loads = []                  # (when, films, whether one-shot)
        self.tests = []                  # clearing tests
        self.passes = []                 # (when, wear) of looks and strips that passed
        self.lapsed = 0                  # so many of the first tests are passes no more
        self.failures = []               # what each failed look or strip was about
        self.strips, self.trials = [], []
        self.strip_factor = 1.0
        self.contaminated = False
        self.found = self.doubtful = False
        self.dated = self.films_known = True
        self.asked_at = None
        self.frozen_at = self.rose_at = None
        self.discarded = False
        if self.volume > self.vessel.capacity:
            mixed.refuse("volume_ml", "more than the vessel holds")
        self._begin(mixed)
        self._open(mixed)

    def _begin(self, f):
        """What a bottle that is not freshly mixed starts with."""
        data = f.data
        if data.get("from"):
            self._decanted(self.shelf.donor(f))
        if data.get("history") == "unknown":
            self.found = True
            self.dated = "mixed_on" in data
            self.films_known = "assumed_films_per_litre" in data
            self.wear = float(data.get("assumed_films_per_litre", 0.0))
            if self.dated:
                # Closed and at 20 degrees since then, as far as anybody knows.
                self.mixed_on = self.calendar_from = f.time("mixed_on")
                self.age = self.model.aged((f.at - self.mixed_on) / DAY_US, 20.0)
                standing = self.standing()
                if standing is not None and standing >= 1.0:
                    # Over when it came, by age alone on top of the pouring.
                    left = 1.0 - self.model.air_part(self.oxygen)
                    self.rose_at = self.mixed_on + DAY_US * left * self.model.life
        before = float(data.get("films_before", 0.0))
        self._count_films(before)
        self.films_done = before

    def _decanted(self, donor):
        for name in CARRIED:
            setattr(self, name, getattr(donor, name))
        self.oxygen = donor.oxygen + self.c_sat
        self.mixed_on, self.calendar_from = donor.mixed_on, donor.calendar_from
        self.rose_at = donor.rose_at
        self.tests, self.passes = list(donor.tests), list(donor.passes)
        self.lapsed = donor.lapsed
        self.failures = list(donor.failures)
        self.strip_factor = donor.strip_factor
        self.contaminated = donor.contaminated
        self.found, self.doubtful = donor.found, donor.doubtful
        self.dated, self.films_known = donor.dated, donor.films_known
        before, after = donor.standing(), self.standing()
        if after is not None and before < 1.0 <= after:
            self.rose_at = self.clock

    def _count_films(self, films):
        """Adds films to what is in the bottle, as it stands."""
        litres = self.volume / 1000.0
        self.wear += films / litres
        self.silver += films * self.solution.get("silver_g_per_film", 0.0) / litres
        self.bromide += films * self.solution.get("bromide_mg_per_film", 0.0) / litres

    def _vessel(self, f):
        made = self.shelf.book.vessels[f.data["vessel"]]
        return Vessel(made["capacity_ml"], made["material"], made.get("wall_mm"),
                      made.get("permeability"), made.get("cap_cm3_day"),
                      made.get("squeezed", False), self.shelf.air)

    def _open(self, f):
        """Renews the air, as much of it as the user left."""
        room = self.vessel.capacity - self.volume
        left = f.data.get("air_ml", 0.0 if self.vessel.squeezed else room)
        self.room_ml = min(float(left), room)
        self.air_oxygen = AIR_MMOL_PER_ML * self.room_ml
        self.openings += 1

    # --- standing -----------------------------------------------------------

    def _closed(self):
        return Closed(self.vessel, self.volume, self.room_ml, self.c_sat, self.temperature,
                      self.shelf.air)

    def standing(self):
        """Standing used, or None where keeping is not published."""
        return self.model.used(self.oxygen, self.age)

    def standing_after(self, days):
        """Standing used after standing on, as it is, for that long."""
        taken = self._closed().taken_up(self.air_oxygen, days)
        return self.model.used(self.oxygen + taken / (self.volume / 1000.0),
                               self.age + self.model.aged(days, self.temperature))

    def advance(self, to):
        """Lets the closed bottle stand until then."""
        days = (to - self.clock) / DAY_US
        if days > 0.0 and self.frozen_at is None:
            before = self.standing()
            if before is not None and before < 1.0 <= self.standing_after(days):
                self.rose_at = self.clock + DAY_US * bisect(
                    lambda t: self.standing_after(t) - 1.0, 0.0, days)
            closed = self._closed()
            self.oxygen += closed.taken_up(self.air_oxygen, days) / (self.volume / 1000.0)
            self.air_oxygen = closed.air_after(self.air_oxygen, days)
            self.age += self.model.aged(days, self.temperature)
        if self.frozen_at is None:
            self.clock = to

    # --- events -------------------------------------------------------------

    def happen(self, f):
        """Takes one event, in its turn."""
        if self.frozen_at is not None:
            f.refuse("at", "after the batch was discarded or used up")
        self.advance(f.at)
        before = self.standing()
        kind = kind_of(f)
        getattr(self, "_" + kind.replace("-", "_"))(f)
        if self.volume <= EMPTY_ML:
            self.volume = 0.0
            self.frozen_at = f.at
        if kind in OPENING:
            self._open(f)
        after = self.standing()
        if after is not None and before < 1.0 <= after:
            self.rose_at = f.at

    def _take(self, f, field, volume):
        if volume > self.volume + EMPTY_ML:
            f.refuse(field, "more than is there")
        self.volume -= volume

    def _processed(self, f):
        films = films_of(f)
        felt = films * SECOND_BATH if f.data.get("second") else films
        one_shot = f.data.get("one_shot", False)
        used = f.data.get("used_ml", self.volume)
        if used > self.volume + EMPTY_ML:
            f.refuse("used_ml", "more than is there")
        self.films_done += films
        self.loads.append((self.clock, felt, one_shot))
        if one_shot:
            self._take(f, "used_ml", used)
            return
        bromide = self.bromide + (films * self.solution.get("bromide_mg_per_film", 0.0)
                                  / (self.volume / 1000.0))
        self._count_films(felt)
        self.bromide = bromide               # only wear and silver feel a fifth
        self.oxygen += self.c_sat * used / self.volume
        self._take(f, "lost_ml", f.data.get("lost_ml", 0.0))

    def _topped_up(self, f):
        added = float(f.data["volume_ml"])
        if self.volume + added > self.vessel.capacity + EMPTY_ML:
            f.refuse("volume_ml", "more than the vessel holds")
        if f.has("from"):
            self._blend(self.shelf.donor(f), added)
        elif f.has("solution"):
            self._replenish(f, added)
        else:
            self._dilute(added)
        self.volume += added

    def _dilute(self, fresh):
        share = self.volume / (self.volume + fresh)
        for name in CARRIED:
            setattr(self, name, getattr(self, name) * share)
        self.oxygen = self.oxygen * share + self.c_sat * (1.0 - share)

    def _replenish(self, f, added):
        if f.data["solution"] != self.solution.get("replenisher"):
            f.refuse("solution", "not this batch's replenisher")
        credit = 1000.0 * added / self.solution["replenish_ml_per_film"]
        total = self.volume + added
        wear = max(0.0, self.wear * self.volume - credit) / total
        self._dilute(added)
        self.wear = wear
        self.replenisher_used += added
        self.calendar_from += (self.clock - self.calendar_from) * added / total

    def _blend(self, donor, added):
        """Filled up from another bottle, as that one was then."""
        total = self.volume + added
        for name in CARRIED:
            mine, theirs = getattr(self, name), getattr(donor, name)
            setattr(self, name, (mine * self.volume + theirs * added) / total)
        self.oxygen = (self.oxygen * self.volume
                       + (donor.oxygen + self.c_sat) * added) / total
        self.contaminated = self.contaminated or donor.contaminated
        self.failures = self.failures + donor.failures
        self.doubtful = self.doubtful or donor.doubtful or donor.found
        self.passes, self.lapsed = [], len(self.tests)
        self.calendar_from = min(self.calendar_from, donor.calendar_from)

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
        self.asked_at = None
        self.tests.append(Test(self.clock, self.wear, f.data["seconds"],
                               f.data["temperature_c"], f.data.get("film") or "", self.id))

    def _strip_test(self, f):
        self.strips.append((self.wear, self.strip_factor, f.data.get("density")))
        self.strip_factor = f.data.get("factor", self.strip_factor)
        self.asked_at = None
        self._judged(f, "strip")

    def _looked(self, f):
        if f.data.get("passed") is not None:  # a look that judges nothing is no test
            self.asked_at = None
        self._judged(f, f.data.get("what"))

    def _judged(self, f, about):
        passed = f.data.get("passed")
        if passed is True:
            self.passes.append((self.clock, self.wear))
        elif passed is False:
            self.failures.append(about)
        if passed is not None and about != "precipitate":
            self.trials.append((passed, self.oxygen, self.age, self.wear))

    def _filtered(self, f):
        self.failures = [about for about in self.failures if about != "precipitate"]

    def _measured(self, f):
        self.silver = float(f.data["silver_g_per_litre"])

    def _contaminated(self, f):
        self.contaminated = True

    def _test_asked(self, f):
        self.asked_at = self.clock

    def _discarded(self, f):
        self.frozen_at, self.discarded = self.clock, True

    def _opened(self, f):
        """Only renews the air."""

    def _dissolved(self, f):
        """Changes nothing that is reported."""

    def _noted(self, f):
        """Changes nothing that is reported."""
