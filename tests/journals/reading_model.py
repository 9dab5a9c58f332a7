"""Air and age in a closed bottle, as the chemistry document states them."""

import math
from dataclasses import dataclass, field

from reading_maths import bisect

AIR_MMOL_PER_ML = 8.508e-3       # oxygen in the air of the bottle
MOLAR_VOLUME = 22.414            # cm3 per mmol
OXYGEN_SHARE = 0.2095
WALL_KELVIN = 3765.0             # how permeation through a wall falls in the cold
DEFAULT_LIMIT = 24.0             # mmol/L where only the full bottle is published
DEFAULT_OXYGEN_FACTOR = 0.49
TRAY_CM2 = 516.13                # the tray that published open-tray times are for
WALL_MM = {"glass": 1.0, "pet": 0.30, "hdpe": 0.9, "ldpe": 1.0, "pp": 1.0}
# Glass has no published wall: its permeability is nought, so any wall serves.
MONTH_DAYS = 30.4375


@dataclass(frozen=True)
class Air:
    """The constants that a date's range varies, at their plain values."""

    k_bottle: float = 2.0            # cm/h
    k_tray: float = 7.0              # cm/h, without a published tray time
    cap: float = 0.05                # cm3 a day
    ageing_kelvin: float = 10560.0
    permeability: dict = field(default_factory=lambda: {
        "glass": 0.0, "pet": 1.8, "hdpe": 73.0, "ldpe": 197.0, "pp": 94.0})
    half_openings: int = 2           # of the half-full reference bottle, in all
    full_shift: float = 0.0          # days added to a keeping time given in months
    half_shift: float = 0.0


PLAIN = Air()


def in_months(days):
    """How many months a keeping time means, or None where it is not a whole number."""
    months = round(days / MONTH_DAYS)
    return months if months >= 1 and abs(days / MONTH_DAYS - months) <= 1e-6 else None


def saturation_mg_per_litre(celsius):
    """Oxygen in fresh water in equilibrium with air."""
    t = celsius + 273.15
    return math.exp(-139.34411 + 1.575701e5 / t - 6.642308e7 / t ** 2
                    + 1.243800e10 / t ** 3 - 8.621949e11 / t ** 4)


def dissolved_oxygen(oxygen_factor):
    """C_sat of a solution, mmol/L."""
    return saturation_mg_per_litre(20.0) / 31.998 * oxygen_factor


def ageing_rate(celsius, air=PLAIN):
    """How much faster than at 20 degrees a developer ages without air."""
    return math.exp(-air.ageing_kelvin * (1.0 / (celsius + 273.15) - 1.0 / 293.15))


def wall_share(celsius):
    """What a wall lets through, as a share of what it does at 25 degrees."""
    return math.exp(-WALL_KELVIN * (1.0 / (celsius + 273.15) - 1.0 / 298.15))


class Vessel:
    """A bottle's walls, cap and surface."""

    def __init__(self, capacity_ml, material="glass", wall_mm=None, permeability=None,
                 cap_cm3_day=None, squeezed=False, air=PLAIN):
        self.capacity = capacity_ml
        self.squeezed = squeezed
        wall = WALL_MM[material] if wall_mm is None else wall_mm
        through = air.permeability[material] if permeability is None else permeability
        cap = air.cap if cap_cm3_day is None else cap_cm3_day
        size = (capacity_ml / 1000.0) ** (2.0 / 3.0)
        wall_m2 = 620.0 * size * 1e-4
        self.surface = 64.0 * size
        self.q_wall_at_25 = through * wall_m2 * OXYGEN_SHARE / wall / MOLAR_VOLUME
        self.q_cap = cap / MOLAR_VOLUME


