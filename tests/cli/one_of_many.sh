#!/bin/sh
# One boat or file that fails among several: it is named with how to mend it, and all others
# are made as if it were not there, whether it comes first, between them or last.
. tests/tap.sh

base=$scratch/base
out=$scratch/out
whole=$scratch/whole
boats='bramble samphire tamarisk'

renew() {
    rm -rf "$base" "$out"
    cp -R tests/fleet "$base"
    mkdir "$out"
}

# run COMMAND ARGUMENT...: of the base, on the day of the tests.
run() {
    command=$1
    shift
    if [ "$command" = call ]; then
        maydeck call "$base" "$@"
    else
        maydeck "$command" "$base" --date "$print_date" "$@"
    fi
}

# faulty CALL AT ERRNO FOLDER COMMAND ARGUMENT...: with STAYS=1 all later calls fail too.
faulty() {
    fault_call=$1 at=$2 errno=$3 folder=$4
    shift 4
    env LD_PRELOAD="$SHIM" FAULT_CALL="$fault_call" FAULT_AT="$at" FAULT_ERRNO="$errno" \
        FAULT_FOLDER="$folder" ${STAYS:+FAULT_STAYS=1} "$MAYDECK" "$@" \
        >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
    problems_keep "$1"
}

# tells NAME WORDS: a problem says so, and the lines after it how it is mended.
tells() {
    if grep -F -A4 -e "$2" "$scratch/problems" | grep -q '^  remedy: .'; then
        ok "many-$1"
    else
        not_ok "many-$1" "nothing says with a remedy: $2" "$(cat "$scratch/problems")"
    fi
}

# others NAME FILE...: these files are there, whole, and no other PDF.
others() {
    name=$1
    shift
    found=$(cd "$out" && find . -type f -name '*.pdf' | sed 's,^\./,,' | sort)
    expect_equal "many-$name-others" "$(printf '%s\n' "$@" | sort)" "$found"
    for file in $found; do
        cmp -s "$whole/$file" "$out/$file" || not_ok "many-$name-whole" "$file differs"
    done
}

# without BOAT: the sets of all boats but this one.
without() {
    for boat in $boats; do
        [ "$boat" = "$1" ] || echo "$boat.pdf"
    done
}

renew
run print --each -o "$whole"
expect_status many-whole 0
if [ "$(folder_list "$whole" | wc -l)" -lt 30 ]; then
    not_ok many-whole-files "$(folder_list "$whole")"
    exit 1
fi

# ---- a file that cannot be written ----

for boat in $boats; do
    renew
    mkdir "$out/$boat.pdf"
    run print -o "$out"
    expect_status "many-way-$boat" 3
    # shellcheck disable=SC2046
    others "way-$boat" $(without "$boat")
    tells "way-$boat" "failure: $out/$boat.pdf is there already and is not a regular file"
done

# One page of --each: the other pages and the sets are written.
renew
mkdir "$out/samphire-flooding.pdf"
run print --each -o "$out"
expect_status many-each 3
# shellcheck disable=SC2046
others each $(folder_list "$whole" | grep -v '^samphire-flooding.pdf$')
tells each "$out/samphire-flooding.pdf is there already and is not a regular file"
pages=$(folder_list "$whole" | grep -c '^samphire-')
expect_equal many-each-counted "$out/samphire-*.pdf: $((pages - 1)) files, one a card" \
    "$(grep 'samphire-\*' "$scratch/stdout")"

# One of the cards asked for.
renew
mkdir "$out/samphire-flooding.pdf"
run print --card flooding,engine_fire --boat samphire,bramble -o "$out"
expect_status many-card 3
others card bramble-flooding.pdf bramble-engine_fire.pdf samphire-engine_fire_port.pdf \
    samphire-engine_fire_starboard.pdf
tells card "$out/samphire-flooding.pdf is there already"

