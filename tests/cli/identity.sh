#!/bin/sh
# A card is its own: its number, page and check code change with nothing that only other
# cards show, and with no day but the end of an approval. Only the plan of the boat is that of the
# set: what another card shows has its place on it, and the column beside it makes room; and the
# safety plan has the index of all cards.
. tests/tap.sh

tool=$scratch/tool
mkdir -p "$tool/out"
cp -R procedures "$tool/"
cp -R out/fonts "$tool/out/"
cp "$MAYDECK" "$tool/out/maydeck"
chmod -R u+w "$tool"

day=$print_date

# dumped FOLDER BASE: the pages of a base on that day as text, by the copy of the program.
dumped() {
    # shellcheck disable=SC2086
    $WRAP "$tool/out/maydeck" print "$2" --dump --date "$day" -o "$scratch/$1" \
        >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# same_pages NAME ONE OTHER PATTERN: the pages of ONE are the same in OTHER but those whose
# names match the pattern ("" for none).
same_pages() {
    (cd "$scratch/$2" && ls) | grep -v "^${4:-nothing}\$" >"$scratch/names"
    changed=$(while read -r page; do
        cmp -s "$scratch/$2/$page" "$scratch/$3/$page" || echo "$page"
    done <"$scratch/names")
    [ "$(wc -l <"$scratch/names")" -gt 8 ] || not_ok "$1" 'too few pages to compare'
    expect_empty "$1" "$changed"
}

# same_words NAME ONE OTHER: the pages of ONE say the same in OTHER, the plan apart.
same_words() {
    for folder in "$2" "$3"; do
        rm -rf "$scratch/$folder-words"
        mkdir "$scratch/$folder-words"
        for page in "$scratch/$folder"/*.dump; do
            page_words_but_plan "$page" >"$scratch/$folder-words/${page##*/}"
        done
    done
    same_pages "$1" "$2-words" "$3-words"
}

# codes FOLDER [CARD]: the check codes of its pages.
codes() {
    cat "$scratch/$1"/*"${2:-}"*.dump | sed -n 's/.* role=code .*"\(.*\)"$/\1/p' | sort -u
}

# ---- a card more ----

dumped before tests/fleet
expect_status identity-before 0
cat >"$tool/procedures/lock_gate.yaml" <<'CARD'
procedure: lock_gate
number: 55
symbol: raft
stripe: rescue
seen_as: boat
steps:
  - {id: count, practice: yes}
  - {id: engine, lethal: [ropes], practice: yes}
  - {id: cut, practice: yes, cases: [{id: knife, when: {fitted: knife}, uses: [knife]}, {id: none}]}
cautions:
  - {id: wire, sources: [S5]}
CARD
cat >"$tool/procedures/words/en/lock_gate.yaml" <<'TEXTS'
procedure: lock_gate
title: Lock gate
subject: LOCK GATE
signs: [The gate does not open]
seen: [Lock gate is shut]
steps:
  count: {act: "**COUNT** all heads. Look for who is hurt."}
  engine: {act: "**DON’T START** the engine.", lethal: {ropes: Ropes lie round the propeller.}}
  cut: {cases: {knife: {act: "**CUT** the line."}, none: {act: "**UNTIE** the line."}}}
cautions:
  wire: Broken wire springs back.
TEXTS
seal "$tool/procedures"
dumped more tests/fleet
expect_status identity-more 0
expect_equal identity-more-pages "bramble-lock_gate.dump samphire-lock_gate.dump tamarisk-lock_gate.dump" \
    "$(for page in "$scratch/more"/*; do
        [ -f "$scratch/before/${page##*/}" ] || echo "${page##*/}"
    done | paste -s -d ' ')"
same_words identity-more-others before more
codes before >"$scratch/codes"
codes more >"$scratch/codes-more"
expect_equal identity-more-codes 6 "$(grep -cvxF -f "$scratch/codes" "$scratch/codes-more")"
expect_equal identity-more-codes-kept "$(codes before -safety_plan)" \
    "$(grep -vxF -f "$scratch/codes-more" "$scratch/codes")"
