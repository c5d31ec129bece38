/* check_differs.c - how sister ships differ from their models and from each other (room: app).
 * Judges nothing. */
#include "check_rest.h"
#include "findings.h"
#include "job.h"
#include "told.h"

#include <string.h>

/* What a line says, and the boats of which it is true: how they differ, or who walked round
 * them. */
enum differing_kind { DIFFERS, WALKED };
struct differing {
    enum differing_kind kind;
    const char *model;
    const char *words;
    struct names boats;
};

struct differ_run {
    const struct fleet *fleet;
    struct differing *rows;
    size_t count, room;
};

static const struct model *model_called(const struct fleet *fleet, const char *key)
{
    for (size_t i = 0; key != NULL && i < fleet->models.count; i++)
        if (text_equal(model_key(fleet->models.rows[i]), key))
            return fleet->models.rows[i];
    return NULL;
}

/* `row` without its boats; its words are copied. */
static void differing_add(struct differ_run *run, struct differing row, const char *boat)
{
    struct arena *arena = run->fleet->arena;
    size_t i = 0;
    while (i < run->count && !(text_equal(run->rows[i].model, row.model) &&
                               text_equal(run->rows[i].words, row.words)))
        i++;
    if (i == run->count) {
        row.words = arena_copy(arena, row.words, strlen(row.words));
        run->rows = arena_grow(arena, run->rows, run->count, &run->room, sizeof *run->rows);
        run->rows[run->count++] = row;
    }
    names_add(&run->rows[i].boats, boat, arena);
}

/* "C4 seacock spot: low down; the model: aft face" */
static const char *difference_words(const struct difference *difference, struct arena *arena)
{
    return text_format(arena, "%s: %s; the model: %s", difference->what,
                       difference->hers == NULL ? "nothing" : difference->hers,
                       difference->models == NULL ? "nothing" : difference->models);
}

/* "walked 2026-11-20 by AB"; NULL: nobody did. */
static const char *walked_words(const struct likeness *likeness, struct arena *arena)
{
    const struct walk *walk = &likeness->walk;
    if (!walk->date.given)
        return NULL;
    return walk->by.text == NULL
               ? text_format(arena, "walked %s", walk->date.text)
               : text_format(arena, "walked %s by %s", walk->date.text, walk->by.text);
}

static void boat_differs(void *context, struct boat_job *boat)
{
    struct differ_run *run = context;
    const char *key = run->fleet->boats[boat->index].model;
    const struct model *model = model_called(run->fleet, key);
    if (model == NULL)
        return;
    struct differences all = boat_differences(boat->boat, model, boat->arena);
    const struct likeness *likeness = &boat->boat->likeness;
    const char *walked = walked_words(likeness, boat->arena);
    if (walked != NULL)
        differing_add(run, (struct differing){WALKED, key, walked, {0}}, boat->key);
    for (size_t i = 0; i < all.count; i++)
        differing_add(run, (struct differing){DIFFERS, key,
                                              difference_words(&all.rows[i], boat->arena), {0}},
                      boat->key);
    if (likeness->unwalked != NULL)
        differing_add(run, (struct differing){DIFFERS, key,
                                              unwalked_words(boat->boat, boat->arena), {0}},
                      boat->key);
}

static void model_print(const struct differ_run *run, const char *model,
                        struct text_builder *out)
{
    const struct fleet *fleet = run->fleet;
    size_t boats = 0, told = 0;
    for (size_t i = 0; i < fleet->boat_count; i++)
        boats += text_equal(fleet->boats[i].model, model) ? 1 : 0;
    text_add_format(out, "%s: %zu boat%s\n", model, boats, boats == 1 ? "" : "s");
    for (size_t i = 0; i < run->count; i++)
        if (text_equal(run->rows[i].model, model)) {
            text_add_format(out, "  %s: %s\n", boats_words(fleet, &run->rows[i].boats),
                            run->rows[i].words);
            told += run->rows[i].kind == DIFFERS ? 1 : 0;
        }
    if (boats > 0 && told == 0)
        text_add(out, "  no difference\n");
}

void boats_differ_print(const struct options *options, const struct fleet *fleet)
{
    static const struct job_use use = {.last = STEP_OPEN, .end = boat_differs};
    struct differ_run run = {.fleet = fleet};
    struct job job = job_of(options, fleet);
    struct text_builder out = text_builder_in(fleet->arena);
    job_run(&job, &use, &run);
    text_add(&out, "");
    for (size_t i = 0; i < fleet->models.count; i++)
        model_print(&run, model_key(fleet->models.rows[i]), &out);
    told_print(&out);
}
