"""Dilutions, hydrates, warm water and washes, as the chemistry document states them."""

import math

WATER = ((10.0, 999.70), (20.0, 998.21), (30.0, 995.65), (40.0, 992.22), (50.0, 988.05))


def parts_by_weight(strong, weak):
    """(parts of the strong one, parts of water) by weight, for percent by weight."""
    return weak, strong - weak


def strength_by_weight(strong, parts, water):
    """Percent by weight of so many parts of the strong one in so much water."""
    return strong * parts / (parts + water)


def volume_of_strong(volume, strong, strong_density, weak, weak_density):
    """How much of the strong one makes a volume of the weak one; percent by weight, g/mL."""
    return volume * weak * weak_density / (strong * strong_density)


def water_density(celsius):
    """kg/m3, straight between the tabulated temperatures."""
    for (t0, d0), (t1, d1) in zip(WATER, WATER[1:]):
        if t0 <= celsius <= t1:
            return d0 + (d1 - d0) * (celsius - t0) / (t1 - t0)
    raise ValueError(celsius)


def hot_volume(volume, celsius, cold, hot):
    """Millilitres of hot water in a blend of that volume and temperature."""
    mass = volume * water_density(celsius)
    return mass * (celsius - cold) / (hot - cold) / water_density(hot)


def warmed(start, bath, minutes, litres=1.0, tau=7.0):
    """Temperature of a bottle after standing in a stirred bath."""
    return bath + (start - bath) * math.exp(-minutes / (tau * litres ** (1.0 / 3.0)))


def tau_of(minutes, bath, first, second):
    """The time constant that two readings of the thermometer give."""
    return minutes / math.log((bath - first) / (bath - second))


def starting_volume(total, vessel, sulfite_g=0.0, thiosulfate_g=0.0, share=0.75):
    """Water to start with: a share of the whole, and room for the powder."""
    displaced = 0.11 * sulfite_g + 0.5 * thiosulfate_g
    return min(share * total, vessel - displaced - 0.05 * vessel)


def left_after_dumps(kept, filled, times):
    """Share of what was in the film after filling and dumping so often."""
    return (kept / (filled + kept)) ** times
