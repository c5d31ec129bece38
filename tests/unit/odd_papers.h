/* odd_papers.h - papers that no table has, for the tests of layout. */
#ifndef MAYDECK_ODD_PAPERS_H
#define MAYDECK_ODD_PAPERS_H

#include "paper.h"

/* Smaller than the papers of the table, with other margins; larger, and not punched; one that
 * hangs so high that it is read from farther off; and one that is held before the eyes. */
static const struct paper small = {
    .key = "small", .width = MM(200), .height = MM(290), .side = MM(11), .head = MM(17),
    .foot = MM(9), .punch_down = MM(8), .punch_clear = MM(21), .reading_mm = 500,
    .title_mm = 1600};
static const struct paper large = {
    .key = "large", .width = MM(240), .height = MM(340), .side = MM(10), .head = MM(12),
    .foot = MM(10), .punch_down = 0, .punch_clear = MM(21), .reading_mm = 500,
    .title_mm = 1600};
static const struct paper far = {
    .key = "far", .width = MM(297), .height = MM(420), .side = MM(12), .head = MM(18),
    .foot = MM(10), .punch_down = MM(8), .punch_clear = MM(21), .reading_mm = 700,
    .title_mm = 1600};
static const struct paper tall = {
    .key = "tall", .width = 612000, .height = 1008000, .side = MM(10), .head = MM(16),
    .foot = MM(8), .punch_down = MM(8), .punch_clear = MM(21), .reading_mm = 550,
    .title_mm = 1600};
static const struct paper near = {
    .key = "near", .width = MM(210), .height = MM(297), .side = MM(10), .head = MM(12),
    .foot = MM(8), .punch_down = 0, .punch_clear = MM(21), .reading_mm = 450,
    .title_mm = 1600};

#endif
