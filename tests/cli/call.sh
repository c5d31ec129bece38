#!/bin/sh
# The radio script on the screen: the same phrases as on the cards, and only for a
# boat whose identity is sound.
. tests/tap.sh

mkdir "$scratch/cards"
maydeck print tests/fleet --each --date "$print_date" -o "$scratch/cards"
expect_status call-cards-printed 0

# A text as a row of words: line breaks, blanks and what a card sets between them
# (a slash between two words to circle) make no difference.
words_of() {
    sed -e 's/____ ([^)]*)//g' -e 's/[·/…_]/ /g' "$1" | tr -s ' \n\f' '   ' | sed 's/^ //; s/ $//'
}

# card_words CARD.pdf: leaves the page's words in $scratch/card.words.
card_words() {
    pdftotext -raw "$1" "$scratch/card.txt"
    words_of "$scratch/card.txt" | sed 's/^/ /; s/$/ /' >"$scratch/card.words"
}

# phrases_missing SCRIPT: the lines of the script whose words are not on the card. A
# card prints the label of a form apart from its lines. Blanks part a line: what
# stands between them must be there in one piece.
phrases_missing() {
    awk '
        NR == FNR { card = $0; next }
        # a full card names the one that has the words of the milder call
        FNR == 1 { milder = "" }
        match($0, /^[A-Z, ]+: PAN PAN, PAN PAN/) {
            milder = $0; sub(/PAN PAN, PAN PAN.*/, "", milder)
        }
        card ~ /PAN PAN: card [0-9]/ && milder != "" && index($0, milder) == 1 { next }
        { gsub(/____ \([^)]*\)/, "\n"); sub(/^[A-Z, ]+: /, "&\n"); gsub(/[·\/…_]/, " ")
          count = split($0, piece, "\n")
          for (i = 1; i <= count; i++) {
              gsub(/ +/, " ", piece[i]); gsub(/^ +|[ :]+$/, "", piece[i])
              if (piece[i] != "" && !index(card, " " piece[i])) print "not on the card: " piece[i]
          } }' "$scratch/card.words" "$1"
}

# whole_missing SCRIPT: the whole script, if the card does not have it in one piece.
whole_missing() {
    grep -qF " $(words_of "$1") " "$scratch/card.words" || words_of "$1"
}

# two_forms CARD: its procedure has a MAYDAY and a milder call, which stand side by side.
two_forms() {
    [ "$(sed -n 's/^  - {.*signal: \([a-z_]*\).*/\1/p' "procedures/$1.yaml" 2>/dev/null |
        sort -u | wc -l)" -eq 2 ]
}

