"""A journal of version 2 at random: odd solutions, odd meetings of events, halves taken back, lines
entered late. It may be impossible in places; `possible()` drops what the reading refuses."""

import random
from datetime import datetime, timedelta, timezone

from reading_fields import Refused
from reading_journal import Book
from reading_report import report_at
from scenario_kit import Journal

START = datetime(2025, 1, 6, 9, 0, tzinfo=timezone.utc)
MONTH = 30.4375
FORMATS = ("135-36", "135-24", "120", "220", "4x5", "5x7", "8x10")
MATERIALS = ("glass", "pet", "hdpe", "ldpe", "pp")
LOOKED_AT = ("colour", "smell", "precipitate", "leader", "indicator")
FAULTS = ("thin", "dense", "stained", "not-clear", "uneven")


def shown(moment):
    return moment.strftime("%Y-%m-%dT%H:%M:%SZ")


class Chance(random.Random):
    """A source of chance in the words of this file."""

    def some(self, low, high, digits=1):
        return round(self.uniform(low, high), digits)

    def once_in(self, times):
        return self.random() < 1 / times

    def maybe(self, share, **fields):
        return fields if self.random() < share else {}


def keeping(c):
    full = c.choice((MONTH * c.randint(1, 24), c.some(20, 400)))
    return {"full_days": full, **c.maybe(0.6, half_days=round(full * c.uniform(0.2, 0.95), 3)),
            **c.maybe(0.4, tray_hours=c.some(4, 60))}


def wear(c):
    rule = c.choice(("none", "per-film", "compound", "steps"))
    if rule == "none":
        return {"rule": rule}
    if rule != "steps":
        return {"rule": rule, "percent": c.some(0, 15)}
    return {"rule": rule, "steps": [{"from_films_per_litre": start, "factor": c.some(1, 2, 2)}
                                    for start in {c.some(0, 20) for _ in range(3)}]}


def solution(c, ident, role, **more):
    """Whatever a solution may say or leave out."""
    made = {"type": "solution", "id": ident, "name": f"Solution {ident}", "role": role,
            "wear": wear(c)}
    for share, fields in (
            (0.6, {"capacity_films_per_litre": c.some(4, 40)}), (0.8, {"keeping": keeping(c)}),
            (0.5, {"q10": c.some(1.5, 3, 2)}), (0.7, {"oxygen_factor": c.some(0.3, 1, 2)}),
            (0.6, {"silver_g_per_film": c.some(0, 0.3, 2)}),
            (0.6, {"bromide_mg_per_film": c.some(0, 80)}),
            (0.4, {"silver_limit_g_per_litre": c.some(0.1, 4)}),
            (0.3, {"one_shot_ml_per_film": c.some(50, 400)}),
            (0.3, {"turnover_limit": c.some(0.05, 3, 2)}),
            (0.4, {"form": c.choice(("powder", "liquid", "crystals"))}),
            (0.3, {"chemicals": ["metol", "sodium sulfite"]})):
        made.update(c.maybe(share, **fields))
    if role == "fixer":
        for share, fields in ((0.5, {"fresh_clearing_s": c.some(20, 90)}),
                              (0.5, {"fix_min_s": c.some(60, 300)}),
                              (0.6, {"fixer_kind": c.choice(("acid", "alkaline"))}),
                              (0.3, {"tabular_factor": c.some(2, 4)})):
            made.update(c.maybe(share, **fields))
    return {**made, **more}


