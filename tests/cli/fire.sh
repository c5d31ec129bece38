#!/bin/sh
# The cards on fire: what they say on a boat hangs on where her gear is. Cards of boats of
# tests/fleet, tests/hazard, tests/islands and tests/unusual, after one change to the record.
. tests/tap.sh

# card FOLDER BOAT CARD SCRIPT: its words in $scratch/words, after the script on her record.
card() {
    rm -rf "$scratch/base" "$scratch/out"
    mkdir -p "$scratch/base/boats"
    cp "tests/$1/base.yaml" "$scratch/base/"
    sed "$4" "tests/$1/boats/$2.yaml" >"$scratch/base/boats/$2.yaml"
    : >"$scratch/words"
    if [ -n "$4" ] && cmp -s "tests/$1/boats/$2.yaml" "$scratch/base/boats/$2.yaml"; then
        echo 'the script changes nothing' >"$scratch/words"
        return
    fi
    maydeck print "$scratch/base" --dump --card "$3" --date "$print_date" -o "$scratch/out"
    cat "$scratch/out/"*.dump >"$scratch/pages" 2>/dev/null || cp "$scratch/stderr" "$scratch/pages"
    page_words "$scratch/pages" >"$scratch/words"
}

# says NAME WORDS: they stand on the card. silent NAME WORDS: they do not, and it is a card.
says() {
    if grep -qF -- "$2" "$scratch/words"; then
        ok "fire-$1"
    else
        not_ok "fire-$1" "not said: $2" "$(cat "$scratch/words")" "$(cat "$scratch/stderr")"
    fi
}
silent() {
    if [ "$(wc -w <"$scratch/words")" -lt 80 ]; then
        not_ok "fire-$1" 'no card' "$(cat "$scratch/words")"
    else
        expect_empty "fire-$1" "$(grep -oF -- "$2" "$scratch/words")"
    fi
}

# ---- engine ----

# Iris: her radio is on deck, the stops of engine and generator are below.
card hazard iris engine_fire ''
says engine-lead 'BATTERY hisses, swells, smokes? Card 6'
says key-on-deck 'ALONE: RED KEY now. Speak after step 5 TWO: other: RED KEY, speak now 3 OR MORE:'
says engine-runs 'ENGINE SPACE, ENGINE RUNS'
silent engine-fuel-shut 'SHUT the fuel. '
says engine-gas 'NO SMOKE THERE? SHUT the gas bottles.'
silent engine-no-petrol 'Petrol smell'

stopped='/item: engine_stop/s/zone: navigation_station/zone: cockpit/;/item: engine_stop/s/from_cockpit: no/from_cockpit: yes/'
card hazard iris engine_fire "$stopped"
says stop-on-deck 'STOP the engine.'
silent stop-not-engine 'ENGINE RUNS'
says stop-but-generator 'GENERATOR MAY RUN'
card fleet samphire engine_fire ''
says stop-generator-port 'ABOARD, GENERATOR MAY RUN.'
page_words "$scratch/out/"*starboard.dump >"$scratch/words"
says stop-generator-none 'ENGINE SPACE, LITHIUM'
silent stop-generator-starboard 'GENERATOR'

card hazard iris engine_fire 's/^  dsc: yes/  dsc: no/;/mmsi/d;/distress_key/d;/hold_s/d'
says no-dsc 'ALONE: speak on deck after step 5'
silent no-dsc-key 'RED KEY'

# The set below, no handheld on deck: whoever calls looks for smoke first.
below='s/^  zone: cockpit/  zone: navigation_station/;/power_from_cockpit/d'
card hazard iris engine_fire "$below"
says key-below 'ALONE: no smoke? RED KEY. Speak after step 5 TWO: no smoke? Other does both'
card hazard iris engine_fire "$below;/item: vhf_handheld/s/zone: saloon/zone: cockpit/;/item: vhf_handheld/s/from_cockpit: no/from_cockpit: yes/"
says handheld-on-deck 'ALONE: speak on deck after step 5 TWO: other speaks on deck now'

# What turns besides an engine that nobody can stop is turned off by words of its own.
fan='s/engine_blower, //;/item: fire_blanket/{p;s/.*/  - {item: engine_blower, tag: C31, zone: cockpit, how: {off: down, on: up}}/;}'
card hazard iris engine_fire "$fan"
says fan-off 'TURN THESE OFF. The engine runs on.'
says fan-off-row 'Engine fan = down: OFF'
silent fan-off-words 'DON’T GO IN. The engine'

