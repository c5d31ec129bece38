/* call_block.c - the contact line and the call panel at the foot (room:
 * layout). */
#include "layout_room.h"

#include <string.h>

#define HEAD_HEIGHT MM(6.0)
#define SET_WIDTH MM(52)
#define PAD MM(2.4)
#define PAD_TOP MM(0.6)
#define PAD_FOOT MM(1.2)
#define FRAME MM(0.7)

static struct paragraph operate_paragraph(const struct sheet *sheet, const struct card_text *line,
                                          mpt size)
{
    struct style style = {ROLE_SCRIPT, FACE_TEXT, size, INK_BLACK};
    return paragraph_make(sheet, &style, line->text, SET_WIDTH - 2 * PAD, line->origin);
}

static mpt operate_height(const struct sheet *sheet, mpt size)
{
    mpt height = 0;
    for (size_t i = 0; i < sheet->card->call.operate_count; i++) {
        struct paragraph line = operate_paragraph(sheet, &sheet->card->call.operate[i], size);
        height += paragraph_height(&line);
    }
    return height;
}

static struct area script_area(struct area panel)
{
    return (struct area){panel.x + SET_WIDTH + PAD, panel.y + HEAD_HEIGHT + PAD_TOP,
                         panel.width - SET_WIDTH - 2 * PAD, 0};
}

mpt panel_height(const struct sheet *sheet, mpt size, mpt width)
{
    struct sheet trial = *sheet;
    struct area column = script_area((struct area){0, 0, width, 0});
    mpt script = script_set(&trial, sheet->card->call.script, size, column, true);
    mpt operate = operate_height(sheet, size);
    mpt inside = script > operate ? script : operate;
    return HEAD_HEIGHT + PAD_TOP + inside + PAD_FOOT;
}

/* Left and right text on one line of a box. */
static void ends_place(struct sheet *sheet, struct area box, struct style style, const char *left,
                       const char *right, const char *what)
{
    const struct size_rule *rule = size_rule(style.role);
    struct paragraph first, last;
    struct place origin = sheet->card->call.origin;
    mpt room = box.width - 2 * PAD - MM(4), need;
    for (style.size = rule->aim;; style.size -= 250) {
        first = paragraph_make(sheet, &style, left, MM(2000), origin);
        last = paragraph_make(sheet, &style, right, MM(2000), origin);
        need = (first.line_count > 0 ? first.lines[0].width : 0) +
               (last.line_count > 0 ? last.lines[0].width : 0);
        if (need <= room || style.size <= rule->floor)
            break;
    }
    mpt baseline = baseline_in(box.y, box.height, style.size);
    if (first.line_count > 0)
        line_place(sheet, &first, 0, box.x + PAD, baseline);
    if (last.line_count > 0)
        line_place(sheet, &last, 0, box.x + box.width - PAD - last.lines[0].width, baseline);
    if (need > room)
        sheet_too_long(sheet, origin, need - room,
                       "shorten the name of the rescue centre, or the radio's spot", what);
}

static void contact_place(struct sheet *sheet, struct area box)
{
    struct style style = {ROLE_CONTACT, FACE_TEXT, 0, INK_BLACK};
    sheet->block = "contact";
    sheet_box(sheet, box, INK_NONE, INK_BLACK, MM(0.5), MM(1));
    ends_place(sheet, box, style, sheet->card->contact_left, sheet->card->contact_right,
               "the contact line");
}

/* Room left in the panel goes between its lines, as far as they still belong
 * together. */
static mpt line_gap(mpt room, size_t lines)
{
    mpt gap = lines > 1 && room > 0 ? room / (mpt)(lines - 1) : 0;
    return gap > MM(1.6) ? MM(1.6) : gap;
}

static void operate_place(struct sheet *sheet, mpt size, mpt x, mpt top, mpt height)
{
    mpt gap = line_gap(height - operate_height(sheet, size), sheet->card->call.operate_count);
    for (size_t i = 0; i < sheet->card->call.operate_count; i++) {
        struct paragraph line = operate_paragraph(sheet, &sheet->card->call.operate[i], size);
        paragraph_place(sheet, &line, x, top);
        top += paragraph_height(&line) + gap;
    }
}

void panel_place(struct sheet *sheet, mpt size, const struct frame *frame)
{
    struct area panel = frame->panel;
    struct area head = {panel.x, panel.y, panel.width, HEAD_HEIGHT};
    struct style style = {ROLE_CONTACT, FACE_BOLD, 0, INK_WHITE};
    mpt line = panel.x + SET_WIDTH;
    contact_place(sheet, frame->contact);
    if (!sheet->card->call.given)
        return;
    sheet->block = "call";
    sheet_box(sheet, head, INK_BLACK, INK_NONE, 0, MM(1));
    sheet_box(sheet, panel, INK_NONE, INK_BLACK, FRAME, MM(1));
    ends_place(sheet, head, style, sheet->card->call.title, sheet->card->call.station,
               "the head of the call panel");
    sheet_line(sheet, (struct point){line, panel.y + HEAD_HEIGHT},
               (struct point){line, panel.y + panel.height}, INK_BLACK, MM(0.35));
    struct area script = script_area(panel);
    script.height = panel.height - HEAD_HEIGHT - PAD_TOP - PAD_FOOT;
    operate_place(sheet, size, panel.x + PAD, script.y, script.height);
    script_set(sheet, sheet->card->call.script, size, script, false);
}
