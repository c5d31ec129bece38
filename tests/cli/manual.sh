#!/bin/sh
# The manual: pages that man(1) shows without a complaint, with every command, option, key, kind of
# gear and zone; `help TOPIC` in the same words, in lines as wide as they may be; a page for print.
. tests/tap.sh

unset COLUMNS
has() {
    command -v "$1" >/dev/null 2>&1
}

# page NAME: the page's source, and as text without layout
page() {
    maydeck manual "$1"
    expect_status "page-$1" 0
    expect_empty "page-$1-stderr" "$(cat "$scratch/stderr")"
    cp "$scratch/stdout" "$scratch/$1.mdoc"
    sed 's/\\&//g; s/\\-/-/g' "$scratch/$1.mdoc" >"$scratch/$1.plain"
}
page commands
page files

# ---- as those who read such sources want them ----

if has mandoc; then
    for name in commands files; do
        expect_empty "lint-$name" "$(mandoc -T lint "$scratch/$name.mdoc" 2>&1)"
        mandoc -T ascii -O width=100 "$scratch/$name.mdoc" | col -b | expand >"$scratch/$name.text"
    done
    # the check can fail
    sed 's/^\.El$//' "$scratch/commands.mdoc" >"$scratch/broken.mdoc"
    [ -n "$(mandoc -T lint "$scratch/broken.mdoc" 2>&1)" ] || not_ok lint-tells 'nothing is told'
else
    skip lint 'no mandoc'
fi
if has groff; then
    for name in commands files; do
        expect_empty "groff-$name" "$(groff -mdoc -ww -T utf8 "$scratch/$name.mdoc" 2>&1 >/dev/null)"
    done
else
    skip groff 'no groff'
fi

# ---- whole ----

maydeck help
sed -n '/^Commands:/,/^Options:/s/^  \([a-z]*\)  .*/\1/p' "$scratch/stdout" | grep -v '^help$' >"$scratch/commands"
sed -n '1,/TOPIC` of:/d; s/^  \([a-z]*\)  .*/\1/p' "$scratch/stdout" >"$scratch/topics"
[ "$(wc -l <"$scratch/commands")" -gt 12 ] || not_ok commands-some "$(cat "$scratch/commands")"
[ "$(wc -l <"$scratch/topics")" -gt 12 ] || not_ok topics-some "$(cat "$scratch/topics")"
while read -r command; do
    sed -n "/^\.Ss $command\$/,/^\.S[sh] /p" "$scratch/commands.plain" >"$scratch/section"
    sed -n '/^\.Ss Every command$/,/^\.Sh /p' "$scratch/commands.plain" >>"$scratch/section"
    [ -s "$scratch/section" ] || not_ok "page-has-$command"
    maydeck help "$command"
    cp "$scratch/stdout" "$scratch/help-$command"
    for option in $(sed -n 's/^  \(    \|-., \)--\([a-z-]*\).*/\2/p' "$scratch/stdout"); do
        grep -q -e "^\.It.* Fl -$option\( \|\$\)" "$scratch/section" ||
            not_ok "page-has-$command-$option"
    done
done <"$scratch/commands"
ok page-has-all-options

# What a command may be asked of has a line in its help; what the program looks at in its environment
# has one, too.
while read -r command; do
    grep -q '^Usage: .* TOPIC' "$scratch/help-$command" || continue
    maydeck "$command" nothing-of-the-kind
    expect_status "$command-asked-wrongly" 2
    for topic in $(sed -n 's/^  remedy: write one of: //p' "$scratch/stderr" | tr -d ,); do
        grep -q "^  $topic  " "$scratch/help-$command" || not_ok "help-$command-has-$topic"
        echo "$topic"
    done
done <"$scratch/commands" >"$scratch/asked-of"
grep 'ok' "$scratch/asked-of"
[ "$(grep -vc 'ok' "$scratch/asked-of")" -gt 15 ] || not_ok help-asked-of-some
maydeck help environment
for name in $(sed -n 's/.*getenv("\([A-Z_]*\)").*/\1/p' src/*/*.c); do
    grep -q "^  $name\( \|\$\)" "$scratch/stdout" || not_ok "environment-has-$name"
    ok "environment-$name"
done

maydeck list fields --json
sed -n 's/.*"section": "\([^"]*\)", "key": "\([^"]*\)".*/\1 \2/p' "$scratch/stdout" >"$scratch/keys"
[ "$(wc -l <"$scratch/keys")" -gt 150 ] || not_ok keys-some
while read -r section key; do
    [ -n "$key" ] && path=$section/$key || path=$section
    grep -qxF ".It Ic $path" "$scratch/files.plain" || echo "$path"
done <"$scratch/keys" >"$scratch/missing"
expect_empty page-has-all-keys "$(cat "$scratch/missing")"
for list in items zones; do
    maydeck completion "$list"
    missing=$(while read -r name; do
        grep -qxF ".It Ic $name" "$scratch/files.plain" || echo "$name"
    done <"$scratch/stdout")
    expect_empty "page-has-all-$list" "$missing"
done

# Every key that procedures, sources and words files of the program use.
awk '/^\.Sh / { on = /CARD|SOURCES|WORDS/ } on && /^\.It Ic / { n = split($3, part, "/"); print part[n] }
    on && /^Each of:|^[a-z_]+,/ { gsub(/[,.]/, " "); print }' "$scratch/files.plain" | tr ' ' '\n' | sort -u >"$scratch/own"
sed -n 's/^\(- \| *\)\([a-z_]*\):.*/\2/p' procedures/galley_fire.yaml procedures/sources.yaml | sort -u >"$scratch/used"
[ "$(wc -l <"$scratch/used")" -gt 20 ] || not_ok own-some
expect_empty page-has-own-keys "$(comm -13 "$scratch/own" "$scratch/used")"

# Which cards ask for an item, by the procedures themselves.
awk 'function cards_tell(   i, n, word) {
        if (match(said, /Cards: [a-z_, ]*/)) {
            n = split(substr(said, RSTART + 7, RLENGTH - 7), word, /[, ]+/)
            for (i = 1; i <= n; i++) print item, word[i]
        }
        said = ""
    }
    /^\.Sh / { on = /KINDS OF GEAR/ } !on { next }
    /^\.It |^\.El/ { cards_tell(); item = $3; next }
    { said = said $0 " " }' "$scratch/files.plain" | sort -u >"$scratch/asked"
