#!/bin/sh
# The survey of boats of a base of its own: a sheet a boat, none of one whose file has errors, on the
# paper that was asked for; blank ones for new boats; and that of every boat that there is.
. tests/tap.sh

base=$scratch/base
mkdir -p "$base/boats"
cp tests/errors/base/base.yaml "$base/base.yaml"
cat >"$base/boats/whinchat.yaml" <<'BOAT'
boat: {name: Whinchat, specimen: yes, hull: monohull, rig: sail, loa_m: 11.2, beam_m: 3.6, persons_max: 6, draught_m: 1.9}
engines:
  - {space: engine_space, fuel: diesel, drive: shaft}
gas: {carried: no}
radio: {tag: E1, call_sign: QWCH4, mmsi: "200017310", mmsi_programmed: yes, dsc: yes, zone: navigation_station, side: port}
equipment:
  - {item: anchor_main, tag: C5, zone: anchor_locker, side: centre, how: pull the pin, length_m: 50}
  - {item: fire_extinguisher, tag: F1, zone: galley, side: port, spot: under the steps, kg: 2, service_due: 2027-04}
  - {item: seacock, tag: C1, zone: forward_heads, side: starboard, name: inlet, how: {shut: across, open: along}}
  - {item: seacock, tag: C2, zone: galley, side: port, name: sink drain, how: {shut: across, open: along}}
  - {item: epirb, tag: E2, zone: companionway, side: starboard, how: lift the switch}
  - {item: lifejacket, tag: E3, zone: cockpit_locker, side: port, count: 6}
  - {item: lifejacket, tag: E4, zone: cockpit_locker, side: starboard, count: 2, wearer: child}
  - {item: mob_light, tag: E5, zone: pushpit, side: port, expires: 2028-02}
not_fitted: [sart, dinghy, aed]
not_surveyed: [knife]
BOAT
sed -e 's/Whinchat/Dotterel/; s/QWCH4/QDTR2/; s/200017310/200017320/' "$base/boats/whinchat.yaml" >"$base/boats/dotterel.yaml"
printf 'boat: {name: Smew}\nequipment:\n  - {item: torch, tag: C1, zone: nowhere}\n' >"$base/boats/smew.yaml"

# words_of PDF: its text, as it is laid out.
words_of() {
    pdftotext -layout "$1" - 2>/dev/null
}

# ---- the boats of a base ----

maydeck survey "$base" --date "$print_date" -o "$scratch/all"
expect_status survey 1
expect_equal survey-files 'dotterel-survey.pdf
whinchat-survey.pdf' "$(folder_list "$scratch/all")"
grep -q 'boats/smew.yaml:3:[0-9]*: error: ' "$scratch/stderr" &&
    grep -q 'boats/smew.yaml:1:[0-9]*: error: ' "$scratch/stderr" && ok survey-told-of ||
    not_ok survey-told-of "$(cat "$scratch/stderr")"
maydeck check "$base" --boat smew --date "$print_date"
grep 'smew.yaml.* error: ' "$scratch/stdout" >"$scratch/checked"
maydeck survey "$base" --boat smew --date "$print_date" -o "$scratch/none"
grep 'smew.yaml.* error: ' "$scratch/stderr" >"$scratch/surveyed"
expect_equal survey-told-as-check "$(sort "$scratch/checked")" "$(sort "$scratch/surveyed")"
expect_empty survey-none "$(folder_list "$scratch/none")"

maydeck survey "$base" --boat whinchat --date "$print_date" -o "$scratch/one"
expect_status survey-one 0
expect_equal survey-one-files whinchat-survey.pdf "$(folder_list "$scratch/one")"
cmp -s "$scratch/one/whinchat-survey.pdf" "$scratch/all/whinchat-survey.pdf" && ok survey-same-bytes ||
    not_ok survey-same-bytes
words_of "$scratch/one/whinchat-survey.pdf" >"$scratch/words"

