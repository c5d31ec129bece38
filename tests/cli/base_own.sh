#!/bin/sh
# A base's own cards: one of the program's changed, one of its own, with a source of its own; and
# lines of its own. They stand among the others, marked and proved, approved by nobody's word on
# the program's text; every other card stays as it is, also where one of them cannot be used.
. tests/tap.sh

base=$scratch/wrack
plain=$scratch/plain
mkdir -p "$plain/boats"
sed -e 's/Heron/Wrack/g' tests/errors/base/base.yaml >"$plain/base.yaml"
sed -e 's/name: Alder/name: Teasel/; s/QALD3/QTEA3/; s/200014810/200014830/; s/990D0 00134/990D0 00139/' \
    tests/errors/base/boats/alder.yaml >"$plain/boats/teasel.yaml"

# The program's card on lightning with a step in other words, and a card on a gate that is shut.
own_lay() {
    rm -rf "$base"
    cp -R "$plain" "$base"
    mkdir -p "$base/procedures/words/en"
    cp procedures/lightning.yaml "$base/procedures/"
    sed 's/^    act: "\*\*STEER BY LAND.*/    act: "**STEER FOR THE YARD:** it has a light."/' \
        procedures/words/en/lightning.yaml >"$base/procedures/words/en/lightning.yaml"
    cat >"$base/procedures/gate_shut.yaml" <<'LOGIC'
procedure: gate_shut
number: 60
symbol: anchor
stripe: control
seen_as: boat
hazards: water
steps:
  - id: wait
    uses: [bilge_pump_manual]
    sources: [W1]
  - id: turn
    practice: yes
decision:
  after: turn
  yes: {card: flooding}
  no: {}
  practice: yes
cautions:
  - {id: stream, sources: [W1]}
LOGIC
    cat >"$base/procedures/words/en/gate_shut.yaml" <<'TEXTS'
procedure: gate_shut
title: The gate is shut
subject: GATE
signs: [Red light over the gate]
seen: [Gate is shut]
steps:
  wait:
    act: "**WAIT** outside. Pump ready."
    because: The stream sets into the gate.
  turn:
    act: "**TURN** into the stream."
decision:
  ask: water comes in?
  yes: Leave the gate.
  no: Wait for the green light.
cautions:
  stream: The stream turns boats over here.
TEXTS
    cat >"$base/procedures/sources.yaml" <<'SOURCES'
sources:
  - {key: W1, issuer: Wrack harbour office, id: order 9, title: The gate, tag: Wrack 9, read: 2026-10, status: current, grade: VA}
SOURCES
}

# dumped FOLDER BASE: all cards of Teasel as text.
dumped() {
    rm -rf "$scratch/$1"
    maydeck print "$2" --dump --date "$print_date" -o "$scratch/$1"
}

# others_same NAME FOLDER [CARD...]: all pages but those cards and the plan say what they said.
others_same() {
    name=$1 folder=$2
    shift 2
    changed=
    for page in "$scratch/before"/*.dump; do
        card=${page##*/teasel-}
        case " safety_plan $* " in
        *" ${card%%.*} "*) continue ;;
        esac
        case $card in safety_plan*) continue ;; esac
        page_words_but_plan "$page" >"$scratch/one"
        page_words_but_plan "$scratch/$folder/${page##*/}" >"$scratch/other" 2>/dev/null
        cmp -s "$scratch/one" "$scratch/other" || changed="$changed ${page##*/}"
    done
    expect_empty "$name" "$changed"
}

# says NAME FILE WORDS
says() {
    grep -qF -- "$3" "$2" && ok "$1" || not_ok "$1" "not said: $3" "$(head -40 "$2")"
}

dumped before "$plain"
expect_status own-before 0

# ---- as they should be ----

own_lay
dumped after "$base"
expect_status own-after 0
cards=$scratch/after
expect_equal own-pages "teasel-gate_shut.dump" "$(for page in "$cards"/*.dump; do
    case $page in *safety_plan*) continue ;; esac
    [ -f "$scratch/before/${page##*/}" ] || echo "${page##*/}"
done)"
others_same own-others after lightning
says own-changed-mark "$cards/teasel-lightning.dump" 'CHANGED BY THE BASE'
says own-changed-unapproved "$cards/teasel-lightning.dump" 'NOT APPROVED BY A QUALIFIED PERSON'
says own-changed-step "$cards/teasel-lightning.dump" 'STEER FOR THE YARD:'
says own-mark "$cards/teasel-gate_shut.dump" 'THE BASE’S OWN CARD'
says own-number "$cards/teasel-gate_shut.dump" 'Card 60'
says own-source "$cards/teasel-gate_shut.dump" '[Wrack 9]'
cat "$cards"/teasel-safety_plan*.dump >"$scratch/plan"
says own-index "$scratch/plan" 'Gate is shut'
expect_empty own-marks-alone "$(grep -l 'THE BASE\|CHANGED BY' "$cards"/*.dump | grep -v 'lightning\|gate_shut')"
maydeck print "$base" --card gate_shut,lightning --date "$print_date" -o "$scratch/pdf"
expect_status own-alone 0
expect_equal own-alone-files "teasel-gate_shut.pdf
teasel-lightning.pdf" "$(folder_list "$scratch/pdf")"

