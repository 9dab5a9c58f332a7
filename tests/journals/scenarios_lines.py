"""Every line and kind of version 2 in journals that are taken in, and version 1 as it was."""

from scenario_kit import Journal, fixer, save, solution, vessel


def make():
    for one in (every_kind, version_one_lines, mixing_entered_anew):
        one()


def every_kind():
    """All kinds that stand on a batch, each of them once or more."""
    j = Journal(solution("mq-r"), solution("mq", replenisher="mq-r", replenish_ml_per_film=30),
                fixer(), vessel("b1"), vessel("b2", 600, "pet"), vessel("b3", 2000, "hdpe"),
                version=2)
    j.mix("d", "2024-03-01", "mq", name="Developer of March")
    j.mix("found", "2024-03-01T12:00", "mq", "b3", 900, history="unknown",
          mixed_on="2024-01-20T10:00:00Z", assumed_films_per_litre=2.5)
    j.mix("f", "2024-03-01T13:00", "fix", films_before=2)
    j.event("dissolved", "d", "2024-03-01T10:40")
    j.process("d", "2024-03-02", ("135-36", 2), used_ml=600, lost_ml=15, run="r1")
    j.process("f", "2024-03-02T10:30", ("135-36", 2), used_ml=600, second=True, run="r1")
    j.process("f", "2024-03-02T11:30", ("4x5", 2), used_ml=300, one_shot=True)
    j.lines.append({"type": "film", "id": "film-1", "run": "r1", "format": "135-36"})
    j.top_up("d", "2024-03-02T12:00", 30, solution="mq-r")
    j.test("f", "2024-03-02T13:00", 55, 25, film="ordinary")
    j.event("measured", "f", "2024-03-03", silver_g_per_litre=0.4, method="test paper")
    j.event("looked", "d", "2024-03-04", passed=False, why="needles", what="precipitate")
    j.event("filtered", "d", "2024-03-05")
    j.event("test-asked", "d", "2024-03-06", mark="dense", film="film-1")
    j.event("strip-test", "d", "2024-03-07", density=1.21, factor=1.02, passed=True)
    j.decant("d", "e", "2024-03-08", 400, "b2")
    j.fill("found", "d", "2024-03-09", 300)
    j.event("moved", "found", "2024-03-10", vessel="b1", air_ml=50)
    j.event("stored-at", "e", "2024-03-11", temperature_c=4)
    j.event("stood-open", "e", "2024-03-12", hours=1.5, area_cm2=250)
    j.event("opened", "e", "2024-03-13")
    j.event("noted", "e", "2024-03-13T11:00", text="smells as it should")
    j.event("drawn", "e", "2024-03-14", volume_ml=50, why="a strip")
    j.event("contaminated", "found", "2024-03-15", why="a rinse in the funnel")
    j.event("discarded", "found", "2024-03-16", how="to the can")
    save("every-kind", j, "2024-03-07T09:00", "2024-03-10T12:00", "2024-03-17+all")


def version_one_lines():
    """Version 1 named the packet of an opened-packet so, and wrote costs as numbers; a note
    that only speaks of a test asks for none."""
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10", "mq")
    j.lines.append({"type": "packet", "id": "p1", "solution": "mq", "makes_ml": 1000,
                    "cost": 7.25, "currency": "EUR"})
    j.lines.append({"type": "event", "id": "x1", "batch": "d", "kind": "opened-packet",
                    "at": "2024-01-10T09:30:00Z", "packet": "p1"})
    j.event("noted", "d", "2024-01-12", text="a test is what I should ask for")
    save("version-1-lines", j, "2024-01-13")


def mixing_entered_anew():
    """A mixing put right: voided, and entered anew at another time in another bottle."""
    j = Journal(solution("mq"), vessel(), vessel("b2", 1500, "pet"), version=2)
    wrong = j.mix("d", "2024-01-12", "mq")
    j.process("d", "2024-01-13", ("120", 2), used_ml=600, lost_ml=5)
    j.event("voided", "d", "2024-01-14", voids=wrong, why="it was the day before")
    j.mix("d", "2024-01-11", "mq", "b2", 990)
    save("mixing-entered-anew", j, "2024-01-11T12:00", "2024-01-20")
