/* yaml_syntax.c - what libyaml stopped at, said so that somebody who writes
 * boat files by hand can mend it (room: yaml). Words libyaml has that are not
 * known here are passed on as they are. */
#include "yaml_reader.h"

#include <string.h>

#include "text.h"
#include "yaml_slip.h"

/* libyaml's account of an error. `about` is where the thing that failed began;
 * without a context it equals `at`. */
struct syntax {
    const char *problem;
    const char *context;
    struct mark at;
    struct mark about;
};


static char byte_at(struct yaml_reader *reader, struct mark mark)
{
    return reader->clean->bytes[reader_offset(reader, mark)];
}

static bool mark_at_end(struct yaml_reader *reader, struct mark mark)
{
    return reader_offset(reader, mark) >= reader->clean->length;
}

static struct place mark_place(const struct yaml_reader *reader, struct mark mark, int span)
{
    return reader_spot(reader, mark.line, mark.column, span);
}

static bool byte_blank(char byte)
{
    return byte == ' ' || byte == '\t';
}

/* From the first sign of the line that is no space to before the mark. */
static struct place line_place(struct yaml_reader *reader, struct mark mark)
{
    size_t length;
    const char *line = source_line(reader->clean, mark.line, &length);
    int column = 1;

    while ((size_t)column <= length && byte_blank(line[column - 1]))
        column++;
    return reader_spot(reader, mark.line, column,
                       mark.column > column ? mark.column - column : 1);
}

/* From the mark to the end of its line. */
static struct place rest_place(const struct yaml_reader *reader, struct mark mark)
{
    struct mark below = {.line = mark.line + 1};

    return reader_place(reader, mark, below);
}

/* A key above whose colon lacks its space, as the line should be; else NULL. */
static const char *line_spaced(struct yaml_reader *reader, struct mark mark)
{
    const char *bytes = reader->clean->bytes + reader_offset(reader, mark);

    return colon_spaced(reader->arena, text_format(reader->arena, "%.*s",
                                                   (int)strcspn(bytes, "\r\n"), bytes));
}

static void glued_tell(struct yaml_reader *reader, struct mark mark, const char *spaced)
{
    reader_error(reader, rest_place(reader, mark), text_format(reader->arena, "write %s", spaced),
                 "a colon needs a space behind it");
}

/* A colon where no key can stand: inside a text, or in a line that was taken
 * for the rest of the text above it. */
static void colon_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    const struct piece *last = &reader->last;
    bool below = last->kind == PIECE_SCALAR && last->start.line < last->end.line &&
                 last->end.line == syntax->at.line;
    const char *spaced = below ? line_spaced(reader, last->start) : NULL;

    if (spaced != NULL)
        glued_tell(reader, last->start, spaced);
    else if (below)
        reader_error(reader, line_place(reader, syntax->at),
                     "indent this line like the keys around it; if the line above is a key, "
                     "end it with a colon",
                     "this line is read as more of the text in line %d, and so cannot be a key",
                     last->start.line);
    else
        reader_error(reader, mark_place(reader, syntax->at, 1),
                     colon_remedy(reader, syntax->at, "\r\n"),
                     "a colon followed by a space cannot stand in a text without quotes");
}

static void colon_missing_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    struct place place = rest_place(reader, syntax->about);
    const char *spaced = line_spaced(reader, syntax->about);

    if (spaced != NULL)
        glued_tell(reader, syntax->about, spaced);
    else if (byte_at(reader, syntax->about) == '-' || byte_at(reader, syntax->about) == '{')
        dash_missing_tell(reader, place);
    else
        reader_error(reader, place, "write the key, a colon and a space: key: value",
                     "a colon is missing here, or the line belongs to the text above it");
}

/* Behind a text in quotes something goes on that cannot. */
static void after_quotes_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    const struct piece *last = &reader->last;

    if (last->start.line == last->end.line)
        reader_error(reader, mark_place(reader, syntax->at, 1),
                     "put all of it in one pair of quotes; a text with \" in it goes in '...', "
                     "one with ' in it in \"...\"",
                     "nothing can follow the quote that closes a text");
    else
        reader_error(reader, piece_place(reader, last),
                     "end the text in its own line with the same quote",
                     "the quote that opens here is closed only in line %d", last->end.line);
}

static bool follows_quotes(const struct yaml_reader *reader, const struct syntax *syntax)
{
    const struct piece *last = &reader->last;

    return last->kind == PIECE_SCALAR && last->end.line == syntax->at.line &&
           (last->style == SCALAR_SINGLE || last->style == SCALAR_DOUBLE);
}

