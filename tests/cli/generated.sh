#!/bin/sh
# Boats that nobody wrote by hand (tests/generate): their records are without errors, printing
# them never ends badly, of a hundred cards at most one is held back, and what its message asks
# for mends it. Of a sample the pages are read back: no words lie on each other.
#
# BOATS=1000 tries so many, SEED=7 others.
. tests/tap.sh
. tests/readback/checks

case $VARIANT in
release) many=120 ;;
*) many=18 ;;
esac
: "${BOATS:=$many}" "${SEED:=1}" "${SAMPLE:=50}"
base=$scratch/base
out=$scratch/out
mkdir "$out"

# ---- the boats ----

"$BUILD/boats" "$SEED" "$BOATS" "$base"
expect_equal generated-boats "$BOATS" "$(find "$base/boats" -name '*.yaml' | wc -l | tr -d ' ')"
"$BUILD/boats" "$SEED" 9 "$scratch/again"
"$BUILD/boats" "$((SEED + 1))" 9 "$scratch/other"
alike() {
    for file in "$1"/boats/*.yaml; do
        cmp -s "$file" "$base/boats/${file##*/}" && echo "${file##*/}"
    done | wc -l | tr -d ' '
}
expect_equal generated-same-seed 9 "$(alike "$scratch/again")"
expect_equal generated-other-seed 0 "$(alike "$scratch/other")"
expect_equal generated-names-once "$BOATS" \
    "$(sed -n 's/^  name: //p' "$base"/boats/*.yaml | sort -u | wc -l | tr -d ' ')"
expect_empty generated-names-short "$(sed -n 's/^  name: //p' "$base"/boats/*.yaml | grep '.\{21\}')"
for kind in 'hull: monohull' 'hull: catamaran' 'hull: trimaran' 'rig: sail' 'rig: motor' 'rooms: \[\]'; do
    grep -q "^  $kind" "$base"/boats/*.yaml && ok "generated-$kind" || not_ok "generated-$kind"
done

# Two boats with one identity would have no cards.
"$BUILD/boats" "$SEED" 10000 "$scratch/many"
expect_empty generated-identities-once \
    "$(find "$scratch/many/boats" -name '*.yaml' -exec grep -hE '^ +(call_sign|mmsi):' {} + | sort | uniq -d)"
rm -rf "$scratch/many"

# ---- printing ----

# print_all: what is printed, and what is said of each boat.
print_all() {
    maydeck print "$base" --date "$print_date" -o "$out"
    cp "$scratch/stdout" "$scratch/printed"
    cp "$scratch/stderr" "$scratch/said"
}

# What no card prints with is no fault of a page.
record_faults() {
    grep ': \(error\|held\|failure\): ' "$scratch/said" | grep -v ': error: [0-9][0-9]*[A-Z]* [A-Z]'
}

print_all
[ "$status" -le 1 ] && ok generated-no-crash || not_ok generated-no-crash "$(tail -n 3 "$scratch/said")"
expect_empty generated-records-without-errors "$(record_faults | head -n 5)"

# Cards printed, and cards of all boats.
cards=$(awk '/ of [0-9]+ cards$/ { n = $(NF - 3); m = $(NF - 1); printed += n; all += m }
    END { print printed + 0, all + 0 }' "$scratch/printed")
all=${cards#* }
held=$((all - ${cards% *}))
[ "$all" -gt "$((BOATS * 6))" ] && [ "$((held * 100))" -le "$all" ] && ok "generated-held-$held-of-$all" ||
    not_ok generated-held "$held of $all cards" "$(grep ': error: ' "$scratch/said" | head -n 20)"

# ---- what messages ask for ----

# mended BOAT: is all of her printed, when what the messages ask for is done?
mended() {
    for round in 1 2 3; do
        maydeck print "$base" --boat "$1" --date "$print_date" -o "$out"
        [ "$status" -ne 0 ] || return 0
        awk -f tests/cli/follow.awk said=1 "$scratch/stderr" said=0 "$base/boats/$1.yaml" >"$scratch/mended"
        cp "$scratch/mended" "$base/boats/$1.yaml"
    done
    maydeck print "$base" --boat "$1" --date "$print_date" -o "$out"
    [ "$status" -eq 0 ]
}
sed -n 's,^.*boats/\(b[0-9]*\)\.yaml:[0-9].*: error: .*,\1,p' "$scratch/said" | sort -u >"$scratch/faulty"
while read -r boat; do
    mended "$boat" && ok "generated-$boat-mended" ||
        not_ok "generated-$boat-mended" "$(grep -A 8 ': error: ' "$scratch/stderr" | head -n 20)"
done <"$scratch/faulty"

# ---- read back ----

# slots_check FILE RECORD: tags at one place on all cards of a set, on their sides.
slots_check() {
    pdftotext -bbox "$1" "$scratch/boxes" 2>"$scratch/blank-pages"
    awk -f tests/readback/slots.awk record=1 "$2" record=0 "$scratch/boxes"
}

step=$(((BOATS + SAMPLE - 1) / SAMPLE))
for file in $(find "$out" -name '*.pdf' | sort | awk -v step="$step" 'NR % step == 0'); do
    name=$(basename "$file" .pdf)
    words_check "$file" | grep ' lies over ' | sed "s/^/$name: /" >>"$scratch/overlaps"
    slots_check "$file" "$base/boats/$name.yaml" | sed "s/^/$name: /" >>"$scratch/slots"
done
expect_empty generated-no-overlap "$(head -n 5 "$scratch/overlaps")"
expect_empty generated-one-place-and-side "$(head -n 5 "$scratch/slots")"

# What is looked for is found: a record of the other hand, a page from another set.
file=$out/b00000.pdf
sed 's/port/left/g; s/starboard/port/g; s/left/starboard/g' "$base/boats/b00000.yaml" >"$scratch/mirrored"
slots_check "$file" "$scratch/mirrored" | grep -q 'is to .* off the middle' && ok generated-side-told ||
    not_ok generated-side-told
pdftotext -bbox "$file" "$scratch/one" 2>"$scratch/blank-pages"
pdftotext -bbox "$out/b00009.pdf" "$scratch/second" 2>"$scratch/blank-pages"
cat "$scratch/one" "$scratch/second" >"$scratch/both"
awk -f tests/readback/slots.awk record=1 "$base/boats/b00000.yaml" record=0 "$scratch/both" |
    grep -q 'stands elsewhere' && ok generated-place-told || not_ok generated-place-told
exit $failures
