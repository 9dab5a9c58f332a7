"""Scenarios about bottles filled from bottles."""

from scenario_kit import Journal, fixer, save, solution, vessel


def make():
    for one in (mixed_from, topped_up_from, drawn_to_the_last, chain, donor_corrected,
                pair_voided, half_voided, entered_in_any_order, exchanged_at_one_instant,
                without_pairs, what_comes_along, what_stays_behind, passes_lapse, older_date,
                spent_donor, another_solution, precipitate_comes_along, mixing_corrected,
                there_and_back):
        one()


def shelf(*more, version=2):
    """A worn litre of developer, and bottles of several kinds to pour into."""
    j = Journal(solution("mq"), *more, vessel(), vessel("small", 520),
                vessel("soft", 1030, "hdpe"), vessel("big", 2000, "pet"), version=version)
    j.mix("a", "2024-01-05", "mq", name="Dev A")
    j.process("a", "2024-01-12", ("120", 3), used_ml=600, lost_ml=30)
    return j


def mixed_from():
    j = shelf()
    j.decant("a", "half", "2024-01-20", 450, "small", name="Dev A, second half")
    j.process("half", "2024-01-25", ("135-36", 1), lost_ml=10)
    save("decanted", j, "2024-01-20T10:00", "2024-01-24", "2024-02-10", "2024-05-20")


def topped_up_from():
    j = shelf()
    j.mix("b", "2024-01-15", "mq", "big", 1500)
    j.process("b", "2024-01-16", ("120", 9), used_ml=900)
    j.fill("b", "a", "2024-01-20", 55)
    j.process("a", "2024-01-22", ("120", 1), lost_ml=200)
    j.fill("b", "a", "2024-01-23", 200, air_ml=3)
    save("topped-up-from-a-worn-bottle", j, "2024-01-20T10:00", "2024-02-10", "2024-04-10")


def drawn_to_the_last():
    """A donor may be emptied by the filling; that ends it, after the filling."""
    j = shelf()
    j.mix("rest", "2023-12-20", "mq", "small", 400)
    j.process("rest", "2024-01-02", ("120", 1), lost_ml=340)
    j.fill("rest", "a", "2024-01-20", 60)
    j.decant("a", "moved", "2024-01-25", 1030, "soft")
    save("filling-empties-the-donor", j, "2024-01-21+all", "2024-01-21", "2024-02-20+all",
         "2024-02-20")


def chain():
    """Four bottles in a row, and the last one back into the first."""
    j = shelf()
    j.decant("a", "b", "2024-01-15", 500, "small")
    j.process("b", "2024-01-16", ("135-24", 2), lost_ml=8)
    j.decant("b", "c", "2024-01-18", 250, "soft")
    j.process("c", "2024-01-19", ("4x5", 6), used_ml=200)
    j.decant("c", "d", "2024-01-21", 100, "small")
    j.event("stored-at", "d", "2024-01-21T12:00", temperature_c=27)
    j.fill("d", "a", "2024-02-20", 80)
    save("chain-of-four", j, "2024-01-22", "2024-02-20T10:00", "2024-03-10")


def donor_corrected():
    """What is put right on a donor shows in its heirs, and in theirs."""
    j = shelf()
    wrong = j.process("a", "2024-01-14", ("120", 3), used_ml=600, lost_ml=10)
    j.decant("a", "b", "2024-01-20", 300, "small")
    j.mix("c", "2024-01-18", "mq", "big", 900)
    j.fill("b", "c", "2024-01-28", 120)
    j.event("voided", "a", "2024-02-05", voids=wrong, why="they were sheets")
    j.process("a", "2024-01-14", ("4x5", 3), used_ml=600, lost_ml=10)
    j.event("stored-at", "a", "2024-01-13", temperature_c=29)
    save("donor-corrected", j, "2024-01-22", "2024-02-10")


def pair_voided():
    j = shelf()
    j.mix("b", "2024-01-15", "mq", "big", 1500)
    drawn, filled = j.fill("b", "a", "2024-01-20", 25)
    j.event("voided", "b", "2024-01-22", voids=drawn, why="it was water")
    j.event("voided", "a", "2024-01-22", voids=filled, why="it was water")
    j.fill("b", "a", "2024-01-20", 25, air_ml=1)
    drawn, mixed = j.decant("b", "c", "2024-01-21", 300, "small")
    j.event("voided", "b", "2024-01-22T11:00", voids=drawn, why="never decanted")
    j.event("voided", "c", "2024-01-22T11:00", voids=mixed, why="never decanted")
    save("filling-voided", j, "2024-01-25+all")


