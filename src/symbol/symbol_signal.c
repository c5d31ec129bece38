/* symbol_signal.c - the signs of gear that calls for help or is thrown to people: squares with
 * round corners (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* thick ring with four knocked-out bands at 0/90/180/270 deg */
DRAWING(buoy,
    SHAPE('O', 22, 50, 50, 30),
    CUT('P', 43, 92, 57, 92, 55, 66, 45, 66),
    CUT('P', 43, 8, 57, 8, 55, 34, 45, 34),
    CUT('P', 92, 43, 92, 57, 66, 55, 66, 45),
    CUT('P', 8, 43, 8, 57, 34, 55, 34, 45));

/* smaller ring upper left, zig-zag line to lower right */
DRAWING(buoyline,
    SHAPE('O', 16, 40, 60, 24),
    CUT('P', 35, 94, 45, 94, 44, 72, 36, 72),
    CUT('P', 35, 26, 45, 26, 44, 48, 36, 48),
    CUT('P', 6, 55, 6, 65, 28, 64, 28, 56),
    CUT('P', 74, 55, 74, 65, 52, 64, 52, 56),
    SHAPE('L', 5, 60, 42, 78, 34, 60, 24, 84, 16, 64, 8));

/* ring lower left, lamp upper right with three rays */
DRAWING(buoylight,
    SHAPE('O', 16, 38, 38, 24),
    CUT('P', 33, 72, 43, 72, 42, 50, 34, 50),
    CUT('P', 33, 4, 43, 4, 42, 26, 34, 26),
    CUT('P', 4, 33, 4, 43, 26, 42, 26, 34),
    CUT('P', 72, 33, 72, 43, 50, 42, 50, 34),
    SHAPE('R', 72, 54, 14, 20, 5),
    SHAPE('L', 4, 79, 80, 79, 94),
    SHAPE('L', 4, 68, 78, 58, 88),
    SHAPE('L', 4, 90, 78, 98, 86),
    SHAPE('L', 4, 79, 54, 62, 44));

/* short tube with thin mast; two concentric arcs above (arcs face up) */
DRAWING(sart,
    SHAPE('R', 40, 10, 20, 46, 8),
    SHAPE('R', 46, 56, 8, 14),
    SHAPE('A', 5, 50, 68, 18, 20, 160),
    SHAPE('A', 5, 50, 68, 28, 25, 155),
    CUT('R', 40, 30, 20, 5));

/* tapered float body with collar, whip aerial, arcs to both sides, water line */
DRAWING(epirb,
    SHAPE('P', 34, 14, 66, 14, 60, 42, 40, 42),
    SHAPE('R', 30, 42, 40, 11, 5),
    SHAPE('L', 5, 50, 53, 50, 74),
    SHAPE('A', 5, 50, 74, 13, -50, 50),
    SHAPE('A', 5, 50, 74, 22, -45, 45),
    SHAPE('A', 5, 50, 74, 13, 130, 230),
    SHAPE('A', 5, 50, 74, 22, 135, 225),
    SHAPE('L', 4, 8, 9, 30, 13, 50, 7, 70, 13, 92, 9));

/* hand tube, tall pointed flame, four rays */
DRAWING(flares,
    SHAPE('R', 40, 8, 18, 44, 4),
    CUT('R', 40, 40, 18, 4),
    SHAPE('P', 49, 94, 38, 74, 43, 62, 49, 54, 55, 62, 60, 74),
    SHAPE('L', 4, 24, 66, 32, 62),
    SHAPE('L', 4, 74, 66, 66, 62),
    SHAPE('L', 4, 26, 84, 34, 78),
    SHAPE('L', 4, 72, 84, 64, 78));

/* half-dome parachute, three shroud lines, burning ball with three rays below */
DRAWING(rocket,
    SHAPE('A', 5, 50, 66, 26, 0, 180),
    SHAPE('L', 5, 24, 66, 76, 66),
    SHAPE('L', 3, 28, 66, 50, 40),
    SHAPE('L', 3, 72, 66, 50, 40),
    SHAPE('L', 3, 50, 66, 50, 40),
    SHAPE('C', 50, 34, 7),
    SHAPE('L', 4, 50, 22, 50, 8),
    SHAPE('L', 4, 38, 26, 30, 14),
    SHAPE('L', 4, 62, 26, 70, 14));

/* hand-held set, aerial on the left top, screen and speaker knocked out, two arcs right
 * */
DRAWING(vhfhand,
    SHAPE('R', 32, 8, 32, 56, 6),
    CUT('R', 38, 44, 20, 12, 2),
    CUT('C', 48, 28, 6),
    SHAPE('L', 7, 40, 64, 40, 92),
    SHAPE('A', 5, 44, 78, 22, -35, 35),
    SHAPE('A', 5, 44, 78, 34, -30, 30));

/* wide radio, screen left, framed square key right (= distress key), fist microphone
 * below on a cord */
DRAWING(vhffix,
    SHAPE('R', 10, 40, 80, 42, 6),
    CUT('R', 18, 56, 34, 18, 2),
    CUT('R', 66, 58, 16, 14, 2),
    SHAPE('R', 70, 61, 8, 8),
    SHAPE('C', 26, 48, 3),
    SHAPE('C', 36, 48, 3),
    SHAPE('C', 46, 48, 3),
    SHAPE('L', 4, 74, 40, 74, 26, 60, 18),
    SHAPE('R', 36, 8, 24, 18, 6));

