/* gear_sign.c - the sign of a piece of gear beside its name (room: layout). It never
 * borrows the sign of other gear. */
#include "layout_room.h"

#include "measures.h"

#include <string.h>

#include "promise.h"

static enum sign_class class_sign(enum item_class class)
{
    switch (class) {
    case ITEM_FIRE:
        return SIGN_FIRE;
    case ITEM_RESCUE:
        return SIGN_RESCUE;
    case ITEM_CONTROL:
        return SIGN_CONTROL;
    }
    promise_unreached();
}

/* White on the class colour would fade in red light (fire) and is weak for small
 * type (rescue), so the letters have a black ground. They are not read: what stands beside
 * the sign says more. */
static void letters_place(struct pen *pen, struct area area, mpt size, const char *letters,
                          struct place origin)
{
    struct style style = {ROLE_PLAN_TAG, FACE_BOLD, size, INK_WHITE};
    mpt width = pen_width(pen, &style, letters), height = em_share(size, EM_TAG_BOX);
    mpt x = area.x + (area.width - width) / 2;
    size_t outer = reading_skip(pen);
    pen_box(pen, (struct area){x - SIGN_LETTERS_PAD, area.y + (area.height - height) / 2,
                               width + SIGN_LETTERS_PADS, height}, INK_BLACK, INK_NONE, 0,
            SIGN_LETTERS_CORNER);
    pen_text(pen, &style, x, baseline_in(area.y, area.height, size), letters,
             strlen(letters), origin);
    reading_end(pen, outer);
}

void gear_sign_place(struct pen *pen, struct area area, const struct item_kind *kind,
                     mpt size, const char *letters, struct place origin)
{
    char letter[2] = {(char)kind->class, '\0'};
    pen_sign(pen, area, class_sign(kind->class), kind->symbol, origin);
    if (kind->symbol == SYMBOL_NONE)
        letters_place(pen, area, size, letters == NULL ? letter : letters, origin);
}
