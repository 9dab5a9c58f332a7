"""Scenarios about fixers of version 2: films of a test, warmth, two baths, silver measured;
replenished developer; stop baths."""

from scenario_kit import SIX_MONTHS, Journal, fixer, save, solution, vessel


def make():
    for one in (tests_by_film, warm_tests, carried_on, kinds_of_fixer, calendar_instead_of_air,
                two_baths, three_exchanges, silver_measured, packet_time, replenished_year,
                replenished_to_nothing, turnovers, stop_by_indicator, filtered, cold_walls,
                near_the_calendar):
        one()


def tests_by_film():
    """Tests are compared within one film; today's is that of the film of the last test."""
    j = Journal(fixer(), fixer("known", fresh_clearing_s=55), vessel(), version=2)
    for kind in ("fix", "known"):
        j.mix(kind, "2024-01-01", kind)
        j.test(kind, "2024-01-02", 50, film="ordinary")
        j.test(kind, "2024-01-02T11:00", 95, film="flat grain")
        for day, (one, other) in enumerate(((55, 104), (61, 118), (64, 125)), 3):
            j.process(kind, f"2024-01-{day:02}", ("120", 3), used_ml=600)
            j.test(kind, f"2024-01-{day:02}T12:00", other, film="flat grain")
            j.test(kind, f"2024-01-{day:02}T13:00", one, film="ordinary")
        j.test(kind, "2024-01-06", 112, 19, film="slow")
        j.process(kind, "2024-01-07", ("120", 1), used_ml=600)
        j.test(kind, "2024-01-08", 130, 19, film="slow")
        j.test(kind, "2024-01-09", 66)
    j.mix("one-film-doubled", "2024-01-01", "fix")
    j.test("one-film-doubled", "2024-01-02", 50, film="ordinary")
    j.test("one-film-doubled", "2024-01-02T11:00", 60, film="flat grain")
    j.process("one-film-doubled", "2024-01-03", ("120", 4), used_ml=600)
    j.test("one-film-doubled", "2024-01-04", 121, film="flat grain")
    j.test("one-film-doubled", "2024-01-05", 58, film="ordinary")
    save("tests-by-film", j, "2024-01-02T12:00", "2024-01-05T14:00", "2024-01-08T12:00",
         "2024-01-10")


def warm_tests():
    """A warm test does not hide a spent bath, nor a cold one condemn a good one."""
    j = Journal(fixer(), vessel(), version=2)
    for batch, tests in (("warm", ((60, 20), (90, 26))), ("warm-doubled", ((60, 20), (84.9, 25))),
                         ("warm-fresh", ((40, 28), (110, 20))), ("cold", ((60, 20), (160, 12))),
                         ("cold-fresh", ((100, 13), (119, 20)))):
        j.mix(batch, "2024-01-01", "fix")
        j.test(batch, "2024-01-02", *tests[0])
        j.process(batch, "2024-01-03", ("120", 6), used_ml=600)
        j.test(batch, "2024-01-04", *tests[1])
    save("warm-and-cold-tests", j, "2024-01-02T12:00", "2024-01-05")


def carried_on():
    """From one test on, the clearing time doubles over the capacity; from three it is the
    larger of that and of the line."""
    j = Journal(fixer(), fixer("known", fresh_clearing_s=44), vessel(), vessel("big", 3000),
                version=2)
    j.mix("one-test", "2024-01-01", "fix")
    j.test("one-test", "2024-01-01T12:00", 50)
    j.mix("late-test", "2024-01-01", "fix")
    j.mix("late-but-known", "2024-01-01", "known")
    j.mix("thinned", "2024-01-01", "fix", "big", 1000)
    j.mix("steep", "2024-01-01", "fix")
    j.mix("flat", "2024-01-01", "fix")
    for day in range(2, 8):
        for batch in ("one-test", "late-test", "late-but-known", "thinned", "steep", "flat"):
            j.process(batch, f"2024-01-{day:02}", ("120", 1), used_ml=600)
        if day in (2, 4, 6):
            j.test("steep", f"2024-01-{day:02}T12:00", 44 + 5 * day)
            j.test("flat", f"2024-01-{day:02}T12:00", 50 + day / 4)
        if day == 4:
            for batch in ("late-test", "late-but-known", "thinned"):
                j.test(batch, "2024-01-04T12:00", 58, 19)
    j.top_up("thinned", "2024-01-08", 1500)
    save("clearing-carried-on", j, "2024-01-03", "2024-01-07T12:00", "2024-01-09")


