"""Long mixed journals of version 2, from a seeded source of chance: a shelf of bottles that are
filled from each other, found, replenished, used once, tested and corrected."""

import random
from datetime import datetime, timedelta, timezone

from scenario_kit import SIX_MONTHS, Journal, fixer, save, solution, vessel

START = datetime(2025, 1, 6, 9, 0, tzinfo=timezone.utc)
FORMATS = ("135-36", "135-36", "135-24", "120", "220", "4x5", "5x7", "8x10")
BOTTLES = (("g1", 1030, "glass", {}), ("g2", 2060, "glass", {}), ("p1", 1040, "pet", {}),
           ("h1", 1500, "hdpe", {"wall_mm": 1.1}), ("l1", 1000, "ldpe", {"squeezed": True}),
           ("pp1", 5000, "pp", {"cap_cm3_day": 0.12}), ("g3", 520, "glass", {}))


def make():
    shelf_of_chains("chains-a", 4711, 220)
    shelf_of_chains("chains-b", 1826, 420)
    shelf_of_chains("chains-c", 31, 700)


def shown(moment):
    return moment.strftime("%Y-%m-%dT%H:%M:%SZ")


def kinds():
    steps = {"rule": "steps", "steps": [{"from_films_per_litre": 0, "factor": 1},
                                        {"from_films_per_litre": 5, "factor": 1.25}]}
    return [solution("mq-r", percent=0),
            solution("mq", capacity_films_per_litre=25),
            solution("seasoned", replenisher="mq-r", replenish_ml_per_film=40, turnover_limit=0.1,
                     wear=steps, capacity_films_per_litre=18,
                     keeping={"full_days": SIX_MONTHS, "half_days": 75}),
            solution("once", one_shot_ml_per_film=220, q10=2.5, oxygen_factor=0.7,
                     drop=["capacity_films_per_litre"], keeping={"full_days": 91.3125}),
            fixer("acid", fixer_kind="acid", drop=["capacity_films_per_litre"],
                  fresh_clearing_s=46, fix_min_s=120, bromide_mg_per_film=2,
                  silver_limit_g_per_litre=0.5),
            fixer("alkaline", fixer_kind="alkaline", drop=["capacity_films_per_litre"],
                  bromide_mg_per_film=2, keeping={"full_days": 121.75}),
            solution("stop", role="stop", rule="none", keeping={"full_days": 365.25})]


class Stock:
    """What the writer of a long journal has to know of a bottle to stay possible."""

    def __init__(self, batch, kind, volume, room):
        self.batch, self.kind, self.role = batch, kind["id"], kind["role"]
        self.volume, self.room, self.last = volume, room, None


