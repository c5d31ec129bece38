/* label_block.c - the label of a place on the safety plan (room: layout): its
 * name over a rule, then sign, tags and name of each kind of gear there. */
#include "safety.h"

#include <string.h>

#define SIGN_SIDE MM(7)
#define SIGN_GAP MM(1.2)
#define CHIP_PAD MM(2)
#define CHIP_GAP MM(0.7)
#define TEXT_GAP MM(1.2)
#define ROW_LEAST MM(7.1)
#define HEAD_GAP MM(0.5)
#define RULE_DROP MM(0.35)
#define RULE MM(0.35)
#define TEXT_LEAST MM(26)

static struct style label_style(enum face_role face, mpt size, enum ink ink)
{
    return (struct style){ROLE_ROW, face, size, ink};
}

static mpt line_height(mpt size)
{
    return line_pitch(ROLE_ROW, size);
}

/* Below what reaches under the line, as p and y do. */
mpt label_drop(mpt size)
{
    return line_height(size) + RULE_DROP;
}

/* ---- a line ---- */

static mpt chip_width(const struct pen *pen, const char *chip, mpt size)
{
    struct style style = label_style(FACE_BOLD, size, INK_WHITE);
    return pen_width(pen, &style, chip) + CHIP_PAD;
}

/* Where the name begins: behind the tags; below them where they take too much. */
struct row_plan { mpt text_x; mpt text_down; struct paragraph words; mpt height; };

static const char *row_words(const struct pen *pen, const struct plan_row *row)
{
    if (text_empty(row->detail))
        return text_format(pen->arena, "**%s**", row->name);
    return text_format(pen->arena, "**%s** %s", row->name, row->detail);
}

static mpt chips_width(const struct pen *pen, const struct plan_row *row, mpt size)
{
    mpt width = 0;
    for (size_t i = 0; i < row->chip_count; i++)
        width += chip_width(pen, row->chips[i], size) + CHIP_GAP;
    return width;
}

/* Lines of chips when they wrap within the width. */
static mpt chip_lines(const struct pen *pen, const struct plan_row *row, mpt size, mpt width)
{
    mpt x = 0, lines = 1;
    for (size_t i = 0; i < row->chip_count; i++) {
        mpt own = chip_width(pen, row->chips[i], size);
        if (x > 0 && x + own > width) {
            x = 0;
            lines++;
        }
        x += own + CHIP_GAP;
    }
    return lines;
}

/* On more lines than one the name is not torn, nor the words behind it, if each has
 * room on a line and that takes no more lines. */
static void row_break(const struct pen *pen, struct paragraph *words)
{
    size_t name = 0, count = words->piece_count;
    bool *keep = arena_array(pen->arena, count + 1, sizeof *keep);
    while (name < count && words->pieces[name].bold)
        name++;
    bool keep_name = paragraph_length(words, 0, name) <= words->width;
    bool keep_rest = paragraph_length(words, name, count) <= words->width;
    for (size_t i = 0; i < count; i++)
        keep[i] = i < name ? keep_name : i > name && keep_rest;
    paragraph_keep(words, keep, pen->arena);
}

/* The words behind the tags, or below them. */
static struct row_plan row_set(const struct pen *pen, const struct plan_row *row, mpt size,
                               mpt width, bool below)
{
    struct style style = label_style(FACE_TEXT, size, INK_BLACK);
    struct row_plan plan = {.text_x = SIGN_SIDE + SIGN_GAP};
    if (below)
        plan.text_down = chip_lines(pen, row, size, width - plan.text_x) *
                         (size * 118 / 100 + CHIP_GAP);
    else if (row->chip_count > 0)
        plan.text_x += chips_width(pen, row, size) + TEXT_GAP - CHIP_GAP;
    plan.words = paragraph_make(pen, &style, row_words(pen, row), width - plan.text_x,
                                row->origin);
    if (plan.words.line_count > 1)
        row_break(pen, &plan.words);
    plan.height = plan.text_down + paragraph_height(&plan.words);
    if (plan.height < ROW_LEAST)
        plan.height = ROW_LEAST;
    return plan;
}

/* Words stand below tags that leave them little room, where that takes less height. */
static struct row_plan row_plan(const struct pen *pen, const struct plan_row *row, mpt size,
                                mpt width)
{
    struct row_plan behind = row_set(pen, row, size, width, false);
    if (row->chip_count == 0 || behind.words.line_count < 2)
        return behind;
    struct row_plan below = row_set(pen, row, size, width, true);
    bool narrow = row->chip_count > 1 && behind.words.width < TEXT_LEAST;
    return narrow || below.height < behind.height ? below : behind;
}

static void row_sign_place(struct pen *pen, const struct plan_row *row, mpt x, mpt top)
{
    gear_sign_place(pen, (struct area){x, top, SIGN_SIDE, SIGN_SIDE}, row->kind,
                    size_rule(pen->paper, ROLE_PLAN_TAG).aim, NULL, row->origin);
}

