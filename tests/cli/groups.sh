#!/bin/sh
# What `check` tells of a fleet: on standard output, the gravest first, what many boats share
# once with every file, line and column; and nothing is lost by that.
. tests/tap.sh

fleet=$scratch/fleet

# check ARGUMENT...: checks the fleet on the day of the tests.
check() {
    maydeck check "$fleet" --date "$print_date" "$@"
}

# sisters_lay [SED...]: 40 boats with identities of their own and one record, so changed.
sisters_lay() {
    rm -rf "$fleet"
    mkdir -p "$fleet/boats"
    cp tests/errors/base/base.yaml "$fleet/"
    number=10
    for first in A B C D E F G H; do
        for second in E I O R U; do
            number=$((number + 1))
            key=alder_$(echo "$first$second" | tr 'A-Z' 'a-z')
            sed -e "s/name: Alder,/name: Al${second}n${first},/" -e "s/QALD3/QA$first${second}3/" \
                -e "s/200014810/2000148$number/" -e '/item: epirb/d' -e 's/^tags_given: .*/&\nretired_tags: [E4]/' \
                -e 's/^not_fitted: \[/&epirb, /' "$@" tests/errors/base/boats/alder.yaml \
                >"$fleet/boats/$key.yaml"
        done
    done
}

# places_of_json: "FILE:LINE:COLUMN SEVERITY" of each problem, each once.
places_of_json() {
    sed -n 's/^ *{"check": "[a-z0-9_]*", "severity": "\([a-z]*\)", "file": "\([^"]*\)", "line": \([0-9]*\), "column": \([0-9]*\),.*/\2:\3:\4 \1/p' \
        "$scratch/stdout" | sort -u
}

# places_of_text: the same of what is told in groups: the first of each, and those in the lists
# behind "the same", where a place without a file is in that of the place before.
places_of_text() {
    findings "$scratch/stdout" | awk -v folder="$fleet/boats/" '
        match($0, /^[^ ].*:[0-9]+:[0-9]+: (error|held|deficiency|note|silenced): /) {
            head = substr($0, 1, RLENGTH - 2); severity = head
            sub(/.* /, "", severity); sub(/: [a-z]*$/, "", head)
            print head, severity
            file = head; sub(/:[0-9]+:[0-9]+$/, "", file)
            list = 0; first = file
            # subjects that are told together have their places with them
            while (match($0, /\([0-9]+:[0-9]+\)/)) {
                print file ":" substr($0, RSTART + 1, RLENGTH - 2), severity
                $0 = substr($0, RSTART + RLENGTH)
            }
            next
        }
        /^  the same (in|at) / { list = 1; sub(/^  the same (in [^:]*:|at) /, "") }
        /^  remedy: / { list = 0 }
        list {
            gsub(/\([^)]*\)/, "")
            count = split($0, part, /, */)
            for (i = 1; i <= count; i++) {
                gsub(/ /, "", part[i])
                if (part[i] ~ /yaml:/) {
                    file = part[i]; sub(/:[0-9]+:[0-9]+$/, "", file); file = folder file
                    sub(/^[^:]*:/, "", part[i])
                }
                if (part[i] ~ /^[0-9]+:[0-9]+$/) print file ":" part[i], severity
            }
        }' | sort -u
}

# whole NAME: every problem of the JSON has its place in the text, and no other place is there.
whole() {
    check
    places_of_text >"$scratch/text"
    expect_empty "groups-$1-order" "$(findings "$scratch/stdout" |
        sed -n 's/^[^ ].*:[0-9]*: \([a-z]*\): .*/\1/p' | awk '
            BEGIN { rank["error"] = 1; rank["held"] = 2; rank["deficiency"] = 3; rank["note"] = 4
                    rank["silenced"] = 5 }
            rank[$1] < last { print "a " $1 " stands behind what is less grave" }
            { last = rank[$1] }')"
    check --json
    places_of_json >"$scratch/json"
    [ -s "$scratch/json" ] || not_ok "groups-$1-some"
    expect_empty "groups-$1-whole" "$(diff "$scratch/json" "$scratch/text")"
}

# ---- one thing wrong everywhere ----

