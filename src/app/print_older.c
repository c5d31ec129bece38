/* print_older.c - which files of an older print lie in the folder that was printed into (room:
 * app). It tells of them and touches none. */
#include "print_older.h"

#include "job.h"
#include "paper.h"

#include <stdio.h>
#include <string.h>

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
static const char *owner_of(const struct fleet *fleet, const char *name)
{
    const struct names *keys = &fleet->base_keys;
    const char *owner = NULL;
    for (size_t i = 0; i < keys->count; i++) {
        size_t length = strlen(keys->at[i]);
        if (text_begins(name, keys->at[i]) &&
            (name[length] == '-' || ends_a_set(fleet, name + length)) &&
            (owner == NULL || length > strlen(owner)))
            owner = keys->at[i];
    }
    return owner;
}

static bool is_printed_boat(const struct fleet *fleet, const char *key)
{
    for (size_t i = 0; i < fleet->boat_count; i++)
        if (text_equal(fleet->boats[i].key, key))
            return true;
    return false;
}

void older_tell(const struct fleet *fleet, const char *folder, const struct names *written)
{
    struct names found;
    int error = folder_names(fleet->arena, folder, &found);
    if (error != 0)
        folder_refused(fleet->problems, folder, error);
    for (size_t i = 0; i < found.count; i++) {
        const char *name = found.at[i];
        const char *owner = owner_of(fleet, name);
        if (owner != NULL && text_ends(name, ".pdf") && is_printed_boat(fleet, owner) &&
            !names_hold(written, name) &&
            is_plain_file(text_format(fleet->arena, "%s/%s", folder, name)))
            printf("%s/%s: not of this run\n", folder, text_visible(fleet->arena, name));
    }
}
