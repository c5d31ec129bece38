#!/bin/sh
# Every card of every specimen boat: what must hold whatever the record says. Read
# from the page dumps, and from the PDF where the order of reading counts.
. tests/tap.sh

dumps=$scratch/dumps
mkdir "$dumps"
maydeck print tests/fleet --dump --date "$print_date" -o "$dumps"
expect_status cards-laid-out 0

# Begins each program that reads a dump.
# shellcheck disable=SC2016
item_awk=$(cat tests/item.awk)'
function tag_in_row() {
    return kind == "text" && block == "steps" && role == "row" && ink == "white"
}
'

# ---- size of type ----

# "role floor" in thousandths of a point: what can be read of a card on A4 at the distance
# it is read at. The test's own numbers, apart from those that pages are laid out by.
cat >"$scratch/floors" <<FLOORS
title 32000
boat 12000
signs 12000
call_line 12000
berth 12000
headline 16000
row 12000
table 12000
box 12000
contact 12000
script 12000
code 8000
footer 8000
source_tag 8000
mark 9000
plan_tag 9000
plan_label 9000
number 14000
FLOORS

sizes_check() {
    awk "$item_awk"'
        NR == FNR { floor[$1] = $2; next }
        { item_read() }
        kind != "text" { next }
        !(role in floor) { print "no floor for", role; next }
        size < floor[role] { print role, size, "below", floor[role] ":", text }
        { texts++ }
        END { if (!texts) print "no text" }' "$scratch/floors" "$1"
}

# ---- steps ----

# "number headline", a line a step, as it is read.
steps_list() {
    awk "$item_awk"'
        { item_read() }
        kind != "text" || block != "steps" { next }
        role == "number" { if (step != "") print step; step = text }
        role == "headline" { step = step " " text }
        END { if (step != "") print step }' "$1"
}

# Each headline on a line of its own, numbered from one, in the order of reading.
order_check() {
    steps_list "$1" >"$scratch/steps"
    if [ ! -s "$scratch/steps" ]; then
        [ "$(basename "$2")" = distress_call ] || echo 'no steps'
        return
    fi
    awk '
        NR == FNR { step[NR] = $0; steps = NR; next }
        { for (i = 1; i <= steps; i++) if ($0 == step[i] && !at[i]) at[i] = FNR }
        END {
            for (i = 1; i <= steps; i++) {
                if (step[i] !~ "^" i " ") print "step", i, "is not:", step[i]
                if (!at[i]) print "not read as one line:", step[i]
                if (i > 1 && at[i] <= at[i - 1]) print "read too early:", step[i]
            }
        }' "$scratch/steps" "$2.text"
}

budget_check() {
    awk "$item_awk"'
        { item_read() }
        kind == "text" && block == "steps" && role == "number" { steps++ }
        tag_in_row() && !(baseline in seen) { seen[baseline] = 1; rows++ }
        END {
            if (steps > 8) print steps, "steps"
            if (rows > 14) print rows, "rows"
        }' "$1"
}

# The tags of isolators that cut the radio, or are not known to spare it.
cutters_list() {
    awk '/^ *- \{item: / {
        cuts = match($0, /cuts: \[[^]]*\]/) ? substr($0, RSTART, RLENGTH) : ""
        if (cuts !~ /vhf_dsc/ && !(cuts == "" && /item: battery_isolator/)) next
        match($0, /tag: [A-Z][0-9]+/); print substr($0, RSTART + 5, RLENGTH - 5)
    }' "$1"
}

