#!/bin/sh
# Each boat and each file has an outcome of its own: what fails of one stops no other, all
# of it is named, and so is each older file that might pass for new.
. tests/tap.sh

base=$scratch/base
out=$scratch/out

# A fresh base, and a fresh $out with yesterday's files in it.
renew() {
    rm -rf "$base" "$out"
    cp -R tests/fleet "$base"
    mkdir "$out"
    for boat in bramble samphire tamarisk; do
        echo yesterday >"$out/$boat.pdf"
    done
}

# printed [ARGUMENT...]
printed() {
    maydeck print "$base" --date "$print_date" -o "$out" "$@"
}

# today: the files that this run wrote.
today() {
    (cd "$out" && for file in *.pdf; do
        [ -f "$file" ] && [ "$(cat "$file" 2>/dev/null | head -c 9)" != yesterday ] && echo "$file"
    done)
}

# tells NAME STREAM WORDS
tells() {
    if grep -qF -- "$3" "$scratch/$2"; then
        ok "$1"
    else
        not_ok "$1" "nothing says: $3" "$(cat "$scratch/$2")"
    fi
}

# others NAME STATUS WORDS: all but bramble were printed, and her older file is named.
others() {
    expect_status "outcomes-$1" "$2"
    expect_equal "outcomes-$1-others" 'samphire.pdf
tamarisk.pdf' "$(today)"
    tells "outcomes-$1-told" stderr "$3"
    [ ! -f "$out/bramble.pdf" ] ||
        tells "outcomes-$1-older" stdout "$out/bramble.pdf: not of this run"
}

renew
printed
expect_status outcomes-all 0
expect_equal outcomes-all-files 'bramble.pdf
samphire.pdf
tamarisk.pdf' "$(today)"
expect_empty outcomes-all-none-older "$(grep 'not of this run' "$scratch/stdout")"

renew
rm "$out/bramble.pdf"
mkdir "$out/bramble.pdf"
printed
others folder-in-the-way 3 "$out/bramble.pdf is there already"

renew
rm "$base/boats/bramble.yaml"
mkfifo "$base/boats/bramble.yaml"
printed
others fifo 1 'boats/bramble.yaml is not a file'

# 250 bytes: longer than any name beside it may be.
renew
long=$(printf '%0244d' 7)
mv "$base/boats/bramble.yaml" "$base/boats/$long.yaml"
rm "$out/bramble.pdf"
printed
expect_status outcomes-long-name 0
expect_equal outcomes-long-name-printed "$long.pdf
samphire.pdf
tamarisk.pdf" "$(today)"
renew
rm "$out/bramble.pdf"
mv "$base/boats/bramble.yaml" "$base/boats/$long.yaml"
printed --draft
expect_equal outcomes-long-name-draft "$long-draft.pdf
samphire-draft.pdf
tamarisk-draft.pdf" "$(today)"

renew
chmod 000 "$base/boats/bramble.yaml"
if [ "$(id -u)" -eq 0 ]; then
    skip outcomes-mode 'root may read anything; the shim has EIO'
else
    printed
    others mode 3 'boats/bramble.yaml cannot be read: Permission denied'
fi

# One boat alone: a file of another that cannot be read is told, and stops nothing.
renew
rm "$base/boats/bramble.yaml"
mkfifo "$base/boats/bramble.yaml"
for command in "print -o $out" check "why --card flooding" call; do
    # shellcheck disable=SC2086
    maydeck ${command} "$base" --boat samphire
    name=outcomes-beside-${command%% *}
    expect_status "$name" 1
    tells "$name-told" problems 'boats/bramble.yaml is not a file'
    [ -s "$scratch/stdout" ] || not_ok "$name-done" "$(cat "$scratch/stderr")"
done
expect_equal outcomes-beside-printed samphire.pdf "$(today)"

