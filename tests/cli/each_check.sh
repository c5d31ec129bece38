#!/bin/sh
# Every check of `check --list` can speak: for each id a record changed in one respect
# tells it, where the unchanged record does not, with the severity that the list gives
# and a remedy. An id without a row here fails at the end: it is dead, or not tried.
. tests/tap.sh

good=$scratch/good
bad=$scratch/bad
mkdir -p "$good" "$bad"

# The boats: two specimens with full gear, a small one whose record is whole, and the
# same as a real boat of Croatia with her own beacon.
boat_lay() {
    mkdir -p "$good/$1/boats"
    cp tests/fleet/base.yaml "$good/$1/base.yaml"
    cat >"$good/$1/boats/$1.yaml"
}
boat_lay tamarisk <tests/fleet/boats/tamarisk.yaml
boat_lay samphire <tests/fleet/boats/samphire.yaml
boat_lay alder <tests/errors/base/boats/alder.yaml
sed -e 's/name: Alder, specimen: yes,/name: Alder, flag: HR,/' -e 's/call_sign: QALD3/call_sign: "9A2345"/' \
    -e 's/mmsi: "200014810"/mmsi: "238014810"/' -e 's/"990D0 /"9DCD0 /' tests/errors/base/boats/alder.yaml | boat_lay birch

maydeck check --list
expect_status each-list 0
sed -n 's/^\([a-z0-9_]*\)  *\([a-z]*\) .*/\1 \2/p' "$scratch/stdout" >"$scratch/list"

# told BASE [ARGUMENT...]: "CHECK SEVERITY" of all that check finds there; one card is
# composed, unless --all stands first.
told() {
    base=$1
    shift
    cards='--card abandon_ship'
    if [ "${1-}" = --all ]; then
        cards=
        shift
    fi
    # shellcheck disable=SC2086
    maydeck check "$base" --date "$print_date" --json $cards "$@"
    sed -n 's/^ *{"check": "\([a-z0-9_]*\)", "severity": "\([a-z]*\)".*/\1 \2/p' "$scratch/stdout" | sort -u
}

# told_before BOAT ARGUMENT...: the same of the unchanged record, asked once.
told_before() {
    kept="$scratch/before-$(echo "$*" | tr -c 'a-z0-9\n' _)"
    [ -f "$kept" ] || told "$good/$1" $2 $3 $4 $5 $6 >"$kept"
    cat "$kept"
}

# severity_of CHECK: as the list has it. Of a family it has the worst: what stops a run
# is told as an error where it was the user's.
severity_of() {
    case $1 in
    program) echo error ;;
    *) sed -n "s/^$1 //p" "$scratch/list" ;;
    esac
}

# provokes CHECK TEST FOUND: what was told holds it, as the list has it, with a remedy.
provokes() {
    severity=$(severity_of "$1")
    echo "$1" >>"$scratch/tried"
    if ! echo "$3" | grep -qx "$1 $severity"; then
        not_ok "$2" "not told as $severity" "$3" "$(cat "$scratch/stderr")"
    elif grep "\"check\": \"$1\"" "$scratch/stdout" | grep "\"severity\": \"$severity\"" |
        grep -q '"remedy": null'; then
        not_ok "$2" "no remedy"
    else
        ok "$2"
    fi
}

# change BOAT SCRIPT: her base in $bad, that script run over both its files.
change() {
    rm -rf "$bad"
    cp -R "$good/$1" "$bad"
    sed "$2" "$good/$1/base.yaml" >"$bad/base.yaml"
    sed "$2" "$good/$1/boats/$1.yaml" >"$bad/boats/$1.yaml"
}

# fault CHECK BOAT SCRIPT [ARGUMENT...]
fault() {
    check=$1
    boat=$2
    change "$boat" "$3"
    shift 3
    name="each-$check"
    if diff -r "$good/$boat" "$bad" >/dev/null; then
        not_ok "$name" "nothing changed"
    elif told_before "$boat" "$@" | grep -qx "$check $(severity_of "$check")"; then
        not_ok "$name" "told of the unchanged record too"
    else
        provokes "$check" "$name" "$(told "$bad" "$@")"
    fi
}

# without ITEM...: a script that takes these pieces out and declares them not fitted.
without() {
    for item in "$@"; do
        printf '/item: %s,/d\ns/^not_fitted: \[/&%s, /\n/^not_fitted:$/a\  - %s\n' "$item" "$item" "$item"
    done
}

# with_beacon HEX: a script that gives the boat's EPIRB that identity.
with_beacon() {
    echo "/item: epirb,/s/hex_id: \"[^\"]*\"/hex_id: \"$1\"/"
}

# ---- what the stages before and after the checks say ----

