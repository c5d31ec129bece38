#!/bin/sh
# Safety plans of boats with little gear and with much: all of it stands on the page
# and can be read, or a message says what to do.
. tests/tap.sh

base=$scratch/base
mkdir -p "$base/boats"
cp tests/fleet/base.yaml "$base/"

boats=0
# boat_begin NAME TYPE: a boat's head on standard output.
boat_begin() {
    boats=$((boats + 1))
    beam=4.0
    [ "$2" = catamaran ] && beam=7.0
    cat <<BOAT
boat: {name: $1, name_spoken: Tern, specimen: yes, hull: $2, rig: sail, loa_m: 12.0, beam_m: $beam, persons_max: 8, looks: White boat, mounted: {zone: companionway, faces: port}}
radio: {tag: E99, call_sign: QTA$(echo BCDEFGHIJKLMN | cut -c$boats)2, dsc: no, zone: navigation_station, side: port}
equipment:
BOAT
}

# gear ITEM TAG ZONE MORE
gear() {
    echo "  - {item: $1, tag: $2, zone: $3$4}"
}

# Three pieces of gear, short names.
{
    boat_begin Ida monohull
    gear torch C1 saloon
    gear flares E1 cockpit_locker ', side: port'
    gear fire_blanket F1 galley
} >"$base/boats/three.yaml"

# Forty pieces, spread over the boat; tags F, E and C.
forty() {
    i=0
    for zone in forepeak forward_cabin saloon galley companionway anchor_locker foredeck \
        coachroof cockpit transom; do
        for side in port starboard; do
            i=$((i + 1))
            gear torch "C$i" $zone ", side: $side, spot: hook $i"
            gear knife "E$i" $zone ", side: $side, spot: sheath $i"
        done
    done
}
{ boat_begin Quarante monohull; forty; } >"$base/boats/forty.yaml"
{ boat_begin Quarante catamaran; forty | sed 's/zone: forepeak/zone: bridgedeck/'; } \
    >"$base/boats/fortytwin.yaml"

# Names of 34 letters, of gear and boat.
name='Long-winded name of a piece, to 34'
{
    boat_begin 'Wandering Albatross of the Far Sea' monohull
    i=0
    for zone in forward_cabin saloon galley companionway cockpit cockpit_locker aft_cabin; do
        i=$((i + 1))
        gear torch "C$i" $zone ", name: \"$name\", spot: behind the door"
    done
} >"$base/boats/names.yaml"

# Sixteen seacocks, four at a place.
{
    boat_begin Sieve monohull
    i=10
    for zone in forward_heads galley engine_space aft_heads; do
        for use in inlet outlet 'basin drain' 'deck wash'; do
            i=$((i + 1))
            gear seacock "C$i" $zone ", side: port, name: $use, how: {shut: across}, bore_mm: 25"
        done
    done
} >"$base/boats/seacocks.yaml"

# Much below, all in one place.
{
    boat_begin Magpie monohull
    i=0
    while [ $i -lt 70 ]; do
        i=$((i + 1))
        gear torch "C$i" saloon ", spot: hook $i"
    done
} >"$base/boats/magpie.yaml"

# ---- printed ----

mkdir "$scratch/dumps" "$scratch/out"
for boat in three forty fortytwin names seacocks; do
    maydeck print "$base" --boat $boat --card safety_plan --dump --date "$print_date" \
        -o "$scratch/dumps"
    # The other cards of these boats lack nearly everything: status 1.
    grep -q 'SAFETY PLAN' "$scratch/stderr" && not_ok "plans-$boat" "$(cat "$scratch/stderr")"
    [ -s "$scratch/dumps/$boat-safety_plan.dump" ] && ok "plans-$boat" ||
        not_ok "plans-$boat" 'no page' "$(cat "$scratch/stderr")"
done
# The list of sources of all cards stands on a plan too, and leaves room for little more than three.
expect_equal plans-two-where-there-is-much 'forty
fortytwin
names
seacocks' "$(cd "$scratch/dumps" && ls | sed -n 's/-safety_plan_2.dump//p')"

