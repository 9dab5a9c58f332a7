#!/usr/bin/env python3
"""Writes the books of older schema steps that stand beside it, as the programs of then left them.

Run once for each new step, before it is released: `make_old_books.py 6` writes version-6.ullage. The
files are never written anew; the program must read them for good.
"""
import hashlib
import json
import pathlib
import sqlite3
import sys
from datetime import datetime

HERE = pathlib.Path(__file__).parent
SCHEMA = HERE.parents[3] / "resources" / "schema"

# Type, the first step that knows it, and the line.
LINES = [
    (1, '{"type":"solution","id":"mq","name":"MQ borax","role":"developer",'
        '"capacity_films_per_litre":10,"wear":{"rule":"per-film","percent":10},'
        '"keeping":{"full_days":182.625,"half_days":60.875},"bromide_mg_per_film":50}'),
    (1, '{"type":"vessel","id":"b1","name":"Amber 1","capacity_ml":1030,"material":"glass",'
        '"squeezed":false}'),
    (1, '{"type":"vessel","id":"b2","name":"Amber 2","capacity_ml":520,"material":"glass",'
        '"squeezed":false}'),
    (1, '{"type":"packet","id":"p1","solution":"mq","makes_ml":1000}'),
    (1, '{"type":"event","id":"e1","batch":"dev-1","kind":"mixed","at":"2026-06-01T10:00:00Z",'
        '"solution":"mq","vessel":"b1","volume_ml":1000,"name":"Dev 1"}'),
    (1, '{"type":"event","id":"e2","batch":"dev-1","kind":"processed","at":"2026-06-03T19:30:00Z",'
        '"films":[{"format":"135-36","count":2}],"used_ml":600,"lost_ml":20,"run":"run-1"}'),
    (1, '{"type":"film","id":"f1","run":"run-1","format":"135-36","name":"Harbour"}'),
    (1, '{"type":"event","id":"e3","batch":"dev-1","kind":"noted","at":"2026-06-05T12:00:00Z",'
        '"text":"run-times develop 600/610 run=run-1"}'),
    (1, '{"type":"event","id":"e4","batch":"dev-2","kind":"mixed","at":"2026-06-06T10:00:00Z",'
        '"solution":"mq","vessel":"b2","volume_ml":500,"name":"Dev 2"}'),
    (1, '{"type":"event","id":"e5","batch":"dev-2","kind":"noted","at":"2026-06-07T12:00:00Z",'
        '"text":"a slip"}'),
    (1, '{"type":"event","id":"e6","batch":"dev-2","kind":"voided","at":"2026-06-07T12:05:00Z",'
        '"voids":"e5","why":"a slip"}'),
    (1, '{"type":"event","id":"e7","batch":"dev-2","kind":"discarded",'
        '"at":"2026-06-08T10:00:00Z","how":"can"}'),
    (2, '{"type":"event","id":"e8","batch":"dev-1","kind":"opened","at":"2026-06-09T10:00:00Z",'
        '"by":"Mira"}'),
    (3, '{"type":"film-mark","id":"m1","film":"f1","at":"2026-06-10T10:00:00Z","mark":"thin"}'),
    (4, '{"type":"container","id":"can","name":"Grey can","holds":"fixer","capacity_ml":5000}'),
]
BATCHES = [("dev-1", "Dev 1", "mq", "2026-06-01T10:00:00Z", None),
           ("dev-2", "Dev 2", "mq", "2026-06-06T10:00:00Z", "2026-06-08T10:00:00Z")]


BOOK_ID = "6f1f3a52-3c55-4c0e-9a59-6d2b1f0c7e11"
NOTHING = bytes(32)
CHAINED = 5  # the first step whose lines have hashes
DEED = "e7"  # from then on an action of its own, which can be undone


def millis(text):
    return int(datetime.fromisoformat(text.replace("Z", "+00:00")).timestamp() * 1000)


