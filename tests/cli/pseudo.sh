#!/bin/sh
# A made-up language: no words of a card are made outside the words of its language. The language
# qps is made from the English words and texts (tests/pseudo.awk), and all that the fleet prints
# in it is held against what may stand on a page as it is (tests/marked.awk).
. tests/tap.sh

tool=$scratch/tool
own=$tool/procedures
mkdir -p "$tool/out"
cp -R procedures "$tool/"
cp -R out/fonts "$tool/out/"
cp "$MAYDECK" "$tool/out/maydeck"
chmod -R u+w "$tool"
mkdir "$own/words/qps"
boats=$(for file in tests/fleet/boats/*.yaml; do basename "$file" .yaml; done | paste -s -d " ")

run() {
    # shellcheck disable=SC2086
    $WRAP "$tool/out/maydeck" "$@" >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# language_make [AWK-VARIABLE...]: the words of qps, as pseudo.awk makes them with those.
language_make() {
    for file in "$own"/words/en/*.yaml; do
        awk -v language=qps "$@" -f tests/pseudo.awk "$file" >"$own/words/qps/${file##*/}"
    done
    seal "$own"
}

# fleet_make FOLDER [AWK-VARIABLE...]: the fleet, the texts of its record in qps too, which comes
# first. What the rescue centre is called is said in English within a sentence of the language: it
# is left out.
fleet_make() {
    fleet=$scratch/$1
    shift
    mkdir -p "$fleet/boats"
    for file in base.yaml $(cd tests/fleet && echo boats/*.yaml); do
        awk -v language=qps -v record=1 "$@" -f tests/pseudo.awk "tests/fleet/$file" |
            sed -e 's/^languages: .*/languages: [qps, en]/' -e '/^  call: /d' >"$fleet/$file"
    done
}

# What each boat says on the radio, by each of her cards and of every nature.
scripts_said() {
    run call "$fleet" --boat "$1" --nature none_such
    natures=$(sed -n 's/^  remedy: natures of distress: //p' "$scratch/stderr" | tr -d ,)
    for nature in $natures; do
        run call "$fleet" --boat "$1" --nature "$nature"
        cat "$scratch/stdout"
    done
    for file in "$own"/*.yaml; do
        run call "$fleet" --boat "$1" --card "$(basename "$file" .yaml)"
        cat "$scratch/stdout"
    done
    run call "$fleet" --boat "$1" --spell
    cat "$scratch/stdout"
}

# What may stand on a page as it is in every language: names of the record, the list of sources,
# what is said on the radio.
facts_list() {
    # the longer names first: one may begin as another does
    sed -n 's/^ashore: {.*marina: \([^,]*\), berth: \([^,}]*\)}/name \1\nname \2/p' "$fleet/base.yaml"
    sed -n 's/^  name: *//p; s/^  - {name: \([^,]*\),.*/\1/p' "$fleet/base.yaml" "$fleet"/boats/*.yaml |
        sed 's/^/name /'
    echo 'spoken MILES'       # of a position told by a bearing, in the sheet's blanks alone
    sed -n 's/^  - {key: //p' procedures/sources.yaml |
        grep -oE '(issuer|id|tag): ("[^"]*"|[^,}]*)' |
        sed 's/^[a-z]*: //; s/^"\(.*\)"$/\1/; s/^/source /'
    for words in 'THIS IS' OVER; do
        scripts_said "${boats%% *}" | grep -q "$words" && echo "spoken $words"
    done
    for boat in $boats; do
        scripts_said "$boat" | grep -v '^$' | sort -u | sed "s/^/script $boat /"
    done
}

# fleet_print NAME: its pages as text in the folder of that name.
fleet_print() {
    run print "$fleet" --lang qps --dump --date "$print_date" -o "$scratch/$1"
}

# strangers FOLDER [AWK-VARIABLE...]: what stands on its pages and is none of the language.
strangers() {
    folder=$scratch/$1
    shift
    awk "$@" -f tests/item.awk -f tests/marked.awk "$scratch/facts" "$folder"/*.dump
}

# found NAME WORDS FOLDER [AWK-VARIABLE...]: what is wrong there is told.
found() {
    name=$1 words=$2
    shift 2
    strangers "$@" >"$scratch/strangers"
    grep -qF "$words" "$scratch/strangers" && ok "$name" ||
        not_ok "$name" "not told: $words" "$(head -5 "$scratch/strangers")"
}

# ---- as long as English: every page is printed ----

fleet_make same
language_make
fleet_print pages
expect_status pseudo-same 0
expect_equal pseudo-same-pages \
    "$(maydeck print tests/fleet --dump --date "$print_date" -o "$scratch/english" && folder_list "$scratch/english")" \
    "$(folder_list "$scratch/pages" | sed 's/\.qps\.dump$/.dump/')"
facts_list >"$scratch/facts"
for kind in name source spoken 'script bramble' 'script samphire' 'script tamarisk'; do
    grep -q "^$kind " "$scratch/facts" || not_ok "pseudo-facts-${kind##* }"
done
expect_empty pseudo-same-words "$(strangers pages)"

# The surveys too. Identities and the flag are the same in every language.
run survey "$fleet" --lang qps --dump --date "$print_date" -o "$scratch/surveys"
expect_status pseudo-survey 0
{
    sed -n 's/.*\(hex_id\|call_sign\|flag\): *"*\([^",}]*\).*/name \2/p' "$fleet"/boats/*.yaml
    cat "$scratch/facts"
} >"$scratch/survey_facts"
survey_strangers() {
    awk -f tests/item.awk -f tests/marked.awk "$scratch/survey_facts" "$scratch/$1"/*.dump
}
expect_empty pseudo-survey-words "$(survey_strangers surveys)"
run survey "$fleet" --lang qps --hull catamaran --dump --date "$print_date" -o "$scratch/new_survey"
expect_status pseudo-new-survey 0
expect_empty pseudo-new-survey-words "$(survey_strangers new_survey)"

# Its signs and tags are those of the English page.
signs_and_tags() {
    for page in "$scratch/$1"/*; do
        echo "${page##*/}" | sed 's/\.qps//'
        sed -n 's/^sign \([a-z ]*\) .* class=/sign \1 /p
            s/^text \([a-z ]*\) .* "\([FEC][0-9]*\)"$/tag \1 \2/p' "$page" | sort
    done
}
expect_equal pseudo-same-signs "$(signs_and_tags english)" "$(signs_and_tags pages)"

# The same words in the document as in its pages, and its title.
run print "$fleet" --lang qps --boat tamarisk --date "$print_date" -o "$scratch/document"
expect_status pseudo-document 0
file=$(echo "$scratch/document"/*.pdf)
pdfinfo "$file" | sed -n 's/^Title: *//p' >"$scratch/title"
grep -q '[Ѐ-ӿ]' "$scratch/title" && ! grep -q 'emergency\|cards' "$scratch/title" &&
    ok pseudo-document-title || not_ok pseudo-document-title "$(cat "$scratch/title")"

# ---- in brackets, words cut: every page is printed ----

fleet_make short -v tell_tale=λ
language_make -v longer=0 -v most=3 -v opens=‹ -v closes=› -v tell_tale=λ
fleet_print short_pages
expect_status pseudo-brackets 0
# Of a card that has a second side in one language and none in the other, both are its pages.
cards_list() {
    folder_list "$1" | sed 's/_[0-9]*\.dump$/.dump/' | sort -u
}
expect_equal pseudo-brackets-pages "$(cards_list "$scratch/pages")" "$(cards_list "$scratch/short_pages")"
expect_empty pseudo-brackets-words "$(strangers short_pages -v opens=‹ -v closes=› -v tell_tale=λ)"

# With brackets that reach higher and lower than letters some pages have no room: by how much is
# told.
fleet=$scratch/short
language_make -v longer=0 -v most=3 -v tell_tale=λ
fleet_print square_pages
expect_empty pseudo-square-words "$(strangers square_pages -v opens=[ -v closes=] -v tell_tale=λ)"
expect_empty pseudo-square-by-how-much "$(grep ': error: ' "$scratch/stderr" |
    grep -v ' [0-9]*\.[0-9]* mm \|covered by what is painted later')"
language_make -v longer=0 -v most=3 -v opens=‹ -v closes=› -v tell_tale=λ

# ---- what the check tells ----

# spoilt FOLDER FROM SED-SCRIPT: a folder of pages in which one line was changed.
spoilt() {
    mkdir -p "$scratch/$1"
    for page in "$scratch/$2"/*; do
        sed "$3" "$page" >"$scratch/$1/${page##*/}"
    done
    ! diff -rq "$scratch/$2" "$scratch/$1" >/dev/null || not_ok "pseudo-$1-changed" "no change: $3"
}