def kinds_of_fixer():
    """Without a figure of its own an acid fixer does 20 films a litre, an alkaline one 25."""
    untold = {"drop": ["capacity_films_per_litre"]}
    kinds = {"acid": fixer("acid", fixer_kind="acid", **untold), "plain": fixer("plain", **untold),
             "alkaline": fixer("alkaline", fixer_kind="alkaline", **untold),
             "own": fixer("own", fixer_kind="alkaline", capacity_films_per_litre=12)}
    j = Journal(*kinds.values(), vessel(), version=2)
    for kind in kinds:
        j.mix(kind, "2024-01-01", kind)
        j.test(kind, "2024-01-01T12:00", 50)
        for day in range(2, 7):
            j.process(kind, f"2024-01-{day:02}", ("120", 4), used_ml=600)
    save("kinds-of-fixer", j, "2024-01-04T12:00", "2024-01-05T12:00", "2024-01-07")


def calendar_instead_of_air():
    """Anything but a developer keeps by the calendar, in the warm and half empty too."""
    j = Journal(fixer(), fixer("halved", keeping={"full_days": SIX_MONTHS, "half_days": 45,
                                                  "tray_hours": 30}),
                solution("stop", role="stop", rule="none", keeping={"full_days": 365.25}),
                solution("aid", role="wash-aid", rule="none",
                         keeping={"full_days": 91.3125, "tray_hours": 8}),
                vessel("soft", 1030, "ldpe"), version=2)
    for kind in ("fix", "halved", "stop", "aid"):
        j.mix(kind, "2024-01-31T09:00", kind, "soft", 500)
        j.event("stored-at", kind, "2024-02-01", temperature_c=31)
        j.event("stood-open", kind, "2024-02-02", hours=30, area_cm2=516.13)
    j.top_up("fix", "2024-03-01", 500)
    save("calendar-instead-of-air", j, "2024-02-03", "2024-03-30", "2024-03-31T09:00",
         "2024-03-31T10:00", "2024-04-30T09:01", "2025-02-01")


def two_baths():
    """The second bath feels a fifth of the films; when the first has doubled it moves up."""
    j = Journal(fixer(capacity_films_per_litre=8), vessel(), vessel("b2"), version=2)
    j.mix("first", "2024-01-01", "fix", "b1", name="Fix 1")
    j.mix("second", "2024-01-01T10:05", "fix", "b2", name="Fix 2")
    j.test("first", "2024-01-01T11:00", 50)
    for day in range(2, 8):
        run = f"run-{day}"
        j.process("first", f"2024-01-{day:02}", ("135-36", 1), ("4x5", 1), used_ml=600, lost_ml=5,
                  run=run)
        j.process("second", f"2024-01-{day:02}T10:05", ("135-36", 1), ("4x5", 1), used_ml=600,
                  second=True, run=run)
    j.test("first", "2024-01-08", 101)
    j.test("second", "2024-01-08T10:10", 54)
    j.event("discarded", "first", "2024-01-08T11:00", how="to the silver can")
    j.mix("third", "2024-01-08T11:30", "fix", "b1", name="Fix 3")
    j.process("second", "2024-01-09", ("135-36", 1), used_ml=600, run="run-9")
    j.process("third", "2024-01-09T10:05", ("135-36", 1), used_ml=600, second=True, run="run-9")
    save("two-baths", j, "2024-01-05", "2024-01-08T10:30", "2024-01-10", "2024-01-10+all")


