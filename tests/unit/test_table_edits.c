/* test_table_edits.c - what a table asks of a boat's file: how it is told, which line it becomes,
 * and what is refused by row and column. */
#include "table_case.h"

static const char tern[] =
    "# Tern\n"
    "boat:\n"
    "  name: Tern   # as painted\n"
    "  hull: monohull\n"
    "  rig: sail\n"
    "  loa_m: 10.0\n"
    "  beam_m: 3.3\n"
    "  persons_max: 6\n"
    "gas: {carried: yes}\n"
    "\n"
    "equipment:\n"
    "  # the valve\n"
    "  - {item: fuel_shutoff_diesel, tag: C1, zone: cockpit_locker, side: port, "
    "how: {shut: across}}\n"
    "  - item: bilge_pump_manual   # stiff\n"
    "    tag: C2\n"
    "    zone: cockpit\n"
    "    handle: on a hook\n"
    "  - {item: torch, tag: C3, zone: saloon, spot: \"by the lamp\", expires: 2027-05}\n"
    "  - {item: seacock, tag: C4, name: sink, zone: galley, how: {shut: across, open: along}}\n"
    "not_fitted:\n"
    "  - epirb\n"
    "  - liferaft\n"
    "tags_given: [C4]\n";

/* What the table asks, what is told, and lines of the new file; - before one that is gone. */
static const struct { const char *table, *told, *line; } edit_rows[] = {
    {"boat,tag,item,expires\ntern,C3,torch,2028-06\n", "C3 torch expires: 2027-05 -> 2028-06",
     "  - {item: torch, tag: C3, zone: saloon, spot: \"by the lamp\", expires: 2028-06}\n"},
    {"boat;tag;item;spot\r\ntern;C3;torch;port, high\r\n",
     "C3 torch spot: by the lamp -> port, high",
     "  - {item: torch, tag: C3, zone: saloon, spot: \"port, high\", expires: 2027-05}\n"},
    {"boat,tag,item,spot\ntern,C3,torch,\n", "C3 torch spot: by the lamp -> -",
     "  - {item: torch, tag: C3, zone: saloon, expires: 2027-05}\n"},
    {"boat\ttag\titem\thandle.spot\ntern\tC2\tbilge_pump_manual\tin the bag\n",
     "C2 bilge_pump_manual handle.spot: on a hook -> in the bag", "    handle: in the bag\n"},
    {"boat|tag|item|handle.zone\ntern|C2|bilge_pump_manual|galley\n",
     "C2 bilge_pump_manual handle.zone: - -> galley",
     "    handle: {zone: galley, spot: on a hook}\n"},
    {"boat,tag,item,handle.spot\ntern,C2,bilge_pump_manual,\n",
     "C2 bilge_pump_manual handle.spot: on a hook -> -", "-    handle"},
    {"boat,tag,item,how.open\ntern,C1,fuel_shutoff_diesel,along\n",
     "C1 fuel_shutoff_diesel how.open: - -> along", "how: {shut: across, open: along}}\n"},
    {"boat,tag,item,how.open,how.shut\ntern,C4,seacock,,\n",
     "C4 seacock how.shut: across -> -; C4 seacock how.open: along -> -",
     "  - {item: seacock, tag: C4, name: sink, zone: galley}\n"},
    {"boat,tag,item,serial\ntern,C3,torch,'012\n", "C3 torch serial: - -> 012",
     "expires: 2027-05, serial: \"012\"}\n"},
    {"boat,tag,item,inside\ntern,C1,fuel_shutoff_diesel,\"cockpit_locker, bilge\"\n",
     "C1 fuel_shutoff_diesel inside: - -> cockpit_locker, bilge",
     "inside: [cockpit_locker, bilge]}\n"},
    {"boat,tag,item,inside\ntern,C1,fuel_shutoff_diesel,[]\n",
     "C1 fuel_shutoff_diesel inside: - -> []", "inside: []}\n"},
    {"boat,tag,item,spot\ntern,C3,torch,\"{en: here, de: hier}\"\n",
     "C3 torch spot: by the lamp -> {en: here, de: hier}", "spot: {en: here, de: hier}"},
    {"boat,tag,item,value\ntern,,boat.draught_m,\"1,7\"\n", "boat draught_m: - -> 1.7",
     "  draught_m: 1.7\n"},
    {"boat,tag,item,value\ntern,,boat.name,Avocet\n", "boat name: Tern -> Avocet",
     "  name: Avocet   # as painted\n"},
    {"boat,tag,item,value\ntern,,radio.mmsi,200014980\ntern,,radio.dsc,TRUE\n",
     "radio mmsi: - -> 200014980; radio dsc: - -> yes",
     "radio: {mmsi: \"200014980\", dsc: yes}\n"},
    {"boat,tag,item,value\ntern,,boat.mounted.zone,saloon\ntern,,boat.mounted.faces,bow\n",
     "boat mounted.zone: - -> saloon; boat mounted.faces: - -> bow",
     "  mounted: {zone: saloon, faces: bow}\n"},
    {"boat,tag,item,value\ntern,,sart,not_fitted\n", "sart: - -> not_fitted", "  - sart\n"},
    {"boat,tag,item,value\ntern,,epirb,not_surveyed\n",
     "epirb: not_fitted -> -; epirb: - -> not_surveyed", "not_surveyed: [epirb]\n"},
    {"boat,tag,item,value,out\ntern,,epirb,not_fitted,yes\n", "epirb: not_fitted -> -",
     "-  - epirb\n"},
    {"boat,tag,item,value,out\ntern,,epirb,not_fitted,yes\ntern,,liferaft,not_fitted,yes\n",
     "epirb: not_fitted -> -; liferaft: not_fitted -> -", "-not_fitted"},
    {"boat,tag,item,zone,spot\ntern,new,torch,cockpit,by the wheel\n",
     "C5 torch: - -> {item: torch, tag: C5, zone: cockpit, spot: by the wheel}",
     "  - {item: torch, tag: C5, zone: cockpit, spot: by the wheel}\n"},
    {"boat,tag,item,out\ntern,C2,bilge_pump_manual,yes\n",
     "C2 bilge_pump_manual: {item: bilge_pump_manual, tag: C2, zone: cockpit, handle: on a hook} "
     "-> -",
     "retired_tags: [C2]\n"},
    {"boat,tag,item,out\ntern,C2,bilge_pump_manual,no\n", "", NULL},
};

