/* yaml_character_cases.h - files with characters that may not be in them. */
#ifndef MAYDECK_YAML_CHARACTER_CASES_H
#define MAYDECK_YAML_CHARACTER_CASES_H

#include "yaml_case.h"

static const struct reading_case character_cases[] = {
    {.name = "byte order mark of UTF-16",
     INPUT("\xFF\xFE" "a\x00:\x00 \x00" "b\x00"),
     .told = "0:0+0 error: the file is written in UTF-16, not in UTF-8\n",
     .remedy = "save the file with the encoding UTF-8"},
    {.name = "UTF-16 without mark",
     INPUT("a\x00:\x00 \x00" "b\x00"),
     .told = "0:0+0 error: the file is written in UTF-16, not in UTF-8\n",
     .remedy = "save the file with the encoding UTF-8"},
    {.name = "UTF-32",
     INPUT("\xFF\xFE\x00\x00" "a\x00\x00\x00"),
     .told = "0:0+0 error: the file is written in UTF-16, not in UTF-8\n",
     .remedy = "save the file with the encoding UTF-8"},
    {.name = "Latin-1",
     INPUT("name: Caf\xE9\n"
           "b: \xFF\xFE\xF8\n"),
     .told = "1:10+1 error: the byte 0xE9 is not valid UTF-8\n"
             "2:4+1 error: the byte 0xFF is not valid UTF-8\n"
             "2:5+1 error: the byte 0xFE is not valid UTF-8\n"
             "2:6+1 error: the byte 0xF8 is not valid UTF-8\n",
     .remedy = "save the file with the encoding UTF-8; the byte may stand for \"\xC3\xA9\""},
    {.name = "cut sequence",
     INPUT("a: x\xE2\x82"),
     .told = "1:5+1 error: the byte 0xE2 is not valid UTF-8\n"
             "1:6+1 error: the byte 0x82 is not valid UTF-8\n",
     .remedy = "save the file with the encoding UTF-8; the byte may stand for \"\xC3\xA2\""},
    {.name = "overlong",
     INPUT("a: \xC0\xAF\n"),
     .told = "1:4+1 error: the byte 0xC0 is not valid UTF-8\n"
             "1:5+1 error: the byte 0xAF is not valid UTF-8\n",
     .remedy = "save the file with the encoding UTF-8; the byte may stand for \"\xC3\x80\""},
    {.name = "surrogate",
     INPUT("a: \xED\xA0\x80\n"),
     .told = "1:4+1 error: the byte 0xED is not valid UTF-8\n"
             "1:5+1 error: the byte 0xA0 is not valid UTF-8\n"
             "1:6+1 error: the byte 0x80 is not valid UTF-8\n",
     .remedy = "save the file with the encoding UTF-8; the byte may stand for \"\xC3\xAD\""},
    {.name = "NUL",
     INPUT("ab: c\x00" "d\n"
           "x: y\n"),
     .told = "1:6+1 error: the character U+0000 is not allowed: a control character\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "escape sequence",
     INPUT("a: \x1B[1m\n"),
     .told = "1:4+1 error: the character U+001B is not allowed: a control character\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "delete",
     INPUT("a: b\x7F\n"),
     .told = "1:5+1 error: the character U+007F is not allowed: a control character\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "next line",
     INPUT("a: b\xC2\x85" "c: d\n"),
     .told = "1:5+1 error: the character U+0085 is not allowed: a control character\n"
             "1:7+1 error: a colon followed by a space cannot stand in a text without "
             "quotes\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "line separator",
     INPUT("a: b\xE2\x80\xA8" "c: d\n"),
     .told = "1:5+1 error: the character U+2028 is not allowed: an invisible line "
             "break\n"
             "1:7+1 error: a colon followed by a space cannot stand in a text without "
             "quotes\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "right to left",
     INPUT("boat: \xE2\x80\xAE" "evil\n"),
     .told = "1:7+1 error: the character U+202E is not allowed: an invisible character "
             "that turns the direction of writing\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "in a comment",
     INPUT("# safe \xE2\x81\xA6 x\n"
           "a: b\n"),
     .told = "1:8+1 error: the character U+2066 is not allowed: an invisible character "
             "that turns the direction of writing\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "zero width in key",
     INPUT("a\xE2\x80\x8B" "b: 1\n"
           "ab: 2\n"),
     .told = "1:2+1 error: the character U+200B is not allowed: an invisible character\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "second byte order mark",
     INPUT("\xEF\xBB\xBF\xEF\xBB\xBF" "a: 1\n"),
     .told = "1:1+1 error: the character U+FEFF is not allowed: an invisible byte order "
             "mark\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "soft hyphen",
     INPUT("a: b\xC2\xAD" "c\n"),
     .told = "1:5+1 error: the character U+00AD is not allowed: an invisible character\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "private use",
     INPUT("a: \xEE\x80\x80\n"),
     .told = "1:4+1 error: the character U+E000 is not allowed: a private character that "
             "means nothing elsewhere\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "unassigned",
     INPUT("a: \xCD\xB8\n"),
     .told = "1:4+1 error: the character U+0378 is not allowed: not assigned to any "
             "character\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "emoji",
     INPUT("a: \xF0\x9F\x94\xA5 fire\n"),
     .told = "1:4+1 error: the character U+1F525 is not allowed: a character (such as an "
             "emoji) that the cards' typefaces lack\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "lost character",
     INPUT("a: Caf\xEF\xBF\xBD\n"),
     .told = "1:7+1 error: the character U+FFFD is not allowed: the mark of a character "
             "that was lost before\n",
     .remedy = "delete the character; if the text was copied from elsewhere, type it anew"},
    {.name = "directive",
     INPUT("%YAML 1.2\n"
           "---\n"
           "a: 1\n"
           "a: 2\n"),
     .told = "1:1+1 error: a line cannot begin with \"%\" (YAML directives are not "
             "allowed)\n"
             "4:1+1 error: the key \"a\" stands here a second time; the first is at "
             "t.yaml:3\n",
     .remedy = "delete the line; if it belongs to a text, put the text in quotes on one "
               "line"},
    {.name = "percent in a list",
     INPUT("a: [b,\n"
           "%c]\n"),
     .told = "2:1+1 error: a line cannot begin with \"%\" (YAML directives are not "
             "allowed)\n",
     .remedy = "delete the line; if it belongs to a text, put the text in quotes on one "
               "line"},
    {.name = "tab indents",
     INPUT("a:\n"
           "\tb: 1\n"
           "  \t\tc: 2\n"
           "\n"
           "d: 1\n"
           "d: 2\n"),
     .told = "2:1+1 error: the line is indented with a tab; only spaces may indent\n"
             "3:3+2 error: the line is indented with a tab; only spaces may indent\n",
     .remedy = "put two spaces in the place of each tab"},
    {.name = "tab before comment",
     INPUT("a: 1\n"
           "\t# note\n"),
     .told = "2:1+1 error: the line is indented with a tab; only spaces may indent\n",
     .remedy = "put two spaces in the place of each tab"},
    {.name = "tab in text",
     INPUT("a: one\ttwo\tthree\n"
           "b: 'x\ty'\n"),
     .told = "1:7+1 error: a tab inside a text is not allowed\n"
             "2:6+1 error: a tab inside a text is not allowed\n",
     .remedy = "use a space"},
    {.name = "tab in block",
     INPUT("a: |\n"
           "  x\n"
           "  one\ttwo\n"),
     .told = "3:6+1 error: a tab inside a text is not allowed\n",
     .remedy = "use a space"},
};

#endif
