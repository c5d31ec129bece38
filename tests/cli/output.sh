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

# A new folder is made; one below a folder that is not there is refused.
maydeck print tests/fleet --date "$print_date" -o "$scratch/new"
expect_status output-new-folder 0
if [ -n "$(folder_list "$scratch/new" | grep '\.pdf$')" ]; then
    ok output-new-folder-filled
else
    not_ok output-new-folder-filled "no PDF file in the new folder"
    exit 1
fi
maydeck print tests/fleet --date "$print_date" -o "$scratch/absent/new"
case $status in
2 | 3) ok output-below-nothing ;;
*) not_ok output-below-nothing "expected status 2 or 3, found $status" ;;
esac
if [ -e "$scratch/absent" ]; then not_ok output-below-nothing-made; else ok output-below-nothing-made; fi

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
