#!/bin/sh
# A base's records as a table, through a spreadsheet and back: what nobody changed stays, what was
# changed is told and written to its own line alone, and what can mean two things is refused.
. tests/tap.sh

# cells BASE IN OUT FORM <CHANGES
cells() {
    python3 tests/cli/table_cells.py "$@" || not_ok "cells-$2" "the changes could not be made"
}

# base_renew: a base of its own to write into.
base_renew() {
    rm -rf "$scratch/base"
    cp -R tests/fleet "$scratch/base"
}

# lines_changed BOAT: how many lines of her file are not as they were, and how many are new.
lines_changed() {
    diff "tests/fleet/boats/$1.yaml" "$scratch/base/boats/$1.yaml" >"$scratch/diff"
    echo "$(grep -c '^<' "$scratch/diff") $(grep -c '^>' "$scratch/diff")"
}

# yaml_sums: each boat's file.
yaml_sums() {
    (cd "$scratch/base/boats" && cksum ./*.yaml)
}

# ---- what nobody changed ----

for base in fleet islands unusual hazard; do
    maydeck table "tests/$base" -o "$scratch/$base.csv"
    expect_status "table-$base" 0
    maydeck take "tests/$base" "$scratch/$base.csv"
    expect_equal "take-$base-nothing" "0 $scratch/$base.csv says what the boats' files say: nothing is to change" \
        "$status $(cat "$scratch/stdout")"
done
maydeck table tests/fleet
expect_empty table-stdout "$(cmp "$scratch/stdout" "$scratch/fleet.csv" 2>&1)"
maydeck table tests/fleet --boat bramble
expect_equal table-one-boat 'bramble' "$(sed 1d "$scratch/stdout" | cut -d, -f1 | sort -u)"
for form in ',' ';bom' ';bom crlf quoted' 't' '|quoted' ', bare' ';quoted crlf bare'; do
    cells "$scratch/fleet.csv" "$scratch/form.csv" "$form" </dev/null
    maydeck take tests/fleet "$scratch/form.csv"
    expect_equal "take-form-$form" "0 0" \
        "$status $(grep -vc 'nothing is to change' "$scratch/stdout")"
done

# No cell begins as a formula does, and none is a number that a spreadsheet would shorten.
expect_empty table-no-formulas "$(python3 - "$scratch" <<'PYTHON'
import csv, glob, re, sys
for path in glob.glob(sys.argv[1] + "/*.csv"):
    if "form" in path:
        continue
    for row in csv.reader(open(path, encoding="utf-8-sig", newline="")):
        for cell in row:
            if re.match(r"[-=+@\t]|0[0-9]|[0-9]{5,}|[0-9]+[-./,E]", cell):
                print(cell)
PYTHON
)"
# What the table says, by another reader than the program's own: each tag of each file once.
for boat in bramble samphire tamarisk; do
    expect_equal "table-has-all-of-$boat" \
        "$(sed -n 's/^  - {item: [a-z_]*, tag: \([A-Z0-9]*\),.*/\1/p' "tests/fleet/boats/$boat.yaml" | sort)" \
        "$(python3 -c 'import csv, sys
for row in csv.reader(open(sys.argv[1], encoding="utf-8-sig", newline="")):
    if row[0] == sys.argv[2] and row[1]: print(row[1])' "$scratch/fleet.csv" "$boat" | sort)"
done

# ---- what was changed ----

changes() {
    cat <<'CHANGES'
bramble|F1|service_due|31/05/2028
bramble|F2|kg|1,5
bramble|C7|spot|by the hatch, port
bramble|=boat.looks|value|Dark "blue" yacht
bramble|!leak_kit|out|TRUE
bramble|+|tag=new|item=leak_kit|zone=saloon|side=port
tamarisk|F1|service_due|May 2029
samphire|=radio.mmsi_programmed|value|FALSE
CHANGES
}
base_renew
changes | cells "$scratch/fleet.csv" "$scratch/changed.csv" ';bom crlf'
maydeck take "$scratch/base" "$scratch/changed.csv" --date "$print_date"
expect_equal take-tells "0 bramble boat looks: Blue sailing yacht -> Dark \"blue\" yacht
bramble F1 fire_extinguisher service_due: 2026-12 -> 2028-05-31
bramble F2 fire_extinguisher kg: 1 -> 1.5
bramble C7 torch spot: (nothing) -> by the hatch, port
bramble C25 leak_kit: (nothing) -> {item: leak_kit, tag: C25, zone: saloon, side: port}
bramble leak_kit: not_fitted -> (nothing)
samphire radio mmsi_programmed: yes -> no
tamarisk F1 engine_extinguisher service_due: 2027-04 -> 2029-05
8 changes in 3 files; nothing was written: to write, add --write" "$status $(cat "$scratch/stdout")"
expect_empty take-writes-nothing "$(diff -r tests/fleet "$scratch/base")"
maydeck take "$scratch/base" "$scratch/changed.csv" --write --date "$print_date"
expect_status take-write 0
expect_equal take-write-lines '5 5 1 1 1 1' \
    "$(lines_changed bramble) $(lines_changed samphire) $(lines_changed tamarisk)"
expect_equal take-comments "$(grep -c '#' tests/fleet/boats/bramble.yaml)" \
    "$(grep -c '#' "$scratch/base/boats/bramble.yaml")"
grep -qxF '  looks: Dark "blue" yacht' "$scratch/base/boats/bramble.yaml" || not_ok take-quotes
for boat in bramble samphire tamarisk; do
    expect_empty "take-keeps-$boat" \
        "$(cmp "tests/fleet/boats/$boat.yaml" "$scratch/base/boats/$boat.yaml.before-1" 2>&1)"
done
# What is kept is no stray, and the table written anew is true.
maydeck table "$scratch/base" -o "$scratch/anew.csv"
expect_equal take-kept-are-no-strays '0 ' "$status $(cat "$scratch/stderr")"
maydeck take "$scratch/base" "$scratch/anew.csv" --write --date "$print_date"
expect_equal take-again-nothing 0 "$(grep -c 'changed' "$scratch/stdout")"
# The same table once more does not add the piece again.
maydeck take "$scratch/base" "$scratch/changed.csv" --write --date "$print_date"
expect_status take-twice 1
grep -q 'C25 is such a leak_kit' "$scratch/stderr" || not_ok take-twice-told "$(cat "$scratch/stderr")"
# A second change keeps a second old file.
echo 'bramble|F1|kg|3' | cells "$scratch/anew.csv" "$scratch/second.csv" ,
maydeck take "$scratch/base" "$scratch/second.csv" --write --date "$print_date"
expect_equal take-second-kept '0 bramble.yaml.before-1 bramble.yaml.before-2' \
    "$status $(cd "$scratch/base/boats" && echo bramble.yaml.before-*)"
maydeck print "$scratch/base" --list --boat bramble --date "$print_date"
if grep -q ': error: ' "$scratch/stderr"; then not_ok take-prints "$(cat "$scratch/stderr")"; fi

# ---- what is wrong ----

# wrong NAME LINE:COLUMN WHAT <CHANGES: status 1, told there, and nothing is written
wrong() {
    cells "$scratch/fleet.csv" "$scratch/wrong.csv" ';'
    base_renew
    maydeck take "$scratch/base" "$scratch/wrong.csv" --write --date "$print_date"
    expect_status "wrong-$1" 1
    grep -qF "$scratch/wrong.csv:$2: error: $3" "$scratch/stderr" ||
        not_ok "wrong-$1-told" "expected $2: $3 in:" "$(cat "$scratch/stderr")"
    expect_empty "wrong-$1-writes-nothing" "$(diff -r tests/fleet "$scratch/base")"
}
row=$(grep -n '^bramble,F1,' "$scratch/fleet.csv" | cut -d: -f1)
mmsi=$(grep -n '^bramble,,radio.mmsi,' "$scratch/fleet.csv" | cut -d: -f1)
raft=$(grep -n '^bramble,,liferaft,' "$scratch/fleet.csv" | cut -d: -f1)
new=$(($(wc -l <"$scratch/fleet.csv") + 1))
echo 'bramble|F1|zone|kitchen' |
    wrong zone "$row:32" "row $row, column F (zone): \"zone\" cannot be \"kitchen\""
echo 'bramble|F1|out|perhaps' |
    wrong out "$row:30" "row $row, column D (out): \"perhaps\" is neither yes nor no"
echo 'bramble|F1|boat|brumble' | wrong boat "$row:1" "row $row, column A (boat): there is no boat"
echo 'bramble|F1|tag|F7' | wrong tag "$row:9" "row $row, column B (tag): no piece of bramble has"
echo 'bramble|F1|item|knife' | wrong item "$row:12" "row $row, column C (item): F1 is fire_ext"
echo 'bramble|F1|name|=SUM(A1)' | wrong formula "$row:56" "row $row, column I (name): \"=SUM(A1)\": it begins"
# what only shows when the whole file is judged
echo 'bramble|=radio.mmsi|value|200014980' |
    wrong twin "$mmsi:22" "row $mmsi, column E (value): MMSI 200014980 is that of samphire too"
echo 'bramble|F1|vents_to|deck' |
    wrong foreign "$row:94" "row $row, column AE (vents_to): vents_to does not belong to fire_"
echo 'bramble|+|tag=new|item=liferaft|zone=transom' |
    wrong contradiction "$raft:20" "row $raft, column E (value): liferaft is in not_fitted, but"
echo 'bramble|+|tag=new|item=sail_rope' |
    wrong lacks "$new:9" "row $new, column B (tag): an equipment item needs the key \"zone\""
# each of them in one run
printf '%s\n' 'bramble|F1|zone|kitchen' 'bramble|F2|service_due|03/04/2027' 'tamarisk|F1|kg|2.000' \
    'samphire|F1|tag|' | cells "$scratch/fleet.csv" "$scratch/wrong.csv" ,
maydeck take tests/fleet "$scratch/wrong.csv"
expect_equal wrong-all '1 4' "$status $(grep -c '^[^ ].*: error: row' "$scratch/stderr")"

# A file that would be too large for any command to read is not written.
{ cat tests/fleet/boats/bramble.yaml; awk 'BEGIN { for (i = 0; i < 2500; i++) printf "# %096d\n", i }'; } \
    >"$scratch/base/boats/bramble.yaml"
cp "$scratch/base/boats/bramble.yaml" "$scratch/large.yaml"
long=$(awk 'BEGIN { for (i = 0; i < 3000; i++) printf "so " }')
maydeck check "$scratch/base" --boat bramble
if grep -q 'larger than' "$scratch/problems"; then not_ok wrong-large-before; fi
for tag in C7 C8 C9 C22; do echo "bramble|$tag|spot|$long"; done |
    cells "$scratch/fleet.csv" "$scratch/wrong.csv" ,
maydeck take "$scratch/base" "$scratch/wrong.csv" --write
expect_status wrong-large 1
grep -q 'at most 262144 are read' "$scratch/stderr" || not_ok wrong-large-told "$(cat "$scratch/stderr")"
expect_empty wrong-large-writes-nothing "$(cmp "$scratch/large.yaml" "$scratch/base/boats/bramble.yaml" 2>&1)"

# A boat whose file has errors is left out, and stops no other.
base_renew
sed -i 's/^  hull: .*/  hull: round/' "$scratch/base/boats/samphire.yaml"
maydeck table "$scratch/base"
expect_equal broken-left-out '1 bramble tamarisk' \
    "$status $(sed 1d "$scratch/stdout" | cut -d, -f1 | sort -u | xargs)"
maydeck take "$scratch/base" "$scratch/fleet.csv"
expect_status broken-take 1
grep -q 'the file of samphire cannot be used' "$scratch/stderr" || not_ok broken-told

# ---- wrong use ----

maydeck take tests/fleet
expect_status use-no-file 2
maydeck take tests/fleet "$scratch/none.csv"
expect_status use-file-absent 2
maydeck take tests/fleet "$scratch"
expect_status use-file-folder 2
maydeck take "$scratch/none" "$scratch/fleet.csv"
expect_status use-base-absent 2
maydeck table tests/fleet --boat nobody
expect_status use-boat-unknown 2
maydeck table tests/fleet -o "$scratch/none/x.csv"
expect_status use-folder-absent 3
printf 'boat;tag\nx;y;z\n' >"$scratch/torn.csv"
maydeck take tests/fleet "$scratch/torn.csv"
expect_status use-torn 1

# ---- two at once ----

# Both are about one file. Whoever comes second finds it changed under way and refuses, or takes
# its own change alone: nothing that was said to be written is lost.
echo 'bramble|F1|kg|3' | cells "$scratch/fleet.csv" "$scratch/one.csv" ,
echo 'bramble|F2|kg|4' | cells "$scratch/fleet.csv" "$scratch/two.csv" ,
lost=
for round in 1 2 3 4 5 6 7 8 9 10; do
    base_renew
    "$MAYDECK" take "$scratch/base" "$scratch/one.csv" --write >/dev/null 2>&1 </dev/null &
    run=$!
    maydeck take "$scratch/base" "$scratch/two.csv" --write
    second=$status
    wait $run
    case "$?$second $(grep -c 'tag: F1,.* kg: 3,\|tag: F2,.* kg: 4,' "$scratch/base/boats/bramble.yaml")" in
    '00 2' | '03 1' | '30 1') ;;
    *) lost="$lost $round" ;;
    esac
