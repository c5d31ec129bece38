/* test_paragraph.c - words to lines: the fewest lines, the least ragged, and what
 * is never torn apart. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "layout/paragraph_known.h"
#include "pen_fixture.h"
#include "text.h"

/* ---- a measure in letters: each as wide as a space; `~` ties two words ---- */

#define LETTER 100   /* costs are counted in squares of this length */

static struct paragraph lettered(const char *text, int width)
{
    struct piece *pieces = arena_array(test.arena, strlen(text) + 1, sizeof *pieces);
    size_t count = 0;
    for (const char *at = text; *at != '\0';) {
        size_t length = strcspn(at, " ~");
        pieces[count++] = (struct piece){.text = at, .length = length,
                                         .tied = at > text && at[-1] == '~',
                                         .width = (mpt)length * LETTER};
        at += length + strspn(at + length, " ~");
    }
    struct paragraph paragraph = {.pieces = pieces, .piece_count = count, .space = LETTER,
                                  .width = width * LETTER};
    paragraph_break(&paragraph, test.arena);
    return paragraph;
}

/* "aaa / bb cc" */
static const char *lines_text(const struct paragraph *paragraph)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t l = 0; l < paragraph->line_count; l++) {
        text_add(&out, l > 0 ? " / " : "");
        for (size_t i = paragraph->lines[l].first; i < paragraph->lines[l].end; i++)
            text_add_format(&out, "%s%.*s",
                            i > paragraph->lines[l].first && !paragraph->pieces[i].joined ? " "
                                                                                          : "",
                            (int)paragraph->pieces[i].length, paragraph->pieces[i].text);
    }
    return out.at;
}

static int64_t squares_of_slack(const struct paragraph *paragraph)
{
    int64_t sum = 0;
    for (size_t l = 0; l < paragraph->line_count; l++) {
        int64_t slack = (paragraph->width - paragraph->lines[l].width) / LETTER;
        sum += slack * slack;
    }
    return sum;
}

/* Reckoned vectors; slack counts on every line, the last included. */
static void published_vectors(void **state)
{
    (void)state;
    static const struct { const char *text; int width, squares; const char *lines; } vectors[] = {
        {"aaa bb cc ddddd", 6, 11, "aaa / bb cc / ddddd"},
        {"close the gas valve at the bottle then air the bilge", 16, 59,
         "close the gas / valve at the / bottle then / air the bilge"},
        {"send the distress call on channel 16", 14, 38,
         "send the / distress call / on channel 16"},
        {"a bb ccc dddd eeeee", 7, 38, "a bb / ccc / dddd / eeeee"}};
    for (size_t i = 0; i < sizeof vectors / sizeof vectors[0]; i++) {
        struct paragraph paragraph = lettered(vectors[i].text, vectors[i].width);
        assert_string_equal(lines_text(&paragraph), vectors[i].lines);
        assert_int_equal(squares_of_slack(&paragraph), vectors[i].squares);
    }
}

static void a_last_line_of_one_word_is_avoided(void **state)
{
    (void)state;
    struct paragraph paragraph = lettered("aaaa bbbb cccc dddd", 14);
    assert_string_equal(lines_text(&paragraph), "aaaa bbbb / cccc dddd");
    paragraph = lettered("aaaaaaaaa b cccccccccc", 12);   /* though 9 is more than 1 + 4 */
    assert_string_equal(lines_text(&paragraph), "aaaaaaaaa / b cccccccccc");
    paragraph = lettered("aaaaaaaa bbbbbbbb", 12);    /* there is no other way */
    assert_string_equal(lines_text(&paragraph), "aaaaaaaa / bbbbbbbb");
    paragraph = lettered("aaa bbbbbb cccccc", 10);    /* another line would be one too many */
    assert_int_equal(paragraph.line_count, 2);
}