# Each card of each boat.
compared=0
doubled=0
single=0
silent=0
for boat in tests/fleet/boats/*.yaml; do
    boat=$(basename "$boat" .yaml)
    for file in "$scratch/cards/$boat"-*.pdf; do
        card=$(basename "$file" .pdf)
        card=${card#"$boat"-}
        maydeck call tests/fleet --boat "$boat" --card "$card"
        case $card in
        safety_plan*)                   # there is nothing to say on it
            expect_status "call-$boat-$card" 2
            continue
            ;;
        esac
        # nobody can call from it: no words to say
        none=$(pdftotext "$file" - | grep -x 'NO RADIO IS SAFE HERE\|NO RADIO IN REACH')
        if [ -n "$none" ]; then
            expect_status "call-$boat-$card" 2
            expect_empty "call-$boat-$card-unsaid" "$(cat "$scratch/stdout")"
            grep -q "nobody can call: $none" "$scratch/stderr" ||
                not_ok "call-$boat-$card-told" "$(cat "$scratch/stderr")"
            silent=$((silent + 1))
            continue
        fi
        expect_status "call-$boat-$card" 0
        expect_empty "call-$boat-$card-stderr" "$(cat "$scratch/stderr")"
        cp "$scratch/stdout" "$scratch/script"
        card_words "$file"
        expect_empty "call-$boat-$card-phrases" "$(phrases_missing "$scratch/script")"
        if [ "$card" = distress_call ]; then
            maydeck call tests/fleet --boat "$boat"
            expect_empty "call-$boat-$card-whole" "$(whole_missing "$scratch/stdout")"
        elif two_forms "$card"; then
            doubled=$((doubled + 1))
        else
            expect_empty "call-$boat-$card-whole" "$(whole_missing "$scratch/script")"
            single=$((single + 1))
        fi
        [ "$(wc -l <"$scratch/script")" -ge 7 ] || not_ok "call-$boat-$card-length" "$(cat "$scratch/script")"
        compared=$((compared + 1))
    done
done
[ "$compared" -ge 11 ] || not_ok call-compared "only $compared cards"
[ "$doubled" -ge 3 ] && [ "$single" -ge 20 ] ||
    not_ok call-forms "$doubled cards with two forms, $single with one"
[ "$silent" -ge 3 ] || not_ok call-silent "only $silent cards without a call"

# The comparison can fail.
echo 'I AM ON HOLIDAY. I AM ON FIRE.' >"$scratch/script"
card_words "$scratch/cards/tamarisk-engine_fire.pdf"
if [ -n "$(phrases_missing "$scratch/script")" ] && [ -n "$(whole_missing "$scratch/script")" ]; then
    ok call-comparison-bites
else
    not_ok call-comparison-bites
fi

# General MAYDAY and the natures.
maydeck call tests/fleet --boat tamarisk
expect_status call-general 0
expect_equal call-general-text 'MAYDAY, MAYDAY, MAYDAY
THIS IS TAMARISK, TAMARISK, TAMARISK
CALL SIGN QUEBEC TANGO ALFA BRAVO TWO · MMSI 200 014 730
MAYDAY TAMARISK QUEBEC TANGO ALFA BRAVO TWO · 200 014 730
LAT ____ (latitude degrees) DEGREES ____ (latitude minutes) MINUTES NORTH
LONG ____ (longitude degrees) DEGREES ____ (longitude minutes) MINUTES EAST AT ____ (time UTC) UTC
PROBLEM ____ (nature)
I REQUIRE IMMEDIATE ASSISTANCE.
____ (persons) PERSONS ON BOARD. WHITE SAILING YACHT, 12.6 METRES. OVER' "$(cat "$scratch/stdout")"
maydeck call tests/fleet --boat tamarisk --card engine_fire
tr '\n' ' ' <"$scratch/stdout" | sed 's/I AM ON FIRE, ENGINE SPACE\. /I AM ON FIRE. /' >"$scratch/fire"
maydeck call tests/fleet --boat tamarisk --nature fire
expect_equal call-nature-as-card "$(cat "$scratch/fire")" "$(tr '\n' ' ' <"$scratch/stdout")"
maydeck call tests/fleet --boat tamarisk --nature collision
expect_equal call-nature-open-end 'I HAVE COLLIDED WITH ____ (what)' \
    "$(grep COLLIDED "$scratch/stdout")"

# The two forms of one card keep their labels.
maydeck call tests/fleet --boat tamarisk --card flooding
expect_equal call-labels 'FOUND, STEADY RISING' \
    "$(sed -n 's/^\([A-Z, ]*\): .*/\1/p' "$scratch/stdout" | sort -u | tr '\n' ' ' | sed 's/ $//')"

# first OPTION LINE: what is said first.
first() {
    maydeck call tests/fleet --boat tamarisk "--$1"
    expect_status "call-$1" 0
    expect_equal "call-$1-begins" "$2" "$(sed -n 1p "$scratch/stdout")"
}
first relay 'MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY'
expect_empty call-relay-not-ours "$(grep -i 'I AM\|I REQUIRE' "$scratch/stdout")"
expect_equal call-relay-called 'SKERRY SOUND COASTGUARD, SKERRY SOUND COASTGUARD, SKERRY SOUND COASTGUARD' \
    "$(sed -n 2p "$scratch/stdout")"
first downgrade 'MAYDAY'
expect_equal call-downgrade-says 'DANGER IS OVER ____ (what has ended)
I NO LONGER REQUIRE IMMEDIATE ASSISTANCE. OVER' "$(sed -n '/^DANGER/,$p' "$scratch/stdout")"
first cancel 'ALL STATIONS, ALL STATIONS, ALL STATIONS'
expect_equal call-cancel-says 'PLEASE CANCEL MY DISTRESS ALERT OF ____ (time UTC) UTC OVER' \
    "$(sed -n '$p' "$scratch/stdout")"
