/* locator.c - a small boat at the end of a row, bow up, with a dot where its gear is (room:
 * layout). A dot stands where the tag has its place on the plan of every card; it is square on
 * deck and round below, as its tag is on the plan. */
#include "boat_slots.h"
#include "measures.h"
#include "rows.h"
#include "text.h"

/* The hull within its area: a bow that comes to a point, straight sides. */
static void hull_outline_place(struct pen *pen, struct area hull)
{
    mpt right = hull.x + hull.width, foot = hull.y + hull.height;
    mpt middle = hull.x + hull.width / 2, shoulder = hull.y + hull.height * 11 / 20;
    mpt high = hull.y + hull.height / 4, in = hull.width / 5;
    struct path_step *steps = arena_array(pen->arena, 6, sizeof *steps);
    steps[0] = (struct path_step){.verb = PATH_MOVE, .to = {hull.x, foot}};
    steps[1] = (struct path_step){.verb = PATH_LINE, .to = {hull.x, shoulder}};
    steps[2] = (struct path_step){PATH_CURVE, {middle, hull.y},
                                  {{hull.x, high}, {middle - in, hull.y + hull.height / 9}}};
    steps[3] = (struct path_step){PATH_CURVE, {right, shoulder},
                                  {{middle + in, hull.y + hull.height / 9}, {right, high}}};
    steps[4] = (struct path_step){.verb = PATH_LINE, .to = {right, foot}};
    steps[5] = (struct path_step){.verb = PATH_CLOSE};
    pen_path(pen, steps, 6, INK_NONE, INK_BLACK, LOCATOR_LINE);
}

static mpt kept_between(mpt value, mpt least, mpt most)
{
    return value < least ? least : value > most ? most : value;
}

static void dot_place(struct pen *pen, struct area hull, const struct fixed_slot *slot)
{
    const struct boat_slots *slots = pen->slots;
    mpt dot = LOCATOR_DOT, rim = LOCATOR_LINE;
    mpt x = hull.x + hull.width / 2 + (mpt)((int64_t)hull.width * slot->x / slots->views.width);
    mpt y = hull.y + (mpt)((int64_t)hull.height * (2 * slot->row + 1) / (2 * slots->rows));
    struct area area = {
        kept_between(x - dot / 2, hull.x + rim, hull.x + hull.width - rim - dot),
        kept_between(y - dot / 2, hull.y + hull.height / 5, hull.y + hull.height - rim - dot),
        dot, dot};
    if (slot->marker->level == LEVEL_BELOW)
        pen_ellipse(pen, area, INK_BLACK);
    else
        pen_box(pen, area, INK_BLACK, INK_NONE, 0, 0);
}

void locator_place(struct pen *pen, struct area area, const char *tag)
{
    struct area hull = {area.x + LOCATOR_LINE, area.y + LOCATOR_LINE,
                        area.width - 2 * LOCATOR_LINE, area.height - 2 * LOCATOR_LINE};
    hull_outline_place(pen, hull);
    for (size_t i = 0; i < pen->slots->count; i++) {
        const struct fixed_slot *slot = &pen->slots->slots[i];
        if (slot->marker != NULL && !slot->without_room && text_equal(slot->text, tag))
            dot_place(pen, hull, slot);
    }
}
