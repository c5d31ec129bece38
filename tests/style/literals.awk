# Prints one line for each word that C compares a text with, or writes as the key of an
# item or zone, where an enum can stand: a slip in such a word is no error of the
# compiler. Read first: the lists of items and zones (rows `X(key, ...`), then, with
# allowed=1, the rows of literals.txt, then the sources.
#
# Signs without a letter are no words: ".", "**". A row of literals.txt is
#     file.c "text"  why no enum can stand there
# and a row that no longer meets anything is told too.

function literal_tell(text, what,    bare, row) {
    bare = text
    gsub(/\\x[0-9A-Fa-f][0-9A-Fa-f]|\\u[0-9A-Fa-f]+|\\./, "", bare)
    if (bare !~ /[A-Za-z]/) return
    row = FILENAME
    sub(/^.*\//, "", row)
    row = row " \"" text "\""
    if (row in allowed_row) { met[row] = 1; return }
    print FILENAME ":" FNR ": " what " \"" text "\": an enum can stand there"
}

# Goes on through a line, from character `at`, inside the brackets of a comparison.
function comparison_scan(line, at,    sign, length_) {
    length_ = length(line)
    for (; at <= length_ && depth > 0; at++) {
        sign = substr(line, at, 1)
        if (in_text) {
            if (sign == "\\") { text = text sign substr(line, ++at, 1); continue }
            if (sign == "\"") {
                in_text = 0
                if (depth == 1) literal_tell(text, "compares a text with")
            } else {
                text = text sign
            }
        } else if (sign == "\"") {
            in_text = 1
            text = ""
        } else if (sign == "'") {
            at += substr(line, at + 1, 1) == "\\" ? 3 : 2
        } else if (sign == "(") {
            depth++
        } else if (sign == ")") {
            depth--
        }
    }
    return at
}

function comparisons_find(line,    at) {
    at = depth > 0 ? comparison_scan(line, 1) : 1
    while (match(substr(line, at), /(^|[^A-Za-z0-9_])(text_equal|text_begins|text_ends|text_same|strcmp|strncmp|strcasecmp)\(/)) {
        at += RSTART - 1 + RLENGTH
        depth = 1
        at = comparison_scan(line, at)
    }
}

# Whole literals that are keys.
function keys_find(line,    rest, text) {
    rest = line
    while (match(rest, /"[a-z_]+"/)) {
        text = substr(rest, RSTART + 1, RLENGTH - 2)
        if (text in key) literal_tell(text, "writes the key")
        rest = substr(rest, RSTART + RLENGTH)
    }
}

FILENAME ~ /_list\.h$/ && /^ *X\([a-z_]+,/ {
    name = $0
    sub(/^ *X\(/, "", name)
    sub(/,.*$/, "", name)
    key[name] = 1
    next
}
FILENAME ~ /_list\.h$/ { next }

allowed == 1 {
    if ($0 ~ /^#/ || $0 == "") next
    if (match($0, /^[^ ]+ "([^"\\]|\\.)*"  +/) && RLENGTH < length($0)) {
        row = substr($0, 1, RLENGTH)
        sub(/ +$/, "", row)
        allowed_row[row] = 1
    } else {
        print FILENAME ":" FNR ": a row is: file.c \"text\"  why no enum can stand there"
    }
    next
}

FNR == 1 { in_comment = 0; depth = 0; in_text = 0 }

{
    code = code_of($0)
    if (code ~ /^#include/ || (code == "" && depth == 0)) next
    if (depth > 0 || code ~ /text_equal|text_begins|text_ends|strcmp|strncmp|strcasecmp/)
        comparisons_find($0)
    if (code ~ /""/) keys_find($0)
}

END {
    for (row in allowed_row)
        if (!(row in met)) print "literals.txt: nothing meets " row
}
