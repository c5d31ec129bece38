# slips.awk - does to a file what the remedy of its first error says, and nothing else.
#
#   awk -v messages=FILE -f tests/cli/slips.awk RECORD
#
# Prints the record with the edit, or as it was where the remedy names none. Columns of a message
# count characters, and awk here bytes: byte_at turns the one into the other.

function byte_at(text, column,    at) {
    for (at = 1; at <= length(text); at++) {
        if (substr(text, at, 1) !~ /[\200-\277]/ && --column < 1) return at
    }
    return length(text) + 1
}

# The first error: its line, column and span, what it says, the lines of its remedy.
function message_read(    row, state, place) {
    count = 0
    while ((getline row < messages) > 0) {
        if (row ~ /: error: /) {
            if (state) break
            state = 1
            place = row
            sub(/: error: .*/, "", place)
            what = row
            sub(/^.*: error: /, "", what)
            wrong_column = place
            sub(/^.*:/, "", wrong_column)
            sub(/:[0-9]*$/, "", place)
            wrong_line = place
            sub(/^.*:/, "", wrong_line)
        } else if (state && row ~ /^ *\^~*$/) {
            sub(/^ */, "", row)
            span = length(row)
        } else if (state && sub(/^  remedy: /, "", row)) {
            remedy[++count] = row
            state = 2
        } else if (state == 2 && sub(/^    /, "", row)) {
            remedy[++count] = row
        } else if (state == 2) break
    }
}

function replace(text) {
    return before text after
}

# What "write X" and "did you mean X" name.
function word_named(text) {
    if (sub(/^did you mean /, "", text)) sub(/\?$/, "", text)
    else sub(/^write /, "", text)
    sub(/ \(".*" on the cards\)$/, "", text)
    sub(/, with(out)? .*$/, "", text)
    sub(/;? if .*$/, "", text)
    sub(/ or .*$/, "", text)
    if (remedy[1] ~ /^did you mean "/) gsub(/"/, "", text)
    return text
}

# The value that the wrong place is in, in quotes: to the next comma before a key, the bracket
# or the end of the line.
function value_quoted(line,    head, tail, end) {
    head = before
    match(head, /.*[a-z_]: /)
    tail = substr(line, RLENGTH + 1)
    head = substr(head, 1, RLENGTH)
    end = length(tail)
    if (head ~ /\{/ && match(tail, /(, [a-z_]+: |\}$)/)) end = RSTART - 1
    return head "\"" substr(tail, 1, end) "\"" substr(tail, end + 1)
}

# The proposed line "KEY: "TEXT"" in the place of what it was made of.
function proposal_put(line, proposal,    key, plain, at) {
    key = proposal
    sub(/: .*/, ": ", key)
    plain = substr(proposal, length(key) + 2, length(proposal) - length(key) - 2)
    at = index(line, key plain)
    return at == 0 ? line : substr(line, 1, at - 1) proposal substr(line, at + length(key plain))
}

function mended(line,    first, text) {
    first = remedy[1]
    if (first == "write one of:") {
        text = remedy[2]
        sub(/^ */, "", text)
        sub(/ .*/, "", text)
        return replace(text)
    }
    if (first ~ /put the whole text in quotes:$/) return proposal_put(line, remedy[2])
    if (first ~ /^write a comma in the place of the semicolon/) {
        sub(/; *$/, ", ", before)
        return before wrong after
    }
    if (first ~ /^put a comma before /) {
        sub(/ *$/, "", before)
        return before ", " wrong after
    }
    if (first ~ /^put the text in quotes/) return value_quoted(line)
    if (first ~ /^type the spaces of the line's start anew/) {
        while (sub(/^ *\302\240/, "& ", line)) sub(/\302\240/, "", line)
        return line
    }
    if (first ~ /^put two spaces in the place of each tab/) {
        gsub(/\t/, "  ", line)
        return line
    }
    if (first == "use a space") return replace(" ")
    if (first ~ /^take away the quotes at the start and the end of the line/) {
        line = substr(line, 2, length(line) - 2)
        gsub(/""/, "\"", line)
        return line
    }
    if (first ~ /^close the (mapping|list) with/) return line substr(first, length(first))
    if (first ~ /^end the text in its own line with the same quote/) return line substr(wrong, 1, 1)
    if (first ~ /^put a space after the dash/) return before "- " substr(wrong, 2) after
    if (first ~ /^put a dash and a space before it/) return before "- " wrong after
    if (first ~ /^indent th(is|e) line like the keys around it/) {
        match(above, /^ */)
        text = substr(above, 1, RLENGTH)
        sub(/^ */, text, line)
        return line
    }
    if (first ~ /: capitals A to Z/) return replace(toupper(wrong))
    if (first ~ /^write year, month and day/ || first ~ /^write digits only/ ||
        first ~ /^write yes or no/) return line
    if (first ~ /^(write|did you mean) /) {
        if (what ~ /a comma ends the text before it/ && first ~ /with a point/)
            sub(/[0-9]+, *$/, "", before)
        return replace(word_named(first))
    }
    return line
}

BEGIN { message_read() }

NR == wrong_line && count > 0 {
    start = byte_at($0, wrong_column)
    end = start
    end = byte_at($0, wrong_column + span)
    before = substr($0, 1, start - 1)
    wrong = substr($0, start, end - start)
    after = substr($0, end)
    $0 = mended($0)
}
{
    print
    above = $0
}
