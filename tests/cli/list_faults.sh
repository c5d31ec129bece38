#!/bin/sh
# Each call fails in turn while a sheet is printed over an older one: with status 0 all is as the list
# says, and with any other nothing that lies there is damaged, unknown to the list or other than it
# says; the next run puts all right.
. tests/tap.sh

case $VARIANT in
san)
    skip list-faults 'the shim and the sanitizers both stand before the system calls'
    exit 0
    ;;
esac

older=$scratch/older out=$scratch/out
maydeck survey tests/fleet --boat bramble,samphire --date 2026-11-01 -o "$older"
expect_status list-faults-older 0

# faulty CALL AT ERRNO [VARIABLE=value...]
faulty() {
    call=$1 at=$2 errno=$3
    shift 3
    rm -rf "$out"
    cp -Rp "$older" "$out"
    rm -f "$scratch/count"
    env LD_PRELOAD="$SHIM" FAULT_CALL="$call" FAULT_AT="$at" FAULT_ERRNO="$errno" \
        FAULT_FOLDER="$out" FAULT_COUNT="$scratch/count" "$@" \
        "$MAYDECK" survey tests/fleet --boat bramble --date "$print_date" -o "$out" \
        >"$scratch/said" 2>"$scratch/told" </dev/null
    ended=$?
}

# What is wrong after such a run, as text.
wrong_find() {
    maydeck verify "$out"
    grep -E ': (DAMAGED|NOT AS LISTED|NOT LISTED|NOT READ|MISSING)' "$scratch/stdout"
    cat "$scratch/stderr"
    case $ended in
    0) [ "$status" -eq 0 ] || echo "status 0, and verify says: $(cat "$scratch/stdout")" ;;
    3) [ -s "$scratch/told" ] || echo 'status 3 and not a word' ;;
    *) echo "status $ended" ;;
    esac
    maydeck survey tests/fleet --boat bramble --date "$print_date" -o "$out"
    maydeck verify "$out"
    [ "$status" -eq 0 ] || echo "after the next run: $(cat "$scratch/stdout" "$scratch/stderr")"
    folder_list "$out" | grep -v '^bramble-survey.pdf$\|^samphire-survey.pdf$'
}

tried=0
for call in open read write fsync close rename unlink opendir readdir; do
    faulty "$call" 0 EIO
    calls=$(cat "$scratch/count")
    found= at=1
    while [ "$at" -le "$calls" ]; do
        for stays in FAULT_NOTHING=1 FAULT_STAYS=1; do
            faulty "$call" "$at" EIO "$stays"
            wrong=$(wrong_find)
            [ -z "$wrong" ] || found="$found
call $at of $calls, $stays: $wrong"
            tried=$((tried + 1))
        done
        at=$((at + 1))
    done
    expect_empty "list-faults-$call ($calls)" "$found"
done
if [ "$tried" -ge 20 ]; then ok "list-faults-tried ($tried)"; else not_ok list-faults-tried "only $tried"; fi

exit $failures
