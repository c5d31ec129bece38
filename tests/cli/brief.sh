#!/bin/sh
# The skipper's sheet from outside: what page one and the exit status say of a charter, on a base
# of this test's own; what is wrong use; languages, papers, several boats, the same bytes twice.
. tests/tap.sh

base=$scratch/base
mkdir -p "$base/boats"
cat >"$base/base.yaml" <<'YAML'
base:
  name: Kelp Haven Boats (specimen)
  specimen: yes
  phone_24h: "+999 00 000 040"
rescue_centre:
  name: Kelp Haven
  channel: "10"
  phone: "+999 00 000 041"
  checked_on: 2026-11-01
cruising_area: {latitude: south, longitude: east, sea_area: A1}
clocks:
  - {offset: -3:30, from: 2027-01-01, to: 2027-06-10}
  - {offset: -2:30, from: 2027-06-11, to: 2027-12-31}
languages: [en]
approvals: []
lines:
  - {card: anchor_drags, say: "No anchor in the weed beds.", source: Harbour order 3 (specimen), does: []}
ashore: {fire_phone: "+999 44"}
YAML

# boat FILE RAFT JACKETS RADIO [SED]: a boat whose raft and lifejackets are so.
boat() {
    cat >"$base/boats/$1.yaml" <<YAML
boat:
  name: Whimbrel
  specimen: yes
  hull: monohull
  rig: sail
  loa_m: 9.8
  beam_m: 3.2
  draught_m: 1.6
  persons_max: 10
  rooms: [forward_cabin, saloon, galley]
engines:
  - {space: engine_space, fuel: diesel, drive: shaft}
gas: {carried: yes, locker_drains: overboard}
$4
equipment:
$2
$3
  - {item: flares, tag: E30, zone: cockpit, side: port, expires: 2029-01}
  - {item: vhf_handheld, tag: E31, zone: cockpit, side: port, spot: by the wheel, dsc: no, charged: yes, in_charger: no}
  - {item: grab_bag, tag: E32, zone: cockpit, side: port, spot: under the seat, expires: 2029-01}
  - {item: fire_extinguisher, tag: F1, zone: cockpit, side: port, agent: powder, kg: 2, service_due: 2029-01}
  - {item: engine_stop, tag: C1, zone: cockpit, side: starboard, how: pull, stop: mechanical}
not_fitted: [fire_port, epirb, personal_beacon]
YAML
}

radio='radio: {tag: E33, call_sign: QWHM4, mmsi: "200017310", mmsi_programmed: yes, dsc: yes, zone: saloon, side: port}'
raft='  - {item: liferaft, tag: E1, zone: coachroof, spot: under the boom, how: cut the strap, persons: 8, painter: mast, release: hook, service_due: 2027-06-15}'
jackets='  - {item: lifejacket, tag: E2, zone: cockpit_locker, side: port, count: 10, service_due: 2029-01}'