# What cuts the radio stands after the step of the call, and says so.
radio_check() {
    awk "$item_awk"'
        NR == FNR { cutter[$1] = 1; next }
        { item_read() }
        kind != "text" { next }
        role == "call_line" {
            line = line " " text
            if (match(line, /ALONE: .*step [0-9]+/)) {
                call = substr(line, RSTART, RLENGTH); sub(/.* /, "", call); call += 0
            }
        }
        block == "steps" && role == "number" { step = text + 0; headline = "" }
        block == "steps" && role == "headline" {
            headline = headline (headline == "" ? "" : " ") text
            if (headline ~ /^CALL( |$)/) call = step
        }
        tag_in_row() && text in cutter {
            if (step <= call || call == "")
                print text, "cuts the radio in step", step ", the call comes after step", call
            if (headline !~ /^AFTER THE CALL/) print text, "cuts the radio:", headline
            print "seen" >seen
        }' seen="$scratch/cutter-seen" "$scratch/cutters" "$1"
}

# Every tag of a row is found on the plan.
plan_check() {
    awk "$item_awk"'
        { item_read() }
        /^page distress_call / { distress = 1 }
        tag_in_row() { row[text] = 1; rows++ }
        kind == "text" && block == "plan" && role == "plan_tag" { plan[text] = 1 }
        END {
            for (tag in row) if (!(tag in plan)) print tag, "is not on the plan"
            if (!rows && !distress) print "no row has a tag"
        }' "$1"
}

# ---- boxes ----

