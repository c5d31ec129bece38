/* languages.c - in which languages sheets are made (room: app): those of --lang, else the
 * base's first. Those that exist have a folder of words; nothing here knows one by name. */
#include "fleet.h"

#include <string.h>

#include "text.h"

static struct names languages_named(const struct fleet *fleet)
{
    struct names names = {0};
    for (size_t i = 0; i < fleet->languages.count; i++)
        names_add(&names, words_language(fleet->languages.rows[i]), fleet->arena);
    return names;
}

/* The code of the language that calls itself so; NULL: none does. */
static const char *language_called(const struct fleet *fleet, const char *name)
{
    for (size_t i = 0; i < fleet->languages.count; i++)
        if (text_equal_any_case(name, strlen(name),
                                words_language_name(fleet->languages.rows[i])))
            return words_language(fleet->languages.rows[i]);
    return NULL;
}

static const char *no_language_remedy(const struct fleet *fleet, const char *language)
{
    const struct names names = languages_named(fleet);
    const char *code = language_called(fleet, language);
    if (code != NULL)
        return text_format(fleet->arena, "write %s", code);
    return names_remedy(&names, language, "languages of the cards: ", fleet->arena);
}

const struct words *language_find(struct fleet *fleet, const char *language)
{
    const struct words *words = language_words(&fleet->languages, language);
    if (words == NULL)
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    no_language_remedy(fleet, language), "there are no cards in the language "
                    "\"%s\"", language);
    return words;
}

/* False, with a problem, where the program has no words of the language. */
static bool printed_add(struct fleet *fleet, const char *language, struct languages *into,
                         const struct words **rows)
{
    const struct words *words = language_find(fleet, language);
    if (words != NULL && language_words(into, language) == NULL)
        rows[into->count++] = words;
    return words != NULL;
}

/* A language that the base lists: false, with a problem, where the program has not got it.
 * What is no code of a language was told when the base was read. */
static bool base_language_check(const struct fleet *fleet, const struct text_value *language)
{
    if (language_words(&fleet->languages, language->text) != NULL)
        return true;
    if (language_code_sound(language->text))
        problem_add(fleet->base_problems, SEVERITY_ERROR, language->place,
                    no_language_remedy(fleet, language->text),
                    "there are no cards in the language \"%s\"", language->text);
    return false;
}

bool languages_choose(const struct options *options, struct fleet *fleet)
{
    const struct words **rows = arena_array(fleet->arena, options->languages.count + 1,
                                            sizeof *rows);
    struct languages chosen = {.rows = rows};
    bool all = true;
    for (size_t i = 0; i < options->languages.count; i++)
        all = printed_add(fleet, options->languages.at[i], &chosen, rows) && all;
    if (options->languages.count == 0 && fleet->first_language != NULL)
        rows[chosen.count++] = fleet->first_language;
    fleet->printed = chosen;
    return all;
}

bool base_languages_take(struct fleet *fleet)
{
    const struct list_value *listed = &fleet->base->languages;
    bool all = true;
    for (size_t i = 0; i < listed->count; i++)
        all = base_language_check(fleet, &listed->items[i]) && all;
    if (all && listed->count > 0)
        fleet->first_language = language_words(&fleet->languages, listed->items[0].text);
    return all;
}
