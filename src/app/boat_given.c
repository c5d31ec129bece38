/* boat_given.c - a boat whose file comes from standard input (room: app). Which boat of the base
 * she is follows from what was said, or from her name, and is never guessed. */
#include "fleet.h"

#include "utf8.h"
#include "yaml_tree.h"

#include <errno.h>
#include <string.h>
#include <unistd.h>

#define GIVEN_NAME "standard input"
#define GIVEN_ARENA_LIMIT ((size_t)64 * 1024 * 1024)

bool boat_is_given(const struct options *options)
{
    return names_hold(&options->boats, STREAM_NAME);
}

static bool given_refuse(const struct fleet *fleet, const char *remedy, const char *what)
{
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE, remedy, "%s", what);
    return false;
}

static const struct source *given_read(const struct fleet *fleet)
{
    struct source *source = NULL;
    enum source_result result = source_read_stream(fleet->arena, STDIN_FILENO, GIVEN_NAME,
                                                   YAML_FILE_LIMIT, &source);
    if (result == SOURCE_TOO_LARGE)
        problem_add(fleet->problems, SEVERITY_ERROR, NO_PLACE, "keep one boat a file",
                    GIVEN_NAME " is larger than 256 KiB");
    else if (result != SOURCE_READ)
        problem_add(fleet->problems, SEVERITY_FAILURE, NO_PLACE,
                    "look at where it comes from, then do it again",
                    GIVEN_NAME " cannot be read: %s", strerror(errno));
    return source;
}

/* ---- which boat she is ---- */

/* As `name:` in the section boat tells; NULL: there is none. */
static const char *name_in(const struct yaml_node *root)
{
    const struct yaml_node *boat = root == NULL || root->kind != YAML_MAPPING
                                       ? NULL : yaml_get(root, "boat");
    const struct yaml_node *name = boat == NULL || boat->kind != YAML_MAPPING
                                       ? NULL : yaml_get(boat, "name");
    return name == NULL || name->kind != YAML_SCALAR ? NULL : name->text;
}

static bool is_called(const struct options *options, const char *key, const char *name)
{
    struct arena *own = arena_new(GIVEN_ARENA_LIMIT);
    struct source *source = NULL;
    const char *path = text_format(own, "%s/boats/%s.yaml", options->base, key);
    bool read = source_read(own, path, YAML_FILE_LIMIT, &source) == SOURCE_READ;
    const char *hers = read ? name_in(yaml_tree_read(source, own, problems_new(own))) : NULL;
    bool same = hers != NULL && text_equal(hers, name);
    arena_free(own);
    return same;
}

/* Of the letters and figures of the name: "Blue Tern II" as blue-tern-ii; "" where it has none. */
static const char *key_of_name(const char *name, struct arena *arena)
{
    struct text_builder key = text_builder_in(arena);
    bool apart = false;
    text_add(&key, "");
    for (const char *at = name; *at != '\0'; at++) {
        char sign = *at >= 'A' && *at <= 'Z' ? (char)(*at - 'A' + 'a') : *at;
        bool kept = (sign >= 'a' && sign <= 'z') || is_digit(sign);
        if (kept && apart && key.length > 0)
            text_add(&key, "-");
        if (kept)
            text_add_bytes(&key, &sign, 1);
        apart = !kept;
    }
    return key.at;
}

/* NULL, with a problem: it cannot be told which boat she is. */
static const char *key_by_name(const struct options *options, const struct fleet *fleet,
                               const char *name)
{
    const char *found = NULL;
    for (size_t i = 0; i < fleet->base_keys.count; i++) {
        if (!is_called(options, fleet->base_keys.at[i], name))
            continue;
        if (found != NULL) {
            given_refuse(fleet,
                         text_format(fleet->arena, "say which one she is: --as %s or --as %s",
                                     found, fleet->base_keys.at[i]),
                         text_format(fleet->arena, "two boats of this base are called \"%s\"",
                                     name));
            return NULL;
        }
        found = fleet->base_keys.at[i];
    }
    const char *key = found == NULL ? key_of_name(name, fleet->arena) : found;
    if (found == NULL && (text_empty(key) || names_hold(&fleet->base_keys, key))) {
        given_refuse(fleet, "say what her file is to be called, such as --as tern",
                     text_format(fleet->arena, "no boat of this base is called \"%s\"", name));
        return NULL;
    }
    return key;
}

/* As a file of the base might be called. */
static const char *key_asked(const struct options *options, const struct fleet *fleet)
{
    const char *key = boat_of_file(fleet, options->as);
    if (!text_empty(key) && key[0] != '.' && key[0] != '-' && strchr(key, '/') == NULL &&
        utf8_text_refusal(key) == NULL)
        return key;
    given_refuse(fleet, "write her file's name without .yaml, such as --as tern",
                 text_format(fleet->arena, "--as does not take \"%s\"", options->as));
    return NULL;
}

static const char *given_key(const struct options *options, const struct fleet *fleet,
                             const struct source *source)
{
    if (options->as != NULL)
        return key_asked(options, fleet);
    struct problems *wrong = problems_new(fleet->arena);
    const struct yaml_node *root = yaml_tree_read(source, fleet->arena, wrong);
    const char *name = name_in(root);
    if (root == NULL)
        problems_join(fleet->problems, wrong);
    if (root != NULL && text_empty(name))
        given_refuse(fleet, "write name: in its section boat; or say which boat she is, such as "
                     "--as tern", GIVEN_NAME " does not tell the boat's name");
    return text_empty(name) ? NULL : key_by_name(options, fleet, name);
}

bool boat_given_take(const struct options *options, struct fleet *fleet)
{
    const struct source *source = given_read(fleet);
    const char *key = source == NULL ? NULL : given_key(options, fleet, source);
    if (key == NULL)
        return false;
    if (!names_hold(&fleet->base_keys, key)) {
        names_add(&fleet->base_keys, key, fleet->arena);
        names_sort(&fleet->base_keys);
    }
    fleet->boats = arena_array(fleet->arena, 1, sizeof *fleet->boats);
    fleet->boats[0] = (struct boat_asked){.key = key, .source = source,
                                          .hash = source_hash(source),
                                          .problems = problems_new(fleet->arena)};
    problems_about(fleet->boats[0].problems, key, "record");
    fleet->boat_count = 1;
    return true;
}