# From the stern on deck to the bow, then below and forward.
expect_equal survey-order 'E5 E3 E4 C5 E2 F1 C2 E1 C1' \
    "$(sed '/State as delivered/,$d' "$scratch/words" | grep -oE '^ *[0-9]+ +[FEC][0-9]+ ' | grep -oE '[FEC][0-9]+' | tr '\n' ' ' | sed 's/ $//')"
for words in 'Cockpit locker, PORT' 'Here' 'Moved' 'Missing' 'Works' 'MMSI 200 017 310:' 'service due 2027-04:' \
    'runs to 2028-02:' 'Knife: most often' 'beacon identity' 'Radar transponder' \
    'GO WITH' 'NOT UNTIL' 'Walked by' 'Was it aground' 'State as delivered' 'Sheet 1' 'WHINCHAT'; do
    grep -q "$words" "$scratch/words" || not_ok "survey-says: $words" "$(cat "$scratch/words")"
done
ok survey-says

# ---- paper ----

maydeck survey "$base" --boat whinchat --paper letter --date "$print_date" -o "$scratch/letter"
expect_status survey-letter 0
expect_equal survey-letter-file whinchat-survey.letter.pdf "$(folder_list "$scratch/letter")"
expect_equal survey-letter-size '612 x 792 pts (letter)' \
    "$(pdfinfo "$scratch/letter/whinchat-survey.letter.pdf" | sed -n 's/^Page size: *//p')"
maydeck survey "$base" --paper a5 -o "$scratch/a5"
expect_status survey-a5 2
grep -q 'error: --paper a5 is too narrow\|--paper a5 is too narrow' "$scratch/stderr" && ok survey-a5-told ||
    not_ok survey-a5-told "$(cat "$scratch/stderr")"
[ ! -e "$scratch/a5" ] && ok survey-a5-nothing || not_ok survey-a5-nothing
cp -R "$base" "$scratch/small"
printf 'paper: a5\n' >>"$scratch/small/base.yaml"
maydeck survey "$scratch/small" --boat whinchat --date "$print_date" -o "$scratch/of_small"
expect_status survey-of-a5-base 0
expect_equal survey-of-a5-base-file whinchat-survey.pdf "$(folder_list "$scratch/of_small")"
expect_equal survey-of-a5-base-size A4 \
    "$(pdfinfo "$scratch/of_small/whinchat-survey.pdf" | sed -n 's/^Page size:.*(\(.*\))$/\1/p')"

# ---- new boats ----

mkdir "$scratch/bare"
cp tests/errors/base/base.yaml "$scratch/bare/base.yaml"
for hull in monohull catamaran trimaran; do
    maydeck survey "$scratch/bare" --hull $hull -o "$scratch/new"
    expect_status "survey-$hull" 0
    words_of "$scratch/new/new-$hull-survey.pdf" >"$scratch/words"
    rm -rf "$scratch/started"
    maydeck start "$scratch/started" --boat tern --hull $hull
    sed -n 's/^  # [a-z_0-9]* ("\(.*\)"): .*/\1/p' "$scratch/started/boats/tern.yaml" >"$scratch/asked"
    sed -n 's/^  #- {item: [a-z_]*, tag: \([A-Z0-9]*\),.*/\1/p' "$scratch/started/boats/tern.yaml" >"$scratch/tags"
    [ "$(wc -l <"$scratch/asked")" -gt 90 ] || not_ok "survey-$hull-asked" "$(cat "$scratch/asked")"
    missing=$(paste "$scratch/tags" "$scratch/asked" | while read -r tag name; do
        grep -q " $tag  *$name" "$scratch/words" || echo "$tag $name"
    done)
    expect_empty "survey-$hull-all-asked" "$missing"
done
maydeck survey "$scratch/bare" --hull monohull --rig motor -o "$scratch/new"
expect_status survey-motor 0
words_of "$scratch/new/new-monohull-motor-survey.pdf" >"$scratch/words"
grep -q 'Mainsail' "$scratch/words" && not_ok survey-motor-sails || ok survey-motor-sails

