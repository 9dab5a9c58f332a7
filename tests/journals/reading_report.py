"""Turns a folded batch into the report: forecast, verdict, and what the journal calls it."""

import calendar
import math

from reading_fields import DAY_US, instant, moment_of
from reading_fixer import SLACK, clearing, doubled, fixing_time, fresh_clearing
from reading_fold import Shelf
from reading_maths import beta_quantile, incomplete_beta
from reading_model import days_until, in_months

SAME_DATE_DAYS = 2.0             # a model date nearer to the calendar's is the calendar's
VERDICTS = ("discard", "test-first", "near-its-end", "good")
LEVELS = (("contaminated", "test-failed", "clearing-doubled", "capacity-reached",
           "less-than-quarter-film", "past-keeping", "silver-over-limit",
           "turnover-over-limit"),
          ("standing-spent", "clearing-test-due", "history-unknown", "test-asked"),
          ("capacity-near", "films-few", "standing-near", "discard-soon"))
LEVEL_OF = {code: level for level, codes in enumerate(LEVELS) for code in codes}


def wear_factor(rule, wear):
    """How much longer than fresh the next load takes."""
    name = rule["rule"]
    if name == "per-film":
        return 1.0 + rule["percent"] * wear / 100.0
    if name == "compound":
        return (1.0 + rule["percent"] / 100.0) ** wear
    factor = 1.0
    if name == "steps":
        for step in sorted(rule["steps"], key=lambda s: s["from_films_per_litre"]):
            if step["from_films_per_litre"] <= wear + SLACK:
                factor = float(step["factor"])
    return factor


def keeping_limit(start, full_days):
    """The instant at which the published full-bottle time is over."""
    months = in_months(full_days)
    if months is None:
        return start + full_days * DAY_US
    moment = moment_of(start)
    count = moment.year * 12 + moment.month - 1 + months
    year, month = count // 12, count % 12 + 1
    day = min(moment.day, calendar.monthrange(year, month)[1])
    later = moment.replace(year=year, month=month, day=day)
    return start + (later - moment).days * DAY_US


def has_date(batch):
    """Whether a day to discard by can be known at all."""
    return batch.model.full_days is not None and batch.dated


def discard_instant(batch):
    """When to discard for standing: the model's date or the calendar's."""
    limit = keeping_limit(batch.calendar_from, batch.model.full_days)
    if batch.standing() >= 1.0:
        model = batch.rose_at
    elif batch.volume == 0.0:
        return limit           # nothing is left to stand on, the calendar is
    else:
        ahead = (limit - batch.clock) / DAY_US
        days = days_until(lambda t: batch.standing_after(t) - 1.0, ahead)
        if days is None:
            return limit
        model = batch.clock + days * DAY_US
    return model if (limit - model) / DAY_US >= SAME_DATE_DAYS else limit


def one_shot_use(batch):
    """Whether the batch is used once and poured away, a measure at a time."""
    if "one_shot_ml_per_film" not in batch.solution:
        return False
    return batch.loads[-1][2] if batch.loads else batch.capacity is None


def films_left(batch):
    """Films the bottle can still take, or None where that cannot be known."""
    if one_shot_use(batch):
        return batch.volume / batch.solution["one_shot_ml_per_film"]
    if batch.capacity is None or (batch.found and not batch.films_known):
        return None
    return max(0.0, (batch.capacity - batch.wear) * batch.volume / 1000.0)


def mean_load(batch):
    """Films in a load so far; one where there was none."""
    if not batch.loads:
        return 1.0
    return math.fsum(load[1] for load in batch.loads) / len(batch.loads)


def last_film(batch, left, days_to_discard):
    """When the last film is likely to have come, from the pace of loads."""
    if left is None or left <= SLACK or "replenisher" in batch.solution:
        return None
    now = batch.clock
    coming = max(1, math.ceil(left / mean_load(batch) - SLACK))
    watched, seen = 0.0, 0
    if batch.loads:
        since = max(batch.loads[0][0], now - 180 * DAY_US)
        watched = (now - since) / DAY_US
        seen = sum(1 for load in batch.loads if load[0] >= since)

    def days(chance):
        y = beta_quantile(chance, coming, 1 + seen)
        return (30.0 + watched) * y / (1.0 - y)

    first = None
    if days_to_discard is not None:
        ahead = max(0.0, days_to_discard)
        first = incomplete_beta(ahead / (ahead + 30.0 + watched), coming, 1 + seen)
    return {"early_days": days(0.1), "median_days": days(0.5), "late_days": days(0.9),
            "chance_films_first": first}


def passing(batch):
    """Whether a passed test still speaks for the batch."""
    passes = list(batch.passes)
    if batch.role == "fixer":
        for test in batch.tests[batch.lapsed:]:
            fresh = fresh_clearing(batch, test.film)
            if fresh is not None and test.seconds < 2.0 * fresh:
                passes.append((test.at, test.wear))
    if not passes:
        return False
    at, wear = max(passes, key=lambda one: one[0])
    return ((batch.clock - at) / DAY_US < 14.0
            and batch.wear - wear < 2.0 - SLACK)


