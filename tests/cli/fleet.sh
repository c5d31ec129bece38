#!/bin/sh
# A fleet: one boat's wrong record never stops the others, and what was asked for
# is what is printed.
. tests/tap.sh

mkdir "$scratch/whole"
maydeck print tests/fleet --date "$print_date" -o "$scratch/whole"
expect_status fleet-whole 0
boats=$(cd tests/fleet/boats && ls | sed 's/\.yaml$//')
expect_equal fleet-files "$(echo "$boats" | sed 's/$/.pdf/')" "$(folder_list "$scratch/whole")"
first=$(echo "$boats" | sed -n 1p)
second=$(echo "$boats" | sed -n 2p)
if [ -z "$second" ] || [ ! -s "$scratch/whole/$second.pdf" ]; then
    not_ok fleet-two 'two boats are needed, both printed'
    exit 1
fi

# broken NAME: the first boat's record is as the function broke it.
broken() {
    rm -rf "$scratch/out"
    mkdir "$scratch/out"
    maydeck print "$scratch/fleet" --date "$print_date" -o "$scratch/out"
    expect_status "fleet-$1" 1
    grep -q "boats/$first.yaml" "$scratch/stderr" || not_ok "fleet-$1-named" "$(cat "$scratch/stderr")"
    if cmp -s "$scratch/whole/$second.pdf" "$scratch/out/$second.pdf"; then
        ok "fleet-$1-others-printed"
    else
        not_ok "fleet-$1-others-printed" "$second.pdf is missing or differs"
    fi
    if [ -e "$scratch/out/$first.pdf" ]; then
        not_ok "fleet-$1-none" "$first.pdf was printed"
    else
        ok "fleet-$1-none"
    fi
    maydeck check "$scratch/fleet"
    expect_status "fleet-$1-check" 1
}

record=$scratch/fleet/boats/$first.yaml
fleet_fresh() {
    rm -rf "$scratch/fleet"
    cp -R tests/fleet "$scratch/fleet"
}

fleet_fresh
echo 'frobnicate: yes' >>"$record"
broken unknown-key
fleet_fresh
echo 'boat: [' >>"$record"
broken syntax
fleet_fresh
printf 'note: \377\n' >>"$record"
broken encoding
fleet_fresh
: >"$record"
broken empty
fleet_fresh
rm "$record"
ln -s nowhere.yaml "$record"
rm -rf "$scratch/out"
mkdir "$scratch/out"
maydeck print "$scratch/fleet" --date "$print_date" -o "$scratch/out"
case $status in
1 | 3) ok fleet-dangling ;;
*) not_ok fleet-dangling "status $status" "$(cat "$scratch/stderr")" ;;
esac

# One boat: that file and no other, the same bytes as in the fleet.
mkdir "$scratch/one"
maydeck print tests/fleet --boat "$second" --date "$print_date" -o "$scratch/one"
expect_status fleet-one-boat 0
expect_equal fleet-one-boat-files "$second.pdf" "$(folder_list "$scratch/one")"
if cmp -s "$scratch/whole/$second.pdf" "$scratch/one/$second.pdf"; then
    ok fleet-one-boat-same
else
    not_ok fleet-one-boat-same "$second.pdf differs from the fleet's"
fi

# Nothing is printed for a wrong base record, and the base is not touched.
fleet_fresh
before=$(cd "$scratch/fleet" && find . -type f -exec cksum {} + | sort)
mkdir "$scratch/again"
maydeck print "$scratch/fleet" --date "$print_date" -o "$scratch/again"
expect_equal fleet-base-untouched "$before" "$(cd "$scratch/fleet" && find . -type f -exec cksum {} + | sort)"
echo 'frobnicate: yes' >>"$scratch/fleet/base.yaml"
mkdir "$scratch/none"
maydeck print "$scratch/fleet" --date "$print_date" -o "$scratch/none"
expect_status fleet-wrong-base 1
expect_empty fleet-wrong-base-prints-nothing "$(folder_list "$scratch/none")"
exit $failures
