/* legible.c - heights, distances and contrast (room: proof). Formulas only, no
 * knowledge of pages. */
#include "legible.h"

#include <math.h>

#include "promise.h"

#define MM_A_POINT 0.352778
#define HALF_MINUTE (3.14159265358979323846 / 180.0 / 60.0 / 2.0)

double legible_height_mm(double distance_mm, double minutes)
{
    return 2.0 * distance_mm * tan(minutes * HALF_MINUTE);
}

double legible_minutes(double height_mm, double distance_mm)
{
    return atan(height_mm / (2.0 * distance_mm)) / HALF_MINUTE;
}

double legible_points(double height_mm, double ratio)
{
    return height_mm / (ratio * MM_A_POINT);
}

double legible_letter_mm(double points, double ratio)
{
    return points * ratio * MM_A_POINT;
}

/* ---- light ---- */

static double linear(unsigned char value)
{
    double share = value / 255.0;
    return share <= 0.03928 ? share / 12.92 : pow((share + 0.055) / 1.055, 2.4);
}

/* What a grey printer makes of it: video luma, to the nearest step. */
static unsigned char grey_of(struct rgb colour)
{
    return (unsigned char)(0.299 * colour.red + 0.587 * colour.green + 0.114 * colour.blue + 0.5);
}

double light_level(enum light light, struct rgb colour)
{
    switch (light) {
    case LIGHT_GREY:
        return linear(grey_of(colour));
    case LIGHT_RED:
        return linear(colour.red);
    case LIGHT_WHITE:
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) +
               0.0722 * linear(colour.blue);
    case LIGHT_COUNT:
        break;
    }
    promise_unreached();
}

const char *light_word(enum light light)
{
    static const char *const words[LIGHT_COUNT] = {
        [LIGHT_WHITE] = "in white light", [LIGHT_GREY] = "printed grey",
        [LIGHT_RED] = "in red light"};
    promise(light < LIGHT_COUNT);
    return words[light];
}

static double ratio_of(double first, double second)
{
    double high = first > second ? first : second, low = first > second ? second : first;
    return (high + 0.05) / (low + 0.05);
}

double light_contrast(enum light light, struct rgb a, struct rgb b)
{
    return ratio_of(light_level(light, a), light_level(light, b));
}

/* How light an ink is in each light. */
struct levels { double of[LIGHT_COUNT]; };

static struct levels levels_of(enum palette palette, enum ink ink)
{
    struct levels levels;
    for (enum light light = LIGHT_WHITE; light < LIGHT_COUNT; light++)
        levels.of[light] = light_level(light, ink_rgb(palette, ink));
    return levels;
}

static struct contrast worst_between(const struct levels *a, const struct levels *b)
{
    struct contrast worst = {22.0, LIGHT_WHITE};
    for (enum light light = LIGHT_WHITE; light < LIGHT_COUNT; light++) {
        double ratio = ratio_of(a->of[light], b->of[light]);
        if (ratio < worst.ratio)
            worst = (struct contrast){ratio, light};
    }
    return worst;
}

struct contrast contrast_worst(enum palette palette, enum ink ink, enum ink ground)
{
    struct levels first = levels_of(palette, ink), second = levels_of(palette, ground);
    return worst_between(&first, &second);
}

const struct contrasts *contrasts_new(enum palette palette, struct arena *arena)
{
    struct contrasts *made = arena_alloc(arena, sizeof *made);
    struct levels levels[INK_COUNT];
    for (int ink = 0; ink < INK_COUNT; ink++)
        levels[ink] = levels_of(palette, (enum ink)ink);
    for (int ink = 0; ink < INK_COUNT; ink++)
        for (int ground = 0; ground < INK_COUNT; ground++)
            made->worst[ink][ground] = worst_between(&levels[ink], &levels[ground]);
    return made;
}
