#!/bin/sh
# The reasons of every card of every specimen boat: each file and line named holds
# what is said of it, and each item named is one that the step's words rest on.
. tests/tap.sh

boats=$(cd tests/fleet/boats && ls | sed 's/\.yaml$//')

# why ARGUMENT...: what is told of the specimen fleet.
why() {
    maydeck why "$@" --date "$print_date"
}

# ---- which cards ----

maydeck check tests/fleet --fail error --date "$print_date"
checked=$status
why tests/fleet
expect_status why-list "$checked"
for boat in $boats; do
    why tests/fleet --boat "$boat"
    sed -n 's/^  \([a-z_0-9]*\) .*/\1/p' "$scratch/stdout" >"$scratch/keys"
    maydeck print tests/fleet --boat "$boat" --date "$print_date" -o "$scratch/cards" --dump
    expect_equal "why-list-$boat" \
        "$(ls "$scratch/cards" | sed -n "s/^$boat-\(.*\)\.dump\$/\1/p" | sed 's/_[0-9]*$//' | sort -u)" \
        "$(sort "$scratch/keys")"
    why tests/fleet --boat "$boat" --all
    found=$status
    cp "$scratch/stdout" "$scratch/$boat.why"
    maydeck check tests/fleet --fail error --boat "$boat" --date "$print_date"
    expect_status "why-all-$boat-as-check" "$found"
    expect_equal "why-all-$boat-covers" "$(cat "$scratch/keys")" \
        "$(sed -n 's/^Card [0-9]*[A-Z]* (\([a-z_0-9]*\)), check code.*/\1/p' "$scratch/$boat.why")"
    why tests/fleet --boat "$boat" --all
    if cmp -s "$scratch/stdout" "$scratch/$boat.why"; then
        ok "why-all-$boat-again"
    else
        not_ok "why-all-$boat-again" 'told otherwise the second time'
    fi
done
why tests/fleet --all
grep '^Card ' "$scratch/stdout" >"$scratch/whole"
expect_equal why-all-fleet "$(for boat in $boats; do cat "$scratch/$boat.why"; done | grep '^Card ')" \
    "$(cat "$scratch/whole")"
first=$(echo "$boats" | sed -n 1p)
why tests/fleet --boat "$first" --card flooding
[ "$status" -le 1 ] || not_ok why-one "status $status"
expect_equal why-one-card 1 "$(grep -c '^Card ' "$scratch/stdout")"
why tests/fleet --boat "$first" --card nosuchcard
expect_status why-unknown-card 2
grep -q 'nosuchcard' "$scratch/stderr" || not_ok why-unknown-card-named
expect_empty why-unknown-card-silent "$(cat "$scratch/stdout")"
why tests/fleet --boat nosuchboat --all
expect_status why-unknown-boat 2
why tests/fleet --card flooding --all
expect_status why-card-and-all 2
"$MAYDECK" why tests/fleet --all --date "$print_date" >/dev/full 2>/dev/null </dev/null
status=$?
expect_status why-full 3

# ---- what the named lines hold ----