done
expect_empty two-at-once "$lost"

# A table that lay about does not undo what was recorded since.
base_renew
maydeck take "$scratch/base" "$scratch/one.csv" --write
maydeck take "$scratch/base" "$scratch/two.csv" --write
expect_equal old-table-takes-its-own '0 2' \
    "$status $(grep -c 'tag: F1,.* kg: 3,\|tag: F2,.* kg: 4,' "$scratch/base/boats/bramble.yaml")"
grep -q '^1 row passed over' "$scratch/stdout" || not_ok old-table-told "$(cat "$scratch/stdout")"
echo 'bramble|F1|kg|5' | cells "$scratch/fleet.csv" "$scratch/both.csv" ,
maydeck take "$scratch/base" "$scratch/both.csv" --write
expect_equal old-table-both '1 1' "$status $(grep -c 'and in the table too' "$scratch/stderr")"

# ---- a spreadsheet's own export ----

spreadsheet() {
    soffice -env:UserInstallation=file://"$scratch/profile" --headless "$@" >/dev/null 2>&1
}

# exported NAME LANGUAGE: $scratch/NAME.csv opened in that language, saved, and written as CSV.
exported() {
    rm -rf "$scratch/sheet" "$scratch/export"
    spreadsheet "--infilter=CSV:44,34,76,1,,$2,false,true" --convert-to ods \
        --outdir "$scratch/sheet" "$scratch/$1.csv"
    spreadsheet --convert-to "csv:Text - txt - csv (StarCalc):59,34,76,1,,0,true,true,false" \
        --outdir "$scratch/export" "$scratch/sheet/$1.ods"
    [ -s "$scratch/export/$1.csv" ]
}

