/* symbol_control.c - the signs of what is shut, stopped or switched: discs (room: symbol).
 * Our own drawings; the geometry notes are in symbol_private.h. Nothing is computed. */
#include "symbol_private.h"

/* valve in a pipe, its lever ACROSS the pipe (= closed), a large drop below */
DRAWING(fuel,
    SHAPE('P', 16, 50, 16, 78, 50, 64),
    SHAPE('P', 84, 50, 84, 78, 50, 64),
    SHAPE('L', 7, 3, 64, 16, 64),
    SHAPE('L', 7, 84, 64, 97, 64),
    SHAPE('L', 9, 50, 64, 50, 92),
    SHAPE('C', 50, 94, 7),
    SHAPE('P', 50, 48, 41, 32, 36, 20, 37, 11, 42, 4, 50, 1, 58, 4, 63, 11, 64, 20, 59, 32));

/* a large flame over a valve in a pipe, its lever ACROSS the pipe (= closed) */
DRAWING(gas,
    SHAPE('P', 50, 44, 38, 48, 31, 56, 30, 66, 34, 75, 39, 70, 42, 82, 50, 98, 53, 86, 58, 78,
          61, 84, 68, 74, 70, 64, 68, 54, 61, 47),
    CUT('P', 50, 50, 44, 53, 43, 60, 48, 68, 50, 76, 56, 66, 57, 57),
    SHAPE('P', 16, 14, 16, 42, 50, 28),
    SHAPE('P', 84, 14, 84, 42, 50, 28),
    SHAPE('L', 7, 6, 28, 16, 28),
    SHAPE('L', 7, 84, 28, 94, 28),
    SHAPE('L', 9, 50, 28, 50, 4),
    SHAPE('C', 50, 2, 7));

/* valve in an upright pipe, its lever ACROSS the pipe (= closed), the sea below */
DRAWING(seacock,
    SHAPE('P', 32, 24, 68, 24, 50, 48),
    SHAPE('P', 32, 72, 68, 72, 50, 48),
    SHAPE('L', 9, 50, 48, 84, 48),
    SHAPE('C', 88, 48, 7),
    SHAPE('L', 10, 50, 72, 50, 94),
    SHAPE('L', 6, 14, 10, 26, 16, 38, 10, 50, 16, 62, 10, 74, 16, 86, 10));

/* engine with a square on it, the mark of stopping */
DRAWING(engstop,
    SHAPE('P', 24, 20, 24, 66, 34, 72, 66, 72, 74, 62, 80, 62, 80, 54, 86, 54, 86, 66, 95, 66,
          95, 24, 86, 24, 86, 36, 80, 36, 72, 20),
    SHAPE('R', 44, 70, 12, 10),
    SHAPE('L', 8, 34, 83, 66, 83),
    SHAPE('L', 8, 9, 32, 9, 60),
    SHAPE('R', 9, 41, 16, 10),
    CUT('R', 36, 31, 30, 30, 2));

/* battery, and a switch that stands open in its lead */
DRAWING(battery,
    SHAPE('R', 12, 10, 76, 42, 5),
    SHAPE('R', 21, 50, 16, 8, 2),
    SHAPE('R', 63, 50, 16, 8, 2),
    CUT('L', 7, 22, 31, 38, 31),
    CUT('L', 7, 61, 31, 79, 31),
    CUT('L', 7, 70, 22, 70, 40),
    SHAPE('L', 7, 29, 56, 29, 70),
    SHAPE('L', 7, 71, 56, 71, 70),
    SHAPE('C', 71, 72, 6),
    SHAPE('L', 8, 29, 72, 60, 96));

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

/* case with direct current in it, alternating current out of it */
DRAWING(inverter,
    SHAPE('L', 7, 6, 22, 94, 22, 94, 78, 6, 78, 6, 22),
    SHAPE('L', 8, 20, 63, 40, 63),
    SHAPE('L', 8, 20, 48, 40, 48),
    SHAPE('L', 6, 36, 22, 64, 78),
    SHAPE('A', 7, 63, 42, 7.5, 0, 180),
    SHAPE('A', 7, 78, 42, 7.5, 180, 360));

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

/* electric switch with a bolt that works a valve in a pipe, a flame */
DRAWING(solenoid,
    SHAPE('R', 12, 54, 34, 40, 4),
    CUT('P', 34, 91, 18, 72, 27, 72, 24, 57, 40, 76, 31, 76),
    SHAPE('L', 7, 30, 56, 30, 42, 50, 42, 50, 24),
    SHAPE('P', 70, 46, 60, 50, 55, 58, 56, 66, 60, 73, 63, 69, 66, 79, 71, 92, 74, 81, 78, 74,
          81, 78, 87, 66, 85, 55, 80, 49),
    SHAPE('P', 16, 8, 16, 36, 50, 22),
    SHAPE('P', 84, 8, 84, 36, 50, 22),
    SHAPE('L', 7, 8, 22, 16, 22),
    SHAPE('L', 7, 84, 22, 92, 22));

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

/* gas bottle in a locker whose lid stands open */
DRAWING(gaslocker,
    SHAPE('L', 8, 14, 66, 14, 10, 86, 10, 86, 66),
    SHAPE('L', 8, 14, 72, 74, 98),
    SHAPE('R', 30, 18, 40, 40, 9),
    SHAPE('R', 43, 56, 14, 8),
    SHAPE('L', 6, 37, 67, 63, 67),
    CUT('P', 50, 24, 43, 27, 40, 34, 43, 42, 46, 38, 50, 52, 54, 43, 57, 46, 60, 35, 57, 27));

/* pressure regulator, and a hose that leads to a flame */
DRAWING(gashose,
    SHAPE('L', 8, 4, 72, 20, 72),
    SHAPE('C', 27, 72, 16),
    CUT('C', 27, 72, 6),
    SHAPE('L', 10, 27, 60, 27, 30),
    SHAPE('A', 10, 47, 30, 20, 180, 360),
    SHAPE('L', 10, 67, 30, 67, 38),
    SHAPE('R', 54, 38, 26, 8, 2),
    SHAPE('P', 67, 50, 56, 54, 51, 63, 52, 71, 56, 78, 59, 74, 62, 84, 68, 97, 71, 86, 75, 79,
          78, 83, 84, 70, 82, 59, 77, 53));

/* bell sounding over water that stands in the bilge */
DRAWING(bilgealarm,
    SHAPE('P', 28, 56, 35, 64, 37, 80, 43, 88, 57, 88, 63, 80, 65, 64, 72, 56),
    SHAPE('C', 50, 90, 5),
    SHAPE('C', 50, 54, 6),
    SHAPE('A', 5, 50, 72, 30, -32, 32),
    SHAPE('A', 5, 50, 72, 42, -30, 30),
    SHAPE('A', 5, 50, 72, 30, 148, 212),
    SHAPE('A', 5, 50, 72, 42, 150, 210),
    SHAPE('L', 7, 6, 42, 28, 6, 72, 6, 94, 42),
    SHAPE('P', 22, 34, 33, 40, 42, 34, 50, 40, 58, 34, 67, 40, 78, 34, 68, 15, 32, 15));
