#!/bin/sh
# What is said on the radio and sent by beacons, from the file to the message: values that
# YAML readers are known to spoil arrive as they are written, names are spoken in letters that
# somebody wrote, and one identity on two boats keeps both from being printed.
. tests/tap.sh

fleet=$scratch/fleet
mkdir "$fleet" "$fleet/boats"
cp tests/errors/base/base.yaml "$fleet/base.yaml"

# boat NAME-LINE CALL-SIGN-LINE MMSI-LINE: the boat of the error goldens, no specimen,
# with these in place of her own, and her beacon coded for the country
# of $beacon.
boat() {
    sed -e "s/name: Alder, specimen: yes,/$1,/" -e "s/call_sign: QALD3/$2/" \
        -e "s/mmsi: \"200014810\"/$3/" -e "s/\"990D0 /\"${beacon}D0 /" tests/errors/base/boats/alder.yaml >"$fleet/boats/alder.yaml"
    maydeck check "$fleet" --date "$print_date"
}

# What the last run told, but for figures that find no room on their cards and facts on none, and
# for notes that her record gives whatever her identities are: two of card 20, which is full,
# two of gear whose how was recorded for one state alone, and three of facts that cards go without.
told() {
    cat >"$scratch/known" <<'NOTES'
: note: radio position_read_at finds no room on the card 20 SWIMMER, DINGHY$
: note: the words of PAN PAN find no room on the card 20 SWIMMER, DINGHY: they stand on the distress card$
: note: how of C2 does not tell how it comes to be open: cards print the state alone$
: note: how of C3 does not tell how it comes to be on: cards print the state alone$
: note: the figure .* finds no room on the card
: note: facts that are recorded and stand on no card of hers
: note: draught_m of the boat is not recorded: 
: note: 29 procedures in the language en await the approval of a qualified person: 
: note: lay_down_place of the boat is not recorded: 
: note: reach_inverted is not recorded of E3, E4, E5: 
NOTES
    grep ': [a-z]*: ' "$scratch/problems" | grep -v -f "$scratch/known"
}

# tells NAME PIECE: the last run says so somewhere.
tells() {
    if grep -qF -- "$2" "$scratch/problems"; then
        ok "$1"
    else
        not_ok "$1" "nothing says: $2" "$(cat "$scratch/problems")"
    fi
}

# says_not NAME PIECE
says_not() {
    if grep -qF -- "$2" "$scratch/problems"; then
        not_ok "$1" "$(cat "$scratch/problems")"
    else
        ok "$1"
    fi
}

beacon=9DC # Croatia
good_call='call_sign: "9A2345"'
good_mmsi='mmsi: "238014810"'

# ---- what YAML would spoil ----

boat 'name: Alder, flag: HR' "$good_call" "$good_mmsi"
expect_status identity-sound 0
expect_empty identity-sound-silent "$(told)"

beacon=9E4 # Morocco
boat 'name: Alder' 'call_sign: 5E12' 'mmsi: "242014810"'
expect_status identity-5E12 0
tells identity-5E12-kept 'call sign `5E12` has no pattern that ships'
tells identity-5E12-quotes 'write it in quotes: call_sign: "5E12"'
beacon=ABE # Panama
boat 'name: Alder, flag: PA' 'call_sign: 3E2345' 'mmsi: "351014810"'
expect_status identity-3E2345 0
tells identity-3E2345-quotes 'write it in quotes: call_sign: "3E2345"'
maydeck call "$fleet" --boat alder --spell
expect_status identity-3E2345-spelled 0
expect_equal identity-3E2345-said 'CALL SIGN 3E2345: THREE ECHO TWO THREE FOUR FIVE' \
    "$(grep '^CALL SIGN' "$scratch/stdout")"

beacon=9DC
boat 'name: Alder, flag: NO' 'call_sign: LXAB' 'mmsi: "257014810"'
expect_status identity-norway 1
tells identity-norway-is-a-country 'MMSI Norway, call sign Luxembourg, flag Norway'
tells identity-norway-quotes 'write it in quotes: flag: "NO"'

boat 'name: Alder' "$good_call" 'mmsi: 002320014'
expect_status identity-coast 1
tells identity-coast-zeros 'error: MMSI 002320014 is not a ship'
tells identity-coast-mid 'a coast station'"'"'s (MID 232)'
boat 'name: Alder' "$good_call" 'mmsi: 232_001_234'
expect_status identity-underscores 1
tells identity-underscores-told 'error: MMSI `232_001_234` is a number as programmers group it'
boat 'name: Alder' "$good_call" 'mmsi: 23800148１'
expect_status identity-wide 1
tells identity-wide-told 'has a full-width digit in place 9 (U+FF11)'
boat 'name: Alder' 'call_sign: none' "$good_mmsi"
expect_status identity-none 0
maydeck call "$fleet" --boat alder --spell
expect_status identity-none-spelled 0
expect_empty identity-none-no-slot "$(grep 'CALL SIGN' "$scratch/stdout")"

