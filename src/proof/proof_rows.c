/* proof_rows.c - rows of gear as they are read: the place first, each tag beside its name, and
 * ends that are what the step wants and that a hand can do (room: proof). Rules G32 to G35. What
 * hangs on a language is judged by the sets of words that it has. */
#include "proof_room.h"

#include <string.h>

#define NAME_NEAR MM(3)

/* ---- the step on the page ---- */

/* Between the number of a step and that of the next one. */
struct step_band { const struct card_step *step; mpt from, to; };

static const struct page_item *step_number(const struct proofing *p, size_t step)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_text(item) && item->role == ROLE_NUMBER && step-- == 0)
            return item;
    }
    return NULL;
}

static struct step_band band_of(const struct proofing *p, size_t step)
{
    const struct page_item *own = step_number(p, step), *next = step_number(p, step + 1);
    return (struct step_band){&sheet_steps(p->sheet)->items[step],
                              own == NULL ? p->page->height : own->area.y,
                              next == NULL ? p->page->height : next->area.y};
}

static bool is_row_text(const struct step_band *band, const struct page_item *item)
{
    return is_text(item) && in_block(item, BLOCK_STEPS) && item->role == ROLE_ROW &&
           item->baseline > band->from && item->baseline < band->to;
}

/* The words of that tag, white in their box; NULL: they are not there. */
static const struct page_item *tag_on_page(const struct proofing *p,
                                           const struct step_band *band, const char *tag)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_row_text(band, item) && item->fill == INK_WHITE && text_equal(item->run->text, tag))
            return item;
    }
    return NULL;
}

/* ---- G32 ---- */

static bool names_a_place(const struct card_row *rows, size_t count, const char *text)
{
    for (size_t r = 0; r < count; r++)
        if (text_equal(rows[r].place, text))
            return true;
    return false;
}

static bool is_place_text(const struct step_band *band, const struct page_item *item)
{
    const struct card_step *step = band->step;
    if (!is_row_text(band, item) || item->run->role != FACE_BOLD || item->fill != INK_BLACK)
        return false;
    if (names_a_place(step->rows, step->row_count, item->run->text))
        return true;
    for (size_t g = 0; g < step->table_count; g++)
        if (names_a_place(step->table[g].rows, step->table[g].row_count, item->run->text))
            return true;
    return false;
}

/* Is it read before the tag: above it, or left of it on its line? */
static bool is_read_before(const struct page_item *place, const struct page_item *tag)
{
    return place->area.x <= tag->area.x &&
           (place->baseline < tag->baseline ||
            (place->baseline == tag->baseline && place->area.x < tag->area.x));
}

/* Of two columns the one that is nearer; within it the lower line. */
static bool is_nearer(const struct page_item *a, const struct page_item *b)
{
    mpt columns_apart = MM(10);
    if (a->area.x > b->area.x + columns_apart || b->area.x > a->area.x + columns_apart)
        return a->area.x > b->area.x;
    return a->baseline > b->baseline;
}

static const struct page_item *place_before(const struct proofing *p,
                                            const struct step_band *band,
                                            const struct page_item *tag)
{
    const struct page_item *nearest = NULL;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_place_text(band, item) && is_read_before(item, tag) &&
            (nearest == NULL || is_nearer(item, nearest)))
            nearest = item;
    }
    return nearest;
}

static void place_first_judge(struct proofing *p, const struct step_band *band,
                              const struct card_row *row, const struct page_item *tag)
{
    const struct page_item *place = place_before(p, band, tag);
    proof_measured(p, 1);
    if (place == NULL)
        proof_found(p, RULE_PLACE_FIRST, tag, "no place stands before it in bold");
    else if (!text_equal(place->run->text, row->place))
        proof_found(p, RULE_PLACE_FIRST, tag, "stands at \"%s\", not at \"%s\"",
                    place->run->text, row->place);
}

/* ---- G33 ---- */

static void name_beside_judge(struct proofing *p, const struct step_band *band,
                              const struct row_item *item, const struct page_item *tag)
{
    const struct page_item *frame = plan_tag_frame(p, (size_t)(tag - p->page->items));
    mpt right = RIGHT_OF(frame == NULL ? tag->area : frame->area);
    proof_measured(p, 1);
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *name = &p->page->items[i];
        mpt gap = name->area.x - right;
        if (is_row_text(band, name) && name->baseline == tag->baseline && gap > 0 &&
            gap <= NAME_NEAR && text_equal(name->run->text, item->name))
            return;
    }
    proof_found(p, RULE_TAG_BESIDE, tag, "\"%s\" does not stand beside it", item->name);
}

/* ---- G34 ---- */

/* What a command or an end wants of gear. */
enum wanted_end { WANTS_NEITHER, WANTS_OFF, WANTS_ON };

