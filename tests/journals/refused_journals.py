"""Journals that have to be refused, each with one defect."""

import json

from scenario_kit import Journal, films, fixer, save_refused, solution, vessel

FIRST_LINE = 8                  # where the defect stands, unless told otherwise


def base(version=1):
    """Two solutions, three vessels and a litre of developer: seven lines."""
    j = Journal(solution("mq"), fixer(), vessel("b1"), vessel("small", 520),
                vessel("b2", 2000), version=version)
    j.mix("d", "2024-01-10", "mq")
    assert len(j.lines) == FIRST_LINE - 1
    return j


def last(name, field, kind, at="2024-01-12", batch="d", drop=(), version=1, **fields):
    """One more event, at fault in that field."""
    j = base(version)
    j.event(kind, batch, at, **fields)
    for one in drop:
        del j.lines[-1][one]
    save_refused(name, j.raw(), FIRST_LINE, field)


def raw_line(name, text, field=None, version=1):
    """One more line, as bytes."""
    save_refused(name, base(version).raw() + text, FIRST_LINE, field)


def object_line(name, made, field, drop=(), version=1):
    """One more object that is not an event."""
    for one in drop:
        del made[one]
    raw_line(name, json.dumps(made).encode() + b"\n", field, version)


def make():
    amounts()
    order_in_time()
    after_the_end()
    fields()
    references()
    solutions_and_vessels()
    not_a_journal()


def amounts():
    last("more-used-than-there", "used_ml", "processed", films=films(("120", 1)), used_ml=1001)
    last("lost-more-than-there", "lost_ml", "processed", films=films(("120", 1)), lost_ml=1000.5)
    last("one-shot-more-than-there", "used_ml", "processed", films=films(("120", 1)),
         used_ml=1200, one_shot=True)
    last("drawn-more-than-there", "volume_ml", "drawn", volume_ml=1000.01, why="spilled")
    last("topped-over-capacity", "volume_ml", "topped-up", volume_ml=30.5)
    last("moved-to-smaller", "vessel", "moved", vessel="small")
    last("vessel-too-small", "volume_ml", "mixed", batch="e", solution="mq", vessel="small",
         volume_ml=521)
    last("negative-volume", "volume_ml", "mixed", batch="e", solution="mq", vessel="b1",
         volume_ml=-100)
    last("mixed-nothing", "volume_ml", "mixed", batch="e", solution="mq", vessel="b1",
         volume_ml=0)
    last("drawn-negative", "volume_ml", "drawn", volume_ml=-5, why="slip")
    last("lost-negative", "lost_ml", "processed", films=films(("120", 1)), lost_ml=-1)
    last("air-negative", "air_ml", "opened", air_ml=-3)
    last("topped-up-negative", "volume_ml", "topped-up", volume_ml=-10)
    j = base()                           # the first fills the bottle
    j.top_up("d", "2024-02-01", 30)
    j.top_up("d", "2024-02-02", 1)
    save_refused("topped-over-in-two-steps", j.raw(), FIRST_LINE + 1, "volume_ml")


def order_in_time():
    last("before-mixing", "at", "opened", at="2024-01-10T09:59")
    last("far-future", "at", "opened", at="2999-01-01")
    last("no-zone", "at", "opened", at="2024-01-12T10:00:00")
    last("bad-time", "at", "opened", at="2024-02-30T10:00:00Z")
    last("bad-hour", "at", "opened", at="2024-02-20T25:00:00Z")
    j = base()
    j.event("opened", "d", "2024-01-12")
    j.lines[-1]["at"] = "2024-01-12"
    save_refused("date-alone", j.raw(), FIRST_LINE, "at")
    j = base()
    j.event("opened", "d", "2024-01-12")
    j.lines[-1]["at"] = 1705053600
    save_refused("time-as-number", j.raw(), FIRST_LINE, "at")


def after_the_end():
    for name, kind, more in (("after-discard", "discarded", {"how": "to the drum"}),
                             ("after-used-up", "drawn", {"volume_ml": 1000, "why": "poured"})):
        j = base()
        j.event(kind, "d", "2024-01-12", **more)
        j.event("opened", "d", "2024-01-13")
        save_refused(name, j.raw(), FIRST_LINE + 1, "at")
    j = base()
    j.process("d", "2024-01-12", ("120", 1), one_shot=True)
    j.event("stored-at", "d", "2024-01-13", temperature_c=18)
    save_refused("after-one-shot-of-all", j.raw(), FIRST_LINE + 1, "at")
    j = base()
    j.event("discarded", "d", "2024-01-12", how="to the drum")
    j.event("discarded", "d", "2024-01-14", how="again")
    save_refused("discarded-twice", j.raw(), FIRST_LINE + 1, "at")


