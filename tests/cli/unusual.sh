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
    expect_equal "unusual-$1-cards" "$2" "$(pages_said "$out/$1.pdf")"
    for what in words contrast; do
        expect_empty "unusual-$1-$what" "$("${what}_check" "$out/$1.pdf" 2>&1)"
    done
}
printed laden 37
printed bare 30
printed ida 38
printed albatross 34
printed smew 23
printed skua 26
printed dabchick 24
printed whimbrel 31
printed knot 31
printed plover 34
printed teasel 30
printed dunlin 32

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
expect_equal unusual-unknown-draft 33 "$(pages_said "$out/unknown-draft.pdf")"
pdftotext "$out/unknown-draft.pdf" "$scratch/text"
# At the head of each page but that of the safety plan, which lacks nothing.
expect_equal unusual-unknown-marked 31 "$(grep -c 'DRAFT' "$scratch/text")"

# More gear than two safety plans hold has five, each piece on one of them; the index takes two.
printed cargo 42
pdftotext "$out/cargo.pdf" "$scratch/text"
expect_equal unusual-cargo-ON-DECK 3 "$(grep -c '^SAFETY PLAN, ON DECK$' "$scratch/text")"
expect_equal unusual-cargo-BELOW 2 "$(grep -c '^SAFETY PLAN, BELOW$' "$scratch/text")"
expect_equal unusual-cargo-CARDS 2 "$(grep -c '^SAFETY PLAN, CARDS$' "$scratch/text")"
for page in A B C D E F G; do
    expect_equal "unusual-cargo-$page" 1 "$(grep -c "^Card 1$page\$" "$scratch/text")"
done
expect_equal unusual-cargo-told-where 5 "$(grep -c 'll gear: cards 1A to 1E\.$' "$scratch/text")"


# A spot may take a line of its own. Where it is too long for that, each is told, with what to
# save.
ladder='under the second step of the ladder from the cockpit down to the saloon'
bag='in the yellow bag on top of the long cushions in the starboard locker'
sed "s/spot: 2nd step/spot: $ladder/; s/spot: in the bag/spot: $bag/" \
    tests/unusual/boats/laden.yaml >"$base/boats/laden.yaml"
told long laden 'laden.yaml:5:5: error: 3 ENGINE FIRE (en): a line of the steps is [0-9.]* mm too long' \
    'laden.yaml:11:5: error: 3 ENGINE FIRE (en): a line of the steps is [0-9.]* mm too long' \
    'remedy: shorten spot, how or name of this entry by about [0-9]* letters'
cp tests/unusual/boats/laden.yaml "$base/boats/"

# Ordinary places, however many words they take, are no reason to hold a card.
cat >"$scratch/places" <<'PLACES'
under the mattress at the foot end
behind the folding cockpit table
inside the cupboard to the left of the cooker
on the bulkhead behind the cabin door
under the seat cushion next to the wheel
in the drawer below the chart table
on top of the fridge behind the rail
beside the steps, on the left going down
at the back of the locker, on a hook
under the loose floorboard by the mast
PLACES
while IFS= read -r place; do
    sed -e "/tag: F[1-5],/s/spot: [^,}]*/spot: \"$place\"/" \
        -e "/tag: C[4-9],/s/spot: [^,}]*/spot: \"$place\"/" \
        tests/fleet/boats/tamarisk.yaml >"$base/boats/placed.yaml"
    maydeck print "$base" --boat placed --date "$print_date" -o "$out"
    expect_status "unusual-place-$place" 0
    pdftotext -raw "$out/placed.pdf" - | tr '\n' ' ' | grep -qF "$place" ||
        not_ok "unusual-place-$place" 'stands nowhere'
done <"$scratch/places"
rm "$base/boats/placed.yaml"

# A seacock's own handling stands behind its name, or below it.
cock() { # HOW OF C17
    sed "s/tag: C14, name: sink drain, \(.*\)how: {shut: across}, bung_mm: 25/tag: C14, name: double sink drain, \1valve: no/
        s/tag: C17, name: outlet, \(.*\)how: {shut: across}/tag: C17, name: outlet, \1how: {shut: $1}/" \
        tests/fleet/boats/tamarisk.yaml >"$base/boats/cock.yaml"
}
cock 'turn right 4 turns'
printed cock 38
pdftotext -raw "$out/cock.pdf" "$scratch/text"
for words in '= turn right 4 turns: SHUT' 'double sink drain' 'no valve'; do
    tr '\n' ' ' <"$scratch/text" | grep -qF "$words" && ok "unusual-cock-$words" ||
        not_ok "unusual-cock-$words" 'stands nowhere'
done
cock 'turn right three turns with the long key'
told cock-long cock "cock.yaml:$(grep -n 'tag: C17,' "$base/boats/cock.yaml" | cut -d: -f1):5: error: 7 FLOODING (en): a line of the steps is [0-9.]* mm too long" \
    'remedy: shorten spot, how or name of this entry by about [0-9]* letters$'
rm "$base/boats/cock.yaml"

# A name of thirty-four wide capitals stands on two lines, and is said and spelled.
sed 's/name: Wandering.*/name: WMWMWM MWMWMWM WWWWWWW MMMMMMM WWW/' \
    tests/unusual/boats/albatross.yaml >"$base/boats/albatross.yaml"
printed albatross 34
sed 's/^  name: .*/  name: WMWMWM MWMWMWM WWWWWWW MMMMMMM WWW\
  name_spoken: Wim/' tests/fleet/boats/tamarisk.yaml >"$base/boats/wide.yaml"
printed wide 38

# Many keys to press take a page of the call more; so many that no page holds them are told, and
# what is done already is not asked for.
keys_give() { # COUNT
    keys=$(awk -v count="$1" 'BEGIN { for (i = 1; i <= count; i++)
        printf "%spress key %d below the screen and wait for the tone", (i > 1 ? ", " : ""), i }')
    sed -i "s/^  nature_steps: .*/  nature_steps: [$keys]/" "$base/boats/wide.yaml"
}
keys_give 24
printed wide 39
pdftotext -raw "$out/wide.pdf" - | tr '\n' ' ' | grep -q 'press key 24 below' &&
    ok unusual-keys || not_ok unusual-keys 'the last is not there'
keys_give 100
told wide wide 'wide.yaml:3:9: error: 2B WHAT TO SAY (en): the distress card is .* mm too long' \
    'remedy: give a short looks, or shorter nature_steps$'
expect_equal unusual-wide-errors 1 "$(grep -c ': error: ' "$scratch/stderr")"
rm "$base/boats/wide.yaml"

# A long name is said three times in full. With looks that are long as well, it leaves a card
# with a plan no room for the call, which then stands on a side of its own; the shorter spoken one
# of before makes room for it.
sed '/name_spoken:/d' tests/unusual/boats/albatross.yaml >"$base/boats/albatross.yaml"
printed albatross 34
sed 's/^  name: .*/  name: WMWMWM MWMWMWM WWWWWWW MMMMMMM WWW/
    s/^  looks: .*/  looks: White sailing yacht, blue stripe, red deckhouse, grey sails/' \
    tests/fleet/boats/tamarisk.yaml >"$base/boats/wide.yaml"
printed wide 47
pdftotext -raw "$out/wide.pdf" "$scratch/text"
grep -q '^Card 7 front$' "$scratch/text" && ok unusual-name-two-sides ||
    not_ok unusual-name-two-sides 'card 7 has one side'
exit $failures