fault base alder 's/channel: "67"/channel: "70"/'
fault today_behind alder 's/checked_on: .*/checked_on: 2027-06-01/'
fault record alder 's/loa_m: 10.2/loa_m: wide/'
fault cards alder '/item: fuel_shutoff_diesel,/s/, inside: \[\]//' --all
fault leads_into_hazard alder '/^radio:/,/zone:/s/zone: navigation_station/zone: engine_space/' --all
long=$(printf 'behind the third panel from the left %.0s' 1 2 3 4 5 6)
fault page alder "/item: fuel_shutoff_diesel,/s/side: port,/&  spot: $long,/" --all
fault figure_unrecorded alder 's/lwl_m: 8.6, //' --all
change alder 's/bilge_to_sole_l: 300,//'
expect_empty each-figure_without_room-before "$(told "$bad" --all | grep '^figure_without_room ')"
provokes figure_without_room each-figure_without_room "$(told tests/fleet --all --boat samphire)"
provokes on_no_card each-on_no_card "$(told "$good/alder" --all)"
expect_empty each-hint_without_room-before "$(told tests/islands --all --boat thrift | grep '^hint_without_room ')"
# A boat of long words, whose set is worked in many steps and does not know the position.
rm -rf "$bad"
cp -R tests/islands "$bad"
sed -e 's/name: Thrift$/name: Wonderful Thrift of Far Islands/' \
    -e 's/looks: .*/looks: white motor yacht with grey top, two masts, red funnel and yellow boot top/' \
    -e 's/nature_steps: .*/nature_steps: [press the DISTRESS MENU key on the left, turn the big knob to the nature of distress, press the knob once, wait for the screen to show it]\
  manual_position_steps: [press the MENU key on the left, turn the big knob to POSITION, press the knob once, enter latitude and longitude, press ENTER]/' \
    -e 's/gnss: yes/gnss: no/' \
    tests/islands/boats/thrift.yaml >"$bad/boats/thrift.yaml"
provokes hint_without_room each-hint_without_room "$(told "$bad" --all --boat thrift)"
# A base with a register, and a piece that fell out of the file since the last print.
rm -rf "$bad"
cp -R "$good/tamarisk" "$bad"
maydeck start "$bad" --register
maydeck print "$bad" --date "$print_date" --card flooding --quiet -o "$scratch/out"
expect_empty each-lost_since_print-before "$(told "$bad" | grep '^lost_since_print ')"
sed -i '/tag: F3,/d' "$bad/boats/tamarisk.yaml"
provokes lost_since_print each-lost_since_print "$(told "$bad")"
# A run that is refused has no document: it is told on standard error alone.
maydeck check "$scratch/none" --date "$print_date" --json
echo run >>"$scratch/tried"
expect_equal each-run 'maydeck: error: 1, remedy: 1, document: 0' \
    "maydeck: error: $(grep -c '^maydeck: error: ' "$scratch/stderr"), remedy: $(
        grep -c '^  remedy: ' "$scratch/stderr"), document: $(grep -c . "$scratch/stdout")"

# The program's own procedures, with a caution that stands on nothing.
mkdir -p "$scratch/tool/out"
cp -R procedures "$scratch/tool/"
cp -R out/fonts "$scratch/tool/out/"
cp "$MAYDECK" "$scratch/tool/out/maydeck"
printf 'procedure: lock_gate\n' >"$scratch/tool/procedures/lock_gate.yaml"
seal "$scratch/tool/procedures"
own=$MAYDECK
MAYDECK=$scratch/tool/out/maydeck
provokes program each-program "$(told "$good/alder")"
MAYDECK=$own

# ---- the base ----

maydeck list cards
cp "$scratch/stdout" "$scratch/cards"
# One base whose approvals are whole.
boat_lay cedar <tests/errors/base/boats/alder.yaml
signed='initials: AB, qualification: instructor, date: 2025-05-01, until: 2027-05-01'
sed '1d; s/^[0-9]* *\([a-z_]*\) .* \([0-9A-F-]\{19\}\) .*/\1 \2/' "$scratch/cards" |
    while read -r card text; do
        echo "  - {card: $card, text: $text, $signed}"
    done >"$scratch/approvals"
sed -i "s/^approvals: .*/approvals:/; /^approvals:/r $scratch/approvals" "$good/cedar/base.yaml"
approval="{card: engine_fire, text: $(fingerprint_of engine_fire), initials: AB, qualification: fire officer, date: 2025-05-01, until:"
rm -rf "$bad"
cp -R "$good/alder" "$bad"
mkdir -p "$bad/procedures/words/en"
cp procedures/lightning.yaml "$bad/procedures/"
cp procedures/words/en/lightning.yaml "$bad/procedures/words/en/"
expect_empty each-procedures_of_base-before "$(told_before alder | grep '^procedures_of_base ')"
provokes procedures_of_base each-procedures_of_base "$(told "$bad")"
fault approval_awaited cedar '/card: flooding/d'
fault approval_without_text cedar '/card: flooding/s/text: [^,]*, //'
fault approval_text_changed cedar '/card: flooding/s/text: [^,]*,/text: 0123-4567-89AB-CDEF,/'
fault approval_lapsed alder "s/^approvals: .*/approvals: [$approval 2026-05-01}]/"
fault approval_lapses_during alder "s/^approvals: .*/approvals: [$approval 2026-12-01}]/" \
    --from 2026-11-28 --to 2026-12-05
