/* test_symbol_apart.c - signs by their pixels at the smallest size that is printed: told
 * apart from each other as a grey print and under a red torch, where no colour helps. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <math.h>
#include <stdlib.h>

#include "pdf_case.h"
#include "proof/legible.h"

#define DOTS_AN_INCH 200
#define DOT (72 * MPT_PER_POINT / DOTS_AN_INCH)
#define SIDE 55                  /* dots that a sign of 7 mm takes */
#define STEP 62                  /* dots from one sign to the next: all fall on dots alike */
#define COLUMNS 16
#define ROWS 20
#define SHIFT 2                  /* dots that glyphs are moved against each other */
#define APART_LEAST 220          /* thousandths of what two glyphs paint; two valves that
                                    differ in the drop or flame below them alone reach 15 */
#define SEEN_LEAST 35            /* thousandths of the square, painted from black to white */

/* What a glyph changes in the frame of its class: by how much each dot is brighter. */
struct painted { int at[SIDE][SIDE]; };

/* Two for each sign of the register: its frame alone, then the whole sign. */
static struct page_item *signs_make(void)
{
    struct page_item *items = arena_array(pdf_case.arena, 2 * SYMBOL_COUNT, sizeof *items);

    for (int i = 0; i < 2 * (SYMBOL_COUNT - 1); i++) {
        enum symbol_key key = (enum symbol_key)(i / 2 + 1);
        items[i] = (struct page_item){
            .kind = PAGE_SIGN, .block = BLOCK_NONE, .sign = symbol_of(key)->sign,
            .glyph = i % 2 == 1 ? key : SYMBOL_NONE,
            .area = {i % COLUMNS * STEP * DOT, i / COLUMNS * STEP * DOT, MM(7), MM(7)}};
    }
    return items;
}

static struct picture signs_picture(void)
{
    struct page page = page_of(signs_make(), 2 * (SYMBOL_COUNT - 1));

    assert_true(page.count <= COLUMNS * ROWS);
    page.width = COLUMNS * STEP * DOT;
    page.height = ROWS * STEP * DOT;
    return page_picture(&page, DOTS_AN_INCH);
}

/* Brightness as an eye grades it, 0 to 255. */
static int tone_at(const struct picture *picture, enum light light, int cell, int x, int y)
{
    struct rgb dot = picture_at(picture, cell % COLUMNS * STEP + x, cell / COLUMNS * STEP + y);

    return (int)(sqrt(light_level(light, dot)) * 255 + 0.5);
}

/* The mean of the nine dots about one: an eye that is not young softens as much. */
static int softened(const struct painted *sharp, int x, int y)
{
    int sum = 0;

    for (int k = 0; k < 9; k++)
        sum += sharp->at[y + k / 3 - 1][x + k % 3 - 1];
    return sum / 9;
}

static const struct painted *glyph_seen(const struct picture *picture, enum light light,
                                      enum symbol_key key)
{
    struct painted *sharp = arena_alloc(pdf_case.arena, sizeof *sharp);
    struct painted *soft = arena_alloc(pdf_case.arena, sizeof *soft);
    int frame = 2 * ((int)key - 1);

    for (int y = 0; y < SIDE; y++)
        for (int x = 0; x < SIDE; x++)
            sharp->at[y][x] = tone_at(picture, light, frame + 1, x, y) -
                              tone_at(picture, light, frame, x, y);
    *soft = (struct painted){{{0}}};
    for (int y = 1; y < SIDE - 1; y++)
        for (int x = 1; x < SIDE - 1; x++)
            soft->at[y][x] = softened(sharp, x, y);
    return soft;
}

/* All glyphs by key, in one light. */
static const struct painted **glyphs_seen(enum light light)
{
    struct picture picture = signs_picture();
    const struct painted **glyphs = arena_array(pdf_case.arena, SYMBOL_COUNT, sizeof *glyphs);

    for (int key = SYMBOL_NONE + 1; key < SYMBOL_COUNT; key++)
        glyphs[key] = glyph_seen(&picture, light, (enum symbol_key)key);
    return glyphs;
}

static int painted_at(const struct painted *glyph, int x, int y)
{
    return x < 0 || y < 0 || x >= SIDE || y >= SIDE ? 0 : glyph->at[y][x];
}

