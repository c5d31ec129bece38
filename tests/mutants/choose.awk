# Chooses conditions of the sources to turn into others, spread over all rooms: two of each room at
# least, the rest by how many conditions a room has. Reads the sources; takes `wanted` and `seed`.
# A line for each: FILE LINE COLUMN LENGTH of what goes, and what comes in its place.

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
