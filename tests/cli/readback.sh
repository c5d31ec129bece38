#!/bin/sh
# The printed files as other programs see them: paper, type, structure, words.
. tests/tap.sh

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

poppler_check() {
    pdftotext "$1" "$scratch/text" 2>&1
    [ -s "$scratch/text" ] || echo "pdftotext: no text"
    pdftoppm -r 40 -png "$1" "$scratch/picture" 2>&1
}

# Words stand inside the safe area (sides 10, head 16, foot 8 mm), and their ink does
# not meet. A word's box reaches from the ascender to the descender of its face; of
# plain letters the ink ends below the one and, without descending letters, above
# the other, so that much of the box is left out (measured on the faces used).
words_check() {
    pdftotext -bbox "$1" "$scratch/boxes" 2>/dev/null && awk '
        function number(attribute,    rest) {
            rest = substr($0, index($0, attribute "=\"") + length(attribute) + 2)
            return substr(rest, 1, index(rest, "\"") - 1) + 0
        }
        function overlap(a, b, c, d) { return (b < d ? b : d) - (a > c ? a : c) }
        function head_room(word) {
            if (word !~ /^[!-~]+$/) return 0
            if (word ~ /[$(){}\[\]]/) return 0.08
            return word ~ /[^A-Z0-9.,:;-]/ ? 0.14 : 0.17
        }
        function foot_room(word) {
            if (word !~ /^[!-~]+$/ || word ~ /[gjpqyQ()\[\]{}|_@$&\/]/) return 0
            return word ~ /[,;J]/ ? 0.05 : 0.19
        }
        /<page / {
            page++; count = 0
            left = 10 * mm - slack; right = number("width") - 10 * mm + slack
            head = 16 * mm - slack; foot = number("height") - 8 * mm + slack
        }
        /<word / {
            x1 = number("xMin"); x2 = number("xMax"); y1 = number("yMin"); y2 = number("yMax")
            word = $0; sub(/^[^>]*>/, "", word); sub(/<.*$/, "", word)
            if (x1 < left || x2 > right || y1 < head || y2 > foot)
                printf "page %d: %s is outside the safe area: %.1f %.1f %.1f %.1f\n",
                    page, word, x1, y1, x2, y2
            height = y2 - y1; y1 += head_room(word) * height; y2 -= foot_room(word) * height
            for (i = 1; i <= count; i++)
                if (overlap(x1, x2, X1[i], X2[i]) > 0.3 && overlap(y1, y2, Y1[i], Y2[i]) > 0.3)
                    printf "page %d: %s lies over %s by %.2f x %.2f\n", page, word, W[i],
                        overlap(x1, x2, X1[i], X2[i]), overlap(y1, y2, Y1[i], Y2[i])
            count++; words++
            X1[count] = x1; X2[count] = x2; Y1[count] = y1; Y2[count] = y2; W[count] = word
        }
        END { if (!words) print "no words" }
    ' mm=2.834646 slack=0.05 "$scratch/boxes"
}

# One page a card: as many as pages were laid out for the boat.
pages_check() {
    pages=$(pdfinfo "$1" 2>/dev/null | sed -n 's/^Pages: *//p')
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
    for what in paper faces structure poppler words pages; do
        expect_empty "readback-$name-$what" "$("${what}_check" "$file" 2>&1)"
    done
done
expect_equal readback-all "$found" "$(folder_list "$scratch/cards" | wc -l | tr -d ' ')"
exit $failures
