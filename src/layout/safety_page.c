/* safety_page.c - the safety plan's page: the boat in the middle, cut into bands, and a list of
 * what is there on either side of each band (room: layout). The lists give the bands their
 * heights; all that is left is room between rows. */
#include "measures.h"
#include "safety.h"

/* ---- frame of the page ---- */

static struct paragraph sources_words(const struct pen *pen, mpt width)
{
    struct style style = {ROLE_SOURCE_TAG, FACE_TEXT,
                          size_rule(pen->paper, ROLE_SOURCE_TAG).floor, INK_BLACK};
    return paragraph_make(pen, &style, sheet_text(pen->sheet, BLOCK_SOURCES)->text, width,
                          pen->sheet->origin);
}

static mpt sources_height(const struct pen *pen, mpt width)
{
    if (text_empty(sheet_text(pen->sheet, BLOCK_SOURCES)->text))
        return 0;
    struct paragraph words = sources_words(pen, width);
    return paragraph_height(&words);
}

static struct frame plan_frame(const struct pen *pen, const struct page_needs *shared)
{
    struct page_needs needs = *shared;
    mpt width = safe_width(pen->paper);
    needs.height[AREA_SOURCES] = sources_height(pen, width);
    needs.height[AREA_INDEX] = index_height(pen, width);
    return frame_make(pen->paper, TEMPLATE_SAFETY_PLAN, &needs);
}

/* ---- bands ---- */

static mpt band_height(const struct laid_band *band, mpt pitch)
{
    mpt left = list_height(&band->lists[LIST_LEFT], pitch);
    mpt right = list_height(&band->lists[LIST_RIGHT], pitch);
    return (left > right ? left : right) + BAND_GAP;
}

static mpt bands_height(const struct banded_page *page, mpt pitch)
{
    mpt height = 0;
    for (size_t i = 0; i < page->count; i++)
        height += band_height(&page->bands[i], pitch);
    return height;
}

static struct banded_page banded_page_lay(struct pen *pen, const struct page_needs *needs)
{
    const struct places_facts *plan = sheet_places(pen->sheet);
    struct bands bands = bands_of(plan->places, plan->count, plan_way_up(plan), pen->arena);
    struct banded_page page = {.frame = plan_frame(pen, needs), .count = bands.count};
    page.style = list_style_of(pen, page.frame.at[AREA_LEFT].width);
    page.bands = arena_array(pen->arena, bands.count + 1, sizeof *page.bands);
    page.placed = arena_array(pen->arena, bands.count + 1, sizeof *page.placed);
    for (size_t i = 0; i < bands.count; i++) {
        page.bands[i].placed.band = &bands.at[i];
        for (int list = 0; list < LIST_COUNT; list++)
            page.bands[i].lists[list] = list_lay(pen, &bands.at[i].lists[list], &page.style);
    }
    return page;
}

/* ---- fitting ---- */

/* The widest rows that leave so much room; false: they have none. */
static bool pitch_find(struct banded_page *page, mpt room)
{
    for (page->pitch = page->style.pitch_most; page->pitch > page->style.pitch_least;
         page->pitch -= LABEL_PITCH_STEP)
        if (bands_height(page, page->pitch) <= room)
            return true;
    page->pitch = page->style.pitch_least;
    return bands_height(page, page->pitch) <= room;
}

/* One below the other, what is left shared out among them. `bow`: what stays free of bands at
 * her bow. */
static void bands_stack(struct banded_page *page, struct area area, mpt bow, enum way_up up)
{
    mpt top = area.y + (up == BOW_UP ? bow : 0), spare = area.height - bow;
    spare -= bands_height(page, page->pitch);
    for (size_t i = 0; i < page->count; i++) {
        mpt share = (mpt)((int64_t)spare * (int64_t)(i + 1) / (int64_t)page->count) -
                    (mpt)((int64_t)spare * (int64_t)i / (int64_t)page->count);
        mpt foot = top + band_height(&page->bands[i], page->pitch) + share;
        page->bands[i].placed.at = (struct stretch){top, foot};
        page->placed[i] = page->bands[i].placed;
        top = foot;
    }
}

/* The bow is narrow: where tags have no room there, the first band begins farther aft. Gives by
 * how much the page is too low; 0: it is not. */
static mpt banded_page_fit(struct pen *pen, struct banded_page *page)
{
    const struct places_facts *plan = sheet_places(pen->sheet);
    struct area area = page->frame.at[AREA_MIDDLE];
    for (mpt bow = 0;; bow += BAND_BOW_STEP) {
        if (!pitch_find(page, area.height - bow))
            return bands_height(page, page->style.pitch_least) + bow - area.height;
        bands_stack(page, area, bow, plan_way_up(plan));
        page->boat = band_boat_make(pen, area, page->placed, page->count);
        if (band_tags_find(pen, page))
            return 0;
    }
}