# A card that only some of the boats have is printed for these, and the others are told.
renew
run print --card petrol_leak -o "$out"
expect_status many-card-of-some 2
others card-of-some $(cd "$whole" && ls ./*-petrol_leak.pdf | sed 's,^\./,,')
tells card-of-some 'there is no card "petrol_leak"'
run check --card petrol_leak
expect_status many-card-of-some-check 2
expect_equal many-card-of-some-check-rows 3 \
    "$(grep -c '^\(bramble\|samphire\|tamarisk\) .* of ' "$scratch/stdout")"

# ---- the disk or the folder fails in the middle ----

if [ "$VARIANT" = san ]; then
    skip many-faults 'the shim and the sanitizers both stand before the system calls'
else
    # true_to NAME FILE...: each of the files there is whole, and each that is not is named with how
    # to mend it, or the list without which none is printed; where the run ends well all are there.
    true_to() {
        name=$1 wrong=
        shift
        for file in "$@"; do
            if [ -e "$out/$file" ]; then
                cmp -s "$whole/$file" "$out/$file" || wrong="$wrong $file differs;"
            elif [ "$status" -ne 3 ]; then
                wrong="$wrong $file is missing with status $status;"
            elif ! grep -F -A4 -e "$out/$file" -e "cannot write into $out/printed.csv" \
                "$scratch/problems" | grep -q '^  remedy: .'; then
                wrong="$wrong $file is named nowhere;"
            fi
        done
        left=$(cd "$out" && find . -name '.maydeck-*')
        [ -z "$left" ] || wrong="$wrong left: $left"
        [ -z "$wrong" ] && ok "many-$name" || not_ok "many-$name" "$wrong" "$(cat "$scratch/problems")"
    }
    all=$(for boat in $boats; do echo "$boat.pdf"; done)
    lost_one=0
    for fault in 'open EACCES' 'write ENOSPC' 'fsync EIO' 'rename EROFS' 'close EIO'; do
        # shellcheck disable=SC2086
        set -- $fault
        for at in 1 2 3 4 5 6 7 8; do
            renew
            faulty "$1" $at "$2" "$out" print "$base" -j 1 --date "$print_date" -o "$out"
            # shellcheck disable=SC2086
            true_to "$1-once-$at" $all
            [ "$(folder_list "$out" | grep -c 'pdf$')" -ne 2 ] || lost_one=$((lost_one + 1))
        done
        for at in 1 3; do
            renew
            STAYS=1
            faulty "$1" $at "$2" "$out" print "$base" -j 2 --date "$print_date" -o "$out"
            STAYS=
            # shellcheck disable=SC2086
            true_to "$1-stays-$at" $all
        done
    done
    # Of a boat alone: the two others stand. One of each call at least.
    [ $lost_one -ge 4 ] && ok many-lost-one || not_ok many-lost-one "$lost_one"
    # A page among those of --each: seventeen files of bramble and her set come first.
    renew
    faulty write 20 ENOSPC "$out" print "$base" -j 1 --each --date "$print_date" -o "$out"
    expect_status many-each-full 3
    lost=$(sed -n "s,.*cannot write $out/\(.*\): No space left.*,\1,p" "$scratch/stderr")
    # shellcheck disable=SC2046
    others each-full $(folder_list "$whole" | grep -vxF "$lost")
    tells each-full "cannot write $out/$lost: No space left on device"

    # A file that cannot be read, wherever its turn comes.
    for boat in $boats; do
        at=0
        until grep -q "boats/$boat.yaml cannot be read" "$scratch/stderr"; do
            at=$((at + 1))
            [ "$at" -lt 20 ] || break
            renew
            faulty read "$at" EIO "$base/boats" print "$base" -j 1 --date "$print_date" -o "$out"
        done
        expect_status "many-read-$boat" 3
        # shellcheck disable=SC2046
        others "read-$boat" $(without "$boat")
        tells "read-$boat" "boats/$boat.yaml cannot be read: Input/output error"
        expect_equal "many-read-$boat-said" "$boat: no card could be printed" \
            "$(grep 'could be printed' "$scratch/stdout")"
    done

    # New files to be filled in.
    renew
    faulty open 2 EACCES "$base/boats" start "$base" --boat ash,birch,cedar
    expect_status many-start 3
    expect_equal many-start-others 'ash.yaml cedar.yaml' \
        "$(cd "$base/boats" && ls | grep 'ash\|birch\|cedar' | tr '\n' ' ' | sed 's/ $//')"
    tells start "cannot write $base/boats/birch.yaml: Permission denied"
    expect_empty many-start-next "$(grep '^next' "$scratch/stdout")"
fi

# ---- a boat whose file is no good ----

# bad KIND: samphire's file, between those of the two others.
bad() {
    renew
    file=$base/boats/samphire.yaml
    rm "$file"
    case $1 in
    absent) ln -s nowhere "$file" ;;
    fifo) mkfifo "$file" ;;
    folder) mkdir "$file" ;;
    broken) { cat tests/fleet/boats/samphire.yaml; echo 'boat: ['; } >"$file" ;;
    wrong) sed 's/loa_m: .*/loa_m: wide/' tests/fleet/boats/samphire.yaml >"$file" ;;
    large) head -c 300000 /dev/zero | tr '\0' '#' >"$file" ;;
    empty) : >"$file" ;;
    esac
}

