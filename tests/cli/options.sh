#!/bin/sh
# The command line: help and version everywhere, names in lists, what is shortened, misspelt,
# given twice or does not go together; and the day it is.
. tests/tap.sh

# refused NAME WHAT REMEDY ARGUMENT...: status 2, these two texts, nothing made.
refused() {
    name=$1 what=$2 remedy=$3
    shift 3
    rm -rf "$scratch/out"
    maydeck "$@"
    expect_status "refuses-$name" 2
    expect_equal "refuses-$name-what" "maydeck: error: $what" "$(sed -n 1p "$scratch/stderr")"
    expect_equal "refuses-$name-remedy" "  remedy: $remedy" "$(sed -n 2p "$scratch/stderr")"
    expect_empty "refuses-$name-stdout" "$(cat "$scratch/stdout")"
    [ ! -e "$scratch/out" ] || not_ok "refuses-$name-makes-nothing" "a folder was made"
}

# ---- help and version ----

version=$(sed -n 's/^version := //p' Makefile)
commands='print check why call start list table take manual completion'
for arguments in -V --version 'print -V' 'check --version' 'start -V'; do
    # shellcheck disable=SC2086
    maydeck $arguments
    expect_equal "version-$(echo "$arguments" | tr ' ' -)" "maydeck $version" \
        "$(cat "$scratch/stdout")"
done
maydeck --help
cp "$scratch/stdout" "$scratch/general"
for arguments in -h help; do
    maydeck "$arguments"
    expect_empty "general-$arguments" "$(diff "$scratch/general" "$scratch/stdout")"
done
for command in $commands; do
    grep -q "^  $command " "$scratch/general" || not_ok "general-names-$command" "not in the help"
    maydeck "$command" --help
    cp "$scratch/stdout" "$scratch/help-$command"
    maydeck "$command" -h
    expect_empty "help-$command-letter" "$(diff "$scratch/help-$command" "$scratch/stdout")"
    maydeck help "$command"
    expect_empty "help-$command-command" "$(diff "$scratch/help-$command" "$scratch/stdout")"
    # no option twice, none that the command then refuses, no line wider than a terminal
    sed -n 's/^  \(    \|-., \)--\([a-z-]*\).*/\2/p' "$scratch/help-$command" >"$scratch/named"
    [ -s "$scratch/named" ] || not_ok "help-$command-options" "the help names no option"
    expect_empty "help-$command-once" "$(sort "$scratch/named" | uniq -d)"
    while read -r option; do
        maydeck "$command" "--$option"
        if grep -q 'no such option\|has no option' "$scratch/stderr"; then
            not_ok "help-$command-$option" "$(cat "$scratch/stderr")"
        fi
    done <"$scratch/named"
    expect_empty "help-$command-width" "$(awk 'length($0) > 80' "$scratch/help-$command")"
done

# ---- lists ----

# prints NAME FILES ARGUMENT...: these files and no others
prints() {
    name=$1 files=$2
    shift 2
    rm -rf "$scratch/out"
    maydeck print --quiet --date "$print_date" -o "$scratch/out" tests/fleet "$@"
    expect_status "prints-$name" 0
    expect_equal "prints-$name-files" "$files" "$(folder_list "$scratch/out" | tr '\n' ' ')"
}
prints boats-comma 'bramble.pdf tamarisk.pdf ' --boat tamarisk,bramble
prints boats-again 'bramble.pdf tamarisk.pdf ' --boat tamarisk --boat=bramble,tamarisk
prints cards-comma 'bramble-flooding.pdf bramble-gas_leak.pdf ' \
    --boat bramble --card gas_leak,flooding
prints cards-again 'bramble-flooding.pdf bramble-gas_leak.pdf ' \
    --boat bramble --card gas_leak --card flooding
maydeck call tests/fleet --boat samphire --card galley_fire,flooding
expect_equal call-titles '4 GALLEY FIRE: 7 FLOODING: ' "$(grep ':$' "$scratch/stdout" | tr '\n' ' ')"
maydeck call tests/fleet --boat samphire --card flooding
expect_empty call-alone-no-title "$(grep ':$' "$scratch/stdout")"
maydeck start "$scratch/base" --boat tern,petrel --hull monohull
expect_status start-two 0
expect_equal start-two-files 'petrel.yaml tern.yaml ' \
    "$(folder_list "$scratch/base/boats" | tr '\n' ' ')"
