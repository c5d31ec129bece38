#!/bin/sh
# Which words a boat gets: cards about water, gas, fuel and leaving after one change to a record
# or to the base's file.
. tests/tap.sh

# card FOLDER BOAT CARD SCRIPT [BASE]: the words of the card, one line in all, with that script
# over her record, and that line in her base's file, for all lines of its key: "KEY:" alone takes
# them out.
card() {
    rm -rf "$scratch/base" "$scratch/out"
    mkdir -p "$scratch/base/boats"
    cp "tests/$1/base.yaml" "$scratch/base/"
    if [ -n "${5-}" ]; then
        sed "/^${5%%:*}:/d" "tests/$1/base.yaml" >"$scratch/base/base.yaml"
        [ "${5#*:}" = '' ] || echo "$5" >>"$scratch/base/base.yaml"
    fi
    sed "$4" "tests/$1/boats/$2.yaml" >"$scratch/base/boats/$2.yaml"
    if [ -n "$4" ] && cmp -s "tests/$1/boats/$2.yaml" "$scratch/base/boats/$2.yaml"; then
        echo 'the script changes nothing'
        return
    fi
    maydeck print "$scratch/base" --dump --card "$3" --date "$print_date" -o "$scratch/out"
    cat "$scratch/out/"*.dump >"$scratch/pages" 2>/dev/null || :
    page_words "$scratch/pages" | tr '\n' ' '
    [ -s "$scratch/pages" ] || cat "$scratch/stderr"
}

# says NAME WORDS... : each stands on the card that is in $scratch/card.
says() {
    name=$1
    shift
    for words; do
        grep -qF -- "$words" "$scratch/card" && ok "$name" ||
            not_ok "$name" "not said: $words" "$(cat "$scratch/card")"
    done
}

# lacks NAME WORDS...: none does, and there is a card.
lacks() {
    name=$1
    shift
    [ "$(wc -w <"$scratch/card")" -gt 60 ] || not_ok "$name" "no card" "$(cat "$scratch/card")"
    for words; do
        ! grep -qF -- "$words" "$scratch/card" && ok "$name" ||
            not_ok "$name" "said: $words" "$(cat "$scratch/card")"
    done
}

# ---- one number of first breaths, the base's own ----

card fleet tamarisk man_overboard '' 'first_aid:' >"$scratch/card"
says breaths-unset 'Breaths as taught, then 30 pushes, 2 breaths.'
lacks breaths-unset-number '5 breaths' '2 breaths. Then'
card fleet tamarisk man_overboard '' 'first_aid: {drowning_breaths: 5}' >"$scratch/card"
says breaths-five 'NOT BREATHING? 5 breaths. Then 30 pushes, 2 breaths.'
lacks breaths-five-alone 'as taught' '? 2 breaths'
card fleet tamarisk man_overboard '' 'first_aid: {drowning_breaths: 2}' >"$scratch/card"
says breaths-two 'NOT BREATHING? 2 breaths. Then 30 pushes, 2 breaths.'
lacks breaths-two-alone 'as taught' '5 breaths'
# Another number is taught nowhere, nor to begin with pushes: it is refused.
for number in 0 3; do
    sed "s/^first_aid: .*/first_aid: {drowning_breaths: $number}/" tests/fleet/base.yaml >"$scratch/base/base.yaml"
    maydeck check "$scratch/base" --date "$print_date"
    grep -q "base.yaml:[0-9]*:[0-9]*: error: .*$number" "$scratch/problems" && ok "breaths-$number" ||
        not_ok "breaths-$number" "$(cat "$scratch/problems")"
done
sed '/^first_aid:/d' tests/fleet/base.yaml >"$scratch/base/base.yaml"
maydeck why "$scratch/base" --boat tamarisk --card man_overboard --date "$print_date"
grep -q 'first breaths: not recorded' "$scratch/stdout" && ok breaths-why ||
    not_ok breaths-why "$(cat "$scratch/stdout")"

# ---- flooding ----

