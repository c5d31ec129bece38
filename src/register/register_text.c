/* register_text.c - rows of printed sheets as text that people and the reader of YAML
 * can read (room: register). It sorts and writes; it judges no row. */
#include "register.h"

#include "text.h"

#include <stdlib.h>
#include <string.h>

static int sheets_compare(const void *a, const void *b)
{
    const struct printed_sheet *first = a, *second = b;
    int order = strcmp(first->boat, second->boat);
    if (order == 0)
        order = strcmp(first->id, second->id);
    if (order == 0)
        order = strcmp(first->language, second->language);
    if (order == 0)
        order = date_compare(first->printed, second->printed);
    return order == 0 ? strcmp(first->code, second->code) : order;
}

/* Quotes and backslashes are the only signs that YAML takes for more than themselves. */
static void quoted_add(struct text_builder *out, const char *text)
{
    text_add(out, "\"");
    for (; *text != '\0'; text++) {
        if (*text == '"' || *text == '\\')
            text_add(out, "\\");
        text_add_bytes(out, text, 1);
    }
    text_add(out, "\"");
}

static void named_add(struct text_builder *out, const char *name, const char *text)
{
    text_add_format(out, "%s: ", name);
    quoted_add(out, text);
    text_add(out, ", ");
}

const char *register_text(const struct printed_sheet *sheets, size_t count,
                          struct arena *arena)
{
    struct printed_sheet *sorted = arena_array(arena, count, sizeof *sorted);
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < count; i++)
        sorted[i] = sheets[i];
    if (count > 1)
        qsort(sorted, count, sizeof *sorted, sheets_compare);
    for (size_t i = 0; i < count; i++) {
        text_add(&out, "- {");
        named_add(&out, "boat", sorted[i].boat);
        named_add(&out, "sheet", sorted[i].id);
        named_add(&out, "language", sorted[i].language);
        named_add(&out, "code", sorted[i].code);
        text_add_format(&out, "printed: %s}\n", date_text(arena, sorted[i].printed));
    }
    return out.at;
}
