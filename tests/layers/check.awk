# Reads rooms.txt, then sources and headers (paths from the top of a tree), and
# prints one line for each include or call that the table does not allow.

function tell(message) { print file ":" FNR ": " message }

function file_begin() {
    file = FILENAME
    sub(/^.*\/(src|include)\//, "&", file)
    private = ""
    room = ""
    if (file ~ /(^|\/)include\//) {
        name = file
        sub(/^.*\//, "", name)
        if (!(name in header_room)) {
            tell("header is not listed in rooms.txt")
        } else {
            room = header_room[name]
            seen[name] = 1
        }
    } else {
        folder = file
        sub(/\/[^\/]*$/, "", folder)
        private = folder
        room = folder
        sub(/^.*\//, "", room)
        if (!(room in rank)) tell("room '" room "' is not listed in rooms.txt")
    }
}

function include_check(header,    owner) {
    if (room == "") return
    if (header in header_room) {
        owner = header_room[header]
        if (owner != room && !(rank[owner] < rank[room]))
            tell("room " room " includes " header " of room " owner)
    } else if (private == "" || header ~ /\// || !((private "/" header) in own)) {
        tell(header " is neither listed in rooms.txt nor of room " room)
    }
}

function library_check(header,    index_) {
    if (room == "") return
    for (index_ = 1; index_ <= library_count; index_++)
        if (header ~ library_pattern[index_] && room != library_room[index_])
            tell("room " room " includes <" header ">: only room " library_room[index_] " may")
}

function call_check(line,    name) {
    if (room == "") return
    for (name in call_room)
        if (room != call_room[name] && line ~ ("(^|[^A-Za-z0-9_])" name "[ ]*\\("))
            tell("room " room " calls " name ": only room " call_room[name] " may")
}

BEGIN {
    # the headers in the rooms' folders: every room may see its own
    for (argument = 2; argument < ARGC; argument++)
        if (ARGV[argument] ~ /\.h$/) own[ARGV[argument]] = 1
}

FILENAME == ARGV[1] {
    if ($1 == "room") rank[$2] = $3 + 0
    if ($1 == "header") header_room[$2] = $3
    if ($1 == "call") call_room[$2] = $3
    if ($1 == "library") {
        pattern = $2
        gsub(/\./, "[.]", pattern)
        gsub(/\*/, ".*", pattern)
        library_pattern[++library_count] = "^" pattern "$"
        library_room[library_count] = $3
    }
    next
}

FNR == 1 { in_comment = 0; file_begin() }

/^[ \t]*#[ \t]*include[ \t]*"/ { split($0, part, "\""); include_check(part[2]); next }
/^[ \t]*#[ \t]*include[ \t]*</ { split($0, part, /[<>]/); library_check(part[2]); next }
{ call_check(code_of($0)) }

END {
    for (name in header_room)
        if (!(name in seen)) print "rooms.txt: " name " is not in include/"
}
