/* draw.h - numbers that look random and are the same for the same seed on every machine. */
#ifndef MAYDECK_GENERATE_DRAW_H
#define MAYDECK_GENERATE_DRAW_H

#include <stdbool.h>
#include <stdint.h>

struct draw { uint64_t state; };

/* 0 to count - 1; `count` is at least 1. */
int draw_below(struct draw *draw, int count);

/* low to high, both included. */
int draw_between(struct draw *draw, int low, int high);

/* True in so many of a hundred cases. */
bool draw_happens(struct draw *draw, int percent);

/* One of a list of texts that ends with NULL; NULL where the list is empty. */
const char *draw_text(struct draw *draw, const char *const *texts);

#endif
