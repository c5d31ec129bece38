#!/bin/sh
# Cards that wait for a fact, and cards that follow one: the same boat with one line
# of its record changed at a time.
. tests/tap.sh

fleet=$scratch/fleet
out=$scratch/out

# changed BOAT SED...: a fresh fleet in which that boat's record is edited.
changed() {
    boat=$1
    shift
    rm -rf "$fleet" "$scratch/cards"
    cp -R tests/fleet "$fleet"
    record=$fleet/boats/$boat.yaml
    sed "$@" "tests/fleet/boats/$boat.yaml" >"$record"
    ! cmp -s "tests/fleet/boats/$boat.yaml" "$record" || not_ok "held-changed" "no change: $*"
}

# Prints the changed boat into a fresh $out; more arguments are options.
printed() {
    rm -rf "$out"
    mkdir "$out"
    draft=
    case " $* " in
    *" --draft "*) draft=-draft ;;
    esac
    maydeck print "$fleet" --boat "$boat" --date "$print_date" -o "$out" "$@"
}

# What was printed last: the boat's set, or its draft.
pages_count() {
    pdfinfo "$out/$boat$draft.pdf" 2>/dev/null | sed -n 's/^Pages: *//p'
}

# The numbers and titles of the pages printed, in order, as the file's outline has them.
titles_list() {
    qpdf --json --json-key=outlines "$out/$boat$draft.pdf" 2>/dev/null |
        sed -n 's/^ *"title": "\(.*\)",\{0,1\}$/\1/p'
}

# The cards that the last run said are held back for want of an item, a line each.
held_list() {
    sed -n "s/.*: held: $1 is not recorded: it holds back the cards\{0,1\} //p" "$scratch/stderr" |
        sed 's/; /\
/g'
}

# lines_without A B: the lines of A that are not in B.
lines_without() {
    echo "$2" >"$scratch/b"
    echo "$1" | grep -vxF -f "$scratch/b"
}

# card_text TITLE: the words of the first page with this title, as they are read.
card_text() {
    page=$(qpdf --json --json-key=outlines "$out/$boat$draft.pdf" 2>/dev/null |
        sed -n -e 's/^ *"destpageposfrom1": \([0-9]*\),$/\1/p' \
            -e 's/^ *"title": "\(.*\)",\{0,1\}$/=\1/p' |
        awk -v title="=$1" '/^[0-9]/ { page = $0 } $0 == title { print page; exit }')
    [ -n "$page" ] && pdftotext -raw -f "$page" -l "$page" "$out/$boat$draft.pdf" -
}

# says NAME TITLE WORDS...: all of the words stand on the card, wherever lines break.
says() {
    name=$1 title=$2
    shift 2
    card_text "$title" >"$scratch/card"
    for words in "$@"; do
        if tr '\n' ' ' <"$scratch/card" | grep -qF -e "$words"; then
            ok "$name"
        else
            not_ok "$name" "not on $title: $words" "$(cat "$scratch/card")"
        fi
    done
}

# silent NAME TITLE WORDS...: the card is printed, and none of the words is on it.
silent() {
    name=$1 title=$2
    shift 2
    card_text "$title" >"$scratch/card"
    [ -s "$scratch/card" ] || not_ok "$name" "$title is not printed"
    for words in "$@"; do
        if tr '\n' ' ' <"$scratch/card" | grep -qF -e "$words"; then
            not_ok "$name" "on $title: $words" "$(cat "$scratch/card")"
        else
            ok "$name"
        fi
    done
}

# step_words CARD STEP: what a step and its cases say, a line each, without stars.
step_words() {
    awk -v step="$2" '
        /^[a-z]/ { steps = $1 == "steps:" }
        steps && /^  [a-z]/ { inside = $1 == step ":" }
        steps && inside && /^ +act: / {
            sub(/^[^"]*"/, ""); sub(/"[^"]*$/, ""); gsub(/\*\*/, ""); print
        }
    ' "procedures/words/en/$1.yaml"
}

