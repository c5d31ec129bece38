/* ink.c - what the inks of a page are on paper (room: layout). The one table:
 * drawing paints with it and proofreading measures by it. */
#include "page.h"

static const struct rgb inks[INK_COUNT] = {
    [INK_NONE] = {0xFF, 0xFF, 0xFF},    [INK_BLACK] = {0x00, 0x00, 0x00},
    [INK_WHITE] = {0xFF, 0xFF, 0xFF},   [INK_GREY] = {0x55, 0x55, 0x55},
    [INK_FIRE] = {0x9B, 0x24, 0x23},    [INK_RESCUE] = {0x23, 0x7F, 0x52},
    [INK_CONTROL] = {0x00, 0x53, 0x87}, [INK_WARNING] = {0xF9, 0xA8, 0x00},
};

struct rgb ink_rgb(enum ink ink)
{
    return inks[ink];
}
