/* words_fields.c - the sections of a language's file of words and their keys: what each is
 * called, may hold and means (room: words). Which forms of a number there are is a rule of the
 * language itself: the tables list all that a language may have, and words_read.c takes of them
 * those that this one has. Never reads a file. */
#include "words_room.h"

/* ---- plurals ---- */

static const struct field plural_rule_rows[] = {
    ROW(struct rule_lists, is, FIELD_WORDS, .about = "numbers, as 1 or 2-4"),
    ROW(struct rule_lists, ends, FIELD_WORDS, .about = "last digits, as 1 or 2-4"),
    KEYED(struct rule_lists, "not", not_, FIELD_WORDS, .about = "last digits, as 11 or 12-14"),
};
static const struct field_table plural_rule_table = TABLE("a rule of a form", plural_rule_rows);

#define RULE_OFFSET(name, member) \
    (offsetof(struct words_file, rules) + PLURAL_##name * sizeof(struct plural_entry) + \
     offsetof(struct plural_entry, member))
#define RULE_ROW(name, form) \
    {.key = #form, .kind = FIELD_SECTION, .offset = RULE_OFFSET(name, section), \
     .part = &(const struct field_part){.table = &plural_rule_table, \
                                        .offset = RULE_OFFSET(name, lists)}, \
     .about = "{is: ...} or {ends: ..., not: ...}"},
static const struct field plural_form_rows[] = {PLURAL_LIST(RULE_ROW)};
#undef RULE_ROW
/* `other` stands last and has no rule: it takes what the rules leave. */
static const struct field_table plural_form_table = {
    .what = "the section plurals", .fields = plural_form_rows, .count = PLURAL_OTHER};

/* ---- texts with several forms ---- */

