#!/bin/sh
# What people look for in a hurry stands on the page in the order in which it is read: read back
# from the structure of the printed files, which is the order for one who does not see the page.
. tests/tap.sh

# A task a line: boat, card, and the words that do it, one behind the other. Words behind ! must
# not stand on that card.
cat >"$scratch/tasks" <<'TASKS'
shut the diesel|tamarisk|ENGINE FIRE|SHUT the fuel|Cockpit locker, PORT, aft face|C4 Fuel valve|across pipe: SHUT
stop the engine|tamarisk|ENGINE FIRE|STOP the engine|Cockpit, STARBOARD, by the wheel|C1 Engine stop|hold STOP
find the extinguisher|tamarisk|GALLEY FIRE|USE this|Cockpit locker, STARBOARD|F3 Extinguisher
shut the gas|tamarisk|GALLEY FIRE|SHUT the gas|Gas locker, PORT|C8|turn right: SHUT|Galley, STARBOARD, under sink|C24|across: SHUT
say what is wrong|tamarisk|DISTRESS CALL|breaker VHF|PRESS the red key 5 s|VHF 16|MAYDAY, MAYDAY, MAYDAY|THIS IS TAMARISK|LAT|LONG|UTC|PERSONS ON BOARD
find the EPIRB from another card|tamarisk|FLOODING|EPIRB E3 on
find the EPIRB by the index|tamarisk|SAFETY PLAN, ON DECK|EPIRB|E3|Companionway, PORT
shut the outlet of the aft toilet|tamarisk|FLOODING|CLOSE the seacocks|STARB’D: across = SHUT|Aft toilet|C17 outlet
shut the seacock of the port hull|samphire|FLOODING|CLOSE the seacocks|PORT: across = SHUT|Port hull|C27 sink drain|STARB’D: across = SHUT|Starboard hull|C28 deck wash
throw the lifebuoy|tamarisk|MAN OVERBOARD|THROW all that floats|Pushpit, PORT|E11 Lifebuoy, on the rail
turn the electric pump off|tamarisk|DIESEL LEAK|TURN OFF the electric pump|Chart table, panel|C9 Electric pump|down: OFF|TURN ON|C9 Electric pump|up: ON
turn the inverter off|samphire|FLOODING|Bridge deck, PORT, chart table|C17 Inverter|hold 3 s: OFF
call in a gas leak without a radio on deck|bramble|GAS LEAK|wave, whistle|WAVE, WHISTLE|do not fetch it|!MAYDAY|!PAN PAN
tie and free the raft|samphire|ABANDON: GOING DOWN|Aft beam, under the net|E2 Raft|beam ring: TIED|Aft beam, under the net|E2 Raft|pull pin: RELEASE
turn the EPIRB on|tamarisk|ABANDON: GOING DOWN|EPIRB ON|Companionway, PORT|E3 EPIRB|lift switch: ON
TASKS

# cards_read BOAT: a card of her a line, title first, each of its words as read.
cards_read() {
    pdfinfo -struct-text "$scratch/out/$1.pdf" 2>/dev/null | awk -f tests/readback/structure.awk | awk '
        / *H1$/ { if (card != "") print card; card = "" ; next }
        /^ *"/ { sub(/^ *"/, ""); sub(/"$/, ""); card = card $0 }
        END { print card }'
}

# missing TASK CARDS: the first of its words that does not stand behind those before it.
missing() {
    awk -v task="$1" 'BEGIN { count = split(task, part, "|") }
        index($0, part[3]) == 1 {
            found = 1; rest = $0
            for (i = 4; i <= count; i++) {
                if (part[i] ~ /^!/) {
                    if (index($0, substr(part[i], 2))) { print "stands there: " part[i]; exit }
                    continue
                }
                at = index(rest, part[i])
                if (!at) { print "not in its place: " part[i]; exit }
                rest = substr(rest, at + length(part[i]))
            }
            exit
        }
        END { if (!found) print "no such card" }' "$2"
}

maydeck print tests/fleet --date "$print_date" -o "$scratch/out"
for boat in tamarisk samphire bramble; do
    cards_read "$boat" >"$scratch/$boat"
done
while IFS= read -r task; do
    boat=${task#*|}
    boat=${boat%%|*}
    expect_empty "tasks-${task%%|*}" "$(missing "$task" "$scratch/$boat")"
done <"$scratch/tasks"

# What is looked for can be missed.
expect_equal tasks-order-told 'not in its place: STOP the engine' \
    "$(missing 'x|tamarisk|ENGINE FIRE|SHUT the fuel|STOP the engine' "$scratch/tamarisk")"
expect_equal tasks-forbidden-told 'stands there: !MAYDAY' \
    "$(missing 'x|tamarisk|ENGINE FIRE|!MAYDAY' "$scratch/tamarisk")"
expect_equal tasks-card-told 'no such card' "$(missing 'x|tamarisk|GROUNDING|ROPE' "$scratch/tamarisk")"
exit $failures
