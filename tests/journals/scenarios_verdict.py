"""Scenarios about verdicts, passes and the pace of film."""

from scenario_kit import SIX_MONTHS, Journal, fixer, save, solution, vessel


def make():
    for one in (every_reason, good, failed_stays, passes_clear_standing, unknown_history,
                fixer_passes, near_edges, pace, old_loads, spent_pace, mean_loads):
        one()


def every_reason():
    """A batch for each reason; the name says which."""
    j = Journal(solution("mq"), solution("short", keeping={"full_days": 45}),
                fixer(), fixer("silvery", silver_limit_g_per_litre=0.2), vessel(),
                vessel("soft", 1030, "hdpe"))
    start = "2024-01-05"
    for batch, kind, bottle, volume, more in (
            ("contaminated", "mq", "b1", 1000, {}), ("test-failed-look", "mq", "b1", 1000, {}),
            ("test-failed-strip", "mq", "b1", 1000, {}), ("clearing-doubled", "fix", "b1", 1000, {}),
            ("capacity-reached", "mq", "b1", 1000, {}),
            ("less-than-quarter-film", "mq", "b1", 1000, {}),
            ("past-keeping", "short", "b1", 1000, {}),
            ("silver-over-limit", "silvery", "b1", 1000, {}),
            ("standing-spent", "mq", "b1", 300, {}), ("clearing-test-due", "fix", "b1", 1000, {}),
            ("history-unknown", "mq", "b1", 1000, {"history": "unknown"}),
            ("capacity-near", "mq", "b1", 1000, {}), ("films-few", "mq", "b1", 1000, {}),
            ("standing-near", "mq", "b1", 1000, {}), ("good", "mq", "b1", 1000, {})):
        j.mix(batch, start, kind, bottle, volume, **more)
    j.event("contaminated", "contaminated", "2024-01-10", why="stop bath splashed in")
    j.event("looked", "test-failed-look", "2024-01-10", passed=False, why="precipitate")
    j.event("strip-test", "test-failed-strip", "2024-01-10", density=0.8, factor=1.5, passed=False)
    j.test("clearing-doubled", "2024-01-10", 50)
    j.test("clearing-doubled", "2024-02-10", 101)
    j.process("capacity-reached", "2024-01-10", ("120", 10), used_ml=800)
    j.process("less-than-quarter-film", "2024-01-10", ("120", 9), used_ml=800)
    j.event("drawn", "less-than-quarter-film", "2024-01-11", volume_ml=800, why="spilled")
    j.process("silver-over-limit", "2024-01-10", ("120", 2), used_ml=800)
    j.test("silver-over-limit", "2024-02-10", 50)
    j.process("capacity-near", "2024-01-10", ("120", 3), used_ml=800)
    j.process("capacity-near", "2024-01-11", ("120", 5), used_ml=800)
    j.process("films-few", "2024-01-10", ("120", 6), used_ml=300)
    j.event("stood-open", "standing-near", "2024-01-10", hours=14, area_cm2=516.13)
    save("every-reason", j, "2024-02-20", "2024-01-12")


def good():
    j = Journal(solution("mq"), vessel())
    j.mix("d", "2024-01-05", "mq")
    j.process("d", "2024-01-10", ("120", 2), used_ml=600, lost_ml=10)
    save("good", j, "2024-01-12")


def failed_stays():
    """A later pass does not undo a failure, voiding it does."""
    j = Journal(solution("mq"), vessel())
    for batch in ("passed-later", "voided-later"):
        j.mix(batch, "2024-01-05", "mq")
    j.event("looked", "passed-later", "2024-01-10", passed=False, why="colour")
    j.event("looked", "passed-later", "2024-01-11", passed=True, why="colour")
    j.event("strip-test", "passed-later", "2024-01-12", density=1.2, factor=1, passed=True)
    wrong = j.event("strip-test", "voided-later", "2024-01-10", density=0.5, factor=2, passed=False)
    j.event("voided", "voided-later", "2024-01-11", voids=wrong, why="wrong strip")
    save("failed-stays", j, "2024-01-13")


def passes_clear_standing():
    j = Journal(solution("mq"), vessel("b1", 1030, "hdpe"))
    j.mix("d", "2024-01-05", "mq", volume=700)
    j.event("looked", "d", "2024-04-20", passed=True, why="leader test")
    j.process("d", "2024-04-24", ("120", 1), used_ml=600)
    j.mix("e", "2024-01-05", "mq", volume=700)
    j.event("strip-test", "e", "2024-04-20", density=1.2, factor=1, passed=True)
    save("passes-clear-standing", j, "2024-04-19", "2024-04-21", "2024-04-25", "2024-05-03",
         "2024-05-05", "2024-07-06")