#define FORM_ROW(name, form) \
    {.key = #form, .kind = FIELD_TEXT, .required = PLURAL_##name == PLURAL_OTHER, \
     .offset = PLURAL_##name * sizeof(struct text_value), .about = "a form for numbers"},
static const struct field form_rows[] = {PLURAL_LIST(FORM_ROW)};
#undef FORM_ROW
const struct field_table form_table = TABLE("a word by its number", form_rows);

static const struct field joint_rows[] = {
    {.key = "two", .kind = FIELD_TEXT, .required = true, .about = "the joint of two alone",
     .offset = JOINT_TWO * sizeof(struct text_value)},
    {.key = "many", .kind = FIELD_TEXT, .required = true, .about = "the joints of more than two",
     .offset = JOINT_MANY * sizeof(struct text_value)},
    {.key = "last", .kind = FIELD_TEXT, .required = true, .about = "the last joint of these",
     .offset = JOINT_LAST * sizeof(struct text_value)},
};
const struct field_table joint_table = TABLE("the joint of a list", joint_rows);

/* ---- words, items, zones ---- */

/* A plain word is a text. The others are a text or a mapping, as the language needs it: no
 * kind of a row reads both, and `lone` only tells of it. */
#define WORD_PART_PLAIN NULL
#define WORD_PART_COUNTED &(const struct field_part){.table = &form_table, .lone = "other"}
#define WORD_PART_JOIN &(const struct field_part){.table = &joint_table, .lone = "two"}
#define WORD_FIELD(name, word_key, word_shape, word_blanks) \
    {.key = #word_key, .kind = SHAPE_##word_shape == SHAPE_PLAIN ? FIELD_TEXT : FIELD_NODE, \
     .required = true, .part = WORD_PART_##word_shape, .about = "a text of the card"},
static const struct field word_field_rows[WORD_COUNT] = {WORD_LIST(WORD_FIELD)};
#undef WORD_FIELD
const struct field_table word_table = TABLE("the section words", word_field_rows);

#define NAME_FORM_ROW(name, form) \
    {.key = #form, .kind = FIELD_TEXT, .required = PLURAL_##name == PLURAL_OTHER, \
     .offset = offsetof(struct item_words, forms) + PLURAL_##name * sizeof(struct text_value), \
     .about = "a form for numbers"},
static const struct field item_name_rows[] = {
    ROW(struct item_words, name, FIELD_TEXT, .about = "one of them, where it stands alone"),
    PLURAL_LIST(NAME_FORM_ROW)};
#undef NAME_FORM_ROW
const struct field_table item_name_table = TABLE("an entry of items", item_name_rows);

#define ITEM_ROW(key_, ...) \
    {.key = #key_, .kind = FIELD_NODE, .required = true, \
     .offset = offsetof(struct words_file, items) + ITEM_##key_ * sizeof(struct node_value), \
     .part = &(const struct field_part){.table = &item_name_table}, \
     .about = "what it is called: {one: ..., other: ...}"},
static const struct field item_rows[] = {ITEM_LIST(ITEM_ROW)};
#undef ITEM_ROW
static const struct field_table item_table = TABLE("the section items", item_rows);

/* A zone with a family needs no name of its own. */
#define ZONE_ROW(key_, family_, ...) \
    {.key = #key_, .kind = FIELD_TEXT, .required = ZONE_##key_ == ZONE_##family_, \
     .offset = offsetof(struct words, zones) + ZONE_##key_ * sizeof(struct text_value), \
     .about = "name of the zone"},
static const struct field zone_rows[] = {ZONE_LIST(ZONE_ROW)};
#undef ZONE_ROW
static const struct field_table zone_table = TABLE("the section zones", zone_rows);

/* ---- other names ---- */

#define OTHER_NAMES_ROW(key_, member, index) \
    {.key = #key_, .kind = FIELD_LIST, .any_word = true, \
     .offset = offsetof(struct words, member) + (index) * sizeof(struct list_value), \
     .about = "what people call it besides"},
#define ITEM_NAMES_ROW(key_, ...) OTHER_NAMES_ROW(key_, item_synonyms, ITEM_##key_)
static const struct field item_synonym_rows[] = {ITEM_LIST(ITEM_NAMES_ROW)};
#undef ITEM_NAMES_ROW
#define ZONE_NAMES_ROW(key_, ...) OTHER_NAMES_ROW(key_, zone_synonyms, ZONE_##key_)
static const struct field zone_synonym_rows[] = {ZONE_LIST(ZONE_NAMES_ROW)};
#undef ZONE_NAMES_ROW
static const struct field_table item_synonym_table = TABLE("the synonyms of items",
                                                           item_synonym_rows);
static const struct field_table zone_synonym_table = TABLE("the synonyms of zones",
                                                           zone_synonym_rows);

static const struct field synonym_entry_rows[] = {
    KEYED(struct synonym_entry, "write", key, FIELD_TEXT, .any_word = true, .required = true,
          .about = "the key, or the word of a choice"),
    KEYED(struct synonym_entry, "for", names, FIELD_LIST, .any_word = true, .required = true,
          .about = "what people write instead"),
};
static const struct field_table synonym_entry_table = TABLE("a synonym", synonym_entry_rows);

static const struct field synonym_rows[] = {
    KEYED(struct words_file, "items", synonym_items, FIELD_SECTION,
          SECTION_OF(struct words_file, words, .table = &item_synonym_table),
          .about = "other names of gear, such as first_aid_kit: [medical kit]"),
    KEYED(struct words_file, "zones", synonym_zones, FIELD_SECTION,
          SECTION_OF(struct words_file, words, .table = &zone_synonym_table),
          .about = "other names of zones"),
    KEYED(struct words_file, "keys", words.key_synonyms, FIELD_ENTRIES,
          ENTRIES_OF(struct synonym_entry, .table = &synonym_entry_table),
          .about = "other names of keys of a base's files, such as {write: zone, for: [place]}"),
    KEYED(struct words_file, "choices", words.choice_synonyms, FIELD_ENTRIES,
          ENTRIES_OF(struct synonym_entry, .table = &synonym_entry_table),
          .about = "the same of words that may stand in them"),
};
static const struct field_table synonym_table = TABLE("the section synonyms", synonym_rows);

#define STATE_ROW(name_, word_) \
    {.key = word_, .kind = FIELD_TEXT, .required = true, \
     .offset = offsetof(struct words, states) + name_ * sizeof(struct text_value), \
     .about = "what the state is called"},
static const struct field end_state_rows[] = {END_STATE_LIST(STATE_ROW)};
#undef STATE_ROW
static const struct field_table end_state_table = TABLE("the section states", end_state_rows);

/* ---- sets of words ---- */

#define SET_ROW(name, needed, set_key) \
    {.key = #set_key, .kind = FIELD_LIST, .required = (needed), \
     .offset = offsetof(struct words, sets) + SET_##name * sizeof(struct list_value), \
     .about = "words of one meaning"},

/* Of all sets those of one section. */
#define SET_IN(name, section, set_key) SET_IN_##section(name, set_key)
#define SET_IN_reading(name, set_key) SET_ROW(name, true, set_key)
#define SET_IN_proof(name, set_key)
static const struct field reading_set_rows[] = {WORD_SET_LIST(SET_IN)};
#undef SET_IN_reading
#undef SET_IN_proof
#define SET_IN_reading(name, set_key)
#define SET_IN_proof(name, set_key) SET_ROW(name, false, set_key)
static const struct field proof_set_rows[] = {
    WORD_SET_LIST(SET_IN)
    ROW(struct words, longer, FIELD_NUMBER, .low = 0, .high = 60000, .whole = true,
        .about = "by how many hundredths the language is longer than English")};
#undef SET_IN_reading
#undef SET_IN_proof
static const struct field_table reading_set_table = TABLE("the section reading",
                                                          reading_set_rows);
static const struct field_table proof_set_table = TABLE("the section proof", proof_set_rows);

/* ---- the file ---- */

#define WORDS_SECTION(member, ...) \
    ROW(struct words_file, member, FIELD_SECTION, __VA_ARGS__)
static const struct field words_file_rows[] = {
    KEYED(struct words_file, "language", words.language, FIELD_TEXT, .required = true,
          .about = "its code, as en"),
    KEYED(struct words_file, "name", words.name, FIELD_TEXT, .required = true,
          .about = "its name"),
    WORDS_SECTION(plurals, SECTION_WITHIN(.table = &plural_form_table), .required = true,
                  .about = "which form a number takes, as {one: {is: 1}}"),
    KEYED(struct words_file, "words", word_texts, FIELD_NODE, .required = true,
          .part = &(const struct field_part){.table = &word_table},
          .about = "sentences of a card"),
    KEYED(struct words_file, "items", item_section, FIELD_SECTION,
          SECTION_WITHIN(.table = &item_table), .required = true, .about = "names of gear"),
    WORDS_SECTION(zones, SECTION_OF(struct words_file, words, .table = &zone_table),
                  .required = true, .about = "names of zones"),
    WORDS_SECTION(states, SECTION_OF(struct words_file, words, .table = &end_state_table),
                  .required = true, .about = "names of the states that gear is left in"),
    WORDS_SECTION(reading, SECTION_OF(struct words_file, words, .table = &reading_set_table),
                  .required = true, .about = "words by which texts are understood"),
    WORDS_SECTION(proof, SECTION_OF(struct words_file, words, .table = &proof_set_table),
                  .about = "words by which commands are judged"),
    WORDS_SECTION(synonyms, SECTION_WITHIN(.table = &synonym_table),
                  .about = "names that messages know besides those that cards print"),
};
static const struct field_table words_file_table = TABLE("a file of words", words_file_rows);

const struct field_table *words_file_fields(void)
{
    return &words_file_table;
}
