/* card_page.c - the page of a card: its steps on the left, plan and boxes on the right, the
 * call panel below; which sizes they take, and what is told where they do not fit (room:
 * layout). */
#include "boat_slots.h"
#include "boxes.h"
#include "call.h"
#include "pages.h"
#include "promise.h"
#include "steps.h"

/* ---- sizes ---- */

struct card_sizes {
    struct laid_steps steps;
    struct laid_boxes boxes;
    mpt left_over, right_over;  /* what does not fit at the floor; <= 0: it fits */
};

struct right_column {
    const struct pen *pen;
    struct area area;
    enum box_form form;
    struct laid_boxes boxes;
};

static bool boxes_leave_room(void *of, mpt size)
{
    struct right_column *column = of;
    column->boxes = boxes_lay(column->pen, (struct box_measure){size, column->area.width,
                                                                column->form});
    return column->boxes.height + plan_heights(column->pen).aim <= column->area.height;
}

/* Boxes take the largest size that leaves the plan what it aims at; at the floor
 * the plan yields, down to its own floor. */
static void boxes_fit(const struct pen *pen, struct right_column *right,
                      struct card_sizes *sizes)
{
    struct size_rule rule = size_rule(pen->paper, ROLE_BOX);
    boxes_leave_room(right, size_that_fits(rule, SIZE_STEP, boxes_leave_room, right));
    sizes->boxes = right->boxes;
    sizes->right_over = right->boxes.height + plan_heights(pen).floor - right->area.height;
}

static void steps_column_fit(const struct pen *pen, const struct frame *frame,
                             struct card_sizes *sizes)
{
    struct area left = frame->at[AREA_LEFT];
    sizes->steps = steps_fit(pen, left);
    sizes->left_over = sizes->steps.height - left.height;
}

static bool sizes_hold(const struct card_sizes *sizes)
{
    return sizes->left_over <= 0 && sizes->right_over <= 0 && sizes->steps.excess <= 0;
}

/* A card with its call panel at one size. */
struct laid_card {
    struct laid_panel panel;
    struct frame frame;
    struct card_sizes sizes;
};

/* What a card is tried with. */
struct card_way {
    enum box_form boxes;
    mpt script;                 /* size of the call panel's type */
};

/* The tries of one card, a size of the panel's type each: panel and steps do not hang on the
 * boxes. */
#define SCRIPT_SIZES_MOST 8
struct card_tries {
    const struct pen *trial;
    const struct page_needs *shared;
    mpt script[SCRIPT_SIZES_MOST];
    struct laid_card *at[SCRIPT_SIZES_MOST];
    size_t count;
};

static void panel_and_steps_lay(const struct card_tries *tries, struct laid_card *card, mpt script)
{
    const struct pen *trial = tries->trial;
    struct page_needs needs = *tries->shared;
    card->panel.size = script;
    if (sheet_block(trial->sheet, BLOCK_CALL) != NULL)
        card->panel = panel_lay(trial, script, safe_width(trial->paper));
    needs.height[AREA_PANEL] = card->panel.height;
    needs.contact_yielded = sheet_block(trial->sheet, BLOCK_CONTACT) == NULL;
    card->frame = frame_make(trial->paper, TEMPLATE_CARD, &needs);
    steps_column_fit(trial, &card->frame, &card->sizes);
}

/* With panel and steps as they are with that size of script. */
static const struct laid_card *card_of_script(struct card_tries *tries, mpt script)
{
    for (size_t i = 0; i < tries->count; i++)
        if (tries->script[i] == script)
            return tries->at[i];
    promise(tries->count < SCRIPT_SIZES_MOST);
    struct laid_card *card = arena_alloc(tries->trial->arena, sizeof *card);
    panel_and_steps_lay(tries, card, script);
    tries->script[tries->count] = script;
    tries->at[tries->count++] = card;
    return card;
}

static struct laid_card card_at(struct card_tries *tries, struct card_way way)
{
    struct laid_card card = *card_of_script(tries, way.script);
    struct right_column right = {.pen = tries->trial, .area = card.frame.at[AREA_RIGHT],
                                 .form = way.boxes};
    boxes_fit(tries->trial, &right, &card.sizes);
    return card;
}

/* The size of the panel yields to that of rows, down to two thirds of its way; then rows and
 * headlines go to their floors; then the panel goes to its own. */