static void edits_are_told_and_made(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof edit_rows / sizeof *edit_rows; i++) {
        struct bench bench, after;
        const struct yaml_edited *edited;
        const char *line = edit_rows[i].line;
        bench_open(&bench, file_of("tern.yaml", tern));
        assert_string_equal(take_told(&bench, edit_rows[i].table, &edited), edit_rows[i].told);
        if (line == NULL) {
            assert_null(edited);
            continue;
        }
        assert_non_null(edited);
        if (line[0] == '-')
            assert_null(strstr(edited->bytes, line + 1));
        else
            assert_non_null(strstr(edited->bytes, line));
        bench_open(&after, edited_source(edited));
        nothing_changes(&after);
    }
}

/* ---- what is refused ---- */

static const struct { const char *table; int line, column; const char *what; } refusal_rows[] = {
    {"boat,tag,item,sport\n", 1, 15, "row 1, column D (sport): there is no column \"sport\""},
    {"boat,tag,item,spot,spot\n", 1, 20, "row 1, column E (spot): a second column"},
    {"boat,tag,item,,spot\n", 1, 15, "row 1, column D (): the column has no name"},
    {"boat,item,spot\n", 1, 1, "row 1: the column tag is missing"},
    {"boat,tag,item\nturn,C3,torch\n", 2, 1, "row 2, column A (boat): there is no boat \"turn\""},
    {"boat,tag,item\n,C3,torch\n", 2, 1, "row 2, column A (boat): there is no boat \"\""},
    {"boat,tag,item\ntern,C9,torch\n", 2, 6, "row 2, column B (tag): no piece of tern has the tag"},
    {"boat,tag,item\ntern,C3,torch\ntern,C3,torch\n", 3, 6,
     "row 3, column B (tag): row 2 has the tag C3 of tern too"},
    {"boat,tag,item\ntern,C3,knife\n", 2, 9, "row 2, column C (item): C3 is torch, and here"},
    {"boat,tag,item\ntern,new,torche\n", 2, 10, "row 2, column C (item): there is no item"},
    {"boat,tag,item\ntern,,torch\n", 2, 6, "row 2, column B (tag): the row has no tag"},
    {"boat,tag,item,value\ntern,,torch,aboard\n", 2, 13,
     "row 2, column D (value): \"aboard\" is neither"},
    {"boat,tag,item,value\ntern,C3,torch,5\n", 2, 15, "row 2, column D (value): a piece of gear"},
    {"boat,tag,item,out\ntern,C3,torch,x\n", 2, 15, "row 2, column D (out): \"x\" is neither"},
    {"boat,tag,item,out\ntern,new,torch,yes\n", 2, 16, "row 2, column D (out): a new piece"},
    {"boat,tag,item,value\ntern,,boat.colour,x\n", 2, 7,
     "row 2, column C (item): there is no fact"},
    {"boat,tag,item,value\ntern,,boat.rig,sail\ntern,,boat.rig,sail\n", 3, 7,
     "row 3, column C (item): row 2 has the same fact"},
    {"boat,tag,item,value,spot\ntern,,boat.rig,sail,here\n", 2, 21,
     "row 2, column E (spot): only rows of gear"},
    {"boat,tag,item,zone\ntern,C3,torch,kitchen\n", 2, 15,
     "row 2, column D (zone): \"zone\" cannot be \"kitchen\""},
    {"boat,tag,item,expires\ntern,C3,torch,03/04/2027\n", 2, 15,
     "row 2, column D (expires): \"03/04/2027\": it is no date, or can be read as two"},
    {"boat,tag,item,count\ntern,C3,torch,many\n", 2, 15, "row 2, column D (count): \"count\" must"},
    {"boat,tag,item,spot,expires\ntern,C3,torch\n", 2, 9,
     "row 2, column D (spot): the row ends before this cell"},
    {"boat,tag,item,how\ntern,C4,seacock,turn\n", 2, 17,
     "row 2, column D (how): how is given as one text and by state"},
    {"boat,tag,item,inside\ntern,C1,fuel_shutoff_diesel,\"bilge,,\"\n", 2, 29,
     "row 2, column D (inside): \"bilge,,\": between two commas"},
    {"boat,tag,item,spot\ntern,C3,torch,{en\n", 2, 15, "row 2, column D (spot): \"{en\": "},
    {"boat,tag,item,zone,spot\ntern,new,torch,saloon,by the lamp\ntern,C3,torch,saloon,\n",
     0, 0, NULL},
    {"boat,tag,item,zone,spot,expires\ntern,new,torch,saloon,by the lamp,2027-05\n", 2, 6,
     "row 2, column B (tag): C3 is such a torch, in the same place"},
};

