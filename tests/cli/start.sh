#!/bin/sh
# New files to fill in: they can be read as they are, ask for what the cards need, and
# never take the place of a file that is there.
. tests/tap.sh

base=$scratch/base
maydeck start "$base" --boat tern --hull monohull
expect_status start 0
expect_equal start-files 'base.yaml
boats/tern.yaml
register.csv
schema/base.json
schema/boat.json
schema/model.json
schema/procedure.json
schema/sources.json
schema/texts.json' "$(folder_list "$base")"
expect_empty start-stderr "$(cat "$scratch/stderr")"
cp -R "$base" "$scratch/first"

# As they are: only what is needed is missing, nothing else is wrong.
maydeck check "$base"
expect_status start-check 1
expect_empty start-check-only-empty "$(grep ': error: ' "$scratch/problems" | grep -v 'has no value$')"
grep -q 'base.yaml:[0-9:]* error: "phone_24h" has no value' "$scratch/problems" ||
    not_ok start-check-names "$(cat "$scratch/problems")"
expect_equal start-check-lacks-have-lines 'base.yaml:15: deficiency: when channel and
base.yaml:15: deficiency: call and phone
base.yaml:25: note: the radio sea
base.yaml:25: note: the clock on
base.yaml:39: note: marina and berth' "$(sed -n 's/.*\(base.yaml:[0-9]*\):[0-9]*: \([dn][a-z]*: [a-z]* [a-z]* [a-z]*\) .*/\1: \2/p' "$scratch/problems")"

# Nothing that is there is changed.
maydeck start "$base" --boat tern
expect_status start-again 2
maydeck start "$base"
expect_status start-base-again 2
mkdir -p "$scratch/odd/boats"
ln -s nowhere "$scratch/odd/boats/tern.yaml"
maydeck start "$scratch/odd" --boat tern
expect_status start-link-in-the-way 2
expect_equal start-link-untouched 'nowhere' "$(readlink "$scratch/odd/boats/tern.yaml")"
if [ -e "$scratch/odd/base.yaml" ]; then not_ok start-link-nothing-made; else ok start-link-nothing-made; fi
expect_empty start-untouched "$(diff -r "$scratch/first" "$base")"

# One more boat beside the first; the base stays as it is.
echo '# ours' >>"$base/base.yaml"
maydeck start "$base" --boat sea_rose --hull catamaran
expect_status start-more 0
expect_equal start-not-surveyed 1 "$(grep -c '^not_surveyed:$' "$base/boats/sea_rose.yaml")"
expect_equal start-more-base '# ours' "$(tail -n 1 "$base/base.yaml")"
grep -q '^  hull: catamaran ' "$base/boats/sea_rose.yaml" || not_ok start-type
grep -q '#- {item: engine_stop,.*serves: ' "$base/boats/sea_rose.yaml" || not_ok start-serves
grep -q '^  #   - {item: [a-z_]*, serves: \[engine_space_port\]}$' "$base/boats/sea_rose.yaml" || not_ok start-one-engine
for boat in tern sea_rose; do
    expect_equal "start-$boat-tags" 2 "$(grep -c '^tags_given:$\|^retired_tags:$' "$base/boats/$boat.yaml")"
done
if grep -q 'serves: ,\|serves: }\|serves: \[\|_hull\|trampoline' "$base/boats/tern.yaml"; then
    not_ok start-monohull-only "$(grep 'serves: \|_hull\|trampoline' "$base/boats/tern.yaml")"
else
    ok start-monohull-only
fi
maydeck start "$scratch/empty"
expect_status start-no-boat 0
expect_equal start-no-boat-files 'base.yaml
register.csv
schema/base.json
schema/boat.json
schema/model.json
schema/procedure.json
schema/sources.json
schema/texts.json' "$(folder_list "$scratch/empty")"

# The same input, the same bytes.
maydeck start "$scratch/twin" --boat tern --hull monohull
expect_empty start-same-bytes "$(diff -r "$scratch/first" "$scratch/twin")"

# Filled in with the least: only gear is missing, and every item that a message asks
# for stands in the file.
sed -i -e 's/^  phone_24h: .*/  phone_24h: "+44 20 7946 0000"/' -e 's/^  channel: .*/  channel: "67"/' \
    -e 's/^  latitude: .*/  latitude: north/' -e 's/^  longitude: .*/  longitude: east/' \
    -e 's/^  fire_phone: .*/  fire_phone: "112"/' -e 's/^  name: .*/  name: Trial Base/' \
    -e 's/^  drowning_breaths: .*/  drowning_breaths: 5/' "$base/base.yaml"
