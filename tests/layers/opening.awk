# Does the opening comment of a file say what file it is, and in which room it lies? Reads
# rooms.txt, then the files. A header of include/ and a .c file say "(room: NAME)"; a header
# in a room's folder says what it is private to.

FILENAME ~ /rooms\.txt$/ { if ($1 == "header") room[$2] = $3; next }

FNR == 1 { comment = ""; open = 1 }

open {
    line = $0
    sub(/^ \* ?/, "", line)
    comment = comment line " "
    if (line !~ /\*\//) next
    open = 0
    opening_judge()
}

function tell(what) { print FILENAME ":1: " what }

function opening_judge(    part, count, name, wanted, said) {
    count = split(FILENAME, part, "/")
    name = part[count]
    if (index(comment, "/* " name " - ") != 1) tell("does not open with its own name, " name)
    if (part[1] == "src" && name ~ /\.h$/) {
        if (comment !~ /rivate to /) tell("does not say what it is private to")
        return
    }
    wanted = part[1] == "src" ? part[2] : room[name]
    said = match(comment, /room: [a-z]+[);:]/) ? substr(comment, RSTART + 6, RLENGTH - 7) : "none"
    if (said != wanted) tell("is of room " wanted ", and says room " said)
}