class Closed:
    """A bottle left alone: fixed volumes and temperature, from a known oxygen in its air."""

    def __init__(self, vessel, volume, air_ml, c_sat, celsius=20.0, air=PLAIN):
        wet = min(1.0, volume / vessel.capacity)
        q_wall = vessel.q_wall_at_25 * wall_share(celsius)
        self.volume = volume
        self.q_wet = wet * q_wall
        self.q_head = (1.0 - wet) * q_wall + vessel.q_cap
        self.airless = air_ml < 0.5
        if not self.airless:
            # Solubility as a plain ratio: both concentrations per millilitre.
            solubility = c_sat / 1000.0 / AIR_MMOL_PER_ML
            self.tau = air_ml / (24.0 * air.k_bottle * vessel.surface * solubility)
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
        def slope(oxygen):
            into_solution = oxygen / self.tau
            return (self.q_head * (1.0 - oxygen / self.full_air) - into_solution,
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


def reference_uptake(days, volume, c_sat, openings=1, air=PLAIN):
    """mmol/L in the glass reference bottle after that time, opened when it was filled and
    then at equal intervals."""
    vessel = Vessel(1030.0, air=air)
    room = 1030.0 - volume
    closed = Closed(vessel, volume, room, c_sat, air=air)
    once = closed.taken_up(AIR_MMOL_PER_ML * room, days / openings)
    return c_sat + openings * once / (volume / 1000.0)


def standing_limits(full_days, half_days, c_sat, developer=True, air=PLAIN):
    """(N_c, L0) that spend the reference bottle at its published times; N_c is None where
    air does not count, L0 where age alone does not."""
    if half_days is None and not developer:
        return None, full_days
    full = reference_uptake(full_days, 1000.0, c_sat, air=air)
    if half_days is None:
        return DEFAULT_LIMIT, full_days / (1.0 - full / DEFAULT_LIMIT)
    half = reference_uptake(half_days, 515.0, c_sat, air.half_openings, air)
    if half <= full:
        # The half-full bottle took up less by its time than the full one by its own: no
        # positive pair of constants does both, so air alone has to spend the half-full one.
        return half, None
    # Two equations, linear in 1/N_c and 1/L0, by Cramer's rule.
    determinant = full * half_days - half * full_days
    per_limit = (half_days - full_days) / determinant
    per_life = (full - half) / determinant
    return 1.0 / per_limit, 1.0 / per_life


class Standing:
    """How one solution stands: what its published keeping figures make of air and age."""

    def __init__(self, solution, air=PLAIN):
        self.developer = solution["role"] == "developer"
        self.c_sat = dissolved_oxygen(solution.get("oxygen_factor", DEFAULT_OXYGEN_FACTOR))
        self.air = air
        keeping = solution.get("keeping")
        self.full_days = None if keeping is None else keeping["full_days"]
        self.limit = self.life = None
        self.k_tray = air.k_tray
        if keeping is None:
            return
        full, half = keeping["full_days"], keeping.get("half_days")
        self.limit, self.life = standing_limits(
            full + (air.full_shift if in_months(full) else 0.0),
            half if half is None or not in_months(half) else half + air.half_shift,
            self.c_sat, self.developer, air)
        if "tray_hours" in keeping and self.limit is not None:
            self.k_tray = ((self.limit - self.c_sat) * 1000.0
                           / (TRAY_CM2 * self.c_sat * keeping["tray_hours"]))

    def used(self, oxygen, age):
        """Standing used, or None where keeping is not published."""
        return None if self.full_days is None else self.air_part(oxygen) + age

    def air_part(self, oxygen):
        return 0.0 if self.limit is None else oxygen / self.limit

    def aged(self, days, celsius):
        """Share of life spent by age alone in that time."""
        if self.life is None:
            return 0.0
        rate = ageing_rate(celsius, self.air) if self.developer else 1.0
        return days * rate / self.life


def days_until(function, longest):
    """First time an increasing function of days reaches nought, or None."""
    if longest <= 0.0 or function(longest) < 0.0:
        return None
    return bisect(function, 0.0, longest)
