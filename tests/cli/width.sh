#!/bin/sh
# Lines on standard output are no wider than the terminal, and say the same as without one.
. tests/tap.sh

# words: what is said, without line ends, marks below a line, and the sign that comments go on with.
words() {
    grep -v '^ *\^~*$\|^ *~*$' "$1" | sed 's/^ *# //' | tr -s ' \n' '\n\n' | sed '/^$/d; /^#$/d'
}
# too_wide WIDTH FILE: lines that are wider and could have been broken.
too_wide() {
    python3 -c 'import sys
for line in open(sys.argv[2], encoding="utf-8"):
    line = line.rstrip("\n")
    if len(line) > int(sys.argv[1]) and " " in line.lstrip().removeprefix("# "):
        print(line)' "$1" "$2"
}
on="--date $print_date"
# run NAME COMMAND...: without a width, then at several.
run() {
    name=$1
    shift
    maydeck "$@"
    cp "$scratch/stdout" "$scratch/free"
    [ -s "$scratch/free" ] || not_ok "width-$name" "nothing was told"
    free=$status
    for columns in 40 60 100; do
        COLUMNS=$columns
        export COLUMNS
        maydeck "$@"
        unset COLUMNS
        expect_equal "width-$name-$columns-status" "$free" "$status"
        expect_empty "width-$name-$columns" "$(too_wide $columns "$scratch/stdout")"
        case $name in
        *-table) ;;                 # its columns are told one by one: see below
        *) expect_empty "width-$name-$columns-words" "$(words "$scratch/free" >"$scratch/free.words"
            words "$scratch/stdout" | diff "$scratch/free.words" - | head -n 5)" ;;
        esac
    done
}
# shellcheck disable=SC2086
{
    run check-list check --list
    run why why tests/fleet --boat bramble --card flooding $on
    run why-figure why tests/fleet --boat bramble --figure all $on
    run call call tests/fleet --boat bramble --card distress_call
    run check-table check tests/fleet $on
    run check-page-table check tests/fleet --boat bramble --page $on
    run check-figures-table check tests/fleet --boat bramble --figures $on
    run differs check tests/islands --differs $on
    run due-table due tests/fleet $on
}
for topic in $("$MAYDECK" list 2>&1 | sed -n 's/.*write one of: //p' | tr -d ,); do
    run "list-$topic-table" list "$topic"
done

[ "$name" != due-table ] || not_ok width-lists 'no list was tried'

# What the columns say stands in the lines that take their place, each under its name.
COLUMNS=60
export COLUMNS
maydeck list items
cp "$scratch/stdout" "$scratch/apart"
maydeck due tests/fleet --date "$print_date"
cp "$scratch/stdout" "$scratch/due"
maydeck check tests/fleet --date "$print_date"
cp "$scratch/stdout" "$scratch/check"
unset COLUMNS
expect_equal width-items-all "$("$MAYDECK" list items | sed 1d | cut -d ' ' -f 1)" \
    "$(sed -n 's/^item: //p' "$scratch/apart")"
expect_equal width-due-all "$("$MAYDECK" due tests/fleet --date "$print_date" | sed 1d | cut -d ' ' -f 1)" \
    "$(sed -n 's/^date: //p' "$scratch/due")"
expect_equal width-check-boats 'bramble samphire tamarisk' "$(sed -n 's/^boat: //p' "$scratch/check" | tr '\n' ' ' | sed 's/ $//')"
expect_equal width-check-table 24 "$(grep -A 7 '^boat: ' "$scratch/check" | grep -c ': ')"

# Marks stand below what they marked.
maydeck check tests/fleet --boat bramble --date "$print_date"
grep -A 1 'item: vhf_handheld, tag: E2' "$scratch/stdout" | head -n 2 >"$scratch/pair"
COLUMNS=60 "$MAYDECK" check tests/fleet --boat bramble --date "$print_date" |
    grep -A 4 'item: vhf_handheld, tag: E2' >"$scratch/folded"
# marked FILE: what ^~~ marks in the line above it
marked() {
    awk '/^ *\^~*$/ { from = index($0, "^"); print substr(last, from, length($0) - from + 1); exit } { last = $0 }' "$1"
}
expect_equal width-marked "$(marked "$scratch/pair")" "$(marked "$scratch/folded")"
[ -n "$(marked "$scratch/folded")" ] || not_ok width-marked-some "$(cat "$scratch/folded")"