def half_voided():
    """Half a pair that is voided takes its other half along."""
    j = shelf()
    j.mix("b", "2024-01-15", "mq", "big", 1500)
    drawn, _ = j.fill("b", "a", "2024-01-20", 15)
    _, filled = j.fill("b", "a", "2024-01-21", 12)
    j.fill("b", "a", "2024-01-22", 8)
    j.event("voided", "b", "2024-01-23", voids=drawn, why="spilled instead")
    j.event("voided", "a", "2024-01-23", voids=filled, why="spilled instead")
    save("half-a-filling-voided", j, "2024-01-25")


def entered_in_any_order():
    """Filled first and drawn afterwards, and what the donor did before entered last."""
    j = shelf()
    j.mix("b", "2024-01-15", "mq", "big", 1000)
    j.top_up("a", "2024-01-24", 40, **{"from": "b"})
    j.event("drawn", "b", "2024-01-24", volume_ml=40, why="to top up", to="a")
    j.mix("c", "2024-01-20", "mq", "small", 200, **{"from": "b"})
    j.event("drawn", "b", "2024-01-20", volume_ml=200, why="decanted", to="c")
    j.process("b", "2024-01-18", ("120", 4), lost_ml=20)
    save("fillings-entered-in-any-order", j, "2024-01-30")


def exchanged_at_one_instant():
    """Two bottles fill each other at one instant: the order of entry decides, no circle."""
    j = shelf()
    j.mix("b", "2024-01-05T12:00", "mq", "big", 1000)
    j.process("b", "2024-01-10", ("120", 8), used_ml=900)
    j.fill("a", "b", "2024-01-20", 300)
    j.fill("b", "a", "2024-01-20", 300)
    j.process("a", "2024-01-20", ("120", 1), lost_ml=20)
    j.fill("b", "a", "2024-01-20", 15)
    save("exchanged-at-one-instant", j, "2024-01-20T10:00", "2024-02-10")


def without_pairs():
    """Version 1 needs no pair, and the donor need not be drawn from."""
    j = shelf(version=1)
    j.mix("b", "2024-01-15", "mq", "big", 1500)
    j.process("b", "2024-01-16", ("120", 9), used_ml=900)
    j.top_up("a", "2024-01-20", 55, **{"from": "b"})
    save("version-1-without-pairs", j, "2024-02-10")


def what_comes_along():
    """Contamination, failed looks, unknown history: each from a donor of its own."""
    j = shelf()
    for donor in ("soiled", "failed", "unknown"):
        more = {"history": "unknown"} if donor == "unknown" else {}
        j.mix(donor, "2024-01-06", "mq", "big", 1200, **more)
    j.event("contaminated", "soiled", "2024-01-10", why="fixer in the funnel")
    j.event("looked", "failed", "2024-01-10", passed=False, why="brown", what="colour")
    for donor in ("soiled", "failed", "unknown"):
        j.mix(f"with-{donor}", "2024-01-08", "mq", volume=900)
        j.event("looked", f"with-{donor}", "2024-01-19", passed=True, why="clear", what="colour")
        j.fill(donor, f"with-{donor}", "2024-01-20", 50)
        j.decant(donor, f"of-{donor}", "2024-01-20", 400, "small")
    j.event("strip-test", "with-unknown", "2024-01-25", density=1.2, factor=1.1, passed=True)
    save("what-comes-along", j, "2024-01-21", "2024-01-26", "2024-02-20")


def what_stays_behind():
    """A decanted bottle brings tests and strips, no loads, cold or openings of its donor."""
    j = shelf(fixer(fresh_clearing_s=48))
    j.event("strip-test", "a", "2024-01-13", density=1.1, factor=1.15, passed=True)
    j.event("stored-at", "a", "2024-01-14", temperature_c=9)
    j.decant("a", "b", "2024-01-20", 400, "small")
    j.mix("f", "2024-01-05", "fix", "soft")
    j.process("f", "2024-01-06", ("120", 1), used_ml=500)
    j.test("f", "2024-01-07", 52, 19)
    j.process("f", "2024-01-08", ("120", 5), used_ml=500)
    j.test("f", "2024-01-09", 66, 19)
    j.decant("f", "g", "2024-01-20", 300, "small")
    j.process("g", "2024-01-21", ("120", 1))
    j.test("g", "2024-01-22", 78, 20)
    save("what-stays-behind", j, "2024-01-20T12:00", "2024-01-23", "2024-02-08")


