"""Scenarios about fixers: clearing tests, fits, doubling, silver."""

from scenario_kit import Journal, fixer, save, solution, vessel


def make():
    for one in (counts_of_tests, doubled, doubled_by_published, doubled_then_better, cold_tests,
                fits_without_crossing, exact_line, top_up_and_tests, silver, test_due,
                edges_of_days, tabular, published_counting):
        one()


def loads_and_tests(j, batch, pairs, month=1):
    """One film a litre a day up to each test's wear, then the test."""
    day, done = 2, 0
    for films, seconds, celsius in pairs:
        while done < films:
            j.process(batch, f"2024-{month:02}-{day:02}T18:00", ("120", 1), used_ml=500)
            done += 1
            day += 1
        j.test(batch, f"2024-{month:02}-{day:02}T09:00", seconds, celsius)


def counts_of_tests():
    j = Journal(fixer(), fixer("fix-known", fresh_clearing_s=48), vessel())
    tests = [(0, 50, 20), (3, 66, 17), (6, 71, 19.5), (9, 70, 23), (12, 118, 14), (14, 88, 20)]
    for count in (0, 1, 2, 3, 6):
        for kind in ("fix", "fix-known"):
            batch = f"{kind}-{count}"
            j.mix(batch, "2024-01-01", kind)
            loads_and_tests(j, batch, tests[:count])
    for kind in ("fix", "fix-known"):
        j.mix(f"{kind}-late", "2024-01-01", kind)
        loads_and_tests(j, f"{kind}-late", [(4, 62, 20), (7, 70, 20), (10, 79, 20)])
    save("counts-of-tests", j, "2024-01-18", "2024-01-05T08:00", "2024-01-09")


def doubled():
    j = Journal(fixer(), vessel())
    for batch, last in (("keeps", 119), ("doubled", 120), ("beyond", 131)):
        j.mix(batch, "2024-01-01", "fix")
        loads_and_tests(j, batch, [(0, 60, 20), (6, last, 20)])
    save("doubled-119-120", j, "2024-01-10")


def doubled_by_published():
    j = Journal(fixer("known", fresh_clearing_s=60), fixer("unknown"), vessel())
    for kind in ("known", "unknown"):
        for last in (119, 120):
            j.mix(f"{kind}-{last}", "2024-01-01", kind)
            loads_and_tests(j, f"{kind}-{last}", [(6, last, 20)])
    # An early test goes before the published figure.
    j.mix("own-figure", "2024-01-01", "known")
    loads_and_tests(j, "own-figure", [(1, 52, 20), (6, 104, 20)])
    save("doubled-by-published", j, "2024-01-10")


def doubled_then_better():
    """Doubled is judged on the last test alone."""
    j = Journal(fixer(), vessel())
    j.mix("f", "2024-01-01", "fix")
    loads_and_tests(j, "f", [(0, 50, 20), (4, 104, 20), (6, 92, 20)])
    save("doubled-on-the-last-test", j, "2024-01-07", "2024-01-06T12:00", "2024-01-10")


def cold_tests():
    j = Journal(fixer(), vessel())
    j.mix("at-ten", "2024-01-01", "fix")
    loads_and_tests(j, "at-ten", [(0, 120, 10), (6, 238, 10)])
    j.mix("at-ten-doubled", "2024-01-01", "fix")
    loads_and_tests(j, "at-ten-doubled", [(0, 60, 20), (6, 240, 10)])
    j.mix("warm-is-as-it-is", "2024-01-01", "fix")
    loads_and_tests(j, "warm-is-as-it-is", [(0, 60, 24), (6, 100, 30)])
    j.mix("fresh-in-the-cold", "2024-01-01", "fix")
    loads_and_tests(j, "fresh-in-the-cold", [(0, 80, 15), (6, 100, 18)])
    save("cold-tests", j, "2024-01-10")


def fits_without_crossing():
    j = Journal(fixer(), vessel())
    shapes = {
        "falling": [(0, 60, 20), (4, 57, 20), (8, 54.2, 20), (12, 51, 20)],
        "falling-noisy": [(0, 60, 20), (4, 50, 20), (8, 62, 20), (12, 55, 20)],
        "wide-band": [(0, 50, 20), (4, 58, 20), (8, 60, 20)],
        "rising-noisy": [(0, 50, 20), (3, 66, 20), (6, 58, 20), (9, 75, 20), (12, 70, 20)],
        "two-wears-only": [(0, 50, 20), (8, 70, 20), (8, 73, 20), (8, 68, 20)],
        "one-wear-only": [(0, 50, 20), (0, 52, 20), (0, 51, 20)],
        "flat": [(0, 50, 20), (5, 50, 20), (10, 50, 20)]}
    for batch, tests in shapes.items():
        j.mix(batch, "2024-01-01", "fix")
        loads_and_tests(j, batch, tests)
    save("fits-without-crossing", j, "2024-01-16")