static void chips_place(struct pen *pen, const struct plan_row *row, enum level level,
                        mpt size, struct area area)
{
    struct style style = label_style(FACE_BOLD, size, INK_WHITE);
    mpt x = area.x, y = area.y, height = size * 118 / 100;
    for (size_t i = 0; i < row->chip_count; i++) {
        mpt width = chip_width(pen, row->chips[i], size);
        if (x > area.x && x + width > area.x + area.width) {
            x = area.x;
            y += height + CHIP_GAP;
        }
        tag_chip_draw(pen, (struct area){x, y, width, height}, level, row->chips[i], &style,
                      row->origin);
        x += width + CHIP_GAP;
    }
}

static mpt row_place(struct pen *pen, const struct plan_place *place,
                     const struct plan_row *row, mpt size, struct area area, mpt top)
{
    struct row_plan plan = row_plan(pen, row, size, area.width);
    mpt line = plan.words.line_height, chip = size * 118 / 100;
    mpt down = plan.text_down == 0 && plan.words.line_count == 1 ? (ROW_LEAST - line) / 2 : 0;
    row_sign_place(pen, row, area.x, top + (ROW_LEAST - SIGN_SIDE) / 2);
    struct area chips = {area.x + SIGN_SIDE + SIGN_GAP, top + down + (line - chip) / 2,
                         area.width - SIGN_SIDE - SIGN_GAP, chip};
    if (plan.text_down > 0)
        chips.y = top;
    chips_place(pen, row, place->marker.level, size, chips);
    paragraph_place(pen, &plan.words, area.x + plan.text_x, top + down + plan.text_down);
    return plan.height;
}

/* ---- the label ---- */

static struct paragraph name_words(const struct pen *pen, const char *title, mpt size,
                                   mpt width, struct place origin)
{
    struct style style = label_style(FACE_TEXT, size, INK_BLACK);
    return paragraph_make(pen, &style, title, width, origin);
}

static mpt name_height(const struct pen *pen, const char *title, mpt size, mpt width)
{
    struct paragraph words = name_words(pen, title, size, width, pen->sheet->origin);
    return paragraph_height(&words) + HEAD_GAP;
}

/* The rule closes the first line, so that leaders always meet it at one height. */
static mpt name_place(struct pen *pen, const char *title, mpt size, struct area area,
                      struct place origin)
{
    struct paragraph words = name_words(pen, title, size, area.width, origin);
    mpt y = area.y + label_drop(size);
    paragraph_place(pen, &words, area.x, area.y);
    pen_line(pen, (struct point){area.x, y}, (struct point){area.x + area.width, y},
             INK_BLACK, RULE);
    return paragraph_height(&words) + HEAD_GAP;
}

mpt label_height(const struct pen *pen, const struct plan_place *place, mpt size, mpt width)
{
    mpt height = name_height(pen, place->title, size, width);
    for (size_t i = 0; i < place->row_count; i++)
        height += row_plan(pen, &place->rows[i], size, width).height;
    return height;
}

mpt label_row_cut(const struct pen *pen, const struct plan_row *row, mpt size, mpt width)
{
    struct row_plan plan = row_plan(pen, row, size, width);
    mpt over = paragraph_length(&plan.words, 0, plan.words.piece_count) - plan.words.width;
    return over > 0 ? over : 0;
}

mpt label_line_saved(mpt size)
{
    return 2 * line_height(size) - ROW_LEAST;
}

void label_place(struct pen *pen, const struct plan_place *place, mpt size,
                 struct area area)
{
    pen->block = BLOCK_LABELS;
    mpt top = area.y + name_place(pen, place->title, size, area, place->marker.origin);
    for (size_t i = 0; i < place->row_count; i++)
        top += row_place(pen, place, &place->rows[i], size, area, top);
}

/* ---- where the card hangs ---- */

static struct paragraph here_words(const struct pen *pen, mpt size, mpt width)
{
    struct style style = label_style(FACE_TEXT, size, INK_BLACK);
    const struct places_facts *safety = sheet_places(pen->sheet);
    return paragraph_make(pen, &style, safety->here_words, width, safety->here.origin);
}

static const char *here_title(const struct pen *pen)
{
    return text_format(pen->arena, "**%s**", sheet_places(pen->sheet)->here_word);
}

mpt here_height(const struct pen *pen, mpt size, mpt width)
{
    struct paragraph words = here_words(pen, size, width);
    return name_height(pen, here_title(pen), size, width) + paragraph_height(&words);
}

void here_label_place(struct pen *pen, mpt size, struct area area)
{
    struct paragraph words = here_words(pen, size, area.width);
    pen->block = BLOCK_LABELS;
    mpt top = area.y +
              name_place(pen, here_title(pen), size, area, sheet_places(pen->sheet)->here.origin);
    paragraph_place(pen, &words, area.x, top);
}

void label_leader_place(struct pen *pen, const struct label *label, enum ink ink, mpt width)
{
    pen_line(pen, label->from, label->to, ink, width);
    pen_part(pen, PART_LEADER);
}
