"""Scenarios about film, volumes, time order and the journal itself."""

from scenario_kit import Journal, fixer, save, solution, vessel


def make():
    for one in (every_event_kind, fresh_bottle, processed_in_parts, wear_rules, film_formats,
                thirds, one_shot, steady_top_up, top_up_from, moved, late_entered,
                same_instant, voided, voided_by_name_alone, same_line_twice, zones, cupboard_lines, names,
                frozen, no_capacity, nothing_yet, defaults, drawn_off, opened_or_not):
        one()


def every_event_kind():
    j = Journal(solution("mq"), fixer(), vessel("b1"), vessel("b2", 600, "pet"))
    j.mix("d", "2024-03-01", "mq", name="Developer of March")
    j.event("dissolved", "d", "2024-03-01T10:40")
    j.mix("f", "2024-03-01T11:00", "fix", "b1")
    j.event("noted", "d", "2024-03-01T12:00", text="smells as it should")
    j.process("d", "2024-03-02", ("135-36", 2), used_ml=600, lost_ml=15, run="r1")
    j.process("f", "2024-03-02T10:30", ("135-36", 2), used_ml=600, lost_ml=5, run="r1")
    j.test("f", "2024-03-02T10:20", 55, 21)
    j.event("opened", "d", "2024-03-05")
    j.event("strip-test", "d", "2024-03-06", density=1.21, factor=1.02, passed=True)
    j.event("looked", "d", "2024-03-07", passed=True, why="colour")
    j.event("stored-at", "d", "2024-03-08", temperature_c=17.5)
    j.event("stood-open", "d", "2024-03-09", hours=1.5, area_cm2=516.13)
    j.event("drawn", "d", "2024-03-10", volume_ml=450, why="a test strip")
    j.event("moved", "d", "2024-03-11", vessel="b2")
    j.top_up("d", "2024-03-12", 30)
    wrong = j.event("contaminated", "d", "2024-03-13", why="fixer in the funnel")
    j.event("voided", "d", "2024-03-13T11:00", voids=wrong, why="it was the other bottle")
    j.event("contaminated", "f", "2024-03-13", why="developer in the funnel")
    j.event("discarded", "f", "2024-03-14", how="to the silver drum")
    save("every-event-kind", j, "2024-03-15", "2024-03-15+all", "2024-03-08", "2024-02-01")


def fresh_bottle():
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10", "mq")
    save("fresh-bottle", j, "2024-01-10T10:00", "2024-01-11", "2024-04-10", "2024-07-08",
         "2024-07-10T10:00", "2024-08-10")


def processed_in_parts():
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10", "mq")
    j.process("d", "2024-01-12T19:30", ("135-36", 2), used_ml=600, lost_ml=20)
    j.process("d", "2024-01-19T19:30", ("120", 1), lost_ml=12.5)
    j.process("d", "2024-02-02T20:15", ("135-36", 1), ("135-24", 1), used_ml=500)
    save("processed-in-parts", j, "2024-01-12T19:30", "2024-02-10", "2024-05-20")


def wear_rules():
    steps = {"rule": "steps", "steps": [
        {"from_films_per_litre": 4, "factor": 1.15}, {"from_films_per_litre": 0, "factor": 1.0},
        {"from_films_per_litre": 8, "factor": 1.4}]}
    late = {"rule": "steps", "steps": [{"from_films_per_litre": 10, "factor": 1.3}]}
    kinds = [solution("w-none", rule="none"), solution("w-per-film"),
             solution("w-compound", rule="compound"), solution("w-steps", wear=steps),
             solution("w-steps-later", wear=late), solution("w-tiny", percent=2.5)]
    j = Journal(*kinds, vessel())
    for kind in kinds:
        j.mix("of-" + kind["id"], "2024-01-10", kind["id"])
    for day in range(11, 20):
        for kind in kinds:
            j.process("of-" + kind["id"], f"2024-01-{day}", ("135-36", 1), used_ml=300)
    save("wear-rules", j, "2024-01-20", "2024-01-14", "2024-01-13", "2024-01-18T10:00")


