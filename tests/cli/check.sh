#!/bin/sh
# What `check` finds: the poor boat's deficiencies by name, one fault at a time in a good
# boat, many faults in one run, silences, charters, JSON against text and schema.
. tests/tap.sh

fleet=$scratch/fleet
cp -R tests/fleet "$fleet"

# check ARGUMENT...: checks the copied fleet on the day of the tests.
check() {
    maydeck check "$fleet" --date "$print_date" "$@"
}

# checks_list ARGUMENT...: "SEVERITY CHECK LINE" for each problem of the JSON, sorted.
checks_list() {
    check --json "$@"
    sed -n 's/^ *{"check": "\([a-z0-9_]*\)", "severity": "\([a-z]*\)".*"line": \([0-9a-z]*\),.*/\2 \1 \3/p' \
        "$scratch/stdout" | sort
}

# ---- the specimen fleet ----

check
expect_status check-fleet 1
expect_empty check-no-errors "$(grep ': error: ' "$scratch/problems")"
for boat in tamarisk samphire; do
    checks_list --boat $boat >"$scratch/whole"
    expect_status "check-$boat-status" 0
    expect_empty "check-$boat-whole" "$(grep -v '^note \|^silenced ' "$scratch/whole")"
done
checks_list --boat bramble >"$scratch/bramble"
expect_equal check-bramble 'alarm_unrecorded
alarm_unrecorded
alarm_unrecorded
bung_unrecorded
control_inside
dsc_missing
engine_space_unprotected
gear_date_unknown
handheld_out_of_reach
isolator_unrecorded
ladder_from_deck
pump_not_from_cockpit
raft_missing
seacock_stiff' "$(sed -n 's/^deficiency \([a-z_]*\) [0-9]*$/\1/p' "$scratch/bramble")"

# ---- one fault at a time ----

# fault CHECK SEVERITY SED: tamarisk so changed tells that check at the line changed
# (or at an entry that the change took something out of), with a remedy.
fault() {
    sed "$3" tests/fleet/boats/tamarisk.yaml >"$fleet/boats/tamarisk.yaml"
    if cmp -s tests/fleet/boats/tamarisk.yaml "$fleet/boats/tamarisk.yaml"; then
        not_ok "check-fault-$1" "no change: $3"
        return
    fi
    found=$(checks_list --boat tamarisk | grep "^$2 $1 ")
    if [ -z "$found" ]; then
        not_ok "check-fault-$1" "not told: $3" "$(checks_list --boat tamarisk)"
    elif grep "\"check\": \"$1\"" "$scratch/stdout" | grep -q '"remedy": null'; then
        not_ok "check-fault-$1" "no remedy"
    else
        ok "check-fault-$1"
    fi
}

