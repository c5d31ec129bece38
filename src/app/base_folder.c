/* base_folder.c - the files of a base's own procedures, BASE/procedures (room: app): which there
 * are, and which are not read though they lie there. Judges no text. */
#include "base_procedures.h"

#include <errno.h>
#include <string.h>

#define SOURCES "sources.yaml"
#define TEXTS "words"

static const char *folder_inside(const struct base_folder *base, const char *name)
{
    return text_format(base->fleet->arena, "%s/%s", base->folder, name);
}

static const struct source *card_file_read(const struct base_folder *base, const char *path)
{
    struct file_absent absent = {SEVERITY_ERROR, "put the file there"};
    const struct source *source = file_read(path, absent, base->fleet->arena,
                                            base->fleet->base_problems);
    fleet_input_add(base->fleet, source);
    return source;
}

static const struct procedure *program_procedure(const struct base_folder *base, const char *key)
{
    for (size_t i = 0; i < base->ours.count; i++)
        if (text_equal(base->ours.rows[i]->key.text, key))
            return base->ours.rows[i];
    return NULL;
}

static const char *stem_of(const struct base_folder *base, const char *name)
{
    return arena_copy(base->fleet->arena, name, strlen(name) - strlen(".yaml"));
}

/* ---- languages ---- */

/* Is it one that the base's cards are printed in? A card has to have its texts in each. */
static bool is_needed(const struct base_folder *base, const struct words *words)
{
    const struct fleet *fleet = base->fleet;
    const struct list_value *listed = fleet->base == NULL ? NULL : &fleet->base->languages;
    const char *language = words_language(words);
    for (size_t i = 0; listed != NULL && i < listed->count; i++)
        if (text_equal(listed->items[i].text, language))
            return true;
    return words == fleet->first_language || names_hold(&base->options->languages, language);
}

static const char *text_path(const struct base_folder *base, const char *language,
                             const char *key)
{
    return text_format(base->fleet->arena, "%s/" TEXTS "/%s/%s.yaml", base->folder, language, key);
}

/* False (told): the language needs texts and has none. */
static bool text_add_of(const struct base_folder *base, const struct words *words,
                        struct base_card *card)
{
    const char *language = words_language(words), *path = text_path(base, language, card->key);
    if (is_there(path)) {
        const struct source *source = card_file_read(base, path);
        if (source != NULL)
            card->texts[card->text_count++] = (struct procedure_text_file){language, source};
        return source != NULL;
    }
    if (!is_needed(base, words))
        return true;
    problem_add(base->fleet->base_problems, SEVERITY_ERROR, source_whole(card->logic),
                text_format(base->fleet->arena, "write %s, with all texts of the card", path),
                "the procedure has no texts in the language %s", language);
    return false;
}

/* The base's first language first. */
static bool texts_take(const struct base_folder *base, struct base_card *card)
{
    const struct fleet *fleet = base->fleet;
    const struct words *first = fleet->first_language;
    card->texts = arena_array(fleet->arena, fleet->languages.count, sizeof *card->texts);
    bool complete = text_add_of(base, first, card);
    for (size_t i = 0; i < fleet->languages.count; i++)
        if (fleet->languages.rows[i] != first)
            complete = text_add_of(base, fleet->languages.rows[i], card) && complete;
    return complete;
}

/* ---- cards ---- */

static struct base_card *base_card_add(struct base_folder *base, const char *key)
{
    struct base_card *card = &base->cards[base->card_count++];
    *card = (struct base_card){.key = key, .ours = program_procedure(base, key)};
    return card;
}

static bool has_card(const struct base_folder *base, const char *key)
{
    for (size_t i = 0; i < base->card_count; i++)
        if (text_equal(base->cards[i].key, key))
            return true;
    return false;
}

static void unread_tell(const struct base_folder *base, const char *name, const char *why)
{
    problem_add(base->fleet->base_problems, SEVERITY_DEFICIENCY, NO_PLACE,
                "a procedure is called NAME.yaml and lies in procedures/ itself, its texts in\n"
                "procedures/words/LANGUAGE/NAME.yaml, its sources in procedures/sources.yaml: name "
                "the\nfile so, or move it away",
                "%s is not read: %s", folder_inside(base, name), why);
}

static void top_name_take(struct base_folder *base, const char *name)
{
    if (text_equal(name, SOURCES) ||
        (text_equal(name, TEXTS) && is_folder(folder_inside(base, name))))
        return;
    if (!is_boat_file(base->fleet->arena, name)) {
        unread_tell(base, name, "it is no procedure by its name");
        return;
    }
    struct base_card *card = base_card_add(base, stem_of(base, name));
    card->logic = card_file_read(base, folder_inside(base, name));
    if (card->logic != NULL && !texts_take(base, card))
        card->text_count = 0;
}

