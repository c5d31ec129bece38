/* proof_light.c - do words, lines and frames stand out from what lies under them, in
 * white light, printed grey and in red light (room: proof). Rules G7, G8, G9. */
#include "geometry.h"
#include "proof_near.h"

#define TEXT_CONTRAST_LEAST 7.0
#define BIG_CONTRAST_LEAST 4.5
#define LINE_CONTRAST_LEAST 3.0
#define BIG 18000
#define BIG_BOLD 14000
#define RED_MOST 12              /* hundredths of the page */
#define ROUNDING 0.005

static bool is_big(const struct run *run)
{
    return run->size >= BIG || (run->role != FACE_TEXT && run->size >= BIG_BOLD);
}

/* ---- G7 ---- */

static struct contrast worst_on(const struct proofing *p, enum ink ink,
                                const bool seen[INK_COUNT])
{
    struct contrast worst = {22.0, LIGHT_WHITE};
    for (int ground = INK_BLACK; ground < INK_COUNT; ground++) {
        struct contrast one = p->contrasts->worst[ink][ground];
        if (seen[ground] && one.ratio < worst.ratio)
            worst = one;
    }
    return worst;
}

static struct contrast best_on(const struct proofing *p, enum ink ink,
                               const bool seen[INK_COUNT])
{
    struct contrast best = {0.0, LIGHT_WHITE};
    for (int ground = INK_BLACK; ground < INK_COUNT && ink != INK_NONE; ground++) {
        struct contrast one = p->contrasts->worst[ink][ground];
        if (seen[ground] && one.ratio > best.ratio)
            best = one;
    }
    return best;
}

static struct contrast better_contrast(struct contrast a, struct contrast b)
{
    return a.ratio >= b.ratio ? a : b;
}

/* Painted over later: not to be read at all. */
static bool covered_later(const struct proofing *p, size_t i)
{
    struct near_set near = near_area(p, p->ink[i], 1);
    for (size_t j = i + 1; near_next(&near, j, &j); j++)
        if (item_touches(&p->page->items[j], p->ink[i]) ||
            (p->page->items[j].kind == PAGE_SIGN &&
             area_meets(p->page->items[j].area, p->ink[i])))
            return true;
    return false;
}

static void text_light_judge(struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    bool seen[INK_COUNT] = {false};
    grounds_under(p, i, p->ink[i], seen);
    struct contrast worst = worst_on(p, item->fill, seen);
    double least = is_big(item->run) ? BIG_CONTRAST_LEAST : TEXT_CONTRAST_LEAST;
    proof_measured(p, LIGHT_COUNT);
    if (covered_later(p, i))
        proof_found(p, RULE_TEXT_CONTRAST, item, "covered by what is painted later");
    else if (worst.ratio < least - ROUNDING)
        proof_found(p, RULE_TEXT_CONTRAST, item, "%s:1 %s, %s:1 is needed at %s pt",
                    ratio_words(p->arena, worst.ratio), light_word(worst.light),
                    ratio_words(p->arena, least), pt_words(p->arena, item->run->size));
    if (item->fill != INK_BLACK && item->fill != INK_WHITE && item->fill != INK_GREY)
        proof_found(p, RULE_COLOURED_TEXT, item, "printed in a colour");
}

/* ---- G8 ---- */

static void line_told(struct proofing *p, size_t i, struct contrast contrast)
{
    proof_measured(p, LIGHT_COUNT);
    if (contrast.ratio < LINE_CONTRAST_LEAST - ROUNDING)
        proof_found(p, RULE_LINE_CONTRAST, &p->page->items[i], "%s:1 %s",
                    ratio_words(p->arena, contrast.ratio), light_word(contrast.light));
}

/* Without its ends: a line may end at a frame. */
static mpt pulled_in(mpt from, mpt to, double share)
{
    return from + (mpt)((double)(to - from) * share);
}

static struct page_item line_shortened(const struct page_item *line)
{
    struct page_item middle = *line;
    double length = length_between(line->from, line->to);
    double end = line->line_width / 2 + MM(0.2), share = length > 2 * end ? end / length : 0.0;
    middle.from = (struct point){pulled_in(line->from.x, line->to.x, share),
                                 pulled_in(line->from.y, line->to.y, share)};
    middle.to = (struct point){pulled_in(line->to.x, line->from.x, share),
                               pulled_in(line->to.y, line->from.y, share)};
    return middle;
}

