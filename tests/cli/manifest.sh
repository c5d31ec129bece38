#!/bin/sh
# The program's own texts: nothing is printed unless they are all there, just as they were
# sealed, and none is beside them.
. tests/tap.sh

tool=$scratch/tool
own=$tool/procedures
out=$scratch/out

expect_equal manifest-current "$(sh .setup/manifest procedures)" "$(cat procedures/manifest.txt)"

# A fresh copy of the program with its texts.
tool_renew() {
    rm -rf "$tool" "$out"
    mkdir -p "$tool/out" "$out"
    cp -R procedures "$tool/"
    cp -R out/fonts "$tool/out/"
    cp "$MAYDECK" "$tool/out/maydeck"
}

# run [VARIABLE=value...]: prints one boat with the copy.
run() {
    # shellcheck disable=SC2086
    env "$@" $WRAP "$tool/out/maydeck" print tests/fleet --boat bramble --date "$print_date" \
        -o "$out" >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# refused NAME FILE WORDS: status 3, no card, the file named, a remedy.
refused() {
    expect_status "manifest-$1" 3
    expect_empty "manifest-$1-no-card" "$(folder_list "$out")"
    if grep -F "$2" "$scratch/stderr" | grep -qF "$3" && grep -q '^  remedy: ' "$scratch/stderr"; then
        ok "manifest-$1-told"
    else
        not_ok "manifest-$1-told" "expected $2 and '$3' in:" "$(cat "$scratch/stderr")"
    fi
}

tool_renew
run
expect_status manifest-sound 0
[ -s "$out/bramble.pdf" ] || not_ok manifest-sound-printed

for file in $(sed -n 's/^[0-9a-f]*  //p' procedures/manifest.txt); do
    tool_renew
    rm "$own/$file"
    run
    refused "without-$file" "$file" 'there is no file'
done
tool_renew
rm "$own"/*.yaml
run
refused without-all flooding.yaml 'there is no file'
rm "$own/manifest.txt"
rm -r "$own"
run
expect_status manifest-without-folder 3

tool_renew
sed -i '$d' "$own/distress_call.yaml"
run
refused cut-short distress_call.yaml 'its sum differs'
tool_renew
echo '# a remark' >>"$own/words/en/words.yaml"
run
refused altered words/en/words.yaml 'its sum differs'
tool_renew
head -c 300000 /dev/zero | tr '\0' '#' >>"$own/flooding.yaml"
run
refused too-large flooding.yaml 'larger than 256 KiB'
for copy in 'flooding (copy).yaml' old_flooding.yaml words/de.yaml words/en/old_flooding.yaml; do
    tool_renew
    cp "$own/flooding.yaml" "$own/$copy"
    run
    refused "with-$copy" "$copy" 'does not belong to this program'
done

# What an editor leaves beside a text is no text.
tool_renew
cp "$own/flooding.yaml" "$own/.flooding.yaml.swp"
cp "$own/flooding.yaml" "$own/flooding.yaml~"
run
expect_status manifest-editor 0

# The list itself: missing, cut short, a line malformed or twice.
tool_renew
rm "$own/manifest.txt"
run
refused no-list manifest.txt 'there is no file'
tool_renew
rm "$own/words/en/words.yaml"
sed -i '/words/d' "$own/manifest.txt"
run
refused list-shorter manifest.txt 'does not end with the number of its files'
tool_renew
sed -i '$d' "$own/manifest.txt"
run
refused list-cut manifest.txt 'does not end with the number of its files'
tool_renew
sed -i '1s/^.//' "$own/manifest.txt"
run
refused list-digit manifest.txt:1 'is not a sum'
tool_renew
sed -i 1p "$own/manifest.txt"
run
refused list-twice manifest.txt:2 'is not a sum'
tool_renew
: >"$own/manifest.txt"
run
refused list-empty manifest.txt 'does not end with the number of its files'

# A list without a procedure, whole in itself, prints no set of no cards.
tool_renew
grep -l '^procedure: ' "$own"/*.yaml | xargs rm
find "$own/words/en" -name "*.yaml" ! -name words.yaml -exec rm {} +
seal "$own"
run
refused no-procedure manifest.txt 'names no procedure'

# Every command that needs the texts refuses.
tool_renew
rm "$own/gas_leak.yaml"
for command in "check tests/fleet" "why tests/fleet" "call tests/fleet --boat bramble" \
    "start $scratch/new"; do
    # shellcheck disable=SC2086
    $WRAP "$tool/out/maydeck" $command >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
    expect_status "manifest-${command%% *}" 3
done

# Changed on purpose: sealed again, they are taken.
tool_renew
echo '# a remark' >>"$own/flooding.yaml"
seal "$own"
run
expect_status manifest-sealed-again 0

# The folder cannot be read, at once or in the middle.
if [ "$VARIANT" = san ]; then
    skip manifest-folder 'the shim and the sanitizers both stand before the system calls'
else
    for fault in 'opendir 1 EACCES Permission' 'readdir 1 EIO Input' 'readdir 9 EIO Input'; do
        # shellcheck disable=SC2086
        set -- $fault
        tool_renew
        run LD_PRELOAD="$SHIM" FAULT_CALL="$1" FAULT_AT="$2" FAULT_ERRNO="$3" FAULT_FOLDER="$own"
        refused "$1-$2" procedures "$4"
    done
fi

# Installed anew, no text of an older version stays.
mkdir -p "$scratch/root/usr/local/share/maydeck/procedures"
echo old >"$scratch/root/usr/local/share/maydeck/procedures/old.yaml"
if make install-data DESTDIR="$scratch/root" prefix=/usr/local >"$scratch/stdout" 2>&1; then
    ok manifest-install
else
    not_ok manifest-install "$(cat "$scratch/stdout")"
fi
expect_empty manifest-install-whole \
    "$(diff -r procedures "$scratch/root/usr/local/share/maydeck/procedures" 2>&1)"
exit $failures
