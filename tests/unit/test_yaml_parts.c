/* test_yaml_parts.c - sections, lists of entries and pairs of numbers, read by tables in
 * tables: the values, what is said of wrong ones, and going through keys and values. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "text.h"
#include "yaml_fields.h"

struct crew {
    struct text_value name;
    struct number_value age;
    struct place place;
};

struct ship {
    struct text_value name, mast, mooring;
    struct pair_value at;
    struct section_value rig, berth;
    struct entries_value crew, guests, owner;
};

#define SHIP(member, field_kind, ...) \
    {.key = #member, .kind = (field_kind), .offset = offsetof(struct ship, member), __VA_ARGS__}
#define CREW(...) \
    &(const struct field_part){.table = &crew_table, .size = sizeof(struct crew), \
                               .place = offsetof(struct crew, place), __VA_ARGS__}

static const struct field crew_rows[] = {
    {.key = "name", .kind = FIELD_TEXT, .required = true, .offset = offsetof(struct crew, name)},
    {.key = "age", .kind = FIELD_NUMBER, .offset = offsetof(struct crew, age)},
};
static const struct field_table crew_table = {
    .what = "a member of the crew", .fields = crew_rows, .count = 2};
static const struct field mooring_rows[] = {
    {.key = "mooring", .kind = FIELD_TEXT, .offset = offsetof(struct ship, mooring)},
};
static const struct field_table mooring_table = {
    .what = "a berth", .fields = mooring_rows, .count = 1};
static const struct field rig_rows[] = {
    {.key = "mast", .kind = FIELD_TEXT, .offset = offsetof(struct ship, mast)},
    SHIP(berth, FIELD_SECTION, .part = &(const struct field_part){.table = &mooring_table}),
};
static const struct field_table rig_table = {
    .what = "a rig", .fields = rig_rows, .count = 2};
static const struct field ship_rows[] = {
    SHIP(name, FIELD_TEXT, .about = "as painted"),
    SHIP(at, FIELD_PAIR, .about = "[metres aft, metres to starboard]"),
    SHIP(rig, FIELD_SECTION, .part = &(const struct field_part){.table = &rig_table}),
    SHIP(crew, FIELD_ENTRIES, .part = CREW(.lone = NULL)),
    SHIP(guests, FIELD_ENTRIES, .part = CREW(.lone = "name")),
    SHIP(owner, FIELD_ENTRIES, .part = CREW(.one_or_many = true)),
};
static const struct field_table ship_table = {
    .what = "a ship", .fields = ship_rows, .count = 6};

struct harbour {
    struct arena *arena;
    struct problems *problems;
    struct ship ship;
    bool sound;
};

static struct harbour ship_read(const char *input)
{
    struct harbour harbour = {.arena = arena_new((size_t)16 * 1024 * 1024)};
    struct source *source = source_from(harbour.arena, "t", input, strlen(input));

    harbour.problems = problems_new(harbour.arena);
    const struct yaml_node *tree = yaml_tree_read(source, harbour.arena, harbour.problems);
    assert_non_null(tree);
    harbour.sound =
        fields_read(tree, &ship_table, &harbour.ship, harbour.arena, harbour.problems);
    assert_int_equal(harbour.sound, !problems_reach(harbour.problems, SEVERITY_ERROR));
    return harbour;
}

static const struct crew *crew_of(const struct entries_value *entries)
{
    return entries->items;
}

/* ---- sound files ---- */

static void test_section(void **state)
{
    (void)state;
    struct harbour harbour = ship_read("name: Sea\nrig:\n  mast: pine\n  berth: {mooring: A1}\n");

    assert_true(harbour.sound && harbour.ship.rig.given && harbour.ship.berth.given);
    assert_int_equal(harbour.ship.rig.key_place.line, 2);
    assert_int_equal(harbour.ship.rig.place.line, 3);
    assert_string_equal(harbour.ship.mast.text, "pine");
    assert_string_equal(harbour.ship.mooring.text, "A1");
    arena_free(harbour.arena);
}

