#!/bin/sh
# Where the type faces are taken from: any folder that holds the very files, with their licences.
. tests/tap.sh

share=$scratch/share
out=$scratch/out
HOME=$scratch/home
export HOME

# copied NAME STATUS [VARIABLE=value...]: fonts/copy with no fonts but those in $share
copied() {
    name=$1 wanted=$2
    shift 2
    rm -rf "$out"
    env SHARE="$share" "$@" sh fonts/copy "$out" >"$scratch/stdout" 2>"$scratch/stderr"
    status=$?
    expect_status "faces-$name" "$wanted"
}

# all_there NAME: faces, list and licences, and nothing else
all_there() {
    expect_equal "faces-$1-all" "$(ls -A out/fonts | grep -v '^\.copied$')" "$(ls -A "$out")"
    expect_empty "faces-$1-same" "$(diff -r -x .copied -x '*.copyright' out/fonts "$out" 2>&1)"
}

told() {
    if grep -qF "$2" "$scratch/stderr"; then ok "faces-$1-told"; else not_ok "faces-$1-told" "$(cat "$scratch/stderr")"; fi
}

# As packages lay them.
lay() {
    awk '!/^#/ && NF > 3 { print $2, $3, $4 }' fonts/faces.txt | while read -r file package installed; do
        mkdir -p "$share/$(dirname "$installed")" "$share/doc/$package"
        cp "out/fonts/$file" "$share/$installed"
        cp "out/fonts/$file.copyright" "$share/doc/$package/copyright"
    done
}
lay
copied packages 0
all_there packages

# What was listed once does not stay.
touch "$out/Older-Bold.ttf" "$out/Older-Bold.ttf.copyright"
SHARE=$share sh fonts/copy "$out"
all_there older

# Of a system that has them elsewhere, in a folder with a space.
mkdir -p "$share/fonts/other place"
find "$share/fonts" -name '*.ttf' -exec mv {} "$share/fonts/other place/" \;
copied elsewhere 0
all_there elsewhere

# One folder, with the licences beside the faces as the program's own data have them.
rm -rf "$share"
mkdir -p "$share"
cp -R out/fonts "$scratch/a folder"
if [ -n "$(find /usr/local/share/fonts -name '*.ttf' 2>/dev/null)" ]; then
    skip faces-nowhere 'this system has faces of its own in /usr/local'
else
    copied nowhere 1
    told nowhere 'is nowhere on this system'
fi
copied named 0 FONTS_FROM="$scratch/a folder"
all_there named
copied named-wrongly 1 FONTS_FROM="$scratch/nothing"
told named-wrongly "names $scratch/nothing"

rm "$scratch/a folder"/*.copyright
copied without-licence 1 FONTS_FROM="$scratch/a folder"
told without-licence 'has no licence beside it'
echo 'terms' >"$scratch/a folder/LICENSE.txt"
copied with-licence 0 FONTS_FROM="$scratch/a folder"
all_there with-licence

# Another file of the same name is passed over, and by itself refused.
face=$(awk '$1 == "code" { print $2 }' fonts/faces.txt)
mkdir "$scratch/a folder/aa"
printf 'no face' >"$scratch/a folder/aa/$face"
copied passes-over 0 FONTS_FROM="$scratch/a folder"
all_there passes-over
rm "$scratch/a folder/$face"
copied altered 1 FONTS_FROM="$scratch/a folder"
told altered "no $face on this system is one that was checked"
exit $failures