static void what_is_wrong_is_refused_by_cell(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof refusal_rows / sizeof *refusal_rows; i++) {
        struct bench bench;
        size_t count;
        bench_open(&bench, file_of("tern.yaml", tern));
        test.problems = problems_new(test.arena);
        const struct take *take = take_text(&bench, refusal_rows[i].table);
        const struct problem *told = problems_sorted(test.problems, &count);
        if (refusal_rows[i].what == NULL) {
            assert_non_null(take);
            continue;
        }
        assert_null(take);
        assert_true(count > 0);
        if (!text_begins(told[0].what, refusal_rows[i].what))
            problems_show();
        assert_true(text_begins(told[0].what, refusal_rows[i].what));
        assert_int_equal(told[0].place.line, refusal_rows[i].line);
        assert_int_equal(told[0].place.column, refusal_rows[i].column);
        assert_false(text_empty(told[0].remedy));
    }
}

static void every_fault_of_a_table_is_told(void **state)
{
    struct bench bench;
    (void)state;
    bench_open(&bench, file_of("tern.yaml", tern));
    assert_null(take_text(&bench, "boat,tag,item,zone,count\ntern,C3,torch,kitchen,many\n"
                                  "tern,C9,torch,,\nturn,,,,\n"));
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 4);
}

/* ---- a table that lay about ---- */

/* The table of the boat as she was, with cells of one row changed. */
static const char *old_table(const char *from, const char *to)
{
    struct bench bench;
    bench_open(&bench, file_of("tern.yaml", tern));
    struct text_builder out = table_write(&bench.boats, test.arena);
    const char *at = from == NULL ? NULL : strstr(out.at, from);
    if (from == NULL)
        return out.at;
    assert_non_null(at);
    return text_format(test.arena, "%.*s%s%s", (int)(at - out.at), out.at, to, at + strlen(from));
}

/* Her file, changed since: the torch lies elsewhere, an item was found. */
static const struct source *tern_since(void)
{
    struct bench bench;
    const struct yaml_edited *edited;
    bench_open(&bench, file_of("tern.yaml", tern));
    assert_string_not_equal(take_told(&bench, "boat,tag,item,value,out,spot\n"
                                              "tern,C3,torch,,,in the drawer\n"
                                              "tern,,epirb,not_fitted,yes,\n"
                                              "tern,,boat.name,Avocet,,\n", &edited), "");
    return edited_source(edited);
}

static void an_old_table_undoes_nothing(void **state)
{
    struct bench bench;
    const struct yaml_edited *edited;
    (void)state;
    bench_open(&bench, tern_since());
    assert_string_equal(take_told(&bench, old_table(NULL, NULL), &edited), "");
    assert_null(edited);
    /* what was changed in it of another row is taken */
    assert_string_equal(take_told(&bench, old_table(",sink,", ",sink drain,"), &edited),
                        "C4 seacock name: sink -> sink drain");
    assert_int_equal(take_passed(take_text(&bench, old_table(NULL, NULL))), 3);
    /* a row that says what is recorded by now is no contradiction */
    assert_string_equal(take_told(&bench, old_table(",by the lamp,", ",in the drawer,"), &edited),
                        "");
}

