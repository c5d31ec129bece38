/* yaml_syntax_cases.h - files that are no YAML, wrong as people get them wrong. */
#ifndef MAYDECK_YAML_SYNTAX_CASES_H
#define MAYDECK_YAML_SYNTAX_CASES_H

#include "yaml_case.h"

static const struct reading_case syntax_cases[] = {
    {.name = "colon in text",
     INPUT("how: turn: left\n"),
     .told = "1:10+1 error: a colon followed by a space cannot stand in a text without "
             "quotes\n",
     .remedy = "put the whole text in quotes:\nhow: \"turn: left\""},
    {.name = "colon behind quotes",
     INPUT("how: \"turn\": left\n"),
     .told = "1:12+1 error: a colon followed by a space cannot stand in a text without "
             "quotes\n",
     .remedy = "put the whole text in quotes:\nhow: '\"turn\": left'"},
    {.name = "colon in list",
     INPUT("a: {b: c: d}\n"),
     .told = "1:9+1 error: a colon followed by a space cannot stand in a text without "
             "quotes\n",
     .remedy = "put the whole text in quotes:\nb: \"c: d\""},
    {.name = "colon without space",
     INPUT("a: {b:[c]}\n"),
     .told = "1:6+1 error: a colon in brackets needs a space after it\n",
     .remedy = "put a space after the colon; if it belongs to a text, put the text in "
               "quotes"},
    {.name = "indented too far",
     INPUT("boat:\n"
           "  name: x\n"
           "   type: y\n"),
     .told = "3:4+4 error: this line is read as more of the text in line 2, and so "
             "cannot be a key\n",
     .remedy = "indent this line like the keys around it; if the line above is a key, end "
               "it with a colon"},
    {.name = "colon missing above",
     INPUT("boat:\n"
           "  name\n"
           "  type: x\n"),
     .told = "3:3+4 error: this line is read as more of the text in line 2, and so "
             "cannot be a key\n",
     .remedy = "indent this line like the keys around it; if the line above is a key, end "
               "it with a colon"},
    {.name = "space missing",
     INPUT("a:b\n"
           "c: d\n"),
     .told = "1:1+3 error: a colon needs a space behind it\n",
     .remedy = "write a: b"},
    {.name = "colon missing",
     INPUT("boat: x\n"
           "type\n"
           "loa_m: 12\n"),
     .told = "2:1+4 error: a colon is missing here, or the line belongs to the text "
             "above it\n",
     .remedy = "write the key, a colon and a space: key: value"},
    {.name = "dash without space",
     INPUT("- a\n"
           "-b\n"),
     .told = "2:1+2 error: an entry of a list is expected here\n",
     .remedy = "put a space after the dash: - entry"},
    {.name = "bracket not closed",
     INPUT("a: [1, 2\n"
           "b: 3\n"),
     .told = "1:4+1 error: this bracket is not closed\n",
     .remedy = "close the list with ]"},
    {.name = "brace not closed",
     INPUT("a: {b: c\n"
           "d: e\n"),
     .told = "1:4+1 error: this bracket is not closed\n",
     .remedy = "close the mapping with }"},
    {.name = "bracket at the end",
     INPUT("a: [1,\n"),
     .told = "1:4+1 error: this bracket is not closed\n",
     .remedy = "close the list with ]"},
    {.name = "brace at the end",
     INPUT("a: {"),
     .told = "1:4+1 error: this bracket is not closed\n",
     .remedy = "close the mapping with }"},
    {.name = "bracket and brace",
     INPUT("a: {b: [c, d}\n"),
     .told = "1:13+1 error: this bracket does not fit the one that opened in line 1\n",
     .remedy = "close a list [ with ], a mapping { with }"},
    {.name = "bracket too many",
     INPUT("a: [b]]\n"),
     .told = "1:7+1 error: this bracket closes nothing\n",
     .remedy = "delete the bracket, or put the text in quotes"},
    {.name = "bracket alone",
     INPUT("a: b\n"
           "]\n"),
     .told = "2:1+1 error: this bracket closes nothing\n",
     .remedy = "delete the bracket, or put the text in quotes"},
    {.name = "bracket begins text",
     INPUT("a: [b] c\n"),
     .told = "1:8+1 error: nothing can follow the value in this line\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "comma missing",
     INPUT("a: [{b: c} d]\n"),
     .told = "1:12+1 error: a comma is missing before this, or the bracket of line 1 is "
             "not closed\n",
     .remedy = "put a comma between two entries; a text with brackets, braces or quotes in "
               "it goes in quotes"},
    {.name = "comma begins",
     INPUT("a: , b\n"),
     .told = "1:4+1 error: a value cannot begin with \",\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "comma missing below",
     INPUT("a: [b,\n"
           "  {c: d} e]\n"),
     .told = "2:10+1 error: a comma is missing before this, or the bracket of line 1 is "
             "not closed\n",
     .remedy = "put a comma between two entries; a text with brackets, braces or quotes in "
               "it goes in quotes"},
    {.name = "quote not closed",
     INPUT("a: 1\n"
           "b: \"c\n"
           "d: e\n"),
     .told = "2:4+2 error: the quote that opens here is not closed\n",
     .remedy = "end the text with the same quote as it begins"},
    {.name = "single quote not closed",
     INPUT("a: 'b\n"),
     .told = "1:4+2 error: the quote that opens here is not closed\n",
     .remedy = "end the text with the same quote as it begins"},
    {.name = "quote closed below",
     INPUT("a: \"b\n"
           "c: d\n"
           "e: \"f\"\n"),
     .told = "1:4+2 error: the quote that opens here is closed only in line 3\n",
     .remedy = "end the text in its own line with the same quote"},
    {.name = "text behind quotes",
     INPUT("a: \"b\" c\n"),
     .told = "1:8+1 error: nothing can follow the quote that closes a text\n",
     .remedy = "put all of it in one pair of quotes; a text with \" in it goes in '...', "
               "one with ' in it in \"...\""},
    {.name = "quote in quotes",
     INPUT("a: 'it's here'\n"),
     .told = "1:8+1 error: nothing can follow the quote that closes a text\n",
     .remedy = "put all of it in one pair of quotes; a text with \" in it goes in '...', "
               "one with ' in it in \"...\""},
    {.name = "text behind quotes in list",
     INPUT("a: [1, \"x\" y]\n"),
     .told = "1:12+1 error: nothing can follow the quote that closes a text\n",
     .remedy = "put all of it in one pair of quotes; a text with \" in it goes in '...', "
               "one with ' in it in \"...\""},
    {.name = "text behind quotes in entry",
     INPUT("- \"a\" b\n"),
     .told = "1:7+1 error: nothing can follow the quote that closes a text\n",
     .remedy = "put all of it in one pair of quotes; a text with \" in it goes in '...', "
               "one with ' in it in \"...\""},
    {.name = "quote and document",
     INPUT("a: \"b\n"
           "---\n"
           "c\"\n"),
     .told = "1:4+2 error: the quote that opens here is not closed\n",
     .remedy = "end the text with the same quote as it begins"},
    {.name = "escape",
     INPUT("a: \"C:\\gear\"\n"),
     .told = "1:7+2 error: a backslash in \"...\" begins an escape, and this is none\n",
     .remedy = "write \\\\ for a backslash, or put the text in '...'"},
    {.name = "escape cut",
     INPUT("a: \"\\x4\"\n"),
     .told = "1:7+2 error: a backslash in \"...\" begins an escape, and this is none\n",
     .remedy = "write \\\\ for a backslash, or put the text in '...'"},
    {.name = "escape of half a character",
     INPUT("a: \"\\uD83D\"\n"),
     .told = "1:7+2 error: a backslash in \"...\" begins an escape, and this is none\n",
     .remedy = "write \\\\ for a backslash, or put the text in '...'"},
    {.name = "list in line of key",
     INPUT("a: - b\n"),
     .told = "1:4+1 error: an entry of a list cannot stand here\n",
     .remedy = "put each entry on a line of its own under the key, or write [one, two]; a "
               "text that begins with a dash goes in quotes"},
    {.name = "list under value",
     INPUT("a: b\n"
           "- c\n"),
     .told = "2:1+1 error: an entry of a list stands where a key is expected\n",
     .remedy = "indent the entries of a list under their key, or give the key no value"},
    {.name = "key under list",
     INPUT("- a\n"
           "b: c\n"),
     .told = "2:1+4 error: an entry of a list is expected here\n",
     .remedy = "begin the line with \"- \", or indent it to its place"},
    {.name = "text under list",
     INPUT("a:\n"
           "  - b\n"
           " c\n"),
     .told = "3:2+1 error: no key can stand here: the indentation fits nothing above\n",
     .remedy = "indent the line like the keys around it"},
    {.name = "stars",
     INPUT("act: **SHUT** the fuel\n"),
     .told = "1:6+1 error: a value cannot begin with \"*\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "stars around a word",
     INPUT("act: *SHUT* it\n"),
     .told = "1:6+1 error: a value cannot begin with \"*\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "and sign",
     INPUT("act: && so on\n"),
     .told = "1:6+1 error: a value cannot begin with \"&\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "at sign",
     INPUT("a: @home\n"),
     .told = "1:4+1 error: a value cannot begin with \"@\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "percent",
     INPUT("a: %5\n"),
     .told = "1:4+1 error: a value cannot begin with \"%\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "backtick",
     INPUT("a: `b`\n"),
     .told = "1:4+1 error: a value cannot begin with \"`\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "bar",
     INPUT("a: | b\n"),
     .told = "1:4+1 error: a value cannot begin with \"|\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "greater",
     INPUT("a: > 5\n"),
     .told = "1:4+1 error: a value cannot begin with \">\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "question mark",
     INPUT("a: ? b\n"),
     .told = "1:4+1 error: a value cannot begin with \"?\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "unknown tag handle",
     INPUT("a: !b!c d\n"),
     .told = "1:4+1 error: a value cannot begin with \"!\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "bad tag",
     INPUT("a: !<b c\n"),
     .told = "1:4+1 error: a value cannot begin with \"!\"\n",
     .remedy = "put the whole text in quotes: \"...\""},
    {.name = "empty key",
     INPUT("b: x\n"
           ": y\n"),
     .told = "2:1+1 error: a key is missing\n",
     .remedy = "write the key before the colon"},
    {.name = "empty key in braces",
     INPUT("{: x}\n"),
     .told = "1:2+1 error: a key is missing\n",
     .remedy = "write the key before the colon"},
    {.name = "left of the first key",
     INPUT("  a: b\n"
           "c: d\n"),
     .told = "2:1+4 error: this line stands outside of what the file holds so far\n",
     .remedy = "begin the line as far to the left as the first key of the file"},
    {.name = "after the end",
     INPUT("a: b\n"
           "...\n"
           "c: d\n"),
     .told = "3:1+4 error: this line stands outside of what the file holds so far\n",
     .remedy = "begin the line as far to the left as the first key of the file"},
    {.name = "anchor before alias",
     INPUT("a: &b *c\n"),
     .told = "1:4+2 error: a value cannot begin with \"&\" (YAML anchors are not "
             "allowed)\n"
             "1:7+2 error: a value cannot begin with \"*\" (YAML aliases are not "
             "allowed)\n"
             "1:7+2 error: nothing can follow the value in this line\n",
     .remedy = "put the text in quotes; if an anchor is meant, delete it"},
};

#endif