# brief ARGUMENT...: the sheet of the boat, and the words of its first page in $scratch/one.
brief() {
    rm -rf "$scratch/out"
    maydeck brief "$base" --date 2026-11-20 --boat whimbrel -o "$scratch/out" "$@"
    : >"$scratch/one"
    : >"$scratch/all"
    for file in "$scratch"/out/*.pdf; do
        [ -f "$file" ] || continue
        pdftotext -layout -l 1 "$file" - >>"$scratch/one"
        pdftotext -layout "$file" - >>"$scratch/all"
    done
}

# one NAME WORDS: page one says so. told NAME WORDS: standard error does.
one() { grep -qF -- "$2" "$scratch/one" && ok "$1" || not_ok "$1" "page one lacks: $2" "$(cat "$scratch/one" "$scratch/stderr")"; }
not_one() { ! grep -qF -- "$2" "$scratch/one" && ok "$1" || not_ok "$1" "page one has: $2" "$(cat "$scratch/one")"; }
all() { grep -qF -- "$2" "$scratch/all" && ok "$1" || not_ok "$1" "the sheet lacks: $2" "$(cat "$scratch/all")"; }
told() { grep -qF -- "$2" "$scratch/stderr" && ok "$1" || not_ok "$1" "not told: $2" "$(cat "$scratch/stderr")"; }

stays='DO NOT SAIL WITHOUT THE BASE'
held='Cards held back, not on board'

# ---- the raft ----

boat whimbrel "$raft" "$jackets" "$radio"
brief --from 2027-06-08 --to 2027-06-15 --people 8
expect_status brief-raft-lasts 1          # the boat's record is short: cards are held back
not_one brief-raft-lasts-page 'Raft, 8 persons'
not_one brief-raft-lasts-stays "$stays"
one brief-raft-lasts-cards "$held"

brief --from 2027-06-08 --to 2027-06-16 --people 8
expect_status brief-raft-ends 1
one brief-raft-ends-page 'Raft, 8 persons: good until 2027-06-15, before'
one brief-raft-ends-places 'Raft places good until 2027-06-16: 0. People aboard: 8.'
one brief-raft-ends-stays "$stays"
told brief-raft-ends-told "whimbrel.yaml:16:"
told brief-raft-ends-says 'deficiency: liferaft E1 runs out before hand-back: good to 2027-06-15'
told brief-raft-ends-word "do not sail without the base's word"

brief --from 2027-06-16 --to 2027-06-20 --people 2
expect_status brief-raft-past 1
one brief-raft-past-page 'Raft, 8 persons: date past, 2027-06-15.'

brief --from 2027-06-01 --to 2027-06-08 --people 9
expect_status brief-nine 1
one brief-nine-page 'Raft places: 8. People aboard: 9.'
one brief-nine-stays "$stays"
not_one brief-nine-jackets Lifejackets:
told brief-nine-told 'raft places: 8, people aboard: 9'

boat whimbrel "$(echo "$raft" | sed 's/, service_due: [0-9-]*//')" "$jackets" "$radio"
brief --from 2027-06-01 --to 2027-06-08 --people 4
expect_status brief-undated 1
one brief-undated-page 'Raft, 8 persons: date not recorded.'
one brief-undated-stays "$stays"

boat whimbrel '' "$jackets" "$radio"
brief --from 2027-06-01 --to 2027-06-08 --people 4
one brief-unrecorded-raft 'Raft not recorded: count it as none. People aboard: 4.'
sed -i 's/^not_fitted: \[/not_fitted: [liferaft, /' "$base/boats/whimbrel.yaml"
brief --from 2027-06-01 --to 2027-06-08 --people 4
one brief-no-raft 'No raft on board. People aboard: 4.'
expect_status brief-no-raft-status 1

# ---- lifejackets ----

sized='  - {item: lifejacket, tag: E2, zone: cockpit_locker, side: port, spot: bag, count: 3, kg_low: 50, wearer: adult, service_due: 2029-01}
  - {item: lifejacket, tag: E3, zone: cockpit_locker, side: port, spot: net, count: 1, kg_low: 15, kg_high: 30, wearer: child, service_due: 2029-01}'
boat whimbrel "$raft" "$sized" "$radio"
brief --from 2027-06-01 --to 2027-06-08 --people 4 --children 1 --masses 80,75,50,20
not_one brief-masses-fit "$stays"
brief --from 2027-06-01 --to 2027-06-08 --people 4 --masses 80,75,49,20
one brief-masses-unfit 'Lifejackets of a recorded size fit 3 of 4 people.'
one brief-masses-unfit-stays "$stays"
brief --from 2027-06-01 --to 2027-06-08 --people 4 --children 2
one brief-children 'Lifejackets for children: 1. Children aboard: 2.'
one brief-children-head '4 people aboard, 2 of them children.'
expect_equal brief-children-lines 2 "$(grep -c 'Child: name, age, kg, tag of the lifejacket' "$scratch/all")"
brief --from 2027-06-01 --to 2027-06-08 --people 5
one brief-few 'Lifejackets: 4. People aboard: 5.'

# ---- radio ----

boat whimbrel "$raft" "$jackets" 'radio: {call_sign: QWHM4}'
sed -i '/vhf_handheld/d; s/^not_fitted: \[/not_fitted: [vhf_dsc, vhf_handheld, /' "$base/boats/whimbrel.yaml"
brief --from 2027-06-01 --to 2027-06-08 --people 4
expect_status brief-no-radio 1
one brief-no-radio-page 'No radio on board.'
one brief-no-radio-stays "$stays"
sed -i 's/vhf_handheld, //' "$base/boats/whimbrel.yaml"
brief --from 2027-06-01 --to 2027-06-08 --people 4
one brief-radio-unrecorded 'No radio is recorded: count it as none.'

# ---- the rest of the sheet ----

boat whimbrel "$raft" "$jackets" "$radio"
brief --from 2027-06-08 --to 2027-06-15 --people 8 --since 2027-05-30
one brief-name 'WHIMBREL: WHISKEY HOTEL INDIA MIKE BRAVO ROMEO ECHO LIMA'
one brief-mmsi '200 017 310: TWO ZERO ZERO, ZERO ONE SEVEN, THREE ONE ZERO'
one brief-position 'MINUTES SOUTH'
one brief-role 'Counts people'
all brief-cable 'The engine stop is a cable.'
all brief-no-port 'No fire port. The engine hatch stays shut on a fire. Card 3.'
all brief-practice 'LAT 12 DEGREES 34.56 MINUTES SOUTH'
all brief-clock 'From 2027-06-08: 1430 by the clock aboard (UTC -3:30) is 1800 UTC.'
all brief-clock-changes 'From 2027-06-11: 1430 by the clock aboard (UTC -2:30) is 1700 UTC.'
all brief-rule 'No anchor in the weed beds. (Harbour order 3 (specimen))'
all brief-centre 'Rescue centre Kelp Haven: VHF 16, then VHF 10 if told, phone +999 00 000 041'
all brief-since 'Since 2027-05-30:'
all brief-signatures 'For the base:'
expect_equal brief-specimen "$(grep -c 'Sheet [0-9]' "$scratch/all")" \
    "$(grep -c 'SPECIMEN · NOT FOR USE .*SPECIMEN · NOT FOR USE' "$scratch/all")"

# ---- a boat in order ----

maydeck brief tests/fleet --boat tamarisk --from 2026-12-01 --to 2026-12-08 --people 8 \
    --date "$print_date" -o "$scratch/good"
expect_status brief-good 0
expect_empty brief-good-stderr "$(cat "$scratch/stderr")"
grep -q '/tamarisk-brief.pdf: [0-9]* pages$' "$scratch/stdout" && ok brief-good-told ||
    not_ok brief-good-told "$(cat "$scratch/stdout")"
pdftotext -l 1 "$scratch/good/tamarisk-brief.pdf" - | grep -q 'None by the record' &&
    ok brief-good-none || not_ok brief-good-none
maydeck brief tests/fleet --boat tamarisk --from 2026-12-01 --to 2026-12-08 --people 8 \
    --date "$print_date" -o "$scratch/again"
cmp -s "$scratch/good/tamarisk-brief.pdf" "$scratch/again/tamarisk-brief.pdf" &&
    ok brief-same-bytes || not_ok brief-same-bytes

# What else lies in the base's folder stops nobody.
cp -R tests/fleet "$scratch/stray"
cp "$scratch/stray/boats/tamarisk.yaml" "$scratch/stray/boats/tamarisk.yml"
maydeck brief "$scratch/stray" --boat tamarisk --from 2026-12-01 --to 2026-12-08 --people 8 \
    --date "$print_date" -o "$scratch/stray_out"
expect_status brief-stray 0
told brief-stray-told tamarisk.yml

# All boats of a base, on another paper; a boat whose file is wrong has no sheet and stops no other.
cp -R tests/fleet "$scratch/fleet"
sed -i 's/^  mmsi: "200014730"/  mmsi: "20001473"/' "$scratch/fleet/boats/tamarisk.yaml"
maydeck brief "$scratch/fleet" --from 2026-12-01 --to 2026-12-08 --people 4 --paper letter \
    --date "$print_date" -o "$scratch/letter"
expect_status brief-letter 1
expect_equal brief-letter-files 'bramble-brief.letter.pdf
samphire-brief.letter.pdf' "$(folder_list "$scratch/letter")"
told brief-letter-error "tamarisk.yaml:"

# ---- wrong use: all of it told, nothing written ----

# refused NAME WORDS ARGUMENT...
refused() {
    name=$1 words=$2
    shift 2
    brief "$@"
    expect_status "$name" 2
    told "$name-told" "$words"
    [ ! -e "$scratch/out" ] && ok "$name-nothing" || not_ok "$name-nothing" "$(ls "$scratch/out")"
}
days='--from 2027-06-01 --to 2027-06-08'
# shellcheck disable=SC2086
{
refused brief-no-people 'brief needs --people' $days
refused brief-nobody '--people does not take "0"' $days --people 0
refused brief-half '--people does not take "2.5"' $days --people 2.5
refused brief-minus '--people does not take "-3"' $days --people=-3
refused brief-many '--people does not take "61"' $days --people 61
refused brief-children-many '5 children of 4 people' $days --people 4 --children 5
refused brief-children-word '--children does not take "two"' $days --people 4 --children two
refused brief-masses-count '--masses has 2 body masses for 4 people' $days --people 4 --masses 80,75
refused brief-masses-word '--masses does not take "80;75"' $days --people 2 --masses '80;75'
refused brief-narrow '--paper a5 is too narrow for a sheet to write upon' $days --people 2 --paper a5
refused brief-since-late '--since lies after --from' $days --people 2 --since 2027-06-02
}
refused brief-no-days 'brief needs --from and --to' --boat whimbrel
told brief-no-days-people 'brief needs --people'
refused brief-reversed '--to lies before --from' --from 2027-06-08 --to 2027-06-01 --people 4
refused brief-half-days '--from says nothing without --to' --from 2027-06-08 --people 4
refused brief-no-boat 'there is no boat' --boat dunlin --from 2027-06-01 --to 2027-06-08 --people 4

# ---- a made-up language: no word of the sheet is made outside the words of its language ----

tool=$scratch/tool
mkdir -p "$tool/out" "$scratch/strange/boats"
cp -R procedures "$tool/"
cp -R out/fonts "$tool/out/"
cp "$MAYDECK" "$tool/out/maydeck"
chmod -R u+w "$tool"
mkdir "$tool/procedures/words/qps"
for file in procedures/words/en/*.yaml; do
    awk -v language=qps -f tests/pseudo.awk "$file" >"$tool/procedures/words/qps/${file##*/}"
