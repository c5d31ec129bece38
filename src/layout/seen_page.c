/* seen_page.c - pages that show nothing but the index of cards: those of a safety plan, and a
 * sheet of its own (room: layout). It takes as many pages as hold all lines at their floors. */
#include "seen.h"

/* Pages that the index of a set may have. */
#define SEEN_PAGES_MOST 4

bool seen_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct frame frame = frame_make(pen->paper, TEMPLATE_INDEX, &shared->needs);
    struct laid_seen laid = seen_fit(trial, frame.at[AREA_BODY]);
    if (laid.over > 0 || laid.wide) {
        pen_too_long(pen, pen->sheet->origin, laid.over,
                     "leave out cards that the base does not hang; shorter entries take one line",
                     "the index of cards");
        return false;
    }
    seen_place(pen, &laid, frame.at[AREA_BODY]);
    return true;
}

/* ---- its pages ---- */

static size_t lines_in_all(const struct seen_facts *seen)
{
    size_t count = 0;
    for (size_t i = 0; i < seen->count; i++)
        count += seen->groups[i].count;
    return count;
}

/* The lines from `first` to before `end`, of all groups, under the heads of their groups. */
static const struct seen_facts *seen_part(const struct seen_facts *whole, size_t first,
                                          size_t end, struct arena *arena)
{
    struct seen_facts *part = arena_alloc(arena, sizeof *part);
    struct seen_group *groups = arena_array(arena, whole->count, sizeof *groups);
    size_t before = 0;
    *part = *whole;
    part->groups = groups;
    part->count = 0;
    for (size_t i = 0; i < whole->count; i++) {
        const struct seen_group *group = &whole->groups[i];
        size_t from = first > before ? first - before : 0;
        size_t to = end > before ? end - before : 0;
        to = to > group->count ? group->count : to;
        if (from < to)
            groups[part->count++] =
                (struct seen_group){group->name, group->lines + from, to - from};
        before += group->count;
    }
    return part;
}

size_t seen_page_count(const struct laying *laying)
{
    int wanted = laying->wanted[PLAN_PAGE_SEEN];
    if (sheet_seen(laying->whole)->count == 0)
        return 0;
    return wanted > 0 ? (size_t)wanted : 1;
}

/* What a plan shows on its other pages. */
static void plan_blocks_remove(struct sheet *sheet)
{
    static const enum block_key blocks[] = {BLOCK_LABELS, BLOCK_LEADERS, BLOCK_LEGEND, BLOCK_PLAN,
                                            BLOCK_INDEX, BLOCK_SOURCES};
    for (size_t i = 0; i < sizeof blocks / sizeof *blocks; i++)
        page_block_remove(sheet, blocks[i]);
}

void seen_pages_set(struct laying *laying, size_t first, struct arena *arena)
{
    const struct seen_facts *seen = sheet_seen(laying->whole);
    size_t pages = seen_page_count(laying), lines = lines_in_all(seen);
    for (size_t i = 0; i < pages; i++) {
        struct page_place place = {first + i, first + pages, PLAN_PAGE_SEEN, pages};
        struct sheet *sheet = page_sheet(laying->whole, &place, arena);
        plan_blocks_remove(sheet);
        page_facts_set(sheet, BLOCK_SEEN,
                       (union block_facts){.seen = seen_part(seen, lines * i / pages,
                                                             lines * (i + 1) / pages, arena)});
        laying->sheets[first + i] = sheet;
        laying->templates[first + i] = TEMPLATE_INDEX;
    }
}

bool seen_pages_lessen(struct laying *laying)
{
    size_t pages = seen_page_count(laying);
    for (size_t i = 0; i < laying->count; i++)
        if (laying->full[i] && sheet_seen(laying->sheets[i])->count > 0 &&
            pages < SEEN_PAGES_MOST) {
            laying->wanted[PLAN_PAGE_SEEN] = (int)pages + 1;
            return true;
        }
    return false;
}

/* ---- a sheet of its own ---- */

size_t seen_split(struct laying *laying, struct pen *pen)
{
    if (seen_page_count(laying) == 0)
        return whole_split(laying, pen);
    seen_pages_set(laying, 0, pen->arena);
    return seen_page_count(laying);
}