static void nothing_and_one_word(void **state)
{
    (void)state;
    struct paragraph paragraph = lettered("", 10);
    assert_int_equal(paragraph.line_count, 0);
    assert_int_equal(paragraph_height(&paragraph), 0);
    paragraph = lettered("aaaa", 10);
    assert_string_equal(lines_text(&paragraph), "aaaa");
    paragraph = lettered("bb aaaaaaaaaaaa cc", 10);   /* wider than the measure: by itself */
    assert_string_equal(lines_text(&paragraph), "bb / aaaaaaaaaaaa / cc");
    assert_int_equal(paragraph.widest_piece, 12 * LETTER);
}

/* ---- against all ways there are ---- */

struct best {
    size_t lines;
    bool alone;          /* one word on the last line */
    int64_t squares;
};

static bool is_better(const struct best *a, const struct best *b)
{
    if (a->lines != b->lines)
        return a->lines < b->lines;
    if (a->alone != b->alone)
        return !a->alone;
    return a->squares < b->squares;
}

/* Breaks as the bits of `ways` say, bit i behind word i; words with a bit in `tied` count
 * with the one behind them as one. false when a line is too wide or tied words are torn. */
static bool broken_so(const int *lengths, size_t count, unsigned ways, unsigned tied, int width,
                      struct best *out)
{
    int line = 0;
    size_t words = 0;
    *out = (struct best){0};
    if ((ways & tied) != 0)
        return false;
    for (size_t i = 0; i < count; i++) {
        line += lengths[i] + (line > 0 ? 1 : 0);
        words += (tied >> i & 1) == 0 ? 1 : 0;
        if (line > width)
            return false;
        if (i + 1 < count && (ways >> i & 1) == 0)
            continue;
        out->squares += (int64_t)(width - line) * (width - line);
        out->lines++;
        out->alone = words == 1 && out->lines > 1;
        line = 0;
        words = 0;
    }
    return true;
}

static struct best best_of_all(const int *lengths, size_t count, unsigned tied, int width)
{
    struct best best = {.lines = SIZE_MAX}, tried;
    for (unsigned ways = 0; ways < 1u << (count - 1); ways++)
        if (broken_so(lengths, count, ways, tied, width, &tried) && is_better(&tried, &best))
            best = tried;
    return best;
}

static size_t words_on_last_line(const struct paragraph *paragraph)
{
    const struct line *last = &paragraph->lines[paragraph->line_count - 1];
    size_t words = 0;
    for (size_t i = last->first; i < last->end; i++)
        words += i == last->first || !paragraph->pieces[i].tied ? 1 : 0;
    return words;
}

/* Random words, one in `one_in` tied to the one behind it (0: none). */
static void against_all_ways(uint32_t *seed, int width, uint32_t one_in)
{
    int lengths[9];
    unsigned tied = 0;
    struct text_builder text = text_builder_in(test.arena);
    for (size_t i = 0; i < 9; i++) {
        *seed = *seed * 1664525u + 1013904223u;
        lengths[i] = 1 + (int)(*seed >> 24) % 8;
        text_add_format(&text, "%.*s", lengths[i], "abcdefgh");
        bool tie = one_in > 0 && i < 8 && (*seed >> 12) % one_in == 0;
        tied |= tie ? 1u << i : 0;
        text_add(&text, i == 8 ? "" : tie ? "~" : " ");
    }
    struct paragraph paragraph = lettered(text.at, width);
    struct best best = best_of_all(lengths, 9, tied, width);
    if (best.lines == SIZE_MAX)          /* tied words wider than the measure */
        return;
    assert_int_equal(paragraph.line_count, best.lines);
    assert_int_equal(paragraph.line_count > 1 && words_on_last_line(&paragraph) == 1, best.alone);
    assert_int_equal(squares_of_slack(&paragraph), best.squares);
}

static void no_other_way_is_better(void **state)
{
    (void)state;
    uint32_t seed = 7;
    for (int round = 0; round < 400; round++)
        against_all_ways(&seed, 8 + round % 13, 0);
}

