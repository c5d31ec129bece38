/* missing_survey.c - gear that nobody has looked for yet, by the boat's own file (room:
 * compose). All of it is told in one problem, with the cards that wait for it or go without
 * it: what to record is not asked for, since nobody can tell before somebody has looked. */
#include "compose_room.h"

bool is_unsurveyed(const struct composing *composing, const struct missing *missing)
{
    return missing->fact == GEAR_FIELD_NONE &&
           boat_unsurveyed(composing->in->boat, missing->item, missing->space) != NULL;
}

/* The names of cards, each once. */
struct card_names {
    struct text_builder words;
    const char **at;
    size_t count, room;
};

static void card_name_add(struct composing *composing, struct card_names *names,
                          const char *name)
{
    for (size_t i = 0; i < names->count; i++)
        if (text_equal(names->at[i], name))
            return;
    names->at = arena_grow(composing->arena, names->at, names->count, &names->room,
                           sizeof *names->at);
    names->at[names->count++] = name;
    text_add_format(&names->words, "%s%s", names->count == 1 ? "" : "; ", name);
}

/* What becomes of a card that lacks something. */
enum lacking_card { CARD_WAITS, CARD_GOES_WITHOUT };

static struct card_names cards_lacking(struct composing *composing, enum lacking_card which,
                                       lack_test *is_lack)
{
    struct card_names names = {.words = text_builder_in(composing->arena)};
    for (size_t i = 0; i < composing->missing_count; i++) {
        const struct missing *missing = &composing->missing[i];
        if (missing->helps != (which == CARD_GOES_WITHOUT) || !is_lack(composing, missing))
            continue;
        for (size_t k = 0; k < missing->card_count; k++)
            card_name_add(composing, &names, missing->cards[k]);
    }
    return names;
}

static const char *items_not_surveyed(struct composing *composing)
{
    const struct absence_list *list = &composing->in->boat->not_surveyed;
    struct text_builder words = text_builder_in(composing->arena);
    for (size_t i = 0; i < list->count; i++) {
        const struct absence *entry = &list->rows[i];
        text_add_format(&words, "%s%s", i == 0 ? "" : ", ", item_word(entry->item.value));
        for (size_t k = 0; k < entry->serves.count; k++)
            text_add_format(&words, "%s%s", k == 0 ? " for " : " and ",
                            zone_word(entry->serves.items[k].value));
    }
    return words.at;
}

/* ": the cards X; Y wait, and the card Z goes without" */
static const char *effect_words_of(struct composing *composing, const struct card_names *waiting,
                                   const struct card_names *without)
{
    struct text_builder words = text_builder_in(composing->arena);
    if (waiting->count > 0 && composing->in->draft)
        text_add_format(&words, ": missing on the card%s %s", waiting->count == 1 ? "" : "s",
                        waiting->words.at);
    else if (waiting->count > 0)
        text_add_format(&words, ": the card%s %s wait%s", waiting->count == 1 ? "" : "s",
                        waiting->words.at, waiting->count == 1 ? "s" : "");
    if (without->count > 0)
        text_add_format(&words, "%s the card%s %s go%s without",
                        waiting->count > 0 ? ", and" : ":", without->count == 1 ? "" : "s",
                        without->words.at, without->count == 1 ? "es" : "");
    return words.at;
}

struct lack_effect effect_of_lack(struct composing *composing, lack_test *is_lack)
{
    struct card_names waiting = cards_lacking(composing, CARD_WAITS, is_lack);
    struct card_names without = cards_lacking(composing, CARD_GOES_WITHOUT, is_lack);
    enum severity severity = waiting.count == 0       ? SEVERITY_NOTE
                             : composing->in->draft ? SEVERITY_DEFICIENCY
                                                    : SEVERITY_HELD;
    return (struct lack_effect){severity, effect_words_of(composing, &waiting, &without)};
}

void unsurveyed_tell(struct composing *composing)
{
    const struct absence_list *list = &composing->in->boat->not_surveyed;
    if (list->count == 0)
        return;
    struct lack_effect effect = effect_of_lack(composing, is_unsurveyed);
    problem_add(composing->problems, effect.severity, list->place,
                "look for each aboard; record in equipment what she has, name in not_fitted what "
                "she has\nnot, and take it out of not_surveyed",
                "not surveyed yet: %s%s", items_not_surveyed(composing), effect.words);
}
