#!/bin/sh
# Printed files are held against the list beside them: what is cut, changed, swapped, missing, not
# listed or left over is named, and only a folder where all is as it was printed gives status 0.
. tests/tap.sh

whole=$scratch/whole out=$scratch/out
maydeck survey tests/fleet --date "$print_date" -o "$whole"
expect_status verify-printed 0

# From now on each case starts with those files.
out_renew() {
    rm -rf "$out"
    cp -Rp "$whole" "$out"
}

# verified NAME STATUS LINE...: verify ends so, and tells these lines among others.
verified() {
    name=$1 expected=$2
    shift 2
    maydeck verify "$out"
    expect_status "$name" "$expected"
    for line; do
        grep -qF -- "$line" "$scratch/stdout" || not_ok "$name-told" "not told: $line" \
            "$(cat "$scratch/stdout" "$scratch/stderr")"
    done
}

# sum_of FILE
sum_of() {
    sha256sum "$1" | cut -d ' ' -f 1
}

# ---- as printed ----

out_renew
verified verify-good 0 "$out/bramble-survey.pdf: whole and as listed" '3 of 3 files whole and as listed' \
    "bramble, en, a4; printed $print_date by version" 'in the last run'
expect_empty verify-good-quiet "$(cat "$scratch/stderr")"
expect_empty verify-changes-nothing "$(diff -r "$whole" "$out")"
expect_equal verify-list-sums "$(cd "$out" && sha256sum -- *.pdf | awk '{ print $2 "," $1 }')" \
    "$(cut -d , -f 1,2 "$out/printed.csv" | sed 1d | sort)"

# Another run prints one boat: the others are of an older one, and as good.
maydeck survey tests/fleet --boat samphire --date 2026-11-21 -o "$out"
verified verify-older 0 'in an older run' 'samphire, en, a4; printed 2026-11-21'
expect_equal verify-older-count 2 "$(grep -c 'in an older run' "$scratch/stdout")"

# One file alone is held against the list in its folder.
maydeck verify "$out/tamarisk-survey.pdf"
expect_status verify-one 0
expect_equal verify-one-told '1 of 1 file whole and as listed' "$(tail -n 1 "$scratch/stdout")"

# ---- not as printed ----

file=samphire-survey.pdf
size=$(wc -c <"$whole/$file")
for length in 0 1 1000 $((size / 2)) $((size - 1000)) $((size - 2)); do
    out_renew
    head -c "$length" "$whole/$file" >"$out/$file"
    verified "verify-cut-$length" 1 "$out/$file: DAMAGED: " '2 of 3 files'
done

# A byte anywhere is another: where no other thing tells, the sum does.
for at in 9 100 5000 $((size / 3)) $((size / 2)) $((size - 3000)) $((size - 60)); do
    out_renew
    byte=$(od -An -tu1 -j "$at" -N 1 "$whole/$file")
    # shellcheck disable=SC2059
    printf "\\$(printf %o $((byte ^ 1)))" |
        dd of="$out/$file" bs=1 seek="$at" conv=notrunc status=none
    verified "verify-flipped-$at" 1 '2 of 3 files'
    grep -qE "^$out/$file: (DAMAGED|NOT AS LISTED)" "$scratch/stdout" ||
        not_ok "verify-flipped-$at-told" "$(cat "$scratch/stdout")"
done

out_renew
mv "$out/bramble-survey.pdf" "$out/aside"
mv "$out/$file" "$out/bramble-survey.pdf"
mv "$out/aside" "$out/$file"
verified verify-swapped 1 "$out/bramble-survey.pdf: NOT AS LISTED" "$out/$file: NOT AS LISTED" \
    '1 of 3 files'

out_renew
rm "$out/$file"
verified verify-missing 1 "$out/$file: MISSING" 'listed: samphire, en, a4' '2 of 3 files'

out_renew
cp "$out/$file" "$out/copy.pdf"
cp "$out/$file" "$out/CAPITALS.PDF"
echo half >"$out/.maydeck-0123456789abcdef.tmp"
mkdir "$out/folder.pdf"
ln -s "$file" "$out/link.pdf"
echo text >"$out/notes.txt"
verified verify-strange 1 "$out/copy.pdf: NOT LISTED" "$out/CAPITALS.PDF: NOT LISTED" \
    "$out/.maydeck-0123456789abcdef.tmp: LEFT OVER" "$out/folder.pdf: NOT READ: it is not a file" \
    "$out/link.pdf: NOT READ: it is not a file" '3 of 8 files'
grep -q notes.txt "$scratch/stdout" && not_ok verify-strange-others "$(cat "$scratch/stdout")"

# The next run takes away what was left over, and nothing else.
maydeck survey tests/fleet --boat bramble --date "$print_date" -o "$out"
expect_equal verify-swept 'CAPITALS.PDF
bramble-survey.pdf
copy.pdf
notes.txt
samphire-survey.pdf
tamarisk-survey.pdf' "$(folder_list "$out")"

# ---- the list itself ----

out_renew
rm "$out/printed.csv"
verified verify-no-list 1 "$out: there is no list printed.csv" '0 of 3 files' 'it says itself: "Samphire'

