/* silence_rules.c - the silenced checks themselves: they must exist, be no errors, and
 * not be past their date (room: rules). Called after all other families, since it tells
 * which silences nothing was found for. */
#include "rules_room.h"

#include "promise.h"
#include "text.h"

static const char *nearest_check(const struct rule_run *run, const char *id)
{
    const char *ids[CHECK_COUNT];
    promise(id != NULL);
    for (size_t i = 0; i < CHECK_COUNT; i++)
        ids[i] = check_at(i)->id;
    return text_nearest_remedy(run->arena, id, ids, CHECK_COUNT,
                               "`maydeck check --list` names the checks");
}

/* A silence of these would keep all others for ever. */
static bool tells_of_silences(const struct check *check)
{
    return check == check_at(CHECK_silence_lapsed) || check == check_at(CHECK_silence_idle);
}

bool check_may_be_silent(const struct check *check)
{
    return !check->family && check->severity < SEVERITY_HELD && !tells_of_silences(check);
}

static void not_silent_tell(const struct rule_run *run, const struct silence *silence,
                            const struct check *check)
{
    rule_tell(run, CHECK_silence_of_error, silence->check.place,
              "put right what it finds, and take this entry out",
              "check %s tells what %s: it cannot be silenced", check->id,
              tells_of_silences(check) ? "silences there are" : "holds cards back");
}

static void lapsed_tell(const struct rule_run *run, const struct silence *silence,
                        const struct check *check)
{
    static const char remedy[] = "put right what it finds, or write a new reason and a new date";
    if (date_compare(date_last_day(silence->until.date), run->in->today) < 0)
        rule_tell(run, CHECK_silence_lapsed, silence->until.place, remedy,
                  "the silence of check %s lapsed on %s", check->id, silence->until.text);
    else
        rule_tell(run, CHECK_silence_lapsed, silence->until.place, remedy,
                  "the silence of check %s lapses on %s, before the boat is back on %s",
                  check->id, silence->until.text, date_text(run->arena, run->in->to));
}

static void silence_check(const struct rule_run *run, size_t index)
{
    const struct silence *silence = &run->in->boat->silences[index];
    const struct check *check = check_find(silence->check.text);
    if (check == NULL)
        rule_tell(run, CHECK_silence_unknown, silence->check.place,
                  nearest_check(run, silence->check.text), "there is no check `%s`",
                  silence->check.text);
    else if (!check_may_be_silent(check))
        not_silent_tell(run, silence, check);
    else if (!silence_whole(silence))
        return;   /* it silences nothing, and the record has told why */
    else if (silence_lapses(run, silence))
        lapsed_tell(run, silence, check);
    else if (!run->used[index])
        rule_tell(run, CHECK_silence_idle, silence->check.place, "take this entry out",
                  "check %s finds nothing that had to be silenced", check->id);
}

void silence_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->silence_count; i++)
        if (boat->silences[i].check.text != NULL)
            silence_check(run, i);
}
