/* check_list.c - the table of checks for people (room: app). */
#include "check_rows.h"
#include "told.h"

#include <string.h>

#define CHECK_LIST_LIMIT ((size_t)4 * 1024 * 1024)

void check_list_print(void)
{
    struct arena *arena = arena_new(CHECK_LIST_LIMIT);
    struct text_builder out = text_builder_in(arena);
    int width = 0;
    for (size_t i = 0; check_at(i) != NULL; i++) {
        int length = (int)strlen(check_at(i)->id);
        width = length > width ? length : width;
    }
    for (size_t i = 0; check_at(i) != NULL; i++) {
        const struct check *check = check_at(i);
        text_add_format(&out, "%-*s  %-10s  %s [%s]\n", width, check->id,
                        severity_word(check->severity), check->sentence, check->source);
    }
    told_print(&out);
    arena_free(arena);
}
