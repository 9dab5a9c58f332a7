"""Turns a folded batch into the report: forecast, clearing, verdict."""

import calendar
import math

from reading_fold import fold
from reading_journal import DAY_US, instant, moment_of
from reading_maths import Line, beta_quantile, incomplete_beta
from reading_model import days_until

SLACK = 1e-9
SAME_DATE_DAYS = 2.0             # a model date nearer to the calendar's is the calendar's
MONTH_DAYS = 30.4375
VERDICTS = ("discard", "test-first", "near-its-end", "good")
LEVEL_OF = {
    "contaminated": 0, "test-failed": 0, "clearing-doubled": 0, "capacity-reached": 0,
    "less-than-quarter-film": 0, "past-keeping": 0, "silver-over-limit": 0,
    "standing-spent": 1, "clearing-test-due": 1, "history-unknown": 1,
    "capacity-near": 2, "films-few": 2, "standing-near": 2, "discard-soon": 2}


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


def keeping_limit(mixed_at, full_days):
    """The instant at which the published full-bottle time is over."""
    months = round(full_days / MONTH_DAYS)
    if months < 1 or abs(full_days / MONTH_DAYS - months) > 1e-6:
        return mixed_at + full_days * DAY_US
    moment = moment_of(mixed_at)
    count = moment.year * 12 + moment.month - 1 + months
    year, month = count // 12, count % 12 + 1
    day = min(moment.day, calendar.monthrange(year, month)[1])
    later = moment.replace(year=year, month=month, day=day)
    return mixed_at + (later - moment).days * DAY_US


def discard_instant(batch):
    """When to discard for standing: the model's date or the calendar's."""
    limit = keeping_limit(batch.mixed_at, batch.solution["keeping"]["full_days"])
    if batch.standing() >= 1.0:
        model = batch.mixed_at if batch.rose_at is None else batch.rose_at
    elif batch.volume == 0.0:
        return limit           # nothing is left to stand on, the calendar is
    else:
        ahead = (limit - batch.clock) / DAY_US
        days = days_until(lambda t: batch.standing_after(t) - 1.0, ahead)
        if days is None:
            return limit
        model = batch.clock + days * DAY_US
    return model if (limit - model) / DAY_US >= SAME_DATE_DAYS else limit


def films_left(batch):
    """Films the bottle can still take, or None without a capacity."""
    capacity = batch.solution.get("capacity_films_per_litre")
    if capacity is None:
        return None
    return max(0.0, (capacity - batch.wear) * batch.volume / 1000.0)


def mean_load(batch):
    """Films in a load so far; one where there was none."""
    if not batch.loads:
        return 1.0
    return math.fsum(u for _, u in batch.loads) / len(batch.loads)


def last_film(batch, left, days_to_discard):
    """When the last film is likely to have come, from the pace of loads."""
    if left is None or left <= SLACK:
        return None
    now = batch.clock
    coming = max(1, math.ceil(left / mean_load(batch) - SLACK))
    watched, seen = 0.0, 0
    if batch.loads:
        since = max(batch.loads[0][0], now - 180 * DAY_US)
        watched = (now - since) / DAY_US
        seen = sum(1 for at, _ in batch.loads if at >= since)

    def days(chance):
        y = beta_quantile(chance, coming, 1 + seen)
        return (30.0 + watched) * y / (1.0 - y)

    first = None
    if days_to_discard is not None:
        ahead = max(0.0, days_to_discard)
        first = incomplete_beta(ahead / (ahead + 30.0 + watched), coming, 1 + seen)
    return {"early_days": days(0.1), "median_days": days(0.5), "late_days": days(0.9),
            "chance_films_first": first}


def fresh_clearing(batch):
    """Clearing time when fresh: tested early, else published, else unknown."""
    for _, wear, seconds in batch.tests:
        if wear <= 1.0 + SLACK:
            return seconds
    given = batch.solution.get("fresh_clearing_s")
    return None if given is None else float(given)


def clearing(batch):
    """Clearing time now, and where it will have doubled; None without a test."""
    if not batch.tests:
        return None
    fresh = fresh_clearing(batch)
    points = [(wear, seconds) for _, wear, seconds in batch.tests]
    wears = [wear for wear, _ in points]
    found = {"now_s": points[-1][1], "fresh_s": fresh,
             "doubles_at_films_per_litre": None, "low": None, "high": None}
    if len(points) >= 3 and max(wears) - min(wears) > SLACK:
        line = Line(points)
        found["now_s"] = line.at(batch.wear)
        if fresh is not None:
            if line.slope > 0.0:
                found["doubles_at_films_per_litre"] = (
                    (2.0 * fresh - line.intercept) / line.slope)
            found["low"] = line.rising_crossing(2.0 * fresh, +1)
            found["high"] = line.rising_crossing(2.0 * fresh, -1)
    return found