# The number and title of a card as the outline has them.
title_of() {
    letter=$(sed -n 's/^kind: distress$/A/p' "procedures/$1.yaml")    # the first of two pages
    echo "$(sed -n 's/^number: //p' "procedures/$1.yaml")$letter $(sed -n 's/^title: //p' \
        "procedures/words/en/$1.yaml" | tr -d '"' | tr '[:lower:]' '[:upper:]')"
}

# ---- nothing changed: what the rest is measured by ----

boat=tamarisk
fleet=tests/fleet
printed
expect_status held-whole 0
titles_list >"$scratch/titles"
whole=$(wc -l <"$scratch/titles" | tr -d ' ')
# A card with its call on the back has its title on two pages, one leaf; each leaf has two pages.
leaves=$(sort -u "$scratch/titles" | wc -l | tr -d ' ')
[ "$leaves" -lt "$whole" ] && ok held-whole-backs || not_ok held-whole-backs "$(cat "$scratch/titles")"
expect_equal held-whole-pages $((2 * leaves)) "$(pages_count)"
key=$(sed -n 's/^  distress_key: //p' tests/fleet/boats/tamarisk.yaml)
says held-whole-key "$(title_of distress_call)" "$key"
grep -qx '3 ENGINE FIRE' "$scratch/titles" || not_ok held-whole-titles "$(cat "$scratch/titles")"
mkdir "$scratch/before"
maydeck print tests/fleet --boat tamarisk --dump --date "$print_date" -o "$scratch/before"
fleet=$scratch/fleet

# ---- an item that the record does not mention ----

changed tamarisk '/item: fuel_shutoff_diesel/d'
printed
expect_status held-item 1
held=$(held_list fuel_shutoff_diesel)
echo "$held" | grep -qx '3 ENGINE FIRE' || not_ok held-item-told "$(cat "$scratch/stderr")"
expect_equal held-item-told-once 1 "$(grep -c ': held: ' "$scratch/stderr")"
expect_empty held-item-nothing-else "$(grep -E ': (error|failure): ' "$scratch/stderr")"
expect_equal held-item-others "$(lines_without "$(cat "$scratch/titles")" "$held")" \
    "$(titles_list)"
expect_equal held-item-pages $((2 * (leaves - $(echo "$held" | wc -l)))) "$(pages_count)"
maydeck check "$fleet" --boat tamarisk --date "$print_date"
expect_status held-item-check 1

# The remedy holds: the line it gives, with a place filled in, frees the card.
paste=$(sed -n 's/^ *\(- {item: fuel_shutoff_diesel, .*\)/\1/p' "$scratch/problems")
paste=$(echo "$paste" | sed -e 's/zone: ,/zone: cockpit_locker,/' -e 's/side: ,/side: port,/' \
    -e 's/how: {shut: , open: }/how: {shut: across}/' -e 's/inside: \([,}]\)/inside: []\1/' \
    -e 's/from_cockpit: }/from_cockpit: yes}/' -e '/inside/!s/}/, inside: []}/')
changed tamarisk -e '/item: fuel_shutoff_diesel/d' -e "s/^equipment:/&\\
  $paste/"
printed
expect_status held-item-mended 0
says held-item-mended-shown '3 ENGINE FIRE' 'Fuel valve'

# A draft shows what is missing, and says that it is a draft.
changed tamarisk '/item: fuel_shutoff_diesel/d'
printed --draft
expect_status held-draft 0
# what is not recorded has words of its own, for which a card may take its back
expect_equal held-draft-all "$(uniq "$scratch/titles")" "$(titles_list | uniq)"
says held-draft-marked '3 ENGINE FIRE' DRAFT 'NOT RECORDED'
silent held-draft-only-that '2A DISTRESS CALL' DRAFT 'NOT RECORDED'

# ---- the same item, declared not fitted: the step for a boat without it ----