static void no_other_way_keeps_ties_better(void **state)
{
    (void)state;
    uint32_t seed = 11;
    for (int round = 0; round < 400; round++)
        against_all_ways(&seed, 14 + round % 13, 4);
}

/* ---- real words in real type ---- */

static struct paragraph made(const char *text, mpt width)
{
    struct style style = {ROLE_BOX, FACE_TEXT, 12000, INK_BLACK};
    return paragraph_make(&pen, &style, text, width, (struct place){0});
}

static void what_is_to_be_kept_is_kept_for_no_more_lines(void **state)
{
    (void)state;
    bool keep[4] = {false, false, true, false};      /* bb cc */
    struct paragraph paragraph = lettered("aaaaa bb cc dddd", 8);
    assert_string_equal(lines_text(&paragraph), "aaaaa bb / cc dddd");
    paragraph_keep(&paragraph, keep, test.arena);    /* would take a third line */
    assert_string_equal(lines_text(&paragraph), "aaaaa bb / cc dddd");
    paragraph = lettered("aaaaa bb cc dddd", 10);
    assert_string_equal(lines_text(&paragraph), "aaaaa bb / cc dddd");
    paragraph_keep(&paragraph, keep, test.arena);
    assert_string_equal(lines_text(&paragraph), "aaaaa / bb cc dddd");
    bool all[4] = {false, true, true, true};         /* wider than the measure */
    paragraph_keep(&paragraph, all, test.arena);
    assert_string_equal(lines_text(&paragraph), "aaaaa / bb cc dddd");
}

static void bold_parts_are_told_apart(void **state)
{
    (void)state;
    struct style style = {ROLE_BOX, FACE_TEXT, 12000, INK_BLACK};
    static const struct { const char *text; bool bold, joined; } expected[] = {
        {"SHOUT", true, false}, {"“FIRE”", true, false}, {"!", false, true},
        {"All", false, false}, {"on", false, false}, {"deck", true, false}, {".", false, true}};
    size_t count;
    struct piece *pieces = pieces_parse(&pen, &style, "**SHOUT “FIRE”**! All on  **deck**.",
                                        &count);
    assert_int_equal(count, sizeof expected / sizeof expected[0]);
    for (size_t i = 0; i < count; i++) {
        assert_int_equal(pieces[i].length, strlen(expected[i].text));
        assert_memory_equal(pieces[i].text, expected[i].text, pieces[i].length);
        assert_int_equal(pieces[i].bold, expected[i].bold);
        assert_int_equal(pieces[i].joined, expected[i].joined);
        enum face_role role = pieces[i].bold ? FACE_BOLD : FACE_TEXT;
        assert_int_equal(pieces[i].width, run_width(faces, role, 12000, pieces[i].text,
                                                    pieces[i].length, NULL));
    }
}

/* Neighbours of one weight are one text; the words arrive whole and in order. */
static void a_paragraph_is_placed_line_by_line(void **state)
{
    (void)state;
    struct paragraph paragraph = made("**NEVER** go below for anything that is not a life", MM(40));
    mpt bottom = 0;
    struct text_builder all = text_builder_in(test.arena);
    assert_true(paragraph.line_count > 1);
    paragraph_place(&pen, &paragraph, MM(10), MM(20));
    for (size_t i = 0; i < pen.count; i++) {
        const struct page_item *item = &pen.items[i];
        assert_int_equal(item->kind, PAGE_TEXT);
        assert_true(item->area.x >= MM(10));
        assert_true(item->area.x + item->area.width <= MM(50) + 200);
        assert_true(item->baseline >= bottom);
        bottom = item->baseline;
        text_add_format(&all, "%s%s", i > 0 ? " " : "", item->run->text);
    }
    assert_string_equal(all.at, "NEVER go below for anything that is not a life");
    assert_int_equal(pen.items[0].run->role, FACE_BOLD);
    assert_int_equal(pen.items[1].run->role, FACE_TEXT);
    assert_true(bottom < MM(20) + paragraph_height(&paragraph));
    assert_false(pen.failed);
}