def passes_lapse():
    """Filled from another bottle, what was tested before says nothing any more."""
    j = Journal(solution("mq"), fixer(fresh_clearing_s=50), vessel(), vessel("b2", 2000),
                version=2)
    j.mix("found", "2024-01-05", "mq", volume=800, history="unknown")
    j.event("looked", "found", "2024-01-06", passed=True, why="leader", what="leader")
    j.mix("fresh", "2024-01-06", "mq", "b2", 1500)
    j.fill("fresh", "found", "2024-01-08", 100)
    j.event("looked", "found", "2024-01-10", passed=True, why="leader", what="leader")
    j.mix("fixer-found", "2024-01-05", "fix", volume=800, history="unknown")
    j.test("fixer-found", "2024-01-06", 60)
    j.mix("fixer-fresh", "2024-01-06", "fix", "b2", 1500)
    j.fill("fixer-fresh", "fixer-found", "2024-01-08", 100)
    j.test("fixer-found", "2024-01-10", 57)
    save("passes-lapse", j, "2024-01-07", "2024-01-09", "2024-01-11")


def older_date():
    """The calendar counts from the older mixing date of the two."""
    j = shelf()
    j.mix("old", "2023-09-28", "mq", "big", 1400)
    j.mix("young", "2024-02-01", "mq", "big", 1400)
    j.fill("old", "a", "2024-02-02", 20)
    j.fill("young", "a", "2024-02-03", 20)
    j.fill("a", "young", "2024-02-04", 100)
    save("older-date-counts", j, "2024-02-02T12:00", "2024-02-05", "2024-03-29")


def spent_donor():
    """Standing that was over in the donor is over in the heir since the same moment."""
    j = shelf()
    j.mix("spent", "2023-12-01", "mq", "soft", 500)
    j.event("stood-open", "spent", "2023-12-20", hours=13, area_cm2=516.13)
    j.decant("spent", "heir", "2024-01-10", 200, "small")
    j.mix("nearly", "2024-01-01", "mq", "big", 900)
    j.event("stood-open", "nearly", "2024-01-05", hours=20.9, area_cm2=516.13)
    j.decant("nearly", "over-by-pouring", "2024-01-05T10:30", 300, "small")
    j.fill("spent", "a", "2024-01-15", 55)
    save("spent-donor", j, "2024-01-09", "2024-01-20")


def another_solution():
    """Topped up from another developer: each keeps its own figures."""
    j = shelf(solution("airy", oxygen_factor=0.87, percent=5, bromide_mg_per_film=40,
                       keeping={"full_days": 91.3125, "half_days": 30.4375}),
              solution("untold", drop=["keeping", "capacity_films_per_litre"]))
    j.mix("b", "2024-01-10", "airy", "big", 1500)
    j.process("b", "2024-01-11", ("120", 4), lost_ml=5)
    j.mix("c", "2024-01-10", "untold", "big", 1500)
    j.fill("b", "a", "2024-01-20", 25)
    j.fill("a", "c", "2024-01-21", 90)
    j.fill("c", "b", "2024-01-22", 200)
    save("topped-up-from-another-solution", j, "2024-02-01")


def precipitate_comes_along():
    """A precipitate can be filtered, in each bottle by itself; another failure cannot."""
    j = shelf()
    j.event("looked", "a", "2024-01-15", passed=False, why="needles", what="precipitate")
    j.decant("a", "b", "2024-01-16", 300, "small")
    j.mix("c", "2024-01-14", "mq", "big", 1000)
    j.fill("a", "c", "2024-01-17", 100)
    j.event("filtered", "b", "2024-01-18")
    j.event("looked", "c", "2024-01-18", passed=False, why="brown", what="colour")
    j.event("filtered", "c", "2024-01-19")
    save("precipitate-comes-along", j, "2024-01-17T12:00", "2024-01-20")


def mixing_corrected():
    """A donor's mixing entered anew at another time shows in the heir."""
    j = Journal(solution("mq"), vessel(), vessel("small", 520), version=2)
    wrong = j.mix("a", "2024-01-09", "mq")
    j.process("a", "2024-01-12", ("120", 2), lost_ml=20)
    j.decant("a", "b", "2024-01-20", 400, "small")
    j.event("voided", "a", "2024-01-25", voids=wrong, why="mixed in December")
    j.mix("a", "2023-12-09", "mq", volume=1010)
    save("donor-mixed-earlier", j, "2024-01-30")


def there_and_back():
    j = shelf()
    for day in range(15, 29):
        j.decant("a", f"b{day}", f"2024-01-{day}", 200 + day, "small")
        j.fill(f"b{day}", "a", f"2024-01-{day}T16:00", 200 + day)
    save("decanted-and-poured-back", j, "2024-02-01")
