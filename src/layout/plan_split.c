/* plan_split.c - a plan of the boat that one page does not hold (room: layout): her deck and
 * what is below apart, and each cut across between two bands, so that what stands abreast stays
 * together. Every place is on one page. */
#include "bands.h"
#include "pages.h"

#include <string.h>

/* A boat with more rows than this has two plans, deck and below. */
#define PLAN_ROWS_MOST 25

/* Pages that one part may have. */
#define PLAN_PAGES_MOST 6

#define ALL_ROWS 1000000

/* How many rows of a zone may stand abreast, where they are parted: the finer the fewer. */
static const size_t rows_abreast[] = {ALL_ROWS, 24, 12, 6};
#define PARTED_MOST 3

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

static size_t rows_of_places(const struct plan_place *places, size_t count)
{
    size_t rows = 0;
    for (size_t i = 0; i < count; i++)
        rows += places[i].row_count;
    return rows;
}

/* Which of so many equal parts of a place. */
static struct plan_place place_parted(const struct plan_place *place, size_t part, size_t of)
{
    struct plan_place parted = *place;
    size_t first = place->row_count * part / of, end = place->row_count * (part + 1) / of;
    parted.rows += first;
    parted.row_count = end - first;
    parted.part = part;
    return parted;
}

/* The places of one zone in parts of no more rows than that, each with all its sides; gives how
 * many. */
static size_t zone_parted(const struct plan_place *places, size_t count, size_t rows_most,
                          struct plan_place *parts)
{
    size_t parted = 0, of = (rows_of_places(places, count) + rows_most - 1) / rows_most;
    for (size_t part = 0; part < of; part++)
        for (size_t i = 0; i < count; i++) {
            parts[parted] = place_parted(&places[i], part, of);
            parted += parts[parted].row_count > 0 ? 1 : 0;
        }
    return parted;
}

