#!/bin/sh
# The disk fails: each call that writes a card fails in turn. The program must say
# which file and why, end with status 3, and leave no half card behind.
. tests/tap.sh

case $VARIANT in
san)
    skip faults 'the shim and the sanitizers both stand before the system calls'
    exit 0
    ;;
esac

boat=$(ls tests/fleet/boats | sed -n '1s/\.yaml$//p')

out=$scratch/out

# faulty CALL AT ERRNO [VARIABLE=value...]: prints one boat into $out.
faulty() {
    call=$1 at=$2 errno=$3
    shift 3
    env LD_PRELOAD="$SHIM" FAULT_CALL="$call" FAULT_AT="$at" FAULT_ERRNO="$errno" \
        FAULT_FOLDER="$out" FAULT_COUNT="$scratch/count" "$@" \
        "$MAYDECK" print tests/fleet --boat "$boat" --date "$print_date" -o "$out" \
        >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

out_renew() {
    rm -rf "$out"
    mkdir "$out"
}

# What is in $out beyond whole cards, as text.
halves_find() {
    folder_list "$out" | while read -r file; do
        cmp -s "$scratch/whole/$file" "$out/$file" || echo "left behind: $file"
    done
}

# The first call of a kind fails: nothing may be left, and the words must fit.
first_fails() {
    name=faults-$1-$2
    out_renew
    faulty "$1" 1 "$2"
    expect_status "$name" 3
    expect_empty "$name-leaves-nothing" "$(folder_list "$out")"
    if grep -F -e "$boat.pdf" -e printed.csv "$scratch/stderr" | grep -qF "$3"; then
        ok "$name-told"
    else
        not_ok "$name-told" "expected $boat.pdf, or the list that comes first, and '$3' in:" "$(cat "$scratch/stderr")"
    fi
}

# A later call fails (that on the folder, after the card is in place): the card
# is there whole or not at all, and silence is allowed only if it is there.
later_fails() {
    name=faults-$1-$2-EIO
    out_renew
    faulty "$1" "$2" EIO
    found=$(halves_find)
    case $status in
    3) ;;
    0) [ -s "$out/$boat.pdf" ] || found="$found no card, yet status 0" ;;
    *) found="$found status $status" ;;
    esac
    expect_empty "$name" "$found"
}

out_renew
faulty none 0 EIO
expect_status faults-without 0
cp -R "$out" "$scratch/whole"
if [ ! -s "$scratch/whole/$boat.pdf" ]; then
    not_ok faults-whole "no $boat.pdf was printed"
    exit 1
fi

for call in open write fsync close rename; do
    out_renew
    faulty "$call" 0 EIO
    calls=$(cat "$scratch/count")
    if [ "$calls" -gt 0 ]; then ok "faults-$call-seen"; else not_ok "faults-$call-seen"; fi
    first_fails "$call" ENOSPC 'No space left on device'
    first_fails "$call" EROFS 'Read-only file system'
    first_fails "$call" EIO 'Input/output error'
    at=2
    while [ "$at" -le "$calls" ] && [ "$at" -le 8 ]; do
        later_fails "$call" "$at"
        at=$((at + 1))
    done
done

# A folder that cannot be made.
rm -rf "$out"
faulty mkdir 1 EROFS
expect_status faults-mkdir 3
grep -qF 'Read-only file system' "$scratch/stderr" || not_ok faults-mkdir-told "$(cat "$scratch/stderr")"

# A write that takes only a part is no failure: the rest follows.
out_renew
faulty write 1 SHORT FAULT_STAYS=1
expect_status faults-short 0
expect_empty faults-short-whole "$(diff -rq "$scratch/whole" "$out" 2>&1)"

# An interrupted write is begun again, or told.
later_interrupted() {
    out_renew
    faulty write 1 EINTR
    if [ "$status" -eq 0 ]; then
        expect_empty faults-interrupted "$(diff -rq "$scratch/whole" "$out" 2>&1)"
    else
        expect_equal faults-interrupted '3 ' "$status $(folder_list "$out")"
    fi
}
later_interrupted

# The card of yesterday stays when today's cannot be written.
out_renew
echo yesterday >"$out/$boat.pdf"
faulty write 1 ENOSPC FAULT_STAYS=1
expect_equal faults-keep-older "3 $boat.pdf yesterday" \
    "$status $(folder_list "$out") $(cat "$out/$boat.pdf")"

# In a fleet, each boat's file is there whole or not at all.
mkdir "$scratch/fleet"
"$MAYDECK" print tests/fleet --date "$print_date" -o "$scratch/fleet" >/dev/null 2>&1 </dev/null
for stays in '' FAULT_STAYS=1; do
    for at in 1 2; do
        out_renew
        env LD_PRELOAD="$SHIM" FAULT_CALL=rename FAULT_AT=$at FAULT_ERRNO=ENOSPC $stays \
            FAULT_FOLDER="$out" "$MAYDECK" print tests/fleet --date "$print_date" -o "$out" \
            >/dev/null 2>"$scratch/stderr" </dev/null
        status=$?
        expect_status "faults-fleet-$at-$stays" 3
        found=$(folder_list "$out" | while read -r file; do
            cmp -s "$scratch/fleet/$file" "$out/$file" || echo "left behind: $file"
        done)
        expect_empty "faults-fleet-$at-$stays-whole" "$found"
        if [ "$(folder_list "$out" | wc -l)" -ge "$(folder_list "$scratch/fleet" | wc -l)" ]; then
            not_ok "faults-fleet-$at-$stays-missing" 'every file is there'
        fi
    done
done
exit $failures