epirb='/item: epirb,/s'
fault gear_expired deficiency '/item: flares,/s/expires: [0-9-]*/expires: 2026-10/'
fault gear_date_unknown deficiency '/item: flares,/s/, expires: [0-9-]*//'
fault gear_dates_order deficiency '/item: flares,/s/expires/serviced: 2024, made: 2025, expires/'
fault gear_date_to_come error '/item: flares,/s/expires/serviced: 2029, expires/'
fault raft_places_few deficiency 's/persons_max: 8/persons_max: 9/'
fault jackets_few deficiency 's/persons_max: 8/persons_max: 9/'
fault rating_without_system deficiency 's/rating: en 34B/rating: 34B/'
fault rating_unknown deficiency 's/rating: en 34B/rating: en B34/'
fault co2_in_cabins note '/tag: F4,/s/agent: powder/agent: co2/'
fault co2_share error '/tag: F4,/s/agent: powder, kg: 1/agent: co2, kg: 2/'
fault beacon_not_recorded deficiency "$epirb/, hex_id: \"[^\"]*\"//"
fault beacon_other_mmsi error 's/hex_id: "[^"]*"/hex_id: "19040 75080 FFBFF"/'
fault beacon_unreadable error 's/hex_id: "[^"]*"/hex_id: "9908D 74A71 034DO"/'
fault beacon_impossible error 's/hex_id: "[^"]*"/hex_id: 9DC8075940A04D1/'
fault beacon_device_identity error 's/hex_id: "[^"]*"/hex_id: F949D65028154D1/'
fault beacon_test error 's/hex_id: "[^"]*"/hex_id: 9DDC00000000000/'
fault beacon_wrong_kind error 's/hex_id: "[^"]*"/hex_id: 9DC64903E32DF71/'
fault beacon_copied deficiency 's/hex_id: "[^"]*"/hex_id: 2024F7252457804/'
fault beacon_doubtful deficiency 's/hex_id: "[^"]*"/hex_id: 9DC9D65028154DD/'
fault beacon_other_kind deficiency 's/hex_id: "[^"]*"/hex_id: 9A6F4048D0004B1/'
fault beacon_of_specimen deficiency 's/hex_id: "[^"]*"/hex_id: ADCD00800440401/'
fault beacon_made_fast deficiency "$epirb/lanyard: stowed/lanyard: made_fast/"
fault beacon_line_unrecorded note "$epirb/, lanyard: stowed//"
fault handheld_out_of_reach deficiency '/item: vhf_handheld,/s/from_cockpit: yes/from_cockpit: no/'
fault handheld_not_charged deficiency '/item: vhf_handheld,/s/charged: yes/charged: no/'
fault isolator_unrecorded deficiency '/item: battery_isolator_service,/s/, cuts: \[[a-z_, ]*\]//'
fault port_extinguisher_misfit deficiency '/item: engine_extinguisher,/s/fits_port: yes/fits_port: no/'
fault raft_line_unrecorded deficiency '/item: liferaft,/s/, painter: [a-z ]*//'
fault bung_misfit deficiency '/item: seacock,/s/bung_mm: 38/bung_mm: 19/'
fault openings_too_few deficiency 's/openings: 9/openings: 11/'
fault mmsi_not_programmed deficiency 's/mmsi_programmed: yes/mmsi_programmed: no/'
fault mmsi_length error 's/mmsi: "200014730"/mmsi: "20001473"/'
fault mmsi_form error 's/mmsi: "200014730"/mmsi: "002000147"/'
cp tests/fleet/boats/tamarisk.yaml "$fleet/boats/tamarisk.yaml"

# Dangers of the boat herself: told as errors, her cards are printed all the same.
sed -i '/tag: F4,/s/agent: powder, kg: 1/agent: co2, kg: 2/' "$fleet/boats/tamarisk.yaml"
maydeck print "$fleet" --boat tamarisk --date "$print_date" -o "$scratch/out"
expect_status check-danger-printed 1
[ -s "$scratch/out/tamarisk.pdf" ] || not_ok check-danger-pdf
cp tests/fleet/boats/tamarisk.yaml "$fleet/boats/tamarisk.yaml"

# One identity on two boats.
sed 's/^  name: .*/  name: Twin/' tests/fleet/boats/tamarisk.yaml >"$fleet/boats/twin.yaml"
expect_equal check-twins 'beacon_twice
beacon_twice
call_sign_twice
call_sign_twice
mmsi_twice
mmsi_twice' "$(checks_list | sed -n 's/^error \([a-z_]*\) .*/\1/p')"
rm "$fleet/boats/twin.yaml"

# ---- a charter, a crew ----

check --boat tamarisk --from 2027-02-27 --to 2027-04-03
expect_status check-charter 1
grep -q 'deficiency: .* runs out before the boat is back on 2027-04-03' "$scratch/problems" ||
    not_ok check-charter-during "$(cat "$scratch/problems")"
check --boat tamarisk --from 2031-05-01 --to 2031-05-08
grep -q 'deficiency: .* is out of date on 2031-05-01' "$scratch/problems" || not_ok check-charter-past
printf 'dates: {margin_days: 120}\n' >>"$fleet/base.yaml"
[ -n "$(checks_list --boat tamarisk --from 2026-12-01 --to 2026-12-08 | grep '^note gear_inside_margin ')" ] ||
    not_ok check-charter-margin "$(cat "$scratch/problems")"
cp tests/fleet/base.yaml "$fleet/base.yaml"
check --boat tamarisk --crew 80,75,70,65,60,55,50,45,40
grep -q '9 people for a boat that may carry 8' "$scratch/problems" || not_ok check-crew-many
sed -i '/item: lifejacket,/s/count: 8/count: 8, kg_low: 40/' "$fleet/boats/tamarisk.yaml"
check --boat tamarisk --crew 80,75,18
grep -q 'do not fit 1 of 3 people' "$scratch/problems" || not_ok check-crew-child "$(cat "$scratch/problems")"
cp tests/fleet/boats/tamarisk.yaml "$fleet/boats/tamarisk.yaml"

# ---- silences ----

