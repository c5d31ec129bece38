#!/bin/sh
# Same input, same bytes: whatever the time, the order of files in the folder,
# the locale, the time zone, the working folder and the environment.
. tests/tap.sh

# printed NAME BASE [ENVIRONMENT...]: prints into $scratch/NAME and compares.
printed() {
    name=$1 base=$2
    shift 2
    mkdir "$scratch/$name"
    env "$@" "$MAYDECK" print "$base" --date "$print_date" -o "$scratch/$name" \
        >/dev/null 2>"$scratch/stderr" </dev/null || not_ok "same-$name-status" "$(cat "$scratch/stderr")"
    [ "$name" != reference ] || return
    expect_empty "same-$name" "$(diff -rq "$scratch/reference" "$scratch/$name" 2>&1)"
}

# A copy of the fleet whose files were made in the reverse order.
fleet_reverse() {
    mkdir -p "$scratch/fleet"
    (cd tests/fleet && find . -type d | sort) | (cd "$scratch/fleet" && xargs mkdir -p)
    (cd tests/fleet && find . -type f | sort -r) | while read -r file; do
        cp "tests/fleet/$file" "$scratch/fleet/$file"
    done
}

printed reference tests/fleet LC_ALL=C
if [ -n "$(folder_list "$scratch/reference" | grep '\.pdf$')" ]; then
    ok same-has-cards
else
    not_ok same-has-cards 'nothing was printed'
    exit 1
fi

sleep 1
printed later tests/fleet LC_ALL=C
fleet_reverse
printed reverse "$scratch/fleet" LC_ALL=C
printed zone tests/fleet TZ=Asia/Tokyo
printed epoch tests/fleet SOURCE_DATE_EPOCH=86400
printed bare-environment tests/fleet -i
printed slash tests/fleet/ LC_ALL=C
printed absolute "$top/tests/fleet" LC_ALL=C
cd /
printed folder "$top/tests/fleet" LC_ALL=C
cd "$scratch/fleet" && printed inside . LC_ALL=C
cd "$top" || exit 1

# A locale with a decimal comma, made here: no machine need have it installed.
if localedef -i de_DE -f UTF-8 "$scratch/de_DE.UTF-8" >/dev/null 2>&1; then
    printed locale tests/fleet LOCPATH="$scratch" LC_ALL=de_DE.UTF-8
else
    skip same-locale 'localedef cannot make de_DE.UTF-8'
fi

# The day can also come from the environment, and --date wins over it.
mkdir "$scratch/epoch-day"
SOURCE_DATE_EPOCH=$(date -u -d "$print_date 12:00" +%s) "$MAYDECK" print tests/fleet \
    -o "$scratch/epoch-day" >/dev/null 2>&1 </dev/null
expect_empty same-epoch-day "$(diff -rq "$scratch/reference" "$scratch/epoch-day" 2>&1)"

# And it does matter: another day, other bytes.
mkdir "$scratch/other-day"
"$MAYDECK" print tests/fleet --date 2026-11-21 -o "$scratch/other-day" >/dev/null 2>&1 </dev/null
if diff -rq "$scratch/reference" "$scratch/other-day" >/dev/null; then
    not_ok other-day-differs 'the print date is not on the cards'
else
    ok other-day-differs
fi
exit $failures