static void test_entries(void **state)
{
    (void)state;
    struct harbour harbour = ship_read("crew:\n  - {name: a, age: 7}\n  - name: b\nguests:\n  - c\n"
                                       "  - {name: d}\nowner: {name: e}\nat: [8.4, -1]\n");
    const struct ship *ship = &harbour.ship;

    assert_true(harbour.sound);
    assert_int_equal(ship->crew.count, 2);
    assert_string_equal(crew_of(&ship->crew)[0].name.text, "a");
    assert_true(crew_of(&ship->crew)[0].age.milli == 7000);
    assert_string_equal(crew_of(&ship->crew)[1].name.text, "b");
    assert_int_equal(crew_of(&ship->crew)[1].place.line, 3);
    assert_int_equal(ship->guests.count, 2);
    assert_string_equal(crew_of(&ship->guests)[0].name.text, "c");
    assert_int_equal(crew_of(&ship->guests)[0].place.line, 5);
    assert_string_equal(crew_of(&ship->guests)[1].name.text, "d");
    assert_int_equal(ship->owner.count, 1);
    assert_string_equal(crew_of(&ship->owner)[0].name.text, "e");
    assert_true(ship->at.given && ship->at.first.milli == 8400 && ship->at.second.milli == -1000);
    assert_string_equal(field_text(&ship_rows[1], ship, harbour.arena), "8.4 -1");
    arena_free(harbour.arena);
}

static void test_left_out(void **state)
{
    (void)state;
    struct harbour harbour = ship_read("rig:\ncrew:\nguests: []\nat:\n");
    const struct ship *ship = &harbour.ship;

    assert_true(harbour.sound);
    assert_false(ship->rig.given || ship->crew.given || ship->owner.given || ship->at.given);
    assert_true(ship->guests.given);
    assert_int_equal(ship->guests.count, 0);
    assert_int_equal(ship->rig.key_place.line, 1);
    assert_int_equal(ship->rig.place.line, 0);
    arena_free(harbour.arena);
}

/* ---- wrong files ---- */

static void told_is(const char *input, const char *told)
{
    struct harbour harbour = ship_read(input);
    struct text_builder out = text_builder_in(harbour.arena);
    size_t count;
    const struct problem *problems = problems_sorted(harbour.problems, &count);

    for (size_t i = 0; i < count; i++)
        text_add_format(&out, "%d:%d %s\n  %s\n", problems[i].place.line,
                        problems[i].place.column, problems[i].what,
                        problems[i].remedy == NULL ? "-" : problems[i].remedy);
    assert_string_equal(out.at, told);
    arena_free(harbour.arena);
}

static void test_wrong_sections(void **state)
{
    (void)state;
    told_is("rig: pine\n",
            "1:6 a rig must be a mapping, not a text\n"
            "  write its keys in lines of their own, or in one line as {key: value}\n");
    told_is("rig: {masts: pine}\n", "1:7 a rig has no key \"masts\"\n  did you mean \"mast\"?\n");
    told_is("rig: {berth: {moored: A1}}\n", "1:15 a berth has no key \"moored\"\n"
                                            "  keys of a berth: mooring\n");
    told_is("rig: [pine]\nname: [a]\n",
            "1:6 a rig must be a mapping, not a list\n"
            "  write its keys in lines of their own, or in one line as {key: value}\n"
            "2:7 \"name\" must be a text, not a list\n"
            "  write one value; a text that begins with [ or - goes in quotes\n");
}

static void test_wrong_entries(void **state)
{
    (void)state;
    told_is("crew: {name: a}\n", "1:7 \"crew\" must be a list, not a mapping\n"
                                 "  begin each entry on a line of its own with a hyphen\n");
    told_is("crew: a\n", "1:7 \"crew\" must be a list, not a text\n"
                         "  begin each entry on a line of its own with a hyphen\n");
    told_is("guests: a\n", "1:9 \"guests\" must be a list, not the text \"a\"\n"
                           "  write it as a list: [a]\n");
    told_is("crew: [{age: 3}, a]\n",
            "1:8 a member of the crew needs the key \"name\"\n  add \"name: ...\"\n"
            "1:18 a member of the crew must be a mapping, not a text\n"
            "  write its keys in lines of their own, or in one line as {key: value}\n");
    told_is("guests: [\"\", ~, {agee: 3}, [b]]\n",
            "1:10 an entry of \"guests\" is empty\n  write the text, or delete the entry\n"
            "1:14 an entry of \"guests\" is \"~\", which would be read as a text\n"
            "  leave the value empty; put it in quotes if it is the text\n"
            "1:17 a member of the crew needs the key \"name\"\n  add \"name: ...\"\n"
            "1:18 a member of the crew has no key \"agee\"\n  did you mean \"age\"?\n"
            "1:28 a member of the crew must be a mapping, not a list\n"
            "  write its keys in lines of their own, or in one line as {key: value}\n");
    told_is("owner: a\n",
            "1:8 a member of the crew must be a mapping, not a text\n"
            "  write its keys in lines of their own, or in one line as {key: value}\n");
}

