/* yaml_bracket.c - why a list or mapping in brackets goes on where it should not:
 * a comma left out before a key, a comment that swallows the bracket's end (room:
 * yaml). Looks at the bytes, since libyaml only knows that something else was due. */
#include "yaml_reader.h"

#include <string.h>

#include "text.h"
#include "yaml_slip.h"

enum { KEY_LIMIT = 40 };   /* bytes: no key is longer */

static bool byte_is_one_of(char byte, const char *set)
{
    return byte != '\0' && strchr(set, byte) != NULL;
}

/* Where the key begins that the colon at `offset` ends; `offset` if there is none. */
static size_t key_start(const char *bytes, size_t offset)
{
    size_t start = offset;

    while (start > 0 && byte_is_one_of(bytes[start - 1], KEY_SIGNS))
        start--;
    return start + key_length(bytes + start) == offset ? start : offset;
}

static bool key_begins_at(const char *bytes, size_t offset)
{
    size_t length = key_length(bytes + offset);

    return length > 0 && length <= KEY_LIMIT && bytes[offset + length] == ':';
}

/* Behind a comma, a colon or an open bracket a word is where it should be. */
static bool follows_value(const char *bytes, size_t start)
{
    size_t at = start;

    while (at > 0 && byte_is_one_of(bytes[at - 1], " \t\r\n"))
        at--;
    return at > 0 && at < start && !byte_is_one_of(bytes[at - 1], ",:{[");
}

/* The key and what stands before it: to an open bracket or a comma, of the same line. `stops`:
 * the signs that end the text. */
static const char *text_with_colon(struct yaml_reader *reader, size_t start, const char *stops)
{
    const char *bytes = reader->clean->bytes;
    size_t from = start, end = start + strcspn(bytes + start, stops);

    while (from > 0 && !byte_is_one_of(bytes[from - 1], ",{[\r\n"))
        from--;
    from += strspn(bytes + from, " ");
    size_t length = key_length(bytes + from);
    if (length == 0 || bytes[from + length] != ':' || end - from > PROPOSAL_LIMIT)
        return NULL;
    size_t text = from + length + 1 + strspn(bytes + from + length + 1, " ");
    return text_format(reader->arena, "%.*s: %s", (int)length, bytes + from,
                       quotes_on(reader->arena, text_format(reader->arena, "%.*s",
                                                            (int)(end - text), bytes + text)));
}

/* What follows a value is a key, or belongs to the value, as the keys of files tell. */
static const char *comma_remedy_of(struct yaml_reader *reader, size_t start, int length)
{
    const char *bytes = reader->clean->bytes, *key = bytes + start;
    size_t before = start;
    enum key_sense sense =
        known_key_sense(problems_known(reader->problems), key, (size_t)length);
    const char *quoted = sense == KEY_IS_NONE ? text_with_colon(reader, start, ",}]\r\n") : NULL;

    while (before > 0 && bytes[before - 1] == ' ')
        before--;
    if (sense == KEY_IS_ONE && before > 0 && bytes[before - 1] == ';')
        return text_format(reader->arena, "write a comma in the place of the semicolon before "
                           "%.*s", length, key);
    if (sense == KEY_IS_ONE)
        return text_format(reader->arena, "put a comma before %.*s", length, key);
    if (quoted != NULL)
        return text_format(reader->arena, "put the whole text in quotes:\n%s", quoted);
    return text_format(reader->arena,
                       "if \"%.*s\" is a key, put a comma before it; if it belongs to the "
                       "text before it, put that whole text in quotes", length, key);
}

const char *colon_remedy(struct yaml_reader *reader, struct mark mark, const char *stops)
{
    size_t offset = reader_offset(reader, mark);
    const char *line = reader->clean->bytes + offset;
    bool noted = memchr(line, '#', strcspn(line, stops)) != NULL;
    const char *quoted = noted ? NULL : text_with_colon(reader, offset, stops);

    if (quoted == NULL)
        return QUOTE_REMEDY;
    return text_format(reader->arena, "put the whole text in quotes:\n%s", quoted);
}

bool comma_missing_tell(struct yaml_reader *reader, struct mark mark)
{
    const char *bytes = reader->clean->bytes;
    size_t offset = reader_offset(reader, mark);
    size_t start = bytes[offset] == ':' ? key_start(bytes, offset) : offset;

    if (!key_begins_at(bytes, start) || !follows_value(bytes, start))
        return false;
    int length = (int)key_length(bytes + start);
    int column = mark.column - (int)(offset - start);
    reader_error(reader, reader_spot(reader, mark.line, column, length),
                 comma_remedy_of(reader, start, length),
                 "a comma is missing before \"%.*s:\", or a colon stands in a text without quotes",
                 length, bytes + start);
    return true;
}

bool entry_begins(struct yaml_reader *reader, int line)
{
    size_t length;
    const char *text = source_line(reader->clean, line, &length);

    return text_begins(text + strspn(text, " "), "- ");
}

void dash_missing_tell(struct yaml_reader *reader, struct place place)
{
    size_t length;
    const char *line = source_line(reader->clean, place.line, &length);
    const char *remedy = "begin the line with \"- \", or indent it to its place";

    if ((size_t)place.column <= length && line[place.column - 1] == '-')
        remedy = "put a space after the dash: - entry";
    else if ((size_t)place.column <= length && line[place.column - 1] == '{')
        remedy = "put a dash and a space before it: - {";
    reader_error(reader, place, remedy, "an entry of a list is expected here");
}

/* The end of the text in quotes that begins at `at`; `at` where none does. */
static size_t quotes_skip(const char *bytes, size_t at, size_t end)
{
    bool begins = at > 0 && byte_is_one_of(bytes[at], "\"'") &&
                  byte_is_one_of(bytes[at - 1], " \t\r\n,:{[");
    const char *closing = begins ? memchr(bytes + at + 1, bytes[at], end - at - 1) : NULL;

    return closing == NULL ? at : (size_t)(closing - bytes);
}

/* Does the line end with a bracket, or with one and a comma? */
static bool line_closes(const char *bytes, size_t at)
{
    size_t end = at + strcspn(bytes + at, "\r\n");

    while (end > at && byte_is_one_of(bytes[end - 1], " \t,"))
        end--;
    return byte_is_one_of(bytes[end - 1], "]}");
}

/* The first comment that ends with a bracket; `end` if there is none. */
static size_t comment_find(const char *bytes, size_t from, size_t end)
{
    for (size_t at = from + 1; at < end; at++) {
        at = quotes_skip(bytes, at, end);
        if (bytes[at] != '#' || !byte_is_one_of(bytes[at - 1], " \t\r\n,[]{}\"'"))
            continue;
        if (line_closes(bytes, at))
            return at;
        at += strcspn(bytes + at, "\r\n") - 1;
    }
    return end;
}

bool comment_swallows_tell(struct yaml_reader *reader, struct mark bracket, struct mark at)
{
    size_t end = reader_offset(reader, at);
    size_t from = reader_offset(reader, bracket);
    size_t found = from < end ? comment_find(reader->clean->bytes, from, end) : end;

    if (found == end)
        return false;
    struct place place = source_place(reader->clean, found);
    if (place.line == reader->cut_line)
        return true;   /* told already, of the text before it */
    place.source = reader->source;
    place.span = 1;
    reader_error(reader, place,
                 "put a text that holds # in quotes; a remark goes behind the bracket",
                 "what follows \"#\" counts as a comment, and the end of the bracket with it");
    return true;
}
