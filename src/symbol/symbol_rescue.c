/* symbol_rescue.c - the signs of gear that saves people: squares with round corners (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* Greek cross, arm width 22, span 72 */
DRAWING(firstaid,
    SHAPE('R', 39, 14, 22, 72),
    SHAPE('R', 14, 39, 72, 22));

/* bag with handle, knocked-out cross */
DRAWING(medbag,
    SHAPE('R', 12, 16, 76, 54, 8),
    SHAPE('L', 6, 34, 70, 34, 82, 66, 82, 66, 70),
    CUT('R', 44, 24, 12, 38),
    CUT('R', 31, 37, 38, 12));

/* deck line with a gap, ladder below, up arrow through the gap */
DRAWING(hatch,
    SHAPE('R', 10, 78, 24, 10),
    SHAPE('R', 66, 78, 24, 10),
    SHAPE('L', 6, 38, 10, 38, 70),
    SHAPE('L', 6, 62, 10, 62, 70),
    SHAPE('L', 5, 38, 20, 62, 20),
    SHAPE('L', 5, 38, 36, 62, 36),
    SHAPE('L', 5, 38, 52, 62, 52),
    SHAPE('P', 50, 98, 34, 80, 44, 80, 44, 64, 56, 64, 56, 80, 66, 80));

/* standing figure at the centre, four corner arrows pointing at it */
DRAWING(muster,
    SHAPE('C', 50, 62, 8),
    SHAPE('R', 41, 28, 18, 26, 6),
    SHAPE('L', 9, 10, 90, 24, 76),
    SHAPE('P', 36, 64, 36, 88, 12, 64),
    SHAPE('L', 9, 90, 90, 76, 76),
    SHAPE('P', 64, 64, 64, 88, 88, 64),
    SHAPE('L', 9, 10, 10, 24, 24),
    SHAPE('P', 36, 36, 36, 12, 12, 36),
    SHAPE('L', 9, 90, 10, 76, 24),
    SHAPE('P', 64, 36, 64, 12, 88, 36));

/* tent canopy on one thick rounded tube, door notch, wave line */
DRAWING(raft,
    SHAPE('P', 14, 44, 50, 84, 86, 44),
    CUT('P', 40, 44, 50, 62, 60, 44),
    SHAPE('R', 8, 28, 84, 16, 8),
    SHAPE('L', 5, 6, 14, 20, 20, 34, 14, 48, 20, 62, 14, 76, 20, 92, 14));

/* blunt rounded handle with lanyard hole, blade, and above it a rope parted in the middle
 * */
DRAWING(knife,
    SHAPE('R', 10, 34, 36, 18, 8),
    CUT('C', 19, 43, 4),
    SHAPE('P', 46, 36, 46, 51, 80, 51, 90, 43, 80, 36),
    SHAPE('L', 6, 8, 70, 42, 70),
    SHAPE('L', 6, 62, 70, 92, 70),
    SHAPE('L', 4, 46, 76, 50, 66),
    SHAPE('L', 4, 56, 76, 60, 66));

/* waistcoat with V neck and front slit, knocked-out waist belt */
DRAWING(jacket,
    SHAPE('P', 30, 90, 42, 90, 50, 66, 58, 90, 70, 90, 80, 72, 80, 16, 54, 16, 54, 44,
          46, 44, 46, 16, 20, 16, 20, 72),
    CUT('R', 20, 34, 60, 6));

/* smaller waistcoat left, child figure right */
DRAWING(jacketchild,
    SHAPE('P', 20, 78, 30, 78, 36, 60, 42, 78, 52, 78, 60, 64, 60, 20, 40, 20, 40, 42,
          32, 42, 32, 20, 12, 20, 12, 64),
    CUT('R', 12, 34, 48, 5),
    SHAPE('C', 80, 60, 8),
    SHAPE('L', 7, 80, 52, 80, 32),
    SHAPE('L', 5, 68, 46, 92, 46),
    SHAPE('L', 5, 80, 32, 72, 16),
    SHAPE('L', 5, 80, 32, 88, 16));

/* two rails, three rungs, two wave lines crossing the foot */
DRAWING(ladder,
    SHAPE('L', 7, 34, 92, 34, 14),
    SHAPE('L', 7, 66, 92, 66, 14),
    SHAPE('L', 6, 34, 78, 66, 78),
    SHAPE('L', 6, 34, 60, 66, 60),
    SHAPE('L', 6, 34, 42, 66, 42),
    SHAPE('L', 5, 4, 24, 18, 30, 32, 24),
    SHAPE('L', 5, 68, 24, 82, 30, 96, 24),
    SHAPE('L', 5, 4, 10, 20, 16, 36, 10, 52, 16, 68, 10, 84, 16, 96, 10));

/* hooded suit in one piece, face in the hood, bands that shine back */
DRAWING(suit,
    SHAPE('C', 50, 84, 14),
    CUT('C', 50, 84, 7),
    SHAPE('P', 36, 71, 64, 71, 92, 50, 84, 38, 66, 49, 68, 4, 53, 4, 50, 36, 47, 4, 32, 4, 34,
          49, 16, 38, 8, 50),
    CUT('L', 4, 15, 56, 23, 42),
    CUT('L', 4, 85, 56, 77, 42),
    CUT('L', 5, 30, 18, 70, 18),
    CUT('L', 4, 50, 68, 50, 40));

/* beaker left, drop upper right, ration pack lower right */
DRAWING(water,
    SHAPE('P', 22, 80, 52, 80, 48, 14, 26, 14),
    CUT('P', 25, 62, 49, 62, 48, 54, 26, 54),
    SHAPE('R', 58, 14, 30, 34, 3),
    CUT('R', 64, 26, 18, 10),
    SHAPE('P', 73, 92, 62, 70, 66, 60, 73, 56, 80, 60, 84, 70));

