/* layout.c - fitting: which sizes, for the set and for each card (room: layout).
 *
 * What all cards of a set share (height of the signs, of the call panel) is
 * found first, at the largest size at which every card still fits; then each
 * card takes the largest sizes of its own. */
#include "call.h"
#include "pages.h"

#define SCRATCH_LIMIT ((size_t)512 * 1024 * 1024)

/* Which sheets cannot fit whatever is done is kept: those do not make the others smaller. */
struct fitting {
    const struct layout_input *input;
    bool *hopeless;
    struct arena *arena;         /* for the pages */
    struct arena *scratch;       /* for trials, thrown away */
    struct problems *problems;
};

static bool wanted(const struct fitting *fitting, const struct sheet *sheet)
{
    return !sheet->held || fitting->input->draft;
}

static struct pen pen_for(const struct fitting *fitting, const struct sheet *sheet,
                          struct problems *problems)
{
    return (struct pen){.faces = fitting->input->faces, .arena = fitting->arena,
                        .problems = problems, .sheet = sheet, .paper = fitting->input->paper};
}

static struct pen trial_for(const struct fitting *fitting, const struct sheet *sheet)
{
    struct pen pen = pen_for(fitting, sheet, fitting->problems);
    pen.arena = fitting->scratch;
    return pen;
}

/* ---- what the set shares ---- */

static void marks_find(const struct fitting *fitting, struct shared *shared)
{
    for (size_t i = 0; i < fitting->input->set->count; i++)
        if (!text_empty(sheet_text(fitting->input->set->sheets[i], BLOCK_MARK)->text))
            shared->needs.marked = true;
}

static mpt signs_measure(const struct fitting *fitting, mpt size, mpt width)
{
    mpt height = 0;
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct sheet *sheet = fitting->input->set->sheets[i];
        struct pen pen = trial_for(fitting, sheet);
        if (!wanted(fitting, sheet))
            continue;
        struct paragraph when = when_lay(&pen, size, width);
        mpt own = paragraph_height(&when);
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
        const struct sheet *sheet = fitting->input->set->sheets[i];
        struct pen pen = trial_for(fitting, sheet);
        if (!wanted(fitting, sheet) || sheet_block(sheet, BLOCK_CALL) == NULL)
            continue;
        mpt own = panel_lay(&pen, size, width).height;
        height = own > height ? own : height;
    }
    return height;
}

static bool sheet_holds(const struct fitting *fitting, const struct sheet *sheet,
                        const struct page_needs *needs, mpt least_row)
{
    struct pen trial = trial_for(fitting, sheet);
    return template_works[template_of(sheet)].holds(&trial, needs, least_row);
}

/* Steps keep pace with the script: neither is at its floor for the other's sake. */
static bool set_fits(const struct fitting *fitting, const struct shared *shared)
{
    mpt row = row_beside_script(fitting->input->paper, shared->script_size);
    for (size_t i = 0; i < fitting->input->set->count; i++) {
        const struct sheet *sheet = fitting->input->set->sheets[i];
        if (wanted(fitting, sheet) && !fitting->hopeless[i] &&
            !sheet_holds(fitting, sheet, &shared->needs, row))
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
        const struct sheet *sheet = fitting->input->set->sheets[i];
        fitting->hopeless[i] = wanted(fitting, sheet) &&
                              !sheet_holds(fitting, sheet, &shared->needs, 0);
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

/* ---- one sheet ---- */

static const struct page *page_of(const struct pen *pen)
{
    struct page *page = arena_alloc(pen->arena, sizeof *page);
    *page = (struct page){.card = pen->sheet->id, .title = pen->sheet->name,
                          .language = pen->sheet->language, .paper = pen->paper,
                          .width = pen->paper->width, .height = pen->paper->height,
                          .items = pen->items, .count = pen->count};
    return page;
}

/* Figures may be what is too long for a line: cards of steps may fit without them. */
static const struct page *sheet_layout(const struct fitting *fitting, const struct shared *shared,
                                       const struct sheet *sheet, bool *full)
{
    const struct template_work *work = &template_works[template_of(sheet)];
    struct pen pen = pen_for(fitting, sheet, fitting->problems);
    struct pen trial = trial_for(fitting, sheet);
    struct frame frame = frame_make(pen.paper, template_of(sheet), &shared->needs);
    head_place(&pen, &frame, shared->when_size);
    bool fits = work->place(&pen, &trial, shared);
    *full = !fits || (pen.failed && work->fails_full);
    if (!fits)
        return NULL;
    foot_place(&pen, &frame);
    return pen.failed ? NULL : page_of(&pen);
}

const struct page *const *layout_set(const struct layout_input *input, struct arena *arena,
                                     struct problems *problems)
{
    struct fitting fitting = {.input = input,
                              .hopeless = arena_array(arena, input->set->count, sizeof(bool)),
                              .arena = arena, .scratch = arena_new(SCRATCH_LIMIT),
                              .problems = problems};
    struct shared shared = {.when_size = 0};
    const struct page **pages = arena_array(arena, input->set->count, sizeof *pages);
    marks_find(&fitting, &shared);
    signs_fit(&fitting, &shared);
    panel_fit(&fitting, &shared);
    for (size_t i = 0; i < input->set->count; i++) {
        bool full = false;
        if (wanted(&fitting, input->set->sheets[i]))
            pages[i] = sheet_layout(&fitting, &shared, input->set->sheets[i], &full);
        if (input->full != NULL)
            input->full[i] = full;
    }
    arena_free(fitting.scratch);
    return pages;
}