static void test_wrong_pairs(void **state)
{
    (void)state;
    static const char remedy[] = "  write at: [metres aft, metres to starboard],\n"
                                 "with a point before decimals, such as at: [8.40, -1.20]\n";
    static const char *const inputs[] = {"at: 8.4\n", "at: [8.4]\n", "at: [8,4, 1]\n",
                                         "at: [a, 1]\n", "at: [1, [2]]\n", "at: {a: 1}\n"};

    for (size_t i = 0; i < sizeof inputs / sizeof inputs[0]; i++) {
        struct harbour harbour = ship_read(inputs[i]);
        assert_false(harbour.ship.at.given);
        assert_int_equal(harbour.ship.at.place.line, 1);
        told_is(inputs[i], text_format(harbour.arena, "1:5 \"at\" must be a list of two "
                                                      "numbers\n%s", remedy));
        arena_free(harbour.arena);
    }
}

/* A section or list whose key is misspelt has the place of what was meant for it. */
static void test_misspelt(void **state)
{
    (void)state;
    struct harbour harbour = ship_read("rigg: {mast: pine}\ncrews: [{name: a}]\n");

    assert_false(harbour.ship.rig.given || harbour.ship.crew.given);
    assert_int_equal(harbour.ship.rig.place.line, 1);
    assert_int_equal(harbour.ship.rig.key_place.line, 0);
    assert_int_equal(harbour.ship.crew.place.line, 2);
    arena_free(harbour.arena);
}

/* ---- going through ---- */

static void path_note(const struct field_path *path, void *context)
{
    struct text_builder *out = context;

    text_add_format(out, "%s: %s%s, of %s\n", field_path_text(path, out->arena),
                    field_kind_word(path->field->kind), path->field->required ? " (needed)" : "",
                    path->table->what);
}

static void test_walk(void **state)
{
    (void)state;
    struct arena *arena = arena_new((size_t)1024 * 1024);
    struct text_builder out = text_builder_in(arena);

    fields_walk(&ship_table, path_note, &out);
    assert_string_equal(out.at,
                        "name: text, of a ship\n"
                        "at: pair of numbers, of a ship\n"
                        "rig: section, of a ship\n"
                        "rig/mast: text, of a rig\n"
                        "rig/berth: section, of a rig\n"
                        "rig/berth/mooring: text, of a berth\n"
                        "crew: list of entries, of a ship\n"
                        "crew/name: text (needed), of a member of the crew\n"
                        "crew/age: number, of a member of the crew\n"
                        "guests: list of entries, of a ship\n"
                        "guests/name: text (needed), of a member of the crew\n"
                        "guests/age: number, of a member of the crew\n"
                        "owner: list of entries, of a ship\n"
                        "owner/name: text (needed), of a member of the crew\n"
                        "owner/age: number, of a member of the crew\n");
    arena_free(arena);
}

static void text_note(const struct field *field, void *value, void *context)
{
    if (field->kind == FIELD_TEXT && ((struct text_value *)value)->text != NULL)
        text_add_format(context, "%s ", ((struct text_value *)value)->text);
}

static void test_values(void **state)
{
    (void)state;
    struct harbour harbour = ship_read("rig: {mast: pine, berth: {mooring: A1}}\nname: Sea\n"
                                       "crew: [{name: a}, {name: b}]\nguests: [c]\n");
    struct text_builder out = text_builder_in(harbour.arena);

    field_values_visit(&ship_table, &harbour.ship, text_note, &out);
    assert_string_equal(out.at, "Sea pine A1 a b c ");
    arena_free(harbour.arena);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_section),
        cmocka_unit_test(test_entries),
        cmocka_unit_test(test_left_out),
        cmocka_unit_test(test_wrong_sections),
        cmocka_unit_test(test_wrong_entries),
        cmocka_unit_test(test_wrong_pairs),
        cmocka_unit_test(test_misspelt),
        cmocka_unit_test(test_walk),
        cmocka_unit_test(test_values),
    };

    return cmocka_run_group_tests_name("yaml_parts", tests, NULL, NULL) != 0;
}