# A word of English in a words file; one that two words of the language stand for.
sed -i 's/^  plan_bow: .*/  plan_bow: BOW/; s/^  replace: .*/  replace: "Аnew, sооn."/' "$own/words/qps/words.yaml"
seal "$own"
fleet_print english_word
expect_status pseudo-english-word 0
found pseudo-english-word-told 'a word of another language, BOW, in "BOW"' english_word
found pseudo-no-brackets-told 'a word without brackets, sооn, in "' english_word \
    -v opens=‹ -v closes=› -v tell_tale=λ
# What is joined behind the words; a name at no boat's place; what is said on the radio, elsewhere;
# a source elsewhere; another code.
spoilt joined pages 's/\(role=headline .*\)"$/\1, port"/'
found pseudo-joined-told 'a word of another language, port,' joined
spoilt part pages 's/Skerry Sound/Skerry/'
found pseudo-part-of-name-told 'a word of another language, Skerry,' part
spoilt elsewhere pages 's/^text call \(.*\) role=script \(.*"I REQUIRE\)/text steps \1 role=row \2/'
found pseudo-elsewhere-told 'a word of another language, REQUIRE,' elsewhere
spoilt source pages 's/role=source_tag/role=box/'
found pseudo-source-told 'a word of another language, USCG,' source
spoilt said pages 's/"THIS IS"/"THAT IS"/'
found pseudo-said-told 'a word of another language, THAT,' said
spoilt open short_pages 's/›"$/"/'
found pseudo-open-told 'brackets that do not close' open -v opens=‹ -v closes=› -v tell_tale=λ
mkdir "$scratch/nothing"
echo 'page none qps 1x1 ""' >"$scratch/nothing/none.qps.dump"
found pseudo-nothing-told 'no words were judged' nothing