fault interval_unused alder '/^approvals:/i\intervals: [{item: liferaft, months: 12}]'
fault interval_twice alder '/^approvals:/i\intervals: [{item: torch, months: 12}, {item: torch, months: 6}]'
fault centre_unchecked alder '/checked_on:/d'
fault centre_check_old alder 's/checked_on: .*/checked_on: 2025-11-19/'
fault centre_contact_unrecorded alder '/^  call:/d'
fault centre_phone_short birch '/^  specimen: yes/d; s/"+999 00 000 000"/"+44 20 7946 0000"/; s/"+999 00 000 001"/"112"/'
fault berth_unnamed alder '/^ashore:/s/, marina.*}/}/'
fault clock_unrecorded alder '/^clocks:/,/offset/d'
fault clock_lapsed alder 's/{offset: +4}/{offset: +4, from: 2026-03-29, to: 2026-10-24}/'
fault sea_area_unrecorded alder 's/ sea_area: A1,//'

# ---- dates ----

fault gear_expired tamarisk '/item: flares,/s/expires: [0-9-]*/expires: 2026-10/'
fault gear_expires_during tamarisk '/item: flares,/s/expires: [0-9-]*/expires: 2026-11-30/' \
    --from 2026-11-28 --to 2026-12-05
fault gear_inside_margin tamarisk '/^approvals:/i\dates: {margin_days: 120}' --from 2026-12-01 --to 2026-12-08
fault gear_date_unknown tamarisk '/item: flares,/s/, expires: [0-9-]*//'
fault gear_dates_order tamarisk '/item: flares,/s/expires/serviced: 2024, made: 2025, expires/'
fault gear_date_to_come tamarisk '/item: flares,/s/expires/serviced: 2029, expires/'
fault gear_stamp_too_far tamarisk '/item: epirb,/s/expires: [0-9-]*/expires: 2199/'

# ---- capacities ----

fault persons_too_many alder 's/persons_max: 6/persons_max: 2/' --crew 80,75,70
fault raft_places_few tamarisk 's/persons_max: 8/persons_max: 9/'
fault raft_places_without_one tamarisk '/item: liferaft,/{s/persons: 8/persons: 4/;p;s/tag: E2,/tag: E92,/;}'
fault jackets_few tamarisk 's/persons_max: 8/persons_max: 9/'
fault jackets_unfit alder 's/kg_low: 40/kg_low: 90/' --crew 80,75
fault jackets_unsized alder 's/, kg_low: 40//'
fault rating_without_system tamarisk 's/rating: en 34B/rating: 34B/'
fault rating_unknown tamarisk 's/rating: en 34B/rating: en B34/'
fault co2_in_cabins tamarisk '/tag: F4,/s/agent: powder/agent: co2/'
fault co2_share_unknown tamarisk '/tag: F4,/s/agent: powder/agent: co2/; /cabin_m3:/d'
fault co2_share tamarisk '/tag: F4,/s/agent: powder, kg: 1/agent: co2, kg: 2/'

# ---- beacons ----

fault beacon_not_recorded alder '/item: epirb,/s/, hex_id: "[^"]*"//'
fault beacon_unreadable birch "$(with_beacon '9DC9D65O28154D1')"
fault beacon_impossible birch "$(with_beacon 9DC8075940A04D1)"
fault beacon_doubtful birch "$(with_beacon 9DC9D65028154DD)"
fault beacon_copied birch "$(with_beacon 2024F7252457804)"
fault beacon_other_kind birch "$(with_beacon 9A6F4048D0004B1)"
fault beacon_country_unknown birch "$(with_beacon '9B2D0 00134 00001')"
fault beacon_of_specimen alder "$(with_beacon '9DCD0 00134 00001')"
fault beacon_other_call_sign birch "$(with_beacon 9DC83E1D65028D1)"
fault beacon_other_country birch "$(with_beacon '9DAD0 00134 00001')"
fault beacon_device_identity birch "$(with_beacon F949D65028154D1)"
fault beacon_test birch "$(with_beacon 9DDC00000000000)"
fault beacon_wrong_kind birch "$(with_beacon 9DC64903E32DF71)"
fault beacon_other_mmsi birch "$(with_beacon 9DC9D65028154D1)"

# ---- the fleet: a second boat with the first one's identities ----

rm -rf "$bad"
cp -R "$good/birch" "$bad"
sed 's/name: Alder/name: Birch/' "$good/birch/boats/birch.yaml" >"$bad/boats/twin.yaml"
twins=$(told "$bad")
for check in mmsi_twice call_sign_twice beacon_twice; do
    provokes $check "each-$check" "$twins"
done

# ---- one boat's record against itself ----

