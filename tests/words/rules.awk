# The rules that the words of the cards keep, over lines of tests/words/texts.awk; each break
# is told: `FILE:LINE: RULE: TEXT`.
#
#   awk -v terms=tests/words/terms.txt -v verbs=FILE -f tests/words/rules.awk TEXTS
#
# out: of a fire that is dead only; people go on deck, or ashore; but how a fender, a sail or a
# drogue is left, the word of that state alone. cut: rope and line only;
# power is turned off. leave: what people do; gear is not touched. upright: it does not tell
# which way a lever goes. verb: what is to be done begins with a verb. sentence: what must never be
# done is a whole sentence behind the word Never. term: an object has one name.

BEGIN {
    while ((getline line < verbs) > 0)
        is_verb[line] = 1
    while ((getline line < terms) > 0)
        if (line !~ /^#/ && line !~ /^ *$/) {
            sub(/^[^:]*: */, "", line)
            count = split(tolower(line), names, / *, */)
            for (i = 2; i <= count; i++)
                term_for[names[i]] = names[1]
        }
}

# Words with a space about each; every mark that ends a sentence or part of one stands as a dot.
function plain(text) {
    text = tolower(text)
    gsub(/[.?!:;|]/, " . ", text)
    gsub(/[,()\/="]|“|”/, " ", text)
    gsub(/ +/, " ", text)
    return " " text " "
}

function told(rule) {
    print place ": " rule ": " text
    breaks++
}

function out_rule(words,    i, count, parts) {
    count = split(words, parts, " [.] ")
    for (i = 1; i <= count; i++) {
        part = " " parts[i] " "
        if (part ~ / out / && part !~ / put out ([a-z]+ )*(flames?|fires?) / &&
            part !~ / (fires?|flames?) (is |are )?out /)
            return 1
    }
    return 0
}

function leave_rule(words) {
    if (words ~ / leaving (it|them|this|these|the [a-z]+) / && words !~ / leaving the boat /)
        return 1
    gsub(/ leaves? ([.] |unless |only |when |until |at sea |the boat |the berth )/, " ", words)
    return words ~ / leaves? [^ ]/
}

function first_word(words) {
    sub(/^[ .]+/, "", words)
    sub(/ .*$/, "", words)
    return words
}

# "LIFEJACKETS ON.", "BOTH ENGINES OFF.": what gear is turned to tells what to do.
function ends_on_or_off(words) {
    return words ~ /^ ?[^.]* (on|off) ?([.]|$)/
}

# "Cover stays." tells how a thing is, not what to do.
function begins_with_verb(words,    word) {
    word = first_word(words)
    if (word == "don’t")
        word = first_word(substr(words, index(words, "don’t") + length("don’t")))
    return word in is_verb && words !~ /^[ .]*[^ ]+ (stays|is|are|has) /
}

# A question, or a case with a colon, may stand before what is done.
function verb_rule(raw,    clause, rest) {
    for (rest = raw; rest != ""; ) {
        clause = rest
        sub(/,.*$/, "", clause)
        if (begins_with_verb(plain(rest)) || ends_on_or_off(plain(clause)))
            return 0
        if (rest !~ /^[^.?:!]+[?:] +[^ ]/)
            return 1
        sub(/^[^.?:!]+[?:] +/, "", rest)
    }
    return 1
}

function sentence_rule(raw) {
    return raw !~ /^[a-z].*[.]$/ || raw ~ /[.?!] / || plain(raw) ~ / (never|don’t|not to) / ||
           !(first_word(plain(raw)) in is_verb)
}

{
    place = kind = text = $0
    sub(/[|].*$/, "", place)
    sub(/^[^|]*[|]/, "", kind)
    sub(/[|].*$/, "", kind)
    sub(/^[^|]*[|][^|]*[|]/, "", text)
    words = plain(text)
    if (kind == "unread") { told("unread"); next }
    if (out_rule(words) && !(kind == "word" && text == "out")) told("out")
    if (words ~ / cut / && text != "cut" && words !~ / (rope|ropes|line|lines|lashing|cord) /)
        told("cut")
    if (leave_rule(words)) told("leave")
    if (words ~ / upright /) told("upright")
    if ((kind == "act" || kind == "exit") && verb_rule(text)) told("verb")
    if (kind == "never" && sentence_rule(text)) told("sentence")
    for (term in term_for)
        if (index(words, " " term " "))
            told("term")
}
END { exit breaks > 0 }