# ---- a third longer: what is held says by how much ----

fleet_make longer -v opens=‹ -v closes=› -v tell_tale=λ
language_make -v longer=33 -v opens=‹ -v closes=› -v tell_tale=λ
printf 'proof:\n  longer: 33\n' >>"$own/words/qps/words.yaml"
seal "$own"
mkdir "$scratch/longer_pages"
for boat in $boats; do
    run print "$fleet" --lang qps --boat "$boat" --dump --date "$print_date" -o "$scratch/longer_pages"
    cp "$scratch/stderr" "$scratch/longer.$boat"
    expect_empty "pseudo-longer-by-how-much-$boat" \
        "$(grep ': error: ' "$scratch/longer.$boat" | grep -v ' [0-9]*\.[0-9]* mm ')"
    # Each page of her is printed or told, by its card's number.
    for page in "$scratch/pages/$boat"-*; do
        number=$(sed -n 's/^text title .*role=boat .*"C[^ ]* \([0-9]*[A-Z]*\)\( .*\)\{0,1\}"$/\1/p' "$page")
        card=$(echo "${page##*/}" | sed 's/_[0-9]*\.dump$/.dump/')
        [ -n "$number" ] || not_ok "pseudo-longer-number-${page##*/}"
        [ -f "$scratch/longer_pages/$card" ] ||
            grep -q ": error: \(‹\)*$number .* mm " "$scratch/longer.$boat" ||
            not_ok "pseudo-longer-${page##*/}" "$(head -5 "$scratch/longer.$boat")"
    done
done
# Of a hundred pages eighty-five are printed; a card may have a second side.
printed=0 wanted=0
for page in "$scratch"/pages/*; do
    wanted=$((wanted + 1))
    [ ! -f "$scratch/longer_pages/${page##*/}" ] || printed=$((printed + 1))
