"""Journals at random through the program and through the reading.

    compare_random.py PROGRAM FIRST COUNT [STEPS]

Writes each difference, keeps the journal at fault in the folder that it names, and exits 1.
"""

import json
import os
import pathlib
import subprocess
import sys
import tempfile
from datetime import timedelta

from random_journal import START, RandomJournal, possible, shown
from reading_report import report_at

TOLERANCE = 1e-7                 # relative, or absolute near nought


def differences(expected, found, where):
    """Where two reports differ: numbers by more than their last digits, the rest at all."""
    if isinstance(expected, dict) and isinstance(found, dict) and set(expected) == set(found):
        return [one for key in expected
                for one in differences(expected[key], found[key], f"{where}.{key}")]
    if isinstance(expected, list) and isinstance(found, list) and len(expected) == len(found):
        return [one for k, (a, b) in enumerate(zip(expected, found))
                for one in differences(a, b, f"{where}[{k}]")]
    numbers = [isinstance(one, (int, float)) and not isinstance(one, bool)
               for one in (expected, found)]
    if all(numbers):
        same = abs(expected - found) <= TOLERANCE * max(1.0, abs(expected))
    else:
        same = expected == found
    return [] if same else [f"{where}: the reading has {json.dumps(expected)}, "
                            f"the program {json.dumps(found)}"]


class Program:
    """The program on a book in a folder of its own, which is also its home."""

    def __init__(self, path, folder):
        self.path, self.folder = path, pathlib.Path(folder)
        self.around = {**os.environ, "HOME": folder, "XDG_DATA_HOME": folder,
                       "XDG_CONFIG_HOME": folder, "QT_QPA_PLATFORM": "offscreen"}

    def run(self, *words):
        done = subprocess.run([self.path, "--book", str(self.folder / "book.ullage"), *words],
                              capture_output=True, env=self.around, check=False)
        if done.returncode != 0:
            raise RuntimeError(f"{' '.join(words)}: {done.stderr.decode()[:600]}")
        return done.stdout


def compare(path, seed, steps):
    """What differs for one journal; empty where nothing does."""
    made = RandomJournal(seed, steps)
    end = made.end()
    book = possible(made.j, shown(end))
    with tempfile.TemporaryDirectory() as folder:
        program = Program(path, folder)
        journal = pathlib.Path(folder) / "random.jsonl"
        journal.write_bytes(made.j.raw())
        wrong = []
        try:
            program.run("import", str(journal))
            for share in (0.3, 0.7, 1.0, 1.6):
                at = shown(START + share * (end - START) + timedelta(minutes=3))
                expected = json.loads(json.dumps(report_at(book, at, True)))
                found = json.loads(program.run("report", "--all", "--json", "--at", at))
                wrong += differences(expected, found, at)
        except RuntimeError as failed:
            wrong.append(str(failed))
        if wrong:
            kept = pathlib.Path(tempfile.mkdtemp()) / f"random-{seed}.jsonl"
            kept.write_bytes(made.j.raw())
            wrong.insert(0, f"seed {seed}, kept as {kept}")
    return wrong


def main(path, first, count, steps=120):
    wrong = []
    for seed in range(int(first), int(first) + int(count)):
        wrong += compare(path, seed, int(steps))
    print("\n".join(wrong) if wrong else f"{count} journals agree")
    return 1 if wrong else 0


if __name__ == "__main__":
    if len(sys.argv) < 4:
        sys.exit(__doc__)
    sys.exit(main(*sys.argv[1:]))
