#!/bin/sh
# Every line that README.md has for a reader to type or to see is tried, in its order, in a folder
# laid as README says: statuses, files, what the program is quoted with, parts of files
# (tests/readme/plan). A line of README that the plan does not know fails, and one of the plan that
# README has no more. Its picture is of the card that is printed today.
. tests/tap.sh
. tests/readme/steps.sh

# as a reader calls make, not as the make that runs this test
unset MAKEFLAGS MAKELEVEL MFLAGS

awk -f tests/readme/lines.awk README.md >"$scratch/lines"
awk -F '\t' '$1 == "command" { print $2; next } { print substr($0, index($0, "\t") + 1) }' \
    "$scratch/lines" >"$scratch/told"
sed -n 's/^run [0-9] //p; s/^\(dry\|syntax\|seen\|part\) //p' tests/readme/plan >"$scratch/known"
expect_empty readme-lines-known "$(diff "$scratch/told" "$scratch/known")"
[ "$(grep -c '^run ' tests/readme/plan)" -gt 80 ] || not_ok readme-plan-runs

# that these lines are found at all, and nothing else is
printf '%s\n' 'Say `maydeck list items` or `make x`.' '' '    out/maydeck check b   # all of b.pdf' '' \
    '    a: 1' '   - no line' '- `maydeck.c`' >"$scratch/page.md"
expect_equal readme-lines "$(printf 'command\tmaydeck list items\t\ncommand\tout/maydeck check b\tall of b.pdf\nexcerpt\ta: 1')" \
    "$(awk -f tests/readme/lines.awk "$scratch/page.md")"

place=$scratch/place
mkdir -p "$place/out" "$place/bin"
cp -R procedures "$place/"
cp -R out/fonts "$place/out/"
cp "$MAYDECK" "$place/out/maydeck"
chmod -R u+w "$place"
MAYDECK=$place/out/maydeck
printf '#!/bin/sh\nexec "%s" "$@"\n' "$MAYDECK" >"$place/bin/maydeck"
printf '#!/bin/sh\nexec cat\n' >"$place/bin/less"
chmod +x "$place/bin/maydeck" "$place/bin/less"
PATH=$place/bin:$PATH
export PATH
# the day on which README is followed
SOURCE_DATE_EPOCH=$(date -u -d "$print_date" +%s)
export SOURCE_DATE_EPOCH
cd "$place" || exit 1

# one blank for many, and no check codes
plain() {
    sed 's/[0-9A-Z]\{4\}-[0-9A-Z]\{4\}/CODE/g' | tr -s ' '
}

# made NAME: is a file of that name written since the last command began?
made() {
    find . -path ./procedures -prune -o -type f -newer "$scratch/begun" -print | grep -q "/$1\$"
}

# ran STATUS LINE: runs a line as README has it, with another check code where a step told one.
ran() {
    line=$2
    [ -z "$code" ] || line=$(echo "$line" | sed "s/[0-9A-Z]\{4\}-[0-9A-Z]\{4\}/$code/")
    code=
    touch -d '1 second ago' "$scratch/begun"
    find . -type f -newer "$scratch/begun" -exec touch -d '1 minute ago' {} +
    sh -c "$line" >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
    cat "$scratch/stdout" "$scratch/stderr" | plain >"$scratch/said"
    expect_status "readme-$number-status" "$1"
    remark=$(awk -F '\t' -v n="$number" '$1 == "command" && ++count == n { print $3 }' "$scratch/lines")
    for word in $(echo "$remark" | grep -oE '[A-Za-z0-9._-]+\.(pdf|csv|ics)'); do
        made "$word" || not_ok "readme-$number-makes-$word" "$2"
    done
}

number=0
code=
part=$scratch/part
: >"$part"
while IFS= read -r row <&3; do
    kind=${row%% *}
    rest=${row#* }
    case $kind in
    run | dry | syntax) number=$((number + 1)) ;;
    esac
    case $kind in
    '#') ;;
    run) ran "${rest%% *}" "${rest#* }" ;;
    says) grep -qF -- "$(echo "$rest" | plain)" "$scratch/said" || not_ok "readme-$number-says" "$rest" ;;
    seen)
        grep -qxF -- "$(printf '%s\n' "$rest" | plain)" "$scratch/said" ||
            not_ok "readme-$number-seen" "$rest" "$(grep '^[a-z]* *[0-9]* of \|REPLACE' "$scratch/said" | head -n 5)"
        ;;
    makes) for file in $rest; do
        made "$file" || not_ok "readme-$number-makes" "$file"
    done ;;
    dry)
        target=${rest#make }
        # shellcheck disable=SC2086
        (cd "$top" && make -n ${target%% &&*}) >"$scratch/dry" 2>&1 </dev/null ||
            not_ok "readme-$number-dry" "$rest" "$(tail -n 3 "$scratch/dry")"
        ;;
    syntax) sh -n -c "$rest" || not_ok "readme-$number-syntax" "$rest" ;;
    part) printf '%s\n' "$rest" >>"$part" ;;
    do)
        "do_$rest"
        : >"$part"
        ;;
    *) not_ok readme-plan-row "$row" ;;
    esac
done 3<"$top/tests/readme/plan"
ok readme-plan-done

# The picture: a PNG, not too large, of the card as it is printed today.
cd "$top" || exit 1
picture=.pictures/card.png
expect_equal readme-picture-is 'PNG' "$(head -c 4 "$picture" | tail -c 3)"
[ "$(wc -c <"$picture")" -lt 120000 ] || not_ok readme-picture-size "$(wc -c <"$picture")"
grep -q "src=\"$picture\"" README.md || not_ok readme-picture-shown
"$MAYDECK" print tests/fleet --boat tamarisk --list --date "$print_date" >"$scratch/list" 2>/dev/null
expect_equal readme-picture-current "$(cat .pictures/card.code)" \
    "$(sed -n 's/^  \([0-9A-Z]*-[0-9A-Z]*\)  3 ENGINE FIRE$/\1/p' "$scratch/list")"

# The steps of a release are lines of a shell, and their targets are there.
sed -n '/^## Release$/,$p' DEVELOPERS.md | sed -n 's/^       //p' >"$scratch/steps"
[ "$(grep -c . "$scratch/steps")" -gt 10 ] || not_ok readme-release-steps "$(cat "$scratch/steps")"
expect_empty readme-release-shell "$(sh -n "$scratch/steps" 2>&1)"
while read -r line; do
    case $line in
    'make '*) for word in ${line#make }; do
        case $word in
        *=*) ;;
        *) grep -qE "^([a-z -]+ )?$word( [a-z -]+)?:" Makefile || not_ok readme-release-target "$word" ;;
        esac
    done ;;
    esac
done <"$scratch/steps"
sed -n 's/^sed -i //p' "$scratch/steps" | sed 's/ Makefile$//' >"$scratch/sed"
expect_equal readme-release-version 'version := 0.2.0' \
    "$(eval "sed -n $(sed "s,/'$,/p'," "$scratch/sed")" Makefile)"

# Each section that the contents name is there.
links=$(grep -o '](#[a-z-]*)' README.md | tr -d ']()#' | sort -u)
heads=$(sed -n 's/^## //p' README.md | tr 'A-Z ' 'a-z-' | tr -d "'," | grep -vx contents | sort -u)
expect_equal readme-contents "$heads" "$links"
exit $failures
