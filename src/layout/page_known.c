/* page_known.c - pages that were laid out before in the same way: when a set is tried again, most
 * of its pages stand on the same as in the try before (room: layout). It lays out nothing. */
#include "page_known.h"

#include <string.h>

struct known_page {
    struct known_page *next;
    struct laying laying;        /* as it was, its arrays apart */
    size_t index;
    enum template_key template;
    struct shared shared;
    struct made_page made;
};

static bool ints_equal(const int *a, const int *b, size_t count)
{
    return memcmp(a, b, count * sizeof *a) == 0;
}

/* All that a sheet as it stands on a page follows from, beside the whole sheet. */
static bool stands_equal(const struct laying *a, const struct laying *b)
{
    return a->whole == b->whole && a->count == b->count && a->call_apart == b->call_apart &&
           a->call_behind == b->call_behind &&
           ints_equal(a->trim.least, b->trim.least, BLOCK_COUNT) &&
           ints_equal(a->wanted, b->wanted, SHEET_PARTS) &&
           ints_equal(a->cut, b->cut, PLAN_PART_COUNT) &&
           ints_equal(a->parted, b->parted, PLAN_PART_COUNT);
}

bool shared_equal(const struct shared *a, const struct shared *b)
{
    return a->sizes.when == b->sizes.when && a->sizes.berth == b->sizes.berth &&
           a->needs.contact_yielded == b->needs.contact_yielded && a->needs.way == b->needs.way &&
           memcmp(a->needs.height, b->needs.height, sizeof a->needs.height) == 0;
}

const struct made_page *page_known(const struct known_page *known, const struct laying *laying,
                                   size_t index, const struct shared *shared)
{
    for (; known != NULL; known = known->next)
        if (known->index == index && known->template == laying->templates[index] &&
            stands_equal(&known->laying, laying) && shared_equal(&known->shared, shared))
            return &known->made;
    return NULL;
}

struct made_page *page_know(struct known_page **known, const struct laying *laying, size_t index,
                            const struct shared *shared, struct arena *arena)
{
    struct known_page *page = arena_alloc(arena, sizeof *page);
    *page = (struct known_page){*known, *laying, index, laying->templates[index], *shared, {0}};
    *known = page;
    return &page->made;
}
