/* proofread.c - a boat's pages before they are drawn: one that breaks a page rule is
 * held (room: app). It judges nothing and changes no page. */
#include "app.h"

#include <stdio.h>

/* Words without a line of their own are the boat's as a whole. */
static struct place finding_place(const struct card *card, const struct proof_finding *finding)
{
    return finding->origin.line > 0 ? finding->origin : card->boat_record->facts.name.place;
}

static void errors_add(const struct fleet *fleet, const struct card *card,
                       const struct proof_report *report)
{
    for (size_t i = 0; i < report->count; i++) {
        const struct proof_finding *finding = &report->findings[i];
        const struct proof_rule *rule = proof_rule(finding->rule);
        if (rule->severity == PROOF_ERROR)
            problem_add(fleet->problems, SEVERITY_ERROR, finding_place(card, finding),
                        rule->remedy, "%s (%s): %s: %s: %s; limit: %s", card->name,
                        card->language, rule->id, rule->sentence, finding->measured, rule->limit);
    }
}

void pages_proofread(const struct fleet *fleet, struct boat_work *work)
{
    const struct page **sound = arena_array(fleet->arena, work->set->count, sizeof *sound);
    problems_about(fleet->problems, work->key, "page");
    work->reports = proof_set(work->set, work->pages, fleet->faces, fleet->arena);
    for (size_t i = 0; i < work->set->count; i++) {
        errors_add(fleet, work->set->cards[i], &work->reports[i]);
        sound[i] = work->reports[i].errors == 0 ? work->pages[i] : NULL;
    }
    work->pages = sound;
}

void audit_add(const struct options *options, const struct boat_work *work,
               struct text_builder *out)
{
    for (size_t i = 0; work->set != NULL && i < work->set->count; i++)
        if (work->reports[i].measured > 0 && card_wanted(options, work->set->cards[i]))
            proof_print(&work->reports[i], work->key, work->set->cards[i]->key, out);
}
