"""Numbers worked by hand from the documents and from the sources they name.

Each check puts what the reading finds beside a figure that was not taken from it."""

import math
from datetime import date, timedelta

from reading_advice import extrapolates, grade, lower_bounds, store_warning
from reading_events import FILM_AREA_CM2
from reading_fields import Refused, instant
from reading_fixer import (at_20_degrees, capacity_of, clearing, cold_factor, fixing_time,
                           second_bath_time)
from reading_fold import Shelf
from reading_maths import Line
from reading_mixing import (hot_volume, left_after_dumps, parts_by_weight, starting_volume,
                            strength_by_weight, tau_of, volume_of_strong, warmed)
from reading_model import (DEFAULT_OXYGEN_FACTOR, MONTH_DAYS, PLAIN, Air, Standing, ageing_rate,
                           dissolved_oxygen, standing_limits, wall_share)
from reading_own import (developer_strips, developer_wear, fixer_capacity, fixer_tests,
                         keeping_limit_posterior, keeping_trials, log_chance, solved)
from reading_report import keeping_limit, report_at, wear_factor
from reading_span import discard_span
from reading_time import Q10_RANGE, base_time, carried_range, stock_for
from scenario_kit import SIX_MONTHS, TWO_MONTHS, Journal, book_of, fixer, solution, vessel


def fahrenheit(degrees):
    return (degrees - 32.0) / 1.8


def air_and_age(check):
    c_sat = dissolved_oxygen(0.49)
    stock = (SIX_MONTHS, TWO_MONTHS, c_sat, True)
    for openings, limit in ((1, 12.8), (2, 24.3), (3, 33.0), (4, 40.0)):
        found = standing_limits(*stock, Air(half_openings=openings))[0]
        check(f"limit, half-full bottle opened {openings} times", found, limit, 0.5)
    check("life of the stock, days", standing_limits(*stock)[1], 189.0, 0.5)
    check("wall at 25", wall_share(25), 1.0, 1e-12)
    check("wall at 20", wall_share(20), 0.81, 5e-3)
    check("wall at 5", wall_share(5), 0.40, 5e-3)
    check("ageing at 30 against 20", ageing_rate(30), 3.3, 0.05)
    # 88 kJ/mol is the same constant times the gas constant.
    check("ageing, kJ/mol", PLAIN.ageing_kelvin * 8.314e-3, 88.0, 0.5)
    # 100 g/L sulfite is 0.793 mol/L; its two sodium ions and one sulfite ion salt out oxygen.
    sulfite = 10.0 ** -(0.793 * (2 * 0.1171 + 0.1537))
    check("salting out by 100 g/L sulfite", DEFAULT_OXYGEN_FACTOR, sulfite, 5e-3)
    kept = Standing(solution("mq"))
    check("a litre in an open tray for its 24 h, taken up and saturated",
          kept.k_tray * 516.13 * c_sat * 24 / 1000 + c_sat, kept.limit, 1e-9)
    plain = Standing(solution("mq", keeping={"full_days": SIX_MONTHS, "half_days": TWO_MONTHS}))
    check("hours in a tray at 7 cm/h", (plain.limit - c_sat) * 1000
          / (7.0 * 516.13 * c_sat), 48.0, 0.5)
    for sort in (fixer(), solution("stop", role="stop")):
        sort["keeping"] = {"full_days": TWO_MONTHS, "tray_hours": 24}
        model = Standing(sort)
        check(f"{sort['role']}: air does not count", model.air_part(99.0), 0.0, 0.0)
        check("  its life is the published time", model.life, TWO_MONTHS, 0.0)
        check("  its tray as open water", model.k_tray, 7.0, 0.0)
        check("  warm or cold alike", model.aged(1.0, 35), model.aged(1.0, 5), 0.0)


