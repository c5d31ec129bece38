/* test_print_made.c - what the printing of one boat came to crosses to another process whole, or is
 * known to be cut; and which of many texts are equal. */
#include "record_test.h"

#include "app/alike.h"
#include "app/names.h"
#include "app/print_made.h"

static struct print_made made_of_two(void)
{
    struct print_made made = {.arena = test.arena, .deficiencies = 7, .stands = true,
                              .process = 42, .record = "sum"};
    struct print_event *file = print_event_add(&made, PRINT_FILE, "out/tern.pdf: 2 of 3 cards\n");
    file->file = (struct print_file){.name = "tern.pdf", .language = "en", .paper = "a4",
                                     .cards = 2, .of_cards = 3, .rows = "a,b\n",
                                     .written = true,
                                     .draft = {.state = DRAFT_WAITING, .name = "tern.pdf",
                                               .bytes = 99}};
    print_event_add(&made, PRINT_TALLY, "out/tern-*.pdf");
    print_event_add(&made, PRINT_TOLD, "  held  3 ENGINE FIRE\n");
    print_message_add(&made, &(struct print_message){SEVERITY_HELD, true, true, "told\n"});
    print_message_add(&made, &(struct print_message){SEVERITY_NOTE, false, false, NULL});
    return made;
}

static void crosses_whole(void **state)
{
    (void)state;
    struct print_made made = made_of_two(), read;
    struct text_builder bytes = text_builder_in(test.arena);
    print_made_pack(&made, &bytes);
    struct packet packet = packet_of(bytes.at, bytes.length);
    assert_true(print_made_unpack(&packet, test.arena, &read));
    assert_int_equal(read.event_count, 3);
    assert_int_equal(read.events[0].kind, PRINT_FILE);
    assert_string_equal(read.events[0].text, made.events[0].text);
    assert_string_equal(read.events[0].file.name, "tern.pdf");
    assert_string_equal(read.events[0].file.language, "en");
    assert_string_equal(read.events[0].file.paper, "a4");
    assert_string_equal(read.events[0].file.rows, "a,b\n");
    assert_int_equal(read.events[0].file.cards, 2);
    assert_int_equal(read.events[0].file.of_cards, 3);
    assert_true(read.events[0].file.written);
    assert_int_equal(read.events[0].file.draft.state, DRAFT_WAITING);
    assert_int_equal(read.events[0].file.draft.bytes, 99);
    assert_string_equal(read.events[0].file.draft.name, "tern.pdf");
    assert_int_equal(read.events[1].kind, PRINT_TALLY);
    assert_int_equal(read.events[2].kind, PRINT_TOLD);
    assert_string_equal(read.events[2].text, "  held  3 ENGINE FIRE\n");
    assert_int_equal(read.message_count, 2);
    assert_int_equal(read.messages[0].severity, SEVERITY_HELD);
    assert_true(read.messages[0].told && read.messages[0].shared);
    assert_string_equal(read.messages[0].text, "told\n");
    assert_false(read.messages[1].told || read.messages[1].shared);
    assert_null(read.messages[1].text);
    assert_int_equal(read.deficiencies, 7);
    assert_int_equal(read.process, 42);
    assert_true(read.stands);
    assert_string_equal(read.record, "sum");
    assert_null(read.inputs);
}

static void cut_anywhere_is_seen(void **state)
{
    (void)state;
    struct print_made made = made_of_two(), read;
    struct text_builder bytes = text_builder_in(test.arena);
    print_made_pack(&made, &bytes);
    for (size_t length = 0; length < bytes.length; length++) {
        struct packet packet = packet_of(bytes.at, length);
        assert_false(print_made_unpack(&packet, test.arena, &read));
    }
    text_add_bytes(&bytes, "x", 1);
    struct packet longer = packet_of(bytes.at, bytes.length);
    assert_false(print_made_unpack(&longer, test.arena, &read));
}

static void equal_texts_are_chained(void **state)
{
    (void)state;
    const char *texts[] = {"a", NULL, "b", "a", NULL, "a", "c", "b"};
    struct alike alike = alike_of(texts, 8, test.arena);
    const size_t first[] = {0, 1, 2, 0, 4, 0, 6, 2}, next[] = {3, 8, 7, 5, 8, 8, 8, 8};
    for (size_t i = 0; i < 8; i++) {
        assert_int_equal(alike.first[i], first[i]);
        assert_int_equal(alike.next[i], next[i]);
    }
    assert_int_equal(alike.size[0], 3);
    assert_int_equal(alike.size[2], 2);
    assert_int_equal(alike.size[6], 1);
    assert_int_equal(alike_of(NULL, 0, test.arena).count, 0);
}

/* Many names are found as few are, also after they were sorted. */
static void many_names_are_found(void **state)
{
    (void)state;
    struct names names = {0};
    for (int i = 0; i < 5000; i++) {
        const char *name = text_format(test.arena, "%d", i * 7919 % 5000);
        assert_false(names_hold(&names, name));
        names_add(&names, name, test.arena);
        assert_true(names_hold(&names, name));
    }
    names_sort(&names);
    for (int i = 0; i < 5000; i++)
        assert_true(names_hold(&names, text_format(test.arena, "%d", i)));
    assert_false(names_hold(&names, "5000"));
    assert_false(names_hold(&names, ""));
}

int main(void)
{
    const struct CMUnitTest tests[] = {TEST(crosses_whole), TEST(cut_anywhere_is_seen),
                                       TEST(equal_texts_are_chained), TEST(many_names_are_found)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
