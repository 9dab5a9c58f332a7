#!/usr/bin/env python3
"""Writes demo.jsonl: a year of an invented community darkroom in a harbour town.

Everything here is made up: the place, the films, the bottles, the habits. The figures of the
solutions are those of the starter formulary. `ullage demo` shifts the dates so that the last day,
named by the "anchor" of the first line, is today.
"""
import datetime as dt
import json
import pathlib
import random

HERE = pathlib.Path(__file__).parent
ANCHOR = dt.date(2026, 11, 25)
chance = random.Random(1907)

FILMS = [("Breakwater 100", 100), ("Quay 400", 400), ("Quay 400", 800), ("Lantern 1600", 1600)]
SUBJECTS = ["Ferry", "Harbour, dawn", "Nets", "Slipway", "Regatta", "Evening course", "Rope walk",
            "Fish market", "Fog bank", "Lighthouse", "Winter berths", "Crane no. 3", "Gulls"]

# Film, exposure index, developer, dilution and times as (°C, seconds): invented like the films.
TIMES = [("Breakwater 100", 100, "starter-mq-borax", "stock", [(18, 500), (20, 420), (24, 325)]),
         ("Breakwater 100", 100, "starter-metol-sulfite", "stock", [(20, 450)]),
         ("Quay 400", 400, "starter-mq-borax", "stock", [(18, 680), (20, 570), (22, 500), (24, 440)]),
         ("Quay 400", 800, "starter-mq-borax", "stock", [(20, 720)]),
         ("Quay 400", 400, "starter-metol-sulfite", "stock", [(20, 600), (24, 465)]),
         ("Quay 400", 400, "starter-pq-ascorbate", "stock", [(20, 480)]),
         ("Lantern 1600", 1600, "starter-mq-borax", "stock", [(20, 840), (24, 650)]),
         ("Quay 400", 400, "harbour-once", "1+1", [(20, 690)])]

# What a packet for a litre costs, in the darkroom's own currency: invented.
PRICES = {"starter-mq-borax": "8.40", "starter-metol-sulfite": "7.10", "starter-pq-ascorbate": "9.20",
          "starter-acid-fixer": "5.60", "starter-rapid-fixer": "6.80", "harbour-once": "7.90"}

# Into which can a bottle goes, by how it is said to be discarded; there were none before that day.
CANS = {"poured into the collection can": "can-developer", "to the silver can": "can-fixer"}
CANS_SINCE = ANCHOR - dt.timedelta(days=150)

lines = []
counters = {}
VESSELS = [("amber-1", "Amber 1", 1030, "glass", False), ("amber-2", "Amber 2", 1030, "glass", False),
           ("amber-3", "Amber 3", 1030, "glass", False), ("clear-1", "Clear 1", 1040, "pet", False),
           ("clear-2", "Clear 2", 1040, "pet", False), ("white-1", "White 1", 1060, "hdpe", False),
           ("white-2", "White 2", 1060, "hdpe", False), ("jug-1", "Clear jug", 2080, "pet", False),
           ("bellows", "Bellows", 1000, "ldpe", True), ("small-1", "Small 1", 520, "glass", False),
           ("small-2", "Small 2", 520, "glass", False), ("flip-1", "Flip-top 1", 1050, "pp", False),
           ("jug-2", "Jug 2", 2100, "hdpe", False), ("amber-4", "Amber 4", 1030, "glass", False),
           ("white-3", "White 3", 1060, "hdpe", False), ("white-4", "White 4", 1060, "hdpe", False)]


def put(**fields):
    lines.append(fields)


def packet(solution, **more):
    """One for a litre, paid for; its id."""
    name = f"packet-{number('packet')}"
    put(type="packet", id=name, solution=solution, makes_ml=1000, lot=f"H{counters['packet']:03}",
        cost=PRICES[solution], currency="EUR", **more)
    return name


