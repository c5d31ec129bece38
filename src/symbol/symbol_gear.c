/* symbol_gear.c - the signs of gear that is worked by hand: discs (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* body, long lever up right, outlet with up arrow, water line */
DRAWING(bilgeman,
    SHAPE('R', 18, 20, 34, 30, 6),
    SHAPE('L', 8, 35, 50, 35, 58),
    SHAPE('L', 9, 35, 58, 78, 80),
    SHAPE('C', 80, 81, 6),
    SHAPE('L', 6, 52, 28, 70, 28, 70, 40),
    SHAPE('P', 64, 40, 76, 40, 70, 50),
    SHAPE('L', 5, 16, 10, 28, 14, 40, 10, 52, 14));

/* pump box, outlet with up arrow, lightning bolt above, water line */
DRAWING(bilgeel,
    SHAPE('R', 30, 20, 40, 28, 6),
    SHAPE('L', 6, 70, 36, 82, 36, 82, 60),
    SHAPE('P', 75, 60, 89, 60, 82, 72),
    SHAPE('P', 52, 92, 36, 66, 48, 66, 42, 50, 62, 74, 50, 74),
    SHAPE('L', 5, 14, 12, 28, 16, 42, 10, 56, 16, 70, 10, 84, 16));

/* tapered plug in a hull line with a hole, three jets below */
DRAWING(plug,
    SHAPE('P', 30, 70, 70, 70, 58, 30, 42, 30),
    SHAPE('R', 26, 70, 48, 10, 4),
    SHAPE('L', 6, 10, 24, 40, 24),
    SHAPE('L', 6, 60, 24, 90, 24),
    SHAPE('L', 5, 50, 22, 50, 12),
    SHAPE('L', 5, 40, 20, 34, 10),
    SHAPE('L', 5, 60, 20, 66, 10));

/* bar to the left, stock head, rudder blade below */
DRAWING(tiller,
    SHAPE('L', 9, 18, 74, 66, 60),
    SHAPE('C', 18, 74, 6),
    SHAPE('R', 60, 52, 16, 16, 3),
    SHAPE('L', 8, 68, 52, 68, 40),
    SHAPE('P', 58, 40, 78, 40, 82, 8, 60, 8));

/* two handles, pivot, jaws on a broken wire */
DRAWING(cutter,
    SHAPE('L', 7, 30, 8, 48, 56),
    SHAPE('L', 7, 70, 8, 52, 56),
    SHAPE('C', 50, 56, 6),
    SHAPE('P', 44, 60, 34, 88, 46, 84, 49, 64),
    SHAPE('P', 56, 60, 66, 88, 54, 84, 51, 64),
    SHAPE('L', 5, 12, 80, 34, 80),
    SHAPE('L', 5, 66, 80, 88, 80));

/* barrel, flared head, three rays */
DRAWING(torch,
    SHAPE('R', 2, 40, 46, 20, 5),
    CUT('L', 5, 20, 50, 30, 50),
    SHAPE('P', 46, 40, 62, 26, 62, 74, 46, 60),
    SHAPE('L', 7, 74, 50, 97, 50),
    SHAPE('L', 7, 72, 67, 90, 80),
    SHAPE('L', 7, 72, 33, 90, 20));

/* board being lifted over water */
DRAWING(panel,
    SHAPE('R', 4, 42, 26, 9, 2),
    SHAPE('R', 70, 42, 26, 9, 2),
    SHAPE('L', 9, 32, 56, 70, 78),
    CUT('O', 3, 60, 72, 4),
    SHAPE('P', 84, 94, 72, 76, 96, 76),
    SHAPE('L', 6, 84, 78, 84, 64),
    SHAPE('L', 5, 28, 28, 39, 34, 50, 28, 61, 34, 72, 28),
    SHAPE('L', 5, 28, 14, 39, 20, 50, 14, 61, 20, 72, 14));

