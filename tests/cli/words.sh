#!/bin/sh
# The English texts keep the rules of their words, on whichever boat a text is printed
# (tests/words/rules.awk); the cards of the specimens keep to 480 different words, and what must
# never be done is a whole sentence on each. Each rule is shown to tell before it is trusted.
. tests/tap.sh

texts=procedures/words/en
most_words=480

# What commands begin with: the verbs by which the program judges headlines, and those of answers.
{
    awk '/^  verbs:/ { on = 1 } on { print } on && /\]/ { exit }' "$texts/words.yaml" |
        sed 's/^ *verbs://' | tr -cs 'a-z' '\n'
    printf '%s\n' 'do' load phone pour prepare
} | sed '/^$/d' >"$scratch/verbs"
count=$(wc -l <"$scratch/verbs" | tr -d ' ')
[ "$count" -gt 100 ] && ok words-verbs || not_ok words-verbs "$count verbs were read"

# rules FILE: the breaks in lines of tests/words/texts.awk.
rules() {
    awk -v terms=tests/words/terms.txt -v verbs="$scratch/verbs" -f tests/words/rules.awk "$1"
}

# seeded RULE KIND TEXT: the rule is what is told of the text, and nothing but it; RULE none.
seeded() {
    echo "seed:1|$2|$3" >"$scratch/seed"
    found=$(rules "$scratch/seed" | sed 's/^seed:1: \([a-z]*\): .*/\1/' | tr '\n' ' ')
    [ "$1" = none ] && expected= || expected="$1 "
    expect_equal "words-seeded: $3" "$expected" "$found"
}

while IFS='|' read -r rule kind text; do
    seeded "$rule" "$kind" "$text"
done <<'SEEDS'
out|act|SHUT it here, then out.
out|exit|Go out.
out|text|out of sight, or fall not seen?
out|never|put it out.
out|lethal|out
out|word|get out
none|word|out
none|act|PUT OUT all flames. Open the hatches.
none|never|put out a flame on open gas.
none|text|Fire is out?
none|text|Flame out? Air the boat.
none|lethal|Without air it dies.
cut|act|CUT its power.
cut|never|cut the battery of the pumps.
none|act|CUT the raft’s line.
none|never|cut the line before all are in.
none|text|cut
leave|act|DON’T TOUCH. Leave switches as they are.
leave|lethal|One is behind flames: leave it.
leave|text|Leave the fixed radio alone.
leave|act|SHOUT. Leave jackets.
none|never|leave unless you are forced to.
none|act|MAKE READY to leave. Head for land.
none|text|Turn it left.
upright|act|TURN the lever upright.
none|act|TURN the lever up.
verb|act|NO FLAME. Switches stay as they are.
verb|act|ALL ON DECK, upwind. Count.
verb|act|NEUTRAL. Steer to the side they fell.
verb|act|BURNS? Water on it.
verb|exit|Cover stays. Go on.
verb|act|DON’T DESPAIR. Count.
verb|exit|MAYDAY now. Search.
verb|exit|4 to 8 metres.
verb|act|BURNS?
none|act|BURNS? POUR cool water on it.
none|act|LIFEJACKETS ON. Wake all.
none|act|LINE ON? BOTH ENGINES OFF. Then hands.
none|act|AFTER THE CALL: TURN OFF the batteries.
none|act|DON’T TOUCH the bottles: gas is there.
none|act|SHOUT “FIRE!” Wake all.
none|exit|Do steps {call} to {go}.
none|text|Not over flames.
sentence|never|the hatch.
sentence|never|open the hatch
sentence|never|Open the hatch.
sentence|never|open the hatch. It burns.
sentence|never|never open the hatch.
none|never|open the hatch.
none|never|touch any switch or plug.
term|act|TIE the painter.
term|act|SWITCH OFF the pump.
term|act|TAKE the life jackets.
term|text|Gas cylinder open.
term|text|LPG locker.
none|text|The solenoid.
none|text|Shelter here.
SEEDS

# Each kind of text is read, under its own name; what is not understood is told.
mkdir -p "$scratch/seeded"
cat >"$scratch/seeded/card.yaml" <<'CARD'
# A comment.
procedure: card
title: A title
when_reason: A reason.
signs: [One sign, "two, signs"]
call_when:
  alone: "**ALONE:** call."
steps:
  first:
    act: "**DO** this, step {second}."
    because: A reason.
    lethal:
      smoke: "Not in smoke."
    cases:
      other:
        act: "**DO** that."
        because: Another reason.
  never:
    act: "**STOP:** wait."
decision:
  ask: hot?
  yes: Go on.
  no:
    one: Stay.
never:
  hatch: open the hatch.
cautions:
  hot: It is hot.
  folded: >
    A text on a line of its own.
CARD
cat >"$scratch/seeded/words.yaml" <<'WORDS'
language: en
name: English
words:
  "on": "ON"
  tag: "{tag} Radio"
  persons: {one: "{count} person", other: "{count} persons"}
proof:
  verbs: [act, aim,
    air]
