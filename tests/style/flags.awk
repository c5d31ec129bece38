# Prints one line for each parameter of type bool in the head of a function: the caller
# writes true or false, and nobody can read there which of two things is wanted. Two
# functions, or an enum, say it. A pointer to bool, where a result is put, is none.

function head_look(head,    name, rest, parameters, parameter, index_) {
    if (head !~ /\(/ || head ~ /^(static )?(const )?[A-Za-z0-9_ *]+=/) return
    name = head
    sub(/ *\(.*$/, "", name)
    sub(/^.*[ *]/, "", name)
    rest = head
    sub(/^[^(]*\(/, "", rest)
    parameters = split(rest, parameter, /[,()]/)
    for (index_ = 1; index_ <= parameters; index_++)
        if (parameter[index_] ~ /^ *(const )?bool +[A-Za-z_][A-Za-z0-9_]* *$/) {
            sub(/^.*bool +/, "", parameter[index_])
            gsub(/ /, "", parameter[index_])
            print FILENAME ":" start ": " name " takes a bool: " parameter[index_]
        }
}

FNR == 1 { in_comment = 0; head = ""; inside = 0 }

{
    line = code_of($0)
    if (line == "" || line ~ /^#/ || line ~ /\\$/) next
    if (inside) {
        if (line ~ /^\}/) inside = 0
        next
    }
    if (head == "" && line !~ /^[A-Za-z_]/) next
    if (head == "") start = FNR
    head = head " " line
    sub(/^ /, "", head)
    if (line ~ /[;{}]$/) {
        head_look(head)
        inside = line ~ /\{$/
        head = ""
    }
}