grep -q '"Card 55"' "$scratch/more/bramble-lock_gate.dump" && ok identity-more-number ||
    not_ok identity-more-number

# A number is no one's but the card's.
sed 's/^number: 55/number: 7/' "$tool/procedures/lock_gate.yaml" >"$scratch/changed"
cp "$scratch/changed" "$tool/procedures/lock_gate.yaml"
seal "$tool/procedures"
dumped twice tests/fleet
expect_status identity-twice 1
grep -q 'lock_gate.yaml:2:9: error: number 7 is that of .*flooding.yaml too' "$scratch/stderr" &&
    ok identity-twice-told || not_ok identity-twice-told "$(cat "$scratch/stderr")"
for number in 0 100 7.5; do
    sed "s/^number: 7/number: $number/" "$scratch/changed" >"$tool/procedures/lock_gate.yaml"
    seal "$tool/procedures"
    dumped wrong tests/fleet
    expect_status "identity-number-$number" 1
done
rm "$tool/procedures/lock_gate.yaml" "$tool/procedures/words/en/lock_gate.yaml"
seal "$tool/procedures"

# ---- gear that no card mentions ----

gear=$scratch/gear
cp -R tests/errors/base "$gear"
chmod -R u+w "$gear"
dumped few "$gear"
expect_status identity-few 0
expect_empty identity-much-unused \
    "$(grep -lwE 'fender|bilge_alarm|radar_reflector' procedures/*.yaml)"
sed -i 's/ fender,/ /; s/ bilge_alarm,/ /; s/ radar_reflector,/ /' "$gear/boats/alder.yaml"
awk '{ print } /^equipment:/ {
    split("forepeak saloon galley aft_cabin_port lazarette", zone, " ")
    for (i = 0; i < 20; i++)
        printf "  - {item: %s, tag: C%d, zone: %s, spot: shelf %d}\n",
               i % 2 ? "fender" : "bilge_alarm", 40 + i, zone[i % 5 + 1], i
    print "  - {item: radar_reflector, tag: E40, zone: cockpit, spot: by the wheel}" }' \
    "$gear/boats/alder.yaml" >"$scratch/changed"
cp "$scratch/changed" "$gear/boats/alder.yaml"
dumped much "$gear"
expect_status identity-much 0
same_pages identity-much-others few much '.*-safety_plan.*'
# The last page of both is the index.
[ -f "$scratch/much/alder-safety_plan_4.dump" ] && [ ! -f "$scratch/few/alder-safety_plan_4.dump" ] &&
    ok identity-much-pages || not_ok identity-much-pages 'the plan has as many pages as before'
for page in safety_plan:1A safety_plan_2:1B safety_plan_3:1C safety_plan_4:1D; do
    grep -q "\"Card ${page#*:}\"" "$scratch/much/alder-${page%:*}.dump" ||
        not_ok "identity-much-${page%:*}"
done
cmp -s "$scratch/few/alder-safety_plan.dump" "$scratch/much/alder-safety_plan.dump" &&
    not_ok identity-much-plan 'the safety plan does not show the gear'
expect_equal identity-much-code 1 "$(cat "$scratch/much"/alder-safety_plan*.dump |
    sed -n 's/.* role=code .*"\(.*\)"$/\1/p' | sort -u | wc -l | tr -d ' ')"

# ---- another day ----

# The gear is out of date by then, and says so; its dates are what they were.
day=2032-01-15
dumped later "$gear"
expect_status identity-later 0
grep -q 'PAST ITS DATE' "$scratch/later/alder-engine_fire.dump" && ok identity-later-told ||
    not_ok identity-later-told 'no card says that gear is out of date'
expect_equal identity-later-codes "$(codes much)" "$(codes later)"

exit $failures
