# Pages for an office program: the words alone, a paragraph each, a page break before each page. It
# is asked for less than the others: no places, no boxes.
function page_begin(width, height) {
    if (!begun++) {
        print "<?xml version=\"1.0\" encoding=\"UTF-8\"?>"
        print "<office:document xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" " \
            "xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\" " \
            "xmlns:style=\"urn:oasis:names:tc:opendocument:xmlns:style:1.0\" " \
            "xmlns:fo=\"urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0\" " \
            "office:version=\"1.2\" office:mimetype=\"application/vnd.oasis.opendocument.text\">"
        print "<office:automatic-styles>"
        print "<style:style style:name=\"R\" style:family=\"paragraph\"><style:text-properties fo:font-size=\"3pt\"/></style:style>"
        print "<style:style style:name=\"B\" style:family=\"paragraph\"><style:paragraph-properties fo:break-before=\"page\"/></style:style>"
        print "</office:automatic-styles><office:body><office:text>"
    }
    print "<text:p text:style-name=\"B\"/>"
}
function text(x, y, size, face, words) {
    gsub(/&/, "\\&amp;", words)
    gsub(/</, "\\&lt;", words)
    printf "<text:p text:style-name=\"R\">%s</text:p>\n", words
}
function box(x, y, width, height, filled) { }
function line(x, y, to_x, to_y) { }
END { print "</office:text></office:body></office:document>" }
