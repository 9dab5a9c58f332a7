#!/usr/bin/env bash
# The real program where no file may grow any more: it must say so and give its exit code, not be
# ended in silence by the system's signal. Argument: the program.
set -euo pipefail
folder="$(mktemp -d)"
trap 'rm -rf "$folder"' EXIT
# The copies that an import makes are nobody's of this machine.
export HOME="$folder" XDG_DATA_HOME="$folder/data" XDG_CONFIG_HOME="$folder/config"
journal() {
    echo '{"type":"book","format":"ullage-journal","version":1}'
    for ((i = 0; i < 9000; ++i)); do echo "{\"type\":\"chemical\",\"id\":\"c$i\",\"name\":\"borax\"}"; done
}
journal > "$folder/large.jsonl"
head -n 3 "$folder/large.jsonl" | "$1" import - --book "$folder/home.ullage"
code=0
(ulimit -f 600; "$1" import "$folder/large.jsonl" --book "$folder/home.ullage" 2> "$folder/said") || code=$?
cat "$folder/said"
[ "$code" -eq 3 ] || { echo "exit code $code, not 3"; exit 1; }
grep -q 'try again' "$folder/said" || { echo 'no word of what to do'; exit 1; }
"$1" check --book "$folder/home.ullage" | grep -q '^Sound: 2 entries'
