/* schema_values.c - single values in a schema (room: app): as the reader of files takes them, and
 * as what the parsers of editors make of them before a schema sees them: a number of 12, true of
 * yes, a date of 2027-04-30. Knows no file. */
#include "schema.h"

#include "choice.h"
#include "json.h"
#include "number.h"
#include "promise.h"
#include "utf8.h"

#define YEAR "(19|20|21)[0-9]{2}"
#define LEAP_YEAR "((19|20|21)(0[48]|[2468][048]|[13579][26])|2000)"
static const char date_pattern[] =
    "^(" YEAR "|" YEAR "-(0[1-9]|1[0-2])|" YEAR "-(0[13578]|1[02])-(0[1-9]|[12][0-9]|3[01])|" YEAR
    "-(0[469]|11)-(0[1-9]|[12][0-9]|30)|" YEAR "-02-(0[1-9]|1[0-9]|2[0-8])|" LEAP_YEAR "-02-29)$";

/* Is it a sign that stands in no text, though one of those that there are? Beyond the last, parsers
 * of patterns do not agree. */
static bool is_refused_value(uint32_t sign)
{
    const uint32_t none = 0x110000;
    const char *why = utf8_refusal(sign);
    bool surrogate = sign >= 0xD800 && sign < 0xE000;
    return sign != '\n' && !surrogate && why != NULL && why != utf8_refusal(none);
}

/* As ranges of a class. */
static void refused_signs_add(struct text_builder *out)
{
    for (uint32_t sign = 0; sign < 0xFFFF; sign++) {
        uint32_t first = sign;
        if (!is_refused_value(sign))
            continue;
        while (sign < 0xFFFF && is_refused_value(sign + 1))
            sign++;
        text_add_format(out, "\\u%04x", (unsigned)first);
        if (sign > first)
            text_add_format(out, "-\\u%04x", (unsigned)sign);
    }
}

/* One line, whose words have single spaces between them and no sign in them that the reader
 * refuses. A text in a block ends with line breaks, which are none of it. */
static const char *text_pattern(const struct schema *schema)
{
    struct text_builder out = text_builder_in(schema->arena);
    text_add(&out, schema->texts == TEXTS_PLAIN ? "^(?![\\s\\S]*(  |\\*\\*|[{}"
                                                : "^(?![\\s\\S]*(  |[");
    refused_signs_add(&out);
    text_add(&out, "]))[^ \\n](.*[^ \\n])?\\n*$");
    return out.at;
}

/* Twice not: an editor proposes nothing of it. */
#define UNTOLD(what) "{\"not\": {\"not\": " what "}}"

static void text_define(struct schema *schema)
{
    schema_open(schema, "text", '{');
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "string");
    schema_text(schema, "pattern", text_pattern(schema));
    schema_text(schema, "patternErrorMessage",
                schema->texts == TEXTS_PLAIN
                    ? "write words with single spaces between them, on one line, without ** or { }"
                    : "write words with single spaces between them, on one line");
    schema_close(schema, '}');
    schema_refer(schema, NULL, "text_as_other");
    schema_close(schema, ']');
    schema_close(schema, '}');
}

static void wording_define(struct schema *schema)
{
    schema_open(schema, "wording", '{');
    schema_text(schema, "$comment", "one text, or one for each language: {en: ..., de: ...}");
    schema_open(schema, "anyOf", '[');
    schema_refer(schema, NULL, "text");
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "object");
    schema_raw(schema, "minProperties", "1");
    schema_refer(schema, "propertyNames", "language");
    schema_refer(schema, "additionalProperties", "text");
    schema_close(schema, '}');
    schema_close(schema, ']');
    schema_close(schema, '}');
}

static void date_define(struct schema *schema)
{
    schema_open(schema, "date", '{');
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "string");
    schema_text(schema, "pattern", date_pattern);
    schema_text(schema, "patternErrorMessage", "write 2027-04-30, 2027-04 or 2027");
    schema_close(schema, '}');
    schema_raw(schema, NULL, "{\"type\": \"integer\", \"minimum\": 1900, \"maximum\": 2199}");
    schema_raw(schema, NULL, "{\"$comment\": \"a parser made a date of it, which JSON has not\", "
                             "\"not\": {\"type\": [\"string\", \"number\", "
                             "\"boolean\", \"array\", \"object\", \"null\"]}}");
    schema_close(schema, ']');
    schema_close(schema, '}');
}

void schema_kinds_define(struct schema *schema)
{
    schema_raw(schema, "empty", "{\"not\": {\"type\": [\"boolean\", \"number\", \"array\", "
                                "\"object\"]}, \"maxLength\": 0}");
    schema_raw(schema, "text_as_other",
               "{\"not\": {\"type\": [\"string\", \"array\", \"object\", \"null\"]}}");
    text_define(schema);
    schema_raw(schema, "language",
               "{\"type\": \"string\", \"pattern\": \"^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$\", "
               "\"patternErrorMessage\": \"is no code of a language, such as en\"}");
    wording_define(schema);
    date_define(schema);
    schema_raw(schema, "answer",
               "{\"anyOf\": [{\"enum\": [\"yes\", \"no\"]}, "
               UNTOLD("{\"type\": \"boolean\"}") "]}");
    schema_raw(schema, "decimal",
               "{\"anyOf\": [{\"type\": \"number\"}, {\"type\": \"string\", \"pattern\": "
               "\"^-?(0|[1-9][0-9]{0,8})(\\\\.[0-9]{1,3})?$\"}]}");
}