# Each NEVER and CAUTION has its source on the page or, where that has no room for any, on the
# safety plan of the boat: the sources are those that `why` tells.
sources_check() {
    card=${1##*/"$boat"-}
    maydeck why tests/fleet --boat "$boat" --card "${card%.dump}" --date "$print_date"
    sed -n 's/^   tag of its source: //p' "$scratch/stdout" | sort -u >"$scratch/tags"
    grep -q '^Caution: ' "$scratch/stdout" || [ "$card" = distress_call.dump ] ||
        echo 'no caution'
    grep '^\(Never\|Caution\): ' "$scratch/stdout" | wc -l >"$scratch/said"
    [ "$(grep -c '^   tag of its source: ' "$scratch/stdout")" -eq "$(cat "$scratch/said")" ] ||
        echo 'a sentence has no source'
    grep ' \(cautions\|never\) .* role=source_tag ' "$1" >"$scratch/printed"
    # a tag of the list of sources may go on in the next line
    cat "$dumps/$boat-safety_plan"*.dump | awk "$item_awk"'
        { item_read() }
        kind != "text" || block != "sources" || role != "source_tag" { next }
        face == "bold" { tag = tag (tag == "" ? "" : " ") text; next }
        { if (tag != "") print tag; tag = "" }' >>"$scratch/printed"
    while read -r tag; do
        grep -qF -e "$tag" "$scratch/printed" || echo "$tag is on no page"
    done <"$scratch/tags"
}

# No more than 25 mm of the left column are empty, which a distress call has down to its foot.
gaps_check() {
    awk "$item_awk"'
        { item_read() }
        /^page distress_call / { distress = 1 }
        kind == "box" && block == "call line" { top = y + height }
        kind == "box" && (block == "contact" || (block == "call" && !distress)) {
            if (!bottom || y < bottom) bottom = y
        }
        (kind == "text" || kind == "sign") && x < 297638 { Y[++count] = y; H[count] = height }
        END {
            if (!top || !bottom) print "no call line or no contact line"
            reached = top
            while (reached < bottom) {
                next_top = bottom; end = 0
                for (i = 1; i <= count; i++)
                    if (Y[i] + H[i] > reached && Y[i] < next_top && Y[i] >= top) {
                        next_top = Y[i]; end = Y[i] + H[i]
                    }
                if (next_top - reached > 25 * 2834.646)
                    printf "%.1f mm are empty below %.1f mm\n", (next_top - reached) / 2834.646,
                        reached / 2834.646
                if (!end) break
                reached = end
            }
        }' "$1"
}

# ---- the call ----

# What is said, in one line: the right side of the call panel; on a page of its own what is
# below the first line across it.
script_line() {
    awk "$item_awk"'
        { item_read() }
        /^page distress_call / { distress = 1 }
        kind == "line" && block == "call" && width == 0 { divide = x; foot = y + height }
        kind == "line" && block == "call" && distress && !rule { rule = y }
        kind == "text" && block == "call" && role == "script" &&
            ((divide && x > divide && y < foot) || (rule && y > rule)) { line = line " " text }
        END { print line " " }' "$1"
}

# The words of the nature, from the procedure; the distress card has a blank.
nature_words() {
    sed -n 's/.*signal: .*say: "\{0,1\}\([^",}]*\).*/\1/p' "$1" | sed -n 1p
}

# Signal, all stations (of PAN PAN), name, call sign, signal again (of MAYDAY),
# position, time, nature, assistance, persons, over: the first of each in this order.
script_check() {
    script_line "$1" | awk -v nature="$(nature_words "$2")" -v boat="$3" '
        function expect(words, what,    at) {
            at = index($0, " " words)
            if (!at) print "not said:", what
            else if (at <= last) print "said too early:", what
            else last = at
        }
        {
            mayday = index($0, " MAYDAY, MAYDAY, MAYDAY ")
            pan = index($0, " PAN PAN, PAN PAN, PAN PAN ")
            if (mayday) expect("MAYDAY, MAYDAY, MAYDAY ", "MAYDAY three times")
            if (pan) expect("PAN PAN, PAN PAN, PAN PAN ", "PAN PAN three times")
            if (!mayday && !pan) print "no signal"
            if (pan) expect("ALL STATIONS", "ALL STATIONS")
            expect("THIS IS " boat ", " boat ", " boat " ", "the name three times")
            expect("CALL SIGN ", "the call sign")
            if (mayday) expect("MAYDAY " boat " ", "MAYDAY and the name")
            expect("LAT ", "latitude"); expect("LONG ", "longitude"); expect("UTC ", "the time")
            expect(nature == "" ? (index($0, " PROBLEM ") ? "PROBLEM " : "I ") : nature, "the nature")
            if (nature == "" || nature !~ /ABANDON/ || index($0, " I REQUIRE"))
                expect("I REQUIRE", "the assistance")
            expect(nature ~ /OVERBOARD|MISSING IN THE WATER/ ? "ON BOARD, FELL AT" : "PERSONS ON BOARD", "the persons")
            if ($0 !~ / OVER $/) print "the call does not end with OVER"
            lines++
        }
        END { if (!lines) print "no script" }'
}

# No radio is in reach of who stays on deck, or on the hull: no words to say, and none is fetched.
silent_check() {
    tr '\n' ' ' <"$1.text" >"$1.line"
    for words in 'MAYDAY, MAYDAY' 'PAN PAN, PAN' 'THIS IS'; do
        ! grep -q "$words" "$1.line" || echo "has words that nobody can call: $words"
    done
    for words in 'Phone the rescue centre: ' 'Wave, whistle, shout'; do
        grep -q "$words" "$1.line" || echo "not said: $words"
    done
    grep -q '^  - {.*from: on_deck' "$3" || echo 'the card calls by a set that is not on deck'
    reach='zone: cockpit,.*from_cockpit: yes'
    ! grep -q '^hazards: inverted' "$3" || reach='reach_inverted: yes'
    ! grep 'item: vhf_handheld' "$2" | grep -q "$reach" || echo 'a handheld is in reach'
    ! grep -q 'item: vhf_handheld' "$2" ||
        grep -q 'Handheld [A-Z][0-9]*: do not fetch it' "$1.line" || echo 'may send for the handheld'
}

# The boat is upside down, and the record has no gear that is reached then.
unreached() {
    grep -q '^hazards: inverted' "$1" && ! grep -q 'reach_inverted: yes' "$2"
}

# No gear has a row.
bare_check() {
    awk "$item_awk"'
        { item_read() }
        tag_in_row() { print text, "is not reached upside down" }' "$1"
}

# The back of a card has its call: the front says so, and has all else.
back_check() {
    grep -q '^text title .* "Card [0-9A-Z]* back"$' "$2" || echo 'does not say that it is the back'
    grep -q '^text call line .*back\."$' "$1" || echo 'the front does not send to the back'
    ! grep -q '^text call .* role=script ' "$1" || echo 'the front has words of the call'
    for block in steps decision never cautions; do
        ! grep -q "^text $block " "$2" || echo "the back has $block"
    done
    front=$(sed -n 's/^text title .* "\(Card [0-9A-Z]*\) front"$/\1/p' "$1")
    [ -n "$front" ] && grep -q "\"$front back\"$" "$2" || echo 'front and back differ in number'
}

# The other pages of a distress call: PAN PAN, receipt, relay, end of danger and, with a red key,
# cancelling, each with the whole name.
answer_check() {
    tr '\n' ' ' <"$1" >"$1.line"
    all='ALL STATIONS, ALL STATIONS, ALL STATIONS'
    for words in "PAN PAN, PAN PAN, PAN PAN $all THIS IS $2, $2, $2 CALL SIGN" 'RECEIVED MAYDAY' \
        'MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY SKERRY SOUND COASTGUARD, ' \
        "MAYDAY $all THIS IS $2, $2, $2 CALL SIGN" 'DANGER IS OVER' \
        'I NO LONGER REQUIRE IMMEDIATE ASSISTANCE. OVER'; do
        grep -q "$words" "$1.line" || echo "not said: $words"
    done
    alerts=$(grep -c '^  dsc: yes' "$3")
    [ "$(grep -c 'PLEASE CANCEL MY DISTRESS ALERT OF' "$1.line")" = "$alerts" ] ||
        echo "cancelled, though alerts that can be sent: $alerts"
}

# ---- vapour ----

# Where vapour may lie: no alert, no key to hold, the handheld on deck, out of its charger.
vapour_check() {
    for word in DSC red hold; do
        grep -iwn "$word" "$2.text" | sed "s/^/says $word: /"
    done
    handheld=$(grep 'item: vhf_handheld.*zone: cockpit,.*from_cockpit: yes' "$3" |
        grep 'in_charger: no' |
        sed -n '1s/.*tag: \([A-Z][0-9]*\).*/\1/p')
    tr '\n' ' ' <"$2.text" >"$2.line"
    if [ -n "$handheld" ]; then
        grep -q 'CALL FROM DECK.*HANDHELD' "$2.line" || echo 'no call from deck by handheld'
        grep -q "handheld $handheld:" "$2.line" || echo "the handheld $handheld is not named"
    else
        ! grep -qi 'take handheld' "$2.line" || echo 'sends somebody below for the handheld'
        grep -q 'NO HANDHELD TO USE' "$2.line" || echo 'does not say that no radio is on deck'
        ! grep -q 'MAYDAY, MAYDAY\|PAN PAN, PAN' "$2.line" || echo 'has words that nobody can call'
        ! grep -q ': call ' "$2.line" || echo 'tells to call, and not to call'
    fi
    grep -q 'Stay on deck' "$2.line" || echo 'does not say to stay on deck'
}

# ---- every card ----

# card_check BOAT CARD DUMP
card_check() {
    record=tests/fleet/boats/$1.yaml
    procedure=procedures/$2.yaml
    [ -f "$procedure" ] || procedure=procedures/$(echo "$2" | sed 's/_[a-z0-9]*$//').yaml
    if grep -q '^kind: safety_plan' "$procedure"; then
        expect_empty "cards-$1-$2-sizes" "$(sizes_check "$3" 2>&1)"
        safety=$((safety + 1))
        return                          # tests/cli/plans.sh has what is its own
    fi
    name=$(sed -n 's/^  name: //p' "$record" | sed -n 1p | tr '[:lower:]' '[:upper:]')
    case $2 in
    distress_call_[3-9])
        expect_empty "cards-$1-$2-sizes" "$(sizes_check "$3" 2>&1)"
        return
        ;;
    distress_call_2)
        expect_empty "cards-$1-$2-sizes" "$(sizes_check "$3" 2>&1)"
        pdftotext -raw -f 2 "$scratch/pdf/$1/distress_call/$1-distress_call.pdf" \
            "$scratch/answer"
        expect_empty "cards-$1-$2-answer" "$(answer_check "$scratch/answer" "$name" "$record" 2>&1)"
        answers=$((answers + 1))
        return
        ;;
    esac
    called=$3
    if grep -q '^text title .* "Card [0-9A-Z]* back"$' "$3"; then
        expect_empty "cards-$1-$2-sizes" "$(sizes_check "$3" 2>&1)"
        expect_empty "cards-$1-$2-back" "$(back_check "${3%_2.dump}.dump" "$3" 2>&1)"
        backs=$((backs + 1))
        return
    elif grep -q '^text title .* "Card [0-9A-Z]* front"$' "$3"; then
        called=${3%.dump}_2.dump
        fronts=$((fronts + 1))
    fi
    page=$scratch/pdf/$1/$2
    mkdir -p "$page"
    maydeck print tests/fleet --boat "$1" --card "$2" --date "$print_date" -o "$page"
    pdftotext -raw "$page/$1-$2.pdf" "$page.text" || not_ok "cards-$1-$2-text"
    cutters_list "$record" >"$scratch/cutters"
    if unreached "$procedure" "$record"; then
        asked='sizes budget radio bare sources'
        bare=$((bare + 1))
    else
        asked='sizes budget radio plan sources gaps'
    fi
    for what in $asked; do
        expect_empty "cards-$1-$2-$what" "$("${what}_check" "$3" 2>&1)"
    done
    expect_empty "cards-$1-$2-order" "$(order_check "$3" "$page" 2>&1)"
    # Who has no radio at hand has no words to say: see below.
    if grep -q 'NO RADIO IN REACH"' "$called"; then
        expect_empty "cards-$1-$2-silent" "$(silent_check "$page" "$record" "$procedure" 2>&1)"
        silent=$((silent + 1))
    elif ! grep -q 'NO RADIO IS SAFE HERE"' "$called"; then
        expect_empty "cards-$1-$2-script" "$(script_check "$called" "$procedure" "$name" 2>&1)"
    fi
    if grep -q '^  - {.*from: handheld_on_deck' "$procedure"; then
        expect_empty "cards-$1-$2-vapour" "$(vapour_check "$3" "$page" "$record" 2>&1)"
        vapour=$((vapour + 1))
    fi
}

