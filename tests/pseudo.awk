# pseudo.awk - a made-up language from English, for tests of what is said in another: in each
# word one letter becomes one of Greek or Cyrillic, {names} and ** stay.
#
#   awk -v language=qps [-v longer=33] [-v most=3] [-v opens=‹ -v closes=›]
#       -f tests/pseudo.awk FILE                   a file of words or texts
#   awk -v language=qps -v record=1 -f tests/pseudo.awk FILE
#                                                  a boat or base file
#
# longer: each text in brackets, and so many hundredths longer (0: in brackets alone). most: of
# each word no more than so many letters, so that brackets find room; opens, closes: what is
# taken for brackets, as those that reach less high and low than [ and ]. record: the texts that
# people wrote get a second language. They are never cut, since cards show parts of them, and
# have no brackets, since what a card shows may begin or end within; tell_tale: a letter that
# each of their words has instead, and each word that they are read by.

# Letters of other alphabets by the letter they stand for: those that look alike, and others
# where none does.
function letters_begin(    pairs, i, count) {
    count = split("a а e е o о i і c с p р x х y у s ѕ u υ k к m м h һ t т n п r г v ν w ω l ӏ " \
                  "d д b в f ф g г z з j ј q θ A А E Е O О I І C С P Р X Х Y У S Ѕ T Т H Н K К M М B В " \
                  "D Д F Ф G Г J Ј L Л N И Q Θ R Я U Ц V Λ W Ш Z З", pairs, " ")
    for (i = 1; i < count; i += 2) alike[pairs[i]] = pairs[i + 1]
}

# The place of the letter that is replaced: a vowel if there is one, which is as wide, else
# the first.
function letter_place(word) {
    if (match(word, /[aeoiAEOI]/)) return RSTART
    return 1
}

function word_pseudo(word,    at) {
    if (most != "") word = substr(word, 1, most)
    at = letter_place(word)
    return substr(word, 1, at - 1) alike[substr(word, at, 1)] substr(word, at + 1)
}

# All words of a text; has_words tells whether there was one.
function words_pseudo(text,    out, taken) {
    out = ""
    has_words = 0
    while (text != "") {
        taken = 1
        if (match(text, /^[{][a-z_]+[}]/) || match(text, /^[^A-Za-z{]+/)) {
            taken = RLENGTH
            out = out substr(text, 1, taken)
        } else if (match(text, /^[A-Za-z]+/)) {
            taken = RLENGTH
            out = out (record ? word_of_record(substr(text, 1, taken)) : \
                       word_pseudo(substr(text, 1, taken)))
            has_words = 1
        } else {
            out = out substr(text, 1, 1)
        }
        text = substr(text, taken + 1)
    }
    return out
}

function filler(count,    i, out) {
    out = ""
    for (i = 1; i <= count; i++) out = out (i % 6 == 1 ? " " : "о")
    return out
}

function text_pseudo(text,    out) {
    out = words_pseudo(text)
    if (!has_words || longer == "" || record) return out
    return opens out filler(int(length(text) * longer / 100)) closes
}

# ---- YAML ----

# The scalar at the start of `rest`, in quotes or up to one of the signs `ends`; `rest` becomes
# what follows.
function scalar_take(ends,    at, value) {
    if (substr(rest, 1, 1) == "\"") {
        at = index(substr(rest, 2), "\"")
        value = substr(rest, 2, at - 1)
        rest = substr(rest, at + 2)
        return value
    }
    for (at = 1; at <= length(rest) && !index(ends, substr(rest, at, 1)); at++)
        continue
    value = substr(rest, 1, at - 1)
    rest = substr(rest, at)
    sub(/ +$/, "", value)
    return value
}

function quoted(text) { return "\"" text "\"" }

# A flow mapping or list of texts at the start of `rest`.
function flow_pseudo(    out, key) {
    out = substr(rest, 1, 1)
    mapping = out == "{"
    rest = substr(rest, 2)
    while (rest != "" && rest !~ /^ *[]}]/) {
        sub(/^,? */, "", rest)
        key = ""
        if (mapping && match(rest, /^[a-z_]+: /)) {
            key = substr(rest, 1, RLENGTH)
            rest = substr(rest, RLENGTH + 1)
        }
        if (mapping && key ~ /^is: |^ends: |^not: /) out = out key scalar_take(",}")
        else out = out key quoted(text_pseudo(scalar_take(",]}")))
        if (rest ~ /^,/) out = out ", "
    }
    return out substr(rest, match(rest, /[]}]/))
}