# A row of which a cell is spoilt vouches for nothing; the others do. The next run keeps the old
# list aside.
out_renew
sed 's/^samphire-survey.pdf,../samphire-survey.pdf,zz/' "$whole/printed.csv" >"$out/printed.csv"
verified verify-list-damaged 1 "$out/$file: NOT LISTED" '2 of 3 files'
grep -q 'printed.csv:3: the list of what was printed is damaged there: .*sha256' "$scratch/stderr" ||
    not_ok verify-list-damaged-told "$(cat "$scratch/stderr")"
cp "$out/printed.csv" "$scratch/damaged.csv"
maydeck survey tests/fleet --date "$print_date" -o "$out"
expect_empty verify-list-kept "$(cmp "$scratch/damaged.csv" "$out/printed.csv.damaged-1" 2>&1)"
verified verify-list-mended 0 '3 of 3 files'

# A forged sum vouches for the forged file alone.
out_renew
sed "s/$(sum_of "$out/$file")/$(sum_of "$out/bramble-survey.pdf")/" "$whole/printed.csv" >"$out/printed.csv"
verified verify-list-forged 1 "$out/$file: NOT AS LISTED" '2 of 3 files'

# A run was stopped behind its row and before its file: the row before that is still true, and the
# next run takes the other out.
out_renew
sed -n "s/^$file,../$file,00/p" "$whole/printed.csv" >>"$out/printed.csv"
verified verify-stopped 1 "$out/$file: whole, and as it was before a print that was stopped" '2 of 3 files'
maydeck survey tests/fleet --boat bramble --date "$print_date" -o "$out"
verified verify-stopped-mended 0 '3 of 3 files'
expect_equal verify-stopped-rows 4 "$(wc -l <"$out/printed.csv")"

# What a terminal would obey in a name is told in other words.
out_renew
cp "$out/$file" "$out/$(printf 'red\033[31m').pdf"
verified verify-names 1 "$out/red\\x1B[31m.pdf: NOT LISTED"

# ---- the record ----

out_renew
cp -R tests/fleet "$scratch/base"
maydeck verify "$out" --base "$scratch/base"
expect_status verify-record 0
expect_equal verify-record-told "3 of 3 files whole and as listed; 3 printed of what $scratch/base records now" \
    "$(tail -n 1 "$scratch/stdout")"
echo '# moved' >>"$scratch/base/boats/bramble.yaml"
rm "$scratch/base/boats/$(basename "$file" -survey.pdf).yaml"
maydeck verify "$out" --base "$scratch/base"
expect_status verify-record-changed 1
for word in 'bramble, .*HER FILE HAS CHANGED SINCE' 'samphire, .*THE BASE HAS NO SUCH BOAT' \
    'tamarisk, .*her file is the one'; do
    grep -q "^    $word" "$scratch/stdout" || not_ok "verify-record-$word" "$(cat "$scratch/stdout")"
done

# ---- codes ----

# Those of the pages, as `print --list` tells them, also where nothing is listed.
maydeck print tests/fleet --boat bramble --card flooding,gas_leak --date "$print_date" -o "$scratch/cards"
expect_status verify-codes-printed 0
mv "$scratch/cards" "$scratch/named"
rm -f "$scratch/named/printed.csv"
maydeck print tests/fleet --boat bramble --list --date "$print_date"
cp "$scratch/stdout" "$scratch/listed"
for card in flooding gas_leak; do
    maydeck verify "$scratch/named/bramble-$card.pdf"
    code=$(sed -n "s/^    codes: $card \([0-9A-Z]\{4\}-[0-9A-Z]\{4\}\)$/\1/p" "$scratch/stdout")
    if [ -n "$code" ] && grep -qF "$code" "$scratch/listed"; then
        ok "verify-code-$card"
    else
        not_ok "verify-code-$card" "code: $code" "$(cat "$scratch/stdout")"
    fi
done

# ---- for programs ----

out_renew
rm "$out/$file"
head -c 5000 "$whole/bramble-survey.pdf" >"$out/bramble-survey.pdf"
maydeck verify "$out" --json
expect_status verify-json 1
expect_equal verify-json-read 'maydeck-verify-1 whole 1
bramble-survey.pdf damaged bramble
samphire-survey.pdf missing samphire
tamarisk-survey.pdf as listed tamarisk' "$(python3 -c '
import json, sys
whole = json.load(sys.stdin)
print(whole["format"], whole["list"], whole["good"])
for file in sorted(whole["files"], key=lambda file: file["file"]):
    print(file["file"], file["state"], file["listed"]["boat"])
' <"$scratch/stdout")"

# ---- wrong use ----

for arguments in '' 'a b' "$scratch/none" "$out --base $scratch/none"; do
    # shellcheck disable=SC2086
    maydeck verify $arguments
    expect_status "verify-use-${arguments:-nothing}" 2
done
mkdir "$scratch/empty"
maydeck verify "$scratch/empty"
expect_status verify-empty 1
grep -q 'there is no PDF in' "$scratch/stderr" || not_ok verify-empty-told "$(cat "$scratch/stderr")"

exit $failures