fault isolator_unrecorded tamarisk '/item: battery_isolator_service,/s/, cuts: \[[a-z_, ]*\]//'
fault isolator_cuts_radio alder '/item: battery_isolator_engine,/s/cuts: \[\]/cuts: [vhf_dsc]/'
fault isolator_cuts_pumps alder '/item: battery_isolator_engine,/s/cuts: \[\]/cuts: [bilge_pump_electric]/'
fault isolator_leaves_no_radio tamarisk '/item: vhf_handheld,/s/from_cockpit: yes/from_cockpit: no/'
fault pump_over_label tamarisk 's/rated_lph: 12000/rated_lph: 12000, measured_lpm: 200.1/'
fault isolator_leaves_no_pump tamarisk "$(without bilge_pump_manual)"
fault control_inside tamarisk '/tag: C4,/s/inside: \[cockpit_locker\]/inside: [engine_space]/'
fault gas_denied alder 's/{carried: yes/{carried: no/'
fault gas_drain_unrecorded alder 's/, locker_drains: overboard//'
fault gas_drain_inboard alder 's/locker_drains: overboard/locker_drains: inboard/'
fault engine_denied samphire '/drive: generator/d'
fault engine_lost samphire '/space: engine_space_starboard, fuel/d'
fault rooms_unrecorded alder 's/, rooms: .*}$/}/'
fault engines_unrecorded alder '/^engines:/d'
fault engine_fact_unrecorded alder '/^engines:/s/, drive: shaft//'
fault gas_unrecorded alder "$(without lpg_bottle_valve)
/^gas:/d"
fault locker_shared alder '/item: lifejacket,/s/zone: cockpit_locker, side: port,/zone: gas_locker,/'
fault locker_shared alder '/item: lifejacket,/s/zone: cockpit_locker, side: port,/zone: gas_locker, side: starboard,/'
fault reach_unrecorded alder '/item: epirb,/s/from_cockpit: yes, //'
fault pump_feed_unrecorded samphire '/item: bilge_pump_electric,/s/, fed_by: battery//'
fault gas_valve_below alder '/item: lpg_bottle_valve,/s/zone: gas_locker/zone: saloon/'
fault gear_locked alder '/item: lpg_bottle_valve,/s/kind/locked: yes, kind/'
fault pump_not_from_cockpit alder '/item: bilge_pump_manual,/s/from_cockpit: yes/from_cockpit: no/'
fault engine_space_unprotected alder "$(without fire_port engine_extinguisher)"
fault port_extinguisher_misfit alder 's/fits_port: yes/fits_port: no/'
fault port_fit_unrecorded alder '/item: engine_extinguisher,/{p;s/tag: F1,/tag: F91,/;s/by the door/by the table/;s/fits_port: yes, //;}'
fault port_without_extinguisher alder "$(without engine_extinguisher)"
fault extinguisher_without_port alder "$(without fire_port)"
fault gas_switch_fails_open samphire 's/fails_shut: yes/fails_shut: no/'
fault gas_switch_unrecorded samphire 's/, fails_shut: yes//'
fault gas_valve_kind_unrecorded alder 's/, kind: handwheel//'
fault lithium_vent_unrecorded samphire '/item: lithium_bank,/s/zone: bridgedeck/zone: port_hull/; s/, vents_to: deck//'
fault alarm_missing alder "$(without gas_alarm)"
fault alarm_unrecorded alder '/item: smoke_alarm,/d'
fault lifting_gear_missing alder "$(without recovery_tackle)"
fault ladder_missing alder "$(without boarding_ladder)"
fault raft_missing alder "$(without liferaft)"
fault ladder_from_deck tamarisk '/item: boarding_ladder,/s/from_water: yes/from_water: no/'
fault gear_untried tamarisk '/item: recovery_tackle,/s/, tried: [0-9-]*//'
fault cutters_too_small tamarisk '/item: bolt_cutters,/s/cuts_mm: 12/cuts_mm: 6/'
fault chain_end_loose tamarisk '/item: anchor_main,/s/chain_end: cord/chain_end: loose/'
fault chain_end_fixed tamarisk '/item: anchor_main,/s/chain_end: cord/chain_end: shackle/'
fault chain_end_unrecorded tamarisk '/item: anchor_main,/s/, chain_end: cord//'
fault raft_line_unrecorded alder 's/painter: chainplate, //'
fault raft_persons_unrecorded alder '/item: liferaft,/s/persons: 6, //'
fault beacon_missing alder "$(without epirb)"
fault beacon_missing_beyond_a1 alder "$(without epirb)
s/sea_area: A1/sea_area: A2/"
fault beacon_made_fast alder '/item: epirb,/s/lanyard: stowed/lanyard: made_fast/'
fault beacon_line_unrecorded alder '/item: epirb,/s/lanyard: stowed, //'
fault inverted_out_of_reach samphire '/item: grab_bag,/s/reach_inverted: yes/reach_inverted: no/'
fault inverted_unrecorded samphire '/item: knife,/s/, reach_inverted: yes//'
fault identity_twice alder '/item: epirb,/{p;s/tag: E4,/tag: E94,/;s/zone: companionway/zone: saloon/;}'
fault identity_of_several alder '/item: epirb,/s/hex_id/count: 2, hex_id/'
fault serial_twice alder '/item: liferaft,/{s/persons/serial: R 100, persons/;p;s/tag: E3,/tag: E93,/;}'

