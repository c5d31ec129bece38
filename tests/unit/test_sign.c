/* test_sign.c - shapes and signs on the page, by their pixels. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>


#include "pdf_case.h"

/* ---- shapes ---- */

static void shapes_are_drawn_where_they_stand(void **state)
{
    static const struct path_step steps[] = {
        {.verb = PATH_MOVE, .to = {200000, 100000}},
        {.verb = PATH_LINE, .to = {280000, 100000}},
        {.verb = PATH_CURVE, .to = {200000, 180000},
         .control = {{280000, 180000}, {280000, 180000}}},
        {.verb = PATH_CLOSE},
    };
    const struct page_item items[] = {
        {.kind = PAGE_BOX, .area = {20000, 20000, 60000, 40000}, .fill = INK_BLACK},
        {.kind = PAGE_BOX, .area = {100000, 20000, 60000, 40000}, .fill = INK_GREY,
         .radius = 20000},
        {.kind = PAGE_ELLIPSE, .area = {20000, 100000, 60000, 40000}, .stroke = INK_BLACK,
         .line_width = 6000},
        {.kind = PAGE_LINE, .from = {20000, 200000}, .to = {120000, 200000}, .stroke = INK_BLACK,
         .line_width = 4000},
        {.kind = PAGE_PATH, .steps = steps, .step_count = 4, .fill = INK_BLACK},
    };

    (void)state;
    page_store(items, 5, "shapes.pdf");
    command_read("qpdf --check shapes.pdf");
    struct image image = page_render("shapes.pdf", 1);
    assert_int_equal(grey_at(&image, 21, 21), 0);
    assert_int_equal(grey_at(&image, 78, 58), 0);
    assert_int_equal(grey_at(&image, 19, 21), 255);
    assert_int_equal(grey_at(&image, 130, 40), 0x66);
    assert_int_equal(grey_at(&image, 102, 22), 255);
    assert_int_equal(grey_at(&image, 158, 58), 255);
    assert_int_equal(grey_at(&image, 50, 100), 0);
    assert_int_equal(grey_at(&image, 50, 120), 255);
    assert_int_equal(grey_at(&image, 22, 102), 255);
    assert_int_equal(grey_at(&image, 70, 200), 0);
    assert_int_equal(grey_at(&image, 70, 204), 255);
    assert_int_equal(grey_at(&image, 202, 102), 0);
    assert_int_equal(grey_at(&image, 250, 150), 0);
    assert_int_equal(grey_at(&image, 278, 178), 255);
}

/* ---- signs ---- */

static struct image sign_render(enum sign_class sign, const char *glyph, mpt side)
{
    struct page_item item = {.kind = PAGE_SIGN, .block = "sign", .sign = sign, .glyph = glyph,
                             .area = {50000, 50000, side, side}};

    page_store(&item, 1, "sign.pdf");
    return page_render("sign.pdf", 1);
}

/* Every sign draws: its glyph changes a tenth of what the bare frame shows, and
 * the sign fills its square and no more. */
static void every_sign_is_drawn(void **state)
{
    const struct symbol *symbol;
    mpt side = 72 * MPT_PER_POINT;

    (void)state;
    for (size_t i = 0; (symbol = symbol_at(i)) != NULL; i++) {
        struct image frame = sign_render(symbol->sign, NULL, side);
        struct image sign = sign_render(symbol->sign, symbol->key, side);
        int changed = 0, outside = 0;
        for (int y = 0; y < sign.height; y++)
            for (int x = 0; x < sign.width; x++) {
                size_t at = (size_t)y * (size_t)sign.width + (size_t)x;
                bool in = x >= 103 && x <= 255 && y >= 103 && y <= 255;
                changed += sign.at[at] != frame.at[at];
                outside += !in && sign.at[at] != 255;
            }
        if (outside != 0 || changed < 150 * 150 / 25)
            fail_msg("%s: %d pixels changed, %d outside", symbol->key, changed, outside);
    }
}

static void frames_tell_classes_without_colour(void **state)
{
    mpt side = 72 * MPT_PER_POINT;
    struct image square = sign_render(SIGN_FIRE, NULL, side);
    struct image rounded = sign_render(SIGN_RESCUE, NULL, side);
    struct image disc = sign_render(SIGN_CONTROL, NULL, side);
    struct image triangle = sign_render(SIGN_WARNING, NULL, side);
    struct image ring = sign_render(SIGN_PROHIBITION, NULL, side);

    (void)state;
    assert_int_equal(grey_at(&square, 51, 51), 0);
    assert_int_equal(grey_at(&rounded, 51, 51), 255);
    assert_true(grey_at(&rounded, 58, 58) < DARK);
    assert_int_equal(grey_at(&disc, 58, 58), 255);
    assert_true(grey_at(&disc, 86, 86) < DARK);
    assert_int_equal(grey_at(&triangle, 56, 86), 255);
    assert_true(grey_at(&triangle, 86, 100) > DARK && grey_at(&triangle, 86, 100) < 255);
    assert_true(grey_at(&ring, 86, 86) < DARK);
    assert_int_equal(grey_at(&ring, 100, 70), 255);
    assert_true(grey_at(&ring, 73, 73) < DARK);
    assert_int_equal(grey_at(&ring, 72, 100), 255);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(shapes_are_drawn_where_they_stand),
        cmocka_unit_test(every_sign_is_drawn),
        cmocka_unit_test(frames_tell_classes_without_colour),
    };

    return cmocka_run_group_tests_name("sign", tests, pdf_case_open, pdf_case_close) != 0;
}
