/* sheet.c - finding the blocks of a sheet (room: compose). */
#include "sheet.h"

#include "promise.h"

const struct block *sheet_block(const struct sheet *sheet, enum block_key key)
{
    for (size_t i = 0; i < sheet->block_count; i++)
        if (sheet->blocks[i].key == key)
            return &sheet->blocks[i];
    return NULL;
}

/* ---- facts, empty where there is no such block ---- */

#define FACTS(sheet, key, member, ...) \
    static const struct member##_facts empty = {__VA_ARGS__}; \
    const struct block *block = sheet_block(sheet, key); \
    return block == NULL ? &empty : block->facts.member

const struct card_text *sheet_text(const struct sheet *sheet, enum block_key key)
{
    static const struct card_text empty = {.text = ""};
    const struct block *block = sheet_block(sheet, key);
    promise(facts_kind_of(key) == FACTS_TEXT);
    return block == NULL ? &empty : block->facts.text;
}

const struct title_facts *sheet_title(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_TITLE, title, .title = "", .boat = "", .number = "");
}

const struct signs_facts *sheet_signs(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_SIGNS, signs, .word = "", .signs = "");
}

const struct cases_facts *sheet_cases(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_CALL_LINE, cases, .count = 0);
}

const struct steps_facts *sheet_steps(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_STEPS, steps, .count = 0);
}

const struct decision_facts *sheet_decision(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_DECISION, decision, .ask = "", .yes = "", .no = "", .yes_word = "",
          .no_word = "");
}

const struct warnings_facts *sheet_warnings(const struct sheet *sheet, enum block_key key)
{
    promise(facts_kind_of(key) == FACTS_WARNINGS);
    FACTS(sheet, key, warnings, .word = "");
}

const struct contact_facts *sheet_contact(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_CONTACT, contact, .left = "", .right = "");
}

const struct call_facts *sheet_call(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_CALL, call, .title = "", .station = "");
}

const struct plan_facts *sheet_plan(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_PLAN, plan, .marker_count = 0);
}

const struct places_facts *sheet_places(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_LABELS, places, .count = 0);
}

const struct index_facts *sheet_index(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_INDEX, index, .count = 0);
}

const struct seen_facts *sheet_seen(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_SEEN, seen, .ask = "", .take = "");
}

const struct legend_facts *sheet_legend(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_LEGEND, legend, .words = {"", "", ""});
}

const struct rows_facts *sheet_rows(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_ROWS, rows, .count = 0);
}

const struct form_facts *sheet_form(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_FORM, form, .count = 0);
}

const struct pages_facts *sheet_pages(const struct sheet *sheet)
{
    const struct block *block = sheet_block(sheet, BLOCK_PAGES);
    return block == NULL ? NULL : block->facts.pages;
}

const struct footer_facts *sheet_footer(const struct sheet *sheet)
{
    FACTS(sheet, BLOCK_FOOTER, footer, .left = {"", ""}, .dates = "", .first_date = "",
          .code_word = "", .code = "", .printed = "");
}

const struct section_facts *sheet_section(const struct sheet *sheet, enum block_key key)
{
    const struct block *block = sheet_block(sheet, key);
    promise(facts_kind_of(key) == FACTS_SECTION);
    return block == NULL ? NULL : block->facts.section;
}

bool plan_part_shows(enum plan_part part, enum level level)
{
    switch (part) {
    case PLAN_PART_WHOLE:
        return true;
    case PLAN_PART_DECK:
        return level != LEVEL_BELOW;
    case PLAN_PART_BELOW:
        return level == LEVEL_BELOW;
    }
    promise_unreached();
}
