/* test_subset.c - used glyphs and the faces cut down to them, read back with a
 * small reader of TrueType tables. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>
#include <zlib.h>

#include "face.h"

#define ASCII_LETTERS 95       /* from the space to the tilde */

static struct arena *arena;
static struct problems *problems;
static struct faces *faces;

static int setup(void **state)
{
    (void)state;
    arena = arena_new(64u << 20);
    problems = problems_new(arena);
    faces = faces_open("out/fonts", arena, problems);
    return faces == NULL;
}

static int teardown(void **state)
{
    (void)state;
    faces_close(faces);
    arena_free(arena);
    return 0;
}

static struct run run_of(enum face_role role, const char *text)
{
    struct run run = {.count = 0};
    uint32_t missing;

    assert_true(run_shape(faces, role, 12000, text, strlen(text), arena, &run, &missing));
    return run;
}

static struct subset subset_of(enum face_role role, const char *const *texts, size_t count)
{
    struct usage *usage = usage_new(faces, arena);
    struct subset subset = {.length = 0};

    for (size_t i = 0; i < count; i++) {
        struct run run = run_of(role, texts[i]);
        usage_add(usage, &run);
    }
    assert_true(subset_make(faces, usage, role, arena, &subset, problems));
    return subset;
}

static uint32_t number_at(const struct subset *subset, size_t offset, size_t bytes)
{
    uint32_t number = 0;

    assert_true(offset + bytes <= subset->length);
    for (size_t i = 0; i < bytes; i++)
        number = number << 8 | subset->bytes[offset + i];
    return number;
}

/* Offset of a table in the subset; 0 if it has none. */
static size_t table_at(const struct subset *subset, const char *tag)
{
    uint32_t count = number_at(subset, 4, 2);

    for (uint32_t i = 0; i < count; i++)
        if (memcmp(subset->bytes + 12 + 16 * i, tag, 4) == 0)
            return number_at(subset, 12 + 16 * i + 8, 4);
    return 0;
}

/* The outline of a glyph: its length in glyf. */
static size_t outline_length(const struct subset *subset, uint32_t id)
{
    size_t loca = table_at(subset, "loca"), head = table_at(subset, "head");
    bool wide = number_at(subset, head + 50, 2) == 1;

    if (wide)
        return number_at(subset, loca + 4 * id + 4, 4) - number_at(subset, loca + 4 * id, 4);
    return 2 * (number_at(subset, loca + 2 * id + 2, 2) - number_at(subset, loca + 2 * id, 2));
}

static void only_needed_tables_remain(void **state)
{
    static const char *const text[] = {"AVAST"};
    static const char *const kept[] = {"glyf", "loca", "head", "hhea", "hmtx", "maxp"};
    static const char *const gone[] = {"cmap", "name", "OS/2", "post", "GSUB", "GPOS",
                                       "GDEF", "kern", "fpgm", "prep", "cvt "};

    (void)state;
    for (int role = 0; role < FACE_COUNT; role++) {
        struct subset subset = subset_of((enum face_role)role, text, 1);
        for (size_t i = 0; i < sizeof kept / sizeof kept[0]; i++)
            assert_int_not_equal(table_at(&subset, kept[i]), 0);
        for (size_t i = 0; i < sizeof gone / sizeof gone[0]; i++)
            assert_int_equal(table_at(&subset, gone[i]), 0);
        assert_true(subset.length < 16000);
    }
}

/* All of visible ASCII and the space are in each subset, and no other letter that is not used;
 * .notdef keeps its outline: a missing letter must show. */
static void glyphs_are_renumbered_without_gaps(void **state)
{
    static const char *const text[] = {"AVAST"};
    struct subset subset = subset_of(FACE_BOLD, text, 1);
    struct run run = run_of(FACE_BOLD, "AVAST");
    static const uint32_t letters[] = {'A', 'V', 'A', 'S', 'T'};

    (void)state;
    assert_int_equal(subset.subset_glyphs, 1 + ASCII_LETTERS);
    assert_int_equal(number_at(&subset, table_at(&subset, "maxp") + 4, 2), 1 + ASCII_LETTERS);
    assert_true(outline_length(&subset, 0) > 0);
    assert_int_equal(subset.unicode[0], 0);
    for (size_t i = 0; i < run.count; i++) {
        uint16_t id = subset.new_id[run.glyphs[i].id];
        assert_in_range(id, 1, ASCII_LETTERS);
        assert_int_equal(subset.unicode[id], letters[i]);
        assert_true(outline_length(&subset, id) > 0);
    }
    assert_int_not_equal(subset.new_id[run_of(FACE_BOLD, "Q").glyphs[0].id], 0);
    assert_int_equal(subset.new_id[run_of(FACE_BOLD, "Ж").glyphs[0].id], 0);
}