first cancel-beacon 'SKERRY SOUND COASTGUARD, SKERRY SOUND COASTGUARD, SKERRY SOUND COASTGUARD'
grep -q '^MY EPIRB IDENTITY NINE NINE ZERO EIGHT DELTA, ' "$scratch/stdout" || not_ok call-beacon-identity
first pan-pan 'PAN PAN, PAN PAN, PAN PAN'
expect_equal call-pan-pan-says 'PROBLEM ____ (problem)
I REQUIRE ____ (assistance)' "$(grep '^PROBLEM\|^I ' "$scratch/stdout")"
first securite 'SECURITE, SECURITE, SECURITE'
expect_equal call-securite-ends OUT "$(sed -n '$p' "$scratch/stdout")"
first receipt 'MAYDAY ____ (their name and call sign)'
expect_equal call-receipt-ends 'RECEIVED MAYDAY' "$(sed -n '$p' "$scratch/stdout")"
first spell 'NAME TAMARISK: TANGO ALFA MIKE ALFA ROMEO INDIA SIERRA KILO'
expect_equal call-spell-rest 'CALL SIGN QTAB2: QUEBEC TANGO ALFA BRAVO TWO
MMSI 200 014 730: TWO ZERO ZERO, ZERO ONE FOUR, SEVEN THREE ZERO' "$(sed -n 2,3p "$scratch/stdout")"
coded='MMSI-coded EPIRB, MMSI 200 014 730, country code 200'
expect_equal call-spell-beacon \
    "EPIRB E3 9908D 74A71 034D1: $coded (no country's), homing 121.5 MHz" \
    "$(sed 1,3d "$scratch/stdout")"
maydeck call tests/fleet --boat tamarisk --spell --itu-figures
expect_equal call-itu-figures 'BISSOTWO NADAZERO NADAZERO NADAZERO UNAONE KARTEFOUR SETTESEVEN TERRATHREE NADAZERO' \
    "$(sed -n '$p' "$scratch/stdout")"
maydeck call tests/fleet --boat tamarisk --spell
card_words "$scratch/cards/tamarisk-distress_call.pdf"
for line in 1 2 3; do
    grep -qF " $(sed -n "${line}s/.*: //p" "$scratch/stdout") " "$scratch/card.words" ||
        not_ok "call-spell-as-card-$line" "$(cat "$scratch/stdout")"
done