door='s/watertight_door, //
/^equipment:/a\
\  - {item: watertight_door, tag: C90, zone: forward_cabin, how: {shut: turn the wheel, open: turn back}}'
card hazard nettle flooding '' >"$scratch/card"
lacks door-none 'watertight'
says raft-line 'TIE the raft’s line. Free it at the last.' 'Engine’s: only if it leaks, engine off first.'
card hazard nettle flooding "$door" >"$scratch/card"
says door 'COUNT, then shut the watertight doors.' C90 'turn the wheel'
# What feeds the pumps is not recorded: the generator runs on, whatever else is turned off.
card hazard iris flooding '' >"$scratch/card"
says generator-on 'TURN THESE OFF.' 'Generator stays on. A pump stops? Turn these on again.'
lacks generator-on-row 'Generator stop'
card hazard bracken flooding '' >"$scratch/card"
says dinghy 'MAKE READY the dinghy.'
lacks dinghy-alone 'raft'
card hazard anise flooding '' >"$scratch/card"
says neither 'MAKE READY to leave. Steer for shallows.'
# Whether she has a raft is not recorded: the card prints all the same, and promises none.
card hazard nettle flooding '/item: liferaft/d' >"$scratch/card"
says raft-unknown 'MAKE READY'
lacks raft-unknown-tied 'TIE the raft'
card unusual skua flooding '' >"$scratch/card"
says hose-engine 'Engine’s hose: engine off first.' 'BLOCK it: cushion, clothes, a board.'
card unusual dabchick flooding '' >"$scratch/card"
says hose-none 'FIND hoses through the hull. Leaks? Block it.'
lacks hose-none-engine 'ngine'
card unusual smew flooding '' >"$scratch/card"
says no-radio-bar 'ALONE: after step 2 signal MAYDAY' 'TWO: other: signal now'

# ---- man overboard ----

card fleet tamarisk man_overboard '' >"$scratch/card"
says lost-count 'IN THE WATER, ON BOARD, FELL AT UTC.' 'A hand free? MAYDAY.'
lacks lost-count-alone 'PERSONS ON BOARD'
card fleet tamarisk flooding '' >"$scratch/card"
says count 'PERSONS ON BOARD'
lacks count-alone 'IN THE WATER'
maydeck call tests/fleet --boat tamarisk --nature mob
grep -q 'IN THE WATER, .* ON BOARD, FELL AT' "$scratch/stdout" && ok call-lost || not_ok call-lost "$(cat "$scratch/stdout")"
maydeck call tests/fleet --boat tamarisk --nature fire
grep -q 'PERSONS ON BOARD' "$scratch/stdout" && ! grep -q 'IN THE WATER' "$scratch/stdout" && ok call-fire ||
    not_ok call-fire "$(cat "$scratch/stdout")"
card unusual skua man_overboard '' >"$scratch/card"
says lift-motor 'LIFT flat: ropes under arms and knees.'

# ---- leaks ----

card fleet tamarisk diesel_leak '' >"$scratch/card"
says burner 'TURN OFF every burner. Open cabin hatches.'
lacks flames 'PUT OUT' 'Open the hatches' 'ropes in'
card islands thrift diesel_leak '' >"$scratch/card"
lacks one-engine 'ropes in'
card fleet samphire diesel_leak '' >"$scratch/card"
says other-engine 'USE the other engine.' 'Engine only with ropes in and nobody near it.'
card hazard nettle gas_leak '' >"$scratch/card"
says gas-stay 'DON’T TOUCH any switch.' 'DON’T GO BELOW until a fitter clears it.'
card islands sundew gas_leak 's/gas: {carried: no}/gas: {carried: yes}/
/^equipment:/a\
\  - {item: lpg_bottle_valve, tag: C90, zone: cockpit_locker, side: port, how: {shut: turn right}, from_cockpit: yes}' >"$scratch/card"
says gas-open-boat 'STAY UPWIND until a fitter clears it.' 'Tap in your hand? Shut it, go upwind.'
lacks gas-open-boat-below 'OPEN hatches' 'GO ON DECK'

# ---- petrol: all that is true is printed ----

