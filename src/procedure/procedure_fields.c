/* procedure_fields.c - the tables of a procedure's logic and of its texts: what each key is
 * called, may hold and means (room: procedure). Adding a key is adding a row and a member;
 * the reference for authors is made of these rows. Never reads a file. */
#include "procedure_fields.h"

static const char *const per_words[] = {PER_LIST(CHOICE_WORD) NULL};
static const char *const seen_as_words[] = {SEEN_AS_LIST(CHOICE_WORD) NULL};
static const char *const gear_table_words[] = {GEAR_TABLE_LIST(CHOICE_WORD) NULL};
const char *const base_name_words[] = {BASE_NAME_LIST(CHOICE_WORD) NULL};
const char *const boat_name_words[] = {BOAT_NAME_LIST(CHOICE_WORD) NULL};
const char *const signal_words[] = {SIGNAL_LIST(CHOICE_WORD) NULL};
const char *const call_from_words[] = {CALL_FROM_LIST(CHOICE_WORD) NULL};

/* The classes that a card may be of, in the order of enum sign_class. */
static const char *const stripes[] = {
    [SIGN_FIRE - 1] = "fire", [SIGN_RESCUE - 1] = "rescue", [SIGN_CONTROL - 1] = "control",
    [SIGN_WARNING - 1] = "warning", NULL};

/* ---- keys in the wrong file ---- */

#define IN_TEXTS \
    "texts stand apart: write it in the file of the same name in words/LANGUAGE, under the " \
    "id that stands here"
#define IN_LOGIC \
    "only texts stand here: gear, conditions and sources stand in the procedure's own file"

static const struct stray_key text_keys[] = {
    {"title", IN_TEXTS},       {"subject", IN_TEXTS},    {"signs", IN_TEXTS},
    {"when_reason", IN_TEXTS}, {"rows_below", IN_TEXTS}, {"act", IN_TEXTS},
    {"seen", IN_TEXTS},
    {"because", IN_TEXTS},     {"who", IN_TEXTS},        {"ask", IN_TEXTS},
    {"say", IN_TEXTS},         {"if", IN_TEXTS},         {NULL, NULL}};

const struct stray_key logic_keys[] = {
    {"id", IN_LOGIC},      {"when", IN_LOGIC},     {"uses", IN_LOGIC},    {"also", IN_LOGIC},
    {"within", IN_LOGIC},  {"table", IN_LOGIC},
    {"sources", IN_LOGIC}, {"practice", IN_LOGIC}, {"symbol", IN_LOGIC},  {"stripe", IN_LOGIC},
    {"number", IN_LOGIC},  {"kind", IN_LOGIC},     {"per", IN_LOGIC},     {"after", IN_LOGIC},
    {"card", IN_LOGIC},    {"signal", IN_LOGIC},   {"nature", IN_LOGIC},  {"say", IN_LOGIC},
    {"hazards", IN_LOGIC}, {"does", IN_LOGIC},     {"guards", IN_LOGIC},  {"over", IN_LOGIC},
    {"assist", IN_LOGIC},  {"from", IN_LOGIC},     {"must_know", IN_LOGIC}, {"report", IN_LOGIC},
    {"core", IN_LOGIC},    {"optional", IN_LOGIC}, {"seen_as", IN_LOGIC},
    {NULL, NULL}};

#define AT_ITS_GEAR "name the state with each piece of gear, as {seacock: shut}, torch"

/* Of a step and its cases also what its gear tells now. */
static const struct stray_key step_strays[] = {
    {"state", AT_ITS_GEAR}, {"shows", AT_ITS_GEAR}, {"title", IN_TEXTS}, {"act", IN_TEXTS},
    {"because", IN_TEXTS},  {"who", IN_TEXTS},      {"say", IN_TEXTS},   {NULL, NULL}};

#define GEAR_AND_STATE .choices = item_key_list, .with = end_state_words

#define LOGIC_TABLE(called, rows) \
    {.what = (called), .fields = (rows), .count = sizeof(rows) / sizeof((rows)[0]), \
     .strays = text_keys}

/* ---- steps ---- */

/* A `when` stays a node, which condition_read.c reads: all, any and none hold conditions again,
 * and what may stand under the other keys depends on the gear named there. */
