/* symbol_mishap.c - the signs of what goes wrong with the boat at sea: triangles (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* propeller, struck through */
DRAWING(noengine,
    SHAPE('C', 50, 44, 11),
    SHAPE('C', 38, 23.5, 11),
    SHAPE('C', 62, 23.5, 11),
    SHAPE('C', 50, 30.5, 6),
    CUT('L', 9, 38, 48, 72, 14),
    SHAPE('L', 4, 37, 49, 74, 12.5));

/* hull on the ground */
DRAWING(aground,
    SHAPE('P', 24, 40, 74, 46, 69, 31, 33, 27),
    SHAPE('P', 44, 30, 58, 31, 58, 21, 47, 19),
    SHAPE('L', 5, 48, 42, 46, 64),
    SHAPE('P', 16, 11, 84, 11, 76, 16, 66, 18, 56, 16, 46, 18, 32, 14, 24, 16));

/* anchor, and the way it slides */
DRAWING(anchordrag,
    SHAPE('O', 5, 50, 63, 5),
    SHAPE('L', 6, 50, 57, 50, 27),
    SHAPE('L', 5, 41, 51, 59, 51),
    SHAPE('A', 6, 50, 42, 16, 205, 335),
    SHAPE('L', 6, 24, 14, 62, 14),
    SHAPE('P', 60, 6, 60, 22, 80, 14));

/* steering wheel, struck through */
DRAWING(nosteer,
    SHAPE('O', 6, 50, 30, 14),
    SHAPE('C', 50, 30, 5),
    SHAPE('L', 4, 50, 10, 50, 50),
    SHAPE('L', 4, 32.7, 20, 67.3, 40),
    SHAPE('L', 4, 32.7, 40, 67.3, 20),
    CUT('L', 11, 38, 48, 74, 12),
    SHAPE('L', 5, 38, 48, 74, 12));

/* hull, the stump of a mast, the mast over the side */
DRAWING(mastdown,
    SHAPE('P', 22, 30, 68, 30, 60, 13, 32, 13),
    SHAPE('L', 6, 42, 30, 42, 50),
    SHAPE('L', 6, 52, 54, 78, 20),
    SHAPE('P', 34, 46, 50, 46, 46, 62));

/* cloud with the letters CO */
DRAWING(cocloud,
    SHAPE('C', 34, 26, 13),
    SHAPE('C', 50, 40, 17),
    SHAPE('C', 66, 26, 13),
    SHAPE('R', 34, 13, 32, 20),
    CUT('A', 5, 41, 28, 7, 50, 310),
    CUT('O', 5, 60, 28, 7));

/* two bows against each other */
DRAWING(collision,
    SHAPE('P', 14, 13, 34, 13, 48, 25, 34, 37, 24, 37),
    SHAPE('P', 86, 13, 66, 13, 52, 25, 66, 37, 76, 37),
    SHAPE('L', 5, 50, 43, 50, 64),
    SHAPE('L', 5, 42, 44, 37, 54),
    SHAPE('L', 5, 58, 44, 63, 54));

/* cloud with a bolt out of it */
DRAWING(lightning,
    SHAPE('C', 36, 46, 9),
    SHAPE('C', 50, 54, 13),
    SHAPE('C', 64, 46, 9),
    SHAPE('R', 36, 37, 28, 12),
    SHAPE('P', 54, 36, 38, 20, 48, 20, 42, 5, 64, 26, 53, 26));

/* a sea that breaks */
DRAWING(heavyweather,
    SHAPE('P', 20, 12, 84, 12, 70, 18, 60, 26, 56, 38, 60, 46, 48, 54, 37, 43, 28, 28),
    SHAPE('A', 6, 59, 44, 9, -80, 130),
    SHAPE('C', 72, 29, 4));
