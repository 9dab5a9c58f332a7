"""Every line and kind of version 2 in journals that are taken in, and version 1 as it was."""

from scenario_kit import Journal, fixer, save, solution, vessel


def make():
    for one in (every_line, every_kind, version_one_lines, given_anew, mixing_entered_anew):
        one()


def every_line():
    """What stands in the cupboard, what was run and marked, what was poured away."""
    j = Journal(solution("mq-r"),
                solution("mq", form="powder", chemicals=["metol", "hydroquinone", "borax"],
                         replenisher="mq-r", replenish_ml_per_film=25, turnover_limit=10),
                fixer(form="liquid", fixer_kind="acid", fix_min_s=120,
                      chemicals=["sodium thiosulfate", "acetic acid"]), vessel(), version=2)
    lines = j.lines
    cost = {"cost": "8.50", "currency": "EUR", "place": "top shelf"}
    lines += [
        {"type": "packet", "id": "p1", "solution": "mq", "form": "powder", "makes_ml": 1000,
         "lot": "A7", "bought": "2024-01-02", "use_by": "2026-01-31", **cost},
        {"type": "packet", "id": "c1", "solution": "fix", "form": "liquid", "volume_ml": 500,
         "opened_days": 180, "bought": "2024-01-02", **cost},
        {"type": "chemical", "id": "k1", "name": "borax", "cas": "1303-96-4", "grams": 250,
         "hazards": ["H360"], **cost},
        {"type": "supply", "id": "s1", "name": "gloves", "unit": "pair", "amount": 50, **cost},
        {"type": "barcode", "code": "4006381333931", "of": "p1", "amount": 1},
        {"type": "work", "id": "w1", "at": "2024-02-06T19:00:00Z", "rule": "every 2 weeks",
         "films": 4, "developer": "mq", "name": "evening course"},
        {"type": "container", "id": "can-f", "name": "Silver can", "holds": "fixer",
         "capacity_ml": 10000, "place": "under the sink"},
        {"type": "container", "id": "can-d", "name": "Developer can", "holds": "developer",
         "capacity_ml": 10000},
        {"type": "development-time", "id": "t1", "film": "Invented 200", "developer": "mq",
         "dilution": "stock", "ei": 200, "source": "the leaflet", "notes": "",
         "times": [{"temperature_c": 20, "seconds": 480}]}]
    j.mix("d", "2024-01-10", "mq", packet="p1")
    j.mix("f", "2024-01-10T11:00", "fix")
    j.process("d", "2024-01-12", ("135-36", 2), used_ml=600, lost_ml=10, run="r1",
              by="evening course")
    j.process("f", "2024-01-12T10:30", ("135-36", 2), used_ml=600, run="r1")
    lines += [
        {"type": "film", "id": "film-1", "run": "r1", "format": "135-36",
         "name": "Invented 200", "ei": 200, "notes": "ferry, fog"},
        {"type": "run-times", "run": "r1", "tank_ml": 600, "temperature_c": 20.5, "steps": [
            {"step": "develop", "planned_s": 480, "real_s": 484},
            {"step": "fix", "planned_s": 300, "real_s": 310}]},
        {"type": "film-mark", "id": "m1", "film": "film-1", "at": "2024-01-13T09:00:00Z",
         "mark": "thin", "note": "the whole strip", "by": "evening course"},
        {"type": "film-mark", "id": "m2", "film": "film-1", "at": "2024-01-13T09:30:00Z",
         "takes_back": "m1"}]
    j.event("discarded", "f", "2024-01-20", how="to the can", container="can-f")
    at = "2024-01-20T10:01:00Z"
    for number, (kind, fields) in enumerate((
            ("opened-packet", {"item": "c1"}), ("taken", {"item": "c1", "amount": 200, "for": "f"}),
            ("counted", {"item": "s1", "amount": 44}),
            ("thrown-away", {"item": "k1", "why": "damp"}),
            ("poured-in", {"container": "can-f", "volume_ml": 1000, "from": "f"}),
            ("handed-over", {"container": "can-f", "to": "licensed firm", "volume_ml": 1000,
                             "document": "note 12"}))):
        lines.append({"type": "event", "id": f"x{number}", "kind": kind, "at": at, **fields})
    lines.append({"type": "event", "id": "x9", "item": "s1", "kind": "voided", "voids": "x2",
                  "at": at, "why": "counted the wrong box"})
    save("every-line", j, "2024-01-25", "2024-01-25+all")


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


def given_anew():
    """What was given anew or withdrawn keeps its figures for the events that name it."""
    j = Journal(solution("mq"), solution("mq-new", percent=8, replaces="mq"), vessel(),
                vessel("b1-measured", 1015, replaces="b1"), version=2)
    j.mix("old", "2024-01-10", "mq", "b1", 1000)
    j.mix("new", "2024-01-10T11:00", "mq-new", "b1-measured", 1000)
    j.lines.append({"type": "vessel", "id": "b1-gone", "withdrawn": True, "replaces": "b1"})
    j.process("old", "2024-01-12", ("120", 2), used_ml=600, lost_ml=5)
    j.process("new", "2024-01-12", ("120", 2), used_ml=600, lost_ml=5)
    save("given-anew", j, "2024-01-20")


def mixing_entered_anew():
    """A mixing put right: voided, and entered anew at another time in another bottle."""
    j = Journal(solution("mq"), vessel(), vessel("b2", 1500, "pet"), version=2)
    wrong = j.mix("d", "2024-01-12", "mq")
    j.process("d", "2024-01-13", ("120", 2), used_ml=600, lost_ml=5)
    j.event("voided", "d", "2024-01-14", voids=wrong, why="it was the day before")
    j.mix("d", "2024-01-11", "mq", "b2", 990)
    save("mixing-entered-anew", j, "2024-01-11T12:00", "2024-01-20")
