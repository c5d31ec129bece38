/* symbol_warning.c - the signs of warning (triangles), prohibition (rings) and duty
 * (discs) (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* bar and dot */
DRAWING(w1,
    SHAPE('R', 46, 34, 8, 26, 3),
    SHAPE('C', 50, 24, 5));

/* flame on a ground line */
DRAWING(wflam,
    SHAPE('P', 50, 20, 39, 25, 36, 34, 40, 43, 43, 39, 46, 49, 52, 60, 54, 50, 57, 45,
          60, 49, 64, 36, 61, 25),
    SHAPE('L', 4, 30, 16, 70, 16));

/* disc with seven rays */
DRAWING(wexpl,
    SHAPE('C', 50, 34, 8),
    SHAPE('L', 4, 50, 46, 50, 58),
    SHAPE('L', 4, 38, 42, 30, 50),
    SHAPE('L', 4, 62, 42, 70, 50),
    SHAPE('L', 4, 40, 26, 30, 18),
    SHAPE('L', 4, 60, 26, 70, 18),
    SHAPE('L', 4, 36, 34, 26, 34),
    SHAPE('L', 4, 64, 34, 74, 34));

/* one bolt, point down */
DRAWING(welec,
    SHAPE('P', 54, 66, 38, 38, 48, 38, 42, 14, 62, 44, 51, 44));

/* cylinder with valve */
DRAWING(wcyl,
    SHAPE('R', 42, 16, 16, 34, 6),
    SHAPE('R', 47, 50, 6, 5),
    SHAPE('L', 3, 42, 57, 58, 57));

/* head and shoulders among bubbles of gas */
DRAWING(wasph,
    SHAPE('C', 50, 48, 6),
    SHAPE('P', 40, 40, 60, 40, 62, 20, 38, 20),
    SHAPE('C', 32, 30, 3),
    SHAPE('C', 68, 30, 3),
    SHAPE('C', 28, 22, 3),
    SHAPE('C', 72, 22, 3),
    SHAPE('C', 36, 54, 3),
    SHAPE('C', 64, 54, 3));

/* match with flame under ring and bar */
DRAWING(pflame,
    SHAPE('R', 44, 14, 8, 30, 2),
    SHAPE('P', 48, 46, 38.8, 50.2, 36.2, 57.8, 39.6, 65.3, 42.1, 62, 44.6, 70.4, 49.7,
          79.6, 51.4, 71.2, 53.9, 67, 56.4, 70.4, 59.8, 59.4, 57.2, 50.2));

/* tilted bucket, drops, flame, under ring and bar */
DRAWING(pwater,
    SHAPE('P', 26, 78, 48, 78, 44, 52, 30, 52),
    SHAPE('C', 54, 60, 3),
    SHAPE('C', 60, 52, 3),
    SHAPE('C', 66, 44, 3),
    SHAPE('P', 64, 18, 57.4, 21, 55.6, 26.4, 58, 31.8, 59.8, 29.4, 61.6, 35.4, 65.2, 42,
          66.4, 36, 68.2, 33, 70, 35.4, 72.4, 27.6, 70.6, 21));

/* lid hinged up from a box with up arrow, under ring and bar */
DRAWING(phatch,
    SHAPE('R', 24, 26, 52, 10),
    SHAPE('L', 8, 24, 40, 70, 62),
    SHAPE('P', 50, 86, 36, 70, 64, 70),
    SHAPE('R', 46, 58, 8, 14));

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