# ---- openings ----

fault bung_unrecorded alder '/tag: C7,/s/bung_mm: 25, //'
fault opening_without_stop alder '/tag: C7,/s/bung_mm: 25,/valve: no,/'
fault bung_misfit alder '/tag: C7,/s/bung_mm: 25/bung_mm: 19/'
fault opening_unmeasured alder '/tag: C7,/s/depth_m: 0.2, //'
fault seacock_stiff alder '/tag: C7,/s/how: {shut: across}/how: {shut: across}, works: stiff/'
fault openings_too_few alder 's/openings: 2/openings: 3/'
fault openings_too_many alder 's/openings: 2/openings: 1/'
fault openings_uncounted alder 's/, openings: 2//'
fault opening_expected alder '/tag: C7,/d'

# ---- radio ----

fault dsc_missing alder 's/^  dsc: yes/  dsc: no/'
fault dsc_unrecorded alder '/^  dsc: yes/d'
fault dsc_without_position alder 's/^  gnss: yes/  gnss: no/'
fault dsc_position_unrecorded alder '/^  gnss: yes/d'
fault dsc_key_unrecorded alder '/^  hold_s:/d'
fault radio_switch_unrecorded alder '/^  power_switch:/d'
fault spare_aerial_missing tamarisk '/^  emergency_aerial:/d'
fault handheld_out_of_reach alder '/item: vhf_handheld,/s/from_cockpit: yes/from_cockpit: no/'
fault handheld_not_charged alder 's/charged: yes/charged: no/'
fault handheld_charge_unrecorded alder 's/, charged: yes//'
fault handheld_in_charger alder 's/in_charger: no/in_charger: yes/'
fault handheld_charger_unrecorded alder 's/, in_charger: no//'
fault handheld_mmsi_unrecorded alder '/item: vhf_handheld,/s/charged/dsc: yes, charged/'
fault position_tag_unknown alder 's/^  position_read_at:.*/  position_read_at: C99/'

# ---- what cards print where it is recorded; tags ----

fault side_unrecorded alder '/tag: E3,/s/, side: centre//'
fault side_beside_sided alder '/tag: F3,/s/, side: centre//'
fault reach_against_place alder '/item: lifejacket,/s/zone: cockpit_locker, side: port/zone: forward_cabin/'
fault cockpit_out_of_reach alder '/item: bilge_pump_manual,/s/from_cockpit: yes/from_cockpit: no/'
fault level_against_place alder '/item: liferaft,/s/persons/below: yes, persons/'
fault how_unrecorded alder '/item: engine_stop,/s/how: pull out, //'
fault opening_unnamed alder '/tag: C7,/s/name: sink drain, //'
fault extinguisher_unweighed alder '/tag: F1,/s/kg: 2, //'
fault pieces_uncounted alder '/item: lpg_bottle_valve,/s/count: 1, //'
fault lever_unrecorded tamarisk '/item: throttle,/s/, upright: yes//'
fault case_fact_unrecorded tamarisk '/item: bolt_cutters,/s/, cuts_mm: 12//'
fault case_fact_unrecorded tamarisk '/^  thickest_wire_mm:/d'
fault boat_fact_unrecorded alder 's/looks: White sloop, //'
fault radio_fact_unrecorded alder '/^  nature_steps:/d'
fault tag_missing alder '/tag: C8,/d'
fault tags_given_behind alder '/^tags_given:/s/C9/C8/'
fault tags_given_unrecorded alder '/^tags_given:/d'

# ---- identities ----

