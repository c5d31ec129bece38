/* symbol_control.c - the signs of what is shut, stopped or switched: discs (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* bow-tie valve on a pipe, lever ACROSS the pipe (= closed), drop below */
DRAWING(fuel,
    SHAPE('P', 20, 36, 20, 64, 50, 50),
    SHAPE('P', 80, 36, 80, 64, 50, 50),
    SHAPE('L', 7, 50, 50, 50, 74),
    SHAPE('L', 9, 34, 76, 66, 76),
    SHAPE('L', 6, 8, 50, 20, 50),
    SHAPE('L', 6, 80, 50, 92, 50),
    SHAPE('P', 50, 34, 42, 20, 45, 12, 50, 9, 55, 12, 58, 20));

/* same valve, flame below */
DRAWING(gas,
    SHAPE('P', 20, 36, 20, 64, 50, 50),
    SHAPE('P', 80, 36, 80, 64, 50, 50),
    SHAPE('L', 7, 50, 50, 50, 74),
    SHAPE('L', 9, 34, 76, 66, 76),
    SHAPE('L', 6, 8, 50, 20, 50),
    SHAPE('L', 6, 80, 50, 92, 50),
    SHAPE('P', 50, 9, 43.4, 12, 41.6, 17.4, 44, 22.8, 45.8, 20.4, 47.6, 26.4, 51.2, 33,
          52.4, 27, 54.2, 24, 56, 26.4, 58.4, 18.6, 56.6, 12));

/* vertical bow-tie, lever across to the right, wave under */
DRAWING(seacock,
    SHAPE('P', 36, 26, 64, 26, 50, 50),
    SHAPE('P', 36, 74, 64, 74, 50, 50),
    SHAPE('L', 7, 50, 50, 76, 50),
    SHAPE('L', 9, 78, 38, 78, 62),
    SHAPE('L', 6, 50, 74, 50, 88),
    SHAPE('L', 5, 18, 20, 32, 14, 46, 20, 60, 14, 74, 20, 82, 16));

/* round knob with square STOP mark, shaft, base, two small direction arrows */
DRAWING(engstop,
    SHAPE('C', 50, 64, 20),
    CUT('R', 42, 56, 16, 16, 2),
    SHAPE('R', 42, 20, 16, 20),
    SHAPE('L', 8, 26, 18, 74, 18),
    SHAPE('P', 30, 40, 44, 40, 37, 28),
    SHAPE('P', 56, 40, 70, 40, 63, 28));

/* rotary key in a ring, + right, - left, bar base */
DRAWING(battery,
    SHAPE('O', 6, 50, 54, 28),
    SHAPE('R', 44, 36, 12, 38, 5),
    SHAPE('C', 50, 90, 3),
    SHAPE('L', 5, 78, 34, 88, 34),
    SHAPE('L', 5, 83, 29, 83, 39),
    SHAPE('L', 5, 12, 34, 22, 34),
    SHAPE('R', 30, 10, 40, 10, 3));

/* alarm box sounding, bubbles of gas low down */
DRAWING(gasalarm,
    SHAPE('R', 36, 46, 28, 34, 5),
    CUT('C', 50, 63, 7),
    SHAPE('A', 5, 50, 63, 26, -40, 40),
    SHAPE('A', 5, 50, 63, 37, -35, 35),
    SHAPE('A', 5, 50, 63, 26, 140, 220),
    SHAPE('A', 5, 50, 63, 37, 145, 215),
    SHAPE('C', 26, 24, 5),
    SHAPE('C', 42, 30, 4),
    SHAPE('C', 42, 12, 5),
    SHAPE('C', 58, 22, 5),
    SHAPE('C', 74, 28, 4),
    SHAPE('C', 70, 10, 4));

/* alarm box with the letters CO, sounding */
DRAWING(coalarm,
    SHAPE('R', 10, 22, 80, 46, 8),
    CUT('A', 7, 34, 45, 12, 50, 310),
    CUT('O', 7, 66, 45, 12),
    SHAPE('A', 5, 50, 72, 12, 20, 160),
    SHAPE('A', 5, 50, 72, 24, 25, 155));

/* deck opening with a duct, a flap coming down on it */
DRAWING(ventflap,
    SHAPE('R', 6, 40, 26, 9, 2),
    SHAPE('R', 68, 40, 26, 9, 2),
    SHAPE('L', 6, 32, 42, 32, 10),
    SHAPE('L', 6, 68, 42, 68, 10),
    SHAPE('L', 4, 44, 34, 44, 12),
    SHAPE('L', 4, 56, 34, 56, 12),
    SHAPE('L', 9, 28, 57, 60, 82),
    SHAPE('L', 6, 78, 92, 78, 76),
    SHAPE('P', 66, 76, 90, 76, 78, 58));

