/* told.c - text on standard output and standard error, in lines no wider than the terminal (room:
 * app). Never cuts a word, and sends a terminal no codes. */
#include "told.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <unistd.h>

enum { HANGING = 2, COLUMNS_LEAST = 20, COLUMNS_MOST = 9999 };

/* A whole number of that range and nothing else; 0: it is none. */
static size_t columns_parse(const char *text)
{
    size_t columns = 0, digits = text == NULL ? 0 : strspn(text, "0123456789");
    if (digits == 0 || digits > 4 || text[digits] != '\0')
        return 0;
    for (size_t i = 0; i < digits; i++)
        columns = columns * 10 + (size_t)(text[i] - '0');
    return columns < COLUMNS_LEAST || columns > COLUMNS_MOST ? 0 : columns;
}

/* Of what is told through that descriptor; 0: any. */
static size_t columns_of(int file)
{
    struct winsize size = {0};
    size_t asked = columns_parse(getenv("COLUMNS"));
    if (asked > 0)
        return asked;
    if (isatty(file) != 1 || ioctl(file, TIOCGWINSZ, &size) != 0)
        return 0;
    return size.ws_col < COLUMNS_LEAST ? 0 : size.ws_col;
}

size_t told_columns(void)
{
    return columns_of(STDOUT_FILENO);
}

static size_t characters_of(const char *at, size_t length)
{
    size_t width = 0;
    for (size_t i = 0; i < length; i++)
        width += ((unsigned char)at[i] & 0xC0) != 0x80 ? 1 : 0;
    return width;
}

static size_t spaces_at(const char *at, const char *end)
{
    const char *from = at;
    while (at < end && *at == ' ')
        at++;
    return (size_t)(at - from);
}

static size_t word_length_at(const char *at, const char *end)
{
    const char *from = at;
    while (at < end && *at != ' ')
        at++;
    return (size_t)(at - from);
}

/* Is it a line of YAML to be pasted? What its comment goes on with must be one too. */
static bool has_comment(const char *at, const char *end)
{
    at += spaces_at(at, end);
    return at < end && (*at == '#' || (*at == '-' && at + 1 < end && at[1] == ' '));
}

/* A line as it is folded: columns of the line as it was, from 0, and where they stand now. */
struct folding {
    struct text_builder *out;
    size_t columns, indent;
    size_t from, shift;            /* of the part that is being written: where it begins in the
                                      line as it was, and in the one that is written */
    size_t at, written;            /* columns passed of the one, and of the other */
    size_t word_end;               /* of the one, behind its last word so far */
    size_t mark_from, mark_to;     /* the columns that ^~~ below it marks; equal: there is none */
};

/* What is marked of the part that ends here, below it. */
static void mark_add(const struct folding *folding)
{
    size_t from = folding->mark_from > folding->from ? folding->mark_from : folding->from;
    size_t end = folding->mark_from < folding->word_end ? folding->word_end : folding->at;
    size_t to = folding->mark_to < end ? folding->mark_to : end;
    if (from >= to)
        return;
    text_add_format(folding->out, "\n%*s%s", (int)(folding->shift + from - folding->from), "",
                    from == folding->mark_from ? "^" : "~");
    for (size_t i = from + 1; i < to; i++)
        text_add(folding->out, "~");
}

/* What stands far in goes on further out, where half of the width would be lost. */
static size_t hanging_of(const struct folding *folding)
{
    size_t hanging = folding->indent + HANGING;
    return hanging > folding->columns / 2 ? HANGING : hanging;
}

static void part_end(struct folding *folding, const char *mark)
{
    size_t hanging = hanging_of(folding);
    mark_add(folding);
    text_add_format(folding->out, "\n%*s%s", (int)hanging, "", mark);
    folding->shift = folding->written = hanging + strlen(mark);
    folding->from = folding->at;
}