def months(check):
    for start, days, end in (("2023-08-31T10:00:00Z", SIX_MONTHS, "2024-02-29T10:00:00Z"),
                             ("2024-08-31T10:00:00Z", SIX_MONTHS, "2025-02-28T10:00:00Z"),
                             ("2024-01-31T10:00:00Z", TWO_MONTHS, "2024-03-31T10:00:00Z"),
                             ("2024-01-31T10:00:00Z", 45, "2024-03-16T10:00:00Z")):
        check(f"{days} days from {start}", keeping_limit(instant(start), days), instant(end), 0)


def films_and_wear(check):
    check("a film is 80 square inches", FILM_AREA_CM2, 80 * 2.54 ** 2, 1e-9)
    check("3 square feet in films", 3 * 12 ** 2 * 2.54 ** 2 / FILM_AREA_CM2, 5.4, 1e-9)
    check("tenth film, additive", wear_factor({"rule": "per-film", "percent": 10}, 9), 1.90, 1e-12)
    check("tenth film, compound", wear_factor({"rule": "compound", "percent": 10}, 9), 2.36, 5e-3)
    check("stock in 600 ml of 1+1", stock_for(600, 1), 300, 0)
    check("stock in 600 ml of 1+9", stock_for(600, 9), 60, 0)


def _taken(pairs, celsius):
    try:
        base_time(pairs, celsius)
    except Refused:
        return False
    return True


def times(check):
    minute = 60.0
    for name, ends, middles, q10, slack in (
            ("MQ-borax, medium film", (6.5, 5.0), (6.0, 5.5), None, 0.25),
            ("MQ-borax, high-speed film", (7.0, 5.5), (6.5, 6.0), None, 0.25),
            ("ascorbate, one film", (6.0, 4.0), (5.25, 4.75), 2.84, 0.1),
            ("ascorbate, another", (5.5, 4.0), (5.0, 4.5), 2.27, 0.1)):
        places = [fahrenheit(f) for f in (68, 70, 72, 75)]
        pairs = [(places[0], ends[0] * minute), (places[3], ends[1] * minute)]
        if q10 is not None:
            check(f"one end from the other, {name}",
                  base_time(pairs[:1], places[3], q10)[0] / minute, ends[1], 5e-3)
        for place, middle in zip(places[1:3], middles):
            check(f"{name} at {place:.1f}", base_time(pairs, place)[0] / minute, middle, slack)
    pairs = [(fahrenheit(f), m * minute) for f, m in
             ((80, 2), (76, 3), (72, 4), (68, 5), (64, 6.5), (60, 9.5))]
    for f, m in ((78, 2.5), (74, 3.5), (70, 4.5), (66, 5.5), (62, 8)):
        check(f"radiographic film at {f} F", base_time(pairs, fahrenheit(f))[0] / minute, m, 0.25)
    single = base_time([(fahrenheit(68), 5 * minute)], fahrenheit(60))[0] / minute
    check("one pair misses 60 F by", 9.5 - single, 2.85, 5e-3)
    for celsius, given, taken in ((12.9, [(20, 600)], 0), (30.1, [(20, 600)], 0),
                                  (12.9, [(12, 900), (20, 600)], 1), (13, [(20, 600)], 1)):
        check(f"{celsius} from {given}: taken", _taken(given, celsius), taken, 0)
    low, high = carried_range((20, 600), 24, Q10_RANGE["metol-hydroquinone"])
    check("one pair at 24, shortest", low, 600 * 3.0 ** -0.4, 1e-9)
    check("one pair at 24, longest", high, 600 * 1.5 ** -0.4, 1e-9)


