# Follows what messages about pages say, to the letter, in the record they are about:
#
#   awk -f tests/cli/follow.awk said=1 MESSAGES said=0 BOAT.yaml
#
# prints the record mended. "shorten spot, how or name of E3 by about 4 letters" takes so many
# letters off the end of the longest of the three; "give a short name_spoken and looks" gives
# them; "enter those that stand side by side as one" enters the openings of one zone and side so;
# "record a nearer zone, or the side, of what lies there" gives the entry the other side.

function remedy_take(words,    which, count) {
    while (match(words, /of (this entry|[FEC][0-9]+) by about [0-9]+ letter/)) {
        which = substr(words, RSTART + 3, RLENGTH - 3)
        words = substr(words, RSTART + RLENGTH)
        count = which
        sub(/^.* by about /, "", count)
        which = which ~ /^this entry/ ? line : substr(which, 1, index(which, " ") - 1)
        if (count + 0 > cut[which]) cut[which] = count + 0
    }
    if (words ~ /name_spoken/) spoken = 1
    if (words ~ /looks/) looks = 1
    if (words ~ /side by side as one/) joined = 1
    if (words ~ /or the side, of what lies there/) crossed[line] = 1
}

# The value of a quoted field of the entry; "" for none.
function value_of(entry, key,    rest) {
    if (!match(entry, "[{ ]" key ": \"")) return ""
    rest = substr(entry, RSTART + RLENGTH)
    return substr(rest, 1, index(rest, "\"") - 1)
}

function value_set(entry, key, value,    at, old, rest) {
    old = value_of(entry, key)
    at = index(entry, key ": \"" old "\"")
    rest = substr(entry, at + length(key ": \"" old "\""))
    if (value == "") return substr(entry, 1, at - 3) rest
    return substr(entry, 1, at - 1) key ": \"" value "\"" rest
}

function longest_of(entry,    keys, count, i, best) {
    count = split("spot how name", keys, " ")
    best = keys[1]
    for (i = 2; i <= count; i++)
        if (length(value_of(entry, keys[i])) > length(value_of(entry, best))) best = keys[i]
    return best
}

# A spot that would be left with two letters goes as a whole.
function shortened(entry, letters,    key, value, most) {
    while (letters > 0) {
        key = longest_of(entry)
        value = value_of(entry, key)
        most = length(value) - 2
        if (most < 1) return entry
        if (letters >= most && key == "spot") {
            entry = value_set(entry, key, "")
            letters -= length(value)
            continue
        }
        if (letters < most) most = letters
        value = substr(value, 1, length(value) - most)
        sub(/[ ,]+$/, "", value)
        entry = value_set(entry, key, value)
        letters -= most
    }
    return entry
}

function part_of(entry, key,    rest) {
    if (!match(entry, "[{ ]" key ": ")) return ""
    rest = substr(entry, RSTART + RLENGTH)
    sub(/[,}].*$/, "", rest)
    return rest
}

# The entry on the other side, at no measured place.
function across(entry,    side) {
    side = part_of(entry, "side") == "port" ? "starboard" : "port"
    sub(/, at: \[[^]]*\]/, "", entry)
    if (!sub(/, side: [a-z]+/, ", side: " side, entry)) sub(/, zone: [a-z_]+/, "&, side: " side, entry)
    return entry
}

said && /: (error|held): / { split($0, part, ":"); line = part[2]; in_remedy = 0; next }
said && /^  remedy: / { in_remedy = 1; remedy_take($0); next }
said && /^    / && in_remedy { remedy_take($0); next }
said { in_remedy = 0; next }

/^  name: / && spoken && !named { named = 1; print; print "  name_spoken: Wim"; next }
/^  name_spoken: / && spoken { next }
/^  looks: / && looks { print "  looks: White boat"; next }
/^  - \{item: seacock, / && joined {
    place = part_of($0, "zone") " " part_of($0, "side")
    if (place in seen) next
    seen[place] = 1
    sub(/name: "[^"]*"/, "name: in, count: 2")
}
{
    if (FNR in crossed) $0 = across($0)
    tag = part_of($0, "tag")
    letters = tag in cut ? cut[tag] : FNR in cut ? cut[FNR] : 0
    print (letters > 0 && tag != "" ? shortened($0, letters) : $0)
}
