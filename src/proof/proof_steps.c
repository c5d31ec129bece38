/* proof_steps.c - what a card says and in which order: steps, decision, warnings,
 * tags, channel, dates (room: proof). Rules G14, G15, G19, G23, G25, G27. */
#include "proof_room.h"

#include <string.h>

#include "date.h"

#define NUMBERED_STEPS_MOST 8
#define ROWS_MOST 14
#define WARNINGS_MOST 3
#define OWN_LINES_MOST 2
#define STEP_DIGITS_MOST 6

/* ---- G14 ---- */

/* The words of the k-th number disc of a block; NULL: there is none. */
static const struct page_item *disc_at(const struct proofing *p, enum block_key block, size_t k)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_text(item) && item->role == ROLE_NUMBER && in_block(item, block) && k-- == 0)
            return item;
    }
    return NULL;
}

static const struct page_item *number_at(const struct proofing *p, size_t k)
{
    return disc_at(p, BLOCK_STEPS, k);
}

/* Steps stand one below the other; what is done first at the radio, in pairs too. */
static bool stands_behind(const struct page_item *number, const struct page_item *before)
{
    if (number->block == BLOCK_STEPS || number->baseline != before->baseline)
        return number->baseline > before->baseline;
    return number->area.x > before->area.x;
}

/* So many things of that block are done, each with its number. */
static void numbers_judge(struct proofing *p, enum block_key block, size_t count)
{
    for (size_t i = 0; i <= count; i++) {
        const struct page_item *number = disc_at(p, block, i);
        const struct page_item *before = i > 0 ? disc_at(p, block, i - 1) : NULL;
        const char *wanted = text_format(p->arena, "%zu", i + 1);
        proof_measured(p, 1);
        if ((number != NULL) != (i < count))
            proof_found(p, RULE_STEPS, number, "%zu steps, but not so many numbers", count);
        else if (number != NULL && !text_equal(number->run->text, wanted))
            proof_found(p, RULE_STEPS, number, "stands where %s belongs", wanted);
        else if (number != NULL && before != NULL && !stands_behind(number, before))
            proof_found(p, RULE_STEPS, number, "stands above the step before it");
    }
}

static void steps_judge(struct proofing *p)
{
    const struct steps_facts *steps = sheet_steps(p->sheet);
    size_t rows = 0;
    for (size_t i = 0; i < steps->count; i++)
        rows += steps->items[i].row_count;
    proof_measured(p, 2);
    if (steps->count > NUMBERED_STEPS_MOST || rows > ROWS_MOST)
        proof_found(p, RULE_STEPS, NULL, "%zu steps, %zu rows", steps->count, rows);
    numbers_judge(p, BLOCK_STEPS, steps->count);
    if (p->sheet->kind == SHEET_DISTRESS)
        numbers_judge(p, BLOCK_CALL, sheet_call(p->sheet)->act_count);
}

static void count_judge(struct proofing *p, const char *what, size_t count, size_t most)
{
    proof_measured(p, 1);
    if (count > most)
        proof_found(p, RULE_NEVERS, NULL, "%zu %s", count, what);
}

static bool card_has_step(const struct sheet *sheet, const char *id)
{
    for (size_t i = 0; i < sheet_steps(sheet)->count; i++)
        if (text_equal(sheet_steps(sheet)->items[i].id, id))
            return true;
    return false;
}

static void card_exit_judge(struct proofing *p, const char *word, const char *say)
{
    const char *whole = text_format(p->arena, "%s %s", word, say == NULL ? "" : say);
    proof_measured(p, 1);
    if (text_empty(say))
        proof_found(p, RULE_EXITS, NULL, "no words for %s", word);
    else if (!block_says(p, BLOCK_DECISION, whole))
        proof_found(p, RULE_EXITS, NULL, "the decision does not say \"%s\"", whole);
}

static void decision_judge(struct proofing *p)
{
    const struct sheet *sheet = p->sheet;
    const struct decision_facts *decision = sheet_decision(sheet);
    if (sheet_block(sheet, BLOCK_DECISION) == NULL)
        return;
    card_exit_judge(p, decision->yes_word, decision->yes);
    card_exit_judge(p, decision->no_word, decision->no);
    const char *after = sheet->procedure == NULL ? NULL : sheet->procedure->decision.after.text;
    proof_measured(p, 1);
    if (!text_empty(after) && !card_has_step(p->whole, after))
        proof_found(p, RULE_EXITS, NULL, "comes after the step %s, which the card lacks", after);
}

/* ---- G15 ---- */

static bool tag_recorded(const struct boat *boat, const char *tag)
{
    for (size_t i = 0; boat != NULL && i < boat->equipment_count; i++)
        if (text_equal(boat->equipment[i].tag.text, tag))
            return true;
    return boat != NULL && text_equal(boat->radio.tag.text, tag);
}

