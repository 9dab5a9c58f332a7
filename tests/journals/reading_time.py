"""The development time of the next load: base, carried by temperature, wear and strip."""

import math

from reading_fields import Refused
from reading_report import films_left, report_one, wear_factor

DEFAULT_Q10 = 1.9
# A single pair is carried with the range of what is published for its kind of developer.
Q10_RANGE = {"metol-hydroquinone": (1.5, 3.0), "phenidone-ascorbate": (2.3, 3.0)}
USUAL_C = (18.0, 24.0)
POSSIBLE_C = (13.0, 30.0)        # hydroquinone is inert near the lower one


def base_time(pairs, celsius, q10=DEFAULT_Q10):
    """(seconds, warnings) at that temperature from the film maker's (celsius, seconds)."""
    pairs = sorted(pairs)
    coldest, warmest = pairs[0][0], pairs[-1][0]
    covered = coldest <= celsius <= warmest
    if not covered and not POSSIBLE_C[0] <= celsius <= POSSIBLE_C[1]:
        raise Refused(0, "temperature", "no pair covers it")
    warnings = []
    if not USUAL_C[0] <= celsius <= USUAL_C[1]:
        warnings.append("outside-usual-range")
    if covered:
        for (t0, s0), (t1, s1) in zip(pairs, pairs[1:]):
            if t0 <= celsius <= t1:
                share = (celsius - t0) / (t1 - t0)
                return math.exp((1.0 - share) * math.log(s0) + share * math.log(s1)), warnings
        return float(pairs[0][1]), warnings
    warnings.append("extrapolated")
    t0, s0 = min(pairs, key=lambda pair: abs(pair[0] - celsius))
    return s0 * q10 ** ((t0 - celsius) / 10.0), warnings


def carried_range(pair, celsius, q10_range):
    """The shortest and the longest time that one pair stands for at another temperature."""
    times = [base_time([pair], celsius, q10)[0] for q10 in q10_range]
    return min(times), max(times)


def next_time(batch, pairs, celsius, films=1.0):
    """What `ullage time --json` says of a folded batch."""
    base, warnings = base_time(pairs, celsius, batch.solution.get("q10", DEFAULT_Q10))
    wear = wear_factor(batch.solution["wear"], batch.wear)
    left = films_left(batch)
    if left is not None and left + 1e-9 < films:
        warnings.append("not-enough-films-left")
    verdict = report_one(batch)["verdict"]
    if verdict in ("discard", "test-first"):
        warnings.append(verdict)
    return {"base_s": base, "wear": wear, "strip": batch.strip_factor,
            "temperature_c": celsius, "seconds": base * wear * batch.strip_factor,
            "warnings": warnings}


def stock_for(total_ml, parts_of_water):
    """How much stock a dilution 1+n takes."""
    return total_ml / (parts_of_water + 1.0)
