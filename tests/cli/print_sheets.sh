#!/bin/sh
# What is printed beside the cards: all of them small on one page, and stickers for the gear; read
# back from the files by another program.
. tests/tap.sh

base=$scratch/base
out=$scratch/out
cp -R tests/islands "$base"

# printed ARGUMENT...: of one boat, into an empty folder.
printed() {
    rm -rf "$out"
    maydeck print "$base" --boat yarrow --date "$print_date" -o "$out" "$@"
}

# ---- all cards small on one page ----

printed --proof
expect_status proof 0
expect_equal proof-files 'yarrow-proof.pdf yarrow.pdf' "$(folder_list "$out" | tr "\n" " " | sed "s/ $//")"
expect_equal proof-pages 1 "$(pdfinfo "$out/yarrow-proof.pdf" | sed -n 's/^Pages: *//p')"
grep -q "yarrow-proof.pdf: [0-9]* pages on one" "$scratch/stdout" && ok proof-told ||
    not_ok proof-told "$(cat "$scratch/stdout")"
# each code that --list tells stands there below its card: pdftotext drops narrow letters from a page
# with so much tiny print, so it is looked for among what was placed
maydeck print "$base" --boat yarrow --date "$print_date" --list -o "$out"
grep -o '[0-9A-Z]\{4\}-[0-9A-Z]\{4\}' "$scratch/stdout" | sort -u >"$scratch/codes"
maydeck print "$base" --boat yarrow --date "$print_date" --proof --dump -o "$scratch/dumps"
sed -n 's/^text views .* "\(.*\)"$/\1/p' "$scratch/dumps/yarrow-overview.dump" |
    grep '....-....' | sort >"$scratch/proof"
expect_equal proof-codes "$(cat "$scratch/codes")" "$(cat "$scratch/proof")"
expect_equal proof-views "$(($(ls "$scratch/dumps" | wc -l) - 1))" \
    "$(grep -c '^view ' "$scratch/dumps/yarrow-overview.dump")"
[ "$(wc -l <"$scratch/codes")" -gt 15 ] || not_ok proof-codes-many "$(cat "$scratch/codes")"
qpdf --check "$out/yarrow-proof.pdf" >"$scratch/qpdf" 2>&1 || not_ok proof-sound "$(cat "$scratch/qpdf")"
printed --proof --card flooding
expect_equal proof-of-one-files 'yarrow-flooding.pdf yarrow-proof.pdf' "$(folder_list "$out" | tr "\n" " " | sed "s/ $//")"
printed --proof --paper letter --mono
expect_equal proof-ending-files 'yarrow-proof.letter.mono.pdf yarrow.letter.mono.pdf' \
    "$(folder_list "$out" | tr "\n" " " | sed "s/ $//")"

# ---- stickers ----

printed --stickers
expect_status stickers 0
expect_equal stickers-files yarrow-stickers.pdf "$(folder_list "$out")"
pdftotext -raw "$out/yarrow-stickers.pdf" "$scratch/stickers.txt"
# each tag of her model and of her own, and of no other boat
sed -n 's/^.*\btag: \([CEF][0-9]*\)\b.*/\1/p' "$base/models/"*.yaml "$base/boats/yarrow.yaml" |
    sort -u >"$scratch/tags"
grep -o '\b[CEF][0-9][0-9]*\b' "$scratch/stickers.txt" | sort -u >"$scratch/stuck"
expect_empty stickers-tags "$(comm -23 "$scratch/stuck" "$scratch/tags")"
[ "$(wc -l <"$scratch/stuck")" -gt 20 ] || not_ok stickers-many "$(cat "$scratch/stickers.txt")"
expect_equal stickers-hers "$(wc -l <"$scratch/stuck")" \
    "$(grep -c 'YARROW · SPECIMEN' "$scratch/stickers.txt")"

# another size, on Letter, without colour
printed --stickers --label 90x50 --label-gap 3x2 --label-at 12x10 --paper letter --mono
expect_status stickers-sized 0
expect_equal stickers-sized-files yarrow-stickers.letter.mono.pdf "$(folder_list "$out")"
# what cannot be
printed --stickers --label 90
expect_status stickers-no-size 2
printed --stickers --label 400x50
expect_status stickers-too-wide 2
grep -q 'no label of that size has room on a sheet of a4' "$scratch/stderr" && ok stickers-too-wide-told ||
    not_ok stickers-too-wide-told "$(cat "$scratch/stderr")"
printed --stickers --label 63x20
expect_status stickers-too-small 1
grep -q 'the sticker of [CEF][0-9]* is [0-9.]* mm too tall for its label' "$scratch/problems" &&
    ok stickers-too-small-told || not_ok stickers-too-small-told "$(cat "$scratch/problems")"
expect_empty stickers-too-small-none "$(ls "$out")"
printed --stickers --card flooding
expect_status stickers-no-cards 2
printed --label 63x40
expect_status label-alone 2
# same input, same bytes
printed --stickers
cp "$out/yarrow-stickers.pdf" "$scratch/first.pdf"
printed --stickers
cmp -s "$scratch/first.pdf" "$out/yarrow-stickers.pdf" && ok stickers-same || not_ok stickers-same
exit $failures
