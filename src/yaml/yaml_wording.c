/* yaml_wording.c - reads texts that people may give in several languages (room: yaml):
 * `spot: over the table`, or `spot: {en: over the table, de: über dem Tisch}`. The first of
 * them is the text where nobody asks for a language. Never knows which languages there are. */
#include "yaml_value.h"

#include <string.h>

#include "text.h"

/* NULL: it is not given in that language. */
static const struct text_in_language *given_in(const struct text_value *value,
                                               const char *language)
{
    const struct text_in_language *given = value->languages;
    for (; given != NULL && given->text != NULL; given++)
        if (text_equal(given->language, language))
            return given;
    return NULL;
}

const char *text_for(const struct text_value *value, const char *language)
{
    const struct text_in_language *given = given_in(value, language);
    return given == NULL ? value->text : given->text;
}

struct place text_place_for(const struct text_value *value, const char *language)
{
    const struct text_in_language *given = given_in(value, language);
    return given == NULL ? value->place : given->place;
}

bool language_code_sound(const char *code)
{
    static const char small[] = "abcdefghijklmnopqrstuvwxyz";
    static const char all[] = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
    size_t length = strspn(code, small);
    if (length < 2 || length > 3)
        return false;
    for (code += length; *code == '-'; code += length) {
        length = strspn(++code, all);
        if (length < 2 || length > 8)
            return false;
    }
    return *code == '\0';
}

/* One language's text of a mapping. */
static bool language_read(struct field_reading *reading, const char *name,
                          const struct yaml_pair *pair, struct text_in_language *out)
{
    const struct yaml_node *node = pair->value;
    const char *named = text_format(reading->arena, "%s in %s", name, pair->key);
    if (!language_code_sound(pair->key)) {
        field_error(reading, pair->key_place,
                    "write the code of a language, such as en: {en: ..., de: ...}; a text with "
                    "a colon or braces in it goes in quotes",
                    "%s is no code of a language", text_shown(reading->arena, pair->key));
        return false;
    }
    if (node->kind != YAML_SCALAR || text_empty(node->text)) {
        field_error(reading, node->place, "write the text behind the code of its language",
                    "%s must be a text, not %s", named,
                    node->kind == YAML_SCALAR ? "empty" : yaml_kind_word(node));
        return false;
    }
    *out = (struct text_in_language){pair->key, node->text, node->place};
    return scalar_sound(reading, named, node);
}

static void wording_languages_read(struct field_reading *reading, const char *name,
                                   const struct yaml_node *node, struct text_value *out)
{
    struct text_in_language *all = arena_array(reading->arena, node->count + 1, sizeof *all);
    bool sound = true;
    for (size_t i = 0; i < node->count; i++)
        sound = language_read(reading, name, &node->pairs[i], &all[i]) && sound;
    if (sound)
        *out = (struct text_value){all[0].text, all[0].place, all};
}

void wording_read(struct field_reading *reading, const char *name, const struct yaml_node *node,
                  struct text_value *out)
{
    if (node->kind == YAML_MAPPING && node->count > 0)
        wording_languages_read(reading, name, node, out);
    else if (node->kind != YAML_SCALAR)
        field_error(reading, node->place,
                    node->kind == YAML_SEQUENCE
                        ? "write one value; a text that begins with [ or - goes in quotes"
                        : "write one text, or one for each language: {en: ..., de: ...}",
                    "%s must be a text, not %s", name,
                    node->kind == YAML_MAPPING ? "an empty mapping" : yaml_kind_word(node));
    else if (text_empty(node->text))
        field_error(reading, node->place, "write the text, or delete the entry", "%s is empty",
                    name);
    else if (scalar_sound(reading, name, node))
        *out = (struct text_value){.text = node->text, .place = node->place};
}

/* Is there such an entry among those before? */
static bool wording_known(const struct text_value *items, size_t count, const char *text)
{
    for (size_t i = 0; i < count; i++)
        if (text_equal(items[i].text, text))
            return true;
    return false;
}

void wordings_read(struct field_reading *reading, const struct field *field,
                   const struct yaml_node *node, struct list_value *list)
{
    const char *name = text_format(reading->arena, "an entry of \"%s\"", field->key);
    struct text_value *items = arena_array(reading->arena, node->count, sizeof *items);
    for (size_t i = 0; i < node->count; i++) {
        struct text_value entry = {.text = NULL};
        wording_read(reading, name, node->items[i], &entry);
        if (wording_known(items, list->count, entry.text))
            field_error(reading, node->items[i]->place, "delete one of the two",
                        "%s stands twice in \"%s\"", text_shown(reading->arena, entry.text),
                        field->key);
        else if (entry.text != NULL)
            items[list->count++] = entry;
    }
    list->items = items;
}
