/* legible.h - what an eye can read: heights, distances, contrast in three lights.
 * Private to src/proof. */
#ifndef MAYDECK_LEGIBLE_H
#define MAYDECK_LEGIBLE_H

#include "page.h"

/* Millimetres of height that an angle (minutes of arc) takes at a distance:
 * 2 D tan(angle / 2). */
double legible_height_mm(double distance_mm, double minutes);

/* The angle a height takes at a distance: the same the other way round. */
double legible_minutes(double height_mm, double distance_mm);

/* Nominal size in points whose letters are `height_mm` tall, where they are
 * `ratio` of the em: height / (ratio x 0.35278 mm). */
double legible_points(double height_mm, double ratio);

/* Height in mm of letters that are `ratio` of the em, at a size in points. */
double legible_letter_mm(double points, double ratio);

/* How far letters can be read. Capitals: 200 times their height (k = 0.005). Small
 * letters: k = 0.0044, a sight angle of about 15'. */
#define READ_CAPITALS 0.005
#define READ_SMALL 0.0044

/* Relative luminance of a colour in white light (WCAG 2), as a grey
 * print, and under a red torch, where only the red channel counts. */
enum light { LIGHT_WHITE, LIGHT_GREY, LIGHT_RED, LIGHT_COUNT };
double light_level(enum light light, struct rgb colour);
const char *light_word(enum light light);

/* (L1 + 0.05) / (L2 + 0.05), 1 to 21. */
double light_contrast(enum light light, struct rgb a, struct rgb b);

/* The least of the three, and in which light. */
struct contrast { double ratio; enum light light; };
struct contrast contrast_worst(enum palette palette, enum ink ink, enum ink ground);

/* The same of all inks of a palette. */
struct contrasts { struct contrast worst[INK_COUNT][INK_COUNT]; };
const struct contrasts *contrasts_new(enum palette palette, struct arena *arena);

#endif
