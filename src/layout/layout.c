/* layout.c - fitting: which sizes, for the set and for each card (room: layout).
 *
 * What all cards of a set share (height of the signs, of the call panel) is
 * found first, at the largest size at which every card still fits; then each
 * card takes the largest sizes of its own. */
#include "boxes.h"
#include "call.h"

#define SCRATCH_LIMIT ((size_t)512 * 1024 * 1024)

/* What cards share, and which cards cannot fit whatever is done: those do not
 * make the others smaller. */
struct shared {
    bool *hopeless;
    mpt when_size, script_size;
    struct page_needs needs;     /* heights of signs and call panel */
};

struct fitting {
    const struct layout_input *input;
    struct arena *arena;         /* for the pages */
    struct arena *scratch;       /* for trials, thrown away */
    struct problems *problems;
};

static bool wanted(const struct fitting *fitting, const struct card *card)
{
    return !card->held || fitting->input->draft;
}

static struct pen pen_for(const struct fitting *fitting, const struct card *card,
                          struct problems *problems)
{
    return (struct pen){.faces = fitting->input->faces, .arena = fitting->arena,
                        .problems = problems, .card = card, .paper = fitting->input->paper};
}

static struct pen trial_for(const struct fitting *fitting, const struct card *card)
{
    struct pen pen = pen_for(fitting, card, fitting->problems);
    pen.arena = fitting->scratch;
    return pen;
}

/* ---- one card's sizes ---- */

struct card_sizes {
    struct laid_steps steps;
    struct laid_boxes boxes;
    mpt left_over, right_over;  /* what does not fit at the floor; <= 0: it fits */
};

/* From floor to aim in sixteen steps. */
#define NOTCHES 16

static mpt size_at(const struct paper *paper, enum page_role role, int notch)
{
    struct size_rule rule = size_rule(paper, role);
    return rule.floor + (rule.aim - rule.floor) * notch / NOTCHES;
}

/* Headline and rows shrink together. */
static struct step_sizes steps_at(const struct paper *paper, int notch)
{
    return (struct step_sizes){size_at(paper, ROLE_HEADLINE, notch),
                               size_at(paper, ROLE_ROW, notch)};
}

static void steps_fit(const struct pen *pen, const struct frame *frame,
                      struct card_sizes *sizes)
{
    for (int notch = NOTCHES; notch >= 0; notch--) {
        sizes->steps = steps_lay(pen, steps_at(pen->paper, notch), frame->at[AREA_LEFT].width);
        sizes->left_over = sizes->steps.height - frame->at[AREA_LEFT].height;
        if (sizes->left_over <= 0 && sizes->steps.excess <= 0)
            return;
    }
}

struct right_column { const struct pen *pen; struct area area; };

static bool boxes_leave_room(void *of, mpt size)
{
    const struct right_column *column = of;
    return boxes_lay(column->pen, size, column->area.width).height + plan_heights().aim <=
           column->area.height;
}

/* Boxes take the largest size that leaves the plan what it aims at; at the floor
 * the plan yields, down to its own floor. */
static void boxes_fit(const struct pen *pen, const struct frame *frame,
                      struct card_sizes *sizes)
{
    struct right_column right = {pen, frame->at[AREA_RIGHT]};
    mpt size = size_that_fits(size_rule(pen->paper, ROLE_BOX), SIZE_STEP, boxes_leave_room,
                              &right);
    sizes->boxes = boxes_lay(pen, size, right.area.width);
    sizes->right_over = sizes->boxes.height + plan_heights().floor - right.area.height;
}

static struct card_sizes card_fit(const struct fitting *fitting, const struct card *card,
                                  const struct frame *frame)
{
    struct card_sizes sizes = {.left_over = 0};
    struct pen pen = trial_for(fitting, card);
    steps_fit(&pen, frame, &sizes);
    boxes_fit(&pen, frame, &sizes);
    return sizes;
}

/* ---- what the set shares ---- */

static void marks_find(const struct fitting *fitting, struct shared *shared)
{
    for (size_t i = 0; i < fitting->input->set->count; i++)
        if (!text_empty(fitting->input->set->cards[i]->mark))
            shared->needs.marked = true;
}

static mpt signs_measure(const struct fitting *fitting, mpt size, mpt width)
{
    mpt height = 0;
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct card *card = fitting->input->set->cards[i];
        struct pen pen = trial_for(fitting, card);
        mpt own = wanted(fitting, card) ? when_height(&pen, size, width) : 0;
        height = own > height ? own : height;
    }
    return height;
}

static bool signs_take_one_line(void *of, mpt size)
{
    const struct fitting *fitting = of;
    mpt width = safe_width(fitting->input->paper);
    return signs_measure(fitting, size, width) <= line_pitch(ROLE_SIGNS, size);
}