class Reasons:
    """Every reason that applies, in the order of the table of verdicts."""

    def __init__(self, batch, left, discard_at):
        self.batch, self.left, self.discard_at = batch, left, discard_at
        self.found = []
        self.once = one_shot_use(batch)
        self._discard()
        self._test_first()
        self._near_its_end()

    def _add(self, applies, code, **numbers):
        if applies:
            self.found.append({"code": code, **numbers})

    def _discard(self):
        batch, solution, now = self.batch, self.batch.solution, self.batch.clock
        self._add(batch.contaminated, "contaminated")
        self._add(bool(batch.failures), "test-failed")
        twice = doubled(batch) if batch.role == "fixer" else None
        if twice is not None:
            self._add(True, "clearing-doubled", last_s=twice[0].seconds, fresh_s=twice[1])
        if batch.capacity is not None and not self.once:
            self._add(batch.wear >= batch.capacity - SLACK, "capacity-reached",
                      wear=batch.wear, capacity=batch.capacity)
        if self.left is not None:
            self._add(self.left < 0.25 - SLACK, "less-than-quarter-film", films_left=self.left)
        self.past = False
        if self.discard_at is not None:
            full = batch.model.full_days
            limit = keeping_limit(batch.calendar_from, full)
            self.past = now > limit
            self._add(self.past, "past-keeping", days_over=(now - limit) / DAY_US,
                      full_days=float(full))
        silver = solution.get("silver_limit_g_per_litre")
        if silver is not None:
            self._add(batch.silver > silver, "silver-over-limit",
                      silver=batch.silver, limit=float(silver))
        turnovers = batch.replenisher_used / batch.first_volume
        most = solution.get("turnover_limit")
        if most is not None:
            self._add(turnovers > most + SLACK, "turnover-over-limit",
                      turnovers=turnovers, limit=float(most))

    def _test_first(self):
        batch, now = self.batch, self.batch.clock
        passed = passing(batch)
        standing = batch.standing()
        if standing is not None:
            self._add(standing >= 1.0 and not self.past and not passed, "standing-spent",
                      standing=standing)
        if batch.role == "fixer":
            at, wear = batch.mixed_on, 0.0
            if batch.tests:
                at, wear = batch.tests[-1].at, batch.tests[-1].wear
            films, days = batch.wear - wear, (now - at) / DAY_US
            self._add(films >= 5.0 - SLACK or days >= 30.0, "clearing-test-due",
                      films_since=films, days_since=days)
        self._add((batch.found or batch.doubtful) and not passed, "history-unknown")
        if batch.asked_at is not None:
            self._add(True, "test-asked", days_since=(now - batch.asked_at) / DAY_US)

    def _near_its_end(self):
        batch, standing = self.batch, self.batch.standing()
        if batch.capacity is not None and not self.once:
            self._add(batch.wear >= 0.8 * batch.capacity - SLACK, "capacity-near",
                      wear=batch.wear, capacity=batch.capacity)
        if self.left is not None:
            mean = mean_load(batch)
            self._add(self.left <= mean + SLACK, "films-few",
                      films_left=self.left, mean_load=mean)
        if standing is not None:
            self._add(standing >= 0.8, "standing-near", standing=standing)
        if self.discard_at is not None:
            ahead = (self.discard_at - batch.clock) / DAY_US
            self._add(ahead <= 14.0, "discard-soon", days=ahead)


def report_one(batch):
    """One batch's object of the report."""
    kept = batch.model.full_days is not None
    discard_at = discard_instant(batch) if has_date(batch) else None
    left = films_left(batch)
    why = Reasons(batch, left, discard_at).found
    level = min((LEVEL_OF[one["code"]] for one in why), default=3)
    cleared = clearing(batch)
    ahead = None if discard_at is None else (discard_at - batch.clock) / DAY_US
    return {
        "batch": batch.id,
        "name": batch.name,
        "solution": batch.solution_id,
        "volume_ml": batch.volume,
        "films_done": batch.films_done,
        "wear_films_per_litre": batch.wear,
        "films_left": left,
        "wear_factor": wear_factor(batch.solution["wear"], batch.wear),
        "age_days": (batch.clock - batch.mixed_on) / DAY_US,
        "oxygen_mmol_per_litre": batch.oxygen,
        "oxygen_limit_mmol_per_litre": batch.model.limit,
        "age_part": batch.age if kept else None,
        "air_part": batch.model.air_part(batch.oxygen) if kept else None,
        "standing_used": batch.standing(),
        "silver_g_per_litre": batch.silver,
        "bromide_mg_per_litre": batch.bromide,
        "openings": batch.openings,
        "air_ml": batch.room_ml,
        "discard_by": None if discard_at is None else moment_of(discard_at).date().isoformat(),
        "verdict": VERDICTS[level],
        "reasons": why,
        "last_film": last_film(batch, left, ahead),
        "clearing": cleared,
        "fix_s": fixing_time(batch, cleared),
    }


def report(book, at, everything=False):
    """The whole report as of an instant, batches in order of mixing."""
    if not getattr(book, "possible", False):
        Shelf(book)                          # the whole journal has to be possible
        book.possible = True
    return [report_one(batch) for batch in Shelf(book, at).in_order()
            if everything or batch.frozen_at is None]


def report_at(book, text, everything=False):
    """The report at a time given as text."""
    return report(book, instant(text), everything)
