#!/bin/sh
# Results on standard output, refusals on standard error, for every command; and "-": a boat from
# standard input, her PDF on standard output.
. tests/tap.sh

fleet=$scratch/fleet
cp -R tests/fleet "$fleet"
rm "$fleet/boats/bramble.yaml" "$fleet/boats/samphire.yaml"
"$MAYDECK" start "$fleet" --register >/dev/null || exit 1
"$MAYDECK" print "$fleet" -o "$scratch/cards" --date "$print_date" >/dev/null 2>&1 || exit 1
"$MAYDECK" table "$fleet" >"$scratch/gear.csv" 2>/dev/null || exit 1

# ---- every command ----

# A row a command: a run that does what it is asked for, behind it one that is refused. What a good
# run has to say besides is told on standard error as notes and nothing worse.
while IFS='|' read -r name good bad; do
    case $name in '' | '#'*) continue ;; esac
    # shellcheck disable=SC2086
    eval "maydeck $good"
    [ "$status" -le 1 ] || not_ok "streams-$name-good" "status $status" "$(cat "$scratch/stderr")"
    [ -s "$scratch/stdout" ] || not_ok "streams-$name-told" "nothing on standard output"
    expect_empty "streams-$name-notes" "$(grep ': \(error\|held\|deficiency\|failure\): ' "$scratch/stderr")"
    expect_empty "streams-$name-no-codes" "$(LC_ALL=C grep -l "$(printf '\033')" "$scratch/stdout" "$scratch/stderr")"
    eval "maydeck $bad"
    expect_status "streams-$name-bad" 2
    expect_empty "streams-$name-silent" "$(cat "$scratch/stdout")"
    grep -q '^maydeck: error: ' "$scratch/stderr" || not_ok "streams-$name-refused" "$(cat "$scratch/stderr")"
    grep -q '^  remedy: ' "$scratch/stderr" || not_ok "streams-$name-remedy" "$(cat "$scratch/stderr")"
done <<'ROWS'
print|print "$fleet" -o "$scratch/out" --date "$print_date"|print "$fleet" --boat nobody -o "$scratch/out"
print-list|print "$fleet" --list --date "$print_date"|print "$fleet" --list --card nothing --date "$print_date"
check|check "$fleet" --date "$print_date"|check "$fleet" --lang xx
check-list|check --list|check --list --schema
check-json|check "$fleet" --json --date "$print_date"|check "$scratch" --json
why|why "$fleet" --all --date "$print_date"|why "$fleet" --figure nothing
why-card|why "$fleet" --card flooding --json --date "$print_date"|why "$fleet" --card nothing --date "$print_date"
why-json|why "$fleet" --json --date "$print_date"|why "$fleet" --card nothing --json --date "$print_date"
why-sign-off|why "$fleet" --sign-off|why "$fleet" --sign-off --all
call|call "$fleet"|call "$fleet" --nature nothing
call-card|call "$fleet" --card flooding --date "$print_date"|call "$fleet" --card flooding,safety_plan --date "$print_date"
call-json|call "$fleet" --json|call "$fleet" --card nothing --json --date "$print_date"
renew-json|renew "$fleet" --json --date "$print_date"|renew "$fleet" --code nothing --json
due-json|due "$fleet" --json --date "$print_date"|due "$fleet" --boat nobody --json
verify-json|verify "$scratch/cards" --json|verify "$scratch/nowhere" --json
list-json|list items --json|list items --lang xx --json
brief|brief "$fleet" -o "$scratch/out" --from 2026-12-05 --to 2026-12-12 --people 4 --date "$print_date"|brief "$fleet" -o -
start|start "$scratch/new" --boat tern|start "$scratch/new" --hull raft --boat gull
list|list items|list nothing
table|table "$fleet"|table "$fleet" --boat nobody
take|take "$fleet" "$scratch/gear.csv" --date "$print_date"|take "$fleet"
survey|survey "$fleet" -o "$scratch/out" --date "$print_date"|survey "$fleet" --hull raft
renew|renew "$fleet" --date "$print_date"|renew "$fleet" --code nothing
hang|hang "$fleet" --boat tamarisk --place "chart table" --by AB --date "$print_date"|hang "$fleet" --boat nobody --place x --by AB
due|due "$fleet" --date "$print_date"|due "$fleet" --boat nobody
verify|verify "$scratch/cards"|verify "$scratch/nowhere"
help|help check|help nothing
manual|manual commands|manual nothing
completion|completion boats "$fleet"|completion nothing
schema|schema boat|schema nothing
ROWS
commands=$("$MAYDECK" help | sed -n '/^Commands:/,/^$/s/^  \([a-z]*\)  .*/\1/p')
for command in $commands; do
    grep -q "^$command|" tests/cli/streams.sh || not_ok "streams-$command" "no row tries it"
