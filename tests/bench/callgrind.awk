# What callgrind counted, of one or more of its files (one instruction count a line, without
# addresses):
#   total N            all instructions
#   file NAME N        those of each file
#   object NAME N      those of each program or library itself, by the name of its file
#   called FUNCTION N  those from each call of a function to its return, what it called with them

FNR == 1 {
    delete name
    after_call = 0
}

# (ID) NAME where it stands for the first time, (ID) later.
function named(kind, text,    id) {
    id = kind substr(text, 1, index(text, ")"))
    if (index(text, " ") > 0)
        name[id] = substr(text, index(text, " ") + 1)
    return name[id]
}

/^ob=/ { object = named("ob", substr($0, 4)); next }
/^cob=/ { named("ob", substr($0, 5)); next }
/^fn=/ { named("fn", substr($0, 4)); next }
/^cfn=/ { callee = named("fn", substr($0, 5)); next }
/^calls=/ { after_call = 1; next }

/^([-+]?[0-9]|\*)/ {
    if (after_call) {
        called[callee] += $2
        after_call = 0
    } else {
        self[object] += $2
        file[FILENAME] += $2
        total += $2
    }
}

END {
    printf "total %.0f\n", total
    for (each in file)
        printf "file %s %.0f\n", each, file[each]
    for (each in self) {
        short = each
        sub(/^.*\//, "", short)
        printf "object %s %.0f\n", short, self[each]
    }
    for (each in called)
        printf "called %s %.0f\n", each, called[each]
}
