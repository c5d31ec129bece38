/* base_read.c - the base's own record: who it is, its rescue centre, where its
 * boats sail, who approved which card (room: record). Never asks whether a card
 * of that name exists: that is another record. */
#include "boat.h"

#include "channel.h"
#include "record.h"
#include "text.h"

#include <string.h>

enum { RULES_A_CARD = 2, SHORTEST_PHONE = 8, LONGEST_PHONE = 15, LONGEST_SHORT_CODE = 6 };

struct base_file {
    struct node_value base, rescue_centre, cruising_area, dates, approvals, local_rules;
    struct node_value intervals, shelters;
    struct list_value languages;
};

static const struct field file_rows[] = {
    ROW(struct base_file, base, FIELD_NODE, .required = true, .about = "the base itself"),
    ROW(struct base_file, rescue_centre, FIELD_NODE, .required = true,
        .about = "the rescue centre that answers here"),
    ROW(struct base_file, cruising_area, FIELD_NODE, .required = true,
        .about = "where the boats sail"),
    ROW(struct base_file, dates, FIELD_NODE, .about = "how dates of gear are read"),
    ROW(struct base_file, intervals, FIELD_NODE, .about = "the base's own service intervals"),
    ROW(struct base_file, shelters, FIELD_NODE, .about = "harbours to run for"),
    ROW(struct base_file, languages, FIELD_WORDS, .about = "languages of the cards"),
    ROW(struct base_file, approvals, FIELD_NODE, .about = "who approved which card"),
    ROW(struct base_file, local_rules, FIELD_NODE, .about = "rules of this water"),
};
static const struct field_table file_table = TABLE("base file", file_rows);

#define BASE(key, member, field_kind, ...) \
    KEYED(struct base_record, key, member, field_kind, __VA_ARGS__)

static const struct field base_rows[] = {
    BASE("name", name, FIELD_TEXT, .any_word = true, .required = true,
         .about = "the base's name"),
    BASE("specimen", specimen, FIELD_ANSWER, .about = "an invented base?"),
    BASE("phone_24h", phone_24h, FIELD_TEXT, .required = true,
         .about = "the number that is answered day and night"),
    BASE("position", position, FIELD_TEXT,
         .about = "the berths, such as 43 30.488 N 016 26.411 E"),
};
static const struct field centre_rows[] = {
    BASE("name", centre_name, FIELD_TEXT, .any_word = true, .required = true, .about = "its name"),
    BASE("call", centre_call, FIELD_TEXT, .any_word = true,
         .about = "what it is called on the radio"),
    BASE("channel", centre_channel, FIELD_TEXT, .required = true,
         .about = "its working channel, two digits"),
    BASE("phone", centre_phone, FIELD_TEXT, .about = "its telephone number"),
    BASE("antenna_m", centre_antenna_m, FIELD_NUMBER, .low = 1000, .high = 3000000,
         .about = "height of its aerial above the sea, in metres"),
    BASE("checked_on", centre_checked_on, FIELD_DATE, .about = "when this was last checked"),
};

static const char *const latitudes[] = {"north", "south", "both", NULL};
static const char *const longitudes[] = {"east", "west", "both", NULL};
static const char *const sea_areas[] = {"A1", "A2", "A3", "A4", NULL};

static const struct field area_rows[] = {
    BASE("latitude", latitude, FIELD_CHOICE, .required = true, .choices = latitudes,
         .about = "the hemisphere"),
    BASE("longitude", longitude, FIELD_CHOICE, .required = true, .choices = longitudes,
         .about = "the hemisphere"),
    BASE("sea_area", sea_area, FIELD_CHOICE, .choices = sea_areas,
         .about = "the radio sea area"),
    BASE("variation", variation, FIELD_TEXT, .about = "magnetic variation, such as 4 E"),
    BASE("variation_on", variation_on, FIELD_DATE, .about = "the date it is true for"),
};

static const char *const month_ends[] = {"end", "start", NULL};

static const struct field date_rows[] = {
    BASE("month_means", month_means, FIELD_CHOICE, .choices = month_ends,
         .about = "05/2027 holds to that month's end or start"),
    BASE("margin_days", margin_days, FIELD_NUMBER, .low = 0, .high = 366000,
         .about = "days a date should last beyond a charter"),
};
static const struct field interval_rows[] = {
    ROW(struct interval, item, FIELD_ENUM, .required = true, .choices = item_key_list,
        .about = "the gear"),
    ROW(struct interval, months, FIELD_NUMBER, .required = true, .low = 1000, .high = 240000,
        .whole = true, .about = "months from one to the next"),
};
static const struct field shelter_rows[] = {
    ROW(struct shelter, name, FIELD_TEXT, .any_word = true, .required = true, .about = "its name"),
    ROW(struct shelter, position, FIELD_TEXT, .required = true,
        .about = "where it lies, such as 43 30.488 N 016 26.411 E"),
};
static const struct field_table date_table = TABLE("dates", date_rows);
static const struct field_table interval_table = TABLE("interval", interval_rows);
static const struct field_table shelter_table = TABLE("shelter", shelter_rows);

