/* test_symbol.c - the register of signs: every drawing is well formed, lies in its
 * frame and is wide enough to be seen at the smallest size. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "item.h"
#include "symbol.h"

/* A disc's glyph is drawn at 0.82 about the centre: what lies within 60 units of
 * it stays in the disc of radius 50. */
#define DISC_REACH 60.0

/* Every sign in turn; NULL past the last. */
static const struct symbol *each(size_t *index)
{
    return ++*index < SYMBOL_COUNT ? symbol_of((enum symbol_key)*index) : NULL;
}

static void keys_are_those_of_the_register(void **state)
{
    (void)state;
    assert_true(SYMBOL_COUNT > 54);
    for (int i = SYMBOL_NONE + 1; i < SYMBOL_COUNT; i++) {
        const struct symbol *symbol = symbol_of((enum symbol_key)i);
        assert_string_equal(symbol_keys[i - 1], symbol->key);
        assert_true(strspn(symbol->key, "abcdefghijklmnopqrstuvwxyz0123456789") ==
                    strlen(symbol->key));
    }
    assert_null(symbol_keys[SYMBOL_COUNT - 1]);
    assert_null(symbol_of(SYMBOL_NONE));
}

static void meanings_differ_from_each_other(void **state)
{
    (void)state;
    for (int i = SYMBOL_NONE + 1; i < SYMBOL_COUNT; i++) {
        const char *meaning = symbol_of((enum symbol_key)i)->meaning;
        assert_true(strlen(meaning) > 3);
        for (int j = i + 1; j < SYMBOL_COUNT; j++)
            assert_string_not_equal(meaning, symbol_of((enum symbol_key)j)->meaning);
    }
}

/* How many numbers a primitive has. */
static bool count_right(const struct symbol_part *part)
{
    switch (part->primitive) {
    case 'R': return part->count == 4 || part->count == 5;
    case 'C': return part->count == 3;
    case 'O': return part->count == 4;
    case 'P': return part->count >= 6 && part->count % 2 == 0;
    case 'L': return part->count >= 5 && part->count % 2 == 1;
    case 'A': return part->count == 6;
    default: return false;
    }
}

static void every_part_is_well_formed(void **state)
{
    const struct symbol *symbol;
    size_t index = 0;

    (void)state;
    while ((symbol = each(&index)) != NULL) {
        assert_true(symbol->sign != SIGN_NONE && symbol->sign < SIGN_CLASS_COUNT);
        assert_true(symbol->drawing->count > 0);
        assert_false(symbol->drawing->parts[0].knock_out);
        for (size_t i = 0; i < symbol->drawing->count; i++)
            if (!count_right(&symbol->drawing->parts[i]))
                fail_msg("%s: part %zu", symbol->key, i);
    }
}

/* Nothing that is seen is narrower than 3 units, 0.2 mm at 7 mm. */
static void lines_are_wide_enough(void **state)
{
    const struct symbol *symbol;
    size_t index = 0;

    (void)state;
    while ((symbol = each(&index)) != NULL)
        for (size_t i = 0; i < symbol->drawing->count; i++) {
            const struct symbol_part *part = &symbol->drawing->parts[i];
            bool line = part->primitive != 'R' && part->primitive != 'C' && part->primitive != 'P';
            if (line && part->numbers[0] < 3)
                fail_msg("%s: part %zu is %f wide", symbol->key, i, part->numbers[0]);
            if (part->primitive == 'R' && (part->numbers[2] < 3 || part->numbers[3] < 3))
                fail_msg("%s: part %zu is too thin", symbol->key, i);
        }
}

static bool inside(enum sign_class sign, double x, double y)
{
    double dx = x - 50, dy = y - 50;

    if (sign == SIGN_CONTROL || sign == SIGN_MANDATORY)
        return dx * dx + dy * dy <= DISC_REACH * DISC_REACH;
    if (sign == SIGN_PROHIBITION)
        return dx * dx + dy * dy <= 45.0 * 45.0;
    if (sign == SIGN_WARNING)   /* the black frame: (-3,2) (103,2) (50,96) */
        return y > 2 && (y - 2) * 53 < (x + 3) * 94 && (y - 2) * 53 < (103 - x) * 94;
    return x >= 0 && x <= 100 && y >= 0 && y <= 100;
}

/* The extreme points of a part's middle lines, without the width of its line. */
static size_t outline_of(const struct symbol_part *part, double out[128])
{
    const double *n = part->numbers + (strchr("OLA", part->primitive) != NULL ? 1 : 0);
    size_t count = part->count - (size_t)(n - part->numbers);

    if (part->primitive == 'R') {
        double box[] = {n[0], n[1], n[0] + n[2], n[1] + n[3]};
        memcpy(out, box, sizeof box);
        return 2;
    }
    if (part->primitive == 'C' || part->primitive == 'O') {
        double cross[] = {n[0] - n[2], n[1], n[0] + n[2], n[1],
                          n[0], n[1] - n[2], n[0], n[1] + n[2]};
        memcpy(out, cross, sizeof cross);
        return 4;
    }
    if (part->primitive == 'A')
        return 0;
    assert_true(count <= 128);
    memcpy(out, n, count * sizeof *n);
    return count / 2;
}

static void drawings_lie_in_their_frames(void **state)
{
    const struct symbol *symbol;
    double points[128];
    size_t index = 0;

    (void)state;
    while ((symbol = each(&index)) != NULL)
        for (size_t i = 0; i < symbol->drawing->count; i++) {
            const struct symbol_part *part = &symbol->drawing->parts[i];
            size_t count = part->knock_out ? 0 : outline_of(part, points);
            for (size_t k = 0; k < count; k++)
                if (!inside(symbol->sign, points[2 * k], points[2 * k + 1]))
                    fail_msg("%s: part %zu at %.1f %.1f", symbol->key, i, points[2 * k],
                             points[2 * k + 1]);
        }
}

static enum sign_class class_of_gear(const struct item_kind *kind)
{
    switch (kind->class) {
    case ITEM_FIRE:
        return SIGN_FIRE;
    case ITEM_RESCUE:
        return SIGN_RESCUE;
    case ITEM_CONTROL:
        break;
    }
    return SIGN_CONTROL;
}

/* Each kind of gear has a sign, and one of its own class. */
static void signs_of_gear_are_of_its_class(void **state)
{
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        const struct item_kind *kind = item_kind_of(item);
        const struct symbol *symbol = symbol_of(kind->symbol);
        assert_non_null(symbol);
        if (symbol->sign != class_of_gear(kind))
            fail_msg("%s: the sign %s is of another class", kind->key, symbol->key);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(keys_are_those_of_the_register),
        cmocka_unit_test(meanings_differ_from_each_other),
        cmocka_unit_test(every_part_is_well_formed),
        cmocka_unit_test(lines_are_wide_enough),
        cmocka_unit_test(drawings_lie_in_their_frames),
        cmocka_unit_test(signs_of_gear_are_of_its_class),
    };

    return cmocka_run_group_tests_name("symbol", tests, NULL, NULL) != 0;
}
