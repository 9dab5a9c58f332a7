"""Lines of version 2 that have to be refused: out of range, naming nothing, contradictory."""

from refused_journals import last, object_line
from scenario_kit import fixer, films, solution, vessel


def event(name, field, kind, **more):
    last(name, field, kind, version=2, **more)


def line(name, made, field):
    object_line(name, made, field, version=2)


def make():
    events()
    solutions()
    cupboard_and_waste()
    runs_and_films()


def events():
    event("measured-too-much", "silver_g_per_litre", "measured", silver_g_per_litre=51,
          method="paper")
    event("measured-nothing", "silver_g_per_litre", "measured", method="paper")
    event("measured-negative", "silver_g_per_litre", "measured", silver_g_per_litre=-0.1,
          method="paper")
    event("second-as-text", "second", "processed", films=films(("120", 1)), second="yes")
    event("films-before-negative", "films_before", "mixed", batch="e", solution="mq", vessel="b2",
          volume_ml=500, films_before=-1)
    event("assumed-without-history", "assumed_films_per_litre", "mixed", batch="e", solution="mq",
          vessel="b2", volume_ml=500, assumed_films_per_litre=3)
    event("assumed-negative", "assumed_films_per_litre", "mixed", batch="e", solution="mq",
          vessel="b2", volume_ml=500, history="unknown", assumed_films_per_litre=-3)
    event("mixed-on-without-history", "mixed_on", "mixed", batch="e", solution="mq",
          vessel="b2", volume_ml=500, mixed_on="2023-12-01T10:00:00Z")
    event("mixed-on-a-date-alone", "mixed_on", "mixed", batch="e", solution="mq", vessel="b2",
          volume_ml=500, history="unknown", mixed_on="2023-12-01")
    event("mixed-on-after-it-was-found", "mixed_on", "mixed", batch="e", solution="mq",
          vessel="b2", volume_ml=500, history="unknown", mixed_on="2024-01-13T10:00:00Z")
    event("test-asked-without-mark", "mark", "test-asked", film="f1")
    event("test-asked-of-no-film", "film", "test-asked", mark="thin", film="f1")
    event("looked-at-what", "what", "looked", passed=True, why="a taste", what="taste")
    event("film-of-a-test-as-number", "film", "clearing-test", seconds=60, temperature_c=20,
          film=400)


def solutions():
    line("fixer-kind-otherwise", fixer("s", fixer_kind="neutral"), "fixer_kind")
    line("fix-min-too-short", fixer("s", fix_min_s=0.5), "fix_min_s")
    line("form-otherwise", solution("s", form="gas"), "form")
    line("one-shot-zero", solution("s", one_shot_ml_per_film=0), "one_shot_ml_per_film")
    line("turnover-limit-zero", solution("s", turnover_limit=0), "turnover_limit")
    line("half-keeping-as-long", solution("s", keeping={"full_days": 90, "half_days": 90}),
         "half_days")
    line("half-keeping-longer", solution("s", keeping={"full_days": 90, "half_days": 120}),
         "half_days")
    line("replenisher-unknown", solution("s", replenisher="r", replenish_ml_per_film=25),
         "replenisher")
    line("replenisher-without-rate", solution("s", replenisher="mq"), "replenish_ml_per_film")
    line("replaces-no-solution", solution("s", replaces="s0"), "replaces")
    line("vessel-withdraws-nothing", {"type": "vessel", "id": "b5", "withdrawn": True,
                                      "replaces": "b9"}, "replaces")
    line("vessel-replaces-nothing", vessel("b5", replaces="b9"), "replaces")


def cupboard_and_waste():
    event("taken-nothing", "amount", "taken", drop=["batch"], item="p1", amount=0)
    event("opened-unknown-item", "item", "opened-packet", drop=["batch"], item="p1")
    event("poured-into-nothing", "container", "poured-in", drop=["batch"], volume_ml=500)
    event("discarded-into-nothing", "container", "discarded", how="poured", container="c9")
    line("supply-without-name", {"type": "supply", "id": "s1"}, "name")
    line("supply-cost-in-words", {"type": "supply", "id": "s1", "name": "gloves",
                                  "cost": "nine"}, "cost")
    line("supply-cost-negative", {"type": "supply", "id": "s1", "name": "gloves",
                                  "cost": "-0.01"}, "cost")
    line("supply-withdraws-nothing", {"type": "supply", "id": "s1", "withdrawn": True}, "replaces")
    line("barcode-of-nothing", {"type": "barcode", "code": "1", "of": "p1"}, "of")
    line("work-without-time", {"type": "work", "id": "w1", "films": 8}, "at")
    line("container-holds-otherwise", {"type": "container", "id": "c1", "name": "Can",
                                       "holds": "bleach", "capacity_ml": 5000}, "holds")
    line("container-without-size", {"type": "container", "id": "c1", "name": "Can",
                                    "holds": "fixer"}, "capacity_ml")


def runs_and_films():
    step = {"step": "fix", "planned_s": 300, "real_s": 310}
    line("run-times-without-run", {"type": "run-times", "id": "t1", "steps": [step]}, "run")
    line("run-times-backwards", {"type": "run-times", "run": "r1",
                                 "steps": [{**step, "real_s": -1}]}, "real_s")
    line("run-times-of-no-run", {"type": "run-times", "run": "r1", "steps": [step]}, "run")
    line("film-mark-of-nothing", {"type": "film-mark", "id": "m1", "film": "f1",
                                  "at": "2024-01-12T10:00:00Z", "mark": "thin"}, "film")