/* ---- numbers ---- */

void schema_number(struct schema *schema, const struct field *field)
{
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", field->whole ? "integer" : "number");
    if (field->low != 0 || field->high != 0) {
        schema_raw(schema, "minimum", "%s", number_text_milli(schema->arena, field->low));
        schema_raw(schema, "maximum", "%s", number_text_milli(schema->arena, field->high));
    }
    schema_close(schema, '}');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "string");
    schema_text(schema, "pattern", schema_range(field, schema->arena));
    schema_close(schema, '}');
    schema_close(schema, ']');
}

/* ---- words ---- */

/* What the parsers of some editors take for true, and for false. */
static const char *const taken_for_true[] = {"yes", "on", "y", "true", NULL};
static const char *const taken_for_false[] = {"no", "off", "n", "false", NULL};

static bool has_any_of(const char *const *choices, const char *const *words)
{
    for (; *words != NULL; words++)
        if (choice_find(choices, *words) > 0)
            return true;
    return false;
}

static bool choice_is_number(const char *word)
{
    int64_t milli;
    return number_parse_milli(word, &milli);
}

/* The words, and those that are numbers once more as such. */
static void enum_add(struct schema *schema, const char *const *choices)
{
    struct text_builder out = text_builder_in(schema->arena);
    for (size_t i = 0; choices[i] != NULL; i++) {
        text_add(&out, i == 0 ? "[" : ", ");
        json_text_add(&out, choices[i]);
        if (choice_is_number(choices[i]))
            text_add_format(&out, ", %s", choices[i]);
    }
    schema_raw(schema, "enum", "%s]", out.at);
}

/* What cards call them, where they call any of them something. */
static void names_of_cards_add(struct schema *schema, const char *const *choices)
{
    size_t count = text_list_length(choices), named = 0;
    const char **printed = arena_array(schema->arena, count, sizeof *printed);
    for (size_t i = 0; i < count; i++) {
        const char *name = known_printed(schema->known, choices[i]);
        named += name != NULL ? 1 : 0;
        printed[i] = name == NULL ? choices[i] : name;
    }
    if (named > 0)
        schema_words(schema, "enumDescriptions", printed, count);
}

bool schema_taken_for_answer(const char *word)
{
    return choice_find(taken_for_true, word) > 0 || choice_find(taken_for_false, word) > 0;
}

void schema_keys(struct schema *schema, const char *const *choices)
{
    schema_open(schema, "propertyNames", '{');
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    enum_add(schema, choices);
    schema_close(schema, '}');
    if (has_any_of(choices, taken_for_true))
        schema_raw(schema, NULL, UNTOLD("{\"const\": true}"));
    if (has_any_of(choices, taken_for_false))
        schema_raw(schema, NULL, UNTOLD("{\"const\": false}"));
    schema_close(schema, ']');
    schema_close(schema, '}');
}

static void words_are(struct schema *schema, const char *const *choices)
{
    bool is_true = has_any_of(choices, taken_for_true);
    bool is_false = has_any_of(choices, taken_for_false);
    if (is_true || is_false) {
        schema_open(schema, "anyOf", '[');
        schema_open(schema, NULL, '{');
    }
    enum_add(schema, choices);
    names_of_cards_add(schema, choices);
    if (!is_true && !is_false)
        return;
    schema_close(schema, '}');
    if (is_true)
        schema_raw(schema, NULL, UNTOLD("{\"const\": true}"));
    if (is_false)
        schema_raw(schema, NULL, UNTOLD("{\"const\": false}"));
    schema_close(schema, ']');
}

enum { FEW_WORDS = 6 };

/* The name of their definition: that of the key where they were met first. */
static const char *choices_name(struct schema *schema, const char *const *choices,
                                const char *name)
{
    size_t same = 0;
    for (size_t i = 0; i < schema->choice_count; i++) {
        if (schema->choices[i] == choices)
            return schema->choice_names[i];
        same += text_begins(schema->choice_names[i], name) ? 1 : 0;
    }
    name = same == 0 ? name : text_format(schema->arena, "%s_%zu", name, same + 1);
    promise(schema->choice_count < SCHEMA_PARTS_MOST);
    schema->choices[schema->choice_count] = choices;
    return schema->choice_names[schema->choice_count++] = name;
}

void schema_choice(struct schema *schema, const char *const *choices, const char *name)
{
    if (text_list_length(choices) <= FEW_WORDS)
        words_are(schema, choices);
    else
        schema_text(schema, "$ref",
                    text_format(schema->arena, "#/$defs/words_of_%s",
                                choices_name(schema, choices, name)));
}

void schema_choices_define(struct schema *schema)
{
    for (size_t i = 0; i < schema->choice_count; i++) {
        schema_open(schema, text_format(schema->arena, "words_of_%s", schema->choice_names[i]),
                    '{');
        words_are(schema, schema->choices[i]);
        schema_close(schema, '}');
    }
}
