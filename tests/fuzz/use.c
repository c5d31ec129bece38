/* use.c - what a sound record is used for, and what must hold of the sheets composed from it. */
#include "fuzz.h"

#include <string.h>

#include "due.h"
#include "prove.h"
#include "reasons.h"
#include "register.h"
#include "rules.h"
#include "sheet_kinds.h"
#include "text.h"

enum { EXPLAINED_ONE_IN = 8 };

/* A code is one that a crew can read off and the program then knows. */
static void code_check(const struct fuzz *fuzz, const struct sheet *sheet)
{
    const char *code = check_code(sheet, fuzz->arena), *read = NULL, *wrong = NULL;
    CHECK(code_read(code, fuzz->arena, &read, &wrong) == CODE_SOUND && text_equal(read, code));
}

/* What the register keeps of a sheet comes back as it was. */
static void content_check(const struct fuzz *fuzz, const struct compose_input *input,
                          const struct sheet *sheet)
{
    const char *content = register_content(input, sheet, fuzz->arena);
    const char *packed = content_pack(content, fuzz->arena);
    CHECK(text_equal(content_unpack(packed, fuzz->arena), content));
    CHECK(register_changes(content, content, fuzz->arena).count == 0);
}

static void sheet_check(const struct fuzz *fuzz, const struct sheet *sheet)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    sheet_dump(sheet, &out);
    CHECK(text_is_shown(out.at));
    if (!sheet->held && sheet_is_registered(sheet))
        code_check(fuzz, sheet);
}

/* What a sheet says on the radio alone is there, or it is told why not. */
static void calls_check(const struct fuzz *fuzz, const struct compose_input *input,
                        const struct sheet *sheet)
{
    struct problems *told = problems_new(fuzz->arena);
    struct text_builder out = text_builder_in(fuzz->arena);
    const struct sheet *calls = sheet_calls(input, sheet->id, fuzz->arena, told);
    sheet_dump(calls, &out);
    CHECK(out.length == 0 || text_is_shown(out.at));
}

/* What takes its time, of some sheets of each set. */
static void sheet_explain(const struct fuzz *fuzz, const struct compose_input *input,
                          const struct sheet_set *set, const struct sheet *sheet)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    card_reasons(input, set, sheet, &out);
    CHECK(text_is_shown(out.at));
    if (!sheet->held && sheet_is_registered(sheet))
        content_check(fuzz, input, sheet);
    out = text_builder_in(fuzz->arena);
    figure_reasons(input, set, figure_at(fuzz_choice(fuzz, figure_count())), &out);
    CHECK(text_is_shown(out.at));
    calls_check(fuzz, input, sheet);
}

static void scripts_say(const struct fuzz *fuzz, const struct compose_input *input)
{
    struct problems *problems = problems_new(fuzz->arena);
    enum script_form form = (enum script_form)fuzz_choice(fuzz, SCRIPT_FORM_COUNT);
    const struct script *script = call_script(input, form, NULL, fuzz->arena, problems);
    CHECK(script != NULL || problems_reach(problems, SEVERITY_NOTE));
    if (script != NULL)
        CHECK(text_is_shown(script_text(script, fuzz->arena)));
}

static void dates_list(const struct fuzz *fuzz, const struct compose_input *input)
{
    struct due_list list = {.arena = fuzz->arena};
    struct text_builder out = text_builder_in(fuzz->arena);
    due_of_boat(&list, input->boat, input->base, input->words);
    due_of_base(&list, input->base);
    due_sort(&list);
    due_calendar(&list, fuzz_today, &out);
    for (size_t i = 1; i < list.count; i++)
        CHECK(!list.rows[i].known || list.rows[i - 1].known);
}

void set_check(const struct fuzz *fuzz, const struct compose_input *input,
               const struct sheet_set *set)
{
    size_t held = 0, chosen = fuzz_choice(fuzz, EXPLAINED_ONE_IN);
    for (size_t i = 0; i < set->count; i++) {
        held += set->sheets[i]->held ? 1 : 0;
        sheet_check(fuzz, set->sheets[i]);
        if (i % EXPLAINED_ONE_IN == chosen)
            sheet_explain(fuzz, input, set, set->sheets[i]);
    }
    CHECK(held == 0 || problems_reach(fuzz->problems, SEVERITY_DEFICIENCY));
    problems_check(fuzz);
}

const struct sheet_set *boat_use(const struct fuzz *fuzz, const struct compose_input *input)
{
    struct rules_input rules = {.boat = input->boat, .base = input->base, .today = fuzz_today,
                                .from = fuzz_today, .to = fuzz_today};
    struct text_builder out = text_builder_in(fuzz->arena);
    bool sound = boat_cards_check(input->boat, input->base, input->procedures, fuzz->arena,
                                  fuzz->problems);
    sound = rules_check(&rules, fuzz->arena, fuzz->problems) && sound;
    dates_list(fuzz, input);
    figures_for_base(input, &out);
    problems_check(fuzz);
    if (!sound)
        return NULL;
    const struct sheet_set *set = compose_set(input, fuzz->arena, fuzz->problems);
    CHECK(set != NULL && set->count > 0);
    set = hazards_judge(input, set, fuzz->arena, fuzz->problems);
    scripts_say(fuzz, input);
    return set;
}