def exact_line():
    j = Journal(fixer(), vessel())
    j.mix("f", "2024-01-01", "fix")
    loads_and_tests(j, "f", [(0, 50, 20), (4, 58, 20), (8, 66, 20), (12, 74, 20)])
    j.process("f", "2024-01-16", ("120", 2), used_ml=500)
    save("exact-line", j, "2024-01-17")


def top_up_and_tests():
    """Topping up takes the wear back, so the fit is read at a lower wear."""
    j = Journal(fixer(), vessel())
    j.mix("f", "2024-01-01", "fix", volume=700)
    loads_and_tests(j, "f", [(0, 50, 20), (3, 60, 20), (6, 70, 20), (9, 83, 20)])
    j.top_up("f", "2024-01-14", 320)
    j.test("f", "2024-01-15", 72)
    j.mix("g", "2024-01-01", "fix", volume=100)
    j.process("g", "2024-01-02", ("4x5", 1))
    j.test("g", "2024-01-03", 58)
    j.top_up("g", "2024-01-04", 300)
    j.test("g", "2024-01-05", 49)
    save("top-up-and-tests", j, "2024-01-14T12:00", "2024-01-16")


def silver():
    j = Journal(fixer("careful", silver_limit_g_per_litre=0.2),
                fixer("usual", silver_limit_g_per_litre=1.5),
                fixer("rich", silver_limit_g_per_litre=1.5, silver_g_per_film=0.21),
                fixer("off"), vessel())
    for kind in ("careful", "usual", "rich", "off"):
        j.mix(kind, "2024-01-01", kind)
        j.process(kind, "2024-01-02", ("120", 1), used_ml=500)
        j.test(kind, "2024-01-02T20:00", 50)
        j.process(kind, "2024-01-03", ("135-24", 1), used_ml=500)
        j.process(kind, "2024-01-04", ("120", 6), used_ml=800)
        j.test(kind, "2024-01-04T20:00", 70)
    save("silver-limit", j, "2024-01-05", "2024-01-02T21:00", "2024-01-03T12:00")


def test_due():
    j = Journal(fixer(), vessel())
    j.mix("by-days", "2024-01-01", "fix")
    j.mix("by-films", "2024-01-01", "fix")
    j.process("by-films", "2024-01-02", ("120", 3), used_ml=500)
    j.test("by-films", "2024-01-03", 60)
    j.process("by-films", "2024-01-04", ("120", 3), used_ml=500)
    j.process("by-films", "2024-01-05", ("120", 2), used_ml=500)
    j.mix("looked-at", "2024-01-01", "fix")
    j.event("looked", "looked-at", "2024-01-30", passed=True, why="precipitate")
    j.mix("tested", "2024-01-01", "fix")
    j.test("tested", "2024-01-20", 60)
    save("clearing-test-due", j, "2024-01-04T12:00", "2024-01-06", "2024-01-30T12:00",
         "2024-02-05", "2024-02-20")


def edges_of_days():
    """Exactly 30 days, exactly 14 days, exactly five and two films a litre."""
    j = Journal(fixer("fix", keeping={"full_days": 45}), solution("late", drop=["keeping"]),
                vessel())
    j.mix("thirty-days", "2024-01-01", "fix")
    j.mix("five-films", "2024-01-01", "fix")
    for day in range(2, 8):
        j.process("five-films", f"2024-01-{day:02}", ("135-24", 1), used_ml=500)
    j.process("five-films", "2024-01-08", ("120", 1), used_ml=500)
    j.mix("found", "2024-01-17", "late", history="unknown")
    j.event("looked", "found", "2024-01-17T12:00", passed=True, why="colour")
    j.mix("found-used", "2024-01-17", "late", history="unknown")
    j.event("strip-test", "found-used", "2024-01-17T12:00", density=1.2, factor=1, passed=True)
    for hour in (13, 14, 15):
        j.process("found-used", f"2024-01-17T{hour}:00", ("135-24", 1), used_ml=500)
    save("edges-of-days-and-films", j, "2024-01-31T10:00", "2024-01-31T09:59",
         "2024-01-31T12:00", "2024-01-31T11:59", "2024-01-17T14:30", "2024-02-01T10:00",
         "2024-02-01T09:59", "2024-01-07T12:00", "2024-01-08T12:00")


def tabular():
    """A factor for tabular grains is there, fix_s stays twice the clearing time."""
    j = Journal(fixer(tabular_factor=3, fresh_clearing_s=45), vessel())
    j.mix("f", "2024-01-01", "fix")
    j.process("f", "2024-01-02", ("120", 2), used_ml=500)
    j.test("f", "2024-01-03", 55, 18)
    save("tabular-factor", j, "2024-01-05")


def published_counting():
    """12 rolls, 16 sheets and 4 large sheets make 20, at an acid fixer's limit."""
    j = Journal(fixer(), vessel())
    j.mix("f", "2024-01-01", "fix")
    j.process("f", "2024-01-02", ("120", 12), ("4x5", 16))
    j.test("f", "2024-01-02T12:00", 60)
    j.process("f", "2024-01-03", ("8x10", 4))
    save("twenty-films", j, "2024-01-02T13:00", "2024-01-04")
