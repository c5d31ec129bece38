#!/bin/sh
# Where cards are put: refusals leave everything as it was.
. tests/tap.sh

# refused NAME TARGET: status 2, the target named in the message.
refused() {
    maydeck print tests/fleet --date "$print_date" -o "$2"
    expect_status "$1" 2
    grep -qF "$2" "$scratch/stderr" || not_ok "$1-named" "$(cat "$scratch/stderr")"
}

echo kept >"$scratch/file"
refused output-file "$scratch/file"
expect_equal output-file-untouched kept "$(cat "$scratch/file")"

for device in /dev/full /dev/null; do
    refused "output$device" "$device"
    if [ -c "$device" ]; then ok "output$device-untouched"; else not_ok "output$device-untouched"; fi
done

mkfifo "$scratch/fifo"
refused output-fifo "$scratch/fifo"
if [ -p "$scratch/fifo" ]; then ok output-fifo-untouched; else not_ok output-fifo-untouched; fi

# A folder that cannot be written is the system's failure.
mkdir "$scratch/closed"
chmod 555 "$scratch/closed"
if [ "$(id -u)" -eq 0 ]; then
    skip output-read-only 'root may write anywhere; faults.sh has EROFS'
else
    maydeck print tests/fleet --date "$print_date" -o "$scratch/closed"
    expect_status output-read-only 3
    expect_empty output-read-only-empty "$(folder_list "$scratch/closed")"
fi

# A new folder is made, and those above it.
maydeck print tests/fleet --date "$print_date" -o "$scratch/new"
expect_status output-new-folder 0
if [ -n "$(folder_list "$scratch/new" | grep '\.pdf$')" ]; then
    ok output-new-folder-filled
else
    not_ok output-new-folder-filled "no PDF file in the new folder"
    exit 1
fi
# made NAME FOLDER: folders that are not there are made, as many as it takes.
made() {
    maydeck print tests/fleet --boat bramble --date "$print_date" -o "$2"
    expect_status "$1" 0
    expect_equal "$1-file" bramble.pdf "$(folder_list "$2")"
}
made output-below-nothing "$scratch/absent/season/new"
made output-below-slashes "$scratch//other//season/"

# Above it stands something else: nothing is made, and that is named.
refused output-below-file "$scratch/file"
maydeck print tests/fleet --date "$print_date" -o "$scratch/file/new/cards"
expect_status output-below-a-file 2
grep -qF "$scratch/file is not a folder" "$scratch/stderr" ||
    not_ok output-below-a-file-named "$(cat "$scratch/stderr")"
expect_equal output-below-a-file-untouched kept "$(cat "$scratch/file")"
maydeck print tests/fleet --date "$print_date" -o ''
expect_status output-empty-name 2
maydeck print tests/fleet --date "$print_date" -o /proc/none/cards
expect_status output-system 3
grep -qF 'cannot make the folder /proc/none: ' "$scratch/stderr" ||
    not_ok output-system-named "$(cat "$scratch/stderr")"

# Two runs at once into one new folder: one prints all of it, the other does too or is told that
# a print is at work; every file is whole, nothing is left.
mkdir "$scratch/alone"
"$MAYDECK" print tests/fleet --each --date "$print_date" -o "$scratch/alone" >/dev/null 2>&1
for round in 1 2 3 4; do
    both=$scratch/both/$round ended=
    for run in 1 2; do
        "$MAYDECK" print tests/fleet --each --date "$print_date" -o "$both" \
            >/dev/null 2>"$scratch/both-$run" </dev/null &
        eval "run_$run=\$!"
    done
    for run in 1 2; do
        eval "wait \"\$run_$run\"" && ended="$ended good" && continue
        ended="$ended $?"
        grep -qF "another print is at work in $both" "$scratch/both-$run" ||
            not_ok "output-both-told-$round" "$(cat "$scratch/both-$run")"
    done
    case $ended in
    ' good good' | ' good 3' | ' 3 good') ok "output-both-ended-$round" ;;
    *) not_ok "output-both-ended-$round" "$ended" ;;
    esac
    expect_empty "output-both-$round" "$(diff -rq "$scratch/alone" "$both")"
    rm -rf "$both"
