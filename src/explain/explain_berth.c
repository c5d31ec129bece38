/* explain_berth.c - where the line on what to do in a berth and at anchor comes from, and what it
 * stands on (room: explain). Never words anything itself. */
#include "explain.h"

/* One of the two places that the line speaks of. */
struct ashore_line {
    const char *word;
    enum block_key block;
    const struct said_list *list;
};

static struct ashore_line ashore_line_at(const struct sheet *sheet, size_t index)
{
    const struct procedure *procedure = sheet->procedure;
    return index == 0 ? (struct ashore_line){"in a berth", BLOCK_BERTH, &procedure->berth}
                      : (struct ashore_line){"at anchor", BLOCK_ANCHOR, &procedure->anchor};
}

/* NULL: the card has no such line. */
static const struct said *ashore_said(const struct explaining *explaining,
                                      const struct ashore_line *line)
{
    if (sheet_block(explaining->sheet, line->block) == NULL)
        return NULL;
    return said_take(explaining->composing, line->list);
}

static void base_fact_tell(const struct explaining *explaining, const char *key,
                           const struct text_value *fact)
{
    if (fact->text != NULL)
        placed_tell(explaining, INDENT_DETAIL, fact->place, "base: %s %s", key, fact->text);
}

static void ashore_line_tell(const struct explaining *explaining, const struct ashore_line *line)
{
    const struct said *said = ashore_said(explaining, line);
    if (said == NULL)
        return;
    placed_tell(explaining, INDENT_REASON, said->say.place, "%s: %s", line->word,
                sheet_text(explaining->sheet, line->block)->text);
    said_tell(explaining, line->list);
    basis_tell(explaining, INDENT_DETAIL, &said->basis);
}

void berth_tell(const struct explaining *explaining)
{
    const struct base_record *base = explaining->in->base;
    for (size_t i = 0; i < 2; i++) {
        struct ashore_line line = ashore_line_at(explaining->sheet, i);
        ashore_line_tell(explaining, &line);
    }
    if (sheet_block(explaining->sheet, BLOCK_BERTH_SAY) == NULL)
        return;
    line_tell(explaining, INDENT_REASON, "ashore: %s",
              sheet_text(explaining->sheet, BLOCK_BERTH_SAY)->text);
    base_fact_tell(explaining, "fire_phone", &base->fire_phone);
    base_fact_tell(explaining, "marina", &base->marina);
    base_fact_tell(explaining, "berth", &base->berth);
}

size_t berth_practice_tell(const struct explaining *explaining)
{
    size_t count = 0;
    for (size_t i = 0; i < 2; i++) {
        struct ashore_line line = ashore_line_at(explaining->sheet, i);
        const struct said *said = ashore_said(explaining, &line);
        if (said == NULL || said->basis.practice.answer != ANSWER_YES)
            continue;
        placed_tell(explaining, INDENT_REASON, said->place, "the line %s: trade practice",
                    line.word);
        count++;
    }
    return count;
}