/* Texts alone would change nothing, though somebody meant them to. */
static void text_name_check(struct base_folder *base, const char *language, const char *name)
{
    const char *file = text_format(base->fleet->arena, TEXTS "/%s/%s", language, name);
    if (!is_boat_file(base->fleet->arena, name)) {
        unread_tell(base, file, "it is no text of a procedure by its name");
        return;
    }
    const char *key = stem_of(base, name);
    if (has_card(base, key))
        return;
    const struct source *source = card_file_read(base, folder_inside(base, file));
    const struct base_card *card = base_card_add(base, key);
    problem_add(base->fleet->base_problems, SEVERITY_ERROR,
                source == NULL ? NO_PLACE : source_whole(source),
                text_format(base->fleet->arena,
                            card->ours == NULL
                                ? "write its logic, %s"
                                : "copy its logic too, from the program's procedures/ to %s",
                            folder_inside(base, text_format(base->fleet->arena, "%s.yaml", key))),
                "these texts belong to no procedure of the base");
}

static bool folder_list(const struct base_folder *base, const char *name, struct names *found)
{
    const char *folder = text_empty(name) ? base->folder : folder_inside(base, name);
    int error = folder_names(base->fleet->arena, folder, found);
    if (error != 0 && !(error == ENOENT && !text_empty(name)))
        folder_refused(base->fleet->base_problems, folder, error);
    return error == 0;
}

static bool language_folder_take(struct base_folder *base, const char *language)
{
    const char *name = text_format(base->fleet->arena, TEXTS "/%s", language);
    struct names found;
    if (!is_folder(folder_inside(base, name)) ||
        language_words(&base->fleet->languages, language) == NULL) {
        unread_tell(base, name, "the program has no such language");
        return true;
    }
    if (!folder_list(base, name, &found))
        return false;
    for (size_t i = 0; i < found.count; i++)
        text_name_check(base, language, found.at[i]);
    return true;
}

/* How many files there may be of cards: each has one at the top, or texts in some language. */
static size_t cards_most(const struct base_folder *base, const struct names *top,
                         const struct names *languages)
{
    size_t most = top->count;
    for (size_t i = 0; i < languages->count; i++) {
        struct names found;
        const char *name = text_format(base->fleet->arena, "%s/" TEXTS "/%s", base->folder,
                                       languages->at[i]);
        if (folder_names(base->fleet->arena, name, &found) == 0)
            most += found.count;
    }
    return most;
}

bool base_folder_open(struct base_folder *base)
{
    struct names top, languages = {0};
    if (!folder_list(base, "", &top))
        return false;
    bool whole = !is_folder(folder_inside(base, TEXTS)) || folder_list(base, TEXTS, &languages);
    base->cards = arena_array(base->fleet->arena, cards_most(base, &top, &languages),
                              sizeof *base->cards);
    for (size_t i = 0; i < top.count; i++)
        top_name_take(base, top.at[i]);
    for (size_t i = 0; i < languages.count; i++)
        whole = language_folder_take(base, languages.at[i]) && whole;
    return whole;
}

/* ---- sources ---- */

/* True when none of the base's is called as one of the program's. */
static bool keys_are_apart(const struct authorities *ours, const struct authorities *own,
                           struct problems *problems)
{
    bool apart = true;
    for (size_t i = 0; i < own->count; i++) {
        const struct text_value *key = &own->rows[i].key;
        if (authority_find(ours, key->text) == NULL)
            continue;
        problem_add(problems, SEVERITY_ERROR, key->place,
                    "give the base's own sources keys of their own, such as B1",
                    "source %s is one of the program's", key->text);
        apart = false;
    }
    return apart;
}

const struct authorities *base_authorities(const struct base_folder *base)
{
    struct fleet *fleet = base->fleet;
    const struct authorities *ours = fleet->authorities;
    if (!is_there(folder_inside(base, SOURCES)))
        return ours;
    const struct source *source = card_file_read(base, folder_inside(base, SOURCES));
    const struct authorities *own =
        source == NULL ? NULL : authorities_read(source, fleet->arena, fleet->base_problems);
    if (own == NULL || !keys_are_apart(ours, own, fleet->base_problems))
        return NULL;
    struct authorities *all = arena_alloc(fleet->arena, sizeof *all);
    struct authority *rows = arena_array(fleet->arena, ours->count + own->count, sizeof *rows);
    memcpy(rows, ours->rows, ours->count * sizeof *rows);
    memcpy(rows + ours->count, own->rows, own->count * sizeof *rows);
    *all = (struct authorities){rows, ours->count + own->count};
    return all;
}