#define CASE_KEY(key, member, field_kind, ...) \
    KEYED(struct case_entry, key, member, field_kind, __VA_ARGS__)
static const struct field case_rows[] = {
    CASE_KEY("id", step_case.id, FIELD_TEXT,
             .about = "how the texts name it; without one it has the act of its step"),
    CASE_KEY("when", when, FIELD_NODE, .about = "boats it is for; all others, if left out"),
    CASE_KEY("uses", step_case.uses, FIELD_PAIRED, GEAR_AND_STATE,
             .about = "gear to use, if other"),
    CASE_KEY("also", step_case.also, FIELD_PAIRED, GEAR_AND_STATE,
             .about = "gear shown where it is recorded, if other"),
    CASE_KEY("lethal", step_case.lethal_ids, FIELD_LIST,
             .about = "what kills here, if other: ids of texts"),
    CASE_KEY("report", step_case.report, FIELD_TEXT,
             .about = "what the radio messages add where it is taken, in English"),
    CASE_KEY("does", step_case.does, FIELD_CHOICES, .choices = act_words,
             .about = "what else its gear does not tell"),
    CASE_KEY("guards", guards, FIELD_ENTRIES,
             ENTRIES_OF(struct guard_said, .table = &guard_table),
             .about = "more lines of its own"),
    CASE_KEY("within", step_case.within, FIELD_CHOICE, .choices = reach_words,
             .about = "how far one may go for its gear, if other"),
    CASE_KEY("sources", step_case.basis.sources, FIELD_WORDS,
             .about = "what it stands on, if on other"),
    CASE_KEY("practice", step_case.basis.practice, FIELD_ANSWER,
             .about = "it stands on trade practice, to be signed off"),
};
static const struct field_table case_table = {
    .what = "a case", .fields = case_rows, .count = sizeof case_rows / sizeof *case_rows,
    .strays = step_strays};

#define STEP_KEY(key, member, field_kind, ...) \
    KEYED(struct step_entry, key, member, field_kind, __VA_ARGS__)
