#!/bin/sh
# Boats printed by several processes: the same files, list, register and words, in the same order,
# whatever their number; what stands is left; a process that ends in the middle loses its boat
# alone, and says so.
. tests/tap.sh

base=$scratch/base
mkdir -p "$base/boats" "$base/models"
cp tests/islands/base.yaml "$base/"
cp tests/islands/models/*.yaml "$base/models/"
cp tests/islands/boats/*.yaml "$base/boats/"
boats=$(ls "$base/boats" | wc -l)

# print_at NAME PROCESSES [OPTION...]: into $scratch/NAME, with what was told beside it; a register
# of its own.
print_at() {
    name=$1 processes=$2
    shift 2
    rm -f "$base/register.csv"
    maydeck start "$base" --register >/dev/null 2>&1
    maydeck print "$base" --date "$print_date" -j "$processes" -o "$scratch/out" "$@"
    echo "status $status" >>"$scratch/stdout"
    cp "$scratch/stdout" "$scratch/$name.stdout"
    cp "$scratch/stderr" "$scratch/$name.stderr"
    cp "$base/register.csv" "$scratch/$name.register"
    mv "$scratch/out" "$scratch/$name"
}

# same_as_one KIND PROCESSES: what was printed so is what one process printed.
same_as_one() {
    expect_empty "many-$1-files-$2" "$(diff -rq "$scratch/$1-1" "$scratch/$1-$2" 2>&1)"
    for what in stdout stderr register; do
        expect_empty "many-$1-$what-$2" "$(diff "$scratch/$1-1.$what" "$scratch/$1-$2.$what" 2>&1)"
    done
}

print_at set-1 1
[ "$(ls "$scratch"/set-1/*.pdf | wc -l)" -eq "$boats" ] || not_ok many-all-printed "$(cat "$scratch/set-1.stderr")"
[ "$(wc -l <"$scratch/set-1.register")" -gt 100 ] || not_ok many-register-full
for processes in 2 3 64; do
    print_at "set-$processes" "$processes"
    same_as_one set "$processes"
done
print_at each-1 1 --each --proof --draft --paper letter
print_at each-2 2 --each --proof --draft --paper letter
same_as_one each 2

# Wrong boats in the middle are told in their places.
sed -i 's/^  mmsi: .*/  mmsi: "12"/' "$base/boats/$(ls "$base/boats" | sed -n 2p)"
echo 'equipment: [' >"$base/boats/$(ls "$base/boats" | sed -n 4p)"
print_at wrong-1 1
print_at wrong-3 3
grep -q 'status 1' "$scratch/wrong-1.stdout" && ok many-wrong-status || not_ok many-wrong-status "$(cat "$scratch/wrong-1.stdout")"
same_as_one wrong 3
cp tests/islands/boats/*.yaml "$base/boats/"

for wrong in 0 65 x 1.5 -1 ''; do
    maydeck print "$base" --date "$print_date" -o "$scratch/none" -j "$wrong"
    expect_status "many-wrong-number-$wrong" 2
    [ ! -e "$scratch/none" ] || not_ok "many-wrong-number-$wrong-nothing" "$(ls "$scratch/none")"
done

# ---- what stands is left ----

# Boats that the last run printed anew, and those that it left.
anew() {
    sed -n 's,^.*/\([a-z0-9_-]*\)\.pdf: [0-9]* of .*,\1,p' "$scratch/stdout" | tr '\n' ' '
}
left() {
    sed -n 's,^.*/\([a-z0-9_-]*\)\.pdf: unchanged .*,\1,p' "$scratch/stdout" | tr '\n' ' '
}
# stands NAME EXPECTED-ANEW [OPTION...]
stands() {
    name=$1 expected=$2
    shift 2
    maydeck print "$base" --date "$print_date" -o "$scratch/stand" "$@"
    expect_equal "stands-$name" "$expected" "$(anew)"
    [ "$(echo $(anew) $(left) | wc -w)" -eq "$boats" ] || not_ok "stands-$name-all" "$(cat "$scratch/stdout")"
    expect_empty "stands-$name-not-older" "$(grep 'not of this run' "$scratch/stdout")"
}
all=$(ls "$base/boats" | sed 's/\.yaml$//' | tr '\n' ' ')
one=$(echo "$all" | cut -d ' ' -f 1)
two=$(echo "$all" | cut -d ' ' -f 2)
stands first "$all"
cp -R "$scratch/stand" "$scratch/reference"
stands nothing ''
stands touched '' -j 1
touch "$base/boats/$one.yaml"
stands only-touched ''
stands again "$all" --again
expect_empty stands-again-same "$(diff -rq "$scratch/reference" "$scratch/stand" 2>&1)"
echo '# seen' >>"$base/boats/$one.yaml"
stands record "$one "
printf 'x' | dd of="$scratch/stand/$two.pdf" bs=1 seek=1000 conv=notrunc 2>/dev/null
stands byte "$two "
rm "$scratch/stand/$one.pdf"
stands missing "$one "
: >"$scratch/stand/$one.pdf"
stands empty "$one "
mv "$scratch/stand/$one.pdf" "$scratch/kept"
cp "$scratch/stand/$two.pdf" "$scratch/stand/$one.pdf"
stands exchanged "$one "
echo '# seen' >>"$base/base.yaml"
stands base "$all"
for model in "$base"/models/*.yaml; do
    echo '# seen' >>"$model"
    break
done
stands model "$all"
maydeck print "$base" --date 2026-11-21 -o "$scratch/stand"
expect_equal stands-day "$all" "$(anew)"
maydeck print "$base" --date 2026-11-21 -o "$scratch/stand" --pouch wet
expect_equal stands-option "$all" "$(anew)"
maydeck print "$base" --date 2026-11-21 -o "$scratch/stand" --boat "$one" --quiet
expect_empty stands-quiet "$(cat "$scratch/stdout")"

# Several files a boat: all of them stand, or none is believed.
maydeck print "$base" --date "$print_date" -o "$scratch/each" --boat "$one" --each
maydeck print "$base" --date "$print_date" -o "$scratch/each" --boat "$one" --each
expect_equal stands-each "$(ls "$scratch"/each/*.pdf | wc -l)" "$(grep -c unchanged "$scratch/stdout")"
rm "$scratch/each/$one-man_overboard.pdf"
maydeck print "$base" --date "$print_date" -o "$scratch/each" --boat "$one" --each
expect_equal stands-each-one-missing 0 "$(grep -c unchanged "$scratch/stdout")"
[ -s "$scratch/each/$one-man_overboard.pdf" ] && ok stands-each-made || not_ok stands-each-made
maydeck print "$base" --date "$print_date" -o "$scratch/each" --boat "$one" --card man_overboard
rm "$scratch/each/$one-man_overboard.pdf"
maydeck print "$base" --date "$print_date" -o "$scratch/each" --boat "$one"
maydeck print "$base" --date "$print_date" -o "$scratch/each" --boat "$one" --each
expect_equal stands-each-row-gone 0 "$(grep -c unchanged "$scratch/stdout")"

# A boat with a card held back is gone through each time.
sed -i '/item: vhf/d' "$base/boats/$two.yaml"
for run in 1 2; do
    maydeck print "$base" --date "$print_date" -o "$scratch/held" --boat "$two"
    expect_status "stands-held-$run" 1
    grep -q held "$scratch/stderr" && ok "stands-held-told-$run" || not_ok "stands-held-told-$run" "$(cat "$scratch/stdout" "$scratch/stderr")"
done
exit $failures