/* Does the line itself meet it, not only the rectangle round a slanting line? */
static bool line_meets(const struct page_item *line, struct area area)
{
    return area_gap(area_between(line->from, line->to), area) < line->line_width &&
           segment_to_box(line->from, line->to, area) < (double)line->line_width / 2;
}

/* A wider white line along all of it. */
static bool is_halo_of(const struct page_item *halo, const struct page_item *line)
{
    return halo->kind == PAGE_LINE && halo->stroke == INK_WHITE &&
           halo->line_width > line->line_width && halo->from.x == line->from.x &&
           halo->from.y == line->from.y && halo->to.x == line->to.x && halo->to.y == line->to.y;
}

/* The mast: a grey dot that a line may cross, as it may the boat's other grey lines. */
static bool is_mast(const struct page_item *item)
{
    return item->kind == PAGE_ELLIPSE && item->fill == INK_GREY && in_plan(item);
}

/* As grounds_under, but of what the line itself runs over. */
static void grounds_of_line(const struct proofing *p, size_t above, bool seen[INK_COUNT])
{
    const struct page_item *line = &p->page->items[above];
    struct page_item middle = line_shortened(line);
    struct near_set near = near_item(p, above, 1);
    for (size_t i = above; near_before(&near, i, &i);) {
        const struct page_item *item = &p->page->items[i];
        bool filled = item->kind == PAGE_SIGN || item_touches(item, p->ink[above]);
        if (is_halo_of(item, line))
            break;
        if (!filled || is_mast(item) || !line_meets(&middle, item->area))
            continue;
        if (item->kind == PAGE_SIGN)
            seen[INK_BLACK] = true;
        seen[item->kind == PAGE_SIGN ? INK_WHITE : item->fill] = true;
        if (item_covers(item, p->ink[above]))
            return;
    }
    seen[INK_WHITE] = true;
}

/* White lines are halos and white areas without a line are ground: they keep others
 * apart and mean nothing. A line must show all along; a frame on
 * one of its sides; an area by its line or by itself. */
static void shape_light_judge(struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    bool seen[INK_COUNT] = {false};
    if (item->fill == INK_NONE && item->stroke == INK_NONE)
        return;
    bool halo = item->kind == PAGE_LINE && item->stroke == INK_WHITE;
    bool ground = item->fill == INK_WHITE && item->stroke == INK_NONE;
    if (halo || ground)
        return;
    if (item->kind == PAGE_LINE) {
        grounds_of_line(p, i, seen);
        line_told(p, i, worst_on(p, item->stroke, seen));
        return;
    }
    grounds_under(p, i, area_grown(p->ink[i], MM(0.1)), seen);
    line_told(p, i, better_contrast(best_on(p, item->stroke, seen),
                                    best_on(p, item->fill, seen)));
}

/* The black line round a sign must show on its ground. */
static void sign_light_judge(struct proofing *p, size_t i)
{
    bool seen[INK_COUNT] = {false};
    grounds_under(p, i, p->page->items[i].area, seen);
    line_told(p, i, worst_on(p, INK_BLACK, seen));
}

/* ---- G9 ---- */

static void red_judge(struct proofing *p)
{
    int64_t red = 0, page = (int64_t)(p->page->width / 100) * (p->page->height / 100);
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (item->kind != PAGE_TEXT && item->kind != PAGE_SIGN && item->fill == INK_FIRE)
            red += (int64_t)(item->area.width / 100) * (item->area.height / 100);
    }
    proof_measured(p, 1);
    if (page > 0 && red * 100 > page * RED_MOST)
        proof_found(p, RULE_RED_SHARE, NULL, "%lld %%", (long long)(red * 100 / page));
}

void proof_lights(struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_text(item))
            text_light_judge(p, i);
        else if (item->kind == PAGE_SIGN)
            sign_light_judge(p, i);
        else if (item->kind != PAGE_TEXT)
            shape_light_judge(p, i);
    }
    red_judge(p);
}
