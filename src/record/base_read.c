/* base_read.c - the base's own record: who it is, its rescue centre, where its
 * boats sail, who approved which card (room: record). Never asks whether a card
 * of that name exists: that is another record. */
#include "boat.h"

#include "channel.h"
#include "record.h"
#include "text.h"

#include <string.h>

enum { SHORTEST_PHONE = 8, LONGEST_PHONE = 15, LONGEST_SHORT_CODE = 6 };

struct base_reading {
    struct base_record *base;
    bool refused;                     /* its section was given, and could not be read */
    struct arena *arena;
    struct problems *problems;
};

/* ---- telephone and channel ---- */

static bool all_digits(const char *text)
{
    for (; *text != '\0'; text++)
        if (*text < '0' || *text > '9')
            return false;
    return true;
}

static const char *without_spaces(const char *text, struct arena *arena)
{
    struct text_builder builder = text_builder_in(arena);
    for (; *text != '\0'; text++)
        if (*text != ' ')
            text_add_bytes(&builder, text, 1);
    return builder.at;
}

/* A plus, a country code that does not begin with 0, 8 to 15 digits in all. */
static bool is_international(const char *number)
{
    size_t length = strlen(number);
    return length > SHORTEST_PHONE && length <= LONGEST_PHONE + 1 && number[0] == '+' &&
           number[1] != '0' && all_digits(number + 1);
}

/* What begins with a code that is no country's: as long as any number, or, where a short code may
 * stand, as short as one. */
static bool is_reserved(const char *number, size_t short_code_most)
{
    bool is_short = strlen(number) <= short_code_most + 1 && all_digits(number + 1);
    return text_begins(number, "+999") && (is_short || is_international(number));
}

/* Whether it is a specimen was given, and refused: that is told, and numbers are not judged. */
static bool specimen_refused(const struct base_reading *reading)
{
    const struct answer_value *specimen = &reading->base->specimen;
    return specimen->answer == ANSWER_NOT_RECORDED &&
           (specimen->place.line > 0 || reading->refused);
}

/* `short_code_most`: how long a code without a country's may be; 0: none may stand. */
static void phone_check(const struct base_reading *reading, const char *key,
                        const struct text_value *phone, size_t short_code_most)
{
    if (phone->text == NULL || specimen_refused(reading))
        return;
    const char *number = without_spaces(phone->text, reading->arena);
    bool reserved = text_begins(number, "+999");
    bool specimen = reading->base->specimen.answer == ANSWER_YES;
    bool is_short = strlen(number) >= 2 && strlen(number) <= short_code_most &&
                    all_digits(number);
    if (specimen && !is_reserved(number, short_code_most))
        problem_add(reading->problems, SEVERITY_ERROR, phone->place,
                    "write a number that nobody can have, such as +999 000 0000",
                    "%s of a specimen must begin with +999, which is no country's", key);
    else if (!specimen && reserved)
        problem_add(reading->problems, SEVERITY_ERROR, phone->place,
                    "write the real number, or base: specimen: yes for an invented base",
                    "%s begins with +999, which is no country's", key);
    else if (!specimen && !is_international(number) && !is_short)
        problem_add(reading->problems, SEVERITY_ERROR, phone->place,
                    text_begins(number, "00")
                        ? "write + in place of the 00, which is not dialled everywhere"
                        : "write + and the country code first, digits and spaces only: it must "
                          "work from any telephone", "%s is not an international number", key);
}

static void channel_check(const struct base_reading *reading)
{
    const struct text_value *channel = &reading->base->centre_channel;
    if (channel->text == NULL)
        return;
    if (strlen(channel->text) != 2 || !all_digits(channel->text))
        problem_add(reading->problems, SEVERITY_ERROR, channel->place,
                    "write two digits: 06, 67",
                    "channel \"%s\" is not two digits", channel->text);
    else if (channel_ship_khz(channel->text) == 0)
        problem_add(reading->problems, SEVERITY_ERROR, channel->place,
                    "write the channel that the centre names: 01 to 28 or 60 to 88",
                    "there is no channel \"%s\" in the marine VHF band", channel->text);
    else if (text_equal(channel->text, "70"))
        problem_add(reading->problems, SEVERITY_ERROR, channel->place,
                    "name the channel on which the centre talks",
                    "channel 70 carries data only: nobody can be heard there");
}

