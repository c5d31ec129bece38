/* yaml_event_cases.h - files that are YAML but not what this program reads. */
#ifndef MAYDECK_YAML_EVENT_CASES_H
#define MAYDECK_YAML_EVENT_CASES_H

#include "yaml_case.h"

static const struct reading_case event_cases[] = {
    {.name = "empty",
     INPUT(""),
     .told = "0:0+0 error: the file holds nothing but comments or white space\n",
     .remedy = "look whether the right file was saved"},
    {.name = "white space",
     INPUT("  \n"
           "\n"),
     .told = "0:0+0 error: the file holds nothing but comments or white space\n",
     .remedy = "look whether the right file was saved"},
    {.name = "only comments",
     INPUT("# nothing\n"
           "# here\n"),
     .told = "0:0+0 error: the file holds nothing but comments or white space\n",
     .remedy = "look whether the right file was saved"},
    {.name = "empty document",
     INPUT("---\n"),
     .told = "0:0+0 error: the file holds nothing but comments or white space\n",
     .remedy = "look whether the right file was saved"},
    {.name = "second document",
     INPUT("a: 1\n"
           "---\n"
           "b: 2\n"),
     .told = "2:1+3 error: a second document begins here; a file holds one\n",
     .remedy = "delete the line, or move what follows to a file of its own"},
    {.name = "anchor",
     INPUT("a: &one 1\n"),
     .told = "1:4+4 error: a value cannot begin with \"&\" (YAML anchors are not "
             "allowed)\n",
     .remedy = "put the text in quotes; if an anchor is meant, delete it"},
    {.name = "anchor on mapping",
     INPUT("a: &one\n"
           "  b: 1\n"),
     .told = "1:4+4 error: a value cannot begin with \"&\" (YAML anchors are not "
             "allowed)\n",
     .remedy = "put the text in quotes; if an anchor is meant, delete it"},
    {.name = "alias",
     INPUT("a: *one\n"
           "b: [*two, x]\n"),
     .told = "1:4+4 error: a value cannot begin with \"*\" (YAML aliases are not "
             "allowed)\n"
             "2:5+4 error: a value cannot begin with \"*\" (YAML aliases are not "
             "allowed)\n",
     .remedy = "put the text in quotes; if an alias is meant, write out what it stands for"},
    {.name = "alias as key",
     INPUT("*one : 1\n"),
     .told = "1:1+4 error: a value cannot begin with \"*\" (YAML aliases are not "
             "allowed)\n",
     .remedy = "put the text in quotes; if an alias is meant, write out what it stands for"},
    {.name = "tag",
     INPUT("a: !!str 1\n"
           "b: !x 2\n"
           "c: ! 3\n"),
     .told = "1:4+5 error: a value cannot begin with \"!\" (YAML tags are not allowed)\n"
             "2:4+2 error: a value cannot begin with \"!\" (YAML tags are not allowed)\n"
             "3:4+1 error: a value cannot begin with \"!\" (YAML tags are not allowed)\n",
     .remedy = "put the text in quotes; if a tag is meant, delete it"},
    {.name = "anchor and tag",
     INPUT("a: !foo  &b x\n"
           "c: &d\n"),
     .told = "1:4+4 error: a value cannot begin with \"!\" (YAML tags are not allowed)\n"
             "1:10+2 error: a value cannot begin with \"&\" (YAML anchors are not "
             "allowed)\n"
             "2:4+2 error: a value cannot begin with \"&\" (YAML anchors are not "
             "allowed)\n",
     .remedy = "put the text in quotes; if a tag is meant, delete it"},
    {.name = "exclamation",
     INPUT("a: !Attention now\n"),
     .told = "1:4+10 error: a value cannot begin with \"!\" (YAML tags are not "
             "allowed)\n",
     .remedy = "put the text in quotes; if a tag is meant, delete it"},
    {.name = "list as key",
     INPUT("[a, b]: c\n"
           "d: 1\n"
           "d: 2\n"),
     .told = "1:1+6 error: a key must be a plain word, not a list\n"
             "3:1+1 error: the key \"d\" stands here a second time; the first is at "
             "t.yaml:2\n",
     .remedy = "write a plain word as the key; a text that begins with { or [ needs quotes"},
    {.name = "mapping as key",
     INPUT("? {a: b}\n"
           ": c\n"),
     .told = "1:3+6 error: a key must be a plain word, not a mapping\n",
     .remedy = "write a plain word as the key; a text that begins with { or [ needs quotes"},
    {.name = "merge key",
     INPUT("<<: a\n"
           "\"<<\": b\n"),
     .told = "1:1+2 error: the merge key \"<<\" is not allowed\n",
     .remedy = "write out the keys that were to be merged"},
    {.name = "empty key",
     INPUT("a: 1\n"
           "\"\": 2\n"),
     .told = "2:1+2 error: a key is missing\n",
     .remedy = "write the key before the colon"},
    {.name = "repeated key",
     INPUT("name: a\n"
           "b: 1\n"
           "\"name\": c\n"),
     .told = "3:1+6 error: the key \"name\" stands here a second time; the first is at "
             "t.yaml:1\n",
     .remedy = "keep only one of the two"},
    {.name = "repeated twice",
     INPUT("a: 1\n"
           "a: 2\n"
           "a: 3\n"),
     .told = "2:1+1 error: the key \"a\" stands here a second time; the first is at "
             "t.yaml:1\n"
             "3:1+1 error: the key \"a\" stands here a second time; the first is at "
             "t.yaml:1\n",
     .remedy = "keep only one of the two"},
    {.name = "repeated in list",
     INPUT("- {b: 1, c: 2, b: 3}\n"),
     .told = "1:16+1 error: the key \"b\" stands here a second time; the first is at "
             "t.yaml:1\n",
     .remedy = "keep only one of the two"},
    {.name = "repeated composed",
     INPUT("\xC5\xA1: 1\n"
           "s\xCC\x8C: 2\n"),
     .told = "2:1+2 error: the key \"\xC5\xA1\" stands here a second time; the first is "
             "at t.yaml:1\n",
     .remedy = "keep only one of the two"},
    {.name = "not repeated",
     INPUT("a: {b: 1}\n"
           "c: {b: 1}\n"
           "A: 1\n"),
     .told = "",
     .tree = true},
    {.name = "depth",
     INPUT("[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]\n"),
     .told = "1:17+1 error: lists and mappings stand more than 16 deep in each other\n",
     .remedy = "look for a bracket or an indentation too many"},
    {.name = "depth in blocks",
     INPUT("k:\n"
           " k:\n"
           "  k:\n"
           "   k:\n"
           "    k:\n"
           "     k:\n"
           "      k:\n"
           "       k:\n"
           "        k:\n"
           "         k:\n"
           "          k:\n"
           "           k:\n"
           "            k:\n"
           "             k:\n"
           "              k:\n"
           "               k:\n"
           "                k:\n"),
     .told = "17:17+1 error: lists and mappings stand more than 16 deep in each other\n",
     .remedy = "look for a bracket or an indentation too many"},
    {.name = "cut",
     INPUT("locker: sail #2\n"
           "note: Channel #16 now\n"
           "empty: #3\n"
           "fine: x # 2\n"
           "also: \"y\" #2\n"),
     .told = "1:14+2 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n"
             "2:15+3 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n"
             "3:8+2 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n",
     .remedy = "put the text in quotes; if a comment is meant, put a space after #"},
    {.name = "cut in list",
     INPUT("a: [b, c #2\n"
           "  ]\n"
           "d:\n"
           "- #7\n"
           "- e #8\n"),
     .told = "1:10+2 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n"
             "4:3+2 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n"
             "5:5+2 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n",
     .remedy = "put the text in quotes; if a comment is meant, put a space after #"},
    {.name = "cut behind letters",
     INPUT("a: \xC5\xBE" "aba #\xC5\xA1" "est\n"),
     .told = "1:9+5 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n",
     .remedy = "put the text in quotes; if a comment is meant, put a space after #"},
    {.name = "cut in key",
     INPUT("key #2: x\n"),
     .told = "1:5+3 error: the text would be cut here: what follows \"#\" counts as a "
             "comment\n",
     .remedy = "put the text in quotes; if a comment is meant, put a space after #"},
    {.name = "folded",
     INPUT("a: one\n"
           "  two\n"
           "  three\n"
           "b: 'x\n"
           "  y'\n"),
     .told = "1:4+3 note: the text goes on to line 3; the lines are read as one\n",
     .remedy = "put the text in quotes to show that this is meant",
     .tree = true},
    {.name = "folded and wrong",
     INPUT("a: one\n"
           "  two\n"
           "b: *c\n"),
     .told = "1:4+3 note: the text goes on to line 2; the lines are read as one\n"
             "3:4+2 error: a value cannot begin with \"*\" (YAML aliases are not "
             "allowed)\n",
     .remedy = "put the text in quotes to show that this is meant"},
    {.name = "empty line in text",
     INPUT("a: \"b\n"
           "\n"
           "  c\"\n"),
     .told = "1:4+2 error: the text holds an empty line\n",
     .remedy = "write the text as one line"},
    {.name = "escapes",
     INPUT("a: \"\\n\\t\\0\\x1b\\u202E\\U0001F525\\N\\L\\P\\e\"\n"),
     .told = "1:5+2 error: \\n makes a line break\n"
             "1:7+2 error: a tab inside a text is not allowed\n"
             "1:9+2 error: the escape makes the character U+0000, which is not allowed: "
             "a control character\n"
             "1:11+4 error: the escape makes the character U+001B, which is not allowed: "
             "a control character\n"
             "1:15+6 error: the escape makes the character U+202E, which is not allowed: "
             "an invisible character that turns the direction of writing\n"
             "1:21+10 error: the escape makes the character U+1F525, which is not "
             "allowed: a character (such as an emoji) that the cards' typefaces lack\n"
             "1:31+2 error: the escape makes the character U+0085, which is not allowed: "
             "a control character\n"
             "1:33+2 error: the escape makes the character U+2028, which is not allowed: "
             "an invisible line break\n"
             "1:35+2 error: the escape makes the character U+2029, which is not allowed: "
             "an invisible line break\n"
             "1:37+2 error: the escape makes the character U+001B, which is not allowed: "
             "a control character\n",
     .remedy = "write the text as one line"},
    {.name = "escapes allowed",
     INPUT("a: \"\\\\n \\\" \\/ \\_ \\x41 \\u0161\"\n"),
     .told = "",
     .tree = true},
    {.name = "line ends",
     INPUT("a: 1\r\n"
           "a: 2\r\n"
           "b: 1\rb: 2\n"),
     .told = "2:1+1 error: the key \"a\" stands here a second time; the first is at "
             "t.yaml:1\n"
             "4:1+1 error: the key \"b\" stands here a second time; the first is at "
             "t.yaml:3\n",
     .remedy = "keep only one of the two"},
};

#endif
