#!/bin/sh
# A new file for a sister ship: her walk, and what no model can hold. Who fills in all of it for a
# whole model leaves nothing that is not recorded.
. tests/tap.sh
. tests/sisters.sh

sisters=$scratch/sisters
mkdir -p "$sisters/models" "$sisters/boats"
cp tests/fleet/base.yaml "$sisters/"
cp tests/islands/models/sloop.yaml "$sisters/models/"
model_lay ketch tamarisk
model_lay cat samphire
for model in sloop ketch cat; do
    model_survey $model
done

# sister_fill FILE NAME CALL_SIGN NUMBER: every line of it with what could be true of a specimen.
sister_fill() {
    sed -E -e "s/^  name: .*/  name: $2/" -e 's/^  name_(spoken|latin): .*//' \
        -e 's/^  specimen: .*/  specimen: yes/' -e "s/^  call_sign: .*/  call_sign: $3/" \
        -e "s/^  mmsi: .*/  mmsi: \"200$4\"/" -e 's/^  mmsi_programmed: .*/  mmsi_programmed: yes/' \
        -e 's/^walked:.*/walked: {date: 2026-11-18, by: AB}/' \
        -e '/^  #- \{/{
            s/#- /- /
            s/(service_due|expires): /\1: 2029-04/g
            s/(serviced|made|installed|tried): /\1: 2026-10/g
            s/mmsi: /mmsi: "89999'"${4#01}"'"/
            s/hex_id: /hex_id: "'"$(beacon_of "${4#0}")"'"/
        }' "$1" >"$scratch/filled"
    cp "$scratch/filled" "$1"
}

number=16700
for model in sloop ketch cat; do
    number=$((number + 10))
    file=$sisters/boats/${model}_new.yaml
    maydeck start "$sisters" --boat "${model}_new" --like "$model"
    expect_status "like-$model" 0
    expect_empty "like-$model-stderr" "$(cat "$scratch/stderr")"
    # its model, the walk, identities and dates by tags of the model, and nothing else
    expect_equal "like-$model-keys" 'like walked boat radio equipment' \
        "$(sed -n 's/^\([a-z_]*\):.*/\1/p' "$file" | tr '\n' ' ' | sed 's/ $//')"
    expect_empty "like-$model-own" "$(sed -n 's/^  #- {tag: [A-Z0-9]*, \(.*\)}$/\1/p' "$file" |
        tr ',' '\n' | sed 's/^ *//' | grep -v -E "^($own_keys): \$")"
    expect_empty "like-$model-tags" "$(sed -n 's/^  #- {tag: \([A-Z0-9]*\),.*/\1/p' "$file" |
        while read -r tag; do grep -q "tag: $tag," "$sisters/models/$model.yaml" || echo "$tag"; done)"
    # as it is: read, and nothing counts before the walk
    maydeck check "$sisters" --boat "${model}_new" --date 2026-11-20
    expect_empty "like-$model-empty" "$(grep ': error: ' "$scratch/problems" |
        grep -v ': error: "name" has no value$')"
    grep -q ': held: nobody has walked round her yet' "$scratch/problems" ||
        not_ok "like-$model-unwalked" "$(cat "$scratch/problems")"
    # all of it filled in
    sister_fill "$file" "Tansy" "QSM$(echo "$model" | cut -c1 | tr 'a-z' 'A-Z')$((number % 7 + 2))" \
        "0$number"
    expect_empty "like-$model-all" "$(grep -v '^ *# ' "$file" | grep -n '^  #- \|: [,}]')"
    maydeck check "$sisters" --boat "${model}_new" --date 2026-11-20
    # (two of the models leave out whom lifejackets fit, and some sides, one its hatches)
    expect_empty "like-$model-filled" "$(grep ': error: \|: held: \|not recorded' "$scratch/problems" |
        grep -v "urgency_steps\|hatch is not recorded: the card 5 \|models/ketch.yaml.*: note: \|models/cat.yaml.*: note: ")"
    # all cards but those that she cannot need
    maydeck print "$sisters" --list --boat "${model}_new" --date 2026-11-20
    expect_empty "like-$model-held" "$(grep '^  held' "$scratch/stdout")"
done

# What is there is never changed, and a model must be there and without errors.
cp "$sisters/boats/sloop_new.yaml" "$scratch/before"
maydeck start "$sisters" --boat sloop_new --like sloop
expect_status like-again 2
expect_empty like-untouched "$(diff "$scratch/before" "$sisters/boats/sloop_new.yaml")"
maydeck start "$sisters" --boat tansy --like slop
expect_status like-unknown 2
grep -q 'did you mean "sloop"' "$scratch/stderr" || not_ok like-unknown-told "$(cat "$scratch/stderr")"
maydeck start tests/fleet --boat tansy --like sloop
expect_status like-none 2
echo 'frobnicate: yes' >>"$sisters/models/cat.yaml"
maydeck start "$sisters" --boat tansy --like cat
expect_status like-wrong 1
grep -q 'models/cat.yaml:[0-9]*:1: error: a model.s file has no key' "$scratch/stderr" ||
    not_ok like-wrong-told "$(cat "$scratch/stderr")"
maydeck start "$sisters" --like sloop
expect_status like-no-boat 2
maydeck start "$sisters" --boat tansy --like sloop --hull monohull
expect_status like-hull 2
if [ -e "$sisters/boats/tansy.yaml" ] || [ -e tests/fleet/boats/tansy.yaml ]; then
    not_ok like-refused-made
else
    ok like-refused-made
fi
exit $failures
