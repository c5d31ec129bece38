/* proof_breaks_light.c - pages whose words or lines fade in one of three lights, or that
 * carry too much red (rules G7, G8, G9): see proof_case.h. */
#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))

/* ---- G7 ---- */

/* Words of that ink on a field of another, in the empty margin. */
static void words_on(struct proof_try *try, enum ink ink, enum ink field, mpt size)
{
    margin_clear(try);
    const struct page_item *like = try_saying(try, "Engine stop");
    box_add(try, (struct area){MM(15), MM(3), MM(60), MM(10)}, field);
    struct page_item *words = words_add(try, like, MM(20), MM(10));
    words->fill = ink;
    item_resize(try, words, size);
}

static void white_on_white(struct proof_try *try, bool broken)
{
    try_saying(try, "Engine stop")->fill = broken ? INK_WHITE : INK_BLACK;
}

/* 7.9:1 in white light and 9.3:1 in grey, but 2.8:1 under a red torch. */
static void white_on_red(struct proof_try *try, bool broken)
{
    words_on(try, INK_WHITE, broken ? INK_FIRE : INK_BLACK, 12000);
}

/* 1.0:1 under a red torch. */
static void black_on_blue(struct proof_try *try, bool broken)
{
    words_on(try, INK_BLACK, broken ? INK_CONTROL : INK_WARNING, 12000);
}

/* 5.0:1 is enough for large type only. */
static void small_white_on_green(struct proof_try *try, bool broken)
{
    words_on(try, INK_WHITE, INK_RESCUE, broken ? 17500 : 18000);
}

static void grey_on_yellow(struct proof_try *try, bool broken)
{
    words_on(try, broken ? INK_GREY : INK_BLACK, INK_WARNING, 12000);
}

/* Half of the words lies on another ground. */
static void half_on_black(struct proof_try *try, bool broken)
{
    margin_clear(try);
    box_add(try, (struct area){MM(15), MM(3), broken ? MM(10) : MM(4), MM(10)}, INK_BLACK);
    words_add(try, try_saying(try, "Engine stop"), MM(20), MM(10));
}

static void painted_over(struct proof_try *try, bool broken)
{
    margin_clear(try);
    words_add(try, try_saying(try, "Engine stop"), MM(20), MM(10));
    box_add(try, (struct area){broken ? MM(22) : MM(60), MM(6), MM(5), MM(5)}, INK_WHITE);
}

/* ---- G8 ---- */

static void line_of(struct proof_try *try, enum ink ink)
{
    line_add(try, (struct point){MM(20), MM(270)}, (struct point){MM(40), MM(270)}, ink,
             MM(0.5));
}

static void yellow_line(struct proof_try *try, bool broken)
{
    line_of(try, broken ? INK_WARNING : INK_GREY);
}

/* 7.9:1 in white light, 2.8:1 under a red torch. */
static void red_line(struct proof_try *try, bool broken)
{
    line_of(try, broken ? INK_FIRE : INK_BLACK);
}

static void frame_on_its_own_ground(struct proof_try *try, bool broken)
{
    struct page_item *ground = box_add(try, (struct area){MM(20), MM(268), MM(30), MM(10)},
                                       INK_BLACK);
    struct page_item *frame = box_add(try, (struct area){MM(24), MM(270), MM(10), MM(5)},
                                      INK_NONE);
    frame->stroke = broken ? INK_GREY : INK_WHITE;
    frame->line_width = MM(0.5);
    ground->block = BLOCK_NEVER;
}

static void yellow_area_without_a_line(struct proof_try *try, bool broken)
{
    struct page_item *area = box_add(try, (struct area){MM(20), MM(268), MM(30), MM(10)},
                                     INK_WARNING);
    area->stroke = broken ? INK_NONE : INK_BLACK;
    area->line_width = MM(0.5);
}

/* The black line round a sign is lost on a dark ground. */
static void sign_on_blue(struct proof_try *try, bool broken)
{
    struct page_item *sign = try_thing(try, BLOCK_STEPS, PAGE_SIGN, 1);
    struct page_item copy = *sign;
    item_remove(try, sign);
    box_add(try, (struct area){copy.area.x - MM(2), copy.area.y - MM(2), MM(11), MM(11)},
            broken ? INK_CONTROL : INK_WHITE);
    *item_add(try, PAGE_SIGN) = copy;
}

/* ---- G9 ---- */

static void blue_words(struct proof_try *try, bool broken)
{
    try_saying(try, "Engine stop")->fill = broken ? INK_CONTROL : INK_GREY;
}

/* 12 % of the page is 74.8 square centimetres. */
static void much_red(struct proof_try *try, bool broken)
{
    box_add(try, (struct area){MM(15), MM(80), MM(100), broken ? MM(76) : MM(70)}, INK_FIRE);
}

/* The rectangle round a slanting line is not the line. */
static void black_on_black_aslant(struct proof_try *try, bool broken)
{
    struct point from = {MM(20), MM(2)}, to = {MM(40), MM(12)};
    margin_clear(try);
    struct page_item *dot = item_add(try, PAGE_ELLIPSE);
    dot->area = (struct area){broken ? MM(29) : MM(36), broken ? MM(6) : MM(3), MM(2), MM(2)};
    dot->fill = INK_BLACK;
    line_add(try, from, to, INK_BLACK, MM(0.5));
}

/* ---- all ---- */

static const struct proof_break rows[] = {
    {RULE_TEXT_CONTRAST, "white on white", "engine_fire", white_on_white},
    {RULE_TEXT_CONTRAST, "white on red", "engine_fire", white_on_red},
    {RULE_TEXT_CONTRAST, "black on blue", "engine_fire", black_on_blue},
    {RULE_TEXT_CONTRAST, "small white on green", "engine_fire", small_white_on_green},
    {RULE_TEXT_CONTRAST, "grey on yellow", "engine_fire", grey_on_yellow},
    {RULE_TEXT_CONTRAST, "half on black", "engine_fire", half_on_black},
    {RULE_TEXT_CONTRAST, "painted over", "engine_fire", painted_over},
    {RULE_LINE_CONTRAST, "yellow line", "engine_fire", yellow_line},
    {RULE_LINE_CONTRAST, "red line", "engine_fire", red_line},
    {RULE_LINE_CONTRAST, "grey frame on black", "engine_fire", frame_on_its_own_ground},
    {RULE_LINE_CONTRAST, "yellow area", "engine_fire", yellow_area_without_a_line},
    {RULE_LINE_CONTRAST, "black line over a dot", "engine_fire", black_on_black_aslant},
    {RULE_LINE_CONTRAST, "sign on blue", "engine_fire", sign_on_blue},
    {RULE_COLOURED_TEXT, "blue words", "engine_fire", blue_words},
    {RULE_RED_SHARE, "much red", "engine_fire", much_red},
};

const struct proof_breaks breaks_light = {rows, COUNT_OF(rows)};
