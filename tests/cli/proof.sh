#!/bin/sh
# Proofreading: what `check --page` tells, and cards that are held back since their
# page breaks a rule.
. tests/tap.sh

out=$scratch/out
mkdir "$out"

# ---- the specimen fleet is clean ----

maydeck check --page tests/fleet --date "$print_date" --fail error
expect_status proof-fleet 0
cp "$scratch/stdout" "$scratch/audit"
maydeck print tests/fleet --date "$print_date" -o "$out" --dump
cards=$(folder_list "$out" | grep -c '\.dump$')
expect_equal proof-fleet-cards "$cards" "$(grep -c ': clean; ' "$scratch/audit")"
expect_equal proof-fleet-least 116 "$cards"
expect_empty proof-fleet-errors "$(grep '^  error  \|held back by' "$scratch/audit")"
expect_empty proof-fleet-notes \
    "$(sed -n 's/^\(.*\): clean; \([0-9]*\) notes*, .*/\2 \1/p' "$scratch/audit" | awk '$1 > 3')"
expect_empty proof-fleet-measured \
    "$(sed -n 's/^\(.*\): clean; .* \([0-9]*\) things measured$/\2 \1/p' "$scratch/audit" |
        awk '$1 < 800')"
expect_equal proof-fleet-people 1 "$(grep -c '^left to people: G24 ' "$scratch/audit")"

# Without --page nothing of it is told.
maydeck check tests/fleet --date "$print_date" --fail error
expect_equal proof-quiet 0 "$(grep -c 'things measured' "$scratch/stdout")"

# ---- the lines of one card ----

maydeck check --page tests/fleet --boat tamarisk --card gas_leak --date "$print_date"
expect_equal proof-card-alone 1 "$(grep -c 'things measured$' "$scratch/stdout")"
grep -q '^tamarisk gas_leak: clean; [01] notes*, [0-9]* below aim, [0-9]* things measured$' \
    "$scratch/stdout" && ok proof-card-head || not_ok proof-card-head "$(cat "$scratch/stdout")"
grep -q '^  aim    G4   "[^"]*": row [0-9.]* pt, read to 0\.[5-9][0-9]* m, aim 14\.00 pt$' \
    "$scratch/stdout" || not_ok proof-card-aim "$(cat "$scratch/stdout")"

# The same program with a headline of two negatives has a note on that card.
texts=$scratch/tool/procedures
mkdir -p "$scratch/tool/out"
cp -R procedures "$scratch/tool/"
cp -R out/fonts "$scratch/tool/out/"
cp "$MAYDECK" "$scratch/tool/out/maydeck"
sed '/^  spark:$/,/^  [a-z]/s/act: .*/act: "**NO FLAME.** Touch no switch or phone."/' \
    procedures/words/en/gas_leak.yaml >"$texts/words/en/gas_leak.yaml"
! cmp -s procedures/words/en/gas_leak.yaml "$texts/words/en/gas_leak.yaml" || not_ok proof-card-changed "no change"
seal "$texts"
own=$MAYDECK
MAYDECK=$scratch/tool/out/maydeck
maydeck check --page tests/fleet --boat tamarisk --card gas_leak --date "$print_date"
MAYDECK=$own
grep -q '^tamarisk gas_leak: clean; 1 note, [0-9]* below aim, [0-9]* things measured$' \
    "$scratch/stdout" && ok proof-card-noted || not_ok proof-card-noted "$(cat "$scratch/stdout")"
sed -n '/^  note /,/remedy:/p' "$scratch/stdout" >"$scratch/note"
expect_equal proof-card-note '  note   G12  "NO FLAME. Touch no switch or phone.": 2 negatives
              rule:   a step says what to do, not what not to do
              limit:  one negative a headline
              remedy: move it to NEVER' "$(cat "$scratch/note")"

# ---- it is text for people ----

maydeck check --page --json tests/fleet --date "$print_date"
expect_status proof-json 2

# ---- a record whose page breaks a rule ----

fleet=$scratch/fleet

# changed FILE SED...: a fresh fleet in which that file is edited.
changed() {
    file=$1
    shift
    rm -rf "$fleet" "$out"
    cp -R tests/fleet "$fleet"
    mkdir "$out"
    sed "$@" "tests/fleet/$file" >"$fleet/$file"
    ! cmp -s "tests/fleet/$file" "$fleet/$file" || not_ok proof-changed "no change: $*"
}

