# Read before the page maker of a peer: takes the lines of page dumps apart. Lengths come as points.
# The maker has page_begin(width, height), text(x, y, size, face, words), box(x, y, width, height,
# filled), line(x, y, to_x, to_y) and the end of its file in END.

# What stands behind ` key=`.
function value(key,    at, rest) {
    at = index($0, " " key "=")
    if (at == 0)
        return ""
    rest = substr($0, at + length(key) + 2)
    sub(/ .*/, "", rest)
    return rest
}

function points(thousandths) {
    return sprintf("%.3f", thousandths / 1000)
}

# Sets left, top, wide and high; the block may be several words.
function area_read(    i) {
    for (i = 2; $i !~ /^-?[0-9]+,-?[0-9]+$/; i++)
        continue
    split($i, corner, ",")
    split($(i + 1), sides, "x")
    left = corner[1]; top = corner[2]; wide = sides[1]; high = sides[2]
}

function words_read(    words) {
    words = $0
    sub(/^[^"]*"/, "", words)
    sub(/"$/, "", words)
    gsub(/\\"/, "\"", words)
    gsub(/\\\\/, "\\", words)
    return words
}

/^page / {
    split($4, sides, "x")
    page_begin(points(sides[1]), points(sides[2]))
    next
}
/^text / {
    area_read()
    text(points(left), points(value("baseline")), points(value("size")), value("face"), words_read())
    next
}
/^(box|ellipse|sign|path) / {
    area_read()
    box(points(left), points(top), points(wide), points(high), value("fill") == "black")
    next
}
/^line / {
    split($(NF - 1), from, ",")
    split($NF, to, ",")
    line(points(from[1]), points(from[2]), points(to[1]), points(to[2]))
}
