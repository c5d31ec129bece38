/* proofread.c - a boat's pages before they are drawn: one that breaks a page rule is
 * held (room: app). It judges nothing and changes no page. */
#include "job.h"

/* Words without a line of their own are the boat's as a whole. */
static struct place finding_place(const struct sheet *sheet, const struct proof_finding *finding)
{
    return finding->origin.line > 0 ? finding->origin : sheet->boat->facts.name.place;
}

static void errors_add(const struct sheets *sheets, const struct sheet *sheet,
                       const struct proof_report *report)
{
    for (size_t i = 0; i < report->count; i++) {
        const struct proof_finding *finding = &report->findings[i];
        const struct proof_rule *rule = proof_rule(finding->rule);
        if (rule->severity == PROOF_ERROR)
            problem_add(sheets->boat->problems, SEVERITY_ERROR, finding_place(sheet, finding),
                        rule->remedy, "%s (%s): %s: %s: %s; limit: %s", sheet->name,
                        sheet->language, rule->id, rule->sentence, finding->measured, rule->limit);
    }
}

void sheets_prove(struct sheets *sheets)
{
    const struct sheet_set *set = sheets->set;
    struct boat_job *boat = sheets->boat;
    const struct page **sound = arena_array(boat->arena, set->count, sizeof *sound);
    problems_about(boat->problems, boat->key, "page");
    sheets->reports = proof_set(set, sheets->pages, boat->job->fleet->faces, boat->arena);
    for (size_t i = 0; i < set->count; i++) {
        errors_add(sheets, set->sheets[i], &sheets->reports[i]);
        sound[i] = sheets->reports[i].errors == 0 ? sheets->pages[i] : NULL;
    }
    sheets->pages = sound;
    problems_about(boat->problems, boat->key, "run");
}

void audit_add(const struct sheets *sheets, struct text_builder *out)
{
    const struct sheet_set *set = sheets->set;
    for (size_t i = 0; i < set->count; i++)
        if (sheets->reports[i].measured > 0 &&
            card_wanted(sheets->boat->job->options, set->sheets[i]))
            proof_print(&sheets->reports[i], sheets->boat->key, set->sheets[i]->id, out);
}
