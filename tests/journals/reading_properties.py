"""What must hold of any chain of bottles, tried on invented journals."""

import pathlib
import random
import time
from datetime import datetime, timedelta, timezone

from reading_fields import instant
from reading_fold import Shelf
from reading_journal import Book
from reading_report import report_at
from scenario_kit import Journal, book_of, fixer, solution, vessel

CARRIED = ("wear", "age", "silver", "bromide")


def used_developer(version=2, volume=1000):
    """A litre with some film through it, and two more bottles to pour into."""
    j = Journal(solution("mq", silver_g_per_film=0.02), vessel(), vessel("b2", 1030, "pet"),
                vessel("b3", 2000, "hdpe"), version=version)
    j.mix("a", "2024-01-01", "mq", volume=volume)
    j.process("a", "2024-01-10", ("120", 3), lost_ml=40)
    return j


def state(journal, batch, at="2024-02-01T12:00:00Z"):
    return Shelf(book_of(journal), instant(at)).batches[batch]


def there_and_back(check):
    """Decanting and pouring all of it back changes only what pouring adds."""
    plain, poured = used_developer(), used_developer()
    plain.event("opened", "a", "2024-01-20")
    poured.decant("a", "b", "2024-01-20", 250, "b2")
    poured.fill("b", "a", "2024-01-20", 250)
    one, other = (state(j, "a", "2024-01-20T10:00:00Z") for j in (plain, poured))
    for name in CARRIED:
        check(name, getattr(other, name), getattr(one, name), 1e-12)
    check("volume", other.volume, one.volume, 1e-9)
    check("oxygen, two pourings of a quarter litre", other.oxygen,
          one.oxygen + 2 * one.c_sat * 250 / one.volume, 1e-12)
    check("the mixing date", other.calendar_from, one.calendar_from, 0)
    late, later = (state(j, "a") for j in (plain, poured))
    check("and they go on alike", later.oxygen - late.oxygen, other.oxygen - one.oxygen, 1e-9)


def donors_in_either_order(check):
    """The order of two independent donors does not matter."""
    found = []
    for order in (("x", "y"), ("y", "x")):
        j = used_developer(volume=500)
        j.mix("x", "2024-01-03", "mq", "b2", 900)
        j.process("x", "2024-01-05", ("120", 5), lost_ml=10)
        j.mix("y", "2023-12-24", "mq", "b3", 1500)
        j.process("y", "2024-01-06", ("120", 2), used_ml=500)
        for donor in order:
            j.fill(donor, "a", "2024-01-20", {"x": 150, "y": 220}[donor])
        found.append(state(j, "a"))
    for name in (*CARRIED, "oxygen", "volume", "calendar_from", "air_oxygen"):
        check(name, getattr(found[0], name), getattr(found[1], name), 1e-10)


def nothing_is_lost(check):
    """Silver and bromide are conserved over the whole shelf, by whatever way they are poured."""
    for seed in range(6):
        chance = random.Random(seed)
        j = Journal(solution("mq", silver_g_per_film=0.02), fixer(bromide_mg_per_film=3),
                    vessel("b1", 3000), version=2)
        names = {"mq": [f"mq-{k}" for k in range(4)], "fix": [f"fix-{k}" for k in range(3)]}
        volumes = {}
        for kind, batches in names.items():
            for batch in batches:
                j.mix(batch, "2024-01-01", kind, volume=1000)
                volumes[batch] = 1000.0
        now, films = datetime(2024, 1, 2, tzinfo=timezone.utc), {"mq": 0.0, "fix": 0.0}
        for step in range(150):
            now += timedelta(hours=chance.randint(0, 20))
            at = now.strftime("%Y-%m-%dT%H:%M:%SZ")
            kind = chance.choice(list(names))
            one, other = chance.sample(names[kind], 2)
            amount = round(chance.uniform(1, 0.4 * volumes[one]), 1)
            if step % 3 == 0 or volumes[one] < 20:
                second = kind == "fix" and chance.random() < 0.3
                j.process(one, at, ("120", 1), second=second)
                films[kind] += 0.2 if second else 1.0
            elif step % 7 == 1:
                heir = f"{kind}-{len(names[kind])}"
                j.decant(one, heir, at, amount)
                names[kind].append(heir)
                volumes[one] -= amount
                volumes[heir] = amount
            elif volumes[other] + amount < 2900:
                j.fill(one, other, at, amount)
                volumes[one] -= amount
                volumes[other] += amount
        shelf = list(Shelf(book_of(j), instant("2024-12-01T00:00:00Z")).batches.values())
        for kind, per_film in (("mq", 0.02), ("fix", 0.15)):
            held = sum(b.silver * b.volume / 1000 for b in shelf if b.solution_id == kind)
            check(f"silver in {kind}, g", held, films[kind] * per_film, 1e-9)
            worn = sum(b.wear * b.volume / 1000 for b in shelf if b.solution_id == kind)
            check(f"films in {kind}", worn, films[kind], 1e-9)
            done = sum(b.films_done for b in shelf if b.solution_id == kind)
            bromide = sum(b.bromide * b.volume / 1000 for b in shelf if b.solution_id == kind)
            check(f"bromide in {kind}, mg", bromide, done * {"mq": 50, "fix": 3}[kind], 1e-7)


