# Sourced: counts instructions with valgrind's callgrind, which gives the same number however busy
# the machine is. LC_ALL is C.

# A processor with other abilities has the C library take other functions: those of the C and
# mathematics library are left out where machines are compared.
own_objects='maydeck libhpdf libz libharfbuzz libharfbuzz-subset libyaml libutf8proc'

has_counter() {
    command -v valgrind >/dev/null
}

# count_run FILE [OPTION...] COMMAND...: what was counted goes to FILE, as tests/bench/callgrind.awk
# tells it; what valgrind and the command say to FILE.said. Gives the command's status.
count_run() {
    counted=$1
    shift
    rm -f "$counted".raw*
    valgrind --tool=callgrind --callgrind-out-file="$counted.raw" "$@" >"$counted.said" 2>&1
    count_status=$?
    awk -f tests/bench/callgrind.awk "$counted".raw* >"$counted"
    rm -f "$counted".raw*
    return $count_status
}

# count_of FILE KIND [NAME]: a number of it; 0: there is none.
count_of() {
    awk -v kind="$2" -v name="${3-}" '
        $1 == kind && (name == "" || $2 == name) { sum += $NF }
        END { printf "%.0f", sum }' "$1"
}

# count_own FILE: those of the program and the libraries whose code is the same on all processors.
count_own() {
    awk -v names="$own_objects" '
        BEGIN { split(names, list); for (i in list) own[list[i]] = 1 }
        $1 == "object" {
            short = $2
            sub(/(-[0-9][0-9.]*)?\.so.*$/, "", short)
            if (short in own)
                sum += $3
        }
        END { printf "%.0f", sum }' "$1"
}
