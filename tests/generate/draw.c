/* draw.c - numbers from a seed, by the mixing steps of splitmix64. */
#include "draw.h"

#include <stddef.h>

static uint64_t draw_next(struct draw *draw)
{
    uint64_t mixed = (draw->state += 0x9E3779B97F4A7C15u);
    mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9u;
    mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBu;
    return mixed ^ (mixed >> 31);
}

int draw_below(struct draw *draw, int count)
{
    return (int)(draw_next(draw) % (uint64_t)count);
}

int draw_between(struct draw *draw, int low, int high)
{
    return low + draw_below(draw, high - low + 1);
}

bool draw_happens(struct draw *draw, int percent)
{
    return draw_below(draw, 100) < percent;
}

const char *draw_text(struct draw *draw, const char *const *texts)
{
    int count = 0;
    while (texts[count] != NULL)
        count++;
    return count == 0 ? NULL : texts[draw_below(draw, count)];
}