# One fuel valve inside the space, one outside it.
two='/item: fuel_shutoff_diesel/{p;s/C4,/C30,/;s/zone: cockpit_locker, side: starboard, spot: aft face/zone: engine_space/;s/inside: \[cockpit_locker\]/inside: [engine_space]/;}'
card hazard iris engine_fire "/item: fuel_shutoff_generator/s/zone: engine_space, spot: port side/zone: cockpit/;s/inside: \[engine_space\]/inside: []/;$two"
says fuel-mixed 'SHUT the fuel outside the fire.'
says fuel-mixed-row 'DON’T TOUCH'
says fuel-mixed-call 'FUEL IS ON'
card hazard iris engine_fire '/item: fuel_shutoff_generator/s/zone: engine_space, spot: port side/zone: cockpit/;/item: fuel_shutoff_generator/s/inside: \[engine_space\]/inside: []/'
says fuel-all-outside 'SHUT the fuel. '
silent fuel-shut-call 'FUEL IS ON'

# An engine that runs breathes the agent out: it dies of the shut fuel first.
agent='/item: fire_blanket/{p;s/.*/  - {item: fixed_extinguisher, tag: F9, zone: cockpit, side: port, how: pull the ring, agent: clean_agent, automatic: no, service_due: 2027-06}/;}
/^  *[[f].*fixed_extinguisher, /s/fixed_extinguisher, //'
card hazard iris engine_fire "$agent"
says agent-waits 'ENGINE DEAD? RELEASE the extinguisher.'
says agent-at-flames 'Flames come through? Release it at once. Then nobody goes in.'
card hazard iris engine_fire "$agent;$stopped"
says agent-now 'RELEASE the fixed extinguisher.'
card hazard iris engine_fire "$agent;/item: fuel_shutoff_diesel/s/zone: cockpit_locker, side: starboard, spot: aft face/zone: engine_space/;/item: fuel_shutoff_diesel/s/inside: \[cockpit_locker\]/inside: [engine_space]/"
says agent-at-once 'RELEASE the fixed extinguisher.'

# Worked below, only outside the smoke; one that works by itself, and battery gas, send nobody there.
saloon=$(echo "$agent" | sed 's/zone: cockpit/zone: saloon/')
card hazard iris engine_fire "$saloon;$stopped"
says agent-below 'RELEASE the fixed extinguisher. Only outside the smoke. Then nobody goes in. Saloon'
card hazard iris engine_fire "$saloon"
says agent-below-waits 'ENGINE DEAD? RELEASE the extinguisher. Only outside the smoke. Then nobody goes in.'
silent agent-below-flames 'Release it at once'
card hazard iris engine_fire "$(echo "$saloon" | sed 's/automatic: no/automatic: yes/')"
says agent-below-by-itself 'KEEP IT SHUT. Extinguisher works by itself.'
silent agent-below-by-itself-row 'RELEASE'
card hazard iris engine_fire "$(echo "$agent" | sed 's/zone: cockpit/zone: engine_space/')"
silent agent-inside 'RELEASE'

# Battery gas has a way out of its own, or nobody shuts the space.
vent='{item: engine_vent_closure, tag: C31, zone: cockpit, how: {shut: push, open: pull}}'
bank='{item: lithium_bank, tag: C32, zone: engine_space, side: port, space: engine_space, vents_to: transom}'
lithium="s/lithium_bank, //;s/engine_vent_closure,\$//;/item: anchor_main/{p;s/.*/  - $vent\\n  - $bank/;}"
card hazard iris engine_fire "$lithium"
says bank-unvented 'Shut no vent: battery gas can explode.'
silent bank-unvented-closures 'CLOSE the vents.'
card hazard iris engine_fire "$lithium;/item: vhf_handheld/s/zone: saloon/zone: cockpit/;/item: vhf_handheld/s/from_cockpit: no/from_cockpit: yes/"
says bank-call 'I AM ON FIRE, ENGINE SPACE, LITHIUM BATTERY, ENGINE RUNS'
card hazard iris engine_fire "$lithium;s/vents_to: transom/vents_to: transom, vents_overboard: no/"
says bank-inboard 'Shut no vent: battery gas can explode.'
card hazard iris engine_fire "$lithium;s/vents_to: transom/vents_to: transom, vents_overboard: yes/"
says bank-vented 'CLOSE the vents. Not the battery’s own vent: its gas explodes.'
card hazard iris engine_fire "$lithium;s/\(  - {item: lithium_bank, tag: \)C32, \(.*\)side: port, \(.*vents_to: transom\)}/&\\n\1C33, \2side: starboard, \3, vents_overboard: yes}/"
says bank-one-unvented 'Shut no vent: battery gas can explode.'

bottle='/item: lpg_bottle_valve/s/zone: gas_locker/zone: forepeak/'
card hazard iris engine_fire "$bottle"
says gas-below 'DON’T TOUCH the gas bottles. Keep far.'
card hazard iris engine_fire '/item: lpg_bottle_valve/s/zone: gas_locker/from_cockpit: yes, zone: companionway/'
says gas-at-the-door 'SHUT the gas bottles. Only outside the smoke.'

# ---- galley ----

card hazard iris galley_fire ''
says galley-bottles 'Tap behind flames? SHUT the bottles first.'
says galley-bar 'ALONE: still burns? GO ON DECK, speak TWO: other shuts gas. Still burns? Speaks'
says galley-call 'I AM ON FIRE, GALLEY'
card hazard iris galley_fire "$bottle"
says galley-no-bottles 'Tap behind flames? Don’t cover. Go on deck.'
says galley-touch 'GAS FLAME? DON’T TOUCH. Go on deck.'
card hazard iris galley_fire 's/^gas: {carried: yes}/gas: {carried: no}/;/lpg_bottle_valve/d'
says galley-no-gas 'Then air the boat.'
silent galley-no-tap 'Tap behind'

# ---- cabin ----

card hazard iris cabin_fire ''
says cabin-powder 'Powder blinds you: stay at the exit.'
silent cabin-not-water 'Foam or water'
says cabin-count 'COUNT. One missing? Knock. Nobody goes in.'
silent cabin-shore 'Shore power'
card fleet tamarisk cabin_fire ''
says cabin-hatch 'Forward cabin, CENTRE, over the berth E19 Hatch = two levers, push: OPEN'
says cabin-no-jackets 'Fetch no jackets. Way blocked? Through the hatch. Stay low.'
says cabin-key-below 'ALONE: speak on deck after step 5'
card hazard iris cabin_fire ''
card hazard iris cabin_fire '/tag: F1/s/agent: powder/agent: foam/'
says cabin-foam 'Foam or water: not on live wires.'
silent cabin-not-powder 'Powder blinds'
card hazard iris cabin_fire '/tag: F1/s/agent: powder/agent: co2/'
says cabin-co2 'Then nobody inside: no air.'
card hazard iris cabin_fire '/tag: F1/s/agent: powder, //'
says cabin-unknown 'Stay at the exit. Then nobody inside: no air. Foam or water: not on live wires.'
card hazard iris cabin_fire '/tag: F1/{p;s/F1,/F8,/;s/agent: powder/agent: water/;s/side: starboard/side: port/;}'
says cabin-two 'Stay at the exit. Then nobody inside: no air. Foam or water: not on live wires.'
silent cabin-no-motor 'electric engine'
card islands eelgrass cabin_fire ''
says cabin-electric 'Card 6 · engine smokes'
card islands eelgrass cabin_fire '/space: engine_space_port, fuel/s/electric/diesel/'
says cabin-electric-too 'Card 6 · electric engine smokes'

# ---- battery, outboard ----

card hazard nettle battery_fire ''
says battery-smoke 'LITHIUM BATTERY, POISON SMOKE'
says battery-early 'GO TO CARD 13 EARLY: FIRE OR GAS.'

card unusual knot outboard_fire ''
says outboard-cord 'PULL the cord: it stops the engine.'
says outboard-fuel 'DON’T TOUCH the fuel. Keep far from it.'
says outboard-call 'OUTBOARD ENGINE, PETROL, FUEL IS ON'
card unusual knot outboard_fire '/item: petrol_stowage/s/zone: saloon/zone: cockpit/;/item: petrol_stowage/s/from_cockpit: no/from_cockpit: yes/'
says outboard-hose 'PULL off the fuel hose, shut the vent.'
silent outboard-hose-call 'FUEL IS ON'

# Where an engine inside her drives her too, the two cards are told apart.
card unusual knot outboard_fire 's/^  - {fuel: petrol, drive: outboard}/&\n  - {space: engine_space, fuel: diesel, drive: shaft}/'
says outboard-letter 'Card 3T'
exit $failures
