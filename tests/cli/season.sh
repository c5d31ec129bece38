#!/bin/sh
# A season of a base with two sister ships and a third boat: after each thing that happens `renew`
# names exactly the cards that it changes, with the reason, and once those were printed and hung,
# none.
. tests/tap.sh
. tests/season.sh

tool=$scratch/tool
mkdir -p "$tool/out"
cp -R procedures "$tool/"
cp -R out/fonts "$tool/out/"
cp "$MAYDECK" "$tool/out/maydeck"
chmod -R u+w "$tool"
MAYDECK=$tool/out/maydeck

base=$scratch/base
boats='sandpiper turnstone whimbrel'

# codes NAME DAY: the check code of each card that would be printed, "boat card code" a line.
codes() {
    for boat in $boats; do
        maydeck print "$base" --boat "$boat" --list --date "$2"
        sed -n "s/^  \([0-9A-Z]*-[0-9A-Z]*\)  \([0-9A-Z]*\) .*/$boat \2 \1/p" "$scratch/stdout"
    done | sort >"$scratch/codes-$1"
}

# renewed DAY [ARGUMENT...]: what is to be replaced, "boat card" a line, and the reasons.
renewed() {
    day=$1
    shift
    maydeck renew "$base" --date "$day" "$@"
    awk '/^[a-z]/ { boat = $1; sub(":", "", boat) }
        /^  REPLACE / { print boat, $2 }' "$scratch/stdout" | sort >"$scratch/replaced"
    sed -n 's/^      //p' "$scratch/stdout" | sort -u >"$scratch/reasons"
}

# clean NAME DAY: all hang as recorded, and nothing is to be done.
clean() {
    maydeck renew "$base" --date "$2"
    expect_status "season-$1-clean" 0
    expect_equal "season-$1-clean-told" 3 \
        "$(grep -c '^[a-z]*: all [0-9]* cards hang as recorded$' "$scratch/stdout")"
    expect_empty "season-$1-clean-only" "$(grep -v ' hang as recorded$\|CHANGES BY ITSELF\|^      ' \
        "$scratch/stdout")"
}

# reprinted NAME DAY: only the cards to replace are printed again; they are hung.
reprinted() {
    rm -rf "$scratch/again"
    maydeck renew "$base" --date "$2" --print -o "$scratch/again"
    expect_status "season-$1-print" 1
    expect_equal "season-$1-files" "$(wc -l <"$scratch/replaced")" \
        "$(folder_list "$scratch/again" | wc -l)"
    for boat in $boats; do
        maydeck hang "$base" --boat "$boat" --place wheel --by KM --date "$2"
        expect_status "season-$1-hang-$boat" 0
    done
    clean "$1" "$2"
}

# happened NAME DAY REASON...: exactly the cards whose codes are others are to be replaced, for
# these reasons and no other.
happened() {
    name=$1 day=$2
    shift 2
    codes after "$day"
    renewed "$day"
    expect_status "season-$name" 1
    expect_equal "season-$name-cards" "$(comm -13 "$scratch/codes-before" "$scratch/codes-after" |
        cut -d ' ' -f 1,2)" "$(cat "$scratch/replaced")"
    [ -s "$scratch/replaced" ] || not_ok "season-$name-some" 'no card is to be replaced'
    expect_equal "season-$name-reasons" "$(printf '%s\n' "$@" | sort -u)" \
        "$(cat "$scratch/reasons")"
    reprinted "$name" "$day"
    codes before "$day"
}

# ---- the season begins ----

maydeck start "$base" --boat sandpiper
expect_status season-start 0
grep -q "register.csv: begun" "$scratch/stdout" || not_ok season-start-register
maydeck survey "$base" --hull monohull --rig motor --date 2027-03-01 -o "$scratch/sheets"
[ -s "$scratch/sheets/new-monohull-motor-survey.pdf" ] || not_ok season-survey-new "$(cat "$scratch/problems")"
season_lay "$base"
maydeck survey "$base" --date 2027-03-02 -o "$scratch/sheets"
expect_status season-survey 0
expect_equal season-survey-each 4 "$(folder_list "$scratch/sheets" | wc -l)"
maydeck brief "$base" --boat whimbrel --from 2027-03-15 --to 2027-03-20 --people 5 \
    --date 2027-03-10 -o "$scratch/sheets"