def film_formats():
    j = Journal(solution("mq", capacity_films_per_litre=14), vessel("b1", 2050))
    j.mix("each", "2024-01-10", "mq", volume=2000)
    for day, form in enumerate(("135-36", "135-24", "120", "220", "4x5", "5x7", "8x10"), 11):
        j.process("each", f"2024-01-{day}", (form, 1), used_ml=500)
    j.mix("together", "2024-01-10T11:00", "mq", volume=2000)
    j.process("together", "2024-01-11", ("135-36", 2), ("135-24", 1), ("120", 1), ("220", 1),
              ("4x5", 6), ("5x7", 4), ("8x10", 3))
    j.mix("by-area", "2024-01-10T12:00", "mq", volume=1500)
    j.event("processed", "by-area", "2024-01-12", area_cm2=516.13, used_ml=400)
    j.event("processed", "by-area", "2024-01-13", area_cm2=387.1, used_ml=400)
    save("film-formats", j, "2024-01-20")


def thirds():
    j = Journal(solution("mq"), solution("mq-20", capacity_films_per_litre=20), vessel())
    for batch, kind in (("ten", "mq"), ("twenty", "mq-20")):
        j.mix(batch, "2024-01-02", kind)
        for hour in range(30):
            if batch == "twenty" or hour < 15:
                j.process(batch, f"2024-01-{3 + hour // 2:02}T{10 + hour % 2 * 3}:00",
                          ("135-24", 1), used_ml=300)
    # 12 of them are 8 films, at 80 % of ten; 15 are ten; 30 are twenty.
    save("thirds", j, "2024-01-08T20:00", "2024-01-08T11:00", "2024-01-20", "2024-01-14T20:00")


def one_shot():
    j = Journal(solution("mq"), vessel(), vessel("b2", 1030, "hdpe"))
    j.mix("s", "2024-01-10", "mq")
    for day in (12, 15, 20):
        j.process("s", f"2024-01-{day}", ("135-36", 1), used_ml=150, one_shot=True)
    j.process("s", "2024-01-25", ("120", 2), used_ml=500, lost_ml=10)
    j.mix("gone", "2024-01-11", "mq", "b2", 600)
    j.process("gone", "2024-01-13", ("135-36", 1), used_ml=300, one_shot=True)
    j.process("gone", "2024-01-21", ("120", 1), one_shot=True)
    save("one-shot", j, "2024-01-31", "2024-01-31+all", "2024-01-14+all")


def steady_top_up():
    j = Journal(solution("mq", capacity_films_per_litre=20), vessel())
    j.mix("seasoned", "2024-01-01", "mq")
    for load in range(80):
        day = 1 + load * 2
        at = f"2024-{1 + day // 28:02}-{1 + day % 28:02}"
        j.process("seasoned", at + "T18:00", ("135-36", 1), used_ml=300, lost_ml=70)
        j.top_up("seasoned", at + "T18:20", 70)
    save("steady-top-up", j, "2024-07-01", "2024-03-01", "2024-01-20")


def top_up_from():
    j = Journal(solution("mq"), vessel(), vessel("b2", 2000, "pp"))
    j.mix("old", "2024-01-01", "mq", volume=800)
    j.mix("new", "2024-02-01", "mq", "b2", 1500)
    j.process("old", "2024-02-02", ("135-36", 3), lost_ml=60)
    j.top_up("old", "2024-02-03", 200, **{"from": "new"})
    j.event("drawn", "new", "2024-02-03", volume_ml=200, why="to top up")
    save("top-up-from", j, "2024-02-10")


def moved():
    j = Journal(solution("mq"), vessel(), vessel("small", 520), vessel("tall", 1030, "ldpe"))
    j.mix("d", "2024-01-10", "mq")
    j.process("d", "2024-01-15", ("120", 2), used_ml=600, lost_ml=480)
    j.event("moved", "d", "2024-01-20", vessel="small")
    j.event("moved", "d", "2024-03-01", vessel="tall", air_ml=40)
    save("moved", j, "2024-02-20", "2024-01-19", "2024-03-25")


def late_entered():
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10", "mq")
    j.process("d", "2024-02-10", ("135-36", 2), used_ml=600, lost_ml=25)
    j.top_up("d", "2024-02-12", 40)
    j.event("stored-at", "d", "2024-01-20", temperature_c=26)
    j.process("d", "2024-01-25", ("120", 1), used_ml=500, lost_ml=10)
    j.event("opened", "d", "2024-02-11")
    j.event("stored-at", "d", "2024-01-15", temperature_c=12)
    save("late-entered", j, "2024-03-01", "2024-02-01")


