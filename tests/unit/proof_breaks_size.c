/* proof_breaks_size.c - pages whose type or lines are too small, too close or without a
 * shape (rules G4, G5, G6, G12 letters, G18, G30, A59): see proof_case.h. */
#include <string.h>

#include "proof_case.h"
#include "type/face_private.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))
#define PT(points) ((mpt)((points) * 1000.0))

/* ---- G4: floors ---- */

static void title_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_TITLE, ROLE_TITLE, 0), broken ? PT(31.5) : PT(32));
}

static void boat_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_TITLE, ROLE_BOAT, 0), broken ? PT(11.5) : PT(12));
}

static void signs_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_SIGNS, ROLE_SIGNS, 0), broken ? PT(11.5) : PT(12));
}

static void berth_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_ANCHOR, ROLE_BERTH, 0), broken ? PT(11.9) : PT(12));
}

static void call_line_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_CALL_LINE, ROLE_CALL_LINE, 0), broken ? PT(11.9) : PT(12));
}

static void headline_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_STEPS, ROLE_HEADLINE, 0), broken ? PT(15.5) : PT(16));
}

static void row_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_STEPS, ROLE_ROW, 1), broken ? PT(11.75) : PT(12));
}

static void box_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_NEVER, ROLE_BOX, 0), broken ? PT(11.5) : PT(12));
}

static void contact_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_CONTACT, ROLE_CONTACT, 0), broken ? PT(11) : PT(12));
}

static void script_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_CALL, ROLE_SCRIPT, 3), broken ? PT(11.5) : PT(12));
}

static void footer_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_FOOTER, ROLE_FOOTER, 0), broken ? PT(7.5) : PT(8));
}

static void code_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_FOOTER, ROLE_CODE, 0), broken ? PT(7.5) : PT(8));
}

static void source_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_CAUTIONS, ROLE_SOURCE_TAG, 0), broken ? PT(7) : PT(8));
}

static void strip_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_MARK, ROLE_MARK, 0), broken ? PT(8) : PT(9));
}

static void plan_tag_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0), broken ? PT(8.5) : PT(9));
}

static void plan_name_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_PLAN, ROLE_PLAN_LABEL, 0), broken ? PT(8.5) : PT(9));
}

static void number_small(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_STEPS, ROLE_NUMBER, 0), broken ? PT(13) : PT(14));
}

/* The size is right, but the face's own letters are too low to be read from there. */
static struct faces *other_faces(struct proof_try *try)
{
    struct faces *faces = arena_alloc(try->arena, sizeof *faces);
    memcpy(faces, try->faces, sizeof *faces);
    try->faces = faces;
    return faces;
}

static void face_with_low_letters(struct proof_try *try, bool broken)
{
    struct face_metrics *metrics = &other_faces(try)->of[FACE_TEXT].metrics;
    metrics->x_height = metrics->units_per_em * (broken ? 47 : 53) / 100;
}

static void face_with_low_capitals(struct proof_try *try, bool broken)
{
    struct face_metrics *metrics = &other_faces(try)->of[FACE_BOLD].metrics;
    metrics->cap_height = metrics->units_per_em * (broken ? 60 : 72) / 100;
}

/* Everything else far above its aim. */
static void title_below_aim(struct proof_try *try, bool broken)
{
    item_resize(try, try_text(try, BLOCK_TITLE, ROLE_TITLE, 0), broken ? PT(39) : PT(40));
    for (size_t i = 0; i < try->page.count; i++) {
        struct page_item *item = &try->items[i];
        bool other = item->kind == PAGE_TEXT && item->role != ROLE_TITLE;
        if (other)
            item_resize(try, item, PT(60));
    }
}

static void face_with_short_letters(struct proof_try *try, bool broken)
{
    struct face_metrics *metrics = &other_faces(try)->of[FACE_TEXT].metrics;
    metrics->x_height = metrics->units_per_em * (broken ? 495 : 525) / 1000;
}

static void face_that_leans(struct proof_try *try, bool broken)
{
    other_faces(try)->of[FACE_BOLD].metrics.italic_angle = broken ? -12 : 0;
}

/* ---- G5 ---- */

static void rows_as_tall_as_headlines(struct proof_try *try, bool broken)
{
    mpt headline = try_text(try, BLOCK_STEPS, ROLE_HEADLINE, 0)->run->size;
    item_resize(try, try_text(try, BLOCK_STEPS, ROLE_ROW, 1),
                broken ? headline * 92 / 100 : headline * 7 / 8);
}

static void words_in_the_face_of_codes(struct proof_try *try, bool broken)
{
    item_face(try, try_text(try, BLOCK_STEPS, ROLE_ROW, 1), broken ? FACE_CODE : FACE_BOLD);
}

static void code_in_the_face_of_words(struct proof_try *try, bool broken)
{
    item_face(try, try_text(try, BLOCK_FOOTER, ROLE_CODE, 0), broken ? FACE_BOLD : FACE_CODE);
}

/* ---- G6 ---- */

/* The next line of the decision's question comes nearer, or goes away. */
static void lines_too_close(struct proof_try *try, bool broken)
{
    struct page_item *line = try_text(try, BLOCK_DECISION, ROLE_BOX, 1);
    struct page_item *first = try_text(try, BLOCK_DECISION, ROLE_BOX, 0);
    mpt share = broken ? 113 : 116;
    item_move(line, 0, first->baseline + first->run->size / 100 * share - line->baseline);
}