# Joins what was broken to its line: a line that stands one step further in, and whose
# first word had no room on the line before. A place is one word, and the last.
cat >"$scratch/join.awk" <<'AWK'
function width(words) { gsub(/[\200-\277]/, "", words); return length(words) }
function is_place(words) { return words ~ /^at [^ ]+$/ || words == "(the program's own words)" }
{
    rest = $0; sub(/^ +/, "", rest)
    indent = length($0) - length(rest)
    word = is_place(rest) ? rest : $1
    if (NR > 1 && indent == begun + 3 && !closed && width(last) + 1 + width(word) > 100) {
        line = line " " rest
    } else {
        if (NR > 1) print line
        line = $0; begun = indent
    }
    last = $0
    closed = line ~ / at [^ ]+\/[^ ]+$/ || line ~ /\(the program's own words\)$/
}
END { print line }
AWK

# Tells each line whose file or line does not hold what is said of it.
cat >"$scratch/lines.awk" <<'AWK'
function tell(why) { print why ": " $0 }
function line_of(place,    number, count, at) {
    file = place; sub(/:[0-9]+$/, "", file)
    number = place; sub(/^.*:/, "", number)
    if (!(file in read)) {
        while ((getline at <file) > 0) text[file, ++count] = at
        close(file)
        read[file] = count
    }
    if (number + 0 > read[file]) { tell("no such line"); return "" }
    for (at = number + 0; at > 1 && text[file, at] !~ /^[a-z_]+:/;) at--
    section = text[file, at]
    return text[file, number]
}
function holds(word) { return index(said, word) > 0 }
# What is told after the first colons, as the file has it: without quotes and stars.
function holds_words(    words, plain) {
    words = $0; sub(/^(Not on this card: )?[A-Z][a-z]+: /, "", words); sub(/ at [^ ]+$/, "", words)
    plain = said; gsub(/"|\*\*/, "", plain); sub(/^ +[a-z_]+: /, "", plain)
    return is_texts() && words != "" && plain == words
}
# Texts stand apart from the logic.
function is_texts() { return file ~ /\/words\/[a-z]+\// }
# Words with numbers filled in: up to the first of them, as the file has it.
# From its start on, or from that of a further case of who calls.
function holds_filled(    words, rest, plain, at) {
    words = $0; sub(/^ *(yes|no|when to call|[0-9]+\.):? /, "", words); sub(/ at [^ ]+$/, "", words)
    rest = substr(words, 2)                     # "3 OR MORE" begins with a number of its own
    sub(/[0-9].*/, "", rest); words = substr(words, 1, 1) rest; sub(/ Card $/, "", words)
    plain = said; gsub(/"|\*\*/, "", plain); sub(/^ +[a-z_]+: /, "", plain)
    at = index(plain, words)
    return is_texts() && words != "" && (at == 1 || (at > 2 && substr(plain, at - 2, 2) == "| "))
}
function holds_sign(    sign, plain) {
    sign = $0; sub(/^ *signs: /, "", sign); sub(/ (·.*|at [^ ]+)$/, "", sign)
    plain = said; gsub(/"/, "", plain)
    return sign != "" && index(plain, "signs: [" sign) == 1
}
# The fixed radio has a section of its own, a line a fact.
function holds_radio() {
    if (section != "radio:") return 0
    if ($5 == "=" && $6 != "not") return index(said, "  " $4 ": ") == 1
    return said == "  tag: " $3
}
# A line of her engines, their head, the gear that shows it, or not_fitted.
function holds_engine() {
    return said ~ /^engines:|^  - \{space: |item: (petrol_stowage|generator_stop)|^  - petrol_stowage/
}
# What she is: "she carries cooking gas: yes".
function holds_trait() {
    if (/cooking gas: /) return said ~ "^gas:.*carried: " $6
    if (/digital alert: /) return (said == "  dsc: " $8 && section == "radio:") || holds("dsc: " $8)
    if (/red key of her fixed set/) return section == "radio:" && said ~ /^  (dsc|mmsi_programmed): /
    if (/her dinghy holds all/) return said ~ /item: dinghy,|^  - dinghy$|^  persons_max: /
    if (/people cook aboard: /) return said ~ /^  rooms: .*(galley|bridgedeck)|item: cooker/ || $5 == "no"
    if (/where a person is laid down is recorded: yes/) return said ~ /^  lay_down_place: [a-z]/
    if (/her draught is recorded: yes/) return said ~ /^  draught_m: [0-9]/
    if (/her cutters cut her thickest wire: yes/) return said ~ /item: bolt_cutters,.*cuts_mm: [0-9]/
    if (/her cutters cut her thickest wire: no/) return said ~ /item: bolt_cutters,|^  - bolt_cutters$/
    if (/one speaks by her fixed set on deck: yes/)
        return section == "radio:" && said ~ /^  second_station: |^  zone: /
    if (/she has sails: /) return (said == "  rig: sail") == ($5 == "yes")
    if (/she has rooms below: /) return said ~ /^  rooms: \[[a-z]/ || $6 == "no"
    if (/diesel|petrol|generator|engines? |electric motor|outboard|a jet/) return holds_engine()
    if (/she is a /) return (said == "  hull: " substr($5, 1, length($5) - 1)) == ($6 == "yes")
    return 0
}
function holds_record() {
    if (/record: (she|where a person|her draught|her cutters|one speaks|an engine|another engine|only a generator|an electric|an outboard|a jet|her dinghy|the red key|people|two engines|diesel) /) return holds_trait()
    if ($2 == "vhf_dsc") return holds_radio()
    if ($5 == "=" && $6 != "not" && !holds(" " $4 ": ")) return 0
    return holds("item: " $2 ",") && holds("tag: " $3 ",")
}
/^      [^ ].* \| / && gear_before { gear_before = 0; next }
{ gear_before = $1 == "gear" }
/ at [^ ]+:[0-9]+$/ {
    said = line_of($NF)
    total++
    if ($1 == "step" && $3 == "at") {
        steps++
        step_line = NR
        # (an id that YAML has a meaning of its own for stands in quotes)
        if (!holds("id: " $2) && !holds("id: \"" $2 "\"")) tell("not that step")
    } else if ($1 == "gear") {
        gear++
        shown[$2] = step_line
        if ($3 == "vhf_dsc" ? section != "radio:" || said != "  tag: " $2 \
                            : !holds("item: " $3 ",") || !holds("tag: " $2 ",")) tell("not that gear")
    } else if ($1 == "record:" && $3 == "not" && $4 == "fitted") {
        absent++
        if (said != "  - " $2) tell("not there")
    } else if ($1 == "record:") {
        if ($2 == "gas" || $2 == "dsc" || $2 == "the" || $2 == "vhf_dsc") whole++
        if (!holds_record()) tell("not in the record")
        if ($4 == "left" && $5 == "out:") { left_out++; if (shown[$3] == step_line) tell("not left out") }
    } else if (/^      / && ($1 == "case" || / case [0-9]+ of [0-9]+, which asks/)) {
        sayings++
        if (said !~ /^ +- \{?id: /) tell("no words with cases there")
    } else if ($1 == "case" || / case [0-9]+ of [0-9]+, which asks/) {
        cases++
        if (said !~ /^ +- ((id|when|uses|also|lethal|practice|report|sources|does|guards|forbids):( |$)|\{\}$)/) tell("no case begins there")
    } else if (/^(Not on this card: )?(Never|Caution): /) {
        warnings++
        if (!holds_words()) tell("no such warning there")
    } else if ($1 == "signs:") {
        signs++
        if (!holds_sign()) tell("no such signs there")
    } else if ($1 == "yes:" || $1 == "no:" || ($1 == "when" && $3 == "call:")) {
        if (!holds_filled()) tell("nothing is said there")
    } else if (/^[0-9]+\. /) {
        headlines++
        if (!holds_filled() || said !~ /^ +act: /) tell("no such headline there")
    } else if ($1 == "called") {
        called++
        if (!holds("id: " $2)) tell("not called so")
    } else if (/^ +only where: /) {
        conditions++
        if (said !~ /(fitted|inside|is|cuts|reach|boat|breaths|surely|all|any|none): /) tell("asks nothing")
    }
}
/ at [^ ]+$/ && !/:[0-9]+$/ { if ((getline at <$NF) < 0) tell("no such file"); close($NF) }
END {
    if (!steps || !gear || !absent || !cases || !whole || !sayings || !warnings || !conditions ||
        !left_out || !signs || !headlines || called != warnings) print "too little told: " total " lines"
}
AWK

for boat in $boats; do
    awk -f "$scratch/join.awk" "$scratch/$boat.why" >"$scratch/$boat.joined"
    expect_empty "why-lines-$boat" "$(awk -f "$scratch/lines.awk" "$scratch/$boat.joined")"
    # Every step of every procedure is told once a card, as a step or as left out.
    found=$(for file in procedures/*.yaml; do
        cards=$(grep -c "^   procedure .* at $file:" "$scratch/$boat.joined")
        for step in $(sed -n '/^steps:/,/^[a-z]*: *$/s/^  - id: //p' "$file" | tr -d '"'); do
            told=$(grep -cE "(^   |: )step $step(,| at $file:)" "$scratch/$boat.joined")
            here=$(grep -E "(^   |: )step $step(,| at)" "$scratch/$boat.joined" | grep -c "at $file:")
            [ "$here" -eq "$cards" ] || echo "$file $step: told $here of $told times on $cards cards"
        done
    done)
    expect_empty "why-steps-$boat" "$found"
    expect_empty "why-width-$boat" "$(awk '{ text = $0; gsub(/[\200-\277]/, "", text)
        if (length(text) > 100) print }' "$scratch/$boat.why")"
    # Sources are told whole: each key with a grade of the list.
    expect_empty "why-sources-$boat" "$(grep -o 'source S[0-9a-z]*:' "$scratch/$boat.joined" |
        sort -u | sed 's/source \(.*\):/\1/' | while read -r key; do
        grep -q "{key: $key, .*grade: V[AB]}" procedures/sources.yaml || echo "$key"
    done)"
done

# ---- what the words rest on ----

# One line a step: boat, card/step, its headline, what is printed with it and gear as
# printed; and one a card: boat, card, check code. Parted by tabs.
cat >"$scratch/steps.awk" <<'AWK'
function put() { if (step != "") print boat "\t" card "/" step "\t" words; step = words = "" }
{ sub(/ at [^ ]+\/[^ ]+$/, "") }
/^Card [0-9]+[A-Z]? \(/ { put(); card = $3; code = $6; gsub(/[(),]/, "", card) }
/^   boat / { boat = $2; print boat "\t" card "\t" code }
/^[0-9]+\. / { put(); sub(/^[0-9]+\. /, ""); words = $0; next }
/^[A-Z]/ { put() }
/^   step / { step = $2 }
/^   printed with it: / { words = words $0 }
/^   [^ ]/ { in_gear = 0 }
/^   gear / { in_gear = 1; words = words " [" $2 "]"; next }
/^      / && in_gear { words = words $0 }
END { put() }
AWK

# One line an item of a step: boat, card/step, tag, line of the boat file. An item
# that only a case passed over asked for is not what the words rest on. Where the case
# would be taken without the item too, they rest on what it is fed by: LINE-fed_by.
cat >"$scratch/items.awk" <<'AWK'
/^Card [0-9]+[A-Z]? \(/ { card = $3; gsub(/[(),]/, "", card) }
/^   boat / { boat = $2 }
/^   step / { step = $2; taken = "" }
/^   case / { taken = $0 }
/^   gear / { tag = $2 }
/^   record: [a-z_]+ [FEC][0-9]+ fitted at/ && index(taken, $2) { tag = $3; item = $2 }
tag != "" {
    number = $NF; sub(/^.*:/, "", number)
    if (item != "" && index(taken, item " not fitted or ") && index(taken, item " fed_by = "))
        number = number "-fed_by"
    item = ""
    print boat "\t" card "/" step "\t" tag "\t" number
    tag = ""
}
AWK

# Items, steps with all entries, steps of the copies BOAT-LINE: tells each item
# without which its step, or its card's check code, is the same.
cat >"$scratch/same.awk" <<'AWK'
BEGIN { FS = "\t" }
FILENAME ~ /items$/ { item[++count] = $0; next }
FILENAME ~ /whole$/ { whole[$1, $2] = $3; next }
{ copy[$1, $2] = $3; seen[$1] = 1 }
END {
    for (i = 1; i <= count; i++) {
        split(item[i], part, "\t")
        without = part[1] "-" part[4]
        name = card = part[2]; sub(/\/.*/, "", card)
        if (!(without in seen)) print without ": not told"
        if (whole[part[1], name] == copy[without, name]) print name ": the same without " part[3]
        if (whole[part[1], card] == copy[without, card]) print card ": same code without " part[3]
    }
}
AWK

# entry_take BOAT LINE: a copy of the boat without that entry, in a base of its own, since
# she keeps her identities; the last of its kind becomes not_fitted. Lines keep their numbers.
# The fixed radio is taken out where its tag stands: what tells of the set itself.
# LINE-fed_by: the piece stays, and is fed by the mains.
entry_take() {
    record=tests/fleet/boats/$1.yaml
    copy=$scratch/copies/$1-$2/boats/$1-$2.yaml
    mkdir -p "$scratch/copies/$1-$2/boats"
    cp tests/fleet/base.yaml "$scratch/copies/$1-$2"
    line=${2%-fed_by}
    if [ "$line" != "$2" ]; then
        sed "${line}s/, fed_by: [a-z]*//; ${line}s/}\$/, fed_by: mains}/" "$record" >"$copy"
    elif sed -n "${line}p" "$record" | grep -q '^  tag: '; then
        sed "$line,/^equipment:/s/^  \(tag\|zone\|side\|spot\|power_switch\|distress_key\|hold_s\):.*/  # taken out/" \
            "$record" >"$copy"
        echo '  - vhf_dsc' >>"$copy"
    else
        item=$(sed -n "${line}s/.*{item: \([a-z_]*\),.*/\1/p" "$record")
        sed "${line}s/.*/  # taken out/" "$record" >"$copy"
        grep -q "{item: $item," "$copy" || echo "  - $item" >>"$copy"
    fi
}

steps_of() {
    awk -f "$scratch/join.awk" "$1" | awk -f "$scratch/steps.awk"
}

mkdir -p "$scratch/fleet/boats"
cp tests/fleet/base.yaml "$scratch/fleet"
for boat in $boats; do
    awk -f "$scratch/items.awk" "$scratch/$boat.joined" >"$scratch/$boat.items"
    steps_of "$scratch/$boat.why" >"$scratch/$boat.whole"
    [ "$(wc -l <"$scratch/$boat.items")" -ge 30 ] || not_ok "why-items-$boat-few"
    for entry in $(cut -f 4 "$scratch/$boat.items" | sort -u); do
        entry_take "$boat" "$entry"
    done
done
for copy in "$scratch/copies"/*; do
    why "$copy" --all
    [ "$status" -le 1 ] || not_ok why-items-status "status $status" "$(cat "$scratch/stderr")"
    cat "$scratch/stdout"
    printf '\n\n'
done >"$scratch/copies.why"
steps_of "$scratch/copies.why" >"$scratch/copies.steps"
for boat in $boats; do
    expect_empty "why-items-$boat" "$(awk -f "$scratch/same.awk" "$scratch/$boat.items" \
        "$scratch/$boat.whole" "$scratch/copies.steps")"
    # Steps are told to be the same where they are.
    sed 's/^\([^	]*\)	/\1-1	/' "$scratch/$boat.whole" >"$scratch/unchanged"
    sed 's/	[^	]*$/	1/' "$scratch/$boat.items" >"$scratch/all.items"
    expect_equal "why-items-$boat-can-be-same" "$(wc -l <"$scratch/all.items")" \
        "$(awk -f "$scratch/same.awk" "$scratch/all.items" "$scratch/$boat.whole" \
            "$scratch/unchanged" | grep -c 'the same without')"
done

# ---- held cards, sign-off, status ----

rm -rf "$scratch/fleet"
cp -R tests/fleet "$scratch/fleet"
sed -i.was '/- fixed_extinguisher/d' "$scratch/fleet/boats/$first.yaml"
why "$scratch/fleet" --boat "$first" --all
expect_status why-held 1
awk -f "$scratch/join.awk" "$scratch/stdout" >"$scratch/joined"
expect_equal why-held-cards \
    "$(sed -n 's/^Card [0-9]*[A-Z]* (\(engine_fire[a-z_]*\)), .*/\1/p' "$scratch/stdout")" \
    "$(sed -n 's/^Card [0-9]*[A-Z]* (\([a-z_]*\)), .*HELD BACK$/\1/p' "$scratch/stdout")"
for part in '^Held back by$' \
    'not to be decided: case [0-9]* of [0-9]*, which asks: fixed_extinguisher reached from companionway at procedures/engine_fire.yaml:' \
    'record: fixed_extinguisher not recorded' \
    "fixed_extinguisher is not recorded: .* at $scratch/fleet/boats/$first.yaml:[0-9]*\$"; do
    grep -q "$part" "$scratch/joined" || not_ok "why-held-tells" "$part"
done
maydeck check "$scratch/fleet" --boat "$first" --date "$print_date"
expect_status why-held-as-check 1

sed 's/^approvals:.*/approvals:\
  - {card: flooding, text: '"$(fingerprint_of flooding)"', initials: QA, qualification: instructor, date: 2026-01-01, until: 2026-11-19}\
  - {card: gas_leak, text: '"$(fingerprint_of gas_leak)"', initials: QB, qualification: instructor, date: 2026-01-01, until: 2026-11-20}/' \
    tests/fleet/base.yaml >"$scratch/fleet/base.yaml"
cp "tests/fleet/boats/$first.yaml" "$scratch/fleet/boats/$first.yaml"
why "$scratch/fleet" --boat "$first" --card flooding
grep -q 'approval has expired: QA, instructor, from 2026-01-01 until 2026-11-19' "$scratch/stdout" &&
    grep -q 'not approved: no approval of flooding stands on 2026-11-20' "$scratch/stdout" ||
    not_ok why-approval-expired "$(sed -n '/^Sign-off/,$p' "$scratch/stdout")"
why "$scratch/fleet" --boat "$first" --card gas_leak
expect_equal why-approval-stands 0 "$(grep -c 'not approved\|has expired' "$scratch/stdout")"
expect_equal why-approval-told 1 "$(grep -c 'approval: QB, instructor' "$scratch/stdout")"

rm "$scratch/fleet/boats/$first.yaml.was"
echo 'frobnicate: yes' >>"$scratch/fleet/boats/$first.yaml"
why "$scratch/fleet" --all
expect_status why-broken-boat 1
grep -q "^$first: no cards" "$scratch/stdout" || not_ok why-broken-boat-told
expect_equal why-broken-boat-others "$(echo "$boats" | sed 1d |
    while read -r boat; do grep -c '^Card ' "$scratch/$boat.why"; done |
    awk '{ sum += $1 } END { print sum }')" \
    "$(grep -c '^Card ' "$scratch/stdout")"

# ---- one engine of two ----

# one_engine NAME RECORD...: the card of her port engine as why tells it, a line a sentence.
one_engine() {
    name=$1
    shift
    rm -rf "$scratch/one"
    mkdir -p "$scratch/one/boats"
    cp tests/fleet/base.yaml "$scratch/one/base.yaml"
    sed "$@" tests/fleet/boats/samphire.yaml >"$scratch/one/boats/samphire.yaml"
    why "$scratch/one" --boat samphire --card "$name"
    awk -f "$scratch/join.awk" "$scratch/stdout" >"$scratch/joined"
}

valve=$(grep -n 'tag: C7,' tests/fleet/boats/samphire.yaml | sed 's/:.*//')
one_engine engine_fire_port -e '/tag: C6,/d'
expect_status why-one-engine-held 1
grep -q "record: fuel_shutoff_diesel not recorded for engine_space_port, only for the other engine at .*:$((valve - 1))\$" \
    "$scratch/joined" && ok why-one-engine-record || not_ok why-one-engine-record "$(cat "$scratch/joined")"
grep -q "^ *fuel_shutoff_diesel for engine_space_port is not recorded: it holds back" "$scratch/joined" &&
    ok why-one-engine-holds || not_ok why-one-engine-holds "$(cat "$scratch/joined")"
one_engine engine_fire_port -e '/tag: C6,/d' -e 's/retired_tags: \[C15\]/retired_tags: [C6, C15]/' \
    -e '/^not_fitted:/a\  - {item: fuel_shutoff_diesel, serves: [engine_space_port]}'
expect_status why-one-engine-declared 0
declared=$(grep -n '{item: fuel_shutoff_diesel, serves' "$scratch/one/boats/samphire.yaml" | sed 's/:.*//')
grep -q "record: fuel_shutoff_diesel not fitted for engine_space_port at .*:$declared\$" "$scratch/joined" &&
    ok why-one-engine-not-fitted || not_ok why-one-engine-not-fitted "$(cat "$scratch/joined")"
grep -q 'passed over: case [0-9]* of [0-9]*, which asks: fuel_shutoff_diesel fitted at procedures/engine_fire.yaml:' "$scratch/joined" || not_ok why-one-engine-case
one_engine engine_fire_port -e '/tag: C6,/d' -e 's/retired_tags: \[C15\]/retired_tags: [C6, C15]/' \
    -e '/^not_fitted:/i\not_surveyed: [{item: fuel_shutoff_diesel, serves: [engine_space_port]}]'
expect_status why-one-engine-unsurveyed 1
unsurveyed=$(grep -n '^not_surveyed' "$scratch/one/boats/samphire.yaml" | sed 's/:.*//')
grep -q "record: fuel_shutoff_diesel not surveyed for engine_space_port at .*:$unsurveyed\$" "$scratch/joined" &&
    ok why-one-engine-not-surveyed || not_ok why-one-engine-not-surveyed "$(cat "$scratch/joined")"
one_engine engine_fire_starboard -e '/tag: C6,/d'
expect_status why-other-engine-whole 1
expect_empty why-other-engine-silent "$(grep 'not recorded for\|HELD BACK' "$scratch/joined")"

# ---- the distress card ----

# Where no alert can be sent there is none to cancel.
alert_parts='^Section cancel: 
^   words and order: ITU Radio Regulations 32.53$'
for boat in $boats; do
    sed -n '/^Card [0-9]*[A-Z]* (distress_call)/,/^Sign-off/p' "$scratch/$boat.joined" \
        >"$scratch/distress"
    for part in '^Section nature: ' '^Section pan_pan: ' '^Section relay: ' '^Section downgrade: ' \
        '^Section spell: ' '^   words and order: ITU Radio Regulations 33.12$' \
        '^   say: THIS IS .* at tests/fleet/boats/.*:[0-9]*$' '^   set: 1 .* at .*yaml:[0-9]*$'; do
        grep -q "$part" "$scratch/distress" || not_ok "why-distress-$boat" "$part"
    done
    alerts=2
    grep -q '^  dsc: no$' "tests/fleet/boats/$boat.yaml" && alerts=0
    expect_equal "why-distress-$boat-cancel" "$alerts" "$(grep -c "$alert_parts" "$scratch/distress")"
    ok "why-distress-$boat"
done
expect_equal why-distress-without-alert 1 "$(grep -l '^  dsc: no$' tests/fleet/boats/*.yaml | wc -l)"
exit $failures
