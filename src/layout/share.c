/* share.c - what all sheets of a set share, so that the same blocks stand at the same place
 * on every page: the height of the signs and of the call panel (room: layout). Both are
 * found at the largest size of type at which every sheet still fits. A sheet that cannot fit
 * whatever is done does not make the others smaller. */
#include "call.h"
#include "pages.h"

struct sharing {
    const struct page_list *list;
    struct pen pen;              /* of a trial, without a sheet */
    bool *hopeless;
    struct shared shared;
};

static struct pen sharing_pen(const struct sharing *sharing, size_t index)
{
    struct pen pen = sharing->pen;
    pen.sheet = sharing->list->sheets[index];
    return pen;
}

/* ---- signs ---- */

static mpt signs_measure(const struct sharing *sharing, mpt size)
{
    mpt height = 0;
    for (size_t i = 0; i < sharing->list->count; i++) {
        struct pen pen = sharing_pen(sharing, i);
        struct paragraph when = when_lay(&pen, size, safe_width(pen.paper));
        mpt own = paragraph_height(&when);
        height = own > height ? own : height;
    }
    return height;
}

static bool signs_take_one_line(void *of, mpt size)
{
    return signs_measure(of, size) <= line_pitch(ROLE_SIGNS, size);
}

/* One line for all if the floor allows it, else two. */
static void signs_fit(struct sharing *sharing)
{
    mpt size = size_that_fits(size_rule(sharing->pen.paper, ROLE_SIGNS), SIZE_STEP,
                              signs_take_one_line, sharing);
    sharing->shared.when_size = size;
    sharing->shared.needs.height[AREA_WHEN] = signs_measure(sharing, size);
}

/* ---- call panel ---- */

static void panel_try(struct sharing *sharing, mpt script_size)
{
    mpt height = 0;
    for (size_t i = 0; i < sharing->list->count; i++) {
        struct pen pen = sharing_pen(sharing, i);
        if (sheet_block(pen.sheet, BLOCK_CALL) == NULL)
            continue;
        mpt own = panel_lay(&pen, script_size, safe_width(pen.paper)).height;
        height = own > height ? own : height;
    }
    sharing->shared.script_size = script_size;
    sharing->shared.needs.height[AREA_PANEL] = height;
}

static bool sheet_holds(const struct sharing *sharing, size_t index, mpt least_row)
{
    struct pen trial = sharing_pen(sharing, index);
    return template_works[template_of(trial.sheet)].holds(&trial, &sharing->shared.needs,
                                                          least_row);
}

static void hopeless_find(struct sharing *sharing)
{
    panel_try(sharing, size_rule(sharing->pen.paper, ROLE_SCRIPT).floor);
    for (size_t i = 0; i < sharing->list->count; i++)
        sharing->hopeless[i] = !sheet_holds(sharing, i, 0);
}

/* Steps keep pace with the script: neither is at its floor for the other's sake. */
static bool set_fits_at(void *of, mpt size)
{
    struct sharing *sharing = of;
    panel_try(sharing, size);
    mpt row = row_beside_script(sharing->pen.paper, size);
    for (size_t i = 0; i < sharing->list->count; i++)
        if (!sharing->hopeless[i] && !sheet_holds(sharing, i, row))
            return false;
    return true;
}

static void panel_fit(struct sharing *sharing)
{
    hopeless_find(sharing);
    panel_try(sharing, size_that_fits(size_rule(sharing->pen.paper, ROLE_SCRIPT), SIZE_STEP,
                                      set_fits_at, sharing));
}

struct shared shared_find(const struct page_list *list, const struct pen *trial)
{
    struct sharing sharing = {.list = list, .pen = *trial,
                              .hopeless = arena_array(trial->arena, list->count, sizeof(bool))};
    signs_fit(&sharing);
    panel_fit(&sharing);
    return sharing.shared;
}
