"""Fixers: clearing tests brought to one temperature, the fit, the fixing time."""

from dataclasses import dataclass

from reading_maths import Line

SLACK = 1e-9
ACID_CAPACITY, ALKALINE_CAPACITY = 20.0, 25.0


def at_20_degrees(seconds, celsius):
    """A clearing time brought to 20 degrees: it halves for each ten degrees warmer."""
    return seconds * 2.0 ** ((celsius - 20.0) / 10.0)


def cold_factor(celsius):
    """What a fixing time takes longer in the cold; never less than at 20 degrees."""
    return max(1.0, 2.0 ** ((20.0 - celsius) / 10.0))


def capacity_of(solution):
    """Films per litre: the maker's, else what is usual for a fixer of its kind, else None."""
    given = solution.get("capacity_films_per_litre")
    if given is not None:
        return float(given)
    if solution["role"] != "fixer":
        return None
    return ALKALINE_CAPACITY if solution.get("fixer_kind") == "alkaline" else ACID_CAPACITY


@dataclass(frozen=True)
class Test:
    """A clearing test: when, at what wear, how long, how warm, which film, in which batch."""

    at: int
    wear: float
    measured_s: float
    celsius: float
    film: str
    batch: str

    @property
    def seconds(self):
        return at_20_degrees(self.measured_s, self.celsius)


def of_film(batch, film):
    return [test for test in batch.tests if test.film == film]


def fresh_clearing(batch, film):
    """Clearing time of a film when fresh: tested early, else published, else unknown."""
    if not batch.found:
        for test in of_film(batch, film):
            if test.wear <= 1.0 + SLACK:
                return test.seconds
    given = batch.solution.get("fresh_clearing_s")
    return None if given is None else float(given)


def doubled(batch):
    """The last test among those that are each their film's last and have doubled, with that
    film's fresh time; None where none has."""
    last = {}
    for test in batch.tests:
        last[test.film] = test
    for test in sorted(last.values(), key=lambda one: -batch.tests.index(one)):
        fresh = fresh_clearing(batch, test.film)
        if fresh is not None and test.seconds >= 2.0 * fresh:
            return test, fresh
    return None


def clearing(batch):
    """Clearing time now, and where it will have doubled; None without a test."""
    if batch.role != "fixer" or not batch.tests:
        return None
    last = batch.tests[-1]
    fresh = fresh_clearing(batch, last.film)
    now = last.seconds
    if fresh is not None and batch.capacity is not None:
        now += fresh / batch.capacity * (batch.wear - last.wear)
    found = {"now_s": now, "fresh_s": fresh,
             "doubles_at_films_per_litre": None, "low": None, "high": None}
    points = [(test.wear, test.seconds) for test in of_film(batch, last.film)]
    wears = [wear for wear, _ in points]
    if len(points) >= 3 and max(wears) - min(wears) > SLACK:
        line = Line(points)
        found["now_s"] = max(now, line.at(batch.wear))
        if fresh is not None and line.slope > 0.0:
            found["doubles_at_films_per_litre"] = (2.0 * fresh - line.intercept) / line.slope
            found["low"] = line.rising_crossing(2.0 * fresh, +1)
            found["high"] = line.rising_crossing(2.0 * fresh, -1)
    return found


def fixing_time(batch, cleared, celsius=20.0, tabular=False):
    """How long to fix: twice the clearing time, not under the packet's, longer in the cold."""
    if cleared is None:
        return None
    times = batch.solution.get("tabular_factor", 3.0) if tabular else 2.0
    shortest = batch.solution.get("fix_min_s", 0.0)
    return max(times * cleared["now_s"], float(shortest)) * cold_factor(celsius)


def second_bath_time(batch, cleared, celsius=20.0):
    """In two baths the film clears in the first and stays as long again in the second, so
    each takes half of the whole."""
    whole = fixing_time(batch, cleared, celsius)
    return None if whole is None else whole / 2.0