# Each script of the distress sheets, of each boat that has it: the same words in the same order.
scripts=0
for base in fleet islands unusual; do
    maydeck print "tests/$base" --card distress_call --date "$print_date" -o "$scratch/sheets-$base"
    for file in "$scratch/sheets-$base"/*-distress_call.pdf; do
        boat=$(basename "$file" -distress_call.pdf)
        pdftotext -raw "$file" - | grep -q '^NO RADIO ON BOARD' && continue
        card_words "$file"
        for option in '' --pan-pan --receipt --relay --downgrade --cancel --cancel-beacon; do
            maydeck call "tests/$base" --boat "$boat" $option
            [ "$status" = 2 ] && continue          # she can have sent no such alert
            expect_empty "call-$boat-sheet${option:--mayday}" "$(whole_missing "$scratch/stdout")"
            scripts=$((scripts + 1))
        done
    done
done
[ "$scripts" -ge 100 ] || not_ok call-scripts "only $scripts"

# A beacon whose identity is mistyped is left out.
cp -R tests/fleet "$scratch/beacon"
sed -i 's/hex_id: "9908D/hex_id: "99O8D/' "$scratch/beacon/boats/tamarisk.yaml"
maydeck call "$scratch/beacon" --boat tamarisk --spell
expect_status call-spell-mistyped 0
expect_empty call-spell-mistyped-left-out "$(grep EPIRB "$scratch/stdout")"

# A position stands where the blanks were, and below in its other forms.
placed() {
    name=$1 want=$2
    shift 2
    maydeck call tests/fleet --boat tamarisk "$@"
    expect_status "call-placed-$name" 0
    expect_equal "call-placed-$name-lines" "$want" "$(grep '^\(THEIR POSITION \)\{0,1\}LAT\|^LONG' "$scratch/stdout")"
}
lat='LAT 12 DEGREES 28.35 MINUTES' long='LONG 060 DEGREES 26.10 MINUTES'
time='AT ____ (time UTC) UTC'
placed mayday "$lat NORTH
$long EAST $time" --position '12 28.35 N 060 26.1 E'
expect_equal call-placed-forms "POSITION
  12.47250°N 060.43500°E
  12°28.350'N 060°26.100'E
  12°28'21.0\"N 060°26'06.0\"E
  SAY: ONE TWO DEGREES TWO EIGHT DECIMAL THREE FIVE MINUTES NORTH, ZERO SIX ZERO DEGREES TWO SIX \
DECIMAL ONE ZERO MINUTES EAST" "$(sed -n '/^POSITION/,$p' "$scratch/stdout")"
placed relay "THEIR POSITION $lat SOUTH
$long WEST $time" --relay --position '-12.4725, -60.435'
grep -qx 'POSITION OF THE VESSEL IN DISTRESS' "$scratch/stdout" || not_ok call-placed-whose "$(cat "$scratch/stdout")"
expect_equal call-placed-hemispheres 2 "$(grep -c 'Is the hemisphere right?' "$scratch/stdout")"
placed card "$lat NORTH
$long EAST $time" --card flooding --position "12°28'21\"N 060°26'06\"E"
placed nature "$lat NORTH
$long EAST $time" --nature fire --position 'N 12 28.35 E 060 26.1'
placed without 'LAT ____ (latitude degrees) DEGREES ____ (latitude minutes) MINUTES NORTH
LONG ____ (longitude degrees) DEGREES ____ (longitude minutes) MINUTES EAST'" $time" --bearing '266 T'

# The other scripts of the distress card are not this position's.
maydeck call tests/fleet --boat tamarisk --card distress_call --position '12 28.35 N 060 26.1 E'
expect_equal call-placed-once 1 "$(grep -c '28.35 MINUTES' "$scratch/stdout")"

# A time by the clock on board becomes UTC by the base's clock for that day; the card of the sheet
# says it in the same place.
timed() {
    name=$1 want=$2 base=$3
    shift 3
    maydeck call "$base" "$@"
    expect_status "call-timed-$name" 0
    expect_equal "call-timed-$name-line" "$want" "$(grep -o 'AT [0-9]* .*\|OF [0-9]* .*' "$scratch/stdout" | sed 1q)"
}
timed ahead 'AT 1030 UTC' tests/fleet --boat tamarisk --time 14:30
timed before-midnight 'AT 2215 UTC' tests/fleet --boat tamarisk --time 02:15
grep -q 'the day before' "$scratch/stdout" || not_ok call-timed-day "$(cat "$scratch/stdout")"
timed in-utc 'AT 1030 UTC' tests/fleet --boat tamarisk --pan-pan --time '10:30 UTC'
timed alert 'OF 1030 UTC OVER' tests/fleet --boat tamarisk --cancel --time 1430
timed winter 'AT 1530 UTC' tests/islands --boat thrift --time 14:30 --date 2026-11-20
timed summer 'AT 1430 UTC' tests/islands --boat thrift --time 14:30 --date 2027-05-01
sed '/^clocks:/,/offset/d' tests/fleet/base.yaml >"$scratch/no_clock.yaml"
cp -R tests/fleet "$scratch/no_clock"
mv "$scratch/no_clock.yaml" "$scratch/no_clock/base.yaml"
timed not-recorded 'AT 1430 LOCAL TIME' "$scratch/no_clock" --boat tamarisk --time 14:30
maydeck call "$scratch/no_clock" --boat tamarisk --time '10:30 UTC'
expect_status call-time-no-clock 1
maydeck call tests/islands --boat thrift --time 14:30 --date 2028-01-01
expect_status call-time-no-clock-then 1
grep -q "none of the base's clocks holds on that day" "$scratch/stderr" ||
    not_ok call-time-no-clock-then-why "$(cat "$scratch/stderr")"

# A bearing is turned round; one from a compass takes the base's variation.
cp -R tests/fleet "$scratch/west"
sed -i 's/variation: 4 E, variation_on: 2026-01-01/variation: 14 W/' "$scratch/west/base.yaml"
maydeck call "$scratch/west" --boat tamarisk --bearing '100 M'
expect_status call-bearing-magnetic 0
expect_equal call-bearing-magnetic-says 'BEARING
  the mark bears 086 TRUE (100 MAGNETIC, variation 14 W, date not recorded)
  direction FROM the mark: 266 TRUE (W)
  SAY: TWO SIX SIX DEGREES TRUE, ____ (miles) MILES FROM ____ (the mark)' \
    "$(sed -n '/^BEARING/,$p' "$scratch/stdout")"
maydeck call tests/fleet --boat tamarisk --bearing '100 M'
grep -q '104 TRUE (100 MAGNETIC, variation 4 E, 2026-01-01)' "$scratch/stdout" ||
    not_ok call-bearing-date "$(cat "$scratch/stdout")"
maydeck call "$scratch/west" --boat tamarisk --bearing '180 T'
expect_equal call-bearing-true '  the mark bears 180 TRUE
  direction FROM the mark: 000 TRUE (N)' "$(grep TRUE "$scratch/stdout" | sed 2q)"

# Without a variation a compass bearing cannot be said; a true one can.
sed -i 's/, variation: 14 W//' "$scratch/west/base.yaml"
maydeck call "$scratch/west" --boat tamarisk --bearing '100 M'
expect_status call-bearing-no-variation 1
expect_empty call-bearing-no-variation-silent "$(cat "$scratch/stdout")"
grep -q 'base.yaml:[0-9]*:[0-9]*: error: a magnetic bearing' "$scratch/stderr" ||
    not_ok call-bearing-no-variation-why "$(cat "$scratch/stderr")"
maydeck call "$scratch/west" --boat tamarisk --bearing '100 T'
expect_status call-bearing-true-without 0

# No vapour card tells anybody to say what only a DSC alert would explain.
maydeck call tests/islands --boat campion --card gas_leak
expect_status call-gas 0
expect_empty call-gas-no-mmsi "$(grep MMSI "$scratch/stdout")"

# Without a call sign nothing is left where it stood.
cp -R tests/fleet "$scratch/fleet"
record=$scratch/fleet/boats/tamarisk.yaml
sed -i 's/call_sign: .*/call_sign: none/' "$record"
for option in --spell --relay --cancel --downgrade --card=flooding --nature=mob --pan-pan --receipt \
    --securite --cancel-beacon; do
    maydeck call "$scratch/fleet" --boat tamarisk "$option"
    expect_status "call-none-$option" 0
    expect_empty "call-none-$option-slot" "$(grep -n 'CALL SIGN\|none\|NONE\|^·\|· *$\|  \| $' "$scratch/stdout")"
