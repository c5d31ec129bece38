# Lets pass what known.txt says was so when the law was made; what it says and is no
# longer so is told, so that the list only becomes shorter. A line to judge ends with
# its key in brackets.

FILENAME == ARGV[1] {
    if ($0 !~ /^#/ && $0 != "") known[$0] = 1
    next
}

{
    key = $0
    if (!sub(/^.* \[/, "", key)) { print; next }
    sub(/\]$/, "", key)
    if (key in known) met[key] = 1
    else { sub(/ \[[^[]*\]$/, ""); print }
}

END { for (key in known) if (!(key in met)) print "known.txt: no longer so: " key }
