/* test_letter.c - letters on the page, by their pixels: an accented one is the plain
 * one with its accent, and each stands where its run was measured. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "pdf_case.h"

/* The smallest frame around all ink from column `from` to `to`; count its pixels. */
struct frame {
    int left, top, right, bottom, ink;
};

static struct frame frame_of(const struct image *image, int from, int to)
{
    struct frame frame = {image->width, image->height, -1, -1, 0};

    for (int y = 0; y < image->height; y++)
        for (int x = from; x < to; x++)
            if (dark(image, x, y)) {
                frame.left = x < frame.left ? x : frame.left;
                frame.right = x > frame.right ? x : frame.right;
                frame.top = y < frame.top ? y : frame.top;
                frame.bottom = y > frame.bottom ? y : frame.bottom;
                frame.ink++;
            }
    return frame;
}

/* ---- letters ---- */

/* An accented letter and the plain one it stands on. */
struct letter_pair {
    const char *accented, *plain;
    bool beside;   /* the accent stands beside a capital, not over it */
};

static const struct letter_pair pairs[] = {
    {"š", "s", false}, {"ő", "o", false}, {"Ё", "Е", false},
    {"Ї", "І", false}, {"Ύ", "Υ", true},  {"Ж\xCC\x81", "Ж", false},
};

#define PAIR_COUNT (sizeof pairs / sizeof pairs[0])

static struct image letter_render(enum face_role role, const char *letter)
{
    struct page_item item = text_item(role, 100000, 60000, 200000, letter);

    page_store(&item, 1, "letter.pdf");
    return page_render("letter.pdf", 1);
}

/* Pixels in which the plain letter's frame differs from the same place, `shift`
 * columns further, under the accent. */
static int pixels_different(const struct image *plain, const struct frame *frame,
                            const struct image *accented, int shift)
{
    int different = 0;

    for (int y = frame->top; y <= frame->bottom; y++)
        for (int x = frame->left; x <= frame->right; x++)
            different += dark(plain, x, y) != dark(accented, x + shift, y);
    return different;
}

static void pair_check(enum face_role role, const struct letter_pair *pair)
{
    struct image plain = letter_render(role, pair->plain);
    struct image accented = letter_render(role, pair->accented);
    struct frame below = frame_of(&plain, 0, plain.width);
    struct frame whole = frame_of(&accented, 0, accented.width);
    int shift = pair->beside ? whole.right - below.right : 0;
    int least = below.ink / (pair->beside ? 60 : 20);

    assert_true(below.ink > 500);
    if (!pair->beside) {
        struct frame row = {0, 0, 0, 0, 0};
        assert_true(whole.top + 8 < below.top);
        for (int y = whole.top; y < below.top - 1; y++)
            for (int x = 0; x < accented.width; x++)
                row.ink += dark(&accented, x, y);
        assert_true(row.ink >= least);
    }
    assert_true(whole.ink >= below.ink + least);
    if (pixels_different(&plain, &below, &accented, shift) > below.ink / 50)
        fail_msg("face %d: %s does not stand on %s", (int)role, pair->accented, pair->plain);
}

static void accented_letters_are_drawn_whole(void **state)
{
    (void)state;
    for (int role = 0; role < FACE_COUNT; role++)
        for (size_t i = 0; i < PAIR_COUNT; i++)
            pair_check((enum face_role)role, &pairs[i]);
}

/* The pixel test itself must notice a letter without its base or its accent. */
static void letter_check_notices_missing_parts(void **state)
{
    struct image s = letter_render(FACE_BOLD, "s"), accent = letter_render(FACE_BOLD, "ˇ");
    struct frame frame = frame_of(&s, 0, s.width), roof = frame_of(&accent, 0, accent.width);

    (void)state;
    assert_true(pixels_different(&s, &frame, &accent, 0) > frame.ink / 50);
    assert_true(roof.top + 8 < frame.top);
}

#define SAMPLE "šok ő Ё Ї Ύ AVAST To"

/* Every letter of a shaped line has ink where its advances say it stands. */
static void letters_stand_where_measured(void **state)
{
    (void)state;
    for (int role = 0; role < FACE_COUNT; role++) {
        struct page_item item = text_item((enum face_role)role, 24000, 20000, 150000, SAMPLE);
        const struct run *run = item.run;
        int em = face_metrics(pdf_case.faces, (enum face_role)role)->units_per_em;
        int64_t pen = 0;
        page_store(&item, 1, "line.pdf");
        struct image image = page_render("line.pdf", 1);
        for (size_t i = 0; i < run->count; i++) {
            double from = 20 + (double)pen * 24 / em;
            double half = (double)run->glyphs[i].advance * 12 / em;
            bool space = run->text[run->glyphs[i].cluster] == ' ';
            pen += run->glyphs[i].advance;
            /* kerning lets neighbours reach into the outer quarters, and the tonos of a
               capital stands over the space before it: in a face of one width it begins
               at its middle */
            struct frame frame = frame_of(&image, (int)((from + half / 2) * 150 / 72),
                                          (int)((from + half * 3 / 2) * 150 / 72));
            if (space)
                assert_true(frame.ink < 32);
            else
                assert_true(frame.ink > 40);
        }
        struct frame all = frame_of(&image, 0, image.width);
        assert_true(all.right <= (20.0 + run->width / 1000.0) * 150 / 72 + 1);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(accented_letters_are_drawn_whole),
        cmocka_unit_test(letter_check_notices_missing_parts),
        cmocka_unit_test(letters_stand_where_measured),
    };

    return cmocka_run_group_tests_name("letter", tests, pdf_case_open, pdf_case_close) != 0;
}
