/* leaf.c - a card on the front and the back of one leaf: what to do on the front, boxes, plan and
 * call on the back (room: layout). */
#include "boxes.h"
#include "call.h"
#include "measures.h"
#include "pages.h"
#include "steps.h"
#include "words.h"

enum leaf_side { LEAF_BOTH, LEAF_FRONT, LEAF_BACK };

/* On which side each block stands. */
static const enum leaf_side side_of[BLOCK_COUNT] = {
    [BLOCK_SIGNS] = LEAF_FRONT, [BLOCK_CALL_LINE] = LEAF_FRONT, [BLOCK_STEPS] = LEAF_FRONT,
    [BLOCK_PLAN] = LEAF_BACK, [BLOCK_DECISION] = LEAF_BACK, [BLOCK_NEVER] = LEAF_BACK,
    [BLOCK_CAUTIONS] = LEAF_BACK, [BLOCK_LOCAL_RULES] = LEAF_BACK,
    [BLOCK_CONTACT] = LEAF_BACK, [BLOCK_CALL] = LEAF_BACK};

/* Boxes that go to the front where the back has no room, the first before the others. */
static const enum block_key movable[] = {BLOCK_DECISION, BLOCK_NEVER, BLOCK_CAUTIONS,
                                         BLOCK_LOCAL_RULES};
#define MOVABLE (sizeof movable / sizeof *movable)

static bool is_on_front(const struct laying *laying, enum block_key key)
{
    for (size_t i = 0; i < laying->on_front; i++)
        if (movable[i] == key)
            return true;
    return side_of[key] == LEAF_FRONT;
}

/* ---- splitting ---- */

/* Called by the card's own number and which side it is: "Card 3, front". */
static void side_title_set(struct sheet *sheet, enum word side, struct arena *arena)
{
    struct title_facts *title = arena_alloc(arena, sizeof *title);
    *title = *sheet_title(sheet);
    title->number = words_fill(sheet->words, arena, side, "card", title->number, NULL);
    page_facts_set(sheet, BLOCK_TITLE, (union block_facts){.title = title});
    sheet->name = words_fill(sheet->words, arena, side, "card", sheet->name, NULL);
}

/* Who calls when, and that the words for it are overleaf. */
static void overleaf_tell(struct sheet *sheet, struct arena *arena)
{
    struct card_text *line = arena_alloc(arena, sizeof *line);
    *line = *sheet_text(sheet, BLOCK_CALL_LINE);
    if (text_empty(line->text) || sheet_block(sheet, BLOCK_CALL) == NULL)
        return;
    line->text = words_fill(sheet->words, arena, WORD_LEAF_CALL, "line", line->text, NULL);
    page_facts_set(sheet, BLOCK_CALL_LINE, (union block_facts){.text = line});
}

static const struct sheet *side_make(const struct laying *laying, const struct sheet *whole,
                                     enum leaf_side side, struct arena *arena)
{
    struct sheet *sheet = page_sheet(whole, &(struct page_place){.count = 1}, arena);
    overleaf_tell(sheet, arena);
    for (enum block_key key = BLOCK_NONE; key < BLOCK_COUNT; key++)
        if (side_of[key] != LEAF_BOTH && (side == LEAF_FRONT) != is_on_front(laying, key))
            page_block_remove(sheet, key);
    side_title_set(sheet, side == LEAF_FRONT ? WORD_LEAF_FRONT : WORD_LEAF_BACK, arena);
    return sheet;
}

size_t leaf_split(struct laying *laying, struct pen *pen)
{
    card_split(laying, pen);
    const struct sheet *whole = laying->sheets[0];
    laying->sheets[0] = side_make(laying, whole, LEAF_FRONT, pen->arena);
    laying->sheets[1] = side_make(laying, whole, LEAF_BACK, pen->arena);
    laying->templates[1] = TEMPLATE_CARD_BACK;
    return 2;
}

/* What the back has no room for goes to the front before anything yields. */
bool leaf_lessen(struct laying *laying)
{
    bool moved = laying->full[1] && laying->on_front < MOVABLE;
    while (moved && laying->on_front < MOVABLE &&
           sheet_block(laying->whole, movable[laying->on_front]) == NULL)
        laying->on_front++;
    if (moved && laying->on_front < MOVABLE)
        laying->on_front++;
    return moved || rank_lessen(laying);
}

/* ---- the front ---- */

