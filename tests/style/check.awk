# Prints one line for each breach of the house's style in C files: functions over
# 60 lines, files over 400, lines over 100 characters, tabs, banned functions, a
# file that does not open with a comment. Functions are told by our layout: what
# opens with a name in column 0 and closes with a brace in column 0.

function tell(line, message) { print FILENAME ":" line ": " message }

function name_of(line,    name) {
    name = line
    sub(/ *\(.*$/, "", name)
    sub(/^.*[ *]/, "", name)
    return name
}

# Follows the definitions at column 0; a declaration ends with a semicolon.
function definition_follow(line) {
    if (line ~ /^#/ || line == "") return
    if (!inside && line ~ /^[A-Za-z_]/ && line !~ /^typedef/) {
        if (!start) start = FNR
        if (line ~ /\(/ && line !~ /=/ && function_name == "") {
            function_name = name_of(line)
            start = FNR
        }
    }
    if (inside && line ~ /^\}/) {
        if (function_name != "" && line == "}" && FNR - start + 1 > 60)
            tell(start, function_name " has " (FNR - start + 1) " lines, at most 60 are allowed")
        inside = 0; start = 0; function_name = ""
    } else if (!inside && line ~ /\{$/) {
        inside = 1
    } else if (!inside && line ~ /[;}]$/) {
        start = 0; function_name = ""
    }
}

function banned_find(line,    index_) {
    for (index_ = 1; index_ <= banned_count; index_++)
        if (line ~ ("(^|[^A-Za-z0-9_])" banned[index_] "[ ]*\\("))
            tell(FNR, "calls " banned[index_])
    if (FILENAME !~ heap_files && line ~ /(^|[^A-Za-z0-9_])(malloc|calloc|realloc|free) *\(/)
        tell(FNR, "uses the heap: memory comes from arenas")
}

function file_end(file, lines) {
    if (file != "" && lines > 400) print file ":" lines ": has over 400 lines"
}

BEGIN {
    banned_count = split("strcpy strcat sprintf vsprintf strtok strtok_r atoi atol atoll atof " \
        "strtod strtof strtold scanf sscanf fscanf gets alloca setlocale localtime " \
        "rand srand random", banned, " ")
    # Where a library's own memory is held, inside one function; tests free what they read.
    heap_files = "^src/base/(arena|heap|text_unicode)[.]c$|^src/(yaml|type|draw)/|^tests/"
}

FNR == 1 {
    file_end(last_file, last_line)
    last_file = FILENAME
    in_comment = 0; inside = 0; start = 0; function_name = ""
    if ($0 !~ /^\/\*/) tell(1, "does not open with a comment on what it is")
}

{
    last_line = FNR
    characters = $0
    gsub(/[\200-\277]/, "", characters)
    if (length(characters) > 100) tell(FNR, "has over 100 characters")
    if ($0 ~ /\t/) tell(FNR, "holds a tab")
    if ($0 ~ /[ \t]$/) tell(FNR, "ends with a space")
    code = code_of($0)
    definition_follow(code)
    banned_find(code)
}

END { file_end(last_file, last_line) }
