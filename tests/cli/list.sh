#!/bin/sh
# `print --list`: the files and cards that printing would make, and nothing is written.
. tests/tap.sh

fleet=$scratch/fleet
cp -R tests/fleet "$fleet"

# same NAME ARGUMENT...: it names the files that printing makes then, and ends as that does.
same() {
    name=list-$1
    shift
    rm -rf "$scratch/none" "$scratch/out"
    maydeck print "$fleet" --date "$print_date" -o "$scratch/none" --list "$@"
    listed=$status
    if [ -e "$scratch/none" ]; then not_ok "$name-nothing"; else ok "$name-nothing"; fi
    cp "$scratch/stdout" "$scratch/list"
    maydeck print "$fleet" --date "$print_date" -o "$scratch/out" "$@"
    expect_equal "$name-status" "$status" "$listed"
    expect_equal "$name-files" "$(folder_list "$scratch/out")" \
        "$(sed -n "s,^$scratch/none/\([^:]*\).*,\1,p" "$scratch/list" | sort)"
}

same set
same cards --card flooding,engine_fire
same each --each --boat samphire
same draft --draft --boat tamarisk

# The codes are those of the cards.
same tamarisk --boat tamarisk
maydeck why "$fleet" --boat tamarisk --all --date "$print_date"
expect_equal list-codes "$(sed -n 's/^Card [0-9]*[A-Z]* ([a-z_0-9]*), check code \([0-9A-Z-]*\).*/\1/p' "$scratch/stdout")" \
    "$(sed -n 's/^  \([0-9A-Z-]*\)  .*/\1/p' "$scratch/list")"

# A card that is held has a line that says why.
sed -i '/item: fuel_shutoff_diesel/d' "$fleet/boats/tamarisk.yaml"
same held --boat tamarisk
expect_equal list-held-status 1 "$listed"
expect_equal list-held '3 ENGINE FIRE
10 DIESEL LEAK
18 NO ENGINE, ROPE' "$(sed -n 's,^  held  *\([^:]*\): .*boats/tamarisk.yaml:[0-9:]*: fuel_shutoff_diesel is not recorded.*,\1,p' \
    "$scratch/list")"
# A draft has those, and the cards that go without gear that nobody recorded.
same held-draft --boat tamarisk --draft
expect_equal list-held-draft '3 ENGINE FIRE
10 DIESEL LEAK
16 INJURY
17 ILLNESS
18 NO ENGINE, ROPE
19 AGROUND
21 ANCHOR DRAGS
23 MAST DOWN
25 COLLISION
28 HEAVY WEATHER' "$(sed -n 's/^  [0-9A-Z-]*  \(.*\), a draft\(, [0-9]* pages\)\{0,1\}$/\1/p' "$scratch/list")"

# What is there is left as it is.
mkdir -p "$scratch/kept"
echo yesterday >"$scratch/kept/tamarisk.pdf"
maydeck print "$fleet" --date "$print_date" -o "$scratch/kept" --list
expect_equal list-kept 'tamarisk.pdf yesterday' "$(folder_list "$scratch/kept") $(cat "$scratch/kept/tamarisk.pdf")"
maydeck print "$fleet" --list --quiet
expect_status list-quiet 2
exit $failures
