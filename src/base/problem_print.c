/* problem_print.c - one problem as lines of text, with the source line and a
 * caret (room: base). What a terminal would obey or hide is shown as a number.
 * Never changes the problem. */
#include "problem.h"

#include <string.h>

#include <utf8proc.h>

#include "promise.h"
#include "utf8.h"

#define LINE_INDENT "    "
#define WINDOW_LIMIT 160   /* characters of a source line shown at most */
#define WINDOW_BEFORE 100  /* of them before the caret, in a longer line */

const char *severity_word(enum severity severity)
{
    static const char *const words[SEVERITY_COUNT] = {
        [SEVERITY_SILENCED] = "silenced",
        [SEVERITY_NOTE] = "note",
        [SEVERITY_DEFICIENCY] = "deficiency",
        [SEVERITY_HELD] = "held",
        [SEVERITY_ERROR] = "error",
        [SEVERITY_USE] = "error",
        [SEVERITY_FAILURE] = "failure",
    };

    promise(severity < SEVERITY_COUNT && words[severity] != NULL);
    return words[severity];
}

/* One character made visible; returns its width on a terminal. */
static size_t character_show(struct text_builder *out, const char *bytes, size_t length,
                             size_t *index)
{
    size_t start = *index;
    size_t before = out->length;
    uint32_t code_point;

    if (!utf8_next(bytes, length, index, &code_point)) {
        text_add_format(out, "\\x%02X", (unsigned int)(unsigned char)bytes[(*index)++]);
        return out->length - before;
    }
    if (code_point != '\t' && utf8_refusal(code_point) != NULL) {
        text_add_format(out, code_point < 0x100 ? "\\x%02X" : "<U+%04X>",
                        (unsigned int)code_point);
        return out->length - before;
    }
    text_add_bytes(out, bytes + start, *index - start);
    int width = utf8proc_charwidth((utf8proc_int32_t)code_point);
    return width > 0 ? (size_t)width : 0;
}

static void string_show(struct text_builder *out, const char *string, size_t length)
{
    for (size_t index = 0; index < length;)
        (void)character_show(out, string, length, &index);
}

char *text_visible(struct arena *arena, const char *string)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    string_show(&out, string, strlen(string));
    return out.at;
}

static void head_print(const struct problem *problem, struct text_builder *out)
{
    struct place place = problem->place;
    const char *name = place.source == NULL ? "maydeck" : place.source->name;

    string_show(out, name, strlen(name));
    if (place.source != NULL && place.line > 0)
        text_add_format(out, ":%d", place.line);
    if (place.source != NULL && place.line > 0 && place.column > 0)
        text_add_format(out, ":%d", place.column);
    text_add_format(out, ": %s: ", severity_word(problem->severity));
    string_show(out, problem->what, strlen(problem->what));
    text_add(out, "\n");
}

static long line_characters(const char *bytes, size_t length)
{
    long count = 0;
    uint32_t code_point;

    for (size_t index = 0; index < length; count++)
        if (!utf8_next(bytes, length, &index, &code_point))
            index++;
    return count;
}

/* The characters of a line that are shown: from `first` up to before `end`. */
struct window {
    long first, end, total;
};

static struct window window_around(long total, long column)
{
    struct window window = {.first = 0, .end = total, .total = total};

    if (total <= WINDOW_LIMIT)
        return window;
    if (column > WINDOW_BEFORE)
        window.first = column - WINDOW_BEFORE;
    if (window.first > total - WINDOW_LIMIT)
        window.first = total - WINDOW_LIMIT;
    window.end = window.first + WINDOW_LIMIT;
    return window;
}

/* Under each character stand as many signs as it takes places: `blank` before the
 * place that is meant. `past` counts the characters from there, below 0 before it. */
static void caret_add(struct text_builder *carets, const char *blank, size_t width, long past)
{
    for (size_t i = 0; i < width || (past == 0 && i == 0); i++)
        text_add(carets, past < 0 ? blank : past == 0 && i == 0 ? "^" : "~");
}

/* Byte offset of the line's character number `count`. */
static size_t characters_skip(const char *line, size_t length, long count)
{
    size_t index = 0;
    uint32_t code_point;

    for (; count > 0 && index < length; count--)
        if (!utf8_next(line, length, &index, &code_point))
            index++;
    return index;
}

/* The shown line, and beneath it the caret under `column` (0: none). */
static void window_print(const char *line, size_t length, struct window window,
                         struct place place, struct text_builder *out)
{
    struct text_builder carets = text_builder_in(out->arena);
    const char *cut = window.first > 0 ? "..." : "";
    long from = (long)place.column - 1;
    long to = from + (place.span > 1 ? place.span : 1);
    size_t index = characters_skip(line, length, window.first);

    text_add_format(out, LINE_INDENT "%s", cut);
    text_add_format(&carets, LINE_INDENT "%*s", (int)strlen(cut), "");
    for (long i = window.first; i < window.end; i++) {
        bool tab = line[index] == '\t';
        size_t width = character_show(out, line, length, &index);
        if (i < to)
            /* a tab stands under a tab, so that both reach the same stop */
            caret_add(&carets, tab ? "\t" : " ", tab ? 1 : width, i - from);
    }
    if (from >= window.end)
        text_add(&carets, "^");
    text_add_format(out, "%s\n", window.end < window.total ? "..." : "");
    if (place.column > 0)
        text_add_format(out, "%s\n", carets.at);
}

static void source_line_print(struct place place, struct text_builder *out)
{
    size_t length;
    const char *line = source_line(place.source, place.line, &length);

    if (length == 0)
        return;
    long total = line_characters(line, length);
    if (place.column - 1 > total)
        place.column = (int)total + 1;
    window_print(line, length, window_around(total, place.column), place, out);
}

static void remedy_print(const char *remedy, struct text_builder *out)
{
    text_add(out, "  remedy: ");
    for (;;) {
        size_t length = strcspn(remedy, "\n");
        string_show(out, remedy, length);
        text_add(out, "\n");
        remedy += length;
        if (*remedy == '\0' || *++remedy == '\0')
            return;
        text_add(out, "    ");
    }
}

void problem_print(const struct problem *problem, struct text_builder *out)
{
    head_print(problem, out);
    if (problem->place.source != NULL && problem->place.line > 0)
        source_line_print(problem->place, out);
    if (!text_empty(problem->remedy))
        remedy_print(problem->remedy, out);
}
