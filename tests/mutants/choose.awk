# Chooses conditions of the sources to turn into others, spread over all rooms: two of each room at
# least, the rest by how many conditions a room has. Left out are those whose mutant no test could
# tell from them. Reads the sources; takes `wanted` and `seed`.

BEGIN {
    srand(seed)
    other["&&"] = "||"; other["||"] = "&&"; other["=="] = "!="; other["!="] = "=="
    other["<"] = "<="; other["<="] = "<"; other[">"] = ">="; other[">="] = ">"
}

FNR == 1 { comment = 0 }

# What is no code becomes spaces, so that columns stay.
function blanked(text, out, at, two, quote, c) {
    out = ""
    for (at = 1; at <= length(text); at++) {
        c = substr(text, at, 1)
        two = substr(text, at, 2)
        if (comment) {
            if (two == "*/") { comment = 0; out = out "  "; at++ } else out = out " "
        } else if (quote != "") {
            if (c == "\\") { out = out "  "; at++ } else { out = out " "; if (c == quote) quote = "" }
        } else if (two == "/*") { comment = 1; out = out "  "; at++
        } else if (c == "\"" || c == "\047") { quote = c; out = out " "
        } else out = out c
    }
    return out
}

# "a < b ? a : b", also with <= and the like: of two that are equal it takes either, so that no test
# could tell the mutant of the operator that ends before `rest`.
function takes_either(before, rest, ask, part, one, other) {
    ask = index(rest, " ? ")
    part = index(rest, " : ")
    if (ask == 0 || part < ask)
        return 0
    one = substr(rest, ask + 3, part - ask - 3)
    other = substr(rest, part + 3)
    rest = substr(rest, 1, ask - 1)
    sub(/[;,)].*$/, "", other)
    return (ends_with(before, one) && rest == other) || (ends_with(before, other) && rest == one)
}

# As a whole: what stands before it is no part of the expression.
function ends_with(text, end) {
    return substr(text, length(text) - length(end) + 1) == end &&
           substr(text, 1, length(text) - length(end)) ~ /(^|= |return |[(])$/
}

function candidate(at, from, to) {
    room = FILENAME
    sub(/\/[^\/]*$/, "", room)
    if (!(room in count))
        rooms[++room_count] = room
    found[room, ++count[room]] = FILENAME "\t" FNR "\t" at "\t" length(from) "\t" to
    total++
}

{
    code = blanked($0)
    if (code ~ /^[ \t]*#/ || code ~ /promise\(|_Static_assert|for \(/ || code !~ /[(]|return|[?]|&&|[|][|]/)
        next
    for (at = 1; at <= length(code); at++) {
        two = substr(code, at, 4)
        # Operators stand between spaces, which tells them from arrows, shifts and pointers.
        if (match(two, /^ (&&|[|][|]|==|!=|<=|>=) /) || match(two, /^ [<>] /)) {
            operator = substr(two, 2, RLENGTH - 2)
            if (operator !~ /^[<>]/ ||
                !takes_either(substr(code, 1, at - 1), substr(code, at + RLENGTH)))
                candidate(at + 1, operator, other[operator])
        }
    }
    if (match(code, /(if|while) \(!/))
        candidate(RSTART + RLENGTH - 1, "!", "")
    else if (match(code, /^ *if \([a-z_>.()-]+\)$/)) {
        at = index(code, "(") + 1
        candidate(at, "", "!")
    }
}

# One of a room that was not chosen yet.
function choose(room, pick) {
    do
        pick = 1 + int(rand() * count[room])
    while ((room, pick) in chosen)
    chosen[room, pick] = 1
    taken[room]++
    print found[room, pick]
}

END {
    for (i = 1; i <= room_count; i++)
        for (k = 0; k < 2 && taken[rooms[i]] < count[rooms[i]]; k++) {
            choose(rooms[i])
            wanted--
        }
    while (wanted-- > 0) {
        left = int(rand() * total)
        for (i = 1; i < room_count && left >= count[rooms[i]]; i++)
            left -= count[rooms[i]]
        if (taken[rooms[i]] < count[rooms[i]])
            choose(rooms[i])
    }
}
