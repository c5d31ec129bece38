/* explain_lines.c - lines of an explanation: broken at spaces, each with the
 * place it came from (room: explain). Never drops a word. */
#include "explain.h"

#include <string.h>

#define LINE_WIDTH 100

/* A line being filled; `column` in characters. */
struct line {
    struct text_builder *out;
    size_t indent, column;
    bool begun;
};

static size_t characters(const char *at, size_t length)
{
    size_t count = 0;
    for (size_t i = 0; i < length; i++)
        count += ((unsigned char)at[i] & 0xC0) != 0x80 ? 1 : 0;
    return count;
}

static void spaces_add(struct line *line, size_t count)
{
    for (size_t i = 0; i < count; i++)
        text_add(line->out, " ");
    line->column += count;
}

/* What follows the first line stands one step further in. */
static void word_add(struct line *line, const char *at, size_t length)
{
    size_t width = characters(at, length);
    if (!line->begun) {
        spaces_add(line, line->indent);
    } else if (line->column + 1 + width > LINE_WIDTH) {
        text_add(line->out, "\n");
        line->column = 0;
        spaces_add(line, line->indent + INDENT_REASON);
    } else {
        spaces_add(line, 1);
    }
    line->begun = true;
    text_add_bytes(line->out, at, length);
    line->column += width;
}

static void text_put(struct line *line, const char *text)
{
    while (*text != '\0') {
        size_t length = strcspn(text, " ");
        if (length > 0)
            word_add(line, text, length);
        text += length + strspn(text + length, " ");
    }
}

static void row_keep(const struct explaining *explaining, size_t indent, const char *text,
                     struct place place)
{
    struct reason_list *list = explaining->rows;
    if (list == NULL)
        return;
    list->rows = arena_grow(explaining->arena, list->rows, list->count, &list->room,
                            sizeof *list->rows);
    list->rows[list->count++] = (struct reason){indent / INDENT_REASON, text, place};
}

/* The text, with `where` behind it unless that is NULL. */
static void row_text_tell(const struct explaining *explaining, size_t indent, const char *text,
                      const char *where)
{
    struct line line = {.out = explaining->out, .indent = indent};
    if (explaining->out == NULL)
        return;
    text_put(&line, text);
    if (where != NULL)
        word_add(&line, where, strlen(where));
    text_add(explaining->out, "\n");
}

void line_tell(const struct explaining *explaining, size_t indent, const char *format, ...)
{
    va_list list;
    va_start(list, format);
    const char *text = text_plain(explaining->arena,
                                  text_format_list(explaining->arena, format, list));
    va_end(list);
    row_text_tell(explaining, indent, text, NULL);
    row_keep(explaining, indent, text, NO_PLACE);
}

static const char *place_text(const struct explaining *explaining, struct place place)
{
    if (place.source == NULL)
        return "(the program's own words)";
    if (place.line == 0)
        return text_format(explaining->arena, "at %s", place.source->name);
    return text_format(explaining->arena, "at %s:%d", place.source->name, place.line);
}

void placed_tell(const struct explaining *explaining, size_t indent, struct place place,
                 const char *format, ...)
{
    va_list list;
    va_start(list, format);
    const char *text = text_plain(explaining->arena,
                                  text_format_list(explaining->arena, format, list));
    va_end(list);
    row_text_tell(explaining, indent, text, place_text(explaining, place));
    row_keep(explaining, indent, text, place);
}

static const char *base_choice(const char *const *words, unsigned value)
{
    return value == 0 ? "not recorded" : choice_word(words, value);
}

void base_tell(const struct explaining *explaining, size_t indent, enum condition_kind asked)
{
    const struct base_record *base = explaining->in->base;
    if (asked == CONDITION_BREATHS)
        line_tell(explaining, indent, "base: first breaths: %s",
                  base_choice(breaths_words, base->drowning_breaths.value));
    else if (asked == CONDITION_STING)
        line_tell(explaining, indent, "base: on a sting: %s",
                  base_choice(sting_words, base->sting.value));
    else
        line_tell(explaining, indent, "base: tide: %s", base_choice(tide_words, base->tide.value));
}

void blank_tell(const struct explaining *explaining)
{
    if (explaining->out != NULL)
        text_add(explaining->out, "\n");
}

static void source_tell(const struct explaining *explaining, size_t indent, const char *key)
{
    const struct authority *row = authority_find(explaining->in->authorities, key);
    if (row == NULL)
        line_tell(explaining, indent, "source %s: not in the list of sources", key);
    else
        line_tell(explaining, indent, "source %s: %s, %s, \"%s\"; read %s, %s, grade %s", key,
                  TEXT_OR_EMPTY(row->issuer), TEXT_OR_EMPTY(row->id), TEXT_OR_EMPTY(row->title),
                  TEXT_OR_EMPTY(row->read), choice_word(source_status_words, row->status.value),
                  choice_word(source_grade_words, row->grade.value));
}

void basis_tell(const struct explaining *explaining, size_t indent, const struct basis *basis)
{
    for (size_t i = 0; i < basis->sources.count; i++)
        source_tell(explaining, indent, basis->sources.items[i].text);
    if (basis->practice.answer == ANSWER_YES)
        line_tell(explaining, indent, "trade practice: awaits sign-off");
}
