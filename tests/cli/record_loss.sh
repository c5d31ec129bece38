#!/bin/sh
# What is noticed of a record, a clock and a command line that lost or got something on the way:
# what the last print had and the record has no more, a day before what was done already, names
# and texts that a terminal or a page would show otherwise than they are, a full standard error.
. tests/tap.sh

base=$scratch/base
out=$scratch/out
tamarisk=$base/boats/tamarisk.yaml

renew() {
    rm -rf "$base"
    cp -R tests/fleet "$base"
}

# run COMMAND ARGUMENT...: of the base, a day after the print.
run() {
    command=$1
    shift
    maydeck "$command" "$base" --date 2026-11-21 "$@"
}

# tells NAME WORDS: a problem says so.
tells() {
    if grep -qF -e "$2" "$scratch/problems"; then
        ok "$1"
    else
        not_ok "$1" "nothing says: $2" "$(cat "$scratch/problems")"
    fi
}

# is_silent NAME: nothing of the record is lost.
is_silent() {
    expect_empty "$1" "$(grep ' no longer' "$scratch/problems")"
}

# ---- what the last print had ----

renew
run check
is_silent loss-no-register
maydeck start "$base" --register
maydeck print "$base" --date "$print_date" -o "$out" --quiet
expect_status loss-printed 0
run check
is_silent loss-nothing-lost

# lose NAME SED WORDS: tamarisk without what the script takes away is told so, by check and print.
lose() {
    sed "$2" tests/fleet/boats/tamarisk.yaml >"$tamarisk"
    cmp -s tests/fleet/boats/tamarisk.yaml "$tamarisk" && not_ok "loss-$1" "no change: $2"
    run check --boat tamarisk
    tells "loss-$1" "$3"
    run print --boat tamarisk --list -o "$out"
    tells "loss-$1-printing" "$3"
}
lose piece '/tag: F3,/d' \
    'deficiency: Extinguisher F3 (Cockpit locker, starboard) is in the record no longer; the print of 2026-11-20 had it'
tells loss-piece-remedy 'what is gone: add to retired_tags: F3'
lose last-piece '/tag: E21,/d' 'E21 ('
lose field '/item: liferaft/s/painter: mast ring, //' \
    'note: since the print of 2026-11-20: Raft E2: painter is no longer recorded (it was "mast ring")'
tells loss-field-remedy 'if it is so still, write it again; if not, print her cards anew'
lose spot '/item: liferaft/s/spot: ahead of mast, //' \
    'Raft E2: its place is told less closely: Cabin roof, it was Cabin roof, ahead of mast'
lose boat-fact '/^  looks:/d' 'boat: looks is no longer recorded (it was "White sailing yacht")'
lose radio-fact '/^  *nature_steps/d' 'radio: nature steps is no longer recorded'

# The remedy: it is retired, or there is none of its kind.
sed '/tag: F3,/d; s/^retired_tags: \[C7\]/retired_tags: [C7, F3]/' tests/fleet/boats/tamarisk.yaml \
    >"$tamarisk"
run check --boat tamarisk
is_silent loss-retired
sed '/item: aed,/d; s/^not_fitted: \[/&aed, /; /^not_fitted:$/a\  - aed' tests/fleet/boats/tamarisk.yaml \
    >"$tamarisk"
run check --boat tamarisk
is_silent loss-not-fitted
# What cannot be read is told as that, and nothing counts as lost.
sed 's/tag: F3,/tag: G3,/' tests/fleet/boats/tamarisk.yaml >"$tamarisk"
run check --boat tamarisk
expect_status loss-unclear 1
is_silent loss-unclear-is-no-loss
# Printed without it, it is told no more: the print is the new one.
sed '/item: liferaft/s/painter: mast ring, //' tests/fleet/boats/tamarisk.yaml >"$tamarisk"
run print --boat tamarisk -o "$out" --quiet
tells loss-told-with-the-print 'Raft E2: painter is no longer recorded'
run check --boat tamarisk
is_silent loss-printed-anew

# A register that cannot be read says so.
if [ "$VARIANT" = san ]; then
    skip loss-unreadable 'the shim and the sanitizers both stand before the system calls'
else
    renew
    maydeck start "$base" --register
    at=0
    until grep -q 'register.csv cannot be read' "$scratch/problems"; do
        at=$((at + 1))
        [ "$at" -lt 20 ] || break
        env LD_PRELOAD="$SHIM" FAULT_CALL=read FAULT_AT=$at FAULT_ERRNO=EIO FAULT_FOLDER="$base" \
            "$MAYDECK" check "$base" --date "$print_date" --boat bramble >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
        problems_keep check
    done
    tells loss-unreadable 'register.csv cannot be read: what the last prints had is not known'
fi

# ---- the day ----

renew
for day in 1970-01-01 2010-06-15 2026-10-31; do
    maydeck print "$base" --date "$day" -o "$scratch/none"
    expect_status "day-$day" 1
    tells "day-$day-says" "today would be $day, but the rescue centre was checked on 2026-11-02"
    expect_empty "day-$day-alone" "$(grep 'is after today' "$scratch/problems")"
    expect_empty "day-$day-nothing" "$(folder_list "$scratch/none" 2>/dev/null)"