# wrong NAME SEVERITY CHECK LINES SED: 40 boats with one fault tell it once, in so many lines
# at most.
wrong() {
    sisters_lay -e "$5"
    check
    expect_empty "groups-$1-stderr" "$(cat "$scratch/stderr")"
    lines=$(wc -l <"$scratch/stdout")
    if [ "$lines" -lt "$4" ]; then
        ok "groups-$1-lines"
    else
        not_ok "groups-$1-lines" "$lines lines, fewer than $4 are wanted" "$(cat "$scratch/stdout")"
    fi
    expect_equal "groups-$1-rows" 40 "$(grep -c '^alder_[a-h][eioru]  *' "$scratch/stdout")"
    expect_equal "groups-$1-once" 1 "$(grep -c ": $2: $3" "$scratch/stdout")"
    expect_equal "groups-$1-remedies" "$(findings "$scratch/stdout" | grep -c '^[^ ]')" \
        "$(grep -c '^  remedy: ' "$scratch/stdout")"
    grep -q '^  the same in all 40 boats: alder_ai.yaml:' "$scratch/stdout" || not_ok "groups-$1-boats"
    whole "$1"
}

wrong error error '"loa_m" must be from 4 to 30, not 1020' 200 's/loa_m: 10.2/loa_m: 1020/'
wrong held held 'fuel_shutoff_diesel is not recorded' 200 '/item: fuel_shutoff_diesel,/d
    s/retired_tags: \[/&C2, /'
wrong deficiency deficiency 'smoke_alarm is not fitted' 200 '/item: smoke_alarm,/d
    s/retired_tags: \[/&F3, /;s/^not_fitted: \[/&smoke_alarm, /'
wrong figures note 'what a figure waits for is not recorded: ' 200 's/cabin_m3: 18, //;s/lwl_m: 8.6, //
    s/bwl_m: 2.6, //;s/, discharge_s: 9//;s/, stroke_l: 0.8//'

# What differs of a boat, and one boat that has it not.
sed -i 's/, discharge_s: 9//;s/count: 6, from/from/;s/tag: F1,/tag: F8,/' "$fleet/boats/alder_br.yaml"
cp "$fleet/boats/alder_br.yaml" "$scratch/kept"
check
grep -q 'alder_br.yaml:[0-9:]*, [0-9:]* (discharge_s of engine_extinguisher F8)' "$scratch/stdout" &&
    ok groups-own || not_ok groups-own "$(cat "$scratch/stdout")"
whole own
sed -i 's/beam_m: 3.4, /&cabin_m3: 18, lwl_m: 8.6, bwl_m: 2.6, /;s/kg: 2, fits/kg: 2, discharge_s: 9, fits/
    s/from_cockpit: yes}$/from_cockpit: yes, stroke_l: 0.8}/' "$fleet/boats/alder_br.yaml"
check
grep -q '^  the same in 39 of 40 boats: ' "$scratch/stdout" && ok groups-but-one ||
    not_ok groups-but-one "$(cat "$scratch/stdout")"
whole but-one

# ---- items that are left to record; several like findings of one boat ----

sisters_lay -e '/^not_fitted:/,$d' -e '/item: [a-z_]*extinguisher,/d' -e '/item: lifejacket,/d' \
    -e 's/, bung_mm: 25//'
check
expect_equal groups-rest 1 "$(grep -c '^all 40 boats: not recorded either' "$scratch/stdout")"
whole several
check --boat alder_ae,alder_ai
grep -q '^  the same in all 2 boats: alder_ae.yaml:[0-9:]* (C7; sink drain),$' "$scratch/stdout" &&
    ok groups-both || not_ok groups-both "$(cat "$scratch/stdout")"
sed -n '/ not recorded either/,/^[^ ]*: no card/p' "$scratch/stdout" | grep '^  ' | tr -cs 'a-z_0-9' '\n' |
    grep . | sort >"$scratch/items"
check --boat alder_ae
expect_equal groups-alone-full "$(findings "$scratch/stdout" | grep -c '^[^ ]')" \
    "$(grep -c '^  remedy: ' "$scratch/stdout")"
expect_empty groups-alone-each "$(grep '^  the same ' "$scratch/stdout")"
expect_equal groups-alone-two 2 "$(grep -c ': deficiency: no bung is recorded for seacock' "$scratch/stdout")"
expect_equal groups-alone-lines "$(cat "$scratch/items")" \
    "$(sed -n 's/^  - {item: \([a-z_0-9]*\),.*/\1/p' "$scratch/stdout" | sort)"
[ -s "$scratch/items" ] || not_ok groups-rest-items

# ---- the specimen fleet; refusals ----

rm -rf "$fleet"
cp -R tests/fleet "$fleet"
whole fleet
check --boat nobody
expect_status groups-refused 2
grep -q 'error: there is no boat "nobody"' "$scratch/stderr" || not_ok groups-refused-told
expect_empty groups-refused-quiet "$(cat "$scratch/stdout")"
check --json --boat nobody
grep -q 'error: there is no boat "nobody"' "$scratch/stderr" || not_ok groups-refused-json-told
expect_empty groups-refused-json-quiet "$(cat "$scratch/stdout")"
exit $failures