[ -s "$scratch/sheets/whimbrel-brief.pdf" ] || not_ok season-brief "$(cat "$scratch/problems")"
maydeck check "$base" --date 2027-03-10
expect_empty season-check "$(grep ': error: \|: held: ' "$scratch/problems")"
maydeck renew "$base" --date 2027-03-10
expect_status season-nothing 1
expect_equal season-nothing-printed 3 "$(grep -c 'NEVER PRINTED all ' "$scratch/stdout")"
maydeck print "$base" --date 2027-03-10 -o "$scratch/cards"
expect_status season-print 0
rows=$(grep -c '^printed,' "$base/register.csv")
maydeck print "$base" --date 2027-03-11 -o "$scratch/cards"
expect_equal season-print-twice "$rows" "$(grep -c '^printed,' "$base/register.csv")"
codes before 2027-03-10
expect_equal season-rows "$(wc -l <"$scratch/codes-before")" "$rows"
maydeck renew "$base" --date 2027-03-10
expect_status season-unhung 1
expect_equal season-unhung-told "$rows" "$(grep -c '^  PRINTED, NOT HUNG ' "$scratch/stdout")"
maydeck hang "$base" --boat sandpiper,turnstone,whimbrel --place wheel --by KM --date 2027-03-12
expect_status season-hang 0
clean hang 2027-03-12

# ---- flares move on one of the sisters ----

sed -i 's/{tag: E5, expires: 2028-03}/{item: flares, tag: E5, zone: transom, side: port, spot: lid, count: 5, expires: 2028-03}/' \
    "$base/boats/sandpiper.yaml"
happened moved 2027-04-02 \
    'Flares E5 moved from Cockpit, centre, orange tube to Transom, port, lid'
expect_empty season-moved-only "$(grep -v '^sandpiper ' "$scratch/replaced")"

# ---- the raft of one runs out, and is serviced ----

clean raft-to-come 2027-09-10
cp "$scratch/stdout" "$scratch/to-come"
maydeck renew "$base" --date 2027-09-10 --by 2027-09-30
expect_status season-raft-not-by 0
maydeck renew "$base" --date 2027-09-10 --by 2027-10-01
expect_status season-raft-by 1
expect_empty season-raft-by-same "$(diff "$scratch/to-come" "$scratch/stdout")"
renewed 2027-10-01
expect_status season-raft 1
expect_equal season-raft-foreseen "$(sed -n 's/^  CHANGES BY ITSELF \([0-9]*\) .* on 2027-10-01$/turnstone \1/p' "$scratch/to-come" | sort)" \
    "$(cat "$scratch/replaced")"
expect_equal season-raft-reason \
    'Raft E13: its date has passed, it was good until 2027-09-30' "$(cat "$scratch/reasons")"
expect_empty season-raft-only "$(grep -v '^turnstone ' "$scratch/replaced")"
maydeck due "$base" --date 2027-10-01 --until 2027-10-31
expect_status season-raft-due 1
expect_equal season-raft-due-told '2027-09-30 PAST turnstone E13 Raft service_due 2027-09' \
    "$(awk 'NR > 1 { print $1, $2, $3, $4, $5, $6, $7 }' "$scratch/stdout")"
cp "$scratch/replaced" "$scratch/replaced-passed"
reprinted raft-passed 2027-10-01
sed -i 's/service_due: 2027-09,/service_due: 2028-01,/' "$base/boats/turnstone.yaml"
happened raft-serviced 2027-10-05 'Raft E13: good until 2028-01, it was 2027-09'
expect_empty season-raft-serviced-only "$(grep -v '^turnstone ' "$scratch/replaced")"

# ---- a procedure changes ----

sed -i 's/Hold it with a board\./Press a board on it./' "$tool/procedures/words/en/flooding.yaml"
seal "$tool/procedures"
happened procedure 2027-10-08 'procedure changed: step 5: "PLUG the hole. Hold it with a board." -> "PLUG the hole. Press a board on it."'
expect_equal season-procedure-everywhere 'sandpiper 7 turnstone 7 whimbrel 7' \
    "$(paste -s -d ' ' "$scratch/replaced")"

# ---- the sisters' rafts and beacons are swapped ----

sed -i -e 's/service_due: 2027-12, serial: "S-1077"/service_due: 2028-01, serial: "S-2080"/' \
    -e 's/990F4 048D0 004B1/990F4 04A10 004B1/' "$base/boats/sandpiper.yaml"
sed -i -e 's/service_due: 2028-01, serial: "S-2080"/service_due: 2027-12, serial: "S-1077"/' \
    -e 's/990F4 04A10 004B1/990F4 048D0 004B1/' "$base/boats/turnstone.yaml"
happened swapped 2027-10-20 \
    'Personal beacon E4: hex id changed from "990F4 048D0 004B1" to "990F4 04A10 004B1"' \
    'Personal beacon E4: hex id changed from "990F4 04A10 004B1" to "990F4 048D0 004B1"' \
    'Raft E13: good until 2027-12, it was 2028-01' \
    'Raft E13: good until 2028-01, it was 2027-12'
expect_empty season-swapped-only "$(grep '^whimbrel ' "$scratch/replaced")"

# ---- the base gets another number ----

sed -i 's/"+999 00 000 711"/"+999 00 000 717"/' "$base/base.yaml"
happened phone 2027-11-02 \
    "base: rescue centre's phone changed from \"+999 00 000 711\" to \"+999 00 000 717\""