def to_and_fro(check):
    """A thousand pourings between two bottles."""
    j = used_developer()
    j.decant("a", "b", "2024-01-11", 400, "b2")
    now = datetime(2024, 1, 12, tzinfo=timezone.utc)
    for step in range(1000):
        now += timedelta(minutes=7)
        at = now.strftime("%Y-%m-%dT%H:%M:%SZ")
        donor, heir = ("a", "b") if step % 2 == 0 else ("b", "a")
        j.fill(donor, heir, at, 30)
    started = time.perf_counter()
    shelf = Shelf(book_of(j), instant("2024-02-01T12:00:00Z")).batches
    spent = time.perf_counter() - started
    print(f"     folded in {spent:.2f} s")
    check("seconds", spent < 10.0, 1, 0)
    held = sum(shelf[name].silver * shelf[name].volume / 1000 for name in "ab")
    check("silver, 40 mL of it lost before", held, 0.06 * 0.96, 1e-12)
    check("the two have become one solution", shelf["a"].wear, shelf["b"].wear, 1e-9)


def no_circle(check):
    """Two bottles that fill each other at one instant: the order of entry decides."""
    j = used_developer()
    j.mix("b", "2024-01-02", "mq", "b2", 800)
    j.fill("a", "b", "2024-01-20", 100)
    j.fill("b", "a", "2024-01-20", 100)
    shelf = Shelf(book_of(j), instant("2024-01-20T10:00:00Z")).batches
    before = 3.0
    first = before * 100 / 900
    check("the first filled", shelf["b"].wear, first, 1e-12)
    check("the second from it", shelf["a"].wear, (before * 860 + first * 100) / 960, 1e-12)


class FromScratch(Shelf):
    """Folds each donor anew from nothing, over what lies before the filling."""

    def donor(self, f):
        earlier = FromScratch(self.book, events=before(self.book, f))
        self.batches[f.data["from"]] = earlier.batches[f.data["from"]]
        return super().donor(f)


def before(book, f):
    events = book.happened()
    return events[:events.index(f)]


def donors_from_scratch(check):
    """All bottles folded together are what each donor folded anew comes to."""
    folder = pathlib.Path(__file__).resolve().parent / "scenarios"
    for name in ("chain-of-four", "exchanged-at-one-instant", "filling-empties-the-donor",
                 "fillings-entered-in-any-order", "what-comes-along", "donor-corrected",
                 "topped-up-from-another-solution"):
        book = Book((folder / f"{name}.jsonl").read_bytes())
        at = instant("2024-03-01T12:00:00Z")
        plain, anew = Shelf(book, at), FromScratch(book, at)
        for one, other in zip(plain.in_order(), anew.in_order()):
            found = max(abs(getattr(one, what) - getattr(other, what))
                        for what in (*CARRIED, "oxygen", "volume", "openings"))
            check(f"{name}, {one.id}", found, 0.0, 1e-9)