# Lines to paste are still YAML, with the same entries.
cp -R tests/unusual "$scratch/paste" 2>/dev/null
maydeck check tests/fleet --boat tamarisk --date "$print_date"
sed -n '/^  # on most boats/,$p' "$scratch/stdout" | grep '^  [-#]' >"$scratch/lines"
COLUMNS=50 "$MAYDECK" check tests/fleet --boat tamarisk --date "$print_date" |
    sed -n '/^  # on most boats/,/^[^ ]/p' | grep '^  ' >"$scratch/folded"
# entries FILE: without comments, line ends and doubled spaces
entries() {
    sed 's/  *# .*//; s/^ *# .*//' "$1" | tr -s ' \n' '  ' | sed 's/^ *//; s/ *$//'
}
expect_equal width-paste "$(entries "$scratch/lines")" "$(entries "$scratch/folded")"
[ -n "$(entries "$scratch/lines")" ] || not_ok width-paste-some "no lines to paste"

# A width that is none, JSON and tables for programs are not touched.
"$MAYDECK" list items >"$scratch/free"
for columns in '' 0 1 wide -60 60x 99999; do
    COLUMNS=$columns "$MAYDECK" list items >"$scratch/found"
    cmp -s "$scratch/free" "$scratch/found" || not_ok "width-odd-$columns" "$(head -n 3 "$scratch/found")"
done
for line in 'list items --json' 'due tests/fleet --csv' 'due tests/fleet --ics' 'table tests/fleet' 'check tests/fleet --json'; do
    # shellcheck disable=SC2086
    "$MAYDECK" $line >"$scratch/free" 2>/dev/null
    # shellcheck disable=SC2086
    COLUMNS=40 "$MAYDECK" $line >"$scratch/found" 2>/dev/null
    cmp -s "$scratch/free" "$scratch/found" || not_ok "width-program-$(echo "$line" | tr ' /' --)"
done

# On a terminal its own width counts.
python3 - "$MAYDECK" <<'PROGRAM' >"$scratch/found" 2>"$scratch/no-terminal"
import fcntl
import os
import pty
import struct
import sys
import termios

pid, master = pty.fork()
if pid == 0:
    os.environ.pop("COLUMNS", None)
    fcntl.ioctl(1, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 60, 0, 0))
    os.execv(sys.argv[1], [sys.argv[1], "list", "natures"])
told = b""
while True:
    try:
        some = os.read(master, 4096)
    except OSError:
        break
    if not some:
        break
    told += some
os.waitpid(pid, 0)
sys.stdout.write(told.replace(b"\r\n", b"\n").decode())
PROGRAM
COLUMNS=60 "$MAYDECK" list natures >"$scratch/free"
if has_terminals; then
    expect_empty width-terminal "$(diff "$scratch/free" "$scratch/found")"
else
    skip width-terminal 'no terminal to be had here'
fi

# In a window of 60 columns, and in a pager that is left before the end.
if has_terminals && command -v tmux >/dev/null 2>&1 && command -v less >/dev/null 2>&1; then
    socket=maydeck-$$
    # shown: the window as it stands, without empty lines
    shown() {
        tmux -L "$socket" capture-pane -p -S - -t width | sed '/^$/d'
    }
    # typed TEXT WAIT: types the line and waits until the window shows the other text
    typed() {
        tmux -L "$socket" send-keys -t width "$1" Enter
        tries=0
        until shown | grep -qx "$2" || [ $tries -ge 100 ]; do
            sleep 0.1
            tries=$((tries + 1))
        done
    }
    tmux -L "$socket" -f /dev/null new-session -d -x 60 -y 24 -s width "PS1='$ ' LESS= sh"
    tmux -L "$socket" set-option -t width status off >/dev/null 2>&1
    typed "'$MAYDECK' due tests/fleet --date $print_date >/dev/null; '$MAYDECK' list natures; echo told-\$?" told-0
    shown | sed -n '/^nature: /,/^told-0$/p' >"$scratch/window"
    COLUMNS=60 "$MAYDECK" list natures >"$scratch/free"
    echo told-0 >>"$scratch/free"
    expect_empty width-tmux "$(diff "$scratch/free" "$scratch/window")"
    tmux -L "$socket" send-keys -t width C-l
    typed "clear; '$MAYDECK' check tests/fleet | less; echo left-\$?" 'tests/fleet/boats/bramble.yaml:4:3:.*'
    tmux -L "$socket" send-keys -t width q
    typed '' left-0
    expect_equal width-pager left-0 "$(shown | grep '^left-')"
    expect_empty width-pager-told "$(shown | grep -i 'failure\|remedy\|pipe')"
    tmux -L "$socket" kill-server
else
    skip width-tmux 'tmux or less is not installed, or there is no terminal'
fi
exit $failures
