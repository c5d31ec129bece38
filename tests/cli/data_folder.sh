#!/bin/sh
# Where the program finds its procedures and faces: what MAYDECK_DATA names, then what lies beside
# it, then a clone around it, then where it was built to be installed; and all of it in one place.
. tests/tap.sh

unset MAYDECK_DATA
base=$top/tests/fleet
maydeck print "$base" --boat bramble --date "$print_date" -o "$scratch/whole"
expect_status data-clone 0

# data_lay FOLDER: the program's own files as they are installed.
data_lay() {
    mkdir -p "$1"
    cp -R procedures "$1/procedures"
    cp -R out/fonts "$1/fonts"
}

# tree_lay FOLDER: a tree with the program and its files, wherever it may be moved to.
tree_lay() {
    mkdir -p "$1/bin"
    cp "$MAYDECK" "$1/bin/maydeck"
    data_lay "$1/share/maydeck"
}

# run PROGRAM [VARIABLE=value...]: prints from another folder.
run() {
    program=$1
    shift
    rm -rf "$scratch/out"
    # shellcheck disable=SC2086
    (cd "$scratch" && env "$@" $WRAP "$program" print "$base" --boat bramble --date "$print_date" \
        -o "$scratch/out") >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# prints NAME PROGRAM [VARIABLE=value...]: the very same files
prints() {
    name=$1
    shift
    run "$@"
    expect_status "data-$name" 0
    expect_empty "data-$name-same" "$(diff -r "$scratch/whole" "$scratch/out" 2>&1)"
}

# refuses NAME WORDS PROGRAM [VARIABLE=value...]: no card, and the words are said
refuses() {
    name=$1 words=$2
    shift 2
    run "$@"
    expect_status "data-$name" 3
    expect_empty "data-$name-no-card" "$(find "$scratch/out" -type f 2>/dev/null)"
    if tr '\n' ' ' <"$scratch/stderr" | tr -s ' ' | grep -qF "$words"; then
        ok "data-$name-told"
    else
        not_ok "data-$name-told" "expected '$words' in:" "$(cat "$scratch/stderr")"
    fi
}

tree_lay "$scratch/one tree"
prints beside "$scratch/one tree/bin/maydeck"
mv "$scratch/one tree" "$scratch/moved tree"
moved="$scratch/moved tree/bin/maydeck"
prints moved "$moved"
mkdir "$scratch/links"
ln -s "$moved" "$scratch/links/maydeck"
prints by-a-link "$scratch/links/maydeck"

# Under a clone, as an archive that is unpacked in one: what lies beside comes first.
mkdir -p "$scratch/clone/out"
cp -R procedures "$scratch/clone/procedures"
echo '# a remark' >>"$scratch/clone/procedures/flooding.yaml"
cp -R "$scratch/moved tree" "$scratch/clone/out/unpacked"
prints beside-in-a-clone "$scratch/clone/out/unpacked/bin/maydeck"

# What the variable names comes before all else, and nothing takes its place.
data_lay "$scratch/named"
prints named "$moved" MAYDECK_DATA="$scratch/named"
prints named-relative "$moved" MAYDECK_DATA=named
prints named-empty "$moved" MAYDECK_DATA=
echo '# a remark' >>"$scratch/named/procedures/flooding.yaml"
refuses named-altered 'named/procedures/flooding.yaml is not the text' "$moved" \
    MAYDECK_DATA="$scratch/named"
refuses named-nowhere "MAYDECK_DATA names the folder $scratch/nowhere, so no other was looked in" \
    "$moved" MAYDECK_DATA="$scratch/nowhere"
rm -r "$scratch/named"
data_lay "$scratch/named"
rm "$scratch/named/fonts/faces.txt"
refuses faces-of-one-place 'named/fonts/faces.txt' "$moved" MAYDECK_DATA="$scratch/named"

# What lies beside is missed where a part of it is lost: a clone does not stand in for it.
rm -r "$scratch/clone/out/unpacked/share/maydeck/procedures"
refuses beside-without-procedures 'there is no folder clone/out/unpacked/share/maydeck/procedures' \
    "$scratch/clone/out/unpacked/bin/maydeck"
rm -r "$scratch/moved tree/share/maydeck/fonts"
refuses beside-without-faces 'moved tree/share/maydeck/fonts/faces.txt' "$moved"

# Nothing is to be found: all places are named.
mkdir -p "$scratch/alone/bin"
cp "$MAYDECK" "$scratch/alone/bin/maydeck"
built=$(sed -n 1p "$BUILD/data_folder")
if [ -e "$built" ]; then
    skip data-nowhere "maydeck is installed in $built"
else
    refuses nowhere "looked in $scratch/alone/share/maydeck, in a clone that the program stands in, and in $built:" \
        "$scratch/alone/bin/maydeck"
fi
exit $failures