# texts FILE...: the texts of the labels, a line each.
texts() {
    sed -n 's/^text labels .* "\(.*\)"$/\1/p' "$@"
}

# Every tag of the boat's file stands in a list, and on the boat, once.
tags_missing() {
    grep -o 'tag: [FEC][0-9]*' "$base/boats/$1.yaml" | cut -d' ' -f2 | sort >"$scratch/tags"
    cat "$scratch/dumps/$1"-safety_plan*.dump |
        sed -n "s/^text $2 .* \"\\([FEC][0-9][0-9]*\\)\"\$/\\1/p" | sort |
        comm -3 "$scratch/tags" -
}
for boat in three forty fortytwin names seacocks; do
    expect_empty "plans-$boat-every-tag-once" "$(tags_missing $boat labels)"
    expect_empty "plans-$boat-every-tag-on-the-boat" "$(tags_missing $boat plan)"
done

expect_equal plans-seacocks-say-what-for '4 basin drain
4 deck wash
4 inlet
4 outlet' "$(cat "$scratch/dumps"/seacocks-safety_plan*.dump | texts |
    grep -x 'basin drain\|deck wash\|inlet\|outlet' | sort | uniq -c | sed 's/^ *//')"
expect_equal plans-long-names-are-whole 7 \
    "$(texts "$scratch/dumps"/names-safety_plan*.dump | tr '\n' ' ' | grep -o "$name" | wc -l | tr -d ' ')"

# Texts of a page apart from each other, and none below 8 pt; labels not below 12 pt.
overlaps() {
    awk '/^text / && match($0, / -?[0-9]+,-?[0-9]+ -?[0-9]+x-?[0-9]+/) {
        split(substr($0, RSTART + 1, RLENGTH - 1), part, /[ ,x]/)
        n++; x[n] = part[1]; y[n] = part[2]; w[n] = part[3]; h[n] = part[4]; line[n] = $0
        for (i = 1; i < n; i++)
            if (x[n] < x[i] + w[i] && x[i] < x[n] + w[n] && y[n] < y[i] + h[i] && y[i] < y[n] + h[n])
                print line[n], "lies on", line[i]
    }' "$1"
}
small() {
    awk '/^text labels / && match($0, / size=[0-9]+/) &&
        substr($0, RSTART + 6, RLENGTH - 6) + 0 < 12000' "$1"
}
for page in "$scratch"/dumps/*.dump; do
    expect_empty "plans-apart-$(basename "$page" .dump)" "$(overlaps "$page" | head -n 3)"
    expect_empty "plans-legible-$(basename "$page" .dump)" "$(small "$page" | head -n 3)"
done

# ---- where the card hangs ----

grep -q '"You look to port:' "$scratch/dumps/three-safety_plan.dump" &&
    grep -q '"YOU ARE HERE"' "$scratch/dumps/three-safety_plan.dump" && ok plans-here ||
    not_ok plans-here
sed 's/, mounted: {[^}]*}//; s/QTA[A-Z]2/QTAZ2/' "$base/boats/three.yaml" >"$base/boats/nowhere.yaml"
maydeck print "$base" --boat nowhere --card safety_plan --dump --date "$print_date" -o "$scratch/dumps"
grep -q 'YOU ARE HERE' "$scratch/dumps/nowhere-safety_plan.dump" && not_ok plans-not-here || ok plans-not-here
maydeck check "$base" --boat nowhere
grep -q 'nowhere.yaml:1:.*: note: where the cards hang is not recorded' "$scratch/problems" &&
    ok plans-not-here-noted || not_ok plans-not-here-noted "$(cat "$scratch/problems")"
rm "$base/boats/nowhere.yaml"

# ---- one card alone, from the PDF ----

maydeck print "$base" --boat forty --card safety_plan --date "$print_date" -o "$scratch/out"
expect_equal plans-one-file forty-safety_plan.pdf "$(cd "$scratch/out" && ls forty*)"
expect_equal plans-both-pages 2 "$(pdfinfo "$scratch/out/forty-safety_plan.pdf" |
    sed -n 's/^Pages: *//p')"
