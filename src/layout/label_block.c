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

static mpt chip_width(const struct sheet *sheet, const char *chip, mpt size)
{
    struct style style = label_style(FACE_BOLD, size, INK_WHITE);
    return sheet_width(sheet, &style, chip) + CHIP_PAD;
}

/* Where the name begins: behind the tags; below them where they take too much. */
struct row_plan { mpt text_x; mpt text_down; struct paragraph words; mpt height; };

static const char *row_words(const struct sheet *sheet, const struct plan_row *row)
{
    if (text_empty(row->detail))
        return text_format(sheet->arena, "**%s**", row->name);
    return text_format(sheet->arena, "**%s** %s", row->name, row->detail);
}

static mpt chips_width(const struct sheet *sheet, const struct plan_row *row, mpt size)
{
    mpt width = 0;
    for (size_t i = 0; i < row->chip_count; i++)
        width += chip_width(sheet, row->chips[i], size) + CHIP_GAP;
    return width;
}

/* Lines of chips when they wrap within the width. */
static mpt chip_lines(const struct sheet *sheet, const struct plan_row *row, mpt size, mpt width)
{
    mpt x = 0, lines = 1;
    for (size_t i = 0; i < row->chip_count; i++) {
        mpt own = chip_width(sheet, row->chips[i], size);
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
static void row_break(const struct sheet *sheet, struct paragraph *words)
{
    size_t name = 0, count = words->piece_count;
    bool *keep = arena_array(sheet->arena, count + 1, sizeof *keep);
    while (name < count && words->pieces[name].bold)
        name++;
    bool keep_name = paragraph_length(words, 0, name) <= words->width;
    bool keep_rest = paragraph_length(words, name, count) <= words->width;
    for (size_t i = 0; i < count; i++)
        keep[i] = i < name ? keep_name : i > name && keep_rest;
    paragraph_keep(words, keep, sheet->arena);
}

/* The words behind the tags, or below them. */
static struct row_plan row_set(const struct sheet *sheet, const struct plan_row *row, mpt size,
                               mpt width, bool below)
{
    struct style style = label_style(FACE_TEXT, size, INK_BLACK);
    struct row_plan plan = {.text_x = SIGN_SIDE + SIGN_GAP};
    if (below)
        plan.text_down = chip_lines(sheet, row, size, width - plan.text_x) *
                         (size * 118 / 100 + CHIP_GAP);
    else if (row->chip_count > 0)
        plan.text_x += chips_width(sheet, row, size) + TEXT_GAP - CHIP_GAP;
    plan.words = paragraph_make(sheet, &style, row_words(sheet, row), width - plan.text_x,
                                row->origin);
    if (plan.words.line_count > 1)
        row_break(sheet, &plan.words);
    plan.height = plan.text_down + paragraph_height(&plan.words);
    if (plan.height < ROW_LEAST)
        plan.height = ROW_LEAST;
    return plan;
}

/* Words stand below tags that leave them little room, where that takes less height. */
static struct row_plan row_plan(const struct sheet *sheet, const struct plan_row *row, mpt size,
                                mpt width)
{
    struct row_plan behind = row_set(sheet, row, size, width, false);
    if (row->chip_count == 0 || behind.words.line_count < 2)
        return behind;
    struct row_plan below = row_set(sheet, row, size, width, true);
    bool narrow = row->chip_count > 1 && behind.words.width < TEXT_LEAST;
    return narrow || below.height < behind.height ? below : behind;
}

static void row_sign_place(struct sheet *sheet, const struct plan_row *row, mpt x, mpt top)
{
    gear_sign_place(sheet, (struct area){x, top, SIGN_SIDE, SIGN_SIDE}, row->kind,
                    size_rule(sheet->paper, ROLE_PLAN_TAG).aim, NULL, row->origin);
}

static void chips_place(struct sheet *sheet, const struct plan_row *row, enum level level,
                        mpt size, struct area area)
{
    struct style style = label_style(FACE_BOLD, size, INK_WHITE);
    mpt x = area.x, y = area.y, height = size * 118 / 100;
    for (size_t i = 0; i < row->chip_count; i++) {
        mpt width = chip_width(sheet, row->chips[i], size);
        if (x > area.x && x + width > area.x + area.width) {
            x = area.x;
            y += height + CHIP_GAP;
        }
        tag_chip_draw(sheet, (struct area){x, y, width, height}, level, row->chips[i], &style,
                      row->origin);
        x += width + CHIP_GAP;
    }
}

static mpt row_place(struct sheet *sheet, const struct plan_place *place,
                     const struct plan_row *row, mpt size, struct area area, mpt top)
{
    struct row_plan plan = row_plan(sheet, row, size, area.width);
    mpt line = plan.words.line_height, chip = size * 118 / 100;
    mpt down = plan.text_down == 0 && plan.words.line_count == 1 ? (ROW_LEAST - line) / 2 : 0;
    row_sign_place(sheet, row, area.x, top + (ROW_LEAST - SIGN_SIDE) / 2);
    struct area chips = {area.x + SIGN_SIDE + SIGN_GAP, top + down + (line - chip) / 2,
                         area.width - SIGN_SIDE - SIGN_GAP, chip};
    if (plan.text_down > 0)
        chips.y = top;
    chips_place(sheet, row, place->marker.level, size, chips);
    paragraph_place(sheet, &plan.words, area.x + plan.text_x, top + down + plan.text_down);
    return plan.height;
}

/* ---- the label ---- */

static struct paragraph name_words(const struct sheet *sheet, const char *title, mpt size,
                                   mpt width, struct place origin)
{
    struct style style = label_style(FACE_TEXT, size, INK_BLACK);
    return paragraph_make(sheet, &style, title, width, origin);
}

static mpt name_height(const struct sheet *sheet, const char *title, mpt size, mpt width)
{
    struct paragraph words = name_words(sheet, title, size, width, sheet->card->origin);
    return paragraph_height(&words) + HEAD_GAP;
}

/* The rule closes the first line, so that leaders always meet it at one height. */
static mpt name_place(struct sheet *sheet, const char *title, mpt size, struct area area,
                      struct place origin)
{
    struct paragraph words = name_words(sheet, title, size, area.width, origin);
    mpt y = area.y + label_drop(size);
    paragraph_place(sheet, &words, area.x, area.y);
    sheet_line(sheet, (struct point){area.x, y}, (struct point){area.x + area.width, y},
               INK_BLACK, RULE);
    return paragraph_height(&words) + HEAD_GAP;
}

mpt label_height(const struct sheet *sheet, const struct plan_place *place, mpt size, mpt width)
{
    mpt height = name_height(sheet, place->title, size, width);
    for (size_t i = 0; i < place->row_count; i++)
        height += row_plan(sheet, &place->rows[i], size, width).height;
    return height;
}

mpt label_row_cut(const struct sheet *sheet, const struct plan_row *row, mpt size, mpt width)
{
    struct row_plan plan = row_plan(sheet, row, size, width);
    mpt over = paragraph_length(&plan.words, 0, plan.words.piece_count) - plan.words.width;
    return over > 0 ? over : 0;
}

mpt label_line_saved(mpt size)
{
    return 2 * line_height(size) - ROW_LEAST;
}

void label_place(struct sheet *sheet, const struct plan_place *place, mpt size,
                 struct area area)
{
    sheet->block = "labels";
    mpt top = area.y + name_place(sheet, place->title, size, area, place->marker.origin);
    for (size_t i = 0; i < place->row_count; i++)
        top += row_place(sheet, place, &place->rows[i], size, area, top);
}

/* ---- where the card hangs ---- */

static struct paragraph here_words(const struct sheet *sheet, mpt size, mpt width)
{
    struct style style = label_style(FACE_TEXT, size, INK_BLACK);
    const struct safety_plan *safety = sheet->card->safety;
    return paragraph_make(sheet, &style, safety->here_words, width, safety->here.origin);
}

static const char *here_title(const struct sheet *sheet)
{
    return text_format(sheet->arena, "**%s**", sheet->card->safety->here_word);
}

mpt here_height(const struct sheet *sheet, mpt size, mpt width)
{
    struct paragraph words = here_words(sheet, size, width);
    return name_height(sheet, here_title(sheet), size, width) + paragraph_height(&words);
}

void here_label_place(struct sheet *sheet, mpt size, struct area area)
{
    struct paragraph words = here_words(sheet, size, area.width);
    sheet->block = "labels";
    mpt top = area.y + name_place(sheet, here_title(sheet), size, area,
                                  sheet->card->safety->here.origin);
    paragraph_place(sheet, &words, area.x, top);
}

void label_leader_place(struct sheet *sheet, const struct label *label, enum ink ink, mpt width)
{
    sheet_line(sheet, label->from, label->to, ink, width);
    sheet_part(sheet, PART_LEADER);
}
