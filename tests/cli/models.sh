#!/bin/sh
# Sister ships: a base of 40 boats in five models. What one model says is on the cards of its
# boats and of no other; what changed after somebody walked round them does not count.
. tests/tap.sh
. tests/sisters.sh

sisters=$scratch/forty
day=2026-11-20

# list_codes: "BOAT CODE CARD" of every card that would be printed, sorted.
list_codes() {
    awk '/: [0-9]+ of [0-9]+ cards$/ { boat = $1; sub(/.*\//, "", boat); sub(/\.pdf:$/, "", boat) }
         /^  [0-9A-Z]+-[0-9A-Z]+ / { print boat, $1, $2 }
         /^  held/ { print boat, "held", $2 }' "$scratch/stdout" | sort
}

# listed NAME OPTION...: what would be printed of the boats, in $scratch/NAME.
listed() {
    name=$1
    shift
    maydeck print "$sisters" --list --date "$day" "$@"
    list_codes >"$scratch/$name"
}

# boats_of FILE OTHER: the boats whose cards differ between the two lists.
boats_of() {
    diff "$scratch/$1" "$scratch/$2" | sed -n 's/^[<>] \([^ ]*\) .*/\1/p' | sort -u
}

eight() {
    for second in a e i l o r t u; do
        echo "$1_$second"
    done
}

# ---- a boat that is like a model has the cards of one that says it all herself ----

