#!/bin/sh
# The index of cards: what a frightened guest says leads to the right card, by words in common with
# the lines that are printed; each card aboard is in it, and none other. And what a base leaves out
# is in it no more.
. tests/tap.sh

# index_lines PAGE...: "entry|number" of each line that is printed on pages of one boat.
index_lines() {
    cat "$@" | awk -f tests/item.awk -f /dev/fd/3 3<<'LINES'
    { item_read() }
    kind != "text" || block != "seen" { next }
    ink == "white" { said = ""; next }
    text ~ /^[0-9]+[A-Z]*$/ { print said "|" text; said = ""; next }
    { said = said (said == "" ? "" : " ") text }
LINES
}

# card_number DUMP: what the card is called by, without the letter of one of several pages or the
# word of one of two sides.
card_number() {
    number=$(sed -n 's/^text title .* "Card \([0-9A-Z]* \{0,1\}[a-z]*\)"$/\1/p' "$1")
    case $number in
    *' front') number=${number% front} ;;
    *) [ ! -f "${1%.dump}_2.dump" ] || number=${number%[A-Z]} ;;
    esac
    echo "$number"
}

# cards_of BOAT: "number|procedure" of each card of hers, by its first page.
cards_of() {
    for page in "$pages/$1"-*.dump; do
        card=${page##*/"$1"-}
        card=${card%.dump}
        case $card in *_[0-9]) continue ;; esac
        echo "$(card_number "$page")|$card" | sed 's/_port$//; s/_starboard$//; s/_main$//
            s/_generator$//'
    done
}

# named BOAT: "entry|procedure" of her index.
named() {
    cards_of "$1" >"$scratch/cards"
    index_lines "$pages/$1"-safety_plan*.dump |
        awk -F'|' 'FNR == NR { card[$1] = $2; next } { print $1 "|" card[$2] }' \
            "$scratch/cards" -
}

# led LINES SENTENCES: what leads elsewhere; how many were tried is in $scratch/counted.
led() {
    awk -v counted="$scratch/counted" -f tests/words/index.awk "$1" "$2"
}

# ---- that it tells ----

printf '%s\n' 'Smell gas|gas' 'Smell diesel|diesel' 'Water comes in|water' >"$scratch/lines"
printf '%s\n' 'I can smell gas | gas' 'it smells | gas' 'the water is coming in | gas' \
    'she sings | water' 'a card that she has not | fire' >"$scratch/said"
expect_equal index-tells 'it smells: wanted gas, found none or several
the water is coming in: wanted gas, found water
she sings: wanted water, found none or several' "$(led "$scratch/lines" "$scratch/said")"
expect_equal index-counts 4 "$(cat "$scratch/counted")"

# ---- the boats ----

pages=$scratch/pages
for base in tests/fleet tests/islands; do
    maydeck print "$base" --dump --date "$print_date" -o "$pages"
    expect_status "index-${base##*/}" 0
done
: >"$scratch/all"
for boat in tamarisk samphire bramble thrift sundew eelgrass; do
    named "$boat" >"$scratch/$boat"
    expect_empty "index-$boat" "$(led "$scratch/$boat" tests/words/sentences.txt)"
    [ "$(cat "$scratch/counted")" -ge 10 ] && ok "index-$boat-tried" ||
        not_ok "index-$boat-tried" "$(cat "$scratch/counted") sentences were tried"
    cat "$scratch/$boat" >>"$scratch/all"
    # each card but the plan, and no other
    expect_equal "index-$boat-cards" \
        "$(cards_of "$boat" | sed 's/.*|//' | grep -vx safety_plan | sort -u)" \
        "$(sed 's/.*|//' "$scratch/$boat" | sort -u)"
done
count=$(grep -c '|' tests/words/sentences.txt)
[ "$count" -ge 20 ] && ok index-sentences || not_ok index-sentences "$count sentences"
expect_empty index-sentences-of-cards "$(sed -n 's/^[^#].* | //p' tests/words/sentences.txt |
    sort -u | while read -r card; do
    grep -q "|$card$" "$scratch/all" || echo "$card: no boat has it"
