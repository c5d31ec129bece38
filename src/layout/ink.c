/* ink.c - what the inks of a page are on paper (room: layout). The one table: drawing paints with
 * it and proofreading measures by it. */
#include "page.h"

#include "promise.h"

#define GREY_OF(level) {level, level, level}

/* The mono palette is no grey print of the other, in which red, blue and green are one dark tone:
 * red has 85 % of black, green 55 %, blue all of it, yellow none. */
static const struct rgb inks[PALETTE_COUNT][INK_COUNT] = {
    [PALETTE_COLOUR] = {
        [INK_NONE] = GREY_OF(0xFF), [INK_BLACK] = GREY_OF(0x00), [INK_WHITE] = GREY_OF(0xFF),
        [INK_GREY] = GREY_OF(0x55), [INK_FIRE] = {0x9B, 0x24, 0x23},
        [INK_RESCUE] = {0x23, 0x7F, 0x52}, [INK_CONTROL] = {0x00, 0x53, 0x87},
        [INK_WARNING] = {0xF9, 0xA8, 0x00}},
    [PALETTE_MONO] = {
        [INK_NONE] = GREY_OF(0xFF), [INK_BLACK] = GREY_OF(0x00), [INK_WHITE] = GREY_OF(0xFF),
        [INK_GREY] = GREY_OF(0x55), [INK_FIRE] = GREY_OF(0x26), [INK_RESCUE] = GREY_OF(0x73),
        [INK_CONTROL] = GREY_OF(0x00), [INK_WARNING] = GREY_OF(0xFF)}};

struct rgb ink_rgb(enum palette palette, enum ink ink)
{
    promise(palette < PALETTE_COUNT && ink < INK_COUNT);
    return inks[palette][ink];
}
