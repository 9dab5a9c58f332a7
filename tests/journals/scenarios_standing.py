"""Scenarios about air, age, bottles and keeping."""

from scenario_kit import SIX_MONTHS, Journal, fixer, save, solution, vessel


def make():
    for one in (materials, overrides, squeezed, stored_at, stood_open, keeping_figures,
                month_ends, last_rise, last_rise_by_event, split_wait, brim_full):
        one()


def materials():
    names = ("glass", "pet", "hdpe", "ldpe", "pp")
    j = Journal(solution("mq"), *(vessel(name, 1030, name) for name in names))
    for name in names:
        j.mix("full-" + name, "2024-01-10", "mq", name, 1000)
        j.mix("half-" + name, "2024-01-10", "mq", name, 515)
    save("materials", j, "2024-01-10T18:00", "2024-01-25", "2024-03-20", "2024-07-20")


def overrides():
    j = Journal(
        solution("mq"),
        vessel("thick", 1030, "pet", wall_mm=0.8),
        vessel("tight", 1030, "pet", permeability=1.2),
        vessel("both", 500, "hdpe", wall_mm=1.2, permeability=39),
        vessel("loose", 1030, "glass", cap_cm3_day=0.25),
        vessel("sealed", 1030, "glass", cap_cm3_day=0),
        vessel("all", 5000, "ldpe", wall_mm=2, permeability=118, cap_cm3_day=0.1),
        vessel("proof", 1030, "pp", permeability=0))
    for name, volume in (("thick", 900), ("tight", 900), ("both", 400), ("loose", 900),
                         ("sealed", 900), ("all", 3700), ("proof", 900)):
        j.mix("in-" + name, "2024-01-10", "mq", name, volume)
    save("overrides", j, "2024-02-10", "2024-05-30")


def squeezed():
    j = Journal(solution("mq"), vessel(), vessel("soft", 1000, "pet", True),
                vessel("softer", 1000, "ldpe", True))
    j.mix("soft", "2024-01-10", "mq", "soft", 600)
    j.process("soft", "2024-01-20", ("120", 1), lost_ml=40)
    j.mix("softer", "2024-01-10", "mq", "softer", 600)
    j.mix("marbles", "2024-01-10", "mq", "b1", 500, air_ml=25)
    j.mix("rigid-again", "2024-01-10", "mq", "b1", 500, air_ml=25)
    j.event("opened", "rigid-again", "2024-01-20")
    j.mix("too-much-said", "2024-01-10", "mq", "b1", 900, air_ml=400)
    j.mix("a-bubble", "2024-01-10", "mq", "b1", 900, air_ml=0.4)
    j.mix("just-air", "2024-01-10", "mq", "b1", 900, air_ml=0.5)
    j.process("marbles", "2024-01-25", ("120", 1), used_ml=400, lost_ml=20, air_ml=60)
    save("squeezed-and-air-left", j, "2024-02-15", "2024-01-10T20:00", "2024-04-30")


def stored_at():
    j = Journal(solution("mq"), vessel())
    for celsius in (0, 5, 20, 30, 38.5, 45):
        j.mix(f"at-{celsius}", "2024-01-10", "mq", volume=950)
        j.event("stored-at", f"at-{celsius}", "2024-01-11", temperature_c=celsius)
    j.mix("there-and-back", "2024-01-10", "mq", volume=950)
    j.event("stored-at", "there-and-back", "2024-01-20", temperature_c=33)
    j.event("stored-at", "there-and-back", "2024-01-27", temperature_c=20)
    save("stored-at", j, "2024-02-05", "2024-01-22", "2024-03-12")


def stood_open():
    j = Journal(solution("mq"), vessel())
    j.mix("tray", "2024-01-10", "mq")
    j.event("stood-open", "tray", "2024-01-11", hours=24, area_cm2=516.13)
    j.mix("evening", "2024-01-10", "mq")
    for day in (11, 14, 18):
        j.event("stood-open", "evening", f"2024-01-{day}T22:00", hours=2.5, area_cm2=500)
    j.mix("beaker", "2024-01-10", "mq")
    j.event("stood-open", "beaker", "2024-01-11", hours=24, area_cm2=64, air_ml=10)
    save("stood-open", j, "2024-01-20")


