/* symbol_mishap.c - the signs of what goes wrong with the boat at sea: triangles (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* propeller, struck through */
DRAWING(noengine,
    SHAPE('C', 50, 46, 12),
    SHAPE('C', 37.5, 25, 12),
    SHAPE('C', 62.5, 25, 12),
    SHAPE('C', 50, 33, 6),
    CUT('L', 11, 26, 52, 76, 12),
    SHAPE('L', 5, 28, 50, 74, 13));

/* hull on the ground */
DRAWING(aground,
    SHAPE('P', 22, 40, 76, 48, 70, 32, 32, 26),
    SHAPE('P', 44, 29, 58, 31, 58, 20, 47, 18),
    SHAPE('L', 5, 48, 42, 44, 70),
    SHAPE('P', 8, 9, 92, 9, 82, 15, 70, 17, 58, 15, 46, 17, 30, 13, 18, 15));

/* anchor, and the way it slides */
DRAWING(anchordrag,
    SHAPE('O', 5, 50, 67, 6),
    SHAPE('L', 6, 50, 61, 50, 28),
    SHAPE('L', 5, 40, 54, 60, 54),
    SHAPE('A', 6, 50, 44, 18, 205, 335),
    SHAPE('L', 6, 20, 13, 64, 13),
    SHAPE('P', 62, 5, 62, 21, 82, 13));

/* steering wheel, struck through */
DRAWING(nosteer,
    SHAPE('O', 6, 50, 32, 17),
    SHAPE('C', 50, 32, 5),
    SHAPE('L', 4, 50, 8, 50, 56),
    SHAPE('L', 4, 29, 20, 71, 44),
    SHAPE('L', 4, 29, 44, 71, 20),
    CUT('L', 11, 26, 54, 78, 11),
    SHAPE('L', 5, 29, 52, 76, 12));

/* hull, the stump of a mast, the mast over the side */
DRAWING(mastdown,
    SHAPE('P', 20, 30, 70, 30, 62, 12, 30, 12),
    SHAPE('L', 6, 42, 30, 42, 52),
    SHAPE('L', 6, 50, 56, 84, 16),
    SHAPE('P', 34, 50, 46, 68, 50, 58));

/* cloud with the letters CO */
DRAWING(cocloud,
    SHAPE('C', 30, 26, 15),
    SHAPE('C', 50, 40, 21),
    SHAPE('C', 70, 26, 15),
    SHAPE('R', 30, 11, 40, 20),
    CUT('A', 5, 39, 28, 8.5, 50, 310),
    CUT('O', 5, 62, 28, 8.5));

/* two bows against each other */
DRAWING(collision,
    SHAPE('P', 8, 12, 34, 12, 48, 25, 34, 38, 22, 38),
    SHAPE('P', 92, 12, 66, 12, 52, 25, 66, 38, 78, 38),
    SHAPE('L', 5, 50, 44, 50, 70),
    SHAPE('L', 5, 41, 46, 34, 58),
    SHAPE('L', 5, 59, 46, 66, 58));

/* cloud with a bolt out of it */
DRAWING(lightning,
    SHAPE('C', 36, 46, 9),
    SHAPE('C', 50, 54, 13),
    SHAPE('C', 64, 46, 9),
    SHAPE('R', 36, 37, 28, 12),
    SHAPE('P', 54, 36, 38, 20, 48, 20, 42, 5, 64, 26, 53, 26));

/* a sea that breaks */
DRAWING(heavyweather,
    SHAPE('P', 10, 9, 90, 9, 72, 16, 60, 26, 56, 40, 60, 48, 46, 56, 32, 44, 20, 26),
    SHAPE('A', 6, 60, 46, 10, -80, 130),
    SHAPE('C', 74, 30, 4));
