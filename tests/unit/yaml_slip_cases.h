/* yaml_slip_cases.h - slips that YAML takes for something else: words without a
 * colon, commas left out, comments inside brackets, typographic quotes. */
#ifndef MAYDECK_YAML_SLIP_CASES_H
#define MAYDECK_YAML_SLIP_CASES_H

#include "yaml_case.h"

#define LOST "a comma ends the text before it, and no colon follows it\n"
#define OR_A_KEY "\nif it is a key, write a colon and its value behind it"
#define LOST_REMEDY(line) \
    "if it belongs to the text before it, put the whole text in quotes:\n" line OR_A_KEY

static const struct reading_case slip_cases[] = {
    {.name = "bare word",
     INPUT("{spot: in the cupboard, below}\n"),
     .told = "1:25+5 error: \"below\" would be lost: " LOST,
     .remedy = LOST_REMEDY("spot: \"in the cupboard, below\"")},
    {.name = "bare word in the middle",
     INPUT("- {how: hold STOP 2 s, release, side: port}\n"),
     .told = "1:24+7 error: \"release\" would be lost: " LOST,
     .remedy = LOST_REMEDY("how: \"hold STOP 2 s, release\"")},
    {.name = "several bare words are one text",
     INPUT("{how: one, two, three 'x', side: port, four}\n"),
     .told = "1:12+14 error: \"two, three 'x'\" would be lost: " LOST
             "1:40+4 error: \"four\" would be lost: " LOST,
     .remedy = LOST_REMEDY("how: \"one, two, three 'x'\"")},
    {.name = "bare word behind quotes",
     INPUT("{how: 'press \"A\"', wait}\n"),
     .told = "1:20+4 error: \"wait\" would be lost: " LOST,
     .remedy = LOST_REMEDY("how: 'press \"A\", wait'")},
    {.name = "bare word in quotes",
     INPUT("{how: x, \"wait\"}\n"),
     .told = "1:10+6 error: \"wait\" would be lost: " LOST,
     .remedy = LOST_REMEDY("how: \"x, wait\"")},
    {.name = "bare word first",
     INPUT("{below, side: port}\n"),
     .told = "1:2+5 error: \"below\" would be lost: no colon follows it\n",
     .remedy = "write a colon and a value behind it, or delete it"},
    {.name = "bare word behind a list",
     INPUT("{inside: [a], below}\n"),
     .told = "1:15+5 error: \"below\" would be lost: no colon follows it\n",
     .remedy = "write a colon and a value behind it, or delete it"},
    {.name = "bare word in the lines below",
     INPUT("- {spot: a,\n"
           "   below  # so: it, is\n"
           "   , side: port,\n"
           "   deck\n"
           "   }\n"),
     .told = "2:4+5 error: \"below\" would be lost: " LOST
             "4:4+4 error: \"deck\" would be lost: " LOST,
     .remedy = LOST_REMEDY("spot: \"a, below\"")},
    {.name = "bare word in braces in a list in braces",
     INPUT("a: {b: [c, {d: e, f}]}\n"),
     .told = "1:19+1 error: \"f\" would be lost: " LOST,
     .remedy = LOST_REMEDY("d: \"e, f\"")},
    {.name = "bare word that stands there twice",
     INPUT("{a: b, a, c: d, c}\n"),
     .told = "1:8+1 error: \"a\" would be lost: " LOST
             "1:17+1 error: \"c\" would be lost: " LOST,
     .remedy = LOST_REMEDY("a: \"b, a\"")},
    {.name = "bare word behind a question mark",
     INPUT("{a: b, ? c, d: e}\n"),
     .told = "1:10+1 error: \"c\" would be lost: " LOST,
     .remedy = LOST_REMEDY("a: \"b, c\"")},
    {.name = "bare key in lines",
     INPUT("? spot\n"
           "name: x\n"),
     .told = "1:3+4 error: \"spot\" would be lost: no colon follows it\n",
     .remedy = "write a colon and a value behind it, or delete it"},
    {.name = "empty values have a colon",
     INPUT("{a: , \"b\": , c : ,\n"
           " d: # so\n"
           " }\n"),
     .told = "",
     .tree = true},
    {.name = "comma for a point",
     INPUT("{loa_m: 10,2, beam_m: 3,45}\n"),
     .told = "1:12+1 error: \"2\" would be lost: " LOST
             "1:25+2 error: \"45\" would be lost: " LOST,
     .remedy = "write 10.2, with a point; if it belongs to a text, put the whole text in "
               "quotes"},
    {.name = "comma for a point or for thousands",
     INPUT("{kg: 4,500}\n"),
     .told = "1:8+3 error: \"500\" would be lost: " LOST,
     .remedy = "write 4500 or 4.5, whichever is meant: no comma, a point before decimals; if "
               "it belongs to a text, put the whole text in quotes"},
    {.name = "space missing in braces",
     INPUT("{item:knife, tag:E8, spot: a,side:port, b}\n"),
     .told = "1:2+10 error: \"item:knife\" would be lost: a colon needs a space behind it\n"
             "1:14+6 error: \"tag:E8\" would be lost: a colon needs a space behind it\n"
             "1:30+9 error: \"side:port\" would be lost: a colon needs a space behind it\n"
             "1:41+1 error: \"b\" would be lost: " LOST,
     .remedy = "write item: knife\nif it belongs to a text, put the whole text in quotes"},
    {.name = "no-break space behind a colon",
     INPUT("{tag:\xC2\xA0" "E8}\n"),
     .told = "1:2+7 error: \"tag:\xC2\xA0" "E8\" would be lost: a colon needs a space behind it\n",
     .remedy = "write tag: E8\nif it belongs to a text, put the whole text in quotes"},
    {.name = "an address is no key",
     INPUT("{spot: see, http://x}\n"),
     .told = "1:13+8 error: \"http://x\" would be lost: " LOST,
     .remedy = LOST_REMEDY("spot: \"see, http://x\"")},
    {.name = "space missing in the line below",
     INPUT("a: x\n"
           "tag:E8\n"
           "b: y\n"),
     .told = "2:1+6 error: a colon needs a space behind it\n",
     .remedy = "write tag: E8"},
    {.name = "comma missing before a key",
     INPUT("{item: knife, tag: E8 zone: cockpit}\n"),
     .told = "1:23+4 error: a comma is missing before \"zone:\", or a colon stands in a text "
             "without quotes\n",
     .remedy = "if \"zone\" is a key, put a comma before it; if it belongs to the text before "
               "it, put that whole text in quotes"},
    {.name = "comma missing behind quotes",
     INPUT("{tag: \"E8\" zone: cockpit}\n"),
     .told = "1:12+4 error: a comma is missing before \"zone:\", or a colon stands in a text "
             "without quotes\n",
     .remedy = "if \"zone\" is a key, put a comma before it; if it belongs to the text before "
               "it, put that whole text in quotes"},
    {.name = "comma missing at a line's end",
     INPUT("- {tag: E8\n"
           "   zone: cockpit}\n"),
     .told = "2:4+4 error: a comma is missing before \"zone:\", or a colon stands in a text "
             "without quotes\n",
     .remedy = "if \"zone\" is a key, put a comma before it; if it belongs to the text before "
               "it, put that whole text in quotes"},
    {.name = "comment that swallows a brace",
     INPUT("- {spot: locker # 2, side: port}\n"
           "- {a: b}\n"),
     .told = "1:17+1 error: what follows \"#\" counts as a comment, and the end of the bracket "
             "with it\n",
     .remedy = "put a text that holds # in quotes; a remark goes behind the bracket"},
    {.name = "comment behind a comma",
     INPUT("{a: \"# b }\", 'c': d,#e: f}\n"),
     .told = "1:21+1 error: what follows \"#\" counts as a comment, and the end of the bracket "
             "with it\n",
     .remedy = "put a text that holds # in quotes; a remark goes behind the bracket"},
    {.name = "cut and the brace with it",
     INPUT("- {spot: locker #2, side: port}\n"
           "b: c\n"),
     .told = "1:17+3 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n",
     .remedy = "put the text in quotes; if a comment is meant, put a space after #"},
    {.name = "comment that swallows nothing",
     INPUT("a: [b, # one\n"
           "  c\n"
           "d: e\n"),
     .told = "1:4+1 error: this bracket is not closed\n",
     .remedy = "close the list with ]"},
    {.name = "typographic quotes",
     INPUT("{a: \xE2\x80\x9C" "by the door\xE2\x80\x9D, b: \xC2\xAB" "x\xC2\xBB}\n"),
     .told = "1:5+13 error: the text stands in typographic quotes, which would be a part of "
             "it\n"
             "1:23+3 error: the text stands in typographic quotes, which would be a part of "
             "it\n",
     .remedy = "write \"by the door\", with straight quotes\n"
               "if these are to be printed, put straight ones around them"},
    {.name = "typographic quotes and a comma",
     INPUT("{a: \xE2\x80\x9E" "in here, below\xE2\x80\x9C}\n"),
     .told = "1:15+6 error: \"below\xE2\x80\x9C\" would be lost: " LOST,
     .remedy = LOST_REMEDY("a: \"in here, below\"")},
    {.name = "typographic quotes inside",
     INPUT("a: press \xE2\x80\x9CSTOP\xE2\x80\x9D\n"
           "b: \"\xE2\x80\x9CSTOP\xE2\x80\x9D\"\n"
           "c: \xE2\x80\x99tis\n"),
     .told = "",
     .tree = true},
    {.name = "question mark alone",
     INPUT("spot: ?\n"),
     .told = "1:7+1 error: a value cannot begin with \"?\"\n",
     .remedy = "record what is there, or leave the value empty: check tells what is missing"},
    {.name = "question marks alone",
     INPUT("{a: b, spot: ??? }\n"),
     .told = "1:14+1 error: a value cannot begin with \"?\"\n",
     .remedy = "record what is there, or leave the value empty: check tells what is missing"},
    {.name = "dash alone",
     INPUT("spot: -\n"),
     .told = "1:7+1 error: an entry of a list cannot stand here\n",
     .remedy = "record what is there, or leave the value empty: check tells what is missing"},
    {.name = "no-break spaces indent",
     INPUT("a:\n"
           "\xC2\xA0\xC2\xA0" "b: x\n"
           "  c: y\xC2\xA0z\n"
           "\xE3\x80\x80" "\n"),
     .told = "2:1+1 error: the line is indented with the character U+00A0, which only looks "
             "like a space\n"
             "4:1+1 error: the line is indented with the character U+3000, which only looks "
             "like a space\n",
     .remedy = "type the spaces of the line's start anew"},
};

#endif
