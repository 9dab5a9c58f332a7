"""A separate reading of the journal and chemistry documents.

    reference_reading.py JOURNAL --at TIME [--all]   the report, as JSON
    reference_reading.py JOURNAL --at TIME --batch ID --base M:SS@T[,M:SS@T…]
                         --temperature T [--films N] the time for the next load, as JSON
    reference_reading.py JOURNAL --at TIME --span ID early, plain and late date to discard by
    reference_reading.py JOURNAL --own SOLUTION      own figures of a fixer or a developer
    reference_reading.py --self-check                the reading's own checks

Exit: 0 done, 1 refused (line and field on standard error), 2 wrong usage.
It shares no code with the program; where the two differ, one of them has
misread the documents.
"""

import argparse
import json
import sys

from reading_fields import Refused, instant, moment_of
from reading_fixer import capacity_of
from reading_fold import Shelf
from reading_journal import Book
from reading_own import (developer_strips, developer_wear, fixer_capacity, fixer_tests,
                         keeping_limit_posterior, keeping_trials)
from reading_report import report
from reading_selfcheck import self_check
from reading_span import discard_span
from reading_time import next_time


def pairs_of(text):
    """The (celsius, seconds) of "M:SS@T,M:SS@T"."""
    found = []
    for one in text.split(","):
        time, celsius = one.split("@")
        minutes, seconds = time.split(":")
        found.append((float(celsius), 60 * int(minutes) + float(seconds)))
    return found


def own_figures(book, solution_id, density):
    """Every own figure that the solution can have."""
    solution = book.solutions[solution_id]
    if solution["role"] == "fixer":
        return {"capacity": fixer_capacity(*fixer_tests(book, solution_id),
                                           capacity_of(solution))}
    found, limit = {}, Shelf(book).standing_of(solution_id).limit
    percent = solution["wear"].get("percent", 0)
    if solution["wear"]["rule"] == "per-film" and percent > 0 and density is not None:
        found["wear"] = developer_wear(*developer_strips(book, solution_id, density), percent)
    if limit is not None:
        found["keeping"] = keeping_limit_posterior(*keeping_trials(book, solution_id), limit)
    return found


def answer(book, at, options):
    """What was asked for, ready to be written as JSON."""
    if options.own:
        return own_figures(book, options.own, options.density)
    if options.span:
        found = discard_span(book, options.span, at)
        return None if found is None else [moment_of(one).isoformat() for one in found]
    if options.batch:
        batch = Shelf(book, at).batches[options.batch]
        return next_time(batch, pairs_of(options.base), options.temperature, options.films)
    return report(book, at, options.all)


def main(arguments=None):
    parser = argparse.ArgumentParser(description="reference reading of a journal")
    parser.add_argument("journal", nargs="?")
    parser.add_argument("--at", help="RFC 3339 time with a zone")
    parser.add_argument("--all", action="store_true")
    parser.add_argument("--batch")
    parser.add_argument("--base", help="M:SS@T, more of them after commas")
    parser.add_argument("--temperature", type=float)
    parser.add_argument("--films", type=float, default=1.0)
    parser.add_argument("--span", metavar="BATCH")
    parser.add_argument("--own", metavar="SOLUTION")
    parser.add_argument("--density", type=float, help="reference density of the control strips")
    parser.add_argument("--self-check", action="store_true")
    options = parser.parse_args(arguments)
    if options.self_check:
        return self_check()
    at = instant(options.at)
    if options.journal is None or (at is None and not options.own):
        parser.error("a journal and --at TIME are needed")
    if options.batch and (options.base is None or options.temperature is None):
        parser.error("--batch needs --base and --temperature")
    try:
        with open(options.journal, "rb") as file:
            found = answer(Book(file.read()), at, options)
    except Refused as refused:
        print(json.dumps({"line": refused.line, "field": refused.field,
                          "reason": refused.reason}), file=sys.stderr)
        return 1
    json.dump(found, sys.stdout, indent=1, ensure_ascii=False)
    print()
    return 0


if __name__ == "__main__":
    sys.exit(main())