done
if [ "$((printed * 100))" -ge "$((wanted * 85))" ] && [ "$wanted" -gt 0 ]; then
    ok pseudo-longer-printed
else
    not_ok pseudo-longer-printed "$printed of $wanted pages"
fi
if [ -n "$(folder_list "$scratch/longer_pages")" ]; then
    expect_empty pseudo-longer-words "$(strangers longer_pages -v opens=‹ -v closes=› -v tell_tale=λ)"
fi

# ---- accents above and below capitals, in a title on two lines ----

fleet=$scratch/same
language_make

# two_lines FIRST SECOND: the title of a card of one engine space.
two_lines() {
    sed -i "s/^title: .*/title: \"$1\"/" "$own/words/qps/engine_fire.yaml"
    sed -i "s/^  space_port: .*/  space_port: \"$2\"/" "$own/words/qps/words.yaml"
    seal "$own"
    run print "$fleet" --lang qps --boat samphire --card engine_fire_port --dump --date "$print_date" \
        -o "$scratch/two_lines"
}
two_lines 'ЁЙ fіre thаt іs lоng' 'PОRT ЕNGINE'
expect_status pseudo-accents-above 0
two_lines 'Fіre thаt іs lоng' 'PОRT ЦЩ'
expect_status pseudo-accents-below 0
two_lines 'ЁЙ fіre thаt іs lоng' 'PОRT ЦЩ'
expect_status pseudo-accents-both 1
grep -q 'engine_fire.yaml:[0-9:]* error: 3P .*(qps): the title on two lines is [0-9.]* mm too tall' "$scratch/stderr" &&
    ok pseudo-accents-told || not_ok pseudo-accents-told "$(cat "$scratch/stderr")"

# ---- a base that prints in it, and words that are not complete ----

fleet=$scratch/same
language_make
run print "$fleet" --dump --date "$print_date" -o "$scratch/by_base"
expect_status pseudo-by-base 0
expect_empty pseudo-by-base-pages "$(diff -r "$scratch/pages" "$scratch/by_base")"
cp "$own/words/qps/words.yaml" "$scratch/words.yaml"

# refused NAME SED-SCRIPT WORDS: the words so changed print nothing in any language, and it is told
# where they are wrong.
refused() {
    sed "$2" "$scratch/words.yaml" >"$own/words/qps/words.yaml"
    ! cmp -s "$scratch/words.yaml" "$own/words/qps/words.yaml" ||
        not_ok "pseudo-$1-changed" "no change: $2"
    seal "$own"
    for language in qps en; do
        run print "$fleet" --lang "$language" --dump --date "$print_date" -o "$scratch/refused_$1"
        [ "$status" -ne 0 ] || not_ok "pseudo-$1-$language"
        grep -q "words/qps/words\.yaml:[0-9]*:[0-9]*: error: .*$3" "$scratch/stderr" &&
            grep -q '^  remedy: ' "$scratch/stderr" && ok "pseudo-$1-$language-told" ||
            not_ok "pseudo-$1-$language-told" "not told: $3" "$(cat "$scratch/stderr")"
    done
    [ ! -d "$scratch/refused_$1" ] || expect_empty "pseudo-$1-pages" "$(folder_list "$scratch/refused_$1")"
}
refused missing '/^  plan_bow:/d' 'needs the key "plan_bow"'
refused stranger 's/^  plan_bow:/  plan_stem: A\n&/' 'has no key "plan_stem"'
refused name 's/^  radio_at: .*/  radio_at: "{tag}"/' 'radio_at does not say {place}'
refused other-name 's/^  radio_at: .*/  radio_at: "{tag} {place} {side}"/' 'radio_at has no {name} such as {side}'
refused item '/^  knife:/d' 'needs the key "knife"'
refused zone '/^  galley:/d' 'needs the key "galley"'
refused set '/^  units:/d' 'the section reading needs the key "units"'
refused folder 's/^language: .*/language: en/' 'language is "en", but the file lies in the folder qps'

# ---- no C knows it ----

expect_empty pseudo-unknown-to-c "$(grep -rl qps src include)"
exit $failures
