/* stray_files.c - files and folders of a base that no command reads, though somebody may think
 * that they are read (room: app): each is told, with what to do. */
#include "fleet.h"

#include <errno.h>
#include <string.h>

static const char *small_letters(struct arena *arena, const char *text)
{
    char *copy = arena_copy(arena, text, strlen(text));
    for (char *at = copy; *at != '\0'; at++)
        if (*at >= 'A' && *at <= 'Z')
            *at = (char)(*at - 'A' + 'a');
    return copy;
}

/* ---- copies ---- */

/* As file managers name what was copied, in the languages of the coasts. */
static const char *const copy_words[] = {"copy", "kopie", "copie", "copia", "kopija", "kopya",
                                         "αντίγραφο", "Αντίγραφο"};

/* Does the word stand in the name, with other words beside it? */
static bool has_word_beside(const char *name, const char *word)
{
    const char *at = strstr(name, word);
    if (at == NULL)
        return false;
    const char *end = at + strlen(word);
    bool before = at > name && strchr(" (-", at[-1]) != NULL;
    return (at == name && *end == ' ') || (before && strchr(" ).-0123456789", *end) != NULL);
}

/* "alder (1).yaml" */
static bool has_copy_number(const char *name)
{
    const char *at = strstr(name, " (");
    size_t digits = at == NULL ? 0 : strspn(at + 2, "0123456789");
    return digits > 0 && at[2 + digits] == ')';
}

static bool is_copy(struct arena *arena, const char *name)
{
    const char *small = small_letters(arena, name);
    for (size_t i = 0; i < sizeof copy_words / sizeof *copy_words; i++)
        if (has_word_beside(small, copy_words[i]))
            return true;
    return has_copy_number(name);
}

/* ---- boats/ ---- */

/* A folder of that name is one, so that the boat is named which it keeps from being read. */
bool is_boat_file(struct arena *arena, const char *name)
{
    return name[0] != '.' && text_ends(name, ".yaml") && !is_copy(arena, name);
}

static bool names_record(struct arena *arena, const char *name)
{
    const char *small = small_letters(arena, name);
    return strstr(small, ".yaml") != NULL || strstr(small, ".yml") != NULL;
}

/* Was it meant to be a boat's file? Then she lacks her cards. */
static bool seems_boat_file(struct arena *arena, const char *folder, const char *name)
{
    return names_record(arena, name) || is_folder(text_format(arena, "%s/%s", folder, name));
}

/* tamarisk.yaml.before-2: a boat's file as it was, which `take` keeps. */
static bool is_kept_file(const char *name)
{
    const char *end = strstr(name, KEPT_FILE_END);
    const char *number = end == NULL ? "" : end + strlen(KEPT_FILE_END);
    return end != name && number[0] != '\0' && number[strspn(number, "0123456789")] == '\0';
}

void boat_stray_tell(const struct fleet *fleet, const char *folder, const char *name)
{
    if (is_kept_file(name))
        return;
    bool meant = seems_boat_file(fleet->arena, folder, name);
    problem_add(fleet->problems, meant ? SEVERITY_DEFICIENCY : SEVERITY_NOTE, NO_PLACE,
                meant ? "if she is a boat of this base, name the file as the boat, such as "
                        "tamarisk.yaml;\nif not, move it out of boats/"
                      : "move it out of boats/",
                is_copy(fleet->arena, name)
                    ? "%s/%s is not read: its name is that of a copy"
                    : "%s/%s is not read: a boat's file lies in boats/ itself and is called "
                      "NAME.yaml", folder, name);
}

/* ---- the base's own folder ---- */

/* Folders of a base that are told of elsewhere, or are its own affair. */
static const char *const known_folders[] = {"boats", "models", "procedures"};

static bool is_known(const char *name)
{
    for (size_t i = 0; i < sizeof known_folders / sizeof *known_folders; i++)
        if (text_equal(name, known_folders[i]))
            return true;
    return text_equal(name, "base.yaml");
}

static bool holds_records(const struct fleet *fleet, const char *folder)
{
    struct names found;
    int error = is_folder(folder) ? folder_names(fleet->arena, folder, &found) : ENOTDIR;
    if (error != 0 && error != ENOTDIR)
        folder_refused(fleet->problems, folder, error);
    if (error != 0)
        return false;
    for (size_t i = 0; i < found.count; i++)
        if (names_record(fleet->arena, found.at[i]))
            return true;
    return false;
}

/* Photographs, printed cards and the like are nobody's record. */
void base_strays_tell(const struct fleet *fleet, const char *base)
{
    struct names found;
    int error = folder_names(fleet->arena, base, &found);
    if (error != 0)
        folder_refused(fleet->problems, base, error);
    if (error != 0)
        return;
    for (size_t i = 0; i < found.count; i++) {
        const char *name = found.at[i], *path = text_format(fleet->arena, "%s/%s", base, name);
        if (name[0] == '.' || is_known(name))
            continue;
        if (holds_records(fleet, path))
            problem_add(fleet->problems, SEVERITY_DEFICIENCY, NO_PLACE,
                        "boats' files lie in boats/ itself: move them there, or the folder away",
                        "%s holds files of records, but is not read", path);
        else if (names_record(fleet->arena, name))
            problem_add(fleet->problems, SEVERITY_DEFICIENCY, NO_PLACE,
                        "if it is a boat's, move it into boats/; if it is the base's, call it "
                        "base.yaml; if\nneither, move it away",
                        "%s is not read: in a base's own folder only base.yaml is", path);
    }
}