/* eye on deck with a snap hook in it */
DRAWING(anchorpt,
    SHAPE('R', 6, 4, 88, 11, 3),
    SHAPE('A', 8, 50, 14, 29, 0, 180),
    SHAPE('R', 36, 25, 28, 50, 13),
    CUT('R', 44, 50, 12, 17, 5),
    CUT('R', 44, 32, 12, 7, 3),
    SHAPE('L', 9, 50, 75, 50, 96));

/* person lifted by a loop under the arms */
DRAWING(sling,
    SHAPE('L', 6, 50, 97, 50, 84),
    SHAPE('C', 50, 84, 5),
    SHAPE('C', 50, 60, 9),
    SHAPE('P', 34, 48, 66, 48, 60, 10, 40, 10),
    SHAPE('L', 5, 50, 82, 26, 46),
    SHAPE('L', 5, 50, 82, 74, 46),
    CUT('A', 13, 50, 46, 24, 180, 360),
    SHAPE('A', 7, 50, 46, 24, 180, 360),
    SHAPE('L', 5, 4, 10, 16, 16, 28, 10),
    SHAPE('L', 5, 72, 10, 84, 16, 96, 10));

/* two blocks, the parts of the line, hook */
DRAWING(tackle,
    SHAPE('L', 6, 46, 98, 46, 86),
    SHAPE('C', 46, 78, 14),
    CUT('C', 46, 78, 5),
    SHAPE('C', 46, 36, 14),
    CUT('C', 46, 36, 5),
    SHAPE('L', 5, 34, 78, 34, 36),
    SHAPE('L', 5, 58, 78, 58, 36),
    SHAPE('L', 5, 59, 80, 86, 34),
    SHAPE('L', 5, 46, 64, 46, 50),
    SHAPE('L', 6, 46, 24, 46, 16),
    SHAPE('A', 6, 40, 12, 7, 180, 370));

/* person wrapped up, warmth at both sides */
DRAWING(blanketwarm,
    SHAPE('C', 50, 82, 11),
    SHAPE('P', 50, 70, 30, 60, 22, 10, 78, 10, 70, 60),
    CUT('L', 4, 36, 58, 58, 36, 64, 12),
    SHAPE('A', 5, 12, 34, 6, -90, 90),
    SHAPE('A', 5, 12, 46, 6, 90, 270),
    SHAPE('A', 5, 88, 34, 6, 90, 270),
    SHAPE('A', 5, 88, 46, 6, -90, 90));

/* inflatable boat from above with its oars */
DRAWING(dinghy,
    SHAPE('L', 11, 32, 14, 32, 60),
    SHAPE('L', 11, 68, 14, 68, 60),
    SHAPE('A', 11, 50, 60, 18, 0, 180),
    SHAPE('R', 30, 16, 40, 8, 2),
    SHAPE('R', 30, 44, 40, 9, 2),
    SHAPE('L', 5, 34, 49, 8, 68),
    SHAPE('L', 5, 66, 49, 92, 68),
    SHAPE('P', 16, 57, 19, 63, 8, 74, 3, 66),
    SHAPE('P', 84, 57, 81, 63, 92, 74, 97, 66));

/* a boat seen from above, bow up, two places marked on it and led out to words */
DRAWING(boatplan,
    SHAPE('L', 6, 50, 92, 36, 74, 30, 54, 30, 30, 34, 10, 66, 10, 70, 30, 70, 54, 64,
          74, 50, 92),
    SHAPE('R', 43, 54, 14, 14),
    SHAPE('C', 50, 30, 8),
    SHAPE('L', 4, 57, 61, 92, 61),
    SHAPE('L', 4, 42, 30, 8, 30));

/* person leaving with a bag in the hand */
DRAWING(grab,
    SHAPE('C', 36, 86, 10),
    SHAPE('L', 14, 34, 68, 32, 48),
    SHAPE('L', 8, 32, 46, 42, 30, 38, 8),
    SHAPE('L', 8, 30, 46, 22, 28, 8, 20),
    SHAPE('L', 6, 32, 70, 16, 60, 12, 46),
    SHAPE('L', 6, 36, 70, 52, 58, 72, 58),
    SHAPE('A', 6, 72, 44, 12, 0, 180),
    SHAPE('R', 50, 12, 44, 34, 7));

/* two snap hooks joined by a line */
DRAWING(tether,
    SHAPE('R', 6, 6, 30, 40, 14),
    CUT('R', 14, 14, 14, 24, 6),
    SHAPE('R', 64, 54, 30, 40, 14),
    CUT('R', 72, 62, 14, 24, 6),
    SHAPE('L', 8, 21, 46, 21, 64, 30, 72, 70, 28, 79, 36, 79, 54));

/* line stretched along the deck, a snap hook that slides on it */
DRAWING(jackstay,
    SHAPE('L', 6, 10, 26, 90, 26),
    SHAPE('P', 2, 8, 6, 34, 14, 34, 18, 8),
    SHAPE('P', 82, 8, 86, 34, 94, 34, 98, 8),
    SHAPE('R', 35, 14, 30, 50, 14),
    CUT('R', 43, 32, 14, 24, 6),
    SHAPE('L', 8, 50, 62, 50, 96),
    SHAPE('L', 7, 26, 50, 18, 50),
    SHAPE('P', 20, 38, 20, 62, 4, 50),
    SHAPE('L', 7, 74, 50, 82, 50),
    SHAPE('P', 80, 38, 80, 62, 96, 50));
