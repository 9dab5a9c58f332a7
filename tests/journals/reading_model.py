"""Air and age in a closed bottle, as the chemistry document states them."""

import math

from reading_maths import bisect

AIR_MMOL_PER_ML = 8.508e-3       # oxygen in the air of the bottle
K_BOTTLE = 2.0                   # cm/h
K_TRAY = 7.0                     # cm/h
MOLAR_VOLUME = 22.414            # cm3 per mmol
OXYGEN_SHARE = 0.2095
AGEING_KELVIN = 10560.0
DEFAULT_CAP = 0.05               # cm3 a day
DEFAULT_LIMIT = 13.0             # mmol/L where only the full bottle is published
DEFAULT_OXYGEN_FACTOR = 0.49
PERMEABILITY = {"glass": 0.0, "pet": 1.8, "hdpe": 73.0, "ldpe": 197.0, "pp": 94.0}
WALL_MM = {"glass": 1.0, "pet": 0.30, "hdpe": 0.9, "ldpe": 1.0, "pp": 1.0}
# Glass has no published wall: its permeability is nought, so any wall serves.


def saturation_mg_per_litre(celsius):
    """Oxygen in fresh water in equilibrium with air."""
    t = celsius + 273.15
    return math.exp(-139.34411 + 1.575701e5 / t - 6.642308e7 / t ** 2
                    + 1.243800e10 / t ** 3 - 8.621949e11 / t ** 4)


def dissolved_oxygen(oxygen_factor):
    """C_sat of a solution, mmol/L."""
    return saturation_mg_per_litre(20.0) / 31.998 * oxygen_factor


def ageing_rate(celsius):
    """How much faster than at 20 degrees a solution ages without air."""
    return math.exp(-AGEING_KELVIN * (1.0 / (celsius + 273.15) - 1.0 / 293.15))


class Vessel:
    """A bottle's walls, cap and surface."""

    def __init__(self, capacity_ml, material="glass", wall_mm=None,
                 permeability=None, cap_cm3_day=None, squeezed=False):
        self.capacity = capacity_ml
        self.squeezed = squeezed
        wall = WALL_MM[material] if wall_mm is None else wall_mm
        through = PERMEABILITY[material] if permeability is None else permeability
        cap = DEFAULT_CAP if cap_cm3_day is None else cap_cm3_day
        size = (capacity_ml / 1000.0) ** (2.0 / 3.0)
        wall_m2 = 620.0 * size * 1e-4
        self.surface = 64.0 * size
        self.q_wall = through * wall_m2 * OXYGEN_SHARE / wall / MOLAR_VOLUME
        self.q_cap = cap / MOLAR_VOLUME


class Closed:
    """A bottle left alone: fixed volumes, from a known oxygen in its air."""

    def __init__(self, vessel, volume, air_ml, c_sat):
        wet = min(1.0, volume / vessel.capacity)
        self.volume = volume
        self.q_wet = wet * vessel.q_wall
        self.q_head = (1.0 - wet) * vessel.q_wall + vessel.q_cap
        self.airless = air_ml < 0.5
        if not self.airless:
            # Solubility as a plain ratio: both concentrations per millilitre.
            solubility = c_sat / 1000.0 / AIR_MMOL_PER_ML
            self.tau = air_ml / (24.0 * K_BOTTLE * vessel.surface * solubility)
            self.full_air = AIR_MMOL_PER_ML * air_ml
            self.rate = 1.0 / self.tau + self.q_head / self.full_air
            self.level = self.q_head / self.rate

    def taken_up(self, n, days):
        """Oxygen taken up by the solution in that time, mmol."""
        if self.airless:
            return (self.q_wet + self.q_head) * days
        swept = -math.expm1(-self.rate * days) / self.rate
        return self.q_wet * days + (self.level * days
                                    + (n - self.level) * swept) / self.tau

    def air_after(self, n, days):
        """Oxygen left in the air of the bottle, mmol."""
        if self.airless:
            return n
        return self.level + (n - self.level) * math.exp(-self.rate * days)

    def integrated(self, n, days, steps):
        """The same two by a fixed-step fourth-order integration of the two
        balances themselves, for the self-check."""
        def slope(air):
            into_solution = air / self.tau
            return (self.q_head * (1.0 - air / self.full_air) - into_solution,
                    self.q_wet + into_solution)

        taken, h = 0.0, days / steps
        for _ in range(steps):
            a1, b1 = slope(n)
            a2, b2 = slope(n + 0.5 * h * a1)
            a3, b3 = slope(n + 0.5 * h * a2)
            a4, b4 = slope(n + h * a3)
            n += h * (a1 + 2 * a2 + 2 * a3 + a4) / 6.0
            taken += h * (b1 + 2 * b2 + 2 * b3 + b4) / 6.0
        return taken, n


def reference_uptake(days, volume, c_sat):
    """mmol/L in the glass reference bottle, opened once, after that time."""
    air = 1030.0 - volume
    closed = Closed(Vessel(1030.0), volume, air, c_sat)
    return c_sat + closed.taken_up(AIR_MMOL_PER_ML * air, days) / (volume / 1000.0)


def standing_limits(full_days, half_days, c_sat):
    """(N_c, L0) that spend the reference bottle at its published times."""
    full = reference_uptake(full_days, 1000.0, c_sat)
    if half_days is None:
        return DEFAULT_LIMIT, full_days / (1.0 - full / DEFAULT_LIMIT)
    half = reference_uptake(half_days, 515.0, c_sat)
    # Two equations, linear in 1/N_c and 1/L0, by Cramer's rule.
    determinant = full * half_days - half * full_days
    per_limit = (half_days - full_days) / determinant
    per_life = (full - half) / determinant
    return 1.0 / per_limit, 1.0 / per_life


def days_until(function, longest):
    """First time an increasing function of days reaches nought, or None."""
    if longest <= 0.0 or function(longest) < 0.0:
        return None
    return bisect(function, 0.0, longest)