/* head and raised arms above two wave lines; push-button upper right */
DRAWING(mob,
    SHAPE('C', 30, 36, 9),
    SHAPE('L', 7, 20, 26, 8, 44),
    SHAPE('L', 7, 40, 26, 48, 46),
    SHAPE('L', 5, 4, 20, 18, 26, 32, 20, 46, 26, 60, 20, 74, 26, 96, 20),
    SHAPE('L', 5, 4, 8, 20, 14, 36, 8, 52, 14, 68, 8, 84, 14, 96, 8),
    SHAPE('R', 58, 56, 32, 32, 5),
    CUT('O', 4, 74, 72, 11),
    CUT('C', 74, 72, 5));

/* horn facing right with three rising bars */
DRAWING(alarmgen,
    SHAPE('P', 14, 40, 14, 60, 34, 60, 62, 84, 62, 16, 34, 40),
    SHAPE('L', 6, 72, 36, 72, 64),
    SHAPE('L', 6, 82, 26, 82, 74),
    SHAPE('L', 6, 92, 18, 92, 82));

/* pole with flag and float in the water */
DRAWING(dan,
    SHAPE('L', 6, 46, 8, 46, 94),
    SHAPE('P', 48, 95, 88, 81, 48, 67),
    SHAPE('C', 46, 34, 15),
    SHAPE('L', 5, 4, 22, 16, 28, 26, 22),
    SHAPE('L', 5, 66, 22, 78, 28, 96, 22),
    SHAPE('L', 5, 4, 8, 18, 14, 32, 8),
    SHAPE('L', 5, 60, 8, 76, 14, 96, 8));

/* coil of line, and its end flying with a weight */
DRAWING(line,
    SHAPE('O', 8, 30, 32, 21),
    SHAPE('O', 7, 30, 32, 8),
    SHAPE('A', 7, 51, 56, 24, 270, 360),
    SHAPE('L', 7, 75, 56, 75, 68),
    SHAPE('C', 75, 78, 15),
    CUT('L', 4, 62, 78, 88, 78),
    CUT('L', 4, 75, 65, 75, 91));

/* eight-sided reflector sending the beam back */
DRAWING(radarreflector,
    SHAPE('P', 38, 94, 68, 50, 38, 6, 8, 50),
    CUT('L', 4, 8, 50, 68, 50),
    CUT('P', 38, 50, 38, 94, 24, 50),
    CUT('P', 38, 50, 38, 6, 52, 50),
    SHAPE('A', 6, 46, 50, 34, -32, 32),
    SHAPE('A', 6, 46, 50, 46, -30, 30));

/* person in the water with a sending beacon */
DRAWING(beaconperson,
    SHAPE('C', 32, 58, 11),
    SHAPE('P', 10, 14, 16, 42, 28, 44, 36, 44, 50, 42, 54, 14),
    CUT('L', 4, 32, 42, 32, 16),
    SHAPE('R', 48, 34, 10, 22, 3),
    SHAPE('L', 5, 53, 54, 53, 76),
    SHAPE('A', 5, 53, 76, 13, -50, 60),
    SHAPE('A', 5, 53, 76, 25, -45, 55),
    CUT('L', 11, 4, 14, 18, 20, 32, 14, 46, 20, 60, 14, 74, 20, 96, 14),
    SHAPE('L', 5, 4, 14, 18, 20, 32, 14, 46, 20, 60, 14, 74, 20, 96, 14));

/* release unit on its strap, water pressing on it */
DRAWING(hru,
    SHAPE('C', 50, 50, 22),
    CUT('O', 5, 50, 50, 13),
    SHAPE('L', 8, 50, 70, 50, 97),
    SHAPE('L', 8, 50, 30, 50, 4),
    SHAPE('L', 6, 6, 50, 14, 50),
    SHAPE('P', 13, 40, 13, 60, 25, 50),
    SHAPE('L', 6, 94, 50, 86, 50),
    SHAPE('P', 87, 40, 87, 60, 75, 50),
    SHAPE('L', 5, 6, 82, 15, 88, 24, 82, 33, 88),
    SHAPE('L', 5, 67, 88, 76, 82, 85, 88, 94, 82));

/* whip aerial sending, its cable and plug */
DRAWING(aerial,
    SHAPE('L', 7, 42, 34, 42, 94),
    SHAPE('R', 32, 24, 20, 20, 4),
    SHAPE('A', 5, 42, 78, 18, -45, 45),
    SHAPE('A', 5, 42, 78, 32, -42, 42),
    SHAPE('A', 5, 42, 78, 18, 135, 225),
    SHAPE('A', 5, 42, 78, 32, 138, 222),
    SHAPE('L', 6, 42, 24, 42, 12, 60, 12),
    SHAPE('R', 60, 3, 20, 18, 4),
    SHAPE('L', 6, 80, 12, 93, 12));

/* horn on its gas can, sounding */
DRAWING(foghorn,
    SHAPE('R', 12, 4, 34, 44, 7),
    CUT('L', 4, 12, 36, 46, 36),
    SHAPE('R', 22, 48, 14, 10),
    SHAPE('R', 10, 56, 28, 24, 5),
    SHAPE('P', 36, 62, 36, 74, 68, 92, 68, 44),
    SHAPE('A', 6, 52, 68, 28, -36, 36),
    SHAPE('A', 6, 52, 68, 41, -32, 32));

/* card with a telephone and lines of writing */
DRAWING(contacts,
    SHAPE('R', 4, 10, 92, 80, 8),
    CUT('A', 12, 60, 74, 40, 187, 263),
    CUT('L', 15, 20, 68, 24, 76),
    CUT('L', 15, 54, 34, 62, 38),
    CUT('L', 6, 46, 78, 84, 78),
    CUT('L', 6, 54, 64, 84, 64));
