# A line of C without comments, string and character literals; a comment may run over
# lines: set in_comment to 0 where a file begins. Used by the checks in tests/layers and
# tests/style.

function code_of(line,    out, start, end) {
    gsub(/\\./, "", line)
    gsub(/"[^"]*"/, "\"\"", line)
    gsub(/'[^']*'/, "0", line)
    out = ""
    while (line != "") {
        if (in_comment) {
            end = index(line, "*/")
            if (!end) return out
            line = substr(line, end + 2)
            in_comment = 0
        } else {
            start = index(line, "/*")
            if (!start) { out = out line; break }
            out = out substr(line, 1, start - 1)
            line = substr(line, start + 2)
            in_comment = 1
        }
    }
    sub(/\/\/.*$/, "", out)
    sub(/[ \t]+$/, "", out)
    return out
}
