/* test_face.c - checksums, opening of faces, metrics, shaping and measuring. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "face.h"
#include "text.h"

#define FONTS "out/fonts"
#define NO_SUM "0000000000000000000000000000000000000000000000000000000000000000"

static struct arena *arena;
static struct problems *problems;
static struct faces *faces;
static char folder[64];

static int setup(void **state)
{
    (void)state;
    arena = arena_new(64u << 20);
    problems = problems_new(arena);
    faces = faces_open(FONTS, arena, problems);
    snprintf(folder, sizeof folder, "/tmp/maydeck_face_XXXXXX");
    return faces == NULL || mkdtemp(folder) == NULL;
}

static int teardown(void **state)
{
    static const char *const files[] = {"faces.txt", "a.ttf", "b.ttf", "c.ttf"};

    (void)state;
    for (size_t i = 0; i < sizeof files / sizeof files[0]; i++)
        unlink(text_format(arena, "%s/%s", folder, files[i]));
    rmdir(folder);
    faces_close(faces);
    arena_free(arena);
    return 0;
}

static void file_write(const char *name, const char *content)
{
    FILE *file = fopen(text_format(arena, "%s/%s", folder, name), "wb");

    assert_non_null(file);
    assert_int_equal(fputs(content, file) >= 0, 1);
    assert_int_equal(fclose(file), 0);
}

/* Opens the faces listed in `list` and expects a failure that says `what`. */
static void open_expect(const char *list, const char *what, const char *remedy)
{
    struct problems *told = problems_new(arena);
    size_t count = 0;
    bool found = false;

    file_write("faces.txt", list);
    assert_null(faces_open(folder, arena, told));
    assert_true(problems_reach(told, SEVERITY_FAILURE));
    const struct problem *all = problems_sorted(told, &count);
    for (size_t i = 0; i < count; i++) {
        bool same = strstr(all[i].what, what) != NULL;
        if (same && remedy != NULL)
            same = all[i].remedy != NULL && strstr(all[i].remedy, remedy) != NULL;
        found = found || same;
    }
    if (!found)
        print_error("no problem says \"%s\"; the first says \"%s\"\n", what,
                    count > 0 ? all[0].what : "");
    assert_true(found);
}

static void faces_have_names_and_metrics(void **state)
{
    const struct face_metrics *bold = face_metrics(faces, FACE_BOLD);

    (void)state;
    assert_string_equal(face_postscript_name(faces, FACE_TEXT), "RobotoCondensed-Regular");
    assert_string_equal(face_postscript_name(faces, FACE_BOLD), "RobotoCondensed-Bold");
    assert_string_equal(face_postscript_name(faces, FACE_CODE), "Hack-Bold");
    assert_int_equal(bold->units_per_em, 2048);
    assert_int_equal(bold->cap_height, 1456);
    assert_in_range(bold->x_height, 1000, 1200);
    assert_true(bold->ascent > bold->cap_height && bold->descent < 0);
    assert_true(bold->bounds[0] < 0 && bold->bounds[2] > 2048);
    assert_int_equal(bold->italic_angle, 0);
    assert_int_equal(face_metrics(faces, FACE_CODE)->units_per_em, 2048);
}

static void list_faults_are_told(void **state)
{
    (void)state;
    open_expect("title a.ttf package p 00:1\n", "\"title\" is no role", "text bold code");
    open_expect("text a.ttf package\n", "malformed", "installed-path");
    open_expect("text a.ttf package path\n", "malformed", "sha256:version");
    open_expect("text ../a.ttf package path " NO_SUM ":1\n", "malformed", NULL);
    open_expect("text a.ttf package path 12ab:1\n", "malformed", NULL);
    open_expect("text a.ttf p p " NO_SUM ":1\ntext b.ttf p p " NO_SUM ":1\n", "given twice", NULL);
    open_expect("# nothing\n\n", "no line for the bold face", NULL);
}

#define LIST \
    "text a.ttf fonts-one one.ttf " NO_SUM ":2:1.0-1 " NO_SUM ":2:1.0-2 # not a comment here\n"

static void unknown_or_absent_files_are_told(void **state)
{
    static const char list[] = "text a.ttf fonts-one one.ttf " NO_SUM ":2:1.0-1 " NO_SUM ":1.0-2\n"
                               "bold b.ttf fonts-two two.ttf " NO_SUM ":7\n"
                               "code c.ttf fonts-two three.ttf " NO_SUM ":7\n";

    (void)state;
    file_write("a.ttf", "abc");
    open_expect(list, "a.ttf is not one that was checked: its SHA-256 is "
                      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                "install version 2:1.0-1 or 1.0-2 of the package fonts-one");
    open_expect(list, "b.ttf cannot be read", "install the package fonts-two 7");
    open_expect(LIST, "the line for the text face is malformed", NULL);
}

