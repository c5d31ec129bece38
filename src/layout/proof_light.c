/* proof_light.c - do words, lines and frames stand out from what lies under them, in
 * white light, printed grey and in red light (room: layout). Rules G7, G8, G9. */
#include "legible.h"
#include "proof_room.h"

#define TEXT_LEAST 7.0
#define BIG_LEAST 4.5
#define LINE_LEAST 3.0
#define BIG 18000
#define BIG_BOLD 14000
#define RED_MOST 12              /* hundredths of the page */
#define ROUNDING 0.005

static bool is_big(const struct run *run)
{
    return run->size >= BIG || (run->role != FACE_TEXT && run->size >= BIG_BOLD);
}

/* ---- G7 ---- */

static struct contrast worst_on(enum ink ink, const bool seen[INK_COUNT])
{
    struct contrast worst = {22.0, LIGHT_WHITE};
    for (int ground = INK_BLACK; ground < INK_COUNT; ground++) {
        struct contrast one = contrast_worst(ink, (enum ink)ground);
        if (seen[ground] && one.ratio < worst.ratio)
            worst = one;
    }
    return worst;
}

static struct contrast best_on(enum ink ink, const bool seen[INK_COUNT])
{
    struct contrast best = {0.0, LIGHT_WHITE};
    for (int ground = INK_BLACK; ground < INK_COUNT && ink != INK_NONE; ground++) {
        struct contrast one = contrast_worst(ink, (enum ink)ground);
        if (seen[ground] && one.ratio > best.ratio)
            best = one;
    }
    return best;
}

static struct contrast better(struct contrast a, struct contrast b)
{
    return a.ratio >= b.ratio ? a : b;
}

/* Painted over later: not to be read at all. */
static bool covered_later(const struct proofing *p, size_t i)
{
    for (size_t j = i + 1; j < p->page->count; j++)
        if (item_touches(&p->page->items[j], p->ink[i]) ||
            (p->page->items[j].kind == PAGE_SIGN &&
             area_meets(p->page->items[j].area, p->ink[i])))
            return true;
    return false;
}

static void text_judge(struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    bool seen[INK_COUNT] = {false};
    grounds_under(p, i, p->ink[i], seen);
    struct contrast worst = worst_on(item->fill, seen);
    double least = is_big(item->run) ? BIG_LEAST : TEXT_LEAST;
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
    if (contrast.ratio < LINE_LEAST - ROUNDING)
        proof_found(p, RULE_LINE_CONTRAST, &p->page->items[i], "%s:1 %s",
                    ratio_words(p->arena, contrast.ratio), light_word(contrast.light));
}

/* Without its ends: a line may end at a frame. */
static struct area line_middle(const struct page_item *line, struct area ink)
{
    mpt half = line->line_width / 2 + MM(0.2);
    if (ink.width > ink.height && ink.width > 2 * half)
        return (struct area){ink.x + half, ink.y, ink.width - 2 * half, ink.height};
    if (ink.height > 2 * half)
        return (struct area){ink.x, ink.y + half, ink.width, ink.height - 2 * half};
    return ink;
}

/* White lines are halos and white areas without a line are ground: they keep others
 * apart and mean nothing. A line must show all along; a frame on
 * one of its sides; an area by its line or by itself. */
static void shape_judge(struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    bool seen[INK_COUNT] = {false};
    if (item->fill == INK_NONE && item->stroke == INK_NONE)
        return;
    bool halo = item->kind == PAGE_LINE && item->stroke == INK_WHITE;
    bool ground = item->fill == INK_WHITE && item->stroke == INK_NONE;
    if (halo || ground)
        return;
    grounds_under(p, i, item->kind == PAGE_LINE ? line_middle(item, p->ink[i])
                                                : area_grown(p->ink[i], MM(0.1)), seen);
    if (item->kind == PAGE_LINE)
        line_told(p, i, worst_on(item->stroke, seen));
    else
        line_told(p, i, better(best_on(item->stroke, seen), best_on(item->fill, seen)));
}

/* The black line round a sign must show on its ground. */
static void sign_judge(struct proofing *p, size_t i)
{
    bool seen[INK_COUNT] = {false};
    grounds_under(p, i, p->page->items[i].area, seen);
    line_told(p, i, worst_on(INK_BLACK, seen));
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
            text_judge(p, i);
        else if (item->kind == PAGE_SIGN)
            sign_judge(p, i);
        else if (item->kind != PAGE_TEXT)
            shape_judge(p, i);
    }
    red_judge(p);
}
