#!/bin/sh
# A new boat file with every line filled in (fill.awk): it offers every item and field that
# procedures, checks, dates and figures ask for, so that nothing is "not recorded".
. tests/tap.sh

# each kind has one line: the intake of a second engine and the galley's drain are more
one_line='no opening is recorded for '
for hull in monohull catamaran trimaran; do
    base=$scratch/$hull
    maydeck start "$base" --boat "$hull" --hull "$hull"
    file=$base/boats/$hull.yaml
    cp "$file" "$scratch/empty.yaml"
    awk -v hull=$hull -f tests/cli/fill.awk "$scratch/empty.yaml" >"$file"
    expect_empty "filled-$hull-all" "$(grep -n 'FILL-\|^  #- {' "$file")"
    cp tests/errors/base/base.yaml "$base/base.yaml"
    # every item of the register that such a boat may have, with what cards call it
    maydeck list items
    sed 1d "$scratch/stdout" | cut -d ' ' -f 1 >"$scratch/items"
    missing=$(while read -r item; do
        grep -q "^  - {item: $item, tag: " "$file" || echo "$item"
    done <"$scratch/items")
    case $hull in
    monohull) expect_equal "filled-$hull-items" 'vhf_dsc escape_hatch capsize_line' "$(echo $missing)" ;;
    trimaran) expect_equal "filled-$hull-items" 'vhf_dsc escape_hatch' "$(echo $missing)" ;;
    *) expect_equal "filled-$hull-items" 'vhf_dsc' "$(echo $missing)" ;;
    esac
    expect_equal "filled-$hull-named" "$(grep -c '^  - {item: ' "$file")" \
        "$(grep -c '^  # [a-z_0-9]* ("[^"]*"): ' "$file")"
    grep -q 'navigation_station ("Chart table")' "$file" || not_ok "filled-$hull-zone-named"

    # (that so much gear has room on every page is another matter)
    maydeck check "$base" --boat "$hull" --date "$print_date"
    expect_empty "filled-$hull-nothing-wrong" "$(grep ': error: ' "$scratch/problems" |
        grep -v ': error: [0-9][0-9]*[A-Z]* [A-Z]')"
    expect_empty "filled-$hull-all-recorded" \
        "$(grep -n 'not recorded\|is recorded for\|waits for' "$scratch/stdout" | grep -v "$one_line")"
    items=$(grep -c '^  - {item: ' "$file")
    grep -q "^$hull  *$((items + 1)) of " "$scratch/stdout" || not_ok "filled-$hull-count" "$(tail -n 2 "$scratch/stdout")"
done
exit $failures