/* A file whose sum is known but which is no font is refused, not drawn from. */
static void known_file_that_is_no_font_is_told(void **state)
{
    static const char abc[] = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    (void)state;
    file_write("a.ttf", "abc");
    open_expect(text_format(arena,
                            "text a.ttf p p %s:1\nbold a.ttf p p %s:1\ncode a.ttf p p %s:1\n",
                            abc, abc, abc),
                "a.ttf lacks a table", NULL);
}

static void absent_list_is_told(void **state)
{
    struct problems *told = problems_new(arena);

    (void)state;
    assert_null(faces_open("/tmp/maydeck_no_such_folder", arena, told));
    assert_int_equal(problems_count(told, SEVERITY_FAILURE), 1);
}

static void run_and_width_agree(void **state)
{
    static const char *const texts[] = {"SHUT the fuel", "AVAST To", "šok Ёлка Ύλη Ї ő", "",
                                        "0TJ8"};
    struct run run;
    uint32_t missing = 0;

    (void)state;
    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++)
        for (int role = 0; role < FACE_COUNT; role++)
            for (mpt size = 8000; size <= 40000; size += 3700) {
                size_t length = strlen(texts[i]);
                assert_true(run_shape(faces, (enum face_role)role, size, texts[i], length, arena,
                                      &run, &missing));
                assert_int_equal(run.width, run_width(faces, (enum face_role)role, size, texts[i],
                                                      length, NULL));
                assert_string_equal(run.text, texts[i]);
            }
}

/* What is kept of a measured text is given for no other: more texts than have room, so that
 * what was kept is given back, asked again in other roles and sizes. */
static void widths_kept_are_of_the_same_text(void **state)
{
    char text[64];
    struct run run;
    uint32_t missing;

    (void)state;
    for (int round = 0; round < 2; round++)
        for (int i = 0; i < 9000; i++) {
            int length = snprintf(text, sizeof text, "%d%.*s", i * 7919, 34 + i % 18,
                                  "WOil WOil WOil WOil WOil WOil WOil WOil WOil WOil WOil");
            enum face_role role = (enum face_role)((i + round) % FACE_COUNT);
            mpt size = 9000 + 500 * (i % 7) + 100 * round;
            assert_in_range(length, 35, sizeof text - 1);
            mpt first = run_width(faces, role, size, text, (size_t)length, NULL);
            assert_true(run_shape(faces, role, size, text, (size_t)length, arena, &run, &missing));
            assert_int_equal(first, run.width);
            assert_int_equal(run_width(faces, role, size, text, (size_t)length, NULL), run.width);
        }
}

/* A text is not told apart by its beginning, nor one face from another. */
static void shapes_kept_are_of_the_same_face_and_length(void **state)
{
    static const char text[] = "SHUT the fuel at the tank";
    struct run runs[2];
    uint32_t missing;

    (void)state;
    for (int round = 0; round < 2; round++) {
        for (int role = 0; role < FACE_COUNT; role++)
            for (size_t length = 0; length < sizeof text; length++) {
                assert_true(run_shape(faces, (enum face_role)role, 12000, text, length, arena,
                                      &runs[0], &missing));
                assert_int_equal(runs[0].count, length);
                assert_int_equal(runs[0].role, role);
                assert_int_equal(strlen(runs[0].text), length);
            }
        assert_true(run_shape(faces, FACE_TEXT, 12000, text, 4, arena, &runs[0], &missing));
        assert_true(run_shape(faces, FACE_BOLD, 12000, text, 4, arena, &runs[1], &missing));
        assert_int_not_equal(runs[0].width, runs[1].width);
    }
}

/* The width is the sum of advances scaled and rounded up, no more. */
static void width_is_rounded_up(void **state)
{
    struct run run;
    uint32_t missing;
    int64_t units = 0;

    (void)state;
    assert_true(run_shape(faces, FACE_TEXT, 14001, "Panels", 6, arena, &run, &missing));
    assert_int_equal(run.count, 6);
    for (size_t i = 0; i < run.count; i++)
        units += run.glyphs[i].advance;
    assert_true((int64_t)run.width * 2048 >= units * 14001);
    assert_true((int64_t)(run.width - 1) * 2048 < units * 14001);
}

static void kerning_is_on(void **state)
{
    mpt pair = run_width(faces, FACE_BOLD, 20000, "AV", 2, NULL);
    mpt alone = run_width(faces, FACE_BOLD, 20000, "A", 1, NULL) +
                run_width(faces, FACE_BOLD, 20000, "V", 1, NULL);

    (void)state;
    assert_true(pair + 500 < alone);
}

static void ligatures_are_off(void **state)
{
    struct run run;
    uint32_t missing;

    (void)state;
    for (int role = 0; role < FACE_COUNT; role++) {
        assert_true(run_shape(faces, (enum face_role)role, 12000, "office fi fl", 12, arena, &run,
                              &missing));
        assert_int_equal(run.count, 12);
    }
}

