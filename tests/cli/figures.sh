#!/bin/sh
# Figures computed from the record: what `why --figure` tells, that only what may be
# printed reaches a card, and that a figure goes with its inputs.
. tests/tap.sh

maydeck print tests/fleet --dump --date "$print_date" -o "$scratch/dumps"
expect_status figures-printed 0

# figures_list BOAT: lines "id<TAB>verdict<TAB>what<TAB>text" from why; what is card, room
# or rounded.
figures_list() {
    maydeck why --figure all tests/fleet --boat "$1" --date "$print_date"
    awk '
        /^Figure / { id = $2; sub(/,$/, "", id); verdict = ""; at = ""; next }
        /^   verdict: / { verdict = $2; sub(/,$/, "", verdict) }
        /^      / { sub(/^ */, " "); if (at != "") text = text $0; next }
        at != "" { print id "\t" verdict "\t" at "\t" text; at = "" }
        /^   on the card / { at = "card"; text = $0; sub(/.*on the card [0-9A-Z,: ]*: /, "", text) }
        /^   no room on / { at = "room"; text = $0; sub(/.*the card [A-Z,: ]*: /, "", text) }
        /^   rounded: / { at = "rounded"; text = $0; sub(/^ *rounded: /, "", text) }
        END { if (at != "") print id "\t" verdict "\t" at "\t" text }' "$scratch/stdout"
}

tab=$(printf '\t')
shown=0
hidden=0
yielded=0
for record in tests/fleet/boats/*.yaml; do
    boat=$(basename "$record" .yaml)
    figures_list "$boat" >"$scratch/$boat.figures"
    : >"$scratch/$boat.words"
    for dump in "$scratch/dumps/$boat"-*.dump; do
        page_words "$dump" >>"$scratch/$boat.words"
        echo >>"$scratch/$boat.words"
    done

    expect_empty "figures-$boat-verdicts" \
        "$(awk -F '\t' '$3 == "card" && $2 != "F" && $2 != "A"' "$scratch/$boat.figures")"

    # What stands on a card stands on its page, or check tells that the page had no room for
    # it; what found no room among the rows does not.
    maydeck check tests/fleet --boat "$boat" --date "$print_date"
    sed -n 's/.*note: the figure \([a-z_]*\) finds no room on the card.*/\1/p' "$scratch/problems" \
        >"$scratch/$boat.yielded"
    while IFS=$tab read -r id verdict what text; do
        case $what in
        card)
            if grep -qF -- "$text" "$scratch/$boat.words"; then
                shown=$((shown + 1))
            elif grep -qx "$id" "$scratch/$boat.yielded"; then
                yielded=$((yielded + 1))
            else
                not_ok "figures-$boat-$id-printed" "$text"
            fi ;;
        room)
            ! grep -qF -- "$text" "$scratch/$boat.words" ||
                not_ok "figures-$boat-$id-left-out" "$text" ;;
        rounded)
            case $verdict in
            B | N)
                ! grep -qF -- "$text" "$scratch/$boat.words" ||
                    not_ok "figures-$boat-$id-hidden" "$text"
                hidden=$((hidden + 1)) ;;
            esac ;;
        esac
    done <"$scratch/$boat.figures"

    # What the verdicts forbid, in the words it might have.
    expect_empty "figures-$boat-forbidden" "$(grep -oiE \
        'L/min|pumps (cope|hold|keep up)|will float|sinks? in|surviv|drifts? [0-9]|[0-9]+ hours' \
        "$scratch/$boat.words")"
done
[ "$shown" -ge 5 ] && ok figures-shown || not_ok figures-shown "$shown figures on cards"
[ "$yielded" -ge 1 ] && ok figures-yielded || not_ok figures-yielded 'no page was short of room'
[ "$hidden" -ge 6 ] && ok figures-hidden || not_ok figures-hidden "$hidden figures for the office"

# At most two a card, and each estimate says so.
expect_empty figures-two-a-card "$(for dump in "$scratch"/dumps/*.dump; do
    page_words "$dump" | grep -o '(estimated)' | wc -l |
        awk -v page="$dump" '$1 > 2 { print page, $1 }'
done)"
awk -F '\t' '$3 == "card" && $2 == "A" && $1 != "discharge" && $1 !~ /_range$/ &&
    $4 !~ /\(estimated\)/' "$scratch"/*.figures >"$scratch/unlabelled"
