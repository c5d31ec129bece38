#!/bin/sh
# The work of a large base is split by a build tool: a folder a boat, no state that is shared but the
# register. What several runs make side by side is what one run makes, a changed boat alone is made
# again, and no row of the register is lost.
. tests/tap.sh

base=$scratch/base
mkdir -p "$base/boats"
cp tests/islands/base.yaml "$base/"
cp -R tests/islands/models "$base/"
cp tests/islands/boats/*.yaml "$base/boats/"
maydeck start "$base" --register >/dev/null 2>&1
[ -f "$base/register.csv" ] || not_ok sharded-register "$(cat "$scratch/problems")"

# What one run makes, and would make.
maydeck print "$base" --date "$print_date" -o "$scratch/one"
expect_status sharded-one 0
grep -v '^event,\|^#' "$base/register.csv" | sort >"$scratch/rows-one"
[ "$(wc -l <"$scratch/rows-one")" -gt 100 ] || not_ok sharded-rows-many "$(cat "$scratch/rows-one")"
rm "$base/register.csv"
maydeck start "$base" --register >/dev/null 2>&1
maydeck print "$base" --list --date "$print_date" -o "$scratch/many"
# a line a file: BASE/BOAT.pdf: N of N cards
sed -n 's,^.*/\([a-z0-9_-]*\)\.pdf: .*,\1,p' "$scratch/stdout" >"$scratch/listed"
expect_equal sharded-listed "$(cd "$base/boats" && ls | sed 's/\.yaml$//' | sort)" \
    "$(sort "$scratch/listed")"

# A makefile as a base would keep one.
cat >"$scratch/cards.mk" <<MAKE
boats := $(tr '\n' ' ' <"$scratch/listed")
all: \$(boats:%=$scratch/many/%.done)
$scratch/many/%.done: $base/boats/%.yaml $base/base.yaml \$(wildcard $base/models/*.yaml)
	@echo made \$* >>$scratch/made
	@'$MAYDECK' print $base --boat \$* --date $print_date --quiet -o $scratch/many/\$* 2>>$scratch/said
	@touch \$@
MAKE
split() {
    : >"$scratch/made"
    mkdir -p "$scratch/many"
    ${MAKE:-make} -s -f "$scratch/cards.mk" -j 4 all >"$scratch/stdout" 2>"$scratch/stderr"
}
unset MAKEFLAGS MFLAGS
split
expect_equal sharded-made "$(wc -l <"$scratch/listed")" "$(wc -l <"$scratch/made")"
for boat in $(cat "$scratch/listed"); do
    cmp -s "$scratch/one/$boat.pdf" "$scratch/many/$boat/$boat.pdf" && ok "sharded-same-$boat" ||
        not_ok "sharded-same-$boat" "$(cat "$scratch/stderr" "$scratch/said")"
done
grep -v '^event,\|^#' "$base/register.csv" | sort >"$scratch/rows-many"
expect_equal sharded-rows "$(cat "$scratch/rows-one")" "$(cat "$scratch/rows-many")"

# Nothing changed, nothing to do; one boat changed, hers alone.
split
expect_empty sharded-again "$(cat "$scratch/made")"
boat=$(head -n 1 "$scratch/listed")
sleep 1
touch "$base/boats/$boat.yaml"
split
expect_equal sharded-one-changed "made $boat" "$(cat "$scratch/made")"
exit $failures
