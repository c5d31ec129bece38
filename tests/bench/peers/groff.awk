# Pages for groff -Tpdf: each text and box at its place.
function page_begin(width, height) {
    if (!begun++)
        printf ".pl %sp\n.po 0\n.ll %sp\n.nf\n", height, width
    else
        print ".bp"
}
function text(x, y, size, face, words) {
    gsub(/\\/, "\\e", words)
    gsub(/'/, "\\[aq]", words)
    printf ".sp |%sp\n\\h'%sp'\\f%s\\s[%s]%s\\s0\n.br\n", y, x, face == "regular" ? "[HR]" : "[HB]", size, words
}
function box(x, y, width, height, filled) {
    printf ".sp |%sp\n\\h'%sp'\\D'l 0 %sp'\\D'l %sp 0'\\D'l 0 -%sp'\\D'l -%sp 0'\n.br\n", y, x, height, width, height, width
}
function line(x, y, to_x, to_y) {
    printf ".sp |%sp\n\\h'%sp'\\D'l %.3fp %.3fp'\n.br\n", y, x, to_x - x, to_y - y
}
