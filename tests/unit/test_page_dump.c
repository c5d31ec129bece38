/* test_page_dump.c - a page as stable text, every kind of item once. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "draw.h"

static const struct run run = {.role = FACE_BOLD, .size = 20000, .width = 61234,
                               .text = "SHUT \"š\" \\ \x01"};
static const struct path_step steps[] = {
    {.verb = PATH_MOVE, .to = {1, 2}},
    {.verb = PATH_LINE, .to = {3, -4}},
    {.verb = PATH_CURVE, .to = {5, 6}, .control = {{7, 8}, {9, 10}}},
    {.verb = PATH_CLOSE},
};
static const struct page_item items[] = {
    {.kind = PAGE_TEXT, .block = BLOCK_STEPS, .area = {100, 200, 61234, 24000}, .fill = INK_BLACK,
     .baseline = 18000, .run = &run, .role = ROLE_HEADLINE},
    {.kind = PAGE_BOX, .block = BLOCK_TITLE, .area = {0, 0, 10, 20}, .fill = INK_WARNING,
     .stroke = INK_BLACK, .line_width = 500, .radius = 3},
    {.kind = PAGE_ELLIPSE, .block = BLOCK_PLAN, .area = {1, 2, 3, 4}, .fill = INK_GREY},
    {.kind = PAGE_LINE, .area = {0, 0, 5, 0}, .stroke = INK_BLACK, .line_width = 250,
     .from = {0, 7}, .to = {5, 7}},
    {.kind = PAGE_PATH, .block = BLOCK_PLAN, .stroke = INK_CONTROL, .line_width = 9, .steps = steps,
     .step_count = 4},
    {.kind = PAGE_SIGN, .block = BLOCK_STEPS, .area = {1, 1, 19843, 19843},
     .sign = SIGN_PROHIBITION, .glyph = SYMBOL_phatch},
    {.kind = PAGE_SIGN, .block = BLOCK_STEPS, .area = {1, 1, 19843, 19843}, .sign = SIGN_MANDATORY},
    {.kind = PAGE_TEXT, .block = BLOCK_STEPS, .role = ROLE_FOOTER},
};

static const char expected[] =
    "page engine_fire en 595276x841890 \"Engine fire\"\n"
    "text steps 100,200 61234x24000 role=headline ink=black baseline=18000 face=bold size=20000 "
    "width=61234 \"SHUT \\\"š\\\" \\\\ \\x01\"\n"
    "box title 0,0 10x20 fill=warning stroke=black line=500 radius=3\n"
    "ellipse plan 1,2 3x4 fill=grey stroke=none\n"
    "line - 0,0 5x0 fill=none stroke=black line=250 0,7 5,7\n"
    "path plan 0,0 0x0 fill=none stroke=control line=9 M 1,2 L 3,-4 C 7,8 9,10 5,6 Z\n"
    "sign steps 1,1 19843x19843 class=prohibition glyph=phatch\n"
    "sign steps 1,1 19843x19843 class=mandatory glyph=-\n"
    "text steps 0,0 0x0 role=footer ink=none baseline=0 run=none\n";

static void page_is_told_line_by_line(void **state)
{
    struct page page = {.id = "engine_fire", .title = "Engine fire", .language = "en",
                        .width = 595276, .height = 841890, .items = items,
                        .count = sizeof items / sizeof items[0]};
    struct arena *arena = arena_new(1u << 20);
    struct text_builder out = text_builder_in(arena);

    (void)state;
    page_dump(&page, &out);
    assert_string_equal(out.at, expected);
    arena_free(arena);
}

static void empty_page_is_one_line(void **state)
{
    struct page page = {.id = "x", .title = "", .language = "en", .width = 1, .height = 2};
    struct arena *arena = arena_new(1u << 20);
    struct text_builder out = text_builder_in(arena);

    (void)state;
    page_dump(&page, &out);
    assert_string_equal(out.at, "page x en 1x2 \"\"\n");
    arena_free(arena);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(page_is_told_line_by_line),
        cmocka_unit_test(empty_page_is_one_line),
    };

    return cmocka_run_group_tests_name("page_dump", tests, NULL, NULL) != 0;
}
