/* test_placeholder.c - which texts stand where a fact is yet to be recorded, which are
 * true, and what the readers of boat and base say of them. */
#include "boat_case.h"

#include "record/placeholder_list.h"
#include "record/record.h"

#define COUNT(array) (sizeof(array) / sizeof(array)[0])

static void is_one(const char *text, enum text_use use, const char *found)
{
    const char *in = placeholder_in(text, use, test.arena);
    if (in == NULL || strcmp(in, found) != 0)
        print_error("of \"%s\":\n", text);
    assert_non_null(in);
    assert_string_equal(in, found);
}

static void is_none(const char *text, enum text_use use)
{
    const char *in = placeholder_in(text, use, test.arena);
    if (in != NULL)
        print_error("of \"%s\":\n", text);
    assert_null(in);
}

static void whole_texts(void **state)
{
    static const char *const texts[] = {
        "tbd", "TBD", "Tbd.", "<tbd>", "[tbd]", "(TODO)", "*todo*", "'fixme'", "tba", "t.b.d.",
        "?", "??", "[?]", "¿?", "...", "…", ". . .", "-", "--", "—", "–", "_", "___", "/", "*",
        "n/a", "N/A", "N.A.", "na", "xxx", "XXXXXXX", "x", "To do", "to-do", "TO_DO",
        "to be filled in", "<to_be_filled_in>", "Fill in!", "none yet", "Unknown", "(unknown)",
        "not known", "unbekannt", "Offen", "auszufüllen", "k. A.", "À remplir", "a completer",
        "inconnu", "da compilare", "Sconosciuto", "por definir", "desconocido", "Άγνωστο",
        "ΑΓΝΩΣΤΟ", "προς συμπλήρωση", "nepoznato", "Nepoznato?", "bilinmiyor", "BİLİNMİYOR",
        "belli değil", "None", "keine", "aucun", "Κανένα", "“tbd”",
        "«à définir»", "null", "？"};
    (void)state;
    for (size_t i = 0; i < COUNT(texts); i++)
        is_one(texts[i], TEXT_WORDS, texts[i]);
}

static void words_inside(void **state)
{
    (void)state;
    is_one("locker tbd", TEXT_WORDS, "tbd");
    is_one("locker (TBD), port", TEXT_WORDS, "tbd");
    is_one("TODO: look it up", TEXT_WORDS, "todo");
    is_one("side ??", TEXT_WORDS, "??");
    is_one("locker???", TEXT_WORDS, "???");
    is_one("port (?)", TEXT_WORDS, "(?)");
    is_one("shelf ___", TEXT_WORDS, "___");
    is_one("shelf xxx", TEXT_WORDS, "xxx");
    is_one("shelf XXXXX left", TEXT_WORDS, "xxx");
    is_one("side to be confirmed", TEXT_WORDS, "to be confirmed");
    is_one("lorem ipsum", TEXT_WORDS, "lorem");
}

static void true_texts(void **state)
{
    static const char *const texts[] = {
        "by the door", "aft face", "2nd step", "0", "12", "box 3 - lid", "left = off",
        "no", "none of them", "open", "in the open locker", "unknown to guests, behind the panel",
        "press ?",
        "x-ray locker", "turn right ...", "stbd", "N/A switch", "tbdx", "methodology", "▲", "é",
        "across pipe = shut", "maxxxx", "Ω", "A", "nav", "to do with the mast", ""};
    (void)state;
    for (size_t i = 0; i < COUNT(texts); i++)
        is_none(texts[i], TEXT_WORDS);
}

/* A boat may be called X, and a key of the set be marked with a dash. */
static void names_and_codes(void **state)
{
    static const char *const names[] = {"X", "NA", "Unknown", "Offen", "Todo Bien", "-", "+", "KA",
                                        "Na Xxx", "Tern XXX", "none", "QALD3", "Who??"};
    static const char *const never[] = {"TBD", "todo", "xxx", "?", "???", "...", "--", "—", "___",
                                        "n/a", "to be filled in", "à remplir", "<tbd>"};
    (void)state;
    for (size_t i = 0; i < COUNT(names); i++)
        is_none(names[i], TEXT_NAME);
    for (size_t i = 0; i < COUNT(never); i++)
        is_one(never[i], TEXT_NAME, never[i]);
    is_one("Alder TBD", TEXT_NAME, "tbd");
}

