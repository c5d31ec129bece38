# index.awk - which card the index of a boat's cards leads to, by words in common with what a guest
# says. First file: lines of the index, "entry|procedure"; second: "sentence | procedure". Tells
# each sentence whose card is not on top, alone; says nothing of cards that the boat has not.

# Crudely: burns, burning; smokes, smoking; stopped, stops.
function stem(word) {
    if (length(word) > 5 && word ~ /ing$/)
        word = substr(word, 1, length(word) - 3)
    else if (length(word) > 4 && word ~ /(ed|es)$/)
        word = substr(word, 1, length(word) - 2)
    else if (length(word) > 3 && word ~ /[^s]s$/)
        word = substr(word, 1, length(word) - 1)
    if (length(word) > 3 && word ~ /e$/)
        word = substr(word, 1, length(word) - 1)
    if (length(word) > 3 && word !~ /(ll|ss)$/ &&
        substr(word, length(word)) == substr(word, length(word) - 1, 1))
        word = substr(word, 1, length(word) - 1)
    return word
}

function words_of(said, found,    count, part, i) {
    split("", found)
    count = split(tolower(said), part, /[^a-z]+/)
    for (i = 1; i <= count; i++)
        if (part[i] != "" && index(stop, " " part[i] " ") == 0)
            found[stem(part[i])] = 1
}

# The card on top; "" where none is, or two are.
function top_card(said,    i, word, common, best, most, next_most, card, top, sentence, own) {
    words_of(said, sentence)
    split("", best)
    for (i = 1; i <= lines; i++) {
        words_of(entry[i], own)
        common = 0
        for (word in own)
            common += word in sentence
        if (common > best[card_of[i]])
            best[card_of[i]] = common
    }
    most = next_most = 0
    top = ""
    for (card in best)
        if (best[card] > most) {
            next_most = most
            most = best[card]
            top = card
        } else if (best[card] > next_most)
            next_most = best[card]
    return most > next_most ? top : ""
}

BEGIN {
    FS = " *[|] *"
    stop = " a an and are at be can do does going has have he her his i in is it its like my not of" \
           " on or our she so the there they to up very we will with "
}
/^#/ || NF < 2 { next }
FNR == NR { entry[++lines] = $1; card_of[lines] = $2; aboard[$2] = 1; next }
$2 in aboard {
    tried++
    top = top_card($1)
    if (top != $2)
        print $1 ": wanted " $2 ", found " (top == "" ? "none or several" : top)
}
END { print tried + 0 > counted }