can() {
    printf 's/petrol_stowage, //\n/^equipment:/a\\\n'
    printf '\\  - {item: petrol_stowage, tag: C%s, zone: %s, how: screw it shut, litres: 10}\n' "$1" "$2"
}
card unusual skua petrol_leak '' >"$scratch/card"
says petrol-valve 'SHUT the petrol at its valve.' C2 'KEEP the engine lid shut.'
lacks petrol-valve-alone 'Close the can' 'The can:'
card unusual skua petrol_leak "$(can 90 cockpit)" >"$scratch/card"
says petrol-valve-can 'SHUT the petrol. Close the can, its vent.' C2 C90
card unusual skua petrol_leak "$(can 90 cockpit_locker)" >"$scratch/card"
says petrol-valve-locker 'SHUT the petrol at its valve.' 'The can: don’t touch it' C2
lacks petrol-valve-locker-row 'screw it shut'
inside='/item: fuel_shutoff_petrol/s/inside: \[\], from_cockpit: yes/inside: [engine_space]/'
card unusual skua petrol_leak "$inside" >"$scratch/card"
says petrol-tank 'DON’T TOUCH tank or hoses'
lacks petrol-tank-alone 'SHUT the petrol'
card unusual skua petrol_leak "$inside
$(can 90 cockpit)" >"$scratch/card"
says petrol-tank-can 'CLOSE the can and its vent.' 'Tank and hoses: don’t touch them.' C90
card unusual skua petrol_leak "$inside
$(can 90 cockpit_locker)" >"$scratch/card"
says petrol-tank-locker 'DON’T TOUCH tank, hose, can'
card islands sundew petrol_leak '' >"$scratch/card"
says petrol-hose 'Hose leaks? Close its can’s vent. Don’t start.'

# ---- leaving ----

# A grown person takes no jacket that is a child's.
card islands eelgrass abandon_ship '' >"$scratch/card"
says children '8 lifejackets, under seat' '4 lifejackets, yellow bag' 'E3 for children.'
card islands eelgrass abandon_ship '/tag: E3,/s/wearer: child, //' >"$scratch/card"
lacks children-none 'for children'
# Each beacon aboard goes with the people, and is turned on; flares stand by where nobody answers.
beacons='s/personal_beacon, sart, //
/^equipment:/a\
\  - {item: personal_beacon, tag: E90, zone: cockpit, how: pull the aerial, from_cockpit: yes}\
\  - {item: sart, tag: E91, zone: cockpit, how: twist the ring, from_cockpit: yes}'
card hazard nettle abandon_ship "$beacons" >"$scratch/card"
says beacons 'EPIRB ON.' 'E90 Personal beacon = pull the aerial: ON' 'E91 Radar transponder = twist the ring: ON'
says beacons-flares 'flares E10'
card islands thrift abandon_fire '' >"$scratch/card"
says then-dinghy 'Raft in smoke or gas? Pull the dinghy upwind.' 'Don’t touch the outboard.'
card hazard anise abandon_fire '' >"$scratch/card"
says go-in 'Do steps 2 and 3, then go in together, upwind side.'
# With nothing on deck to go into, the beacon is tied to somebody before all go in.
card hazard bracken abandon_fire '/item: dinghy/s/zone: [a-z_]*/zone: saloon/;/item: dinghy/s/, from_cockpit: yes//' >"$scratch/card"
says beacon-first 'BEACON ON. Tie it to one person. ' 'TOO HOT? GO IN together, upwind side.'
lacks beacon-first-dinghy 'the dinghy in' 'oars'
# A radio on deck is used where only smoke can come, and nothing else that is on deck calls.
clean='s/gas: {carried: yes, locker_drains: overboard}/gas: {carried: no}/
/item: lpg_/d
s/power_from_cockpit: no/power_from_cockpit: yes/'
card unusual plover abandon_fire "$clean" >"$scratch/card"
says deck-radio 'RADIO ON DECK, UPWIND OF IT? Call there' 'CALL MAYDAY on deck, upwind of it.' 'Stay upwind of it.'
lacks deck-radio-alone 'fixed radio alone' 'NO HANDHELD'
card unusual plover abandon_fire "$clean
s/lithium_bank, //" >"$scratch/card"
lacks deck-radio-unknown 'CALL MAYDAY on deck' 'red key'
card unusual plover abandon_fire 's/power_from_cockpit: no/power_from_cockpit: yes/' >"$scratch/card"
lacks deck-radio-gas 'CALL MAYDAY on deck' 'red key'
card hazard bracken abandon_ship '' >"$scratch/card"
says dinghy-leaves 'PUT IN the oars and all you have.' 'Waves? Stay on the boat while it floats.'
exit $failures