def fixing(check):
    check("5 min at 20 is 10 min at 10", 5 * cold_factor(10), 10, 1e-12)
    check("35 F, law against print", cold_factor(fahrenheit(35)), 3.56, 5e-3)
    check("no shorter when warm", cold_factor(27), 1.0, 0.0)
    check("60 s at 30 is 120 s at 20", at_20_degrees(60, 30), 120, 1e-12)
    check("120 s at 10 is 60 s at 20", at_20_degrees(120, 10), 60, 1e-12)
    for more, films in (({}, 20), ({"fixer_kind": "acid"}, 20), ({"fixer_kind": "alkaline"}, 25)):
        check(f"capacity of {more}", capacity_of(fixer(drop=["capacity_films_per_litre"], **more)),
              films, 0)
    j = Journal(fixer(), vessel())
    j.mix("f", "2024-01-01", "fix")
    j.process("f", "2024-01-02", ("120", 12), ("4x5", 16), ("8x10", 4))
    j.test("f", "2024-01-03", 70)
    found = report_at(book_of(j), "2024-01-04T12:00:00Z")[0]
    check("12 rolls, 16 sheets, 4 large: films", found["wear_films_per_litre"], 20, 1e-12)
    check("20 films' silver", found["silver_g_per_litre"], 3.0, 1e-12)
    check("fixing time, s", found["fix_s"], 140, 1e-12)
    # One test of 50 s when fresh, six films later of twenty: 50 + 50 * 6 / 20.
    j = Journal(fixer(fix_min_s=150), vessel(), version=2)
    j.mix("f", "2024-01-01", "fix")
    j.test("f", "2024-01-01T12:00", 50)
    j.process("f", "2024-01-02", ("120", 6))
    batch = Shelf(book_of(j), instant("2024-01-03T12:00:00Z")).batches["f"]
    cleared = clearing(batch)
    check("carried on from one test", cleared["now_s"], 65, 1e-12)
    check("not under the packet's", fixing_time(batch, cleared), 150, 0)
    check("thrice for flat grain", fixing_time(batch, cleared, tabular=True), 195, 1e-12)
    check("and twice as long at 10", fixing_time(batch, cleared, 10), 300, 1e-12)
    check("each of two baths", second_bath_time(batch, cleared), 75, 0)


def weekly_litre(check):
    """A litre opened once a week, 15 to 20 mL lost each time: 11 or 12 films by the model."""
    for lost, more in ((15, {}), (15, {"used_ml": 500}), (17.5, {}), (20, {})):
        j = Journal(solution("mq", capacity_films_per_litre=30), vessel())
        j.mix("d", "2024-01-01", "mq")
        for week in range(1, 16):
            at = date(2024, 1, 1) + timedelta(weeks=week)
            j.process("d", at.isoformat(), ("120", 1), lost_ml=lost, **more)
        book = book_of(j)
        standing = [Shelf(book, f.at - 1).batches["d"].standing() for f in book.events[1:]]
        done = sum(1 for one in standing if one < 1.0)
        check(f"films before it is spent, {lost} mL lost each time", done, 11.5, 0.5)


def fit(check):
    """Norris' certified straight line."""
    xs = [0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6,
          775.5, 666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8,
          339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5]
    ys = [0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1,
          778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6,
          339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2]
    line = Line(list(zip(xs, ys)))
    for name, found, value in (("intercept", line.intercept, -0.262323073774029),
                               ("slope", line.slope, 1.00211681802045),
                               ("residual", line.residual, 0.884796396144373)):
        check(f"certified {name}", found, value, 1e-9)