changed tamarisk -e '/item: fuel_shutoff_diesel/d' -e 's/^not_fitted:/&\
  - fuel_shutoff_diesel/'
printed
expect_status held-not-fitted 0
expect_equal held-not-fitted-all "$(cat "$scratch/titles")" "$(titles_list)"
says held-not-fitted-step '3 ENGINE FIRE' "$(step_words engine_fire fuel | tail -n 1)"
silent held-not-fitted-row '3 ENGINE FIRE' 'Fuel valve'

# ---- inside the burning space: its own step ----

changed tamarisk '/item: fuel_shutoff_diesel/s/inside: \[cockpit_locker\]/inside: [engine_space]/'
printed
expect_status held-inside 0
says held-inside-step '3 ENGINE FIRE' "$(step_words engine_fire fuel | sed -n 2p)"
silent held-inside-row '3 ENGINE FIRE' 'Fuel valve' "$(step_words engine_fire fuel | sed -n 1p)"

# ---- what cuts the radio stands behind the call ----

after='AFTER THE CALL'

# isolators NAME SAYS|SILENT: whether the changed boat's card waits for the call, where her
# switches are reached from deck.
isolators() {
    printed
    expect_status "held-$1" 0
    "$2" "held-$1-step" '3 ENGINE FIRE' "$after"
}
deck='s/zone: aft_cabin_starboard, spot: berth foot/zone: cockpit, side: starboard, spot: by the door/'
reached="/item: battery_isolator_/$deck"
changed tamarisk -e "$reached" -e '/item: battery_isolator_service/s/cuts: \[.*\]/cuts: [vhf_dsc]/'
isolators cuts-radio says
step=$(card_text '3 ENGINE FIRE' | sed -n "s/^\([0-9]*\) $after.*/\1/p")
call=$(card_text '3 ENGINE FIRE' | sed -n 's/.*ALONE: .*peak after step \([0-9]*\).*/\1/p')
if [ "${step:-0}" -gt "${call:-99}" ]; then
    ok held-cuts-radio-behind
else
    not_ok held-cuts-radio-behind "step $step, the call after step $call"
fi
changed tamarisk -e "$reached" -e '/item: battery_isolator_service/s/cuts: \[.*\]/cuts: []/'
isolators cuts-nothing silent
changed tamarisk -e "$reached" -e '/item: battery_isolator_service/s/, cuts: \[.*\]//'
isolators cuts-not-recorded says
# Switches below are left on: nobody goes into smoke for them.
changed tamarisk '/item: battery_isolator_service/s/cuts: \[.*\]/cuts: [vhf_dsc]/'
isolators cuts-below silent
silent held-cuts-below-row '3 ENGINE FIRE' 'Service battery'

# ---- a catamaran: a card for each engine, with its own gear ----

boat=samphire
fleet=tests/fleet
printed
expect_status held-catamaran 0
expect_equal held-catamaran-titles "3P ENGINE FIRE, PORT ENGINE
3S ENGINE FIRE, STARBOARD ENGINE
10P DIESEL LEAK, PORT ENGINE
10S DIESEL LEAK, STARBOARD ENGINE
18 NO ENGINE, ROPE" "$(titles_list | grep ENGINE | uniq)"
mkdir "$scratch/samphire"
maydeck print "$fleet" --boat samphire --dump --date "$print_date" -o "$scratch/samphire"

# The tags of the rows of a page.
tags_list() {
    awk '/^text steps .* role=row ink=white / { gsub(/"/, "", $NF); print $NF }' \
        "$scratch/samphire/samphire-$1.dump" | sort -u
}

# The tags of gear that serves one engine, but not what lies in its space or below, nor what starts
# and drives it, which nobody works when it burns.
serving_list() {
    grep "serves: \[engine_space_$1\]" tests/fleet/boats/samphire.yaml |
        grep -v 'item: engine_start,\|item: throttle,' |
        grep -v "inside: \[engine_space_$1\]\|zone: aft_cabin" | sed 's/.*tag: \([A-Z][0-9]*\).*/\1/' | sort
}