cp -R "$scratch/base" "$scratch/base-before"
maydeck start "$scratch/base" --boat skua,tern
expect_status start-in-the-way 2
expect_empty start-nothing-changed "$(diff -r "$scratch/base-before" "$scratch/base")"

out="-o $scratch/out"
# shellcheck disable=SC2086
{
    refused two-boats 'there is no boat "samphir"' 'did you mean "samphire"?' \
        print tests/fleet $out --boat tamarisk,samphir
    refused empty-name '--boat does not take "tamarisk,,bramble"' \
        'write names with commas between, such as a,b' print tests/fleet $out \
        --boat tamarisk,,bramble
    refused last-comma '--card does not take "flooding,"' \
        'write names with commas between, such as a,b' print tests/fleet $out --card flooding,
    refused call-of-two "--boat names 2 boats, and a call is one boat's" \
        'name one with --boat: bramble, tamarisk' call tests/fleet --boat tamarisk,bramble
}

# ---- given twice, shortened, misspelt, of another command ----

refused twice '--date is given twice' 'give it once' \
    print tests/fleet --date 2026-11-20 --date 2026-11-21 -o "$scratch/out"
refused twice-shortened '--output is given twice' 'give it once' \
    print tests/fleet -o "$scratch/out" --out "$scratch/out"
refused short-of-two '"--f" may stand for several options' 'write more of it: --from, --fail, --figures' \
    check tests/fleet --f 2026-12-01
refused own-option-only 'no such option "--natur"' 'see maydeck start --help' \
    start "$scratch/other" --natur fire
refused near 'no such option "--bota"' 'did you mean "--boat"?' print tests/fleet --bota bramble
refused near-with-value 'no such option "--bota"' 'did you mean "--boat"?' \
    print tests/fleet --bota=bramble
refused letter 'no such option "-x"' 'see maydeck print --help' print tests/fleet -x
refused others 'check has no option --each' \
    'leave it out (it belongs to: print), or see maydeck check --help' check tests/fleet --each
refused flag-with-value '--draft takes no value' 'see maydeck print --help' \
    print tests/fleet --draft=yes
refused no-value 'a value is missing after --output' 'write --output DIR' print tests/fleet -o
refused no-value-long 'a value is missing after --date' 'write --date DATE' \
    print tests/fleet --date
refused help-of-nothing 'no such command "prnt"' 'did you mean "print"?' help prnt
# what only another command has does not make a name ambiguous: print has no --downgrade
maydeck print tests/fleet --boat bramble --card flooding --da "$print_date" --q -o "$scratch/out"
expect_status shortened-date 0

# ---- together, or not ----

refused card-and-all '--card and --all exclude each other' 'leave one of them out' \
    why tests/fleet --all --card flooding
refused two-calls '--relay and --spell exclude each other' 'leave one of them out' \
    call tests/fleet --boat bramble --spell --relay
refused list-and-json '--json and --list exclude each other' 'leave one of them out' \
    check --list --json
refused from-alone '--from says nothing without --to' 'write the last day of the charter too, such as --to 2027-05-08' \
    check tests/fleet --from 2026-12-01
refused to-alone '--to says nothing without --from' 'write the first day of the charter too, such as --from 2027-05-01' \
    check tests/fleet --to 2026-12-01
refused charter-backwards '--to lies before --from' \
    '--from is the first day, --to the day she is handed back: write --from 2026-12-01 --to 2026-12-02 if they were exchanged' \
    check tests/fleet --from 2026-12-02 --to 2026-12-01

# ---- today is the date on the wall ----

# At any moment it is another day in the one zone than in the other: they are 26 hours apart.
day_in() {
    TZ=$1 "$MAYDECK" check tests/fleet --json </dev/null 2>/dev/null |
        sed -n 's/.*"date": *"\([0-9-]*\)".*/\1/p' | head -n 1
}
for zone in Etc/GMT+12 Etc/GMT-14; do
    expect_equal "today-in-$zone" "$(TZ=$zone date +%Y-%m-%d)" "$(day_in $zone)"
done
expect_equal today-given "$print_date" "$(TZ=Etc/GMT-14 "$MAYDECK" check tests/fleet --json \
    --date "$print_date" 2>/dev/null </dev/null |
    sed -n 's/.*"date": *"\([0-9-]*\)".*/\1/p' | head -n 1)"
exit $failures
