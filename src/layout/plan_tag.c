/* plan_tag.c - tags on drawings of the boat: how they are set, and whether boxes are clear of each
 * other (room: layout). */
#include "plan_tag.h"

struct style plan_tag_style(mpt size)
{
    return (struct style){ROLE_PLAN_TAG, FACE_BOLD, size, INK_WHITE};
}

static bool overlap(struct area a, struct area b, mpt gap)
{
    return a.x < b.x + b.width + gap && b.x < a.x + a.width + gap &&
           a.y < b.y + b.height + gap && b.y < a.y + a.height + gap;
}

bool free_of(struct area box, const struct area *taken, size_t count, mpt gap)
{
    for (size_t i = 0; i < count; i++)
        if (overlap(box, taken[i], gap))
            return false;
    return true;
}

struct area box_at(struct point centre, mpt width, mpt height)
{
    return (struct area){centre.x - width / 2, centre.y - height / 2, width, height};
}
