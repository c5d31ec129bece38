# item.awk - one line of a page dump, for the tests that read dumps.

function value(name) {
    return match($0, " " name "=[^ ]+") ? substr($0, RSTART + length(name) + 2, \
        RLENGTH - length(name) - 2) : ""
}

# Sets kind, block, x, y, width, height, and of texts role, ink, face, baseline, size and text.
function item_read(    part) {
    kind = $1
    if (!match($0, / -?[0-9]+,-?[0-9]+ -?[0-9]+x-?[0-9]+/)) { kind = ""; return }
    block = substr($0, length(kind) + 2, RSTART - length(kind) - 2)
    split(substr($0, RSTART + 1, RLENGTH - 1), part, /[ ,x]/)
    x = part[1] + 0; y = part[2] + 0; width = part[3] + 0; height = part[4] + 0
    role = value("role"); ink = value("ink"); face = value("face")
    baseline = value("baseline") + 0; size = value("size") + 0
    text = match($0, / ".*"$/) ? substr($0, RSTART + 2, RLENGTH - 3) : ""
}
