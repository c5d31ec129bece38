#!/bin/sh
# Approvals by fingerprint: one stands for one text, lapses when that text changes and not when
# something else does; what awaits approval is listed, and the sheet to sign holds all of it.
. tests/tap.sh

tool=$scratch/tool
own=$tool/procedures
base=$scratch/wrack
mkdir -p "$tool/out" "$base/boats"
cp -R procedures "$tool/"
cp -R out/fonts "$tool/out/"
cp "$MAYDECK" "$tool/out/maydeck"
chmod -R u+w "$tool"

# A base and a boat of this test alone.
sed -e 's/Heron/Wrack/g' tests/errors/base/base.yaml >"$scratch/base.yaml"
sed -e 's/name: Alder/name: Teasel/; s/QALD3/QTEA3/; s/200014810/200014830/; s/990D0 00134/990D0 00139/' \
    tests/errors/base/boats/alder.yaml >"$base/boats/teasel.yaml"

# run ARGUMENT...: the copy of the program, its texts sealed as they are.
run() {
    seal "$own"
    # shellcheck disable=SC2086
    $WRAP "$tool/out/maydeck" "$@" >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# approved CARD TEXT...: base.yaml with approvals of those texts.
approved() {
    {
        echo 'approvals:'
        while [ $# -gt 0 ]; do
            echo "  - {card: $1, text: $2, initials: QB, qualification: instructor, date: 2026-01-01, until: 2027-01-01}"
            shift 2
        done
    } >"$scratch/approvals"
    sed -e "/^approvals:/r $scratch/approvals" -e '/^approvals:/d' "$scratch/base.yaml" >"$base/base.yaml"
}

# now CARD: the fingerprint of its text as the copy has it.
now() {
    run list cards
    sed -n "s/^[0-9]* *$1 .* \([0-9A-F-]\{19\}\) .*/\1/p" "$scratch/stdout"
}

# stands NAME yes|no [COUNT]: as the card flooding says, and as check does, which tells of so many
# approvals that have lapsed.
stands() {
    rm -rf "$scratch/cards"
    run print "$base" --card flooding,gas_leak --dump --date "$print_date" -o "$scratch/cards"
    case $2 in
    yes) wanted='Approved QB' unwanted='NOT APPROVED' ;;
    no) wanted='NOT APPROVED' unwanted='Approved QB' ;;
    esac
    grep -q "$wanted" "$scratch/cards/teasel-flooding.dump" &&
        ! grep -q "$unwanted" "$scratch/cards/teasel-flooding.dump" && ok "approval-$1" ||
        not_ok "approval-$1" "not $2" "$(cat "$scratch/stderr")"
    run check "$base" --card flooding --date "$print_date"
    lapsed=$(grep -c 'deficiency: the approval of flooding by QB has lapsed: the text has changed' "$scratch/stdout")
    case $2 in
    yes) expect_equal "approval-$1-check" "${3-0}" "$lapsed" ;;
    no) expect_equal "approval-$1-check" "${3-1}" "$lapsed" ;;
    esac
}

# ---- nothing is approved, then one card ----

approved
stands none no 0
grep -q 'note: 29 procedures in the language en await the approval of a qualified person: ' "$scratch/stdout" &&
    ok approval-awaited || not_ok approval-awaited "$(head -3 "$scratch/stdout")"

run why "$base" --sign-off --card flooding
expect_status approval-sheet 0
text=$(sed -n 's/^fingerprint of this text: //p' "$scratch/stdout")
expect_equal approval-sheet-text "$(now flooding)" "$text"
approved flooding "$text"
stands given yes
grep 'await the approval' "$scratch/stdout" | grep -q 'note: 28 procedures.* gas_leak' &&
    ! grep 'await the approval' "$scratch/stdout" | grep -q flooding && ok approval-awaited-less ||
    not_ok approval-awaited-less "$(grep await "$scratch/stdout")"
approved flooding "$(echo "$text" | tr 'A-F-' 'a-f ')"
stands typed yes
approved flooding "$(now gas_leak)"
stands of-another no
approved flooding "$text" flooding 0123-4567-89AB-CDEF
stands beside-old yes 1
approved flooding "$text"

# ---- what changes the text, and what does not ----

