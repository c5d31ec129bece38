#!/bin/sh
# One card alone (--card) is what it is in the set, with the same number of cards beside it and the
# same code, although the plan of the boat is not laid out for it.
. tests/tap.sh

base=$scratch/base
cp -R tests/fleet "$base"

# printed FOLDER ARGUMENT...: of one boat, into that folder.
printed() {
    folder=$scratch/$1
    shift
    maydeck print "$base" --boat samphire --date "$print_date" -o "$folder" "$@"
}

printed each --each
expect_status each 0
all=$(sed -n 's/.*samphire.pdf: \([0-9]*\) of \([0-9]*\) cards$/\2/p' "$scratch/stdout")
[ "$all" -gt 20 ] && ok "each-of-$all" || not_ok each-of "$(cat "$scratch/stdout")"
printed alone --card flooding,safety_plan
expect_status alone 0
expect_equal alone-of "$all $all" \
    "$(sed -n 's/.*: [0-9]* of \([0-9]*\) pages; .*/\1/p' "$scratch/stdout" | xargs)"
# how many of them are its own
for card in flooding safety_plan; do
    expect_equal "alone-pages-$card" "$(pages_said "$folder/samphire-$card.pdf")" \
        "$(sed -n "s/.*-$card.pdf: \([0-9]*\) of [0-9]* pages; .*/\1/p" "$scratch/stdout")"
done
[ "$(pages_said "$folder/samphire-safety_plan.pdf")" -gt 1 ] || not_ok alone-pages-several
printed flooding --card flooding
expect_equal flooding-of "$all" "$(sed -n 's/.*: [0-9]* of \([0-9]*\) pages; .*/\1/p' "$scratch/stdout")"
for file in alone/samphire-flooding alone/samphire-safety_plan flooding/samphire-flooding; do
    cmp "$scratch/$file.pdf" "$scratch/each/${file#*/}.pdf" >"$scratch/differs" 2>&1 &&
        ok "same-$file" || not_ok "same-$file" "$(cat "$scratch/differs")"
done
expect_equal flooding-files samphire-flooding.pdf "$(folder_list "$scratch/flooding")"

# the code and the pages that --list tells of it
printed list --list
grep ' FLOODING' "$scratch/stdout" >"$scratch/of_set"
printed list --list --card flooding
grep ' FLOODING' "$scratch/stdout" >"$scratch/of_card"
expect_equal list "$(cat "$scratch/of_set")" "$(cat "$scratch/of_card")"

# on paper of two sides too
printed a5 --paper a5 --each
printed a5-alone --paper a5 --card galley_fire
for file in "$scratch"/a5-alone/*.pdf; do
    cmp "$file" "$scratch/a5/${file##*/}" >"$scratch/differs" 2>&1 &&
        ok "same-a5-${file##*/}" || not_ok "same-a5-${file##*/}" "$(cat "$scratch/differs")"
done
exit $failures
