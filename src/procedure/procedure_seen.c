/* procedure_seen.c - what a frightened guest sees, hears or smells first, by which the index of
 * cards names a card (room: procedure): how many entries there are, how long each is, and that
 * none stands for two cards. Never looks at a boat. */
#include "procedure_texts.h"

#include "text.h"

#include <string.h>

enum { SEEN_MOST = 3, SEEN_WORDS_MOST = 4, SEEN_LETTERS_MOST = 24,
       SEEN_WORDS_MOST_OTHERS = 6, SEEN_LETTERS_MOST_OTHERS = 36 };

bool is_seen_first(const struct procedure *procedure)
{
    return sheet_source_of(procedure->kind.value) != FROM_RECORD;
}

/* ---- the logic ---- */

static bool both_set_and_asked(const struct procedure *procedure)
{
    return procedure->core.answer == ANSWER_YES && procedure->optional.answer == ANSWER_YES;
}

void seen_as_check(const struct procedure_reading *reading)
{
    const struct procedure *procedure = reading->procedure;
    const struct seen_as_value *group = &procedure->seen_as;
    if (both_set_and_asked(procedure))
        problem_add(reading->problems, SEVERITY_ERROR, procedure->optional.place,
                    "take one of the two out",
                    "core and optional: a card of the core set is on every boat");
    if (is_seen_first(procedure) && group->value == SEEN_AS_NONE && group->place.line == 0)
        problem_add(reading->problems, SEVERITY_ERROR,
                    place_or(procedure->key.place, source_whole(procedure->source)),
                    "write seen_as: with the group in which the index of cards has its `seen`",
                    "the procedure has no seen_as");
    if (!is_seen_first(procedure) && group->place.line > 0)
        problem_add(reading->problems, SEVERITY_ERROR, group->place,
                    "take it out: the index of cards does not lead to such a sheet",
                    "seen_as: a sheet of the kind %s is seen by nobody first",
                    choice_word(sheet_kind_words, procedure->kind.value));
}

/* ---- the texts ---- */

static size_t seen_words(const char *text)
{
    size_t words = 0;
    for (const char *at = text; *at != '\0'; at += strspn(at, " ")) {
        words++;
        at += strcspn(at, " ");
    }
    return words;
}

/* In each language that it is given in: others than the first take up to half as much more. */
static void entry_length_check(const struct procedure_reading *reading,
                               const struct text_value *entry)
{
    struct text_value one;
    for (size_t i = 0; text_next(entry, &i, &one);) {
        bool first = text_equal(one.text, entry->text);
        size_t words = first ? SEEN_WORDS_MOST : SEEN_WORDS_MOST_OTHERS;
        long most = first ? SEEN_LETTERS_MOST : SEEN_LETTERS_MOST_OTHERS;
        long letters = text_code_points(one.text);
        if (seen_words(one.text) <= words && letters <= most)
            continue;
        problem_add(reading->problems, SEVERITY_ERROR, one.place,
                    text_format(reading->arena, "say it in %zu words and %ld letters at most: it "
                                "is read in fright", words, most),
                    "seen: \"%s\" is %ld letters in %zu words", one.text, letters,
                    seen_words(one.text));
    }
}

void seen_check(const struct procedure_reading *reading)
{
    const struct list_value *seen = &reading->procedure->seen;
    if (seen->given && (seen->count == 0 || seen->count > SEEN_MOST))
        problem_add(reading->problems, SEVERITY_ERROR, seen->place,
                    "write one to three entries: what most guests would say first",
                    "seen: %zu entries", seen->count);
    for (size_t i = 0; i < seen->count; i++)
        entry_length_check(reading, &seen->items[i]);
}

/* ---- the set ---- */

/* Has one of the first `count` entries of the procedure the same words in the language? */
static bool entry_found(const struct procedure *procedure, size_t count,
                        const struct text_in_language *entry, struct arena *arena)
{
    for (size_t i = 0; i < count; i++) {
        const struct text_in_language *own = procedure->seen.items[i].languages;
        for (; own != NULL && own->text != NULL; own++)
            if (text_equal(own->language, entry->language) &&
                text_equal(text_upper(arena, own->text), text_upper(arena, entry->text)))
                return true;
    }
    return false;
}

/* Of two that are alike the later one is told. */
static void entry_alone_check(const struct procedure_set *set, size_t card, size_t number,
                              const struct text_in_language *entry, struct arena *arena,
                              struct problems *problems)
{
    for (size_t i = 0; i <= card; i++) {
        const struct procedure *before = set->rows[i];
        size_t count = i == card ? number : before->seen.count;
        if (procedures_are_forms(before, set->rows[card]) ||
            !entry_found(before, count, entry, arena))
            continue;
        problem_add(problems, SEVERITY_ERROR, entry->place,
                    "say what tells the two apart: one entry leads to one card, once",
                    "seen: \"%s\" leads to the card %s already", entry->text, before->key.text);
        return;
    }
}

void seen_alone_check(const struct procedure_set *set, struct arena *arena,
                      struct problems *problems)
{
    for (size_t i = 0; i < set->count; i++)
        for (size_t k = 0; k < set->rows[i]->seen.count; k++) {
            const struct text_in_language *entry = set->rows[i]->seen.items[k].languages;
            for (; entry != NULL && entry->text != NULL; entry++)
                entry_alone_check(set, i, k, entry, arena, problems);
        }
}