if ! command -v soffice >/dev/null; then
    skip spreadsheet 'there is no soffice here'
elif ! exported fleet 1033; then
    skip spreadsheet 'soffice does not run here'
else
    cells "$scratch/fleet.csv" "$scratch/bare.csv" ', bare' </dev/null
    # a month that is typed in becomes its first day, unless it is kept from that
    changes | sed "s/|May 2029/|'2029-05/" | cells "$scratch/fleet.csv" "$scratch/typed.csv" ,
    echo 'bramble|F1|service_due|3/4/2029' | cells "$scratch/fleet.csv" "$scratch/doubt.csv" ,
    # English of the United States and of Britain, German
    for language in 1033 2057 1031; do
        tables=fleet
        [ $language != 1031 ] || tables='fleet islands unusual'
        for table in $tables; do
            exported "$table" $language
            maydeck take "tests/$table" "$scratch/export/$table.csv"
            expect_equal "spreadsheet-$language-$table" '0 0' \
                "$status $(grep -vc 'nothing is to change' "$scratch/stdout")"
        done
        # without apostrophes: no other value, or an error by row and column
        exported bare $language
        maydeck take tests/fleet "$scratch/export/bare.csv"
        expect_equal "spreadsheet-$language-bare" 0 "$(grep -c ' -> ' "$scratch/stdout")"
        # what was typed in arrives, whichever way the spreadsheet writes a date
        exported typed $language
        base_renew
        maydeck take "$scratch/base" "$scratch/export/typed.csv" --write --date "$print_date"
        expect_status "spreadsheet-$language-typed" 0
        expect_equal "spreadsheet-$language-typed-lines" '5 5 1 1 1 1' \
            "$(lines_changed bramble) $(lines_changed samphire) $(lines_changed tamarisk)"
        # unless it can be one of two
        exported doubt $language
        maydeck take tests/fleet "$scratch/export/doubt.csv"
        expect_equal "spreadsheet-$language-doubt" '1 1' \
            "$status $(grep -c "$row, column BG (service_due): .*two dates" "$scratch/stderr")"
    done