def shopping(day):
    """The day of the darkroom's order before that: every fourth Saturday, and two days on the way."""
    first = dt.date(2025, 8, 30)
    return first + dt.timedelta(days=((day - first).days - 2) // 28 * 28)


def number(kind):
    counters[kind] = counters.get(kind, 0) + 1
    return counters[kind]


def stamp(day, hour, minute=0):
    moment = dt.datetime.combine(day, dt.time(hour, minute))
    return moment.strftime("%Y-%m-%dT%H:%M:%SZ")


class Bottle:
    """One batch as the darkroom's own log would keep it: enough not to pour what is not there."""

    PREFIX = {"starter-mq-borax": "Dev", "starter-metol-sulfite": "Dev", "starter-pq-ascorbate": "Dev",
              "starter-acid-fixer": "Fix", "starter-rapid-fixer": "Fix", "starter-acetic-stop": "Stop",
              "starter-citric-stop": "Stop", "starter-wash-aid": "Wash aid",
              "starter-wetting-agent": "Wetting", "harbour-topped-up": "Dev", "harbour-once": "Dev"}

    def __init__(self, solution, vessel, volume, day, hour=17, minute=0, name="", **more):
        prefix = self.PREFIX[solution]
        self.name = name or f"{prefix} {number(prefix)}"
        self.batch = self.name.lower().replace(" ", "-")
        self.solution, self.vessel, self.volume = solution, vessel, volume
        self.wear, self.films, self.mixed, self.since_test = 0.0, 0, day, 0.0
        new = "history" not in more and "from" not in more
        if solution in PRICES and new:
            more["packet"] = packet(solution, bought=shopping(day).isoformat())
        self.event("mixed", day, hour, minute, solution=solution, vessel=vessel, volume_ml=volume,
                   name=self.name, **more)
        if new:
            self.event("dissolved", day, hour + (minute + 20) // 60, (minute + 20) % 60)

    def event(self, kind, day, hour, minute=0, **fields):
        put(type="event", id=f"e{number('event')}", batch=self.batch, kind=kind,
            at=stamp(day, hour, minute), **fields)
        return f"e{counters['event']}"

    def process(self, day, hour, minute, films, run, used, lost, **more):
        units = sum(f["count"] * {"135-24": 2 / 3, "4x5": 0.25}.get(f["format"], 1) for f in films)
        used = min(used, self.volume)
        lost = min(lost, self.volume)
        extra = more | ({"air_ml": 15} if self.vessel == "flip-1" else {})
        event = self.event("processed", day, hour, minute, films=films, used_ml=used, lost_ml=lost,
                           run=run, **extra)
        self.wear += units / (self.volume / 1000)
        self.since_test += units / (self.volume / 1000)
        self.volume -= lost
        self.films += units
        return event

    def clearing_test(self, day, hour, minute=0, seconds=None, temperature=20.0):
        fresh = 58 if self.solution == "starter-acid-fixer" else 42
        if seconds is None:
            seconds = round(fresh * (1 + 0.042 * self.wear) + chance.gauss(0, 1.2))
        self.event("clearing-test", day, hour, minute, seconds=seconds, temperature_c=temperature)
        self.since_test = 0
        return seconds, fresh

    def top_up(self, day, hour, minute, volume, capacity):
        """As the run asks for: what has no room is poured off first."""
        over = self.volume + volume - capacity
        if over > 0:
            self.event("drawn", day, hour, minute, volume_ml=over, why="make-room")
            self.volume -= over
        self.event("topped-up", day, hour, minute, volume_ml=volume, solution="harbour-replenisher")
        self.wear = 0  # each film is made up for
        self.volume += volume

    def once(self, day, hour, films, run, used):
        """Poured away after the run."""
        self.event("processed", day, hour, films=films, used_ml=used, run=run, one_shot=True)
        self.volume -= used

    def decant(self, vessel, volume, day, hour):
        """Into a bottle of its own, from which it goes on."""
        prefix = self.PREFIX[self.solution]
        name = f"{prefix} {counters.get(prefix, 0) + 1}"
        self.event("drawn", day, hour, volume_ml=volume, to=name.lower().replace(" ", "-"))
        self.volume -= volume
        return Bottle(self.solution, vessel, volume, day, hour, **{"from": self.batch})

    def strip(self, day, hour, minute, density, **more):
        self.event("strip-test", day, hour, minute, density=density, **more)

    def discard(self, day, hour, how):
        can = CANS.get(how) if day >= CANS_SINCE else None
        self.event("discarded", day, hour, 9, how=how, **({"container": can} if can else {}))


def load(people):
    """Films of one tank, and what is written on their sleeves."""
    if chance.random() < 0.08:
        return [{"format": "4x5", "count": 4}], []
    films, sleeves = [], []
    count = chance.choice([1, 1, 2, 2, 2, 3]) if people > 1 else 1
    kind = chance.choice(["135-36"] * 6 + ["120"] * 3 + ["135-24"])
    films.append({"format": kind, "count": count})
    for _ in range(count):
        name, index = chance.choice(FILMS)
        sleeves.append((kind, name, index, chance.choice(SUBJECTS)))
    return films, sleeves


def tank(films):
    kind, count = films[0]["format"], films[0]["count"]
    return {"135-36": 290, "135-24": 290, "120": 490, "4x5": 250}[kind] * count


def write_sleeves(run, sleeves):
    """The ids of the films written."""
    films = []
    for kind, name, index, subject in sleeves:
        films.append(f"film-{number('film')}")
        put(type="film", id=films[-1], run=run, format=kind, name=name, ei=index, notes=subject)
    return films


def mark(films, day, hour, fault, note):
    """Negatives that came out wrong, as somebody found them on the drying line."""
    for film in films:
        put(type="film-mark", id=f"mark-{number('mark')}", film=film, at=stamp(day, hour, 30),
            mark=fault, note=note)


def definitions():
    put(type="book", format="ullage-journal", version=2, anchor=ANCHOR.isoformat())
    for line in (HERE.parent / "starter.jsonl").read_text().splitlines():
        fields = json.loads(line)
        if fields["type"] == "solution":
            lines.append(fields)
    put(type="solution", id="harbour-replenisher", name="Harbour replenisher", role="developer",
        wear={"rule": "none"}, keeping={"full_days": 182.625, "half_days": 60.875}, q10=1.9,
        oxygen_factor=0.49, silver_g_per_film=0, bromide_mg_per_film=0,
        sources={"keeping": "common practice of this darkroom, invented for the demo"})
    put(type="solution", id="harbour-topped-up", name="Harbour developer, topped up", role="developer",
        capacity_films_per_litre=20, wear={"rule": "per-film", "percent": 2},
        keeping={"full_days": 182.625, "half_days": 60.875}, q10=1.9, oxygen_factor=0.49,
        silver_g_per_film=0, bromide_mg_per_film=50, replenish_ml_per_film=75,
        replenisher="harbour-replenisher", turnover_limit=10,
        sources={figure: "common practice of this darkroom, invented for the demo"
                 for figure in ("capacity", "wear", "keeping", "replenish", "turnover_limit")})
    put(type="solution", id="harbour-once", name="Harbour developer, used once", role="developer",
        wear={"rule": "none"}, keeping={"full_days": 182.625, "half_days": 60.875}, q10=1.9,
        oxygen_factor=0.49, silver_g_per_film=0, bromide_mg_per_film=50, one_shot_ml_per_film=150,
        sources={figure: "common practice of this darkroom, invented for the demo"
                 for figure in ("keeping", "one_shot_ml_per_film")})
    for id_, name, capacity, material, squeezed in VESSELS:
        put(type="vessel", id=id_, name=name, capacity_ml=capacity, material=material,
            squeezed=squeezed)
    for film, index, developer, dilution, times in TIMES:
        put(type="development-time", id=f"time-{number('time')}", film=film, developer=developer,
            dilution=dilution, ei=index,
            times=[{"temperature_c": at, "seconds": seconds} for at, seconds in times],
            source="common practice of this darkroom, invented for the demo")


def season(first, last):
    """The year's work up to some weeks ago, one working pair of bottles after another. What goes on
    being used: stop bath and wash aid."""
    developers, fixers = ["amber-1", "amber-2"], ["white-1", "white-2"]
    developer = Bottle("starter-mq-borax", "amber-1", 1000, first)
    fixer = Bottle("starter-acid-fixer", "white-1", 1000, first, 17, 20)
    stop = Bottle("starter-citric-stop", "jug-2", 2000, first, 17, 30)
    aid = Bottle("starter-wash-aid", "jug-1", 2000, first, 17, 40)
    day, mistake = first, False
    while day <= last:
        if day.weekday() not in (1, 3, 5) or (day.month == 8 and day.day < 15) or chance.random() < 0.22:
            day += dt.timedelta(days=1)
            continue
        hour = 14 if day.weekday() == 5 else 18
        if developer.wear >= 9.2 or (day - developer.mixed).days > 150 or developer.volume < 700:
            developer.discard(day, hour, "poured into the collection can")
            vessel = developers[counters["Dev"] % 2]
            solution = "starter-metol-sulfite" if chance.random() < 0.15 else "starter-mq-borax"
            developer = Bottle(solution, vessel, 1000, day, hour, 10)
            developer.event("dissolved", day, hour, 40)
        if fixer.since_test >= 4.5:
            seconds, fresh = fixer.clearing_test(day, hour, 8, temperature=chance.choice([19, 20, 20, 21]))
        else:
            seconds, fresh = 0, 1
        if seconds >= 1.85 * fresh or fixer.wear >= 18.5 or (day - fixer.mixed).days > 55:
            fixer.discard(day, hour, "to the silver can")
            fixer = Bottle("starter-acid-fixer", fixers[counters["Fix"] % 2], 1000, day, hour, 10)
        if stop.wear >= 11 or (day - stop.mixed).days > 80:
            stop.discard(day, hour, "rinsed away with much water, as our works allow")
            stop = Bottle("starter-citric-stop", "jug-2", 2000, day, hour, 12)
        if aid.wear >= 18 or (day - aid.mixed).days > 80:
            aid.discard(day, hour, "rinsed away with much water, as our works allow")
            aid = Bottle("starter-wash-aid", "jug-1", 2000, day, hour, 14)
        for turn in range(chance.choice([1, 1, 2])):
            films, sleeves = load(2)
            run = f"run-{number('run')}"
            at = hour + 1 + turn
            lost = chance.choice([8, 10, 12, 15, 20])
            event = developer.process(day, at, 0, films, run, tank(films), lost)
            stop.process(day, at, 14, films, run, tank(films), 5)
            fixer.process(day, at, 16, films, run, tank(films), lost)
            aid.process(day, at, 30, films, run, tank(films), 5)
            write_sleeves(run, sleeves)
            if not mistake and developer.films > 4 and day.month == 3:
                wrong = developer.event("processed", day, at, 45, films=[{"format": "120", "count": 2}],
                                        used_ml=980 if developer.volume > 980 else 500, lost_ml=10)
                developer.event("voided", day, at, 50, voids=wrong, why="one reel was empty")
                mistake = True
        if chance.random() < 0.05:
            developer.event("noted", day, 21, text=chance.choice(
                ["colour of weak tea, no sediment", "smells as it should", "label renewed"]))
        if chance.random() < 0.05 and developer.volume < 940:
            developer.event("topped-up", day, 21, 10, volume_ml=40)
            developer.wear *= developer.volume / (developer.volume + 40)
            developer.volume += 40
        if chance.random() < 0.04:
            developer.event("strip-test", day, 20, 50, density=round(chance.gauss(1.21, 0.02), 2),
                            factor=1.0, passed=True)
        day += dt.timedelta(days=1)
    developer.discard(last, 21, "poured into the collection can")
    fixer.discard(last, 21, "to the silver can")
    return stop, aid


def ago(days):
    return ANCHOR - dt.timedelta(days=days)


def evening(bottles, days, hour, films, sleeves=(), develop=None, celsius=20.0, holder="Two reels"):
    """One tank-load. With `develop` (seconds planned, seconds real) its times are kept."""
    run = f"run-{number('run')}"
    for offset, bottle in enumerate(bottles):
        bottle.process(ago(days), hour, 12 * offset, films, run, tank(films), 12)
    if develop:
        planned, real = develop
        acid = any(Bottle.PREFIX[bottle.solution] == "Stop" for bottle in bottles)
        steps = [("pre-wet", 60, 66), ("develop", planned, real), ("pour-back", 20, 24),
                 ("acid-stop", 30, 34) if acid else ("water-stop", 60, 71),
                 ("fix", 390, 395 + days % 9), ("rinse", 60, 64),
                 ("wash-aid", 120, 122), ("wash", 300, 304)]
        put(type="run-times", id=f"times-{number('times')}", run=run, tank=holder,
            tank_ml=tank(films), temperature_c=celsius,
            steps=[{"step": step, "planned_s": plan, "real_s": took} for step, plan, took in steps])
    return write_sleeves(run, sleeves)


def shelf(stop, aid):
    """What stands on the shelf now: every verdict, and a bottle nobody knows. Stop bath and wash aid
    are used up first."""
    water = "rinsed away with much water, as our works allow"
    two, one = [{"format": "135-36", "count": 2}], [{"format": "120", "count": 1}]
    sleeve = lambda kind, n: [(kind, *FILMS[(n + i) % 3], SUBJECTS[(n + i) % 13]) for i in range(2)]
    spent = Bottle("starter-acid-fixer", "white-2", 1000, ago(50))
    near = Bottle("starter-mq-borax", "amber-3", 1000, ago(48), 17, 10)
    spent.clearing_test(ago(50), 17, 40, seconds=58)
    for n, days in enumerate((47, 45, 42, 40)):
        evening([near, stop, spent], days, 18, two, sleeve("135-36", n),
                (570 + 115 * n, 574 + 115 * n), 20 + 0.5 * (n % 2))
    evening([near, stop, spent], 37, 18, one, sleeve("120", 2)[:1], (1025, 1031), 20, "One reel")
    stop.event("looked", ago(36), 12, passed=False, what="indicator", why="turned purple")
    stop.discard(ago(36), 12, water)
    for n, days in enumerate((33, 31, 28, 26)):
        if aid.wear >= 18:
            aid.discard(ago(days), 14, water)
            aid = Bottle("starter-wash-aid", "jug-1", 2000, ago(days), 14, 10)
        films = evening([spent, aid], days, 15, two, sleeve("135-36", n + 5))
        if days < 30:
            mark(films, ago(days - 1), 17, "not-clear", "milky in the shadows, cleared by fixing again")
    spent.clearing_test(ago(35), 18, 40, seconds=86)
    spent.clearing_test(ago(24), 18, 40, seconds=119)
    spent.clearing_test(ago(21), 18, 40, seconds=121)
    spent.event("measured", ago(22), 19, silver_g_per_litre=2.6, method="test paper")
    near.event("looked", ago(22), 18, passed=False, what="precipitate", why="fine needles at the foot")
    near.event("filtered", ago(22), 18, 20)
    near.event("looked", ago(20), 18, passed=True, why="colour")
    near.strip(ago(48), 19, 30, 1.23, passed=True)
    near.strip(ago(41), 20, 30, 1.19, passed=True)
    Bottle("starter-acetic-stop", "clear-1", 1000, ago(19))
    developer = Bottle("starter-mq-borax", "amber-1", 1000, ago(18))
    developer.event("dissolved", ago(18), 17, 30)
    due = Bottle("starter-rapid-fixer", "white-1", 1000, ago(18), 17, 20)
    due.clearing_test(ago(18), 17, 45, seconds=42)
    for n, days in enumerate((16, 13, 9)):
        evening([developer, due, aid], days, 18, two, sleeve("135-36", n + 2),
                (570 + 115 * n, 575 + 115 * n), 20 - 0.5 * (n % 2))
    evening([developer, due, aid], 4, 19, one, sleeve("120", 1)[:1], (905, 909), 20, "One reel")
    developer.strip(ago(17), 20, 30, 1.22, passed=True)
    developer.strip(ago(12), 20, 30, 1.20, passed=True)
    developer.strip(ago(8), 20, 30, 1.07)
    developer.event("noted", ago(8), 20, 40, text="control strip too thin: bath was two degrees "
                    "colder than the thermometer said; no factor taken")
    developer.strip(ago(4), 20, 30, 1.2, factor=1.0, passed=True)
    ascorbate = Bottle("starter-pq-ascorbate", "clear-2", 1000, ago(11))
    fresh = Bottle("starter-acid-fixer", "flip-1", 1000, ago(11), 17, 15, air_ml=15)
    fresh.clearing_test(ago(11), 17, 40, seconds=57)
    thin = evening([ascorbate, fresh, aid], 10, 18, two, sleeve("135-36", 4), (480, 395), 18.0)
    mark(thin, ago(9), 18, "thin", "little in the shadows")
    evening([ascorbate, fresh, aid], 3, 18, one, sleeve("120", 3)[:1], (480, 484), 20, "One reel")
    stock = Bottle("harbour-once", "amber-2", 1000, ago(30), 12, name="Packet of October")
    once = stock.decant("bellows", 900, ago(30), 13)
    stock.once(ago(30), 18, one, f"run-{number('run')}", 100)
    once.event("stored-at", ago(29), 9, temperature_c=8)
    once.once(ago(6), 18, one, f"run-{number('run')}", 150)
    found = Bottle("starter-mq-borax", "small-1", 430, ago(5), 19, history="unknown")
    found.event("noted", ago(5), 19, 10, text="found behind the sink, label says only \"MQ\"")
    Bottle("starter-wetting-agent", "small-2", 500, ago(7), 20)
    year_long(two, sleeve)


def year_long(two, sleeve):
    """One developer that is never replaced: every film is made up for with its replenisher."""
    topped = Bottle("harbour-topped-up", "amber-4", 1000, ago(330), 12)
    topped.strip(ago(330), 15, 30, 1.18, passed=True)
    first = Bottle("starter-acid-fixer", "clear-1", 1000, ago(52), 11, name="First bath")
    second = Bottle("starter-acid-fixer", "white-3", 1000, ago(52), 11, 10, name="Second bath")
    first.clearing_test(ago(52), 11, 40, seconds=58)
    second.clearing_test(ago(52), 11, 50, seconds=57)

    def fix(first, second, days):
        """In two baths, what was developed just now."""
        run = f"run-{counters['run']}"
        first.process(ago(days), 17, 24, two, run, 580, 12)
        second.process(ago(days), 17, 36, two, run, 580, 12, second=True)

    weeks = [days for days in range(323, 15, -7) if not 95 <= days <= 110]  # closed in August
    for n, days in enumerate(weeks):
        evening([topped], days, 17, two)
        topped.top_up(ago(days), 17, 20, 150, 1030)
        if 20 < days < 52:
            fix(first, second, days)
        if n % 8 == 7:
            topped.strip(ago(days), 19, 30, 1.18 + 0.01 * (n % 3 - 1), passed=True)
    # The baths are exchanged: the second becomes the first.
    first.clearing_test(ago(20), 12, seconds=117)
    first.discard(ago(20), 13, "to the silver can")
    third = Bottle("starter-acid-fixer", "white-4", 1000, ago(20), 13, 10, name="Third bath")
    second.clearing_test(ago(20), 13, 40, seconds=61)
    for n, days in enumerate((14, 12, 11, 9, 7, 5, 3)):
        evening([topped], days, 17, two, sleeve("135-36", n + 7))
        topped.top_up(ago(days), 17, 20, 150, 1030)
        if days in (14, 11, 7):
            fix(second, third, days)
        if days == 11:
            second.clearing_test(ago(days), 18, 30, seconds=69)


def left_standing():
    """Two bottles that were left half full, and looked at until they failed: what the darkroom
    knows of how long its developer keeps."""
    for name, mixed, passed, failed in (("Winter rest", 335, 240, 197), ("Summer rest", 190, 90, 60)):
        bottle = Bottle("starter-mq-borax", "amber-3", 1000, ago(mixed), 12, name=name)
        bottle.event("drawn", ago(mixed), 14, volume_ml=485)
        bottle.event("looked", ago(passed), 17, passed=True, what="leader", why="black in two minutes")
        bottle.event("looked", ago(failed), 17, passed=False, what="leader", why="grey after four minutes")
        bottle.discard(ago(failed), 18, "poured into the collection can")


def day(days):
    """So many days from the anchor."""
    return (ANCHOR + dt.timedelta(days=days)).isoformat()


def happened(kind, days, hour, **fields):
    """To a thing of the cupboard, or a can; so many days ago."""
    put(type="event", id=f"e{number('event')}", kind=kind, at=stamp(ago(days), hour), **fields)


def cupboard():
    """What is not mixed yet: something that ends soon, something opened, something past its day.

    CAS numbers and hazard statements are from memory of data sheets.
    """
    for bought, use_by in ((-90, 480), (-90, 480), (-44, 22)):
        packet("starter-mq-borax", bought=day(bought), use_by=day(use_by), place="upper shelf, left")
    packet("starter-metol-sulfite", bought=day(-200), use_by=day(70), place="upper shelf, left")
    packet("starter-acid-fixer", bought=day(-44), use_by=day(340), place="upper shelf, right")
    put(type="packet", id="packet-aid", solution="starter-wash-aid", makes_ml=5000, lot="W7",
        bought=day(-500), use_by=day(-60), cost="7.20", currency="EUR", place="upper shelf, right")
    for name, solution, volume, makes, keeps, price in (
            ("rapid-1", "starter-rapid-fixer", 1000, 5000, 60, "9.90"),
            ("wetting-1", "starter-wetting-agent", 250, 50000, 730, "4.50")):
        put(type="packet", id=name, solution=solution, form="liquid", volume_ml=volume,
            makes_ml=makes, opened_days=keeps, bought=day(-80), cost=price, currency="EUR",
            place="cool cupboard")
    happened("taken", 50, 16, item="rapid-1", amount=360)
    happened("taken", 30, 16, item="wetting-1", amount=40)
    for name, title, cas, grams, hazards in (
            ("sulfite", "Sodium sulfite, dry", "7757-83-7", 1500, []),
            ("borax", "Borax", "1303-96-4", 500, ["H360"]),
            ("hydroquinone", "Hydroquinone", "123-31-9", 100,
             ["H302", "H317", "H318", "H341", "H351", "H410"]),
            ("citric", "Citric acid", "77-92-9", 500, ["H319"])):
        put(type="chemical", id=name, name=title, cas=cas, grams=grams, bought=day(-220),
            place="locked drawer", **({"hazards": hazards} if hazards else {}))
    happened("taken", 60, 15, item="sulfite", amount=80)
    happened("counted", 21, 15, item="borax", amount=160)
    happened("taken", 35, 15, item="citric", amount=120)
    for name, title, unit, amount, used in (("filters", "Paper filters", "pieces", 50, 16),
                                            ("gloves", "Nitrile gloves", "pairs", 40, 12),
                                            ("labels", "Labels 70 × 36 mm", "pieces", 24, 13)):
        put(type="supply", id=name, name=title, unit=unit, amount=amount, bought=day(-120),
            place="drawer by the sink")
        happened("taken", 15, 15, item=name, amount=used)
    # Numbers of the range that shops give out themselves.
    put(type="barcode", id="code-mq", code="2000000000015", of="starter-mq-borax", amount=1)
    put(type="barcode", id="code-rapid", code="2000000000022", of="starter-rapid-fixer", amount=1000)


def waste():
    for name, title, holds in (("can-developer", "Developer can", "developer"),
                               ("can-fixer", "Fixer can", "fixer")):
        put(type="container", id=name, name=title, holds=holds, capacity_ml=10000,
            place="under the sink")
    for can in ("can-developer", "can-fixer"):
        happened("handed-over", 95, 10, container=can, to="the town's collection point",
                 document="slip 214")


def work():
    """What is known to come: the evening course and the open evening."""
    put(type="work", id="work-course", at=stamp(ANCHOR + dt.timedelta(days=13), 17, 30),
        rule="FREQ=WEEKLY;INTERVAL=4", films=8, developer="starter-mq-borax", name="Evening course")
    put(type="work", id="work-open", at=stamp(ANCHOR + dt.timedelta(days=6), 17),
        rule="FREQ=WEEKLY;INTERVAL=2", films=4, name="Open evening")


def main():
    definitions()
    shelf(*season(dt.date(2025, 12, 2), ago(52)))
    left_standing()
    cupboard()
    waste()
    work()
    # In order of entry a year reads best in order of time; equal times keep the order written.
    head = [line for line in lines if line["type"] not in ("event", "film", "film-mark")]
    rest, waiting = [], []
    for line in lines:
        if line["type"] in ("event", "film-mark"):
            rest.append([line["at"], [line]])
        elif line["type"] == "film":
            rest[-1][1].append(line)
    rest.sort(key=lambda item: item[0])
    with open(HERE / "demo.jsonl", "w") as out:
        for line in head + [entry for _, group in rest for entry in group]:
            out.write(json.dumps(line, ensure_ascii=False) + "\n")


main()