static void item_judge(struct proofing *p, enum block_key block, const struct card_row *row,
                       const struct row_item *item)
{
    struct page_item words = {.origin = item->origin, .block = block, .kind = PAGE_BOX};
    proof_measured(p, item->tag_count + 1);
    for (size_t t = 0; t < item->tag_count; t++)
        if (!tag_recorded(p->sheet->boat, item->tags[t]))
            proof_found(p, RULE_TAG_RECORDED, &words, "the tag %s is not of the boat",
                        item->tags[t]);
    if (item->tag_count == 0 || text_empty(row->place))
        proof_found(p, RULE_TAG_RECORDED, &words, "%s has no tag or no place", item->name);
}

static void row_judge(struct proofing *p, enum block_key block, const struct card_row *row)
{
    for (size_t i = 0; i < row->item_count; i++)
        item_judge(p, block, row, &row->items[i]);
}

static void tags_judge(struct proofing *p)
{
    const struct rows_facts *rows = sheet_rows(p->sheet);
    if (p->sheet->held)
        return;
    for (size_t r = 0; r < rows->count; r++)
        row_judge(p, BLOCK_ROWS, &rows->rows[r]);
    for (size_t s = 0; s < sheet_steps(p->sheet)->count; s++) {
        const struct card_step *step = &sheet_steps(p->sheet)->items[s];
        for (size_t r = 0; r < step->row_count; r++)
            row_judge(p, BLOCK_STEPS, &step->rows[r]);
        for (size_t g = 0; g < step->table_count; g++)
            for (size_t r = 0; r < step->table[g].row_count; r++)
                row_judge(p, BLOCK_STEPS, &step->table[g].rows[r]);
    }
}

/* ---- G19 ---- */

static size_t words_said(const struct proofing *p, enum block_key block, const char *word)
{
    size_t count = 0;
    for (size_t i = 0; i < p->page->count; i++)
        count += is_text(&p->page->items[i]) && in_block(&p->page->items[i], block) &&
                         text_begins(p->page->items[i].run->text, word) ? 1 : 0;
    return count;
}

static void signal_word_judge(struct proofing *p, enum block_key block, const char *word,
                              size_t count)
{
    proof_measured(p, count == 0 ? 0 : 1);
    if (count > 0 && (text_empty(word) || words_said(p, block, word) < count))
        proof_found(p, RULE_WARNING_SOURCE, NULL, "a signal word is missing in \"%s\"",
                    block_word(block));
}

static bool first_sign_below(const struct proofing *p, mpt from, mpt to, mpt *top)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (item->kind != PAGE_SIGN || !in_block(item, BLOCK_STEPS) || item->area.y < from ||
            item->area.y > to)
            continue;
        *top = item->area.y + item->area.height / 2;
        return true;
    }
    return false;
}

/* The words of the steps between two heights, as they are read. */
static const char *words_between(const struct proofing *p, mpt from, mpt to)
{
    struct text_builder words = text_builder_in(p->arena);
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_text(item) && in_block(item, BLOCK_STEPS) && item->baseline > from &&
            item->baseline < to)
            text_add_format(&words, "%s%s", words.length == 0 ? "" : " ", item->run->text);
    }
    return words.at;
}

/* Below the step's headline and above its first row: other steps may say the same. */
static void lethal_judge(struct proofing *p, size_t step)
{
    const struct card_step *made = &sheet_steps(p->sheet)->items[step];
    const struct page_item *own = number_at(p, step), *next = number_at(p, step + 1);
    if (own == NULL || made->lethal_count == 0)
        return;
    mpt end = next == NULL ? p->page->height : next->baseline, row = end;
    first_sign_below(p, own->baseline, end, &row);
    const char *words = words_between(p, own->baseline, row);
    for (size_t i = 0; i < made->lethal_count; i++) {
        proof_measured(p, 1);
        if (strstr(words, made->lethal[i].text) == NULL)
            proof_found(p, RULE_LETHAL, own, "\"%s\" stands apart from step %zu",
                        made->lethal[i].text, step + 1);
    }
}

/* ---- G23 ---- */

static void channel_judge(struct proofing *p)
{
    const struct sheet *sheet = p->sheet;
    bool radio = sheet->boat != NULL &&
                 (boat_fitted(sheet->boat, ITEM_vhf_dsc) == ANSWER_YES ||
                  boat_fitted(sheet->boat, ITEM_vhf_handheld) == ANSWER_YES);
    if (sheet_block(sheet, BLOCK_CALL) == NULL || !radio || text_empty(sheet_call(sheet)->station))
        return;
    proof_measured(p, 1);
    if (!block_says(p, BLOCK_CALL, "16"))
        proof_found(p, RULE_CHANNEL, NULL, "the call panel does not name channel 16");
}

static void digits_judge(struct proofing *p, const struct page_item *item)
{
    size_t row = 0;
    if (item->role == ROLE_CODE)
        return;
    proof_measured(p, 1);
    for (const char *at = item->run->text; *at != '\0'; at++) {
        row = *at >= '0' && *at <= '9' ? row + 1 : 0;
        if (row > STEP_DIGITS_MOST) {
            proof_found(p, RULE_DIGITS, item, "more than %d digits in a row", STEP_DIGITS_MOST);
            return;
        }
    }
}

