/* safety_words.c - the words round the safety plan's boat: which side is which, and
 * what shapes and colours mean (room: layout). Never knows what gear there is. */
#include "safety.h"

#include "measures.h"

#include <string.h>

static mpt word_place(struct pen *pen, struct style style, mpt x, mpt baseline,
                      const char *text)
{
    return x + pen_text(pen, &style, x, baseline, text, strlen(text), pen->sheet->origin);
}

static void arrow_place(struct pen *pen, struct point foot)
{
    struct path_step *steps = arena_array(pen->arena, 4, sizeof *steps);
    steps[0] = (struct path_step){.verb = PATH_MOVE, .to = {foot.x, foot.y - ARROW_TALL}};
    steps[1] = (struct path_step){.verb = PATH_LINE, .to = {foot.x - ARROW_HALF, foot.y}};
    steps[2] = (struct path_step){.verb = PATH_LINE, .to = {foot.x + ARROW_HALF, foot.y}};
    steps[3] = (struct path_step){.verb = PATH_CLOSE};
    pen_path(pen, steps, 4, INK_BLACK, INK_NONE, 0);
}

/* A side of the boat at an end of the line: its word, and the hand it is on. */
struct side_words { enum plan_word side, hand; };

/* What is left, up and right on the page. */
struct head_words { struct side_words left, right; enum plan_word up; };
static const struct head_words bow_up = {{PLAN_PORT, PLAN_PORT_HINT},
                                         {PLAN_STARBOARD, PLAN_STARBOARD_HINT}, PLAN_BOW};
static const struct head_words stern_up = {{PLAN_STARBOARD, PLAN_PORT_HINT},
                                           {PLAN_PORT, PLAN_STARBOARD_HINT}, PLAN_STERN};

void safety_head_place(struct pen *pen, struct area head)
{
    const char *const *words = sheet_plan(pen->sheet)->words;
    const struct head_words *at = plan_way_up(sheet_places(pen->sheet)) == STERN_UP ? &stern_up
                                                                                        : &bow_up;
    mpt size = size_rule(pen->paper, ROLE_ROW).floor;
    mpt baseline = baseline_in(head.y, head.height, size);
    struct style bold = {ROLE_ROW, FACE_BOLD, size, INK_BLACK};
    struct style plain = {ROLE_ROW, FACE_TEXT, size, INK_BLACK};
    mpt right = head.x + head.width, gap = LEGEND_WORD_GAP;
    mpt x = word_place(pen, bold, head.x, baseline, words[at->left.side]);
    word_place(pen, plain, x + gap, baseline, words[at->left.hand]);
    x = head.x + (head.width - pen_width(pen, &bold, words[at->up])) / 2;
    word_place(pen, bold, x, baseline, words[at->up]);
    arrow_place(pen, (struct point){x - ARROW_GAP, baseline});
    x = right - pen_width(pen, &bold, words[at->right.side]);
    word_place(pen, bold, x, baseline, words[at->right.side]);
    x -= gap + pen_width(pen, &plain, words[at->right.hand]);
    word_place(pen, plain, x, baseline, words[at->right.hand]);
}

/* The mark of a tag on deck, a square, or of one below, a round one, with its meaning;
 * gives where the next may begin. */
static mpt shape_place(struct pen *pen, struct style style, mpt x, struct area area,
                       enum level level)
{
    bool below = level == LEVEL_BELOW;
    mpt mark = LEGEND_MARK, wide = below ? LEGEND_MARK_ROUND : mark;
    mpt top = area.y + (area.height - mark) / 2;
    pen_box(pen, (struct area){x, top, wide, mark}, INK_BLACK, INK_NONE, 0,
            below ? mark / 2 : 0);
    x = word_place(pen, style, x + wide + LEGEND_WORD_GAP,
                   baseline_in(area.y, area.height, style.size),
                   sheet_plan(pen->sheet)->words[below ? PLAN_BELOW : PLAN_DECK]);
    return x + LEGEND_GAP;
}

static mpt class_place(struct pen *pen, struct style style, mpt x, struct area area,
                       enum sign_class sign, const char *words)
{
    mpt side = GEAR_SIGN;
    pen_sign(pen, (struct area){x, area.y + (area.height - side) / 2, side, side}, sign,
             SYMBOL_NONE, pen->sheet->origin);
    return word_place(pen, style, x + side + LEGEND_WORD_GAP,
                      baseline_in(area.y, area.height, style.size), words) + LEGEND_GAP;
}

void safety_legend_place(struct pen *pen, struct area area)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    const struct legend_facts *legend = sheet_legend(pen->sheet);
    struct style style = {ROLE_ROW, FACE_TEXT, size_rule(pen->paper, ROLE_ROW).floor, INK_BLACK};
    mpt x = area.x;
    pen->block = BLOCK_LEGEND;
    if (safety->part != PLAN_PART_BELOW)
        x = shape_place(pen, style, x, area, LEVEL_DECK);
    if (safety->part != PLAN_PART_DECK)
        x = shape_place(pen, style, x, area, LEVEL_BELOW);
    x = class_place(pen, style, x, area, SIGN_FIRE, legend->words[0]);
    x = class_place(pen, style, x, area, SIGN_RESCUE, legend->words[1]);
    x = class_place(pen, style, x, area, SIGN_CONTROL, legend->words[2]);
    enum plan_word faced = plan_way_up(safety) == STERN_UP ? PLAN_FACING_STERN : PLAN_FACING;
    const char *facing = sheet_plan(pen->sheet)->words[faced];
    mpt begins = area.x + area.width - pen_width(pen, &style, facing);
    word_place(pen, style, begins, baseline_in(area.y, area.height, style.size), facing);
    if (x > begins)
        pen_too_long(pen, pen->sheet->origin, x - begins, "shorten the words of the classes",
                     "the line of what marks and classes mean");
}
