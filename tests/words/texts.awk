# The printed texts of a words file, one a line: `FILE:LINE|KIND|TEXT`, for tests/words/rules.awk.
# Kinds: act, lethal, exit, never, and text for all else; of the file that has the words of
# all cards, word. Bold stars and quotes go, {names} stay. What people read on the screen
# alone (reasons) is left out. A line that is not understood is told, as of kind `unread`.

function value_of(text) {
    sub(/^ +/, "", text)
    sub(/ +$/, "", text)
    if (text ~ /^".*"$/)
        text = substr(text, 2, length(text) - 2)
    gsub(/\*\*/, "", text)
    return text
}

function tell(kind, text) {
    text = value_of(text)
    if (text != "")
        print FILENAME ":" FNR "|" kind "|" text
}

# [a, "b, c"] and {one: a, other: b}, a text a line.
function tell_each(kind, text, named,    at, sign, quoted, part) {
    text = substr(text, 2, length(text) - 2)
    part = ""
    quoted = 0
    for (at = 1; at <= length(text) + 1; at++) {
        sign = substr(text, at, 1)
        if (sign == "\"")
            quoted = !quoted
        if (sign == "" || (sign == "," && !quoted)) {
            sub(/^ +/, "", part)
            if (named)
                sub(/^[a-z_0-9]+: */, "", part)
            tell(kind, part)
            part = ""
        } else
            part = part sign
    }
}

function kind_of(last) {
    if (path[0] == "steps" && path[last] == "act") return "act"
    if (path[0] == "steps" && path[last - 1] == "lethal") return "lethal"
    if (path[0] == "decision" && (path[1] == "yes" || path[1] == "no")) return "exit"
    if (path[0] == "never") return "never"
    return "text"
}

# Of the file with the words of all cards only these parts are printed.
function is_read(last) {
    if (path[0] == "language") all_cards = 1
    if (path[0] == "procedure" || path[0] == "when_reason" || path[last] == "because") return 0
    if (!all_cards) return 1
    return path[0] == "words" || path[0] == "items" || path[0] == "zones" || path[0] == "states"
}

FNR == 1 { all_cards = 0; split("", path) }
/^ *#/ || /^ *$/ { next }
!/^ *"?[a-z_0-9]+"?:( |$)/ {
    if (!all_cards || is_read(0))
        print FILENAME ":" FNR "|unread|" $0
    next
}
{
    match($0, /^ */)
    last = RLENGTH / 2
    key = substr($0, RLENGTH + 1)
    text = key
    sub(/:.*$/, "", key)
    gsub(/"/, "", key)
    path[last] = key
    sub(/^[^:]*: */, "", text)
    if (text ~ /^"?[a-z_0-9]+"?:$/ || !is_read(last))
        next
    kind = all_cards ? "word" : kind_of(last)
    if (text ~ /^\[.*\]$/)
        tell_each(kind, text, 0)
    else if (text ~ /^\{.*: .*\}$/)
        tell_each(kind, text, 1)
    else if (text ~ /^[\[{>|&]/ && text !~ /^\{[a-z_]+\}/)
        print FILENAME ":" FNR "|unread|" text
    else
        tell(kind, text)
}
