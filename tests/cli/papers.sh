#!/bin/sh
# Papers: which there are, who names one, what the files are called, how large their pages are.
. tests/tap.sh

base=$scratch/base
out=$scratch/out

# printed ARGUMENT...: one small boat, into an empty folder.
printed() {
    rm -rf "$out"
    maydeck print "$base" --boat bramble --date "$print_date" -o "$out" "$@"
}

# files_are NAME FILES: these and no others were made.
files_are() {
    expect_equal "$1-files" "$2" "$(folder_list "$out" 2>/dev/null | tr '\n' ' ' | sed 's/ $//')"
}

# size_is NAME FILE SIZE: every page is so large, in points.
size_is() {
    expect_equal "$1-size" "$3" "$(pdfinfo -f 1 -l 99 "$out/$2" 2>/dev/null |
        sed -n 's/^Page  *[0-9]* size: *\(.* pts\).*/\1/p' | sort -u)"
}

cp -R tests/fleet "$base"

# ---- who names the paper ----

printed
files_are none-named bramble.pdf
size_is none-named bramble.pdf '595.276 x 841.89 pts'

printed --paper letter
files_are option bramble.letter.pdf
size_is option bramble.letter.pdf '612 x 792 pts'

echo 'paper: letter' >>"$base/base.yaml"
printed
files_are base bramble.pdf
size_is base bramble.pdf '612 x 792 pts'
printed --paper a4
files_are option-before-base bramble.a4.pdf
size_is option-before-base bramble.a4.pdf '595.276 x 841.89 pts'

# an older file on another paper is told, as one in another language is
maydeck print "$base" --boat bramble --date "$print_date" -o "$out"
if grep -q '^.*/bramble.a4.pdf: not of this run$' "$scratch/stdout"; then
    ok older-paper-is-told
else
    not_ok older-paper-is-told "$(cat "$scratch/stdout")"
fi

# ---- on one side ----

# two_sided FOLDER PAPER: cards of steps whose call stands on the back, which then all have one.
two_sided() {
    maydeck check "$1" --date "$print_date" --paper "$2"
    cat "$scratch/stdout" "$scratch/stderr" | grep -o 'the card .* has no room on one side'
}

# those whose call stands on the back of A4 too; every other card has one side
few='14 SKIPPER IS DOWN
18 NO ENGINE, ROPE'
for of in fleet islands unusual hazard; do
    case $of in
    fleet | islands) back=$few'
21 ANCHOR DRAGS
22 STEERING GONE' ;;
    unusual) back=$few'
22 STEERING GONE' ;;
    *) back=$few'
21 ANCHOR DRAGS' ;;
    esac
    expect_equal "$of-stands-on-one-side-of-a4" "$back" "$(two_sided "tests/$of" a4 |
        sed 's/^the card \(.*\) has no room .*/\1/' | sort -n -u)"
done
# a page that is lower has no room for some more
on_a4=$(two_sided tests/fleet a4 | sort -u | wc -l)
if [ "$(two_sided tests/fleet letter | sort -u | wc -l)" -gt "$on_a4" ]; then
    ok the-back-is-told
else
    not_ok the-back-is-told 'no more cards are told to be on two sides than on A4'
fi

# ---- front and back ----

# numbers_of FILE: what each page says it is, a line each; "-" of a blank one.
numbers_of() {
    count=$(pdfinfo "$out/$1" | sed -n 's/^Pages: *//p')
    for page in $(seq "$count"); do
        found=$(pdftotext -f "$page" -l "$page" "$out/$1" - | grep -m 1 '^Card [0-9]')
        echo "${found:--}"
    done
}

# says_of_viewer FILE KEY VALUE: the viewer is told so.
says_of_viewer() {
    qpdf --qdf --object-streams=disable "$out/$1" - 2>/dev/null | grep -a -q "/$2 $3"
}

sed -i 's/^paper: .*/paper: a4/' "$base/base.yaml"
rm -rf "$out"
maydeck print "$base" --boat tamarisk --date "$print_date" -o "$out" --paper a5 \
    --card gas_leak,galley_fire
files_are leaves 'tamarisk-galley_fire.a5.pdf tamarisk-gas_leak.a5.pdf'
size_is leaves tamarisk-gas_leak.a5.pdf '419.528 x 595.276 pts'
expect_equal leaf-of-two-sides 'Card 9 front
Card 9 back' "$(numbers_of tamarisk-gas_leak.a5.pdf)"
expect_equal leaf-of-its-own-for-the-call 'Card 4 front
Card 4 back
Card 4 call
-' "$(numbers_of tamarisk-galley_fire.a5.pdf)"

# each card of a set begins on a leaf of its own
maydeck print "$base" --boat tamarisk --date "$print_date" -o "$out" --paper a5
numbers_of tamarisk.a5.pdf >"$scratch/numbers"
expect_equal each-card-begins-a-leaf "$(grep -c ' front$' "$scratch/numbers")" \
    "$(sed -n '1~2p' "$scratch/numbers" | grep -c ' front$')"
expect_empty each-back-lies-behind-its-front "$(awk '
    NR % 2 == 0 && front ~ / front$/ {
        own = front; sub(/ front$/, " back", own)
        if ($0 != own) print NR ": " $0 " behind " front
    }
    { front = $0 }' "$scratch/numbers")"

for told in 'PrintScaling /None' 'PickTrayByPDFSize true' 'Duplex /DuplexFlipLongEdge'; do
    # shellcheck disable=SC2086
    if says_of_viewer tamarisk.a5.pdf $told; then
        ok "viewer-is-told-$(echo "$told" | tr ' /' '--')"
    else
        not_ok "viewer-is-told-$(echo "$told" | tr ' /' '--')" "it is not in the file"
    fi
