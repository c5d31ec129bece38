/* plan_split.c - a plan of the boat that one page does not hold (room: layout): her deck and
 * what is below apart, and each cut across from the bow aft, so that what stands abreast stays
 * together. Every place is on one page. */
#include "pages.h"


/* A boat with more lines than this has two plans, deck and below. */
#define PLAN_ROWS_MOST 25

/* Pages that one part may have. */
#define PLAN_PAGES_MOST 4

/* What one page shows: of a part, what stands from there until there. */
struct plan_section {
    enum plan_part part;
    int32_t from_mm, to_mm;  /* of the bow; `to` itself is the next one's */
};

struct plan_sections {
    struct plan_section at[PLAN_PART_COUNT * PLAN_PAGES_MOST];
    size_t count;
};

static bool in_section(const struct marker *marker, const struct plan_section *section)
{
    return plan_part_shows(section->part, marker->level) && marker->x_mm >= section->from_mm &&
           marker->x_mm < section->to_mm;
}

/* Of those of a section, in their order; gives how many. */
static size_t places_of_section(const struct places_facts *all, const struct plan_section *section,
                                struct plan_place *places)
{
    size_t count = 0;
    for (size_t i = 0; i < all->count; i++)
        if (in_section(&all->places[i].marker, section))
            places[count++] = all->places[i];
    return count;
}

static struct plan_section part_section(enum plan_part part)
{
    return (struct plan_section){part, INT32_MIN, INT32_MAX};
}

static size_t rows_of_places(const struct plan_place *places, size_t count)
{
    size_t rows = 0;
    for (size_t i = 0; i < count; i++)
        rows += places[i].row_count;
    return rows;
}

/* ---- where a part is cut ---- */

/* The station where the next section begins: as near as can be to that share of the
 * part's lines, a place's title being one. False where no gear stands further aft. */
static bool cut_find(const struct plan_place *places, size_t count, size_t share, int32_t after,
                     int32_t *cut)
{
    size_t before = 0, least = SIZE_MAX;
    for (size_t i = 0; i + 1 < count; i++) {
        before += places[i].row_count + 1;
        size_t off = before > share ? before - share : share - before;
        int32_t next = places[i + 1].marker.x_mm;
        if (places[i].marker.x_mm == next || next <= after || off >= least)
            continue;
        least = off;
        *cut = next;
    }
    return least != SIZE_MAX;
}

/* The sections of a part, from the bow aft, as many as it is to have and can be cut into. */
static void part_cut(struct laying *laying, const struct places_facts *all, enum plan_part part,
                     struct plan_sections *sections, struct arena *arena)
{
    struct plan_section whole = part_section(part), *at = &sections->at[sections->count];
    struct plan_place *places = arena_array(arena, all->count, sizeof *places);
    size_t count = places_of_section(all, &whole, places);
    size_t lines = rows_of_places(places, count) + count;
    int wanted = laying->wanted[part], cuts = 1;
    at[0] = whole;
    for (int32_t cut; cuts < wanted && cuts < PLAN_PAGES_MOST; cuts++) {
        size_t share = lines * (size_t)cuts / (size_t)wanted;
        if (!cut_find(places, count, share, at[cuts - 1].from_mm, &cut))
            break;
        at[cuts] = at[cuts - 1];
        at[cuts - 1].to_mm = at[cuts].from_mm = cut;
    }
    laying->cut[part] = cuts;
    sections->count += (size_t)cuts;
}

static size_t rows_in_part(const struct places_facts *all, enum plan_part part,
                           struct arena *arena)
{
    struct plan_place *places = arena_array(arena, all->count, sizeof *places);
    struct plan_section section = part_section(part);
    return rows_of_places(places, places_of_section(all, &section, places));
}

static struct plan_sections sections_find(struct laying *laying, struct arena *arena)
{
    const struct places_facts *all = sheet_places(laying->whole);
    struct plan_sections sections = {.count = 0};
    bool much = rows_in_part(all, PLAN_PART_WHOLE, arena) > PLAN_ROWS_MOST ||
                laying->wanted[PLAN_PART_WHOLE] > 1;
    bool both = rows_in_part(all, PLAN_PART_DECK, arena) > 0 &&
                rows_in_part(all, PLAN_PART_BELOW, arena) > 0;
    for (enum plan_part part = PLAN_PART_WHOLE; part < PLAN_PART_COUNT; part++) {
        laying->cut[part] = 0;
        if ((part != PLAN_PART_WHOLE) == (much && both))
            part_cut(laying, all, part, &sections, arena);
    }
    return sections;
}

/* ---- the pages ---- */

static void section_places_set(struct sheet *sheet, const struct plan_section *section,
                               struct arena *arena)
{
    const struct places_facts *all = sheet_places(sheet);
    struct places_facts *own = arena_alloc(arena, sizeof *own);
    struct plan_place *places = arena_array(arena, all->count, sizeof *places);
    *own = *all;
    own->part = section->part;
    own->places = places;
    own->count = places_of_section(all, section, places);
    page_facts_set(sheet, BLOCK_LABELS, (union block_facts){.places = own});
}

static void section_plan_set(struct sheet *sheet, const struct plan_section *section,
                             struct arena *arena)
{
    const struct pages_facts *pages = sheet_pages(sheet);
    const struct plan_facts *all = sheet_plan(sheet);
    struct plan_facts *own = arena_alloc(arena, sizeof *own);
    struct marker *markers = arena_array(arena, all->marker_count, sizeof *markers);
    *own = *all;
    own->markers = markers;
    own->marker_count = 0;
    for (size_t i = 0; i < all->marker_count; i++)
        if (in_section(&all->markers[i], section))
            markers[own->marker_count++] = all->markers[i];
    own->landmarks = pages->landmarks[section->part];
    own->landmark_count = pages->landmark_counts[section->part];
    page_facts_set(sheet, BLOCK_PLAN, (union block_facts){.plan = own});
}

/* The last page has the sources. */
size_t plan_split(struct laying *laying, struct pen *pen)
{
    struct plan_sections sections = sections_find(laying, pen->arena);
    for (size_t i = 0; i < sections.count; i++) {
        const struct plan_section *section = &sections.at[i];
        struct page_place place = {i, sections.count, section->part};
        struct sheet *sheet = page_sheet(laying->whole, &place, pen->arena);
        section_places_set(sheet, section, pen->arena);
        section_plan_set(sheet, section, pen->arena);
        if (i + 1 < sections.count)
            page_block_remove(sheet, BLOCK_SOURCES);
        laying->sheets[i] = sheet;
    }
    return sections.count;
}

/* One page more for each part of which a page is full. False: it has as many as it may, or
 * fewer than it was to have, because it cannot be cut again. */
bool plan_lessen(struct laying *laying)
{
    bool lessened = false;
    for (size_t i = 0; i < laying->count; i++) {
        enum plan_part part = sheet_places(laying->sheets[i])->part;
        int cut = laying->cut[part];
        if (!laying->full[i] || cut >= PLAN_PAGES_MOST || cut < laying->wanted[part])
            continue;
        laying->wanted[part] = cut + 1;
        lessened = true;
    }
    return lessened;
}