function value_pseudo(value) {
    if (value ~ /^[[{]/) {
        rest = value
        return flow_pseudo()
    }
    rest = value
    return quoted(text_pseudo(scalar_take("")))
}

# A word of the record, or by which the record is read: with `tell_tale` for its first vowel, or
# at its end where it has none.
function word_of_record(word,    cut) {
    if (tell_tale != "" && sub(/[aeiouAEIOU]/, tell_tale, word)) return word
    cut = most
    most = ""
    word = word_pseudo(word) tell_tale
    most = cut
    return word
}

# Words that texts are read by, alone or several in a row.
function set_pseudo(line,    out, entry, at) {
    out = ""
    gsub(/"/, "", line)
    while (match(line, /[A-Za-z]+( [A-Za-z]+)*/)) {
        at = RSTART
        entry = substr(line, at, RLENGTH)
        out = out substr(line, 1, at - 1) quoted(entry_of_record(entry))
        line = substr(line, at + length(entry))
    }
    return out line
}

function entry_of_record(entry,    words, count, i, out) {
    count = split(entry, words, " ")
    out = word_of_record(words[1])
    for (i = 2; i <= count; i++) out = out " " word_of_record(words[i])
    return out
}

# ---- a file of words or texts ----

function texts_line(    key) {
    if (/^[a-z_]+:/) section = substr($0, 1, index($0, ":") - 1)
    if (section == "proof" || section == "synonyms") return
    if (/^ *#/ || /^ *$/ || /^ *("[a-z]+"|[a-z_0-9]+): *$/ || section == "plurals" ||
        section == "procedure") {
        print
        return
    }
    if (section == "language") {
        print "language: " language
        return
    }
    if (section == "reading") {
        match($0, /^ *("[a-z]+"|[a-z_0-9]+): */)
        if (RSTART) print substr($0, 1, RLENGTH) set_pseudo(substr($0, RLENGTH + 1))
        else print set_pseudo($0)
        return
    }
    match($0, /^ *("[a-z]+"|[a-z_0-9]+): /)
    print substr($0, 1, RLENGTH) value_pseudo(substr($0, RLENGTH + 1))
}

# ---- a record ----

function both(text) {
    return "{en: " quoted(text) ", " language ": " quoted(text_pseudo(text)) "}"
}

# Texts by state at the start of `rest`: {shut: across, open: along}.
function states_both(    out) {
    out = "{"
    rest = substr(rest, 2)
    while (match(rest, /^,? *[a-z]+: */)) {
        out = out substr(rest, 1, RLENGTH)
        rest = substr(rest, RLENGTH + 1)
        out = out both(scalar_take(",}"))
    }
    return out
}

# A list of texts at the start of `rest`, texts by state, or one text.
function texts_both(ends,    out) {
    if (rest ~ /^\{/) return states_both()
    if (rest !~ /^\[/) return both(scalar_take(ends))
    out = "["
    rest = substr(rest, 2)
    while (rest != "" && rest !~ /^ *\]/) {
        sub(/^,? */, "", rest)
        out = out (out == "[" ? "" : ", ") both(scalar_take(",]"))
    }
    return out
}

# The texts that people wrote in a line of gear, of the radio or of a rule.
function record_line(    out) {
    out = ""
    rest = $0
    while (match(rest, keys)) {
        out = out substr(rest, 1, RSTART + RLENGTH - 1)
        rest = substr(rest, RSTART + RLENGTH)
        if (out ~ /(^|[{, ])(handle|second_station): $/ && rest ~ /^\{/) continue   # a place: of it the spot is text
        out = out texts_both(out ~ /[{,] *[a-z_]+: $/ ? ",}" : "")
    }
    return out rest
}

BEGIN {
    letters_begin()
    if (opens == "") { opens = "["; closes = "]" }
    keys = "(^ +|[{,] *)(spot|how|vents_to|sound|breaker|lay_down_place|painter|release|handle|" \
           "power_switch|distress_key|" \
           "second_station|emergency_aerial|position_read_at|looks|nature_steps|urgency_steps|manual_position_steps|" \
           "rule|qualification): "
}
record == "" { texts_line(); next }
/^ +- \{item:/ {
    # the name of a piece; that of a boat or place is a name in every language
    keys_all = keys
    sub(/\(spot/, "(name|spot", keys_all)
    saved = keys; keys = keys_all
    print record_line()
    keys = saved
    next
}
{ print record_line() }
