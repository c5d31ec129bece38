/* silence_rules.c - the silenced checks themselves: they must exist, be no errors, and
 * not be past their date (room: rules). Called after all other families, since it tells
 * which silences nothing was found for. */
#include "rules_room.h"

#include "text.h"

static const char *nearest_check(const struct rule_run *run, const char *id)
{
    const char *ids[CHECK_COUNT];
    for (size_t i = 0; i < CHECK_COUNT; i++)
        ids[i] = check_at(i)->id;
    const char *nearest = text_nearest(id, ids, CHECK_COUNT);
    return nearest == NULL ? "`maydeck check --list` names the checks"
                           : text_format(run->arena, "did you mean \"%s\"?", nearest);
}

static void silence_check(const struct rule_run *run, const struct silence *silence, bool used)
{
    const struct check *check = check_find(silence->check.text);
    if (check == NULL)
        rule_tell(run, CHECK_silence_unknown, silence->check.place,
                  nearest_check(run, silence->check.text), "there is no check `%s`",
                  silence->check.text);
    else if (check->family || check->severity >= SEVERITY_HELD)
        rule_tell(run, CHECK_silence_of_error, silence->check.place,
                  "put right what it finds, and take this entry out",
                  "check %s tells what holds cards back: it cannot be silenced", check->id);
    else if (silence->until.given &&
             date_compare(date_last_day(silence->until.date), run->in->today) < 0)
        rule_tell(run, CHECK_silence_lapsed, silence->until.place,
                  "put right what it finds, or write a new reason and a new date",
                  "the silence of check %s lapsed on %s", check->id, silence->until.text);
    else if (!used)
        rule_tell(run, CHECK_silence_idle, silence->check.place, "take this entry out",
                  "check %s finds nothing that had to be silenced", check->id);
}

void silence_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->silence_count; i++)
        if (boat->silences[i].check.text != NULL)
            silence_check(run, &boat->silences[i], run->used[i]);
}