def keeping_figures():
    j = Journal(
        solution("days-45", keeping={"full_days": 45}),
        solution("days-45-half-20", keeping={"full_days": 45, "half_days": 20}),
        solution("no-half", keeping={"full_days": SIX_MONTHS}),
        solution("one-month", keeping={"full_days": 30.4375, "half_days": 14}),
        solution("a-year", keeping={"full_days": 365.25, "half_days": 91.3125}),
        solution("half-a-day", keeping={"full_days": 20.5, "half_days": 9}),
        solution("no-keeping", drop=["keeping"]), vessel())
    for kind in ("days-45", "days-45-half-20", "no-half", "one-month", "a-year", "half-a-day",
                 "no-keeping"):
        j.mix("of-" + kind, "2024-01-31T15:45", kind, volume=980)
        j.process("of-" + kind, "2024-02-03", ("120", 1), used_ml=500, lost_ml=5)
    save("keeping-figures", j, "2024-02-10", "2024-02-21", "2024-03-16T15:45", "2024-03-20")


def month_ends():
    j = Journal(solution("six", keeping={"full_days": SIX_MONTHS}),
                solution("three", keeping={"full_days": 91.3125}),
                solution("year", keeping={"full_days": 365.25}), vessel())
    for batch, kind, at in (("to-29-feb", "six", "2023-08-31T10:00"),
                            ("to-28-feb", "six", "2024-08-31T10:00"),
                            ("before-midnight", "six", "2023-08-30T23:59"),
                            ("local-september", "six", "2023-09-01T00:30:00+02:00"),
                            ("to-30-june", "three", "2024-03-31T10:00"),
                            ("leap-day", "year", "2024-02-29T10:00"),
                            ("over-new-year", "three", "2023-11-30T06:00")):
        j.mix(batch, at, kind)
    for batch in ("to-29-feb", "to-28-feb", "local-september", "to-30-june"):
        j.event("noted", batch, "2024-09-01", text="still there")
    save("month-ends", j, "2024-02-29T09:59", "2024-02-29T10:00", "2024-02-29T10:01",
         "2025-02-28T10:01", "2024-09-02")


def last_rise():
    """Spent, freshened below one, spent again: the last rise counts."""
    j = Journal(solution("mq"), vessel("b1", 1030, "ldpe"))
    j.mix("d", "2024-01-10", "mq", volume=500)
    j.top_up("d", "2024-02-20", 480)
    j.event("noted", "d", "2024-02-21", text="half of it is fresh")
    save("last-rise", j, "2024-02-19", "2024-02-21", "2024-03-20", "2024-05-01")


def last_rise_by_event():
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10", "mq", volume=600)
    j.event("stood-open", "d", "2024-01-15T21:00", hours=16, area_cm2=516.13)
    j.top_up("d", "2024-01-16", 350)
    j.event("stood-open", "d", "2024-01-18T20:00", hours=14, area_cm2=516.13)
    j.event("stood-open", "d", "2024-01-19T20:00", hours=4, area_cm2=516.13)
    save("last-rise-by-event", j, "2024-01-15T22:00", "2024-01-17", "2024-01-20")


def split_wait():
    """Events that do not open the bottle change nothing in the air."""
    j = Journal(solution("mq"), vessel("b1", 1030, "pet"))
    j.mix("whole", "2024-01-10", "mq", volume=600)
    j.mix("split", "2024-01-10", "mq", volume=600)
    for day in range(11, 30):
        j.event("noted", "split", f"2024-01-{day}T07:13", text="a look at the label")
    j.event("looked", "split", "2024-01-30", passed=True, why="colour")
    j.event("dissolved", "split", "2024-01-10T10:30")
    save("split-wait", j, "2024-03-01")


def brim_full():
    j = Journal(solution("mq"), fixer(), vessel("b1", 1000), vessel("b2", 1000, "hdpe"))
    j.mix("brim", "2024-01-10", "mq", "b1", 1000)
    j.mix("brim-plastic", "2024-01-10", "mq", "b2", 1000)
    j.mix("nearly", "2024-01-10", "mq", "b1", 999.7)
    j.process("brim", "2024-01-20", ("120", 1), lost_ml=0.25)
    j.top_up("brim", "2024-01-21", 0.25)
    save("brim-full", j, "2024-02-10", "2024-01-20T20:00", "2024-07-01")