expect_empty figures-labelled "$(cat "$scratch/unlabelled")"

# ---- one figure ----

maydeck why --figure beat_pumps tests/fleet --boat tamarisk --date "$print_date"
cp "$scratch/stdout" "$scratch/one"
expect_equal figures-one 1 "$(grep -c '^Figure ' "$scratch/one")"
for part in '^   verdict: A' '^   formula: ' '^   source: pump tests of boating associations' \
    '^   assumed, so estimated: Cd 0.80' '^   result: pumps 119.2 L/min' '^   rounded: ' \
    '^   read: seacock C15 bore_mm = 38 at tests/fleet/boats/tamarisk.yaml:[0-9]*$' \
    '^   on no card: what is not named seems safe'; do
    grep -q "$part" "$scratch/one" && ok figures-one-tells || not_ok figures-one-tells "$part"
done
line=$(sed -n 's/.*seacock C15 bore_mm = 38 at .*:\([0-9]*\)$/\1/p' "$scratch/one")
sed -n "${line}p" tests/fleet/boats/tamarisk.yaml | grep -q 'tag: C15,.*bore_mm: 38' &&
    ok figures-one-line || not_ok figures-one-line "line $line"
maydeck why --figure all tests/fleet --boat bramble --date "$print_date"
expect_equal figures-all "$(grep -c '{\.id = ' src/figure/figure_table.c)" \
    "$(grep -c '^Figure ' "$scratch/stdout")"

# ---- for the base alone ----

maydeck check tests/fleet --boat tamarisk --date "$print_date"
expect_empty figures-base-unasked "$(grep 'figures for the base' "$scratch/stdout")"
maydeck check tests/fleet --boat tamarisk --date "$print_date" --figures
cp "$scratch/stdout" "$scratch/base"
for part in '^tamarisk: figures for the base and the skipper, on no card' \
    '^   pump_rate: all pumps: 110 L/min$' '^      formula: measured, else half the label' \
    '^      read: bilge_pump_electric C9 rated_lph = 12000; bilge_pump_manual C10 stroke_l = 0.8$' \
    '^   largest_hole: 30 mm$' '^   sinkage: 4 cm for 1000 L$' '^   agent_mass: HFC-227ea 1.5 kg' \
    '^   shelters: Inner Skerry Pool (specimen) 6.1 nm, 052 T (048 M); '; do
    grep -q "$part" "$scratch/base" && ok figures-base || not_ok figures-base "$part"
done
expect_empty figures-base-others "$(grep -E '^   (us_outfit|beat_pumps|inflow):' "$scratch/base")"
! grep -qE 'Inner Skerry Pool|Thornback Quay' "$scratch"/*.words && ok figures-shelters-no-card ||
    not_ok figures-shelters-no-card
maydeck why --figure shelters tests/fleet --boat tamarisk --date "$print_date"
line=$(sed -n 's/.*shelter Thornback Quay .* = .* at tests\/fleet\/base.yaml:\([0-9]*\)$/\1/p' \
    "$scratch/stdout")
sed -n "${line:-1}p" tests/fleet/base.yaml | grep -q 'name: Thornback Quay' &&
    ok figures-shelters-line || not_ok figures-shelters-line "line $line"
grep -q '^   on no card: they start from the berths' "$scratch/stdout" &&
    ok figures-shelters-why || not_ok figures-shelters-why "$(cat "$scratch/stdout")"

# ---- an input taken away ----

# gone BOAT WHAT SED ID CARD WORDS NOTE: with the record changed so, the card keeps its steps,
# loses the words, and check notes the field without failing for it.
gone() {
    boat=$1
    shift
    rm -rf "$scratch/fleet" "$scratch/now"
    cp -R tests/fleet "$scratch/fleet"
    sed "$2" "tests/fleet/boats/$boat.yaml" >"$scratch/fleet/boats/$boat.yaml"
    ! cmp -s "tests/fleet/boats/$boat.yaml" "$scratch/fleet/boats/$boat.yaml" ||
        not_ok "figures-gone-$1-changed"
    maydeck print "$scratch/fleet" --boat "$boat" --dump --date "$print_date" -o "$scratch/now"
    page_words "$scratch/dumps/$boat-$4.dump" | grep -qF "$5" ||
        not_ok "figures-gone-$1-before" "$5"
    page_words "$scratch/now/$boat-$4.dump" >"$scratch/page"
    ! grep -qF "$5" "$scratch/page" && ok "figures-gone-$1" || not_ok "figures-gone-$1" "$5"
    expect_equal "figures-gone-$1-steps" \
        "$(grep -c 'role=number' "$scratch/dumps/$boat-$4.dump")" \
        "$(grep -c 'role=number' "$scratch/now/$boat-$4.dump")"
    maydeck check "$scratch/fleet" --boat "$boat" --date "$print_date"
    cp "$scratch/problems" "$scratch/notes"
    grep -q "note: $6 is not recorded: the figures\{0,1\} .*$3.* waits\{0,1\} for it" \
        "$scratch/notes" || not_ok "figures-gone-$1-note" "$(cat "$scratch/notes")"
    grep -q "then record ${6%% *} (" "$scratch/notes" || not_ok "figures-gone-$1-remedy"
}

gone bramble bore '/tag: C12,/s/bore_mm: 25, //' worst_openings flooding 'Most water' \
    'bore_mm of seacock C12'
gone tamarisk speed '/usual_kn/d' distance_run man_overboard 'At 6 knots' 'usual_kn of boat'
gone tamarisk seconds '/tag: F3,/s/discharge_s: 9, //' discharge galley_fire 'lasts 9 s' \
    'discharge_s of fire_extinguisher F3'

# ---- no room ----

# cards_list DUMP...: the pages, but for backs; of the safety plan, which takes as many pages as
# its lines need, one.
cards_list() {
    grep -L '^text title .* "Card [0-9A-Z]* back"$' "$@" |
        sed 's,.*/,,; s/\(-safety_plan\)_[0-9]*\.dump$/\1.dump/' | sort -u
}