/* A row that is not written as it is compared would never be found. */
static void each_row_is_found(void **state)
{
#define ROW_WORD(language, grade, word) word,
    static const char *const words[] = {PLACEHOLDER_LIST(ROW_WORD)};
#undef ROW_WORD
    (void)state;
    for (size_t i = 0; i < COUNT(words); i++) {
        is_one(words[i], TEXT_WORDS, words[i]);
        const char *written = text_format(test.arena, "<%s>.", text_upper(test.arena, words[i]));
        is_one(written, TEXT_WORDS, written);
    }
}

#define STANDS "which stands where a fact is yet to be recorded"
#define LEAVE_OUT ",\nor leave the field out: check tells what is not recorded"

static void boats_are_refused(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        "boat: {name: TBD, specimen: yes, hull: monohull, rig: sail, loa_m: 12.6, beam_m: 4.1, "
        "persons_max: 8, looks: unknown}\n"
        "radio: {call_sign: n/a, distress_key: '?', power_switch: todo, tag: E1,\n"
        "  zone: navigation_station, side: port, nature_steps: [menu, '-', tbd, X]}\n"
        "equipment:\n"
        "  - {item: knife, tag: E2, zone: cockpit, spot: -, how: locker tbd}\n");
    expect_errors(8);
    assert_false(sound);
    expect_error(1, "name is \"TBD\", " STANDS, "record the boat's name as painted");
    expect_error(1, "looks is \"unknown\", " STANDS,
                 "record how she looks to a searcher" LEAVE_OUT);
    expect_error(2, "call_sign is \"n/a\", " STANDS, NULL);
    expect_error(2, "distress_key is \"?\", " STANDS, NULL);
    expect_error(2, "power_switch is \"todo\", " STANDS, NULL);
    expect_error(3, "nature_steps holds \"tbd\", " STANDS,
                 "record the keys that choose the nature of distress,\n"
                 "or leave the entry out: check tells what is not recorded");
    expect_error(5, "spot is \"-\", " STANDS, "record where exactly, in a few words" LEAVE_OUT);
    expect_error(5, "how holds \"tbd\", " STANDS, NULL);
    assert_null(boat->facts.name.text);
    assert_int_equal(boat->facts.name.place.line, 1);
    assert_null(boat->equipment[0].spot.text);
    assert_int_equal(boat->radio.nature_steps.count, 3);
    assert_string_equal(boat->radio.nature_steps.items[2].text, "X");
}

static void bases_are_refused(void **state)
{
    (void)state;
    base_read(file_of("base.yaml",
                      "base: {name: X, phone_24h: tbd}\n"
                      "rescue_centre: {name: '...', channel: \"67\", phone: \"???\"}\n"
                      "cruising_area: {latitude: north, longitude: east}\n"
                      "lines:\n"
                      "  - {card: flooding, say: to be filled in, source: unbekannt, does: []}\n"),
              test.arena, test.problems, &sound);
    assert_false(sound);
    expect_errors(5);
    expect_error(1, "phone_24h is \"tbd\", " STANDS,
                 "record the number that is answered day and night");
    expect_error(2, "name is \"...\", " STANDS, "record its name");
    expect_error(2, "phone is \"???\", " STANDS, "record its telephone number" LEAVE_OUT);
    expect_error(5, "say is \"to be filled in\", " STANDS,
                 "record what the card says, in few words");
    expect_error(5, "source is \"unbekannt\", " STANDS,
                 "record whose word it is, such as base or harbour office");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(whole_texts),       TEST(words_inside),      TEST(true_texts),
        TEST(names_and_codes),   TEST(each_row_is_found), TEST(boats_are_refused),
        TEST(bases_are_refused),
    };
    return cmocka_run_group_tests_name("placeholder", tests, NULL, NULL) != 0;
}
