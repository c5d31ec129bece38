/* proof_size.c - sizes of type, leading, measure, widths of lines, heights of
 * blanks, glyphs (room: proof). Rules G4, G5, G6, G12, G18, G30, A59. */
#include "legible.h"
#include "limits.h"
#include "proof_near.h"

#define STROKE_LEAST MM(0.35)
#define BLANK_LEAST MM(6.8)      /* 7.6 mm less the rule and what reaches below a line */
#define LEADING_LEAST 1145       /* thousandths: rounding of a line's height */
#define LEADING_MOST 1505
#define MEASURE_MOST 55

static double capital_mm(const struct proofing *p, const struct run *run)
{
    const struct face_metrics *metrics = face_metrics(p->faces, run->role);
    return legible_letter_mm((double)run->size / MPT_PER_POINT,
                             (double)metrics->cap_height / metrics->units_per_em);
}

static double small_letter_mm(const struct proofing *p, const struct run *run)
{
    const struct face_metrics *metrics = face_metrics(p->faces, run->role);
    return legible_letter_mm((double)run->size / MPT_PER_POINT,
                             (double)metrics->x_height / metrics->units_per_em);
}

/* ---- G4 ---- */

static void floor_judge(struct proofing *p, const struct page_item *item)
{
    struct role_limit limit = role_limit(p->page->paper, item->role);
    double capital = capital_mm(p, item->run), small = small_letter_mm(p, item->run);
    if (item->run->size < limit.floor)
        proof_found(p, RULE_SIZE_FLOOR, item, "%s %s pt, floor %s", limit.word,
                    pt_words(p->arena, item->run->size), pt_words(p->arena, limit.floor));
    else if (capital < limit.capital_mm)
        proof_found(p, RULE_SIZE_FLOOR, item, "capitals of %s mm",
                    ratio_words(p->arena, capital));
    else if (capital / READ_CAPITALS < limit.capitals_read_mm ||
             small / READ_SMALL < limit.small_read_mm)
        proof_found(p, RULE_SIZE_FLOOR, item, "capitals to %s m, small letters to %s m",
                    ratio_words(p->arena, capital / READ_CAPITALS / 1000),
                    ratio_words(p->arena, small / READ_SMALL / 1000));
}

/* One note a role: its smallest run, and how far that is read. */
static void aim_judge(struct proofing *p, enum page_role role)
{
    struct role_limit limit = role_limit(p->page->paper, role);
    const struct page_item *least = NULL;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_text(item) && item->role == role &&
            (least == NULL || item->run->size < least->run->size))
            least = item;
    }
    if (least == NULL || least->run->size >= limit.aim ||
        least->run->size < limit.floor)
        return;
    bool capitals = limit.small_read_mm < 1;
    double reach = capitals ? capital_mm(p, least->run) / READ_CAPITALS
                            : small_letter_mm(p, least->run) / READ_SMALL;
    proof_found(p, RULE_SIZE_AIM, least, "%s %s pt, read to %s m, aim %s pt", limit.word,
                pt_words(p->arena, least->run->size), ratio_words(p->arena, reach / 1000),
                pt_words(p->arena, limit.aim));
}

static void faces_judge(struct proofing *p)
{
    bool used[FACE_COUNT] = {false};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (!is_text(item))
            continue;
        used[item->run->role] = true;
        if ((item->run->role == FACE_CODE) != (item->role == ROLE_CODE))
            proof_found(p, RULE_FACES, item, "%s", item->role == ROLE_CODE
                                                       ? "a code in the face of words"
                                                       : "words in the face of codes");
    }
    for (enum face_role face = FACE_TEXT; face < FACE_COUNT; face++) {
        const struct face_metrics *metrics = face_metrics(p->faces, face);
        proof_measured(p, used[face] ? 2 : 0);
        double share = (double)metrics->x_height / metrics->units_per_em;
        if (used[face] && (share < 0.5 || legible_letter_mm(12, share) < 2.2))
            proof_found(p, RULE_FACE_PROPORTIONS, NULL, "%s: small letters %s of the size",
                        face_postscript_name(p->faces, face), ratio_words(p->arena, share));
        if (used[face] && metrics->italic_angle != 0)
            proof_found(p, RULE_ITALIC, NULL, "%s leans by %d degrees",
                        face_postscript_name(p->faces, face), metrics->italic_angle);
    }
}

/* ---- G5 ---- */

/* A headline is found by its bold command; its other words stand behind that. */
static bool has_a_tier(const struct page_item *item)
{
    return item->role != ROLE_NUMBER && item->role != ROLE_BOAT &&
           (item->role != ROLE_HEADLINE || item->run->role == FACE_BOLD);
}

