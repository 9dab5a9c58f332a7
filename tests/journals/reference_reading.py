"""A separate reading of the journal and chemistry documents.

    reference_reading.py JOURNAL --at TIME [--all]   the report, as JSON
    reference_reading.py --self-check                the numerics, two ways

Exit: 0 done, 1 refused (line and field on standard error), 2 wrong usage.
It shares no code with the program; where the two differ, one of them has
misread the documents.
"""

import argparse
import json
import sys

from reading_journal import Book, Refused, instant
from reading_report import report
from reading_selfcheck import self_check


def main(arguments=None):
    parser = argparse.ArgumentParser(description="reference reading of a journal")
    parser.add_argument("journal", nargs="?")
    parser.add_argument("--at", help="RFC 3339 time with a zone")
    parser.add_argument("--all", action="store_true")
    parser.add_argument("--self-check", action="store_true")
    options = parser.parse_args(arguments)
    if options.self_check:
        return self_check()
    at = instant(options.at)
    if options.journal is None or at is None:
        parser.error("a journal and --at TIME are needed")
    try:
        with open(options.journal, "rb") as file:
            found = report(Book(file.read()), at, options.all)
    except Refused as refused:
        print(json.dumps({"line": refused.line, "field": refused.field,
                          "reason": refused.reason}), file=sys.stderr)
        return 1
    json.dump(found, sys.stdout, indent=1, ensure_ascii=False)
    print()
    return 0


if __name__ == "__main__":
    sys.exit(main())