/* ---- what does not fit ---- */

/* The rows that need more than one line of type: how many, and the one that needs the least
 * cut. */
struct cuts { size_t count; const struct plan_row *cheapest; mpt least, saved; };

static void list_cuts(const struct pen *pen, const struct banded_page *page,
                      const struct laid_list *list, struct cuts *cuts)
{
    for (size_t i = 0; i < list->count; i++) {
        mpt cut = list_row_cut(pen, &list->rows[i], &page->style);
        mpt saved = list_line_saved(&list->rows[i], &page->style);
        if (cut <= 0 || saved <= 0)
            continue;
        cuts->count++;
        cuts->saved += saved;
        if (cuts->cheapest != NULL && cut >= cuts->least)
            continue;
        cuts->least = cut;
        cuts->cheapest = list->rows[i].of->row;
    }
}

/* Of a band only its longer list counts. */
static const struct laid_list *longer_list(const struct banded_page *page, size_t band)
{
    const struct laid_list *lists = page->bands[band].lists;
    mpt least = page->style.pitch_least;
    return list_height(&lists[LIST_LEFT], least) > list_height(&lists[LIST_RIGHT], least)
               ? &lists[LIST_LEFT] : &lists[LIST_RIGHT];
}

static size_t highest_band(const struct banded_page *page)
{
    size_t highest = 0;
    for (size_t i = 1; i < page->count; i++)
        if (band_height(&page->bands[i], page->pitch) >
            band_height(&page->bands[highest], page->pitch))
            highest = i;
    return highest;
}

static const char *cut_words(const struct pen *pen, const struct banded_page *page)
{
    struct cuts cuts = {0};
    for (size_t i = 0; i < page->count; i++)
        list_cuts(pen, page, longer_list(page, i), &cuts);
    if (cuts.cheapest == NULL)
        return "all names and spots stand on one line as they are";
    return text_format(pen->arena, "shorten name or spot of the %zu %s more than one line, which "
                       "gives %s mm\nthe cheapest: %s mm off \"%s, %s\"", cuts.count,
                       cuts.count == 1 ? "that takes" : "that take",
                       mm_text(pen->arena, cuts.saved), mm_text(pen->arena, cuts.least),
                       cuts.cheapest->name, cuts.cheapest->detail);
}

static void lists_told(struct pen *pen, const struct banded_page *page, mpt over)
{
    const struct laid_list *longest = longer_list(page, highest_band(page));
    const struct plan_place *place = longest->rows[0].of->place;
    pen_too_long(pen, place->marker.origin, over,
                 text_format(pen->arena, "%s\nenter gear of one kind at one place as one, with "
                             "`count`; gear without a side stands in the shorter list\nthe list of "
                             "%s is the longest (%zu lines)",
                             cut_words(pen, page), place->title, longest->count),
                 "what stands beside the boat");
}

/* ---- the page ---- */

static void sources_place(struct pen *pen, struct area area)
{
    if (text_empty(sheet_text(pen->sheet, BLOCK_SOURCES)->text))
        return;
    struct paragraph words = sources_words(pen, area.width);
    pen->block = BLOCK_SOURCES;
    paragraph_place(pen, &words, area.x, area.y);
}

static void boat_place(struct pen *pen, const struct banded_page *page)
{
    band_boat_draw(pen, &page->boat, page->placed, page->count);
    band_leaders_place(pen, page);
    band_names_place(pen, page);
    band_tags_place(pen, page);
}

static void band_lists_place(struct pen *pen, const struct banded_page *page)
{
    for (size_t i = 0; i < page->count; i++)
        for (int list = 0; list < LIST_COUNT; list++) {
            struct area column = page->frame.at[list == LIST_LEFT ? AREA_LEFT : AREA_RIGHT];
            list_place(pen, &page->bands[i].lists[list], &page->style,
                       (struct point){column.x, page->placed[i].at.top}, page->pitch);
        }
}

static void page_place(struct pen *pen, const struct banded_page *page)
{
    pen->block = BLOCK_PLAN;
    safety_head_place(pen, page->frame.at[AREA_PLAN_HEAD]);
    boat_place(pen, page);
    band_lists_place(pen, page);
    safety_legend_place(pen, page->frame.at[AREA_LEGEND]);
    index_place(pen, page->frame.at[AREA_INDEX]);
    sources_place(pen, page->frame.at[AREA_SOURCES]);
}

bool safety_place(struct pen *pen, const struct page_needs *needs)
{
    struct banded_page page = banded_page_lay(pen, needs);
    mpt over = banded_page_fit(pen, &page);
    if (over > 0)
        lists_told(pen, &page, over);
    else
        page_place(pen, &page);
    return over <= 0;
}

bool safety_fits(struct pen *trial, const struct page_needs *needs)
{
    struct banded_page page = banded_page_lay(trial, needs);
    return banded_page_fit(trial, &page) <= 0;
}
