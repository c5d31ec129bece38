# Sourced by the test scripts: telling results, a scratch folder, the program.
# Scripts run from the top of the tree and end with `exit $failures`.

LC_ALL=C
export LC_ALL
# Programs of tests leave nothing beside themselves.
PYTHONDONTWRITEBYTECODE=1
export PYTHONDONTWRITEBYTECODE
unset SOURCE_DATE_EPOCH COLUMNS
# A make that a test calls has what was set for the one that runs the tests, but none of its jobs.
MAKEFLAGS=$(echo "${MAKEFLAGS-}" | sed 's/ *-j[0-9]*//g; s/ *--jobserver-[a-z]*=[^ ]*//g')
export MAKEFLAGS
failures=0
top=$(pwd -P)

case $MAYDECK in
/*) ;;
*) MAYDECK=$top/$MAYDECK ;;
esac
case $SHIM in
/*) ;;
*) SHIM=$top/$SHIM ;;
esac

# The day every test prints on.
print_date=2026-11-20

scratch=$(mktemp -d "${TMPDIR:-/tmp}/maydeck-test.XXXXXX") || exit 1
scratch=$(cd "$scratch" && pwd -P)
trap 'chmod -R u+w "$scratch"; rm -rf "$scratch"' EXIT
trap 'exit 1' HUP INT TERM

# Tests take the program's files from where it is.
unset MAYDECK_DATA

# LD_PRELOAD is a list that spaces and colons part.
case $SHIM in
*[\ :]*)
    [ ! -f "$SHIM" ] || cp "$SHIM" "$scratch/fault.so" || exit 1
    SHIM=$scratch/fault.so
    ;;
esac

ok() {
    echo "ok $*"
}

# not_ok NAME DETAIL...: the details are shown line by line.
not_ok() {
    echo "not ok $1"
    shift
    [ $# -eq 0 ] || printf '%s\n' "$@" | sed 's/^/# /'
    failures=1
}

# skip NAME WHY
skip() {
    echo "ok $1 # SKIP $2"
}

# Are there terminals to be had? A bare root may have no pseudo-terminals, or not the command.
has_terminals() {
    script -qec true /dev/null </dev/null >/dev/null 2>&1
}

# expect_equal NAME EXPECTED ACTUAL
expect_equal() {
    if [ "$2" = "$3" ]; then
        ok "$1"
    else
        not_ok "$1" "expected: $2" "found:    $3"
    fi
}

# expect_empty NAME TEXT
expect_empty() {
    if [ -z "$2" ]; then
        ok "$1"
    else
        not_ok "$1" "$2"
    fi
}

# seal FOLDER: lists changed texts as `make manifest` does.
seal() {
    sh .setup/manifest "$1" >"$scratch/sealed" && mv "$scratch/sealed" "$1/manifest.txt"
}

# fingerprint_of CARD: of the text that the program has, in English.
fingerprint_of() {
    "$MAYDECK" list cards | sed -n "s/^[0-9]* *$1 .* \([0-9A-F-]\{19\}\) .*/\1/p"
}

# page_words DUMP: all texts of a page, in order, as one line.
page_words() {
    sed -n 's/^text .* "\(.*\)"$/\1/p' "$1" | tr '\n' ' ' | tr -s ' '
}

# Without the plan, then the tags of its sources: room decides whether each stands at its own
# sentence or all at the end of the box. Of a safety plan also without what is of the whole set, the
# index of cards, and so without its code.
page_words_but_plan() {
    case $1 in
    *-safety_plan*) of_set='/^text seen /d; /role=code/d' ;;
    *) of_set= ;;
    esac
    sed -n "$of_set"';/^text plan /d; /role=source_tag/d; s/^text .* "\(.*\)"$/\1/p' "$1" | tr '\n' ' ' | tr -s ' '
    sed -n '/role=source_tag/s/^text .* "\[\(.*\)\]"$/\1/p' "$1" | tr ';' '\n' | sed 's/^ //' | sort -u |
        tr '\n' ' '
}

# pages_said FILE: how many pages of it say something; a back that is left blank says nothing.
pages_said() {
    pdftotext "$1" - 2>/dev/null | awk 'BEGIN { RS = "\f" } /[^ \n]/ { count++ } END { print count + 0 }'
}

# Runs the program: its exit status is left in `status`, what it says in
# $scratch/stdout and $scratch/stderr, and what was wrong, wherever it was said, in
# $scratch/problems.
maydeck() {
    # shellcheck disable=SC2086
    $WRAP "$MAYDECK" "$@" >"$scratch/stdout" 2>"$scratch/stderr" </dev/null
    status=$?
    problems_keep "$1"
}

# problems_keep COMMAND: `check` tells what it found on standard output.
problems_keep() {
    cat "$scratch/stderr" >"$scratch/problems"
    [ "$1" != check ] || findings "$scratch/stdout" >>"$scratch/problems"
}

# findings FILE: what `check` found, of what it said on standard output: no table, no figures,
# nothing that is left to record.
findings() {
    awk '/^[^ ].*: (error|held|deficiency|note|silenced): / { on = 1; print; next }
        !/^ / { on = 0 }
        on' "$1"
}

# expect_status NAME STATUS: as the last run ended.
expect_status() {
    if [ "$status" -eq "$2" ]; then
        ok "$1"
    else
        not_ok "$1" "expected status $2, found $status" "$(cat "$scratch/stderr")"
    fi
}

# The files in a folder, one a line, hidden ones too, but for the list that each print leaves beside
# what it printed (tests/cli/verify.sh).
folder_list() {
    (cd "$1" && find . -type f ! -name printed.csv | sed 's,^\./,,' | sort)
}
