#!/bin/sh
# Memory runs out: allocations fail one by one, each of the first 200 and then a
# spread over the whole run. The program must end with status 3 and leave no file (at the
# very end: all files, as they would be), or, where the library at fault can do without, print
# the very same card. It must never end by a signal.
#
# Allocations made by libharu itself are spared: version 2.3 is known to crash on
# some of them (it calls malloc unchecked), and a crash there leaves no file
# either, since the card is written only when it is complete.
. tests/tap.sh

case $VARIANT in
san)
    skip memory 'the shim and the sanitizers both stand before malloc'
    exit 0
    ;;
esac

boat=$(ls tests/fleet/boats | sed -n '1s/\.yaml$//p')
out=$scratch/out
spread=150

# starved AT [VARIABLE=value...]
starved() {
    at=$1
    shift
    rm -rf "$out"
    mkdir "$out"
    env LD_PRELOAD="$SHIM" FAULT_CALL=malloc FAULT_AT="$at" FAULT_ERRNO=ENOMEM \
        FAULT_COUNT="$scratch/count" "$@" \
        "$MAYDECK" print tests/fleet --boat "$boat" --date "$print_date" -o "$out" \
        >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# What is wrong about how the last run ended; empty if nothing is.
wrong_find() {
    case $status in
    3)
        [ -s "$scratch/stderr" ] || echo "says nothing"
        [ -z "$(folder_list "$out")" ] || diff -rq "$scratch/whole" "$out"
        ;;
    0) diff -rq "$scratch/whole" "$out" ;;
    *) echo "status $status: $(tail -n 1 "$scratch/stderr")" ;;
    esac
}

# sweep NAME FIRST LAST STEP [VARIABLE=value...]
sweep() {
    name=$1 at=$2 last=$3 step=$4
    shift 4
    : >"$scratch/wrong"
    refusals=0
    while [ "$at" -le "$last" ]; do
        starved "$at" "$@"
        wrong_find | sed "s/^/allocation $at: /" >>"$scratch/wrong"
        [ "$status" -ne 3 ] || refusals=$((refusals + 1))
        at=$((at + step))
    done
    expect_empty "$name" "$(head -n 20 "$scratch/wrong")"
    if [ "$refusals" -gt 0 ]; then ok "$name-bites"; else not_ok "$name-bites" 'none was refused'; fi
}

starved 0
expect_status memory-enough 0
if [ ! -s "$out/$boat.pdf" ]; then
    not_ok memory-card "no $boat.pdf was printed"
    exit 1
fi
cp -R "$out" "$scratch/whole"
total=$(cat "$scratch/count")
echo "# $total allocations outside libharu"

first=200
[ "$total" -gt "$first" ] || first=$total
sweep memory-first 1 "$first" 1
if [ "$total" -gt 200 ]; then
    step=$(((total - 200 + spread - 1) / spread))
    sweep memory-spread 201 "$total" "$step"
    sweep memory-for-good 1 "$total" $((step * 5)) FAULT_STAYS=1
    sweep memory-last "$((total - 40))" "$total" 1
fi

# While boats are being printed, the first of those that are left is named.
env LD_PRELOAD="$SHIM" FAULT_CALL=malloc FAULT_AT="$total" FAULT_ERRNO=ENOMEM FAULT_STAYS=1 \
    "$MAYDECK" print tests/fleet -j 1 --date "$print_date" -o "$scratch/rest" \
    >/dev/null 2>"$scratch/stderr" </dev/null
status=$?
expect_status memory-rest 3
grep -q "out of memory: nothing is done from $boat on" "$scratch/stderr" ||
    not_ok memory-rest-told "$(cat "$scratch/stderr")"
exit $failures
