#!/bin/sh
# What the bench measures with: the yardstick writes the pages that it is given, whole and with their
# words; counts and dumps are read right; what is made for other typesetters has all words.
. tests/tap.sh
. tests/bench/count.sh

# ---- the yardstick ----

maydeck print tests/fleet --boat bramble --date "$print_date" --dump -o "$scratch/dumps"
expect_status bench-dumps 0
"$BUILD/yardstick" "$scratch/dumps" out/fonts "$scratch/plain.pdf" >"$scratch/said" 2>&1
expect_equal bench-yardstick-status 0 "$?"
pages=$(find "$scratch/dumps" -name '*.dump' | wc -l | tr -d ' ')
expect_equal bench-yardstick-pages "$pages pages" "$(sed 's/,.*//' "$scratch/said")"
expect_equal bench-yardstick-pages-written "$pages" \
    "$(pdfinfo "$scratch/plain.pdf" | awk '/^Pages:/ { print $2 }')"
expect_empty bench-yardstick-whole "$(qpdf --check "$scratch/plain.pdf" 2>&1 >"$scratch/qpdf")"

# letters_of: without spaces, sorted by letter, since the order in which a page is read may differ.
letters_of() {
    tr -d ' \n\f' | fold -w 1 | sort | uniq -c | tr -s ' \n' ' '
}
expect_equal bench-yardstick-words \
    "$(sed -n 's/^text .* "\(.*\)"$/\1/p' "$scratch"/dumps/*.dump | letters_of)" \
    "$(pdftotext -raw "$scratch/plain.pdf" - 2>"$scratch/stderr" | letters_of)"

# What cannot be read is told, not left out.
mkdir "$scratch/broken"
head -n 3 "$scratch/dumps/bramble-flooding.dump" >"$scratch/broken/bramble-flooding.dump"
echo 'circle title 1,2 3x4' >>"$scratch/broken/bramble-flooding.dump"
"$BUILD/yardstick" "$scratch/broken" out/fonts >"$scratch/said" 2>&1
expect_equal bench-yardstick-broken 2 "$?"
"$BUILD/yardstick" "$scratch" out/fonts >"$scratch/said" 2>&1
expect_equal bench-yardstick-none 2 "$?"

# ---- other typesetters ----

# has_words MAKER: each text of the dumps that has nothing but letters and spaces.
has_words() {
    awk -f tests/bench/peers/page.awk -f "tests/bench/peers/$1.awk" "$scratch"/dumps/*.dump \
        >"$scratch/made" 2>"$scratch/stderr"
    expect_empty "bench-$1" "$(cat "$scratch/stderr")"
    expect_empty "bench-$1-words" "$(sed -n 's/^text .* "\([A-Za-z ]*\)"$/\1/p' "$scratch"/dumps/*.dump |
        sort -u | while read -r words; do
            grep -qF -- "$words" "$scratch/made" || echo "$words"
        done | head -n 5)"
}
for maker in groff tex html office; do
    has_words $maker
done

# ---- counts ----

cat >"$scratch/one" <<'END'
events: Ir
ob=(1) /usr/bin/maydeck
fl=(1) main.c
fn=(1) main
10 5
+3 7
cob=(2) /usr/lib/libz.so.1.2.13
cfn=(2) deflate
calls=2 0
* 4000000000
ob=(2)
fn=(2)
7 3999999990
-2 10
ob=(3) /usr/lib/libc.so.6
fn=(3) memset
1 100
END
sed 's/4000000000/1000/; s/3999999990/990/' "$scratch/one" >"$scratch/two"
awk -f tests/bench/callgrind.awk "$scratch/one" "$scratch/two" >"$scratch/counts"
expect_equal bench-count-total 4000001224 "$(count_of "$scratch/counts" total)"
expect_equal bench-count-called 4000001000 "$(count_of "$scratch/counts" called deflate)"
expect_equal bench-count-object 4000001000 "$(count_of "$scratch/counts" object libz.so.1.2.13)"
expect_equal bench-count-own 4000001024 "$(count_own "$scratch/counts")"
expect_equal bench-count-file 1112 "$(count_of "$scratch/counts" file "$scratch/two")"
expect_equal bench-count-none 0 "$(count_of "$scratch/counts" called inflate)"
exit $failures