/* A letter with an accent brings the parts it is composed of, all with outlines. */
static void composed_letters_bring_their_parts(void **state)
{
    static const char *const texts[] = {"š", "ő", "Ё", "Ї", "Ύ"};

    (void)state;
    for (int role = 0; role < FACE_COUNT; role++)
        for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++) {
            struct subset subset = subset_of((enum face_role)role, texts + i, 1);
            uint16_t id = subset.new_id[run_of((enum face_role)role, texts[i]).glyphs[0].id];
            assert_int_not_equal(id, 0);
            for (uint32_t part = 1; part < subset.subset_glyphs; part++)
                assert_true(subset.unicode[part] == ' ' || outline_length(&subset, part) > 0);
        }
}

/* Widths are those of the file's own hmtx, in thousandths of the em. */
static void widths_are_per_mille(void **state)
{
    static const char *const text[] = {"Wi.š 0"};
    struct subset subset;

    (void)state;
    for (int role = 0; role < FACE_COUNT; role++) {
        subset = subset_of((enum face_role)role, text, 1);
        int em = face_metrics(faces, (enum face_role)role)->units_per_em;
        size_t metrics = table_at(&subset, "hmtx");
        uint32_t long_ones = number_at(&subset, table_at(&subset, "hhea") + 34, 2);
        for (uint32_t id = 0; id < subset.subset_glyphs; id++) {
            uint32_t at = id < long_ones ? id : long_ones - 1;
            int units = (int)number_at(&subset, metrics + 4 * at, 2);
            assert_int_equal(subset.widths[id], (units * 1000 + em / 2) / em);
        }
    }
}

static void order_of_use_does_not_matter(void **state)
{
    static const char *const one[] = {"SHUT", "fuel š", "Αθήνα", "ABC"};
    static const char *const other[] = {"ABC", "Αθήνα", "fuel š", "SHUT"};
    struct subset a = subset_of(FACE_TEXT, one, 4), b = subset_of(FACE_TEXT, other, 4);

    (void)state;
    assert_int_equal(a.length, b.length);
    assert_memory_equal(a.bytes, b.bytes, a.length);
    assert_int_equal(a.subset_glyphs, b.subset_glyphs);
    assert_memory_equal(a.unicode, b.unicode, a.subset_glyphs * sizeof a.unicode[0]);
    assert_memory_equal(a.widths, b.widths, a.subset_glyphs * sizeof a.widths[0]);
}

static void subsets_expect_equal(const struct subset *a, const struct subset *b)
{
    assert_int_equal(a->length, b->length);
    assert_memory_equal(a->bytes, b->bytes, a->length);
    assert_int_equal(a->packed_length, b->packed_length);
    assert_memory_equal(a->packed, b->packed, a->packed_length);
    assert_int_equal(a->subset_glyphs, b->subset_glyphs);
    assert_memory_equal(a->new_id, b->new_id, a->face_glyphs * sizeof a->new_id[0]);
    assert_memory_equal(a->unicode, b->unicode, a->subset_glyphs * sizeof a->unicode[0]);
}

/* The first ones are kept with the faces and given again; those after them are made anew each
 * time. Which of both it is changes nothing. */
static void what_is_kept_is_what_is_made(void **state)
{
    static const char *const texts[] = {"Б", "В", "Г", "Д", "Ж", "З", "И", "Й", "К", "Л", "М", "Н"};
    size_t given_again = 0, count = sizeof texts / sizeof texts[0];

    (void)state;
    for (size_t i = 0; i < count; i++) {
        struct subset first = subset_of(FACE_TEXT, &texts[i], 1);
        struct subset second = subset_of(FACE_TEXT, &texts[i], 1);
        subsets_expect_equal(&first, &second);
        given_again += first.bytes == second.bytes ? 1 : 0;
    }
    assert_in_range(given_again, 1, count - 1);
}

static void the_packed_file_is_the_file(void **state)
{
    static const char *const text[] = {"šé"};
    struct subset subset = subset_of(FACE_BOLD, text, 1);
    unsigned char *bytes = arena_alloc(arena, subset.length);
    uLongf length = (uLongf)subset.length;

    (void)state;
    assert_int_equal(uncompress(bytes, &length, subset.packed, (uLong)subset.packed_length), Z_OK);
    assert_int_equal(length, subset.length);
    assert_memory_equal(bytes, subset.bytes, length);
}

static void use_is_kept_by_face(void **state)
{
    struct usage *usage = usage_new(faces, arena);
    struct run run = run_of(FACE_CODE, "0TJ8"), empty = run_of(FACE_BOLD, "");

    (void)state;
    usage_add(usage, &run);
    usage_add(usage, &empty);
    assert_true(usage_any(usage, FACE_CODE));
    assert_false(usage_any(usage, FACE_TEXT));
    assert_false(usage_any(usage, FACE_BOLD));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(only_needed_tables_remain),
        cmocka_unit_test(glyphs_are_renumbered_without_gaps),
        cmocka_unit_test(composed_letters_bring_their_parts),
        cmocka_unit_test(widths_are_per_mille),
        cmocka_unit_test(order_of_use_does_not_matter),
        cmocka_unit_test(what_is_kept_is_what_is_made),
        cmocka_unit_test(the_packed_file_is_the_file),
        cmocka_unit_test(use_is_kept_by_face),
    };

    return cmocka_run_group_tests_name("subset", tests, setup, teardown) != 0;
}