# lines_in A B: the lines of A that are in B, too. Both sorted, as texts.
lines_in() {
    echo "$1" >"$scratch/a"
    echo "$2" >"$scratch/b"
    comm -12 "$scratch/a" "$scratch/b"
}

for side in port starboard; do
    other=starboard
    [ "$side" = port ] || other=port
    tags=$(tags_list "engine_fire_$side")
    serving=$(serving_list "$side")
    [ "$(echo "$serving" | wc -l)" -ge 4 ] || not_ok "held-catamaran-$side-gear" "$serving"
    expect_equal "held-catamaran-$side-own" "$serving" "$(lines_in "$serving" "$tags")"
    strange=$(grep "serves: \[engine_space_$other\]" tests/fleet/boats/samphire.yaml |
        sed 's/.*tag: \([A-Z][0-9]*\).*/\1/' | sort)
    expect_empty "held-catamaran-$side-only" "$(lines_in "$strange" "$tags")"
done

seacocks=$(sed -n 's/.*item: seacock, tag: \(C[0-9]*\),.*/\1/p' tests/fleet/boats/samphire.yaml |
    sort)
expect_equal held-catamaran-seacocks 14 "$(echo "$seacocks" | wc -l | tr -d ' ')"
expect_equal held-catamaran-seacocks-shown "$seacocks" \
    "$(lines_in "$seacocks" "$(tags_list flooding)")"
fleet=$scratch/fleet

# With two engines, gear that does not say which it serves holds both cards.
changed samphire '/tag: C6,/s/, serves: \[engine_space_port\]//'
printed
expect_status held-serves 1
expect_equal held-serves-told '3P ENGINE FIRE, PORT ENGINE; 3S ENGINE FIRE, STARBOARD ENGINE; 10P DIESEL LEAK, PORT ENGINE; 10S DIESEL LEAK, STARBOARD ENGINE' \
    "$(sed -n 's/.*: held: serves of fuel_shutoff_diesel .* the cards //p' "$scratch/stderr")"
# That there is no engine is one card for both: it has all their gear.
expect_equal held-serves-titles '18 NO ENGINE, ROPE' "$(titles_list | grep ENGINE | uniq)"

# ---- a boat with one seacock ----

changed tamarisk -e '/item: seacock/{/tag: C11,/!d;}'
printed
expect_status held-one-seacock 0
expect_equal held-one-seacock-all "$(cat "$scratch/titles")" "$(titles_list)"
says held-one-seacock-handling '7 FLOODING' 'across = SHUT'

# ---- gear that only helps, not recorded ----

# No step uses a knife and no case waits for one: the cards are printed without its row.
changed tamarisk '/item: knife/d'
printed
expect_status held-knife 0
expect_equal held-knife-all "$(cat "$scratch/titles")" "$(titles_list)"
expect_empty held-knife-held "$(held_list knife)"
grep -q ': note: knife is not recorded: the cards .*ABANDON: FIRE OR GAS[;0-9A-Z, ]* go without it$' \
    "$scratch/stderr" && ok held-knife-told || not_ok held-knife-told "$(cat "$scratch/stderr")"
silent held-knife-row "$(title_of abandon_fire)" Knife 'NOT RECORDED'
printed --draft
says held-knife-draft "$(title_of abandon_fire)" Knife 'NOT RECORDED'

# A fuel valve that nobody shut feeds the leak: that card waits, and no other.
changed tamarisk '/item: fuel_shutoff_heater/d; /^  - fuel_shutoff_heater$/d; s/fuel_shutoff_heater, //'
printed
expect_status held-must-know 1
expect_equal held-must-know-told "$(title_of diesel_leak)" "$(held_list fuel_shutoff_heater)"

# ---- gear of which a case asks, not recorded, beside gear that is ----