done

# Eight of all kinds at once into one new folder, two alike among them, each again while another is
# at work: the files are as of one after another.
# eighth NUMBER FOLDER: that run.
eighth() {
    case $1 in
    1 | 2) set -- "$2" --boat bramble ;;
    3) set -- "$2" --boat bramble --each ;;
    4) set -- "$2" --boat bramble --draft ;;
    5) set -- "$2" --boat bramble --card flooding ;;
    6) set -- "$2" --boat bramble --card flooding --draft ;;
    7) set -- "$2" --boat tamarisk ;;
    8) set -- "$2" --boat tamarisk,bramble --each --draft ;;
    esac
    folder=$1
    shift
    "$MAYDECK" print tests/fleet --date "$print_date" -o "$folder" "$@" </dev/null
}
# eighth_at_last NUMBER FOLDER: the same, until no other is at work there.
eighth_at_last() {
    for try in 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20; do
        eighth "$1" "$2" >"$scratch/eight-$1" 2>&1 && return 0
        grep -qF 'another print is at work in' "$scratch/eight-$1" || return 1
        sleep 1
    done
    return 1
}
eight_alone=$scratch/eight-alone eight_at_once=$scratch/eight/at/once
for run in 1 3 4 5 6 7 8; do
    eighth "$run" "$eight_alone" >/dev/null 2>&1 || not_ok "output-eight-alone-$run"
done
runs=
for run in 1 2 3 4 5 6 7 8; do
    eighth_at_last "$run" "$eight_at_once" &
    runs="$runs $run:$!"
done
for run in $runs; do
    wait "${run#*:}" || not_ok "output-eight-${run%:*}" "$(cat "$scratch/eight-${run%:*}")"
done
expect_empty output-eight-same "$(diff -rq -x printed.csv "$eight_alone" "$eight_at_once")"
expect_equal output-eight-listed "$(cut -d , -f 1-8 "$eight_alone/printed.csv" | sort)" \
    "$(cut -d , -f 1-8 "$eight_at_once/printed.csv" | sort)"
expect_equal output-eight-files 4 "$(folder_list "$eight_at_once" | grep -c '^bramble\(-flooding\)*\(-draft\)*\.pdf$')"
"$MAYDECK" verify "$eight_at_once" >"$scratch/verified" 2>&1 && ok output-eight-verified ||
    not_ok output-eight-verified "$(cat "$scratch/verified")"

# An older card is replaced whole, other files are left alone.
set -- $(folder_list "$scratch/new")
cp "$scratch/new/$1" "$scratch/reference"
echo stale >"$scratch/new/$1"
echo mine >"$scratch/new/notes.txt"
maydeck print tests/fleet --date "$print_date" -o "$scratch/new"
if cmp -s "$scratch/reference" "$scratch/new/$1"; then ok output-replaced; else not_ok output-replaced; fi
expect_equal output-other-file mine "$(cat "$scratch/new/notes.txt")"
# Without standard output, a card must not take its place: messages would then
# be written into the card.
for closed in 0 1 2 all; do
    mkdir "$scratch/closed-$closed"
    set -- "$MAYDECK" print tests/fleet --date "$print_date" -o "$scratch/closed-$closed"
    case $closed in
    0) "$@" >/dev/null 2>&1 <&- ;;
    1) "$@" 2>/dev/null </dev/null >&- ;;
    2) "$@" >/dev/null </dev/null 2>&- ;;
    all) "$@" <&- >&- 2>&- ;;
    esac
    found=$(folder_list "$scratch/closed-$closed" | while read -r file; do
        cmp "$scratch/new/$file" "$scratch/closed-$closed/$file" 2>&1
    done)
    expect_empty "output-closed-$closed" "$found"
done
exit $failures