class Chains:
    """Writes one journal, an event at a time, each of them at a later moment."""

    def __init__(self, seed):
        self.chance = random.Random(seed)
        self.kinds = kinds()
        self.j = Journal(*self.kinds, *(vessel(ident, room, material, **more)
                                        for ident, room, material, more in BOTTLES), version=2)
        self.now, self.count = START, 0
        self.stocks, self.voidable = [], []

    def some(self, low, high, digits=1):
        return round(self.chance.uniform(low, high), digits)

    def at(self):
        return shown(self.now)

    def fitting(self, volume):
        return self.chance.choice([b for b in BOTTLES if b[1] >= volume + 1])

    def new_stock(self, kind, volume, room):
        self.count += 1
        stock = Stock(f"{kind['id']}-{self.count}", kind, volume, room)
        self.stocks.append(stock)
        return stock

    def mix(self):
        kind = self.chance.choice(self.kinds[1:])
        ident, room, _, _ = self.chance.choice(BOTTLES)
        stock = self.new_stock(kind, self.some(0.5 * room, 0.96 * room), room)
        more, pick = {}, self.chance.random()
        if pick < 0.25:
            more["history"] = "unknown"
            if self.chance.random() < 0.5:
                more["mixed_on"] = shown(self.now - timedelta(days=self.chance.randint(1, 50)))
            if self.chance.random() < 0.5:
                more["assumed_films_per_litre"] = self.some(0, 6)
        elif pick < 0.35:
            more["films_before"] = self.some(0, 3, 2)
        self.j.mix(stock.batch, self.at(), kind["id"], ident, stock.volume, **more)

    def decant(self, stock):
        kind = next(one for one in self.kinds if one["id"] == stock.kind)
        most = min(stock.volume, 480.0)
        volume = stock.volume if self.chance.random() < 0.1 and stock.volume < 4900 \
            else self.some(0.3 * most, 0.9 * most)
        ident, room, _, _ = self.fitting(volume)
        heir = self.new_stock(kind, volume, room)
        self.j.decant(stock.batch, heir.batch, self.at(), volume, ident)
        stock.volume -= volume

    def fill(self, stock):
        others = [s for s in self.stocks if s.role == stock.role and s is not stock
                  and s.volume > 1 and s.room - s.volume > 25]
        if not others:
            return self.mix()
        heir = self.chance.choice(others)
        volume = self.some(5, min(heir.room - heir.volume, 0.8 * stock.volume) - 1)
        if self.chance.random() < 0.4:       # entered filling first
            self.j.top_up(heir.batch, self.at(), volume, **{"from": stock.batch})
            self.j.event("drawn", stock.batch, self.at(), volume_ml=volume, why="to top up",
                         to=heir.batch)
        else:
            self.j.fill(stock.batch, heir.batch, self.at(), volume)
        stock.volume -= volume
        heir.volume += volume
        return None

    def process(self, stock):
        fields = {}
        if stock.volume < 250:
            return self.other(stock)
        pairs = [(self.chance.choice(FORMATS), 1) for _ in range(self.chance.randint(1, 2))]
        once = stock.kind == "once" or self.chance.random() < 0.05
        used = self.some(0.2 * stock.volume, (0.5 if once else 1.0) * stock.volume)
        if once:
            fields["one_shot"] = True
            stock.volume -= used
        else:
            lost = self.some(0, min(15, 0.1 * used))
            fields["lost_ml"] = lost
            stock.volume -= lost
            if stock.role == "fixer" and self.chance.random() < 0.3:
                fields["second"] = True
        if self.chance.random() < 0.08:
            fields["air_ml"] = self.some(0, 150)
        self.j.process(stock.batch, self.at(), *pairs, used_ml=used, **fields)
        if stock.kind == "seasoned" and stock.room - stock.volume > 45:
            self.now += timedelta(minutes=11)
            added = self.some(10, min(90, stock.room - stock.volume - 1))
            self.j.top_up(stock.batch, self.at(), added, solution="mq-r")
            stock.volume += added
        return None

    def look(self, stock):
        what = self.chance.choice(("colour", "precipitate", "precipitate", "leader"))
        passed = self.chance.random() < 0.9
        made = self.j.event("looked", stock.batch, self.at(), passed=passed, why="a look",
                            what=what)
        if not passed and what == "precipitate":
            self.now += timedelta(hours=3)
            self.j.event("filtered", stock.batch, self.at())
        elif not passed:
            self.voidable.append((made, stock))

    def test(self, stock):
        if stock.role == "fixer":
            fields = {"film": self.chance.choice(("ordinary", "flat grain"))} \
                if self.chance.random() < 0.7 else {}
            self.j.test(stock.batch, self.at(), self.some(40, 70), self.some(14, 27), **fields)
            if self.chance.random() < 0.25:
                self.now += timedelta(minutes=20)
                self.j.event("measured", stock.batch, self.at(), method="test paper",
                             silver_g_per_litre=self.some(0, 4))
        elif stock.role == "developer":
            self.j.event("strip-test", stock.batch, self.at(), density=self.some(0.9, 1.3, 2),
                         factor=self.some(0.95, 1.15, 2), passed=True)
        else:
            self.j.event("looked", stock.batch, self.at(), passed=True, why="yellow",
                         what="indicator")

    def other(self, stock):
        pick = self.chance.randrange(6)
        if pick == 0:
            self.j.event("stored-at", stock.batch, self.at(), temperature_c=self.some(3, 31))
        elif pick == 1:
            self.j.event("stood-open", stock.batch, self.at(), hours=self.some(0.1, 1.2, 2),
                         area_cm2=self.some(30, 160))
        elif pick == 2:
            ident, room, _, _ = self.fitting(stock.volume)
            self.j.event("moved", stock.batch, self.at(), vessel=ident)
            stock.room = room
        elif pick == 3:
            amount = self.some(1, 0.1 * stock.volume + 1)
            self.j.event("drawn", stock.batch, self.at(), volume_ml=amount, why="spilled")
            stock.volume -= amount
        elif pick == 4 and stock.room - stock.volume > 30:
            amount = self.some(5, 0.7 * (stock.room - stock.volume))
            self.j.top_up(stock.batch, self.at(), amount)
            stock.volume += amount
        else:
            self.j.event("opened", stock.batch, self.at())

    def step(self):
        self.now += timedelta(minutes=self.chance.randint(20, 700))
        alive = [stock for stock in self.stocks if stock.volume > 40]
        if len(alive) < 6 or (len(alive) < 16 and self.chance.random() < 0.09):
            return self.mix()
        stock = self.chance.choice(alive)
        if len(alive) > 13 and self.chance.random() < 0.15:
            stock = min(alive, key=lambda one: one.volume)
            stock.volume = 0.0
            return self.j.event("discarded", stock.batch, self.at(), how="to the can")
        pick = self.chance.random()
        for share, deed in ((0.34, self.process), (0.44, self.decant), (0.62, self.fill),
                            (0.70, self.look), (0.84, self.test), (1.0, self.other)):
            if pick < share:
                return deed(stock)
        return None


def shelf_of_chains(name, seed, steps):
    one = Chains(seed)
    for _ in range(steps):
        one.step()
    for made, stock in one.voidable[::2]:
        one.j.event("voided", stock.batch, one.at(), voids=made, why="the wrong bottle")
    enter_late(one.j, one.chance)
    days = (one.now - START).days
    save(name, one.j, *(shown(START + timedelta(days=days * share)) + more for share, more in (
        (0.3, ""), (0.7, "+all"), (1.0, ""), (1.4, "+all"))))


def enter_late(j, chance):
    """Enters some events later than they happened; what shares an instant keeps its order."""
    head = [line for line in j.lines if line["type"] != "event"]
    voids = [line for line in j.lines if line.get("kind") == "voided"]
    rest = [line for line in j.lines if line["type"] == "event" and line["kind"] != "voided"]
    groups = {}
    for line in rest:
        groups.setdefault(line["at"], []).append(line)
    order = list(groups.values())
    for _ in range(len(order) // 8):
        place = chance.randrange(len(order))
        if all(line["kind"] != "mixed" for line in order[place]):
            group = order.pop(place)
            order.insert(chance.randint(place, len(order)), group)
    j.lines = head + [line for group in order for line in group] + voids
