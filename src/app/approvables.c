/* approvables.c - what a base's approvals are held against: the fingerprint of each procedure in
 * each language (room: app). Judges no approval. */
#include "compose.h"
#include "fingerprint.h"
#include "fleet.h"

/* Does the base print cards in that language: one that it lists, or else the first? */
static bool is_printed_in(const struct fleet *fleet, const struct words *words)
{
    const struct list_value *listed = &fleet->base->languages;
    for (size_t i = 0; i < listed->count; i++)
        if (text_equal(listed->items[i].text, words_language(words)))
            return true;
    return listed->count == 0 && words == fleet->first_language;
}

static void approvable_add(const struct fleet *fleet, const struct procedure *procedure,
                           const struct words *words, struct rules_input *input,
                           struct approvable *rows)
{
    const char *fingerprint = procedure_fingerprint(procedure, fleet->authorities, words,
                                                    fleet->arena);
    if (fingerprint != NULL)
        rows[input->approvable_count++] = (struct approvable){
            .card = procedure->key.text, .language = words_language(words),
            .fingerprint = fingerprint,
            .hung = is_printed_in(fleet, words) && base_hangs(fleet->base, procedure),
            .own_file = procedure->origin == PROCEDURE_OF_PROGRAM ? NULL : procedure->source->name,
            .changed = procedure->origin == PROCEDURE_CHANGED};
}

/* What approvals of the base are held against: each procedure in each language. */
void approvables_take(const struct fleet *fleet, struct rules_input *input)
{
    size_t count = fleet->procedures_sound ? fleet->procedures.count : 0;
    struct approvable *rows = arena_array(fleet->arena, count * fleet->languages.count,
                                          sizeof *rows);
    input->approvables = rows;
    for (size_t l = 0; l < fleet->languages.count; l++)
        for (size_t i = 0; i < count; i++)
            approvable_add(fleet, fleet->procedures.rows[i], fleet->languages.rows[l], input,
                           rows);
}