static enum wanted_end wanted_by_word(const struct words *words, const char *word, size_t length)
{
    if (words_in_set(words, SET_ENDS_OFF, word, length))
        return WANTS_OFF;
    return words_in_set(words, SET_ENDS_ON, word, length) ? WANTS_ON : WANTS_NEITHER;
}

static enum wanted_end wanted_by_last_word(const struct words *words, const char *text)
{
    enum wanted_end wanted = WANTS_NEITHER;
    const char *word;
    size_t length;
    while (word_next(&text, &word, &length))
        wanted = wanted_by_word(words, word, length);
    return wanted;
}

/* The verb, which comes first, or the state, which comes last: SHUT, TURN THESE OFF. */
static enum wanted_end wanted_by_command(const struct words *words, const char *command)
{
    const char *behind = strpbrk(command, "?:"), *word;
    size_t length;
    if (behind != NULL && behind[1] != '\0')
        command = behind + 1;
    enum wanted_end last = wanted_by_last_word(words, command), first = WANTS_NEITHER;
    if (word_next(&command, &word, &length))
        first = wanted_by_word(words, word, length);
    if (first == WANTS_NEITHER || last == WANTS_NEITHER)
        return first == WANTS_NEITHER ? last : first;
    return first == last ? first : WANTS_NEITHER;
}

static void end_judge(struct proofing *p, const struct card_step *step, const char *end,
                      struct place origin)
{
    const struct words *words = p->sheet->words;
    const char *command = text_command(p->arena, step->headline.text);
    enum wanted_end wanted = wanted_by_command(words, command);
    enum wanted_end led_to = wanted_by_last_word(words, text_plain(p->arena, end));
    struct page_item place = {.origin = origin, .block = BLOCK_STEPS, .kind = PAGE_BOX};
    if (text_empty(end) || !proof_rule_judges(RULE_END_STATE, words))
        return;
    proof_measured(p, 1);
    if (wanted != WANTS_NEITHER && led_to != WANTS_NEITHER && wanted != led_to)
        proof_found(p, RULE_END_STATE, &place, "\"%s\" in the step \"%s\"",
                    text_plain(p->arena, end), command);
}

/* ---- G35 ---- */

/* What the hand does, without the state behind it. */
static const char *handling_said(struct proofing *p, const char *end)
{
    const char *plain = text_plain(p->arena, end), *state = strrchr(plain, ':');
    plain += strspn(plain, "= ");
    return state == NULL || state < plain ? plain
                                          : arena_copy(p->arena, plain, (size_t)(state - plain));
}

static bool is_colour_alone(const struct words *words, const char *handling)
{
    const char *word;
    size_t length, colours = 0;
    for (; word_next(&handling, &word, &length); colours++)
        if (!words_in_set(words, SET_COLOURS, word, length))
            return false;
    return colours > 0;
}

static void handling_judge(struct proofing *p, const struct row_item *item)
{
    const struct words *words = p->sheet->words;
    struct page_item place = {.origin = item->origin, .block = BLOCK_STEPS, .kind = PAGE_BOX};
    if (text_empty(item->end) || !proof_rule_judges(RULE_COLOUR_HANDLING, words))
        return;
    proof_measured(p, 1);
    if (is_colour_alone(words, handling_said(p, item->end)))
        proof_found(p, RULE_COLOUR_HANDLING, &place, "%s: \"%s\"", item->name,
                    text_plain(p->arena, item->end));
}

/* ---- all ---- */

static void gear_judge(struct proofing *p, const struct step_band *band,
                       const struct card_row *row, const struct row_item *item)
{
    const struct page_item *first = NULL, *last = NULL;
    if (item->tag_count > 0) {
        first = tag_on_page(p, band, item->tags[0]);
        last = tag_on_page(p, band, item->tags[item->tag_count - 1]);
    }
    if (first != NULL)
        place_first_judge(p, band, row, first);
    if (last != NULL)
        name_beside_judge(p, band, item, last);
    end_judge(p, band->step, item->end, item->origin);
    handling_judge(p, item);
}

static void rows_of_step_judge(struct proofing *p, const struct step_band *band,
                               const struct card_row *rows, size_t count)
{
    for (size_t r = 0; r < count; r++)
        for (size_t i = 0; i < rows[r].item_count; i++)
            gear_judge(p, band, &rows[r], &rows[r].items[i]);
}

void proof_rows(struct proofing *p)
{
    for (size_t s = 0; s < sheet_steps(p->sheet)->count; s++) {
        const struct step_band band = band_of(p, s);
        const struct card_step *step = band.step;
        rows_of_step_judge(p, &band, step->rows, step->row_count);
        for (size_t g = 0; g < step->table_count; g++) {
            rows_of_step_judge(p, &band, step->table[g].rows, step->table[g].row_count);
            end_judge(p, step, step->table[g].head, step->headline.origin);
        }
    }
}
