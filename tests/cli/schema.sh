#!/bin/sh
# JSON Schemas of the files that people write: held against the reader by another validator, over all
# error goldens, all specimens and records that are changed one thing at a time; how they are asked
# for, and how `start` lays them into a base.
. tests/tap.sh

# results_of COMMAND...: what a program tells in lines of results.
results_of() {
    "$@" >"$scratch/results" 2>&1 || not_ok "schema-$(basename "$2")" "$(tail -n 5 "$scratch/results")"
    cat "$scratch/results"
    if grep -q '^not ok' "$scratch/results"; then failures=1; fi
}

results_of python3 tests/schema/agree.py "$MAYDECK"
results_of python3 tests/schema/mutate.py "$MAYDECK" "$scratch/changed" "${CHANGES:-40}" "${SEED:-1}"

# The oracle is one: a schema that takes what it should not is told, and an entry too many in the list.
mkdir -p "$scratch/tree/tests"
cp -R tests/schema tests/errors tests/fleet tests/islands tests/unusual tests/hazard "$scratch/tree/tests/"
ln -s "$top/procedures" "$scratch/tree/procedures"
cat >"$scratch/tree/loose" <<LOOSE
#!/bin/sh
"$MAYDECK" "\$@" | sed 's/"additionalProperties": false/"additionalProperties": true/; s/"issuer", "id",/"issuers", "id",/'
LOOSE
chmod +x "$scratch/tree/loose"
echo '102-unknown-zone boats/alder.yaml  nothing' >>"$scratch/tree/tests/schema/of_meaning.txt"
(cd "$scratch/tree" && python3 tests/schema/agree.py ./loose) >"$scratch/told" 2>&1
expect_equal schema-oracle-loose 1 \
    "$(grep -c '^# 003-unknown-key-far boats/alder.yaml: the reader refuses it, the schema does not' "$scratch/told")"
expect_equal schema-oracle-tight 1 "$(grep -c '^# procedures/sources.yaml (1.2): ' "$scratch/told")"
expect_equal schema-oracle-list '# 802-own-sources-collide procedures/sources.yaml: is not needed
# 102-unknown-zone boats/alder.yaml: is not needed' "$(grep 'is not needed' "$scratch/told")"

# ---- how they are asked for ----

for topic in base boat model procedure texts sources words check; do
    maydeck schema $topic
    expect_status "schema-$topic" 0
    expect_empty "schema-$topic-stderr" "$(cat "$scratch/stderr")"
    cp "$scratch/stdout" "$scratch/$topic.json"
    maydeck schema $topic
    expect_empty "schema-$topic-same-bytes" "$(cmp "$scratch/stdout" "$scratch/$topic.json" 2>&1)"
done
maydeck check --schema
expect_empty schema-check-is-that-of-check "$(cmp "$scratch/stdout" "$scratch/check.json" 2>&1)"
maydeck schema
expect_status schema-of-nothing 2
maydeck schema boats
expect_status schema-of-unknown 2
expect_equal schema-of-unknown-remedy '  remedy: did you mean "boat"?' "$(grep remedy "$scratch/stderr")"
"$MAYDECK" schema boat >/dev/full 2>"$scratch/stderr"
status=$?
expect_status schema-full 3

# Words that cards use stand beside the keys.
grep -q '"Fuel valve' "$scratch/boat.json" || not_ok schema-words "no words of cards"

# ---- in a base ----

base=$scratch/base
maydeck start "$base" --boat tern
expect_status schema-start 0
for file in base.yaml boats/tern.yaml; do
    named=$(sed -n '1s/^# yaml-language-server: \$schema=//p' "$base/$file")
    expect_empty "schema-start-$(basename $file)" \
        "$(cd "$(dirname "$base/$file")" && cmp "$named" "$scratch/$(basename "$named")" 2>&1)"
done
for topic in base boat model procedure texts sources; do
    cmp -s "$base/schema/$topic.json" "$scratch/$topic.json" || not_ok "schema-start-$topic" differs
done

# One of an older version is replaced, one of somebody else's is not; all else stays as it is.
sed 's/, version [0-9.]*/, version 0.0.1/' "$base/schema/boat.json" >"$scratch/older"
cp "$scratch/older" "$base/schema/boat.json"
echo '{}' >"$base/schema/base.json"
rm "$base/schema/model.json"
maydeck start "$base" --schemas
expect_status schema-again 0
expect_empty schema-older-replaced "$(cmp "$base/schema/boat.json" "$scratch/boat.json" 2>&1)"
expect_empty schema-missing-made "$(cmp "$base/schema/model.json" "$scratch/model.json" 2>&1)"
expect_equal schema-others-left '{}' "$(cat "$base/schema/base.json")"
grep -q "note: $base/schema/base.json is there already" "$scratch/stderr" || not_ok schema-others-told "$(cat "$scratch/stderr")"
maydeck start "$scratch/none" --schemas
expect_status schema-no-base 2
expect_empty schema-no-base-made "$(ls "$scratch/none" 2>/dev/null)"
maydeck start "$base" --schemas --boat skua
expect_status schema-apart 2
rm -r "$base/schema"
echo 'ours' >"$base/schema"
maydeck start "$base" --boat skua
expect_status schema-in-the-way 2
expect_equal schema-in-the-way-left ours "$(cat "$base/schema")"

# No command takes the folder for records.
rm "$base/schema"
maydeck start "$base" --schemas
maydeck check "$base"
expect_empty schema-no-stray "$(grep schema "$scratch/stdout" "$scratch/stderr")"
exit $failures