[ "$(wc -l <"$scratch/asked")" -gt 150 ] || not_ok asked-some
wrong=$(while read -r item card; do
    grep -qw "$item" "procedures/$card.yaml" || echo "$card does not name $item"
done <"$scratch/asked")
expect_empty page-cards-name-items "$wrong"
for file in procedures/*.yaml; do
    card=${file##*/} card=${card%.yaml}
    sed -n 's/^ *uses: \[\([a-z_, ]*\)\]$/\1/p' "$file" | tr -d ' ' | tr ',' '\n' | grep . |
        sed "s/\$/ $card/"
done | sort -u >"$scratch/uses"
[ "$(wc -l <"$scratch/uses")" -gt 40 ] || not_ok uses-some
expect_empty page-names-cards "$(comm -23 "$scratch/uses" "$scratch/asked")"

# ---- the same on the screen ----

# bare FILE: without layout and the marks of what is typed, 60 letters a line
bare() {
    tr -d '` \n' <"$1" | fold -w 60
}
while read -r topic; do
    maydeck help "$topic"
    expect_status "help-$topic" 0
    expect_empty "help-$topic-stderr" "$(cat "$scratch/stderr")"
    [ -f "$scratch/files.text" ] && [ "$topic" != commands ] || continue
    title=$(sed -n 1p "$scratch/stdout")
    for name in files commands; do
        awk -v title="$title" '/^[^ ]/ { on = $0 == title; next } on' "$scratch/$name.text" >"$scratch/section"
        [ ! -s "$scratch/section" ] || [ "$topic" = maydeck ] || break
    done
    sed 1d "$scratch/stdout" >"$scratch/told"
    bare "$scratch/told" >"$scratch/told.bare"
    bare "$scratch/section" >"$scratch/section.bare"
    [ -s "$scratch/told.bare" ] || not_ok "help-$topic-tells" 'nothing is told'
    expect_empty "help-$topic-as-page" "$(diff "$scratch/section.bare" "$scratch/told.bare" | head -n 6)"
done <"$scratch/topics"

# too_wide WIDTH FILE: lines that are wider, though not one word alone
too_wide() {
    awk -v width="$1" 'length($0) > width && $0 ~ /[^ ] +[^ ]/ && $0 !~ /^    [^ ]/' "$2"
}
for width in 40 60 80 100; do
    for topic in '' $(cat "$scratch/commands" "$scratch/topics"); do
        # shellcheck disable=SC2086
        COLUMNS=$width "$MAYDECK" help $topic >"$scratch/wide"
        expect_empty "help-$topic-$width" "$(too_wide $width "$scratch/wide")"
    done
done | grep -v '^ok' >"$scratch/wider"
expect_empty help-widths "$(cat "$scratch/wider")"
maydeck help print
cp "$scratch/stdout" "$scratch/default"
for columns in 80 '' wide -5 99999; do
    COLUMNS=$columns "$MAYDECK" help print >"$scratch/stdout"
    expect_empty "help-columns-$columns" "$(diff "$scratch/default" "$scratch/stdout")"
done
if has tmux && has_terminals; then
    terminal="tmux -S $scratch/socket -f /dev/null"
    $terminal new-session -d -x 60 -y 200 "'$MAYDECK' help print; sleep 60"
    COLUMNS=60 "$MAYDECK" help print >"$scratch/narrow"
    for _ in 1 2 3 4 5 6 7 8 9 10; do
        $terminal capture-pane -p -J | sed 's/ *$//' | sed -e :a -e '/^\n*$/{$d;N;ba' -e '}' >"$scratch/pane"
        cmp -s "$scratch/narrow" "$scratch/pane" && break
        sleep 1
    done
    expect_empty help-in-terminal "$(diff "$scratch/narrow" "$scratch/pane")"
    $terminal kill-server
else
    skip help-in-terminal 'no tmux, or no terminal to be had here'
fi

# ---- the page for print ----

maydeck manual reference
expect_status reference 0
if has groff && groff -ms -T pdf -P-pa4 "$scratch/stdout" >"$scratch/reference.pdf" 2>"$scratch/groff"; then
    expect_empty reference-clean "$(cat "$scratch/groff")"
    expect_equal reference-one-page 1 "$(pdfinfo "$scratch/reference.pdf" | sed -n 's/^Pages: *//p')"
    pdftotext -layout "$scratch/reference.pdf" "$scratch/reference.text"
    while read -r command; do
        grep -qw "$command" "$scratch/reference.text" || not_ok "reference-has-$command"
    done <"$scratch/commands"
else
    skip reference-page 'no groff that makes PDF'
fi

# ---- used wrongly ----

maydeck manual
expect_status manual-of-nothing 2
maydeck manual shelves
expect_status manual-of-none 2
expect_empty manual-of-none-stdout "$(cat "$scratch/stdout")"
maydeck help shelves
expect_status help-of-none 2
exit $failures
