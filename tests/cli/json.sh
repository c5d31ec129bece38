#!/bin/sh
# Every --json: one document in each run that is not refused, read by another parser than any of the
# program's, with the members that the table below names, and the same facts as the text.
. tests/tap.sh

cp -R tests/fleet "$scratch/base"
base=$scratch/base
maydeck start "$base" --register
maydeck print "$base" --boat bramble --date "$print_date" -o "$scratch/cards"
maydeck hang "$base" --boat bramble --place "chart table" --by AB --date "$print_date"
expect_status json-hung 0
code=$("$MAYDECK" print "$base" --boat bramble --list --date "$print_date" 2>/dev/null | sed -n 's/^  \([0-9A-Z-]*\)  7 FLOODING.*/\1/p')
sed -i 's/^  name: Tamarisk/  name: Tamarisk\n  nonsense: 1/' "$base/boats/tamarisk.yaml"
sed -i 's/under step/under the step/' "$base/boats/bramble.yaml"

# document NAME STATUS FORMAT MEMBERS ARGUMENT...: leaves it in $scratch/NAME.json
document() {
    name=$1 want=$2 format=$3 members=$4
    shift 4
    maydeck "$@"
    expect_status "json-$name" "$want"
    cp "$scratch/stdout" "$scratch/$name.json"
    expect_empty "json-$name-sound" "$(python3 tests/cli/json_look.py "$scratch/$name.json" "$format" "$members" 2>&1)"
}
# value NAME EXPRESSION: of the document d
value() {
    python3 -c 'import json, sys
d = json.load(open(sys.argv[1], encoding="utf-8"))
print(eval(sys.argv[2]))' "$scratch/$1.json" "$2"
}
on="--date $print_date"
# shellcheck disable=SC2086
{
    document check 1 maydeck-check-1 'base date from to boats problems' check "$base" --json $on
    document why 1 maydeck-why-1 'base date boats' why "$base" --all --json $on
    document why-names 1 maydeck-why-1 'base date boats' why "$base" --json $on
    document why-figure 0 maydeck-why-1 'base date boats' why "$base" --boat bramble --figure all --json $on
    document call 0 maydeck-call-1 'base boat calls position bearing time' call "$base" --boat bramble --json \
        --position "43 28.35 N 16 26.1 E" --bearing "100 M" --time 14:30 $on
    document call-cards 0 maydeck-call-1 'base boat calls position bearing time' call "$base" --boat bramble \
        --card distress_call,flooding --json $on
    document call-spell 0 maydeck-call-1 'base boat calls' call "$base" --boat bramble --spell --json $on
    document renew 1 maydeck-renew-1 'base date boats' renew "$base" --json $on
    document codes 1 maydeck-codes-1 'base date codes' renew "$base" --code "$code" --json $on
    document due 1 maydeck-due-1 'base date until dates' due "$base" --json $on
    document due-until 1 maydeck-due-1 'base date until dates' due "$base" --json --until 2027-01-31 $on
    document verify 0 maydeck-verify-1 'folder list files' verify "$scratch/cards" --json
}
for topic in $("$MAYDECK" list 2>&1 | sed -n 's/.*write one of: //p' | tr -d ,); do
    document "list-$topic" 0 maydeck-list-1 "language $topic" list "$topic" --json
done

[ -s "$scratch/list-items.json" ] || not_ok json-lists 'no list was tried'

# ---- the same facts as the text ----

# lines of reasons are those of the text, once it is put together again
maydeck why "$base" --boat bramble --card flooding --date "$print_date"
tr -s ' \n' ' ' <"$scratch/stdout" | sed 's/^ //; s/ $//' >"$scratch/text"
document why-card 0 maydeck-why-1 boats why "$base" --boat bramble --card flooding --json --date "$print_date"
value why-card '" ".join(r["text"] + ("" if r["file"] is None else " at " + r["file"] + ("" if r["line"] is None else ":%d" % r["line"])) for r in d["boats"][0]["cards"][0]["reasons"])' |
    tr -s ' ' >"$scratch/joined"
sed 's/ (the program.s own words)//g' "$scratch/text" >"$scratch/text-of-files"
expect_equal json-why-as-text "$(cat "$scratch/text-of-files")" "$(cat "$scratch/joined")"
expect_equal json-why-not-composed "[('bramble', True), ('samphire', True), ('tamarisk', False)]" \
    "$(value why '[(b["boat"], b["composed"]) for b in d["boats"]]')"