# silenced NAME ENTRY: bramble with that entry under `silenced:`.
silenced() {
    cp tests/fleet/boats/bramble.yaml "$fleet/boats/bramble.yaml"
    printf 'silenced:\n  - %s\n' "$2" >>"$fleet/boats/bramble.yaml"
    checks_list --boat bramble >"$scratch/silenced"
}
silenced stiff '{check: seacock_stiff, reason: fitter ordered, until: 2027-01}'
grep -q '^silenced seacock_stiff ' "$scratch/silenced" || not_ok check-silenced
expect_equal check-silenced-rest 13 "$(grep -c '^deficiency ' "$scratch/silenced")"
silenced lapsed '{check: seacock_stiff, reason: fitter ordered, until: 2026-11-19}'
expect_equal check-silence-lapsed 15 "$(grep -c '^deficiency ' "$scratch/silenced")"
grep -q '^deficiency silence_lapsed ' "$scratch/silenced" || not_ok check-silence-lapsed-told
silenced charter '{check: seacock_stiff, reason: fitter ordered, until: 2026-12}'
grep -q '^silenced seacock_stiff ' "$scratch/silenced" || not_ok check-silence-before-charter
checks_list --boat bramble --from 2026-12-27 --to 2027-01-02 >"$scratch/silenced"
expect_equal check-silence-lapses-during 'deficiency seacock_stiff deficiency silence_lapsed' \
    "$(sed -n 's/^\([a-z]* seacock_stiff\|[a-z]* silence_[a-z]*\) .*/\1/p' "$scratch/silenced" | tr '\n' ' ' | sed 's/ $//')"
grep -q 'lapses on 2026-12, before the boat is back on 2027-01-02' "$scratch/stdout" ||
    not_ok check-silence-lapses-during-told
silenced unknown '{check: seacock_stif, reason: fitter ordered, until: 2027-01}'
grep -q '^error silence_unknown ' "$scratch/silenced" || not_ok check-silence-unknown
grep -q 'did you mean \\"seacock_stiff\\"' "$scratch/stdout" || not_ok check-silence-nearest
silenced error '{check: mmsi_length, reason: it is so, until: 2027-01}'
grep -q '^error silence_of_error ' "$scratch/silenced" || not_ok check-silence-error
silenced idle '{check: gear_locked, reason: known, until: 2027-01}'
grep -q '^note silence_idle ' "$scratch/silenced" || not_ok check-silence-idle
# without a reason or a date that can be, it silences nothing, and nothing else is told of it
for entry in '{check: seacock_stiff, until: 2027-01}' '{check: seacock_stiff, reason: "", until: 2027-01}' \
    '{check: seacock_stiff, reason: fitter ordered}' \
    '{check: seacock_stiff, reason: fitter ordered, until: 2027-02-30}'; do
    silenced half "$entry"
    expect_equal "check-silence-half-$entry" 'deficiency seacock_stiff error record' \
        "$(sed -n 's/^\(error [a-z_]*\|silenced [a-z_]*\|note silence_idle\|deficiency seacock_stiff\) .*/\1/p' \
            "$scratch/silenced" | tr '\n' ' ' | sed 's/ $//')"
done
silenced of-silences '{check: silence_lapsed, reason: it is so, until: 2099}'
grep -q '^error silence_of_error ' "$scratch/silenced" || not_ok check-silence-of-silences
cp tests/fleet/boats/bramble.yaml "$fleet/boats/bramble.yaml"

# ---- many faults in one run ----

sed -e 's/^  loa_m: .*/  loa_m: 126/' -e 's/^  beam_m: .*/  beam_m: 4,1/' \
    -e 's/^  persons_max: .*/  persons_max: none/' -e 's/call_sign: QTAB2/call_sign: QT B2/' \
    -e 's/mmsi: "200014730"/mmsi: 2.00015E+08/' -e 's/dsc: yes/dsc: true/' \
    -e 's/hold_s: 5/hold_s: 500/' -e '/tag: F1,/s/zone: navigation_station/zone: navigaton_station/' \
    -e '/tag: F2,/s/item: fire_port/item: fireport/' -e '/tag: F3,/s/agent: powder/agent: powdr/' \
    -e '/tag: F4,/s/tag: F4/tag: F3/' -e '/tag: F5,/s/tag: F5/tag: C5/' \
    -e '/tag: E1,/s/count: 8/count: 800/' -e '/tag: E2,/s/persons: 8/persons: eight/' \
    -e '/tag: E3,/s/hex_id: "[^"]*"/hex_id: 9DDC00000000000/' -e '/tag: E4,/s/charged: yes/charged: maybe/' \
    -e '/tag: E5,/s/expires: [0-9-]*/expires: 2027-13/' -e '/tag: E6,/s/litres: 20/litres: 20 l/' \
    -e '/tag: E7,/s/how:/hwo:/' -e '/tag: C1,/s/stop: [a-z]*/stop: electrical/' \
    -e '/tag: C8,/s/kind: handwheel/kind: wheel/' -e '/tag: C10,/s/stroke_l: 0.8/stroke_l: 80/' \
    -e '/item: seacock, tag: C11,/s/bore_mm: [0-9]*/bore_mm: 1.5/' \
    -e '/item: seacock, tag: C12,/s/side: [a-z]*/side: left/' \
    -e '/item: seacock, tag: C13,/s/tag: C13/tag: C1x/' \
    tests/fleet/boats/tamarisk.yaml >"$fleet/boats/tamarisk.yaml"