static void lines_too_far(struct proof_try *try, bool broken)
{
    struct page_item *line = try_text(try, BLOCK_DECISION, ROLE_BOX, 1);
    struct page_item *first = try_text(try, BLOCK_DECISION, ROLE_BOX, 0);
    mpt share = broken ? 153 : 149;
    item_move(line, 0, first->baseline + first->run->size / 100 * share - line->baseline);
}

static void line_too_long(struct proof_try *try, bool broken)
{
    struct page_item *line = try_text(try, BLOCK_DECISION, ROLE_BOX, 1);
    line->paragraph = 4711;
    item_say(try, line, broken ? "Fifty-six letters are one too many for the eye to follow"
                               : "Fifty-five letters are as many as an eye can follow now");
}

/* ---- G18 ---- */

static void letter_without_a_shape(struct proof_try *try, bool broken)
{
    struct page_item *item = try_saying(try, "Engine stop");
    struct run *run = arena_alloc(try->arena, sizeof *run);
    struct glyph *glyphs = arena_array(try->arena, item->run->count, sizeof *glyphs);
    memcpy(glyphs, item->run->glyphs, item->run->count * sizeof *glyphs);
    *run = *item->run;
    run->glyphs = glyphs;
    glyphs[3].id = broken ? 0 : glyphs[3].id;
    item->run = run;
}

static void words_without_letters(struct proof_try *try, bool broken)
{
    struct page_item *item = try_saying(try, "Engine stop");
    struct run *run = arena_alloc(try->arena, sizeof *run);
    *run = *item->run;
    run->count = broken ? 0 : run->count;
    item->run = run;
}

/* ---- G30, A59 ---- */

static void line_thin(struct proof_try *try, bool broken)
{
    line_add(try, (struct point){MM(20), MM(270)}, (struct point){MM(40), MM(270)}, INK_BLACK,
             broken ? MM(0.3) : MM(0.35));
}

static void frame_thin(struct proof_try *try, bool broken)
{
    try_thing(try, BLOCK_NEVER, PAGE_BOX, 0)->line_width = broken ? MM(0.25) : MM(0.35);
}

static void blank_low(struct proof_try *try, bool broken)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].part == PART_BLANK) {
            item_move(&try->items[i], 0, broken ? -MM(1.2) : -MM(0.1));
            return;
        }
}

/* ---- all ---- */

static const struct proof_break rows[] = {
    {RULE_SIZE_FLOOR, "title", "engine_fire", title_small},
    {RULE_SIZE_FLOOR, "boat", "engine_fire", boat_small},
    {RULE_SIZE_FLOOR, "signs", "engine_fire", signs_small},
    {RULE_SIZE_FLOOR, "berth and anchor", "engine_fire", berth_small},
    {RULE_SIZE_FLOOR, "call line", "engine_fire", call_line_small},
    {RULE_SIZE_FLOOR, "headline", "engine_fire", headline_small},
    {RULE_SIZE_FLOOR, "row", "engine_fire", row_small},
    {RULE_SIZE_FLOOR, "box", "engine_fire", box_small},
    {RULE_SIZE_FLOOR, "contact", "engine_fire", contact_small},
    {RULE_SIZE_FLOOR, "script", "engine_fire", script_small},
    {RULE_SIZE_FLOOR, "footer", "engine_fire", footer_small},
    {RULE_SIZE_FLOOR, "code", "engine_fire", code_small},
    {RULE_SIZE_FLOOR, "source", "galley_fire", source_small},
    {RULE_SIZE_FLOOR, "strip", "engine_fire", strip_small},
    {RULE_SIZE_FLOOR, "tag on the plan", "engine_fire", plan_tag_small},
    {RULE_SIZE_FLOOR, "name on the plan", "engine_fire", plan_name_small},
    {RULE_SIZE_FLOOR, "number", "engine_fire", number_small},
    {RULE_SIZE_FLOOR, "face with low letters", "engine_fire", face_with_low_letters},
    {RULE_SIZE_FLOOR, "face with low capitals", "engine_fire", face_with_low_capitals},
    {RULE_SIZE_AIM, "title", "engine_fire", title_below_aim},
    {RULE_FACE_PROPORTIONS, "short letters", "engine_fire", face_with_short_letters},
    {RULE_ITALIC, "a face that leans", "engine_fire", face_that_leans},
    {RULE_TIERS, "rows as headlines", "engine_fire", rows_as_tall_as_headlines},
    {RULE_FACES, "words as codes", "engine_fire", words_in_the_face_of_codes},
    {RULE_FACES, "code as words", "engine_fire", code_in_the_face_of_words},
    {RULE_LEADING, "close", "engine_fire", lines_too_close},
    {RULE_LEADING, "far", "engine_fire", lines_too_far},
    {RULE_MEASURE, "long line", "engine_fire", line_too_long},
    {RULE_GLYPHS, "letter without shape", "engine_fire", letter_without_a_shape},
    {RULE_GLYPHS, "words without letters", "engine_fire", words_without_letters},
    {RULE_LINE_WIDTH, "line", "engine_fire", line_thin},
    {RULE_LINE_WIDTH, "frame", "engine_fire", frame_thin},
    {RULE_BLANKS, "low", "engine_fire", blank_low},
};

const struct proof_breaks breaks_size = {rows, COUNT_OF(rows)};
