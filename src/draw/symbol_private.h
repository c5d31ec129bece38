/* symbol_private.h - how the symbol tables are written. Included in src/draw only.
 *
 * The module is 100 x 100 units, y up. A part is a letter and its numbers:
 *     R  x y w h [r]        filled rectangle, corners of radius r
 *     C  x y r              disc
 *     O  w x y r            ring with a line w wide
 *     P  x y x y ...        filled polygon
 *     L  w x y x y ...      line w wide with round ends and bends
 *     A  w x y r a0 a1      arc w wide, from a0 to a1 degrees anticlockwise
 * SHAPE paints in the glyph's colour, CUT in that of the field; in order. */
#ifndef MAYDECK_SYMBOL_PRIVATE_H
#define MAYDECK_SYMBOL_PRIVATE_H

#include "draw.h"

#define NUMBERS(...) \
    (const double[]){__VA_ARGS__}, sizeof((const double[]){__VA_ARGS__}) / sizeof(double)
#define SHAPE(letter, ...) {letter, false, NUMBERS(__VA_ARGS__)}
#define CUT(letter, ...) {letter, true, NUMBERS(__VA_ARGS__)}
#define PARTS(...) \
    .parts = (const struct symbol_part[]){__VA_ARGS__}, \
    .count = sizeof((const struct symbol_part[]){__VA_ARGS__}) / sizeof(struct symbol_part)

extern const struct symbol symbols_fire[], symbols_rescue[], symbols_signal[];
extern const struct symbol symbols_control[], symbols_gear[], symbols_warning[];
extern const size_t symbols_fire_count, symbols_rescue_count, symbols_signal_count;
extern const size_t symbols_control_count, symbols_gear_count, symbols_warning_count;

#endif
