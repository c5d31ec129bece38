#!/bin/sh
# What the system cannot say is never taken for no: a file that cannot be looked at is not written over,
# its row not taken off a list, a register not passed by; and what killed runs left is swept. `make
# torture` tries all calls; here stands what it once found.
. tests/tap.sh

case $VARIANT in
san)
    skip unlooked 'the shim and the sanitizers both stand before the system calls'
    exit 0
    ;;
esac

base=$scratch/base out=$scratch/out
cp -R tests/fleet "$base"

# failing CALL AT FOLDER COMMAND ARGUMENT...: that call fails with EIO.
failing() {
    fault_call=$1 at=$2 folder=$3
    shift 3
    rm -f "$scratch/count"
    env LD_PRELOAD="$SHIM" FAULT_CALL="$fault_call" FAULT_AT="$at" FAULT_ERRNO=EIO ${STAYS:+FAULT_STAYS=1} \
        FAULT_FOLDER="$folder" FAULT_COUNT="$scratch/count" "$MAYDECK" "$@" \
        >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# told NAME WORDS: on standard error, with a remedy.
told() {
    if grep -qF "$2" "$scratch/stderr" && grep -q '^  remedy: .' "$scratch/stderr"; then
        ok "$1"
    else
        not_ok "$1" "nothing says with a remedy: $2" "$(cat "$scratch/stderr")"
    fi
}

# ---- a register that cannot be looked at ----

"$MAYDECK" start "$base" --register >/dev/null
cp "$base/register.csv" "$scratch/empty.csv"
failing look 0 "$base" print "$base" -j 1 --boat bramble --card flooding --date "$print_date" -o "$out"
expect_status unlooked-print 0
calls=$(cat "$scratch/count")
rows=$(wc -l <"$base/register.csv")
at=0 found= refused=0
while [ $((at += 1)) -le "$calls" ]; do
    rm -rf "$out"
    cp "$scratch/empty.csv" "$base/register.csv"
    failing look "$at" "$base" print "$base" -j 1 --boat bramble --card flooding --date "$print_date" -o "$out"
    case $status in
    0) [ "$(wc -l <"$base/register.csv")" -eq "$rows" ] || found="$found $at: not recorded, status 0;" ;;
    3)
        refused=$((refused + 1))
        grep -q '^  remedy: ' "$scratch/stderr" || found="$found $at: no remedy;"
        ;;
    *) found="$found $at: status $status;" ;;
    esac
done
expect_empty "unlooked-register ($calls)" "$found"
if [ "$refused" -gt 0 ]; then ok unlooked-register-bites; else not_ok unlooked-register-bites 'none'; fi

# ---- a list beside files that cannot be looked at ----

rm -rf "$out"
for boat in bramble samphire; do
    maydeck survey "$base" --boat $boat --date 2026-11-01 -o "$out"
done
cp -R "$out" "$scratch/older"
failing look 0 "$out" survey "$base" --boat bramble --date "$print_date" -o "$out"
calls=$(cat "$scratch/count")
at=0 found=
while [ $((at += 1)) -le "$calls" ]; do
    for STAYS in '' 1; do
        rm -rf "$out"
        cp -R "$scratch/older" "$out"
        failing look "$at" "$out" survey "$base" --boat bramble --date "$print_date" -o "$out"
        was=$status
        grep -q '^  remedy: ' "$scratch/stderr" || [ "$was" -eq 0 ] || found="$found $at: no remedy;"
        maydeck verify "$out"
        wrong=$(grep -E ': (DAMAGED|NOT AS LISTED|NOT LISTED|NOT READ|MISSING)' "$scratch/stdout")
        [ -z "$wrong" ] || found="$found $at $STAYS: status $was and $wrong;"
    done
done
STAYS=
expect_empty "unlooked-list ($calls)" "$found"

# A PDF that cannot be read is told by `verify` as a failure of the system.
failing read 2 "$out" verify "$out"
expect_status unlooked-verify 3
told unlooked-verify-told 'cannot be read: Input/output error'

# ---- what is there is not written over ----

echo mine >"$base/boats/ash.yaml"
STAYS=1
failing look 1 "$base/boats" start "$base" --boat ash
STAYS=
expect_equal unlooked-start mine "$(cat "$base/boats/ash.yaml")"
if [ "$status" -ge 2 ]; then ok unlooked-start-status; else not_ok unlooked-start-status "$status"; fi
rm "$base/boats/ash.yaml"