/* One line for all if the floor allows it, else two. */
static void signs_fit(struct fitting *fitting, struct shared *shared)
{
    shared->when_size = size_that_fits(size_rule(fitting->input->paper, ROLE_SIGNS), SIZE_STEP,
                                       signs_take_one_line, fitting);
    shared->needs.height[AREA_WHEN] = signs_measure(fitting, shared->when_size,
                                                    safe_width(fitting->input->paper));
}

static mpt panels_measure(const struct fitting *fitting, mpt size, mpt width)
{
    mpt height = 0;
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct card *card = fitting->input->set->cards[i];
        struct pen pen = trial_for(fitting, card);
        if (!wanted(fitting, card) || !card->call.given)
            continue;
        mpt own = panel_lay(&pen, size, width).height;
        height = own > height ? own : height;
    }
    return height;
}

static bool sizes_hold(const struct card_sizes *sizes)
{
    return sizes->left_over <= 0 && sizes->right_over <= 0 && sizes->steps.excess <= 0;
}

/* Does the card fit the frame, with rows of this size or larger? */
static bool card_holds(const struct fitting *fitting, const struct card *card,
                       const struct page_needs *needs, mpt least_row)
{
    struct pen pen = trial_for(fitting, card);
    if (card->safety != NULL)
        return true;
    if (card->distress)
        return distress_fits(&pen, needs);
    struct frame frame = frame_make(fitting->input->paper, TEMPLATE_CARD, needs);
    struct card_sizes sizes = card_fit(fitting, card, &frame);
    return sizes_hold(&sizes) && sizes.steps.sizes.row >= least_row;
}

/* Steps keep pace with the script: neither is at its floor for the other's sake. */
static bool set_fits(const struct fitting *fitting, const struct shared *shared)
{
    const struct paper *paper = fitting->input->paper;
    struct size_rule script = size_rule(paper, ROLE_SCRIPT);
    mpt notch = (shared->script_size - script.floor) * NOTCHES / (script.aim - script.floor);
    mpt row = steps_at(paper, (int)notch).row;
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct card *card = fitting->input->set->cards[i];
        if (wanted(fitting, card) && !shared->hopeless[i] &&
            !card_holds(fitting, card, &shared->needs, row))
            return false;
    }
    return true;
}

static void panel_try(const struct fitting *fitting, struct shared *shared, mpt script_size)
{
    shared->script_size = script_size;
    shared->needs.height[AREA_PANEL] = panels_measure(fitting, script_size,
                                                      safe_width(fitting->input->paper));
}

static void hopeless_find(const struct fitting *fitting, struct shared *shared)
{
    panel_try(fitting, shared, size_rule(fitting->input->paper, ROLE_SCRIPT).floor);
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct card *card = fitting->input->set->cards[i];
        shared->hopeless[i] = wanted(fitting, card) &&
                              !card_holds(fitting, card, &shared->needs, 0);
    }
}

struct panel_fitting { const struct fitting *fitting; struct shared *shared; };

static bool set_fits_at(void *of, mpt size)
{
    const struct panel_fitting *panel = of;
    panel_try(panel->fitting, panel->shared, size);
    return set_fits(panel->fitting, panel->shared);
}

static void panel_fit(const struct fitting *fitting, struct shared *shared)
{
    struct panel_fitting panel = {fitting, shared};
    hopeless_find(fitting, shared);
    panel_try(fitting, shared, size_that_fits(size_rule(fitting->input->paper, ROLE_SCRIPT),
                                              SIZE_STEP, set_fits_at, &panel));
}

/* ---- one card ---- */

static enum template_key template_of(const struct card *card)
{
    if (card->safety != NULL)
        return TEMPLATE_SAFETY_PLAN;
    return card->distress ? TEMPLATE_DISTRESS : TEMPLATE_CARD;
}

static struct frame frame_of(const struct pen *pen, const struct shared *shared)
{
    return frame_make(pen->paper, template_of(pen->card), &shared->needs);
}

/* A block that is too long for want of room: the cause may be a line of the call
 * panel that takes it. */
static void block_told(struct pen *pen, const struct shared *shared, mpt over,
                       const char *remedy, const char *what)
{
    mpt width = frame_of(pen, shared).at[AREA_PANEL].width;
    const struct card_text *line = panel_lay(pen, shared->script_size, width).longest;
    if (line != NULL)
        pen_too_long(pen, line->origin, over, "shorten these words on working the radio",
                     "a line of the call panel");
    else
        pen_too_long(pen, pen->card->boat_record->facts.name.place, over, remedy, what);
}