done)"

# ---- a base that chooses ----

# A further card, which may be left out; and the index as a sheet.
tool=$scratch/tool
mkdir -p "$tool/out"
cp -R procedures "$tool/"
cp -R out/fonts "$tool/out/"
cp "$MAYDECK" "$tool/out/maydeck"
chmod -R u+w "$tool"
cat >"$tool/procedures/lock_gate.yaml" <<'LOGIC'
procedure: lock_gate
number: 55
symbol: flood
stripe: warning
seen_as: boat
steps:
  - {id: back, practice: yes}
  - {id: count, lethal: [hands], practice: yes}
  - {id: cut, practice: yes, cases: [{id: knife, when: {fitted: knife}, uses: [knife]}, {id: none}]}
cautions:
  - {id: gate, sources: [S2]}
LOGIC
cat >"$tool/procedures/words/en/lock_gate.yaml" <<'TEXTS'
procedure: lock_gate
title: Lock gate
subject: LOCK GATE
signs: [The gate does not open]
seen: [Lock gate is shut]
steps:
  back: {act: "**GO BACK** slowly. Look for who is hurt."}
  count: {act: "**COUNT** all heads.", lethal: {hands: No hand on the wall.}}
  cut: {cases: {knife: {act: "**CUT** the line."}, none: {act: "**UNTIE** the line."}}}
cautions:
  gate: The gate moves without warning.
TEXTS
seal "$tool/procedures"
cp -R tests/fleet "$scratch/fleet"

# chosen NAME: the fleet is printed into $scratch/NAME; pages are those from then on.
chosen() {
    # shellcheck disable=SC2086
    $WRAP "$tool/out/maydeck" print "$scratch/fleet" --dump --date "$print_date" \
        -o "$scratch/$1" >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
    expect_status "index-$1" 0
    pages=$scratch/$1
}

chosen whole
expect_equal index-whole-line 'Lock gate is shut|lock_gate' "$(named tamarisk | grep lock_gate)"
echo 'cards: {leave_out: [lock_gate], add: [index]}' >>"$scratch/fleet/base.yaml"
echo 'cards: {leave_out: []}' >>"$scratch/fleet/boats/bramble.yaml"
chosen some
expect_empty index-some-line "$(named tamarisk | grep lock_gate)"
expect_equal index-some-bramble 'Lock gate is shut|lock_gate' "$(named bramble | grep lock_gate)"
expect_equal index-some-pages 'bramble-lock_gate.dump' \
    "$(cd "$pages" && echo *lock_gate*)"
expect_equal index-sheet "$(index_lines "$pages"/tamarisk-safety_plan*.dump)" \
    "$(index_lines "$pages"/tamarisk-index*.dump)"
expect_equal index-sheet-number 29 \
    "$(card_number "$pages/tamarisk-index.dump")"

# The other cards are the same, whoever has the card or not.
for card in flooding engine_fire gas_leak; do
    page_words_but_plan "$scratch/whole/tamarisk-$card.dump" >"$scratch/one"
    page_words_but_plan "$scratch/some/tamarisk-$card.dump" >"$scratch/other"
    [ -s "$scratch/one" ] && cmp -s "$scratch/one" "$scratch/other" && ok "index-same-$card" ||
        not_ok "index-same-$card"
done

# `check` says who leaves it out.
# shellcheck disable=SC2086
$WRAP "$tool/out/maydeck" check "$scratch/fleet" --date "$print_date" >"$scratch/stdout" \
    2>"$scratch/stderr" </dev/null
line=$(grep -n 'leave_out' "$scratch/fleet/base.yaml" | sed 's/:.*//')
expect_equal index-check "samphire, tamarisk: no card 55 LOCK GATE: left out by $scratch/fleet/base.yaml, line $line" \
    "$(grep '^[a-z, ]*: no card 55' "$scratch/stdout")"
exit $failures
