# Pages for a browser: each text and box at its place.
function page_begin(width, height) {
    if (!begun++)
        printf "<!DOCTYPE html><html><head><meta charset=utf-8><style>@page{size:%spt %spt;margin:0}" \
            "body{margin:0;font-family:Roboto Condensed,sans-serif}section{position:relative;width:%spt;" \
            "height:%spt;overflow:hidden;break-after:page}section *{position:absolute;white-space:pre;line-height:1}" \
            "i{border:1pt solid;box-sizing:border-box}</style></head><body>\n", width, height, width, height
    else
        print "</section>"
    print "<section>"
}
function text(x, y, size, face, words) {
    gsub(/&/, "\\&amp;", words)
    gsub(/</, "\\&lt;", words)
    printf "<span style=\"left:%spt;top:%.3fpt;font-size:%spt%s\">%s</span>\n", x, y - 0.9 * size, size,
        face == "regular" ? "" : ";font-weight:bold", words
}
function box(x, y, width, height, filled) {
    printf "<i style=\"left:%spt;top:%spt;width:%spt;height:%spt\"></i>\n", x, y, width, height
}
function line(x, y, to_x, to_y) {
    box(x, y, to_x - x, to_y - y, 0)
}
END { print "</section></body></html>" }
