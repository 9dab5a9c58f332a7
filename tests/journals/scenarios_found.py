"""Scenarios about bottles found or known from paper, and about developer used once."""

from scenario_kit import Journal, fixer, save, solution, vessel


def make():
    for one in (found, found_fixer, found_and_tested, known_from_paper, found_and_shared,
                once_from_stock, once_from_a_found_bottle, once_then_poured_back,
                once_from_a_fixer, once_decanted):
        one()


def found():
    """What is known is counted; the rest is not known, never nought."""
    j = Journal(solution("mq"), solution("open", drop=["capacity_films_per_litre"]),
                vessel("b1", 1030, "pet"), version=2)
    ways = {"nothing-known": {}, "films-guessed": {"assumed_films_per_litre": 4.5},
            "guessed-none": {"assumed_films_per_litre": 0},
            "day-known": {"mixed_on": "2023-11-02T18:00:00Z"},
            "both-known": {"mixed_on": "2023-11-02T18:00:00Z", "assumed_films_per_litre": 3},
            "long-past": {"mixed_on": "2023-06-30T18:00:00Z"}}
    for batch, known in ways.items():
        j.mix(batch, "2024-01-05", "mq", volume=900, history="unknown", **known)
        j.process(batch, "2024-01-08", ("120", 1), used_ml=500, lost_ml=5)
        j.event("stored-at", batch, "2024-01-09", temperature_c=26)
    j.mix("no-capacity", "2024-01-05", "open", volume=900, history="unknown",
          assumed_films_per_litre=2)
    save("found", j, "2024-01-05T10:00", "2024-01-20", "2024-03-20", "2024-07-20")


def found_fixer():
    """In a found fixer no test of its own is fresh."""
    j = Journal(fixer("known", fresh_clearing_s=50), fixer("untold"), vessel(), version=2)
    for kind in ("known", "untold"):
        for batch, last in ((f"{kind}-keeps", 99), (f"{kind}-doubled", 100)):
            j.mix(batch, "2024-01-05", kind, history="unknown", assumed_films_per_litre=0)
            j.test(batch, "2024-01-06", 49)
            j.process(batch, "2024-01-07", ("120", 3), used_ml=500)
            j.test(batch, "2024-01-08", last)
    save("found-fixer", j, "2024-01-06T12:00", "2024-01-09")


def found_and_tested():
    """A test vouches for a fortnight or two films a litre; wear without a guess starts at 0."""
    j = Journal(solution("mq"), vessel(), version=2)
    for batch, more in (("guessed", {"assumed_films_per_litre": 7.9}), ("not-guessed", {})):
        j.mix(batch, "2024-01-05", "mq", history="unknown", **more)
        j.event("looked", batch, "2024-01-06", passed=True, why="leader", what="leader")
        j.process(batch, "2024-01-07", ("120", 1), used_ml=500)
        j.process(batch, "2024-01-09", ("135-36", 1), used_ml=500)
        j.event("strip-test", batch, "2024-01-10", density=1.2, factor=1, passed=True)
        j.process(batch, "2024-01-11", ("120", 8), used_ml=800)
    save("found-and-tested", j, "2024-01-06T12:00", "2024-01-07T12:00", "2024-01-09T12:00",
         "2024-01-10T12:00", "2024-01-12")


def known_from_paper():
    """A bottle that comes with its films starts with them, but without a load."""
    j = Journal(solution("mq"), fixer(), vessel(), version=2)
    j.mix("dev", "2024-01-05", "mq", volume=800, films_before=6)
    j.mix("fix", "2024-01-05", "fix", volume=800, films_before=4.25)
    for batch in ("dev", "fix"):
        j.process(batch, "2024-01-08", ("120", 1), used_ml=500)
    save("known-from-paper", j, "2024-01-06", "2024-01-09", "2024-02-20")


def found_and_shared():
    """A found bottle's history goes on with what is decanted from it."""
    j = Journal(solution("mq"), vessel(), vessel("small", 520), version=2)
    j.mix("found", "2024-01-05", "mq", history="unknown", mixed_on="2023-12-01T09:00:00Z",
          assumed_films_per_litre=2)
    j.mix("undated", "2024-01-05T11:00", "mq", history="unknown")
    j.event("looked", "found", "2024-01-06", passed=True, why="leader", what="leader")
    for donor in ("found", "undated"):
        j.decant(donor, f"half-of-{donor}", "2024-01-10", 500, "small")
    save("found-and-shared", j, "2024-01-12", "2024-01-25")


ONCE = {"one_shot_ml_per_film": 250}


def once_from_stock():
    """A litre used a quarter at a time is four films; its capacity is of no account."""
    j = Journal(solution("only-once", drop=["capacity_films_per_litre"], **ONCE),
                solution("either", **ONCE), solution("no-measure"), vessel(), version=2)
    for kind in ("only-once", "either", "no-measure"):
        j.mix(kind, "2024-01-05", kind)
        for day in (8, 12, 19):
            j.process(kind, f"2024-01-{day:02}", ("135-36", 1), used_ml=250, one_shot=True)
    save("used-once", j, "2024-01-05T12:00", "2024-01-08T12:00", "2024-01-13", "2024-01-20")


def once_from_a_found_bottle():
    """Films left of a measure each are known, whatever the history."""
    j = Journal(solution("only-once", drop=["capacity_films_per_litre"], **ONCE),
                solution("either", **ONCE), vessel(), version=2)
    for kind in ("only-once", "either"):
        j.mix(kind, "2024-01-05", kind, history="unknown")
        j.process(kind, "2024-01-08", ("135-36", 2), used_ml=500, one_shot=True)
        j.mix(f"{kind}-worn", "2024-01-05T12:00", kind, history="unknown",
              assumed_films_per_litre=12)
        j.process(f"{kind}-worn", "2024-01-08", ("135-36", 1), used_ml=250, one_shot=True)
        j.process(f"{kind}-worn", "2024-01-09", ("135-24", 1), used_ml=700, one_shot=True)
    save("used-once-and-found", j, "2024-01-06", "2024-01-08T12:00", "2024-01-10")


def once_then_poured_back():
    """The last load says which use it is."""
    j = Journal(solution("either", **ONCE), vessel(), version=2)
    j.mix("d", "2024-01-05", "either")
    j.process("d", "2024-01-08", ("135-36", 8), used_ml=500, lost_ml=10)
    j.process("d", "2024-01-10", ("135-36", 1), used_ml=250, one_shot=True)
    j.process("d", "2024-01-12", ("135-36", 1), used_ml=500, lost_ml=10)
    save("used-once-and-again", j, "2024-01-09", "2024-01-11", "2024-01-13")


def once_from_a_fixer():
    """A fixer has a capacity by default, so only a load used once makes it that use."""
    j = Journal(fixer("f", one_shot_ml_per_film=300, drop=["capacity_films_per_litre"]),
                vessel(), version=2)
    j.mix("f", "2024-01-05", "f")
    j.process("f", "2024-01-08", ("120", 1), used_ml=300, one_shot=True, second=True)
    save("used-once-from-a-fixer", j, "2024-01-06", "2024-01-09")


def once_decanted():
    """The loads stay with the donor, so the heir's use is open again."""
    j = Journal(solution("either", **ONCE), vessel(), vessel("small", 520), version=2)
    j.mix("d", "2024-01-05", "either")
    j.process("d", "2024-01-10", ("135-36", 1), used_ml=250, one_shot=True)
    j.decant("d", "e", "2024-01-11", 400, "small")
    save("used-once-and-decanted", j, "2024-01-12")