def passing(batch, fresh):
    """Whether a passed test still speaks for the batch."""
    passes = list(batch.passes)
    if batch.solution["role"] == "fixer" and fresh is not None:
        passes += [(at, wear) for at, wear, seconds in batch.tests
                   if seconds < 2.0 * fresh]
    if not passes:
        return False
    at, wear = max(passes, key=lambda one: one[0])
    return ((batch.clock - at) / DAY_US < 14.0
            and batch.wear - wear < 2.0 - SLACK)


def reasons(batch, left, discard_at):
    """Every reason that applies, in the order of the table of verdicts."""
    found = []

    def add(applies, code, **numbers):
        if applies:
            found.append({"code": code, **numbers})

    now, solution = batch.clock, batch.solution
    capacity = solution.get("capacity_films_per_litre")
    fresh = fresh_clearing(batch)
    fixer = solution["role"] == "fixer"
    past = False
    add(batch.contaminated, "contaminated")
    add(batch.failed, "test-failed")
    if batch.tests and fresh is not None:
        last = batch.tests[-1][2]
        add(last >= 2.0 * fresh, "clearing-doubled", value=last, limit=2.0 * fresh)
    if capacity is not None:
        add(batch.wear >= capacity - SLACK, "capacity-reached",
            value=batch.wear, limit=float(capacity))
        add(left < 0.25 - SLACK, "less-than-quarter-film", value=left, limit=0.25)
    if discard_at is not None:
        limit = keeping_limit(batch.mixed_at, solution["keeping"]["full_days"])
        past = now > limit
        add(past, "past-keeping", value=(now - batch.mixed_at) / DAY_US,
            limit=(limit - batch.mixed_at) / DAY_US)
    silver_limit = solution.get("silver_limit_g_per_litre")
    if silver_limit is not None:
        add(batch.silver > silver_limit, "silver-over-limit",
            value=batch.silver, limit=float(silver_limit))

    passed = passing(batch, fresh)
    standing = batch.standing()
    if standing is not None:
        add(standing >= 1.0 and not past and not passed, "standing-spent",
            value=standing, limit=1.0)
    if fixer:
        at, wear = (batch.tests[-1][:2] if batch.tests else (batch.mixed_at, 0.0))
        films, days = batch.wear - wear, (now - at) / DAY_US
        add(films >= 5.0 - SLACK or days >= 30.0, "clearing-test-due",
            films_per_litre=films, days=days)
    add(batch.unknown_history and not passed, "history-unknown")

    if capacity is not None:
        add(batch.wear >= 0.8 * capacity - SLACK, "capacity-near",
            value=batch.wear, limit=0.8 * capacity)
        add(left <= mean_load(batch) + SLACK, "films-few",
            value=left, limit=mean_load(batch))
    if standing is not None:
        add(standing >= 0.8, "standing-near", value=standing, limit=0.8)
        ahead = (discard_at - now) / DAY_US
        add(ahead <= 14.0, "discard-soon", value=ahead, limit=14.0)
    return found


def report_one(batch):
    """One batch's object of the report."""
    kept = batch.standing() is not None
    discard_at = discard_instant(batch) if kept else None
    left = films_left(batch)
    why = reasons(batch, left, discard_at)
    level = min((LEVEL_OF[one["code"]] for one in why), default=3)
    cleared = clearing(batch)
    ahead = (discard_at - batch.clock) / DAY_US if kept else None
    return {
        "batch": batch.id,
        "name": batch.name,
        "solution": batch.solution_id,
        "volume_ml": batch.volume,
        "films_done": batch.films_done,
        "wear_films_per_litre": batch.wear,
        "films_left": left,
        "wear_factor": wear_factor(batch.solution["wear"], batch.wear),
        "age_days": (batch.clock - batch.mixed_at) / DAY_US,
        "oxygen_mmol_per_litre": batch.oxygen,
        "oxygen_limit_mmol_per_litre": batch.limit,
        "age_part": batch.age if kept else None,
        "air_part": batch.model.air_part(batch.oxygen) if kept else None,
        "standing_used": batch.standing(),
        "silver_g_per_litre": batch.silver,
        "bromide_mg_per_litre": batch.bromide,
        "openings": batch.openings,
        "air_ml": batch.air,
        "discard_by": moment_of(discard_at).date().isoformat() if kept else None,
        "verdict": VERDICTS[level],
        "reasons": why,
        "last_film": last_film(batch, left, ahead),
        "clearing": cleared,
        "fix_s": None if cleared is None else 2.0 * cleared["now_s"],
    }


def report(book, at, everything=False):
    """The whole report as of an instant, batches in order of mixing."""
    folded = []
    for events in book.batches().values():
        fold(book, events)               # the whole journal has to be possible
        batch = fold(book, events, at)
        if batch is not None and (everything or batch.frozen_at is None):
            mixed = next(f for f in events if f.data["kind"] == "mixed")
            folded.append((batch.mixed_at, mixed.line, batch))
    folded.sort(key=lambda one: one[:2])
    return [report_one(batch) for _, _, batch in folded]


def report_at(book, text, everything=False):
    """The report at a time given as text."""
    return report(book, instant(text), everything)
