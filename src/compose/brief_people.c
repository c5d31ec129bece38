/* brief_people.c - what people write on the skipper's sheet: who does what, who is aboard, what is
 * left ashore, who was shown the boat (room: compose). */
#include "brief_room.h"

/* ---- roles, two beside each other ---- */

static const enum word roles[] = {
    WORD_BRIEF_ROLE_CALL, WORD_BRIEF_ROLE_BOAT, WORD_BRIEF_ROLE_COUNT, WORD_BRIEF_ROLE_SHUT,
    WORD_BRIEF_ROLE_FIRE, WORD_BRIEF_ROLE_RAFT, WORD_BRIEF_ROLE_WATER, WORD_BRIEF_ROLE_CARDS};
enum { ROLES = sizeof roles / sizeof *roles, ROLE_COLUMNS = 6 };

static void role_columns_make(const struct briefing *briefing, struct form_column *columns)
{
    const struct form_writer *writer = &briefing->writer;
    for (size_t i = 0; i < ROLE_COLUMNS; i += 3) {
        columns[i] = (struct form_column){FORM_TEXT, form_word(writer, WORD_BRIEF_ROLE), 200};
        columns[i + 1] = (struct form_column){FORM_BLANK, form_word(writer, WORD_BRIEF_WHO), 150};
        columns[i + 2] = (struct form_column){FORM_BLANK, form_word(writer, WORD_BRIEF_DEPUTY),
                                              150};
    }
}

void brief_roles_add(struct briefing *briefing)
{
    struct form_column columns[ROLE_COLUMNS];
    role_columns_make(briefing, columns);
    brief_section_add(briefing, &(struct brief_section){.title = WORD_BRIEF_ROLES,
                                                        .columns = columns,
                                                        .column_count = ROLE_COLUMNS});
    for (size_t i = 0; i < ROLES; i += 2) {
        const struct form_cell blank = brief_blank(briefing, NULL);
        const struct form_cell cells[ROLE_COLUMNS] = {
            brief_cell(briefing, brief_word(briefing, roles[i])), blank, blank,
            brief_cell(briefing, brief_word(briefing, roles[i + 1])), blank, blank};
        form_line_add(&briefing->writer, cells, FORM_PLAIN,
                      briefing->writer.composing.in->boat->place);
    }
}

/* ---- blanks ---- */

/* Two beside each other. */
static const struct form_column blank_columns[] = {{FORM_BLANK, "", 0}, {FORM_BLANK, "", 0}};

static void blanks_add(struct briefing *briefing, const enum word *words, size_t count)
{
    for (size_t i = 0; i < count; i += 2) {
        const struct form_cell cells[2] = {
            brief_blank(briefing, brief_word(briefing, words[i])),
            i + 1 < count ? brief_blank(briefing, brief_word(briefing, words[i + 1])) : NO_BLANK};
        form_line_add(&briefing->writer, cells, FORM_PLAIN,
                      briefing->writer.composing.in->boat->place);
    }
}

#define BLANKS_ADD(briefing, words) blanks_add(briefing, words, sizeof words / sizeof *words)

/* A line for each child that was told of, and one where none was. */
static void children_add(struct briefing *briefing)
{
    size_t children = briefing->hire->children;
    brief_section_add(briefing, &(struct brief_section){.title = WORD_BRIEF_CHILDREN_BLANKS,
                                                        .columns = brief_blank_column,
                                                        .column_count = 1});
    for (size_t i = 0; i < children || i == 0; i++)
        brief_blank_add(briefing, brief_word(briefing, children == 0 ? WORD_BRIEF_NO_CHILD
                                                                     : WORD_BRIEF_CHILD));
}

void brief_aboard_add(struct briefing *briefing)
{
    static const enum word words[] = {WORD_BRIEF_SLIPS, WORD_BRIEF_SLIPS_DEPUTY,
                                      WORD_BRIEF_MEDICAL, WORD_BRIEF_NO_SWIM};
    brief_section_add(briefing, &(struct brief_section){.title = WORD_BRIEF_PEOPLE_BLANKS,
                                                        .columns = blank_columns,
                                                        .column_count = 2});
    BLANKS_ADD(briefing, words);
    children_add(briefing);
}

void brief_ashore_add(struct briefing *briefing)
{
    static const enum word words[] = {WORD_BRIEF_ASHORE_WITH, WORD_BRIEF_ASHORE_NAMES,
                                      WORD_BRIEF_ASHORE_ROUTE, WORD_BRIEF_ASHORE_OVERDUE};
    struct arena *arena = briefing->writer.composing.arena;
    const struct boat *boat = briefing->writer.composing.in->boat;
    const struct phrase *known =
        phrase_word(arena, WORD_BRIEF_ASHORE_KNOWN, "boat", phrase_text(arena, &boat->facts.name),
                    "people", brief_people(briefing), NULL);
    brief_section_add(briefing, &(struct brief_section){.title = WORD_BRIEF_ASHORE, .note = known,
                                                        .columns = blank_columns,
                                                        .column_count = 2});
    BLANKS_ADD(briefing, words);
}

/* ---- proof ---- */

void brief_proof_add(struct briefing *briefing)
{
    static const enum word words[] = {WORD_BRIEF_PROOF_DAY, WORD_BRIEF_PROOF_NAMES,
                                      WORD_BRIEF_PROOF_NAMES, WORD_BRIEF_PROOF_NAMES,
                                      WORD_BRIEF_PROOF_SKIPPER, WORD_BRIEF_PROOF_BASE};
    struct place boat = briefing->writer.composing.in->boat->place;
    brief_section_add(briefing, &(struct brief_section){
                                    .title = WORD_BRIEF_PROOF,
                                    .note = brief_word(briefing, WORD_BRIEF_PROOF_AGAIN),
                                    .columns = blank_columns, .column_count = 2});
    BLANKS_ADD(briefing, words);
    brief_section_add(briefing, &(struct brief_section){.title = WORD_BRIEF_DEFER,
                                                        .columns = brief_text_column,
                                                        .column_count = 1});
    brief_text_add(briefing, brief_word(briefing, WORD_BRIEF_DEFER_ALL), boat);
    brief_text_add(briefing, brief_word(briefing, WORD_BRIEF_DEFER_FLAG), boat);
}