def same_instant():
    j = Journal(solution("mq"), vessel())
    for batch in ("film-first", "fresh-first"):
        j.mix(batch, "2024-01-10", "mq", volume=700)
    j.process("film-first", "2024-01-20", ("120", 2), lost_ml=30)
    j.top_up("film-first", "2024-01-20", 300)
    j.top_up("fresh-first", "2024-01-20", 300)
    j.process("fresh-first", "2024-01-20", ("120", 2), lost_ml=30)
    save("same-instant", j, "2024-01-20T10:00", "2024-02-01")


def voided():
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10", "mq")
    wrong = j.process("d", "2024-01-12", ("135-36", 9), used_ml=600)
    j.event("looked", "d", "2024-01-13", passed=True, why="smell")
    failed = j.event("looked", "d", "2024-01-14", passed=False, why="colour")
    j.process("d", "2024-01-12", ("135-36", 1), used_ml=600)
    j.event("voided", "d", "2024-02-20", voids=wrong, why="one film, not nine")
    gone = j.event("discarded", "d", "2024-01-16", how="by mistake")
    j.event("voided", "d", "2024-03-01", voids=failed, why="read the wrong bottle")
    j.event("voided", "d", "2024-03-02", voids=gone, why="it stands there still")
    j.process("d", "2024-03-03", ("120", 1), used_ml=500)
    save("voided", j, "2024-01-15", "2024-03-05", "2024-01-20+all")


def voided_by_name_alone():
    """Lines that take back without saying of which bottle: what they name says it."""
    j = Journal(solution("mq"), vessel(), {"type": "supply", "id": "s1", "name": "Gloves",
                                           "unit": "pair", "amount": 10}, version=2)

    def take_back(at, ident, **fields):
        taken = j.event("voided", "", at, voids=ident, **fields)
        del j.lines[-1]["batch"]
        return taken

    j.mix("d", "2024-01-10", "mq")
    j.mix("e", "2024-01-10T11:00", "mq")
    wrong = j.process("d", "2024-01-12", ("135-36", 9), used_ml=600)
    right = j.process("e", "2024-01-13", ("120", 3), used_ml=600)
    take_back("2024-01-14", wrong, why="another bottle")
    slip = take_back("2024-01-14T11:00", right)
    take_back("2024-01-14T12:00", slip, why="it was this one")
    again = take_back("2024-01-14T13:00", right)  # once more, now that it stands again
    take_back("2024-01-14T14:00", again)
    counted = j.event("counted", "", "2024-01-15", item="s1", amount=7)
    del j.lines[-1]["batch"]
    take_back("2024-01-15T11:00", counted)
    j.process("d", "2024-01-16", ("120", 1), used_ml=600)
    save("voided-by-name-alone", j, "2024-01-13T12:00", "2024-01-20")


def same_line_twice():
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10", "mq")
    j.process("d", "2024-01-12", ("135-36", 2), used_ml=600, lost_ml=20)
    j.lines += [dict(line) for line in j.lines[1:]]
    save("same-line-twice", j, "2024-01-20")


def zones():
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10T23:30:00-05:00", "mq")
    j.process("d", "2024-01-12T01:15:30.25+05:30", ("120", 1), used_ml=500, lost_ml=10)
    j.mix("e", "2024-01-11T04:29:59Z", "mq")
    j.process("e", "2024-01-11T20:00:00.5+02:00", ("120", 1), used_ml=500, lost_ml=10)
    save("zones", j, "2024-01-12T06:00:00+02:00", "2024-07-11T04:00")


def cupboard_lines():
    j = Journal(solution("mq"), vessel())
    j.lines.append({"type": "packet", "id": "p1", "solution": "mq", "makes_ml": 1000,
                    "lot": "A7", "bought": "2024-01-02", "use_by": "2026-01-31",
                    "cost": 8.5, "currency": "EUR"})
    j.mix("d", "2024-01-10", "mq", packet="p1")
    j.process("d", "2024-01-12", ("120", 1), used_ml=500, run="run-1")
    j.lines.append({"type": "film", "id": "film-1", "run": "run-1", "format": "120",
                    "name": "Harbour 100", "ei": 100, "notes": "ferry, morning fog"})
    save("cupboard-lines", j, "2024-01-20")


