"""Builds journals line by line, and writes them with their expected reports."""

import json
import pathlib
import re

from reading_fields import Refused
from reading_journal import Book
from reading_report import report_at

HERE = pathlib.Path(__file__).resolve().parent
TWO_MONTHS, SIX_MONTHS = 60.875, 182.625


def solution(ident, role="developer", rule="per-film", percent=10, **more):
    """A solution object; `drop` names fields to leave out."""
    wear = {"rule": rule}
    if rule in ("per-film", "compound"):
        wear["percent"] = percent
    made = {"type": "solution", "id": ident, "name": f"Solution {ident}", "role": role,
            "capacity_films_per_litre": 10, "wear": wear,
            "keeping": {"full_days": SIX_MONTHS, "half_days": TWO_MONTHS, "tray_hours": 24},
            "q10": 1.9, "oxygen_factor": 0.49, "silver_g_per_film": 0,
            "bromide_mg_per_film": 50, "sources": {"capacity": "invented for this scenario"}}
    drop = more.pop("drop", ())
    made.update(more)
    for field in drop:
        del made[field]
    return made


def fixer(ident="fix", **more):
    """A fixer: silver, no wear on the time, two months, twenty films."""
    fields = {"capacity_films_per_litre": 20, "silver_g_per_film": 0.15,
              "bromide_mg_per_film": 0, "keeping": {"full_days": TWO_MONTHS}}
    fields.update(more)
    return solution(ident, role="fixer", rule="none", **fields)


def vessel(ident="b1", capacity=1030, material="glass", squeezed=False, **more):
    return {"type": "vessel", "id": ident, "name": f"Bottle {ident}",
            "capacity_ml": capacity, "material": material, "squeezed": squeezed, **more}


def films(*pairs):
    return [{"format": form, "count": count} for form, count in pairs]


class Journal:
    """A journal in the making; events get ids e1, e2 ... as they come."""

    def __init__(self, *objects, version=1):
        self.lines = [{"type": "book", "format": "ullage-journal", "version": version}]
        self.lines += objects
        self.count = 0

    def event(self, kind, batch, at, **fields):
        """Adds an event; `at` may leave out the time's tail. Returns its id."""
        self.count += 1
        at = at if len(at) > 16 else (at if "T" in at else at + "T10:00") + ":00Z"
        ident = f"e{self.count}"
        self.lines.append({"type": "event", "id": ident, "batch": batch, "kind": kind,
                           "at": at, **fields})
        return ident

    def mix(self, batch, at, ident, bottle="b1", volume=1000, **fields):
        return self.event("mixed", batch, at, solution=ident, vessel=bottle,
                          volume_ml=volume, **fields)

    def process(self, batch, at, *pairs, **fields):
        return self.event("processed", batch, at, films=films(*pairs), **fields)

    def top_up(self, batch, at, volume, **fields):
        return self.event("topped-up", batch, at, volume_ml=volume, **fields)

    def test(self, batch, at, seconds, celsius=20, **fields):
        return self.event("clearing-test", batch, at, seconds=seconds, temperature_c=celsius,
                          **fields)

    def fill(self, donor, heir, at, volume, why="to top up", **fields):
        """Tops a bottle up from another: the pair of events. Returns both ids."""
        return (self.event("drawn", donor, at, volume_ml=volume, why=why, to=heir),
                self.top_up(heir, at, volume, **{"from": donor}, **fields))

    def decant(self, donor, heir, at, volume, bottle="b1", **fields):
        """Moves part of a batch into a bottle of its own. Returns both ids."""
        ident = next(line["solution"] for line in self.lines
                     if line.get("batch") == donor and line["kind"] == "mixed")
        return (self.event("drawn", donor, at, volume_ml=volume, why="decanted", to=heir),
                self.mix(heir, at, ident, bottle, volume, **{"from": donor}, **fields))

    def raw(self):
        return "".join(json.dumps(line, ensure_ascii=False, separators=(",", ":")) + "\n"
                       for line in self.lines).encode()


def book_of(journal):
    """The journal, read."""
    return Book(journal.raw())


def codes_at(journal, when):
    """The codes of all reasons of all batches then."""
    return {reason["code"] for one in report_at(book_of(journal), full_time(when), True)
            for reason in one["reasons"]}


def full_time(text):
    return text if len(text) > 16 else (text if "T" in text else text + "T12:00") + ":00Z"


def save(name, journal, *times):
    """Writes a scenario; each time is "2024-05-01[THH:MM]" with "+all" for
    --all. The first goes to NAME.expected.json, the next to NAME.2. ..."""
    folder = HERE / "scenarios"
    raw = journal.raw()
    (folder / f"{name}.jsonl").write_bytes(raw)
    book = Book(raw)
    for number, when in enumerate(times, 1):
        everything = when.endswith("+all")
        at = full_time(when.removesuffix("+all"))
        tail = "" if number == 1 else f".{number}"
        found = {"at": at, "all": everything, "report": report_at(book, at, everything)}
        (folder / f"{name}{tail}.expected.json").write_text(
            json.dumps(found, indent=1, ensure_ascii=False, allow_nan=False) + "\n",
            encoding="utf-8")


def save_refused(name, raw, line, field):
    """Writes a refused journal, after seeing that this reading refuses it so."""
    try:
        report_at(Book(raw), "2025-12-31T00:00:00Z", True)
    except Refused as refused:
        if (refused.line, refused.field) != (line, field):
            raise SystemExit(f"{name}: refused otherwise, {refused}") from None
    else:
        raise SystemExit(f"{name}: taken in")
    folder = HERE / "refused"
    (folder / f"{name}.jsonl").write_bytes(raw)
    (folder / f"{name}.expected.json").write_text(
        json.dumps({"line": line, "field": field}) + "\n", encoding="utf-8")


def clear(folder):
    """Removes what an earlier run made, so that no scenario outlives its name."""
    path = HERE / folder
    path.mkdir(exist_ok=True)
    for file in path.iterdir():
        if re.search(r"\.(jsonl|expected\.json)$", file.name):
            file.unlink()
