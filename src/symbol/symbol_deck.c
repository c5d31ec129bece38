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
    SHAPE('R', 22, 8, 56, 10, 3),
    SHAPE('R', 34, 14, 11, 24),
    SHAPE('R', 55, 14, 11, 24),
    SHAPE('L', 13, 12, 40, 88, 40),
    SHAPE('L', 8, 30, 55, 52, 52, 40, 66, 64, 82),
    SHAPE('P', 54, 88, 80, 94, 70, 70));

/* sail on a stick that turns, an arrow round the stick */
DRAWING(sailroller,
    SHAPE('L', 8, 30, 4, 30, 96),
    SHAPE('P', 40, 90, 40, 38, 92, 38),
    SHAPE('A', 7, 36, 20, 26, 250, 372),
    SHAPE('P', 48, 26, 74, 26, 62, 42),
    CUT('L', 4, 50, 48, 50, 70),
    SHAPE('C', 30, 20, 9));

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

/* quadrant of the rudder under a lid that stands open */
DRAWING(quadrant,
    SHAPE('P', 50, 2, 12, 36, 20, 46, 34, 54, 50, 57, 66, 54, 80, 46, 88, 36),
    CUT('P', 50, 24, 34, 38, 42, 42, 50, 43, 58, 42, 66, 38),
    CUT('C', 50, 13, 5),
    SHAPE('L', 8, 8, 66, 82, 94),
    SHAPE('L', 7, 64, 66, 94, 66));

/* cone in the water that brakes at the end of its line, waves above it */
DRAWING(drogue,
    SHAPE('P', 48, 8, 48, 68, 10, 48, 10, 28),
    SHAPE('L', 5, 48, 64, 98, 42),
    SHAPE('L', 5, 48, 38, 98, 42),
    SHAPE('L', 5, 48, 12, 98, 42),
    SHAPE('L', 7, 16, 80, 30, 90, 44, 80, 58, 90, 72, 80, 84, 88));

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

/* fender on a line between a hull and a quay */
DRAWING(fender,
    SHAPE('R', 33, 6, 34, 58, 15),
    SHAPE('C', 50, 68, 7),
    SHAPE('L', 7, 50, 70, 50, 90),
    SHAPE('L', 8, 26, 92, 74, 92),
    CUT('L', 5, 33, 24, 67, 24),
    CUT('L', 5, 33, 46, 67, 46));

/* three boards one above another between their rails */
DRAWING(boards,
    SHAPE('R', 25, 8, 50, 22, 2),
    SHAPE('R', 25, 36, 50, 22, 2),
    SHAPE('R', 25, 72, 50, 22, 2),
    SHAPE('L', 8, 14, 12, 14, 84),
    SHAPE('L', 8, 86, 12, 86, 84));
