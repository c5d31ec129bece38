#!/bin/sh
# One term an object on all cards: the other names it might have stand nowhere.
. tests/tap.sh

maydeck print tests/fleet --dump --date "$print_date" -o "$scratch/dumps"
expect_status terms-printed 0
sed -n 's/^text [a-z ]* [0-9-]*,[0-9-]* .*role=\([a-z_]*\) .* "\(.*\)"$/\1 \2/p' "$scratch/dumps"/*.dump |
    grep -v '^script [A-Z][A-Z]\|^footer \|^code \|^source_tag ' | cut -d' ' -f2- >"$scratch/words"
lines=$(wc -l <"$scratch/words" | tr -d ' ')
[ "$lines" -gt 1000 ] && ok terms-seen || not_ok terms-seen "$lines lines of text only"

# one OBJECT TERM OTHER...: the term is used, none of the others is.
one() {
    object=$1 term=$2
    shift 2
    grep -qiw -- "$term" "$scratch/words" || not_ok "terms-$object-used" "\"$term\" stands on no card"
    for other; do
        found=$(grep -iw -- "$other" "$scratch/words" | head -n 3)
        [ -z "$found" ] && ok "terms-$object" || not_ok "terms-$object" "\"$other\": $found"
    done
}

while IFS=: read -r object names; do
    case $object in
    '' | '#'*) continue ;;
    esac
    IFS=,
    set --
    for name in $names; do
        set -- "$@" "${name# }"
    done
    unset IFS
    one "$(echo "$object" | tr ' ' '-')" "$@"
done <tests/words/terms.txt
exit $failures
