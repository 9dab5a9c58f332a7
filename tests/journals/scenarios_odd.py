"""Odd meetings: what a bottle seldom goes through in one life, each worked out by itself."""

from scenario_kit import SIX_MONTHS, Journal, fixer, save, solution, vessel


def make():
    for one in (as_many_to_come, asked_and_looked_at, found_then_once, exchanged_and_tested,
                replenished_in_the_cold, halves_voided, paper_and_decanted, measured_then_colder,
                made_up_after_a_test, found_spent_and_replenished, passes_at_several_wears):
        one()


def as_many_to_come():
    """As many loads to come as were logged, and one: the middle wait is the time itself."""
    j = Journal(solution("mq", capacity_films_per_litre=9), vessel())
    j.mix("d", "2024-01-05", "mq")
    for day in ("06", "09", "13", "20"):
        j.process("d", f"2024-01-{day}", ("120", 1), used_ml=600)
    save("as-many-to-come", j, "2024-01-20T10:00", "2024-01-26", "2024-03-02")


def asked_and_looked_at():
    """A request for a test ends with a control strip or a clearing test, whatever it says; a look that
    judges nothing, a note, an opening and a filtering are none."""
    j = Journal(solution("mq"), fixer(), vessel(), version=2)
    for batch, kind in (("looked", "mq"), ("strip", "mq"), ("cleared", "fix"), ("noted", "mq")):
        j.mix(batch, "2024-01-05", kind)
        j.process(batch, "2024-01-06", ("120", 1), used_ml=600, run=f"r-{batch}")
        j.lines.append({"type": "film", "id": f"film-{batch}", "run": f"r-{batch}"})
        j.event("test-asked", batch, "2024-01-07", mark="uneven", film=f"film-{batch}")
    j.event("looked", "looked", "2024-01-08", what="smell", why="as ever")
    j.event("strip-test", "strip", "2024-01-08", density=1.2)
    j.test("cleared", "2024-01-08", 50)
    j.event("noted", "noted", "2024-01-08", text="looked at it")
    j.event("opened", "noted", "2024-01-08T11:00")
    j.event("filtered", "noted", "2024-01-08T12:00")
    save("asked-and-looked-at", j, "2024-01-07T12:00", "2024-01-09")


def found_then_once():
    """A found bottle, decanted into what is used a measure at a time and poured away."""
    j = Journal(solution("once", one_shot_ml_per_film=220), vessel("b1", 2060),
                vessel("b2", 1040, "pet"), version=2)
    j.mix("found", "2024-01-05", "once", "b1", 1800, history="unknown",
          mixed_on="2023-12-01T09:00:00Z", assumed_films_per_litre=3)
    j.process("found", "2024-01-07", ("120", 2), used_ml=700, lost_ml=12)
    j.decant("found", "heir", "2024-01-09", 900, "b2")
    j.process("heir", "2024-01-10", ("135-36", 1), used_ml=230, one_shot=True)
    j.decant("heir", "rest", "2024-01-12", 500, "b1")
    j.process("rest", "2024-01-13", ("4x5", 2), used_ml=300, lost_ml=3)
    j.process("found", "2024-01-14", ("4x5", 1), used_ml=110, one_shot=True)
    j.event("looked", "heir", "2024-01-15", passed=True, what="leader", why="black")
    save("found-then-once", j, "2024-01-09T12:00", "2024-01-16", "2024-02-20")


def exchanged_and_tested():
    """The second bath becomes the first and is tested then, by a film of its own."""
    j = Journal(fixer("fix", bromide_mg_per_film=2, fix_min_s=150), vessel("b1"), vessel("b2", 1060),
                version=2)
    j.mix("one", "2024-01-05", "fix")
    j.mix("two", "2024-01-05T10:10", "fix", "b2", 1000)
    j.test("one", "2024-01-05T11:00", 50, film="ordinary")
    for day in range(8, 13):
        for batch, minute, more in (("one", "00", {}), ("two", "12", {"second": True})):
            j.process(batch, f"2024-01-{day:02}T18:{minute}", ("135-36", 3), used_ml=900, lost_ml=8,
                      **more)
    j.test("one", "2024-01-13", 101, film="ordinary")
    j.test("two", "2024-01-13T10:05", 58, 22, film="ordinary")
    j.event("discarded", "one", "2024-01-13T10:30", how="to the can")
    j.mix("three", "2024-01-13T11:00", "fix")
    j.process("two", "2024-01-14", ("120", 2), used_ml=800)
    j.process("three", "2024-01-14T10:10", ("120", 2), used_ml=800, second=True)
    j.test("two", "2024-01-15", 55, 18, film="flat grain")
    j.test("two", "2024-01-16", 66, 21, film="ordinary")
    save("exchanged-and-tested", j, "2024-01-13T10:10", "2024-01-14T12:00", "2024-01-17+all")


def replenished_in_the_cold():
    """Replenisher into a bottle that stands cold, filtered of what fell out of it."""
    j = Journal(solution("mq-r"), solution("mq", replenisher="mq-r", replenish_ml_per_film=60,
                                           turnover_limit=0.4), vessel("b1", 1360, "hdpe"),
                version=2)
    j.mix("d", "2024-01-05", "mq", volume=800)
    j.event("stored-at", "d", "2024-01-06", temperature_c=4)
    for day in (8, 15, 22, 29):
        j.process("d", f"2024-01-{day:02}", ("120", 2), used_ml=600, lost_ml=10)
        j.top_up("d", f"2024-01-{day:02}T10:30", 90, solution="mq-r")
    j.event("looked", "d", "2024-01-30", passed=False, what="precipitate", why="needles")
    j.event("filtered", "d", "2024-02-02", air_ml=40)
    j.event("looked", "d", "2024-02-03", passed=True, what="colour", why="straw")
    j.event("stored-at", "d", "2024-02-04", temperature_c=21)
    save("replenished-in-the-cold", j, "2024-01-22T10:15", "2024-01-31", "2024-02-03T12:00",
         "2024-05-20")