def corrections_reach_heirs(check):
    """A correction on a donor shows in whoever was filled from it, and in theirs."""
    j = used_developer()
    wrong = j.process("a", "2024-01-12", ("120", 2))
    j.decant("a", "b", "2024-01-20", 300, "b2")
    j.decant("b", "c", "2024-01-21", 100, "b3")
    before = state(j, "c").wear
    j.event("voided", "a", "2024-03-01", voids=wrong, why="another bottle")
    j.process("a", "2024-01-12", ("120", 1))
    after = state(j, "c").wear
    check("two films, then one", before - after, 1 / 0.96, 1e-12)
    halves = j.fill("a", "c", "2024-01-25", 50)
    j.event("voided", "a", "2024-03-02", voids=halves[0], why="never poured")
    check("half a filling voided takes the other along", state(j, "c").volume, 100, 0)


def waits_split(check):
    """Splitting a wait into two changes nothing, in a chain as in one bottle."""
    found = []
    for split in (False, True):
        j = used_developer()
        j.decant("a", "b", "2024-01-20", 300, "b2")
        j.event("stored-at", "b", "2024-01-22", temperature_c=8)
        if split:
            for day in range(12, 32):
                for batch in ("a", "b") if day > 20 else ("a",):
                    j.event("noted", batch, f"2024-01-{day}T13:13", text="a look")
        j.fill("b", "a", "2024-02-02", 120)
        found.append([state(j, batch, "2024-03-01T12:00:00Z") for batch in "ab"])
    for one, other in zip(*found):
        for name in (*CARRIED, "oxygen", "air_oxygen"):
            check(f"{one.id} {name}", getattr(one, name), getattr(other, name), 1e-9)


def replenished(check):
    """Replenishing at the rate of the film keeps the wear where it was."""
    j = Journal(solution("rep"), solution("mq", replenisher="rep", replenish_ml_per_film=25,
                                          capacity_films_per_litre=40), vessel(), version=2)
    j.mix("d", "2024-01-01", "mq", films_before=6)
    for day in range(2, 29):
        at = f"2024-01-{day:02}"
        j.process("d", at + "T18:00", ("120", 1), lost_ml=25)
        j.top_up("d", at + "T18:10", 25, solution="rep")
    batch = state(j, "d")
    # A film adds 1 to w*V/1000, of which 25 mL lost takes its share and the credit takes 1.
    wear = 6.0
    for _ in range(27):
        wear += 1.0
        wear = max(0.0, wear * 975 - 1000) / 1000
    check("wear", batch.wear, wear, 1e-12)
    check("turnovers", batch.replenisher_used / batch.first_volume, 27 * 25 / 1000, 1e-12)
    one = report_at(book_of(j), "2024-02-01T12:00:00Z")[0]
    check("no forecast with a replenisher", one["last_film"] is None, 1, 0)
    check("age", one["age_days"], (instant("2024-02-01T12:00:00Z")
                                   - instant("2024-01-01T10:00:00Z")) / 86_400e6, 1e-9)
    # The date its calendar counts from has moved on by a fortieth of the time since, each time.
    age, last = 0.0, instant("2024-01-01T10:00:00Z")
    for day in range(2, 29):
        now = instant(f"2024-01-{day:02}T18:10:00Z")
        age, last = (age + (now - last) / 86_400e6) * 0.975, now
    now = instant("2024-02-01T12:00:00Z")
    check("days on the calendar", (now - batch.calendar_from) / 86_400e6,
          age + (now - last) / 86_400e6, 1e-9)


def entered_late(check):
    """Events at times of their own may be entered in any order."""
    j = used_developer()
    j.decant("a", "b", "2024-01-20", 300, "b2")
    j.process("b", "2024-01-22", ("120", 1), lost_ml=5)
    j.fill("b", "a", "2024-01-25", 60)
    j.event("stored-at", "a", "2024-01-15", temperature_c=26)
    plain = report_at(book_of(j), "2024-02-10T12:00:00Z")
    head, tail = j.lines[:5], j.lines[5:]
    for seed in range(4):
        random.Random(seed).shuffle(tail)
        j.lines = head + tail
        check(f"entered anew {seed}", report_at(book_of(j), "2024-02-10T12:00:00Z") == plain, 1, 0)


CHECKS = (there_and_back, donors_in_either_order, nothing_is_lost, to_and_fro, no_circle,
          donors_from_scratch,
          corrections_reach_heirs, waits_split, replenished, entered_late)
