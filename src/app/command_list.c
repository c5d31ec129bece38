/* command_list.c - what the files of a base may say, on standard output (room: app). Reads no
 * base. */
#include "lists.h"

#define LIST_FORMAT "maydeck-list-1"

static struct list_made list_make(enum list_topic topic, const struct listing *listing)
{
    static struct list_made (*const makers[])(const struct listing *) = {
        [LIST_ITEMS] = list_items, [LIST_ZONES] = list_zones, [LIST_CARDS] = list_cards,
        [LIST_NATURES] = list_natures, [LIST_FIELDS] = list_fields, [LIST_CHECKS] = list_checks,
        [LIST_RULES] = list_rules, [LIST_FIGURES] = list_figures,
        [LIST_STATUSES] = list_statuses};
    return makers[topic](listing);
}

struct list_object {
    const char *format, *language;
    struct json_list rows;
};

/* The list stands under the name of what it is of. */
static void list_json_print(const char *topic, const struct listing *listing,
                            const struct list_made *made)
{
    const struct json_member members[] = {
        {"format", JSON_TEXT, offsetof(struct list_object, format), NULL, NULL, NULL},
        {"language", JSON_TEXT, offsetof(struct list_object, language), NULL, NULL, NULL},
        {topic, JSON_LIST, offsetof(struct list_object, rows), made->shape, NULL, NULL}};
    const struct json_shape shape = {topic, sizeof(struct list_object), members,
                                     sizeof members / sizeof *members};
    struct list_object whole = {LIST_FORMAT, words_language(listing->words), made->rows};
    json_print(&shape, &whole, listing->arena);
}

static void list_print(const struct options *options, const struct listing *listing)
{
    struct list_made made = list_make(options->topic, listing);
    if (options->json)
        list_json_print(choice_word(list_topic_words, options->topic), listing, &made);
    else
        columns_print(made.shape, &made.rows, listing->arena);
}

enum exit_status command_list(const struct options *options)
{
    struct fleet fleet;
    bool own = fleet_begin(NEED_TEXTS, &fleet) == OWN_FILES_SOUND;
    const struct words *words =
        !own ? NULL
             : language_find(&fleet, options->language == NULL ? DEFAULT_LANGUAGE
                                                               : options->language);
    if (words != NULL) {
        struct listing listing = {&fleet.procedures, fleet.authorities, words, fleet.arena};
        list_print(options, &listing);
    }
    enum exit_status status = report(&fleet, SEVERITY_HELD);
    fleet_close(&fleet);
    return status;
}
