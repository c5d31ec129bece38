#!/bin/sh
# No printed line sends a person into smoke, gas or water: every card of every boat of
# tests/fleet, tests/islands, tests/unusual and tests/hazard is held against the rules below, and each rule is
# shown to tell of a card that breaks it. How cards, records and rules are read: tests/harm.
. tests/tap.sh

harm=$top/tests/harm
dumps=$scratch/dumps
mkdir "$dumps" "$scratch/pdf"

# Number | cards | what the boat has, or ! has not | kinds of lines (tests/harm/card.awk) |
# must or never, with a pattern; with, before, rows: what a step says, see tests/harm/rules.awk; or
# reckon, with a function there | why.
rules_list() {
    cat tests/harm/*.rules
    cat <<'RULES'
1 | vapour | - | bar signs head lethal row yes no ask caution panel set script | never | [Ff]lare|FLARE | a flare is a flame
2 | vapour | - | glyph | never | ^flares$ | its picture sends for it as the word does
3 | vapour | - | row | reckon | flares_gear | so does its row under another name
4 | burning | - | row | reckon | below_after_deck | who is on deck is not sent below again but outside the smoke
5 | vapour | - | row set | reckon | below_never | below there is gas, vapour or poison at every step
6 | all | - | never-bare | never | . | a prohibition without its word is an order
7 | all | - | never | never | [.!?] +[A-Z] | two sentences after one word: the second is an order
8 | vapour | - | bar signs head lethal row yes no caution panel set script | never | DSC|MMSI|[Rr]ed key | the fixed set stands in the gas
9 | vapour | - | panel set | never | [Ll]id|25 W|fixed radio[^ ]* [^a] | nor may its lid or power be touched
10 | steps | - | set row | reckon | switch_named | the radio's switch is turned off by no step, and named by no vapour card
11 | gas_leak petrol_leak battery_fire | !deck_handheld | script | never | . | words to say send for the radio that is not there
12 | gas_leak petrol_leak battery_fire | !deck_handheld | bar head yes no | never | (^|[^A-Za-z])(CALL|[Cc]alls?)([^A-Za-z]|$)|[Ss]end (MAYDAY|PAN) | so do orders to call
13 | vapour | !deck_handheld | bar | never | (^|[^ ]|[^O] |[^N]O )HANDHELD ON DECK | there is none on deck
14 | abandon_fire | !deck_handheld !handheld | script | never | . | words to say without a radio
15 | abandon_fire | handheld !deck_handheld | set | must | Fetch none | the one below is not fetched
16 | steps | - | bar head yes no | reckon | both_ways | a card does not tell to call and that nobody can
17 | all | !alert | any | never | [Rr]ed key|RED KEY|CANCEL MY DISTRESS ALERT | there is no such key: it is looked for in vain
18 | all | !alert | panel set | never | ([Ll]ift|[Oo]pen)[^.]* lid | nor its lid
19 | all | !fixed | any | never | [Ff]ixed radio (is|alone)|the fixed radio | no fixed radio is aboard
20 | abandon_ship abandon_fire | - | yes no | reckon | leave | an exit leads through jackets, call and line
21 | abandon_ship abandon_fire | - | head lethal yes no | reckon | cut_counted | cut early and those outside are lost
22 | abandon_ship | raft | head | reckon | raft_order | a raft that is thrown before it is tied drifts away
23 | abandon_fire | deck_raft | head | reckon | raft_order | the same
24 | abandon_ship | !raft !dinghy | head lethal yes no never | never | THROW|[Tt]hrow|CUT|[Cc]ut|STEP IN|[Ss]tep in|UNTIE | there is nothing to go into
25 | abandon_ship | !raft !dinghy | head | must | ^STAY ON THE BOAT | a hull is seen, a head is not
26 | abandon_ship abandon_fire | !raft | bar signs head lethal row yes no never caution set | never | [Rr]aft | there is no raft to tie a beacon to
27 | abandon_fire | !deck_raft | head lethal row yes no never | never | [Rr]aft | the raft lies in the smoke
28 | abandon_ship | !raft dinghy | head | must | UNTIE\. Row clear | tied to a boat that sinks the dinghy goes with it
29 | abandon_fire | !deck_raft deck_dinghy | head | must | UNTIE\. Row clear | or with one that blows up
30 | steps | - | row cell | reckon | contrary | the hand does what the row says
31 | steps | - | row cell | reckon | place_printed | gear whose place is not printed is not found
32 | steps | - | row cell | reckon | alike | pieces of two places on a row: one of them is not found
33 | steps | fixed | row | reckon | isolator | the call comes before its power goes
34 | engine_fire | lithium_unvented | head | never | VENT|[Cc]lose|CLOSE|BLOCK|nozzle|port|COOL|Water|FIGHT | battery gas that is shut in explodes
35 | engine_fire | lithium_unvented | row | reckon | shut_in | the gear for it sends people to the lid
36 | engine_fire | lithium_here radio | bar | must | MAYDAY | first smoke of a battery is the time to call
37 | all | - | row | reckon | set | each boat has her cards; one without gas none for gas
38 | battery_fire | - | row | reckon | extinguisher | nothing aboard stops it
39 | battery_fire | - | head lethal yes no | never | [Ff]ight|FIGHT|[Cc]ool |COOL|[Ee]xtinguish | nobody goes near it
40 | man_overboard | - | bar | must | ALONE: stay on deck | who goes below loses them from sight
41 | man_overboard | fixed !deck_fixed deck_handheld | set | reckon | set_first | the radio on deck comes first
42 | man_overboard | deck_fixed | panel | must | Radio: (Cockpit|Upper helm) | the radio on deck comes first
43 | man_overboard | - | row | reckon | ladder | in waves a ladder beats down on them
44 | man_overboard | !throwing | head | must | THROW cushions | something floats on every boat
45 | man_overboard | !lifting sail | head lethal | must | mast rope|halyard | there is a winch on every boat
46 | man_overboard | - | caution | must | BREATHING\?.*breaths | a face under water outranks all
47 | man_overboard | !harness | head lethal | never | [Cc]lip|CLIP | there is no line to clip on
48 | galley_fire | !gas | head lethal row never caution | never | [Gg]as([^o]|$)|GAS | she carries none
49 | all | - | signs bar yes no | reckon | exits | an exit to a card that is not there leads nowhere
50 | engine_fire galley_fire cabin_fire battery_fire gas_leak petrol_leak | - | yes no head lethal | never | GOING DOWN|[Gg]oing down | that card sends below for gear
51 | all | - | bold | reckon | verbs | what to do comes first
52 | all | - | any | never | [{}]|([Ss]teps?|[Cc]ard|to|and) \? | a number that was not found
53 | vapour | - | row | reckon | spark | what sparks lights it
54 | gas_leak petrol_leak abandon_fire | - | row set | reckon | same_locker | where the bottle or can stands the vapour lies
55 | flooding | - | row | reckon | pump_feed | the pumps may live on 230 V
56 | burning | - | set | reckon | below_said | what one calls with below lies in the smoke
57 | burning flooding abandon_ship | - | set | reckon | smoke_said | in smoke and water nobody goes for what is below
58 | vapour | deck_fixed | bar head panel | never | NO RADIO([^ ]|$| [^I]) | there is one
59 | engine_fire | lithium_here | row set | reckon | below_never | the way down leads past the battery
61 | cabin_fire | - | row | reckon | back_in | the card forbids to go back in for anything
62 | all | !epirb !personal_beacon !sart | bar head lethal row yes no never set | never | [Bb]eacon|BEACON|EPIRB | there is none to turn on
63 | man_overboard | !boarding_ladder | head lethal row | never | [Ll]adder | nor a ladder
64 | man_overboard | !dinghy | head lethal row | never | [Dd]inghy | nor a dinghy
65 | abandon_fire | deck_epirb | head | must | TURN ON|EPIRB ON|BEACON ON | a beacon that nobody turned on calls nobody
66 | abandon_fire | - | set | never | [Ss]tay on deck | the card leads off the boat
67 | engine_fire | lithium_here | bar head lethal row set | never | [Ff]lare | a flare lights battery gas
68 | engine_fire | lithium_here | panel set script | never | DSC|MMSI|[Rr]ed key|[Ll]id|25 W|Radio: | beside burning lithium one calls by handheld, from deck
69 | burning | - | row | reckon | isolator_reach | no battery switch is worth the smoke
70 | burning | - | head | never | ^GO ON\. | with nothing to do outside, to go on reads as to go in
71 | burning battery_fire abandon_fire | - | panel set | reckon | panel_reach | nobody fetches from the smoke what else calls
73 | all | !sail | bar signs head lethal yes no ask never caution panel set | never | (^|[^A-Za-z])([Ss]ail|SAIL|[Mm]ast|MAST|[Hh]alyard|[Ww]inch)|[Hh]eave to | she has none
74 | all | !cabin | bar signs head lethal yes no ask never caution panel set | never | [Bb]elow|BELOW|[Cc]abin|[Hh]atches|[Dd]oors|(^|[^to] )[Ww]ake|WAKE|[Ff]loorboard|[Kk]nee-deep | nobody lives below
75 | all | !engine | bar signs head lethal yes no ask never caution | never | [Nn]eutral|NEUTRAL|ENGINE|[Pp]ropeller | no engine drives her
76 | all | jet | never | never | [Pp]ropeller | a jet drives her
77 | all | !jet | never | never | (^|[^A-Za-z])jet | no jet drives her
78 | engine_fire galley_fire cabin_fire flooding man_overboard abandon_ship diesel_leak petrol_leak | !gas !lithium_here | bar signs head lethal yes no ask never caution | never | (^|[^r] |[^A-Za-z ])([Gg]as|GAS)([^A-Za-z]|$) | she carries none
79 | flooding | !combustion | head lethal | never | [Ee]ngine|ENGINE | nothing draws cooling water in
80 | all | - | bar signs head lethal yes no ask never caution | never | [Ww]heel|WHEEL|(^|[^y] )[Tt]iller | some have the one, some the other
81 | flooding | !pump | bar signs head lethal yes no ask never caution | never | [Pp]ump|PUMP | there is none
82 | flooding | !maybe_bucket_lanyard | head lethal | never | [Bb]ucket|BUCKET | nor a bucket
83 | petrol_leak | !maybe_bow_thruster | head lethal | never | [Tt]hruster | nor a thruster
85 | all | !gas | bar signs head lethal row yes no ask never caution set | never | [Gg]as (hose|lit|bottle|valve|switch)|[Bb]ottle | no cooking gas is aboard
84 | petrol_leak | petrol_inside | head | never | OUTBOARD | the cord stops what is inside her
86 | burning | - | signs | must | BATTERY hisses[^?]*\? Card 6 | a fuel fire is starved, a battery is run from
87 | burning battery_fire | - | bar signs head lethal row yes no caution | never | (^|[^A-Za-z])(OUT|LEAVE|CUT)([^A-Za-z]|$)|([Aa]ll|then|[Nn]ot) out | out is said of a dead fire alone
88 | burning | radio !lithium_here | bar | must | ^(NO SMOKE. )?ALONE.*TWO.*3 OR MORE: | who is alone, and who is not, reads what to do
89 | cabin_fire | - | head | reckon | count_first | powder goes into no cabin with a sleeper, and no hatch is shut on one
90 | burning | - | row | reckon | shore_power | at sea none is plugged in, in a berth all go ashore
91 | engine_fire outboard_fire | - | head | reckon | reported | who cannot stop it tells those who come
92 | burning battery_fire | - | row | reckon | upwind_deck | what is made ready upwind lies on deck
93 | galley_fire | gas | lethal | must | Tap behind flames | a pan is not covered over gas that flows
94 | galley_fire | - | head | reckon | shut_counted | nobody is shut in with the fire
95 | burning battery_fire | - | head bar | never | No jackets|Count\. Only | there are some, and people are counted, not they
96 | burning | - | bar | never | RED KEY, speak after | the key comes first, and takes seconds
97 | galley_fire cabin_fire | cabin | head lethal | must | S(top|TOP) the boat | her own wind feeds the fire
150 | engine_fire outboard_fire galley_fire cabin_fire battery_fire gas_leak petrol_leak flooding | - | berth | reckon | ashore_said | who can step ashore stays aboard for nothing
151 | engine_fire outboard_fire galley_fire cabin_fire battery_fire gas_leak petrol_leak flooding | - | berth | reckon | phone_said | and rings who comes
152 | engine_fire outboard_fire galley_fire cabin_fire battery_fire gas_leak petrol_leak | - | anchor | reckon | anchor_said | who cannot step ashore keeps out of smoke and gas
153 | all | - | anchor | reckon | dinghy_holds | a dinghy that is too small, or jackets that are below, cost lives
154 | all | !deck_handheld | anchor berth ashore | never | [Hh]andheld | nobody goes below for one
155 | all | !deck_raft | anchor berth ashore | never | [Rr]aft | nor for a raft
156 | flooding | !pump | berth | never | [Pp]ump | there is none
72 | all | radioless | bar head lethal row cell yes no ask never caution set panel | reckon | radioless | nobody calls without a radio
RULES
}
rules_list >"$scratch/rules"

# Orders that a headline or an exit may begin with.
verbs_list() {
    cat <<'VERBS'
ADD ANCHOR BAIL BLOCK CALL CATCH CHECK CLOSE COME COUNT COVER CUT DO DRESS FIGHT FIND FREE GET GO
HOLD KEEP LET LIFT LOOK MAKE MAYDAY NEUTRAL OFF ON OPEN PAN PHONE PLUG POINT PRESS PULL PUMP PUSH PUT
RELEASE SAIL SEND SHOUT SHUT SIGNAL STAND START STAY STEP STOP STUFF SWITCH TAKE THROW TIE TOUCH TREAT
TURN UNTIE USE WAKE WATCH WAVE WRITE AIR
ASK CLIP DROP GIVE HELP HIT LAY MOVE POUR ROLL SMELL STEER TELL TRY WET
NO
VERBS
}
verbs_list >"$scratch/verbs"

# card_lines DUMP...
card_lines() {
    awk -f tests/item.awk -f "$harm/card.awk" "$@"
}

# lines_judge LINES RECORD...: what breaks a rule. `spared` are boats whose cards are held back.
lines_judge() {
    lines=$1
    shift
    awk -v tell_applied="${tell_applied-}" -v spared="${spared-unknown}" \
        -f "$harm/record.awk" -f "$harm/gear.awk" -f "$harm/rules.awk" \
        mode=zones include/zone_list.h mode=words procedures/words/en/words.yaml \
        mode=verbs "$scratch/verbs" mode=rules "$scratch/rules" mode=boat "$@" \
        FS='	' mode=cards "$lines"
}

# order_check LINES TEXTS: the steps of each card are read in their order in the PDF's text:
# files BOAT.NUMBER, one a page, by the card's number.
order_check() {
    awk -F '	' -v texts="$2" '
        function page_check(    file, at, found) {
            if (!steps || page == "") return
            file = texts "/" boat "." page
            while ((getline found < file) > 0) {
                pages[file] = 1
                if (found == step[at + 1] && at < steps) at++
            }
            close(file)
            if (at < steps) print 60, boat, card ": not read in its turn: " step[at + 1]
        }
        $1 != boat || $2 != card { page_check(); steps = 0; page = ""; boat = $1; card = $2 }
        $3 == "number" { split($5, part, " "); page = part[2] }
        $3 == "head" { step[++steps] = $4 " " $5 }
        END { page_check(); for (file in pages) n++; if (n < 30) print n + 0 " pages read" }' "$1"
}

# ---- every card ----

# Boats whose record is whole in their own file.
records=$(grep -L '^like:' tests/fleet/boats/*.yaml tests/unusual/boats/*.yaml \
    tests/hazard/boats/*.yaml tests/islands/boats/*.yaml)
for base in fleet unusual hazard islands; do
    for record in $(echo "$records" | grep "^tests/$base/"); do
        boat=$(basename "$record" .yaml)
        maydeck print "tests/$base" --boat "$boat" --dump --date "$print_date" -o "$dumps"
        [ "$status" -le 1 ] ||
            not_ok "harm-printed-$boat" "status $status" "$(cat "$scratch/stderr")"
    done
done
card_lines "$dumps"/*.dump >"$scratch/lines"
lines=$(wc -l <"$scratch/lines" | tr -d ' ')
[ "$lines" -gt 5000 ] && ok harm-lines || not_ok harm-lines "only $lines lines were read"

# A page's text is known by the number of its card. Boats with a raft, a dinghy, neither, two
# engines.
for boat in nettle bracken anise hyssop; do
    maydeck print tests/hazard --boat "$boat" --date "$print_date" -o "$scratch/pdf"
    pdftotext -raw "$scratch/pdf/$boat.pdf" - | awk -v out="$scratch/pdf/$boat." '
        BEGIN { RS = "\f" }
        match($0, /Card [0-9]+[A-Z]?( front)?\n/) {
            page = substr($0, RSTART + 5, RLENGTH - 6)
            sub(/ front$/, "", page)
            print > (out page)
        }'
done

awk -F '	' '$1 ~ /^(nettle|bracken|anise|hyssop)$/' "$scratch/lines" >"$scratch/read"
{
    # shellcheck disable=SC2086
    tell_applied=1 lines_judge "$scratch/lines" $records
    order_check "$scratch/read" "$scratch/pdf"
} >"$scratch/found"

# Each rule is a test; what breaks it is shown.
rules_list | while IFS='|' read -r number _; do echo "${number% }"; done >"$scratch/numbers"
for number in $(cat "$scratch/numbers") 60; do
    expect_empty "harm-rule-$number" "$(sed -n "s/^$number //p" "$scratch/found")"
done
expect_empty harm-other "$(grep -v '^[0-9][0-9]* ' "$scratch/found")"

# ---- each rule tells of a card that breaks it ----

# Number | boat | card | what is changed: the dump or the boat's record (lose: the card is not
# there) | how.
proofs_list() {
    cat tests/harm/*.proofs
    cat <<'PROOFS'
1 | nettle | gas_leak | dump | s/"Torch on? It stays on\. Tap/"Light a flare. Tap/
2 | nettle | gas_leak | dump | s/glyph=bilgeman/glyph=flares/
3 | nettle | gas_leak | record | s/item: bilge_pump_manual/item: flares/
4 | nettle | engine_fire | record | s/\(item: lifejacket.*\)from_cockpit: yes/\1from_cockpit: no/
4 | fennel | cabin_fire | dump | s/"Only outside the smoke\. /"Quickly. /
4 | tamarisk | cabin_fire | dump | s/Way blocked?/Quick?/
4 | anise | galley_fire | record | s/\(item: fire_blanket.*zone: \)galley/\1forepeak/
5 | nettle | gas_leak | record | s/\(item: bilge_pump_manual.*\)from_cockpit: yes/\1from_cockpit: no/
5 | nettle | gas_leak | record | s/\(item: bilge_pump_manual.*\)from_cockpit: yes/\1handle: {zone: forepeak}, from_cockpit: yes/
5 | hyssop | battery_fire | record | s/\(item: vhf_handheld.*zone: \)cockpit/\1port_hull/
6 | nettle | gas_leak | dump | s/face=bold\(.*"Never"\)/face=regular\1/
6 | nettle | engine_fire | dump | s/^text never .*"Never"$//
7 | nettle | gas_leak | dump | s/"for anything\."/"it. Send one."/
8 | nettle | gas_leak | dump | s/"Stay on deck, upwind\."/"Press the red key."/
9 | nettle | gas_leak | dump | s/"Stay on deck, upwind\."/"Lift the lid."/
10 | nettle | gas_leak | dump | s/"Stay on deck, upwind\."/"ON: breaker VHF."/
10 | nettle | cabin_fire | dump | s/"Switches stay as they are\."/"OFF: breaker VHF."/
11 | eryngo | gas_leak | record | s/\(item: vhf_handheld.*\)from_cockpit: yes/\1from_cockpit: no/
11 | eryngo | gas_leak | record | s/\(item: vhf_handheld.*\)in_charger: no/\1in_charger: yes/
12 | hyssop | battery_fire | record | s/\(item: vhf_handheld.*\), in_charger: no/\1/
12 | nettle | petrol_leak | record | s/\(item: vhf_handheld.*\)from_cockpit: yes/\1from_cockpit: no/
13 | eryngo | abandon_fire | record | s/\(item: vhf_handheld.*\)from_cockpit: yes/\1from_cockpit: no/
14 | nettle | abandon_fire | record | /item: vhf_handheld/d
15 | bracken | abandon_fire | dump | s/Fetch none\./Fetch it./
16 | bracken | gas_leak | dump | s/wave, whistle\. Fetch/call by the set. Fetch/
16 | anise | gas_leak | dump | s/^\(text decision .*\)"Stay upwind\./\1"Send MAYDAY./
16 | bracken | battery_fire | dump | s/^\(text call line .*\)"NO HANDHELD TO USE:"/\1"MAYDAY NOW, by handheld."/
17 | anise | distress_call | dump | s/"Press, speak, let go\."/"Press the red key."/
18 | anise | distress_call | dump | s/"Press, speak, let go\."/"Lift its lid."/
19 | cicely | flooding | dump | s/"Flares [^"]*"/"Leave the fixed radio alone."/
20 | nettle | abandon_ship | dump | s/"Do steps 2 to 8, now\."/"Leave now."/
20 | nettle | abandon_ship | dump | s/"Do steps 2 to 8, now\."/"Do steps 5 to 8, now."/
20 | nettle | abandon_ship | dump | s/"Do steps 2 to 8, now\."/"Do steps 2 to 6, now."/
21 | nettle | abandon_ship | dump | s/"ALL IN? COUNT\. CUT"/"SINKING? CUT"/
22 | nettle | abandon_ship | dump | s/"5"$/"7"/
23 | nettle | abandon_fire | dump | s/"TIE"/"HOLD"/
24 | anise | abandon_ship | dump | s/"TAKE"/"THROW"/
25 | anise | abandon_ship | dump | s/"STAY ON THE BOAT"/"STAY WARM"/
26 | anise | abandon_ship | dump | s/"to one person\."/"to the raft."/
27 | parsley | abandon_fire | dump | s/"the dinghy in/"the raft in/
28 | bracken | abandon_ship | dump | s/"Row clear\."/"Wait."/
29 | parsley | abandon_fire | dump | s/"Row clear\."/"Wait."/
30 | mallow | flooding | dump | s/"SHUT"/"OPEN"/
30 | mallow | flooding | dump | s/"up: ON"/"down: OFF"/
30 | hyssop | engine_fire_port | dump | s/"hold STOP P"/"right: ON"/
31 | nettle | engine_fire | dump | s/"Cockpit, STARBOARD,"/"Cockpit,"/
31 | nettle | engine_fire | dump | s/"by the wheel"/"aft"/
32 | nettle | engine_fire | dump | s/^\(text steps .*role=row ink=white.*\)"E1"$/&\n\1"C6"/
33 | parsley | engine_fire_starboard | dump | s/"AFTER THE CALL: TURN OFF"/"TURN OFF"/
33 | parsley | engine_fire_starboard | dump | s/The fixed radio is dead then\./It is dark then./
33 | parsley | engine_fire_starboard | dump | s/ after step 5/ after step 7/
34 | eryngo | engine_fire | dump | s/"KEEP FAR"/"CLOSE"/
35 | eryngo | engine_fire | record | s/item: grab_bag/item: fire_port/
36 | eryngo | engine_fire | dump | s/MAYDAY NOW/GET READY/
37 | nettle | gas_leak | lose | -
37 | nettle | battery_fire | lose | -
37 | nettle | gas_leak | record | s/gas: {carried: yes/gas: {carried: no/
38 | nettle | battery_fire | dump | s/"E1"/"F1"/
39 | nettle | battery_fire | dump | s/"DON’T TOUCH"/"FIGHT"/
40 | nettle | man_overboard | dump | s/^\(text call line .*\)"stay on deck/\1"go down/
41 | nettle | man_overboard | dump | s/"Alone? Stay on/"Hold on/
41 | samphire | man_overboard | dump | s/"second handset,/"handheld E4,/
42 | iris | man_overboard | dump | s/Radio: Cockpit/Radio: Chart table/
43 | nettle | man_overboard | dump | s/flat water/any water/
44 | anise | man_overboard | dump | s/"cushions,/"buoys,/
45 | anise | man_overboard | dump | s/mast rope/arms/
46 | nettle | man_overboard | dump | s/BREATHING/SPEAKING/
47 | anise | man_overboard | dump | s/"HOLD ON\."/"CLIP ON."/
48 | cicely | galley_fire | dump | s/"PAN?/"GAS?/
49 | nettle | engine_fire | dump | s/"Card 13, ABANDON/"Card 44, ABANDON/
49 | nettle | engine_fire | dump | s/"Card 13, ABANDON/"Card 12, ABANDON/
49 | nettle | cabin_fire | dump | s/BATTERY hisses? Card 6/BATTERY hisses? Card 44/
50 | nettle | engine_fire | dump | s/\(text decision .*ABANDON: \)[A-Za-z ]*\./\1going down./
51 | nettle | engine_fire | dump | s/"STOP"/"THE"/
51 | nettle | engine_fire | dump | s/"Keep it shut until"/"Shut until"/; s/"Stop fighting\. Get ready\."/"Too late."/
52 | nettle | engine_fire | dump | s/"After step 5: /"After step ?: /
52 | nettle | engine_fire | dump | s/"the engine\."/"the {engine}."/
53 | nettle | gas_leak | record | s/item: bilge_pump_manual/item: bilge_pump_electric/
54 | hyssop | gas_leak | record | s/\(item: vhf_handheld.*zone: \)cockpit/\1gas_locker/
54 | nettle | gas_leak | dump | s/Handheld E11: do not fetch it\./Take handheld E11./
54 | nettle | abandon_fire | record | s/\(item: lpg_bottle_valve.*side: \)port/\1starboard/
55 | tamarisk | flooding | record | s/fed_by: battery/fed_by: mains/
55 | samphire | flooding | record | s/, fed_by: battery//
56 | knapweed | engine_fire | dump | s/"Only outside the smoke:"/"Now:"/
57 | nettle | engine_fire | record | s/\(item: vhf_handheld.*\)from_cockpit: yes/\1from_cockpit: no/
58 | iris | gas_leak | dump | s/NO HANDHELD/NO RADIO/
59 | fennel | engine_fire | record | s/\(item: fuel_shutoff_diesel.*zone: \)cockpit_locker/\1aft_cabin/
61 | nettle | cabin_fire | record | s/\(item: grab_bag.*zone: \)cockpit_locker/\1forepeak/
62 | hyssop | abandon_fire | record | /item: epirb/d
63 | nettle | man_overboard | record | /item: boarding_ladder/d
64 | nettle | man_overboard | dump | s/"Then hands\."/"The dinghy."/
65 | cicely | abandon_fire | dump | s/"TURN ON"/"TAKE"/; s/ EPIRB ON\."/"/
65 | nettle | abandon_fire | record | s/\(item: petrol_stowage.*zone: \)lazarette/\1pushpit/
67 | fennel | engine_fire | dump | s/"Wave, whistle, shout\."/"Light a flare."/
68 | eryngo | engine_fire | dump | s/"highest power\."/"25 W."/
69 | parsley | engine_fire_starboard | record | s/\(item: battery_isolator_service.*\)from_cockpit: yes/\1from_cockpit: no/
70 | nettle | engine_fire | dump | s/"DON’T GO IN\."/"GO ON."/
71 | nettle | engine_fire | record | s/\(item: vhf_handheld.*\)from_cockpit: yes/\1from_cockpit: no/
71 | nettle | cabin_fire | record | s/\(item: epirb.*zone: \)lazarette\(.*\)from_cockpit: yes/\1forepeak\2from_cockpit: no/
71 | anise | galley_fire | record | s/\(item: flares.*\)from_cockpit: yes/\1from_cockpit: no/
71 | knapweed | cabin_fire | dump | s/"Only outside the smoke:"/"Now:"/
71 | knapweed | cabin_fire | record | s/not_fitted:/  - {item: vhf_handheld, tag: E99, zone: cockpit}\n&/
71 | cicely | battery_fire | record | s/\(item: epirb.*\)from_cockpit: yes/\1from_cockpit: no/
72 | dittany | engine_fire | dump | s/^\(text call line .*\)"NO RADIO:"/\1"CALL now:"/
72 | dittany | flooding | dump | s/"Phone for help\."/"Send PAN PAN."/
72 | dittany | man_overboard | dump | s/"SHOUT, POINT\."/"AFTER THE CALL: POINT."/
72 | cicely | galley_fire | dump | s/\(text decision .*\), signal"/\1, send"/
72 | anise | engine_fire | record | s/^   vhf_handheld, /   vhf_handheld, vhf_dsc, /
73 | smew | man_overboard | dump | s/"Steer to the side/"Sail to the side/
73 | whimbrel | man_overboard | record | s/rig: sail/rig: motor/
74 | smew | petrol_leak | dump | s/"until dry and no smell\."/"until the cabin is dry."/
74 | knot | cabin_fire | record | s/rooms: \[[^]]*\]/rooms: []/
75 | dabchick | man_overboard | dump | s/them by a line\. Then/ENGINE OFF. Then/
75 | whimbrel | man_overboard | record | /drive: outboard/d
76 | skua | man_overboard | dump | s/the jet run/a propeller turn/
77 | smew | man_overboard | dump | s/a propeller/the jet/
78 | knot | galley_fire | record | s/carried: yes/carried: no/
79 | whimbrel | flooding | dump | s/"all seacocks\."/"seacocks. Engine’s last."/
80 | smew | man_overboard | dump | s/"Steer to the side/"Wheel to the side/
81 | smew | flooding | dump | s/"with buckets,/"with pumps,/
82 | dabchick | flooding | dump | s/"with all that holds water\."/"with buckets."/
83 | smew | petrol_leak | dump | s/"the engine\."/"the thruster."/
84 | skua | petrol_leak | dump | s/"ENGINE RUNS/"OUTBOARD RUNS/
73 | thrift | diesel_leak | dump | s/"Rocks near? Anchor first\."/"Rocks near? Sail."/
74 | sundew | petrol_leak | dump | s/"pumps or engine\."/"the hatches."/
85 | thrift | galley_fire | dump | s/flame at or below a burner/flame at the gas hose/
79 | eelgrass | flooding | dump | s/"all seacocks\."/"the engine\x27s seacock."/
37 | thrift | engine_fire | lose | -
37 | sundew | flooding | lose | -
86 | nettle | cabin_fire | dump | s/BATTERY hisses? Card 6/battery hot/
87 | nettle | galley_fire | dump | s/"the cover for/"it all out for/
87 | nettle | battery_fire | dump | s/"DON’T TOUCH"/"LEAVE"/
88 | nettle | engine_fire | dump | s/^\(text call line .*\)"TWO[^"]*"/\1"Then"/
89 | nettle | cabin_fire | dump | s/"COUNT\."/"LOOK."/
90 | nettle | cabin_fire | record | s/item: grab_bag/item: shore_power_inlet/
91 | iris | engine_fire | dump | s/, ENGINE RUNS//
91 | knot | outboard_fire | dump | s/, FUEL IS ON//
92 | nettle | cabin_fire | record | s/\(item: grab_bag.*zone: \)cockpit_locker/\1forepeak/
93 | nettle | galley_fire | dump | s/"Tap behind flames?/"Too hot?/
94 | nettle | galley_fire | dump | s/"Count\."/"Go."/
95 | nettle | engine_fire | dump | s/All on deck\. Count\./On deck. Count. No jackets./
96 | iris | engine_fire | dump | s/RED KEY now\. Speak after/RED KEY, speak after/
97 | nettle | cabin_fire | dump | s/"the boat\."/"the engine."/
97 | nettle | galley_fire | dump | s/Stop the boat\. //
66 | nettle | abandon_fire | dump | s/"Press, speak, let go\."/"Stay on deck."/
150 | nettle | engine_fire | dump | s/"IN A BERTH? GO ASHORE\./"IN A BERTH? STAY./
151 | nettle | engine_fire | dump | s/ [+]999 02: FIRE/ Shout: FIRE/
152 | nettle | cabin_fire | dump | s/"AT ANCHOR? STAY UPWIND ON DECK\."/"AT ANCHOR? GO BELOW."/
153 | bracken | cabin_fire | record | s/\(item: dinghy.*\)persons: 6/\1persons: 5/
153 | bracken | gas_leak | record | s/\(item: lifejacket.*zone: \)cockpit/\1saloon/
154 | bracken | cabin_fire | dump | s/"Jackets on\."/"Jackets on. Take handheld."/
155 | parsley | cabin_fire | dump | s/"Jackets on\.[^"]*"/"Raft ready."/
156 | smew | flooding | dump | s/GO ASHORE\. PHONE/GO ASHORE. Pumps stay on. PHONE/
PROOFS
}

# told NUMBER BOAT CARD LINES RECORD: how often the rule tells of the card.
told() {
    lines_judge "$4" "$5" | grep -c "^$1 $2 $3: "
}

# proof NUMBER BOAT CARD WHAT HOW
proof() {
    record=$(echo tests/*/boats/"$2".yaml)
    name=harm-proof-$1-$3
    awk -F '	' -v boat="$2" '$1 == boat' "$scratch/lines" >"$scratch/before"
    cp "$scratch/before" "$scratch/after"
    mkdir -p "$scratch/boats"
    cp "$record" "$scratch/boats/$2.yaml"
    case $4 in
    record) sed "$5" "$record" >"$scratch/boats/$2.yaml" ;;
    *) awk -F '	' -v card="$3" '$2 != card' "$scratch/before" >"$scratch/after" ;;
    esac
    if [ "$4" = dump ]; then
        rm -rf "$scratch/changed"
        mkdir "$scratch/changed"
        for page in "$dumps/$2-$3.dump" "$dumps/$2-$3"_[0-9].dump; do
            [ ! -f "$page" ] || sed "$5" "$page" >"$scratch/changed/$(basename "$page")"
        done
        card_lines "$scratch/changed"/*.dump >>"$scratch/after"
    fi
    if cmp -s "$scratch/before" "$scratch/after" && cmp -s "$record" "$scratch/boats/$2.yaml"; then
        not_ok "$name" "nothing was changed by: $5"
    elif [ "$(told "$1" "$2" "$3" "$scratch/after" "$scratch/boats/$2.yaml")" -gt \
        "$(told "$1" "$2" "$3" "$scratch/before" "$record")" ]; then
        ok "$name"
    else
        not_ok "$name" "not told of: $5"
    fi
}

proofs_list >"$scratch/proofs"
while IFS= read -r line; do
    number=${line%% |*} line=${line#* | }
    boat=${line%% |*} line=${line#* | }
    card=${line%% |*} line=${line#* | }
    proof "$number" "$boat" "$card" "${line%% |*}" "${line#* | }"
done <"$scratch/proofs"
expect_empty harm-proofs-all "$(cut -d' ' -f1 "$scratch/proofs" | sort -u |
    cat - "$scratch/numbers" | sort | uniq -u)"

# The order of reading: two lines of a page change places.
awk '/^3 /{ held = $0; next } { print } /^4 / && held != "" { print held; held = "" }' \
    "$scratch/pdf/nettle.3" >"$scratch/turned"
mv "$scratch/turned" "$scratch/pdf/nettle.3"
order_check "$scratch/read" "$scratch/pdf" |
    grep -q '^60 nettle engine_fire: not read in its turn' && ok harm-proof-60 ||
    not_ok harm-proof-60 'a page read out of its order is not told of'

# A changed procedure: the program itself holds back the card that leads there.
mkdir -p "$scratch/tool/out" "$scratch/tool/dumps"
cp -R procedures "$scratch/tool/"
cp -R out/fonts "$scratch/tool/out/"
cp "$MAYDECK" "$scratch/tool/out/maydeck"
sed 's/card: abandon_fire/card: abandon_ship/' procedures/engine_fire.yaml \
    >"$scratch/tool/procedures/engine_fire.yaml"
seal "$scratch/tool/procedures"
$WRAP "$scratch/tool/out/maydeck" print tests/hazard --boat nettle --dump --date "$print_date" \
    -o "$scratch/tool/dumps" >"$scratch/stdout" 2>"$scratch/stderr"
grep -q 'error: 3 ENGINE FIRE > 12 ABANDON.*(R16)$' "$scratch/stderr" && ok harm-proof-procedure ||
    not_ok harm-proof-procedure 'the chain is not told' "$(cat "$scratch/stderr")"
expect_equal harm-proof-procedure-held 'nettle-battery_fire.dump nettle-cabin_fire.dump ' \
    "$(cd "$scratch/tool/dumps" && ls | grep 'battery_fire\|cabin_fire\|engine_fire' | tr '\n' ' ')"
exit $failures
