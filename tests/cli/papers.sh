#!/bin/sh
# Papers: which there are, who names one, what the files are called, how large their pages are.
. tests/tap.sh

base=$scratch/base
out=$scratch/out

# printed ARGUMENT...: one small boat, into an empty folder.
printed() {
    rm -rf "$out"
    maydeck print "$base" --boat bramble --date "$print_date" -o "$out" "$@"
}

# files_are NAME FILES: these and no others were made.
files_are() {
    expect_equal "$1-files" "$2" "$(cd "$out" 2>/dev/null && echo *)"
}

# size_is NAME FILE SIZE: every page is so large, in points.
size_is() {
    expect_equal "$1-size" "$3" "$(pdfinfo -f 1 -l 99 "$out/$2" 2>/dev/null |
        sed -n 's/^Page  *[0-9]* size: *\(.* pts\).*/\1/p' | sort -u)"
}

cp -R tests/fleet "$base"

# ---- who names the paper ----

printed
files_are none-named bramble.pdf
size_is none-named bramble.pdf '595.276 x 841.89 pts'

printed --paper letter
files_are option bramble.letter.pdf
size_is option bramble.letter.pdf '612 x 792 pts'

echo 'paper: letter' >>"$base/base.yaml"
printed
files_are base bramble.pdf
size_is base bramble.pdf '612 x 792 pts'
printed --paper a4
files_are option-before-base bramble.a4.pdf
size_is option-before-base bramble.a4.pdf '595.276 x 841.89 pts'

# an older file on another paper is told, as one in another language is
maydeck print "$base" --boat bramble --date "$print_date" -o "$out"
if grep -q '^.*/bramble.a4.pdf: not of this run$' "$scratch/stdout"; then
    ok older-paper-is-told
else
    not_ok older-paper-is-told "$(cat "$scratch/stdout")"
fi

# ---- a paper that there is not ----

all=$(sed -n 's/^    PAPER([A-Z0-9_]*, "\([a-z0-9]*\)".*/\1/p' include/paper_list.h)
written=$(echo $all | sed 's/ / or /g')
printed --paper foolscap
expect_status wrong-option 2
expect_equal wrong-option-what 'maydeck: error: --paper does not take "foolscap"' \
    "$(sed -n 1p "$scratch/stderr")"
expect_equal wrong-option-remedy "  remedy: write $written" "$(sed -n 2p "$scratch/stderr")"

sed -i 's/^paper: .*/paper: foolscap/' "$base/base.yaml"
printed
expect_status wrong-in-base 1
for paper in $all; do
    if ! grep -q "\"foolscap\"" "$scratch/problems" || ! grep -q "$paper" "$scratch/problems"; then
        not_ok "wrong-in-base-names-$paper" "$(cat "$scratch/problems")"
    fi
done
ok wrong-in-base-is-told

# ---- what does not fit names a paper that has more room ----

sed -i 's/^paper: .*/paper: letter/' "$base/base.yaml"
maydeck check "$base" --date "$print_date"
grep ' mm too long at the smallest size' "$scratch/problems" >"$scratch/over"
if [ ! -s "$scratch/over" ]; then
    skip too-long-names-a-paper "all cards fit on Letter"
elif grep -q -- '--paper a4' "$scratch/problems"; then
    ok too-long-names-a-paper
else
    not_ok too-long-names-a-paper "$(cat "$scratch/problems")"
fi

exit $failures
