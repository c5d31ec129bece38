# Pages for pdflatex: each text and box at its place, in one picture a page.
function page_begin(width, height) {
    if (!begun++) {
        print "\\documentclass{article}"
        printf "\\usepackage[utf8]{inputenc}\n"
        printf "\\pdfpagewidth=%sbp\n\\pdfpageheight=%sbp\n", width, height
        printf "\\hoffset=-1in\n\\voffset=-1in\n\\oddsidemargin=0pt\n\\topmargin=0pt\n\\headheight=0pt\n"
        printf "\\headsep=0pt\n\\parindent=0pt\n\\textwidth=%sbp\n\\textheight=%sbp\n", width, height
        printf "\\setlength{\\unitlength}{1bp}\n\\pagestyle{empty}\n\\begin{document}\n"
    } else
        printf "\\end{picture}\n\\newpage\n"
    high_page = height
    printf "\\begin{picture}(%s,%s)\n", width, height
}
function text(x, y, size, face, words) {
    gsub(/[#$%&_{}]/, "\\\\&", words)
    gsub(/·/, "$\\cdot$", words)
    gsub(/▲|▼|◀|▶|←|→|↑|↓/, "", words)
    printf "\\put(%s,%.3f){\\fontsize{%s}{%s}\\selectfont%s %s}\n", x, high_page - y, size, size,
        face == "regular" ? "" : "\\bfseries", words
}
function box(x, y, width, height, filled) {
    printf "\\put(%s,%.3f){\\framebox(%s,%s){}}\n", x, high_page - y - height, width, height
}
function thick(given) {
    return given > 0.5 ? given : 0.5
}
function line(x, y, to_x, to_y) {
    printf "\\put(%s,%.3f){\\rule{%.3fbp}{%.3fbp}}\n", x, high_page - to_y, thick(to_x - x), thick(to_y - y)
}
END { printf "\\end{picture}\n\\end{document}\n" }