expect_equal json-why-names-no-reasons 0 \
    "$(value why-names 'sum(len(c["reasons"]) for b in d["boats"] for c in b["cards"])')"
[ "$(value why 'min(len(c["reasons"]) for b in d["boats"] for c in b["cards"])')" -gt 5 ] ||
    not_ok json-why-reasons "$(value why '[(c["card"], len(c["reasons"])) for c in d["boats"][0]["cards"]]')"
expect_equal json-why-figures "$("$MAYDECK" list figures | sed 1d | wc -l)" \
    "$(value why-figure 'len(d["boats"][0]["figures"])')"

maydeck call "$base" --boat bramble --date "$print_date"
expect_equal json-call-as-text "$(cat "$scratch/stdout")" \
    "$(document call-plain 0 maydeck-call-1 calls call "$base" --boat bramble --json >/dev/null
    value call-plain '"\n".join(("" if l["label"] is None else l["label"] + ": ") + l["text"] for l in d["calls"][0]["sections"][0]["lines"])')"
expect_equal json-call-cards "['distress_call', 'flooding']" "$(value call-cards '[c["card"] for c in d["calls"]]')"
expect_equal json-call-bearing '104 284 WNW 100' \
    "$(value call '" ".join(d["bearing"][k] for k in ("mark", "from_mark", "point", "magnetic"))')"
expect_equal json-call-no-place 'None None' "$(value call-cards '"%s %s" % (d["position"], d["time"])')"

maydeck renew "$base" --date "$print_date"
expect_equal json-renew-states "[('bramble', 'judged'), ('samphire', 'judged'), ('tamarisk', 'not_judged')]" \
    "$(value renew '[(b["boat"], b["state"]) for b in d["boats"]]')"
expect_equal json-renew-replace "$(grep -c '^  REPLACE' "$scratch/stdout")" \
    "$(value renew 'sum(f["finding"] == "replace" for b in d["boats"] for f in b["findings"])')"
[ "$(grep -c '^  REPLACE' "$scratch/stdout")" -gt 0 ] || not_ok json-renew-some "$(cat "$scratch/stdout")"
expect_equal json-renew-right "$(sed -n 's/^bramble: \([0-9]*\) of.*/\1/p' "$scratch/stdout")" \
    "$(value renew 'd["boats"][0]["right"]')"
maydeck renew "$base" --code "$code" --date "$print_date"
expect_equal json-codes-events "$(grep -c ': printed\|: hung' "$scratch/stdout")" \
    "$(value codes 'len(d["codes"][0]["events"])')"
expect_equal json-codes-state "['old']" "$(value codes '[c["state"] for c in d["codes"][0]["cards"]]')"
document codes-none 1 maydeck-codes-1 codes renew "$base" --code 3EHB-1W4H --json --date "$print_date"

maydeck due "$base" --date "$print_date"
expect_equal json-due-rows "$(sed 1d "$scratch/stdout" | wc -l)" "$(value due 'len(d["dates"])')"
expect_equal json-due-past "$(grep -c ' PAST ' "$scratch/stdout")" \
    "$(value due 'sum(r["state"] == "past" for r in d["dates"])')"
expect_equal json-due-until 2027-01-31 "$(value due-until 'd["until"]')"
maydeck due "$base" --date "$print_date" --json -o "$scratch/due.json"
expect_empty json-due-file "$(python3 tests/cli/json_look.py "$scratch/due.json" maydeck-due-1 dates 2>&1)"

# ---- what does not go together, and that nobody else writes JSON ----

for line in "why $base --sign-off" "due $base --csv" "due $base --ics" "renew $base --print"; do
    # shellcheck disable=SC2086
    maydeck $line --json
    expect_status "json-refused-$(echo "$line" | sed 's/.*--//')" 2
    expect_empty "json-refused-$(echo "$line" | sed 's/.*--//')-stdout" "$(cat "$scratch/stdout")"
done
expect_empty json-one-writer "$(grep -n '\(printf\|fputs\|puts\|text_add[a-z_]*\)(.*\\"[%a-z_]*\\":' src/app/*.c | grep -v '/json')"
exit $failures
