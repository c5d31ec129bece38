/* check_unprinted.c - what is recorded of a boat and stands on no card of hers (room: app): one
 * note a boat, and the facts one by one for JSON. */
#include "check_rows.h"
#include "findings.h"

/* "(rating: F1 en 34B, F3 en 13A 70B, kind: C8 handwheel)", in lines. What stands in brackets
 * is a boat's own: findings of several boats are told together but for it. */
static const char *facts_words(const struct unprinted_facts *facts, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    struct line_fill fill = line_fill_begin(&out, 0, "(");
    for (size_t i = 0; i < facts->count; i++) {
        const struct unprinted_fact *fact = &facts->rows[i];
        bool again = i > 0 && text_equal(facts->rows[i - 1].field, fact->field);
        line_fill_add(&fill, text_format(arena, "%s%s%s %s%s", again ? "" : fact->field,
                                         again ? "" : ": ", fact->owner,
                                         text_empty(fact->value) ? "none" : fact->value,
                                         i + 1 == facts->count ? ")" : ""));
    }
    return out.at;
}

static void facts_tell(const struct sheets *sheets, const struct unprinted_facts *facts)
{
    struct boat_job *boat = sheets->boat;
    if (facts->count == 0)
        return;
    const char *remedy = text_format(
        boat->arena, "they are for the base; what the crew must know of them belongs into spot, "
                     "behind or how\n%s", facts_words(facts, boat->arena));
    problem_add_check(boat->problems, "on_no_card", SEVERITY_NOTE, boat->boat->place, remedy,
                      "facts that are recorded and stand on no card of hers: %zu", facts->count);
}

void check_row_unprinted(struct check_row *row, const struct sheets *sheets)
{
    struct boat_job *boat = sheets->boat;
    struct arena *arena = boat->job->fleet->arena;
    struct unprinted_facts facts = unprinted_facts(&sheets->input, sheets->set, boat->arena);
    struct check_fact *kept = arena_array(arena, facts.count, sizeof *kept);
    for (size_t i = 0; i < facts.count; i++) {
        const struct unprinted_fact *fact = &facts.rows[i];
        bool own = fact->place.source == boat->boat->source;
        kept[i] = (struct check_fact){text_format(arena, "%s", fact->owner),
                                      text_format(arena, "%s", fact->field),
                                      text_format(arena, "%s", fact->value),
                                      own ? fact->place.line : 0};
    }
    row->facts = kept;
    row->fact_count = facts.count;
    facts_tell(sheets, &facts);
}