# A channel keeps its zero, on the card and in the message.
sed 's/channel: "67"/channel: 08/' tests/errors/base/base.yaml >"$fleet/base.yaml"
boat 'name: Alder' "$good_call" "$good_mmsi"
expect_status identity-channel 0
tells identity-channel-quotes 'write it in quotes: channel: "08"'
maydeck print "$fleet" --boat alder --date "$print_date" --dump -o "$scratch"
if grep -rq -- '\b08\b' "$scratch"/alder*.dump "$scratch/stdout" 2>/dev/null; then
    ok identity-channel-printed
else
    not_ok identity-channel-printed "$(cat "$scratch/problems")"
fi
cp tests/errors/base/base.yaml "$fleet/base.yaml"

# One number on two boats is found also where no-break spaces part the digits.
boat 'name: Alder' "$good_call" 'mmsi: "238 014 810"'
sed -e 's/name: Alder/name: Birch/' -e 's/call_sign: "9A2345"/call_sign: "9A2346"/' \
    -e 's/mmsi: "238 014 810"/mmsi: "238 014 810"/' \
    "$fleet/boats/alder.yaml" >"$fleet/boats/birch.yaml"
maydeck check "$fleet" --date "$print_date"
expect_status identity-twice 1
tells identity-twice-told 'error: MMSI 238014810 is that of alder too'
rm "$fleet/boats/birch.yaml"

# ---- one identity on two boats: neither is printed, whichever is asked for ----

# clash NAME FILE ARGUMENT...: both, one, or the other: status 1, no page, FILE's line told.
clash() {
    name=identity-clash-$1
    file=$2
    shift 2
    rm -rf "$scratch/out"
    mkdir "$scratch/out"
    maydeck print "$fleet" --date "$print_date" -o "$scratch/out" "$@"
    expect_status "$name" 1
    expect_empty "$name-no-page" "$(folder_list "$scratch/out")"
    grep -q "boats/$file.yaml:[0-9]*:[0-9]*: error: call sign .* is that of .*/boats/.*yaml:[0-9]*)" \
        "$scratch/problems" && ok "$name-told" || not_ok "$name-told" "$(cat "$scratch/problems")"
}

# clashes NAME: of alder and her copy.
clashes() {
    clash "$1-all-first" alder
    clash "$1-all-second" copy
    clash "$1-first" alder --boat alder
    clash "$1-second" copy --boat copy
    for command in call why; do
        maydeck $command "$fleet" --boat copy
        expect_status "identity-clash-$1-$command" 1
        tells "identity-clash-$1-$command-told" ' is that of alder too ('
    done
    grep -q MAYDAY "$scratch/stdout" && not_ok "identity-clash-$1-silent"
    maydeck check "$fleet" --boat copy --date "$print_date"
    expect_status "identity-clash-$1-check" 1
    tells "identity-clash-$1-check-told" ' is that of alder too ('
}

boat 'name: Alder, flag: HR' "$good_call" "$good_mmsi"
sed 's/name: Alder/name: Copy/' "$fleet/boats/alder.yaml" >"$fleet/boats/copy.yaml"
clashes real
cp tests/errors/base/boats/alder.yaml "$fleet/boats/alder.yaml"
sed 's/name: Alder/name: Copy/' "$fleet/boats/alder.yaml" >"$fleet/boats/copy.yaml"
clashes specimen

# One of the identities is enough.
# clash_of KIND WORDS SED...: of alder and a copy that has only this identity of hers.
clash_of() {
    kind=$1 words=$2
    shift 2
    sed -e 's/name: Alder/name: Copy/' "$@" "$fleet/boats/alder.yaml" >"$fleet/boats/copy.yaml"
    for boats in alder copy alder,copy; do
        rm -rf "$scratch/out"
        mkdir "$scratch/out"
        maydeck print "$fleet" --date "$print_date" -o "$scratch/out" --boat $boats
        expect_status "identity-$kind-$boats" 1
        expect_empty "identity-$kind-$boats-no-page" "$(folder_list "$scratch/out")"
        for boat in $(echo $boats | tr , ' '); do
            tells "identity-$kind-$boats-told" "$fleet/boats/$boat.yaml:"
        done
        expect_equal "identity-$kind-$boats-owners" "$(echo $boats | tr , '\n' | wc -l)" \
            "$(grep -c ": error: $words .* is that of \(alder\|copy\) too" "$scratch/problems")"
    done
}
clash_of mmsi MMSI -e 's/QALD3/QALD4/' -e 's/00134/00138/'
clash_of call-sign 'call sign' -e 's/200014810/200014820/' -e 's/00134/00138/'
clash_of beacon 'beacon identity' -e 's/QALD3/QALD4/' -e 's/200014810/200014820/'
sed 's/name: Alder/name: Copy/' "$fleet/boats/alder.yaml" >"$fleet/boats/copy.yaml"