alone=$scratch/alone
for specimen in bramble samphire tamarisk; do
    sisters=$scratch/one
    rm -rf "$sisters" "$alone"
    mkdir -p "$sisters" "$alone/boats"
    cp tests/fleet/base.yaml "$sisters/"
    cp tests/fleet/base.yaml "$alone/"
    cp "tests/fleet/boats/$specimen.yaml" "$alone/boats/"
    model_lay model "$specimen"
    name=$(sed -n 's/^  name: //p' "tests/fleet/boats/$specimen.yaml")
    sign=$(sed -n 's/^  call_sign: //p' "tests/fleet/boats/$specimen.yaml")
    mmsi=$(sed -n 's/^  mmsi: "200\(.*\)"/\1/p' "tests/fleet/boats/$specimen.yaml")
    number=${mmsi#0}
    sister_lay "$specimen" model "$specimen" "${number:-1}" "$name" "$sign"
    hex=$(sed -n 's/.*hex_id: "\([^"]*\)".*/\1/p' "tests/fleet/boats/$specimen.yaml")
    sed "s/hex_id: \"[^\"]*\"/hex_id: \"$hex\"/" "$sisters/boats/$specimen.yaml" >"$scratch/sister"
    mv "$scratch/sister" "$sisters/boats/$specimen.yaml"
    maydeck print "$alone" --dump --date "$day" -o "$scratch/pages-alone"
    maydeck print "$sisters" --dump --date "$day" -o "$scratch/pages-like"
    expect_status "models-same-$specimen" 0
    expect_empty "models-same-cards-$specimen" \
        "$(diff -r "$scratch/pages-alone" "$scratch/pages-like" | head -20)"
    [ "$(folder_list "$scratch/pages-like" | wc -l)" -gt 10 ] ||
        not_ok "models-same-$specimen" 'too few pages to compare'
    rm -rf "$scratch/pages-alone" "$scratch/pages-like"
done

# Each line that `why` shows is in the file that it came from.
maydeck why "$sisters" --boat tamarisk --card engine_fire
expect_status models-why 0
grep -q "models/model.yaml:[0-9]" "$scratch/stdout" || not_ok models-why-place "$(cat "$scratch/stdout")"
maydeck call "$sisters" --boat tamarisk
expect_status models-call 0
maydeck start "$sisters" --boat another
expect_status models-start 0

# ---- forty ----

sisters=$scratch/forty
forty_lay
listed before
expect_status models-forty 0
expect_equal models-forty-boats 40 "$(cut -d' ' -f1 "$scratch/before" | sort -u | wc -l)"
expect_empty models-forty-held "$(grep ' held ' "$scratch/before")"

maydeck check "$sisters" --differs --date "$day"
expect_status models-forty-alike 0
expect_equal models-forty-alike-told 5 "$(grep -c '^  no difference$' "$scratch/stdout")"

# One line of one model: its boats wait, and no other has another code.
sed 's/spot: aft face, how: {shut: across pipe}, inside: \[cockpit_locker\]/spot: low, how: {shut: across pipe}, inside: [cockpit_locker], changed: 2026-11-21/' \
    "$sisters/models/sloop.yaml" >"$scratch/sloop"
expect_equal models-one-line 1 "$(diff "$sisters/models/sloop.yaml" "$scratch/sloop" | grep -c '^>')"
cp "$scratch/sloop" "$sisters/models/sloop.yaml"
listed changed
expect_status models-changed 1
expect_equal models-changed-boats "$(eight sloop)" "$(boats_of before changed)"
expect_equal models-changed-held 24 "$(grep -c ' held ' "$scratch/changed")"
maydeck check "$sisters" --boat sloop_a,sloop_e,cat_a --date "$day"
expect_status models-changed-check 1
expect_equal models-changed-told 1 \
    "$(grep -c 'held: changed in .*/models/sloop.yaml after the walk of 2026-11-20: C4: the cards 3 ENGINE FIRE; 10 DIESEL LEAK; 18 NO ENGINE, ROPE wait$' "$scratch/stdout")"
grep -q 'fuel_shutoff_diesel is not recorded' "$scratch/stdout" && not_ok models-changed-paste "$(cat "$scratch/stdout")"

# Walked: their cards have other codes than before, and nothing waits.
for boat in $(eight sloop); do
    sed 's/^walked: .*/walked: {date: 2026-11-21, by: AB}/' "$sisters/boats/$boat.yaml" >"$scratch/walked"
    cp "$scratch/walked" "$sisters/boats/$boat.yaml"
done
day=2026-11-21
listed walked --boat "$(eight sloop | tr '\n' ',' | sed 's/,$//')"
day=2026-11-20
grep '^sloop_' "$scratch/before" >"$scratch/sloops"
expect_status models-walked 0
expect_equal models-walked-boats "$(eight sloop)" "$(boats_of sloops walked)"
expect_equal models-walked-cards "$(printf '1\n3\n10\n18\n' | sort)" \
    "$(diff "$scratch/sloops" "$scratch/walked" | sed -n 's/^> sloop_a [^ ]* //p' | sort)"

# One boat of her own.
sed -e 's/^equipment:/not_here: [C30]\n&/' -e '/tag: C30,/d' "$sisters/boats/sloop_i.yaml" >"$scratch/own"
cp "$scratch/own" "$sisters/boats/sloop_i.yaml"
maydeck check "$sisters" --differs --date "$day"
expect_status models-differs 0
expect_equal models-differs-told '  sloop_i: C30 co_alarm: not aboard; the model: aboard' \
    "$(grep '^  [^n]' "$scratch/stdout" | grep -v ': walked ')"

# One thing wrong in all boats is told once, and one wrong in a model for all that are like it.
for boat in "$sisters"/boats/*.yaml; do
    sed 's/{tag: E2, service_due: [0-9-]*}/{tag: E2, service_due: 2026-01}/' "$boat" >"$scratch/due"
    cp "$scratch/due" "$boat"
done
maydeck check "$sisters" --date "$day"
expect_status models-wrong 1
lines=$(wc -l <"$scratch/stdout")
[ "$lines" -lt 250 ] || not_ok models-wrong-lines "$lines lines"
ok "models-wrong-lines $lines"
expect_equal models-wrong-once 1 "$(grep -c '^[^ ].* deficiency: .*liferaft E2' "$scratch/stdout")"
grep -q '  the same in 16 of 40 boats: all 8 like cat' "$scratch/stdout" ||
    not_ok models-wrong-sisters "$(cat "$scratch/stdout")"

exit $failures