changed tamarisk '/item: grab_bag/d'
printed
expect_status held-helping 1
held=$(held_list grab_bag)
[ -n "$held" ] || not_ok held-helping-told "$(cat "$scratch/stderr")"
expect_equal held-helping-others "$(lines_without "$(cat "$scratch/titles")" "$held")" \
    "$(titles_list)"
printed --draft
expect_status held-helping-draft 0
says held-helping-draft-shown "$(title_of abandon_ship)" DRAFT 'NOT RECORDED'

# ---- a place of 300 characters: never cut ----

long=$(awk 'BEGIN {
    while (length(text) < 300) text = text "behind the white panel "
    print substr(text, 1, 299) "x"
}')
changed tamarisk "/item: fuel_shutoff_diesel/s/spot: aft face/spot: $long/"
printed
expect_status held-long 1
line=$(grep -n 'item: fuel_shutoff_diesel' "$record" | sed 's/:.*//')
where=".*/boats/tamarisk\.yaml:$line:[0-9]*: error: "
sed -n "s,^$where\(.*\) (en): .* is \([0-9.]*\) mm too long.*,\2 \1,p" \
    "$scratch/stderr" | sed 's/ front$//' >"$scratch/long"         # tried on two sides at last
expect_equal held-long-all-there "$(grep -c ': error: ' "$scratch/stderr")" \
    "$(wc -l <"$scratch/long" | tr -d ' ')"
grep -q ' ENGINE FIRE$' "$scratch/long" || not_ok held-long-told "$(cat "$scratch/stderr")"
expect_empty held-long-excess "$(awk '$1 <= 300' "$scratch/long")"
expect_equal held-long-others \
    "$(lines_without "$(cat "$scratch/titles")" "$(sed 's/^[^ ]* //' "$scratch/long")" |
        grep -v 'SAFETY PLAN')" "$(titles_list | grep -v 'SAFETY PLAN')"

# The other cards lie exactly as they did, but for the safety plan, which has that
# place too and lets it run over several lines, and for where gear stands on the plan of the set.
mkdir "$scratch/after"
maydeck print "$fleet" --boat tamarisk --dump --date "$print_date" -o "$scratch/after"
expect_equal held-long-same "$(wc -l <"$scratch/long" | tr -d ' ')" \
    "$(cd "$scratch" && diff -rq before after | sed -n 's/^Only in before: //p' |
        sed 's/_2\.dump$/.dump/' | sort -u | wc -l | tr -d ' ')"
for folder in before after; do
    for page in "$scratch/$folder"/*.dump; do
        sed -e '/^[a-z]* plan /d' -e '/^[a-z]* steps .* fill=black stroke=none/d' "$page" \
            >"$scratch/page" && cp "$scratch/page" "$page"
    done
done
expect_empty held-long-differ \
    "$(cd "$scratch" && diff -rq before after | grep -v '^Only in before: \|tamarisk-safety_plan')"
expect_equal held-long-whole-on-plan 13 \
    "$(sed -n 's/^text labels .* "\(.*\)"$/\1/p' "$scratch/after"/tamarisk-safety_plan*.dump |
        tr '\n' ' ' | grep -o 'behind the white panel ' | wc -l | tr -d ' ')"

# ---- a set without its MMSI: voice only ----

changed tamarisk 's/mmsi_programmed: yes/mmsi_programmed: no/'
printed
expect_status held-voice 0
expect_equal held-voice-all "$(cat "$scratch/titles")" "$(titles_list)"
for card in distress_call engine_fire flooding abandon_ship; do
    says "held-voice-$card" "$(title_of $card)" 'Red key: not set up. Speak.'
    silent "held-voice-no-key-$card" "$(title_of $card)" "$key" 'RED KEY'
done
maydeck check "$fleet" --boat tamarisk --date "$print_date"
expect_status held-voice-check 1
grep -q 'deficiency: DSC not available' "$scratch/problems" ||
    not_ok held-voice-told "$(cat "$scratch/problems")"
exit $failures
