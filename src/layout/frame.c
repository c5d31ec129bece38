/* frame.c - where the blocks of an A4 card stand (room: layout). Heights from
 * head to foot; the body takes what is left. */
#include "layout_room.h"

#define STRIP_HEIGHT MM(4.0)
#define BAND_HEIGHT MM(21)
#define STRIPE_HEIGHT MM(1.8)
#define CALL_LINE_HEIGHT MM(6.2)
#define CONTACT_HEIGHT MM(6.55)
#define FOOTER_HEIGHT MM(6.8)
#define GAP MM(0.45)
#define LEFT_WIDTH MM(122)
#define COLUMN_GAP MM(4)

static struct area slice(struct area *rest, mpt height, mpt gap)
{
    struct area top = {rest->x, rest->y, rest->width, height};
    rest->y += height + gap;
    rest->height -= height + gap;
    return top;
}

static struct area slice_below(struct area *rest, mpt height, mpt gap)
{
    struct area low = {rest->x, rest->y + rest->height - height, rest->width, height};
    rest->height -= height + gap;
    return low;
}

/* Safe area: 10 mm at the sides, 16 mm at the head for the punched hole, 8 mm at
 * the foot. */
struct frame frame_make(mpt when_height, mpt panel_height, bool marked)
{
    struct frame frame = {.paper = {0, 0, 595276, 841890}};
    frame.safe = (struct area){MM(10), MM(16), frame.paper.width - 2 * MM(10),
                               frame.paper.height - MM(16) - MM(8)};
    struct area rest = frame.safe;
    if (marked)
        frame.strip_head = slice(&rest, STRIP_HEIGHT, GAP);
    frame.band = slice(&rest, BAND_HEIGHT, GAP);
    frame.stripe = slice(&rest, STRIPE_HEIGHT, GAP);
    frame.when = slice(&rest, when_height, GAP);
    frame.call_line = slice(&rest, CALL_LINE_HEIGHT, MM(0.7));
    if (marked)
        frame.strip_foot = slice_below(&rest, STRIP_HEIGHT, GAP);
    frame.footer = slice_below(&rest, FOOTER_HEIGHT, GAP);
    frame.panel = slice_below(&rest, panel_height, 0);
    frame.contact = slice_below(&rest, CONTACT_HEIGHT, MM(0.7));
    frame.body = rest;
    frame.left = (struct area){rest.x, rest.y, LEFT_WIDTH, rest.height};
    frame.right = (struct area){rest.x + LEFT_WIDTH + COLUMN_GAP, rest.y,
                                rest.width - LEFT_WIDTH - COLUMN_GAP, rest.height};
    return frame;
}