mmsi='mmsi: "238014810"'
fault mmsi_damaged birch "s/$mmsi/mmsi: 2.38015E+08/"
fault mmsi_length birch "s/$mmsi/mmsi: \"23801481\"/"
fault mmsi_form birch "s/$mmsi/mmsi: \"002380148\"/"
fault mmsi_mid_unknown birch "s/$mmsi/mmsi: \"217014810\"/"
fault mmsi_made_up birch "s/$mmsi/mmsi: \"238123456\"/"
fault mmsi_reserved birch "s/$mmsi/mmsi: \"200014810\"/"
fault mmsi_of_specimen alder 's/mmsi: "200014810"/mmsi: "238014810"/'
fault mmsi_missing birch '/^  mmsi:/d'
fault mmsi_not_programmed birch 's/mmsi_programmed: yes/mmsi_programmed: no/'
fault mmsi_programming_unknown birch '/mmsi_programmed:/d'
fault handheld_mmsi birch '/item: vhf_handheld,/s/charged/mmsi: "238014811", charged/'
fault handheld_mmsi_ships birch '/item: vhf_handheld,/s/charged/mmsi: "238014810", charged/'
call='call_sign: "9A2345"'
fault call_sign_missing birch '/^  call_sign:/d'
fault call_sign_characters birch "s/$call/call_sign: \"9a2345\"/"
fault call_sign_length birch "s/$call/call_sign: \"9A\"/"
fault call_sign_impossible birch "s/$call/call_sign: \"1AAB\"/"
fault call_sign_of_a_body birch "s/$call/call_sign: \"4U2345\"/"
fault call_sign_series_unknown birch "s/$call/call_sign: \"4NAB\"/"
fault call_sign_halved birch "s/$call/call_sign: \"3D2345\"/"
fault call_sign_pattern birch "s/$call/call_sign: \"9A2AB\"/"
fault call_sign_reserved birch "s/$call/call_sign: QALD3/"
fault call_sign_of_specimen alder 's/call_sign: QALD3/call_sign: "9A2345"/'
fault identities_disagree birch 's/flag: HR/flag: GR/'
fault flag_unknown birch 's/flag: HR/flag: QZ/'
fault name_unspeakable birch 's/name: Alder/name: Nº 1/'
fault name_latin_missing birch 's/name: Alder/name: Öre, name_spoken: Orray/'
fault name_latin_differs birch 's/name: Alder/name: Alder, name_latin: Elder/'
fault name_roman birch 's/name: Alder/name: Alder II/'
fault name_figures birch 's/name: Alder/name: Alder 45/'
fault name_signal birch 's/name: Alder/name: Mayday/'
fault name_letters birch 's/name: Alder/name: Mike Two/'
fault name_apostrophe birch 's/name: Alder/name: L’Exemple/'
fault name_long birch 's/name: Alder/name: Alder of the Long Marsh/'
fault without_quotes birch 's/name: Alder/name: Off/'

# ---- silences ----

silence='{check: seacock_stiff, reason: fitter ordered, until: 2027-01}'
fault silence_unknown alder "/^equipment:/i\\silenced: [$(echo "$silence" | sed 's/stiff/stif/')]"
fault silence_of_error alder "/^equipment:/i\\silenced: [$(echo "$silence" | sed 's/seacock_stiff/mmsi_length/')]"
fault silence_lapsed alder "/^equipment:/i\\silenced: [$(echo "$silence" | sed 's/2027-01/2026-10/')]"
fault silence_idle alder "/^equipment:/i\\silenced: [$silence]"

# ---- other ways into the same checks, and cases that must stay quiet ----

# says CHECK PIECE BOAT SCRIPT: the changed record tells that check in these words.
says() {
    change "$3" "$4"
    told "$bad" >/dev/null
    if grep "\"check\": \"$1\"" "$scratch/stdout" | grep -qF -- "$2"; then
        ok "each-$1-says"
    else
        not_ok "each-$1-says" "nothing says: $2" "$(cat "$scratch/stdout")"
    fi
}

# quiet CHECK BOAT SCRIPT: the changed record does not tell it.
quiet() {
    change "$2" "$3"
    if diff -r "$good/$2" "$bad" >/dev/null; then
        not_ok "each-$1-quiet" "nothing changed: $3"
    else
        expect_empty "each-$1-quiet" "$(told "$bad" | grep "^$1 ")"
    fi
}

# a side against the zone's own
says record 'aft_cabin_starboard lies to starboard, but side says port' alder \
    's/zone: aft_cabin_starboard,/& side: port,/'
says record 'cockpit_locker_port lies to port, but side says starboard' alder \
    '/tag: C2,/s/zone: cockpit_locker, side: port/zone: cockpit_locker_port, side: starboard/'
says record 'aft_cabin_port lies to port, but side says starboard' alder \
    's/^  zone: navigation_station/  zone: aft_cabin_port/'
says record 'hull_step_port lies to port, but side says starboard' samphire \
    '/tag: F3,/s/zone: hull_step_port,/& side: starboard,/'
says record 'engine_space_starboard lies to starboard, but side says port' samphire \
    '/tag: C34,/s/zone: engine_space_starboard,/& side: port,/'
quiet record alder 's/zone: aft_cabin_starboard,/& side: starboard,/'

# openings that the record lets expect
says opening_expected "the sink's drain, though gas_alarm C9 is there" alder '/tag: C7,/d'
says opening_expected 'for the engine in engine_space, such as its intake' alder '/tag: C6,/d'
says opening_expected 'for aft_heads, such as the inlet and outlet' alder '/tag: F3,/s/zone: saloon/zone: aft_heads/'
says opening_expected 'for the engine in engine_space_port' samphire '/tag: C33,/d'
says opening_expected 'for the engine in engine_space_starboard' samphire '/tag: C34,/d'
says opening_expected 'though smoke_alarm F8 is there' samphire \
    '/zone: forward_heads, side: port/d; /tag: F8,/s/zone: aft_cabin_port/zone: forward_heads, side: port/'
quiet opening_expected samphire '/tag: C30,/d'
quiet opening_expected alder '/tag: C7,/s/zone: galley/zone: saloon, leads_to: sink/'
says openings_too_few 'she has 5 openings, but only 2 are recorded' alder 's/openings: 2/openings: 5/'

# what lies inside the space that burns
says control_inside 'engine_stop C1 lies inside engine_space' alder \
    '/item: engine_stop,/s/zone: cockpit, side: starboard/zone: engine_space/'
