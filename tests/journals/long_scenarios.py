"""Long mixed journals, from a seeded source of chance."""

import random
from datetime import datetime, timedelta, timezone

from scenario_kit import Journal, fixer, save, solution, vessel

START = datetime(2024, 1, 5, 9, 0, tzinfo=timezone.utc)
FORMATS = ("135-36", "135-36", "135-24", "120", "220", "4x5", "5x7", "8x10")


def make():
    season("season-a", 20240105, 260, 5)
    season("season-b", 7741, 420, 8)
    season("season-c", 99, 330, 3)
    spread_fixer("long-fixer", 31)


def shown(moment):
    return moment.strftime("%Y-%m-%dT%H:%M:%SZ")


class Stock:
    """What the writer of a long journal has to know to stay possible."""

    def __init__(self, batch, volume, room):
        self.batch, self.volume, self.room, self.last = batch, volume, room, None


def one_event(j, chance, stock, at, rooms, role):
    """Adds an event the bottle allows; returns its id where it may be voided."""
    text = shown(at)
    pick = chance.random()
    half = round(stock.volume * 0.5, 1)
    extra = {"air_ml": round(chance.uniform(0, 120), 1)} if chance.random() < 0.1 else {}
    if pick < 0.42:
        lost = round(chance.uniform(0, min(25, stock.volume * 0.1)), 1)
        used = round(chance.uniform(0.4, 1.0) * stock.volume, 1)
        used = max(min(used, stock.volume), lost)
        pairs = [(chance.choice(FORMATS), chance.randint(1, 2))
                 for _ in range(chance.randint(1, 2))]
        j.process(stock.batch, text, *pairs, used_ml=used, lost_ml=lost, **extra)
        stock.volume -= lost
    elif pick < 0.48 and half > 100:
        used = round(chance.uniform(50, half), 1)
        j.process(stock.batch, text, (chance.choice(FORMATS), 1), used_ml=used, one_shot=True)
        stock.volume -= used
    elif pick < 0.62 and stock.room - stock.volume > 10:
        fresh = round(chance.uniform(0.2, 0.9) * (stock.room - stock.volume), 1)
        j.top_up(stock.batch, text, fresh, **extra)
        stock.volume += fresh
    elif pick < 0.66:
        drawn = round(chance.uniform(1, half * 0.3 + 1), 1)
        j.event("drawn", stock.batch, text, volume_ml=drawn, why="a test", **extra)
        stock.volume -= drawn
    elif pick < 0.71:
        fitting = [name for name, room in rooms.items() if room >= stock.volume + 1]
        name = chance.choice(fitting)
        j.event("moved", stock.batch, text, vessel=name, **extra)
        stock.room = rooms[name]
    elif pick < 0.76:
        return j.event("stored-at", stock.batch, text,
                       temperature_c=round(chance.uniform(8, 27), 1))
    elif pick < 0.80:
        return j.event("stood-open", stock.batch, text, hours=round(chance.uniform(0.2, 3), 2),
                       area_cm2=round(chance.uniform(60, 320), 1))
    elif pick < 0.92 and role == "fixer":
        return j.test(stock.batch, text, round(chance.uniform(45, 75), 1),
                      round(chance.uniform(16, 24), 1))
    elif pick < 0.94:
        return j.event("looked", stock.batch, text, passed=chance.random() < 0.97, why="colour")
    elif pick < 0.96:
        return j.event("strip-test", stock.batch, text, density=1.2, factor=1.05, passed=True)
    else:
        return j.event("opened", stock.batch, text)
    return None