# tight NAME SCRIPT: her flooding page with that script run over her record; every card of
# hers prints and no step is lost.
tight() {
    cp -R tests/fleet/. "$scratch/fleet"
    sed "$2" tests/fleet/boats/tamarisk.yaml >"$scratch/fleet/boats/tamarisk.yaml"
    rm -rf "$scratch/now"
    maydeck print "$scratch/fleet" --boat tamarisk --dump --date "$print_date" -o "$scratch/now"
    expect_status "figures-$1" 0
    # a card that has less room may take its back, the plan a page more
    expect_equal "figures-$1-cards" "$(cards_list "$scratch/dumps"/tamarisk-*.dump)" \
        "$(cards_list "$scratch/now"/*.dump)"
    expect_equal "figures-$1-steps" "$(grep -c 'role=number' "$scratch/dumps/tamarisk-flooding.dump")" \
        "$(grep -c 'role=number' "$scratch/now/tamarisk-flooding.dump")"
    page_words "$scratch/now/tamarisk-flooding.dump" >"$scratch/page"
    maydeck check "$scratch/fleet" --boat tamarisk --date "$print_date"
    expect_status "figures-$1-check" 0
}

# Whether the pumps win stands on no card: what is not named there would seem safe. `why` tells it.
tight tight 's/rated_lph: 12000/rated_lph: 6000/'
expect_empty figures-comfort-none "$(cat "$scratch"/dumps/*.dump "$scratch/page" | grep -i 'pumps.* lose')"
maydeck why --figure beat_pumps "$scratch/fleet" --boat tamarisk --date "$print_date"
grep -qE '^   rounded: more than the pumps move: .*C13.*C15' "$scratch/stdout" && ok figures-comfort-why ||
    not_ok figures-comfort-why "$(cat "$scratch/stdout")"
maydeck why --figure worst_openings tests/fleet --boat tamarisk --date "$print_date"
grep -q '^   on the card 7 FLOODING: ' "$scratch/stdout" && ok figures-on-card ||
    not_ok figures-on-card "$(cat "$scratch/stdout")"

# With places of many words beside it the figure yields, and that is told.
tight tighter 's/zone: navigation_station, spot: panel/zone: navigation_station, spot: behind the folding door of the whole chart table/'
! grep -qF 'Most water' "$scratch/page" && ok figures-tighter || not_ok figures-tighter "$(cat "$scratch/page")"
grep -q 'note: the figure worst_openings finds no room on the card 7 FLOODING' "$scratch/problems" &&
    ok figures-tighter-note || not_ok figures-tighter-note "$(cat "$scratch/problems")"
exit $failures