/* Neither a key nor a part of what stands before it. */
static void stray_value_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    struct place place = rest_place(reader, syntax->at);

    if (line_place(reader, syntax->at).column < syntax->at.column)
        reader_error(reader, place, QUOTE_REMEDY, "nothing can follow the value in this line");
    else
        reader_error(reader, place, "indent the line like the keys around it",
                     "no key can stand here: the indentation fits nothing above");
}

static void key_expected_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    struct place place = mark_place(reader, syntax->at, 1);

    switch (byte_at(reader, syntax->at)) {
    case ':':
        reader_error(reader, place, "write the key before the colon", "a key is missing");
        break;
    case '-':
        reader_error(reader, place,
                     "indent the entries of a list under their key, or give the key no value",
                     "an entry of a list stands where a key is expected");
        break;
    case ']':
    case '}':
        reader_error(reader, place, "delete the bracket, or put the text in quotes",
                     "this bracket closes nothing");
        break;
    default:
        stray_value_tell(reader, syntax);
    }
}

static void key_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    if (follows_quotes(reader, syntax))
        after_quotes_tell(reader, syntax);
    else
        key_expected_tell(reader, syntax);
}

static void entry_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    if (follows_quotes(reader, syntax))
        after_quotes_tell(reader, syntax);
    else
        dash_missing_tell(reader, rest_place(reader, syntax->at));
}

/* `at`: where reading stopped. */
static void unclosed_tell(struct yaml_reader *reader, struct mark bracket, struct mark at)
{
    bool list = byte_at(reader, bracket) == '[';

    if (!comment_swallows_tell(reader, bracket, at))
        reader_error(reader, mark_place(reader, bracket, 1),
                 list ? "close the list with ]" : "close the mapping with }",
                 "this bracket is not closed");
}

/* Column of what the mark's line begins with. */
static int indentation(struct yaml_reader *reader, struct mark mark)
{
    return line_place(reader, mark).column;
}

/* The list or mapping in brackets goes on where it should not. A colon in a
 * later line that is not indented is most likely the next key, behind a bracket
 * nobody closed. */
static void bracket_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    char found = byte_at(reader, syntax->at);
    bool below = syntax->at.line != syntax->about.line &&
                 indentation(reader, syntax->at) <= indentation(reader, syntax->about);
    struct place place = mark_place(reader, syntax->at, 1);

    if (mark_at_end(reader, syntax->at) ||
        (below && (found == ':' || entry_begins(reader, syntax->at.line))))
        unclosed_tell(reader, syntax->about, syntax->at);
    else if (comment_swallows_tell(reader, syntax->about, syntax->at) ||
             comma_missing_tell(reader, syntax->at))
        return;
    else if (found == ':')
        reader_error(reader, place, colon_remedy(reader, syntax->at, ",}]\r\n"),
                     "a colon followed by a space cannot stand in a text without quotes");
    else if (found == ']' || found == '}')
        reader_error(reader, place, "close a list [ with ], a mapping { with }",
                     "this bracket does not fit the one that opened in line %d",
                     syntax->about.line);
    else if (follows_quotes(reader, syntax))
        after_quotes_tell(reader, syntax);
    else
        reader_error(reader, place,
                     "put a comma between two entries; a text with brackets, braces or quotes in "
                     "it goes in quotes",
                     "a comma is missing before this, or the bracket of line %d is not closed",
                     syntax->about.line);
}

static void quote_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    reader_error(reader, rest_place(reader, syntax->about),
                 "end the text with the same quote as it begins",
                 "the quote that opens here is not closed");
}

static void no_escape_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    reader_error(reader, mark_place(reader, syntax->at, 2),
                 "write \\\\ for a backslash, or put the text in '...'",
                 "a backslash in \"...\" begins an escape, and this is none");
}

/* Signs that stand for a value nobody knows. */
static bool stands_alone(struct yaml_reader *reader, struct mark mark)
{
    const char *bytes = reader->clean->bytes + reader_offset(reader, mark);

    bytes += strspn(bytes, "?-");
    bytes += strspn(bytes, " \t");
    return *bytes == '\0' || strchr("\r\n,]}", *bytes) != NULL;
}

#define ASK_REMEDY "record what is there, or leave the value empty: check tells what is missing"

static void dash_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    reader_error(reader, mark_place(reader, syntax->at, 1),
                 stands_alone(reader, syntax->at)
                     ? ASK_REMEDY
                     : "put each entry on a line of its own under the key, or write [one, two]; "
                       "a text that begins with a dash goes in quotes",
                 "an entry of a list cannot stand here");
}