def season(name, seed, events, batches):
    chance = random.Random(seed)
    steps = {"rule": "steps", "steps": [{"from_films_per_litre": 0, "factor": 1},
                                        {"from_films_per_litre": 6, "factor": 1.2},
                                        {"from_films_per_litre": 15, "factor": 1.5}]}
    kinds = [solution("mq", capacity_films_per_litre=40),
             solution("seasoned", rule="compound", percent=3, capacity_films_per_litre=60),
             solution("stepped", wear=steps, drop=["keeping"], capacity_films_per_litre=45),
             fixer(capacity_films_per_litre=70, fresh_clearing_s=50,
                   silver_limit_g_per_litre=6.3, keeping={"full_days": 365.25}),
             solution("stop", role="stop", rule="none", bromide_mg_per_film=0,
                      drop=["keeping", "capacity_films_per_litre"])]
    bottles = [vessel("g1", 1030), vessel("g2", 2060), vessel("p1", 1040, "pet"),
               vessel("h1", 1500, "hdpe", wall_mm=1.1), vessel("l1", 1000, "ldpe", True),
               vessel("pp1", 5000, "pp", cap_cm3_day=0.12)]
    rooms = {bottle["id"]: bottle["capacity_ml"] for bottle in bottles}
    j = Journal(*kinds, *bottles)
    stocks, roles = [], {}
    for number in range(batches):
        kind = kinds[number % len(kinds)]
        bottle = chance.choice(bottles)
        volume = round(bottle["capacity_ml"] * chance.uniform(0.6, 0.97), 1)
        batch = f"{kind['id']}-{number + 1}"
        at = START + timedelta(hours=chance.randint(0, 900), minutes=7 * number)
        more = {"history": "unknown"} if chance.random() < 0.2 else {}
        j.mix(batch, shown(at), kind["id"], bottle["id"], volume, **more)
        stock = Stock(batch, volume, bottle["capacity_ml"])
        stock.last = at
        stocks.append(stock)
        roles[batch] = kind["role"]
    voidable = []
    for _ in range(events):
        stock = chance.choice([s for s in stocks if s.volume > 60])
        stock.last += timedelta(minutes=chance.randint(200, 9000))
        made = one_event(j, chance, stock, stock.last, rooms, roles[stock.batch])
        if made is not None:
            voidable.append((made, stock.batch, stock.last))
    for made, batch, at in chance.sample(voidable, min(6, len(voidable))):
        j.event("voided", batch, shown(at + timedelta(hours=2)), voids=made, why="wrong bottle")
    gone = stocks[-1]
    j.event("discarded", gone.batch, shown(gone.last + timedelta(days=2)), how="to the drum")
    shuffle_entry(j, chance, len(kinds) + len(bottles) + 1 + batches)
    save(name, j, "2024-03-15", "2024-06-01", "2024-10-01+all", "2025-06-30+all")


def shuffle_entry(j, chance, first):
    """Enters some events later than they happened, voidings still last."""
    head, tail = j.lines[:first], j.lines[first:]
    voids = [line for line in tail if line["kind"] == "voided"]
    rest = [line for line in tail if line["kind"] != "voided"]
    for _ in range(len(rest) // 8):
        line = rest.pop(chance.randrange(len(rest)))
        rest.insert(chance.randrange(len(rest) + 1), line)
    j.lines = head + rest + voids




def spread_fixer(name, seed):
    """A fixer tested at every load, its clearing time creeping up."""
    chance = random.Random(seed)
    j = Journal(fixer(capacity_films_per_litre=25), vessel("g", 5150, "glass"))
    j.mix("big-fixer", shown(START), "fix", "g", 5000)
    at, wear = START, 0.0
    for _ in range(70):
        at += timedelta(hours=chance.randint(5, 30))
        celsius = round(chance.uniform(15, 24), 1)
        cold = max(1.0, 2 ** ((20 - celsius) / 10))
        seconds = round((42 + 1.9 * wear + chance.gauss(0, 1.6)) * cold, 1)
        j.test("big-fixer", shown(at), seconds, celsius)
        load = chance.randint(1, 4)
        j.process("big-fixer", shown(at + timedelta(minutes=20)), ("135-36", load),
                  used_ml=1200, lost_ml=8)
        wear += load / 5
    save(name, j, "2024-01-20", "2024-02-10", "2024-03-01", "2024-05-01")