done
maydeck check "$base" --date 2026-10-01
tells day-check 'set the clock of the computer, or name the day with --date'
sed 's/checked_on: .*/checked_on: 2025-11-02/' tests/fleet/base.yaml >"$base/base.yaml"
maydeck check "$base" --date 2026-10-01
tells day-texts 'a source of the texts was read on 2026-11'
maydeck due "$base" --date 2026-10-01
expect_status day-due 1
# A call is said whatever the clock says, and the clock is told.
for nature in '' '--nature sinking'; do
    # shellcheck disable=SC2086
    maydeck call tests/fleet --boat tamarisk --date 2010-01-01 $nature
    expect_status "day-call$nature" 0
    grep -q 'MAYDAY TAMARISK' "$scratch/stdout" || not_ok "day-call$nature-is-said" "$(cat "$scratch/stdout")"
    tells "day-call$nature-tells" 'deficiency: today would be 2010-01-01'
done
# A table of the record hangs on no day.
sed 's/checked_on: .*/checked_on: 2199-01-01/' tests/fleet/base.yaml >"$base/base.yaml"
maydeck table "$base" -o "$scratch/gear.csv"
expect_status day-table 0
expect_empty day-table-silent "$(grep 'today would be' "$scratch/problems")"
# Where the base was checked a day later by its own clock, today stands.
sed 's/checked_on: .*/checked_on: 2026-11-21/' tests/fleet/base.yaml >"$base/base.yaml"
maydeck print "$base" --date "$print_date" --boat bramble --card flooding -o "$out"
expect_status day-zone 0
# One date of one boat is told and holds nothing.
renew
sed '/item: grab_bag/s/serviced: [0-9-]*/serviced: 2027-10-24/' tests/fleet/boats/tamarisk.yaml >"$tamarisk"
maydeck print "$base" --date "$print_date" --boat tamarisk --card flooding -o "$out"
expect_status day-of-boat 1
tells day-of-boat-says 'grab_bag E20: serviced 2027-10-24 is after today, 2026-11-20'
[ -f "$out/tamarisk-flooding.pdf" ] || not_ok day-of-boat-printed "$(folder_list "$out")"

for epoch in ' 5' +5 '5 ' -1 x 99999999999 99999999999999999999; do
    SOURCE_DATE_EPOCH=$epoch "$MAYDECK" due "$base" >/dev/null 2>"$scratch/stderr" </dev/null
    status=$?
    expect_status "epoch-$(echo "$epoch" | tr ' ' _)" 2
done

# ---- names and texts ----

escape=$(printf '\033')
for name in "$(printf 'red\033[31m')" "$(printf 'two\nlines')" "$(printf 'turned\342\200\256')" "$(printf 'bad\377')"; do
    renew
    cp tests/fleet/boats/bramble.yaml "$base/boats/$name.yaml"
    maydeck print "$base" --date "$print_date" --list -o "$out"
    expect_status name-refused 1
    tells name-refused-says 'is not read: its name holds '
    expect_empty name-unseen "$(cat "$scratch/stdout" "$scratch/stderr" |
        grep -F -e "$escape" -e "$(printf 'bad\377')" -e "$(printf '\342\200\256')")"
done
renew
mkdir -p "$out"
: >"$out/bramble-$escape.pdf"
maydeck print "$base" --date "$print_date" --boat bramble -o "$out"
grep -qF 'bramble-\x1B.pdf: not of this run' "$scratch/stdout" || not_ok name-older "$(cat "$scratch/stdout")"
expect_empty name-older-unseen "$(grep -F "$escape" "$scratch/stdout")"

# marked NAME BYTES WORDS: a text with these marks is refused.
marked() {
    sed "/item: liferaft/s/mast ring/m$(printf "$2")st ring/" tests/fleet/boats/tamarisk.yaml >"$tamarisk"
    run check --boat tamarisk
    expect_status "marks-$1" 1
    tells "marks-$1-says" "$3"
}
marked stroke '\314\266' 'U+0336 is not allowed: a mark laid over the letter before it'
marked solidus '\314\270' 'U+0338 is not allowed'
marked accents '\314\200\314\201\314\202\314\203' 'more than three accents stand on one letter'

# ---- what is told ----

"$MAYDECK" check "$scratch/none" 2>/dev/full >/dev/null </dev/null
status=$?
expect_status full-stderr 3
maydeck print "$base" --date "$print_date" -o ''
expect_status output-empty 2
tells output-empty-says 'name a folder, such as cards, or . for this one'
renew
maydeck print "$base" --date "$print_date" --boat bramble --card flooding -o "$scratch/a/b"
expect_status output-deep 0
mkdir -p "$scratch/taken/.bramble-flooding.pdf.tmp"
maydeck print "$base" --date "$print_date" --boat bramble --card flooding -o "$scratch/taken"
expect_status output-beside-a-folder 0
exit $failures