# wrong NAME ARGUMENT...: refused, and nothing made.
wrong() {
    name=$1
    shift
    rm -rf "$scratch/out"
    maydeck survey "$@" -o "$scratch/out"
    expect_status "survey-$name" 2
    [ -s "$scratch/stderr" ] || not_ok "survey-$name-says-why"
    [ ! -e "$scratch/out" ] || expect_empty "survey-$name-nothing" "$(folder_list "$scratch/out")"
}
wrong hull-of-boat "$base" --hull catamaran --boat whinchat
wrong rig-alone "$base" --rig motor
wrong no-such-hull "$base" --hull raft
wrong no-such-boat "$base" --boat whimbrel
wrong no-boats "$scratch/bare"
wrong no-base "$scratch/absent"
wrong no-language "$base" --lang xx

# A boat called as the sheet of another would be keeps her file.
cp -R "$base" "$scratch/alike"
rm "$scratch/alike/boats/smew.yaml"
mv "$scratch/alike/boats/dotterel.yaml" "$scratch/alike/boats/whinchat-survey.yaml"
maydeck survey "$scratch/alike" --date "$print_date" -o "$scratch/alike_out"
expect_status survey-alike 1
expect_equal survey-alike-files whinchat-survey-survey.pdf "$(folder_list "$scratch/alike_out")"
grep -q 'whinchat-survey.pdf would be the file of this sheet and of the boat whinchat-survey' "$scratch/stderr" ||
    not_ok survey-alike-told "$(cat "$scratch/stderr")"

# ---- a sister ship that nobody walked round since her model was written ----

cp -R tests/islands "$scratch/sisters"
sed -i '/^walked:/d' "$scratch/sisters/boats/campion.yaml"
! cmp -s tests/islands/boats/campion.yaml "$scratch/sisters/boats/campion.yaml" || not_ok survey-sister-changed
maydeck check "$scratch/sisters" --boat campion --date "$print_date"
grep -q 'held: nobody has walked round her yet' "$scratch/stdout" || not_ok survey-sister-held "$(cat "$scratch/stdout")"
told=
for fleet in islands sisters; do
    [ $fleet = islands ] && folder=tests/islands || folder=$scratch/sisters
    maydeck survey "$folder" --boat campion --date "$print_date" -o "$scratch/walk_$fleet"
    expect_status "survey-of-$fleet" 0
    words_of "$scratch/walk_$fleet/campion-survey.pdf" >"$scratch/$fleet.words"
    grep -q 'not yet seen on this boat' "$scratch/$fleet.words" && told="$told$fleet "
done
expect_equal survey-sister-told 'sisters ' "$told"
expect_empty survey-sister-all "$(grep -v 'not yet seen\|Hold the record\|Hold all' "$scratch/islands.words" >"$scratch/islands.rest"
    grep -v 'not yet seen\|Hold the record\|Hold all' "$scratch/sisters.words" | diff - "$scratch/islands.rest")"

# ---- every boat that there is ----

"$BUILD/boats" 5 40 "$scratch/generated"
maydeck survey "$scratch/generated" --date "$print_date" -o "$scratch/of_generated"
expect_status survey-generated 0
expect_equal survey-generated-all 40 "$(folder_list "$scratch/of_generated" | wc -l)"

for fleet in fleet islands unusual hazard; do
    for paper in a4 letter; do
        maydeck survey tests/$fleet --paper $paper --date "$print_date" -o "$scratch/$fleet"
        expect_status "survey-$fleet-$paper" 0
        expect_empty "survey-$fleet-$paper-nothing-told" "$(cat "$scratch/stderr")"
    done
    expect_equal "survey-$fleet-all" "$(find tests/$fleet/boats -name '*.yaml' | wc -l)" \
        "$(find "$scratch/$fleet" -name '*-survey.pdf' | wc -l)"
done

# A whole record of some seventy pieces stands on a dozen sheets at most.
pages=$(pdfinfo "$scratch/fleet/tamarisk-survey.pdf" | sed -n 's/^Pages: *//p')
[ "$pages" -le 12 ] && ok survey-pages || not_ok survey-pages "$pages"
exit $failures