says control_inside 'battery_isolator_engine C3 lies inside engine_space' alder \
    '/item: battery_isolator_engine,/s/how:/inside: [engine_space], how:/'
quiet control_inside samphire '/tag: C6,/s/inside: \[cockpit_locker_port\]/inside: [engine_space_starboard]/
/^  - {check: control_inside/,+0d
/^silenced:/d
/tag: C7,/s/zone: engine_space_starboard, how: {shut: across}, inside: \[engine_space_starboard\]/zone: cockpit_locker_starboard, how: {shut: across}, inside: []/'

# one piece in reach is enough; each that is wrong by itself is told
quiet gas_unrecorded alder "$(without lpg_bottle_valve)
s/{carried: yes/{carried: no/"
quiet locker_shared alder '/item: lifejacket,/s/zone: cockpit_locker, side: port,/zone: lazarette,/'
quiet locker_shared alder '/item: lifejacket,/s/zone: cockpit_locker, side: port,/zone: gas_locker, side: port,/'
quiet reach_unrecorded alder '/item: epirb,/s/zone: companionway, side: port, \(.*\)from_cockpit: yes, /zone: cockpit, side: starboard, \1/'
quiet handheld_out_of_reach alder '/item: vhf_handheld,/{p;s/tag: E5,/tag: E95,/;s/zone: cockpit/zone: saloon/;s/from_cockpit: yes/from_cockpit: no/;}'
quiet pump_not_from_cockpit alder '/item: bilge_pump_manual,/{p;s/tag: C5,/tag: C95,/;s/zone: cockpit/zone: saloon/;s/from_cockpit: yes/from_cockpit: no/;}'
quiet inverted_out_of_reach samphire '/item: knife,/{p;s/tag: E8,/tag: E98,/;s/reach_inverted: yes/reach_inverted: no/;s/by the wheel/by the door/;}'
quiet inverted_out_of_reach alder '/item: liferaft,/s/persons/reach_inverted: no, persons/'
says gear_locked 'liferaft E3 is under lock' alder '/item: liferaft,/s/persons/locked: yes, persons/'
says raft_line_unrecorded 'liferaft E3 has no release recorded' alder 's/, release: slip hook//'
says isolator_leaves_no_radio 'battery_isolator_engine C3 cuts the fixed radio' alder \
    '/item: battery_isolator_engine,/s/cuts: \[\]/cuts: [vhf_dsc]/; /item: vhf_handheld,/s/from_cockpit: yes/from_cockpit: no/'
quiet isolator_leaves_no_radio alder '/item: battery_isolator_engine,/s/cuts: \[\]/cuts: [vhf_dsc]/'
quiet beacon_missing alder "$(without epirb)
s/sea_area: A1/sea_area: A3/"
quiet bung_misfit alder '/tag: C7,/s/bung_mm: 25/bung_mm: 37/'
says bung_misfit 'it may not go in' alder '/tag: C7,/s/bung_mm: 25/bung_mm: 38/'
quiet co2_share tamarisk '/tag: F4,/s/agent: powder, kg: 1/agent: co2, kg: 2/; s/cabin_m3: .*/cabin_m3: 37/'
quiet co2_in_cabins tamarisk '/tag: F3,/s/agent: powder/agent: co2/'
says co2_share 'makes 3.02 % of the air, over 3 %' tamarisk \
    '/tag: F4,/s/agent: powder, kg: 1/agent: co2, kg: 2/; s/cabin_m3: .*/cabin_m3: 36/'
quiet co2_in_cabins tamarisk '/tag: F4,/s/agent: powder, kg: 1/agent: co2, kg: 2/'
says co2_share 'the gas makes 3.38 % of the air' tamarisk '/tag: F4,/s/agent: powder, kg: 1/agent: co2, kg: 1, count: 2/'
says co2_share 'F4 and the others in or next to the cabins: emptied in cabins of 32 m3' tamarisk \
    '/tag: F1,/s/agent: powder, kg: 2/agent: co2, kg: 1/; /tag: F4,/s/agent: powder/agent: co2/'
quiet isolator_cuts_radio tamarisk '/item: battery_isolator_service,/s/cuts: .*\]/cuts: [vhf_dsc]/'
quiet isolator_cuts_pumps tamarisk "$(without bilge_pump_manual)"
quiet raft_places_without_one tamarisk '/item: liferaft,/{p;s/tag: E2,/tag: E92,/;s/coachroof/transom/;s/persons: 8, //;}'
says jackets_few 'none is for an adult' alder '/item: lifejacket,/s/kg_low/wearer: child, kg_low/'
says gear_expired 'expires 2026, which counts to 2026-01-01 for want of a month' alder \
    '/item: epirb,/s/expires: 2030-04/expires: 2026/'
says gear_date_unknown 'liferaft E3 has no date that tells how long it is good' alder \
    '/item: liferaft,/s/service_due: 2030-04/serviced: 2026-04/'

# lines that fell out: what is missing by name, what is accounted for silent
says tag_missing 'tag C8 is on no piece of the record' alder '/tag: C8,/d'
says tag_missing 'tag C9 is on no piece of the record' alder '/tag: C9,/d'
says tag_missing 'tags F2, F3 are on no piece of the record' alder '/tag: F[23],/d'
says tag_missing 'add to retired_tags: E2 to E4' alder '/tag: E[234],/d'
quiet tag_missing alder '/tag: C8,/d; /^tags_given:/i\retired_tags: [C8]'
quiet tag_missing alder 's/tag: C8,/tag: C8x,/'
says tags_given_behind 'tag C9 was given, but tags_given has C8 as the last' alder '/^tags_given:/s/C9/C8/'
says tags_given_behind 'raise it: tags_given: [F3, E7, C9]' alder '/^tags_given:/s/, C9//'
says tags_given_behind 'tag C12 was given' alder '/^tags_given:/i\retired_tags: [C10, C11, C12]'
says side_unrecorded 'side is not recorded of E3, E1: ' alder '/tag: E3,/s/, side: centre//; /^  side: starboard/d'
says side_beside_sided 'smoke_alarm F3 in saloon (engine_extinguisher F1 there is to starboard), gas_alarm C9 in galley (' \
    alder '/tag: F3,/s/, side: centre//; /tag: C9,/s/, side: port//'
says side_unrecorded 'side is not recorded of E1: ' alder '/^  side: starboard/d'
quiet side_unrecorded alder '/tag: C6,/s/side: port, //'
says how_unrecorded 'how is not recorded of C6: ' alder '/tag: C6,/s/, how: {shut: across}//'
quiet how_unrecorded alder '/tag: F1,/s/spot: by the door, //'
says radio_fact_unrecorded 'spot, nature_steps of the fixed radio are not recorded' alder '/^  nature_steps:/d; /^  spot:/d'
quiet radio_fact_unrecorded alder '/^  nature_steps:/d; s/^  dsc: yes/  dsc: no/'
quiet port_without_extinguisher samphire '/tag: F1,/d'
quiet extinguisher_without_port samphire '/tag: F3,/d'
quiet engine_space_unprotected samphire '/tag: F[13],/d'
says engine_space_unprotected 'engine_space_port has neither a fire port' samphire \
    '/tag: F[13],/d; /^not_fitted:/a\  - {item: fire_port, serves: [engine_space_port]}'
says port_without_extinguisher 'fire_port F3 has no extinguisher to go into it' samphire \
    '/tag: F1,/d; /^not_fitted:/a\  - {item: engine_extinguisher, serves: [engine_space_port]}'
says extinguisher_without_port 'engine_extinguisher F1 is for a fire port' samphire \
    '/tag: F3,/d; /^not_fitted:/a\  - {item: fire_port, serves: [engine_space_port]}'

# one fault, one problem: an entry copied is told as that, a piece that moved by its tag
says record 'epirb stands in the same place twice' alder '/item: epirb,/{p;}'
quiet identity_twice alder '/item: epirb,/{p;s/zone: companionway/zone: saloon/;}'
says record 'tag E4 is already that of epirb' alder '/item: epirb,/{p;s/zone: companionway/zone: saloon/;}'
# a beacon that agrees with one of three that disagree says nothing new
quiet beacon_other_country birch 's/flag: HR/flag: "NO"/'
says beacon_other_country 'country code 237 (Greece)' birch '/item: epirb,/s/9DCD0/9DAD0/'
says beacon_other_country 'country code 237 (Greece)' birch 's/flag: HR/flag: "NO"/; /item: epirb,/s/9DCD0/9DAD0/'

# told_but_unsaid: all that is told of the changed base, but for notes on what a boat leaves unsaid
# and cards go without.
told_but_unsaid() {
    told "$bad" | grep -v '^case_fact_unrecorded note$'
}

# a key misspelt: that, and not that its field is missing too
for key in boat radio equipment not_fitted persons_max hull call_sign mmsi power_switch hex_id \
    expires painter inside; do
    change cedar "s/\b$key:/${key}x:/"
    expect_equal "each-misspelt-$key" 'record error' "$(told_but_unsaid)"
    grep '"check": "record"' "$scratch/stdout" | grep -qv 'has no key' && not_ok "each-misspelt-$key-else" "$(cat "$scratch/stdout")"
done
for key in item tag zone; do
    change cedar "/item: epirb,/s/$key:/${key}x:/"
    expect_equal "each-misspelt-$key" 'record error' "$(told_but_unsaid)"
done

# people and things are whole
for field in 'persons_max: 6' 'openings: 2' 'count: 6' 'persons: 6'; do
    says record "${field%:*}\\\" must be a whole number, not 1.5" alder "s/$field,*/${field%:*}: 1.5,/"
done

# ---- none left out ----

sort -u "$scratch/tried" >"$scratch/sorted"
expect_empty each-check-tried "$(cut -d ' ' -f 1 "$scratch/list" | sort | comm -23 - "$scratch/sorted")"
exit $failures
