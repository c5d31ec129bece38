/* symbol_fire.c - the signs of fire gear: squares (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* upright cylinder left, neck, two-lever head, hose loop to the right, flame at lower
 * right */
DRAWING(ext,
    SHAPE('R', 24, 12, 26, 52, 7),
    SHAPE('R', 31, 64, 12, 8),
    SHAPE('L', 5, 37, 74, 56, 80),
    SHAPE('L', 5, 50, 70, 60, 72),
    SHAPE('A', 5, 50, 58, 14, 270, 90),
    SHAPE('R', 47, 40, 7, 6),
    SHAPE('P', 74, 12, 60.4, 18.2, 56.6, 29.4, 61.6, 40.5, 65.3, 35.6, 69, 48, 76.5,
          61.6, 79, 49.2, 82.7, 43, 86.4, 48, 91.4, 31.8, 87.6, 18.2));

/* wall case on top, sheet hanging with wavy hem, two pull tabs, small flame under */
DRAWING(blanket,
    SHAPE('R', 16, 74, 68, 14, 3),
    SHAPE('P', 20, 72, 80, 72, 80, 34, 68, 28, 56, 36, 44, 28, 32, 36, 20, 30),
    CUT('R', 36, 60, 7, 12),
    CUT('R', 57, 60, 7, 12),
    SHAPE('P', 50, 6, 43.4, 9, 41.6, 14.4, 44, 19.8, 45.8, 17.4, 47.6, 23.4, 51.2, 30,
          52.4, 24, 54.2, 21, 56, 23.4, 58.4, 15.6, 56.6, 9));

/* push-button in ring, sound wedge to the right, flame below */
DRAWING(alarm,
    SHAPE('O', 5, 38, 60, 22),
    SHAPE('C', 38, 60, 9),
    SHAPE('P', 62, 40, 62, 72, 78, 56),
    SHAPE('L', 5, 82, 40, 90, 56, 82, 72),
    SHAPE('P', 38, 8, 30.5, 11.4, 28.5, 17.5, 31.2, 23.6, 33.2, 20.9, 35.3, 27.7, 39.4,
          35.2, 40.7, 28.4, 42.8, 25, 44.8, 27.7, 47.5, 18.9, 45.5, 11.4));

/* bottle left, pipe over the top to a nozzle cone spraying down on a flame */
DRAWING(fixed,
    SHAPE('R', 18, 12, 22, 56, 8),
    SHAPE('R', 25, 68, 8, 8),
    SHAPE('L', 5, 29, 78, 29, 86, 74, 86, 74, 72),
    SHAPE('P', 62, 72, 86, 72, 74, 58),
    SHAPE('C', 64, 48, 3),
    SHAPE('C', 74, 46, 3),
    SHAPE('C', 84, 48, 3),
    SHAPE('P', 74, 10, 64.8, 14.2, 62.2, 21.8, 65.6, 29.3, 68.1, 26, 70.6, 34.4, 75.7,
          43.6, 77.4, 35.2, 79.9, 31, 82.4, 34.4, 85.8, 23.4, 83.2, 14.2));

/* nozzle through the port of an engine cover, fire below */
DRAWING(fireport,
    SHAPE('L', 7, 8, 90, 50, 90, 50, 82),
    SHAPE('P', 43, 84, 57, 84, 60, 48, 40, 48),
    SHAPE('P', 4, 66, 33, 66, 33, 56, 14, 56, 14, 6, 4, 6),
    SHAPE('P', 96, 66, 67, 66, 67, 56, 86, 56, 86, 6, 96, 6),
    SHAPE('P', 50, 6, 38, 8, 31, 14, 32, 22, 36, 27, 40, 23, 44, 31, 51, 40, 54, 31, 58, 26,
          62, 30, 69, 19, 67, 12, 61, 7));

/* box, rod, T-handle, arrow pointing down = pull */
DRAWING(remote,
    SHAPE('R', 20, 62, 60, 22, 4),
    CUT('R', 28, 69, 44, 8, 3),
    SHAPE('L', 6, 50, 62, 50, 40),
    SHAPE('L', 8, 30, 34, 70, 34),
    SHAPE('L', 8, 30, 34, 30, 26),
    SHAPE('L', 8, 70, 34, 70, 26),
    SHAPE('P', 44, 22, 56, 22, 50, 6));

/* double coil, tail to a nozzle at right, three drops */
DRAWING(hose,
    SHAPE('O', 6, 40, 46, 26),
    SHAPE('O', 5, 40, 46, 14),
    SHAPE('L', 6, 40, 20, 70, 20, 78, 34),
    SHAPE('P', 70, 34, 90, 40, 88, 50, 66, 42),
    SHAPE('C', 90, 60, 3),
    SHAPE('C', 82, 66, 3),
    SHAPE('C', 94, 72, 3));

/* one large flame */
DRAWING(flame,
    SHAPE('P', 50, 10, 35.9, 12.4, 26.4, 18.8, 21.2, 27.7, 20, 38, 23.9, 50.1, 31.4,
          61.2, 38.7, 74.3, 42, 92, 52.2, 84.4, 58.9, 76.5, 62.4, 67.8, 63, 58, 65.8,
          60.5, 68.1, 63.4, 69.9, 66.9, 71, 71, 76.1, 61.7, 79.4, 53.1, 81, 44.7, 81,
          36, 78.3, 25.2, 71.9, 17, 62.3, 11.8),
    CUT('P', 50, 16, 41.7, 18.4, 37, 24.3, 36, 32, 39.4, 40.5, 45, 48.1, 49, 58, 56.9,
          49.4, 62.1, 40.2, 64, 31, 62.1, 23.1, 57.2, 17.9));

/* alarm under the deckhead, smoke rising to it */
DRAWING(smokealarm,
    SHAPE('R', 8, 86, 84, 7),
    SHAPE('P', 24, 86, 76, 86, 68, 68, 32, 68),
    SHAPE('A', 5, 26, 18, 8, -90, 90),
    SHAPE('A', 5, 26, 34, 8, 90, 270),
    SHAPE('L', 5, 26, 42, 30, 54),
    SHAPE('A', 5, 50, 18, 8, -90, 90),
    SHAPE('A', 5, 50, 34, 8, 90, 270),
    SHAPE('L', 5, 50, 42, 54, 54),
    SHAPE('A', 5, 74, 18, 8, -90, 90),
    SHAPE('A', 5, 74, 34, 8, 90, 270),
    SHAPE('L', 5, 74, 42, 78, 54));
