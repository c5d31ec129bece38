/* layout.c - fitting: which sizes, for the set and for each card (room: layout).
 *
 * What all cards of a set share (height of the signs, of the call panel) is
 * found first, at the largest size at which every card still fits; then each
 * card takes the largest sizes of its own. */
#include "layout_room.h"

#define SIZE_STEP 250
#define PLAN_GAP MM(0.8)
#define STEPS_MOST 8
#define SCRATCH_LIMIT ((size_t)512 * 1024 * 1024)

/* What cards share, and which cards cannot fit whatever is done: those do not
 * make the others smaller. */
struct shared {
    bool *hopeless;
    bool marked;
    mpt when_size, when_height;
    mpt script_size, panel_height;
    struct frame frame;
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

static struct sheet sheet_for(const struct fitting *fitting, const struct card *card,
                              struct problems *problems)
{
    return (struct sheet){.faces = fitting->input->faces, .arena = fitting->arena,
                          .problems = problems, .card = card, .block = "page"};
}

static struct sheet trial_for(const struct fitting *fitting, const struct card *card)
{
    struct sheet sheet = sheet_for(fitting, card, fitting->problems);
    sheet.arena = fitting->scratch;
    return sheet;
}

/* ---- one card's sizes ---- */

struct card_sizes {
    struct step_sizes steps;
    mpt box;
    mpt left_over, right_over;  /* what does not fit at the floor; <= 0: it fits */
    mpt row_excess;
    struct place row_at;
};

static mpt floor_of(enum page_role role)
{
    return size_rule(role)->floor;
}

static mpt aim_of(enum page_role role)
{
    return size_rule(role)->aim;
}

/* Headline and rows shrink together, from aim to floor in sixteen steps. */
static struct step_sizes steps_at(int notch)
{
    mpt headline = aim_of(ROLE_HEADLINE) - floor_of(ROLE_HEADLINE);
    mpt row = aim_of(ROLE_ROW) - floor_of(ROLE_ROW);
    return (struct step_sizes){floor_of(ROLE_HEADLINE) + headline * notch / 16,
                               floor_of(ROLE_ROW) + row * notch / 16};
}

static void steps_fit(const struct sheet *sheet, const struct frame *frame,
                      struct card_sizes *sizes)
{
    for (int notch = 16; notch >= 0; notch--) {
        sizes->steps = steps_at(notch);
        sizes->left_over = steps_height(sheet, sizes->steps, frame->left.width,
                                        &sizes->row_excess, &sizes->row_at) -
                           frame->left.height;
        if (sizes->left_over <= 0 && sizes->row_excess <= 0)
            return;
    }
}

/* Boxes take the largest size that leaves the plan what it aims at; at the floor
 * the plan yields, down to its own floor. */
static void boxes_fit(const struct sheet *sheet, const struct frame *frame,
                      struct card_sizes *sizes)
{
    mpt room = frame->right.height;
    for (sizes->box = aim_of(ROLE_BOX); sizes->box > floor_of(ROLE_BOX); sizes->box -= SIZE_STEP)
        if (boxes_height(sheet, sizes->box, frame->right.width) + PLAN_AIM <= room)
            break;
    sizes->right_over = boxes_height(sheet, sizes->box, frame->right.width) + PLAN_FLOOR - room;
}

static struct card_sizes card_fit(const struct fitting *fitting, const struct card *card,
                                  const struct frame *frame)
{
    struct card_sizes sizes = {.box = 0};
    struct sheet sheet = trial_for(fitting, card);
    steps_fit(&sheet, frame, &sizes);
    boxes_fit(&sheet, frame, &sizes);
    return sizes;
}

/* ---- what the set shares ---- */

static void marks_find(const struct fitting *fitting, struct shared *shared)
{
    for (size_t i = 0; i < fitting->input->set->count; i++)
        shared->marked = shared->marked || !text_empty(fitting->input->set->cards[i]->mark);
}

static void signs_measure(const struct fitting *fitting, mpt size, mpt width, mpt *height)
{
    *height = 0;
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct card *card = fitting->input->set->cards[i];
        struct sheet sheet = trial_for(fitting, card);
        mpt own = wanted(fitting, card) ? when_height(&sheet, size, width) : 0;
        *height = own > *height ? own : *height;
    }
}

/* One line for all if the floor allows it, else two. */
static void signs_fit(const struct fitting *fitting, struct shared *shared)
{
    mpt width = frame_make(0, 0, true).when.width;
    for (shared->when_size = aim_of(ROLE_SIGNS);; shared->when_size -= SIZE_STEP) {
        mpt line = shared->when_size / 100 * size_rule(ROLE_SIGNS)->leading;
        signs_measure(fitting, shared->when_size, width, &shared->when_height);
        if (shared->when_height <= line || shared->when_size <= floor_of(ROLE_SIGNS))
            return;
    }
}

