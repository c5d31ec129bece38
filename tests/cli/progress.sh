#!/bin/sh
# What print says while it works: a line on a terminal once a run takes long, never
# anywhere else; --quiet; one file a card with --each.
. tests/tap.sh

escape=$(printf '\033')
mkdir -p "$scratch/many/boats"
cp tests/fleet/base.yaml "$scratch/many"

maydeck print tests/fleet --date "$print_date" -o "$scratch/timed"
expect_status progress-timed 0
cp "$scratch/stderr" "$scratch/notes"
boats=6

# own_boat NUMBER: a boat of equal gear with identities of her own.
own_boat() {
    sed -e "s/call_sign: QTAB2/call_sign: QT$((2000 + $1))/" -e '/^  mmsi:/d; /^  mmsi_programmed:/d' \
        -e 's/hex_id: "[^"]*", //' tests/fleet/boats/tamarisk.yaml
}
boat=1
while [ "$boat" -le "$boats" ]; do
    own_boat "$boat" >"$scratch/many/boats/b$boat.yaml"
    boat=$((boat + 1))
done

# on_terminal ARGUMENT...: what a terminal would get goes to $scratch/terminal. With SLOW_MS each
# write into $scratch/out takes so long.
on_terminal() {
    rm -rf "$scratch/out"
    mkdir "$scratch/out"
    command=${SLOW_MS:+"env LD_PRELOAD='$SHIM' FAULT_FOLDER='$scratch/out' FAULT_SLOW_MS=$SLOW_MS"}
    for word in "$MAYDECK" "$@"; do
        command="$command '$word'"
    done
    script -qec "$command" /dev/null </dev/null >"$scratch/terminal"
    status=$?
}

if ! has_terminals; then
    skip progress-terminal 'no terminal to be had here'
else
    # A file of a boat takes a dozen writes, halves of what is left: two seconds, on any machine.
    [ "$VARIANT" = san ] || SLOW_MS=150
    on_terminal print "$scratch/many" --date "$print_date" -o "$scratch/out"
    expect_status progress-terminal 0
    SLOW_MS=
    told=$(grep -c "$escape\[K[0-9]* of $boats boats: b" "$scratch/terminal")
    if [ "$VARIANT" = san ]; then
        skip progress-told 'the sanitizers want no library before their own'
    elif [ "$told" -ge 1 ] && [ "$told" -lt "$boats" ]; then
        ok progress-told
    else
        not_ok progress-told "told $told times of $boats boats"
    fi
    # Nothing is left on the line: after the last rewriting it is cleared.
    expect_empty progress-cleared "$(tr '\r' '\n' <"$scratch/terminal" | sed "s/^$escape\[K//" |
        awk '/^[0-9]+ of [0-9]+ boats: / { open = $0; next } { open = "" } END { if (open) print open }')"
    on_terminal print "$scratch/many" --quiet --again --date "$print_date" -o "$scratch/out"
    expect_status progress-quiet 0
    maydeck print "$scratch/many" --again --date "$print_date" -o "$scratch/out"
    expect_empty progress-quiet-terminal \
        "$(tr -d '\r' <"$scratch/terminal" | diff - "$scratch/stderr")"
    on_terminal print tests/fleet --boat tamarisk --date "$print_date" -o "$scratch/out"
    expect_empty progress-short "$(grep "$escape" "$scratch/terminal")"
fi

rm -rf "$scratch/out"
maydeck print "$scratch/many" --date "$print_date" -o "$scratch/out"
expect_empty progress-not-on-a-file "$(grep "$escape\| of $boats boats: b" "$scratch/stderr")"
expect_empty progress-problems-alone "$(grep '^[^ ]' "$scratch/stderr" | grep -v ': note: ')"
expect_equal progress-lines "$boats" "$(grep -c ' cards$' "$scratch/stdout")"

