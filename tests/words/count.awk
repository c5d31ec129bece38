# The different words of the cards: those that stand in the cards' own texts, of the words that
# are printed. Figures are none; a plural or an owner's ’s is no other word.
#
#   awk -f tests/words/count.awk TEXTS PRINTED      one line a word

function each_word(line, list,    count, parts, i) {
    line = tolower(line)
    gsub(/\{[^}]*\}/, " ", line)
    gsub(/’/, "'", line)
    gsub(/[^a-z'-]/, " ", line)
    count = split(line, parts, / +/)
    for (i = 1; i <= count; i++) {
        sub(/^['-]+/, "", parts[i])
        sub(/['-]+$/, "", parts[i])
        sub(/'s$/, "", parts[i])
        if (parts[i] != "")
            list[parts[i]] = 1
    }
}

function stem_of(word,    shorter) {
    shorter = word
    if (sub(/s$/, "", shorter) && (shorter in printed))
        return shorter
    if (word ~ /(ss|sh|ch|x)es$/) {
        shorter = substr(word, 1, length(word) - 2)
        if (shorter in printed)
            return shorter
    }
    return word
}

FNR == 1 { file++ }
file == 1 { sub(/^[^|]*[|][^|]*[|]/, ""); each_word($0, own); next }
{ each_word($0, printed) }
END {
    for (word in printed)
        if (word in own)
            kept[stem_of(word)] = 1
    for (word in kept)
        print word
}