WORDS
(cd "$scratch/seeded" && awk -f "$top/tests/words/texts.awk" card.yaml words.yaml) >"$scratch/read"
cat >"$scratch/expected" <<'READ'
card.yaml:3|text|A title
card.yaml:5|text|One sign
card.yaml:5|text|two, signs
card.yaml:7|text|ALONE: call.
card.yaml:10|act|DO this, step {second}.
card.yaml:13|lethal|Not in smoke.
card.yaml:16|act|DO that.
card.yaml:19|act|STOP: wait.
card.yaml:21|text|hot?
card.yaml:22|exit|Go on.
card.yaml:24|exit|Stay.
card.yaml:26|never|open the hatch.
card.yaml:28|text|It is hot.
card.yaml:29|unread|>
card.yaml:30|unread|    A text on a line of its own.
words.yaml:4|word|ON
words.yaml:5|word|{tag} Radio
words.yaml:6|word|{count} person
words.yaml:6|word|{count} persons
READ
expect_equal words-texts-read "$(cat "$scratch/expected")" "$(cat "$scratch/read")"
seeded unread unread 'A text on a line of its own.'

# ---- the texts ----

awk -f tests/words/texts.awk "$texts"/*.yaml >"$scratch/texts"
lines=$(grep -c '|act|' "$scratch/texts")
[ "$lines" -gt 100 ] && ok words-texts || not_ok words-texts "$lines headlines only"
rules "$scratch/texts" >"$scratch/breaks"
for rule in unread out cut leave upright verb sentence term; do
    expect_empty "words-$rule" "$(grep "^[^ ]*: $rule: " "$scratch/breaks")"
done

# ---- the printed cards ----

for fleet in fleet islands; do
    maydeck print "tests/$fleet" --dump --date "$print_date" -o "$scratch/$fleet"
    expect_status "words-$fleet-printed" 0
done
cards=$(ls "$scratch"/fleet/*.dump "$scratch"/islands/*.dump | grep -v 'safety_plan\|distress_call')

# nevers FILE...: each prohibition that is printed, a line each, as it is read.
nevers() {
    awk '/^text never / && /role=box/ {
            text = $0
            sub(/^.* "/, "", text)
            sub(/"$/, "", text)
            if (text == "Never" && line != "") { print line; line = "" }
            line = line (line == "" ? "" : " ") text
        }
        !/^text never / && /^page / && line != "" { print line; line = "" }
        END { if (line != "") print line }' "$@"
}

# nevers_broken: those read that are no sentence of Never and a verb.
nevers_broken() {
    while read -r line; do
        verb=$(echo "$line" | sed -n 's/^Never \([a-z]*\) [^.]*[.]$/\1/p')
        grep -qx -- "${verb:-none}" "$scratch/verbs" || echo "$line"
    done
}

expect_equal words-nevers-seeded "Never the hatch.
Never open it
open it.
Never open it. Stay." "$(printf '%s\n' 'Never open it.' 'Never the hatch.' 'Never open it' 'open it.' \
    'Never open it. Stay.' | nevers_broken)"
# shellcheck disable=SC2086
nevers $cards | sort -u >"$scratch/nevers"
[ "$(wc -l <"$scratch/nevers")" -gt 10 ] && ok words-nevers-seen ||
    not_ok words-nevers-seen "$(cat "$scratch/nevers")"
expect_empty words-nevers "$(nevers_broken <"$scratch/nevers")"

# many FILE: what is wrong with a list of different words, or nothing.
many() {
    words=$(wc -l <"$1" | tr -d ' ')
    [ "$words" -le "$most_words" ] || echo "$words different words, $most_words at most"
}

# Made-up words, none of them another's plural.
awk 'BEGIN { for (i = 0; i < 481; i++) printf "q%c%c\n", 97 + i / 20, 97 + i % 20 + (i % 20 > 17) }' \
    >"$scratch/made"
sed 's/^/seed:1|text|/' "$scratch/made" >"$scratch/made_texts"
awk -f tests/words/count.awk "$scratch/made_texts" "$scratch/made" >"$scratch/made_words"
expect_equal words-count-seeded "481 different words, 480 at most" "$(many "$scratch/made_words")"
sed 1d "$scratch/made_words" >"$scratch/made_fewer"
expect_empty words-count-at-most "$(many "$scratch/made_fewer")"
echo 'seed:1|text|Hatch, hatches: the boat’s bottle and bottles, step {two} of 12. Unprinted' >"$scratch/own"
echo 'HATCH hatches boat’s Bottle bottles step 12 of and the others two' >"$scratch/shown"
expect_equal words-count-of "and boat bottle hatch of step the" \
    "$(awk -f tests/words/count.awk "$scratch/own" "$scratch/shown" | sort | tr '\n' ' ' | sed 's/ $//')"

# shellcheck disable=SC2086
cat $cards | sed -n 's/^text [a-z ]* [0-9-]*,[0-9-]* .*role=[a-z_]* .* "\(.*\)"$/\1/p' >"$scratch/printed"
grep -v "^$texts/words.yaml\|^$texts/safety_plan.yaml\|^$texts/distress_call.yaml" "$scratch/texts" \
    >"$scratch/own_texts"
awk -f tests/words/count.awk "$scratch/own_texts" "$scratch/printed" | sort >"$scratch/words"
expect_empty words-count "$(many "$scratch/words")"
exit $failures