static const struct field_table base_table = TABLE("base", base_rows);
static const struct field_table centre_table = TABLE("rescue centre", centre_rows);
static const struct field_table area_table = TABLE("cruising area", area_rows);

static const struct field approval_rows[] = {
    ROW(struct approval, card, FIELD_TEXT, .required = true, .about = "the card"),
    ROW(struct approval, initials, FIELD_TEXT, .any_word = true, .required = true,
        .about = "of who approved it"),
    ROW(struct approval, qualification, FIELD_WORDING, .required = true,
        .about = "what qualifies them"),
    ROW(struct approval, date, FIELD_DATE, .required = true, .about = "when"),
    ROW(struct approval, until, FIELD_DATE, .required = true, .about = "how long it holds"),
};
static const struct field rule_rows[] = {
    ROW(struct local_rule, card, FIELD_TEXT, .required = true, .about = "the card"),
    ROW(struct local_rule, rule, FIELD_WORDING, .required = true,
        .about = "the rule, in few words"),
    ROW(struct local_rule, source, FIELD_TEXT, .required = true, .about = "who made the rule"),
};
static const struct field_table approval_table = TABLE("approval", approval_rows);
static const struct field_table rule_table = TABLE("local rule", rule_rows);

static const struct base_section sections[] = {
    {.key = "base", .about = "the base itself", .fields = &base_table},
    {.key = "rescue_centre", .about = "the rescue centre that answers here",
     .fields = &centre_table},
    {.key = "cruising_area", .about = "where the boats sail", .fields = &area_table},
    {.key = "dates", .about = "how dates of gear are read", .fields = &date_table},
    {.key = "intervals", .about = "the base's own service intervals: an entry each, or none",
     .fields = &interval_table, .list = true},
    {.key = "shelters", .about = "harbours to run for: an entry each, or none",
     .fields = &shelter_table, .list = true},
    {.key = "approvals", .about = "who approved which card: an entry each, or none",
     .fields = &approval_table, .list = true},
    {.key = "local_rules", .about = "rules of this water, two a card at most",
     .fields = &rule_table, .list = true},
};

const struct base_section *base_section_at(size_t index)
{
    return index < sizeof sections / sizeof sections[0] ? &sections[index] : NULL;
}

