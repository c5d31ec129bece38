/* print_list.c - each sheet of a boat in one line: its code, or why it is held back (room:
 * app). Makes no file. */
#include "print_list.h"

#include <string.h>

/* Does the message speak of the card? "3 ENGINE FIRE" is no part of "13 ENGINE FIRE". */
static bool speaks_of(const char *what, const char *name)
{
    for (const char *at = strstr(what, name); at != NULL; at = strstr(at + 1, name))
        if (at == what || !is_digit(at[-1]))
            return true;
    return false;
}

const struct problem *held_reason(const struct sheets *sheets,
                                  const struct sheet *sheet)
{
    size_t count;
    const struct problem *list = problems_sorted(sheets->boat->problems, &count);
    for (size_t i = 0; i < count; i++)
        if (list[i].severity >= SEVERITY_HELD && speaks_of(list[i].what, sheet->name))
            return &list[i];
    return NULL;
}

static void held_add(const struct sheets *sheets, const struct sheet *sheet,
                     struct text_builder *out)
{
    const struct problem *reason = held_reason(sheets, sheet);
    text_add_format(out, "  %-9s  %s", "held", sheet->name);
    if (reason != NULL && reason->place.source != NULL)
        text_add_format(out, ": %s:%d:%d", reason->place.source->name, reason->place.line,
                        reason->place.column);
    if (sheet->procedure->replaced)
        text_add(out, ": the base's own text of it cannot be used");
    text_add_format(out, "%s%s\n", reason == NULL ? "" : ": ", reason == NULL ? "" : reason->what);
}

static void ready_add(const struct sheet *sheet, size_t pages, struct text_builder *out)
{
    text_add_format(out, "  %-9s  %s", sheet_footer(sheet)->code, sheet->name);
    text_add(out, sheet->held ? ", a draft" : "");
    if (pages > 1)
        text_add_format(out, ", %zu pages", pages);
    text_add(out, "\n");
}

void sheets_list_add(const struct sheets *sheets, struct text_builder *out)
{
    for (size_t i = 0; i < sheets->page_count;) {
        const struct sheet *sheet = sheets->pages[i].sheet;
        size_t pages = 0;
        for (; i < sheets->page_count && sheets->pages[i].sheet == sheet; i++)
            pages += sheets->pages[i].page != NULL ? 1 : 0;
        if (!card_wanted(sheets->boat->job->options, sheet))
            continue;
        if (pages > 0)
            ready_add(sheet, pages, out);
        else
            held_add(sheets, sheet, out);
    }
}
