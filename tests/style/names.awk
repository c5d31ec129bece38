# Prints one line for each name that two C files define for themselves: static functions
# and variables, macros and constants of enums that stand at the left edge. A name that
# is found twice makes a reader look in the wrong place; where it is the same thing it
# belongs once into a room below, else it says whose it is. A macro that its file
# undefines again, as those that spread a list are, is no name of the file.

function define(name) {
    if (name == "") return
    where = FILENAME ":" FNR
    if (!(name in file)) {
        file[name] = FILENAME
        place[name] = where
    } else if (file[name] != FILENAME) {
        print where ": " name " is defined in " place[name] " too"
    }
}

# The name that a definition at the left edge gives: before ( of a function, before
# [ or = or ; of a variable, the last word else.
function name_in(line,    name) {
    name = line
    sub(/[[=;].*$/, "", name)
    if (name ~ /\(\*/) {                     # an array of functions, a function that gives one
        sub(/^[^(]*\( *\*+ *(const )?/, "", name)
        sub(/[^A-Za-z0-9_].*$/, "", name)
        return name
    }
    sub(/ *\(.*$/, "", name)
    sub(/[ ]+$/, "", name)
    sub(/^.*[^A-Za-z0-9_]/, "", name)
    return name
}

# The constants in a piece of an enum's body.
function constants_in(body,    part, parts, index_, name) {
    parts = split(body, part, ",")
    for (index_ = 1; index_ <= parts; index_++) {
        name = part[index_]
        gsub(/^[ ]+/, "", name)
        if (name ~ /^[A-Z][A-Z0-9_]* *(=.*)?$/) {      # not a list that is spread there
            sub(/[ =].*$/, "", name)
            define(name)
        }
    }
}

function line_look(line,    body) {
    if (line ~ /^# *define /) {
        sub(/^# *define +/, "", line)
        sub(/[^A-Za-z0-9_].*$/, "", line)
        if (!((FILENAME, line) in undefined)) define(line)
        return
    }
    if (in_enum) {
        if (line ~ /^\}|\};/) { in_enum = 0; sub(/\}.*$/, "", line) }
        constants_in(line)
        return
    }
    if (line ~ /^(static |const |_Thread_local )*(enum|struct|union)( [A-Za-z0-9_]+)? *\{/) {
        if (line ~ /enum/) {
            body = line
            sub(/^[^{]*\{/, "", body)
            in_enum = body !~ /\}/
            sub(/\}.*$/, "", body)
            constants_in(body)
        }
        open = line ~ /^static / && line !~ /\}/
        if (line ~ /^static .*\}/) { sub(/^.*\} */, "", line); define(name_in(line)) }
        return
    }
    if (open && line ~ /^\}/) {                   # static const struct { ... } name[] = ...
        sub(/^\} */, "", line)
        define(name_in(line))
        open = 0
        return
    }
    if (line ~ /^static /) define(name_in(line))
}

FNR == 1 { in_enum = 0; open = 0; in_comment = 0 }

# The files are given twice: first for what they undefine.
pass == 1 {
    if ($1 == "#undef") undefined[FILENAME, $2] = 1
    next
}

{ line_look(code_of($0)) }