def three_exchanges():
    """Second becomes first three times; nothing of a bath is forgotten as it moves up."""
    j = Journal(fixer(capacity_films_per_litre=10, silver_limit_g_per_litre=1.5,
                      bromide_mg_per_film=12), vessel(), version=2)
    j.mix("bath-0", "2024-01-01", "fix", volume=900)
    for turn in range(4):
        first, second = f"bath-{turn}", f"bath-{turn + 1}"
        j.mix(second, f"2024-01-{1 + 7 * turn:02}T10:30", "fix", volume=900)
        for day in range(2, 7):
            at = f"2024-01-{day + 7 * turn:02}"
            j.process(first, at, ("120", 2), used_ml=700, lost_ml=12)
            j.process(second, at + "T10:04", ("120", 2), used_ml=700, second=True)
        if turn < 3:
            j.event("discarded", first, f"2024-01-{7 + 7 * turn:02}", how="to the silver can")
    save("two-baths-exchanged", j, "2024-01-07T09:00", "2024-01-20", "2024-01-29+all")


def silver_measured():
    """What is measured replaces what was counted, and film adds to it again."""
    j = Journal(fixer(silver_limit_g_per_litre=1.5), vessel(), vessel("b2", 2000), version=2)
    j.mix("f", "2024-01-01", "fix")
    j.process("f", "2024-01-02", ("120", 7), used_ml=700)
    j.event("measured", "f", "2024-01-03", silver_g_per_litre=1.5, method="test paper")
    j.mix("g", "2024-01-01", "fix", "b2", 500)
    j.event("measured", "g", "2024-01-02", silver_g_per_litre=0, method="analysis", air_ml=20)
    j.process("f", "2024-01-04", ("120", 1), used_ml=700)
    j.fill("f", "g", "2024-01-05", 250)
    save("silver-measured", j, "2024-01-02T12:00", "2024-01-03T12:00", "2024-01-04T12:00",
         "2024-01-06")


def packet_time():
    """Never shorter than the packet says; flat grain and cold are the bench's affair."""
    j = Journal(fixer("slow", fix_min_s=180), fixer("quick", fix_min_s=60),
                fixer("flat", fix_min_s=120, tabular_factor=3), vessel(), version=2)
    for kind in ("slow", "quick", "flat"):
        j.mix(kind, "2024-01-01", kind)
        j.test(kind, "2024-01-01T12:00", 45, 21)
        j.process(kind, "2024-01-02", ("120", 9), used_ml=600)
    save("packet-fixing-time", j, "2024-01-01T12:00", "2024-01-03")


def replenished(**more):
    return solution("seasoned", replenisher="mq-r", replenish_ml_per_film=45,
                    capacity_films_per_litre=12, **more)


def replenished_year():
    """Topped up after each run, a bottle lives its year; its mixing date moves on."""
    j = Journal(solution("mq-r", percent=0), replenished(turnover_limit=3), vessel(), version=2)
    j.mix("d", "2024-01-01", "seasoned", name="Seasoned")
    for week in range(1, 49):
        month, day = 1 + (week - 1) // 4, 3 + 7 * ((week - 1) % 4)
        films = 1 + week % 3
        at = f"2024-{month:02}-{day:02}"
        j.process("d", at + "T18:00", ("135-36", films), used_ml=600, lost_ml=10)
        j.event("drawn", "d", at + "T18:30", volume_ml=40 * films - 10, why="overflow")
        j.top_up("d", at + "T18:31", 40 * films, solution="mq-r")
    save("replenished-for-a-year", j, "2024-01-04", "2024-03-20", "2024-07-20", "2024-12-28")


def replenished_to_nothing():
    """More replenisher than film takes wear to nought, never below; water or stock besides."""
    j = Journal(solution("mq-r"), replenished(), vessel("b1", 1500), version=2)
    j.mix("d", "2024-01-01", "seasoned")
    j.process("d", "2024-01-02", ("120", 2), used_ml=600, lost_ml=15)
    j.top_up("d", "2024-01-03", 60, solution="mq-r")
    j.top_up("d", "2024-01-04", 60, solution="mq-r")
    j.process("d", "2024-01-05", ("120", 1), used_ml=600)
    j.top_up("d", "2024-01-06", 100)
    save("replenished-to-nothing", j, "2024-01-03T12:00", "2024-01-04T12:00", "2024-01-07")