static mpt panels_measure(const struct fitting *fitting, mpt size, mpt width)
{
    mpt height = 0;
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct card *card = fitting->input->set->cards[i];
        struct sheet sheet = trial_for(fitting, card);
        if (!wanted(fitting, card) || !card->call.given)
            continue;
        mpt own = panel_height(&sheet, size, width);
        height = own > height ? own : height;
    }
    return height;
}

static bool sizes_hold(const struct card_sizes *sizes)
{
    return sizes->left_over <= 0 && sizes->right_over <= 0 && sizes->row_excess <= 0;
}

/* Does the card fit the frame, with rows of this size or larger? */
static bool card_holds(const struct fitting *fitting, const struct card *card,
                       const struct frame *frame, mpt least_row)
{
    struct sheet sheet = trial_for(fitting, card);
    if (card->safety != NULL)
        return true;
    if (card->distress)
        return distress_fits(&sheet, frame);
    struct card_sizes sizes = card_fit(fitting, card, frame);
    return sizes_hold(&sizes) && sizes.steps.row >= least_row;
}

/* Steps keep pace with the script: neither is at its floor for the other's sake. */
static bool set_fits(const struct fitting *fitting, const struct shared *shared)
{
    mpt notch = (shared->script_size - floor_of(ROLE_SCRIPT)) * 16 /
                (aim_of(ROLE_SCRIPT) - floor_of(ROLE_SCRIPT));
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct card *card = fitting->input->set->cards[i];
        if (wanted(fitting, card) && !shared->hopeless[i] &&
            !card_holds(fitting, card, &shared->frame, steps_at((int)notch).row))
            return false;
    }
    return true;
}

static void frame_try(const struct fitting *fitting, struct shared *shared, mpt script_size)
{
    shared->script_size = script_size;
    shared->panel_height = panels_measure(fitting, script_size, frame_make(0, 0, true).panel.width);
    shared->frame = frame_make(shared->when_height, shared->panel_height, shared->marked);
}

static void hopeless_find(const struct fitting *fitting, struct shared *shared)
{
    frame_try(fitting, shared, floor_of(ROLE_SCRIPT));
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct card *card = fitting->input->set->cards[i];
        shared->hopeless[i] = wanted(fitting, card) &&
                              !card_holds(fitting, card, &shared->frame, 0);
    }
}

static void panel_fit(const struct fitting *fitting, struct shared *shared)
{
    hopeless_find(fitting, shared);
    for (mpt size = aim_of(ROLE_SCRIPT); size >= floor_of(ROLE_SCRIPT); size -= SIZE_STEP) {
        frame_try(fitting, shared, size);
        if (set_fits(fitting, shared))
            return;
    }
}

/* ---- one card ---- */

/* The number of the step with the most rows. */
static size_t longest_step(const struct card *card)
{
    size_t longest = 0;
    for (size_t i = 0; i < card->step_count; i++)
        if (card_step_rows(&card->steps[i]) > card_step_rows(&card->steps[longest]))
            longest = i;
    return longest + 1;
}

/* The entry of the record that the step's first line is about. */
static struct place step_place_told(const struct card *card, size_t number)
{
    const struct card_step *step = &card->steps[number - 1];
    for (size_t c = 0; step->table_count > step->row_count && c < TABLE_CELLS; c++)
        if (step->table[0].cells[c].name != NULL)
            return step->table[0].cells[c].origin;
    return step->row_count > 0 ? step->rows[0].origin : card->boat_record->facts.name.place;
}

/* What makes the longest step shorter. Gear at one place cannot be entered twice alike:
 * several pieces there are one entry with a count. */
static const char *rows_remedy(const struct sheet *sheet)
{
    size_t number = longest_step(sheet->card);
    const struct card_step *step = &sheet->card->steps[number - 1];
    if (step->table_count > step->row_count)
        return text_format(sheet->arena, "step %zu lists openings in %zu lines, port beside "
                           "starboard: enter those that stand side by side as one, with "
                           "`count`, one tag and a short name for all of them, such as in, "
                           "out\nrecord the side of each: openings without one have lines of "
                           "their own", number, step->table_count);
    return text_format(sheet->arena, "step %zu has the most rows (%zu): enter gear of one kind "
                       "at one place as one, with `count`", number, card_step_rows(step));
}