done

# A card that waits for a fact of gear does not keep the words from being said.
cp tests/fleet/boats/tamarisk.yaml "$record"
sed -i '/item: seacock/d' "$record"
maydeck check "$scratch/fleet" --boat tamarisk
expect_status call-held-check 1
maydeck call "$scratch/fleet" --boat tamarisk --card flooding
expect_status call-held 0

# A wrong identity does.
cp tests/fleet/boats/tamarisk.yaml "$record"
sed -i 's/mmsi: "200014730"/mmsi: "20001473"/' "$record"
for option in --spell --cancel --card=flooding; do
    maydeck call "$scratch/fleet" --boat tamarisk "$option"
    expect_status "call-wrong-$option" 1
    expect_empty "call-wrong-$option-silent" "$(cat "$scratch/stdout")"
    grep -q 'boats/tamarisk.yaml:[0-9]*:[0-9]*: error: ' "$scratch/stderr" ||
        not_ok "call-wrong-$option-why" "$(cat "$scratch/stderr")"
done

# refused NAME WORD OPTION...: status 2, nothing said, the word in the message.
refused() {
    name=$1 word=$2
    shift 2
    maydeck call tests/fleet "$@"
    expect_status "call-$name" 2
    expect_empty "call-$name-silent" "$(cat "$scratch/stdout")"
    grep -qF -e "$word" "$scratch/stderr" || not_ok "call-$name-says" "$(cat "$scratch/stderr")"
}
refused no-boat 'samphire, tamarisk'
refused nature-mistyped 'did you mean "flooding"?' --boat tamarisk --nature floding
refused nature-unknown 'natures of distress: fire,' --boat tamarisk --nature xyzzyxyzzy
refused card-unknown 'cards of this boat' --boat tamarisk --card nosuchcard
refused two 'exclude each other' --boat tamarisk --relay --spell
refused itu-figures-alone '--itu-figures says nothing without --spell' --boat tamarisk --itu-figures
refused two-with-card 'exclude each other' --boat tamarisk --card flooding --nature fire
refused position-minutes '60 minutes or more (character 4)' --boat tamarisk --position '12 60 N 60 1 E'
refused position-comma 'write decimals with a full stop' --boat tamarisk --position '12,5 60,1'
refused position-half 'latitude and longitude are needed' --boat tamarisk --position '12.5 N'
refused position-empty 'nothing is written' --boat tamarisk --position ''
refused bearing-range 'is no bearing' --boat tamarisk --bearing 361
refused bearing-no-letter 'does not say whether it is magnetic or true' --boat tamarisk \
    --bearing 100
refused bearing-letter 'with M if a compass' --boat tamarisk --bearing '100 magnetic'
refused bearing-and-position 'is no bearing' --boat tamarisk --position '12.5 N' --bearing x
refused cancel-voice '--cancel-beacon' --boat bramble --cancel
refused cancel-no-beacon 'no beacon is recorded' --boat bramble --cancel-beacon
refused two-forms 'exclude each other' --boat tamarisk --pan-pan --securite
refused time-wrong 'is no time' --boat tamarisk --time 25:00
refused time-noon 'is no time' --boat tamarisk --time noon
refused time-receipt '--time has no place in --receipt' --boat tamarisk --receipt --time 14:30
refused position-securite '--position has no place in --securite' --boat tamarisk --securite \
    --position '12.5, 60.1'
refused position-spell '--position has no place in --spell' --boat tamarisk --spell \
    --position '12.5, 60.1'
refused bearing-cancel '--bearing has no place in --cancel' --boat tamarisk --cancel --bearing '100 T'
exit $failures
