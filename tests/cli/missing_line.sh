#!/bin/sh
# The law of the missing line: each line of each specimen boat taken out in turn, no card
# says anything else than before unless `check` names what is missing, by the key, the tag or
# the item that stood in that line, in a problem that it does not tell of the whole record. A
# card that is no longer printed is held, and that is told. Words of cards are all texts of
# a page but its footer (dates, check code).
. tests/tap.sh

# Under the sanitizers every tenth line, for time.
case $VARIANT in
release) step=1 ;;
*) step=10 ;;
esac

# words_of FOLDER: one file of words for each page that was printed there.
words_of() {
    mkdir -p "$1/words"
    set -- "$1/words" "$1/cards"/*.dump
    [ -f "$2" ] || return
    folder=$1
    shift
    awk -v folder="$folder" '
        FNR == 1 { if (out != "") close(out); out = FILENAME; sub(/.*\//, "", out); sub(/\.dump$/, "", out)
                   out = folder "/" out; printf "" >out }
        /^text footer / || !/^(page|text) [^"]*".*"$/ { next }
        { sub(/^[^"]*"/, ""); sub(/"$/, ""); count = split($0, word, / +/)
          for (i = 1; i <= count; i++) if (word[i] != "") print word[i] >out }' "$@"
}

# ran FOLDER ARGUMENT...: the program on the base there; its output is in stdout.
ran() {
    folder=$1
    shift
    # shellcheck disable=SC2086
    $WRAP "$MAYDECK" "$@" --date "$print_date" >"$folder/stdout" 2>>"$folder/stderr" </dev/null
    ended=$?
    [ "$ended" -le 1 ] || echo "$* ended with $ended" >>"$folder/broken"
}

printed() {
    rm -rf "$1/cards" "$1/words"
    mkdir -p "$1/cards"
    ran "$1" print --dump "$1/base" -o "$1/cards"
    words_of "$1"
}

# checked FOLDER: a line a problem with severity, words and remedy, but without its place.
checked() {
    ran "$1" check --json "$1/base"
    sed -n 's/^ *{"check": "[a-z0-9_]*", "severity": "\([a-z]*\)".*, "what": \(.*\)$/\1 \2/p' \
        "$1/stdout" | sed 's/[]},]*$//' | sort -u >"$1/told"
}

# base_lay FOLDER: the specimen base without boats.
base_lay() {
    mkdir -p "$1/base/boats"
    cp tests/fleet/base.yaml "$1/base/base.yaml"
}

# name_of LINE: what stands in the line, as a pattern: the tag or the item of gear, the item
# not fitted, or the key.
name_of() {
    echo "$1" | sed -n -e 's/^ *- {item: \([a-z_]*\), tag: \([A-Z0-9]*\).*/\2\\|\1/p;t' \
        -e 's/^ *- {check: \([a-z_]*\).*/\1/p;t' -e 's/^ *- \([a-z_]*\)$/\1/p;t' \
        -e 's/^ *\([a-z_0-9]*\):.*/\1/p'
}

# pages_compare FOLDER: the pages that are printed with other words than of the whole record, in
# FOLDER/changed, and the cards that are gone, in FOLDER/gone. A card of which a page is left and
# another is gone is one with other words.
pages_compare() {
    diff -rq "$whole/words" "$1/words" >"$1/differ"
    sed -n "s,^Only in $whole/words: ,,p" "$1/differ" >"$1/fewer"
    while read -r page; do
        card=${page%_[0-9]*}
        if [ -f "$1/words/$card" ]; then echo "$page" >&3; else echo "$page"; fi
    done <"$1/fewer" 3>"$1/less" | tr '\n' ' ' >"$1/gone"
    { sed -n -e 's,^Files .* and .*/\([^/]*\) differ$,\1,p' -e "s,^Only in $1/words: ,,p" "$1/differ"
      cat "$1/less"; } | tr '\n' ' ' >"$1/changed"
}

# line_try FOLDER BOAT NUMBER: tells how the law is broken by that line; nothing if it holds.
# Where all pages are as they were, nobody has to be told. A second station helps whom its place
# is told; of one that no record names nobody is asked.
line_try() {
    line=$(sed -n "$3p" "tests/fleet/boats/$2.yaml")
    case $line in
    *second_station:*) return ;;
    esac
    sed "$3d" "tests/fleet/boats/$2.yaml" >"$1/base/boats/$2.yaml"
    printed "$1"
    pages_compare "$1"
    read -r changed <"$1/changed"
    read -r gone <"$1/gone"
    [ -n "$changed$gone" ] || return
    checked "$1"
    grep -vxF -f "$whole/told" "$1/told" | grep -v '^silenced ' >"$1/new"
    if [ -n "$changed" ] && ! grep -qw "$(name_of "$line")" "$1/new"; then
        echo "$2.yaml:$3: $line: not told, but other words on $changed"
    fi
    if [ -n "$gone" ] && ! grep -q '^held \|^error ' "$1/new"; then
        echo "$2.yaml:$3: $line: nothing holds $gone"
    fi
}

# lane FOLDER BOAT FIRST: every second line of those to try, from FIRST.
lane() {
    base_lay "$1"
    awk -v first="$3" -v step="$step" '/^ *(#.*)?$/ { next }
        { n++; if (n % step == 0 && n / step % 2 == first) print NR }' "tests/fleet/boats/$2.yaml" >"$1/lines"
    : >"$1/found"
    while read -r number; do
        line_try "$1" "$2" "$number" >>"$1/found"
        echo "$number" >>"$1/tried"
    done <"$1/lines"
}

for file in tests/fleet/boats/*.yaml; do
    boat=$(basename "$file" .yaml)
    whole=$scratch/$boat/whole
    base_lay "$whole"
    cp "$file" "$whole/base/boats/"
    printed "$whole"
    checked "$whole"
    [ "$(find "$whole/words" -type f | wc -l)" -ge 10 ] || not_ok "missing-line-$boat-whole" "$(cat "$whole/stderr")"
    lane "$scratch/$boat/even" "$boat" 0 &
    lane "$scratch/$boat/odd" "$boat" 1
    wait
    cat "$scratch/$boat"/*/tried >"$scratch/$boat/tried"
    lines=$(grep -c '^ *[^ #]' "$file")
    expect_equal "missing-line-$boat-tried" "$((lines / step))" "$(wc -l <"$scratch/$boat/tried" | tr -d ' ')"
    expect_empty "missing-line-$boat-runs" "$(cat "$scratch/$boat"/*/broken 2>/dev/null)"
    expect_empty "missing-line-$boat" "$(cat "$scratch/$boat"/*/found)"
done
exit $failures