maydeck why "$base" --card lightning --date "$print_date"
says own-why-changed "$scratch/stdout" "procedure lightning, changed by the base"
tr -s ' \n' '  ' <"$scratch/stdout" >"$scratch/joined"
says own-why-file "$scratch/joined" "at $base/procedures/lightning.yaml:"
maydeck why "$base" --card gate_shut --date "$print_date"
says own-why-own "$scratch/stdout" "procedure gate_shut, the base's own"
tr -s ' \n' '  ' <"$scratch/stdout" >"$scratch/joined"
says own-why-source "$scratch/joined" 'source W1: Wrack harbour office, order 9, "The gate"'
maydeck check "$base" --card lightning --date "$print_date"
says own-check "$scratch/stdout" "cards that the base has written: lightning (changed, $base/procedures/lightning.yaml), gate_shut (of its own, $base/procedures/gate_shut.yaml)"
grep 'await the approval' "$scratch/stdout" >"$scratch/awaited"
says own-awaited "$scratch/awaited" 'gate_shut'
maydeck why "$base" --sign-off --card gate_shut
says own-sheet "$scratch/stdout" 'a card of the base'"'"'s own'
cut -c 1-400 "$scratch/stdout" | sed -n 's/^fingerprint of this text: //p' >"$scratch/text"

# An approval of the program's text is none of a copy of it, word for word.
cp procedures/lightning.yaml "$base/procedures/"
cp procedures/words/en/lightning.yaml "$base/procedures/words/en/"
sed -i "s/^approvals: .*/approvals: [{card: lightning, text: $(fingerprint_of lightning), initials: QB, qualification: instructor, date: 2026-01-01, until: 2027-01-01}, {card: gate_shut, text: $(cat "$scratch/text"), initials: QB, qualification: instructor, date: 2026-01-01, until: 2027-01-01}]/" \
    "$base/base.yaml"
dumped copied "$base"
says own-copy-unapproved "$scratch/copied/teasel-lightning.dump" 'NOT APPROVED BY A QUALIFIED PERSON'
says own-approved "$scratch/copied/teasel-gate_shut.dump" 'Approved QB'
says own-approved-mark "$scratch/copied/teasel-gate_shut.dump" 'THE BASE’S OWN CARD'
sed -i 's/order 9/order 10/' "$base/procedures/sources.yaml"
dumped lapsed "$base"
says own-lapsed "$scratch/lapsed/teasel-gate_shut.dump" 'NOT APPROVED BY A QUALIFIED PERSON'

# ---- what a choice of cards and lines say of them ----

own_lay
echo 'cards: {leave_out: [gate_shut, lightning]}' >>"$base/base.yaml"
dumped left "$base"
expect_status own-left-out 0
expect_empty own-left-out-pages "$(ls "$scratch/left" | grep 'gate_shut\|lightning')"
own_lay
sed -i 's/^lines: .*/lines: [{card: gate_shut, say: Gate phone 5., source: base, does: []}]/' "$base/base.yaml"
echo 'lines: [{card: gate_shut, say: She turns slowly., source: yard, does: []}]' >>"$base/boats/teasel.yaml"
dumped lines "$base"
expect_status own-lines 0
says own-line "$scratch/lines/teasel-gate_shut.dump" 'Gate phone 5.'
says own-line-of-boat "$scratch/lines/teasel-gate_shut.dump" 'She turns slowly.'

# ---- one fault holds its card alone ----

# fault NAME FILE SCRIPT CARDS WORDS: cards that are not printed, and what is told.
fault() {
    own_lay
    cp "$base/procedures/$2" "$scratch/was"
    sed "$3" "$scratch/was" >"$base/procedures/$2"
    ! cmp -s "$scratch/was" "$base/procedures/$2" || not_ok "own-$1-changed" "no change: $3"
    dumped "$1" "$base"
    expect_status "own-$1" 1
    for card in lightning gate_shut; do
        held=no
        [ -f "$scratch/$1/teasel-$card.dump" ] || held=yes
        case " $4 " in
        *" $card "*) expect_equal "own-$1-$card" yes $held ;;
        *) expect_equal "own-$1-$card" no $held ;;
        esac
    done
    others_same "own-$1-others" "$1" lightning
    says "own-$1-told" "$scratch/stderr" "$5"
}
fault text words/en/lightning.yaml '/^title:/d' lightning \
    'words/en/lightning.yaml:1:1: error: a file of texts needs the key "title"'
fault held words/en/lightning.yaml '/^title:/d' lightning 'the card lightning is held back on every boat'
fault key gate_shut.yaml 's/^hazards: water/hazard: water/' gate_shut 'a procedure has no key "hazard"'
fault number gate_shut.yaml 's/^number: 60/number: 29/' gate_shut "number 29: a base's own cards have 60 to 99"
fault exit gate_shut.yaml 's/card: flooding/card: floding/' gate_shut 'no procedure is called floding'
fault sources sources.yaml 's/key: W1/key: S1/' 'lightning gate_shut' "source S1 is one of the program's"
fault danger gate_shut.yaml 's/^  - id: turn/&\n    does: [cut_radio]/' gate_shut \
    "error: 60 THE GATE IS SHUT: step 2 (turn)"
fault gear gate_shut.yaml 's/uses: \[bilge_pump_manual\]/uses: [sea_anchor]/' gate_shut 'sea_anchor'
exit $failures
