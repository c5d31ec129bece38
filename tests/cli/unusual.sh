#!/bin/sh
# Boats of unusual kinds (tests/unusual): crammed, bare, unknown, with a short and a long
# name, with sixteen openings; open boats, a jet, a trimaran, a motor
# catamaran, current made by petrol, gear all below. Each of their cards is printed, or a message says which
# entry to mend and how; and what it asks for mends it.
. tests/tap.sh
. tests/readback/checks

base=$scratch/base
out=$scratch/out
mkdir "$out"
cp -R tests/unusual "$base"

# printed BOAT CARDS: all cards of the boat, and no message of anything else.
printed() {
    maydeck print "$base" --boat "$1" --date "$print_date" -o "$out"
    expect_status "unusual-$1" 0
    expect_equal "unusual-$1-cards" "$2" "$(pdfinfo "$out/$1.pdf" 2>/dev/null | sed -n 's/^Pages: *//p')"
    for what in words contrast; do
        expect_empty "unusual-$1-$what" "$("${what}_check" "$out/$1.pdf" 2>&1)"
    done
}
printed laden 13
printed bare 12
printed ida 14
printed albatross 13
printed smew 8
printed skua 9
printed dabchick 7
printed whimbrel 10
printed knot 11
printed plover 14
printed teasel 12
printed dunlin 12

# told NAME BOAT PATTERN...: printing the boat ends with 1 and each message stands there.
told() {
    name=$1
    boat=$2
    shift 2
    maydeck print "$base" --boat "$boat" --date "$print_date" -o "$out"
    expect_status "unusual-$name" 1
    for pattern in "$@"; do
        grep -q -- "$pattern" "$scratch/stderr" && ok "unusual-$name-told" ||
            not_ok "unusual-$name-told" "not told: $pattern" "$(cat "$scratch/stderr")"
    done
}

# Every card asks for what is not known; only the safety plan can be printed.
told unknown unknown 'held: vhf_handheld is not recorded: it holds back the cards 2 DISTRESS CALL' \
    'held: seacock is not recorded: it holds back the card 7 FLOODING'
expect_equal unusual-unknown-cards 1 "$(pdfinfo "$out/unknown.pdf" | sed -n 's/^Pages: *//p')"
maydeck print "$base" --boat unknown --draft --date "$print_date" -o "$out"
expect_equal unusual-unknown-draft 13 "$(pdfinfo "$out/unknown-draft.pdf" | sed -n 's/^Pages: *//p')"
pdftotext "$out/unknown-draft.pdf" "$scratch/text"
# At head and foot of each card but the safety plan, which lacks nothing.
expect_equal unusual-unknown-marked 24 "$(grep -c 'DRAFT' "$scratch/text")"

# More gear than two safety plans hold has four, each piece on one of them.
printed cargo 18
pdftotext -l 4 "$out/cargo.pdf" "$scratch/text"
for title in 'ON DECK' BELOW; do
    expect_equal "unusual-cargo-$title" 2 "$(grep -c "$title\$" "$scratch/text")"
done
for page in A B C D; do
    expect_equal "unusual-cargo-$page" 1 "$(grep -c "^Card 1$page\$" "$scratch/text")"
done
expect_equal unusual-cargo-told-where 4 "$(grep -c 'll gear: cards 1A to 1D\.$' "$scratch/text")"


# A line of gear that is too long has a second line; one that is too long for two is told, with what
# to save.
long() { # SPOT OF F1, SPOT OF E1
    sed "s/spot: 2nd step/spot: $1/; s/spot: in the bag/spot: $2/" tests/unusual/boats/laden.yaml \
        >"$base/boats/laden.yaml"
}
long 'under the second step' 'in the yellow bag on top'
printed laden 13
pdftotext -layout "$out/laden.pdf" "$scratch/text"
for words in '2 kg *Companionway, port,' '^ *under the second step' 'Cockpit locker, starboard,' \
    '^ *in the yellow bag on top'; do
    grep -q -- "$words" "$scratch/text" && ok "unusual-two-lines-$words" ||
        not_ok "unusual-two-lines-$words" "$(cat "$scratch/text")"
done
long 'under the second step of the ladder behind the white board with two brass clips' \
    'in the yellow bag on top of the folded sun cover beside the two grey fenders aft'
told long laden 'laden.yaml:5:5: error: 3 ENGINE FIRE (en): a line of the steps is [0-9.]* mm too long' \
    'laden.yaml:11:5: error: 3 ENGINE FIRE (en): a line of the steps is [0-9.]* mm too long' \
    'remedy: shorten spot, how or name of this entry by about [0-9]* letters'
cp tests/unusual/boats/laden.yaml "$base/boats/"

# A seacock's own handling stands below its name where both are too long for a line.
cock() { # HOW OF C17
    sed "s/tag: C14, name: sink drain, \(.*\)how: {shut: across}, bung_mm: 25/tag: C14, name: double sink drain, \1valve: no/
        s/tag: C17, name: outlet, \(.*\)how: {shut: across}/tag: C17, name: outlet, \1how: {shut: $1}/" \
        tests/fleet/boats/tamarisk.yaml >"$base/boats/cock.yaml"
}
cock 'turn right 4 turns'
printed cock 14
pdftotext "$out/cock.pdf" "$scratch/text"
for words in 'Aft toilet, outlet:$' '^turn right 4 turns = shut$' 'Galley, double sink drain:$' '^no valve$'; do
    expect_equal "unusual-cock-$words" 1 "$(grep -c "$words" "$scratch/text")"
done
cock 'turn right three turns'
told cock-long cock 'cock.yaml:[0-9]*:5: error: 7 FLOODING (en): a line of the steps is [0-9.]* mm too long' \
    'remedy: shorten spot, how or name of this entry by about 1 letter$'
rm "$base/boats/cock.yaml"

# A name of thirty-four wide capitals stands on two lines. Where to spell it is too long for
# the distress card, what is done already is not asked for.
sed 's/name: Wandering.*/name: WMWMWM MWMWMWM WWWWWWW MMMMMMM WWW/' \
    tests/unusual/boats/albatross.yaml >"$base/boats/albatross.yaml"
printed albatross 13
sed 's/^  name: .*/  name: WMWMWM MWMWMWM WWWWWWW MMMMMMM WWW\
  name_spoken: Wim/' tests/fleet/boats/tamarisk.yaml >"$base/boats/wide.yaml"
told wide wide 'wide.yaml:3:9: error: 2 DISTRESS CALL (en): the distress card is .* mm too long' \
    'the name is spelled letter by letter on [0-9]* lines'
grep -q 'remedy: .*name_spoken' "$scratch/stderr" && not_ok unusual-wide-asked "$(cat "$scratch/stderr")"
expect_equal unusual-wide-errors 1 "$(grep -c ': error: ' "$scratch/stderr")"
expect_equal unusual-wide-cards 13 "$(pdfinfo "$out/wide.pdf" | sed -n 's/^Pages: *//p')"
for what in words contrast; do
    expect_empty "unusual-wide-$what" "$("${what}_check" "$out/wide.pdf" 2>&1)"
done
rm "$base/boats/wide.yaml"

# A name that is too long to be said three times: the shorter spoken one makes room.
sed '/name_spoken:/d' tests/unusual/boats/albatross.yaml >"$base/boats/albatross.yaml"
told name albatross 'albatross.yaml:4:9: error: .* mm too long' 'give a short name_spoken'
exit $failures