done
# on paper of one side too a card that needs its back gets it, and the others a blank one
maydeck print "$base" --boat samphire --date "$print_date" -o "$out" --paper letter
numbers_of samphire.letter.pdf >"$scratch/numbers"
if grep -q ' back$' "$scratch/numbers"; then
    expect_empty each-call-lies-behind-its-card "$(awk '
        NR % 2 == 0 && $0 != "-" && $0 !~ / back$/ { print NR ": " $0 " is a back" }
        NR % 2 == 0 && front ~ / front$/ && $0 !~ / back$/ { print NR ": " $0 " behind " front }
        { front = $0 }' "$scratch/numbers")"
    if says_of_viewer samphire.letter.pdf Duplex /DuplexFlipLongEdge; then
        ok a-set-with-backs-is-turned
    else
        not_ok a-set-with-backs-is-turned "the file does not say so"
    fi
else
    skip each-call-lies-behind-its-card "all cards fit on one side of Letter"
fi

printed
if says_of_viewer bramble.pdf Duplex /Simplex; then
    ok one-side-is-told
else
    not_ok one-side-is-told "it is not in the file"
fi

# what no leaf holds is held, and told with the paper that has room for it
maydeck check "$base" --boat tamarisk --date "$print_date" --paper a5
if grep -A 9 'SAFETY PLAN.* mm too long' "$scratch/problems" | grep -q -- '--paper a4'; then
    ok too-long-for-a-leaf-is-told
else
    not_ok too-long-for-a-leaf-is-told "$(cat "$scratch/problems")"
fi

# A distress call has more pages there: the call, what to say, PAN PAN, relay, cancelling.
maydeck print "$base" --boat tamarisk --card distress_call --date "$print_date" --paper a5 -o "$out"
for page in 2A 2B 2C 2D 2E; do
    pdftotext "$out/tamarisk-distress_call.a5.pdf" - | grep -q "^Card $page$" ||
        not_ok distress-call-on-leaves "no card $page"
done
ok distress-call-on-leaves

# ---- without colour ----

# colours_of FILE: the operators in its pages that set a colour, with what they set.
colours_of() {
    qpdf --qdf --object-streams=disable "$out/$1" - 2>/dev/null |
        grep -a -E ' (rg|RG|k|K|sc|SC|scn|SCN|cs|CS)$'
}

printed --mono
files_are mono bramble.mono.pdf
expect_empty mono-sets-no-colour "$(colours_of bramble.mono.pdf | head -3)"
printed --mono --paper a5
files_are mono-on-other-paper bramble.a5.mono.pdf
expect_empty mono-on-other-paper-sets-no-colour "$(colours_of bramble.a5.mono.pdf | head -3)"
printed
if [ -n "$(colours_of bramble.pdf)" ]; then
    ok colour-is-found-where-it-is
else
    not_ok colour-is-found-where-it-is "no operator sets one in the set in colour"
fi

# ---- holes and pouches ----

# trim_of FILE: the box that is left when it is cut, in whole points.
trim_of() {
    pdfinfo -box "$out/$1" | sed -n 's/^TrimBox: *//p' | awk '{ printf "%d %d %d %d\n", $1, $2, $3, $4 }'
}

printed
expect_equal uncut-has-no-trim '0 0 595 841' "$(trim_of bramble.pdf)"
printed --pouch wet
files_are wet bramble.pdf
size_is wet bramble.pdf '595.276 x 841.89 pts'
expect_equal wet-is-cut '14 14 581 827' "$(trim_of bramble.pdf)"
for edge in top left none; do
    printed --punch $edge
    expect_empty "punched-$edge-is-proofread" "$(grep ': G[0-9]' "$scratch/stderr")"
    files_are "punched-$edge" bramble.pdf
done
printed --punch bottom
expect_status wrong-edge 2
expect_equal wrong-edge-remedy '  remedy: write top or left or none' "$(sed -n 2p "$scratch/stderr")"
printed --pouch damp
expect_status wrong-pouch 2
expect_equal wrong-pouch-remedy '  remedy: write dry or wet' "$(sed -n 2p "$scratch/stderr")"

# ---- a paper that there is not ----

all=$(sed -n 's/^    PAPER([A-Z0-9_]*, "\([a-z0-9]*\)".*/\1/p' include/paper_list.h)
written=$(echo $all | sed 's/ / or /g')
printed --paper foolscap
expect_status wrong-option 2
expect_equal wrong-option-what 'maydeck: error: --paper does not take "foolscap"' \
    "$(sed -n 1p "$scratch/stderr")"
expect_equal wrong-option-remedy "  remedy: write $written" "$(sed -n 2p "$scratch/stderr")"

sed -i 's/^paper: .*/paper: foolscap/' "$base/base.yaml"
printed
expect_status wrong-in-base 1
for paper in $all; do
    if ! grep -q "\"foolscap\"" "$scratch/problems" || ! grep -q "$paper" "$scratch/problems"; then
        not_ok "wrong-in-base-names-$paper" "$(cat "$scratch/problems")"
    fi
done
ok wrong-in-base-is-told

# ---- what does not fit names a paper that has more room ----

sed -i 's/^paper: .*/paper: letter/' "$base/base.yaml"
maydeck check "$base" --date "$print_date"
grep ' mm too long at the smallest size' "$scratch/problems" >"$scratch/over"
if [ ! -s "$scratch/over" ]; then
    skip too-long-names-a-paper "all cards fit on Letter"
elif grep -q -- '--paper a4' "$scratch/problems"; then
    ok too-long-names-a-paper
else
    not_ok too-long-names-a-paper "$(cat "$scratch/problems")"
fi

exit $failures