# The base's own folder is looked through for files that nobody reads.
failing opendir 1 "$base" check "$base" --date "$print_date"
expect_status unlooked-strays 3
told unlooked-strays-told "the folder $base cannot be read"

# ---- what a run left ----

# A register that could not be begun is empty, and is begun by the next run.
: >"$base/register.csv"
maydeck start "$base" --register
expect_status unlooked-begun 0
expect_equal unlooked-begun-head "$(cat "$scratch/empty.csv")" "$(cat "$base/register.csv")"
maydeck start "$base" --register
expect_status unlooked-begun-once 2

left=.maydeck-0123456789abcdef.tmp
mkdir "$scratch/tables"
for command in table due; do
    echo half >"$scratch/tables/$left"
    case $command in
    table) maydeck table "$base" -o "$scratch/tables/a.csv" ;;
    due) maydeck due "$base" --csv --date "$print_date" -o "$scratch/tables/b.csv" ;;
    esac
    [ ! -e "$scratch/tables/$left" ] && ok "unlooked-swept-$command" ||
        not_ok "unlooked-swept-$command" "$(ls -A "$scratch/tables")" "$(cat "$scratch/stderr")"
done
echo half >"$base/boats/$left"
maydeck start "$base" --boat birch
[ ! -e "$base/boats/$left" ] && ok unlooked-swept-start || not_ok unlooked-swept-start "$(ls -A "$base/boats")"
rm "$base/boats/birch.yaml"

# ---- streams that are closed ----

# Nothing that is told goes into a file that took their number.
closed_print() {
    rm -rf "$out"
    "$MAYDECK" print tests/fleet -j 1 --boat bramble --card flooding --date "$print_date" -o "$out"
}
for closed in 1 2 12 012; do
    case $closed in
    1) closed_print >&- 2>"$scratch/stderr" </dev/null ;;
    2) closed_print >"$scratch/stdout" 2>&- </dev/null ;;
    12) closed_print >&- 2>&- </dev/null ;;
    012) closed_print <&- >&- 2>&- ;;
    esac
    expect_equal "unlooked-closed-$closed" 3 $?
    maydeck verify "$out"
    expect_status "unlooked-closed-$closed-verify" 0
    expect_equal "unlooked-closed-$closed-list" 2 "$(wc -l <"$out/printed.csv")"
done

# ---- processes that are killed ----

# What they wrote is swept by the run itself, however it ends.
for moment in 1 2 3; do
    rm -rf "$out"
    env LD_PRELOAD="$SHIM" FAULT_FOLDER="$out" FAULT_SLOW_MS=10 "$MAYDECK" print tests/fleet -j 2 \
        --card flooding --date "$print_date" -o "$out" >/dev/null 2>"$scratch/stderr" </dev/null &
    run=$!
    tries=0
    until ls "$out"/.maydeck-*.tmp >/dev/null 2>&1 || [ $((tries += 1)) -gt 400 ]; do sleep 0.02; done
    sleep "0.0$moment"
    # shellcheck disable=SC2046
    kill -9 $(cat "/proc/$run/task/$run/children") 2>"$scratch/killed"
    wait "$run"
    was=$?
    expect_empty "unlooked-workers-$moment" "$(cd "$out" && ls -A | grep '^.maydeck')"
    if [ "$was" -eq 0 ] || grep -q '^  remedy: print her again' "$scratch/stderr"; then
        ok "unlooked-workers-$moment-told"
    else
        not_ok "unlooked-workers-$moment-told" "status $was" "$(cat "$scratch/stderr")"
    fi
done

# ---- forms that are stopped ----

# Between two boats; what remains is told.
rm -rf "$out"
env LD_PRELOAD="$SHIM" FAULT_FOLDER="$out" FAULT_SLOW_MS=20 "$MAYDECK" survey "$base" --date "$print_date" \
    -o "$out" >/dev/null 2>"$scratch/stderr" </dev/null &
run=$!
tries=0
until ls "$out"/.maydeck-*.tmp >/dev/null 2>&1 || [ $((tries += 1)) -gt 400 ]; do sleep 0.02; done
kill -TERM "$run"
wait "$run"
expect_equal unlooked-stopped 3 $?
told unlooked-stopped-told 'stopped by SIGTERM: 1 boat printed, 2 remain: samphire,tamarisk'
maydeck verify "$out"
expect_status unlooked-stopped-whole 0
exit $failures
