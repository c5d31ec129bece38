# mutate.awk - a procedure's logic with one contradiction put in.
#
#   awk -v op=OP [-v step=ID] [-v what=WORDS] [-v by=WORDS] -f tests/prove/mutate.awk FILE
#
# op: does   the step does that as well         gear   it shows that gear as well: {flares: use}
#     undo   the step no longer does that       drop   it loses all lines of that key
#     free   nothing holds its gear back: no within, and reached becomes fitted
#     move   the step comes before the step `by` sed-like: swap    `what` becomes `by` in the step
#     swapall  the same in the whole file       cut    the step is gone
# The status is 1 where nothing changed.

# Lines for a berth and an anchorage have names as well.
/^[a-z_]+:/ { in_steps = /^steps:/ }
function in_step(line) { return in_steps && line ~ ("^  - id: " step "$") }
function step_ends(line) { return line !~ /^    / || line ~ /^  - / }

function swapped(line,    at) {
    at = index(line, what)
    if (!at) return line
    changed = 1
    return substr(line, 1, at - 1) by substr(line, at + length(what))
}

# A list of a key's line in brackets, or a lone word, with one more.
function appended(line, more) {
    changed = 1
    if (sub(/\]$/, ", " more "]", line)) return line
    match(line, /: /)
    return substr(line, 1, RSTART + 1) "[" substr(line, RSTART + 2) ", " more "]"
}

function fitted(line) {
    while (match(line, /reach: \{[a-z_]+: (open_deck|deck|companionway)\}/)) {
        changed = 1
        split(substr(line, RSTART + 8, RLENGTH - 9), part, ":")
        line = substr(line, 1, RSTART - 1) "fitted: " part[1] substr(line, RSTART + RLENGTH)
    }
    return line
}

function step_line(line) {
    if (op == "swap") return swapped(line)
    if (op == "does" && line ~ /^    does: /) { added = 1; return appended(line, what) }
    if (op == "gear" && line ~ /^ +also: /) { added = 1; return appended(line, what) }
    if (op == "drop" && line ~ ("^ +" what ":")) { changed = 1; return "" }
    if (op == "undo" && line ~ /^ +does: /) {
        if (sub(what ", |, " what, "", line)) changed = 1
        else if (sub("^ +does: \\[?" what "\\]?$", "", line)) changed = 1
        return line
    }
    if (op == "free" && line ~ /^ +within: /) { changed = 1; return "" }
    if (op == "free") return fitted(line)
    return line
}

# Behind the first line of the step, where none of its lines was added to.
function step_put(    i, line) {
    for (i = 1; i <= held; i++) {
        line = step_line(hold[i])
        if (line != "" || hold[i] == "") out = out line "\n"
        if (i == 1 && op == "does" && !has_key("does")) key_put("does")
        if (i == 1 && op == "gear" && !has_key("also")) key_put("also")
    }
    held = 0
}
function key_put(key) {
    out = out "    " key ": [" what "]\n"
    changed = 1
}
function has_key(key,    i) {
    for (i = 1; i <= held; i++) if (hold[i] ~ ("^    " key ": ")) return 1
    return 0
}

function block_end() {
    if (!held) return
    if (op == "cut") { changed = 1; held = 0; return }
    if (op != "move") { step_put(); return }
    for (i = 1; i <= held; i++) moved = moved hold[i] "\n"
    held = 0
}

held && step_ends($0) { block_end() }
in_step($0) || held { hold[++held] = $0; next }
op == "swapall" { $0 = swapped($0) }
{ out = out $0 "\n" }
END {
    block_end()
    if (op == "move" && moved != "") {
        at = index(out, "\n  - id: " by "\n")
        if (at) { changed = 1; out = substr(out, 1, at) moved substr(out, at + 1) }
    }
    printf "%s", out
    exit !changed
}