changed=$(diff tests/fleet/boats/tamarisk.yaml "$fleet/boats/tamarisk.yaml" | grep -c '^>')
expect_equal check-many-changed 25 "$changed"
check --boat tamarisk
expect_status check-many 1
diff tests/fleet/boats/tamarisk.yaml "$fleet/boats/tamarisk.yaml" |
    sed -n 's/^\([0-9,]*\)c.*/\1/p' | awk -F, '{ for (i = $1; i <= ($2 ? $2 : $1); i++) print i }' >"$scratch/lines"
sed -n 's,.*/tamarisk\.yaml:\([0-9]*\):[0-9]*: error: .*,\1,p' "$scratch/problems" >"$scratch/told"
expect_equal check-many-lines "$(cat "$scratch/lines")" "$(cat "$scratch/told")"
# nothing that only follows from them; of the pieces without a side, of the charger and of what awaits
# approval the whole record tells too
expect_empty check-many-alone "$(grep ': \(held\|deficiency\|note\): ' "$scratch/problems" |
    grep -v ': note: side is not recorded\|: note: vhf_handheld E4 stands in its charger: \|await the approval')"
expect_equal check-many-remedies 29 "$(grep -c '^  remedy: ' "$scratch/problems")"

# ---- JSON ----

# places: "SEVERITY FILE LINE COLUMN" of all that the last run told as text.
places() {
    sed -n 's/^\(.*\):\([0-9]*\):\([0-9]*\): \([a-z]*\): .*/\4 \1 \2 \3/p' "$scratch/problems"
}

# The same problems as the text, where each boat is told alone and in full.
same_as_text() {
    for boat in bramble samphire tamarisk; do
        check --boat $boat
        places
    done | sort -u >"$scratch/text"
    check --json
    expect_empty "$1-json-no-text" "$(cat "$scratch/stderr")"
    sed -n 's/^ *{"check": "[a-z0-9_]*", "severity": "\([a-z]*\)", "file": "\([^"]*\)", "line": \([0-9]*\), "column": \([0-9]*\),.*/\1 \2 \3 \4/p' \
        "$scratch/stdout" | sort -u >"$scratch/json-places"
    [ -s "$scratch/text" ] || not_ok "$1-some"
    expect_empty "$1-json-same" "$(diff "$scratch/text" "$scratch/json-places")"
    cp "$scratch/stdout" "$scratch/$1.json"
}
same_as_text check-faulty
cp -R tests/fleet/. "$fleet"
same_as_text check-sound

maydeck check --schema
expect_status check-schema 0
cp "$scratch/stdout" "$scratch/schema.json"
if python3 -c 'import jsonschema' 2>/dev/null; then
    for name in check-faulty check-sound; do
        python3 -c 'import json, sys, jsonschema
jsonschema.validate(json.load(open(sys.argv[1])), json.load(open(sys.argv[2])))' \
            "$scratch/$name.json" "$scratch/schema.json" >"$scratch/verdict" 2>&1 &&
            ok "$name-json-valid" || not_ok "$name-json-valid" "$(tail -n 5 "$scratch/verdict")"
        # the schema can refuse: another severity is none
        sed 's/"severity": "[a-z]*"/"severity": "mild"/' "$scratch/$name.json" >"$scratch/bad.json"
        python3 -c 'import json, sys, jsonschema
