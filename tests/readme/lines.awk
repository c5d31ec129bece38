# What README.md has for a reader to type or to see: the lines of its code blocks, and commands of
# the program that stand in a sentence. Prints, in their order, a line each with tabs between:
#
#   command  LINE  COMMENT    what begins with a word of `starts`, without the remark behind it
#   excerpt  LINE             all else: what a command says, or a part of a file

BEGIN { starts = "^(out/maydeck|maydeck|make|apt-get|sudo|git|sh|cd) " }

function told(line,    comment) {
    comment = ""
    if (line ~ starts) {
        if (match(line, / +# /)) {
            comment = substr(line, RSTART + RLENGTH)
            line = substr(line, 1, RSTART - 1)
        }
        print "command\t" line "\t" comment
    } else print "excerpt\t" line
}

/^    / { told(substr($0, 5)); next }
{
    count = split($0, part, "`")
    for (i = 2; i < count; i += 2)
        if (part[i] ~ /^(out\/)?maydeck [a-z]/) print "command\t" part[i] "\t"
}