/* fan in a round housing */
DRAWING(blower,
    SHAPE('O', 5, 50, 50, 46),
    SHAPE('C', 50, 50, 6),
    SHAPE('P', 50, 56.8, 41.5, 78.9, 53.4, 82.3, 56.8, 58.5),
    SHAPE('P', 56.8, 50, 78.9, 58.5, 82.3, 46.6, 58.5, 43.2),
    SHAPE('P', 50, 43.2, 58.5, 21.1, 46.6, 17.7, 43.2, 41.5),
    SHAPE('P', 43.2, 50, 21.1, 41.5, 17.7, 53.4, 41.5, 56.8));

/* stop knob over a generator with a bolt */
DRAWING(genstop,
    SHAPE('R', 10, 14, 56, 38, 5),
    CUT('P', 42, 50, 26, 30, 36, 30, 33, 17, 50, 36, 40, 36),
    SHAPE('C', 70, 72, 19),
    CUT('R', 63, 65, 14, 14, 2),
    SHAPE('L', 7, 70, 54, 70, 30, 62, 30));

/* box: direct current in, alternating current out */
DRAWING(inverter,
    SHAPE('R', 8, 24, 84, 52, 6),
    CUT('L', 5, 20, 56, 38, 56),
    CUT('L', 5, 20, 44, 38, 44),
    CUT('L', 5, 42, 32, 58, 68),
    CUT('A', 5, 67, 49, 6, 0, 180),
    CUT('A', 5, 79, 51, 6, 180, 360));

/* plug being pulled from its socket */
DRAWING(shorepower,
    SHAPE('R', 8, 22, 14, 48, 4),
    SHAPE('L', 6, 32, 54, 48, 54),
    SHAPE('L', 6, 32, 38, 48, 38),
    SHAPE('R', 46, 30, 26, 32, 7),
    SHAPE('L', 7, 72, 46, 92, 46),
    SHAPE('L', 7, 36, 84, 64, 84),
    SHAPE('P', 62, 73, 62, 95, 82, 84));

/* two burners over a row of taps */
DRAWING(cooker,
    SHAPE('R', 12, 12, 76, 76, 8),
    CUT('O', 5, 33, 68, 11),
    CUT('O', 5, 67, 68, 11),
    CUT('L', 4, 18, 46, 82, 46),
    CUT('C', 28, 29, 8),
    CUT('C', 50, 29, 8),
    CUT('C', 72, 29, 8),
    SHAPE('L', 4, 28, 29, 28, 36),
    SHAPE('L', 4, 50, 29, 50, 36),
    SHAPE('L', 4, 72, 29, 72, 36));

/* valve worked by a coil with a bolt, flame below */
DRAWING(solenoid,
    SHAPE('P', 18, 34, 18, 60, 50, 47),
    SHAPE('P', 82, 34, 82, 60, 50, 47),
    SHAPE('L', 7, 50, 47, 50, 64),
    SHAPE('R', 32, 62, 36, 34, 4),
    CUT('P', 54, 94, 40, 77, 48, 77, 45, 65, 60, 82, 52, 82),
    SHAPE('L', 6, 6, 47, 18, 47),
    SHAPE('L', 6, 82, 47, 94, 47),
    SHAPE('P', 50, 6, 43.4, 9, 41.6, 14.4, 44, 19.8, 45.8, 17.4, 47.6, 23.4, 51.2, 30,
          52.4, 24, 54.2, 21, 56, 23.4, 58.4, 15.6, 56.6, 9));

/* finned body with warm air rising */
DRAWING(heater,
    SHAPE('R', 12, 12, 76, 36, 6),
    CUT('L', 5, 26, 22, 26, 38),
    CUT('L', 5, 42, 22, 42, 38),
    CUT('L', 5, 58, 22, 58, 38),
    CUT('L', 5, 74, 22, 74, 38),
    SHAPE('A', 5, 30, 64, 7, -90, 90),
    SHAPE('A', 5, 30, 78, 7, 90, 270),
    SHAPE('A', 5, 50, 64, 7, -90, 90),
    SHAPE('A', 5, 50, 78, 7, 90, 270),
    SHAPE('A', 5, 70, 64, 7, -90, 90),
    SHAPE('A', 5, 70, 78, 7, 90, 270));

/* panel of cells under the sun */
DRAWING(solar,
    SHAPE('P', 10, 16, 68, 16, 90, 52, 32, 52),
    CUT('L', 4, 21, 34, 79, 34),
    CUT('L', 4, 29, 16, 51, 52),
    CUT('L', 4, 49, 16, 71, 52),
    SHAPE('C', 36, 76, 9),
    SHAPE('L', 5, 36, 90, 36, 96),
    SHAPE('L', 5, 50, 76, 56, 76),
    SHAPE('L', 5, 46, 86, 50, 90),
    SHAPE('L', 5, 26, 86, 22, 90),
    SHAPE('L', 5, 22, 76, 16, 76));
