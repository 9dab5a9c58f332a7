"""Writes every scenario and every refused journal, with what is expected.

    make_scenarios.py            writes scenarios/ and refused/ anew
    make_scenarios.py --check    works them out again and compares; exit 1 where they differ
"""

import json
import math
import pathlib
import sys
import tempfile

import long_chains
import long_scenarios
import refused_fillings
import refused_journals
import refused_lines
import scenario_kit
import scenarios_baths
import scenarios_fillings
import scenarios_fixer
import scenarios_found
import scenarios_lines
import scenarios_odd
import scenarios_reasons
import scenarios_standing
import scenarios_verdict
import scenarios_work

MODULES = (scenarios_work, scenarios_standing, scenarios_fixer, scenarios_verdict,
           scenarios_fillings, scenarios_found, scenarios_baths, scenarios_lines,
           scenarios_reasons, scenarios_odd, long_scenarios, long_chains, refused_journals,
           refused_lines, refused_fillings)
FOLDERS = ("scenarios", "refused")


def write():
    for folder in FOLDERS:
        scenario_kit.clear(folder)
    for module in MODULES:
        module.make()


def same(one, other):
    """Equal, but for the last digits, which another machine's library may round otherwise."""
    if isinstance(one, dict) and isinstance(other, dict):
        return list(one) == list(other) and all(same(one[key], other[key]) for key in one)
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(same, one, other))
    if isinstance(one, float) and isinstance(other, float):
        return math.isclose(one, other, rel_tol=1e-9, abs_tol=1e-9)
    return one == other


def read(file):
    """What a file holds, or None where there is none."""
    if not file.exists():
        return None
    return json.loads(file.read_bytes()) if file.suffix == ".json" else file.read_bytes()


def check():
    """Compares what stands there with what would be written."""
    there = scenario_kit.HERE
    differing = []
    with tempfile.TemporaryDirectory() as place:
        scenario_kit.HERE = pathlib.Path(place)
        write()
        for folder in FOLDERS:
            names = {file.name for root in (there, scenario_kit.HERE)
                     for file in (root / folder).iterdir()}
            differing += [f"{folder}/{name}" for name in sorted(names)
                          if not same(read(there / folder / name),
                                      read(scenario_kit.HERE / folder / name))]
    for name in differing:
        print(f"differs: {name}", file=sys.stderr)
    return 1 if differing else 0


if __name__ == "__main__":
    if "--check" in sys.argv[1:]:
        sys.exit(check())
    write()