# after NAME yes|no FILE SCRIPT: the file of the copy changed so, then as it was.
after() {
    cp "$own/$3" "$scratch/was"
    sed "$4" "$scratch/was" >"$own/$3"
    ! cmp -s "$scratch/was" "$own/$3" || not_ok "approval-$1-changed" "no change: $4"
    stands "$1" "$2"
    cp "$scratch/was" "$own/$3"
}
after comment yes flooding.yaml '1i\# Another comment.'
after layout yes words/en/flooding.yaml 's/^title: \(.*\)/title:   "\1"/'
after order yes flooding.yaml '/^stripe:/d; 1i\stripe: warning'
after others yes words/en/gas_leak.yaml 's/^subject: .*/subject: GAS/'
after reread yes sources.yaml 's/read: 2026-11/read: 2026-10/'
after text no words/en/flooding.yaml 's/^title: .*/title: Water comes in/'
after logic no flooding.yaml '0,/practice: yes/s//sources: [S37]/'
after seen no words/en/flooding.yaml '/^seen:/s/\[[^],]*/[Wet floors/'
after gear no words/en/words.yaml '/^items:/,/^zones:/s/^\(  bilge_pump_manual: \).*/\1{name: Hand lever, one: hand lever, other: hand levers}/'
after state no words/en/words.yaml '/^states:/,/^reading:/s/^  shut: .*/  shut: closed/'
after around yes words/en/words.yaml 's/^  measure: .*/  measure: "100 mm:"/'
source=$(sed -n 's/.*sources: \[\(S[0-9]*\).*/\1/p' "$own/flooding.yaml" | head -n 1)
after source no sources.yaml "/key: $source,/,/tag:/s/issuer: \(.\)/issuer: The \1/"

# What stands on every card is approved with the distress call: its words, and the radio's.
distress=$(now distress_call)
plan=$(now safety_plan)
cp "$own/words/en/words.yaml" "$scratch/was"
sed 's/^  set_talk: .*/  set_talk: "Hold, speak, let go."/' "$scratch/was" >"$own/words/en/words.yaml"
! cmp -s "$scratch/was" "$own/words/en/words.yaml" || not_ok approval-words-changed
[ "$(now distress_call)" != "$distress" ] && [ "$(now safety_plan)" != "$plan" ] &&
    [ "$(now flooding)" = "$text" ] && ok approval-shared-words || not_ok approval-shared-words
cp "$scratch/was" "$own/words/en/words.yaml"
maydeck list cards
expect_equal approval-each-own "$(sed 1d "$scratch/stdout" | grep -c .)" \
    "$(grep -o '[0-9A-F]\{4\}\(-[0-9A-F]\{4\}\)\{3\}' "$scratch/stdout" | sort -u | grep -c .)"

# ---- without a text nothing is approved ----

approved flooding "$text"
sed -i 's/ text: [^,]*,//' "$base/base.yaml"
run print "$base" --date "$print_date" -o "$scratch/none"
expect_status approval-without-text 1
grep -q 'base.yaml:[0-9]*:[0-9]*: error: the approval of flooding does not say which text was approved' "$scratch/stderr" &&
    grep -q 'look at the sheet that QB read and signed' "$scratch/stderr" && ok approval-without-text-told ||
    not_ok approval-without-text-told "$(cat "$scratch/stderr")"
expect_empty approval-without-text-pages "$(folder_list "$scratch/none" 2>/dev/null)"

# ---- the sheet holds every text of the procedure, and every source ----

approved
for card in flooding engine_fire abandon_fire heavy_weather; do
    run why "$base" --sign-off --card "$card"
    tr -s ' \n' '  ' <"$scratch/stdout" >"$scratch/sheet"
    sed -n 's/^ *[a-z_]*: "\{0,1\}\([A-Z*][^{["]*[a-zA-Z.?!]\)"\{0,1\}$/\1/p' "$own/words/en/$card.yaml" |
        sed 's/\*\*//g' | tr -s ' ' >"$scratch/texts"
    [ "$(grep -c . "$scratch/texts")" -gt 8 ] || not_ok "approval-sheet-$card-texts" "too few"
    missing=$(grep -v '^title:' "$scratch/texts" | while read -r words; do
        grep -qF -- "$words" "$scratch/sheet" || echo "$words"
    done)
    expect_empty "approval-sheet-$card" "$missing"
    missing=$(grep -o 'S[0-9][0-9a-z]*' "$own/$card.yaml" | sort -u | while read -r key; do
        grep -q "source $key: " "$scratch/sheet" || echo "$key"
    done)
    expect_empty "approval-sheet-$card-sources" "$missing"
    for line in Name Qualification Date 'Holds until' Signature; do
        grep -q "^   $line: ____" "$scratch/stdout" || not_ok "approval-sheet-$card-line" "$line"
    done
    grep -qF "{card: $card, text: $(now "$card"), " "$scratch/sheet" || not_ok "approval-sheet-$card-paste"
done
run why "$base" --sign-off --card distress_call
grep -q '^   what is wrong: ' "$scratch/stdout" && grep -q '^MAYDAY RELAY$' "$scratch/stdout" &&
    ok approval-sheet-scripts || not_ok approval-sheet-scripts
run why "$base" --sign-off
expect_equal approval-sheets 29 "$(grep -c 'SHEET TO READ AND SIGN: Card ' "$scratch/stdout")"
run why "$base" --sign-off --card floding
expect_status approval-sheet-unknown 2
run why "$base" --sign-off --boat teasel
expect_status approval-sheet-boat 2
exit $failures