def own_figures(check):
    # One test: w 10, y 0.6 with capacity 20: c 1.5, S 0.0325, 1/v0 1600, m0/v0 80.
    one = fixer_capacity([[(10.0, 0.6)]], 1, 20.0)
    check("own capacity, one test", one["beta"],
          (6 / 0.0325 + 80) / (100 / 0.0325 + 1600), 1e-12)
    check("  not offered", one["offered"], 0, 0)
    # Several tests of one bottle: the inverse of a + c c' by the rank-one formula instead.
    group = [(4.0, 0.15), (9.0, 0.52), (14.0, 0.66)]
    c = [1.0 + w / 20 for w, _ in group]
    cc = sum(x * x for x in c)

    def against(left, right):
        plain = sum(a * b for a, b in zip(left, right))
        through = sum(a * b for a, b in zip(left, c)) * sum(a * b for a, b in zip(c, right))
        return (plain - through / (1.0 + cc)) / 0.01

    ws, ys = [w for w, _ in group], [y for _, y in group]
    precision = 2 * against(ws, ws) + 1600
    found = fixer_capacity([group, group], 2, 20.0)
    check("own capacity, shared error", found["beta"],
          (2 * against(ws, ys) + 80) / precision, 1e-12)
    check("  its deviation", found["sd"], precision ** -0.5, 1e-12)
    check("  offered", found["offered"], 1, 0)
    check("two equations", solved([[0.0, 2.0], [3.0, 1.0]], [4.0, 11.0])[0], 3.0, 1e-12)
    # One strip at w 5 that asks for 1.6: (1200 + 10) / (10000 + 100).
    check("own wear, one strip", developer_wear([(5.0, 1.6)], 1, 10.0)["percent"],
          100 * 1210 / 10100, 1e-10)
    prior = keeping_limit_posterior([], 0, 24.0)
    sd = math.log(2) / 1.645
    check("keeping without trials", prior["limit"], 24.0, 1e-9)
    check("  span", math.log(prior["high"] / 24.0), 1.2816 * sd, 1e-3)
    check("chance at s = 1", math.exp(log_chance(True, 1.0)), 0.5, 1e-12)
    check("chance when fresh", math.exp(log_chance(True, 1e-6)), 0.98, 1e-9)
    check("chance long past", math.exp(log_chance(False, 50.0)), 0.98, 1e-9)
    later = keeping_limit_posterior([(True, 30.0, 0.1)] * 2 + [(False, 36.0, 0.1)], 3, 24.0)
    check("passes beyond the figure raise it", later["limit"] > 30.0, 1, 0)


def own_trials(check):
    """What counts as a test, a strip or a trial, in bottles that were filled from each other."""
    j = Journal(fixer(), solution("mq", capacity_films_per_litre=10), vessel(), version=2)
    j.mix("f", "2024-01-01", "fix")
    j.test("f", "2024-01-02", 50, film="ordinary")
    j.process("f", "2024-01-03", ("120", 4))
    j.test("f", "2024-01-04", 60, film="ordinary")
    j.test("f", "2024-01-04T11:00", 80, film="flat grain")      # never tested fresh
    j.decant("f", "g", "2024-01-05", 500)
    j.process("g", "2024-01-06", ("120", 2))
    j.test("g", "2024-01-07", 75, film="ordinary")
    j.mix("h", "2024-01-01", "fix", history="unknown")
    j.test("h", "2024-01-02", 50, film="ordinary")
    groups, bottles = fixer_tests(book_of(j), "fix")
    for found, (wear, rise) in zip(groups, ((4.0, 0.2), (8.0, 0.5))):
        check(f"test at {wear}: how many", len(found), 1, 0)
        check("  its wear", found[0][0], wear, 1e-12)
        check("  its rise", found[0][1], rise, 1e-12)
    check("groups", len(groups), 2, 0)
    check("bottles", bottles, 2, 0)

    j.mix("d", "2024-01-01", "mq")
    j.event("strip-test", "d", "2024-01-02", density=1.0, factor=1.1, passed=True)
    j.process("d", "2024-01-03", ("120", 5))
    j.event("strip-test", "d", "2024-01-04", density=0.8, factor=1.2, passed=True)
    j.event("looked", "d", "2024-01-05", passed=False, why="needles", what="precipitate")
    j.event("looked", "d", "2024-01-06", passed=False, why="brown", what="colour")
    j.event("looked", "d", "2024-01-07", passed=False, why="brown", what="colour")
    j.process("d", "2024-01-08", ("120", 3))
    j.event("looked", "d", "2024-01-09", passed=True, why="clear", what="colour")
    book = book_of(j)
    strips, bottles = developer_strips(book, "mq", 1.0)
    check("strips", len(strips), 2, 0)
    # Wear of 5 films at 10 % is 1.5, the strip before gave 1.1, density 0.8 asks a quarter more.
    check("the second's factor", strips[1][1], 1.5 * 1.1 * 1.25, 1e-12)
    trials, bottles = keeping_trials(book, "mq")
    check("last pass and first failure below 80 %", [one[0] for one in trials] == [True, False],
          1, 0)
    ages = [Shelf(book, instant(f"2024-01-{day}T10:00:00Z")).batches["d"].age
            for day in ("04", "06")]
    for trial, age in zip(trials, ages):
        check("  its age part", trial[2], age, 1e-15)