fi

# ---- the system fails midway ----

case $VARIANT in
san)
    skip faults 'the shim and the sanitizers both stand before the system calls'
    exit $failures
    ;;
esac

# faulty CALL AT ERRNO: takes the changes into a base of its own.
faulty() {
    base_renew
    env LD_PRELOAD="$SHIM" FAULT_CALL="$1" FAULT_AT="$2" FAULT_ERRNO="$3" \
        FAULT_FOLDER="$scratch/base/boats" FAULT_COUNT="$scratch/count" \
        "$MAYDECK" take "$scratch/base" "$scratch/changed.csv" --write --date "$print_date" \
        >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

faulty none 0 EIO
expect_status faults-none 0
cp -R "$scratch/base" "$scratch/whole"

# state: for each boat old or new; anything else is a torn file.
state() {
    for boat in bramble samphire tamarisk; do
        if cmp -s "tests/fleet/boats/$boat.yaml" "$scratch/base/boats/$boat.yaml"; then
            printf 'old '
        elif cmp -s "$scratch/whole/boats/$boat.yaml" "$scratch/base/boats/$boat.yaml"; then
            printf 'new '
        else
            printf 'torn '
        fi
    done
}

for call in open write fsync close rename; do
    faulty $call 0 EIO
    calls=$(cat "$scratch/count")
    [ "$calls" -ge 3 ] || not_ok "faults-$call-seen" "$calls calls"
    at=1
    while [ "$at" -le "$calls" ]; do
        faulty $call $at ENOSPC
        found=$(state)
        case "$status $found" in
        '3 old old old ')
            # nothing is left behind either
            [ -z "$(diff -r tests/fleet "$scratch/base")" ] ||
                not_ok "faults-$call-$at-left" "$(diff -rq tests/fleet "$scratch/base")"
            ;;
        '0 new new new ') ;;
        # what makes sure of the folder fails when all is there; a name cannot be given midway
        '3 new new new ' | '3 new old old ' | '3 new new old ')
            case $call in
            rename) grep -q 'not all files are changed; changed already: bramble' "$scratch/stderr" ;;
            *) grep -q 'cannot make sure' "$scratch/stderr" ;;
            esac || not_ok "faults-$call-$at-told" "$found" "$(cat "$scratch/stderr")"
            ;;
        *) not_ok "faults-$call-$at" "status $status, $found" "$(cat "$scratch/stderr")" ;;
        esac
        at=$((at + 1))
    done
    ok "faults-$call"
done

# Killed at any moment: each file is whole, the old one or the new.
torn=
for delay in 0.001 0.002 0.004 0.006 0.008 0.01 0.012 0.014 0.016 0.02 0.025 0.03 0.04 0.05; do
    base_renew
    "$MAYDECK" take "$scratch/base" "$scratch/changed.csv" --write --date "$print_date" \
        >/dev/null 2>&1 </dev/null &
    run=$!
    sleep $delay
    kill -9 $run 2>/dev/null
    wait $run 2>/dev/null
    case $(state) in
    *torn*) torn="$torn $delay" ;;
    esac
done
expect_empty killed-whole "$torn"
# What a killed run left is gone after the next.
: >"$scratch/base/boats/.maydeck-1-0.tmp"
cp tests/fleet/boats/*.yaml "$scratch/base/boats"
maydeck take "$scratch/base" "$scratch/changed.csv" --write --date "$print_date"
expect_equal killed-swept '0 0' \
    "$status $(folder_list "$scratch/base" | grep -c 'tmp$')"

exit $failures
