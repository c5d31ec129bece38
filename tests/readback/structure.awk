# structure.awk - what `pdfinfo -struct-text` reads of a tagged file, one element a line without
# poppler's remarks, the words of an element in one piece however many fonts they are in.

function text_end() {
    if (text != "") print margin "\"" text "\""
    text = ""
}

/^ *"/ {
    spaces = $0
    sub(/".*/, "", spaces)
    if (spaces != margin) text_end()
    margin = spaces
    text = text substr($0, length(spaces) + 2, length($0) - length(spaces) - 2)
    next
}
{ text_end() }
/^ *\// { next }
{
    sub(/ \([a-z]*\)/, "")
    sub(/:$/, "")
    print
}
END { text_end() }
