/* call_block.c - the contact line and the call panel at the foot (room:
 * layout). */
#include "layout_room.h"

#include <string.h>

#define HEAD_HEIGHT MM(6.1)
#define SET_WIDTH MM(56)
#define PAD MM(2.4)
#define PAD_TOP MM(0.6)
#define PAD_FOOT MM(0.8)
#define FRAME MM(0.7)
#define PANEL_LINES_USUAL 3

/* Where there is nothing to say, the lines have the whole panel. */
static mpt operate_width(const struct pen *pen, mpt panel)
{
    return (sheet_call(pen->sheet)->script == NULL ? panel : SET_WIDTH) - 2 * PAD;
}

static struct paragraph operate_paragraph(const struct pen *pen, const struct card_text *line,
                                          mpt size, mpt width)
{
    struct style style = {ROLE_SCRIPT, FACE_TEXT, size, INK_BLACK};
    return paragraph_make(pen, &style, line->text, width, line->origin);
}

static mpt operate_height(const struct pen *pen, mpt size, mpt width)
{
    mpt height = 0;
    for (size_t i = 0; i < sheet_call(pen->sheet)->operate_count; i++) {
        struct paragraph line =
            operate_paragraph(pen, &sheet_call(pen->sheet)->operate[i], size, width);
        height += paragraph_height(&line);
    }
    return height;
}

static struct area script_area(struct area panel)
{
    return (struct area){panel.x + SET_WIDTH + PAD, panel.y + HEAD_HEIGHT + PAD_TOP,
                         panel.width - SET_WIDTH - 2 * PAD, 0};
}

mpt panel_height(const struct pen *pen, mpt size, mpt width)
{
    struct pen trial = *pen;
    struct area column = script_area((struct area){0, 0, width, 0});
    mpt script = script_set(&trial, sheet_call(pen->sheet)->script, size, column, true);
    mpt operate = operate_height(pen, size, operate_width(pen, width));
    mpt inside = script > operate ? script : operate;
    return HEAD_HEIGHT + PAD_TOP + inside + PAD_FOOT;
}

/* Left and right text on one line of a box. */
struct ends {
    const char *left, *right;
    struct place origin;      /* what may be shortened */
    const char *what, *remedy;
};

/* The same on every card of every boat: told once, since equal messages are. */
static void ends_too_long(struct pen *pen, const struct ends *ends, mpt excess)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, ends->origin, ends->remedy,
                "%s is %s mm too long at the smallest size allowed", ends->what,
                mm_text(pen->arena, excess));
}

static void ends_place(struct pen *pen, struct area box, struct style style,
                       const struct ends *ends)
{
    struct size_rule rule = size_rule(pen->paper, style.role);
    struct paragraph first, last;
    mpt room = box.width - 2 * PAD - MM(4), need;
    for (style.size = rule.aim;; style.size -= 250) {
        first = paragraph_make(pen, &style, ends->left, MM(2000), ends->origin);
        last = paragraph_make(pen, &style, ends->right, MM(2000), ends->origin);
        need = line_width(&first) + line_width(&last);
        if (need <= room || style.size <= rule.floor)
            break;
    }
    mpt baseline = baseline_in(box.y, box.height, style.size);
    if (first.line_count > 0)
        line_place(pen, &first, 0, box.x + PAD, baseline);
    if (last.line_count > 0)
        line_place(pen, &last, 0, box.x + box.width - PAD - line_width(&last), baseline);
    if (need > room)
        ends_too_long(pen, ends, need - room);
}

static void contact_place(struct pen *pen, struct area box)
{
    const struct contact_facts *contact = sheet_contact(pen->sheet);
    struct style style = {ROLE_CONTACT, FACE_TEXT, 0, INK_BLACK};
    struct ends ends = {contact->left, contact->right, contact->origin,
                        "the contact line of the cards", "shorten the name of the rescue centre"};
    pen->block = BLOCK_CONTACT;
    pen_box(pen, box, INK_NONE, INK_BLACK, MM(0.5), MM(1));
    ends_place(pen, box, style, &ends);
}

const struct card_text *panel_longest(const struct pen *pen, mpt size, mpt width)
{
    const struct call_facts *call = sheet_call(pen->sheet);
    struct pen trial = *pen;
    struct area column = script_area((struct area){0, 0, width, 0});
    const struct card_text *longest = NULL;
    size_t most = PANEL_LINES_USUAL;
    mpt lines = operate_width(pen, width);
    if (operate_height(pen, size, lines) <= script_set(&trial, call->script, size, column, true))
        return NULL;
    for (size_t i = 0; i < call->operate_count; i++) {
        struct paragraph line = operate_paragraph(pen, &call->operate[i], size, lines);
        if (line.line_count > most) {
            most = line.line_count;
            longest = &call->operate[i];
        }
    }
    return longest;
}

/* Room left in the panel goes between its lines, as far as they still belong
 * together. */
static mpt line_gap(mpt room, size_t lines)
{
    mpt gap = lines > 1 && room > 0 ? room / (mpt)(lines - 1) : 0;
    return gap > MM(1.6) ? MM(1.6) : gap;
}

static void operate_place(struct pen *pen, mpt size, struct area column)
{
    const struct call_facts *call = sheet_call(pen->sheet);
    mpt width = column.width, top = column.y;
    mpt gap = line_gap(column.height - operate_height(pen, size, width), call->operate_count);
    for (size_t i = 0; i < call->operate_count; i++) {
        struct paragraph line = operate_paragraph(pen, &call->operate[i], size, width);
        paragraph_place(pen, &line, column.x, top);
        top += paragraph_height(&line) + gap;
    }
}

void panel_place(struct pen *pen, mpt size, const struct frame *frame)
{
    const struct call_facts *call = sheet_call(pen->sheet);
    struct area panel = frame->at[AREA_PANEL];
    struct area head = {panel.x, panel.y, panel.width, HEAD_HEIGHT};
    struct style style = {ROLE_CONTACT, FACE_BOLD, 0, INK_WHITE};
    mpt line = panel.x + SET_WIDTH;
    contact_place(pen, frame->at[AREA_CONTACT]);
    if (sheet_block(pen->sheet, BLOCK_CALL) == NULL)
        return;
    pen->block = BLOCK_CALL;
    pen_box(pen, head, INK_BLACK, INK_NONE, 0, MM(1));
    pen_box(pen, panel, INK_NONE, INK_BLACK, FRAME, MM(1));
    struct ends ends = {call->title, call->station, pen->sheet->boat->radio_place,
                        "the head of the call panel",
                        "record the radio's zone and side without a longer spot"};
    ends_place(pen, head, style, &ends);
    struct area script = script_area(panel);
    script.height = panel.height - HEAD_HEIGHT - PAD_TOP - PAD_FOOT;
    operate_place(pen, size, (struct area){panel.x + PAD, script.y,
                                           operate_width(pen, panel.width), script.height});
    if (call->script == NULL)
        return;
    pen_line(pen, (struct point){line, panel.y + HEAD_HEIGHT},
             (struct point){line, panel.y + panel.height}, INK_BLACK, MM(0.35));
    script_set(pen, call->script, size, script, false);
}