/* All zones so; there are no more parts than rows, but room for one that is empty. */
static size_t places_parted(const struct plan_place *places, size_t count, size_t rows_most,
                            struct plan_place *parts)
{
    size_t parted = 0;
    for (size_t i = 0; i < count;) {
        size_t same = 1;
        while (i + same < count &&
               places[i + same].marker.zone->family == places[i].marker.zone->family)
            same++;
        parted += zone_parted(places + i, same, rows_most, parts + parted);
        i += same;
    }
    return parted;
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

/* A part being cut: its bands from the bow aft, in so many pages. */
struct cutting {
    const struct boat *boat;
    struct bands bands;
    size_t pages;
    size_t lines_last;       /* of a list, for which the last page has less room */
};

/* The band with which the next page begins, where none holds more lines than that, and bands
 * are left for the pages that follow. */
static size_t page_end(const struct cutting *cutting, size_t first, size_t pages_left,
                       size_t lines_most)
{
    size_t lines = 0, end = first, bands = cutting->bands.count;
    while (end < bands && (end == first || (bands - end >= pages_left &&
                                            lines + band_lines(&cutting->bands.at[end]) <=
                                                lines_most)))
        lines += band_lines(&cutting->bands.at[end++]);
    return end;
}

/* Do all bands stand on the pages, none with more lines than that? A band alone may have more. */
static bool pages_hold(const struct cutting *cutting, size_t lines_most)
{
    size_t first = 0;
    for (size_t page = 1; page <= cutting->pages; page++) {
        bool last = page == cutting->pages;
        size_t most = !last ? lines_most
                            : lines_most > cutting->lines_last ? lines_most - cutting->lines_last
                                                               : 0;
        first = page_end(cutting, first, cutting->pages - page + (last ? 0 : 1), most);
    }
    return first >= cutting->bands.count;
}

/* The least that a page may hold so that all have room: they are as full as each other. */
static size_t lines_least(const struct cutting *cutting)
{
    size_t lines = 1, all = cutting->lines_last;
    for (size_t i = 0; i < cutting->bands.count; i++)
        all += band_lines(&cutting->bands.at[i]);
    while (lines < all && !pages_hold(cutting, lines))
        lines++;
    return lines;
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

/* Sources stand in small type, so many letters to the height of a row. */
#define LETTERS_A_ROW 330

static struct cutting cutting_begin(const struct laying *laying, enum plan_part part,
                                    struct arena *arena)
{
    const struct places_facts *all = sheet_places(laying->whole);
    const char *sources = sheet_text(laying->whole, BLOCK_SOURCES)->text;
    struct plan_place *places = arena_array(arena, all->count + 1, sizeof *places);
    size_t count = places_of_part(all, part, places);
    struct plan_place *parts = arena_array(arena, rows_of_places(places, count) + 1,
                                           sizeof *parts);
    count = places_parted(places, count, rows_abreast[laying->parted[part]], parts);
    struct cutting cutting = {laying->whole->boat, bands_of(parts, count, BOW_UP, arena), 1, 0};
    size_t wanted = laying->wanted[part] > 0 ? (size_t)laying->wanted[part] : 1;
    wanted = wanted > PLAN_PAGES_MOST ? PLAN_PAGES_MOST : wanted;
    if (cutting.bands.count > 0)
        cutting.pages = wanted < cutting.bands.count ? wanted : cutting.bands.count;
    if (part != PLAN_PART_DECK && sources != NULL)
        cutting.lines_last = strlen(sources) / LETTERS_A_ROW;
    return cutting;
}

/* The sections of a part, from the bow aft, as many as it is to have and can be cut into. */
static void part_cut(struct laying *laying, enum plan_part part, struct plan_sections *sections,
                     struct arena *arena)
{
    struct plan_section *at = &sections->at[sections->count];
    struct cutting cutting = cutting_begin(laying, part, arena);
    size_t most = lines_least(&cutting), first = 0;
    at[0] = section_from(&cutting, part, 0, 0);
    for (size_t page = 1; page < cutting.pages; page++) {
        first = page_end(&cutting, first, cutting.pages - page + 1, most);
        int32_t station = cut_station(&cutting, first, at[page - 1].from);
        at[page] = section_from(&cutting, part, first, station);
        at[page - 1].to = station;
        at[page - 1].count -= at[page].count;
    }
    laying->cut[part] = (int)cutting.pages;
    sections->count += cutting.pages;
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

/* The last page that shows her has the sources; behind it stands the index of cards. */
size_t plan_split(struct laying *laying, struct pen *pen)
{
    struct plan_sections sections = sections_find(laying, pen->arena);
    size_t pages = sections.count + seen_page_count(laying);
    for (size_t i = 0; i < sections.count; i++) {
        const struct plan_section *section = &sections.at[i];
        struct page_place place = {i, pages, section->part, sections.count};
        struct sheet *sheet = page_sheet(laying->whole, &place, pen->arena);
        section_places_set(sheet, section, pen->arena);
        if (i + 1 < sections.count)
            page_block_remove(sheet, BLOCK_SOURCES);
        page_block_remove(sheet, BLOCK_SEEN);
        laying->sheets[i] = sheet;
    }
    seen_pages_set(laying, sections.count, pen->arena);
    return pages;
}

/* One page more, or zones parted more finely where more pages are not to be had. False: neither
 * is possible. */
static bool part_lessen(struct laying *laying, enum plan_part part)
{
    int cut = laying->cut[part];
    if (cut >= PLAN_PAGES_MOST)
        return false;
    if (cut < laying->wanted[part]) {
        if (laying->parted[part] >= PARTED_MOST)
            return false;
        laying->parted[part]++;
        laying->wanted[part] = 2;
        return true;
    }
    laying->wanted[part] = cut + 1;
    return true;
}

/* Each part of which a page is full. False: it has as many as it may, and cannot be cut again. */
bool plan_lessen(struct laying *laying)
{
    bool lessened = seen_pages_lessen(laying), done[PLAN_PART_COUNT] = {false};
    for (size_t i = 0; i < laying->count; i++) {
        if (sheet_seen(laying->sheets[i])->count > 0)
            continue;
        enum plan_part part = sheet_places(laying->sheets[i])->part;
        if (laying->full[i] && !done[part])
            lessened |= part_lessen(laying, part);
        done[part] = done[part] || laying->full[i];
    }
    return lessened;
}