def names():
    j = Journal(solution("mq", name="Révélateur – grün"), vessel("b1", name="Flasche „Süd“"))
    j.mix("z-last-by-name", "2024-01-10", "mq", name="Entwickler № 1 ✓")
    j.mix("a-mixed-later", "2024-01-11", "mq")
    j.mix("m-entered-last", "2024-01-09", "mq", name="前のもの")
    j.mix("same-time", "2024-01-10", "mq")
    save("names-and-order", j, "2024-01-20")


def frozen():
    j = Journal(solution("mq"), fixer(), vessel(), vessel("b2", 600, "pp"))
    j.mix("thrown", "2024-01-10", "mq", volume=700)
    j.process("thrown", "2024-01-20", ("120", 2), used_ml=600, lost_ml=40)
    j.event("discarded", "thrown", "2024-02-20", how="to the drum")
    j.mix("drawn-dry", "2024-01-10", "fix", "b2", 500)
    j.process("drawn-dry", "2024-01-15", ("120", 2), lost_ml=100)
    j.event("drawn", "drawn-dry", "2024-01-25", volume_ml=400, why="spilled")
    j.mix("lost-all", "2024-01-12", "mq", "b2", 300)
    j.process("lost-all", "2024-01-16", ("135-36", 1), used_ml=300, lost_ml=300)
    j.mix("spent-then-dry", "2024-01-10", "mq", volume=200)
    j.event("stood-open", "spent-then-dry", "2024-01-11", hours=20, area_cm2=516.13)
    j.event("drawn", "spent-then-dry", "2024-01-20", volume_ml=200, why="poured away")
    j.mix("kept", "2024-01-14", "mq")
    save("frozen", j, "2024-06-01+all", "2024-06-01", "2024-01-20+all", "2024-02-20T10:00")


def no_capacity():
    j = Journal(solution("open", drop=["capacity_films_per_litre"]),
                fixer("fix-open", drop=["capacity_films_per_litre"]), vessel())
    j.mix("d", "2024-01-10", "open")
    j.process("d", "2024-01-12", ("120", 25), used_ml=600)
    j.mix("f", "2024-01-10", "fix-open")
    j.process("f", "2024-01-12", ("120", 25), used_ml=600)
    save("no-capacity", j, "2024-01-20")


def nothing_yet():
    j = Journal()
    save("empty-book", j, "2024-01-20+all")
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-10", "mq")
    save("before-mixing", j, "2024-01-10T09:59+all")


def defaults():
    j = Journal(solution("plain", drop=["q10", "oxygen_factor", "sources"]),
                solution("airy", oxygen_factor=0.9), solution("water", oxygen_factor=1.0),
                vessel())
    for kind in ("plain", "airy", "water"):
        j.mix(kind, "2024-01-10", kind, volume=640)
        j.process(kind, "2024-01-20", ("120", 1), used_ml=500)
    save("oxygen-factors", j, "2024-02-20")


def drawn_off():
    """Drawing off keeps every concentration, and leaves more air."""
    j = Journal(solution("mq"), vessel("b1", 1030, "pet"))
    j.mix("d", "2024-01-10", "mq")
    j.process("d", "2024-01-12", ("120", 2), used_ml=600)
    j.event("drawn", "d", "2024-01-20", volume_ml=150, why="a print")
    j.event("drawn", "d", "2024-01-21", volume_ml=310.5, why="spilled", air_ml=100)
    save("drawn-off", j, "2024-01-20T10:00", "2024-01-21T10:00", "2024-02-20")


def opened_or_not():
    """A test opens the bottle; a look, a note, contamination and dissolving do not."""
    kinds = {"opened": {}, "clearing-test": {"seconds": 60, "temperature_c": 20},
             "strip-test": {"density": 1.2, "factor": 1, "passed": True},
             "looked": {"passed": True, "why": "colour"}, "noted": {"text": "a look"},
             "contaminated": {"why": "a drop"}, "dissolved": {},
             "stored-at": {"temperature_c": 20}}
    j = Journal(fixer(keeping={"full_days": 182.625, "half_days": 60.875}), vessel())
    for kind, fields in kinds.items():
        j.mix(f"by-{kind}", "2024-01-10", "fix", volume=600)
        j.event(kind, f"by-{kind}", "2024-01-20", **fields)
    save("opened-or-not", j, "2024-01-30")