/* One line without its end. */
static void line_fold(struct folding *folding, const char *at, size_t length)
{
    const char *end = at + length;
    bool begun = false, comments = has_comment(at, end), comment = false;
    folding->indent = spaces_at(at, end);
    while (at < end) {
        size_t spaces = spaces_at(at, end), word = word_length_at(at + spaces, end);
        size_t width = characters_of(at + spaces, word);
        bool breaks = begun && word > 0 && folding->written + spaces + width > folding->columns;
        folding->at += spaces;
        if (breaks)
            part_end(folding, comment ? "# " : "");
        else
            text_add_bytes(folding->out, at, spaces);
        comment = comment || (comments && word > 0 && at[spaces] == '#');
        text_add_bytes(folding->out, at + spaces, word);
        folding->at += width;
        folding->word_end = folding->at;
        folding->written += width + (breaks ? 0 : spaces);
        at += spaces + word;
        begun = true;
    }
    /* what is marked may lie behind the last character */
    if (folding->mark_to > folding->at)
        folding->at = folding->word_end = folding->mark_to;
    mark_add(folding);
}

static size_t told_line_length(const char *at, const char *end)
{
    const char *feed = memchr(at, '\n', (size_t)(end - at));
    return feed == NULL ? (size_t)(end - at) : (size_t)(feed - at);
}

/* Is the line below one that only marks part of this one with ^~~? Then its length, and which. */
static size_t mark_below(const char *at, const char *end, struct folding *folding)
{
    size_t length = at < end ? told_line_length(at, end) : 0, spaces = spaces_at(at, at + length);
    if (length == spaces || at[spaces] != '^' ||
        strspn(at + spaces + 1, "~") < length - spaces - 1)
        return 0;
    folding->mark_from = spaces;
    folding->mark_to = length;
    return length;
}

void lines_fold(const char *text, size_t length, size_t columns, struct text_builder *out)
{
    const char *at = text, *end = text + length;
    while (at < end) {
        struct folding folding = {.out = out, .columns = columns};
        size_t line = told_line_length(at, end);
        const char *next = at + line < end ? at + line + 1 : end;
        if (columns == 0 || characters_of(at, line) <= columns) {
            text_add_bytes(out, at, line);
        } else {
            size_t mark = mark_below(next, end, &folding);
            line_fold(&folding, at, line);
            next += mark > 0 && next + mark < end ? mark + 1 : mark;
        }
        text_add(out, next == end && end[-1] != '\n' ? "" : "\n");
        at = next;
    }
}

size_t lines_width(const struct text_builder *text)
{
    size_t widest = 0;
    const char *at = text->at, *end = at + text->length;
    while (at < end) {
        size_t line = told_line_length(at, end), width = characters_of(at, line);
        widest = width > widest ? width : widest;
        at += line + (at + line < end ? 1 : 0);
    }
    return widest;
}

/* What folding one text may take. */
#define FOLDED_LIMIT ((size_t)256 * 1024 * 1024)

static void text_fold(const char *text, size_t length, size_t columns, FILE *stream)
{
    if (columns == 0) {
        fwrite(text, 1, length, stream);
        return;
    }
    struct arena *arena = arena_new(FOLDED_LIMIT);
    struct text_builder folded = text_builder_in(arena);
    lines_fold(text, length, columns, &folded);
    fwrite(folded.at, 1, folded.length, stream);
    arena_free(arena);
}

void told_print(const struct text_builder *text)
{
    if (text->length > 0)
        text_fold(text->at, text->length, told_columns(), stdout);
}

void told_lines(const char *format, ...)
{
    size_t columns = told_columns();
    va_list list;
    va_start(list, format);
    if (columns == 0) {
        vprintf(format, list);
    } else {
        struct arena *arena = arena_new(FOLDED_LIMIT);
        const char *text = text_format_list(arena, format, list);
        text_fold(text, strlen(text), columns, stdout);
        arena_free(arena);
    }
    va_end(list);
}

void told_refusal(const char *text)
{
    text_fold(text, strlen(text), columns_of(STDERR_FILENO), stderr);
}
