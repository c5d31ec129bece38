#!/bin/sh
# The program for any Linux, as PORTABLE, its archive: `make check-portable` packs and names it. It
# prints what the clone prints; it needs no library and no folder of the system; and where memory
# runs out, in HarfBuzz and libharu too, it ends with status 3 and leaves no file.
. tests/tap.sh

if [ -z "${PORTABLE-}" ]; then
    skip portable 'make check-portable packs it and tries it'
    exit 0
fi
unset MAYDECK_DATA DESTDIR
mkdir "$scratch/a folder"
tar -xzf "$PORTABLE" -C "$scratch/a folder"
tree=$(echo "$scratch/a folder"/*)
expect_equal portable-one-folder "$(basename "$PORTABLE" .tar.gz)" "$(basename "$tree")"
said=$(sh .setup/installcheck "$MAYDECK" "$tree/bin/maydeck" 2>&1)
expect_equal portable-prints "installcheck: 8 files by $tree/bin/maydeck are the same to the byte" "$said"
for face in text bold code; do
    file=$(awk -v role=$face '$1 == role { print $2 }' fonts/faces.txt)
    [ -s "$tree/share/maydeck/fonts/$file.copyright" ] || not_ok portable-licences "none of $file"
done
for part in libyaml zlib1g libutf8proc libharfbuzz libhpdf libc6; do
    [ -s "$tree/licences/$part-dev.copyright" ] || not_ok portable-licences "none of $part"
done
expect_empty portable-no-library "$(readelf -d "$tree/bin/maydeck" | grep NEEDED)"

# ---- a root with nothing else in it ----

if [ "$(id -u)" -eq 0 ]; then
    cp -R tests/fleet "$tree/fleet"
    mkdir "$tree/out"
    "$MAYDECK" print tests/fleet --date "$print_date" --quiet -o "$scratch/whole" 2>/dev/null
    env -i "$(command -v chroot)" "$tree" /bin/maydeck print fleet --date "$print_date" --quiet -o out \
        >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
    expect_status portable-bare 0
    expect_empty portable-bare-same "$(diff -r -x printed.csv "$scratch/whole" "$tree/out" 2>&1)"
else
    skip portable-bare 'only root may make a folder the root'
fi

# ---- memory ----

# limited KIB: prints one boat with so much memory.
limited() {
    rm -rf "$scratch/out"
    (ulimit -v "$1" && exec "$tree/bin/maydeck" print tests/fleet --boat bramble -j 1 \
        --date "$print_date" -o "$scratch/out") >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
}

# Below this the system starts no program.
least=4000
{
    until (ulimit -v $least && exec "$tree/bin/maydeck" --version); do
        least=$((least + 250))
    done
} >/dev/null 2>&1
"$MAYDECK" print tests/fleet --boat bramble --date "$print_date" -o "$scratch/one" >/dev/null 2>&1
enough=0 refused=0
: >"$scratch/wrong"
limit=$((least + 250))
while [ $enough -lt 3 ] && [ $limit -lt 2000000 ]; do
    limited $limit
    case $status in
    0)
        enough=$((enough + 1))
        diff -rq -x printed.csv "$scratch/one" "$scratch/out" >>"$scratch/wrong" 2>&1
        ;;
    3)
        refused=$((refused + 1))
        grep -q 'out of memory' "$scratch/stderr" || echo "$limit: says no word of memory" >>"$scratch/wrong"
        find "$scratch/out" -type f 2>/dev/null >>"$scratch/wrong"
        ;;
    *) echo "$limit: status $status $(tail -n 1 "$scratch/stderr")" >>"$scratch/wrong" ;;
    esac
    limit=$((limit + 397))
done
expect_empty portable-memory "$(head -n 20 "$scratch/wrong")"
if [ $refused -gt 20 ] && [ $enough -eq 3 ]; then
    ok portable-memory-bites
else
    not_ok portable-memory-bites "$refused refused, $enough enough, up to $limit KiB"
fi

# The watch over the heap stands before the allocations of the libraries too: it sees those that it
# sees in a program of shared libraries, but for a few of the C library's own. HarfBuzz alone makes
# many hundreds.
# watched PROGRAM [VARIABLE=value...]: how many it sees
watched() {
    program=$1
    shift
    env FAULT_CALL=malloc FAULT_AT=0 FAULT_COUNT="$scratch/count" "$@" "$program" print tests/fleet \
        --boat bramble -j 1 --date "$print_date" -o "$scratch/counted" >/dev/null 2>&1
    rm -rf "$scratch/counted"
    cat "$scratch/count"
}
shared=$(watched "$MAYDECK" LD_PRELOAD="$SHIM")
static=$(watched "$top/$STARVED")
if [ "$shared" -gt 1000 ] && [ "$static" -ge "$((shared - 100))" ]; then
    ok portable-watch
else
    not_ok portable-watch "$static allocations are watched, of $shared"
fi
exit $failures
