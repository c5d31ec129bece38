/* symbol_private.h - how the symbol tables are written. Private to
 * src/symbol.
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

#include "symbol.h"

#define NUMBERS(...) \
    (const double[]){__VA_ARGS__}, sizeof((const double[]){__VA_ARGS__}) / sizeof(double)
#define SHAPE(letter, ...) {letter, false, NUMBERS(__VA_ARGS__)}
#define CUT(letter, ...) {letter, true, NUMBERS(__VA_ARGS__)}
#define PARTS(...) \
    (const struct symbol_part[]){__VA_ARGS__}, \
        sizeof((const struct symbol_part[]){__VA_ARGS__}) / sizeof(struct symbol_part)

/* The drawing of the sign of that key. A key that is not in SYMBOL_LIST does not compile,
 * a sign of the list that nobody drew does not link. */
#define DRAWING(key, ...) \
    _Static_assert(SYMBOL_##key != SYMBOL_NONE, "a sign of the list"); \
    const struct symbol_drawing drawing_##key = {PARTS(__VA_ARGS__)}

#define DRAWING_DECLARE(key, sign, meaning) extern const struct symbol_drawing drawing_##key;
SYMBOL_LIST(DRAWING_DECLARE)
#undef DRAWING_DECLARE

#endif
