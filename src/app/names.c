/* names.c - lists of names (room: app). */
#include "names.h"

#include <stdlib.h>
#include <string.h>

#include "known_names.h"

void names_add(struct names *names, const char *name, struct arena *arena)
{
    names->at = arena_grow(arena, names->at, names->count, &names->room, sizeof *names->at);
    names->at[names->count++] = arena_copy(arena, name, strlen(name));
}

bool names_hold(const struct names *names, const char *name)
{
    for (size_t i = 0; i < names->count; i++)
        if (text_equal(names->at[i], name))
            return true;
    return false;
}

static int by_bytes(const void *a, const void *b)
{
    const char *const *first = a, *const *second = b;
    return strcmp(*first, *second);
}

void names_sort(struct names *names)
{
    if (names->count > 0)
        qsort(names->at, names->count, sizeof *names->at, by_bytes);
}

/* Ended by NULL. */
static const char *const *names_ended(const struct names *names, struct arena *arena)
{
    const char **ended = arena_array(arena, names->count + 1, sizeof *ended);
    for (size_t i = 0; i < names->count; i++)
        ended[i] = names->at[i];
    return ended;
}

const char *names_remedy(const struct names *names, const char *name, const char *head,
                         struct arena *arena)
{
    struct text_builder list = text_builder_in(arena);
    text_add(&list, head);
    for (size_t i = 0; i < names->count; i++)
        text_add_format(&list, "%s%s", i == 0 ? "" : ", ", names->at[i]);
    return known_remedy(arena, NULL, name, names_ended(names, arena), list.at);
}
