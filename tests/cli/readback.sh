#!/bin/sh
# The printed files as other programs see them: paper, type, structure, words.
. tests/tap.sh
. tests/readback/checks

mkdir "$scratch/cards" "$scratch/dumps"
maydeck print tests/fleet --date "$print_date" -o "$scratch/cards"
expect_status readback-printed 0
maydeck print tests/fleet --dump --date "$print_date" -o "$scratch/dumps"

# Every page is A4 upright.
paper_check() {
    pdfinfo -f 1 -l 1000 "$1" 2>&1 | awk '
        /^Page +[0-9]+ size:/ {
            pages++
            if ($4 < 595.2 || $4 > 595.4 || $6 < 841.8 || $6 > 842.0) print
        }
        /^Page +[0-9]+ rot:/ { if ($4 != 0) print }
        END { if (!pages) print "no page" }'
}

# Every face is embedded, a subset, and maps back to Unicode.
faces_check() {
    pdffonts "$1" 2>/dev/null | awk '
        /^---/ { table = 1; next }
        !table { next }
        { faces++; if ($(NF-4) != "yes" || $(NF-3) != "yes" || $(NF-2) != "yes") print }
        END { if (!faces) print "no face" }'
}

structure_check() {
    qpdf --check "$1" >"$scratch/qpdf" 2>&1 || echo "qpdf: status $?"
    grep -i warning "$scratch/qpdf"
}

# Tagged, with nothing in the tree that poppler minds; XMP says what the information says.
tags_check() {
    pdfinfo "$1" | grep -q '^Tagged: *yes$' || echo "not tagged"
    pdfinfo -struct-text "$1" 2>&1 >/dev/null
    for pair in Title:dc:title Subject:dc:description Producer:pdf:Producer; do
        told=$(pdfinfo "$1" | sed -n "s/^${pair%%:*}: *//p")
        meta=$(pdfinfo -meta "$1" | sed -n "s,.*<${pair#*:}>\\(.*\\)</${pair#*:}>.*,\\1,p" |
            sed 's/<[^>]*>//g')
        [ -n "$told" ] && [ "$told" = "$meta" ] || echo "${pair%%:*}: '$told', in XMP '$meta'"
    done
}

poppler_check() {
    pdftotext "$1" "$scratch/text" 2>&1
    [ -s "$scratch/text" ] || echo "pdftotext: no text"
    pdftoppm -r 40 -png "$1" "$scratch/picture" 2>&1
}


# One page a card, but for backs that are left blank: as many as pages were laid out for the boat.
pages_check() {
    pages=$(pages_said "$1")
    boat=$(basename "$1" .pdf)
    dumps=$(folder_list "$scratch/dumps" | grep -c "^$boat-.*\.dump$")
    [ "$pages" = "$dumps" ] && [ "$dumps" -gt 0 ] || echo "$pages pages, $dumps cards"
}

found=0
for boat in tests/fleet/boats/*.yaml; do
    name=$(basename "$boat" .yaml)
    file=$scratch/cards/$name.pdf
    if [ ! -s "$file" ]; then
        not_ok "readback-$name" "no $name.pdf was printed"
        continue
    fi
    found=$((found + 1))
    for what in paper faces structure tags poppler words contrast pages; do
        expect_empty "readback-$name-$what" "$("${what}_check" "$file" 2>&1)"
    done
done
expect_equal readback-all "$found" "$(folder_list "$scratch/cards" | wc -l | tr -d ' ')"

# ---- the checks can fail ----

# changed NAME AWK...: Bramble's first page with the lines of its stream changed so.
changed() {
    name=$1
    shift
    qpdf --qdf --object-streams=disable --pages . 1 -- "$scratch/cards/bramble.pdf" "$scratch/plain.pdf"
    LC_ALL=C awk "$@" "$scratch/plain.pdf" >"$scratch/changed.pdf"
    fix-qdf "$scratch/changed.pdf" >"$scratch/$name.pdf"
}

# doctored NAME COLOUR: its black words in that colour.
doctored() {
    changed "$1" -v colour="$2" '
        held { print ($0 == "BT" ? colour : "0 g"); held = 0 }
        $0 == "0 g" { held = 1; next }
        { print }'
}

# lights FILE: those in which some word cannot be read. The footer's dot is smaller than a
# pixel: of another colour than black it is lighter than it is printed.
lights() {
    contrast_check "$1" 2>&1 | grep -v ' · at ' | sed 's/: .*//' | sort -u | tr '\n' ' '
}

doctored same '0 g'
expect_equal readback-doctored-same '' "$(lights "$scratch/same.pdf")"
doctored pale '0.6 g'
expect_equal readback-doctored-pale 'colour grey red ' "$(lights "$scratch/pale.pdf")"
doctored bright '0.5 0 0 rg'
expect_equal readback-doctored-red 'red ' "$(lights "$scratch/bright.pdf")"
doctored blue '0 0.7 0.9 rg'
expect_equal readback-doctored-blue 'colour grey ' "$(lights "$scratch/blue.pdf")"

# A file that says another title in XMP, and one that says it is not tagged.
qpdf --qdf --object-streams=disable "$scratch/cards/bramble.pdf" "$scratch/plain.pdf"
LC_ALL=C sed 's,^<dc:title>,<dc:headline>,' "$scratch/plain.pdf" >"$scratch/changed.pdf"
fix-qdf "$scratch/changed.pdf" >"$scratch/retitled.pdf"
expect_equal readback-finds-other-title "Title: 'Bramble: emergency cards', in XMP ''" \
    "$(tags_check "$scratch/retitled.pdf" 2>&1)"
LC_ALL=C sed 's,/Marked true,/Marked false,' "$scratch/plain.pdf" >"$scratch/unmarked.pdf"
expect_equal readback-finds-untagged 'not tagged' "$(tags_check "$scratch/unmarked.pdf" 2>&1)"

# found WORDS FILE: does the check of words say so?
found() {
    words_check "$2" | grep -q "$1" && ok "readback-finds-$1" || not_ok "readback-finds-$1"
}

changed outside '/ Tm$/ { $5 -= 15 } { print }'
found 'outside the safe area' "$scratch/outside.pdf"
changed over '/ Tm$/ { $6 = int($6 / 20) * 20 } { print }'
found 'lies over' "$scratch/over.pdf"
# All words of a line at its beginning: one with an apostrophe, too.
changed piled '/ Tm$/ { if ($6 == y) $5 = x; x = $5; y = $6 } { print }'
found 'STARB’D lies over' "$scratch/piled.pdf"
found 'lies over STARB’D' "$scratch/piled.pdf"
exit $failures
