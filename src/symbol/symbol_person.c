/* symbol_person.c - the signs of people who are hurt, ill or in the water, and of a hull that
 * floats upside down: squares with round corners (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* solid heart with a bolt in it */
DRAWING(aed,
    SHAPE('C', 29, 66, 23),
    SHAPE('C', 71, 66, 23),
    SHAPE('P', 8.5, 55, 50, 6, 91.5, 55, 71, 72, 50, 76, 29, 72),
    CUT('P', 60, 84, 32, 46, 46, 46, 40, 18, 68, 56, 54, 56));

/* outline of a heart, a beat in it that goes flat */
DRAWING(heart,
    SHAPE('L', 8, 50, 12, 16, 46, 9, 60, 12, 76, 24, 86, 38, 84, 50, 72, 62, 84, 76, 86, 88, 76,
          91, 60, 84, 46, 50, 12),
    SHAPE('L', 6, 24, 54, 34, 54, 40, 68, 47, 40, 52, 54, 76, 54));

/* person on the floor, a wheel that nobody holds */
DRAWING(skipperdown,
    SHAPE('O', 8, 60, 66, 20),
    SHAPE('C', 60, 66, 8),
    SHAPE('L', 6, 60, 36, 60, 96),
    SHAPE('L', 6, 34, 51, 86, 81),
    SHAPE('L', 6, 34, 81, 86, 51),
    SHAPE('C', 13, 20, 11),
    SHAPE('L', 16, 34, 16, 58, 16),
    SHAPE('L', 9, 60, 14, 94, 12),
    SHAPE('L', 8, 36, 22, 22, 36));

/* plaster laid slantwise */
DRAWING(plaster,
    SHAPE('L', 36, 24, 24, 76, 76),
    CUT('P', 50, 28, 72, 50, 50, 72, 28, 50),
    SHAPE('C', 50, 40, 4.5),
    SHAPE('C', 50, 60, 4.5),
    SHAPE('C', 40, 50, 4.5),
    SHAPE('C', 60, 50, 4.5),
    CUT('C', 23, 23, 4),
    CUT('C', 77, 77, 4));

/* thermometer with a high column */
DRAWING(thermometer,
    SHAPE('L', 22, 40, 30, 40, 86),
    SHAPE('C', 40, 22, 20),
    CUT('L', 10, 40, 34, 40, 86),
    CUT('C', 40, 22, 12),
    SHAPE('C', 40, 22, 9),
    SHAPE('L', 6, 40, 22, 40, 72),
    SHAPE('L', 7, 62, 84, 82, 84),
    SHAPE('L', 7, 62, 66, 76, 66),
    SHAPE('L', 7, 62, 48, 82, 48));

/* swimmer at the surface, a propeller below */
DRAWING(swimmer,
    SHAPE('C', 26, 78, 11),
    SHAPE('L', 10, 38, 68, 60, 78, 78, 70),
    SHAPE('L', 7, 6, 58, 20, 64, 34, 58, 48, 64, 62, 58, 76, 64, 92, 58),
    SHAPE('C', 50, 22, 6),
    SHAPE('C', 50, 37, 10),
    SHAPE('C', 36, 14, 10),
    SHAPE('C', 64, 14, 10));

/* hull afloat with its keel and rudder up */
DRAWING(capsized,
    SHAPE('P', 4, 34, 8, 46, 18, 56, 32, 62, 50, 64, 68, 62, 82, 56, 92, 46, 96, 34),
    SHAPE('P', 38, 60, 45, 92, 57, 92, 60, 60),
    SHAPE('R', 34, 86, 34, 12, 6),
    SHAPE('P', 82, 54, 86, 72, 93, 72, 93, 46),
    SHAPE('L', 7, 4, 22, 18, 28, 32, 22, 46, 28, 60, 22, 74, 28, 96, 22),
    SHAPE('L', 7, 4, 8, 18, 14, 32, 8, 46, 14, 60, 8, 74, 14, 96, 8));

/* two hulls upside down, and loops of a line under them */
DRAWING(hullline,
    SHAPE('P', 2, 60, 5, 82, 13, 92, 23, 92, 31, 82, 34, 66, 66, 66, 69, 82, 77, 92, 87, 92, 95, 82,
          98, 60),
    SHAPE('A', 7, 20, 58, 13, 180, 360),
    SHAPE('A', 7, 50, 58, 17, 180, 360),
    SHAPE('A', 7, 80, 58, 13, 180, 360),
    SHAPE('L', 7, 4, 14, 18, 22, 32, 14, 46, 22, 60, 14, 74, 22, 96, 14));

/* a finger on a list */
DRAWING(index,
    SHAPE('L', 7, 10, 6, 10, 94, 62, 94, 62, 66),
    SHAPE('L', 7, 10, 6, 34, 6),
    SHAPE('L', 7, 22, 76, 50, 76),
    SHAPE('L', 7, 22, 58, 44, 58),
    SHAPE('L', 7, 22, 40, 34, 40),
    SHAPE('L', 11, 50, 54, 66, 36),
    SHAPE('P', 54, 34, 66, 46, 84, 46, 94, 36, 94, 6, 58, 6, 46, 22));