pdftotext "$scratch/out/forty-safety_plan.pdf" - | grep -q 'SAFETY PLAN' && ok plans-read-back || not_ok plans-read-back

# Every piece at a place of its own: found or told, but not searched for by the minute.
{
    boat_begin Scatter monohull
    i=0
    while [ $i -lt 56 ]; do
        i=$((i + 1))
        gear torch "C$i" saloon ", spot: hook $i, at: [$((2 + i / 7)).$((i % 7)), 0.$((i % 9))]"
    done
} >"$base/boats/scatter.yaml"
(ulimit -t 60 && maydeck print "$base" --boat scatter --card safety_plan --date "$print_date" \
    -o "$scratch/out"
expect_status plans-scattered-in-time 1)
grep -q ': error: ' "$scratch/stderr" && not_ok plans-scattered-fits "$(cat "$scratch/stderr")"
expect_equal plans-scattered 'Card 1A
Card 1B' "$(for file in "$scratch/out"/scatter-*.pdf; do pdftotext "$file" -; done |
    grep '^Card 1')"
# Each tag stands on the boat and in its list.
found=$(for file in "$scratch/out"/scatter-*.pdf; do pdftotext "$file" -; done | tr ' ' '\n' |
    grep -x "C[0-9][0-9]*" | sort -u | wc -l | tr -d ' ')
expect_equal plans-scattered-tags 56 "$found"
rm "$base/boats/scatter.yaml"

# ---- much of it in one place ----

maydeck print "$base" --boat magpie --card safety_plan --date "$print_date" -o "$scratch/out"
grep -q ': error: ' "$scratch/stderr" && not_ok plans-much-in-one-place "$(cat "$scratch/stderr")"
pdftotext "$scratch/out/magpie-safety_plan.pdf" "$scratch/text"
expect_equal plans-much-tags 70 "$(tr '\f ' '\n\n' <"$scratch/text" | grep -x 'C[0-9][0-9]*' | sort -u | wc -l | tr -d ' ')"

# A helm with more gear than the rows of the calm plan hold: the plan takes more rows.
cp -r tests/fleet "$scratch/crowded"
rm "$scratch/crowded/boats/tamarisk.yaml" "$scratch/crowded/boats/bramble.yaml"
helm=$scratch/crowded/boats/samphire.yaml
sed '/not_fitted/,$ s/\<cooker, //' tests/fleet/boats/samphire.yaml | awk '{ print }
    /^equipment:/ && !done++ {
        print "  - {item: cooker, tag: C90, zone: galley, how: {on: push in, off: turn}}"
    }' >"$helm"
maydeck print "$scratch/crowded" --date "$print_date" -o "$scratch/out"
expect_status plans-crowded-helm 0
expect_empty plans-crowded-helm-tags "$(grep 'no room on the plan' "$scratch/stderr")"

# ---- what does not fit ----

{
    boat_begin Verbose monohull
    i=0
    while [ $i -lt 99 ]; do
        i=$((i + 1))
        gear torch "C$i" saloon ", name: \"$name\", spot: \"on a hook behind the second curtain beside the panel of the door to the cabin, $i\""
    done
} >"$base/boats/verbose.yaml"
maydeck print "$base" --boat verbose --card safety_plan --date "$print_date" -o "$scratch/out"
expect_status plans-too-much 1
grep -q 'verbose.yaml:[0-9]*:.*: error: 1[A-Z]* SAFETY PLAN (en): what stands beside the boat is [0-9.]* mm too long' \
    "$scratch/stderr" && grep -q 'shorten name or spot of the [0-9]* that take more than one line' \
    "$scratch/stderr" && ok plans-too-much-told || not_ok plans-too-much-told "$(cat "$scratch/stderr")"
exit $failures