/* At the end of the file a value is missing only inside of an open bracket. */
static void begin_tell(struct yaml_reader *reader, struct mark mark)
{
    struct place place = mark_place(reader, mark, 1);

    if (mark_at_end(reader, mark) && reader->open != NULL && reader->open->flow)
        unclosed_tell(reader, reader->open->start, mark);
    else if (mark_at_end(reader, mark))
        reader_error(reader, place, "look whether the file was saved whole",
                     "the file ends where a value is expected");
    else if (byte_at(reader, mark) == ':')
        reader_error(reader, place, "write the key before the colon", "a key is missing");
    else
        reader_error(reader, place,
                     byte_at(reader, mark) == '?' && stands_alone(reader, mark) ? ASK_REMEDY
                                                                                : QUOTE_REMEDY,
                     "a value cannot begin with \"%c\"", byte_at(reader, mark));
}

static void begin_here_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    begin_tell(reader, syntax->at);
}

static void begin_before_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    begin_tell(reader, syntax->about);
}

static void outside_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    reader_error(reader, rest_place(reader, syntax->at),
                 "begin the line as far to the left as the first key of the file",
                 "this line stands outside of what the file holds so far");
}

static void other_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    reader_error(reader, mark_place(reader, syntax->at, 1),
                 "look at this line and at the one above it",
                 "this is not valid YAML: %s%s%s", syntax->problem,
                 text_empty(syntax->context) ? "" : " ",
                 text_empty(syntax->context) ? "" : syntax->context);
}

static void colon_space_tell(struct yaml_reader *reader, const struct syntax *syntax)
{
    reader_error(reader, mark_place(reader, syntax->at, 1),
                 "put a space after the colon; if it belongs to a text, put the text in quotes",
                 "a colon in brackets needs a space after it");
}

/* The first row that fits is taken; NULL fits anything. */
struct syntax_row {
    const char *problem;
    const char *context;
    void (*tell)(struct yaml_reader *reader, const struct syntax *syntax);
};

static const struct syntax_row syntax_rows[] = {
    {.problem = "mapping values are not allowed in this context", .tell = colon_tell},
    {.problem = "found unexpected ':'", .tell = colon_space_tell},
    {.problem = "could not find expected ':'", .tell = colon_missing_tell},
    {.problem = "did not find expected key", .tell = key_tell},
    {.problem = "did not find expected '-' indicator", .tell = entry_tell},
    {.problem = "did not find expected ',' or ']'", .tell = bracket_tell},
    {.problem = "did not find expected ',' or '}'", .tell = bracket_tell},
    {.problem = "found unexpected end of stream", .tell = quote_tell},
    {.problem = "found unexpected document indicator", .tell = quote_tell},
    {.problem = "block sequence entries are not allowed in this context", .tell = dash_tell},
    {.problem = "mapping keys are not allowed in this context", .tell = begin_here_tell},
    {.problem = "found character that cannot start any token", .tell = begin_here_tell},
    {.problem = "did not find expected node content", .tell = begin_here_tell},
    {.problem = "found undefined tag handle", .tell = begin_here_tell},
    {.problem = "did not find expected <document start>", .tell = outside_tell},
    {.context = "while parsing a quoted scalar", .tell = no_escape_tell},
    {.context = "while scanning a block scalar", .tell = begin_before_tell},
    {.context = "while scanning an alias", .tell = begin_before_tell},
    {.context = "while scanning an anchor", .tell = begin_before_tell},
    {.context = "while scanning a tag", .tell = begin_before_tell},
    {.context = "while parsing a tag", .tell = begin_before_tell},
    {.tell = other_tell},
};

static bool row_fits(const struct syntax_row *row, const struct syntax *syntax)
{
    return (row->problem == NULL || text_equal(row->problem, syntax->problem)) &&
           (row->context == NULL || text_equal(row->context, syntax->context));
}

/* Bytes libyaml cannot read have no mark, only an offset. */
static void bytes_tell(struct yaml_reader *reader)
{
    struct place place = source_place(reader->clean, reader->parser.problem_offset);

    place.source = reader->source;
    reader_error(reader, place, "save the file with the encoding UTF-8",
                 "this is not valid YAML: %s", reader->parser.problem);
}

void syntax_tell(struct yaml_reader *reader)
{
    const yaml_parser_t *parser = &reader->parser;

    if (parser->error == YAML_MEMORY_ERROR || parser->problem == NULL)
        arena_exhausted();
    if (parser->error == YAML_READER_ERROR) {
        bytes_tell(reader);
        return;
    }
    struct syntax syntax = {
        .problem = parser->problem,
        .context = parser->context,
        .at = mark_from(parser->problem_mark),
        .about = mark_from(parser->context == NULL ? parser->problem_mark
                                                   : parser->context_mark),
    };
    size_t row = 0;

    while (!row_fits(&syntax_rows[row], &syntax))
        row++;
    syntax_rows[row].tell(reader, &syntax);
}
