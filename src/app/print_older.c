/* print_older.c - which files of an older print lie in the folder that was printed into (room:
 * app). It tells of them and touches none. */
#include "print_older.h"

#include "job.h"
#include "paper.h"
#include "told.h"

#include <stdio.h>
#include <string.h>

#define NAMES_LIMIT ((size_t)256 * 1024 * 1024)

/* What stands behind ".de" of a language that there is, or ".letter" of a paper; else all. */
static const char *ending_skip(const char *ending, const char *word)
{
    size_t length = strlen(word);
    bool begins = ending[0] == '.' && text_begins(ending + 1, word);
    return begins && ending[1 + length] == '.' ? ending + 1 + length : ending;
}

/* ".pdf", with what sheets_ending puts before it. */
static bool ends_a_set(const struct fleet *fleet, const char *ending)
{
    const char *rest = ending;
    for (size_t i = 0; i < fleet->languages.count && rest == ending; i++)
        rest = ending_skip(ending, words_language(fleet->languages.rows[i]));
    for (size_t i = 0; paper_words[i] != NULL; i++)
        rest = ending_skip(rest, paper_words[i]);
    rest = ending_skip(rest, MONO_ENDING + 1);
    return text_equal(rest, ".pdf");
}

/* The boat that a file belongs to by its name: of tern and tern-two, tern-two has
 * tern-two-flooding.pdf. NULL: none. */
static const char *owner_of(const struct fleet *fleet, const char *name, struct arena *arena)
{
    for (size_t length = strlen(name); length > 0; length--) {
        const char *key = arena_copy(arena, name, length);
        if ((name[length] == '-' || ends_a_set(fleet, name + length)) &&
            names_hold(&fleet->base_keys, key))
            return key;
    }
    return NULL;
}

static bool is_older(const struct fleet *fleet, const char *folder, const char *name)
{
    struct arena *own = arena_new(NAMES_LIMIT);
    const char *owner = owner_of(fleet, name, own);
    bool older = owner != NULL && boat_asked_find(fleet, owner) != NULL &&
                 is_plain_file(text_format(own, "%s/%s", folder, name));
    arena_free(own);
    return older;
}

void older_tell(const struct fleet *fleet, const char *folder, const struct names *written,
                struct problems *problems)
{
    struct arena *own = arena_new(NAMES_LIMIT);
    struct names found;
    int error = folder_names(own, folder, &found);
    if (error != 0)
        folder_refused(problems, folder, error);
    for (size_t i = 0; i < found.count; i++)
        if (text_ends(found.at[i], ".pdf") && !names_hold(written, found.at[i]) &&
            is_older(fleet, folder, found.at[i]))
            told_lines("%s/%s: not of this run\n", folder, text_visible(own, found.at[i]));
    arena_free(own);
}
