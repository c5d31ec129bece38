/* schema_words.c - what follows, in a language's file of words, from the forms that numbers take
 * in it (room: app): each counted word and each name of gear has these forms and no other. */
#include "schema.h"

#include "words.h"

#define FORM_WORD(name, word) #word,
static const char *const number_form_words[] = {PLURAL_LIST(FORM_WORD)};
#undef FORM_WORD

/* Words that have a text for each form: "^(seconds|times)$". */
static const char *counted_pattern(struct arena *arena)
{
    static const struct { const char *key; enum word_shape shape; } rows[] = {
#define SHAPE_ROW(name, word_key, word_shape, word_blanks) {#word_key, SHAPE_##word_shape},
        WORD_LIST(SHAPE_ROW)
#undef SHAPE_ROW
    };
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        if (rows[i].shape == SHAPE_COUNTED)
            text_add_format(&out, "%s%s", out.length == 0 ? "^(" : "|", rows[i].key);
    text_add(&out, ")$");
    return out.at;
}

/* What each name of gear, and each counted word that is no single text, must be. */
static void forms_are(struct schema *schema, const char *branch, const char *rule)
{
    schema_open(schema, branch, '{');
    schema_open(schema, "properties", '{');
    schema_raw(schema, "items", "{\"additionalProperties\": %s}", rule);
    schema_open(schema, "words", '{');
    schema_open(schema, "patternProperties", '{');
    schema_raw(schema, counted_pattern(schema->arena), "%s", rule);
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, '}');
}

void schema_plurals(struct schema *schema)
{
    struct arena *arena = schema->arena;
    schema_open(schema, "allOf", '[');
    for (size_t i = 0; i < PLURAL_OTHER; i++) {
        const char *form = number_form_words[i];
        schema_open(schema, NULL, '{');
        schema_raw(schema, "if",
                   "{\"required\": [\"plurals\"], \"properties\": {\"plurals\": {\"type\": "
                   "\"object\", \"required\": [\"%s\"], \"properties\": {\"%s\": {\"type\": "
                   "\"object\"}}}}}", form, form);
        forms_are(schema, "then", text_format(arena, "{\"required\": [\"%s\"]}", form));
        forms_are(schema, "else",
                  text_format(arena, "{\"properties\": {\"%s\": false}}", form));
        schema_close(schema, '}');
    }
    schema_close(schema, ']');
}