static void tiers_judge(struct proofing *p)
{
    mpt least[TIER_COUNT] = {0}, most[TIER_COUNT] = {0};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (!is_text(item) || !has_a_tier(item))
            continue;
        enum tier tier = role_limit(p->page->paper, item->role).tier;
        mpt size = item->run->size;
        least[tier] = least[tier] == 0 || size < least[tier] ? size : least[tier];
        most[tier] = size > most[tier] ? size : most[tier];
    }
    for (int upper = 0; upper < TIER_COUNT; upper++)
        for (int lower = upper + 1; lower < TIER_COUNT; lower++) {
            proof_measured(p, 1);
            if (least[upper] > 0 && most[lower] > 0 &&
                (int64_t)least[upper] * 7 < (int64_t)most[lower] * 8)
                proof_found(p, RULE_TIERS, NULL, "%s pt over %s pt",
                            pt_words(p->arena, least[upper]), pt_words(p->arena, most[lower]));
        }
}

/* ---- G6 ---- */

/* The line below in the same paragraph; NULL: there is none, or it is higher up. */
static const struct page_item *next_line(const struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    for (size_t j = i + 1; j < p->page->count; j++) {
        const struct page_item *other = &p->page->items[j];
        if (is_text(other) && other->paragraph == item->paragraph &&
            other->baseline != item->baseline)
            return other;
    }
    return NULL;
}

static bool over_a_blank(const struct proofing *p, const struct page_item *line)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (item->part == PART_BLANK && item->block == line->block &&
            item->from.y > line->baseline - MM(1) && item->from.y < line->baseline + MM(1))
            return true;
    }
    return false;
}

static void leading_judge(struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    const struct page_item *below = item->paragraph == 0 ? NULL : next_line(p, i);
    if (below == NULL || item->role == ROLE_TITLE || over_a_blank(p, below) ||
        over_a_blank(p, item))
        return;
    int64_t share = (int64_t)(below->baseline - item->baseline) * 1000 / item->run->size;
    proof_measured(p, 1);
    if (share < LEADING_LEAST || share > LEADING_MOST)
        proof_found(p, RULE_LEADING, item, "%s of the size",
                    ratio_words(p->arena, (double)share / 1000));
}

/* Characters of the line this item begins; 0 if another item begins it. */
static long characters_of_line(const struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    struct near_set near = near_area(p, (struct area){0, item->baseline, p->page->width, 0}, 1);
    long characters = 0;
    for (size_t j = 0; near_next(&near, j, &j); j++) {
        const struct page_item *other = &p->page->items[j];
        if (!is_text(other) || other->baseline != item->baseline ||
            other->paragraph != item->paragraph || (item->paragraph == 0 && j != i))
            continue;
        if (j < i)
            return 0;
        characters += text_code_points(other->run->text) + (j > i ? 1 : 0);
    }
    return characters;
}

static void measure_judge(struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    if (role_limit(p->page->paper, item->role).one_line)
        return;
    long characters = characters_of_line(p, i);
    proof_measured(p, characters > 0 ? 1 : 0);
    if (characters > MEASURE_MOST)
        proof_found(p, RULE_MEASURE, item, "%ld characters", characters);
}

/* ---- G30, A59 ---- */

static void line_judge(struct proofing *p, const struct page_item *item)
{
    if (item->stroke == INK_NONE || item->stroke == INK_WHITE)
        return;
    proof_measured(p, 1);
    if (item->line_width < STROKE_LEAST)
        proof_found(p, RULE_LINE_WIDTH, item, "%s mm", mm_words(p->arena, item->line_width));
}

/* From the line up to the nearest ink above it. */
static void blank_judge(struct proofing *p, size_t i)
{
    const struct page_item *blank = &p->page->items[i];
    mpt free = p->page->height;
    if (blank->part != PART_BLANK)
        return;
    for (size_t j = 0; j < p->page->count; j++) {
        const struct page_item *item = &p->page->items[j];
        bool ink = is_text(item) || item->kind == PAGE_LINE;
        bool above = FOOT_OF(p->ink[j]) <= p->ink[i].y;
        bool over = p->ink[j].x < RIGHT_OF(p->ink[i]) && RIGHT_OF(p->ink[j]) > p->ink[i].x;
        if (ink && above && over && p->ink[i].y - FOOT_OF(p->ink[j]) < free)
            free = p->ink[i].y - FOOT_OF(p->ink[j]);
    }
    proof_measured(p, 1);
    if (free < BLANK_LEAST)
        proof_found(p, RULE_BLANKS, blank, "%s mm to what stands above",
                    mm_words(p->arena, free));
}

/* ---- G18 ---- */

void proof_glyphs(struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (item->kind != PAGE_TEXT)
            continue;
        proof_measured(p, 1);
        if (item->run == NULL || item->run->count == 0)
            proof_found(p, RULE_GLYPHS, item, "words without any letter");
        for (size_t g = 0; item->run != NULL && g < item->run->count; g++)
            if (item->run->glyphs[g].id == 0)
                proof_found(p, RULE_GLYPHS, item, "letter %zu has no shape", g + 1);
    }
}

/* ---- all ---- */

void proof_sizes(struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        line_judge(p, item);
        blank_judge(p, i);
        if (!is_text(item))
            continue;
        proof_measured(p, 1);
        floor_judge(p, item);
        leading_judge(p, i);
        measure_judge(p, i);
    }
    for (int role = 0; role < ROLE_COUNT; role++)
        aim_judge(p, (enum page_role)role);
    faces_judge(p);
    tiers_judge(p);
}