static void front_tell(struct pen *pen, const struct laid_steps *steps, mpt over)
{
    if (steps->excess > 0 && !steps_excess_tell(pen, steps))
        pen_too_long(pen, steps->excess_at, steps->excess,
                     "shorten spot, how or name of this entry", "a line of the steps");
    if (over <= 0)
        return;
    struct steps_cuts cuts = steps_cuts_find(pen, steps, over);
    bool cut = cuts.words != NULL;
    pen_too_long(pen, cut ? cuts.origin : longest_step_place(pen->sheet), over,
                 cut ? cuts.words : steps_remedy(pen), "the block of steps");
}

bool card_front_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct frame frame = frame_make(pen->paper, TEMPLATE_CARD_FRONT, &shared->needs);
    struct area area = frame.at[AREA_LEFT];
    struct laid_boxes below = boxes_lay(trial, size_rule(pen->paper, ROLE_BOX).floor, area.width);
    area.height -= below.height;
    struct laid_steps steps = steps_fit(trial, area);
    mpt over = steps.height - area.height;
    bool kept = budget_kept(pen);
    if (over > 0 || steps.excess > 0) {
        front_tell(pen, &steps, over);
        return false;
    }
    steps_place(pen, &steps, area);
    boxes_place(pen, &below, area.x, area.y + area.height + BOX_GAP);
    return kept;
}

/* ---- the back ---- */

struct laid_back {
    struct laid_panel panel;
    struct frame frame;
    struct laid_boxes boxes;
    mpt over;                 /* <= 0: it fits */
};

struct box_column { const struct pen *pen; struct area area; struct laid_boxes boxes; };

static bool boxes_have_room(void *of, mpt size)
{
    struct box_column *column = of;
    column->boxes = boxes_lay(column->pen, size, column->area.width);
    return column->boxes.height <= column->area.height;
}

/* Boxes take the largest size that has room beside the plan. */
static void back_boxes_fit(const struct pen *trial, struct laid_back *back)
{
    struct box_column column = {.pen = trial, .area = back->frame.at[AREA_LEFT]};
    struct size_rule rule = size_rule(trial->paper, ROLE_BOX);
    boxes_have_room(&column, size_that_fits(rule, SIZE_STEP, boxes_have_room, &column));
    back->boxes = column.boxes;
    mpt plan = plan_heights().floor, boxes = back->boxes.height;
    back->over = (plan > boxes ? plan : boxes) - column.area.height;
}

static struct laid_back back_at(const struct pen *trial, const struct page_needs *shared,
                                mpt script_size)
{
    struct page_needs needs = *shared;
    struct laid_back back = {.panel = {.size = script_size}};
    if (sheet_block(trial->sheet, BLOCK_CALL) != NULL)
        back.panel = panel_lay(trial, script_size, safe_width(trial->paper));
    needs.height[AREA_PANEL] = back.panel.height;
    needs.contact_yielded = sheet_block(trial->sheet, BLOCK_CONTACT) == NULL;
    back.frame = frame_make(trial->paper, TEMPLATE_CARD_BACK, &needs);
    back_boxes_fit(trial, &back);
    return back;
}

static struct laid_back back_fit(const struct pen *trial, const struct page_needs *shared)
{
    struct size_rule script = size_rule(trial->paper, ROLE_SCRIPT);
    for (mpt size = script.aim; size > script.floor; size -= SIZE_STEP) {
        struct laid_back back = back_at(trial, shared, size);
        if (back.over <= 0)
            return back;
    }
    return back_at(trial, shared, script.floor);
}

static void back_tell(struct pen *pen, const struct laid_back *back)
{
    const struct warnings_facts *rules = sheet_warnings(pen->sheet, BLOCK_LOCAL_RULES);
    bool ruled = rules->count > 0;
    pen_too_long(pen, ruled ? rules->items[0].origin : pen->sheet->boat->facts.name.place,
                 back->over,
                 ruled ? "shorten the local rules for this card"
                       : "give a short name_spoken and looks: a call with fewer lines makes room",
                 "the back of the card");
}

bool card_back_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct laid_back back = back_fit(trial, &shared->needs);
    struct area left = back.frame.at[AREA_LEFT];
    if (back.over > 0) {
        back_tell(pen, &back);
        return false;
    }
    plan_place(pen, back.frame.at[AREA_RIGHT]);
    boxes_place(pen, &back.boxes, left.x, left.y);
    foot_blocks_place(pen, &back.panel, &back.frame);
    return true;
}
