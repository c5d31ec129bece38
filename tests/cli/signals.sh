#!/bin/sh
# Runs that are stopped or killed, and two at once: what was there before or what is new, whole; the
# list beside it is true; nobody waits for a run that is gone.
. tests/tap.sh

case $VARIANT in
san)
    skip signals 'the sanitizers are too slow to be stopped in time; it looks for no fault of memory'
    exit 0
    ;;
esac

out=$scratch/out

# moments: seconds after which a run is stopped, spread over its length.
moments() {
    begun=$(date +%s%N)
    "$@" >/dev/null 2>&1 </dev/null
    awk -v length_ns="$(($(date +%s%N) - begun))" \
        'BEGIN { for (i = 1; i <= 12; i++) printf "%.4f\n", length_ns / 1e9 * i / 11 }'
}

survey() {
    "$MAYDECK" survey tests/fleet --date "$1" -o "$out"
}

# ---- printed files ----

moments "$MAYDECK" survey tests/fleet --date 2026-11-01 -o "$out" >"$scratch/moments"
day=1 found= stopped=0
while read -r moment; do
    for signal in KILL TERM HUP INT; do
        day=$((day % 28 + 1))
        timeout -s "$signal" "$moment" "$MAYDECK" survey tests/fleet \
            --date "2026-11-$(printf %02d "$day")" -o "$out" >/dev/null 2>&1 </dev/null
        [ $? -eq 0 ] || stopped=$((stopped + 1))
        maydeck verify "$out"
        wrong=$(grep -E ': (DAMAGED|NOT AS LISTED|NOT LISTED|NOT READ|MISSING)' "$scratch/stdout"
            cat "$scratch/stderr")
        [ -z "$wrong" ] || found="$found
$signal after $moment: $wrong"
    done
done <"$scratch/moments"
expect_empty signals-files "$found"
if [ "$stopped" -ge 12 ]; then ok "signals-stopped ($stopped)"; else not_ok signals-stopped "only $stopped"; fi
survey "$print_date" >/dev/null 2>&1
maydeck verify "$out"
expect_status signals-after 0
expect_equal signals-swept 3 "$(folder_list "$out" | wc -l)"

# ---- one run at a time ----

# While another run has the folder nothing of it is touched, and nobody waits.
cp -Rp "$out" "$scratch/before"
mkfifo "$scratch/hold"
flock "$out" cat "$scratch/hold" &
holder=$!
exec 3>"$scratch/hold"
while flock -n "$out" true; do sleep 0.05; done
echo half >"$out/.maydeck-0123456789abcdef.tmp"
maydeck survey tests/fleet --date 2026-11-02 -o "$out"
expect_status signals-claimed 3
grep -qF "another print is at work in $out" "$scratch/stderr" ||
    not_ok signals-claimed-told "$(cat "$scratch/stderr")"
rm "$out/.maydeck-0123456789abcdef.tmp" || not_ok signals-claimed-swept 'a draft of another run was swept'
expect_empty signals-claimed-untouched "$(diff -r "$scratch/before" "$out")"
maydeck verify "$out"
expect_status signals-claimed-verify 1
grep -q 'ANOTHER PRINT IS AT WORK' "$scratch/stdout" ||
    not_ok signals-claimed-verify-told "$(cat "$scratch/stdout")"
exec 3>&-
wait "$holder"
survey 2026-11-02 >/dev/null 2>&1 || not_ok signals-released 'the folder is still claimed'

# Two at once on a slow disk: each ends well or is refused, and one of them ends well; in every second
# pair one is killed on its way: it may leave the last row of the list torn, which is told, and the
# next run mends it. PAIRS=100 before make tries so many.
slow_survey() {
    LD_PRELOAD=$SHIM FAULT_FOLDER=$out FAULT_SLOW_MS=2 exec "$MAYDECK" survey tests/fleet \
        --boat bramble,tamarisk --date "$1" -o "$out" >/dev/null 2>&1 </dev/null
}
found= round=0
while [ "$round" -lt "${PAIRS:-10}" ]; do
    round=$((round + 1))
    day=$(printf %02d $((round % 28 + 1)))
    slow_survey "2026-11-$day" &
    first=$!
    slow_survey "2026-12-$day" &
    second=$!
    if [ $((round % 2)) -eq 0 ]; then
        sleep "0.$((round * 7 % 10))"
        kill -9 "$first"
    fi
    wait "$first"
    first_status=$?
    wait "$second"
    case $((round % 2))-$first_status-$? in
    1-0-0 | 1-0-3 | 1-3-0 | 0-137-0 | 0-137-3 | 0-3-0 | 0-0-0 | 0-0-3) ;;
    *) found="$found round $round: $first_status and another" ;;
    esac
    maydeck verify "$out"
    wrong=$(grep -E ': (DAMAGED|NOT AS LISTED|NOT LISTED|NOT READ|MISSING)' "$scratch/stdout"
        [ "$first_status" -ne 137 ] || sed -i '/the last row was torn when a run/,+1d' "$scratch/stderr"
        cat "$scratch/stderr")
    [ "$status" -eq 0 ] || [ "$first_status" -eq 137 ] || wrong="$wrong $(cat "$scratch/stdout")"
    [ -z "$wrong" ] || found="$found round $round: $wrong"