boats=0
vapour=0
safety=0
answers=0
fronts=0
backs=0
bare=0
silent=0
for record in tests/fleet/boats/*.yaml; do
    boat=$(basename "$record" .yaml)
    boats=$((boats + 1))
    for dump in "$dumps/$boat"-*.dump; do
        card=$(basename "$dump" .dump)
        card_check "$boat" "${card#"$boat"-}" "$dump"
    done
done
[ "$safety" -ge $((2 * boats)) ] || not_ok cards-safety-seen "$safety safety plans, $boats boats"
[ "$vapour" -ge "$boats" ] || not_ok cards-vapour-seen "$vapour cards about vapour, $boats boats"
[ "$backs" -gt 0 ] && [ "$fronts" -eq "$backs" ] ||
    not_ok cards-backs-seen "$fronts fronts, $backs backs"
[ "$bare" -gt 0 ] && [ "$silent" -gt "$bare" ] ||
    not_ok cards-silent-seen "$silent cards without a radio, $bare without gear in reach"
[ -s "$scratch/cutter-seen" ] || not_ok cards-cutter-seen 'no card turns off what the radio needs'

# words_list DUMP...: words of steps, boxes and signs, each once; not names, places and the script.
words_list() {
    cat "$@" | awk "$item_awk"'
        { item_read() }
        kind != "text" { next }
        role == "headline" { start = x; table = 0 }
        role == "row" && face == "bold" && text ~ /^(PORT|STARB.*D):?$/ { table = 1 }
        block == "labels" || (table && role == "row") { next }     # names and places
        role == "headline" || role == "signs" || role == "call_line" || role == "box" ||
        (role == "row" && face == "bold" && ink == "black" && x == start) {
            gsub(/ [0-9]+[A-Z]/, "", text)
            gsub(/\342\200\231/, "\047", text); gsub(/[^A-Za-z\047-]/, " ", text)
            count = split(tolower(text), word, " ")
            for (i = 1; i <= count; i++) if (word[i] ~ /[a-z]/) print word[i]
        }' | sort -u
}
# words_few NAME MOST DUMP...: the cards hold to so many (and no fewer than 100 can be right).
words_few() {
    few=$1
    most=$2
    shift 2
    words_list "$@" >"$scratch/words"
    count=$(wc -l <"$scratch/words" | tr -d ' ')
    echo "# $count different words"
    [ "$count" -gt 100 ] && [ "$count" -le "$most" ] && ok "$few" ||
        not_ok "$few" "$count different words: at most $most (and no fewer than 100 can be right)"
}
# The cards that no base goes without keep to fewer.
core=
for procedure in $(grep -l '^core: yes' procedures/*.yaml); do
    for dump in "$dumps"/*-"$(basename "$procedure" .yaml)"*.dump; do
        [ ! -f "$dump" ] || core="$core $dump"
    done
done
# shellcheck disable=SC2086
words_few cards-words 400 $core
words_few cards-words-all 510 "$dumps"/*.dump

# Bases near Greenwich sail on both sides of it, some near the equator as well: the full cards hold
# the choice too, and none is held back for want of room.
# calls_count TEXT: by the persons; a call for one in the water, missing or in sight, may have both.
calls_count() {
    awk 'BEGIN { RS = "\f" }
        {
            persons = gsub(/PERSONS ON BOARD|REQUIRE NO ASSISTANCE/, "&")
            fell = gsub(/ON BOARD, FELL AT/, "&")
            calls += fell ? fell : persons
        }
        END { print calls + 0 }' "$1"
}
# astride NAME SCRIPT CHOICE: the base's file after the script; the choice as each call has it.
astride() {
    mkdir -p "$scratch/astride-$1"
    cp -R tests/fleet "$scratch/astride-$1/fleet"
    sed "$2" tests/fleet/base.yaml >"$scratch/astride-$1/fleet/base.yaml"
    maydeck print "$scratch/astride-$1/fleet" --date "$print_date" -o "$scratch/astride-$1"
    expect_status "cards-astride-$1" 0
    for boat in tamarisk samphire bramble; do
        pdftotext "$scratch/astride-$1/$boat.pdf" "$scratch/astride-$1/$boat.txt"
        expect_equal "cards-astride-$1-$boat" "$(calls_count "$scratch/astride-$1/$boat.txt")" \
            "$(grep -c "$3" "$scratch/astride-$1/$boat.txt")"
    done
}
astride greenwich 's/longitude: east/longitude: both/' 'MINUTES EAST / WEST$'
astride everywhere 's/longitude: east/longitude: both/;s/latitude: north/latitude: both/' \
    'MINUTES EAST / WEST\( AT\)\{0,1\}$'

# The footer tells the first of the gear's dates, one that is past, and dates that lack.
# footer NAME BOAT DATE WORDS
footer() {
    maydeck print tests/fleet --boat "$2" --date "$3" -o "$scratch/dated"
    found=$(pdftotext -layout "$scratch/dated/$2.pdf" - | grep -cF "$4")
    [ "$found" -gt 0 ] && ok "cards-dates-$1" || not_ok "cards-dates-$1" "nowhere: $4"
}
footer first tamarisk 2026-11-20 'Gear dates run to 2027-03. Replace'
footer last-day tamarisk 2027-03-31 'Gear dates run to 2027-03. Replace'
footer past tamarisk 2027-04-01 'GEAR PAST ITS DATE: 2027-03. Replace'
footer undated bramble 2026-11-20 'Gear dates to 2026-12, 1 undated. Replace'
exit $failures