def unknown_history():
    j = Journal(solution("mq"), vessel())
    j.mix("found", "2024-01-05", "mq", history="unknown")
    j.event("looked", "found", "2024-01-07", passed=True, why="leader test")
    j.process("found", "2024-01-08", ("120", 1), used_ml=600)
    j.process("found", "2024-01-09", ("120", 1), used_ml=600)
    j.event("strip-test", "found", "2024-01-20", density=1.1, factor=1.1, passed=True)
    save("unknown-history", j, "2024-01-06", "2024-01-07T12:00", "2024-01-08T12:00",
         "2024-01-09T12:00", "2024-01-21", "2024-02-10")


def fixer_passes():
    """A clearing test under twice fresh passes, if fresh is known."""
    j = Journal(fixer("known", fresh_clearing_s=50, keeping={"full_days": SIX_MONTHS}),
                fixer("unknown", keeping={"full_days": SIX_MONTHS}), vessel())
    for kind, seconds in (("known", 80), ("known", 99.9), ("known", 100), ("unknown", 80)):
        batch = f"{kind}-{seconds}"
        j.mix(batch, "2024-01-05", kind, history="unknown")
        j.process(batch, "2024-01-06", ("120", 2), used_ml=600)
        j.test(batch, "2024-01-07", seconds)
    save("fixer-passes", j, "2024-01-08", "2024-01-06T12:00", "2024-01-22")


def near_edges():
    """80 %, a load's worth left, and 14 days, from both sides."""
    j = Journal(solution("mq"), solution("kept-45", keeping={"full_days": 45}), vessel())
    for batch, loads in (("just-under-80", [("120", 7), ("5x7", 2)]), ("at-80", [("120", 8)]),
                         ("one-left-of-ones", [("120", 1)] * 9)):
        j.mix(batch, "2024-01-05", "mq")
        for hour, load in enumerate(loads):
            j.process(batch, f"2024-01-06T{10 + hour}:00", load, used_ml=600)
    j.mix("two-left-of-twos", "2024-01-05", "mq", volume=400)
    j.process("two-left-of-twos", "2024-01-06", ("120", 2))
    j.mix("no-loads-one-left", "2024-01-05", "mq", volume=100)
    j.mix("no-loads-more-left", "2024-01-05", "mq", volume=101)
    j.mix("fourteen-days", "2024-01-05", "kept-45", volume=1020)
    save("near-edges", j, "2024-01-07", "2024-02-05T10:00", "2024-02-05T09:59")


def pace():
    j = Journal(solution("mq", capacity_films_per_litre=16), solution("still", drop=["keeping"]),
                vessel())
    for batch, kind in (("weekly", "mq"), ("sudden", "mq"), ("never", "mq"), ("still", "still")):
        j.mix(batch, "2024-01-05", kind)
    for day in ("01-06", "01-13", "01-20", "01-27", "02-03", "02-10"):
        j.process("weekly", f"2024-{day}", ("135-36", 1), ("135-24", 1), used_ml=600)
        j.process("still", f"2024-{day}", ("135-36", 1), used_ml=600)
    j.process("sudden", "2024-02-10", ("4x5", 3), used_ml=600)
    save("pace", j, "2024-02-10T10:00", "2024-02-12", "2024-01-20T12:00", "2024-04-30")


def old_loads():
    """Only loads of the last 180 days count; the mean is over all of them."""
    j = Journal(solution("long", keeping={"full_days": 730.5, "half_days": 365.25}),
                solution("for-ever", drop=["keeping"]), vessel())
    for kind in ("long", "for-ever"):
        j.mix(kind, "2023-01-05", kind)
        for day, count in (("2023-01-10", 2), ("2023-02-10", 1), ("2023-05-20", 1),
                           ("2023-08-01", 1)):
            j.process(kind, day, ("120", count), used_ml=600)
    save("loads-older-than-180-days", j, "2023-08-10", "2023-05-25", "2023-10-01", "2024-03-01")


def spent_pace():
    """Standing over and film left: the chance is nought."""
    j = Journal(solution("kept-20", keeping={"full_days": 20}), vessel())
    j.mix("d", "2024-01-05", "kept-20")
    j.process("d", "2024-01-06", ("120", 2), used_ml=600)
    j.mix("full-of-film", "2024-01-05", "kept-20")
    j.process("full-of-film", "2024-01-06", ("120", 11), used_ml=600)
    save("spent-pace", j, "2024-01-20", "2024-02-20")


def mean_loads():
    """Loads still to come are counted by the mean load, thirds and all."""
    j = Journal(solution("mq"), vessel())
    j.mix("by-thirds", "2024-01-05", "mq")
    for hour in range(9):
        j.process("by-thirds", f"2024-01-06T{10 + hour}:00", ("135-24", 1), used_ml=300)
    j.mix("uneven", "2024-01-05", "mq", volume=870)
    for day, count in ((6, 1), (9, 3), (15, 1)):
        j.process("uneven", f"2024-01-{day:02}", ("4x5", count), used_ml=600, lost_ml=4)
    save("mean-loads", j, "2024-01-16")
