#!/bin/sh
# What work costs, counted in instructions, which are the same however busy the machine is: printing the
# specimen fleet takes what is recorded, within 3 % either way; each of many boats costs no more than
# each of few.
. tests/tap.sh
. tests/bench/gate

if [ "$VARIANT" != release ]; then
    skip instructions "counted of the program as it is released alone"
    exit 0
fi
if ! has_counter; then
    skip instructions "there is no valgrind (sh .setup/packages test)"
    exit 0
fi

# ---- the specimen fleet ----

gate_count "$scratch" && ok instructions-printed ||
    not_ok instructions-printed "$(tail -n 5 "$scratch/counts.said")"
was=$(gate_recorded instructions)
if [ "$(gate_recorded with)" != "$gate_with" ]; then
    skip instructions-as-recorded "$gate_own; recorded $was with another compiler or library"
elif gate_within "$was" "$gate_own"; then
    ok instructions-as-recorded
else
    not_ok instructions-as-recorded \
        "$gate_own instructions, $(gate_difference "$was" "$gate_own") against $was as recorded" \
        'where that is meant, make bench-accept records it anew'
fi

# within RESULT COUNTED: of 1,000,000 recorded.
within() {
    gate_within 1000000 "$2" && found=yes || found=no
    expect_equal "instructions-within-$2" "$1" "$found"
}
within yes 1029999
within yes 970001
within no 1030001
within no 969999
within no 0

# ---- few boats and many ----

# refused COUNT: a base of boats whose records are refused: all is said of each that is said of any,
# and nothing laid out.
refused() {
    "$BUILD/boats" 3 "$1" "$scratch/refused$1"
    for file in "$scratch/refused$1"/boats/*.yaml; do
        sed '/^equipment:/,$d' "$file" >"$scratch/boat"
        printf 'equipment: []\nnowhere: yes\n' >>"$scratch/boat"
        cp "$scratch/boat" "$file"
    done
}

# boats_counted COMMAND COUNT [OPTION...]
boats_counted() {
    command=$1 count=$2
    shift 2
    count_run "$scratch/$command$count" "$MAYDECK" "$command" "$scratch/refused$count" \
        --date "$print_date" "$@"
    expect_equal "instructions-$command-$count-refused" 1 "$?"
    count_of "$scratch/$command$count" total >"$scratch/sum-$command-$count"
}

# flat COMMAND: what is paid once is taken off by a fleet of ten.
flat() {
    few=$((($(cat "$scratch/sum-$1-100") - $(cat "$scratch/sum-$1-10")) / 90))
    many=$((($(cat "$scratch/sum-$1-1000") - $(cat "$scratch/sum-$1-100")) / 900))
    echo "# $1: $many instructions a boat of 1,000, $few a boat of 100"
    if [ $((many * 10)) -le $((few * 11)) ]; then
        ok "instructions-$1-flat"
    else
        not_ok "instructions-$1-flat" 'at most a tenth more is allowed'
    fi
}

for boats in 10 100 1000; do
    refused $boats
    boats_counted check $boats
    boats_counted print $boats -j 1 -o "$scratch/out$boats"
done
flat check
flat print
exit $failures