# ---- a torch moves, by way of a spreadsheet ----

maydeck table "$base" -o "$scratch/gear.csv"
expect_status season-table 0
cp "$base/boats/whimbrel.yaml" "$scratch/whimbrel"
maydeck take "$base" "$scratch/gear.csv" --write --date 2027-11-02
cmp -s "$scratch/whimbrel" "$base/boats/whimbrel.yaml" || not_ok season-taken-unchanged
sed -i '/^whimbrel,C6,/s/grey pocket/under the seat/' "$scratch/gear.csv"
maydeck take "$base" "$scratch/gear.csv" --date 2027-11-02
cmp -s "$scratch/whimbrel" "$base/boats/whimbrel.yaml" || not_ok season-taken-without-write
maydeck take "$base" "$scratch/gear.csv" --write --date 2027-11-02
expect_status season-take 0
expect_equal season-taken-lines 2 "$(diff "$scratch/whimbrel" "$base/boats/whimbrel.yaml" | grep -c '^[<>]')"
happened typed 2027-11-02 \
    'Torch C6 moved from Cockpit, port, grey pocket to Cockpit, port, under the seat'
expect_empty season-typed-only "$(grep -v '^whimbrel ' "$scratch/replaced")"

# the next skipper reads of it, and not who was handed the boat over since
briefed() {
    maydeck brief "$base" --boat whimbrel --from 2027-11-06 --to 2027-11-13 --people 4 \
        --date 2027-11-04 --since "$1" -o "$scratch/sheets"
    pdftotext -layout "$scratch/sheets/whimbrel-brief.pdf" - |
        sed -n '/CHANGED ON THE CARDS/,/CHANGED SINCE/p' >"$scratch/changed"
}
briefed 2027-11-01
grep -q 'Torch C6 moved from Cockpit, port, grey pocket to Cockpit, port, under the seat\.' \
    "$scratch/changed" && ok season-briefed || not_ok season-briefed "$(cat "$scratch/changed")"
briefed 2027-11-03
grep -q 'Nothing is recorded' "$scratch/changed" && ok season-briefed-none ||
    not_ok season-briefed-none "$(cat "$scratch/changed")"

# ---- cards in a second language hang beside ----

mkdir "$tool/procedures/words/qps"
for file in "$tool"/procedures/words/en/*.yaml; do
    awk -v language=qps -f tests/pseudo.awk "$file" >"$tool/procedures/words/qps/${file##*/}"
done
seal "$tool/procedures"
clean language-none 2027-11-02
maydeck print "$base" --boat turnstone --card flooding,aground --lang qps --date 2027-11-02 \
    -o "$scratch/cards"
maydeck hang "$base" --boat turnstone --card flooding,aground --lang qps --place wheel --by KM \
    --date 2027-11-02
expect_status season-language-hang 0
maydeck renew "$base" --date 2027-11-02
expect_status season-language-clean 0
expect_equal season-language-right 1 "$(grep -c '^turnstone: all 24 cards hang as recorded$' "$scratch/stdout")"
cp "$base/boats/turnstone.yaml" "$scratch/turnstone"
sed -i 's/equipment:/equipment:\n  - {item: softwood_bung, tag: C8, zone: cockpit, side: centre, spot: red tube}/' \
    "$base/boats/turnstone.yaml"
maydeck renew "$base" --date 2027-11-02
expect_equal season-language-both 2 "$(grep -c '^  REPLACE 7 ' "$scratch/stdout")"
grep -q '^  REPLACE 7 .*, qps (' "$scratch/stdout" && ok season-language-told ||
    not_ok season-language-told "$(cat "$scratch/stdout")"
cp "$scratch/turnstone" "$base/boats/turnstone.yaml"
maydeck hang "$base" --boat turnstone --lang qps --down --by KM --date 2027-11-02

# ---- a card is left out ----

echo 'cards: {leave_out: [lightning]}' >>"$base/base.yaml"
renewed 2027-11-03
expect_status season-left-out 1
expect_equal season-left-out-told 3 "$(grep -c '^  TAKE DOWN 27 LIGHTNING ' "$scratch/stdout")"
maydeck hang "$base" --boat sandpiper,turnstone,whimbrel --card lightning --down --by KM \
    --date 2027-11-03
expect_status season-left-out-down 0

# ---- a boat is sold ----

rm "$base/boats/whimbrel.yaml"
maydeck renew "$base" --date 2027-11-04
grep -q '^whimbrel: TAKE DOWN 21 cards: the base has no such boat any more$' "$scratch/stdout" &&
    ok season-sold || not_ok season-sold "$(grep whimbrel "$scratch/stdout")"
maydeck hang "$base" --boat whimbrel --down --by KM --date 2027-11-04
expect_status season-sold-down 0
maydeck renew "$base" --date 2027-11-04
expect_empty season-sold-gone "$(grep whimbrel "$scratch/stdout")"

exit $failures