struct base_reading {
    struct base_record *base;
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

static void phone_check(const struct base_reading *reading, const char *key,
                        const struct text_value *phone, bool short_code_allowed)
{
    if (phone->text == NULL)
        return;
    const char *number = without_spaces(phone->text, reading->arena);
    bool reserved = text_begins(number, "+999");
    bool specimen = reading->base->specimen.answer == ANSWER_YES;
    bool is_short = strlen(number) >= 2 && strlen(number) <= LONGEST_SHORT_CODE &&
                    all_digits(number);
    if (specimen && !(reserved && is_international(number)))
        problem_add(reading->problems, SEVERITY_ERROR, phone->place,
                    "write a number that nobody can have, such as +999 000 0000",
                    "%s of a specimen must begin with +999, which is no country's", key);
    else if (!specimen && reserved)
        problem_add(reading->problems, SEVERITY_ERROR, phone->place,
                    "write the real number, or base: specimen: yes for an invented base",
                    "%s begins with +999, which is no country's", key);
    else if (!specimen && !is_international(number) && !(short_code_allowed && is_short))
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

/* ---- languages, approvals, rules ---- */

static void languages_check(const struct base_reading *reading)
{
    const struct list_value *languages = &reading->base->languages;
    for (size_t i = 0; i < languages->count; i++) {
        const char *text = languages->items[i].text;
        size_t length = text == NULL ? 0 : strlen(text);
        bool letters = length == 2 || length == 3;
        for (size_t k = 0; letters && k < length; k++)
            letters = text[k] >= 'a' && text[k] <= 'z';
        if (!letters)
            problem_add(reading->problems, SEVERITY_ERROR, languages->items[i].place,
                        "write the language's code of two or three small letters, such as en",
                        "languages: \"%s\" is not a language code", text == NULL ? "" : text);
        else if (!text_equal(text, "en"))
            problem_add(reading->problems, SEVERITY_ERROR, languages->items[i].place,
                        "write languages: [en]", "cards in the language %s do not exist yet", text);
    }
}

static void approvals_read(struct base_reading *reading, const struct node_value *list)
{
    size_t count = entries_count(list, "approvals", reading->problems);
    struct approval *rows = arena_array(reading->arena, count, sizeof *rows);
    for (size_t i = 0; i < count; i++) {
        plain_section_read(list->node->items[i], &approval_table, &rows[i], reading->arena,
                     reading->problems);
        if (rows[i].date.given && rows[i].until.given &&
            date_compare(rows[i].until.date, date_first_day(rows[i].date.date)) < 0)
            problem_add(reading->problems, SEVERITY_ERROR, rows[i].until.place,
                        "correct one of the two dates",
                        "the approval ends %s, before it begins %s", rows[i].until.text,
                        rows[i].date.text);
    }
    reading->base->approvals = rows;
    reading->base->approval_count = count;
}

static void rule_count_check(const struct base_reading *reading, const struct local_rule *rows,
                             size_t index)
{
    size_t before = 0;
    for (size_t i = 0; i < index; i++)
        if (rows[index].card.text != NULL && text_equal(rows[i].card.text, rows[index].card.text))
            before++;
    if (before == RULES_A_CARD)
        problem_add(reading->problems, SEVERITY_ERROR, rows[index].card.place,
                    "keep the two that matter most",
                    "card %s has more than %d local rules", rows[index].card.text, RULES_A_CARD);
}

static void rules_read(struct base_reading *reading, const struct node_value *list)
{
    size_t count = entries_count(list, "local_rules", reading->problems);
    struct local_rule *rows = arena_array(reading->arena, count, sizeof *rows);
    for (size_t i = 0; i < count; i++) {
        plain_section_read(list->node->items[i], &rule_table, &rows[i], reading->arena,
                     reading->problems);
        rule_count_check(reading, rows, i);
    }
    reading->base->local_rules = rows;
    reading->base->local_rule_count = count;
}

/* ---- intervals and shelters ---- */

static void intervals_read(struct base_reading *reading, const struct node_value *list)
{
    size_t count = entries_count(list, "intervals", reading->problems);
    struct interval *rows = arena_array(reading->arena, count, sizeof *rows);
    for (size_t i = 0; i < count; i++) {
        plain_section_read(list->node->items[i], &interval_table, &rows[i], reading->arena,
                           reading->problems);
        rows[i].place = list->node->items[i]->place;
    }
    reading->base->intervals = rows;
    reading->base->interval_count = count;
}

static void shelters_read(struct base_reading *reading, const struct node_value *list)
{
    size_t count = entries_count(list, "shelters", reading->problems);
    struct shelter *rows = arena_array(reading->arena, count, sizeof *rows);
    for (size_t i = 0; i < count; i++) {
        plain_section_read(list->node->items[i], &shelter_table, &rows[i], reading->arena,
                           reading->problems);
        rows[i].place = list->node->items[i]->place;
        shelter_settle(reading->base, &rows[i], reading->problems);
    }
    reading->base->shelters = rows;
    reading->base->shelter_count = count;
}

/* Where a section is named, for what it does not hold; without one the whole file. */
static struct place section_place(const struct yaml_node *root, const char *key,
                                  const struct source *source)
{
    for (size_t i = 0; i < root->count; i++)
        if (root->pairs != NULL && text_equal(root->pairs[i].key, key))
            return root->pairs[i].key_place;
    return source_whole(source);
}

static struct base_record *file_read(const struct yaml_node *root, const struct source *source,
                                     struct arena *arena, struct problems *problems)
{
    struct base_file file = {0};
    struct base_record *base = arena_alloc(arena, sizeof *base);
    struct base_reading reading = {.base = base, .arena = arena, .problems = problems};
    section_read(root, &file_table, &file, arena, problems);
    base->source = source;
    base->centre_place = section_place(root, "rescue_centre", source);
    base->area_place = section_place(root, "cruising_area", source);
    base->languages = file.languages;
    plain_section_read(file.base.node, &base_table, base, arena, problems);
    plain_section_read(file.rescue_centre.node, &centre_table, base, arena, problems);
    section_read(file.cruising_area.node, &area_table, base, arena, problems);
    plain_section_read(file.dates.node, &date_table, base, arena, problems);
    base_places_settle(base, problems);
    intervals_read(&reading, &file.intervals);
    shelters_read(&reading, &file.shelters);
    phone_check(&reading, "phone_24h", &base->phone_24h, false);
    phone_check(&reading, "phone", &base->centre_phone, true);
    channel_check(&reading);
    languages_check(&reading);
    approvals_read(&reading, &file.approvals);
    rules_read(&reading, &file.local_rules);
    voice_words_check(file.local_rules.node, arena, problems);
    return base;
}

const struct base_record *base_read(const struct source *source, struct arena *arena,
                                    struct problems *all, bool *sound)
{
    struct problems *problems = problems_part(all);
    const struct yaml_node *root = yaml_tree_read(source, arena, problems);
    const struct base_record *base = NULL;
    if (root != NULL && root->kind == YAML_MAPPING)
        base = file_read(root, source, arena, problems);
    else
        section_read(root, &file_table, &(struct base_file){0}, arena, problems);
    *sound = problems_settle(all, problems) && base != NULL;
    return base;
}
