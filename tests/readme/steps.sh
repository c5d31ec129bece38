# Sourced by tests/cli/readme.sh: what somebody who follows README.md does with an editor, and how
# parts of files that it shows are tried. They run in the folder that is laid for README; the lines
# of the part stand in $part.

# The base's own record, and of the boat what is needed and no more.
do_needed() {
    cp "$top/tests/fleet/base.yaml" mybase/base.yaml
    cp mybase/boats/tern.yaml "$scratch/started.yaml"
    echo 'boat: {name: Tern, specimen: yes, hull: monohull, rig: sail, loa_m: 12, beam_m: 4, persons_max: 8}' \
        >mybase/boats/tern.yaml
}

# All of her.
do_filled() {
    sed 's/^  name: Tamarisk$/  name: Tern/' "$top/tests/fleet/boats/tamarisk.yaml" >mybase/boats/tern.yaml
}

# errors_of BASE: what is wrong in it, with the lines that show where.
errors_of() {
    "$MAYDECK" check "$1" >"$scratch/tried" 2>&1
    [ $? -lt 2 ] || echo 'check: no such base'
    grep -A 2 ': error: ' "$scratch/tried"
}

# taken FILE: the part stands in a copy of that file, in the place of keys of the same names, and
# nothing is wrong then.
taken() {
    rm -rf "$scratch/try"
    cp -R mybase "$scratch/try"
    awk 'FNR == NR { if (match($0, /^[a-z_]+:/)) keys[substr($0, 1, RLENGTH)]; next }
        /^[^ #]/ { key = $0; sub(/:.*/, ":", key); on = !(key in keys) }
        FNR == 1 || on' "$part" "mybase/$1" >"$scratch/try/$1"
    cat "$part" >>"$scratch/try/$1"
    expect_empty "readme-part-taken-$number" "$(errors_of "$scratch/try")"
}
do_in_base() { taken base.yaml; }
do_in_boat() { taken boats/tern.yaml; }

# A piece of gear in the place of the one with its tag.
do_piece() {
    rm -rf "$scratch/try"
    cp -R mybase "$scratch/try"
    awk -v piece="$(cat "$part")" '/tag: C4,/ { print "  " piece; found = 1; next } { print }
        END { exit !found }' mybase/boats/tern.yaml >"$scratch/try/boats/tern.yaml" ||
        not_ok "readme-part-has-a-place-$number"
    expect_empty "readme-part-taken-$number" "$(errors_of "$scratch/try")"
}

# A boat with two engines, one of which has no fire port: nothing contradicts it.
do_twin() {
    rm -rf "$scratch/try"
    mkdir -p "$scratch/try/boats"
    cp mybase/base.yaml "$scratch/try/"
    awk '/^  - sart$/ || /item: fire_port, tag: F3/ { next }
        /^retired_tags:/ { print "retired_tags: [C12, C15, F3]"; next }
        /^not_fitted:/ { while ((getline line <part) > 0) print line; next }
        { print }' part="$part" "$top/tests/fleet/boats/samphire.yaml" >"$scratch/try/boats/twin.yaml"
    expect_empty "readme-part-taken-$number" "$(errors_of "$scratch/try")"
}

# Her last tags are higher than those of the part, so she is one whose gear has no more than these.
do_tags() {
    rm -rf "$scratch/try"
    mkdir -p "$scratch/try/boats"
    cp mybase/base.yaml "$scratch/try/"
    {
        echo 'boat: {name: Wren, specimen: yes, hull: monohull, rig: sail, loa_m: 9, beam_m: 3, persons_max: 4}'
        cat "$part"
    } >"$scratch/try/boats/wren.yaml"
    "$MAYDECK" check "$scratch/try" >"$scratch/tried"
    expect_empty "readme-part-read-$number" "$(grep 'wren.yaml:[0-9:]*: error: .*_tags\|unknown key\|tags_given' "$scratch/tried")"
    grep -q 'wren  *0 of ' "$scratch/tried" || not_ok "readme-part-judged-$number" "$(tail -n 3 "$scratch/tried")"
}

# The line that `start` wrote at the head of a boat's file.
do_mode_line() {
    expect_equal "readme-mode-line" "$(cat "$part")" "$(head -n 1 "$scratch/started.yaml")"
    rm -r mybase/schema
}

do_moved() {
    sed 's/tag: E5, zone: cockpit_locker, side: starboard,/tag: E5, zone: saloon, side: port,/' \
        mybase/boats/tern.yaml >"$scratch/moved.yaml"
    ! cmp -s "$scratch/moved.yaml" mybase/boats/tern.yaml || not_ok readme-moved
    cp "$scratch/moved.yaml" mybase/boats/tern.yaml
}

do_all_hang() {
    expect_equal readme-all-hang 'tern: all 28 cards hang as recorded' \
        "$("$MAYDECK" renew mybase | grep '^tern')"
    # the set is what the register was told of, and the files are of the record of that day
    "$MAYDECK" print mybase -o cards >/dev/null 2>&1
}

do_no_register() { mv mybase/register.csv "$scratch/register.csv"; }
do_register_again() { mv "$scratch/register.csv" mybase/register.csv; }

# The code of README is that of no card of this base: the next command is given one that hangs.
do_code() {
    code=$("$MAYDECK" print mybase --list 2>/dev/null | sed -n 's/^  \([0-9A-Z]*-[0-9A-Z]*\)  7 FLOODING$/\1/p')
    [ -n "$code" ] || not_ok readme-code
}

# A model whose fuel valve has the tag that README gives it.
do_model() {
    mkdir -p mybase/models
    sed 's/tag: C4,/tag: SWAP,/; s/\(item: fuel_shutoff_diesel, tag: \)C[0-9]*/\1C4/' \
        "$top/tests/islands/models/sloop.yaml" >"$scratch/sloop.yaml"
    old=$(sed -n 's/.*item: fuel_shutoff_diesel, tag: \(C[0-9]*\),.*/\1/p' "$top/tests/islands/models/sloop.yaml")
    sed "s/tag: SWAP,/tag: $old,/" "$scratch/sloop.yaml" >mybase/models/sloop.yaml
}

# The part is her whole file: what her sister has of her own is not recorded, and nothing is wrong.
do_merlin() {
    cp "$part" mybase/boats/merlin.yaml
    sed 's/^boat: {/&specimen: yes, /' "$part" >mybase/boats/merlin.yaml
    expect_empty readme-merlin "$(errors_of mybase | grep merlin)"
    "$MAYDECK" check mybase --boat merlin >"$scratch/tried" 2>&1
    expect_empty readme-merlin-inherits "$(grep 'walked' "$scratch/tried")"
    rm mybase/boats/merlin.yaml
}

# The fingerprint is that of the text of today, which the sheet tells.
do_approved() {
    sed "s/text: [0-9A-F-]*/text: $(fingerprint_of flooding)/" "$part" >"$scratch/signed"
    cp "$scratch/signed" "$part"
    taken base.yaml
    expect_empty readme-approved "$("$MAYDECK" check "$scratch/try" | grep 'lapsed')"
    expect_equal readme-approved-one 0 \
        "$("$MAYDECK" check "$scratch/try" | sed -n '/await the approval/,/remedy/p' | grep -c 'flooding')"
}

do_makefile() {
    cp "$part" cards.mk
    make -f cards.mk >"$scratch/made" 2>&1 || not_ok readme-makefile-runs "$(cat "$scratch/made")"
    [ -s cards/tern/tern.pdf ] || not_ok readme-makefile-makes "$(cat "$scratch/made")"
    expect_equal readme-makefile-again "make: Nothing to be done for 'all'." "$(make -f cards.mk 2>&1)"
}