static void clusters_are_byte_offsets(void **state)
{
    struct run run;
    uint32_t missing;

    (void)state;
    assert_true(run_shape(faces, FACE_TEXT, 12000, "šЁx", 5, arena, &run, &missing));
    assert_int_equal(run.count, 3);
    assert_int_equal(run.glyphs[0].cluster, 0);
    assert_int_equal(run.glyphs[1].cluster, 2);
    assert_int_equal(run.glyphs[2].cluster, 4);
}

static void missing_letters_are_told(void **state)
{
    struct run run = {.count = 99};
    uint32_t missing = 0;

    (void)state;
    assert_false(run_shape(faces, FACE_TEXT, 12000, "ab中c", 6, arena, &run, &missing));
    assert_int_equal(missing, 0x4E2D);
    assert_int_equal(run.count, 99);
    missing = 0;
    assert_int_equal(run_width(faces, FACE_BOLD, 12000, "→", 3, &missing), 0);
    assert_int_equal(missing, 0x2192);
    assert_int_equal(run_width(faces, FACE_BOLD, 12000, "→", 3, NULL), 0);
    missing = 0;
    assert_false(run_shape(faces, FACE_TEXT, 12000, "a\xC3(", 3, arena, &run, &missing));
    assert_int_equal(missing, 0xFFFD);
}

/* Where text may not be broken, the spaces are still spaces. */
static void fixed_spaces_have_width(void **state)
{
    (void)state;
    for (int role = 0; role < FACE_COUNT; role++) {
        enum face_role face = (enum face_role)role;
        uint32_t missing = 0;
        mpt plain = run_width(faces, face, 12000, "a a", 3, NULL);
        assert_int_equal(run_width(faces, face, 12000, "a\xC2\xA0" "a", 4, &missing), plain);
        assert_true(run_width(faces, face, 12000, "a\xE2\x80\xAF" "a", 5, &missing) > 0);
        assert_int_equal(missing, 0);
    }
}

/* An accent that has no letter of its own is set over the letter before it. */
static void loose_accents_are_placed(void **state)
{
    struct run run;
    uint32_t missing;

    (void)state;
    assert_true(run_shape(faces, FACE_TEXT, 12000, "ж\xCC\x81", 4, arena, &run, &missing));
    assert_int_equal(run.count, 2);
    assert_int_equal(run.width, run_width(faces, FACE_TEXT, 12000, "ж", 2, NULL));
}

static struct run_ink ink_of(const char *text)
{
    struct run run;
    uint32_t missing;

    assert_true(run_shape(faces, FACE_TEXT, 12000, text, strlen(text), arena, &run, &missing));
    return run_ink(faces, &run);
}

static void spaces_have_no_ink(void **state)
{
    struct run_ink letter = ink_of("a"), behind = ink_of("a  "), before = ink_of("  a");
    struct run_ink none = ink_of("  "), nothing = {0, 0, 0, 0};

    (void)state;
    assert_memory_equal(&behind, &letter, sizeof letter);
    assert_int_equal(before.right - before.left, letter.right - letter.left);
    assert_int_equal(before.top, letter.top);
    assert_true(before.left > letter.left);
    assert_memory_equal(&none, &nothing, sizeof none);
}

/* Of "pd" the one letter stands higher, the other lower. */
static void ink_reaches_as_far_as_any_letter(void **state)
{
    struct run_ink p = ink_of("p"), d = ink_of("d"), both = ink_of("pd"), turned = ink_of("dp");

    (void)state;
    assert_true(d.top < p.top && p.bottom > d.bottom && p.bottom > 0);
    assert_int_equal(both.top, d.top);
    assert_int_equal(both.bottom, p.bottom);
    assert_int_equal(turned.top, d.top);
    assert_int_equal(turned.bottom, p.bottom);
    assert_int_equal(both.left, p.left);
    assert_true(both.right > p.right);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(faces_have_names_and_metrics),
        cmocka_unit_test(list_faults_are_told),
        cmocka_unit_test(unknown_or_absent_files_are_told),
        cmocka_unit_test(known_file_that_is_no_font_is_told),
        cmocka_unit_test(absent_list_is_told),
        cmocka_unit_test(run_and_width_agree),
        cmocka_unit_test(widths_kept_are_of_the_same_text),
        cmocka_unit_test(shapes_kept_are_of_the_same_face_and_length),
        cmocka_unit_test(width_is_rounded_up),
        cmocka_unit_test(kerning_is_on),
        cmocka_unit_test(ligatures_are_off),
        cmocka_unit_test(clusters_are_byte_offsets),
        cmocka_unit_test(missing_letters_are_told),
        cmocka_unit_test(fixed_spaces_have_width),
        cmocka_unit_test(loose_accents_are_placed),
        cmocka_unit_test(spaces_have_no_ink),
        cmocka_unit_test(ink_reaches_as_far_as_any_letter),
    };

    return cmocka_run_group_tests_name("face", tests, setup, teardown) != 0;
}
