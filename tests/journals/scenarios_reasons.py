"""One journal for each reason a verdict can have: before it applies, and when it does."""

from reading_report import LEVEL_OF
from scenario_kit import Journal, codes_at, fixer, save, solution, vessel

BEFORE, AFTER = "2024-02-01", "2024-02-10"


def make():
    made = set()
    for code, build in REASONS.items():
        journal, *times = build()
        times = times or [BEFORE, AFTER]
        if code in codes_at(journal, times[0]) or code not in codes_at(journal, times[1]):
            raise SystemExit(f"{code}: not between {times}")
        save(f"reason-{code}", journal, *times)
        made.add(code)
    if made != set(LEVEL_OF):
        raise SystemExit(f"no journal for {set(LEVEL_OF) - made}")


def bottle(kind=None, volume=1000, version=2, **more):
    j = Journal(kind or solution("mq"), vessel(), version=version)
    j.mix("d", "2024-01-20", j.lines[1]["id"], volume=volume, **more)
    return j


def contaminated():
    j = bottle()
    j.event("contaminated", "d", "2024-02-05", why="stop bath in the funnel")
    return (j,)


def test_failed():
    j = bottle()
    j.event("looked", "d", "2024-01-25", passed=True, why="clear", what="colour")
    j.event("strip-test", "d", "2024-02-05", density=0.7, factor=1.6, passed=False)
    return (j,)


def clearing_doubled():
    j = bottle(fixer())
    j.test("d", "2024-01-21", 50, film="ordinary")
    j.test("d", "2024-01-21T11:00", 88, film="flat grain")
    j.process("d", "2024-01-22", ("120", 3), used_ml=600)
    j.test("d", "2024-02-05", 101, film="ordinary")
    j.test("d", "2024-02-05T11:00", 120, film="flat grain")
    return (j,)


def capacity_reached():
    j = bottle(fixer(fixer_kind="alkaline", drop=["capacity_films_per_litre"]), 700)
    j.process("d", "2024-01-25", ("120", 17), used_ml=600)
    j.process("d", "2024-02-05", ("4x5", 2), used_ml=600)
    return (j,)


def less_than_quarter_film():
    j = bottle(solution("once", one_shot_ml_per_film=250, drop=["capacity_films_per_litre"]))
    j.process("d", "2024-01-25", ("120", 3), used_ml=800, one_shot=True)
    j.event("drawn", "d", "2024-02-05", volume_ml=140, why="spilled")
    return (j,)


def past_keeping():
    j = bottle(fixer(keeping={"full_days": 14}))
    return j, "2024-02-03T09:59", "2024-02-03T10:01"


def silver_over_limit():
    j = bottle(fixer(silver_limit_g_per_litre=0.62), 500)
    j.process("d", "2024-01-25", ("120", 2))
    j.event("measured", "d", "2024-02-05", silver_g_per_litre=0.65, method="test paper")
    return (j,)


def turnover_over_limit():
    j = Journal(solution("mq-r"), solution("mq", replenisher="mq-r", replenish_ml_per_film=30,
                                           turnover_limit=0.0605), vessel(), version=2)
    j.mix("d", "2024-01-20", "mq")
    j.top_up("d", "2024-01-25", 30, solution="mq-r")
    j.event("drawn", "d", "2024-02-02", volume_ml=50, why="overflow")
    j.top_up("d", "2024-02-02", 30, solution="mq-r")
    j.top_up("d", "2024-02-05", 1, solution="mq-r")
    return j, "2024-02-03", AFTER


def standing_spent():
    j = bottle(volume=480)
    j.event("stood-open", "d", "2024-02-05T20:00", hours=9, area_cm2=516.13)
    return (j,)


def clearing_test_due():
    j = bottle(fixer())
    j.process("d", "2024-01-25", ("135-24", 7), used_ml=600)
    j.process("d", "2024-02-05", ("135-24", 1), used_ml=600)
    return (j,)


def history_unknown():
    j = bottle(history="unknown", mixed_on="2024-01-02T08:00:00Z", assumed_films_per_litre=1)
    j.event("looked", "d", "2024-01-25", passed=True, why="leader went black", what="leader")
    return j, BEFORE, "2024-02-08T10:00"


def test_asked():
    j = bottle()
    j.process("d", "2024-01-25", ("135-36", 1), used_ml=600, run="r1")
    j.lines.append({"type": "film", "id": "film-1", "run": "r1", "format": "135-36",
                    "name": "Invented 200", "ei": 200})
    j.event("test-asked", "d", "2024-02-05", mark="thin", film="film-1")
    j.event("looked", "d", "2024-02-15", passed=True, why="leader went black", what="leader")
    return j, BEFORE, AFTER, "2024-02-16"


def capacity_near():
    j = bottle()
    j.process("d", "2024-01-25", ("120", 7), used_ml=600)
    j.process("d", "2024-02-05", ("120", 1), used_ml=600)
    return (j,)


def films_few():
    j = bottle(solution("once", one_shot_ml_per_film=250))
    j.process("d", "2024-01-25", ("120", 2), used_ml=300, one_shot=True)
    j.process("d", "2024-02-05", ("120", 1), used_ml=330, one_shot=True)
    return (j,)


def standing_near():
    j = bottle()
    j.event("stood-open", "d", "2024-02-05T20:00", hours=17, area_cm2=516.13)
    return (j,)


def discard_soon():
    j = bottle(solution("stop", role="stop", rule="none", keeping={"full_days": 30}))
    return j, "2024-02-05T09:59", "2024-02-05T10:00"


REASONS = {
    "contaminated": contaminated, "test-failed": test_failed,
    "clearing-doubled": clearing_doubled, "capacity-reached": capacity_reached,
    "less-than-quarter-film": less_than_quarter_film, "past-keeping": past_keeping,
    "silver-over-limit": silver_over_limit, "turnover-over-limit": turnover_over_limit,
    "standing-spent": standing_spent, "clearing-test-due": clearing_test_due,
    "history-unknown": history_unknown, "test-asked": test_asked,
    "capacity-near": capacity_near, "films-few": films_few, "standing-near": standing_near,
    "discard-soon": discard_soon}