# faulty CALL AT ERRNO FOLDER ARGUMENT...
faulty() {
    call=$1 at=$2 errno=$3 folder=$4
    shift 4
    env LD_PRELOAD="$SHIM" FAULT_CALL="$call" FAULT_AT="$at" FAULT_ERRNO="$errno" \
        FAULT_FOLDER="$folder" "$MAYDECK" "$@" --date "$print_date" \
        >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# boats/ that cannot be read is no base without boats.
unreadable() {
    for command in print check why; do
        renew
        faulty "$1" "$2" "$3" "$base/boats" $command "$base"
        expect_status "outcomes-boats-$1-$2-$command" 3
        tells "outcomes-boats-$1-$2-$command-told" stderr "boats cannot be read: $4"
        grep -q 'no boat files' "$scratch/stderr" && not_ok "outcomes-boats-$1-$2-$command-words"
    done
}

if [ "$VARIANT" = san ]; then
    skip outcomes-faults 'the shim and the sanitizers both stand before the system calls'
else
    renew
    faulty read 1 EIO "$base/boats" print "$base" -j 1 -o "$out"
    others eio 3 'boats/bramble.yaml cannot be read: Input/output error'
    renew
    faulty write 1 ENOSPC "$out" print "$base" -j 1 -o "$out"
    others disk-full 3 "cannot write $out/bramble.pdf: No space left on device"
    unreadable opendir 1 EACCES 'Permission denied'
    unreadable readdir 1 EIO 'Input/output error'
    unreadable readdir 4 EIO 'Input/output error'
fi

# ---- what lies in boats/ and is not read ----

renew
cp "$base/boats/bramble.yaml" "$base/boats/tern.yml"
maydeck check "$base" --date "$print_date" --json
expect_equal outcomes-stray-json 1 "$(grep -c '"check": "run", "severity": "deficiency".*tern.yml is not read' "$scratch/stdout")"
rm -rf "$base"
mkdir -p "$base/boats"
cp tests/errors/base/base.yaml "$base/"
cp tests/errors/base/boats/alder.yaml "$base/boats/"
maydeck check "$base" --date "$print_date"
expect_status outcomes-stray-without 0
touch "$base/boats/notes.txt"
maydeck check "$base" --date "$print_date"
expect_status outcomes-stray-note 0
tells outcomes-stray-note-told problems 'note: '"$base"'/boats/notes.txt is not read'
for stray in tern.yml Tern.YAML tern.yaml.txt .tern.yaml 'copy of alder.yaml' \
    'alder (copy).yaml' 'alder - Copy.yaml'; do
    cp "$base/boats/alder.yaml" "$base/boats/$stray"
    maydeck check "$base" --date "$print_date"
    expect_status "outcomes-stray-$stray" 1
    tells "outcomes-stray-$stray-told" problems "deficiency: $base/boats/$stray is not read"
    rm "$base/boats/$stray"
done
mkdir "$base/boats/old"
maydeck check "$base" --date "$print_date"
expect_status outcomes-stray-folder 1
maydeck call "$base"
expect_status outcomes-stray-call 0
tells outcomes-stray-call-told stderr "$base/boats/old is not read"

# ---- single cards and drafts have files of their own ----

renew
printed --boat tamarisk
cards=$(pages_said "$out/tamarisk.pdf")
cp "$out/tamarisk.pdf" "$scratch/set.pdf"
printed --boat tamarisk --card flooding
expect_status outcomes-card 0
tells outcomes-card-said stdout "$out/tamarisk-flooding.pdf: 1 of $cards pages; the set is left as it is"
tells outcomes-card-set-older stdout "$out/tamarisk.pdf: not of this run"
expect_equal outcomes-card-pages 1 "$(pdfinfo "$out/tamarisk-flooding.pdf" | sed -n 's/^Pages: *//p')"
printed --boat tamarisk --draft
# a draft names what is not recorded, and may take more pages
drafted=$(pages_said "$out/tamarisk-draft.pdf")
tells outcomes-draft-said stdout "$out/tamarisk-draft.pdf: $drafted of $drafted cards; a draft, not to be hung"
printed --boat tamarisk --draft --card gas_leak
tells outcomes-draft-card-said stdout "$out/tamarisk-gas_leak-draft.pdf: 1 of $drafted pages, a draft"
if cmp -s "$out/tamarisk.pdf" "$scratch/set.pdf"; then
    ok outcomes-set-untouched
else
    not_ok outcomes-set-untouched
fi
# All cards, one a file: what is left of former runs is named, of this boat alone.
echo yesterday >"$out/tamarisk-fuel_fire.pdf"
printed --boat tamarisk --each
expect_equal outcomes-older-named "$out/tamarisk-draft.pdf: not of this run
$out/tamarisk-fuel_fire.pdf: not of this run
$out/tamarisk-gas_leak-draft.pdf: not of this run" "$(grep 'not of this run' "$scratch/stdout")"

# A boat called like a draft keeps her own file.
sed -e 's/QBRM3/QBRM4/' "$base/boats/bramble.yaml" >"$base/boats/tamarisk-draft.yaml"
rm "$out"/*
printed --boat tamarisk --draft
expect_status outcomes-draft-clash 1
expect_empty outcomes-draft-clash-nothing "$(folder_list "$out")"

# A card of one boat and the set of another are never one file.
renew
sed -e 's/QBRM3/QBRM4/' "$base/boats/bramble.yaml" >"$base/boats/tamarisk-flooding.yaml"
printed --boat tamarisk,tamarisk-flooding --each --draft
expect_status outcomes-written-over 1
tells outcomes-written-over-told stderr \
    'error: tamarisk-flooding-draft.pdf was written by this run already and would be written over'

# ---- two runs at once ----

renew
printed
rm -rf "$scratch/whole"
cp -R "$out" "$scratch/whole"
for round in 1 2 3 4 5 6; do
    for half in 1 2; do
        { "$MAYDECK" print "$base" --date "$print_date" -o "$out" >/dev/null \
            2>"$scratch/run$half" </dev/null
        echo $? >"$scratch/status$half"; } &
    done
    wait
    case "$(cat "$scratch/status1" "$scratch/status2" | tr '\n' ' ')" in
    '0 0 ') ok "outcomes-at-once-$round" ;;
    '0 3 ' | '3 0 ')    # it came while the other was at work, and says so
        grep -qF "another print is at work in $out" "$scratch/run1" "$scratch/run2" &&
            ok "outcomes-at-once-$round" ||
            not_ok "outcomes-at-once-$round" "$(cat "$scratch/run1" "$scratch/run2")" ;;
    *) not_ok "outcomes-at-once-$round" "$(cat "$scratch/status1" "$scratch/status2")" ;;
    esac
    expect_empty "outcomes-at-once-$round-whole" "$(diff -rq "$scratch/whole" "$out" 2>&1)"
done

# What a killed run left is gone after the next.
echo half >"$out/.maydeck-1-0.tmp"
printed
expect_empty outcomes-swept "$(diff -rq "$scratch/whole" "$out" 2>&1)"
exit $failures