# What is said of the two others alone.
renew
rm "$base/boats/samphire.yaml"
run check
grep '^\(bramble\|tamarisk\) ' "$scratch/stdout" >"$scratch/rows"
run why --card flooding
cat -s "$scratch/stdout" >"$scratch/reasons"
run call --boat tamarisk
cp "$scratch/stdout" "$scratch/call"
for file in rows reasons call; do
    [ -s "$scratch/$file" ] || not_ok "many-$file" 'nothing was said of the sound boats'
done

for kind in absent fifo folder broken wrong large empty; do
    bad $kind
    run print -o "$out"
    expect_status "many-$kind-print" 1
    others "$kind-print" bramble.pdf tamarisk.pdf
    tells "$kind-print" boats/samphire.yaml
    grep -q '^samphire: no card could be printed$' "$scratch/stdout" ||
        not_ok "many-$kind-print-said" "$(cat "$scratch/stdout")"

    run check
    expect_status "many-$kind-check" 1
    expect_equal "many-$kind-check-rows" "$(tr -s ' ' <"$scratch/rows")" \
        "$(grep '^\(bramble\|tamarisk\) ' "$scratch/stdout" | tr -s ' ')"
    grep -q '^samphire  *.*  none ' "$scratch/stdout" ||
        not_ok "many-$kind-check-row" "$(cat "$scratch/stdout")"
    tells "$kind-check" boats/samphire.yaml
    run check --json
    expect_equal "many-$kind-json" 'bramble samphire tamarisk' \
        "$(sed -n 's/^    {"boat": "\([a-z]*\)".*/\1/p' "$scratch/stdout" | tr '\n' ' ' | sed 's/ $//')"
    awk '/^    {"boat": "/ { boat = $2 } /"severity": "error"/ { print boat }' "$scratch/stdout" |
        sort -u >"$scratch/errors"
    expect_equal "many-$kind-json-whose" '"samphire",' "$(cat "$scratch/errors")"

    run why --card flooding
    expect_status "many-$kind-why" 1
    expect_equal "many-$kind-why-others" "$(cat "$scratch/reasons")" \
        "$(grep -v '^samphire: no cards: ' "$scratch/stdout" | cat -s)"
    tells "$kind-why" boats/samphire.yaml

    run call --boat tamarisk
    [ "$status" -le 1 ] && ok "many-$kind-call" || not_ok "many-$kind-call" "status $status"
    expect_equal "many-$kind-call-said" "$(cat "$scratch/call")" "$(cat "$scratch/stdout")"
    # Of another boat only the identities are looked at: these are sound.
    [ "$kind" = wrong ] || tells "$kind-call" boats/samphire.yaml
    run call --boat samphire
    expect_status "many-$kind-call-herself" 1
    expect_empty "many-$kind-call-silent" "$(cat "$scratch/stdout")"
done

# Two boats of one identity do not keep the third from being printed.
renew
sed 's/name: Samphire/name: Sea Kale/' "$base/boats/samphire.yaml" >"$base/boats/kale.yaml"
run print -o "$out"
expect_status many-clash 1
others clash bramble.pdf tamarisk.pdf
tells clash 'is that of kale too'
tells clash-other 'is that of samphire too'
exit $failures
