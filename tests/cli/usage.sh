#!/bin/sh
# Help, version, and commands used wrongly: exit status 2, nothing made.
. tests/tap.sh

maydeck --version
expect_status version 0
expect_equal version-text "maydeck $(sed -n 's/^version := //p' Makefile)" "$(cat "$scratch/stdout")"

for arguments in --help 'print --help' 'check --help'; do
    # shellcheck disable=SC2086
    maydeck $arguments
    name=$(echo "$arguments" | tr ' ' -)
    expect_status "help-$name" 0
    expect_empty "help-$name-stderr" "$(cat "$scratch/stderr")"
    for word in Usage maydeck; do
        grep -qi "$word" "$scratch/stdout" || not_ok "help-$name-says-$word" "$(cat "$scratch/stdout")"
    done
done

# wrong NAME ARGUMENT...: refused with status 2, a message, and no file.
wrong() {
    name=$1
    shift
    rm -rf "$scratch/out"
    mkdir "$scratch/out"
    maydeck "$@"
    expect_status "wrong-$name" 2
    [ -s "$scratch/stderr" ] || not_ok "wrong-$name-says-why" "nothing on standard error"
    expect_empty "wrong-$name-makes-nothing" "$(folder_list "$scratch/out")"
}

wrong nothing
wrong command frobnicate
wrong option print tests/fleet --frobnicate -o "$scratch/out"
wrong no-base print -o "$scratch/out"
wrong absent-base print "$scratch/absent" -o "$scratch/out"
wrong base-is-file print Makefile -o "$scratch/out"
wrong two-bases print tests/fleet tests/fleet -o "$scratch/out"
wrong unknown-boat print tests/fleet --boat nosuchboat -o "$scratch/out"
wrong unknown-card print tests/fleet --card nosuchcard -o "$scratch/out"
wrong date print tests/fleet --date 2026-02-30 -o "$scratch/out"
wrong date-word print tests/fleet --date tomorrow -o "$scratch/out"
wrong option-without-value print tests/fleet -o
for jobs in 0 1.5 65 -2 1001 many ''; do
    wrong "jobs-$jobs" print tests/fleet --jobs="$jobs" -o "$scratch/out"
done
maydeck print tests/fleet --jobs=1.5 -o "$scratch/out"
expect_equal wrong-jobs-told 'maydeck: error: --jobs does not take "1.5"' \
    "$(grep error: "$scratch/stderr")"
# A full disk under standard output is told.
"$MAYDECK" --help >/dev/full 2>"$scratch/stderr" </dev/null
status=$?
expect_status help-full 3
exit $failures