# held NAME CARDS RULE FILE:LINE: printing holds just these cards back, by that rule.
held() {
    maydeck print "$fleet" --boat tamarisk --date "$print_date" -o "$out"
    expect_status "proof-$1" 1
    grep ": error: .* (en): $3: .*; limit: " "$scratch/stderr" >"$scratch/errors"
    expect_equal "proof-$1-cards" "$2" \
        "$(sed 's/.*: error: \(.*\) (en): .*/\1/' "$scratch/errors" | sort -u)"
    expect_equal "proof-$1-line" "$4" \
        "$(sed 's,^.*/\([a-z.]*yaml:[0-9]*\):.*,\1,' "$scratch/errors" | sort -u)"
    expect_empty "proof-$1-others" "$(grep ': error: ' "$scratch/stderr" |
        grep -vxF -f "$scratch/errors")"
    whole=$(grep -c '^tamarisk .*: clean; ' "$scratch/audit")
    expect_equal "proof-$1-pages" $((whole - $(echo "$2" | wc -l))) \
        "$(pages_said "$out/tamarisk.pdf")"
}

# A rule of the base's own with a sentence of 21 words; with 20 it is printed.
rule() {
    changed base.yaml "s/^lines:.*/lines:\\
  - {card: diesel_leak, say: \"$1\", source: Harbour office, does: []}/"
}
words='Keep one hand for her and one for you as the ferry leaves a wash at the quay each'
rule "$words day."
maydeck print "$fleet" --boat tamarisk --date "$print_date" -o "$out"
expect_status proof-sentence-short 0
rule "$words summer day."
held sentence "10 DIESEL LEAK" G13 "base.yaml:$(grep -n 'card: diesel_leak' "$fleet/base.yaml" | sed 's/:.*//')"
grep -q ': 21 words; limit: 20 words$' "$scratch/stderr" ||
    not_ok proof-sentence-measured "$(cat "$scratch/stderr")"
grep -q '^  remedy: make two of it$' "$scratch/stderr" ||
    not_ok proof-sentence-remedy "$(cat "$scratch/stderr")"
maydeck check --page "$fleet" --boat tamarisk --card diesel_leak --date "$print_date"
expect_status proof-sentence-check 1
expect_equal proof-sentence-audit 1 \
    "$(grep -c '^tamarisk diesel_leak: held back by 1 error; ' "$scratch/stdout")"

# What was left to fill in is nobody's place; two small x are caught on the page alone.
changed boats/tamarisk.yaml '/item: fuel_shutoff_diesel/s/spot: aft face/spot: aft xx/'
line=$(grep -n 'item: fuel_shutoff_diesel' "$fleet/boats/tamarisk.yaml" | sed 's/:.*//')
maydeck print "$fleet" --boat tamarisk --date "$print_date" -o "$out"
expect_status proof-left 1
grep "tamarisk.yaml:$line:.*: error: 3 ENGINE FIRE (en): G25: .*aft xx.*; limit: " "$scratch/stderr" \
    >"$scratch/left"
expect_equal proof-left-told 1 "$(wc -l <"$scratch/left" | tr -d ' ')"
pdftotext "$out/tamarisk.pdf" - | grep -qw xx && not_ok proof-left-printed "xx was printed"

# A number nobody reads in one go.
changed boats/tamarisk.yaml '/item: fuel_shutoff_diesel/s/spot: aft face/spot: 1234567/'
maydeck print "$fleet" --boat tamarisk --date "$print_date" -o "$out"
expect_status proof-digits 1
grep -q ': error: 3 ENGINE FIRE (en): G23: .*1234567.*more than 6 digits in a row; limit: ' \
    "$scratch/stderr" || not_ok proof-digits-told "$(cat "$scratch/stderr")"

# ---- the words of the file stand in the order they were laid out in (G27) ----

rm -rf "$out"
mkdir "$out"
maydeck print tests/fleet --boat tamarisk --date "$print_date" -o "$out"
maydeck print tests/fleet --boat tamarisk --date "$print_date" -o "$out" --dump

# All text without blanks. Poppler gives the words of a file in their order with -raw.
squeezed() {
    tr -d ' \n\f\302\240'
}
page=0
for card in $(sed -n 's/^tamarisk \([a-z_0-9]*\): clean; .*/\1/p' "$scratch/audit"); do
    page=$((page + 1))
    # a back that is left blank is no card
    [ -n "$(pdftotext -raw -f $page -l $page "$out/tamarisk.pdf" - | squeezed)" ] || page=$((page + 1))
    laid=$(sed -n 's/^text [^"]* "\(.*\)"$/\1/p' "$out/tamarisk-$card.dump" | squeezed)
    read=$(pdftotext -raw -f $page -l $page "$out/tamarisk.pdf" - | squeezed)
    expect_equal "proof-order-$card" "$laid" "$read"
done
[ "$page" -ge 12 ] || not_ok proof-order-all "$page pages"
exit $failures
