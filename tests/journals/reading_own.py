"""A darkroom's own figures: what its tests say about a solution, over all its bottles."""

import math

from reading_fixer import SLACK, fresh_clearing
from reading_fold import Shelf

TEN_PERCENT = 1.2816             # standard deviations that hold the middle 80 %


def solved(matrix, right):
    """A small set of linear equations, by elimination with exchanged rows."""
    rows = [list(row) + [value] for row, value in zip(matrix, right)]
    size = len(rows)
    for k in range(size):
        best = max(range(k, size), key=lambda i: abs(rows[i][k]))
        rows[k], rows[best] = rows[best], rows[k]
        for i in range(k + 1, size):
            share = rows[i][k] / rows[k][k]
            rows[i] = [a - share * b for a, b in zip(rows[i], rows[k])]
    found = [0.0] * size
    for k in reversed(range(size)):
        rest = rows[k][size] - sum(rows[k][j] * found[j] for j in range(k + 1, size))
        found[k] = rest / rows[k][k]
    return found


def _bottles(book, solution_id, until=None):
    return [batch for batch in Shelf(book, until).in_order() if batch.solution_id == solution_id]


# --- a fixer's capacity -------------------------------------------------------

def fixer_tests(book, solution_id, until=None):
    """Groups of (w, y) that share one fresh test, and how many bottles they come from.

    A test counts in the bottle it was made in; its fresh test may have come along."""
    groups, bottles = [], set()
    for batch in _bottles(book, solution_id, until):
        by_film = {}
        for test in batch.tests:
            early = any(t.film == test.film and t.wear <= 1.0 + SLACK for t in batch.tests)
            if test.batch != batch.id or test.wear <= 1.0 + SLACK or not early or batch.found:
                continue
            fresh = fresh_clearing(batch, test.film)
            by_film.setdefault(test.film, []).append((test.wear, test.seconds / fresh - 1.0))
            bottles.add(batch.id)
        groups += by_film.values()
    return groups, len(bottles)


def fixer_capacity(groups, bottles, published):
    """Capacity and 80 % span from the rise of the clearing time; None while not offered."""
    start = 1.0 / published
    spread = (0.5 / published) ** 2
    precision, mean = 1.0 / spread, start / spread
    for group in groups:
        wears = [w for w, _ in group]
        shared = [1.0 + w / published for w in wears]
        covariance = [[0.01 * ((i == j) + a * b) for j, b in enumerate(shared)]
                      for i, a in enumerate(shared)]
        precision += sum(w * x for w, x in zip(wears, solved(covariance, wears)))
        mean += sum(w * x for w, x in zip(wears, solved(covariance, [y for _, y in group])))
    beta, sd = mean / precision, precision ** -0.5
    offered = (sum(map(len, groups)) >= 4 and bottles >= 2 and beta - TEN_PERCENT * sd > 0.0)
    return {"capacity": 1.0 / beta, "beta": beta, "sd": sd, "offered": offered,
            "low": 1.0 / (beta + TEN_PERCENT * sd),
            "high": 1.0 / (beta - TEN_PERCENT * sd) if beta > TEN_PERCENT * sd else None}


# --- a developer's wear -------------------------------------------------------

def developer_strips(book, solution_id, reference_density, response=1.0, until=None):
    """(w, f) of every control strip, and how many bottles they come from."""
    found, bottles = [], set()
    for batch in _bottles(book, solution_id, until):
        percent = batch.solution["wear"].get("percent", 0.0)
        for wear, strip, density in batch.strips:
            if density:
                in_force = (1.0 + percent * wear / 100.0) * strip
                found.append((wear, in_force * (reference_density / density) ** (1.0 / response)))
                bottles.add(batch.id)
    return found, len(bottles)


def developer_wear(strips, bottles, percent):
    """Percent a film, with its span, for a per-film rule."""
    start = percent / 100.0
    precision = math.fsum(w * w for w, _ in strips) / 0.0025 + 1.0 / start ** 2
    mean = (math.fsum(w * (f - 1.0) for w, f in strips) / 0.0025 + 1.0 / start) / precision
    sd = precision ** -0.5
    return {"percent": 100.0 * mean, "low": 100.0 * (mean - TEN_PERCENT * sd),
            "high": 100.0 * (mean + TEN_PERCENT * sd),
            "offered": len(strips) >= 5 and bottles >= 2}


# --- keeping ------------------------------------------------------------------

def keeping_trials(book, solution_id, until=None):
    """(passed, N, g) of each bottle's last pass and first failure, and how many bottles."""
    found, bottles = [], 0
    for batch in _bottles(book, solution_id, until):
        judged = [trial for trial in batch.trials
                  if batch.capacity is None or trial[3] < 0.8 * batch.capacity]
        passed = [trial for trial in judged if trial[0]][-1:]
        failed = [trial for trial in judged if not trial[0]][:1]
        found += [trial[:3] for trial in passed + failed]
        bottles += bool(passed or failed)
    return found, bottles


def log_chance(passed, standing):
    """Logarithm of the chance of that outcome at a standing used."""
    share = 0.5 * math.erfc(math.log(standing) / 0.15 / math.sqrt(2.0))
    pass_chance = 0.02 + 0.96 * share
    return math.log(pass_chance if passed else 1.0 - pass_chance)


def keeping_limit_posterior(trials, bottles, calibrated, points=401):
    """N_c with its 80 % span, on a grid over four prior deviations either way."""
    sd = math.log(2.0) / 1.645
    centre = math.log(calibrated)
    step = 8.0 * sd / (points - 1)
    grid = [centre - 4.0 * sd + k * step for k in range(points)]
    logs = []
    for x in grid:
        limit = math.exp(x)
        logs.append(-0.5 * ((x - centre) / sd) ** 2
                    + sum(log_chance(passed, n / limit + g) for passed, n, g in trials))
    top = max(logs)
    density = [math.exp(one - top) for one in logs]
    total = [0.0]
    for a, b in zip(density, density[1:]):
        total.append(total[-1] + 0.5 * (a + b) * step)
    whole = total[-1]

    def quantile(share):
        aim = share * whole
        k = next(i for i in range(1, points) if total[i] >= aim)
        return grid[k - 1] + step * (aim - total[k - 1]) / (total[k] - total[k - 1])

    moments = [x * d for x, d in zip(grid, density)]
    mean = math.fsum(0.5 * (a + b) * step for a, b in zip(moments, moments[1:])) / whole
    return {"limit": math.exp(mean), "low": math.exp(quantile(0.1)),
            "high": math.exp(quantile(0.9)),
            "offered": len(trials) >= 5 and bottles >= 3
            and any(not passed for passed, _, _ in trials)}