def fields():
    last("missing-field", "volume_ml", "drawn", why="spilled")
    last("missing-at", "at", "opened", drop=["at"])
    last("missing-kind", "kind", "opened", drop=["kind"])
    last("missing-id", "id", "opened", drop=["id"])
    last("missing-batch", "batch", "opened", drop=["batch"])
    last("missing-films", "films", "processed", used_ml=300)
    last("films-empty", "films", "processed", films=[])
    last("bad-format", "format", "processed", films=films(("130-12", 1)))
    last("count-zero", "count", "processed", films=films(("120", 0)))
    last("count-not-whole", "count", "processed", films=films(("120", 1.5)))
    last("area-zero", "area_cm2", "processed", area_cm2=0)
    last("unknown-kind", "kind", "frozen")
    last("text-for-number", "volume_ml", "drawn", volume_ml="20", why="spilled")
    last("number-for-text", "vessel", "moved", vessel=7)
    last("null-for-number", "volume_ml", "drawn", volume_ml=None, why="spilled")
    last("passed-as-text", "passed", "looked", passed="yes", why="colour")
    last("hot-200-degrees", "temperature_c", "stored-at", temperature_c=200)
    last("below-freezing", "temperature_c", "stored-at", temperature_c=-0.5)
    last("hours-negative", "hours", "stood-open", hours=-1, area_cm2=500)
    last("surface-missing", "area_cm2", "stood-open", hours=2)
    last("seconds-zero", "seconds", "clearing-test", seconds=0, temperature_c=20)
    last("strip-negative", "factor", "strip-test", density=1.2, factor=-1, passed=True)
    last("history-otherwise", "history", "mixed", batch="e", solution="mq", vessel="b1",
         volume_ml=500, history="doubtful")
    start = b'{"type":"event","id":"e9","batch":"d","kind":"drawn","at":"2024-01-12T10:00:00Z",'
    raw_line("nan", start + b'"volume_ml":NaN,"why":"x"}\n')
    raw_line("infinite", start + b'"volume_ml":1e999,"why":"x"}\n', "volume_ml")
    raw_line("minus-infinite", start + b'"volume_ml":-1e999,"why":"x"}\n', "volume_ml")


def references():
    last("unknown-batch", "batch", "opened", batch="nobody")
    last("unknown-vessel", "vessel", "moved", vessel="b9")
    last("mixed-in-unknown-vessel", "vessel", "mixed", batch="e", solution="mq", vessel="b9",
         volume_ml=500)
    last("unknown-solution", "solution", "mixed", batch="e", solution="xx", vessel="b1",
         volume_ml=500)
    last("unknown-packet", "packet", "mixed", batch="e", solution="mq", vessel="b1",
         volume_ml=500, packet="p9")
    last("mixed-twice", "batch", "mixed", solution="mq", vessel="b1", volume_ml=500)
    last("topped-up-from-unknown", "from", "topped-up", volume_ml=10, **{"from": "nobody"})
    last("void-unknown", "voids", "voided", voids="e77", why="slip")
    j = base()
    wrong = j.event("opened", "d", "2024-01-12")
    j.event("voided", "d", "2024-01-13", voids=wrong, why="slip")
    j.event("voided", "d", "2024-01-14", voids=wrong, why="slip again")
    save_refused("void-twice", j.raw(), FIRST_LINE + 2, "voids")
    j = base()
    j.mix("e", "2024-01-11", "mq")
    wrong = j.event("opened", "d", "2024-01-12")
    j.event("voided", "e", "2024-01-13", voids=wrong, why="slip")
    save_refused("void-of-another-bottle", j.raw(), FIRST_LINE + 2, "batch")
    j = base()
    j.event("opened", "d", "2024-01-12")
    j.lines.append({**j.lines[-1], "at": "2024-01-12T11:00:00Z"})
    save_refused("same-id-other-content", j.raw(), FIRST_LINE + 1, "id")
    object_line("same-vessel-other-content", vessel("b1", 1040), "id")
    object_line("same-solution-other-content", solution("mq", percent=12), "id")


def solutions_and_vessels():
    object_line("unknown-type", {"type": "bucket", "id": "x"}, "type")
    object_line("missing-type", {"id": "x", "name": "y"}, "type")
    object_line("unknown-material", vessel("b5", 1000, "tin"), "material")
    object_line("zero-capacity", vessel("b5", 0), "capacity_ml")
    object_line("wall-zero", vessel("b5", 1000, "pet", wall_mm=0), "wall_mm")
    object_line("permeability-negative", vessel("b5", 1000, "pet", permeability=-1),
                "permeability")
    object_line("cap-negative", vessel("b5", cap_cm3_day=-0.1), "cap_cm3_day")
    object_line("vessel-without-size", vessel("b5"), "capacity_ml", ["capacity_ml"])
    object_line("unknown-role", solution("s", role="toner"), "role")
    object_line("unknown-wear-rule", solution("s", rule="quadratic"), "rule")
    object_line("percent-missing", solution("s", wear={"rule": "per-film"}), "percent")
    object_line("steps-missing", solution("s", wear={"rule": "steps"}), "steps")
    object_line("zero-films-per-litre", solution("s", capacity_films_per_litre=0),
                "capacity_films_per_litre")
    object_line("zero-keeping", solution("s", keeping={"full_days": 0}), "full_days")
    object_line("half-keeping-negative", solution("s", keeping={"full_days": 90, "half_days": -3}),
                "half_days")
    object_line("fresh-clearing-zero", fixer("s", fresh_clearing_s=0), "fresh_clearing_s")


def not_a_journal():
    rest = b"\n".join(base().raw().split(b"\n")[1:])
    for name, line, field in (
            ("wrong-version", b'{"type":"book","format":"ullage-journal","version":3}', "version"),
            ("wrong-format", b'{"type":"book","format":"diary","version":1}', "format"),
            ("version-missing", b'{"type":"book","format":"ullage-journal"}', "version")):
        save_refused(name, line + b"\n" + rest, 1, field)
    save_refused("no-book-line", rest, 1, "type")
    raw_line("not-json", b"mixed a litre, it looks fine\n")
    raw_line("array-line", b'["event","e9","opened"]\n')
    raw_line("two-objects-on-a-line", b'{"type":"film","id":"a"}{"type":"film","id":"b"}\n')
    raw_line("truncated-line", b'{"type":"event","id":"e9","batch":"d","kind":"ope')
    raw_line("invalid-utf8", b'{"type":"event","id":"e9","batch":"d","kind":"noted",'
             b'"at":"2024-01-12T10:00:00Z","text":"caf\xe9 \xff\xc0"}\n')
