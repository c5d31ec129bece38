/* absence_conflicts.c - what `not_fitted` and `not_surveyed` cannot say beside each other and
 * beside the gear that is recorded (room: record). Each is an error with both places. Decides
 * nothing about what is fitted. */
#include "record.h"

#include "item.h"

/* One of the two lists, as it is named in the file. */
struct named_list {
    const char *key;
    const char *says;                 /* of one engine space, in a remedy */
    const struct absence_list *entries;
};

/* The piece that an entry about some engines cannot stand beside: one that serves them,
 * or that says of none whom it serves, of a kind that is for all. */
static const struct equipment *piece_against(const struct boat_reading *reading,
                                             const struct absence *absence,
                                             enum zone_key space)
{
    for (size_t i = 0; i < reading->gear_count; i++) {
        const struct equipment *gear = &reading->gear[i];
        if (gear->kind == NULL || gear->item.value != absence->item.value)
            continue;
        if (gear_serves(gear, space) || (!gear->serves.given && !gear->kind->by_engine))
            return gear;
    }
    return NULL;
}

/* Where pieces serve one engine only, the name alone may have been meant for the other. */
static const char *fitted_remedy(const struct boat_reading *reading,
                                 const struct named_list *list, enum item_key item)
{
    const struct boat *boat = reading->boat;
    for (size_t i = 0; boat->engine_space_count > 1 && i < boat->engine_space_count; i++)
        if (boat_fitted_for(boat, item, boat->engine_spaces[i]) != ANSWER_YES)
            return text_format(reading->arena,
                               "keep the one that is true; if %s alone %s, write\n"
                               "  - {item: %s, serves: [%s]}",
                               zone_word(boat->engine_spaces[i]), list->says, item_word(item),
                               zone_word(boat->engine_spaces[i]));
    return "keep the one that is true";
}

static void fitted_all_the_same_tell(const struct boat_reading *reading,
                                     const struct named_list *list,
                                     const struct absence *absence)
{
    for (size_t i = 0; i < reading->gear_count; i++)
        if (reading->gear[i].item.value == absence->item.value) {
            problem_add(reading->problems, SEVERITY_ERROR, absence->place,
                        fitted_remedy(reading, list, absence->item.value),
                        "%s is in %s, but it is recorded on %s",
                        item_word(absence->item.value), list->key,
                        line_words(reading->gear[i].place, absence->place, reading->arena));
            return;
        }
}

static void serving_tell(const struct boat_reading *reading, const struct named_list *list,
                         const struct absence *absence)
{
    for (size_t i = 0; i < absence->serves.count; i++) {
        const struct zone_value *space = &absence->serves.items[i];
        const struct equipment *gear = piece_against(reading, absence, space->value);
        if (gear != NULL)
            problem_add(reading->problems, SEVERITY_ERROR, space->place,
                        "keep the one that is true, or correct `serves` of the piece",
                        "%s for %s is in %s, but the piece on %s serves it",
                        item_word(absence->item.value), zone_word(space->value), list->key,
                        line_words(gear->place, space->place, reading->arena));
    }
}

/* Do two entries say something of the same engine? */
static bool said_by(const struct absence *first, const struct absence *again)
{
    if (first->item.value != again->item.value)
        return false;
    if (first->whole || again->whole)
        return true;
    for (size_t i = 0; i < again->serves.count; i++)
        if (absence_covers(first, again->serves.items[i].value))
            return true;
    return false;
}

static const struct absence *said_in(const struct absence_list *list, const struct absence *end,
                                     const struct absence *absence)
{
    for (const struct absence *first = list->rows; first < end; first++)
        if (said_by(first, absence))
            return first;
    return NULL;
}

static void double_tell(const struct boat_reading *reading, const struct named_list *list,
                        const struct absence *absence)
{
    const struct absence *first = said_in(list->entries, absence, absence);
    if (first != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, absence->place,
                    "keep one: the name alone says it of the whole boat",
                    "%s is in %s twice (first on %s)", item_word(absence->item.value),
                    list->key, line_words(first->place, absence->place, reading->arena));
}

/* Somebody who says that she has none has looked. */
static void looked_all_the_same_tell(const struct boat_reading *reading,
                                     const struct absence *unsurveyed)
{
    const struct absence_list *none = &reading->boat->not_fitted;
    const struct absence *absence = said_in(none, none->rows + none->count, unsurveyed);
    if (unsurveyed->item.value != ITEM_NONE && absence != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, unsurveyed->place,
                    "look for it aboard; keep it in not_fitted only if she has none",
                    "%s is in not_surveyed, but %s says that it is not fitted",
                    item_word(unsurveyed->item.value),
                    line_words(absence->place, unsurveyed->place, reading->arena));
}

static void absence_list_check(const struct boat_reading *reading, const struct named_list *list)
{
    for (size_t i = 0; i < list->entries->count; i++) {
        const struct absence *absence = &list->entries->rows[i];
        if (absence->item.value == ITEM_NONE)
            continue;
        spaces_exist(reading, &absence->serves);
        double_tell(reading, list, absence);
        if (absence->whole)
            fitted_all_the_same_tell(reading, list, absence);
        else
            serving_tell(reading, list, absence);
    }
}

void absences_check(const struct boat_reading *reading)
{
    const struct boat *boat = reading->boat;
    absence_list_check(reading,
                       &(struct named_list){"not_fitted", "has none", &boat->not_fitted});
    absence_list_check(reading, &(struct named_list){"not_surveyed", "was not looked at",
                                                     &boat->not_surveyed});
    for (size_t i = 0; i < boat->not_surveyed.count; i++)
        looked_all_the_same_tell(reading, &boat->not_surveyed.rows[i]);
}