for file in "$base/boats/tern.yaml" "$base/boats/sea_rose.yaml"; do
    sed -i -e 's/^  name: .*/  name: Tern/' -e 's/^  rig: .*/  rig: sail/' -e 's/^  loa_m: .*/  loa_m: 12/' \
        -e 's/^  beam_m: .*/  beam_m: 4.1/' -e 's/^  persons_max: .*/  persons_max: 8/' "$file"
done
for boat in tern sea_rose; do
    maydeck check "$base" --boat $boat
    expect_status "start-$boat-filled" 1
    expect_empty "start-$boat-no-error" "$(grep 'error: ' "$scratch/problems")"
    asked=$(sed -nE 's/.*: (held|note): ([a-z_]*) is not recorded.*/\2/p' "$scratch/problems")
    listed=$(sed -n 's/^  - {item: \([a-z_]*\),.*/\1/p' "$scratch/stdout")
    [ "$(echo "$asked" | wc -l)" -ge 20 ] || not_ok "start-$boat-asks" "$asked"
    expect_empty "start-$boat-asked-in-file" "$(for item in $asked $listed; do
        grep -q "^  #- $item\$" "$base/boats/$boat.yaml" || echo "$item"
        [ "$item" = vhf_dsc ] || grep -q "^  #- {item: $item, tag: " "$base/boats/$boat.yaml" || echo "{$item}"
    done)"
    # the file offers all gear there is, check what the cards ask for
    offered=$(grep -c '^  #- [a-z_]*$' "$base/boats/$boat.yaml")
    [ "$offered" -ge 80 ] || not_ok "start-$boat-offers" "$offered kinds of gear"
done

# Marked as not fitted, all of it: every item counts as recorded, no list is left.
sed -i -e 's/^  #- \([a-z_]*\)$/  - \1/' -e 's/^  #- {space: .*/  - {space: engine_space, fuel: diesel, drive: shaft}/' \
    "$base/boats/tern.yaml"
maydeck check "$base" --boat tern
items=$(grep -c '^  - [a-z_]*$' "$base/boats/tern.yaml")
grep -q "^tern  *$items of [0-9]* *[0-9]* of [0-9]* " "$scratch/stdout" ||
    not_ok start-recorded "$(cat "$scratch/stdout")"
expect_empty start-nothing-left "$(grep 'not recorded either' "$scratch/stdout")"
expect_equal start-not-hers \
    'tern: no card 3 OUTBOARD FIRE: Only where an outboard drives her can one catch fire.
tern: no card 11 PETROL LEAK: Only a boat that carries petrol can leak it.
tern: no card 21 ANCHOR DRAGS: Only a boat with an anchor can drag it.' \
    "$(grep '^tern: no card ' "$scratch/stdout")"

# What check lists can be pasted: with zones filled in, all of it is gear.
cp "$base/boats/sea_rose.yaml" "$scratch/before"
maydeck check "$base" --boat sea_rose
sed -n 's/^\(  - {item: .*\)/\1/p' "$scratch/stdout" | sed 's/zone: ,/zone: saloon,/' >"$scratch/paste"
pasted=$(wc -l <"$scratch/paste" | tr -d ' ')
sed -i "/^equipment:/r $scratch/paste" "$base/boats/sea_rose.yaml"
maydeck check "$base" --boat sea_rose
expect_empty start-paste-no-error "$(grep 'error: ' "$scratch/problems")"
grep -q "^sea_rose  *$pasted of " "$scratch/stdout" || not_ok start-paste "$(cat "$scratch/stdout")"
[ "$pasted" -ge 5 ] || not_ok start-paste-some "$pasted lines"

# refused NAME ARGUMENT...: status 2, nothing made.
refused() {
    name=$1
    shift
    maydeck start "$@"
    expect_status "start-refused-$name" 2
    [ -s "$scratch/problems" ] || not_ok "start-refused-$name-why"
}
refused no-base
refused file "$scratch/first/base.yaml" --boat tern
refused type "$scratch/none" --boat tern --hull pentamaran
for key in '' '../tern' 'a/b' '.tern' '-tern' 'sea rose' 'tern.yaml'; do
    refused "name-$key" "$scratch/none" --boat="$key"
done
if [ -e "$scratch/none" ] || [ -e "$scratch/tern.yaml" ]; then not_ok start-refused-made; else ok start-refused-made; fi
exit $failures