static bool budget_kept(struct sheet *sheet)
{
    const struct card *card = sheet->card;
    size_t rows = 0;
    for (size_t i = 0; i < card->step_count; i++)
        rows += card_step_rows(&card->steps[i]);
    if (rows <= CARD_ROWS_MOST && card->step_count <= STEPS_MOST)
        return true;
    sheet->failed = true;
    problem_add(sheet->problems, SEVERITY_ERROR,
                step_place_told(card, longest_step(card)), rows_remedy(sheet),
                "%s (%s): %zu steps and %zu rows, %d and %d at most", card->name,
                card->language, card->step_count, rows, STEPS_MOST, CARD_ROWS_MOST);
    return false;
}

static const char *steps_remedy(const struct sheet *sheet)
{
    return text_format(sheet->arena, "%s\n"
                       "a call with fewer lines makes room too: give a short name_spoken and looks",
                       rows_remedy(sheet));
}

/* A block that is too long for want of room: the cause may be a line of the call
 * panel that takes it. */
static void block_told(struct sheet *sheet, const struct shared *shared, mpt over,
                       const char *remedy, const char *what)
{
    const struct card_text *line = panel_longest(sheet, shared->script_size,
                                                 shared->frame.panel.width);
    if (line != NULL)
        sheet_too_long(sheet, line->origin, over, "shorten these words on working the radio",
                       "a line of the call panel");
    else
        sheet_too_long(sheet, sheet->card->boat_record->facts.name.place, over, remedy, what);
}

/* A local rule is the first to be shortened. */
static void right_told(struct sheet *sheet, const struct shared *shared, mpt over)
{
    const struct card *card = sheet->card;
    if (card->local_rule_count > 0)
        sheet_too_long(sheet, card->local_rules[0].origin, over,
                       "shorten the local rules for this card", "the right column");
    else
        block_told(sheet, shared, over,
                   "give a short name_spoken and looks: a call with fewer lines makes room",
                   "the right column");
}

/* What is too long is mended where the words stand: that is where messages point. */
static bool fit_told(struct sheet *sheet, const struct shared *shared,
                     const struct card_sizes *sizes)
{
    if (sizes->row_excess > 0 && !rows_tell(sheet, sizes->steps, shared->frame.left.width))
        sheet_too_long(sheet, sizes->row_at, sizes->row_excess,
                       "shorten spot, how or name of this entry", "a line of the steps");
    if (sizes->left_over > 0)
        block_told(sheet, shared, sizes->left_over, steps_remedy(sheet), "the block of steps");
    if (sizes->right_over > 0)
        right_told(sheet, shared, sizes->right_over);
    return sizes_hold(sizes);
}

static void body_place(struct sheet *sheet, const struct shared *shared,
                       const struct card_sizes *sizes)
{
    const struct frame *frame = &shared->frame;
    mpt boxes = boxes_height(sheet, sizes->box, frame->right.width);
    struct area plan = {frame->right.x, frame->right.y, frame->right.width,
                        frame->right.height - boxes - PLAN_GAP};
    steps_place(sheet, sizes->steps, frame->left);
    plan_place(sheet, plan);
    boxes_place(sheet, sizes->box, frame->right, plan.y + plan.height + PLAN_GAP);
    panel_place(sheet, shared->script_size, frame);
}

static const struct page *page_of(const struct sheet *sheet, const struct frame *frame)
{
    struct page *page = arena_alloc(sheet->arena, sizeof *page);
    *page = (struct page){.card = sheet->card->key, .title = sheet->card->name,
                          .language = sheet->card->language, .width = frame->paper.width,
                          .height = frame->paper.height, .items = sheet->items,
                          .count = sheet->count};
    return page;
}

/* False: there is more than the page holds. A word that is too long for its line, or has
 * a letter too many, fails the sheet alone. */
static bool card_place(struct sheet *sheet, const struct fitting *fitting,
                       const struct shared *shared)
{
    const struct frame *frame = &shared->frame;
    if (sheet->card->safety != NULL)
        return safety_place(sheet, frame);
    if (sheet->card->distress) {
        if (!distress_place(sheet, frame))
            return false;
        panel_place(sheet, shared->script_size, frame);
        return true;
    }
    struct card_sizes sizes = card_fit(fitting, sheet->card, frame);
    if (!budget_kept(sheet) || !fit_told(sheet, shared, &sizes))
        return false;
    body_place(sheet, shared, &sizes);
    return true;
}

/* Figures may be what is too long for a line: cards of steps may fit without them. */
static const struct page *card_layout(const struct fitting *fitting, const struct shared *shared,
                                      const struct card *card, bool *full)
{
    struct sheet sheet = sheet_for(fitting, card, fitting->problems);
    head_place(&sheet, &shared->frame, shared->when_size);
    bool fits = card_place(&sheet, fitting, shared);
    *full = !fits || (sheet.failed && card->safety == NULL);
    if (!fits)
        return NULL;
    foot_place(&sheet, &shared->frame);
    return sheet.failed ? NULL : page_of(&sheet, &shared->frame);
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
