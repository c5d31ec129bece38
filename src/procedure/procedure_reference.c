/* procedure_reference.c - the reference for authors of procedures, from the tables by which
 * procedures are read (room: procedure). What it says of a key is the key's own row. */
#include "procedure_reference.h"

#include "condition_reading.h"
#include "procedure_fields.h"

/* ---- lines ---- */

/* The key, and behind two spaces what it means. */
static void reference_line_add(struct text_builder *out, const char *key, const char *words)
{
    text_add_format(out, "%s  %s\n", key, words);
}

/* ---- a key ---- */

/* What may stand there. */
static const char *kind_text(const struct field *field)
{
    if (field->choices == item_key_list)
        return "items";
    if (field->choices == symbol_keys)
        return "a sign";
    if (field->kind == FIELD_NODE)
        return "a condition";
    return field_kind_word(field->kind);
}

/* " [on, off]"; items and signs are too many. */
static const char *choices_bracketed(const struct field *field, struct arena *arena)
{
    struct text_builder words = text_builder_in(arena);
    if (field->choices == NULL || field->choices == item_key_list ||
        field->choices == symbol_keys)
        return "";
    for (size_t i = 0; field->choices[i] != NULL; i++)
        text_add_format(&words, "%s%s", i == 0 ? " [" : ", ", field->choices[i]);
    text_add(&words, "]");
    return words.at;
}

static void key_add(struct text_builder *out, const char *key, const struct field *field,
                    const char *kind)
{
    reference_line_add(out, key,
             text_format(out->arena, "%s%s: %s%s", kind, field->required ? ", needed" : "",
                         field->about, choices_bracketed(field, out->arena)));
}

/* ---- the files ---- */

static void logic_key_add(const struct field_path *path, void *context)
{
    struct text_builder *out = context;
    key_add(out, field_path_text(path, out->arena), path->field, kind_text(path->field));
}

static void text_key_add(const struct field_path *path, void *context)
{
    struct text_builder *out = context;
    const struct field *field = path->field;
    key_add(out, field_path_text(path, out->arena), field,
            field->kind == FIELD_NODE ? "texts" : field_kind_word(field->kind));
}

static const char preface[] =
    "A card is two files of one name in the program's folder `procedures`: NAME.yaml, its\n"
    "logic, and words/LANGUAGE/NAME.yaml, its texts, one for each language that has a folder.\n"
    "Every id of the logic has its text in each language, no text stands without an id, and\n"
    "all languages say the same with the same {names}. A {name} is the number of a step of\n"
    "this card, or of the card of a procedure; it may stand in signs, act, lethal, berth, anchor,\n"
    "call_when, yes and no. In berth and anchor {fire_phone} is the number of the base that\n"
    "brings the fire brigade, {rescue_phone} that of the rescue centre, or else the former.\n"
    "{draught} is hers in metres, the number alone, {lay_down_place} where a person who is hurt\n"
    "is laid down; ask {boat: draught} or {boat: lay_down_place} first: a card that says what is\n"
    "not recorded is held back.\n"
    "What the radio says is English by law and stands in the logic.\n\n"
    "The first case that holds is taken, and the last stands without `when`. A case without\n"
    "an id has the act of its step, one with an id has an act of its own. What is not recorded\n"
    "is not known, and a card that has to know it is held back, with one exception: gear that\n"
    "a step shows `also`. A card goes without its row, and a note tells so, unless a step uses\n"
    "that gear, a condition asks for it, each engine has one, or must_know names it. Name\n"
    "there what does harm while nobody works it. After a change: make manifest.\n\n";

void procedure_reference(struct text_builder *out)
{
    text_add(out, preface);
    text_add(out, "The logic, NAME.yaml:\n\n");
    fields_walk(&logic_table, logic_key_add, out);
    text_add(out, "\nA condition (when):\n\n");
    for (size_t i = 0; condition_key_at(i) != NULL; i++)
        reference_line_add(out, condition_key_at(i), condition_about_at(i));
    text_add(out, "\nThe texts, words/LANGUAGE/NAME.yaml ({id}: each that the logic has):\n\n");
    fields_walk(&head_texts, text_key_add, out);
}
