/* plan_lead.c - the thin line from a tag that had to move to the place it speaks of (room:
 * layout). Takes tags as they were placed; gives for each whether it needs a line, and
 * whether one can be drawn that no other tag or line confuses. Never moves a tag. */
#include "plan_lead.h"

#include "geometry.h"
#include "measures.h"

static bool box_covers(struct area box, struct point place)
{
    return place.x >= box.x && place.x <= box.x + box.width && place.y >= box.y &&
           place.y <= box.y + box.height;
}

static bool same_place(const struct marker *a, const struct marker *b)
{
    return a->x_mm == b->x_mm && a->y_mm == b->y_mm && a->level == b->level;
}

static struct point lead_start(struct area box)
{
    return (struct point){box.x + box.width / 2, box.y + box.height / 2};
}

/* Does nothing but the boat lie between the tag and its place? A tag near the line would
 * seem to be what the line comes from. */
static bool way_is_free(const struct placed_tags *tags, size_t index, struct point place)
{
    struct point from = lead_start(tags->boxes[index]);
    for (size_t i = 0; i < tags->count; i++)
        if (i != index && tags->found[i] &&
            segment_to_box(from, place, tags->boxes[i]) < (double)(LEAD_DOT / 2 + LEAD_CLEAR))
            return false;
    return true;
}

/* The lead of a tag as if no other had a line. No line is needed either where the place
 * itself is not drawn, such as that of a stern platform. */
static enum lead lead_alone(const struct placed_tags *tags, size_t index)
{
    struct point place = hull_point(tags->view, &tags->markers[index]);
    if (box_covers(tags->boxes[index], place) || !hull_holds(tags->view, box_at(place, 0, 0)))
        return LEAD_NONE;
    for (size_t i = 0; i < tags->count; i++)
        if (i != index && tags->found[i] && box_covers(tags->boxes[i], place) &&
            same_place(&tags->markers[i], &tags->markers[index]))
            return LEAD_TOGETHER;
    return way_is_free(tags, index, place) ? LEAD_DRAWN : LEAD_LOST;
}

/* Does the line come to the other's line, or to the dot at its end? */
static bool leads_meet(const struct placed_tags *tags, size_t index, size_t other)
{
    struct point from = lead_start(tags->boxes[index]), other_from = lead_start(tags->boxes[other]);
    struct point to = hull_point(tags->view, &tags->markers[index]);
    struct point other_to = hull_point(tags->view, &tags->markers[other]);
    struct area dot = box_at(to, LEAD_DOT, LEAD_DOT);
    struct area other_dot = box_at(other_to, LEAD_DOT, LEAD_DOT);
    return segments_meet(from, to, other_from, other_to) ||
           segment_to_box(from, to, other_dot) < (double)(HAIR / 2 + LEAD_CLEAR) ||
           segment_to_box(other_from, other_to, dot) < (double)(HAIR / 2 + LEAD_CLEAR);
}

/* Of two lines that meet, that of the later marker is not drawn. Lines of one place end in
 * one dot and so may meet. */
enum lead tag_lead(const struct placed_tags *tags, size_t index)
{
    enum lead lead = lead_alone(tags, index);
    for (size_t i = 0; i < index && lead == LEAD_DRAWN; i++)
        if (tags->found[i] && !same_place(&tags->markers[i], &tags->markers[index]) &&
            lead_alone(tags, i) == LEAD_DRAWN && leads_meet(tags, index, i))
            lead = LEAD_LOST;
    return lead;
}

/* Does a later line end at the same dot? */
static bool dot_follows(const struct placed_tags *tags, size_t index)
{
    for (size_t i = index + 1; i < tags->count; i++)
        if (tags->found[i] && same_place(&tags->markers[i], &tags->markers[index]) &&
            tag_lead(tags, i) == LEAD_DRAWN)
            return true;
    return false;
}

void tag_lead_draw(struct pen *pen, const struct placed_tags *tags, size_t index)
{
    struct point place = hull_point(tags->view, &tags->markers[index]);
    pen_line(pen, lead_start(tags->boxes[index]), place, INK_BLACK, HAIR);
    pen_part(pen, PART_LEADER);
    if (!dot_follows(tags, index))
        pen_ellipse(pen, box_at(place, LEAD_DOT, LEAD_DOT), INK_BLACK);
}
