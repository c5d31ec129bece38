# marked.awk - whether all words of pages stand in the made-up language of pseudo.awk: each has a
# letter of Greek or Cyrillic and stands in brackets. Tells those that do not.
#
#   awk [-v opens=[ -v closes=] [-v tell_tale=λ]] -f tests/item.awk -f tests/marked.awk FACTS DUMP...
#
# Without `opens` brackets are not asked for; words with `tell_tale` in them are of the
# record, and need none. A DUMP is called BOAT-CARD.qps.dump. What may stand
# on a page as it is in every language: numbers, with a letter behind them (card 3P), tags (E4, or E
# for those of a class in a legend or label), the check code in its place, and what FACTS names, a line each:
#
#   name TEXT          a name of the record
#   source TEXT        of the list of sources: may stand where sources are named
#   spoken TEXT        said on the radio: may stand in a sentence of a script
#   script BOAT TEXT   a line of what she says on the radio, in capitals; may stand in scripts

# Capitals and single spaces, for a comparison.
function plain(text) {
    text = toupper(text)
    gsub(/[^A-Z0-9]+/, " ", text)
    gsub(/^ +| +$/, "", text)
    return " " text " "
}

function script_add(line,    boat, parts, count, i) {
    boat = substr(line, 1, index(line, " ") - 1)
    line = substr(line, length(boat) + 2)
    sub(/^[^:]*: /, "", line)      # which call it is, in the words of the language
    count = split(line, parts, / *____ \([^)]*\) */)
    for (i = 1; i <= count; i++) said[boat] = said[boat] "|" plain(parts[i])
}

function fact_add(line) {
    if (sub(/^name /, "", line)) names[++name_count] = plain(line)
    else if (sub(/^spoken /, "", line)) spoken[++spoken_count] = line
    else if (sub(/^source /, "", line)) sources[++source_count] = plain(line)
    else if (sub(/^script /, "", line)) script_add(line)
    else { print FILENAME ": no fact: " line; exit 1 }
}

# Is it what the boat says on the radio, or part of it? In capitals, words of one line in their
# order.
function is_script(text) {
    return text ~ /[A-Z]/ && text !~ /[a-z\315-\323]/ && index(said[boat], plain(text)) > 0
}

# The text without what stands in it as a whole: names, and what is said on the radio.
function names_removed(text,    i, at, shown) {
    for (i = 1; i <= name_count; i++) {
        shown = substr(names[i], 2, length(names[i]) - 2)
        while (at = index(toupper(text), shown))
            text = substr(text, 1, at - 1) " " substr(text, at + length(shown))
    }
    for (i = 1; role == "script" && i <= spoken_count; i++)
        if (at = index(text, spoken[i]))
            text = substr(text, 1, at - 1) " " substr(text, at + length(spoken[i]))
    return text
}

# Does the word stand among the sources?
function is_of_source(word,    i) {
    for (i = 1; i <= source_count; i++)
        if (index(sources[i], plain(word))) return 1
    return 0
}

function tell(what) { print page ": " block ": " what " in \"" text "\"" }

function word_judge(word) {
    if (word ~ /^[0-9]+[A-Z]?$/ || word ~ /^[FEC][0-9]+$/) return
    if (role == "plan_tag" && text ~ /^[FEC]$/) return
    if (role == "source_tag" && is_of_source(word)) return
    if (word !~ /[\315-\323]/) tell("a word of another language, " word ",")
    else if (opens != "" && depth == 0 && (tell_tale == "" || !index(word, tell_tale)))
        tell("a word without brackets, " word ",")
}

function words_judge(words) {
    if (opens != "") {
        while (match_at = index(words, opens))
            words = substr(words, 1, match_at - 1) "\001" substr(words, match_at + length(opens))
        while (match_at = index(words, closes))
            words = substr(words, 1, match_at - 1) "\002" substr(words, match_at + length(closes))
    }
    gsub(/\342[\200-\277][\200-\277]|\302[\200-\277]/, " ", words)
    while (match(words, /\001|\002|[0-9A-Za-z\200-\377]+/)) {
        token = substr(words, RSTART, RLENGTH)
        words = substr(words, RSTART + RLENGTH)
        if (token == "\001") depth++
        else if (token == "\002") depth--
        else word_judge(token)
    }
}

function block_end() {
    if (depth != 0) print page ": " block_before ": brackets that do not close"
    depth = 0
}

BEGIN { depth = 0 }
FNR == 1 && NR > 1 {
    block_end()
    page = FILENAME
    sub(/.*\//, "", page)
    boat = page
    sub(/-.*/, "", boat)
    block_before = ""
}
FNR == NR { fact_add($0); next }
$1 == "page" {
    block = "title of the page"
    role = ""
    text = substr($0, index($0, "\"") + 1)
    sub(/"$/, "", text)
    words_judge(names_removed(text))
    block_end()
    next
}
$1 == "text" {
    item_read()
    if (block != block_before) block_end()
    block_before = block
    seen++
    if (role == "code" && text ~ /^[0-9A-Z][0-9A-Z][0-9A-Z][0-9A-Z]-[0-9A-Z][0-9A-Z][0-9A-Z][0-9A-Z]$/) next
    if (role == "script" && is_script(text)) next
    words_judge(names_removed(text))
}
END {
    block_end()
    if (!seen) print "no words were judged"
}
