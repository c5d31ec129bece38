/* symbol_machine.c - the signs of the boat's machines and fixed gear: discs (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* battery marked with the letters of its metal */
DRAWING(lithium,
    SHAPE('L', 8, 8, 16, 92, 16, 92, 70, 8, 70, 8, 16),
    SHAPE('R', 16, 68, 22, 18, 2),
    SHAPE('R', 62, 68, 22, 18, 2),
    SHAPE('L', 11, 30, 58, 30, 29, 50, 29),
    SHAPE('L', 11, 68, 44, 68, 29),
    SHAPE('C', 68, 59, 6.5));

/* propeller shaft through the hull, its seal, a drop from it */
DRAWING(shaftseal,
    SHAPE('L', 8, 14, 50, 96, 50),
    SHAPE('P', 14, 50, 6, 64, 7, 80, 14, 86, 21, 80, 22, 64),
    SHAPE('P', 14, 50, 6, 36, 7, 20, 14, 14, 21, 20, 22, 36),
    SHAPE('R', 38, 60, 12, 38, 2),
    SHAPE('R', 38, 2, 12, 38, 2),
    SHAPE('R', 56, 34, 24, 32, 4),
    CUT('L', 4, 64, 34, 64, 66),
    CUT('L', 4, 72, 34, 72, 66),
    SHAPE('P', 69, 28, 61, 13, 62, 7, 69, 2, 76, 7, 77, 13));

/* bow from above, propeller in it, pushing to both sides */
DRAWING(bowthruster,
    SHAPE('P', 50, 100, 34, 82, 25, 60, 23, 6, 77, 6, 75, 60, 66, 82),
    CUT('C', 50, 42, 23),
    SHAPE('C', 50, 53, 9),
    SHAPE('C', 40.5, 36.5, 9),
    SHAPE('C', 59.5, 36.5, 9),
    SHAPE('P', -4, 42, 16, 57, 16, 27),
    SHAPE('P', 104, 42, 84, 57, 84, 27));

/* engine and a dynamo with a bolt in a frame */
DRAWING(generator,
    SHAPE('L', 7, 10, 16, 10, 82, 90, 82, 90, 16),
    SHAPE('R', 24, 70, 52, 11, 3),
    SHAPE('C', 37, 40, 23),
    CUT('P', 42, 59, 24, 38, 35, 38, 30, 21, 50, 43, 39, 43),
    SHAPE('R', 63, 23, 20, 36, 3),
    CUT('L', 5, 69, 31, 83, 31),
    CUT('L', 5, 69, 41, 83, 41),
    CUT('L', 5, 69, 51, 83, 51));

/* screen with a coast and a boat on her track */
DRAWING(plotter,
    SHAPE('R', 4, 24, 92, 62, 8),
    CUT('R', 13, 33, 74, 44, 3),
    SHAPE('P', 58, 31, 89, 31, 89, 58, 77, 54, 72, 45, 62, 41),
    SHAPE('L', 5, 22, 41, 30, 46),
    SHAPE('L', 5, 39, 52, 44, 56),
    SHAPE('P', 66, 72, 56, 53, 54, 61, 45, 63),
    SHAPE('R', 36, 10, 28, 16, 3));

/* steering wheel that is turned by arrows */
DRAWING(autopilot,
    SHAPE('O', 8, 50, 42, 22),
    SHAPE('C', 50, 42, 8),
    SHAPE('L', 6, 50, 8, 50, 76),
    SHAPE('L', 6, 20.6, 25, 79.4, 59),
    SHAPE('L', 6, 20.6, 59, 79.4, 25),
    SHAPE('A', 6, 50, 42, 50, 60, 120),
    SHAPE('P', 28, 96, 20, 76, 8, 88),
    SHAPE('P', 72, 96, 80, 76, 92, 88));

/* toothed drum on deck, chain over it down to the anchor */
DRAWING(windlass,
    SHAPE('C', 70, 64, 23),
    CUT('O', 6, 70, 64, 11),
    SHAPE('P', 60, 44, 80, 44, 84, 16, 56, 16),
    SHAPE('R', 50, 8, 42, 10, 3),
    SHAPE('L', 9, 60, 86, 54, 86),
    SHAPE('L', 9, 42, 86, 36, 86),
    SHAPE('L', 9, 24, 80, 24, 74),
    SHAPE('L', 9, 24, 60, 24, 16),
    SHAPE('L', 7, 14, 54, 34, 54),
    SHAPE('A', 8, 24, 36, 18, 195, 345));

/* lamp on its stand with a wide beam */
DRAWING(searchlight,
    SHAPE('R', 8, 44, 34, 40, 14),
    SHAPE('R', 28, 44, 18, 40),
    SHAPE('R', 42, 38, 10, 52, 3),
    SHAPE('L', 8, 26, 46, 26, 24),
    SHAPE('R', 10, 14, 34, 10, 3),
    SHAPE('L', 7, 64, 64, 98, 64),
    SHAPE('L', 7, 63, 78, 90, 90),
    SHAPE('L', 7, 63, 50, 90, 38));
