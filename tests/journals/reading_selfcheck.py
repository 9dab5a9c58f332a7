"""Checks the reading's numerics against a second route and printed values."""

import math
import pathlib
from fractions import Fraction

import reading_batch
import reading_properties
import reading_worked
from reading_fields import instant
from reading_fold import Shelf
from reading_journal import Book
from reading_maths import (Line, beta_quantile, incomplete_beta, student_quantile_two_sided,
                           student_two_sided)
from reading_model import (AIR_MMOL_PER_ML, Closed, Vessel, dissolved_oxygen,
                           reference_uptake, saturation_mg_per_litre, standing_limits)


def _uptake_errors():
    """Closed form against the balances integrated step by step."""
    c_sat = dissolved_oxygen(0.49)
    vessels = [Vessel(1030.0), Vessel(1030.0, "pet"), Vessel(600.0, "hdpe"),
               Vessel(5000.0, "ldpe", wall_mm=1.4), Vessel(250.0, "pp", cap_cm3_day=0.25),
               Vessel(1030.0, cap_cm3_day=0.0)]
    for vessel in vessels:
        for share, days in ((0.97, 9.0), (0.5, 40.0), (0.5, 0.8), (0.1, 75.0)):
            air = vessel.capacity * (1.0 - share)
            closed = Closed(vessel, vessel.capacity * share, air, c_sat)
            start = AIR_MMOL_PER_ML * air
            steps = int(max(4000, 60.0 * days / closed.tau))
            taken, left = closed.integrated(start, days, steps)
            yield abs(taken / closed.taken_up(start, days) - 1.0)
            yield abs(left - closed.air_after(start, days)) / start


class _Integrated(Closed):
    """The same bottle, but with its air integrated step by step."""

    def _both(self, n, days):
        return self.integrated(n, days, int(max(200, 25.0 * days / self.tau)))

    def taken_up(self, n, days):
        return super().taken_up(n, days) if self.airless else self._both(n, days)[0]

    def air_after(self, n, days):
        return super().air_after(n, days) if self.airless else self._both(n, days)[1]


def _scenario_errors():
    """Whole scenarios folded with the integrated bottle in place of the other."""
    folder = pathlib.Path(__file__).resolve().parent / "scenarios"
    for name, at in (("materials", "2024-01-25T12:00:00Z"), ("moved", "2024-03-25T12:00:00Z"),
                     ("squeezed-and-air-left", "2024-02-15T12:00:00Z"),
                     ("processed-in-parts", "2024-05-20T12:00:00Z")):
        book = Book((folder / f"{name}.jsonl").read_bytes())
        found = []
        for kind in (Closed, _Integrated):
            reading_batch.Closed = kind
            shelf = Shelf(book, instant(at))
            found.append([batch.oxygen for batch in shelf.in_order()])
        reading_batch.Closed = Closed
        yield max(abs(one / other - 1.0) for one, other in zip(*found))


def _incomplete_beta_exact(x, m, n):
    """The other binomial tail, in exact fractions."""
    x, total = Fraction(x), m + n - 1
    return float(sum(math.comb(total, j) * x ** j * (1 - x) ** (total - j)
                     for j in range(m, total + 1)))


def _student_integrated(t, freedom, steps=4000):
    """Simpson's rule over the density."""
    scale = math.exp(math.lgamma((freedom + 1) / 2) - math.lgamma(freedom / 2))
    scale /= math.sqrt(freedom * math.pi)
    h = t / steps
    total = 0.0
    for i in range(steps + 1):
        weight = 1 if i in (0, steps) else (4 if i % 2 else 2)
        total += weight * (1.0 + (i * h) ** 2 / freedom) ** (-(freedom + 1) / 2)
    return 2.0 * scale * total * h / 3.0


def _band_roots(line, level, share=0.90):
    """Both edges at once: (a + b x - level)^2 = (t s)^2 (1 + 1/n + u^2)."""
    spread = student_quantile_two_sided(share, line.count - 2) * line.residual
    a = line.mean_y - level
    floor = 1.0 + 1.0 / line.count
    p = line.slope ** 2 - spread ** 2 / line.sxx
    q = 2.0 * a * line.slope
    r = a * a - spread ** 2 * floor
    root = math.sqrt(q * q - 4.0 * p * r)
    return sorted(line.mean_x + (-q + sign * root) / (2.0 * p) for sign in (-1, 1))


def self_check():
    """Prints each check with what it found; returns 0 if all hold."""
    failed = 0

    def check(what, found, expected, slack):
        nonlocal failed
        good = abs(found - expected) <= slack
        failed += not good
        print(f"{'ok  ' if good else 'FAIL'} {what}: {found!r} against {expected!r}")

    for celsius, value in ((0, 14.621), (10, 11.288), (20, 9.092), (30, 7.559), (40, 6.413)):
        check(f"oxygen at {celsius}", saturation_mg_per_litre(celsius), value, 6e-4)
    check("uptake, closed form and integrated", max(_uptake_errors()), 0.0, 1e-8)

    check("whole scenarios, both ways", max(_scenario_errors()), 0.0, 1e-8)

    c_sat = dissolved_oxygen(0.49)
    full, half = 6 * 30.4375, 2 * 30.4375
    limit, life = standing_limits(full, half, c_sat)
    print(f"     limit {limit!r} mmol/L, life {life!r} days")
    for days, volume, openings in ((full, 1000.0, 1), (half, 515.0, 2)):
        check(f"reference bottle {volume}", reference_uptake(days, volume, c_sat, openings)
              / limit + days / life, 1.0, 1e-12)

    for x, m, n in ((0.3, 4, 3), (0.05, 40, 21), (0.9, 1, 1), (0.72, 25, 60)):
        check(f"I_{x}({m},{n})", incomplete_beta(x, m, n),
              _incomplete_beta_exact(x, m, n), 1e-13)
        y = beta_quantile(0.1, m, n)
        check("  its quantile", incomplete_beta(y, m, n), 0.1, 1e-13)
    check("half by symmetry", incomplete_beta(8 / 16, 7, 7), 0.5, 1e-14)

    for freedom in (1, 2, 3, 4, 5, 9, 12):
        t = student_quantile_two_sided(0.9, freedom)
        check(f"Student's t, {freedom}", _student_integrated(t, freedom), 0.9, 1e-9)
        check("  the sum", student_two_sided(t, freedom), 0.9, 1e-13)
    for freedom, t in ((1, 6.313751515), (2, 2.91998558), (4, 2.131846786)):
        check(f"tabulated t, {freedom}", student_quantile_two_sided(0.9, freedom), t, 1e-8)

    line = Line([(0.5, 61.0), (3.0, 72.0), (6.0, 84.5), (9.0, 96.0), (12.0, 110.5)])
    low, high = _band_roots(line, 122.0)
    check("lower end of the band", line.rising_crossing(122.0, +1), low, 1e-10)
    check("upper end of the band", line.rising_crossing(122.0, -1), high, 1e-10)
    for module in (reading_worked, reading_properties):
        for group in module.CHECKS:
            print(f"--- {group.__name__}: {(group.__doc__ or '').strip().splitlines()[0]}"
                  if group.__doc__ else f"--- {group.__name__}")
            group(check)
    print("all good" if not failed else f"{failed} failed")
    return 1 if failed else 0