def turnovers():
    """Replenisher counts by the volume first mixed, each bottle for itself."""
    j = Journal(solution("mq-r"), replenished(turnover_limit=0.5), vessel("b1", 1500),
                vessel("small", 520), version=2)
    j.mix("d", "2024-01-01", "seasoned", volume=800)
    for day in range(2, 12):
        j.process("d", f"2024-01-{day:02}", ("120", 1), used_ml=600, lost_ml=40)
        j.top_up("d", f"2024-01-{day:02}T10:30", 40, solution="mq-r")
    j.decant("d", "e", "2024-01-12", 200, "small")
    j.top_up("d", "2024-01-13", 0.5, solution="mq-r")
    j.top_up("e", "2024-01-13", 100, solution="mq-r")
    save("turnovers", j, "2024-01-12T12:00", "2024-01-14")


def stop_by_indicator():
    j = Journal(solution("stop", role="stop", rule="none", bromide_mg_per_film=0,
                         drop=["keeping"], capacity_films_per_litre=15), vessel(), version=2)
    for batch in ("yellow", "purple", "purple-by-mistake"):
        j.mix(batch, "2024-01-01", "stop")
        j.process(batch, "2024-01-02", ("120", 4), used_ml=600)
    j.event("looked", "yellow", "2024-01-03", passed=True, why="yellow", what="indicator")
    j.event("looked", "purple", "2024-01-03", passed=False, why="purple", what="indicator")
    wrong = j.event("looked", "purple-by-mistake", "2024-01-03", passed=False, why="purple",
                    what="indicator")
    j.event("voided", "purple-by-mistake", "2024-01-04", voids=wrong, why="red light")
    save("stop-by-indicator", j, "2024-01-05")


def filtered():
    """A precipitate can be filtered, again and again; what else failed stays failed."""
    j = Journal(solution("mq"), vessel(), version=2)
    for batch, whats in (("needles", ("precipitate",)), ("needles-twice", ("precipitate",) * 2),
                         ("brown-too", ("precipitate", "colour")), ("unsaid", (None,))):
        j.mix(batch, "2024-01-01", "mq")
        for day, what in enumerate(whats, 3):
            j.event("looked", batch, f"2024-01-{day:02}", passed=False, why="a look",
                    **({} if what is None else {"what": what}))
        j.event("filtered", batch, "2024-01-06", air_ml=12)
    j.event("looked", "needles-twice", "2024-01-08", passed=False, why="again",
            what="precipitate")
    save("filtered", j, "2024-01-05", "2024-01-07", "2024-01-09")


def cold_walls():
    """Walls let through less in the cold and more in the warm; glass and cap do not change."""
    walls = ("glass", "pet", "hdpe", "ldpe", "pp")
    j = Journal(solution("mq"), *(vessel(wall, 1030, wall) for wall in walls), version=2)
    for wall in walls:
        for celsius in (4, 25, 33):
            batch = f"{wall}-at-{celsius}"
            j.mix(batch, "2024-01-10", "mq", wall, 800)
            j.event("stored-at", batch, "2024-01-10", temperature_c=celsius)
    save("walls-in-the-cold", j, "2024-01-30", "2024-03-10")


def near_the_calendar():
    """A model date less than two days before the calendar's is the calendar's."""
    j = Journal(solution("d45", keeping={"full_days": 45}),
                solution("six", keeping={"full_days": SIX_MONTHS, "half_days": 60.875}),
                fixer("six-fix", keeping={"full_days": SIX_MONTHS}), vessel(), version=2)
    for volume in (1000, 995, 990, 985, 980, 970, 950):
        j.mix(f"six-{volume}", "2024-03-01", "six", volume=volume)
        j.mix(f"d45-{volume}", "2024-03-01", "d45", volume=volume)
    j.mix("longest-half-year", "2023-07-31", "six-fix")
    save("near-the-calendar", j, "2024-03-02", "2024-04-13T12:00", "2024-04-15T09:00",
         "2024-01-30T08:00", "2024-08-30")
