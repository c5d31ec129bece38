/* symbol_warning.c - the signs of warning (triangles), prohibition (rings) and duty
 * (discs) (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* bar and dot */
DRAWING(w1,
    SHAPE('P', 42, 66, 45, 70, 55, 70, 58, 66, 54.5, 34, 45.5, 34),
    SHAPE('C', 50, 22, 7.5));

/* flame on a ground line */
DRAWING(wflam,
    SHAPE('P', 50, 21, 37, 25, 32, 33, 37, 43, 41, 40, 44, 51, 51, 68, 55, 56, 59, 47, 62, 50,
          68, 36, 63, 26),
    CUT('P', 50, 24, 45, 27, 44, 33, 50, 43, 55, 33, 54, 27),
    SHAPE('L', 5, 24, 15, 76, 15));

/* burst with eight long splinters */
DRAWING(wexpl,
    SHAPE('P', 50, 72, 54.5, 50, 66, 58, 61, 43, 80, 40, 63, 33, 76, 16, 57, 25, 50, 11, 43, 25,
          24, 16, 37, 33, 20, 40, 39, 43, 34, 58, 45.5, 50));

/* one bolt, point down */
DRAWING(welec,
    SHAPE('P', 55, 72, 32, 38, 47, 38, 43, 10, 68, 47, 53, 47));

/* cylinder with valve */
DRAWING(wcyl,
    SHAPE('R', 38, 12, 24, 36, 9),
    SHAPE('R', 45, 46, 10, 10),
    SHAPE('L', 5, 44, 58, 56, 58));

/* head and shoulders among bubbles of gas */
DRAWING(wasph,
    SHAPE('C', 50, 53, 9),
    SHAPE('P', 41, 41, 59, 41, 67, 30, 67, 11, 33, 11, 33, 30),
    SHAPE('C', 23, 16, 4.5),
    SHAPE('C', 77, 16, 4.5),
    SHAPE('C', 27, 30, 4),
    SHAPE('C', 73, 30, 4),
    SHAPE('C', 34, 43, 3.5),
    SHAPE('C', 66, 43, 3.5));

/* burning match across the bar: its flame above, its stick below */
DRAWING(pflame,
    SHAPE('L', 8, 27, 25, 57, 53),
    SHAPE('P', 62, 50, 53, 53, 49, 60, 51, 68, 55, 65, 58, 73, 65, 83, 67, 75, 71, 70, 73, 74,
          78, 63, 75, 54, 69, 50));

/* bucket tilted above the bar, drops, flame below */
DRAWING(pwater,
    SHAPE('P', 46, 81, 56, 55, 78, 64, 72, 80),
    SHAPE('C', 45, 67, 4),
    SHAPE('C', 37, 53, 4),
    SHAPE('P', 34, 17, 26, 20, 22, 27, 24, 35, 28, 32, 30, 39, 35, 47, 38, 39, 41, 35, 43, 38,
          46, 29, 43, 21));

/* lid hinged up across the bar, arrow up above it, opening below */
DRAWING(phatch,
    SHAPE('R', 20, 23, 40, 10),
    SHAPE('L', 8, 22, 40, 50, 74),
    SHAPE('R', 63, 50, 11, 18),
    SHAPE('P', 68.5, 82, 56, 66, 81, 66));

/* head above a waistcoat */
DRAWING(mjacket,
    SHAPE('C', 50, 80, 9),
    SHAPE('P', 32, 68, 42, 68, 50, 54, 58, 68, 68, 68, 72, 54, 72, 22, 54, 22, 54, 42,
          46, 42, 46, 22, 28, 22, 28, 54),
    CUT('R', 28, 32, 44, 4));

/* figure with crossed straps and a tether to a ring */
DRAWING(mharness,
    SHAPE('C', 50, 82, 8),
    SHAPE('R', 38, 40, 24, 34, 8),
    CUT('L', 4, 40, 70, 60, 44),
    CUT('L', 4, 60, 70, 40, 44),
    SHAPE('L', 5, 50, 52, 82, 30),
    SHAPE('O', 4, 86, 26, 5),
    SHAPE('L', 6, 42, 40, 38, 14),
    SHAPE('L', 6, 58, 40, 62, 14));

/* four-blade fan */
DRAWING(mvent,
    SHAPE('C', 50, 50, 7),
    SHAPE('P', 50, 58, 40, 84, 54, 88, 58, 60),
    SHAPE('P', 58, 50, 84, 60, 88, 46, 60, 42),
    SHAPE('P', 50, 42, 60, 16, 46, 12, 42, 40),
    SHAPE('P', 42, 50, 16, 40, 12, 54, 40, 58));

/* hull with water standing in it */
DRAWING(flood,
    SHAPE('P', 22, 38, 78, 38, 66, 15, 34, 15),
    SHAPE('L', 4, 50, 38, 50, 68),
    SHAPE('P', 53, 66, 53, 44, 65, 44),
    CUT('L', 4, 33, 27, 39, 31, 45, 27, 51, 31, 57, 27, 63, 31, 67, 27));

/* hand with a pointing finger, and a switch */
DRAWING(pswitch,
    SHAPE('R', 52, 48, 26, 34, 4),
    CUT('R', 58, 53, 14, 24, 2),
    SHAPE('R', 58, 53, 14, 11, 1),
    SHAPE('L', 8, 30, 36, 30, 57),
    SHAPE('R', 26, 22, 26, 20, 7),
    CUT('L', 3, 37, 30, 37, 44),
    CUT('L', 3, 44, 28, 44, 44));

/* person walking */
DRAWING(penter,
    SHAPE('C', 53, 75, 7),
    SHAPE('L', 12, 52, 61, 49, 48),
    SHAPE('L', 5, 54, 62, 64, 52, 72, 52),
    SHAPE('L', 5, 50, 62, 38, 56, 34, 46),
    SHAPE('L', 7, 50, 46, 60, 34, 62, 20),
    SHAPE('L', 7, 48, 46, 42, 32, 32, 24));

/* knife on a line, cut through below it */
DRAWING(pcut,
    SHAPE('L', 8, 14, 32, 28, 32),
    SHAPE('L', 8, 44, 32, 86, 32),
    SHAPE('L', 12, 64, 64, 74, 74),
    SHAPE('P', 55, 64, 64, 55, 40, 30, 31, 37));
