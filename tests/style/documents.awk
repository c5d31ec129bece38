# Does the tree have what documents name in backticks? Reads, each after its `kind=`: file, the
# paths of the tree; name, the names in its files; target, the Makefile; option, the rows of
# options; page, the documents. Looked for are paths from the top, names of C files and scripts
# (in which capitals and * stand for anything), `make X`, X=, names with an underscore, and
# --options. Not: tern, the boat that readers record themselves, and what is made in out/.

kind == "file" {
    sub(/^\.\//, "")
    count = split($0, part, "/")
    path = part[1]
    for (i = 1; i <= count; path = path "/" part[++i])
        if (!(path in paths)) { paths[path]; all = all path "\n" }
    if (count > 1) top[part[1]]
}
kind == "name" { names[$0] }
kind == "target" {
    for (i = split($0, part, /[^A-Za-z]+/); i > 0; i--) settings[part[i]]
    if (match($0, /^[a-z][a-z -]*:/))
        for (i = split(substr($0, 1, RLENGTH - 1), part, " "); i > 0; i--) targets[part[i]]
}
kind == "option" && /\{OF_[^"]*"[a-z-]+"/ { split($0, part, "\""); options[part[2]] }

function tell(what) { print FILENAME ":" FNR ": " what }

# Is there such a path, or where it has no / such a file somewhere?
function is_there(path,    before) {
    sub(/\/$/, "", path)
    before = path ~ /\// ? "\n" : "[\n/]"
    gsub(/[.]/, "[.]", path)
    gsub(/[A-Z][A-Z]+|[*]/, "[^/\n]*", path)
    return ("\n" all) ~ (before path "\n")
}

function span_judge(span,    word) {
    split(span, word, " ")
    if (span ~ /(^|\/)tern[.-]|^out\/|"/) return
    if (word[1] == "make" && word[2] != "" && !(word[2] in targets))
        tell("`" span "`: no such target")
    if (match(span, /[A-Z]+=/) && !(substr(span, RSTART, RLENGTH - 1) in settings))
        tell("`" span "`: no such setting")
    sub(/\/.*/, "", word[1])
    if (span !~ / / && ((span ~ /\// && word[1] in top) || span ~ /[.](c|h|sh|awk)$/)) {
        if (!is_there(span)) tell("`" span "`: no such file")
    } else if (span ~ /^[A-Za-z][A-Za-z0-9]*(_[A-Za-z0-9]+)+$/ && !(span in names))
        tell("`" span "`: no such name")
}

kind == "page" {
    count = split($0, part, "`")
    if (count > 0 && count % 2 == 0) tell("a name in backticks goes on in the next line")
    for (i = 2; i < count; i += 2) span_judge(part[i])
    for (rest = $0; match(rest, /(^|[ `])--[a-z][a-z-]+/); rest = substr(rest, RSTART + RLENGTH)) {
        option = substr(rest, RSTART, RLENGTH)
        sub(/^.?--/, "", option)
        if (!(option in options)) tell("--" option ": no such option")
    }
}