static void a_word_wider_than_the_column_is_an_error(void **state)
{
    (void)state;
    struct paragraph paragraph = made("a Wassereinbruchsbekämpfungsausrüstung b", MM(30));
    paragraph_place(&pen, &paragraph, 0, 0);
    assert_true(pen.failed);
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 1);
    size_t count;
    const struct problem *told = problems_sorted(test.problems, &count);
    mpt over = paragraph.widest_piece - MM(30);
    int tenths = (int)(((int64_t)over * 10000 + 2834644) / 2834645);
    assert_string_equal(told[0].what,
                        text_format(test.arena, "CARD (en): a word in the block \"steps\" is "
                                    "%d.%d mm too long at the smallest size allowed",
                                    tenths / 10, tenths % 10));
    assert_non_null(told[0].remedy);
}

static void a_letter_no_face_has_is_an_error(void **state)
{
    (void)state;
    struct paragraph paragraph = made("水 below", MM(60));
    paragraph_place(&pen, &paragraph, 0, 0);
    assert_true(pen.failed);
    size_t count;
    const struct problem *told = problems_sorted(test.problems, &count);
    assert_true(count >= 1);
    assert_non_null(strstr(told[0].what, "U+6C34"));
}

/* What was broken before is given again as it is made anew: of this text, size, face, role and
 * measure, and at the place that is asked for. */
static void what_is_known_is_as_made_anew(void **state)
{
    static const char *const texts[] = {"close the **gas valve** at the bottle, then air it",
                                        "close the gas valve at the bottle, then air it", ""};
    (void)state;
    struct pen knowing = pen;
    knowing.known = paragraphs_begin(test.arena);
    for (int i = 0; i < 2 * 3 * 2 * 2 * 3 * 3; i++) {
        struct style style = {.role = i / 2 % 2 == 0 ? ROLE_ROW : ROLE_BOX,
                              .face = i / 4 % 2 == 0 ? FACE_TEXT : FACE_BOLD,
                              .size = 9000 + 500 * (i / 8 % 3), .ink = (enum ink)(i % 2)};
        const char *text = arena_copy(test.arena, texts[i % 3], strlen(texts[i % 3]));
        struct place origin = {.line = i + 1, .column = 1};
        mpt width = MM(20 + 15 * (i / 24 % 3));
        struct paragraph first = paragraph_make(&pen, &style, text, width, origin);
        struct paragraph second = paragraph_make(&knowing, &style, text, width, origin);
        assert_string_equal(lines_text(&second), lines_text(&first));
        assert_int_equal(second.widest_piece, first.widest_piece);
        assert_int_equal(second.line_height, first.line_height);
        assert_int_equal(second.space, first.space);
        assert_int_equal(second.origin.line, i + 1);
        assert_int_equal(second.style.ink, style.ink);
        for (size_t k = 0; k < first.piece_count; k++)
            assert_int_equal(second.pieces[k].width, first.pieces[k].width);
    }
    struct style plain = {.role = ROLE_ROW, .face = FACE_TEXT, .size = 9000};
    struct paragraph once = paragraph_make(&knowing, &plain, texts[1], MM(30), pen.sheet->origin);
    struct paragraph again = paragraph_make(&knowing, &plain, texts[1], MM(30), pen.sheet->origin);
    assert_ptr_equal(once.pieces, again.pieces);
    paragraphs_end(knowing.known);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(published_vectors),
        TEST(a_last_line_of_one_word_is_avoided),
        TEST(nothing_and_one_word),
        TEST(no_other_way_is_better),
        TEST(no_other_way_keeps_ties_better),
        TEST(what_is_to_be_kept_is_kept_for_no_more_lines),
        TEST(bold_parts_are_told_apart),
        TEST(a_paragraph_is_placed_line_by_line),
        TEST(a_word_wider_than_the_column_is_an_error),
        TEST(a_letter_no_face_has_is_an_error),
        TEST(what_is_known_is_as_made_anew),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