static struct laid_card panel_fit(struct card_tries *tries, enum box_form boxes)
{
    const struct paper *paper = tries->trial->paper;
    struct size_rule script = size_rule(paper, ROLE_SCRIPT);
    mpt third = (script.aim - script.floor) / 3, row = size_rule(paper, ROLE_ROW).aim;
    for (mpt size = script.aim; size > script.floor + third; size -= third) {
        struct laid_card card = card_at(tries, (struct card_way){boxes, size});
        if (sizes_hold(&card.sizes) && card.sizes.steps.sizes.row >= row)
            return card;
    }
    struct card_way way = {boxes, script.floor + third};
    struct laid_card card = card_at(tries, way);
    way.script = script.floor;
    return sizes_hold(&card.sizes) ? card : card_at(tries, way);
}

/* What boxes go without goes when all sizes are at their floors. */
static struct laid_card card_fit(const struct pen *trial, const struct page_needs *shared)
{
    struct card_tries tries = {.trial = trial, .shared = shared};
    struct laid_card card = panel_fit(&tries, BOXES_WHOLE);
    for (int form = BOXES_WHOLE + 1; form < BOX_FORM_COUNT && card.sizes.right_over > 0; form++)
        card = panel_fit(&tries, (enum box_form)form);
    return card;
}

/* ---- what does not fit ---- */

/* What is told of a block that has no room. */
struct block_told {
    mpt over;
    struct place at;
    const char *remedy, *what;
};

/* The cause may be a line of the call panel that takes the room. */
static void block_tell(struct pen *pen, const struct laid_card *card,
                       const struct block_told *told)
{
    const struct card_text *line = card->panel.longest;
    if (line != NULL)
        pen_too_long(pen, line->origin, told->over, "shorten these words on working the radio",
                     "a line of the call panel");
    else
        pen_too_long(pen, told->at, told->over, told->remedy, told->what);
}

/* A line of the base is the first to be shortened. */
static void right_tell(struct pen *pen, const struct laid_card *card)
{
    const struct sheet *sheet = pen->sheet;
    mpt over = card->sizes.right_over;
    const struct block_told told = {
        over, sheet->boat->facts.name.place,
        "give a short name_spoken and looks: a call with fewer lines makes room",
        "the right column"};
    if (sheet_warnings(sheet, BLOCK_OWN_LINES)->count > 0)
        pen_too_long(pen, sheet_warnings(sheet, BLOCK_OWN_LINES)->items[0].origin, over,
                     "shorten the lines of the base for this card", "the right column");
    else
        block_tell(pen, card, &told);
}

/* Fewer letters of some rows, where that is enough; else less gear. */
static void left_tell(struct pen *pen, const struct laid_card *card)
{
    mpt over = card->sizes.left_over;
    struct steps_cuts cuts = steps_cuts_find(pen, &card->sizes.steps, over);
    struct block_told told = {over, cuts.origin, cuts.words, "the block of steps"};
    if (cuts.words == NULL) {
        told.at = longest_step_place(pen->sheet);
        told.remedy = steps_remedy(pen);
    }
    block_tell(pen, card, &told);
}

/* What is too long is mended where the words stand: that is where messages point. */
static bool fit_told(struct pen *pen, const struct laid_card *card)
{
    const struct card_sizes *sizes = &card->sizes;
    const struct laid_steps *steps = &sizes->steps;
    if (steps->excess > 0 && !steps_excess_tell(pen, steps))
        pen_too_long(pen, steps->excess_at, steps->excess,
                     "shorten spot, how or name of this entry", "a line of the steps");
    if (sizes->left_over > 0)
        left_tell(pen, card);
    if (sizes->right_over > 0)
        right_tell(pen, card);
    return sizes_hold(sizes);
}

static void body_place(struct pen *pen, const struct laid_card *card)
{
    struct area right = card->frame.at[AREA_RIGHT], plan = right;
    mpt gap = plan_heights(pen).gap;
    plan.height -= card->sizes.boxes.height + gap;
    steps_place(pen, &card->sizes.steps, card->frame.at[AREA_LEFT]);
    plan_place(pen, plan);
    boxes_place(pen, &card->sizes.boxes, right.x, plan.y + plan.height + gap);
}

void foot_blocks_place(struct pen *pen, const struct laid_panel *panel,
                       const struct frame *frame)
{
    contact_place(pen, frame->at[AREA_CONTACT]);
    if (sheet_block(pen->sheet, BLOCK_CALL) != NULL)
        panel_place(pen, panel, frame->at[AREA_PANEL]);
}

bool card_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct laid_card card = card_fit(trial, &shared->needs);
    bool fits = fit_told(pen, &card);
    if (!budget_kept(pen) || !fits)
        return false;
    body_place(pen, &card);
    foot_blocks_place(pen, &card.panel, &card.frame);
    return true;
}