class RandomJournal:
    """Writes one, an event at a time; volumes are kept track of as if nothing were late."""

    def __init__(self, seed, steps):
        self.c = c = Chance(seed)
        self.solutions = [
            solution(c, "rep", "developer"),
            solution(c, "dev-r", "developer", replenisher="rep",
                     replenish_ml_per_film=c.some(20, 90)),
            solution(c, "dev-once", "developer", one_shot_ml_per_film=c.some(60, 300)),
            solution(c, "dev-new", "developer", replaces="dev-once"),
            solution(c, "fix-a", "fixer"), solution(c, "fix-b", "fixer"),
            solution(c, "other", c.choice(("stop", "wash-aid", "wetting-agent", "other")))]
        self.rooms, vessels = {}, []
        for number in range(8):
            ident, room = f"v{number}", c.some(120, 4200)
            vessels.append({"type": "vessel", "id": ident, "name": ident, "capacity_ml": room,
                            "material": c.choice(MATERIALS), "squeezed": c.once_in(6),
                            **c.maybe(0.3, wall_mm=c.some(0.2, 2, 2)),
                            **c.maybe(0.2, permeability=c.some(0, 250)),
                            **c.maybe(0.3, cap_cm3_day=c.some(0, 0.3, 2)),
                            **(c.maybe(0.5, replaces="v0") if number > 5 else {})})
            self.rooms[ident] = room
        self.j = Journal(*self.solutions, *vessels, *self.cupboard(), version=2)
        self.now, self.runs, self.bottles = START, 0, {}
        for _ in range(steps):
            self.step()
        self.take_back()
        self.enter_late()

    @staticmethod
    def cupboard():
        return ({"type": "container", "id": "can", "name": "Can", "holds": "other",
                 "capacity_ml": 900000},
                {"type": "supply", "id": "gloves", "name": "Gloves", "amount": 5000},
                {"type": "packet", "id": "liquid", "solution": "fix-a", "form": "liquid",
                 "volume_ml": 90000, "opened_days": 90, "makes_ml": 500000})

    def event(self, kind, batch, **fields):
        if self.c.once_in(20):
            fields["by"] = "somebody"
        return self.j.event(kind, batch, shown(self.now), **fields)

    def on_thing(self, kind, **fields):
        self.event(kind, "", **fields)
        del self.j.lines[-1]["batch"]

    def air(self):
        return self.c.maybe(0.08, air_ml=self.c.some(0, 300))

    def alive(self):
        return [ident for ident, bottle in self.bottles.items() if bottle["volume"] > 15]

    def new_bottle(self, of, volume, room):
        ident = f"b{len(self.bottles)}"
        self.bottles[ident] = {"of": of, "volume": volume, "room": room}
        return ident

    def vessel_for(self, volume):
        fitting = [one for one in self.rooms.items() if one[1] > volume]
        return self.c.choice(fitting) if fitting else (None, 0)

    # --- what happens -------------------------------------------------------

    def step(self):
        c = self.c
        if not c.once_in(5):             # else at the same instant
            self.now += timedelta(minutes=c.randint(1, 3000))
        alive = self.alive()
        if len(alive) < 5 or (len(alive) < 14 and c.once_in(12)):
            return self.mix()
        deed = c.choices((self.process, self.decant, self.fill, self.replenish, self.thing,
                          self.other), (27, 9, 12, 7, 5, 40))[0]
        return deed(c.choice(alive))

    def mix(self):
        c = self.c
        of = c.choice(self.solutions[1:])
        vessel, room = c.choice(list(self.rooms.items()))
        volume = c.some(0.3 * room, 0.97 * room)
        fields = c.maybe(0.15, films_before=c.some(0, 6, 2))
        if c.once_in(4):
            fields.update(history="unknown",
                          **c.maybe(0.5, assumed_films_per_litre=c.some(0, 12)),
                          **c.maybe(0.5, mixed_on=shown(
                              self.now - timedelta(days=c.randint(0, 200)))))
        self.event("mixed", self.new_bottle(of, volume, room), solution=of["id"], vessel=vessel,
                   volume_ml=volume, **fields, **self.air())

    def both(self, drawn, filled):
        """The halves of a filling, in either order."""
        halves = [drawn, filled]
        self.c.shuffle(halves)
        for kind, batch, fields in halves:
            self.event(kind, batch, **fields, **self.air())

    def decant(self, donor):
        c, bottle = self.c, self.bottles[donor]
        volume = round(bottle["volume"] * c.choice((1, c.uniform(0.1, 0.9))), 1)
        vessel, room = self.vessel_for(volume)
        if vessel is None:
            return
        bottle["volume"] -= volume
        heir = self.new_bottle(bottle["of"], volume, room)
        self.both(("drawn", donor, {"volume_ml": volume, "to": heir}),
                  ("mixed", heir, {"solution": bottle["of"]["id"], "vessel": vessel,
                                   "volume_ml": volume, "from": donor,
                                   **c.maybe(0.2, films_before=c.some(0, 3))}))

    def fill(self, donor):
        c, bottle = self.c, self.bottles[donor]
        heirs = [one for one in self.alive() if one != donor
                 and self.bottles[one]["of"]["role"] == bottle["of"]["role"]
                 and self.bottles[one]["room"] - self.bottles[one]["volume"] > 10]
        if not heirs:
            return
        heir = c.choice(heirs)
        there = self.bottles[heir]
        volume = c.some(3, min(there["room"] - there["volume"], bottle["volume"]))
        bottle["volume"] -= volume
        there["volume"] += volume
        self.both(("drawn", donor, {"volume_ml": volume, "to": heir, "why": "to top up"}),
                  ("topped-up", heir, {"volume_ml": volume, "from": donor}))

    def replenish(self, batch):
        bottle = self.bottles[batch]
        room = bottle["room"] - bottle["volume"]
        if "replenisher" in bottle["of"] and room > 8:
            volume = self.c.some(3, min(200, room - 1))
            bottle["volume"] += volume
            self.event("topped-up", batch, volume_ml=volume,
                       solution=bottle["of"]["replenisher"], **self.air())

    def process(self, batch):
        c, bottle = self.c, self.bottles[batch]
        fields = {"films": [{"format": c.choice(FORMATS), "count": c.randint(1, 3)}
                            for _ in range(c.randint(1, 2))]}
        if c.once_in(10):
            fields = {"area_cm2": c.some(50, 1500)}
        used = c.some(0.2 * bottle["volume"], 0.8 * bottle["volume"])
        fields["used_ml"] = used
        if c.random() < (0.5 if "one_shot_ml_per_film" in bottle["of"] else 0.05):
            fields["one_shot"] = True
            bottle["volume"] -= used
        elif c.random() < 0.6:
            fields["lost_ml"] = c.some(0, min(20, 0.1 * bottle["volume"]))
            bottle["volume"] -= fields["lost_ml"]
        fields.update(c.maybe(0.3 if bottle["of"]["role"] == "fixer" else 0.05, second=True))
        if c.once_in(5):
            self.runs += 1
            fields["run"] = f"run-{self.runs}"
        self.event("processed", batch, **fields, **self.air())
        if "run" in fields:
            self.j.lines.append({"type": "film", "id": f"film-{self.runs}", "run": fields["run"]})

    def thing(self, batch):
        c = self.c
        kind, fields = c.choice((
            ("opened-packet", {"item": "liquid"}), ("counted", {"item": "gloves", "amount": 3000}),
            ("taken", {"item": c.choice(("liquid", "gloves")), "amount": c.some(0.5, 20),
                       **c.maybe(0.5, **{"for": batch})}),
            ("poured-in", {"container": "can", "volume_ml": c.some(1, 500),
                           **c.maybe(0.5, **{"from": batch})}),
            ("handed-over", {"container": "can", "to": "a firm", "volume_ml": c.some(1, 300)})))
        self.on_thing(kind, **fields)

    def other(self, batch):
        c, bottle = self.c, self.bottles[batch]
        vessel, room = self.vessel_for(bottle["volume"])
        drawn = c.some(1, 0.2 * bottle["volume"] + 1)
        fresh = c.some(1, max(2, 0.9 * (bottle["room"] - bottle["volume"])))
        kind, fields = c.choice((
            ("stored-at", {"temperature_c": c.some(0, 45)}), ("opened", self.air()),
            ("stood-open", {"hours": c.some(0.1, 5, 2), "area_cm2": c.some(20, 500)}),
            ("moved", {"vessel": vessel, **self.air()}), ("filtered", self.air()),
            ("drawn", {"volume_ml": drawn, "why": "spilt", **self.air()}),
            ("topped-up", {"volume_ml": fresh, **self.air()}), ("dissolved", {}),
            ("looked", {**c.maybe(0.7, passed=c.random() < 0.85),
                        **c.maybe(0.7, what=c.choice(LOOKED_AT))}),
            ("measured", {"silver_g_per_litre": c.some(0, 5, 2)}), ("noted", {"text": "a note"}),
            ("strip-test", {**c.maybe(0.7, density=c.some(0.5, 2, 2)),
                            **c.maybe(0.7, factor=c.some(0.8, 1.3, 2)),
                            **c.maybe(0.6, passed=c.random() < 0.9)}),
            *[("clearing-test", {"seconds": c.some(20, 130), "temperature_c": c.some(8, 32),
                                 **c.maybe(0.6, film=c.choice("xyz"))})] * 3,
            ("test-asked", {"mark": c.choice(FAULTS), "film": f"film-{c.randint(1, 9)}"}),
            ("contaminated", {}) if c.once_in(8) else ("opened", {}),
            ("discarded", c.maybe(0.5, container="can")) if c.once_in(4) else ("opened", {})))
        if (kind == "moved" and vessel is None) or (
                kind == "test-asked" and int(fields["film"][5:]) > self.runs):
            return
        bottle["room"] = room if kind == "moved" else bottle["room"]
        bottle["volume"] += {"drawn": -drawn, "topped-up": fresh,
                             "discarded": -bottle["volume"]}.get(kind, 0)
        self.event(kind, batch, **fields)

    # --- afterwards ---------------------------------------------------------

    def take_back(self):
        c = self.c
        events = [line for line in self.j.lines if line["type"] == "event" and "batch" in line]
        for line in c.sample(events, min(len(events), c.randint(0, 6))):
            if line["kind"] != "mixed" or "from" in line:
                taken = self.take_back_one(line["batch"], line["id"])
                if c.once_in(5):
                    self.take_back_one(line["batch"], taken)

    def take_back_one(self, batch, ident):
        taken = self.event("voided", batch, voids=ident)
        if self.c.once_in(4):
            del self.j.lines[-1]["batch"]  # what it names says of which bottle
        return taken

    def enter_late(self):
        """Some lines further down than they happened, though before what takes them back."""
        c, lines = self.c, self.j.lines
        late = [line for line in lines if line["type"] == "event" and "run" not in line
                and line["kind"] not in ("mixed", "voided")]
        for line in c.sample(late, len(late) // 10):
            place = lines.index(line)
            last = next((k for k, other in enumerate(lines)
                         if other.get("voids") == line["id"]), len(lines))
            lines.insert(c.randint(place, last - 1), lines.pop(place))

    def end(self):
        return self.now + timedelta(days=2)


def possible(journal, at):
    """The journal read, without what the reading refuses; halves and what hangs on them go too."""
    while True:
        try:
            book = Book(journal.raw())
            report_at(book, at, True)
            return book
        except Refused as refused:
            drop(journal, journal.lines[refused.line - 1])


def drop(journal, gone):
    away = {gone["id"]}
    if gone["kind"] == "mixed":
        away |= {line["id"] for line in journal.lines
                 if gone["batch"] in (line.get("batch"), line.get("from"), line.get("to"),
                                      line.get("for"))}
    other = gone.get("to") or gone.get("from")
    away |= {line["id"] for line in journal.lines
             if other and line.get("batch") == other and line.get("at") == gone["at"]
             and gone.get("batch") in (line.get("from"), line.get("to"))
             and line.get("volume_ml") == gone.get("volume_ml")}
    runs = {line["run"] for line in journal.lines
            if line["type"] == "event" and "run" in line and line["id"] in away}
    films = {line["id"] for line in journal.lines
             if line["type"] == "film" and line["run"] in runs}
    journal.lines = [line for line in journal.lines
                     if not (line.get("id") in away | films or line.get("voids") in away
                             or (line.get("kind") == "test-asked" and line["film"] in films))]