# A file with errors has its identities all the same: in a wrong field, and where YAML ends.
sed -i 's/loa_m: 10.2/loa_m: wide/' "$fleet/boats/alder.yaml"
clash beside-wrong copy --boat copy
cp tests/errors/base/boats/alder.yaml "$fleet/boats/alder.yaml"
for end in 'boat: [' 'note: "no end' 'radio: {}'; do
    cp tests/errors/base/boats/alder.yaml "$fleet/boats/alder.yaml"
    echo "$end" >>"$fleet/boats/alder.yaml"
    clash "beside-broken ($end)" copy --boat copy
    tells "identity-beside-broken ($end)" 'only its lines were searched for identities'
    expect_equal "identity-beside-broken-all ($end)" 3 "$(grep -c ' is that of alder too' "$scratch/problems")"
done

# What stands behind a # is no identity.
{ sed -e 's/QALD3/QALD4/' -e 's/200014810/200014820/' -e 's/00134/00138/' \
    tests/errors/base/boats/alder.yaml; echo '# call_sign: QALD3'; echo 'boat: ['; } \
    >"$fleet/boats/alder.yaml"
maydeck print "$fleet" --boat copy --date "$print_date" -o "$scratch/out"
expect_status identity-beside-other 0
rm "$fleet/boats/copy.yaml"

# ---- names ----

# held NAME PROPOSAL: an error that proposes a spelling, and no page for her.
held() {
    boat "name: $1" "$good_call" "$good_mmsi"
    expect_status "identity-name-$2" 1
    tells "identity-name-$2-told" "error: name \`$3\` cannot be called out"
    tells "identity-name-$2-proposed" "name_latin: $2"
    rm -rf "$scratch/out"
    mkdir "$scratch/out"
    maydeck print "$fleet" --date "$print_date" -o "$scratch/out"
    expect_status "identity-name-$2-print" 1
    expect_empty "identity-name-$2-no-page" "$(folder_list "$scratch/out")"
}

held 'Ñu' NU 'Ñu'
held 'Čist' CIST 'Čist'
held 'Fő' FO 'Fő'
held 'Straße' STRASSE 'Straße'
held 'Işık' ISIK 'Işık'
held 'İzmir' IZMIR 'İzmir'
held 'ΑΒΓ' AVG 'ΑΒΓ'
held 'Тест' TEST 'Тест'
held 'Öre' 'OERE (or ORE)' 'Öre'
held "$(printf 'O\314\210re')" 'OERE (or ORE)' 'Öre'
held 'Anna ２' 'ANNA 2' 'Anna ２'

boat 'name: Nº 1' "$good_call" "$good_mmsi"
expect_status identity-name-sign 1
tells identity-name-sign-told 'U+00BA has no code word'
says_not identity-name-sign-no-proposal proposed

# The licence's spelling is spoken and spelled, and the painted one stays on the card.
boat 'name: Öre, name_latin: Oere' "$good_call" "$good_mmsi"
expect_status identity-latin 0
expect_empty identity-latin-silent "$(told)"
maydeck call "$fleet" --boat alder --spell
expect_equal identity-latin-spelled 'NAME OERE: OSCAR ECHO ROMEO ECHO' \
    "$(grep '^NAME' "$scratch/stdout")"
boat 'name: Alder, name_spoken: Older' "$good_call" "$good_mmsi"
maydeck call "$fleet" --boat alder --spell
expect_equal identity-licence-spelled 'NAME ALDER: ALFA LIMA DELTA ECHO ROMEO' \
    "$(grep '^NAME' "$scratch/stdout")"
maydeck call "$fleet" --boat alder
if grep -q 'OLDER, OLDER, OLDER' "$scratch/stdout"; then
    ok identity-spoken-said
else
    not_ok identity-spoken-said "$(cat "$scratch/stdout")"
fi

boat 'name: L’Exemple' "$good_call" "$good_mmsi"
expect_status identity-apostrophe 0
tells identity-apostrophe-told 'note: name `L’Exemple` has the apostrophe U+2019'
boat 'name: Off' "$good_call" "$good_mmsi"
expect_status identity-off 0
tells identity-off-quotes 'write it in quotes: name: "Off"'
maydeck call "$fleet" --boat alder --spell
expect_equal identity-off-kept 'NAME OFF: OSCAR FOXTROT FOXTROT' \
    "$(grep '^NAME' "$scratch/stdout")"
boat 'name: ~' "$good_call" "$good_mmsi"
expect_status identity-null 1
tells identity-null-told 'error: "name" is "~"'
boat 'name: "Alder "' "$good_call" "$good_mmsi"
expect_status identity-space 1
tells identity-space-told 'error: name ends with a space'

# The tables are dated where the checks are listed.
maydeck check --list
if grep -q 'mmsi_mid_unknown.*deficiency.*\[ITU table of MIDs, 20[0-9][0-9]\]' "$scratch/stdout"; then
    ok identity-table-dated
else
    not_ok identity-table-dated "$(grep mmsi "$scratch/stdout")"
fi
exit $failures