/* ---- languages, approvals ---- */

static void languages_check(const struct base_reading *reading)
{
    const struct list_value *languages = &reading->base->languages;
    for (size_t i = 0; i < languages->count; i++) {
        const char *text = languages->items[i].text;
        if (text == NULL || !language_code_sound(text))
            problem_add(reading->problems, SEVERITY_ERROR, languages->items[i].place,
                        "write the language's code of two or three small letters, such as en",
                        "languages: \"%s\" is not a language code", text == NULL ? "" : text);
    }
}

static void approvals_check(const struct base_reading *reading)
{
    const struct base_record *base = reading->base;
    for (size_t i = 0; i < base->approval_count; i++) {
        const struct approval *row = &base->approvals[i];
        if (row->date.given && row->until.given &&
            date_compare(row->until.date, date_first_day(row->date.date)) < 0)
            problem_add(reading->problems, SEVERITY_ERROR, row->until.place,
                        "correct one of the two dates",
                        "the approval ends %s, before it begins %s", row->until.text,
                        row->date.text);
    }
}

/* ---- the whole ---- */

/* Where a section is named, for what it does not hold; without one the whole file. */
static struct place named_at(const struct section_value *section, const struct source *source)
{
    return place_or(section->key_place, source_whole(source));
}

static void shelters_take(struct base_record *base, const struct entries_value *entries,
                          struct problems *problems)
{
    struct shelter *shelters = entries->items;
    for (size_t i = 0; i < entries->count; i++)
        shelter_settle(base, &shelters[i], problems);
    base->shelters = shelters;
    base->shelter_count = entries->count;
}

static void entries_take(struct base_record *base, const struct base_file *file)
{
    base->intervals = file->intervals.items;
    base->interval_count = file->intervals.count;
    base->approvals = file->approvals.items;
    base->approval_count = file->approvals.count;
    base->own_lines = (struct own_lines){file->lines.items, file->lines.count};
}

static struct base_record *record_take(struct base_file *file, const struct source *source,
                                       struct arena *arena, struct problems *problems)
{
    struct base_record *base = &file->record;
    struct base_reading reading = {
        .base = base, .refused = !file->base.given && (file->base.place.line > 0 ||
                                           file->base.key_place.line > 0),
        .arena = arena, .problems = problems};
    base->source = source;
    base->centre_place = named_at(&file->rescue_centre, source);
    base->ashore_place = named_at(&file->ashore, source);
    base->area_place = named_at(&file->cruising_area, source);
    entries_take(base, file);
    base_places_settle(base, problems);
    shelters_take(base, &file->shelters, problems);
    clocks_take(base, &file->clocks, arena, problems);
    phone_check(&reading, "phone_24h", &base->phone_24h, 0);
    phone_check(&reading, "fire_phone", &base->fire_phone, LONGEST_SHORT_CODE);
    phone_check(&reading, "phone", &base->centre_phone, LONGEST_SHORT_CODE);
    channel_check(&reading);
    languages_check(&reading);
    approvals_check(&reading);
    own_lines_check(&base->own_lines, arena, problems);
    return base;
}

const struct base_record *base_read(const struct source *source, struct arena *arena,
                                    struct problems *all, bool *sound)
{
    struct problems *problems = problems_part(all);
    const struct yaml_node *root = yaml_tree_read(source, arena, problems);
    struct base_file *file = arena_alloc(arena, sizeof *file);
    const struct base_record *base = NULL;
    plain_section_read(root, base_file_fields(), file, arena, problems);
    if (root != NULL && root->kind == YAML_MAPPING)
        base = record_take(file, source, arena, problems);
    *sound = problems_settle(all, problems) && base != NULL;
    return base;
}