jsonschema.validate(json.load(open(sys.argv[1])), json.load(open(sys.argv[2])))' \
            "$scratch/bad.json" "$scratch/schema.json" >/dev/null 2>&1 &&
            not_ok "$name-json-refused" "the schema takes any severity" || ok "$name-json-refused"
    done
else
    ok 'check-json-valid # SKIP no Python module jsonschema'
fi
# Every object is open and has all its members; the checks are no closed list.
expect_empty check-schema-closed "$(grep 'additionalProperties": false' "$scratch/schema.json")"
expect_equal check-schema-open "$(grep -c '"type": "object"' "$scratch/schema.json")" \
    "$(grep -c '"additionalProperties": true' "$scratch/schema.json")"
maydeck check --list
expect_status check-list 0
expect_empty check-list-has-all "$(sed -n 's/^ *{"check": "\([a-z0-9_]*\)", .*/\1/p' "$scratch/check-faulty.json" |
    sort -u | while read -r id; do grep -q "^$id " "$scratch/stdout" || echo "$id"; done)"

# json SCRIPT: what Python prints of the last JSON, `boats` by their keys.
json() {
    python3 -c 'import json, sys
whole = json.load(open(sys.argv[1]))
boats = {boat["boat"]: boat for boat in whole["boats"]}
exec(sys.argv[2])' "$scratch/stdout" "$1"
}

# The codes are those of the cards, each card once; a card that is held has none.
for boat in samphire tamarisk; do
    maydeck why "$fleet" --boat $boat --all --date "$print_date"
    sed -n 's/^Card [0-9]*[A-Z]* (\([a-z_0-9]*\)), check code \([0-9A-Z-]*\).*/\1 \2/p' "$scratch/stdout" >"$scratch/codes"
    check --json
    expect_equal "check-json-codes-$boat" "$(cat "$scratch/codes")" \
        "$(json "for card in boats['$boat']['cards']['list']: print(card['card'], card['code'])")"
done
expect_equal check-json-pages True "$(json 'print(all(boat["cards"]["ready"] ==
    sum(card["pages"] for card in boat["cards"]["list"]) for boat in boats.values()))')"
expect_equal check-json-dates "$(sed -n 's/.*item: \([a-z_]*\), tag: \([A-Z0-9]*\),.* expires: \([0-9-]*\).*/\1 \2 \3/p' \
    "$fleet/boats/tamarisk.yaml")" "$(json 'for date in boats["tamarisk"]["dates"]:
    if date["from"] == "expires": print(date["item"], date["tag"], date["date"])')"
expect_equal check-json-first True "$(json 'print(all(boat["first_date"] in boat["dates"] and
    boat["first_date"]["date"] == min(date["date"] for date in boat["dates"] if date["date"])
    for boat in boats.values()))')"
expect_equal check-json-undated 'E4 None' "$(json 'for date in boats["bramble"]["dates"]:
    if not date["date"]: print(date["tag"], date["from"])')"
sed -i '/item: fuel_shutoff_diesel/d' "$fleet/boats/tamarisk.yaml"
check --json --boat tamarisk
expect_equal check-json-held 'engine_fire None
diesel_leak None
no_engine None' "$(json 'for card in boats["tamarisk"]["cards"]["list"]:
    if card["state"] == "held": print(card["card"], card["code"])')"
# Drafts are the cards that the text says are held, and those that go without gear.
check --boat tamarisk
missing=$(sed -n -e 's/ goe\{0,1\}s\{0,1\} without it$//' \
    -e 's/.*: \(held\|note\): [a-z_]* is not recorded: .*the cards\{0,1\} //p' "$scratch/problems" |
    sed 's/; /\
/g' | sort -nu)
[ "$(echo "$missing" | wc -l)" -gt 3 ] || not_ok check-json-draft-some "$missing"
check --json --draft --boat tamarisk
expect_equal check-json-draft "$missing" "$(json 'for card in boats["tamarisk"]["cards"]["list"]:
    if card["state"] == "draft": print(card["name"])')"
cp tests/fleet/boats/tamarisk.yaml "$fleet/boats/tamarisk.yaml"

# ---- wrong use ----

check --fail error
expect_status check-fail-error 0
for wrong in '--fail never' '--from 2027-05-08 --to 2027-05-01' '--from 2027-05-01' '--crew 80,x' \
    '--crew 0' '--crew 80,' '--from 2027-05 --to 2027-06-01'; do
    # shellcheck disable=SC2086
    check $wrong
    expect_status "check-wrong-$(echo "$wrong" | tr -d ' ,')" 2
done
exit $failures