done
[ "$(echo "$commands" | wc -l)" -gt 10 ] || not_ok streams-commands "$commands"

# ---- a boat from standard input ----

# given NAME STATUS FILE ARGUMENT...: with that file on standard input
given() {
    name=given-$1 want=$2 file=$3
    shift 3
    "$MAYDECK" "$@" <"$file" >"$scratch/stdout" 2>"$scratch/stderr"
    status=$?
    expect_status "$name" "$want"
}
on="--date $print_date"
base=tests/fleet
"$MAYDECK" print $base $on -o "$scratch/set" --card flooding >/dev/null 2>&1
"$MAYDECK" print $base $on -o "$scratch/set" >/dev/null 2>&1
for boat in bramble samphire tamarisk; do
    # shellcheck disable=SC2086
    given "$boat" 0 "$base/boats/$boat.yaml" print $base --boat - -o - $on
    cmp -s "$scratch/stdout" "$scratch/set/$boat.pdf" || not_ok "given-$boat-same" "other bytes than in a folder"
    cat "$base/boats/$boat.yaml" | "$MAYDECK" print $base --boat - -o - $on 2>/dev/null |
        cmp -s - "$scratch/set/$boat.pdf" || not_ok "given-$boat-pipe" "other bytes through pipes"
done
# shellcheck disable=SC2086
{
    given card 0 $base/boats/bramble.yaml print $base --boat - --card flooding -o - $on
    cmp -s "$scratch/stdout" "$scratch/set/bramble-flooding.pdf" || not_ok given-card-same
    given folder 0 $base/boats/bramble.yaml print $base --boat - -o "$scratch/given" $on
    expect_equal given-folder-files bramble.pdf "$(folder_list "$scratch/given")"
    given from-base 0 /dev/null print $base --boat samphire -o - $on
    cmp -s "$scratch/stdout" "$scratch/set/samphire.pdf" || not_ok given-from-base-same

    # she stands in the place of the boat of her name, with the lines of what came
    sed 's/under step/under the step/' $base/boats/bramble.yaml >"$scratch/edited.yaml"
    given edited 1 "$scratch/edited.yaml" check $base --boat - $on
    grep -q '^standard input:[0-9]*:[0-9]*: ' "$scratch/stdout" || not_ok given-edited-place "$(cat "$scratch/stdout")"
    expect_equal given-edited-boat bramble "$(tail -n 1 "$scratch/stdout" | cut -d ' ' -f 1)"
    given why 0 "$scratch/edited.yaml" why $base --boat - --card flooding $on
    grep -q 'at standard input:52$' "$scratch/stdout" || not_ok given-why-place "$(grep C5 "$scratch/stdout")"
    given call 0 "$scratch/edited.yaml" call $base --boat -
    grep -q '^THIS IS BRAMBLE' "$scratch/stdout" || not_ok given-call-name "$(cat "$scratch/stdout")"

    # a copy with another name alone has the identities of the boat it was copied from
    sed 's/name: Bramble/name: Blue Tern II/' $base/boats/bramble.yaml >"$scratch/copied.yaml"
    given copied 1 "$scratch/copied.yaml" print $base --boat - -o - $on
    expect_empty given-copied-nothing "$(cat "$scratch/stdout")"
    grep -q 'QBRM3 is that of bramble too' "$scratch/stderr" || not_ok given-copied-told "$(cat "$scratch/stderr")"
    given copied-check 1 "$scratch/copied.yaml" check $base --boat - $on
    expect_equal given-copied-key blue-tern-ii "$(tail -n 1 "$scratch/stdout" | cut -d ' ' -f 1)"
    given as 0 "$scratch/copied.yaml" print $base --boat - --as bramble -o - $on
    given as-file 0 "$scratch/copied.yaml" print $base --boat - --as bramble.yaml -o - $on

    # without a name, or with that of another's file
    sed 's/name: Bramble/name: tamarisk/' $base/boats/bramble.yaml >"$scratch/other.yaml"
    given other 2 "$scratch/other.yaml" check $base --boat - $on
    grep -q 'no boat of this base is called "tamarisk"' "$scratch/stderr" || not_ok given-other-told
    given unreadable 1 /dev/fd/3 print $base --boat - -o - $on 3<<'WRONG'
boat: [
WRONG
    expect_empty given-unreadable-nothing "$(cat "$scratch/stdout")"
    grep -q '^standard input:[0-9:]*: error: ' "$scratch/stderr" || not_ok given-unreadable-told "$(cat "$scratch/stderr")"
    given empty 1 /dev/null check $base --boat - --as bramble $on
    head -c 300000 /dev/zero | tr '\0' '#' >"$scratch/large.yaml"
    given large 1 "$scratch/large.yaml" check $base --boat - $on
    grep -q 'standard input is larger than 256 KiB' "$scratch/stdout" || not_ok given-large-told
}

# ---- refused ----

# refused NAME WHAT ARGUMENT...: in one line, with a remedy, nothing on standard output
refused() {
    name=stream-refuses-$1 what=$2
    shift 2
    "$MAYDECK" "$@" <$base/boats/bramble.yaml >"$scratch/stdout" 2>"$scratch/stderr"
    status=$?
    expect_status "$name" 2
    expect_equal "$name-what" "maydeck: error: $what" "$(grep '^maydeck: error: ' "$scratch/stderr")"
    expect_empty "$name-silent" "$(cat "$scratch/stdout")"
    [ ! -e ./- ] || not_ok "$name-nothing" "a folder is called -"
}
refused several '-o - is one file, and this base has 3 boats' print $base -o -
refused two '-o - is one file, and there would be several' print $base -o - --boat bramble,samphire
refused languages '-o - is one file, and there would be several' print $base -o - --boat bramble --lang en,de
for option in --each --proof --list --stickers; do
    refused "$option" "-o - is one file of cards, and $option asks for something else" print $base -o - --boat bramble $option
done
refused cards '-o - is one file, and these cards are 2' \
    print $base --boat bramble --card flooding,gas_leak -o - --date "$print_date"
refused card-of-two '-o - is one file, and these cards are 2' \
    print $base --boat samphire --card engine_fire -o - --date "$print_date"
refused both 'the boat from standard input goes with no other' check $base --boat -,bramble
refused as '--as is of the boat from standard input' check $base --as bramble
refused as-path '--as does not take "boats/bramble"' check $base --boat - --as boats/bramble
refused due 'due takes no boat from standard input' due $base --boat -
refused survey 'survey writes no PDF to standard output' survey $base -o -

# A terminal shows no PDF and sends no file.
if has_terminals; then
    script -qc "'$MAYDECK' print $base --boat bramble -o -" /dev/null </dev/null >"$scratch/typed" 2>&1
    grep -q 'standard output is a terminal' "$scratch/typed" || not_ok stream-terminal "$(head -c 300 "$scratch/typed")"
    expect_empty stream-terminal-no-pdf "$(grep -a '%PDF' "$scratch/typed")"
    python3 - "$MAYDECK" $base <<'PROGRAM' >"$scratch/typed"
import os
import pty
import subprocess
import sys

program, base = sys.argv[1:]
master, slave = pty.openpty()
run = subprocess.run([program, "check", base, "--boat", "-"], stdin=slave, capture_output=True,
                     text=True, check=False)
os.close(slave)
os.close(master)
print(run.returncode, run.stdout + run.stderr.splitlines()[0])
PROGRAM
    expect_equal stream-typed '2 maydeck: error: standard input is a terminal' "$(cat "$scratch/typed")"
else
    skip stream-terminal 'no terminal to be had here'
fi

# ---- a file called "-" is none ----

"$MAYDECK" due $base --date "$print_date" >"$scratch/due"
maydeck due $base --date "$print_date" -o -
expect_empty stream-due "$(diff "$scratch/due" "$scratch/stdout")"
"$MAYDECK" table $base >"$scratch/table"
maydeck table $base -o -
expect_empty stream-table "$(diff "$scratch/table" "$scratch/stdout")"
expect_empty stream-no-file "$(ls -- - 2>/dev/null)"

# ---- the register knows nothing of it, and says so ----

cp "$fleet/register.csv" "$scratch/register"
maydeck print "$fleet" -o - --date "$print_date"
expect_status stream-register 0
grep -q 'note: the register has no row of what goes to standard output' "$scratch/stderr" ||
    not_ok stream-register-told "$(cat "$scratch/stderr")"
expect_empty stream-register-same "$(diff "$scratch/register" "$fleet/register.csv")"

# ---- what is not written is told ----

if [ -e /dev/full ]; then
    "$MAYDECK" print $base --boat bramble -o - --date "$print_date" >/dev/full 2>"$scratch/stderr"
    expect_equal stream-full 3 $?
    grep -q 'failure: standard output could not be written' "$scratch/stderr" || not_ok stream-full-told
fi

# A boat of whom not all could be read is not taken for one with less.
if [ "$VARIANT" = san ]; then
    skip stream-read-fails 'the shim and the sanitizers both stand before the system calls'
else
    mkdir "$scratch/faulty"
    cp $base/boats/bramble.yaml "$scratch/faulty"
    for at in 1 2; do
        env LD_PRELOAD="$SHIM" FAULT_CALL=read FAULT_AT=$at FAULT_ERRNO=EIO FAULT_FOLDER="$scratch/faulty" \
            "$MAYDECK" print $base --boat - --as bramble -o - --date "$print_date" <"$scratch/faulty/bramble.yaml" \
            >"$scratch/stdout" 2>"$scratch/stderr"
        expect_equal "stream-read-fails-$at" 3 $?
        expect_empty "stream-read-fails-$at-silent" "$(cat "$scratch/stdout")"
        grep -q '^maydeck: failure: standard input cannot be read: Input/output error' "$scratch/stderr" ||
            not_ok "stream-read-fails-$at-told" "$(cat "$scratch/stderr")"
    done
fi

# gone NAME STATUS TEXT ARGUMENT...: the reader of standard output is gone before anything is written
gone() {
    name=stream-gone-$1 want=$2 text=$3
    shift 3
    python3 - "$scratch/stderr" "$@" <<'PROGRAM' >"$scratch/ended"
import os
import signal
import subprocess
import sys

signal.signal(signal.SIGPIPE, signal.SIG_DFL)
read, write = os.pipe()
os.close(read)
with open(sys.argv[1], "wb") as err:
    run = subprocess.run(sys.argv[2:], stdin=subprocess.DEVNULL, stdout=write, stderr=err,
                         restore_signals=True, check=False)
print(run.returncode)
PROGRAM
    expect_equal "$name" "$want" "$(cat "$scratch/ended")"
    expect_equal "$name-told" "$text" "$(grep '^maydeck: failure' "$scratch/stderr")"
}
told='maydeck: failure: standard output was closed before all was told'
gone check -13 '' "$MAYDECK" check $base --date "$print_date"
gone list -13 '' "$MAYDECK" list items
gone help -13 '' "$MAYDECK" help check
gone print 3 "$told" "$MAYDECK" print $base --boat bramble -o - --date "$print_date"
gone start 3 "$told" "$MAYDECK" start "$scratch/another" --boat tern
exit $failures
