#!/bin/sh
# A new card: a file of logic and its texts, no change of the program. It appears on the boats
# it is for, every other page stays as it was, and what is missing in one language stops all.
. tests/tap.sh

tool=$scratch/tool
own=$tool/procedures
mkdir -p "$tool/out"
cp -R procedures "$tool/"
cp -R out/fonts "$tool/out/"
cp "$MAYDECK" "$tool/out/maydeck"
chmod -R u+w "$tool"

# run ARGUMENT...: the copy of the program, its texts sealed as they are.
run() {
    seal "$own"
    # shellcheck disable=SC2086
    $WRAP "$tool/out/maydeck" "$@" >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

dumped() {
    folder=$1
    run print tests/fleet --dump --date "$print_date" -o "$scratch/$folder"
}

# told NAME WORDS: a message with a remedy says so.
told() {
    grep -qF "$2" "$scratch/stderr" && grep -q '^  remedy: ' "$scratch/stderr" && ok "$1" ||
        not_ok "$1" "not told: $2" "$(cat "$scratch/stderr")"
}

# others_same NAME FOLDER: every page that was there before is there and says the same, but for the
# plan of the boat, which is that of the whole set and leaves the column beside it more room or
# less, and the index of cards on the safety plan.
others_same() {
    expect_empty "$1" "$(for page in "$scratch/before"/*; do
        page_words_but_plan "$page" >"$scratch/one"
        page_words_but_plan "$scratch/$2/${page##*/}" >"$scratch/other"
        [ -s "$scratch/one" ] && cmp -s "$scratch/one" "$scratch/other" || echo "${page##*/}"
    done)"
}

dumped before
expect_status new-card-before 0

# ---- the logic alone ----

cat >"$own/lines_cross.yaml" <<'LOGIC'
# Invented for this test.
procedure: lines_cross
number: 59
symbol: anchor
stripe: control
seen_as: boat
when: {fitted: anchor_main}
call_when: {}
steps:
  - id: look
    practice: yes
  - id: stop
    cases:
      - {id: two_engines, when: {boat: catamaran}}
      - {id: one_engine}
    lethal: [line]
    practice: yes
  - id: cut
    also: [knife, torch]
    practice: yes
decision:
  after: stop
  yes: {card: abandon_ship}
  no: {}
  practice: yes
cautions:
  - {id: early, sources: [S37]}
calls:
  - {signal: pan_pan, say: "MY ANCHOR LINES ARE CROSSED", assist: I REQUIRE A TOW, from: fixed}
LOGIC
dumped alone
expect_status new-card-alone 1
told new-card-alone-told "lines_cross.yaml: error: the procedure has no texts in the language en"
told new-card-alone-mend "write $own/words/en/lines_cross.yaml, then run"
expect_empty new-card-alone-pages "$(folder_list "$scratch/alone")"

# ---- with its texts ----

cat >"$own/words/en/lines_cross.yaml" <<'TEXTS'
procedure: lines_cross
title: Anchor lines cross
subject: LINES CROSS
signs: [Boats swing together, chain jerks]
seen: [Our anchor line crosses]
when_reason: A boat without an anchor crosses no line.
call_when: "NOT HOLDING? Call after step {stop}."
steps:
  look:
    act: "**LOOK** at two marks in one line."
    because: The eye is quicker than any alarm.
  stop:
    cases:
      two_engines: {act: "**BOTH ENGINES ON.** Slow ahead."}
      one_engine: {act: "**ENGINE ON.** Slow ahead."}
    lethal:
      line: "Ropes in the water? Out first."
  cut:
    act: "**LET GO** the chain if you must."
decision:
  ask: rocks close, and no engine?
  yes: Leave in good time.
  no: Anchor again, farther out.
cautions:
  early: Go before your strength is gone.
