#!/bin/sh
# Ids that scripts name: none that was ever listed is renamed or taken away. New ones are added to
# tests/cli/ids.txt by hand, in the order of the lists.
. tests/tap.sh

# ids TOPIC: its ids, one a line, behind the topic.
ids() {
    maydeck list "$1" --json
    expect_status "ids-$1" 0
    python3 - "$1" "$scratch/stdout" <<'PROGRAM' >>"$scratch/ids"
import json
import sys

topic, path = sys.argv[1:]
member = {"natures": "nature", "figures": "figure", "statuses": "status"}.get(topic, topic[:-1])
with open(path, encoding="utf-8") as file:
    rows = json.load(file)[topic]
seen = []
for row in rows:
    if row[member] not in seen:
        seen.append(row[member])
for one in seen:
    print(topic, one)
PROGRAM
}
: >"$scratch/ids"
for topic in items zones cards natures checks rules figures statuses; do
    ids "$topic"
done
# Card numbers are for good too.
maydeck list cards --json
python3 -c 'import json, sys
for row in json.load(sys.stdin)["cards"]:
    print("numbers", row["card"], row["number"])' <"$scratch/stdout" >>"$scratch/ids"
# Formats of documents.
sed -n 's/^#define [A-Z_]*FORMAT "\(maydeck-[a-z]*-[0-9]*\)"/formats \1/p' src/app/*.c | sort -u \
    >>"$scratch/ids"

expect_empty ids-recorded-once "$(sort tests/cli/ids.txt | uniq -d)"
sort tests/cli/ids.txt >"$scratch/recorded"
sort "$scratch/ids" >"$scratch/found"
expect_empty ids-none-gone "$(comm -23 "$scratch/recorded" "$scratch/found")"
expect_empty ids-new-ones-recorded "$(comm -13 "$scratch/recorded" "$scratch/found")"
[ "$(wc -l <"$scratch/recorded")" -gt 400 ] || not_ok ids-many "$(wc -l <"$scratch/recorded")"

# What is listed is what options take, and what `check --list` tells.
maydeck check --list
expect_equal ids-checks-listed "$(sed -n 's/^checks //p' tests/cli/ids.txt | sort)" \
    "$(cut -d ' ' -f 1 "$scratch/stdout" | sort)"
maydeck why tests/fleet --boat bramble --figure nothing --date "$print_date"
expect_equal ids-figures-listed "$(sed -n 's/^figures //p' tests/cli/ids.txt | sort)" \
    "$(grep -o '[a-z_]*' "$scratch/stderr" | sort -u | grep -xF "$(sed -n 's/^figures //p' tests/cli/ids.txt)")"
exit $failures
