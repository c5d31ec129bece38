/* check_json.c - the result of `check` as JSON, and its schema (room: app): a struct and a table
 * of members for each kind of object. A member that is added there is in both. */
#include "check_rows.h"
#include "json.h"

#include <stdio.h>

/* ---- problems ---- */

struct problem_object {
    const char *check, *severity, *file;
    int line, column;
    const char *what, *remedy;
};

#define AT(member) offsetof(struct problem_object, member)
static const struct json_member problem_members[] = {
    {"check", JSON_TEXT, AT(check), NULL, "\"minLength\": 1", "an id of `check --list`"},
    {"severity", JSON_TEXT, AT(severity), NULL,
     "\"enum\": [\"silenced\", \"note\", \"deficiency\", \"held\", \"error\", \"failure\"]", NULL},
    {"file", JSON_TEXT_OR_NULL, AT(file), NULL, NULL, NULL},
    {"line", JSON_NUMBER_OR_NULL, AT(line), NULL, NULL, NULL},
    {"column", JSON_NUMBER_OR_NULL, AT(column), NULL, NULL, NULL},
    {"what", JSON_TEXT, AT(what), NULL, "\"minLength\": 1", NULL},
    {"remedy", JSON_TEXT_OR_NULL, AT(remedy), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape problem_shape = {"problem", sizeof(struct problem_object),
                                                MEMBERS_OF(problem_members)};

/* A problem of no file (a missing font, say) has null for file, line and column. */
static struct problem_object problem_object_of(const struct problem *problem)
{
    const struct place *place = &problem->place;
    bool placed = place->source != NULL;
    return (struct problem_object){
        .check = problem->check, .severity = severity_word(problem->severity),
        .file = placed ? place->source->name : NULL, .line = placed ? place->line : 0,
        .column = placed ? place->column : 0, .what = problem->what, .remedy = problem->remedy};
}

/* By file, line and column. */
static struct json_list problem_objects_of(const struct problems *problems, struct arena *arena)
{
    size_t count;
    const struct problem *list = problems_sorted(problems, &count);
    struct problem_object *objects = arena_array(arena, count, sizeof *objects);
    for (size_t i = 0; i < count; i++)
        objects[i] = problem_object_of(&list[i]);
    return (struct json_list){objects, count};
}

/* ---- what a boat has: lists of check_rows.h as they are ---- */

#define AT(member) offsetof(struct check_card, member)
static const struct json_member card_members[] = {
    {"card", JSON_TEXT, AT(card), NULL, NULL, "its id, as --card takes it"},
    {"number", JSON_TEXT, AT(number), NULL, NULL, "3, or 3P and 3S of two engine spaces"},
    {"name", JSON_TEXT, AT(name), NULL, NULL, NULL},
    {"language", JSON_TEXT, AT(language), NULL, NULL, NULL},
    {"state", JSON_TEXT, AT(state), NULL, "\"enum\": [\"ready\", \"held\", \"draft\"]", NULL},
    {"code", JSON_TEXT_OR_NULL, AT(code), NULL, NULL,
     "the check code at its foot; null of one that is held back"},
    {"pages", JSON_COUNT, AT(pages), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape card_shape = {"card", sizeof(struct check_card),
                                             MEMBERS_OF(card_members)};

#define DATE_PATTERN "\"pattern\": \"^[0-9]{4}(-[0-9]{2}){0,2}$\""
#define AT(member) offsetof(struct check_date, member)
static const struct json_member date_members[] = {
    {"date", JSON_TEXT_OR_NULL, AT(date), NULL, DATE_PATTERN,
     "the last day it is good, or a month that holds to its end; null: it needs a date and has "
     "none"},
    {"item", JSON_TEXT, AT(item), NULL, NULL, NULL},
    {"tag", JSON_TEXT_OR_NULL, AT(tag), NULL, NULL, NULL},
    {"from", JSON_TEXT_OR_NULL, AT(from), NULL, NULL, "the recorded field that it comes from"},
    {"stamped", JSON_FLAG, AT(stamped), NULL, NULL, "as it stands there; else computed from it"},
    {"line", JSON_NUMBER_OR_NULL, AT(line), NULL, NULL,
     "of the boat's file; null: the piece stands in her model's"},
};
#undef AT
static const struct json_shape date_shape = {"gear_date", sizeof(struct check_date),
                                             MEMBERS_OF(date_members)};

#define AT(member) offsetof(struct check_fact, member)
static const struct json_member fact_members[] = {
    {"owner", JSON_TEXT, AT(owner), NULL, NULL, "a tag, boat, gas or radio"},
    {"field", JSON_TEXT, AT(field), NULL, NULL, NULL},
    {"value", JSON_TEXT, AT(value), NULL, NULL, NULL},
    {"line", JSON_NUMBER_OR_NULL, AT(line), NULL, NULL,
     "of the boat's file; null: it stands in her model's"},
};
#undef AT
static const struct json_shape fact_shape = {"fact", sizeof(struct check_fact),
                                             MEMBERS_OF(fact_members)};

#define AT(member) offsetof(struct sheet_not_hers, member)
static const struct json_member not_hers_members[] = {
    {"card", JSON_TEXT, AT(name), NULL, NULL, NULL},
    {"reason", JSON_TEXT_OR_NULL, AT(reason), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape not_hers_shape = {"card_not_hers", sizeof(struct sheet_not_hers),
                                                 MEMBERS_OF(not_hers_members)};

/* ---- a boat ---- */

struct cards_object {
    size_t ready, of;
    struct json_list list;
};

#define AT(member) offsetof(struct cards_object, member)
static const struct json_member cards_members[] = {
    {"ready", JSON_COUNT, AT(ready), NULL, NULL, "pages"},
    {"of", JSON_COUNT, AT(of), NULL, NULL, "pages"},
    {"list", JSON_LIST, AT(list), &card_shape, NULL, "each card once, in their order"},
};
#undef AT
static const struct json_shape cards_shape = {"cards", sizeof(struct cards_object),
                                              MEMBERS_OF(cards_members)};

struct counts_object { size_t error, held, deficiency, note, silenced; };

#define AT(member) offsetof(struct counts_object, member)
static const struct json_member counts_members[] = {
    {"error", JSON_COUNT, AT(error), NULL, NULL, NULL},
    {"held", JSON_COUNT, AT(held), NULL, NULL, NULL},
    {"deficiency", JSON_COUNT, AT(deficiency), NULL, NULL, NULL},
    {"note", JSON_COUNT, AT(note), NULL, NULL, NULL},
    {"silenced", JSON_COUNT, AT(silenced), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape counts_shape = {"counts", sizeof(struct counts_object),
                                               MEMBERS_OF(counts_members)};

struct boat_object {
    const char *boat;
    bool read;
    size_t recorded, items;
    struct cards_object cards;
    struct counts_object counts;
    const struct check_date *first_date;
    struct json_list dates, not_hers, on_no_card, problems;
};

#define AT(member) offsetof(struct boat_object, member)
static const struct json_member boat_members[] = {
    {"boat", JSON_TEXT, AT(boat), NULL, NULL, "her file's name without .yaml"},
    {"read", JSON_FLAG, AT(read), NULL, NULL, "her file could be used"},
    {"recorded", JSON_COUNT, AT(recorded), NULL, NULL, "kinds of gear that her record mentions"},
    {"items", JSON_COUNT, AT(items), NULL, NULL, "kinds of gear there are"},
    {"cards", JSON_OBJECT, AT(cards), &cards_shape, NULL, NULL},
    {"counts", JSON_OBJECT, AT(counts), &counts_shape, NULL, "problems by severity"},
    {"first_date", JSON_OBJECT_OR_NULL, AT(first_date), &date_shape, NULL,
     "of her gear, the piece that runs out first"},
    {"dates", JSON_LIST, AT(dates), &date_shape, NULL,
     "of each piece that has one or needs one, in the order of her record"},
    {"not_hers", JSON_LIST, AT(not_hers), &not_hers_shape, NULL,
     "cards that she does not need, or that are left out"},
    {"on_no_card", JSON_LIST, AT(on_no_card), &fact_shape, NULL,
     "what is recorded of her and stands on no card of hers"},
    {"problems", JSON_LIST, AT(problems), &problem_shape, NULL, NULL},
};
#undef AT
static const struct json_shape boat_shape = {"boat", sizeof(struct boat_object),
                                             MEMBERS_OF(boat_members)};

static struct counts_object counts_object_of(const struct problems *problems)
{
    return (struct counts_object){problems_count(problems, SEVERITY_ERROR),
                                  problems_count(problems, SEVERITY_HELD),
                                  problems_count(problems, SEVERITY_DEFICIENCY),
                                  problems_count(problems, SEVERITY_NOTE),
                                  problems_count(problems, SEVERITY_SILENCED)};
}

static struct boat_object boat_object_of(const struct check_row *row, struct arena *arena)
{
    return (struct boat_object){
        .boat = row->key, .read = row->read, .recorded = row->recorded, .items = row->items,
        .cards = {row->ready, row->of, {row->cards, row->card_count}},
        .counts = counts_object_of(row->problems), .first_date = row->first_date,
        .dates = {row->dates, row->date_count}, .not_hers = {row->not_hers, row->not_hers_count},
        .on_no_card = {row->facts, row->fact_count},
        .problems = problem_objects_of(row->problems, arena)};
}

/* ---- the whole ---- */

struct check_object {
    const char *format, *base, *date, *from, *to;
    struct json_list boats, problems;
};

#define CHECK_FORMAT "maydeck-check-1"
#define DAY_PATTERN "\"pattern\": \"^[0-9]{4}-[0-9]{2}-[0-9]{2}$\""
#define AT(member) offsetof(struct check_object, member)
static const struct json_member check_members[] = {
    {"format", JSON_TEXT, AT(format), NULL, "\"const\": \"" CHECK_FORMAT "\"", NULL},
    {"base", JSON_TEXT, AT(base), NULL, NULL, "the folder as it was named"},
    {"date", JSON_TEXT, AT(date), NULL, DAY_PATTERN, "today"},
    {"from", JSON_TEXT, AT(from), NULL, DAY_PATTERN, "first day of the charter"},
    {"to", JSON_TEXT, AT(to), NULL, DAY_PATTERN, "its last day"},
    {"boats", JSON_LIST, AT(boats), &boat_shape, NULL, NULL},
    {"problems", JSON_LIST, AT(problems), &problem_shape, NULL,
     "those of the run and of the base, of no one boat"},
};
#undef AT
static const struct json_shape check_shape = {"check", sizeof(struct check_object),
                                              MEMBERS_OF(check_members)};

void check_json_print(const struct options *options, const struct fleet *fleet,
                      const struct check_row *rows, size_t count)
{
    struct arena *arena = fleet->arena;
    struct boat_object *boats = arena_array(arena, count, sizeof *boats);
    bool charter = options->from.year != 0;
    for (size_t i = 0; i < count; i++)
        boats[i] = boat_object_of(&rows[i], arena);
    struct check_object whole = {
        .format = CHECK_FORMAT, .base = options->base,
        .date = date_text(arena, options->today),
        .from = date_text(arena, charter ? options->from : options->today),
        .to = date_text(arena, charter ? options->to : options->today),
        .boats = {boats, count},
        .problems = problem_objects_of(fleet_problems_of_no_boat(fleet), arena)};
    json_print(&check_shape, &whole, arena);
}

#define SCHEMA_LIMIT ((size_t)1024 * 1024)

void check_schema_print(void)
{
    struct arena *arena = arena_new(SCHEMA_LIMIT);
    struct text_builder out = text_builder_in(arena);
    json_schema_add(&check_shape, "maydeck check --json", &out);
    fwrite(out.at, 1, out.length, stdout);
    arena_free(arena);
}
