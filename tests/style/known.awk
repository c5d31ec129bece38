# Lets pass what known.txt says was so when the law was made. A line to judge ends with
# its key in brackets.

FILENAME == ARGV[1] {
    if ($0 !~ /^#/ && $0 != "") known[$0] = 1
    next
}

{
    key = $0
    if (!sub(/^.* \[/, "", key)) { print; next }
    sub(/\]$/, "", key)
    if (key in known) next
    sub(/ \[[^[]*\]$/, "")
    print
}