def span(check):
    j = Journal(solution("mq", keeping={"full_days": SIX_MONTHS, "half_days": TWO_MONTHS}),
                vessel())
    j.mix("half", "2024-01-01", "mq", volume=515)
    j.event("opened", "half", "2024-01-31T10:30")
    early, plain, late = discard_span(book_of(j), "half", instant("2024-01-31T12:00:00Z"))
    day = 86_400e6
    check("the reference bottle's own date, days", (plain - instant("2024-01-01T10:00:00Z")) / day,
          2 * MONTH_DAYS, 0.05)
    check("the span holds it", early < plain < late, 1, 0)
    check("good to a factor of two", (late - early) / day < 4 * MONTH_DAYS, 1, 0)


def mixing(check):
    # Anchell p. 171, glacial acid of 99.5 %: parts of acid and of water, and what they make.
    for acid, water, percent in ((28, 71, 28.1), (36, 63, 36.2), (56, 43, 56.3)):
        check(f"{acid} + {water} by weight", strength_by_weight(99.5, acid, water), percent, 0.1)
        parts = parts_by_weight(99.5, percent)
        check("  and back", parts[0] / parts[1], acid / water, 5e-3)
    # Densities from memory of tables: glacial 1.049, 28 % 1.035; the sheet rounds to a half.
    check("ounces of glacial in 32 of 28 %", volume_of_strong(32, 100, 1.049, 28, 1.035), 9.0, 0.25)
    # By mass the mean of 10 and 50 degrees is 30; hot water is a little lighter.
    check("hot water in a litre of 30 from 10 and 50", hot_volume(1000, 30, 10, 50),
          500 * 995.65 / 988.05, 1e-9)
    check("bath at one time constant", warmed(10, 40, 7.0), 40 - 30 / math.e, 1e-12)
    check("the constant from two readings", tau_of(5.0, 40, 10, warmed(10, 40, 5.0)), 7.0, 1e-9)
    check("100 g/L sulfite leaves room", starting_volume(1000, 760, 100), 760 * 0.95 - 11, 1e-9)
    check("left after three dumps of as much again", left_after_dumps(10, 10, 3), 0.125, 1e-12)


def advice(check):
    j = Journal(solution("mq"), vessel(), version=2)
    j.mix("known", "2024-01-01", "mq")
    j.mix("found", "2024-01-01", "mq", volume=400, history="unknown")
    batches = Shelf(book_of(j), instant("2024-01-02T12:00:00Z")).batches
    for name, bounds in (("known", 0), ("found", 10)):
        check(f"lower bounds, {name}", len(lower_bounds(batches[name])), bounds, 0)
    check("400 of 1030 mL extrapolates", extrapolates(batches["found"]), 1, 0)
    check("a full bottle does not", extrapolates(batches["known"]), 0, 0)
    for role, celsius, warning in (("developer", 4.9, "too-cold"), ("developer", 5, None),
                                   ("developer", 35, None), ("fixer", 29.1, "too-warm"),
                                   ("fixer", 29, None)):
        check(f"{role} at {celsius}", store_warning(role, celsius) == warning, 1, 0)
    for line, word in (("Common practice, no source", "common practice"),
                       ("from memory of a leaflet", "from memory"),
                       ("own tests, 3 of 5 bottles, to 2024-05-01", "own tests"),
                       ("invented for this scenario", None)):
        check(f"grade of {line!r}", grade(line) == word, 1, 0)


CHECKS = (air_and_age, months, films_and_wear, times, fixing, weekly_litre, fit, own_figures,
          own_trials, span, mixing, advice)
