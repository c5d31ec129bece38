/* test_many.c - work by several processes: every result, in order, whatever becomes of a
 * process. */
#include "record_test.h"

#include <signal.h>
#include <unistd.h>

#include "app/many.h"

struct gathered {
    size_t count;              /* results so far */
    size_t lost;
    size_t stop_at;            /* take says no at this one; SIZE_MAX: never */
    size_t killed_at;          /* the process that works on it ends; SIZE_MAX: none */
    const char *how;           /* a word of the message on it */
    size_t here;               /* how many were done in this process */
    pid_t process;
};

static size_t length_of(size_t index)
{
    return index % 7 == 3 ? 200000 : index % 5;
}

static void work(void *context, size_t index, struct text_builder *out)
{
    const struct gathered *gathered = context;
    if (index == gathered->killed_at && getpid() != gathered->process)
        raise(SIGKILL);
    packet_put_number(out, index * index);
    packet_put_number(out, getpid() == gathered->process ? 1 : 0);
    for (size_t i = 0; i < length_of(index); i++)
        text_add_bytes(out, "x", 1);
}

static bool take(void *context, size_t index, struct many_result *result)
{
    struct gathered *gathered = context;
    assert_int_equal(index, gathered->count);
    gathered->count++;
    if (result->lost != NULL) {
        gathered->lost++;
        assert_non_null(strstr(result->lost, gathered->how));
        return true;
    }
    assert_int_equal(packet_number(&result->packet), index * index);
    gathered->here += (size_t)packet_number(&result->packet);
    assert_true(result->packet.whole);
    assert_int_equal(result->packet.left, length_of(index));
    return index != gathered->stop_at;
}

static const struct many_use use = {work, take};

static struct gathered gather(size_t count, unsigned processes, size_t stop_at, size_t killed_at)
{
    struct gathered gathered = {.stop_at = stop_at, .killed_at = killed_at, .how = "signal 9",
                                .process = getpid()};
    many_run(&use, &gathered, count, processes);
    return gathered;
}

static void all_in_order(void **state)
{
    (void)state;
    static const struct { size_t count; unsigned processes; } cases[] = {
        {0, 1}, {0, 3}, {1, 1}, {1, 8}, {2, 2}, {40, 1}, {40, 2}, {40, 3}, {3, 64}, {100, 5}};
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct gathered gathered = gather(cases[i].count, cases[i].processes, SIZE_MAX, SIZE_MAX);
        assert_int_equal(gathered.count, cases[i].count);
        assert_int_equal(gathered.lost, 0);
        bool alone = cases[i].processes == 1 || cases[i].count < 2;
        assert_int_equal(gathered.here, alone ? cases[i].count : 0);
    }
}

static void one_lost_others_done(void **state)
{
    (void)state;
    for (size_t killed = 0; killed < 20; killed += 6) {
        struct gathered gathered = gather(20, 2, SIZE_MAX, killed);
        assert_int_equal(gathered.count, 20);
        assert_int_equal(gathered.lost, 1);
    }
}

static void stopped_where_told(void **state)
{
    (void)state;
    for (unsigned processes = 1; processes < 4; processes++) {
        struct gathered gathered = gather(30, processes, 11, SIZE_MAX);
        assert_int_equal(gathered.count, 12);
    }
}

static void packets_read_as_written(void **state)
{
    (void)state;
    struct text_builder out = text_builder_in(test.arena);
    packet_put_text(&out, "tern");
    packet_put_text(&out, NULL);
    packet_put_text(&out, "");
    packet_put_bytes(&out, "\0\1\2", 3);
    packet_put_number(&out, UINT64_MAX);
    char three[3], four[4];
    struct packet packet = packet_of(out.at, out.length);
    assert_string_equal(packet_text(&packet, test.arena), "tern");
    assert_null(packet_text(&packet, test.arena));
    assert_string_equal(packet_text(&packet, test.arena), "");
    assert_true(packet_bytes(&packet, three, 3));
    assert_memory_equal(three, "\0\1\2", 3);
    assert_true(packet_number(&packet) == UINT64_MAX);
    assert_true(packet.whole && packet.left == 0);
    assert_int_equal(packet_number(&packet), 0);
    assert_false(packet.whole);
    for (size_t length = 0; length < out.length; length++) {    /* cut anywhere */
        packet = packet_of(out.at, length);
        packet_text(&packet, test.arena);
        packet_text(&packet, test.arena);
        packet_text(&packet, test.arena);
        packet_bytes(&packet, three, 3);
        packet_number(&packet);
        assert_false(packet.whole);
    }
    packet = packet_of(out.at, out.length);
    assert_false(packet_bytes(&packet, four, 3));
    assert_memory_equal(four, "\0\0\0", 3);
}

int main(void)
{
    const struct CMUnitTest tests[] = {TEST(all_in_order), TEST(one_lost_others_done),
                                       TEST(stopped_where_told), TEST(packets_read_as_written)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
