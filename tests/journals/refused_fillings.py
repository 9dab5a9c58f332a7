"""Bottles filled from bottles in ways that have to be refused."""

from refused_journals import FIRST_LINE, base
from scenario_kit import save_refused

NEXT = FIRST_LINE + 1            # the line after a second bottle was mixed


def bottles(kind="mq", version=2, at="2024-01-11", volume=800):
    """The base and a second bottle: eight lines."""
    j = base(version)
    j.mix("e", at, kind, "b2", volume)
    return j


def make():
    halves()
    wrong_partners()
    not_there()
    too_much()
    replenishing()


def halves():
    j = bottles()
    j.event("drawn", "e", "2024-01-12", volume_ml=10, why="to top up", to="d")
    save_refused("half-a-filling-drawn", j.raw(), NEXT, "to")
    j = bottles()
    j.top_up("d", "2024-01-12", 10, **{"from": "e"})
    save_refused("half-a-filling-filled", j.raw(), NEXT, "from")
    j = bottles()
    j.mix("f", "2024-01-12", "mq", "small", 300, **{"from": "e"})
    save_refused("half-a-filling-decanted", j.raw(), NEXT, "from")
    j = bottles()
    j.event("drawn", "e", "2024-01-12", volume_ml=10, why="to top up", to="d")
    j.top_up("d", "2024-01-12", 11, **{"from": "e"})
    save_refused("halves-of-two-volumes", j.raw(), NEXT, "to")
    j = bottles()
    j.event("drawn", "e", "2024-01-12", volume_ml=10, why="to top up", to="d")
    j.top_up("d", "2024-01-12T10:01", 10, **{"from": "e"})
    save_refused("halves-at-two-times", j.raw(), NEXT, "to")
    j = bottles()
    j.fill("e", "d", "2024-01-12", 10)
    j.event("drawn", "e", "2024-01-12", volume_ml=10, why="to top up", to="d")
    save_refused("three-halves", j.raw(), NEXT + 2, "to")


def wrong_partners():
    j = bottles()
    j.event("drawn", "d", "2024-01-12", volume_ml=10, why="to top up", to="d")
    save_refused("drawn-into-itself", j.raw(), NEXT, "to")
    j = bottles()
    j.top_up("d", "2024-01-12", 10, **{"from": "d"})
    save_refused("topped-up-from-itself", j.raw(), NEXT, "from")
    j = bottles("fix")
    j.fill("e", "d", "2024-01-12", 10)
    save_refused("filled-from-another-role", j.raw(), NEXT, "to")
    j = base(1)
    j.mix("e", "2024-01-11", "fix", "b2", 800)
    j.top_up("d", "2024-01-12", 10, **{"from": "e"})
    save_refused("topped-up-from-another-role", j.raw(), NEXT, "from")
    j = bottles()
    j.mix("f", "2024-01-12", "fix", "small", 300, **{"from": "e"})
    save_refused("decanted-as-another-solution", j.raw(), NEXT, "from")
    j = bottles()
    j.event("drawn", "e", "2024-01-12", volume_ml=10, why="to top up", to="nobody")
    save_refused("drawn-into-unknown", j.raw(), NEXT, "to")


def not_there():
    j = bottles(version=1, at="2024-01-20")
    j.top_up("d", "2024-01-12", 10, **{"from": "e"})
    save_refused("donor-mixed-later", j.raw(), NEXT, "from")
    j = bottles(version=1)
    j.event("discarded", "e", "2024-01-12", how="to the drum")
    j.top_up("d", "2024-01-13", 10, **{"from": "e"})
    save_refused("donor-discarded", j.raw(), NEXT + 1, "from")
    j = bottles()
    j.event("discarded", "e", "2024-01-12", how="to the drum")
    j.event("drawn", "d", "2024-01-13", volume_ml=10, why="to top up", to="e")
    j.top_up("e", "2024-01-13", 10, **{"from": "d"})
    save_refused("heir-discarded", j.raw(), NEXT + 1, "to")
    j = bottles(at="2024-01-20")
    j.event("drawn", "d", "2024-01-13", volume_ml=10, why="to top up", to="e")
    save_refused("heir-mixed-later", j.raw(), NEXT, "to")


def too_much():
    j = bottles()
    j.fill("e", "d", "2024-01-12", 31)
    save_refused("filled-over-capacity", j.raw(), NEXT + 1, "volume_ml")
    j = bottles()
    j.decant("e", "f", "2024-01-12", 521, "small")
    save_refused("decanted-into-too-small", j.raw(), NEXT + 1, "volume_ml")
    j = bottles()
    j.decant("e", "f", "2024-01-12", 801, "b2")
    save_refused("decanted-more-than-there", j.raw(), NEXT, "volume_ml")


def replenishing():
    j = base(2)
    j.top_up("d", "2024-01-12", 10, solution="fix")
    save_refused("not-its-replenisher", j.raw(), FIRST_LINE, "solution")
    j = base(2)
    j.top_up("d", "2024-01-12", 10, solution="nothing")
    save_refused("replenisher-of-no-solution", j.raw(), FIRST_LINE, "solution")
    j = bottles()
    j.event("drawn", "e", "2024-01-12", volume_ml=10, why="to top up", to="d")
    j.top_up("d", "2024-01-12", 10, solution="mq", **{"from": "e"})
    save_refused("from-and-solution", j.raw(), NEXT + 1, "solution")
