/* schema_forms.c - texts of files that have a form, and examples of values (room: app). What a form
 * stands on is said by its reader: these are the same forms as patterns. */
#include "schema.h"

#include "json.h"
#include "number.h"

#include <string.h>

/* ---- forms ---- */

#define COUNTRY_AND_NUMBER "\\+ *[1-9]( *[0-9]){7,14}"
#define PHONE "^ *" COUNTRY_AND_NUMBER " *$"
#define PHONE_OR_SHORT \
    "^ *(" COUNTRY_AND_NUMBER "|\\+ *9 *9 *9( *[0-9]){0,3}|[0-9]( *[0-9]){1,5}) *$"
#define CHANNEL "^(0[1-9]|1[0-9]|2[0-8]|6[0-9]|7[1-9]|8[0-8])$"
#define CHANNEL_NUMBER \
    "{\"anyOf\": [{\"type\": \"integer\", \"minimum\": 1, \"maximum\": 28}, {\"type\": " \
    "\"integer\", \"minimum\": 60, \"maximum\": 88, \"not\": {\"const\": 70}}]}"
#define TAG "^[FEC][1-9][0-9]?$"
#define MMSI "^ *[0-9]([ \u00A0]*[0-9]){8} *$"
#define NINE_DIGITS \
    "{\"type\": \"integer\", \"minimum\": 100000000, \"maximum\": 999999999}"
#define FINGERPRINT "^[0-9A-Fa-f]{4}(-[0-9A-Fa-f]{4}){3}$"
#define NAME "^[a-z][a-z0-9_]*$"
#define CODE "^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$"
#define ENGLISH "^[ -~]+\\n*$"
#define NO_NUMBER "false"
/* A parser of YAML 1.1 takes the code of Norwegian for false. */
#define ONLY_ANSWERS "{\"not\": {\"not\": {\"type\": \"boolean\"}}}"
enum { BOAT_NAME_MOST = 34, SOURCE_TAG_MOST = 14 };

/* By the words for the table in messages. */
static const struct schema_form text_forms[] = {
    {"a base", "phone_24h", PHONE, NULL, 0},
    {"a rescue centre", "phone", PHONE_OR_SHORT, NULL, 0},
    {"the section ashore", "fire_phone", PHONE_OR_SHORT, NULL, 0},
    {"a rescue centre", "channel", CHANNEL, CHANNEL_NUMBER, 0},
    {"a cruising area", "variation", "[0-9].*[EW]", NO_NUMBER, 0},
    {"a base file", "languages", CODE, ONLY_ANSWERS, 0},
    {"an approval", "text", FINGERPRINT, NULL, 0},
    {"a boat", "name", NULL, NULL, BOAT_NAME_MOST},
    {"an equipment item", "name", NULL, NULL, BOAT_NAME_MOST},
    {"a model's equipment item", "name", NULL, NULL, BOAT_NAME_MOST},
    {"a boat file", "retired_tags", TAG, NO_NUMBER, 0},
    {"a boat file", "tags_given", TAG, NO_NUMBER, 0},
    {"a boat file", "not_here", TAG, NO_NUMBER, 0},
    {"a model's file", "retired_tags", TAG, NO_NUMBER, 0},
    {"a model's file", "tags_given", TAG, NO_NUMBER, 0},
    {"an equipment item", "tag", TAG, NO_NUMBER, 0},
    {"a model's equipment item", "tag", TAG, NO_NUMBER, 0},
    {"a radio", "tag", TAG, NO_NUMBER, 0},
    {"a model's radio", "tag", TAG, NO_NUMBER, 0},
    {"a radio", "mmsi", MMSI, NINE_DIGITS, 0},
    {"an equipment item", "mmsi", MMSI, NINE_DIGITS, 0},
    {"a procedure", "procedure", NAME, ONLY_ANSWERS, 0},
    {"a step", "id", NAME, ONLY_ANSWERS, 0},
    {"a case", "id", NAME, ONLY_ANSWERS, 0},
    {"a never", "id", NAME, ONLY_ANSWERS, 0},
    {"a caution", "id", NAME, ONLY_ANSWERS, 0},
    {"a call", "id", NAME, ONLY_ANSWERS, 0},
    {"the exit of a decision", "id", NAME, ONLY_ANSWERS, 0},
    {"the line for a berth or an anchorage", "id", NAME, ONLY_ANSWERS, 0},
    {"the line that says when to call", "id", NAME, ONLY_ANSWERS, 0},
    {"a sign more", "id", NAME, ONLY_ANSWERS, 0},
    {"a call", "say", ENGLISH, NULL, 0},
    {"a call", "assist", ENGLISH, NULL, 0},
    {"a case", "report", ENGLISH, NULL, 0},
    {"a source", "tag", NULL, NULL, SOURCE_TAG_MOST},
    {"a file of words", "language", CODE, ONLY_ANSWERS, 0},
};

const struct schema_form *schema_form_of(const struct field_table *table,
                                         const struct field *field)
{
    for (size_t i = 0; i < sizeof text_forms / sizeof *text_forms; i++)
        if (text_equal(text_forms[i].table, table->what) &&
            text_equal(text_forms[i].key, field->key))
            return &text_forms[i];
    return NULL;
}

/* ---- examples ---- */

/* Of a text, what the words about it name: "..., such as 43 30.488 N 016 26.411 E". */
static const char *example_told(const struct field_table *table, const struct field *field,
                                struct arena *arena)
{
    static const char such_as[] = "such as ";
    const char *told = field->about == NULL ? NULL : strstr(field->about, such_as);
    struct text_builder out = text_builder_in(arena);
    if (told == NULL || schema_form_of(table, field) != NULL)
        return NULL;
    told += strlen(such_as);
    json_text_add(&out, arena_copy(arena, told, strcspn(told, ",;:")));
    return out.at;
}

static const char *number_example(const struct field *field, struct arena *arena)
{
    const int64_t usual = 12000;
    bool fits = field->high == 0 || (usual >= field->low && usual <= field->high);
    return number_text_milli(arena, fits ? usual : field->high);
}

static const char *choice_example(const struct field *field, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, field->kind == FIELD_CHOICE ? "" : "[");
    json_text_add(&out, field->choices[0]);
    text_add(&out, field->kind == FIELD_CHOICE ? "" : "]");
    return out.at;
}

const char *schema_example(const struct field_table *table, const struct field *field,
                           struct arena *arena)
{
    switch (field->kind) {
    case FIELD_TEXT: case FIELD_WORDING: return example_told(table, field, arena);
    case FIELD_NUMBER: return number_example(field, arena);
    case FIELD_ANSWER: return "\"yes\", \"no\"";
    case FIELD_DATE: return "\"2027-04-30\", \"2027-04\"";
    case FIELD_PAIR: return "[8.4, -1.2]";
    case FIELD_CHOICE: case FIELD_CHOICES: return choice_example(field, arena);
    case FIELD_PAIRED: case FIELD_BY_CHOICE: case FIELD_LIST: case FIELD_WORDINGS:
    case FIELD_WORDS: case FIELD_SECTION: case FIELD_ENTRIES: case FIELD_NODE: break;
    }
    return NULL;
}