/* A local rule is the first to be shortened. */
static void right_told(struct pen *pen, const struct shared *shared, mpt over)
{
    const struct card *card = pen->card;
    if (card->local_rule_count > 0)
        pen_too_long(pen, card->local_rules[0].origin, over,
                     "shorten the local rules for this card", "the right column");
    else
        block_told(pen, shared, over,
                   "give a short name_spoken and looks: a call with fewer lines makes room",
                   "the right column");
}

/* What is too long is mended where the words stand: that is where messages point. */
static bool fit_told(struct pen *pen, const struct shared *shared,
                     const struct card_sizes *sizes)
{
    const struct laid_steps *steps = &sizes->steps;
    if (steps->excess > 0 && !steps_excess_tell(pen, steps))
        pen_too_long(pen, steps->excess_at, steps->excess,
                     "shorten spot, how or name of this entry", "a line of the steps");
    if (sizes->left_over > 0)
        block_told(pen, shared, sizes->left_over, steps_remedy(pen), "the block of steps");
    if (sizes->right_over > 0)
        right_told(pen, shared, sizes->right_over);
    return sizes_hold(sizes);
}

static void body_place(struct pen *pen, const struct frame *frame,
                       const struct card_sizes *sizes)
{
    struct area right = frame->at[AREA_RIGHT], plan = right;
    mpt gap = plan_heights().gap;
    plan.height -= sizes->boxes.height + gap;
    steps_place(pen, &sizes->steps, frame->at[AREA_LEFT]);
    plan_place(pen, plan);
    boxes_place(pen, &sizes->boxes, right.x, plan.y + plan.height + gap);
}

static const struct page *page_of(const struct pen *pen)
{
    struct page *page = arena_alloc(pen->arena, sizeof *page);
    *page = (struct page){.card = pen->card->key, .title = pen->card->name,
                          .language = pen->card->language, .paper = pen->paper,
                          .width = pen->paper->width, .height = pen->paper->height,
                          .items = pen->items, .count = pen->count};
    return page;
}

/* The contact line and the call panel. */
static void foot_blocks_place(struct pen *pen, const struct shared *shared,
                              const struct frame *frame)
{
    struct area area = frame->at[AREA_PANEL];
    contact_place(pen, frame->at[AREA_CONTACT]);
    if (!pen->card->call.given)
        return;
    struct laid_panel panel = panel_lay(pen, shared->script_size, area.width);
    panel_place(pen, &panel, area);
}

/* False: there is more than the page holds. A word that is too long for its line, or has
 * a letter too many, fails the page alone. */
static bool card_place(struct pen *pen, const struct fitting *fitting,
                       const struct shared *shared, const struct frame *frame)
{
    if (pen->card->safety != NULL)
        return safety_place(pen, &shared->needs);
    if (pen->card->distress) {
        if (!distress_place(pen, &shared->needs))
            return false;
        foot_blocks_place(pen, shared, frame);
        return true;
    }
    struct card_sizes sizes = card_fit(fitting, pen->card, frame);
    if (!budget_kept(pen) || !fit_told(pen, shared, &sizes))
        return false;
    body_place(pen, frame, &sizes);
    foot_blocks_place(pen, shared, frame);
    return true;
}

/* Figures may be what is too long for a line: cards of steps may fit without them. */
static const struct page *card_layout(const struct fitting *fitting, const struct shared *shared,
                                      const struct card *card, bool *full)
{
    struct pen pen = pen_for(fitting, card, fitting->problems);
    struct frame frame = frame_of(&pen, shared);
    head_place(&pen, &frame, shared->when_size);
    bool fits = card_place(&pen, fitting, shared, &frame);
    *full = !fits || (pen.failed && card->safety == NULL);
    if (!fits)
        return NULL;
    foot_place(&pen, &frame);
    return pen.failed ? NULL : page_of(&pen);
}

const struct page *const *layout_set(const struct layout_input *input, struct arena *arena,
                                     struct problems *problems)
{
    struct fitting fitting = {input, arena, arena_new(SCRATCH_LIMIT), problems};
    struct shared shared = {.hopeless = arena_array(arena, input->set->count, sizeof(bool))};
    const struct page **pages = arena_array(arena, input->set->count, sizeof *pages);
    marks_find(&fitting, &shared);
    signs_fit(&fitting, &shared);
    panel_fit(&fitting, &shared);
    for (size_t i = 0; i < input->set->count; i++) {
        bool full = false;
        if (wanted(&fitting, input->set->cards[i]))
            pages[i] = card_layout(&fitting, &shared, input->set->cards[i], &full);
        if (input->full != NULL)
            input->full[i] = full;
    }
    arena_free(fitting.scratch);
    return pages;
}