/* ---- G25 ---- */

/* The next date in a text, as 2027-04 or 2027-04-30. */
static bool date_next(struct proofing *p, const char **at, struct date *out)
{
    while (**at != '\0') {
        size_t length = strspn(*at, "0123456789-");
        const char *token = arena_copy(p->arena, *at, length);
        *at += length > 0 ? length : 1;
        if (length >= 7 && date_parse(token, out))
            return true;
    }
    return false;
}

static void dates_compare(struct proofing *p, const char *text, struct date printed, int wrong)
{
    struct date date;
    for (const char *at = text == NULL ? "" : text; date_next(p, &at, &date);) {
        int order = date_compare(date, printed);
        proof_measured(p, 1);
        if ((wrong > 0 && order > 0) || (wrong < 0 && order < 0))
            proof_found(p, RULE_DATES, NULL, "\"%s\", printed %s", text,
                        date_text(p->arena, printed));
    }
}

static void dates_judge(struct proofing *p)
{
    const struct footer_facts *footer = sheet_footer(p->sheet);
    const char *at = footer->printed == NULL ? "" : footer->printed;
    struct date printed;
    if (!date_next(p, &at, &printed))
        return;
    dates_compare(p, footer->left[0], printed, 1);
    dates_compare(p, footer->left[1], printed, 1);
    dates_compare(p, footer->dates, printed, -1);
}

/* ---- G27 ---- */

struct block_order { const enum block_key *at; size_t count; };

/* A distress call has the call before all else. */
static struct block_order order_of(const struct sheet *sheet)
{
    static const enum block_key card[] = {
        BLOCK_TITLE, BLOCK_SIGNS, BLOCK_BERTH, BLOCK_ANCHOR, BLOCK_BERTH_SAY, BLOCK_CALL_LINE,
        BLOCK_STEPS, BLOCK_PLAN, BLOCK_DECISION,
        BLOCK_NEVER, BLOCK_CAUTIONS, BLOCK_OWN_LINES, BLOCK_CONTACT, BLOCK_CALL, BLOCK_ROWS,
        BLOCK_FOOTER};
    static const enum block_key distress[] = {
        BLOCK_TITLE, BLOCK_SIGNS, BLOCK_CALL_LINE, BLOCK_CALL, BLOCK_NATURE, BLOCK_POSITION,
        BLOCK_NO_ANSWER, BLOCK_NEVER, BLOCK_CAUTIONS, BLOCK_OWN_LINES, BLOCK_PAN_PAN,
        BLOCK_PHRASES, BLOCK_NEEDS, BLOCK_HINTS, BLOCK_ASKED, BLOCK_SPELL, BLOCK_HEARD,
        BLOCK_RELAY, BLOCK_DOWNGRADE, BLOCK_CANCEL, BLOCK_BEACON, BLOCK_CONTACT, BLOCK_FOOTER};
    if (sheet->kind == SHEET_DISTRESS)
        return (struct block_order){distress, COUNT_OF(distress)};
    return (struct block_order){card, COUNT_OF(card)};
}

static void rows_order_judge(struct proofing *p)
{
    struct block_order order = order_of(p->sheet);
    size_t last = 0;
    enum block_key before = BLOCK_NONE;
    for (size_t i = 0; i < order.count; i++)
        for (size_t b = 0; b < p->block_count; b++) {
            if (p->blocks[b].key != order.at[i])
                continue;
            proof_measured(p, 1);
            if (p->blocks[b].first < last)
                proof_found(p, RULE_ORDER, &p->page->items[p->blocks[b].first],
                            "\"%s\" is read before \"%s\"", block_word(order.at[i]),
                            block_word(before));
            last = p->blocks[b].first;
            before = order.at[i];
        }
}

/* ---- all ---- */

void proof_steps(struct proofing *p)
{
    const struct sheet *sheet = p->sheet;
    const struct warnings_facts *rules = sheet_warnings(sheet, BLOCK_OWN_LINES);
    const struct warnings_facts *cautions = sheet_warnings(sheet, BLOCK_CAUTIONS);
    const struct warnings_facts *nevers = sheet_warnings(sheet, BLOCK_NEVER);
    steps_judge(p);
    count_judge(p, "nevers", nevers->count, WARNINGS_MOST);
    count_judge(p, "cautions", cautions->count, WARNINGS_MOST);
    count_judge(p, "lines of the base", rules->count, OWN_LINES_MOST);
    decision_judge(p);
    tags_judge(p);
    signal_word_judge(p, BLOCK_NEVER, nevers->word, nevers->count);
    signal_word_judge(p, BLOCK_CAUTIONS, cautions->word, cautions->count);
    for (size_t i = 0; i < sheet_steps(sheet)->count; i++)
        lethal_judge(p, i);
    channel_judge(p);
    for (size_t i = 0; i < p->page->count; i++)
        if (is_text(&p->page->items[i]))
            digits_judge(p, &p->page->items[i]);
    dates_judge(p);
    rows_order_judge(p);
}
