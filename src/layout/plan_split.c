/* plan_split.c - a plan of the boat that one page does not hold (room: layout): her deck and
 * what is below apart, and each cut across between two bands, so that what stands abreast stays
 * together. Every place is on one page. */
#include "bands.h"
#include "pages.h"

/* A boat with more rows than this has two plans, deck and below. */
#define PLAN_ROWS_MOST 25

/* Pages that one part may have. */
#define PLAN_PAGES_MOST 6

/* What one page shows: of a part, the places of some bands, and how much of her length. */
struct plan_section {
    enum plan_part part;
    const struct plan_place *places;
    size_t count;
    int32_t from, to;        /* thousandths from the bow */
};

struct plan_sections {
    struct plan_section at[PLAN_PART_COUNT * PLAN_PAGES_MOST];
    size_t count;
};

/* Where the cards hang is on each part. */
static bool part_has(enum plan_part part, const struct plan_place *place)
{
    return place->rows[0].kind == NULL || plan_part_shows(part, place->marker.level);
}

/* Of those of a part, in their order; gives how many. */
static size_t places_of_part(const struct places_facts *all, enum plan_part part,
                             struct plan_place *places)
{
    size_t count = 0;
    for (size_t i = 0; i < all->count; i++)
        if (part_has(part, &all->places[i]))
            places[count++] = all->places[i];
    return count;
}

static size_t rows_in_part(const struct places_facts *all, enum plan_part part)
{
    size_t rows = 0;
    for (size_t i = 0; i < all->count; i++)
        if (all->places[i].rows[0].kind != NULL &&
            plan_part_shows(part, all->places[i].marker.level))
            rows += all->places[i].row_count;
    return rows;
}

/* ---- where a part is cut ---- */

/* A part being cut: its bands from the bow aft. */
struct cutting {
    const struct boat *boat;
    struct bands bands;
    size_t lines;
};

/* The band with which the next section begins: as near as can be to that share of the part's
 * lines. 0: no band is left. */
static size_t cut_find(const struct cutting *cutting, size_t share, size_t after)
{
    size_t before = 0, least = SIZE_MAX, cut = 0;
    for (size_t i = 0; i + 1 < cutting->bands.count; i++) {
        before += band_lines(&cutting->bands.at[i]);
        size_t off = before > share ? before - share : share - before;
        if (i + 1 <= after || off >= least)
            continue;
        least = off;
        cut = i + 1;
    }
    return cut;
}

static int32_t band_station(const struct cutting *cutting, size_t band)
{
    int64_t x = cutting->bands.at[band].places[0].marker.x_mm * (int64_t)1000;
    return (int32_t)(x / cutting->boat->facts.loa_m.milli);
}

/* Half way between the bands on both sides of it, on the boat and within `from` to 999. */
static int32_t cut_station(const struct cutting *cutting, size_t band, int32_t from)
{
    int32_t at = (band_station(cutting, band - 1) + band_station(cutting, band)) / 2;
    at = at > 999 ? 999 : at;
    return at > from ? at : from + 1;
}

/* From its first band on, all that is left. */
static struct plan_section section_from(const struct cutting *cutting, enum plan_part part,
                                        size_t first, int32_t from)
{
    struct plan_section section = {part, NULL, 0, from, 1000};
    if (cutting->bands.count > 0)
        section.places = cutting->bands.at[first].places;
    for (size_t i = first; i < cutting->bands.count; i++)
        section.count += cutting->bands.at[i].place_count;
    return section;
}

static struct cutting cutting_begin(const struct laying *laying, enum plan_part part,
                                    struct arena *arena)
{
    const struct places_facts *all = sheet_places(laying->whole);
    struct plan_place *places = arena_array(arena, all->count + 1, sizeof *places);
    size_t count = places_of_part(all, part, places);
    struct cutting cutting = {laying->whole->boat, bands_of(places, count, BOW_UP, arena), 0};
    for (size_t i = 0; i < cutting.bands.count; i++)
        cutting.lines += band_lines(&cutting.bands.at[i]);
    return cutting;
}

/* The sections of a part, from the bow aft, as many as it is to have and can be cut into. */
static void part_cut(struct laying *laying, enum plan_part part, struct plan_sections *sections,
                     struct arena *arena)
{
    struct plan_section *at = &sections->at[sections->count];
    struct cutting cutting = cutting_begin(laying, part, arena);
    size_t first = 0;
    int wanted = laying->wanted[part], cuts = 1;
    at[0] = section_from(&cutting, part, 0, 0);
    for (; cuts < wanted && cuts < PLAN_PAGES_MOST; cuts++) {
        first = cut_find(&cutting, cutting.lines * (size_t)cuts / (size_t)wanted, first);
        if (first == 0)
            break;
        int32_t station = cut_station(&cutting, first, at[cuts - 1].from);
        at[cuts] = section_from(&cutting, part, first, station);
        at[cuts - 1].to = station;
        at[cuts - 1].count -= at[cuts].count;
    }
    laying->cut[part] = cuts;
    sections->count += (size_t)cuts;
}

static struct plan_sections sections_find(struct laying *laying, struct arena *arena)
{
    const struct places_facts *all = sheet_places(laying->whole);
    struct plan_sections sections = {.count = 0};
    bool much = rows_in_part(all, PLAN_PART_WHOLE) > PLAN_ROWS_MOST ||
                laying->wanted[PLAN_PART_WHOLE] > 1;
    bool both = rows_in_part(all, PLAN_PART_DECK) > 0 && rows_in_part(all, PLAN_PART_BELOW) > 0;
    for (enum plan_part part = PLAN_PART_WHOLE; part < PLAN_PART_COUNT; part++) {
        laying->cut[part] = 0;
        if ((part != PLAN_PART_WHOLE) == (much && both))
            part_cut(laying, part, &sections, arena);
    }
    return sections;
}

/* ---- the pages ---- */

static void section_places_set(struct sheet *sheet, const struct plan_section *section,
                               struct arena *arena)
{
    struct places_facts *own = arena_alloc(arena, sizeof *own);
    *own = *sheet_places(sheet);
    own->part = section->part;
    own->from = section->from;
    own->to = section->to;
    own->places = section->places;
    own->count = section->count;
    page_facts_set(sheet, BLOCK_LABELS, (union block_facts){.places = own});
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
