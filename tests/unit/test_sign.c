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
    assert_int_equal(grey_at(&image, 130, 40), 0x55);
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

#define SIGN_SIDE (72 * MPT_PER_POINT)
#define SIGN_ROOM 400

static struct image sign_render(enum sign_class sign)
{
    struct page_item item = {.kind = PAGE_SIGN, .block = BLOCK_NONE, .sign = sign,
                             .area = {50000, 50000, SIGN_SIDE, SIGN_SIDE}};

    page_store(&item, 1, "sign.pdf");
    return page_render("sign.pdf", 1);
}

/* The bare frame and the whole sign of every symbol, two pages each, in one file. */
static size_t signs_store(void)
{
    struct page_item *items = arena_array(pdf_case.arena, SIGN_ROOM, sizeof *items);
    struct page *sheets = arena_array(pdf_case.arena, SIGN_ROOM, sizeof *sheets);
    const struct page **pages = arena_array(pdf_case.arena, SIGN_ROOM, sizeof *pages);
    size_t count = 0;

    for (size_t key = 1; (key = count / 2 + 1) < SYMBOL_COUNT; count++) {
        assert_true(count < SIGN_ROOM);
        items[count] = (struct page_item){
            .kind = PAGE_SIGN, .block = BLOCK_NONE, .sign = symbol_of((enum symbol_key)key)->sign,
            .glyph = count % 2 == 1 ? (enum symbol_key)key : SYMBOL_NONE,
            .area = {50000, 50000, SIGN_SIDE, SIGN_SIDE},
        };
        sheets[count] = page_of(&items[count], 1);
        pages[count] = &sheets[count];
    }
    bytes_store(pdf_of(pages, count), "signs.pdf");
    return count;
}

/* The glyph shows upon its frame, and nothing stands outside the square. */
static void sign_check(const char *key, const struct image *frame, const struct image *sign)
{
    int changed = 0, outside = 0;

    for (int y = 0; y < sign->height; y++)
        for (int x = 0; x < sign->width; x++) {
            size_t at = (size_t)y * (size_t)sign->width + (size_t)x;
            bool in = x >= 103 && x <= 255 && y >= 103 && y <= 255;
            changed += sign->at[at] != frame->at[at];
            outside += !in && sign->at[at] != 255;
        }
    if (outside != 0 || changed < 500)
        fail_msg("%s: %d pixels changed, %d outside", key, changed, outside);
}

static void every_sign_is_drawn(void **state)
{
    size_t count = signs_store();

    (void)state;
    pages_render("signs.pdf");
    for (size_t i = 0; i < count; i += 2) {
        struct image frame = page_image(i + 1, count), sign = page_image(i + 2, count);
        sign_check(symbol_keys[i / 2], &frame, &sign);
    }
}

static void frames_tell_classes_without_colour(void **state)
{
    struct image square = sign_render(SIGN_FIRE);
    struct image rounded = sign_render(SIGN_RESCUE);
    struct image disc = sign_render(SIGN_CONTROL);
    struct image triangle = sign_render(SIGN_WARNING);
    struct image ring = sign_render(SIGN_PROHIBITION);

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