# --quiet: problems and nothing else.
maydeck print tests/fleet --quiet --date "$print_date" -o "$scratch/silent"
expect_status quiet 0
expect_empty quiet-says-nothing "$(cat "$scratch/stdout"; diff "$scratch/notes" "$scratch/stderr")"
expect_empty quiet-same-files "$(diff -r "$scratch/timed" "$scratch/silent")"
maydeck print "$scratch/absent" --quiet -o "$scratch/silent"
expect_status quiet-problem 2
[ -s "$scratch/stderr" ] || not_ok quiet-problem-told

# --each: one page a file, the same bytes each time, the boat's file unchanged.
maydeck print tests/fleet --each --date "$print_date" -o "$scratch/each"
expect_status each 0
maydeck print tests/fleet --each --boat tamarisk --date "$print_date" -o "$scratch/again"
for file in "$scratch/again"/*.pdf; do
    cmp -s "$file" "$scratch/each/$(basename "$file")" || not_ok "each-same-$(basename "$file")"
done
for file in "$scratch/timed"/*.pdf; do
    cmp -s "$file" "$scratch/each/$(basename "$file")" || not_ok "each-boat-$(basename "$file")"
done
# A card is one page, or two where its call stands on the back; a safety plan and the call may take
# several, in the one file.
pages_of() { pdfinfo "$1" 2>&1 | sed -n 's/^Pages: *//p'; }
count=0
for file in "$scratch/each"/*-*.pdf; do
    pages=$(pages_of "$file")
    case $file in
    *-safety_plan.pdf | *-distress_call.pdf) [ "$pages" -ge 1 ] || not_ok "each-pages-$(basename "$file" .pdf)" "$pages" ;;
    *-skipper_down.pdf | *-no_engine.pdf | *-anchor_drags.pdf | *-steering_gone.pdf)
        expect_equal "each-sides-$(basename "$file" .pdf)" "$(pages_said "$file")" "$pages"
        [ "$pages" -le 2 ] || not_ok "each-sides-$(basename "$file" .pdf)" "$pages"
        ;;
    *) expect_equal "each-one-page-$(basename "$file" .pdf)" 1 "$pages" ;;
    esac
    count=$((count + pages))
done
cards=$(for file in "$scratch/timed"/*.pdf; do pages_said "$file"; done |
    awk '{ sum += $1 } END { print sum }')
expect_equal each-all "$cards" "$count"
maydeck print tests/fleet --each --boat tamarisk --card flooding --date "$print_date" -o "$scratch/one"
expect_equal each-one-card tamarisk-flooding.pdf "$(folder_list "$scratch/one")"
cmp -s "$scratch/one/tamarisk-flooding.pdf" "$scratch/each/tamarisk-flooding.pdf" || not_ok each-one-card-same

# A boat called like a card's file keeps her own file.
cp -R tests/fleet "$scratch/clash"
own_boat 1 >"$scratch/clash/boats/tamarisk-flooding.yaml"
maydeck print "$scratch/clash" --each --date "$print_date" -o "$scratch/clashed"
expect_status each-clash 1
expect_equal each-clash-pages \
    "$(pdfinfo "$scratch/each/tamarisk.pdf" | sed -n 's/^Pages: *//p')" "$(pdfinfo "$scratch/clashed/tamarisk-flooding.pdf" | sed -n 's/^Pages: *//p')"
grep -q 'tamarisk-flooding.pdf would be' "$scratch/stderr" || not_ok each-clash-told "$(cat "$scratch/stderr")"

# An older file of a card that is held back is named.
sed -i '/item: seacock/d' "$scratch/clash/boats/tamarisk.yaml"
rm "$scratch/clash/boats/tamarisk-flooding.yaml"
cp "$scratch/each"/tamarisk* "$scratch/clashed"
maydeck print "$scratch/clash" --each --boat tamarisk --date "$print_date" -o "$scratch/clashed"
expect_status each-held 1
grep -q 'tamarisk-flooding.pdf: not of this run' "$scratch/stdout" || not_ok each-held-older "$(cat "$scratch/stdout")"
exit $failures