done
seal "$tool/procedures"
for file in base.yaml boats/tamarisk.yaml boats/bramble.yaml; do
    awk -v language=qps -v record=1 -f tests/pseudo.awk "tests/fleet/$file" |
        sed -e 's/^languages: .*/languages: [qps, en]/' -e '/^  call: /d' >"$scratch/strange/$file"
done
# shellcheck disable=SC2086
$WRAP "$tool/out/maydeck" brief "$scratch/strange" $days --people 9 --children 2 --dump \
    --date "$print_date" --since 2026-01-01 -o "$scratch/pages" >"$scratch/stdout" 2>"$scratch/stderr"
expect_equal brief-strange-status 1 $?
# What has only plain letters and is said in no language: tags, names of the base, sources.
awk -v letters='[A-Za-z]' '
    FNR == NR { known = known "|" $0; next }
    /^text / && !/ role=(script|boat) / {
        text = $0
        sub(/^[^"]* "/, "", text)
        sub(/"$/, "", text)
        if (text ~ letters && text !~ /[^ -~]/ && text !~ /^[FEC][0-9]+$/ &&
            index(known, text) == 0 && text !~ /^\([A-Z0-9][A-Za-z0-9 .\/;]*\)$/)
            print FILENAME ": " text
    }' - "$scratch/pages"/*.dump >"$scratch/strangers" <<'NAMES'
Skerry Sound Marina, pontoon C
Inner Skerry Pool (specimen), 12 34.20 N 060 20.10 E
Thornback Quay (specimen), 12 25.90 N 060 08.70 E
NAMES
expect_empty brief-strange-words "$(cat "$scratch/strangers")"
expect_equal brief-strange-pages yes "$([ "$(ls "$scratch/pages" | wc -l)" -gt 10 ] && echo yes)"

# Two languages at once are two files.
"$tool/out/maydeck" brief "$scratch/strange" $days --boat tamarisk --people 6 --lang qps,en \
    --date "$print_date" -o "$scratch/two" >"$scratch/stdout" 2>"$scratch/stderr"
expect_equal brief-two-languages 'tamarisk-brief.en.pdf
tamarisk-brief.pdf' "$(folder_list "$scratch/two")"

exit $failures
