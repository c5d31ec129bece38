/* proof_near.c - which things of a page stand near a place (room: proof). The page is cut into
 * bands across and down, and each band has the set of what reaches into it; it knows no rule and
 * gives rather too much than too little. */
#include "proof_near.h"

#include <string.h>

#define BANDS 64
#define WORD_BITS 64

struct nearness {
    mpt width, height;         /* of a band down and of a band across */
    size_t words;              /* of a set */
    uint64_t *across, *down;   /* a set a band */
    struct area *reach;        /* by thing: all that counts to it */
    uint64_t *answer;
};

static struct area reach_of(const struct page_item *item, struct area ink,
                            const struct page_item *frame)
{
    struct area reach = area_union(item->area, ink);
    if (item->kind == PAGE_LINE)
        reach = area_union(reach, area_grown(area_between(item->from, item->to),
                                             item->line_width));
    return frame == NULL ? reach : area_union(reach, frame->area);
}

/* What lies off the page counts to the band at its edge. */
static size_t near_band(mpt at, mpt size)
{
    mpt band = at < 0 ? 0 : at / size;
    return band >= BANDS ? BANDS - 1 : (size_t)band;
}

/* The bands from one place to another, and no fewer than one. */
struct band_span { size_t first, last; };

static struct band_span bands_of_span(mpt from, mpt to, mpt size)
{
    struct band_span span = {near_band(from, size), near_band(to > from ? to : from, size)};
    return span;
}

static void bands_mark(const struct nearness *of, uint64_t *sets, struct band_span span,
                       size_t item)
{
    for (size_t band = span.first; band <= span.last; band++)
        sets[band * of->words + item / WORD_BITS] |= UINT64_C(1) << item % WORD_BITS;
}

struct nearness *nearness_new(const struct page *page, const struct area *ink,
                              const struct page_item *const *frames, struct arena *arena)
{
    struct nearness *made = arena_alloc(arena, sizeof *made);
    made->width = page->width / BANDS + 1;
    made->height = page->height / BANDS + 1;
    made->words = page->count / WORD_BITS + 1;
    made->across = arena_array(arena, BANDS * made->words, sizeof *made->across);
    made->down = arena_array(arena, BANDS * made->words, sizeof *made->down);
    made->answer = arena_array(arena, made->words, sizeof *made->answer);
    made->reach = arena_array(arena, page->count + 1, sizeof *made->reach);
    for (size_t i = 0; i < page->count; i++) {
        struct area reach = made->reach[i] = reach_of(&page->items[i], ink[i], frames[i]);
        bands_mark(made, made->across, bands_of_span(reach.y, FOOT_OF(reach), made->height), i);
        bands_mark(made, made->down, bands_of_span(reach.x, RIGHT_OF(reach), made->width), i);
    }
    return made;
}

/* All that reach into one of the bands. */
static uint64_t bands_word(const struct nearness *of, const uint64_t *sets,
                           struct band_span span, size_t word)
{
    uint64_t all = 0;
    for (size_t band = span.first; band <= span.last; band++)
        all |= sets[band * of->words + word];
    return all;
}

struct near_set near_area(const struct proofing *p, struct area area, mpt within)
{
    const struct nearness *of = p->nearness;
    struct band_span across = bands_of_span(area.y - within, FOOT_OF(area) + within, of->height);
    struct band_span down = bands_of_span(area.x - within, RIGHT_OF(area) + within, of->width);
    for (size_t word = 0; word < of->words; word++)
        of->answer[word] = bands_word(of, of->across, across, word) &
                           bands_word(of, of->down, down, word);
    return (struct near_set){of->answer, of->words};
}

struct near_set near_item(const struct proofing *p, size_t item, mpt within)
{
    return near_area(p, p->nearness->reach[item], within);
}

bool near_next(const struct near_set *set, size_t from, size_t *item)
{
    for (size_t word = from / WORD_BITS; word < set->count; word++) {
        uint64_t bits = set->words[word];
        if (word == from / WORD_BITS)
            bits = bits >> from % WORD_BITS << from % WORD_BITS;
        if (bits != 0) {
            *item = word * WORD_BITS + (size_t)__builtin_ctzll(bits);
            return true;
        }
    }
    return false;
}

bool near_before(const struct near_set *set, size_t end, size_t *item)
{
    for (size_t word = end / WORD_BITS + 1; word-- > 0;) {
        uint64_t bits = set->words[word];
        if (word == end / WORD_BITS)
            bits &= (UINT64_C(1) << end % WORD_BITS) - 1;
        if (bits != 0) {
            *item = word * WORD_BITS + WORD_BITS - 1 - (size_t)__builtin_clzll(bits);
            return true;
        }
    }
    return false;
}