TEXTS
dumped more
expect_status new-card-more 0
expect_equal new-card-pages \
    "bramble-lines_cross.dump samphire-lines_cross.dump tamarisk-lines_cross.dump" \
    "$(for page in "$scratch/more"/*; do
        [ -f "$scratch/before/${page##*/}" ] || echo "${page##*/}"
    done | paste -s -d ' ')"
others_same new-card-others more
grep -q '"Our anchor line crosses"' "$scratch/more"/tamarisk-safety_plan*.dump ||
    not_ok new-card-index
grep -q '"Card 59"' "$scratch/more/bramble-lines_cross.dump" || not_ok new-card-number
grep -q '"ENGINE ON."' "$scratch/more/tamarisk-lines_cross.dump" &&
    grep -q '"BOTH ENGINES ON."' "$scratch/more/samphire-lines_cross.dump" &&
    ok new-card-cases || not_ok new-card-cases
run why tests/fleet --boat tamarisk --card lines_cross --date "$print_date"
grep -q "/procedures/words/en/lines_cross\.yaml:10$" "$scratch/stdout" &&
    grep -q "step look at .*/procedures/lines_cross\.yaml:10$" "$scratch/stdout" &&
    ok new-card-why || not_ok new-card-why "$(cat "$scratch/stdout")"
run call tests/fleet --boat tamarisk --card lines_cross
grep -q 'MY ANCHOR LINES ARE CROSSED' "$scratch/stdout" && ok new-card-call || not_ok new-card-call

# ---- in another language, too ----

cp -R "$own/words/en" "$own/words/xx"
sed -i 's/^language: en/language: xx/' "$own/words/xx/words.yaml"
dumped both
expect_status new-card-both 0
others_same new-card-both-others both
rm "$own/words/xx/lines_cross.yaml"
dumped gone
expect_status new-card-gone 1
told new-card-gone-told 'the procedure has no texts in the language xx'

# What one language lacks or says otherwise; each tried alone.
# fault NAME SCRIPT WORDS
fault() {
    sed "$2" "$own/words/en/lines_cross.yaml" >"$own/words/xx/lines_cross.yaml"
    ! cmp -s "$own/words/en/lines_cross.yaml" "$own/words/xx/lines_cross.yaml" ||
        not_ok "new-card-$1-changed" "no change: $2"
    dumped "$1"
    expect_status "new-card-$1" 1
    grep -q "words/xx/lines_cross\.yaml:[0-9]*:[0-9]*: error: " "$scratch/stderr" ||
        not_ok "new-card-$1-place" "$(cat "$scratch/stderr")"
    told "new-card-$1-told" "$3"
    expect_empty "new-card-$1-pages" "$(folder_list "$scratch/$1")"
}
fault id '/^  look:/,/because:/d' 'a set of texts under steps needs the key "look"'
fault case '/two_engines:/d' 'a set of texts under cases needs the key "two_engines"'
fault because '/because:/d' 'because is given in only one of the languages en and xx'
fault stranger 's/^  early:/  erly: A\n&/' 'has no key "erly"'
fault name 's/{stop}/{look}/' 'call_when has {look}, which it has not in the first language'
fault signs 's/^signs: .*/signs: [Boats swing]/' 'signs has 1 entries, and 2 in the language en'
fault seen 's/^seen: .*/seen: [Lines cross, Chain jerks]/' 'seen has 2 entries, and 1 in the language en'
fault unseen '/^seen: /d' 'a file of texts needs the key "seen"'
fault logic 's/^  cut:/&\n    uses: [knife]/' 'only texts stand here'

# ---- the reference ----

run help procedure
expect_status new-card-help 0
for key in $(sed -n 's/^ *\(- \)\{0,1\}\([a-z_]*\):.*/\2/p' "$own/lines_cross.yaml" | sort -u); do
    grep -qE "^  ([a-z_]*/)*$key( |\$)" "$scratch/stdout" || not_ok "new-card-help-$key"
done
exit $failures