done 2>"$scratch/killed"
expect_empty signals-two "$found"

# ---- other writers ----

# The old table or the new one.
"$MAYDECK" table tests/islands -o "$scratch/islands.csv" >/dev/null
"$MAYDECK" table tests/fleet -o "$scratch/fleet.csv" >/dev/null
cp "$scratch/fleet.csv" "$scratch/table.csv"
moments "$MAYDECK" table tests/islands -o "$scratch/none.csv" >"$scratch/moments"
found= number=0
while read -r moment; do
    for signal in KILL TERM HUP INT; do
        number=$((number + 1))
        base=islands
        [ $((number % 2)) -eq 0 ] || base=fleet
        timeout -s "$signal" "$moment" "$MAYDECK" table "tests/$base" -o "$scratch/table.csv" >/dev/null 2>&1
        cmp -s "$scratch/table.csv" "$scratch/islands.csv" || cmp -s "$scratch/table.csv" "$scratch/fleet.csv" ||
            found="$found $signal after $moment"
    done
done <"$scratch/moments"
expect_empty signals-table "$found"

# A register that only grows: rows that are whole, whenever a run is stopped.
cp -R tests/fleet "$scratch/base"
"$MAYDECK" start "$scratch/base" --register >/dev/null 2>&1
"$MAYDECK" print "$scratch/base" --boat bramble --card flooding --date "$print_date" -o "$scratch/cards" >/dev/null 2>&1
hang() {
    "$MAYDECK" hang "$scratch/base" --boat bramble --card flooding --place "$1" --by AB --date "$print_date"
}
hang first >/dev/null || not_ok signals-hang 'it could not be hung'
moments "$MAYDECK" hang "$scratch/base" --boat bramble --card flooding --place moment --by AB \
    --date "$print_date" >"$scratch/moments"
while read -r moment; do
    for signal in KILL TERM; do
        timeout -s "$signal" "$moment" "$MAYDECK" hang "$scratch/base" --boat bramble --card flooding \
            --place "$signal $moment" --by AB --date "$print_date" >/dev/null 2>&1
    done
done <"$scratch/moments"
maydeck renew "$scratch/base" --date "$print_date"
expect_empty signals-register "$(grep -i 'damaged\|torn\|not whole' "$scratch/stderr")"

# ---- refused writes ----

# A limit of the shell on the size of files is told as the failure of a write.
(
    ulimit -f 8
    "$MAYDECK" survey tests/fleet --date "$print_date" -o "$scratch/limited" >/dev/null 2>"$scratch/stderr"
    echo $? >"$scratch/status"
)
expect_equal signals-limit 3 "$(cat "$scratch/status")"
grep -q 'cannot write .*-survey.pdf: File too large' "$scratch/stderr" ||
    not_ok signals-limit-told "$(cat "$scratch/stderr")"
expect_empty signals-limit-leaves "$(folder_list "$scratch/limited")"

# So is a reader of standard output who is gone: all that there was to do is done.
{
    sleep 0.2
    "$MAYDECK" survey tests/fleet --date "$print_date" -o "$scratch/piped" 2>"$scratch/stderr"
    echo $? >"$scratch/status"
} | true
while [ "$(cat "$scratch/status")" = '' ]; do sleep 0.1; done
expect_equal signals-pipe 3 "$(cat "$scratch/status")"
grep -q 'standard output was closed before all was told' "$scratch/stderr" ||
    not_ok signals-pipe-told "$(cat "$scratch/stderr")"
maydeck verify "$scratch/piped"
expect_status signals-pipe-whole 0

exit $failures
