/* command_sign_off.c - the sheets by which a base's procedures are approved, on standard output
 * (room: app): `why --sign-off`. Knows no text itself: the room explain writes them. */
#include "compose.h"
#include "fleet.h"
#include "sign_off.h"
#include "sign_off_command.h"
#include "told.h"

static bool is_to_be_signed(const struct options *options, const struct fleet *fleet,
                         const struct procedure *procedure)
{
    if (options->cards.count > 0)
        return names_hold(&options->cards, procedure->key.text);
    return fleet->base == NULL || base_hangs(fleet->base, procedure);
}

/* A form feed parts them, so that each begins a page where they are printed. */
static void one_print(const struct fleet *fleet, const struct procedure *procedure,
                      const struct words *words, size_t before)
{
    const struct sign_off_input input = {procedure, fleet->authorities, words};
    struct text_builder out = text_builder_in(fleet->arena);
    text_add(&out, before == 0 ? "" : "\f");
    sign_off_text(sign_off_compose(&input, fleet->arena), &out);
    told_print(&out);
}

static bool has_texts_in(const struct procedure *procedure, const struct words *words)
{
    const struct text_in_language *sum = procedure->text_sums;
    while (sum->text != NULL && !text_equal(sum->language, words_language(words)))
        sum++;
    return sum->text != NULL;
}

/* Of what the base has put another text in the place that cannot be used nothing is signed. */
static void sign_sheets_print(const struct options *options, const struct fleet *fleet)
{
    size_t count = 0;
    for (size_t l = 0; l < fleet->printed.count; l++)
        for (size_t i = 0; i < fleet->procedures.count; i++) {
            const struct procedure *procedure = fleet->procedures.rows[i];
            const struct words *words = fleet->printed.rows[l];
            if (!procedure->replaced && has_texts_in(procedure, words) &&
                is_to_be_signed(options, fleet, procedure))
                one_print(fleet, procedure, words, count++);
        }
}

/* False, with a problem each, for cards that are none. */
static bool cards_are_known(const struct options *options, const struct fleet *fleet)
{
    struct names keys = {0};
    bool known = true;
    for (size_t i = 0; i < fleet->procedures.count; i++)
        names_add(&keys, fleet->procedures.rows[i]->key.text, fleet->arena);
    for (size_t i = 0; i < options->cards.count; i++) {
        if (names_hold(&keys, options->cards.at[i]))
            continue;
        known = false;
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    names_remedy(&keys, options->cards.at[i], "cards: ", fleet->arena),
                    "there is no card \"%s\"", options->cards.at[i]);
    }
    return known;
}

enum exit_status why_sign_off(const struct options *options)
{
    struct fleet fleet;
    if (fleet_open(options, NEED_TEXTS, &fleet) && fleet.procedures_sound &&
        cards_are_known(options, &fleet))
        sign_sheets_print(options, &fleet);
    enum exit_status status = report_of_run_and_base(&fleet);
    fleet_close(&fleet);
    return status;
}