/* Thousandths of what both paint in which they differ, the second moved. */
static int apart_moved(const struct painted *a, const struct painted *b, int right, int down)
{
    int differ = 0, painted = 0;

    for (int y = -SHIFT; y < SIDE + SHIFT; y++)
        for (int x = -SHIFT; x < SIDE + SHIFT; x++) {
            int one = painted_at(a, x, y), other = painted_at(b, x + right, y + down);
            differ += abs(one - other);
            painted += abs(one) + abs(other);
        }
    assert_true(painted > 0);
    return (int)((int64_t)differ * 1000 / painted);
}

/* Where they lie on each other best: 0 of the same, 1000 of what has nothing in common. */
static int apart(const struct painted *a, const struct painted *b)
{
    int least = 1000;

    for (int down = -SHIFT; down <= SHIFT; down++)
        for (int right = -SHIFT; right <= SHIFT; right++) {
            int moved = apart_moved(a, b, right, down);
            least = moved < least ? moved : least;
        }
    return least;
}

/* Frames of one shape tell nothing apart: both kinds of discs are one. */
static enum sign_class shape_of(int key)
{
    enum sign_class sign = symbol_of((enum symbol_key)key)->sign;

    return sign == SIGN_MANDATORY ? SIGN_CONTROL : sign;
}

static void pairs_check(enum light light)
{
    const struct painted **glyphs = glyphs_seen(light);

    for (int a = SYMBOL_NONE + 1; a < SYMBOL_COUNT; a++)
        for (int b = a + 1; b < SYMBOL_COUNT; b++) {
            int measured = shape_of(a) == shape_of(b) ? apart(glyphs[a], glyphs[b]) : 1000;
            if (measured < APART_LEAST)
                fail_msg("%s and %s look alike in light %s: %d", symbol_keys[a - 1],
                         symbol_keys[b - 1], light_word(light), measured);
        }
}

static void signs_differ_in_grey(void **state)
{
    (void)state;
    pairs_check(LIGHT_GREY);
}

static void signs_differ_in_red_light(void **state)
{
    (void)state;
    pairs_check(LIGHT_RED);
}

static void every_glyph_is_seen_in_each_light(void **state)
{
    (void)state;
    for (enum light light = LIGHT_WHITE; light < LIGHT_COUNT; light++) {
        const struct painted **glyphs = glyphs_seen(light);
        for (int key = SYMBOL_NONE + 1; key < SYMBOL_COUNT; key++) {
            int painted = 0;
            for (int i = 0; i < SIDE * SIDE; i++)
                painted += abs(glyphs[key]->at[i / SIDE][i % SIDE]);
            if (painted / 255 * 1000 / (SIDE * SIDE) < SEEN_LEAST)
                fail_msg("%s in light %s: %d", symbol_keys[key - 1], light_word(light),
                         painted / 255 * 1000 / (SIDE * SIDE));
        }
    }
}

/* The measure finds what it is made for: the same sign beside its place, or without a
 * corner, is as good as the same. */
static void signs_that_are_alike_are_found(void **state)
{
    const struct painted *raft = glyphs_seen(LIGHT_GREY)[SYMBOL_raft];
    struct painted *moved = arena_alloc(pdf_case.arena, sizeof *moved);
    struct painted *bitten = arena_alloc(pdf_case.arena, sizeof *bitten);

    (void)state;
    *bitten = *raft;
    for (int y = 0; y < SIDE; y++)
        for (int x = 0; x < SIDE; x++) {
            moved->at[y][x] = painted_at(raft, x - SHIFT, y);
            if (y > SIDE * 3 / 4 && x > SIDE / 2)
                bitten->at[y][x] = 0;
        }
    assert_int_equal(apart(raft, raft), 0);
    assert_int_equal(apart(raft, moved), 0);
    assert_in_range(apart(raft, bitten), 10, APART_LEAST - 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(signs_differ_in_grey),
        cmocka_unit_test(signs_differ_in_red_light),
        cmocka_unit_test(every_glyph_is_seen_in_each_light),
        cmocka_unit_test(signs_that_are_alike_are_found),
    };

    return cmocka_run_group_tests_name("symbol apart", tests, pdf_case_open, pdf_case_close) != 0;
}
