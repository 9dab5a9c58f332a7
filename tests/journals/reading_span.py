"""How sure a date is: the constants drawn from their ranges, calibrated anew each time."""

import random

from reading_fold import Shelf
from reading_model import MONTH_DAYS, PLAIN, Air, in_months
from reading_report import discard_instant, has_date

DRAWS = 200
RANGES = {"k_bottle": (1.0, 3.0), "k_tray": (3.0, 15.0), "cap": (0.01, 0.25),
          "ageing_kelvin": (9620.0, 11500.0)}
PERMEABILITY = {"pet": (1.2, 2.4), "hdpe": (39.0, 98.0), "ldpe": (118.0, 236.0),
                "pp": (59.0, 98.0)}
OPENINGS = (1, 2, 3, 4)


def _column(chance):
    """One axis of a Latin hypercube: each of the equal slices once, in a drawn order."""
    places = [(k + chance.random()) / DRAWS for k in range(DRAWS)]
    chance.shuffle(places)
    return places


def _between(low, high, share):
    return low * (high / low) ** share


def draws(keeping, seed):
    """The constants of each draw; `keeping` is the solution's own published pair."""
    chance = random.Random(seed)
    columns = {name: _column(chance) for name in (*RANGES, "walls", "openings", "full", "half")}
    rounding = 0.5 * MONTH_DAYS
    for k in range(DRAWS):
        share = {name: column[k] for name, column in columns.items()}
        shifts = {}
        for name, field in (("full", "full_days"), ("half", "half_days")):
            given = keeping.get(field)
            if given is not None and in_months(given):
                shifts[name + "_shift"] = _between(given - rounding, given + rounding,
                                                   share[name]) - given
        walls = {"glass": 0.0, **{name: _between(*ends, share["walls"])
                                  for name, ends in PERMEABILITY.items()}}
        yield Air(**{name: _between(*ends, share[name]) for name, ends in RANGES.items()},
                  permeability=walls, **shifts,
                  half_openings=OPENINGS[int(share["openings"] * len(OPENINGS))])


def quantile(values, share):
    """By linear interpolation between the sorted values."""
    ordered = sorted(values)
    place = share * (len(ordered) - 1)
    k = min(int(place), len(ordered) - 2)
    return ordered[k] + (place - k) * (ordered[k + 1] - ordered[k])


def discard_span(book, batch_id, at, seed=1):
    """(early, plain, late) instants to discard a batch by: the 10 and 90 % quantiles."""
    batch = Shelf(book, at, PLAIN).batches[batch_id]
    if not has_date(batch):
        return None
    found = [discard_instant(Shelf(book, at, air).batches[batch_id])
             for air in draws(batch.solution["keeping"], seed)]
    return quantile(found, 0.1), discard_instant(batch), quantile(found, 0.9)