static void a_row_that_both_changed_is_refused(void **state)
{
    static const char *const changes[][2] = {
        {",by the lamp,", ",under the lamp,"}, {"boat.name,,Tern", "boat.name,,Knot"},
        {"torch,,", "torch,yes,"}, {"epirb,,not_fitted", "epirb,,not_surveyed"}};
    (void)state;
    for (size_t i = 0; i < sizeof changes / sizeof *changes; i++) {
        struct bench bench;
        size_t count;
        bench_open(&bench, tern_since());
        test.problems = problems_new(test.arena);
        assert_null(take_text(&bench, old_table(changes[i][0], changes[i][1])));
        const struct problem *told = problems_sorted(test.problems, &count);
        assert_int_equal(count, 1);
        assert_non_null(strstr(told[0].what, "changed in the boat's file after the table"));
    }
}

/* ---- sisters ---- */

static const char sloop[] = "changed: 2026-01-01\n"
                            "boat: {hull: monohull, rig: sail, loa_m: 10, beam_m: 3, "
                            "persons_max: 6}\n"
                            "radio: {tag: E1, zone: saloon, hold_s: 5}\n"
                            "equipment:\n"
                            "  - {item: torch, tag: C1, zone: saloon}\n"
                            "  - {item: liferaft, tag: E2, zone: transom, persons: 6}\n"
                            "not_fitted: [epirb]\n";
static const char sister[] = "like: sloop\n"
                             "walked: {date: 2026-02, by: AB}\n"
                             "boat: {name: Tern}\n"
                             "equipment:\n"
                             "  - {tag: E2, serial: \"1\"}\n";

static void sister_open(struct bench *bench)
{
    const struct model **rows = arena_array(test.arena, 1, sizeof *rows);
    struct models *models = arena_alloc(test.arena, sizeof *models);
    rows[0] = model_read(file_of("sloop.yaml", sloop), "sloop", test.arena);
    *models = (struct models){rows, 1};
    bench_open_like(bench, file_of("tern.yaml", sister), models);
}

static const struct { const char *table, *told, *line; } sister_rows[] = {
    {"boat,tag,item,serial\ntern,E2,liferaft,2\n", "E2 liferaft serial: 1 -> 2",
     "  - {tag: E2, serial: \"2\"}\n"},
    {"boat,tag,item,expires\ntern,C1,torch,2028\n", "C1 torch expires: - -> 2028",
     "  - {tag: C1, expires: 2028}\n"},
    {"boat,tag,item,value\ntern,,boat.loa_m,11\n", "boat loa_m: 10 -> 11",
     "boat: {name: Tern, loa_m: 11}\n"},
    {"boat,tag,item,value\ntern,,radio.hold_s,3\n", "radio hold_s: 5 -> 3",
     "radio: {hold_s: 3}\n"},
    {"boat,tag,item,out\ntern,C1,torch,yes\n", "C1 torch: as her model has it -> -",
     "not_here: [C1]\n"},
    {"boat,tag,item,value\ntern,,epirb,not_surveyed\n", "epirb: - -> not_surveyed",
     "not_surveyed: [epirb]\n"},
    {"boat,tag,item,value\ntern,,radio.tag,E9\n", NULL, "E1 is the tag of that gear for"},
    {"boat,tag,item,zone\ntern,C1,torch,cockpit\n", NULL, "zone of C1 is her model's"},
    {"boat,tag,item,value\ntern,,boat.loa_m,\n", NULL, "loa_m of boat is her model's"},
    {"boat,tag,item,value,out\ntern,,epirb,not_fitted,yes\n", NULL, "her model says"},
};

static void a_sister_has_her_own_and_her_models(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof sister_rows / sizeof *sister_rows; i++) {
        struct bench bench;
        const struct yaml_edited *edited;
        size_t count;
        test.problems = problems_new(test.arena);
        sister_open(&bench);
        nothing_changes(&bench);
        if (sister_rows[i].told != NULL) {
            assert_string_equal(take_told(&bench, sister_rows[i].table, &edited),
                                sister_rows[i].told);
            assert_non_null(strstr(edited->bytes, sister_rows[i].line));
            continue;
        }
        assert_null(take_text(&bench, sister_rows[i].table));
        const struct problem *told = problems_sorted(test.problems, &count);
        assert_non_null(strstr(told[0].what, sister_rows[i].line));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(edits_are_told_and_made),
        TEST(what_is_wrong_is_refused_by_cell),
        TEST(every_fault_of_a_table_is_told),
        TEST(an_old_table_undoes_nothing),
        TEST(a_row_that_both_changed_is_refused),
        TEST(a_sister_has_her_own_and_her_models),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
