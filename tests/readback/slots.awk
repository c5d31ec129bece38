# Tags on the plans of a printed file, read back, against the record of the boat:
#
#   pdftotext -bbox FILE.pdf BOXES; awk -f tests/readback/slots.awk record=1 BOAT.yaml record=0 BOXES
#
# says where a tag stands elsewhere on one card than on another, as far as the heights of the two
# plans explain, and where it stands on another side than the record tells. A plan beside steps is
# right of the columns' line, its tags smaller than all other tags there.

function number(attribute,    rest) {
    rest = substr($0, index($0, " " attribute "=\"") + length(attribute) + 3)
    return substr(rest, 1, index(rest, "\"") - 1) + 0
}

function field(text, key) {
    if (!match(text, "(^|[{ ])" key ": [^,}]*")) return ""
    text = substr(text, RSTART, RLENGTH)
    sub(/^.*: /, "", text)
    return text
}

# Where it is worked counts, if not where it is.
function side_of(entry,    place, zone, side) {
    place = entry
    if (match(entry, /[, ]from: \{[^}]*\}/)) place = substr(entry, RSTART, RLENGTH)
    else gsub(/[a-z_]+: \{[^}]*\}/, "", place)
    zone = field(place, "zone")
    side = field(place, "side")
    if (zone ~ /_port$/) side = "port"
    if (zone ~ /_starboard$/) side = "starboard"
    return side
}

function off(a, b) { return a > b ? a - b : b - a }

# The middle of the view that is nearest.
function middle_near(page, x,    i, best) {
    for (i = 1; i <= views[page]; i++)
        if (best == "" || off(x, view[page, i]) < off(x, best)) best = view[page, i]
    return best
}

# The name of a view is larger than all words in it; it may have two.
function head_read() {
    if (y2 - y1 < 11.8) return
    if (word ~ /^(BELOW|HULLS|ON|THE|DECK)$/ && before != "ON") {
        view[page, ++views[page]] = (x1 + x2) / 2
        head_from = x1
        has_plan[page] = 1
    } else if (word ~ /^(DECK|BOAT|SALOON)$/) {
        view[page, views[page]] = (head_from + x2) / 2
    }
    before = word
}

function sides_judge(page,    i, tag, by) {
    for (i = 1; i <= count[page]; i++) {
        tag = tag_at[page, i]
        by = X[page, i] - middle_near(page, X[page, i])
        if (side[tag] == "port" || side[tag] == "starboard") sided++
        if ((side[tag] == "port" && by > -0.5) || (side[tag] == "starboard" && by < 0.5))
            printf "page %d: %s is to %s, and stands %.1f off the middle\n", page, tag, side[tag], by
    }
}

# Tags of both pages, with their indices: shared, first[], second[].
function shared_find(a, b,    i, j) {
    shared = 0
    for (i = 1; i <= count[a]; i++)
        for (j = 1; j <= count[b]; j++)
            if (tag_at[a, i] == tag_at[b, j] && turn[a, i] == turn[b, j]) {
                first[++shared] = i
                second[shared] = j
            }
}

# Two plans differ in height alone: of the tags farthest apart follows how much.
function places_judge(a, b,    i, low, high, scale, y) {
    shared_find(a, b)
    low = high = 1
    for (i = 2; i <= shared; i++) {
        if (Y[a, first[i]] < Y[a, first[low]]) low = i
        if (Y[a, first[i]] > Y[a, first[high]]) high = i
    }
    if (!shared) return
    scale = 1
    if (Y[a, first[high]] > Y[a, first[low]])
        scale = (Y[b, second[high]] - Y[b, second[low]]) / (Y[a, first[high]] - Y[a, first[low]])
    for (i = 1; i <= shared; i++) {
        compared++
        y = Y[b, second[low]] + scale * (Y[a, first[i]] - Y[a, first[low]])
        if (off(X[a, first[i]], X[b, second[i]]) > 0.5 || off(y, Y[b, second[i]]) > 0.5 ||
            scale < 0.4 || scale > 2.5)
            printf "%s stands elsewhere on page %d than on page %d: %.1f across, %.1f along\n",
                tag_at[a, first[i]], b, a, X[b, second[i]] - X[a, first[i]], Y[b, second[i]] - y
    }
}

record && /^  - \{item: / { side[field($0, "tag")] = side_of($0); next }
record && /^radio:/ { in_radio = 1; next }
record && /^[a-z]/ { in_radio = 0 }
record && in_radio && /^  tag: / { radio = $2 }
record && in_radio && /^  zone: .*_port$/ { side[radio] = "port" }
record && in_radio && /^  side: / { side[radio] = $2 }
record { next }

/<page / { page++; before = ""; delete times }
/<word / {
    x1 = number("xMin"); x2 = number("xMax"); y1 = number("yMin"); y2 = number("yMax")
    word = $0
    sub(/^[^>]*>/, "", word)
    sub(/<.*$/, "", word)
    if (x1 < 372 || y2 - y1 > 13) next
    head_read()
    if (word !~ /^[FEC][0-9]+$/) next
    i = ++count[page]
    tag_at[page, i] = word
    turn[page, i] = ++times[word]
    X[page, i] = (x1 + x2) / 2
    Y[page, i] = (y1 + y2) / 2
}

END {
    for (a = 1; a <= page; a++) {
        if (!has_plan[a]) continue
        plans++
        sides_judge(a)
        for (b = a + 1; b <= page; b++)
            if (has_plan[b]) places_judge(a, b)
    }
    if (!plans || !sided || !compared) print "nothing was judged"
}