/* roll of tape and a tapered plug */
DRAWING(leakkit,
    SHAPE('O', 15, 32, 44, 20),
    SHAPE('L', 12, 32, 22, 86, 22),
    SHAPE('R', 52, 80, 38, 9, 3),
    SHAPE('P', 55, 82, 87, 82, 80, 40, 62, 40));

/* rounded door with a wheel */
DRAWING(door,
    SHAPE('R', 22, 2, 56, 96, 14),
    CUT('R', 28, 8, 44, 84, 9),
    SHAPE('R', 33, 13, 34, 74, 6),
    CUT('O', 5, 50, 50, 11),
    CUT('L', 4, 36, 50, 64, 50),
    CUT('L', 4, 50, 36, 50, 64));

/* bucket with its bail and line */
DRAWING(bucket,
    SHAPE('P', 24, 54, 76, 54, 67, 4, 33, 4),
    CUT('L', 3, 26, 44, 74, 44),
    SHAPE('R', 21, 50, 58, 8, 3),
    SHAPE('A', 6, 50, 58, 25, 0, 180),
    SHAPE('L', 5, 50, 83, 50, 90),
    SHAPE('O', 4, 50, 95, 5));

/* ring, stock, shank and two flukes */
DRAWING(anchor,
    SHAPE('O', 6, 50, 88, 8),
    SHAPE('L', 9, 50, 80, 50, 12),
    SHAPE('L', 8, 32, 66, 68, 66),
    SHAPE('A', 9, 50, 42, 32, 195, 345),
    SHAPE('P', 8, 52, 8, 26, 32, 36),
    SHAPE('P', 92, 52, 92, 26, 68, 36));

/* tool box with a spanner on it */
DRAWING(toolkit,
    SHAPE('R', 8, 14, 84, 50, 6),
    SHAPE('L', 7, 34, 64, 34, 78, 66, 78, 66, 64),
    CUT('L', 7, 34, 39, 66, 39),
    CUT('C', 28, 39, 11),
    CUT('C', 72, 39, 11),
    SHAPE('R', 14, 35, 13, 8),
    SHAPE('R', 73, 35, 13, 8));

/* stern with the platform folding down over water */
DRAWING(platform,
    SHAPE('P', 4, 76, 42, 76, 48, 30, 12, 30),
    SHAPE('R', 46, 28, 46, 9, 3),
    SHAPE('A', 6, 50, 36, 30, 22, 78),
    SHAPE('P', 70, 46, 88, 46, 80, 34),
    SHAPE('L', 5, 8, 16, 22, 22, 36, 16, 50, 22, 64, 16, 78, 22, 90, 16));

/* stop switch, curled cord and wrist loop */
DRAWING(killcord,
    SHAPE('R', 6, 48, 34, 38, 5),
    CUT('R', 17, 61, 12, 12, 2),
    SHAPE('L', 5, 40, 68, 46, 68),
    SHAPE('A', 5, 53, 68, 7, 0, 180),
    SHAPE('A', 5, 67, 68, 7, 180, 360),
    SHAPE('A', 5, 81, 68, 7, 0, 180),
    SHAPE('L', 5, 88, 68, 88, 50, 76, 40),
    SHAPE('O', 7, 64, 26, 17));

/* drop falling on an absorbent cloth */
DRAWING(spill,
    SHAPE('P', 50, 98, 35, 70, 37, 60, 43, 54, 50, 52, 57, 54, 63, 60, 65, 70),
    SHAPE('P', 4, 20, 70, 20, 96, 44, 30, 44),
    CUT('L', 3, 16, 28, 78, 28),
    CUT('L', 3, 25, 36, 87, 36),
    CUT('L', 3, 24, 20, 50, 44),
    CUT('L', 3, 47, 20, 73, 44));

/* can with a cross pressed in its side, handle and spout */
DRAWING(petrol,
    SHAPE('R', 18, 8, 60, 62, 8),
    SHAPE('L', 7, 28, 68, 28, 84, 54, 84, 54, 68),
    SHAPE('L', 9, 66, 66, 84, 88),
    CUT('L', 5, 32, 22, 64, 56),
    CUT('L', 5, 64, 22, 32, 56));
