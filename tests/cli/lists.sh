#!/bin/sh
# `list`: what the files of a base may say, from the program's own tables; needs no base.
. tests/tap.sh

# The first column under its name, one a line.
column() {
    sed 1d "$scratch/stdout" | cut -d ' ' -f "$1"
}
topics=$(maydeck help list; sed -n 's/^  \([a-z]*\)   *[^ ].*/\1/p' "$scratch/stdout")
expect_equal lists-topics 'items zones cards natures fields checks rules figures statuses' "$(echo $topics)"

for topic in $topics; do
    maydeck list "$topic"
    expect_status "list-$topic" 0
    expect_empty "list-$topic-stderr" "$(cat "$scratch/stderr")"
    expect_empty "list-$topic-no-space-at-end" "$(grep -n ' $' "$scratch/stdout")"
    rows=$(($(wc -l <"$scratch/stdout") - 1))
    cp "$scratch/stdout" "$scratch/list-$topic"
    maydeck list "$topic" --json
    expect_status "list-$topic-json" 0
    expect_equal "list-$topic-json-rows" "$rows" "$(grep -c '^    {' "$scratch/stdout")"
    # the columns are the members
    expect_equal "list-$topic-columns" "$(head -n 1 "$scratch/list-$topic" | tr 'A-Z' 'a-z' | tr -s ' ')" \
        "$(grep '^    {' "$scratch/stdout" | head -n 1 | grep -o '"[a-z_]*": ' | tr -d '":' | tr -s ' \n' ' ' | sed 's/ $//')"
    maydeck list "$topic" --lang en --json
    expect_equal "list-$topic-language" 1 "$(grep -c '"language": "en"' "$scratch/stdout")"
done

# Whole: every key of the tables, each with the words of the words file.
cp "$scratch/list-items" "$scratch/stdout"
expect_equal list-items-all "$(sed -n 's/^    X(\([a-z_]*\), .*/\1/p' include/item_list.h)" "$(column 1)"
words=procedures/words/en/words.yaml
missing=$(sed -n '/^items:/,/^zones:/s/^  \([a-z_]*\): {one: \([^,]*\),.*/\1 *\2  /p' "$words" |
    while IFS= read -r line; do grep -q "^$line" "$scratch/list-items" || echo "$line"; done)
expect_empty list-items-words "$missing"
cp "$scratch/list-zones" "$scratch/stdout"
expect_equal list-zones-all "$(sed -n 's/^    X(\([a-z_]*\), .*/\1/p' include/zone_list.h)" "$(column 1)"
grep -q '^navigation_station  *Chart table  *below ' "$scratch/list-zones" || not_ok list-zones-word
grep -q '^trampoline .* catamaran, trimaran$' "$scratch/list-zones" || not_ok list-zones-boats
sed 1d "$scratch/list-cards" | tr -s ' ' | cut -d ' ' -f 1,2 >"$scratch/cards"
expect_equal list-cards-all "$(sed -n 's/^number: //p' procedures/*.yaml | sort -n)" "$(cut -d ' ' -f 1 "$scratch/cards")"
while read -r number card; do
    grep -q "^number: $number\$" "procedures/$card.yaml" || not_ok "list-card-$card" "$number"
done <"$scratch/cards"
grep -q '^9 .* she carries cooking gas$' "$scratch/list-cards" || not_ok list-cards-boats

# Each nature is one that `call` takes, and each key stands in the file that it is listed of.
sed 1d "$scratch/list-natures" | cut -d ' ' -f 1 >"$scratch/natures"
while read -r nature; do
    maydeck call tests/fleet --boat bramble --nature "$nature"
    [ "$status" -eq 0 ] || not_ok "list-nature-$nature" "$(cat "$scratch/stderr")"
done <"$scratch/natures"
maydeck start "$scratch/base" --boat tern
maydeck list fields --json
sed -n 's,.*"file": "boats/BOAT.yaml"\, "section": "\(boat\|radio\)"\, "key": "\([a-z_0-9]*\)".*,\2,p' \
    "$scratch/stdout" >"$scratch/keys"
[ "$(wc -l <"$scratch/keys")" -gt 30 ] || not_ok list-fields-some "$(cat "$scratch/keys")"
while read -r key; do
    grep -q "^  $key:" "$scratch/base/boats/tern.yaml" || not_ok "list-field-$key" "not in a new file"
done <"$scratch/keys"
grep -q '^boats/BOAT.yaml  equipment  *bore_mm  *number  *no  *millimetres  *5 to 200 .*seacock' \
    "$scratch/list-fields" || not_ok list-field-bore "$(grep bore_mm "$scratch/list-fields")"

# refused NAME WHAT REMEDY ARGUMENT...
refused() {
    name=$1 what=$2 remedy=$3
    shift 3
    maydeck "$@"
    expect_status "list-refuses-$name" 2
    expect_equal "list-refuses-$name-says" "maydeck: error: $what
  remedy: $remedy" "$(cat "$scratch/stderr")"
    expect_empty "list-refuses-$name-stdout" "$(cat "$scratch/stdout")"
}
all='items, zones, cards, natures, fields, checks, rules, figures, statuses'
refused nothing 'it was not told what to list' "write one of: $all" list
refused two 'one thing at a time: what to list' "write one of: $all" \
    list items zones
refused topic 'there is no list of "item"' 'did you mean "items"?' list item
refused far 'there is no list of "boats"' "write one of: $all" list boats
maydeck list items --lang xx
expect_status list-no-language 2
exit $failures