def halves_voided():
    """Of three fillings one half each is taken back, of the third the taking back too."""
    j = Journal(solution("mq"), *(vessel(f"b{i}", 1030) for i in range(1, 5)), version=2)
    j.mix("a", "2024-01-05", "mq", "b1")
    j.mix("b", "2024-01-05T11:00", "mq", "b2", 400)
    j.process("a", "2024-01-06", ("120", 4), used_ml=600)
    drawn, _ = j.fill("a", "b", "2024-01-08", 100)
    _, mixed = j.decant("a", "c", "2024-01-09", 200, "b3")
    again, _ = j.fill("a", "b", "2024-01-10", 150)
    j.event("voided", "a", "2024-01-11", voids=drawn, why="it was water")
    j.event("voided", "c", "2024-01-11T11:00", voids=mixed, why="never done")
    taken = j.event("voided", "a", "2024-01-11T12:00", voids=again)
    j.event("voided", "a", "2024-01-11T13:00", voids=taken)
    j.process("b", "2024-01-12", ("120", 1), used_ml=500)
    save("halves-voided", j, "2024-01-09T12:00", "2024-01-13+all")


def paper_and_decanted():
    """Films that a bottle had done before the book, on top of what came from its donor."""
    j = Journal(solution("mq", silver_g_per_film=0.01), vessel("b1", 1030), vessel("b2", 520),
                version=2)
    j.mix("a", "2024-01-05", "mq", "b1", 1000, films_before=1.5)
    j.process("a", "2024-01-07", ("135-24", 2), used_ml=600, lost_ml=5)
    j.event("drawn", "a", "2024-01-09", volume_ml=400, to="b")
    j.mix("b", "2024-01-09", "mq", "b2", 400, films_before=0.75, **{"from": "a"})
    j.process("b", "2024-01-10", ("120", 1), used_ml=380)
    save("paper-and-decanted", j, "2024-01-09T10:00", "2024-01-11")


def measured_then_colder():
    """What is measured stands, until film adds to it; tests in the cold and in the warm."""
    j = Journal(fixer("fix", fresh_clearing_s=48, silver_limit_g_per_litre=1.2), vessel(),
                version=2)
    j.mix("f", "2024-01-05", "fix")
    j.process("f", "2024-01-06", ("120", 6), used_ml=900, lost_ml=10)
    j.event("measured", "f", "2024-01-07", silver_g_per_litre=1.15, method="test paper")
    j.test("f", "2024-01-08", 95, 11)
    j.process("f", "2024-01-09", ("120", 1), used_ml=600, second=True)
    j.test("f", "2024-01-10", 40, 28)
    j.process("f", "2024-01-11", ("120", 1), used_ml=600)
    j.event("measured", "f", "2024-01-12", silver_g_per_litre=1.2)
    save("measured-then-colder", j, "2024-01-07T12:00", "2024-01-08T12:00", "2024-01-11T12:00",
         "2024-01-13")


def made_up_after_a_test():
    """Made up with fresh to less wear than at any test: no fixing time is below nothing."""
    j = Journal(fixer("weak", capacity_films_per_litre=4, fresh_clearing_s=60),
                fixer("least", capacity_films_per_litre=4, fresh_clearing_s=60, fix_min_s=90),
                vessel("b1", 5100), version=2)
    for kind in ("weak", "least"):
        j.mix(kind, "2024-01-05", kind, volume=500)
        j.process(kind, "2024-01-06", ("120", 5), used_ml=400)
        j.test(kind, "2024-01-07", 70)
        j.top_up(kind, "2024-01-08", 4500)
    save("made-up-after-a-test", j, "2024-01-07T12:00", "2024-01-08T12:00")


def found_spent_and_replenished():
    """Over when it was found: replenisher moves its calendar, not the day it was over."""
    j = Journal(solution("mq-r"), solution("mq", replenisher="mq-r", replenish_ml_per_film=60,
                                           keeping={"full_days": SIX_MONTHS, "half_days": 61}),
                vessel("b1", 1500), version=2)
    j.mix("d", "2024-04-05", "mq", volume=900, history="unknown",
          mixed_on="2023-06-01T09:00:00Z", assumed_films_per_litre=2)
    j.top_up("d", "2024-04-06", 60, solution="mq-r")
    save("found-spent-and-replenished", j, "2024-04-05T12:00", "2024-04-07")


def passes_at_several_wears():
    """Only the last pass vouches: made up with fresh, film brings the wear back up to where an
    earlier one was made."""
    j = Journal(solution("mq", capacity_films_per_litre=30), vessel("b1", 2060), version=2)
    j.mix("found", "2024-01-05", "mq", volume=900, history="unknown", assumed_films_per_litre=6)
    j.event("looked", "found", "2024-01-06", passed=True, what="leader", why="black")
    j.top_up("found", "2024-01-07", 600)
    j.event("looked", "found", "2024-01-08", passed=True, what="leader", why="black")
    j.process("found", "2024-01-09", ("120", 4), used_ml=900)
    save("passes-at-several-wears", j, "2024-01-07T12:00", "2024-01-08T12:00", "2024-01-10",
         "2024-01-21", "2024-01-23")