def statements(step):
    part = []
    for line in step.read_text().splitlines():
        if line.strip() == "-- next":
            yield "\n".join(part)
            part = []
        else:
            part.append(line)
    yield "\n".join(part)


def columns(line):
    said = json.loads(line)
    row = {"type": said["type"], "id": said["id"], "body": line, "action": 1}
    if said["type"] in ("event", "film-mark"):
        row["kind"] = said.get("kind", "film-mark")
        row["at_ms"] = millis(said["at"])
        row["batch"] = said.get("batch")
        row["volume_ml"] = said.get("volume_ml", said.get("used_ml"))
        row["films"] = sum(film["count"] for film in said.get("films", [])) or None
        row["voids"] = said.get("voids")
        row["person"] = said.get("by")
        row["film"] = said.get("film")
    if said["type"] in ("event", "film"):
        row["run"] = said.get("run")
    return {name: value for name, value in row.items() if value is not None}


def line_hash(before, kind, name, body):
    return hashlib.sha256(before + b"\0".join(part.encode() for part in (kind, name, body))).digest()


def put_note(book, key, value):
    book.execute("INSERT INTO note (key, value, sum) VALUES (?, ?, ?)",
                 (key, value, line_hash(NOTHING, "note", key, value)))


def chain(book):
    """What a program with hashes enters besides the lines."""
    head = NOTHING
    batches = {}
    for number, kind, name, body, batch in book.execute(
            "SELECT seq, type, id, body, batch FROM entry ORDER BY seq").fetchall():
        head = line_hash(head, kind, name, body)
        book.execute("UPDATE entry SET hash = ? WHERE seq = ?", (head, number))
        if batch:
            count, before = batches.get(batch, (0, NOTHING))
            batches[batch] = count + 1, line_hash(before, kind, name, body)
    for batch, (count, last) in batches.items():
        book.execute("UPDATE batch SET entries = ?, hash = ? WHERE id = ?", (count, last, batch))
    put_note(book, "head", f"{number} {head.hex()}")


def make(version):
    file = HERE / f"version-{version}.ullage"
    file.unlink(missing_ok=True)
    book = sqlite3.connect(file, isolation_level=None)
    book.execute("PRAGMA page_size = 4096")
    book.execute("PRAGMA journal_mode = WAL")
    for step in sorted(SCHEMA.glob("[0-9]*.sql"))[:version]:
        book.execute("BEGIN")
        for statement in statements(step):
            if statement.endswith("-- call begin_chain"):
                put_note(book, "book-id", BOOK_ID)
            else:
                book.execute(statement)
        book.execute(f"PRAGMA user_version = {int(step.name[:4])}")
        book.execute("COMMIT")
    book.execute("BEGIN")
    book.execute("INSERT INTO action (mode, what, subject) VALUES (3, 'import', '')")
    for since, line in LINES:
        if since <= version:
            row = columns(line)
            if version >= CHAINED and row["id"] == DEED:
                book.execute("INSERT INTO action (mode, what, subject) "
                             "VALUES (0, 'discarded', 'Dev 2')")
                row["action"] = 2
            book.execute(f"INSERT INTO entry ({', '.join(row)}) "
                         f"VALUES ({', '.join('?' * len(row))})", list(row.values()))
    for name, title, solution, mixed, ended in BATCHES:
        book.execute("INSERT INTO batch (id, name, solution, mixed_ms, ended_ms) "
                     "VALUES (?, ?, ?, ?, ?)",
                     (name, title, solution, millis(mixed), millis(ended) if ended else None))
    if version >= CHAINED:
        stays = book.execute("SELECT sql FROM sqlite_schema WHERE name = 'entry_stays'").fetchone()
        book.execute("DROP TRIGGER entry_stays")
        chain(book)
        book.execute(stays[0])
    book.execute("COMMIT")
    book.close()
    lines = [line for since, line in LINES if since <= version]
    (HERE / f"version-{version}.jsonl").write_text("\n".join(lines) + "\n")


for given in sys.argv[1:]:
    make(int(given))
