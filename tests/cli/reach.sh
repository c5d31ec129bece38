#!/bin/sh
# Gear that its danger lies between is not offered, and what cannot be reached is said: cards of
# a boat of tests/hazard after one change to her record, held against the card before it.
. tests/tap.sh

# card BOAT CARD SCRIPT: the words of the card, a line each, after the script on her record.
card() {
    rm -rf "$scratch/base" "$scratch/out"
    mkdir -p "$scratch/base/boats"
    cp tests/hazard/base.yaml "$scratch/base/"
    sed "$3" "tests/hazard/boats/$1.yaml" >"$scratch/base/boats/$1.yaml"
    if [ -n "$3" ] && cmp -s "tests/hazard/boats/$1.yaml" "$scratch/base/boats/$1.yaml"; then
        echo 'the script changes nothing'
        return
    fi
    maydeck print "$scratch/base" --dump --card "$2" --date "$print_date" -o "$scratch/out"
    cat "$scratch/out/"*.dump >"$scratch/pages" 2>/dev/null || :
    page_words "$scratch/pages"
    cat "$scratch/stderr"
}

# lost NAME BOAT CARD WORDS SCRIPT: the words stand on the card, and after the script do not.
lost() {
    card "$2" "$3" '' >"$scratch/before"
    card "$2" "$3" "$5" >"$scratch/after"
    if ! grep -qF -- "$4" "$scratch/before"; then
        not_ok "lost-$1" "not on the card in the first place: $4"
    elif [ "$(wc -w <"$scratch/after")" -lt 80 ]; then
        not_ok "lost-$1" "no card" "$(cat "$scratch/after")"
    else
        expect_empty "lost-$1" "$(grep -oF -- "$4" "$scratch/after")"
    fi
}

# says NAME BOAT CARD WORDS SCRIPT: the other way round.
says() {
    card "$2" "$3" '' >"$scratch/before"
    card "$2" "$3" "$5" >"$scratch/after"
    if grep -qF -- "$4" "$scratch/before"; then
        not_ok "says-$1" "on the card in the first place: $4"
    elif grep -qF -- "$4" "$scratch/after"; then
        ok "says-$1"
    else
        not_ok "says-$1" "not said: $4" "$(cat "$scratch/after")"
    fi
}

# Behind a hatch or in a locker that is opened on the way, gear is no nearer than that.
lost inside-below iris gas_leak 'Cockpit, PORT, under seat' \
    '/item: lifejacket/s/count: 6, from_cockpit: yes/count: 6, inside: [aft_cabin]/'
lost inside-gas iris gas_leak 'Cockpit, PORT, under seat' \
    '/item: lifejacket/s/count: 6/count: 6, inside: [gas_locker]/'
lost inside-gas-abandon iris abandon_fire EPIRB \
    '/item: epirb/s/from_cockpit/inside: [gas_locker], from_cockpit/'

# A battery that burns in a locker bars it. The raft is a last way out: it is offered with words.
battery='/item: anchor_main/{p;s/.*/  - {item: lithium_bank, tag: C30, zone: cockpit_locker, side: starboard, space: cockpit_locker, vents_to: transom}/;}
/^   /s/lithium_bank, //'
lost battery-locker iris battery_fire 'Grab bag' "$battery"
lost battery-abandon iris abandon_fire 'Grab bag' "$battery"
says raft-by-petrol iris abandon_fire 'Aft locker' \
    '/item: liferaft/s/zone: coachroof/zone: lazarette/'
expect_equal raft-with-words 1 "$(grep -c 'In smoke or gas? Don’t touch it' "$scratch/after")"

# A battery in the engine space by its zone is in it, whatever its space is called.
says battery-by-zone iris engine_fire 'Battery gas can explode' \
    '/item: anchor_main/{p;s/.*/  - {item: lithium_bank, tag: C30, zone: engine_space, side: port, space: aft_cabin, vents_to: transom}/;}
/^   /s/lithium_bank, //'

# What fights the fire does not lie in it.
extinguisher='/item: fire_blanket/{p;s/.*/  - {item: engine_extinguisher, tag: F8, zone: saloon, kg: 2, agent: powder, fits_port: yes, service_due: 2027-06}\
  - {item: fire_port, tag: F9, zone: companionway, how: push nozzle in}/;}
s/fire_port, engine_extinguisher, //'
says port iris engine_fire 'nozzle in port' "$extinguisher"
card iris engine_fire "$(echo "$extinguisher" | sed 's/zone: saloon/zone: engine_space/')" \
    >"$scratch/after"
expect_empty port-inside-extinguisher "$(grep -F 'nozzle in port' "$scratch/after")"
card iris engine_fire "$(echo "$extinguisher" | sed 's/zone: companionway/zone: engine_space/')" \
    >"$scratch/after"
expect_empty port-inside "$(grep -F 'nozzle in port' "$scratch/after")"
grep -q 'KEEP IT SHUT' "$scratch/after" || not_ok port-inside-shut "$(cat "$scratch/after")"
lost blanket-beyond iris galley_fire 'Fire blanket' \
    '/item: fire_blanket/s/zone: galley/zone: forward_cabin/'

# Some pieces in reach, some not: the others are not passed over in silence.
says jackets-mixed iris engine_fire 'Take only these jackets.' \
    '/item: lifejacket/{p;s/E1,/E30,/;s/zone: cockpit/zone: saloon/;s/from_cockpit: yes/from_cockpit: no/;}'
bottle='/item: lpg_bottle_valve/{p;s/C10,/C30,/;s/zone: gas_locker/zone: forepeak/;}'
says bottles-mixed iris gas_leak 'One you cannot reach: don’t touch it. It is open.' "$bottle"
says bottles-mixed-galley iris galley_fire 'One you cannot reach.' "$bottle"
says cans-mixed iris petrol_leak 'One you cannot reach: don’t touch it.' \
    '/item: petrol_stowage/{p;s/C18,/C30,/;s/zone: lazarette/zone: pushpit/;}'

# The knife is taken along where it lies below, and is not looked for at the end.
says knife-below iris abandon_ship 'Galley, STARBOARD, by the wheel' \
    '/item: knife/s/zone: cockpit/zone: galley/'
expect_equal knife-once 1 "$(grep -c 'by the wheel' "$scratch/after")"
says beacon-on-deck iris abandon_fire 'Personal beacon' \
    '/item: epirb/{p;s/.*/  - {item: personal_beacon, tag: E30, zone: cockpit, expires: 2029-11, from_cockpit: yes}/;}
/^   /s/personal_beacon, //'

# A set on deck is no nearer than its switch, and a switch of which that is not known is below.
says switch-unknown iris engine_fire 'Only outside the smoke:' 's/^  power_from_cockpit: yes/  power_from_cockpit: no/'
exit $failures
