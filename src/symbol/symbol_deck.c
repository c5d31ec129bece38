/* symbol_deck.c - the signs of what sails, drives and steers her, and of gear on deck (room:
 * symbol). Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* lever standing upright on its box, arrows ahead and astern of it */
DRAWING(throttle,
    SHAPE('R', 24, 8, 52, 24, 5),
    CUT('C', 50, 25, 4),
    SHAPE('L', 10, 50, 32, 50, 74),
    SHAPE('C', 50, 84, 13),
    SHAPE('P', 4, 58, 28, 76, 28, 40),
    SHAPE('P', 96, 58, 72, 76, 72, 40));

/* key, and the way it is turned */
DRAWING(enginekey,
    SHAPE('O', 11, 27, 44, 17),
    SHAPE('L', 11, 46, 44, 96, 44),
    SHAPE('L', 10, 74, 44, 74, 24),
    SHAPE('L', 10, 92, 44, 92, 28),
    SHAPE('A', 7, 44, 44, 42, 50, 120),
    SHAPE('P', 60, 88, 84, 84, 70, 64));

/* cleat, and a rope that runs off it */
DRAWING(sailrope,
    SHAPE('R', 22, 6, 56, 10, 3),
    SHAPE('R', 34, 12, 11, 24),
    SHAPE('R', 55, 12, 11, 24),
    SHAPE('L', 13, 12, 37, 88, 37),
    SHAPE('L', 7, 22, 50, 46, 54, 40, 68, 66, 78),
    SHAPE('P', 58, 90, 84, 86, 66, 66));

/* sail on a stick, an arrow round the foot of the stick */
DRAWING(sailroller,
    SHAPE('L', 8, 32, 22, 32, 98),
    SHAPE('P', 42, 92, 42, 42, 92, 42),
    CUT('L', 4, 53, 51, 53, 68),
    SHAPE('A', 7, 32, 28, 22, 190, 330),
    SHAPE('P', 42, 21, 66, 17, 58, 40));

/* mast and boom, a low sail, an arrow down */
DRAWING(saildown,
    SHAPE('L', 8, 62, 6, 62, 98),
    SHAPE('L', 8, 62, 18, 100, 22),
    SHAPE('P', 68, 54, 68, 26, 98, 30),
    SHAPE('L', 12, 26, 86, 26, 52),
    SHAPE('P', 4, 52, 48, 52, 26, 18));

/* screen with a cross and a ring about its middle */
DRAWING(position,
    SHAPE('R', 8, 12, 84, 76, 8),
    CUT('R', 16, 20, 68, 60, 3),
    SHAPE('L', 6, 50, 16, 50, 84),
    SHAPE('L', 6, 12, 50, 88, 50),
    SHAPE('O', 7, 50, 50, 16),
    CUT('C', 50, 50, 7),
    SHAPE('C', 50, 50, 5));

/* lamp that shines */
DRAWING(lamp,
    SHAPE('C', 50, 56, 20),
    SHAPE('R', 40, 24, 20, 16),
    SHAPE('R', 42, 8, 16, 11, 3),
    SHAPE('L', 7, 50, 86, 50, 98),
    SHAPE('L', 7, 72, 78, 82, 88),
    SHAPE('L', 7, 28, 78, 18, 88),
    SHAPE('L', 7, 82, 56, 96, 56),
    SHAPE('L', 7, 18, 56, 4, 56));

/* rudder under the deck, a lid over it that stands open */
DRAWING(rudderlid,
    SHAPE('R', 0, 54, 24, 9, 2),
    SHAPE('R', 76, 54, 24, 9, 2),
    SHAPE('L', 8, 22, 66, 66, 94),
    SHAPE('L', 9, 50, 62, 50, 44),
    SHAPE('R', 38, 58, 24, 9, 3),
    SHAPE('P', 43, 46, 64, 46, 70, 2, 40, 2));

/* cone in the water that brakes at the end of its line, waves above it */
DRAWING(drogue,
    SHAPE('P', 46, 10, 46, 66, 10, 45, 10, 31),
    SHAPE('L', 4, 46, 64, 78, 42),
    SHAPE('L', 4, 46, 38, 78, 38),
    SHAPE('L', 4, 46, 12, 78, 34),
    SHAPE('L', 7, 78, 38, 100, 38),
    CUT('L', 5, 32, 18, 32, 60),
    SHAPE('L', 7, 16, 78, 30, 90, 44, 78, 58, 90, 72, 78, 84, 88));

/* pole with a point and a hook */
DRAWING(boathook,
    SHAPE('L', 9, 12, 12, 84, 84),
    SHAPE('P', 72, 84, 84, 72, 91, 91),
    SHAPE('A', 9, 66, 52, 17, 215, 395),
    SHAPE('C', 14, 14, 8));

/* saw with a frame and fine teeth */
DRAWING(hacksaw,
    SHAPE('L', 9, 10, 42, 10, 70, 74, 70, 74, 42),
    SHAPE('R', 6, 36, 74, 8),
    SHAPE('P', 8, 37, 14, 26, 20, 37),
    SHAPE('P', 22, 37, 28, 26, 34, 37),
    SHAPE('P', 36, 37, 42, 26, 48, 37),
    SHAPE('P', 50, 37, 56, 26, 62, 37),
    SHAPE('P', 64, 37, 70, 26, 76, 37),
    SHAPE('L', 14, 88, 30, 88, 60));

/* fender that hangs on its line between hull and quay */
DRAWING(fender,
    SHAPE('L', 10, 10, 26, 10, 74),
    SHAPE('R', 34, 10, 32, 56, 15),
    SHAPE('R', 82, 22, 10, 56, 2),
    SHAPE('L', 6, 50, 64, 50, 86, 26, 86),
    SHAPE('C', 24, 86, 7),
    CUT('L', 5, 34, 26, 66, 26),
    CUT('L', 5, 34, 50, 66, 50));

/* three boards one above another between their rails */
DRAWING(boards,
    SHAPE('R', 25, 8, 50, 22, 2),
    SHAPE('R', 25, 36, 50, 22, 2),
    SHAPE('R', 25, 72, 50, 22, 2),
    SHAPE('L', 8, 14, 12, 14, 84),
    SHAPE('L', 8, 86, 12, 86, 84));