static const struct field step_rows[] = {
    STEP_KEY("id", step.id, FIELD_TEXT, .required = true,
             .about = "how its texts and other texts name it"),
    STEP_KEY("when", when, FIELD_NODE, .about = "boats that have the step; all, if left out"),
    STEP_KEY("uses", step.uses, FIELD_PAIRED, GEAR_AND_STATE,
             .about = "gear that the step cannot do without"),
    STEP_KEY("also", step.also, FIELD_PAIRED, GEAR_AND_STATE,
             .about = "gear shown where it is recorded; without it, a note and no row"),
    STEP_KEY("table", step.table, FIELD_CHOICE, .choices = gear_table_words,
             .about = "its gear as a table"),
    STEP_KEY("lethal", step.lethal_ids, FIELD_LIST,
             .about = "what kills here, printed with it: up to two ids of texts"),
    STEP_KEY("does", step.does, FIELD_CHOICES, .choices = act_words,
             .about = "what people do by it, as far as its gear does not tell"),
    STEP_KEY("guards", guards, FIELD_ENTRIES,
             ENTRIES_OF(struct guard_said, .table = &guard_table),
             .about = "which of its lines makes it harmless"),
    STEP_KEY("within", step.within, FIELD_CHOICE, .choices = reach_words,
             .about = "how far one may go for its gear; what is farther is not offered"),
    STEP_KEY("cases", cases, FIELD_ENTRIES,
             ENTRIES_OF(struct case_entry, .table = &case_table),
             .about = "what to do on which boat: the first that holds"),
    STEP_KEY("sources", step.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    STEP_KEY("practice", step.basis.practice, FIELD_ANSWER,
             .about = "it stands on trade practice, to be signed off"),
};
static const struct field_table step_table = {
    .what = "a step", .fields = step_rows, .count = sizeof step_rows / sizeof *step_rows,
    .strays = step_strays};

/* ---- words with cases, and the decision ---- */

#define SAID_KEY(key, member, field_kind, ...) \
    KEYED(struct said_entry, key, member, field_kind, __VA_ARGS__)
#define SAID_ID \
    SAID_KEY("id", said.id, FIELD_TEXT, \
             .about = "how the texts name it, where it is one of several")
#define SAID_WHEN \
    SAID_KEY("when", when, FIELD_NODE, .about = "boats it is for; all others, if left out")
static const struct field call_when_rows[] = {SAID_ID, SAID_WHEN};
static const struct field exit_rows[] = {
    SAID_ID, SAID_WHEN,
    SAID_KEY("card", said.card, FIELD_TEXT, .about = "the procedure whose card is gone on with"),
    SAID_KEY("over", said.over, FIELD_CHOICES, .choices = hazard_words,
             .about = "hazards that this answer rules out: for the card it leads to, else "
                      "for the steps after it"),
};
static const struct field place_line_rows[] = {
    SAID_ID, SAID_WHEN,
    SAID_KEY("sources", said.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    SAID_KEY("practice", said.basis.practice, FIELD_ANSWER,
             .about = "it stands on trade practice, to be signed off"),
};
static const struct field_table place_line_table =
    LOGIC_TABLE("the line for a berth or an anchorage", place_line_rows);
static const struct field_table call_when_table =
    LOGIC_TABLE("the line that says when to call", call_when_rows);
static const struct field_table more_signs_table = LOGIC_TABLE("a sign more", call_when_rows);
static const struct field_table exit_table = LOGIC_TABLE("the exit of a decision", exit_rows);

#define ONE_OR_MANY(of) ENTRIES_OF(struct said_entry, .table = &(of), .one_or_many = true)

#define DECISION_KEY(key, member, field_kind, ...) \
    KEYED(struct decision_entry, key, member, field_kind, __VA_ARGS__)
static const struct field decision_rows[] = {
    DECISION_KEY("after", decision.after, FIELD_TEXT, .required = true,
                 .about = "the id of the step after which it is asked"),
    DECISION_KEY("yes", yes, FIELD_ENTRIES, ONE_OR_MANY(exit_table), .required = true,
                 .about = "what then: {}, {card: ...}, or a list of cases"),
    DECISION_KEY("no", no, FIELD_ENTRIES, ONE_OR_MANY(exit_table), .required = true,
                 .about = "the same"),
    DECISION_KEY("sources", decision.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    DECISION_KEY("practice", decision.basis.practice, FIELD_ANSWER,
                 .about = "it stands on trade practice, to be signed off"),
};
static const struct field_table decision_table = LOGIC_TABLE("a decision", decision_rows);

/* ---- nevers, cautions, calls ---- */

#define WARNING_KEY(key, member, field_kind, ...) \
    KEYED(struct warning_entry, key, member, field_kind, __VA_ARGS__)
#define WARNING_ID \
    WARNING_KEY("id", warning.id, FIELD_TEXT, .required = true, .about = "how the texts name it")
#define WARNING_REST \
    WARNING_KEY("when", when, FIELD_NODE, .about = "boats it is for; all, if left out"), \
    WARNING_KEY("sources", warning.basis.sources, FIELD_WORDS, \
                .about = "authorities it stands on, VA or VB, one of them current")
static const struct field never_rows[] = {
    WARNING_ID,
    WARNING_KEY("symbol", warning.symbol, FIELD_CHOICE, .choices = symbol_keys,
                .about = "its sign, of a prohibition"),
    WARNING_KEY("forbids", warning.forbids, FIELD_CHOICES, .choices = act_words,
                .about = "what it forbids, on cards that exits lead to as well"),
    WARNING_REST,
};
static const struct field caution_rows[] = {WARNING_ID, WARNING_REST};
static const struct field_table never_table = LOGIC_TABLE("a never", never_rows);
static const struct field_table caution_table = LOGIC_TABLE("a caution", caution_rows);

#define CALL_KEY(key, member, field_kind, ...) \
    KEYED(struct call_entry, key, member, field_kind, __VA_ARGS__)
static const struct field call_rows[] = {
    CALL_KEY("id", call.id, FIELD_TEXT,
             .about = "how the texts name it, where it is one of several"),
    CALL_KEY("when", when, FIELD_NODE, .about = "boats it is for; all, if left out"),
    CALL_KEY("signal", call.signal, FIELD_CHOICE, .required = true, .choices = signal_words,
             .about = "distress, urgency or safety"),
    CALL_KEY("nature", call.nature, FIELD_CHOICE, .choices = nature_words,
             .about = "the nature of distress the set is told"),
    CALL_KEY("say", call.say, FIELD_TEXT, .required = true,
             .about = "what is wrong, in English, whatever language the card is in"),
    CALL_KEY("assist", call.assist, FIELD_TEXT, .about = "the help needed, in English"),
    CALL_KEY("from", call.from, FIELD_CHOICE, .required = true, .choices = call_from_words,
             .about = "the radio it is made from"),
};
static const struct field_table call_table = LOGIC_TABLE("a call", call_rows);

/* ---- the file ---- */

#define LOGIC_KEY(key, member, field_kind, ...) \
    KEYED(struct procedure_logic, key, member, field_kind, __VA_ARGS__)
static const struct field logic_rows[] = {
    LOGIC_KEY("procedure", procedure.key, FIELD_TEXT, .required = true,
              .about = "its key: small letters, digits and _"),
    LOGIC_KEY("number", procedure.number, FIELD_NUMBER, .required = true, .low = 1000,
              .high = 99000, .whole = true,
              .about = "the card's number, fixed for good: printed cards name each other by it"),
    LOGIC_KEY("form_of", procedure.form_of, FIELD_TEXT,
              .about = "the procedure that it is another form of, for other boats: it has its "
                       "number"),
    LOGIC_KEY("form_letter", procedure.form_letter, FIELD_TEXT,
              .about = "of another form: the letter after its number where a boat has both"),
    LOGIC_KEY("core", procedure.core, FIELD_ANSWER,
              .about = "of the core set: no base leaves its card out"),
    LOGIC_KEY("optional", procedure.optional, FIELD_ANSWER,
              .about = "its card is made only where cards: {add: } of a base or a boat names it"),
    LOGIC_KEY("seen_as", procedure.seen_as, FIELD_CHOICE, .choices = seen_as_words,
              .about = "of a card and the distress call: the group of its `seen` in the index of "
                       "cards"),
    LOGIC_KEY("kind", procedure.kind, FIELD_CHOICE, .choices = sheet_kind_words,
              .about = "card, if left out; the distress call; where everything is; the index of "
                       "cards"),
    LOGIC_KEY("per", procedure.per, FIELD_CHOICE, .choices = per_words,
              .about = "a boat with two of them gets two cards"),
    LOGIC_KEY("symbol", procedure.symbol, FIELD_CHOICE, .required = true, .choices = symbol_keys,
              .about = "the sign beside the title, of the stripe's class"),
    LOGIC_KEY("stripe", procedure.stripe, FIELD_CHOICE, .required = true, .choices = stripes,
              .about = "colour of the stripe"),
    LOGIC_KEY("when", when, FIELD_NODE, .about = "boats that need the card; all, if left out"),
    LOGIC_KEY("more_signs", more_signs, FIELD_ENTRIES, ONE_OR_MANY(more_signs_table),
              .about = "one more sign, on some boats: {when: ...}, or a list of cases"),
    LOGIC_KEY("berth", berth, FIELD_ENTRIES, ONE_OR_MANY(place_line_table),
              .about = "what people do who can step ashore: {practice: yes}, or a list of cases"),
    LOGIC_KEY("anchor", anchor, FIELD_ENTRIES, ONE_OR_MANY(place_line_table),
              .about = "what people do who lie at anchor: the same"),
    LOGIC_KEY("call_when", call_when, FIELD_ENTRIES, ONE_OR_MANY(call_when_table),
              .about = "who calls when: {}, or a list of cases"),
    LOGIC_KEY("hazards", procedure.hazards, FIELD_CHOICES, .choices = hazard_words,
              .about = "what kills while the card is followed; its exits hand it on"),
    LOGIC_KEY("over", procedure.over, FIELD_CHOICES, .choices = hazard_words,
              .about = "what is over when its card is taken up, whichever card led to it"),
    LOGIC_KEY("hazards_if", hazards_if, FIELD_ENTRIES,
              ENTRIES_OF(struct hazard_entry, .table = &hazard_case_table),
              .about = "the same, of some boats alone"),
    LOGIC_KEY("danger_in", procedure.danger_in, FIELD_CHOICE, .choices = zone_key_list,
              .about = "the zone where it burns or leaks: hatched on the plan"),
    LOGIC_KEY("vapour_from", procedure.vapour_from, FIELD_CHOICES, .choices = item_key_list,
              .about = "items in whose lockers vapour lies: other gear there is out of reach; "
                       "hatched on the plan"),
    LOGIC_KEY("despite_vapour", procedure.despite_vapour, FIELD_CHOICES,
              .choices = item_key_list,
              .about = "items that are offered there all the same, with words of their own"),
    LOGIC_KEY("must_know", procedure.must_know, FIELD_CHOICES, .choices = item_key_list,
              .about = "gear under also that holds the card while the record does not speak of it"),
    LOGIC_KEY("steps", steps, FIELD_ENTRIES,
              ENTRIES_OF(struct step_entry, .table = &step_table),
              .about = "what to do, in order, at most eight"),
    LOGIC_KEY("decision", decision, FIELD_SECTION,
              SECTION_OF(struct procedure_logic, decided, .table = &decision_table),
              .about = "the one question"),
    LOGIC_KEY("never", never, FIELD_ENTRIES,
              ENTRIES_OF(struct warning_entry, .table = &never_table),
              .about = "what must not be done, at most three"),
    LOGIC_KEY("cautions", cautions, FIELD_ENTRIES,
              ENTRIES_OF(struct warning_entry, .table = &caution_table),
              .about = "warnings of authorities, one to three"),
    LOGIC_KEY("calls", calls, FIELD_ENTRIES,
              ENTRIES_OF(struct call_entry, .table = &call_table),
              .about = "the radio messages, the gravest first"),
};
const struct field_table logic_table = LOGIC_TABLE("a procedure", logic_rows);

const struct field_table *procedure_file_fields(void)
{
    return &logic_table;
}

/* ---- the texts ---- */

#define TEXT_KEY(name, field_kind, ...) {.key = (name), .kind = (field_kind), __VA_ARGS__}
#define TEXT_TABLE(called, rows) \
    {.what = (called), .fields = (rows), .count = sizeof(rows) / sizeof((rows)[0]), \
     .strays = logic_keys}

/* A mapping of texts by ids of the logic, as rows that only describe it: it is read by rows
 * that are made of the ids. */
#define ANY_ID "{id}"
static const struct field text_by_id_rows[] = {
    TEXT_KEY(ANY_ID, FIELD_TEXT, .about = "its text"),
};
static const struct field_table text_by_id = TEXT_TABLE("a set of texts", text_by_id_rows);
#define TEXTS_BY_ID .part = &(const struct field_part){.table = &text_by_id}
#define ONE_OR_BY_ID .part = &(const struct field_part){.table = &text_by_id, .lone = ANY_ID}

static const struct field case_text_rows[] = {
    [CASE_ACT] = TEXT_KEY("act", FIELD_TEXT, .required = true,
                          .about = "the headline, **bold** in stars"),
    [CASE_BECAUSE] = TEXT_KEY("because", FIELD_TEXT,
                              .about = "why, if for another reason than the step's"),
};
const struct field_table case_texts = TEXT_TABLE("a case", case_text_rows);
static const struct field case_by_id_rows[] = {
    TEXT_KEY("{id}", FIELD_SECTION, SECTION_WITHIN(.table = &case_texts),
             .about = "the texts of the case"),
};
static const struct field_table case_by_id = TEXT_TABLE("a set of texts", case_by_id_rows);

static const struct field step_text_rows[] = {
    [STEP_ACT] = TEXT_KEY("act", FIELD_TEXT, .about = "the headline, **bold** in stars"),
    [STEP_BECAUSE] = TEXT_KEY("because", FIELD_TEXT, .about = "why, for the skipper"),
    [STEP_WHO] = TEXT_KEY("who", FIELD_TEXT, .about = "whose task it is"),
    [STEP_LETHAL] = TEXT_KEY("lethal", FIELD_NODE, TEXTS_BY_ID,
                             .about = "what kills here, by id, for the step and its cases"),
    [STEP_CASES] = TEXT_KEY("cases", FIELD_NODE, SECTION_WITHIN(.table = &case_by_id),
                            .about = "of each case that has an id, by it"),
};
const struct field_table step_texts = TEXT_TABLE("a step", step_text_rows);
static const struct field step_by_id_rows[] = {
    TEXT_KEY("{id}", FIELD_SECTION, SECTION_WITHIN(.table = &step_texts),
             .about = "the texts of the step"),
};
static const struct field_table step_by_id = TEXT_TABLE("a set of texts", step_by_id_rows);

static const struct field decision_text_rows[] = {
    [DECISION_ASK] = TEXT_KEY("ask", FIELD_TEXT, .required = true,
                              .about = "a question that looking answers"),
    [DECISION_YES] = TEXT_KEY("yes", FIELD_NODE, ONE_OR_BY_ID,
                              .about = "what then: one text, or texts by id"),
    [DECISION_NO] = TEXT_KEY("no", FIELD_NODE, ONE_OR_BY_ID, .about = "the same"),
};
const struct field_table decision_texts = TEXT_TABLE("a decision", decision_text_rows);

static const struct field head_text_rows[] = {
    [HEAD_PROCEDURE] = TEXT_KEY("procedure", FIELD_TEXT, .required = true,
                                .about = "the key of the procedure whose texts these are"),
    [HEAD_TITLE] = TEXT_KEY("title", FIELD_TEXT, .required = true, .about = "the card's title"),
    [HEAD_SUBJECT] = TEXT_KEY("subject", FIELD_TEXT, .required = true,
                              .about = "what other cards call it"),
    [HEAD_SIGNS] = TEXT_KEY("signs", FIELD_LIST, .required = true, .about = "how one knows"),
    [HEAD_SEEN] = TEXT_KEY("seen", FIELD_LIST, .required = true,
                           .about = "of a card and the distress call: what a guest sees, hears or "
                                    "smells first, one to three entries"),
    [HEAD_WHEN_REASON] = TEXT_KEY("when_reason", FIELD_TEXT, .required = true,
                                  .about = "with a when: why other boats do not need the card"),
    [HEAD_ROWS_BELOW] = TEXT_KEY("rows_below", FIELD_TEXT,
                                 .about = "printed with each step that has gear below deck"),
    [HEAD_MORE_SIGNS] = TEXT_KEY("more_signs", FIELD_NODE, ONE_OR_BY_ID,
                                .about = "one sign more: one text, or texts by id"),
    [HEAD_BERTH] = TEXT_KEY("berth", FIELD_NODE, ONE_OR_BY_ID,
                            .about = "what to do in a berth: one text, or texts by id"),
    [HEAD_ANCHOR] = TEXT_KEY("anchor", FIELD_NODE, ONE_OR_BY_ID,
                             .about = "what to do at anchor: the same"),
    [HEAD_CALL_WHEN] = TEXT_KEY("call_when", FIELD_NODE, ONE_OR_BY_ID,
                               .about = "who calls when: one text, or texts by id"),
    [HEAD_STEPS] = TEXT_KEY("steps", FIELD_NODE, SECTION_WITHIN(.table = &step_by_id),
                            .about = "of each step, by its id"),
    [HEAD_DECISION] = TEXT_KEY("decision", FIELD_NODE, SECTION_WITHIN(.table = &decision_texts),
                               .about = "the question, and what either answer leads to"),
    [HEAD_NEVER] = TEXT_KEY("never", FIELD_NODE, TEXTS_BY_ID,
                            .about = "what must not be done, by id, without the word never"),
    [HEAD_CAUTIONS] = TEXT_KEY("cautions", FIELD_NODE, TEXTS_BY_ID, .about = "the warnings, by id"),
    [HEAD_CALLS] = TEXT_KEY("calls", FIELD_NODE, TEXTS_BY_ID,
                            .about = "by id, the word that tells one call from the other"),
};
const struct field_table head_texts = TEXT_TABLE("a file of texts", head_text_rows);

const struct field_table *procedure_text_fields(void)
{
    return &head_texts;
}
